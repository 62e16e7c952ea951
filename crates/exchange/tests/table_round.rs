//! Written and read again, a matrix is the same: every value, governor, weight and caution.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::cell::RefCell;
use std::collections::BTreeSet;

use spinney_exchange::table::{Settings, Source, Sources, read, write};
use spinney_fixtures::choices::{Choices, holds, same};
use spinney_model::{
    Cell, Character, CharacterIx, Difficulty, Governor, InSecond, Instrument, Matrix,
    OtherName, Quantity, Scale, Scene, Season, Seen, SeenOn, Share, StateIx, Taxon, TaxonIx,
    Unit, Value, WrittenIn,
};

/// What a name may look like at its most awkward.
const AWKWARD: [&str; 30] = [
    "hazel",
    "dog rose",
    "a, b",
    "say \"ah\"",
    "\"quoted\"",
    "two\nlines",
    "=1+1",
    "+49",
    "-dash",
    "@home",
    "'tis",
    "''",
    "n/a",
    "?",
    "lobed 8",
    "8 lobed",
    "this or that",
    "x; y",
    "yes",
    "no",
    "5",
    "3-5",
    "Gänsefuß (klein)",
    "a = b",
    "de: Hasel",
    "4 of 5 (3 seen)",
    "yes 3 of 10",
    "five",
    "8±1",
    "4..5",
];

/// A name that no other of its kind has, even without capitals and spaces.
fn name(choices: &mut Choices, at: usize) -> String {
    let awkward = AWKWARD[choices.usize(..AWKWARD.len())];
    match choices.u8(..4) {
        0 => format!("{awkward} {at}"),
        1 => format!("{awkward}~{at}~"),
        2 => format!("{awkward}{at}\""),
        _ => format!("name {at}"),
    }
}

fn text(choices: &mut Choices) -> Option<String> {
    choices.bool().then(|| AWKWARD[choices.usize(..AWKWARD.len())].to_owned())
}

/// A text with what it is in the second language, each on one line, as they are typed.
fn in_second(choices: &mut Choices, at: usize) -> InSecond {
    let line = |text: String| text.replace('\n', " ").trim_start_matches('-').to_owned();
    InSecond {
        text: line(name(choices, at)),
        second: text(choices).map(line).unwrap_or_default(),
    }
}

fn shares<T: Ord + Copy>(choices: &mut Choices, all: &[T]) -> (Vec<(T, Share)>, Option<u32>) {
    let chosen: BTreeSet<T> =
        (0..choices.usize(1..=3)).map(|_| all[choices.usize(..all.len())]).collect();
    let weights: Vec<u32> = if choices.bool() {
        vec![1; chosen.len()]
    } else {
        chosen.iter().map(|_| choices.u32(1..9)).collect()
    };
    let sum: u32 = weights.iter().sum();
    let seen = match choices.u8(..4) {
        0 => Some(sum),
        1 => Some(choices.u32(..40)),
        _ => None,
    };
    let share = |weight: u32| Share::new(weight.into(), sum.into());
    (chosen.into_iter().zip(weights.into_iter().map(share)).collect(), seen)
}

fn scale(choices: &mut Choices) -> Scale {
    match choices.u8(..4) {
        0 | 1 => {
            let states = (0..choices.usize(1..5)).map(|at| name(choices, at)).collect();
            Scale::Words { states }
        }
        2 => Scale::Counts,
        _ => {
            let units =
                [Unit::Millimetres, Unit::Degrees, Unit::Grams, Unit::Ratio, Unit::Unstated];
            let gap = Quantity::from_thousandths(choices.i64(0..20_000));
            Scale::Measure { unit: units[choices.usize(..5)], gap }
        }
    }
}

fn character(choices: &mut Choices, at: usize, above: &[Character]) -> Character {
    let mut character = Character::named(name(choices, at), scale(choices));
    if matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. }) {
        let others = [None, Some(WrittenIn::Centimetres), Some(WrittenIn::Inches)];
        character.written_in = others[choices.usize(..3)];
    }
    character.question = text(choices);
    character.second_question = text(choices);
    character.second_states =
        (0..choices.usize(..3)).map(|at| in_second(choices, at)).collect();
    character.seen_on = SeenOn::ALL.into_iter().filter(|_| choices.bool()).collect();
    character.difficulty =
        [Difficulty::Easy, Difficulty::Fair, Difficulty::Hard][choices.usize(..3)];
    character.read_right = choices.bool().then(|| choices.u8(..=100));
    character.by_touch = choices.bool();
    character.seasons = Season::ALL.into_iter().filter(|_| choices.bool()).collect();
    character.instrument = Instrument::ALL[choices.usize(..3)];
    character.ordered = matches!(character.scale, Scale::Words { .. }) && choices.bool();
    character.terms = (0..choices.usize(..3)).map(|at| name(choices, at)).collect();
    // The first kind is always there.
    if choices.bool() {
        character.read_right_of.insert(TaxonIx(0), choices.u8(..=100));
    }
    if !above.is_empty() && choices.bool() {
        let governor = choices.usize(..above.len());
        if let Scale::Words { states } = &above[governor].scale {
            let right = (0..states.len()).filter(|_| choices.bool()).map(StateIx).collect();
            let governor = Governor { character: CharacterIx(governor), states: right };
            character.governor = Some(governor).filter(|it| !it.states.is_empty());
        }
    }
    character
}

