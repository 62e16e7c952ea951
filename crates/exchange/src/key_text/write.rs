//! A key as plain text: numbered questions, or paired leads where the wording is leads.
//!
//! From a key and its matrix to text that [`super::read`] reads back as the same key. What
//! the characters mean (the links) is not in the text. Words that would be misread, such as a
//! kind named `2`, stand in quotation marks.

use spinney_model::{Couplet, Destination, Key, Matrix, Wording};

use super::couplets::Gatherer;
use super::destination::tidy;
use crate::link::Links;
use crate::link::names::Names;
use crate::link::quotes;

/// The words between questions and names, which the reader knows in each of these languages.
struct Between {
    yes: &'static str,
    no: &'static str,
    or: &'static str,
}

const ENGLISH: Between = Between { yes: "Yes", no: "No", or: " or " };
const GERMAN: Between = Between { yes: "Ja", no: "Nein", or: " / " };

/// Writes a key as a person would type it.
pub fn write(key: &Key, matrix: &Matrix) -> String {
    write_in("en", key, matrix)
}

/// The same with the answers in the language of this tag: German, or else English.
pub fn write_in(language: &str, key: &Key, matrix: &Matrix) -> String {
    let between = if language == "de" { &GERMAN } else { &ENGLISH };
    let links = Links::default();
    let names = Names::of(matrix, &links);
    let mut text = String::new();
    for couplet in &key.couplets {
        let reads_back = |block: &String| {
            let read = Gatherer::new(block, matrix, &names).gather().0;
            read.couplets.len() == 1 && same(&read.couplets[0], couplet)
        };
        let block = [Marks::None, Marks::Words]
            .into_iter()
            .map(|marks| block(couplet, matrix, marks, between))
            .find(reads_back)
            .unwrap_or_else(|| block(couplet, matrix, Marks::All, between));
        text.push_str(&block);
        text.push('\n');
    }
    text
}

/// Whether two couplets read alike, wherever they stand and whatever they are linked to.
fn same(read: &Couplet, wanted: &Couplet) -> bool {
    read.number == wanted.number
        && read.back == wanted.back
        && read.wording == wanted.wording
        && read.yes == wanted.yes
        && read.no == wanted.no
}

/// What is put in quotation marks, so that it is read as it stands.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Marks {
    None,
    Words,
    All,
}

fn block(couplet: &Couplet, matrix: &Matrix, marks: Marks, between: &Between) -> String {
    let number = couplet.number;
    let back = couplet.back.map_or(String::new(), |back| format!("({back})"));
    let Between { yes: say_yes, no: say_no, or } = between;
    let yes = destination(&couplet.yes, matrix, marks, or);
    let no = destination(&couplet.no, matrix, marks, or);
    let word = |text: &str| if marks == Marks::None { tidy(text) } else { quote(text) };
    match &couplet.wording {
        Wording::Question(text) => {
            format!(
                "{number}{back}. {}\n   {say_yes} → {yes}\n   {say_no} → {no}\n",
                word(text)
            )
        }
        Wording::Leads { yes: first, no: second } => {
            format!("{number}{back} {} … {yes}\n- {} … {no}\n", word(first), word(second))
        }
    }
}

fn destination(destination: &Destination, matrix: &Matrix, marks: Marks, or: &str) -> String {
    let name = |name: &str| if marks == Marks::All { quote(name) } else { tidy(name) };
    match destination {
        Destination::Couplet(number) => number.to_string(),
        Destination::Missing => "?".to_owned(),
        Destination::End(end) => {
            let known = end.taxa.iter().map(|ix| matrix.taxon(*ix).name.as_str());
            let all = known.chain(end.unrecognised.iter().map(String::as_str));
            all.map(name).collect::<Vec<_>>().join(or)
        }
    }
}

fn quote(text: &str) -> String {
    quotes::quote(&tidy(text))
}
