//! Matrices and keys drawn as text, for tests that a teacher can read.
//!
//! A column a line (`edge: toothed, smooth; if form whole; hard; by touch`,
//! `stalk: mm gap 3`, `leaflets: counts`), then a kind a line with its cells between bars:
//! words with "or", `?` unknown, `-` does not apply, `30-60`, `x1` how many were looked at,
//! `!` after the name a caution. A couplet a line: `2 (1). Is it …? [edge = toothed] -> 3 / hazel`.

#![allow(dead_code, reason = "each test file uses a part")]
#![allow(clippy::unwrap_used, reason = "a test may stop at what is not so")]

use spinney_model::*;

/// Reads a drawn matrix.
pub(crate) fn matrix(text: &str) -> Matrix {
    let lines: Vec<&str> =
        text.lines().map(str::trim).filter(|line| !line.is_empty()).collect();
    let columns: Vec<&&str> = lines.iter().filter(|line| !line.contains('|')).collect();
    let mut characters: Vec<Character> = Vec::new();
    for column in columns {
        let column = column_of(column, &characters);
        characters.push(column);
    }
    let (mut taxa, mut rows) = (Vec::new(), Vec::new());
    for line in lines.iter().filter(|line| line.contains('|')) {
        let mut cells = line.split('|').map(str::trim);
        let name = cells.next().unwrap();
        let mut taxon = Taxon::named(name.trim_end_matches(['!', ' ']));
        taxon.caution = name.ends_with('!').then(|| "It has spines.".into());
        taxa.push(taxon);
        rows.push(characters.iter().zip(cells).map(|(c, cell)| cell_of(c, cell)).collect());
    }
    Matrix::new(Scene::default(), taxa, characters, rows).unwrap()
}

fn column_of(line: &str, before: &[Character]) -> Character {
    let (name, rest) = line.split_once(':').unwrap();
    let mut parts = rest.split(';').map(str::trim);
    let scale = parts.next().unwrap();
    let scale = if scale == "counts" {
        Scale::Counts
    } else if let Some(gap) = scale.strip_prefix("mm gap ") {
        Scale::Measure { unit: Unit::Millimetres, gap: quantity(gap) }
    } else {
        Scale::Words { states: scale.split(", ").map(str::to_owned).collect() }
    };
    let mut character = Character::named(name.trim(), scale);
    for part in parts {
        match part.split(' ').collect::<Vec<_>>()[..] {
            ["hard"] => character.difficulty = Difficulty::Hard,
            ["fair"] => character.difficulty = Difficulty::Fair,
            ["by", "touch"] => character.by_touch = true,
            ["if", governor, state] => {
                let governing = before.iter().position(|c| c.name == governor).unwrap();
                let states = [state_of(&before[governing], state)].into();
                character.governor =
                    Some(Governor { character: CharacterIx(governing), states });
            }
            _ => panic!("{part}?"),
        }
    }
    character
}

fn state_of(character: &Character, name: &str) -> StateIx {
    let Scale::Words { states } = &character.scale else { panic!("no words") };
    StateIx(states.iter().position(|state| state == name).unwrap_or_else(|| panic!("{name}?")))
}

fn quantity(text: &str) -> Quantity {
    Quantity::from_thousandths((text.trim().parse::<f64>().unwrap() * 1000.0).round() as i64)
}

fn cell_of(character: &Character, text: &str) -> Cell {
    let (text, seen) = match text.rsplit_once(" x") {
        Some((text, seen)) => (text, Some(spinney_model::Seen::on(seen.parse().unwrap()))),
        None => (text, None),
    };
    let words: Vec<&str> = text.split(" or ").collect();
    let part = Share::new(1, words.len() as i128);
    let value = match (text, &character.scale) {
        ("?", _) => Value::Unknown,
        ("-", _) => Value::DoesNotApply,
        (_, Scale::Words { .. }) => {
            let mut states: Vec<_> =
                words.iter().map(|word| (state_of(character, word), part)).collect();
            states.sort();
            Value::States(states)
        }
        (_, Scale::Counts) => {
            Value::Counts(words.iter().map(|word| (word.parse().unwrap(), part)).collect())
        }
        (_, Scale::Measure { .. }) => {
            let (low, high) = text.split_once('-').unwrap();
            Value::Range { low: quantity(low), high: quantity(high) }
        }
    };
    Cell { value, seen }
}

/// Reads a drawn key.
pub(crate) fn key(matrix: &Matrix, text: &str) -> Key {
    let lines = text.lines().map(str::trim).filter(|line| !line.is_empty());
    Key { couplets: lines.map(|line| couplet(matrix, line)).collect() }
}

