//! Writes a matrix as separated values, so that reading it gives the same matrix.
//!
//! From a matrix to the texts of four sheets, as RFC 4180 (2005) has them. Names that differ
//! only in capitals or spaces cannot both come back: in a table people cannot tell them apart
//! either.

use num_traits::{CheckedMul, ToPrimitive};
use spinney_model::{
    Cell, Character, Difficulty, InSecond, Matrix, OtherName, Quantity, Scale, Seen, Share,
    StateIx, Taxon, Unit, Value, WrittenIn,
};

use super::cell_text::{Part, What, understand};
use super::columns::{CHARACTERS, KINDS};
use super::kinds_sheet::is_language;
use super::phrase::{fold, quote};
use super::separated::needs_apostrophe;
use super::{Sheets, about_sheet, ratios};

/// What is written above the names of the kinds.
pub(super) const KIND: &str = "kind";

/// Writes the four sheets of a matrix.
pub(super) fn write(matrix: &Matrix) -> Sheets {
    Sheets {
        table: table(matrix),
        characters: characters(matrix),
        kinds: kinds(matrix),
        about: about(matrix),
    }
}

fn table(matrix: &Matrix) -> String {
    let names = matrix.characters().iter().map(|character| character.name.clone());
    let mut rows = vec![std::iter::once(KIND.to_owned()).chain(names).collect::<Vec<_>>()];
    for taxon in matrix.taxon_indices() {
        let mut row = vec![matrix.taxon(taxon).name.clone()];
        for character in matrix.character_indices() {
            let scale = &matrix.character(character).scale;
            let cell = matrix.cell(taxon, character);
            // What reading works out again stays blank, so that it follows its two lengths.
            let value = |at| &matrix.cell(taxon, at).value;
            let worked_out = matrix.character(character).ratio_of.is_some()
                && cell.seen.is_none()
                && cell.value == ratios::worked_out(matrix.characters(), character, value);
            row.push(if worked_out { String::new() } else { cell_text(cell, scale) });
        }
        rows.push(row);
    }
    separated(rows)
}

/// RFC 4180, with an apostrophe before what a spreadsheet might calculate.
///
/// Where a text holds another sign that parts cells elsewhere, everything is quoted, so that
/// nobody has to guess which of them parts cells here.
pub(super) fn separated(rows: Vec<Vec<String>>) -> String {
    let other = rows.iter().flatten().any(|field| field.contains([';', '\t']));
    let quotes = if other { csv::QuoteStyle::Always } else { csv::QuoteStyle::Necessary };
    let terminator = csv::Terminator::CRLF;
    let mut writer = csv::WriterBuilder::new()
        .terminator(terminator)
        .flexible(true)
        .quote_style(quotes)
        .from_writer(Vec::new());
    for row in rows {
        let fields = row
            .into_iter()
            .map(|field| if needs_apostrophe(&field) { format!("'{field}") } else { field });
        writer.write_record(fields).expect("writing into memory does not fail");
    }
    let bytes = writer.into_inner().expect("writing into memory does not fail");
    String::from_utf8(bytes).expect("text in, text out")
}

/// A cell as a person would type it.
pub(crate) fn cell_text(cell: &Cell, scale: &Scale) -> String {
    let text = match (&cell.value, scale) {
        (Value::Unknown, _) => no_state(&["?", "unknown", "not known"], scale),
        (Value::DoesNotApply, _) => no_state(&["n/a", "does not apply", "n.a."], scale),
        (Value::States(shares), Scale::Words { states }) => {
            let name = |state: &StateIx| word(&states[state.0]);
            return alternatives(shares, name, " ", cell.seen);
        }
        (Value::Counts(shares), _) => {
            return alternatives(shares, ToString::to_string, ": ", cell.seen);
        }
        (Value::Range { low, high }, Scale::Measure { unit, .. }) => range(*low, *high, *unit),
        _ => unreachable!("a matrix holds only cells that fit their columns"),
    };
    text + &seen_text(cell.seen)
}

/// The first of some texts that mean the same and is not what a state is called.
fn no_state(texts: &[&str], scale: &Scale) -> String {
    let is_state = |text: &str| match scale {
        Scale::Words { states } => states.iter().any(|state| fold(state) == text),
        _ => false,
    };
    let free = texts.iter().find(|text| !is_state(text)).unwrap_or(&texts[0]);
    (*free).to_owned()
}

fn seen_text(seen: Option<Seen>) -> String {
    match seen {
        None => String::new(),
        Some(Seen { on, plants: None }) => format!(" ({on} seen)"),
        Some(Seen { on, plants: Some(1) }) => format!(" ({on} seen on 1 plant)"),
        Some(Seen { on, plants: Some(plants) }) => format!(" ({on} seen on {plants} plants)"),
    }
}

