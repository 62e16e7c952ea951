//! The command line as one declarative table, from which help and errors are made.

use std::path::PathBuf;
use std::process::ExitCode;

use clap::builder::PossibleValuesParser;
use clap::{Args, CommandFactory, Parser, Subcommand, ValueEnum};

use spinney_voice::{LANGUAGES, Tongue};

pub(crate) use measure::{Measure, MeasureFormat};
pub(crate) use screens::{Open, Pack, Rescue, Unpack};
pub(crate) use sheets::{ComeAlong, Paper, Sheets};
pub(crate) use table::{Rows, Spread, Table};
pub(crate) use wishes::{Hand, Season, Seen, Wishes};

use crate::failure::Failure;
use crate::words::{Text, Words};

mod date;
mod measure;
mod screens;
mod sheets;
mod table;
mod wishes;
mod wrong_use;

/// Reads the command line. **Errors**: help was asked for, or it was used wrongly; that was
/// said, and this is the exit code.
pub(crate) fn read() -> Result<Spinney, ExitCode> {
    let typed: Vec<String> =
        std::env::args_os().map(|word| word.to_string_lossy().into_owned()).collect();
    Spinney::try_parse().map_err(|said| {
        if said.exit_code() == 0 {
            // Help and version quote nobody.
            let _ = said.print();
            return ExitCode::SUCCESS;
        }
        wrong_use::said(&said, &Spinney::command(), &typed).tell(typed_language(&typed))
    })
}

/// The language of a command line that was not understood, if it says one.
fn typed_language(typed: &[String]) -> Tongue {
    let behind = typed.iter().position(|word| word == "--language").map(|at| at + 1);
    let behind = behind.and_then(|at| typed.get(at)).map(String::as_str);
    let joined = typed.iter().find_map(|word| word.strip_prefix("--language="));
    tongue(behind.or(joined).unwrap_or_default())
}

/// A language by its tag.
fn tongue(tag: &str) -> Tongue {
    Tongue::for_person(&[tag.to_owned()])
}

/// The names of all commands.
fn commands() -> Vec<String> {
    let all = Spinney::command();
    all.get_subcommands().map(|command| command.get_name().to_owned()).collect()
}

/// A value that does not fit: what is so, and what to type.
#[derive(Clone, Debug)]
pub(crate) struct Unfit {
    sentence: Words,
    remedy: Words,
}

impl Unfit {
    /// A message, beside which there is a remedy.
    fn new<const N: usize>(
        sentence: &'static str,
        remedy: &'static str,
        texts: [(&'static str, Text); N],
    ) -> Self {
        let remedy = Words::new(remedy, texts.clone());
        Self { sentence: Words::new(sentence, texts), remedy }
    }

    fn of(sentence: Words, remedy: Words) -> Self {
        Self { sentence, remedy }
    }
}

impl From<Unfit> for Failure {
    fn from(unfit: Unfit) -> Self {
        Self::of(unfit.sentence, unfit.remedy).wrongly_used()
    }
}

/// As the reader of options wants it, which shows it to nobody.
impl std::fmt::Display for Unfit {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.sentence.said(Tongue::of_terminal()))
    }
}

impl std::error::Error for Unfit {}

