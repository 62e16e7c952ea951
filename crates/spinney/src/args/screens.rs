//! The command line of the screens: open, pack, unpack.

use std::path::PathBuf;

use clap::Args;

#[derive(Args, Debug, Default)]
#[command(after_help = "Examples:\n  \
    spinney open                  an invented hedge walk to try, kept nowhere\n  \
    spinney open class4.spinney   your own collection; begun if it is not there\n\n\
    It answers on this machine alone, and sends nothing anywhere.")]
pub(crate) struct Open {
    /// The file of a collection; it is made if it is not there. None: an invented hedge walk.
    #[arg(value_name = "FILE")]
    pub(crate) file: Option<PathBuf>,
    /// The port of this machine to answer on; 0 finds a free one.
    #[arg(long, value_name = "PORT", default_value_t = 0)]
    pub(crate) port: u16,
    /// Only print the address.
    #[arg(long)]
    pub(crate) no_browser: bool,
}

#[derive(Args, Debug)]
pub(crate) struct Pack {
    /// The file of a collection.
    #[arg(value_name = "FILE")]
    pub(crate) file: PathBuf,
    /// The zip to write: a journal in JSON, pictures, and a page that explains them.
    #[arg(value_name = "OUT.zip")]
    pub(crate) out: PathBuf,
    /// Write over a zip that is there.
    #[arg(long)]
    pub(crate) force: bool,
}

#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
    spinney rescue class4.spinney class4-saved.spinney\n  \
    spinney rescue class4.zip class4-saved.spinney\n\n\
    The damaged file is never changed. Keep it until you have looked everything over.")]
pub(crate) struct Rescue {
    /// The damaged file: a collection, or one that `spinney pack` has packed.
    #[arg(value_name = "DAMAGED")]
    pub(crate) damaged: PathBuf,
    /// The file to make; there must be none of this name.
    #[arg(value_name = "FILE")]
    pub(crate) file: PathBuf,
    /// Save only what came before the damage, exactly as it was then.
    #[arg(long)]
    pub(crate) before: bool,
}

#[derive(Args, Debug)]
pub(crate) struct Unpack {
    /// The zip that `spinney pack` has made.
    #[arg(value_name = "IN.zip")]
    pub(crate) packed: PathBuf,
    /// The file to make; there must be none of this name.
    #[arg(value_name = "FILE")]
    pub(crate) file: PathBuf,
}
