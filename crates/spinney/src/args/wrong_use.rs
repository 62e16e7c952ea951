//! What is wrong with a command line, in our own words: from what the reader of options says to
//! a sentence and something that can be typed.
//!
//! It decides nothing: what is wrong use is for the table of options to say. Where a word may
//! be the name of a file, it looks whether there is one.

use std::error::Error;
use std::path::Path;

use clap::Command;
use clap::error::{ContextKind, ContextValue, ErrorKind};

use super::Unfit;
use crate::failure::Failure;
use crate::near::nearest;

/// What people type for what is called otherwise here.
const OTHER_WORDS: [(&str, &str); 9] = [
    ("print", "The sheets to print are made by: spinney key finds.csv --out visit"),
    ("pdf", "The sheets to print are made by: spinney key finds.csv --out visit"),
    ("sheets", "The sheets to print are made by: spinney key finds.csv --out visit"),
    ("make", "A key is made by: spinney key finds.csv"),
    ("build", "A key is made by: spinney key finds.csv"),
    ("start", "The screens are opened by: spinney open class4.spinney"),
    ("run", "The screens are opened by: spinney open class4.spinney"),
    ("new", "An empty table is made by: spinney template finds.xlsx"),
    ("save", "A collection is packed by: spinney pack class4.spinney class4.zip"),
];

/// How the commands are typed that take other files than a table.
const WITH_FILES: [(&str, &str); 4] = [
    ("pack", "spinney pack class4.spinney class4.zip"),
    ("unpack", "spinney unpack class4.zip class4.spinney"),
    ("rescue", "spinney rescue class4.spinney class4-saved.spinney"),
    ("template", "spinney template finds.xlsx"),
];

/// What is wrong, and what to type.
pub(super) fn said(error: &clap::Error, all: &Command, typed: &[String]) -> Failure {
    let told = Told { error, all, typed };
    let unfit = match error.kind() {
        ErrorKind::InvalidSubcommand => no_command(&told.text(ContextKind::InvalidSubcommand)),
        ErrorKind::UnknownArgument => told.one_too_many(),
        ErrorKind::MissingRequiredArgument => told.missing(),
        ErrorKind::InvalidValue => told.not_in_the_list(),
        ErrorKind::ValueValidation => told.does_not_fit(),
        ErrorKind::ArgumentConflict => told.not_together(),
        ErrorKind::InvalidUtf8 => Unfit::new(
            "A word of this command is not text that can be read.",
            "Give the file another name, with plain letters, and type that.",
        ),
        _ => Unfit::new("This command was not understood.", told.help()),
    };
    Failure::usage(unfit.sentence, unfit.remedy)
}

/// A word that is no command: a file, another word for one, or a slip.
fn no_command(word: &str) -> Unfit {
    if let Some(typed) = with_a_file(word) {
        return Unfit::new(
            format!("{word} is a file and not a command."),
            format!("Type: {typed}"),
        );
    }
    let sentence = format!("There is no command {word}.");
    let lower = word.to_lowercase();
    if let Some((_, remedy)) = OTHER_WORDS.iter().find(|(other, _)| *other == lower) {
        return Unfit::new(sentence, *remedy);
    }
    let all = super::commands();
    match nearest(word, all.iter().map(String::as_str)) {
        Some(near) => Unfit::new(sentence, format!("Do you mean {near}?")),
        None => Unfit::new(sentence, "For all commands, type: spinney --help"),
    }
}

/// What to type for a file; None: the word is no name of a file.
fn with_a_file(word: &str) -> Option<String> {
    let (_, ending) = word.rsplit_once('.')?;
    let packed = word.strip_suffix(".zip");
    let shown = if word.contains(' ') { format!("\"{word}\"") } else { word.to_owned() };
    Some(match ending.to_lowercase().as_str() {
        "spinney" => format!("spinney open {shown}"),
        "zip" => format!("spinney unpack {shown} {}.spinney", packed.unwrap_or("class4")),
        "csv" | "tsv" | "xlsx" | "xls" | "ods" => format!("spinney key {shown}"),
        "txt" | "json" if Path::new(word).is_file() => {
            format!("spinney check finds.csv --key {shown}")
        }
        _ if Path::new(word).is_file() => format!("spinney key {shown}"),
        _ => return None,
    })
}

/// What the reader of options says, and of which words.
struct Told<'a> {
    error: &'a clap::Error,
    all: &'a Command,
    typed: &'a [String],
}