fn value(choices: &mut Choices, scale: &Scale) -> Cell {
    let on = choices.bool().then(|| choices.u32(..50));
    let plants = choices.bool().then(|| choices.u32(..4));
    let seen = on.map(|on| Seen { on, plants });
    match (choices.u8(..6), scale) {
        (0, _) => Cell { value: Value::Unknown, seen },
        (1, _) => Value::DoesNotApply.into(),
        (_, Scale::Words { states }) => {
            let all: Vec<StateIx> = (0..states.len()).map(StateIx).collect();
            let (shares, on) = shares(choices, &all);
            let seen = on.map(|on| Seen { on, plants });
            Cell { value: Value::States(shares), seen }
        }
        (_, Scale::Counts) => {
            let all: Vec<u32> = (0..4).map(|_| choices.u32(..40)).collect();
            let (shares, on) = shares(choices, &all);
            let seen = on.map(|on| Seen { on, plants });
            Cell { value: Value::Counts(shares), seen }
        }
        (_, Scale::Measure { unit, .. }) => {
            // No length, weight or ratio is below nothing; an angle may be.
            let least = match unit {
                Unit::Millimetres | Unit::Grams | Unit::Ratio => 0,
                Unit::Degrees | Unit::Unstated => -9_000,
            };
            let (a, b) = (choices.i64(least..90_000), choices.i64(least..90_000));
            let ends = if choices.bool() { (a.min(b), a.max(b)) } else { (a, a) };
            let [low, high] = [ends.0, ends.1].map(Quantity::from_thousandths);
            Cell { value: Value::Range { low, high }, seen }
        }
    }
}

fn taxon(choices: &mut Choices, at: usize) -> Taxon {
    let mut taxon = Taxon::named(name(choices, at));
    taxon.scientific_name = text(choices);
    for at in 0..choices.usize(..3) {
        let tags = [None, Some("de"), Some("cy"), Some("pt-BR")];
        let language = tags[choices.usize(..4)].map(str::to_owned);
        taxon.other_names.push(OtherName { language, name: name(choices, at) });
    }
    taxon.weight = Share::new(choices.i128(1..50), choices.i128(1..9));
    taxon.second_name = text(choices);
    taxon.caution = text(choices);
    taxon.picture = text(choices);
    taxon.confirming = text(choices);
    taxon
}

fn matrix(choices: &mut Choices) -> Matrix {
    let mut characters = Vec::new();
    for at in 0..choices.usize(..6) {
        let next = character(choices, at, &characters);
        characters.push(next);
    }
    let taxa: Vec<Taxon> = (0..choices.usize(1..8)).map(|at| taxon(choices, at)).collect();
    let row = |choices: &mut Choices| {
        let mut row: Vec<Cell> = Vec::new();
        for character in &characters {
            let possible = character.governor.as_ref().is_none_or(|governor| {
                match &row[governor.character.0].value {
                    Value::Unknown => true,
                    Value::States(shares) => {
                        shares.iter().any(|(state, _)| governor.states.contains(state))
                    }
                    _ => false,
                }
            });
            // Where there cannot be a value, a matrix that was read says "does not apply".
            let none = Cell::from(Value::DoesNotApply);
            row.push(if possible { value(choices, &character.scale) } else { none });
        }
        row
    };
    let rows = taxa.iter().map(|_| row(choices)).collect();
    let scene = Scene {
        title: text(choices),
        place: text(choices),
        season: text(choices),
        part: text(choices),
        caution: text(choices),
        before_you_go: [text(choices), text(choices)]
            .into_iter()
            .flatten()
            .flat_map(|text| text.lines().map(str::to_owned).collect::<Vec<_>>())
            .collect(),
        children: Some(28),
        groups: Some(7),
        second_language: text(choices),
        second_questions: (0..choices.usize(..3)).map(|at| in_second(choices, at)).collect(),
        version: text(choices),
    };
    Matrix::new(scene, taxa, characters, rows).unwrap()
}

