//! Sentences made from a table's own words: every column with every way to ask that people have.

use spinney_model::{Matrix, Scale, Unit};

/// Ways to ask for a state `S` of a column `C`; `T` is the next state.
const STATES: [&str; 14] = [
    "Is the C S?",
    "Is it S?",
    "Is the C not S?",
    "Isn't the C S?",
    "Is the C S or T?",
    "Is the C S and T?",
    "Is the C either S or T?",
    "Is the C neither S nor T?",
    "Is the C S, not T?",
    "C: S?",
    "The C is very S",
    "Has it got a S C?",
    "Is the C more S than T?",
    "Is the C S with red spots?",
];

/// Ways to ask for a yes or no column `C`.
const WHETHER: [&str; 8] = [
    "C?",
    "Is it C?",
    "Is it not C?",
    "Is there a C?",
    "Has it no C?",
    "Is it without C?",
    "Does it have C or not?",
    "Is it C and green?",
];

/// Ways to ask for a count.
const COUNTS: [&str; 24] = [
    "Are there 5 C?",
    "Are there exactly 5 C?",
    "Are there more than 5 C?",
    "Are there at least five C?",
    "Are there 5 or more C?",
    "Are there 5 C or more?",
    "Are there fewer than 5 C?",
    "Are there 5 C or fewer?",
    "Are there at most 5 C?",
    "Are there no more than 5 C?",
    "Are there not fewer than 5 C?",
    "Are there up to 5 C?",
    "Are there over 5 C?",
    "Are there under 5 C?",
    "Are there 5+ C?",
    "Are there > 5 C?",
    "Are there 5 or 6 C?",
    "Are there 5-6 C?",
    "Are there between 5 and 8 C?",
    "Are there 5.5 C or more?",
    "Are there 5 cm of C?",
    "Are there no C?",
    "Are there many C?",
    "C: 5 or more?",
];

/// Ways to ask for a measure.
const MEASURES: [&str; 24] = [
    "Is the C more than 25 U?",
    "Is the C more than 2.5 V?",
    "Is the C more than 25?",
    "Is the C at least 2,5 V?",
    "Is the C 25 U or more?",
    "Is the C 25 U or less?",
    "Is the C less than 25 U?",
    "Is the C at most 25 U?",
    "Is the C not more than 25 U?",
    "Is the C not less than 25 U?",
    "Is the C up to 25 U?",
    "Is the C over 25U?",
    "Is the C under 25 U?",
    "Is the C ≥ 25 U?",
    "Is the C <= 25 U?",
    "Is the C exactly 25 U?",
    "Is the C between 2 and 3 V?",
    "Is the C 2-3 V?",
    "Is the C more than one inch?",
    "Is the C more than 25 g?",
    "Is the C more than half a V?",
    "Is the C more than two and a half V?",
    "Is the C more than 25 U and red?",
    "C: 25 U or more?",
];

/// Every column of a table with every way.
pub(crate) fn all(matrix: &Matrix) -> Vec<String> {
    let mut all = Vec::new();
    for column in matrix.characters() {
        let name = &column.name;
        let put = |way: &str| way.replace('C', name).replace(['U', 'V'], "");
        match &column.scale {
            Scale::Words { states } if ["yes", "ja"].contains(&states[0].as_str()) => {
                all.extend(WHETHER.map(put));
            }
            Scale::Words { states } => {
                for (at, state) in states.iter().enumerate() {
                    let next = &states[(at + 1) % states.len()];
                    let put = |way: &&str| {
                        let words = way.split_inclusive(|sign: char| !sign.is_alphabetic());
                        let word = |word: &str| match word
                            .trim_end_matches(|c: char| !c.is_alphabetic())
                        {
                            "C" => word.replacen('C', name, 1),
                            "S" => word.replacen('S', state, 1),
                            "T" => word.replacen('T', next, 1),
                            _ => word.to_owned(),
                        };
                        words.map(word).collect::<String>()
                    };
                    // All ways for the first, the plain ones for the others.
                    let ways = if at == 0 { STATES.len() } else { 5 };
                    all.extend(STATES[..ways].iter().map(put));
                }
            }
            Scale::Counts => {
                let counted = name.trim_start_matches("number of ");
                let counted = counted.trim_start_matches("Anzahl ");
                all.extend(COUNTS.map(|way| way.replace('C', counted)));
            }
            Scale::Measure { unit: Unit::Millimetres, .. } => {
                let put =
                    |way: &str| way.replace('U', "mm").replace('V', "cm").replace('C', name);
                all.extend(MEASURES.map(put));
            }
            Scale::Measure { .. } => all.extend(MEASURES[..4].iter().map(|way| put(way))),
        }
    }
    all
}
