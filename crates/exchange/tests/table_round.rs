//! Written and read again, a matrix is the same: every value, governor, weight and caution.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::collections::BTreeSet;

use fastrand::Rng;
use spinney_exchange::table::{Settings, Source, Sources, read, write};
use spinney_model::{
    Cell, Character, CharacterIx, Difficulty, Governor, Instrument, Matrix, OtherName,
    Quantity, Scale, Scene, Season, SeenOn, Share, StateIx, Taxon, TaxonIx, Unit, Value,
    WrittenIn,
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
fn name(rng: &mut Rng, at: usize) -> String {
    let awkward = AWKWARD[rng.usize(..AWKWARD.len())];
    match rng.u8(..4) {
        0 => format!("{awkward} {at}"),
        1 => format!("{awkward}~{at}~"),
        2 => format!("{awkward}{at}\""),
        _ => format!("name {at}"),
    }
}

fn text(rng: &mut Rng) -> Option<String> {
    rng.bool().then(|| AWKWARD[rng.usize(..AWKWARD.len())].to_owned())
}

fn shares<T: Ord + Copy>(rng: &mut Rng, all: &[T]) -> (Vec<(T, Share)>, Option<u32>) {
    let chosen: BTreeSet<T> =
        (0..rng.usize(1..=3)).map(|_| all[rng.usize(..all.len())]).collect();
    let weights: Vec<u32> = if rng.bool() {
        vec![1; chosen.len()]
    } else {
        chosen.iter().map(|_| rng.u32(1..9)).collect()
    };
    let sum: u32 = weights.iter().sum();
    let seen = match rng.u8(..4) {
        0 => Some(sum),
        1 => Some(rng.u32(..40)),
        _ => None,
    };
    let share = |weight: u32| Share::new(weight.into(), sum.into());
    (chosen.into_iter().zip(weights.into_iter().map(share)).collect(), seen)
}

fn scale(rng: &mut Rng) -> Scale {
    match rng.u8(..4) {
        0 | 1 => {
            let states = (0..rng.usize(1..5)).map(|at| name(rng, at)).collect();
            Scale::Words { states }
        }
        2 => Scale::Counts,
        _ => {
            let units =
                [Unit::Millimetres, Unit::Degrees, Unit::Grams, Unit::Ratio, Unit::Unstated];
            let gap = Quantity::from_thousandths(rng.i64(0..20_000));
            Scale::Measure { unit: units[rng.usize(..5)], gap }
        }
    }
}

fn character(rng: &mut Rng, at: usize, above: &[Character]) -> Character {
    let mut character = Character::named(name(rng, at), scale(rng));
    if matches!(character.scale, Scale::Measure { unit: Unit::Millimetres, .. }) {
        let others = [None, Some(WrittenIn::Centimetres), Some(WrittenIn::Inches)];
        character.written_in = others[rng.usize(..3)];
    }
    character.question = text(rng);
    character.seen_on = SeenOn::ALL.into_iter().filter(|_| rng.bool()).collect();
    character.difficulty =
        [Difficulty::Easy, Difficulty::Fair, Difficulty::Hard][rng.usize(..3)];
    character.read_right = rng.bool().then(|| rng.u8(..=100));
    character.by_touch = rng.bool();
    character.seasons = Season::ALL.into_iter().filter(|_| rng.bool()).collect();
    character.instrument = Instrument::ALL[rng.usize(..3)];
    character.ordered = matches!(character.scale, Scale::Words { .. }) && rng.bool();
    character.terms = (0..rng.usize(..3)).map(|at| name(rng, at)).collect();
    // The first kind is always there.
    if rng.bool() {
        character.read_right_of.insert(TaxonIx(0), rng.u8(..=100));
    }
    if !above.is_empty() && rng.bool() {
        let governor = rng.usize(..above.len());
        if let Scale::Words { states } = &above[governor].scale {
            let right = (0..states.len()).filter(|_| rng.bool()).map(StateIx).collect();
            let governor = Governor { character: CharacterIx(governor), states: right };
            character.governor = Some(governor).filter(|it| !it.states.is_empty());
        }
    }
    character
}

fn value(rng: &mut Rng, scale: &Scale) -> Cell {
    let seen = rng.bool().then(|| rng.u32(..50));
    match (rng.u8(..6), scale) {
        (0, _) => Cell { value: Value::Unknown, seen },
        (1, _) => Value::DoesNotApply.into(),
        (_, Scale::Words { states }) => {
            let all: Vec<StateIx> = (0..states.len()).map(StateIx).collect();
            let (shares, seen) = shares(rng, &all);
            Cell { value: Value::States(shares), seen }
        }
        (_, Scale::Counts) => {
            let all: Vec<u32> = (0..4).map(|_| rng.u32(..40)).collect();
            let (shares, seen) = shares(rng, &all);
            Cell { value: Value::Counts(shares), seen }
        }
        (_, Scale::Measure { unit, .. }) => {
            // No length, weight or ratio is below nothing; an angle may be.
            let least = match unit {
                Unit::Millimetres | Unit::Grams | Unit::Ratio => 0,
                Unit::Degrees | Unit::Unstated => -9_000,
            };
            let (a, b) = (rng.i64(least..90_000), rng.i64(least..90_000));
            let ends = if rng.bool() { (a.min(b), a.max(b)) } else { (a, a) };
            let [low, high] = [ends.0, ends.1].map(Quantity::from_thousandths);
            Cell { value: Value::Range { low, high }, seen }
        }
    }
}

fn taxon(rng: &mut Rng, at: usize) -> Taxon {
    let mut taxon = Taxon::named(name(rng, at));
    taxon.scientific_name = text(rng);
    for at in 0..rng.usize(..3) {
        let tags = [None, Some("de"), Some("cy"), Some("pt-BR")];
        let language = tags[rng.usize(..4)].map(str::to_owned);
        taxon.other_names.push(OtherName { language, name: name(rng, at) });
    }
    taxon.weight = Share::new(rng.i128(1..50), rng.i128(1..9));
    taxon.caution = text(rng);
    taxon.picture = text(rng);
    taxon.confirming = text(rng);
    taxon
}

fn matrix(rng: &mut Rng) -> Matrix {
    let mut characters = Vec::new();
    for at in 0..rng.usize(..6) {
        let next = character(rng, at, &characters);
        characters.push(next);
    }
    let taxa: Vec<Taxon> = (0..rng.usize(1..8)).map(|at| taxon(rng, at)).collect();
    let row = |rng: &mut Rng| {
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
            row.push(if possible { value(rng, &character.scale) } else { none });
        }
        row
    };
    let rows = taxa.iter().map(|_| row(rng)).collect();
    let scene = Scene {
        title: text(rng),
        place: text(rng),
        season: text(rng),
        part: text(rng),
        caution: text(rng),
        before_you_go: [text(rng), text(rng)]
            .into_iter()
            .flatten()
            .flat_map(|text| text.lines().map(str::to_owned).collect::<Vec<_>>())
            .collect(),
        version: text(rng),
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
    let mut rng = Rng::with_seed(7);
    for round in 0..2_000 {
        let matrix = matrix(&mut rng);
        let sources = sources(&matrix);
        let show = || {
            let files = [Some(&sources.table), sources.characters.as_ref()];
            let texts = files.into_iter().flatten().map(|file| file.bytes.clone());
            texts.map(|bytes| String::from_utf8(bytes).unwrap()).collect::<Vec<_>>().join("\n")
        };
        let back = read(&sources, &Settings::default()).unwrap();
        assert_eq!(back.matrix.characters(), matrix.characters(), "round {round}\n{}", show());
        assert_eq!(back.matrix, matrix, "round {round}\n{}", show());
    }
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
    let mut rng = Rng::with_seed(7);
    let mut seen = BTreeSet::new();
    for _ in 0..300 {
        let matrix = matrix(&mut rng);
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
                seen.insert((sort, several, governed, cell.seen.is_some()));
            }
        }
    }
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
    let mut rng = Rng::with_seed(11);
    for _ in 0..500 {
        let sheets = write(&matrix(&mut rng));
        for text in [sheets.table, sheets.characters, sheets.kinds, sheets.about] {
            // The csv crate reads here, not our reader.
            let mut reader = csv::ReaderBuilder::new()
                .has_headers(false)
                .flexible(true)
                .from_reader(text.as_bytes());
            for record in reader.records() {
                for cell in &record.unwrap() {
                    assert!(!cell.starts_with(['=', '+', '-', '@', '\t', '\r']), "{cell:?}");
                }
            }
        }
    }
}