/// From a table of finds to a yes/no key that a nine-year-old can follow.
#[derive(Debug, Parser)]
#[command(
    name = "spinney",
    version,
    after_help = "Examples:\n  \
        spinney                               the screens in your browser, with an invented walk\n  \
        spinney open class4.spinney           the same with your own collection, kept in that file\n  \
        spinney demo                          three invented outings, end to end\n  \
        spinney template finds.xlsx           an empty table to fill in\n  \
        spinney key finds.xlsx --out visit    the best key, its sheets and its phone page\n  \
        spinney check finds.xlsx --key ours.txt\n                                        \
        does the key that we drew work?\n\n\
        Exit codes: 0 done; 1 something failed, or a finding says mend this; 2 used wrongly (an\n\
        option, a file that is not there).\n\n\
        Spinney works on this machine alone: no account, no network, nothing leaves it.\n\
        No key makes anything safe to touch, pick or eat. Local rules and trained people decide."
)]
pub(crate) struct Spinney {
    /// The language of what is said, of the questions, the sheets and the phone page. What people
    /// typed stays as it is; help and files for programs are in English.
    #[arg(long, global = true, value_name = "LANGUAGE", default_value = "en", value_parser = languages())]
    language: String,
    /// None: started by a double-click, or by its name alone; then the screens open.
    #[command(subcommand)]
    pub(crate) verb: Option<Verb>,
}

impl Spinney {
    /// The language of what is said.
    pub(crate) fn tongue(&self) -> Tongue {
        tongue(&self.language)
    }
}

#[derive(Debug, Subcommand)]
pub(crate) enum Verb {
    /// Work on screens in your browser: finds, heaps, table and key.
    Open(Open),
    /// Make keys, sheets and phone pages for the three invented outings that come with it.
    Demo(Demo),
    /// Find the key that takes the fewest questions, and prove it.
    Key(Key),
    /// Ask for a second opinion on a key: does every kind come out where it should?
    Check(Check),
    /// Say for each question why it is asked there, and what others would have cost.
    Explain(Explain),
    /// Look at a table without making a key: what was understood, what is not told apart yet.
    Table(LookAtTable),
    /// Say where a table is weak: what hangs on one column, what to go and look at next.
    Weak(Weak),
    /// Say how single leaves of each kind spread, where to cut between two kinds, and how many more
    /// to measure before you trust that.
    Spread(Spread),
    /// Give doubtful kinds a second place, so that pupils who misread come out right all the
    /// same.
    Forgive(Forgive),
    /// Change last season's key as little as this season's table allows.
    Revise(Revise),
    /// Measure the leaves in scans: blade, stalk, area, each with its ±.
    Measure(Measure),
    /// Write an empty table to fill in, with questions for leaves to start from.
    Template(Template),
    /// Write the page that holds all of Spinney in one file, for machines without it.
    Pocket(Pocket),
    /// Pack a collection into one zip that can be read without this program.
    Pack(Pack),
    /// Make a collection of a packed one.
    Unpack(Unpack),
    /// Save what can be read of a damaged collection into a new file.
    Rescue(Rescue),
}

/// How to answer.
#[derive(Args, Debug)]
pub(crate) struct Answer {
    /// How to answer.
    #[arg(long, value_enum, default_value = "text")]
    pub(crate) format: Format,
    /// Name every pair that hangs on one hard or narrow character, not only the worst three.
    #[arg(long)]
    pub(crate) all_pairs: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Format {
    /// For people.
    Text,
    /// For programs; described in docs/key.schema.json.
    Json,
}

/// The languages that there are.
fn languages() -> PossibleValuesParser {
    LANGUAGES.map(|(tag, _)| tag).into()
}

#[derive(Args, Debug)]
pub(crate) struct Demo {
    /// The folder to write into.
    #[arg(long, value_name = "FOLDER", default_value = "spinney-demo")]
    pub(crate) out: PathBuf,
    #[command(flatten)]
    pub(crate) come_along: ComeAlong,
    /// Write over files that Spinney did not write, or that were changed since.
    #[arg(long)]
    pub(crate) force: bool,
    /// The date at the foot of the sheets, such as "3 October 2026"; today if not given.
    #[arg(long, value_name = "DATE", value_parser = date::read)]
    pub(crate) date: Option<String>,
}

#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
    spinney key finds.csv\n  \
    spinney key finds.xlsx --out visit --paper letter\n  \
    spinney key finds.csv --first \"Is the leaf edge toothed?\"\n  \
    spinney key finds.csv --hand leaf --season autumn --goals no-ruler\n  \
    spinney key finds.csv --out-first \"giant hogweed\" --apart \"hazel, lime\"\n  \
    spinney key - --format json < finds.csv")]