fn sources(matrix: &Matrix) -> Sources {
    let sheets = write(matrix);
    let source =
        |name: &str, text: String| Source { name: name.to_owned(), bytes: text.into() };
    Sources {
        table: source("table.csv", sheets.table),
        characters: Some(source("characters.csv", sheets.characters)),
        kinds: Some(source("kinds.csv", sheets.kinds)),
        about: Some(source("about.csv", sheets.about)),
    }
}

#[test]
fn what_is_written_reads_back_equal() {
    holds(2_000, |choices| {
        let matrix = matrix(choices);
        let sources = sources(&matrix);
        let show = || {
            let files = [Some(&sources.table), sources.characters.as_ref()];
            let texts = files.into_iter().flatten().map(|file| file.bytes.clone());
            texts.map(|bytes| String::from_utf8(bytes).unwrap()).collect::<Vec<_>>().join("\n")
        };
        let back =
            read(&sources, &Settings::default()).map_err(|error| format!("{error:?}"))?;
        same(&back.matrix, &matrix, show)
    });
}

/// A table of names is a table, whatever the names say.
#[test]
fn kinds_without_characters_read_back_equal() {
    for name in ["Is the leaf lobed?", "Dear children, please bring a bag and your boots"] {
        let taxa = vec![Taxon::named(name)];
        let matrix = Matrix::new(Scene::default(), taxa, vec![], vec![vec![]]).unwrap();
        let back = read(&sources(&matrix), &Settings::default()).unwrap();
        assert_eq!(back.matrix, matrix);
    }
}

/// Who calls a state "n/a" or "?" still has cells where nobody knows, or nothing is there.
#[test]
fn a_state_called_like_an_empty_cell_reads_back_equal() {
    let states = ["n/a", "?", "Does not apply"].map(str::to_owned).to_vec();
    let character = Character::named("edge", Scale::Words { states });
    let cells = [Value::DoesNotApply, Value::Unknown].map(|value| vec![Cell::from(value)]);
    let taxa = vec![Taxon::named("hazel"), Taxon::named("holly")];
    let matrix = Matrix::new(Scene::default(), taxa, vec![character], cells.into()).unwrap();
    let back = read(&sources(&matrix), &Settings::default()).unwrap();
    assert_eq!(back.matrix, matrix);
}

#[test]
fn the_generator_makes_every_sort_of_cell() {
    let seen = RefCell::new(BTreeSet::new());
    holds(300, |choices| {
        let matrix = matrix(choices);
        for character in matrix.character_indices() {
            let governed = matrix.character(character).governor.is_some();
            for taxon in matrix.taxon_indices() {
                let cell = matrix.cell(taxon, character);
                let (sort, several) = match &cell.value {
                    Value::Unknown => ("unknown", false),
                    Value::DoesNotApply => ("does not apply", false),
                    Value::States(shares) => ("states", shares.len() > 1),
                    Value::Counts(shares) => ("counts", shares.len() > 1),
                    Value::Range { low, high } => ("range", low < high),
                };
                seen.borrow_mut().insert((sort, several, governed, cell.seen.is_some()));
            }
        }
        Ok(())
    });
    let seen = seen.into_inner();
    for sort in ["states", "counts", "range"] {
        for (several, governed, counted) in [(true, true, true), (false, false, false)] {
            assert!(seen.contains(&(sort, several, governed, counted)), "{sort}");
        }
    }
    assert!(seen.contains(&("unknown", false, true, false)));
    assert!(seen.contains(&("does not apply", false, true, false)));
}

/// A spreadsheet calculates what begins with one of these signs, so no cell may.
/// Source: OWASP, "CSV Injection", <https://owasp.org/www-community/attacks/CSV_Injection>.
#[test]
fn no_written_cell_is_calculated_by_a_spreadsheet() {
    holds(500, |choices| {
        let sheets = write(&matrix(choices));
        for text in [sheets.table, sheets.characters, sheets.kinds, sheets.about] {
            // The csv crate reads here, not our reader.
            let mut reader = csv::ReaderBuilder::new()
                .has_headers(false)
                .flexible(true)
                .from_reader(text.as_bytes());
            for record in reader.records() {
                for cell in &record.unwrap() {
                    if cell.starts_with(['=', '+', '-', '@', '\t', '\r']) {
                        return Err(format!("{cell:?}"));
                    }
                }
            }
        }
        Ok(())
    });
}
