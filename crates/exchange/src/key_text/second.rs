//! A printed key in two languages, copied as text: the lines in the second are passed over.
//!
//! From a text to the same text with those lines blank, so that the others keep their numbers. A
//! line goes only where it stands beneath what it repeats: a kind's second name beneath its first,
//! a second question beneath a question. A key that is written in the second language alone
//! stays as it is.

use std::borrow::Cow;
use std::collections::BTreeMap;

use spinney_model::Matrix;

use crate::link::names::fold;

/// The text without its lines in the second language.
pub(super) fn without<'t>(text: Cow<'t, str>, matrix: &Matrix) -> Cow<'t, str> {
    if matrix.scene().second_language.is_none() {
        return text;
    }
    let second = Second::of(matrix);
    let mut above = String::new();
    let mut lines = Vec::new();
    for line in text.split('\n') {
        let folded = fold(line);
        if second.repeats(&folded, &above) {
            lines.push("");
            continue;
        }
        if !folded.is_empty() {
            above = line.trim().to_lowercase();
        }
        lines.push(line);
    }
    Cow::Owned(lines.join("\n"))
}

/// What may stand in the second language.
struct Second {
    /// First names by the second, folded; kinds of one second name all count.
    names: BTreeMap<String, Vec<String>>,
    /// Before and behind the gap of a question, folded; a question without a gap has nothing
    /// behind.
    questions: Vec<(String, Option<String>)>,
}

impl Second {
    fn of(matrix: &Matrix) -> Self {
        let mut names: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for taxon in matrix.taxa() {
            let others = taxon.other_names.iter().map(|other| &other.name);
            for second in taxon.second_name.iter().chain(others) {
                names.entry(fold(second)).or_default().push(taxon.name.trim().to_lowercase());
            }
        }
        let columns = matrix.characters().iter();
        let columns = columns.filter_map(|character| character.second_question.as_deref());
        let by_hand = matrix.scene().second_questions.iter().map(|pair| pair.second.as_str());
        let parts = |question: &str| match question.split_once("{}") {
            Some((before, behind)) => (fold(before), Some(fold(behind))),
            None => (fold(question), None),
        };
        let questions = columns.chain(by_hand).map(parts);
        Self { names, questions: questions.filter(|(before, _)| !before.is_empty()).collect() }
    }

    /// Whether a line repeats the line above it.
    fn repeats(&self, line: &str, above: &str) -> bool {
        if line.is_empty() {
            return false;
        }
        let first = line.split(" / ").next().unwrap_or(line);
        let firsts = self.names.get(line).or_else(|| self.names.get(first));
        let named = firsts.is_some_and(|names| names.iter().any(|name| above.contains(name)));
        let asked = || {
            above.contains('?')
                && self.questions.iter().any(|(before, behind)| match behind {
                    None => line == before,
                    Some(behind) => line.starts_with(before) && line.ends_with(behind.as_str()),
                })
        };
        named || asked()
    }
}
