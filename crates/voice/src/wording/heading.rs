//! A heading as somebody typed it, made ready for a sentence.
//!
//! From `Leaf_edge`, `Spines (yes/no)` or `stalk length in mm` to the words that say what it is
//! about. In a table of leaves `edge` is the leaf edge. It makes no sentence.

use spinney_model::{Matrix, Scale, UNITS, WrittenIn};

use super::grammar::{front, is_joint, is_noun, lower};

/// Endings that say only how a column is filled in.
const FILLED_IN: [&str; 6] = [" y/n", " yes/no", " yes or no", "?", ":", " -"];

/// Spellings of units that are words of their own: a heading that ends in one, without brackets,
/// may be about feet, or about what a thing lives in.
const OTHER_WORDS: [&str; 4] = ["in", "ins", "foot", "feet"];

/// Words in brackets that say that a column is counted.
const COUNTED: [&str; 4] = ["number", "how many", "count", "no."];

/// A heading in small letters, without marks and without what says how it is filled in.
pub(super) fn clean(name: &str) -> String {
    bare(lower(&spaced(name)))
}

/// The same with the capitals of its own, as German needs them; a heading all in capitals is in
/// small letters.
pub(super) fn clean_as_written(name: &str) -> String {
    let spaced = spaced(name);
    let shouted = !spaced.chars().any(char::is_lowercase);
    bare(if shouted { lower(&spaced) } else { spaced })
}

fn spaced(name: &str) -> String {
    let spaced = name.replace('_', " ");
    spaced.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Without what says how it is filled in.
fn bare(mut text: String) -> String {
    loop {
        let bracket = bracket(&text).filter(|(_, inside)| {
            matches!(*inside, "y/n" | "yes/no" | "yes or no" | "tick" | "ticked")
        });
        let shorter = bracket.map(|(before, _)| before.to_string()).or_else(|| {
            FILLED_IN.iter().find_map(|end| text.strip_suffix(end)).map(str::to_string)
        });
        match shorter {
            Some(shorter) if !shorter.trim().is_empty() => text = shorter.trim().to_string(),
            _ => return text,
        }
    }
}

/// A cleaned heading without a remark in brackets: `edge (look closely)`.
pub(super) fn without_remark(cleaned: &str) -> &str {
    bracket(cleaned).map_or(cleaned, |(before, _)| before)
}

/// A cleaned heading of a count without what says that it is counted; None: nothing says so.
pub(super) fn counted(cleaned: &str) -> Option<&str> {
    if let Some((before, inside)) = bracket(cleaned)
        && COUNTED.contains(&inside)
    {
        return Some(before);
    }
    let starts = ["number of ", "no. of ", "no of ", "count of ", "how many ", "# of ", "# "];
    let rest = starts.iter().find_map(|start| cleaned.strip_prefix(start))?;
    let ends = [" does it have", " has it got", " are there", " it has"];
    let rest = ends.iter().find_map(|end| rest.strip_suffix(end)).unwrap_or(rest);
    Some(rest.strip_prefix("the ").unwrap_or(rest))
}

/// A cleaned heading of a measure without its unit: `length (mm)`, `length in cm`.
pub(super) fn without_unit(cleaned: &str) -> &str {
    if let Some((before, inside)) = bracket(cleaned) {
        let unit = ["in ", "en "].iter().find_map(|word| inside.strip_prefix(word));
        if WrittenIn::spelt(unit.unwrap_or(inside)).is_some() {
            return before;
        }
    }
    let behind = |unit: &&str| {
        let before = cleaned.strip_suffix(*unit)?.strip_suffix(' ')?;
        let before = ["in", "en"]
            .iter()
            .find_map(|word| before.strip_suffix(word)?.strip_suffix(' '))
            .unwrap_or(before);
        let before = before.trim_end_matches(['/', ',', '-', ' ']);
        (unit.chars().count() > 1 && !OTHER_WORDS.contains(unit) && !before.is_empty())
            .then_some(before)
    };
    let spelt = UNITS.iter().flat_map(|row| row.spelt);
    spelt.into_iter().find_map(behind).unwrap_or(cleaned)
}

/// What stands before a bracket at the end, and in it.
fn bracket(text: &str) -> Option<(&str, &str)> {
    let open = text.rfind([' ', '-']).map(|_| text.rfind(['(', '[']))??;
    let inside = text[open + 1..].strip_suffix([')', ']'])?;
    let before = text[..open].trim_end();
    (!before.is_empty()).then_some((before, inside.trim()))
}

/// "The" before the thing behind `of`, `on` or `in`: `edge of the leaf`, `spots on the wings`.
pub(super) fn with_articles(name: &str) -> String {
    let words: Vec<&str> = name.split(' ').collect();
    let head = front(name).rsplit(' ').next().unwrap_or_default();
    let amount = matches!(head, "pair" | "pairs" | "row" | "rows" | "bunch" | "group" | "sort");
    let mut found: Vec<&str> = Vec::with_capacity(words.len() + 1);
    for (at, word) in words.iter().enumerate() {
        let before = at.checked_sub(1).map_or("", |at| words[at]);
        let joins = matches!(before, "of" | "on" | "in" | "at" | "under") && !amount;
        let thing = words[at..].iter().take_while(|word| !is_joint(word)).last();
        if at > 1 && joins && thing.is_some_and(|thing| is_noun(thing)) && !determined(word) {
            found.push("the");
        }
        found.push(word);
    }
    found.join(" ")
}

/// Whether nobody would miss an article in a name: `stripes on back` has none before a word that
/// is not known.
pub(super) fn reads_well(name: &str) -> bool {
    let words: Vec<&str> = name.split(' ').collect();
    words.windows(2).enumerate().all(|(at, pair)| {
        let place = matches!(pair[0], "on" | "at" | "under" | "of");
        let thing = words[at + 1..].iter().take_while(|word| !is_joint(word)).last();
        !place || determined(pair[1]) || thing.is_some_and(|thing| is_noun(thing))
    })
}

/// Whether a name ends where a thing should follow: `needles in bundles of`. `hairs below` needs
/// nothing more.
pub(super) fn hangs(name: &str) -> bool {
    let adverb = |word: &str| {
        matches!(
            word,
            "above" | "below" | "underneath" | "inside" | "outside" | "around" | "round"
        )
    };
    let last = name.rsplit(' ').next().unwrap_or_default();
    is_joint(last) && !adverb(last)
}

fn determined(word: &str) -> bool {
    ["the", "a", "an", "each", "every", "both", "its", "their", "one", "all", "two", "three"]
        .contains(&word)
}

/// A part's full name: in a table about leaves `edge` is the leaf edge, and the place on the
/// twig is said of the leaves themselves.
pub(super) fn whole_name(matrix: &Matrix, part: &str) -> String {
    match part {
        "edge" | "margin" | "stalk" | "blade" if speaks_of_leaves(matrix) => {
            format!("leaf {part}")
        }
        "place on the twig"
        | "arrangement on the twig"
        | "arrangement"
        | "leaf arrangement"
            if speaks_of_leaves(matrix) =>
        {
            "leaves".to_string()
        }
        _ => part.to_string(),
    }
}

/// What only animals have or do: such a table is never about leaves.
const ANIMAL: [&str; 8] = ["leg", "antenna", "feeler", "gill", "fin", "claw", "swim", "crawl"];
/// Other things than leaves; in a table of leaves they are said beside a leaf.
const BESIDE: [&str; 12] = [
    "tail", "shell", "body", "mouth", "wing", "seed", "fruit", "cone", "nut", "bud", "bark",
    "trunk",
];
/// What is said of a leaf's outline alone.
const OUTLINE: [&str; 15] = [
    "toothed",
    "lobed",
    "unlobed",
    "serrate",
    "double-toothed",
    "pinnate",
    "palmate",
    "gezähnt",
    "gesägt",
    "gekerbt",
    "ganzrandig",
    "gelappt",
    "ungelappt",
    "gefiedert",
    "gefingert",
];

/// Whether a table names leaves, so that `edge` is the leaf edge and there is a box to stick one
/// into.
pub fn speaks_of_leaves(matrix: &Matrix) -> bool {
    named(matrix, &[]).unwrap_or_else(|| {
        let scene = matrix.scene();
        // The starter's own column says where the leaves are.
        headings(matrix).any(|name| lower(name.trim()) == "place on the twig")
            || scene.part.iter().chain(&scene.title).any(|text| names_a_leaf(text))
    })
}

/// Whether "tip" and "opposite" are said of leaves: in the table, or in these questions of a key.
/// A column of edges that are toothed or lobed is about leaves, though it does not say so.
pub fn about_leaves<'t>(
    matrix: &'t Matrix,
    questions: impl IntoIterator<Item = &'t str>,
) -> bool {
    let questions: Vec<&str> = questions.into_iter().collect();
    let outline = || {
        matrix.characters().iter().any(|character| match &character.scale {
            Scale::Words { states } => {
                states.iter().any(|state| OUTLINE.contains(&lower(state).as_str()))
            }
            _ => false,
        })
    };
    let animal = headings(matrix).chain(questions.iter().copied()).any(is_of_an_animal);
    named(matrix, &questions) == Some(true)
        || !animal && (outline() || speaks_of_leaves(matrix))
}