fn range(low: Quantity, high: Quantity, unit: Unit) -> String {
    let sign = unit.sign();
    let space = if sign.is_empty() { "" } else { " " };
    if low == high {
        format!("{low}{space}{sign}")
    } else if low < Quantity::ZERO {
        format!("{low} to {high}{space}{sign}")
    } else {
        format!("{low}-{high}{space}{sign}")
    }
}

/// `lobed or entire` for equal shares, `lobed 8, entire 2` for counts, else fractions.
fn alternatives<T>(
    shares: &[(T, Share)],
    name: impl Fn(&T) -> String,
    before_count: &str,
    seen: Option<Seen>,
) -> String {
    let with = |count: &dyn Fn(Share) -> String| {
        let part = |(item, share): &(T, Share)| {
            format!("{}{before_count}{}", name(item), count(*share))
        };
        shares.iter().map(part).collect::<Vec<_>>().join(", ")
    };
    let count = |seen: Seen| {
        let whole = Share::from_integer(seen.on.into());
        let whole_each =
            seen.on > 0 && shares.iter().all(|(_, share)| (share * whole).is_integer());
        whole_each.then(|| with(&|share| (share * whole).to_integer().to_string()))
    };
    if let Some(text) = seen.and_then(count) {
        // Counts say themselves on how many, and not of how many plants.
        let plants = seen.filter(|seen| seen.plants.is_some());
        return text + &seen_text(plants);
    }
    let equal = shares.iter().all(|(_, share)| *share == shares[0].1);
    let text = if equal {
        shares.iter().map(|(item, _)| name(item)).collect::<Vec<_>>().join(" or ")
    } else {
        with(&|share| format!("{}/{}", share.numer(), share.denom()))
    };
    text + &seen_text(seen)
}

/// A state, between quotation marks if it would be read as something else.
pub(crate) fn word(state: &str) -> String {
    let plain = |typed: &What| match typed {
        What::Words(parts) => *parts == [Part { item: state.to_owned(), share: None }],
        _ => false,
    };
    let alone = understand(state, "");
    let plain = alone.is_ok_and(|typed| typed.seen.is_none() && plain(&typed.what));
    // A bracket may be taken for `(8 seen)`, a sign at the end for a count.
    let signs = state.contains(['"', '(', ')', ':', '=', '×', ';', ',']);
    if plain && !signs { state.to_owned() } else { quote(state) }
}

fn characters(matrix: &Matrix) -> String {
    let mut rows = vec![usual(CHARACTERS.iter().map(|column| column.headings))];
    rows.extend(matrix.characters().iter().map(|character| {
        CHARACTERS.iter().map(|column| (column.write)(character, matrix)).collect()
    }));
    separated(rows)
}

fn usual<'n>(headings: impl Iterator<Item = &'n [&'n str]>) -> Vec<String> {
    headings.map(|names| names[0].to_owned()).collect()
}

pub(super) fn joined<'w>(words: impl Iterator<Item = &'w str>, between: &str) -> String {
    words.collect::<Vec<_>>().join(between)
}

pub(super) fn values(character: &Character) -> &'static str {
    match character.scale {
        Scale::Words { .. } => "words",
        Scale::Counts => "counts",
        Scale::Measure { .. } => "measure",
    }
}

pub(super) fn states(character: &Character) -> String {
    match &character.scale {
        Scale::Words { states } => {
            states.iter().map(|state| word(state)).collect::<Vec<_>>().join("; ")
        }
        Scale::Counts | Scale::Measure { .. } => String::new(),
    }
}

pub(super) fn unit(character: &Character) -> &'static str {
    match character.scale {
        Scale::Words { .. } | Scale::Counts => "",
        Scale::Measure { unit: Unit::Unstated, .. } => "none",
        Scale::Measure { unit: Unit::Ratio, .. } => "ratio",
        // What its numbers are written in for people is said here and nowhere else.
        Scale::Measure { unit, .. } => {
            character.written_in.map_or(unit.sign(), WrittenIn::sign)
        }
    }
}

pub(super) fn gap(character: &Character) -> String {
    match character.scale {
        Scale::Words { .. } | Scale::Counts => String::new(),
        Scale::Measure { unit, gap } => range(gap, gap, unit),
    }
}

pub(super) fn difficulty(character: &Character) -> &'static str {
    match character.difficulty {
        Difficulty::Easy => "easy",
        Difficulty::Fair => "fair",
        Difficulty::Hard => "hard",
    }
}

