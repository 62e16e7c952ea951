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
use crate::words::{Text, Words};

/// What people type for what is called otherwise here.
const OTHER_WORDS: [(&str, &str); 9] = [
    ("print", "usage-print"),
    ("pdf", "usage-print"),
    ("sheets", "usage-print"),
    ("make", "usage-make"),
    ("build", "usage-make"),
    ("start", "usage-start"),
    ("run", "usage-start"),
    ("new", "usage-new"),
    ("save", "usage-save"),
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
        ErrorKind::InvalidUtf8 => Unfit::new("usage-unreadable", "usage-unreadable-remedy", []),
        _ => Unfit::of(Words::of("usage-not-understood"), told.help()),
    };
    unfit.into()
}

/// A word that is no command: a file, another word for one, or a slip.
fn no_command(word: &str) -> Unfit {
    if let Some(typed) = with_a_file(word) {
        let texts = [("file", word.into()), ("typed", typed.into())];
        return Unfit::new("usage-file-no-command", "usage-type", texts);
    }
    let lower = word.to_lowercase();
    let other = OTHER_WORDS.iter().find(|(other, _)| *other == lower);
    let all = super::commands();
    let remedy = match (other, nearest(word, all.iter().map(String::as_str))) {
        (Some((_, remedy)), _) => Words::of(remedy),
        (None, Some(near)) => mean(near),
        (None, None) => Words::of("usage-all-commands"),
    };
    Unfit::of(Words::new("usage-no-command", [("word", word.into())]), remedy)
}

/// `Do you mean --paper?`
fn mean(near: &str) -> Words {
    Words::new("failure-mean", [("meant", near.into())])
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

    fn help(&self) -> Words {
        let typed = match self.command() {
            Some(command) => format!("spinney {} --help", command.get_name()),
            None => "spinney --help".to_owned(),
        };
        Words::new("usage-help", [("typed", typed.into())])
    }

    /// A word for which there is no place.
    fn one_too_many(&self) -> Unfit {
        let word = self.text(ContextKind::InvalidArg);
        if word.starts_with(['–', '—', '−']) {
            let bare = word.trim_start_matches(['–', '—', '−', '-']);
            let texts = [("word", (&*word).into()), ("bare", bare.into())];
            return Unfit::new("usage-long-dash", "usage-long-dash-remedy", texts);
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
            let remedy = match self.options().contains(&long) {
                true => Words::new("usage-two-hyphens", [("option", long.into())]),
                false => self.help(),
            };
            return Unfit::of(no_such_option(whole), remedy);
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
        if !others.is_empty() {
            let texts = [
                ("command", command.into()),
                ("option", word.into()),
                ("commands", Text::All(others)),
            ];
            return Unfit::new("usage-other-command", "usage-other-command-remedy", texts);
        }
        let options = self.options();
        let remedy = match nearest(word, options.iter().map(String::as_str)) {
            _ if ["--lang", "--locale"].contains(&word) => mean("--language"),
            Some(near) => mean(near),
            None => self.help(),
        };
        Unfit::of(no_such_option(word), remedy)
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
            let texts = [("option", (&*self.typed[option]).into()), ("text", text.into())];
            return Unfit::new("usage-spaces", "usage-spaces-remedy", texts);
        }
        let command = self.command().map_or("", Command::get_name);
        let first = at.checked_sub(1).map_or("", |at| self.typed[at].as_str());
        let whole = format!("{first} {word}");
        let no_key = !self.typed.iter().any(|typed| typed.starts_with("--key"));
        let remedy = if command == "check" && no_key {
            "usage-key-before"
        } else if Path::new(&whole).exists() || !Path::new(word).exists() {
            "usage-one-file"
        } else {
            "usage-one-table"
        };
        let texts = [("first", first.into()), ("word", word.into()), ("file", whole.into())];
        Unfit::new("usage-two-names", remedy, texts)
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
                "usage-which-table",
                "usage-which-table-remedy",
                [("command", command.into())],
            ),
            "--key" => Unfit::new("usage-which-key", "usage-which-key-remedy", []),
            "--old" => Unfit::new("usage-which-old", "usage-which-old-remedy", []),
            _ => {
                let remedy = match WITH_FILES.iter().find(|(name, _)| *name == command) {
                    Some((_, typed)) => {
                        Words::new("usage-type-name", [("typed", (*typed).into())])
                    }
                    None => self.help(),
                };
                Unfit::of(Words::of("usage-which-file"), remedy)
            }
        }
    }

    /// A value that is none of those that there are, or none at all.
    fn not_in_the_list(&self) -> Unfit {
        let (option, value) = (self.option(), self.text(ContextKind::InvalidValue));
        if value.is_empty() && option.starts_with('<') {
            return Unfit::new("usage-no-name", "usage-no-name-remedy", []);
        }
        let known = match self.error.get(ContextKind::ValidValue) {
            Some(ContextValue::Strings(known)) => known.clone(),
            _ => Vec::new(),
        };
        let typed = || ("option", (&*option).into());
        if value.is_empty() {
            let whole = self.text(ContextKind::InvalidArg);
            let remedy = match whole.rsplit(['<', '>']).nth(1) {
                _ if !known.is_empty() => {
                    Words::new("usage-choose-and-type", [("known", Text::Any(known))])
                }
                Some("FOLDER") => Words::new("usage-type-folder", [typed()]),
                Some("FILE") => Words::of("usage-type-file"),
                _ => self.help(),
            };
            return Unfit::of(Words::new("usage-nothing-behind", [typed()]), remedy);
        }
        let meant = match value.to_lowercase().as_str() {
            "fall" => Some("autumn"),
            _ => nearest(&value, known.iter().map(String::as_str)),
        };
        let all = ("known", Text::Any(known.clone()));
        let remedy = match meant {
            _ if known.is_empty() => self.help(),
            Some(near) => Words::new("usage-mean-or-choose", [("near", near.into()), all]),
            None => Words::new("usage-choose", [all]),
        };
        let value = ("value", (&*value).into());
        Unfit::of(Words::new("usage-unknown-value", [typed(), value]), remedy)
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
        let option_and_value = || [("option", (&*option).into()), ("value", (&*value).into())];
        if let Some((low, high)) = ends {
            let [option, value] = option_and_value();
            let range = [("low", low.into()), ("high", Text::Whole(high.to_owned()))];
            let [low, high] = range;
            let texts = [option, value, low, high];
            return Unfit::new("usage-cannot-be", "usage-cannot-be-remedy", texts);
        }
        let remedy = match option.as_str() {
            "--port" => "usage-port-out",
            _ => "usage-type-figure",
        };
        Unfit::new("usage-no-whole-number", remedy, option_and_value())
    }

    /// Two options of which only one can be, or one that is there twice.
    fn not_together(&self) -> Unfit {
        let option = self.option();
        let other = self.text(ContextKind::PriorArg);
        let other = other.split([' ', '=', ',']).next().unwrap_or_default();
        let typed = ("option", (&*option).into());
        if other == option || other.is_empty() {
            return Unfit::new("usage-twice", "usage-twice-remedy", [typed]);
        }
        let texts = [typed, ("other", other.into())];
        Unfit::new("usage-not-together", "usage-not-together-remedy", texts)
    }
}

fn no_such_option(option: &str) -> Words {
    Words::new("usage-no-option", [("option", option.into())])
}

/// The options of a command, as they are typed.
fn options_of(command: &Command) -> Vec<String> {
    let long = command.get_arguments().filter_map(|option| option.get_long());
    long.map(|name| format!("--{name}")).collect()
}