/// Whether headings or questions name leaves. None: they name nothing that tells.
fn named(matrix: &Matrix, questions: &[&str]) -> Option<bool> {
    let said = || headings(matrix).chain(questions.iter().copied());
    if said().any(is_of_an_animal) {
        return Some(false);
    }
    if said().any(names_a_leaf) {
        return Some(true);
    }
    said().any(|text| says(text, &BESIDE, true)).then_some(false)
}

fn headings(matrix: &Matrix) -> impl Iterator<Item = &str> {
    matrix.characters().iter().map(|character| character.name.as_str())
}

fn is_of_an_animal(text: &str) -> bool {
    says(text, &ANIMAL, true)
}

/// Whether a text names a leaf, and not only what looks like one or what one leaves behind.
fn names_a_leaf(text: &str) -> bool {
    let mut text = format!(" {} ", lower(text));
    for other in ["like a leaf", "like leaves", "leaf-like", "leaf scar", "leaf litter"] {
        text = text.replace(other, " ");
    }
    const NAMES: [&str; 5] = ["leaf", "leaves", "leaflet", "leaflets", "petiole"];
    // `Blattrand`, `Blätter`, `Blättchen`; a greenfly and a leaf scar are none.
    let german = |word: &str| {
        let leaf = word.starts_with("blatt") || word.starts_with("blätt");
        let others = ["blattlaus", "blattläuse", "blattwanze", "blattkäfer", "blattnarbe"];
        leaf && !others.contains(&word)
    };
    says(&text, &NAMES, false) || text.split(|c: char| !c.is_alphabetic()).any(german)
}

/// Whether a text has one of these words, or their plurals.
fn says(text: &str, words: &[&str], plural: bool) -> bool {
    let in_words = lower(text);
    in_words.split(|c: char| !c.is_alphabetic()).any(|word| {
        let one = if plural { word.strip_suffix('s').unwrap_or(word) } else { word };
        words.contains(&word) || words.contains(&one)
    })
}
