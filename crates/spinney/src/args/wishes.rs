//! What a person may wish of a key, as options.

use std::path::PathBuf;

use clap::{Args, ValueEnum};
use spinney_model::{Goal, SeenOn};

/// What a person wants of the key.
#[derive(Args, Debug)]
pub(crate) struct Wishes {
    /// Ask this first, and finish with the fewest questions; says what that costs.
    #[arg(long, value_name = "QUESTION", conflicts_with = "keep")]
    pub(crate) first: Option<String>,
    /// Keep these first questions: a beginning of a key in words, open ends left as `?`.
    #[arg(long, value_name = "FILE")]
    pub(crate) keep: Option<PathBuf>,
    /// What the questions to keep mean in the table, where that had to be asked back.
    #[arg(long, value_name = "FILE")]
    pub(crate) links: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) seen: Seen,
    /// Ask about these columns first, in this order, wherever they can be asked.
    #[arg(long, value_name = "COLUMNS")]
    pub(crate) order: Vec<String>,
    /// Part these two look-alikes as early as the table allows.
    #[arg(long, value_name = "KIND, KIND")]
    pub(crate) apart: Vec<String>,
    /// Let this kind come out as early as the table allows: one that pricks, burns or poisons.
    #[arg(long, value_name = "KIND")]
    pub(crate) out_first: Vec<String>,
    /// What is best, the first first (commas between); the fewest questions settle the rest.
    #[arg(long, value_enum, value_delimiter = ',', value_name = "GOALS")]
    pub(crate) goals: Vec<Aim>,
    /// How many heaps may be taken apart before the best key so far is given.
    #[arg(long, value_name = "HEAPS", default_value_t = spinney_build::Budget::default().heaps)]
    pub(crate) budget: u64,
    /// How much memory the search may take, in MiB. Where it is used up, the best key so far is
    /// given.
    #[arg(
        long,
        value_name = "MIB",
        default_value_t = spinney_build::USUAL_MEMORY,
        value_parser = clap::value_parser!(u64).range(1..=1 << 20)
    )]
    pub(crate) memory: u64,
}

impl Wishes {
    /// How much the search may do, and how much it may hold.
    pub(crate) fn limits(&self) -> (u64, u64) {
        (self.budget, self.memory)
    }
}

/// What can be asked at all.
#[derive(Args, Debug)]
pub(crate) struct Seen {
    /// What is in the hand. Only what can be seen on it is asked; says what drops out.
    #[arg(long, value_name = "FORM", value_enum)]
    pub(crate) hand: Option<Hand>,
    /// The season. Only what can be seen then is asked; says what drops out.
    #[arg(long, value_enum)]
    pub(crate) season: Option<Season>,
    /// Let questions that are answered by touch come at any place. Otherwise they wait until every
    /// kind with a caution is gone, as long as something else separates; says what that costs.
    #[arg(long)]
    pub(crate) allow_touch: bool,
    /// Never ask about these columns (commas between, or several times).
    #[arg(long, value_name = "COLUMNS")]
    pub(crate) never: Vec<String>,
}

/// What is in the hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Hand {
    /// The whole tree or shrub.
    Tree,
    /// A twig with its leaves.
    Twig,
    /// One loose leaf (or seed, or shell).
    Leaf,
    /// A rubbing.
    Rubbing,
    /// A photograph.
    Photograph,
    /// A twig without leaves.
    WinterTwig,
    /// A tray with water.
    Tray,
}

impl Hand {
    pub(crate) fn seen_on(self) -> SeenOn {
        match self {
            Self::Tree => SeenOn::Tree,
            Self::Twig => SeenOn::Twig,
            Self::Leaf => SeenOn::Leaf,
            Self::Rubbing => SeenOn::Rubbing,
            Self::Photograph => SeenOn::Photograph,
            Self::WinterTwig => SeenOn::WinterTwig,
            Self::Tray => SeenOn::Tray,
        }
    }
}

/// A season of the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Season {
    Spring,
    Summer,
    Autumn,
    Winter,
}

impl Season {
    pub(crate) fn season(self) -> spinney_model::Season {
        match self {
            Self::Spring => spinney_model::Season::Spring,
            Self::Summer => spinney_model::Season::Summer,
            Self::Autumn => spinney_model::Season::Autumn,
            Self::Winter => spinney_model::Season::Winter,
        }
    }
}

/// What makes one key better than another.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Aim {
    /// The fewest questions a find; hard ones count for more.
    Questions,
    /// No long way: the longest path as short as can be.
    Short,
    /// The most finds at the right name, by how often each column is read right.
    Right,
    /// Few new words at once, then few in all.
    Teaching,
    /// Few different words in the whole key.
    Words,
    /// As little measuring with a ruler as can be.
    NoRuler,
}

impl Aim {
    pub(crate) fn goal(self) -> Goal {
        match self {
            Self::Questions => Goal::LeastEffort,
            Self::Short => Goal::ShortestLongestPath,
            Self::Right => Goal::MostRightEnds,
            Self::Teaching => Goal::EvenTeaching,
            Self::Words => Goal::FewestWords,
            Self::NoRuler => Goal::FewestRulers,
        }
    }
}