fn couplet(matrix: &Matrix, line: &str) -> Couplet {
    let (number, rest) = line.split_once(". ").unwrap();
    let (number, back) = match number.split_once(" (") {
        Some((number, back)) => (number, Some(back.trim_end_matches(')').parse().unwrap())),
        None => (number, None),
    };
    let (text, rest) = rest.split_once(" [").unwrap();
    let (ask, to) = rest.split_once("] -> ").unwrap();
    let (yes, no) = to.split_once(" / ").unwrap();
    let wording = match text.split_once(" | ") {
        Some((yes, no)) => Wording::Leads { yes: yes.into(), no: no.into() },
        None => Wording::Question(text.into()),
    };
    Couplet {
        number: number.parse().unwrap(),
        back,
        wording,
        ask: asked(matrix, ask.trim()),
        yes: destination(matrix, yes),
        no: destination(matrix, no),
        kept: false,
        line: None,
    }
}

fn asked(matrix: &Matrix, ask: &str) -> Option<Ask> {
    let at = |name: &str| {
        let found = matrix.characters().iter().position(|c| c.name == name.trim());
        CharacterIx(found.unwrap_or_else(|| panic!("{name}?")))
    };
    if let Some((name, number)) = ask.split_once(">=") {
        return Some(Ask { character: at(name), yes: Asked::AtLeast(quantity(number)) });
    }
    if let Some((name, number)) = ask.split_once('<') {
        return Some(Ask { character: at(name), yes: Asked::Below(quantity(number)) });
    }
    let (name, states) = ask.split_once('=')?;
    let character = at(name);
    let states =
        states.split(" or ").map(|s| state_of(matrix.character(character), s.trim())).collect();
    Some(Ask { character, yes: Asked::States(states) })
}

fn destination(matrix: &Matrix, text: &str) -> Destination {
    if let Ok(number) = text.parse() {
        return Destination::Couplet(number);
    }
    if text == "nothing" {
        return Destination::Missing;
    }
    let mut end = End::default();
    for name in text.split(" or ") {
        match matrix.taxa().iter().position(|taxon| taxon.name == name) {
            Some(taxon) => end.taxa.push(TaxonIx(taxon)),
            None => end.unrecognised.push(name.into()),
        }
    }
    end.taxa.sort();
    Destination::End(end)
}

/// The codes of findings, sorted.
pub(crate) fn codes(findings: &[Finding]) -> Vec<Code> {
    let mut codes: Vec<Code> = findings.iter().map(|finding| finding.code).collect();
    codes.sort();
    codes
}

/// A hedge, invented for these tests; nobody measured it.
pub(crate) const HEDGE: &str = "
    form: feather, whole
    leaflets: counts; if form feather
    edge: toothed, smooth, spiny; if form whole
    lobes: lobed, entire; if form whole
    stalk: mm gap 3
    place: opposite, alternate
    feel: leathery, papery; by touch
    ash    | feather | 9 or 11 | -       | -               | 30-60 | opposite  | papery
    elder  | feather | 5 or 7  | -       | -               | 20-40 | opposite  | papery
    rowan  | feather | 13      | -       | -               | 25-45 | alternate | papery
    ivy    | whole   | -       | smooth  | lobed or entire | 30-70 | alternate | papery
    maple  | whole   | -       | smooth  | lobed           | 40-80 | opposite  | papery
    hazel  | whole   | -       | toothed | entire          | 5-15  | alternate | papery
    lime   | whole   | -       | toothed | entire          | 30-45 | alternate | papery
    beech  | whole   | -       | smooth  | entire          | 5-15  | alternate | papery
    holly! | whole   | -       | spiny   | entire          | ?     | alternate | leathery
";

/// A good key to it.
pub(crate) const HEDGE_KEY: &str = "
    1. Is the leaf made of leaflets? [form = feather] -> 2 / 4
    2 (1). Does it have 8 or more leaflets? [leaflets >= 8] -> 3 / elder
    3 (2). Are the leaves opposite? [place = opposite] -> ash / rowan
    4 (1). Is the leaf lobed? [lobes = lobed] -> 5 / 6
    5 (4). Do the leaves stand opposite? [place = opposite] -> maple / ivy
    6 (4). Is the leaf edge toothed? [edge = toothed] -> 7 / 8
    7 (6). Is the leaf stalk 22.5 mm or longer? [stalk >= 22.5] -> lime / hazel
    8 (6). Is the leaf edge spiny? [edge = spiny] -> holly / 9
    9 (8). Is the stalk 22.5 mm or longer? [stalk >= 22.5] -> ivy / beech
";