pub(super) fn terms(character: &Character) -> String {
    character.terms.iter().map(|term| plain_or_quoted(term)).collect::<Vec<_>>().join("; ")
}

/// `90; holly 60`
pub(super) fn read_right(character: &Character, matrix: &Matrix) -> String {
    let usual = character.read_right.map(|percent| percent.to_string());
    let of = character.read_right_of.iter().map(|(taxon, percent)| {
        format!("{} {percent}", plain_or_quoted(&matrix.taxon(*taxon).name))
    });
    usual.into_iter().chain(of).collect::<Vec<_>>().join("; ")
}

/// `stalk length / blade length`
pub(super) fn ratio_of(character: &Character, matrix: &Matrix) -> String {
    let name = |at| plain_or_quoted(&matrix.character(at).name);
    match character.ratio_of {
        Some((one, other)) => format!("{} / {}", name(one), name(other)),
        None => String::new(),
    }
}

/// `toothed = ząbkowany`; only the text where nobody gave the other.
/// What stands `apart` from the next pair is put between quotation marks, if a text has it too.
pub(super) fn in_second(pair: &InSecond, apart: &[char]) -> String {
    let side = |text: &str| {
        let words = text.split_whitespace().collect::<Vec<_>>().join(" ");
        let plain = words == text && !text.contains(['"', '=']) && !text.contains(apart);
        if plain { text.to_owned() } else { quote(text) }
    };
    match pair.second.as_str() {
        "" => side(&pair.text),
        second => format!("{} = {}", side(&pair.text), side(second)),
    }
}

/// `toothed = ząbkowany; smooth = gładki`
pub(super) fn in_second_listed(pairs: &[InSecond]) -> String {
    pairs.iter().map(|pair| in_second(pair, &[';', ','])).collect::<Vec<_>>().join("; ")
}

/// A text of words and single spaces as it is, everything else between quotation marks.
fn plain_or_quoted(text: &str) -> String {
    let words = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let letters = text.chars().all(|sign| sign.is_alphabetic() || sign == ' ');
    if letters && words == text && text != "none" { text.to_owned() } else { quote(text) }
}

pub(super) fn applies_when(character: &Character, matrix: &Matrix) -> String {
    let Some(governor) = &character.governor else { return String::new() };
    let above = matrix.character(governor.character);
    let Scale::Words { states } = &above.scale else {
        unreachable!("a matrix has only characters in words as governors")
    };
    let right = governor.states.iter().map(|state| word(&states[state.0])).collect::<Vec<_>>();
    let words = above.name.split_whitespace().collect::<Vec<_>>().join(" ");
    let plain = !above.name.contains(['=', ':', '"']) && words == above.name;
    let name = if plain { above.name.clone() } else { quote(&above.name) };
    format!("{name} = {}", right.join(" or "))
}

fn kinds(matrix: &Matrix) -> String {
    let of_a_key = || KINDS.iter().filter_map(|column| Some((column.headings, column.write?)));
    let mut rows = vec![usual(of_a_key().map(|(headings, _)| headings))];
    rows.extend(
        matrix.taxa().iter().map(|taxon| of_a_key().map(|(_, write)| write(taxon)).collect()),
    );
    separated(rows)
}

pub(super) fn other_names(taxon: &Taxon) -> String {
    taxon.other_names.iter().map(other_name).collect::<Vec<_>>().join("; ")
}

fn other_name(other: &OtherName) -> String {
    let name = &other.name;
    let words = name.split_whitespace().collect::<Vec<_>>().join(" ");
    let tagged = name.split_once(':').is_some_and(|(tag, _)| is_language(tag.trim()));
    let plain = words == *name && !name.contains(['"', ';']) && !tagged;
    let name = if plain { name.clone() } else { quote(name) };
    match &other.language {
        Some(tag) => format!("{tag}: {name}"),
        None => name,
    }
}

/// A decimal where it is exact, since a spreadsheet takes `3/4` for a date.
pub(super) fn weight(weight: Share) -> String {
    let thousandths = weight.checked_mul(&Share::from_integer(1000));
    let whole = thousandths.filter(Share::is_integer).and_then(|it| it.to_integer().to_i64());
    match whole {
        Some(thousandths) => Quantity::from_thousandths(thousandths).to_string(),
        None => format!("{}/{}", weight.numer(), weight.denom()),
    }
}

fn about(matrix: &Matrix) -> String {
    let mut rows = vec![vec!["what".to_owned(), "text".to_owned()]];
    let said = about_sheet::rows(matrix.scene()).into_iter();
    rows.extend(said.map(|(what, text)| vec![what.to_owned(), text]));
    separated(rows)
}
