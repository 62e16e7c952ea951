//! What `spinney measure` is told.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::{Paper, Unfit};

#[derive(Args, Debug)]
#[command(
    after_help = "Lay the leaves flat on a plain sheet, not touching each other and away from the \
    edges, with\n\
    their stalks straight. Scan at 300 dots per inch. A scanner writes this number into its file;\n\
    where it does not, say --dpi 300. Without it there are no lengths, only shape and ratios.\n\n\
    No scanner? Print the scale card, lay the leaves between its rings and photograph it.\n\n\
    Examples:\n  \
    spinney measure scan.png\n  \
    spinney measure --scale-card scale-card.pdf\n  \
    spinney measure oak.png hazel.jpg --dpi 300 --out leaves\n  \
    spinney measure scans --out leaves\n  \
    spinney measure rubbing.png --rubbing --out rubbings\n  \
    spinney measure scan.png --format csv > leaves.csv\n\n\
    docs/measure.md says how each measure is defined, and how far it may be off."
)]
pub(crate) struct Measure {
    /// Scans of leaves on a plain ground, or photographs of leaves on the scale card: PNG, JPEG,
    /// TIFF, WebP or BMP. A folder stands for all pictures in it.
    #[arg(value_name = "FILES", required_unless_present = "scale_card")]
    pub(crate) files: Vec<PathBuf>,
    /// Dots per inch of all pictures, whatever the files say.
    #[arg(long, value_name = "N", value_parser = dpi, allow_negative_numbers = true)]
    pub(crate) dpi: Option<f64>,
    /// They are rubbings: crayon or pencil over leaves under paper.
    #[arg(long)]
    pub(crate) rubbing: bool,
    /// What was found wrongly, a line each: “leaf 3 is no leaf”, “leaf 5 is two
    /// leaves between 120 40 and 180 300”, “leaf 7 is part of leaf 6”, “leaf 4 begins at 120 340”,
    /// “leaf 4 ends at 100 20”, “at 812 440 is a leaf”; or a ruler that is in the picture: “from 40
    /// 60 to 1221 60 is 100 mm”. Places are dots to the right and down. For
    /// one picture; `-` for stdin.
    #[arg(long, value_name = "FILE")]
    pub(crate) mends: Option<PathBuf>,
    /// Write into this folder: the measures (leaves.csv, leaves.json), each picture with what was
    /// measured drawn into it (SVG), and each leaf alone, upright: on a clear ground (PNG), and as a drawing in lines, as large as
    /// it is (SVG).
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: Option<PathBuf>,
    /// Write the scale card, a sheet to photograph leaves on, and measure nothing: a name that ends in
    /// .pdf, or `-` for stdout.
    #[arg(long, value_name = "FILE.pdf", conflicts_with_all = ["files", "dpi", "rubbing", "mends", "out", "format"])]
    pub(crate) scale_card: Option<PathBuf>,
    /// With --scale-card: strips to lie in a pond tray or beside it, instead of the card.
    #[arg(long, requires = "scale_card")]
    pub(crate) strip: bool,
    /// The paper of the scale card.
    #[arg(long, value_enum, default_value = "a4", requires = "scale_card")]
    pub(crate) paper: Paper,
    /// Write over files that Spinney did not write, or that were changed since. Never over what
    /// the command reads.
    #[arg(long)]
    pub(crate) force: bool,
    /// How to answer; the JSON is described in docs/measure.schema.json.
    #[arg(long, value_enum, default_value = "text")]
    pub(crate) format: MeasureFormat,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum MeasureFormat {
    /// For people.
    Text,
    /// For spreadsheets: a row a leaf.
    Csv,
    /// For programs.
    Json,
}

/// Dots per inch, such as `300`.
fn dpi(text: &str) -> Result<f64, Unfit> {
    let bare = text.trim().trim_end_matches("dpi").trim().replace(',', ".");
    let number = bare.parse::<f64>().ok().filter(|number| (10.0..=10_000.0).contains(number));
    number.ok_or_else(|| Unfit::new("usage-dpi", "usage-dpi-remedy", [("text", text.into())]))
}