pub(crate) struct Key {
    #[command(flatten)]
    pub(crate) table: Table,
    #[command(flatten)]
    pub(crate) sheets: Sheets,
    #[command(flatten)]
    pub(crate) wishes: Wishes,
    #[command(flatten)]
    pub(crate) answer: Answer,
}

#[derive(Args, Debug)]
#[command(
    after_help = "A key is read as it is written in a handbook, with dots or arrows:\n  \
    1. Is the leaf made of leaflets?  Yes -> 2, No -> 3\n\
    or in paired leads:\n  \
    1  Leaf in one piece ........ 2\n  \
    -  Leaf made of leaflets .... rowan\n\n\
    Examples:\n  \
    spinney check finds.csv --key ours.txt --pupils\n  \
    spinney check finds.csv --key ours.txt --links ours-links.txt\n  \
    spinney check finds.csv --key visit/key.json"
)]
pub(crate) struct Check {
    #[command(flatten)]
    pub(crate) table: Table,
    /// The key: words (numbered questions or paired leads) or our JSON; `-` reads stdin.
    #[arg(long, value_name = "FILE")]
    pub(crate) key: PathBuf,
    /// What the questions mean in the table, where that had to be asked back.
    #[arg(long, value_name = "FILE")]
    pub(crate) links: Option<PathBuf>,
    /// Write how every question was linked into this file, to look over and change.
    #[arg(long, value_name = "FILE")]
    pub(crate) write_links: Option<PathBuf>,
    /// Pupils wrote it: keep their words, praise what is good, never print DRAFT on it.
    #[arg(long)]
    pub(crate) pupils: bool,
    #[command(flatten)]
    pub(crate) sheets: Sheets,
    #[command(flatten)]
    pub(crate) answer: Answer,
}

#[derive(Args, Debug)]
pub(crate) struct Explain {
    #[command(flatten)]
    pub(crate) table: Table,
    #[command(flatten)]
    pub(crate) wishes: Wishes,
    /// How many other questions are named at each place.
    #[arg(long, value_name = "N", default_value_t = 3)]
    pub(crate) alternatives: usize,
    /// How many whole keys are named, the best first.
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub(crate) keys: usize,
    #[command(flatten)]
    pub(crate) answer: Answer,
}

#[derive(Args, Debug)]
pub(crate) struct LookAtTable {
    #[command(flatten)]
    pub(crate) table: Table,
    /// Write the table as four CSV files into this folder.
    #[arg(long, value_name = "FOLDER")]
    pub(crate) out: Option<PathBuf>,
    /// Write over files that Spinney did not write, or that were changed since. Never over what
    /// the command reads.
    #[arg(long)]
    pub(crate) force: bool,
    #[command(flatten)]
    pub(crate) answer: Answer,
}

#[derive(Args, Debug)]
pub(crate) struct Pocket {
    /// The file to write: a name that ends in .html, or `-` for stdout.
    #[arg(value_name = "FILE.html")]
    pub(crate) file: PathBuf,
    /// Write over a file that is there.
    #[arg(long)]
    pub(crate) force: bool,
}

#[derive(Args, Debug)]
pub(crate) struct Template {
    /// The file to write: a name that ends in .xlsx, or `-` for stdout.
    #[arg(value_name = "FILE.xlsx")]
    pub(crate) file: PathBuf,
    /// Write over a file that is there.
    #[arg(long)]
    pub(crate) force: bool,
}

#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
    spinney revise finds.csv --old last-spring.txt\n  \
    spinney revise finds.csv --old visit/key.json --loss 0.5 --out visit-again\n  \
    spinney revise finds.csv --old last-spring.txt --hand leaf --season autumn")]
