//! Where a table comes from, what a row of it is, and how finds of it spread.

use std::path::PathBuf;

use clap::{Args, ValueEnum};
use spinney_exchange::table::{RowsAre, Settings};

use super::{Format, Unfit};

/// Where a table comes from.
#[derive(Args, Clone, Debug)]
pub(crate) struct Table {
    /// The table: CSV, TSV or XLSX; one row a kind, one column a character. `-` reads it from
    /// stdin. A folder is read as table.csv with characters.csv, kinds.csv and about.csv; a
    /// collection (.spinney) as the table that its screens show.
    #[arg(value_name = "TABLE")]
    pub(crate) table: PathBuf,
    /// How to ask about each character (a sheet `characters` of an XLSX does the same).
    #[arg(long, value_name = "FILE")]
    pub(crate) characters: Option<PathBuf>,
    /// Names, cautions and how often each kind is met (or a sheet `kinds`).
    #[arg(long, value_name = "FILE")]
    pub(crate) kinds: Option<PathBuf>,
    /// Title, place, season and part for the title line (or a sheet `about`).
    #[arg(long, value_name = "FILE")]
    pub(crate) about: Option<PathBuf>,
    /// How far a threshold stays from every measured range, in mm (other units: in those).
    #[arg(
        long,
        value_name = "MM",
        default_value_t = spinney_model::USUAL_GAP,
        value_parser = gap,
        allow_negative_numbers = true
    )]
    pub(crate) gap: spinney_model::Quantity,
    /// What a row of the table is. With `leaves` each is one leaf (or shell, or animal), and a kind
    /// may be on many rows; docs/specimens.md says which columns tell which leaf it is. Without it
    /// each is a kind.
    #[arg(long, value_enum)]
    pub(crate) rows: Option<Rows>,
}

/// What a row of a table is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Rows {
    /// A kind.
    Kinds,
    /// One leaf, shell, animal: a find.
    Leaves,
}

impl Table {
    /// How it is read.
    pub(crate) fn settings(&self) -> Settings {
        let rows = match self.rows {
            None | Some(Rows::Kinds) => RowsAre::Kinds,
            Some(Rows::Leaves) => RowsAre::Finds,
        };
        Settings { gap: Some(self.gap), rows }
    }
}

#[derive(Args, Debug)]
#[command(
    after_help = "A row of the table is one leaf (or shell, or animal), and a kind is on as many \
    rows as there are\n\
    of it. A cut is trusted when at most 5 in 100 of a kind lie beyond it, with a confidence of\n\
    95 %. No leaf is left out because it is unlike the others.\n\n\
    Examples:\n  \
    spinney spread leaves.csv\n  \
    spinney spread leaves.csv --all-pairs\n  \
    spinney key leaves.csv --rows leaves\n  \
    spinney table leaves.csv --rows leaves\n\n\
    docs/specimens.md says how each number is worked out, and who says so."
)]
pub(crate) struct Spread {
    #[command(flatten)]
    pub(crate) table: Table,
    /// How to answer; the JSON is described in docs/spread.schema.json.
    #[arg(long, value_enum, default_value = "text")]
    pub(crate) format: Format,
    /// Name every two kinds, not only those with the most on the wrong side.
    #[arg(long)]
    pub(crate) all_pairs: bool,
}

/// A length such as `5`, `2.5` or `2,5`.
fn gap(text: &str) -> Result<spinney_model::Quantity, Unfit> {
    let bare = text.trim().trim_end_matches("mm").trim().replace(',', ".");
    let number = bare
        .parse::<f64>()
        .map_err(|_| Unfit::new("usage-gap", "usage-gap-remedy", [("text", text.into())]))?;
    if !(0.0..=10_000.0).contains(&number) {
        return Err(Unfit::new("usage-gap-range", "usage-gap-range-remedy", []));
    }
    Ok(spinney_model::Quantity::from_thousandths((number * 1000.0).round() as i64))
}