impl Told<'_> {
    /// What is said of one thing, as text.
    fn text(&self, kind: ContextKind) -> String {
        match self.error.get(kind) {
            Some(ContextValue::String(text)) => text.clone(),
            Some(ContextValue::Strings(texts)) => texts.join(", "),
            Some(other) => other.to_string(),
            None => String::new(),
        }
    }

    /// The option of which it is said, without what stands behind it: `--paper`.
    fn option(&self) -> String {
        let text = self.text(ContextKind::InvalidArg);
        text.split([' ', '=']).next().unwrap_or_default().to_owned()
    }

    /// The command that was typed.
    fn command(&self) -> Option<&Command> {
        self.typed.iter().skip(1).find_map(|word| self.all.find_subcommand(word))
    }

    fn help(&self) -> String {
        match self.command() {
            Some(command) => format!("For help, type: spinney {} --help", command.get_name()),
            None => "For help, type: spinney --help".to_owned(),
        }
    }

    /// A word for which there is no place.
    fn one_too_many(&self) -> Unfit {
        let word = self.text(ContextKind::InvalidArg);
        if word.starts_with(['–', '—', '−']) {
            let bare = word.trim_start_matches(['–', '—', '−', '-']);
            return Unfit::new(
                format!("{word} begins with a long dash."),
                format!("Type two hyphens: --{bare}"),
            );
        }
        if word.starts_with("--") {
            return self.no_option(&word);
        }
        if word.starts_with('-') {
            let whole = self.typed.iter().skip(1).find(|typed| {
                typed.starts_with(&word) && !typed.starts_with("--") && typed.len() > 1
            });
            let whole = whole.map_or(word.as_str(), String::as_str);
            let long = format!("-{whole}");
            let sentence = format!("There is no option {whole}.");
            return match self.options().contains(&long) {
                true => Unfit::new(sentence, format!("Write it with two hyphens: {long}")),
                false => Unfit::new(sentence, self.help()),
            };
        }
        self.no_place_for(&word)
    }

    fn no_option(&self, word: &str) -> Unfit {
        let word = word.split('=').next().unwrap_or_default();
        let command = self.command().map_or("spinney", Command::get_name);
        let others: Vec<String> = self
            .all
            .get_subcommands()
            .filter(|other| options_of(other).iter().any(|known| known == word))
            .map(|other| format!("spinney {}", other.get_name()))
            .collect();
        if let Some(list) = joined(&others) {
            return Unfit::new(
                format!("{command} has no option {word}."),
                format!("It belongs to {list}."),
            );
        }
        let sentence = format!("There is no option {word}.");
        if ["--lang", "--locale"].contains(&word) {
            return Unfit::new(sentence, "Do you mean --language?");
        }
        let options = self.options();
        match nearest(word, options.iter().map(String::as_str)) {
            Some(near) => Unfit::new(sentence, format!("Do you mean {near}?")),
            None => Unfit::new(sentence, self.help()),
        }
    }

    /// The options of the command that was typed, and those of every command.
    fn options(&self) -> Vec<String> {
        let ours = self.command().map(options_of).unwrap_or_default();
        ours.into_iter().chain(options_of(self.all)).collect()
    }

    /// A second file, or words that lost their quotation marks.
    fn no_place_for(&self, word: &str) -> Unfit {
        let at = self.typed.iter().rposition(|typed| typed == word).unwrap_or_default();
        let before = self.typed[..at].iter().rposition(|typed| typed.starts_with("--"));
        if let Some(option) = before.filter(|option| at - option > 1) {
            let rest =
                self.typed[option + 1..].iter().take_while(|typed| !typed.starts_with("--"));
            let text = rest.map(String::as_str).collect::<Vec<_>>().join(" ");
            let option = &self.typed[option];
            return Unfit::new(
                format!("{option} takes one text, and there are spaces in it."),
                format!("Put it in quotation marks: {option} \"{text}\""),
            );
        }
        let command = self.command().map_or("", Command::get_name);
        let first = at.checked_sub(1).map_or("", |at| self.typed[at].as_str());
        if command == "check" && !self.typed.iter().any(|typed| typed.starts_with("--key")) {
            return Unfit::new(
                format!("Two names were given, {first} and {word}."),
                format!(
                    "Put --key before the name of the key: spinney check {first} --key {word}"
                ),
            );
        }
        let whole = format!("{first} {word}");
        let sentence = format!("Two names were given, {first} and {word}.");
        match Path::new(&whole).exists() || !Path::new(word).exists() {
            true => Unfit::new(
                sentence,
                format!("If it is one file, put it in quotation marks: \"{whole}\""),
            ),
            false => {
                Unfit::new(sentence, "Spinney takes one table: copy the rows of both into one.")
            }
        }
    }

    /// Something that must be there and is not.
    fn missing(&self) -> Unfit {
        let missing = match self.error.get(ContextKind::InvalidArg) {
            Some(ContextValue::Strings(all)) => all.first().cloned().unwrap_or_default(),
            _ => self.option(),
        };
        let command = self.command().map_or("key", Command::get_name);
        match missing.split(' ').next().unwrap_or_default() {
            "<TABLE>" => Unfit::new(
                "Which table?",
                format!(
                    "Type its name behind {command}, such as: spinney {command} finds.xlsx"
                ),
            ),
            "--key" => {
                Unfit::new("Which key?", "Add --key and its file, such as: --key ours.txt")
            }
            "--old" => Unfit::new(
                "Which key of last season?",
                "Add --old and its file, such as: --old last-spring.txt",
            ),
            _ => {
                let remedy = match WITH_FILES.iter().find(|(name, _)| *name == command) {
                    Some((_, typed)) => format!("Type its name, such as: {typed}"),
                    None => self.help(),
                };
                Unfit::new("Which file?", remedy)
            }
        }
    }

    /// A value that is none of those that there are, or none at all.
    fn not_in_the_list(&self) -> Unfit {
        let (option, value) = (self.option(), self.text(ContextKind::InvalidValue));
        if value.is_empty() && option.starts_with('<') {
            return Unfit::new(
                "No name of a file was given.",
                "Type the name of the table, such as finds.xlsx.",
            );
        }
        let known = match self.error.get(ContextKind::ValidValue) {
            Some(ContextValue::Strings(known)) => known.clone(),
            _ => Vec::new(),
        };
        let choose = either(&known);
        if value.is_empty() {
            let whole = self.text(ContextKind::InvalidArg);
            let remedy = match whole.rsplit(['<', '>']).nth(1) {
                _ if choose.is_some() => {
                    format!("Choose one and type it: {}.", choose.unwrap_or_default())
                }
                Some("FOLDER") => {
                    format!("Type the name of a folder behind it, such as: {option} visit")
                }
                Some("FILE") => "Type the name of a file behind it.".to_owned(),
                _ => self.help(),
            };
            return Unfit::new(format!("There is nothing behind {option}."), remedy);
        }
        let meant = match value.to_lowercase().as_str() {
            "fall" => Some("autumn"),
            _ => nearest(&value, known.iter().map(String::as_str)),
        };
        let meant = meant.map(|near| format!("Do you mean {near}? ")).unwrap_or_default();
        let choose = choose.map_or_else(|| self.help(), |known| format!("Choose {known}."));
        Unfit::new(format!("{option} does not know {value}."), format!("{meant}{choose}"))
    }

    /// A value that is no number, or too small or too large.
    fn does_not_fit(&self) -> Unfit {
        let (option, value) = (self.option(), self.text(ContextKind::InvalidValue));
        let source = self.error.source();
        if let Some(unfit) = source.and_then(|source| source.downcast_ref::<Unfit>()) {
            return unfit.clone();
        }
        let reason = source.map(ToString::to_string).unwrap_or_default();
        let ends =
            reason.rsplit_once(" is not in ").and_then(|(_, range)| range.split_once("..="));
        if let Some((low, high)) = ends {
            return Unfit::new(
                format!("{option} cannot be {value}."),
                format!(
                    "Type a number from {low} to {} behind {option}, or leave {option} out.",
                    grouped(high)
                ),
            );
        }
        let remedy = match option.as_str() {
            "--port" => "Leave --port out, and a free one is found.".to_owned(),
            _ => format!("Type a figure behind {option}, or leave it out."),
        };
        Unfit::new(format!("{value} is not a whole number that {option} can take."), remedy)
    }

    /// Two options of which only one can be, or one that is there twice.
    fn not_together(&self) -> Unfit {
        let option = self.option();
        let other = self.text(ContextKind::PriorArg);
        let other = other.split([' ', '=', ',']).next().unwrap_or_default();
        if other == option || other.is_empty() {
            return Unfit::new(format!("{option} is there twice."), "Give it once.");
        }
        Unfit::new(
            format!("{option} and {other} cannot be used together."),
            "Leave one of the two out.",
        )
    }
}

/// The options of a command, as they are typed.
fn options_of(command: &Command) -> Vec<String> {
    let long = command.get_arguments().filter_map(|option| option.get_long());
    long.map(|name| format!("--{name}")).collect()
}

/// `a, b or c`
fn either(words: &[String]) -> Option<String> {
    list(words, "or")
}

fn joined(words: &[String]) -> Option<String> {
    list(words, "and")
}

fn list(words: &[String], last: &str) -> Option<String> {
    match words {
        [] => None,
        [one] => Some(one.clone()),
        [before @ .., end] => Some(format!("{} {last} {end}", before.join(", "))),
    }
}

/// `1048576` as `1,048,576`; shorter numbers as they are.
fn grouped(digits: &str) -> String {
    if digits.len() < 6 || !digits.bytes().all(|byte| byte.is_ascii_digit()) {
        return digits.to_owned();
    }
    let first = digits.len() % 3;
    let (start, rest) = digits.split_at(first);
    let rest = rest.as_bytes().chunks(3).map(|three| String::from_utf8_lossy(three));
    let start = Some(start).filter(|start| !start.is_empty()).map(Into::into);
    start.into_iter().chain(rest).collect::<Vec<_>>().join(",")
}