pub(crate) struct Revise {
    #[command(flatten)]
    pub(crate) table: Table,
    /// Last season's key: words (numbered questions or paired leads) or our JSON; `-` reads
    /// stdin.
    #[arg(long, value_name = "FILE")]
    pub(crate) old: PathBuf,
    /// What its questions mean in the table, where that had to be asked back.
    #[arg(long, value_name = "FILE")]
    pub(crate) links: Option<PathBuf>,
    /// Steps a find that the key may take more than the best one, so that fewer questions
    /// change. 0: the best key, with the fewest changes.
    #[arg(
        long,
        value_name = "STEPS",
        default_value = "0.25",
        value_parser = loss,
        allow_negative_numbers = true
    )]
    pub(crate) loss: spinney_model::Share,
    #[command(flatten)]
    pub(crate) seen: Seen,
    /// How many heaps may be taken apart before the best so far is given.
    #[arg(
        long,
        value_name = "HEAPS",
        default_value_t = spinney_build::Revising::default().budget.heaps
    )]
    pub(crate) budget: u64,
    #[command(flatten)]
    pub(crate) sheets: Sheets,
    #[command(flatten)]
    pub(crate) answer: Answer,
}

#[derive(Args, Debug)]
#[command(
    after_help = "A second place: one kind that is looked for on the wrong side of one question \
    as well.\n\
    How often each question is read right is in the column `read right` of the sheet\n\
    `characters`; where nobody said, 95, 90, 80 of 100 for easy, fair, hard ones.\n\n\
    Examples:\n  \
    spinney forgive finds.csv\n  \
    spinney forgive finds.csv --places 3 --hand leaf --season autumn"
)]
pub(crate) struct Forgive {
    #[command(flatten)]
    pub(crate) table: Table,
    /// How many second places the printed key may have; with fewer, what each would bring.
    #[arg(long, value_name = "N", default_value_t = 2, value_parser = clap::value_parser!(u32).range(0..=3))]
    pub(crate) places: u32,
    #[command(flatten)]
    pub(crate) seen: Seen,
    /// How many heaps may be taken apart for each key before the best so far is given.
    #[arg(long, value_name = "HEAPS", default_value_t = spinney_build::Budget::default().heaps)]
    pub(crate) budget: u64,
    /// How to answer; the JSON is described in docs/forgive.schema.json.
    #[arg(long, value_enum, default_value = "text")]
    pub(crate) format: Format,
}

/// Steps such as `0.25`, `0,5` or `1`.
fn loss(text: &str) -> Result<spinney_model::Share, Unfit> {
    let number =
        text.trim().replace(',', ".").parse::<f64>().map_err(|_| {
            Unfit::new("usage-loss", "usage-loss-remedy", [("text", text.into())])
        })?;
    if !(0.0..=1000.0).contains(&number) {
        return Err(Unfit::new("usage-loss-range", "usage-loss-range-remedy", []));
    }
    Ok(spinney_model::Share::new((number * 1000.0).round() as i128, 1000))
}

#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
    spinney weak finds.csv\n  \
    spinney weak finds.csv --next 30 --all-pairs\n  \
    spinney weak - --format json < finds.csv")]
pub(crate) struct Weak {
    #[command(flatten)]
    pub(crate) table: Table,
    /// How many blank cells are named that are worth a look, the most useful first.
    #[arg(long, value_name = "N", default_value_t = 10)]
    pub(crate) next: usize,
    /// How many steps each of the two searches for the fewest columns may take.
    #[arg(
        long,
        value_name = "STEPS",
        default_value_t = spinney_check::WeakSettings::default().steps
    )]
    pub(crate) budget: u64,
    /// How to answer; the JSON is described in docs/weak.schema.json.
    #[arg(long, value_enum, default_value = "text")]
    pub(crate) format: Format,
    /// Name every pair that cannot be told apart or hangs on one column, not only the first.
    #[arg(long)]
    pub(crate) all_pairs: bool,
}
