//! What shapes the questions of a character: seasons, instruments, orders, words to know,
//! kinds that are read right less often, and ratios of two lengths.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use std::collections::{BTreeMap, BTreeSet};

use spinney_exchange::table::{Settings, Source, Sources, TableRead, read, write};
use spinney_model::{
    CellTrouble, Character, CharacterIx, Code, Fact, FieldIs, Instrument, Matrix, OfCell,
    OfColumn, OfSheet, Quantity, Scale, Season, SeenOn, TaxonIx, Unit, Value, WhyNoRatio,
};

#[path = "drawn/table.rs"]
mod drawn;

use drawn::{at, odd, only, owned, places, told, typed};

fn source(name: &str, text: &str) -> Source {
    let rows = text.trim().lines().map(|line| {
        let cells = line.split('|').map(|cell| cell.trim().to_owned());
        cells.collect::<Vec<_>>().join("\t")
    });
    Source { name: name.to_owned(), bytes: rows.collect::<Vec<_>>().join("\n").into() }
}

fn hedge(table: &str, characters: &str) -> TableRead {
    let sources = Sources {
        table: source("hedge.csv", table),
        characters: Some(source("characters.csv", characters)),
        ..Sources::default()
    };
    read(&sources, &Settings::default()).unwrap()
}

fn again(matrix: &Matrix) -> TableRead {
    let sheets = write(matrix);
    let source =
        |name: &str, text: String| Source { name: name.to_owned(), bytes: text.into() };
    let sources = Sources {
        table: source("hedge.csv", sheets.table),
        characters: Some(source("characters.csv", sheets.characters)),
        kinds: Some(source("kinds.csv", sheets.kinds)),
        about: Some(source("about.csv", sheets.about)),
    };
    read(&sources, &Settings::default()).unwrap()
}

fn named<'m>(matrix: &'m Matrix, name: &str) -> (CharacterIx, &'m Character) {
    let at = matrix.character_indices().find(|at| matrix.character(*at).name == name).unwrap();
    (at, matrix.character(at))
}

const TABLE: &str = "kind    | edge   | size     | stalk length | blade length
                     holly   | spiny  | small    | 5-10 mm      | 50-80 mm
                     hazel   | toothed| middling | 8-15 mm      | 60-100 mm
                     poplar  | wavy   | large    | 30-60 mm     | 40-60 mm
                     bramble | toothed| small    | ?            | 40-70 mm
                     reed    | spiny  | large    | n/a          | 300-400 mm";

#[test]
fn seasons_instruments_and_words_to_know_are_read() {
    let read = hedge(
        TABLE,
        "character    | season            | instrument       | words to know
         edge         | Summer or autumn  | magnifying glass | margin, toothed; \"oval or so, roughly\"
         size         | fall              |                  | none
         stalk length | all year          | eyes             |
         blade length |                   |                  | blade",
    );
    let edge = named(&read.matrix, "edge").1;
    assert_eq!(edge.seasons, BTreeSet::from([Season::Summer, Season::Autumn]));
    assert_eq!(edge.instrument, Instrument::Lens);
    let terms = ["margin", "oval or so, roughly", "toothed"].map(str::to_owned);
    assert_eq!(edge.terms, BTreeSet::from(terms));
    let size = named(&read.matrix, "size").1;
    assert_eq!(size.seasons, BTreeSet::from([Season::Autumn]));
    assert_eq!((size.instrument, size.terms.len()), (Instrument::Eyes, 0));
    let stalk = named(&read.matrix, "stalk length").1;
    assert_eq!((stalk.seasons.len(), stalk.instrument), (4, Instrument::Eyes));
    let blade = named(&read.matrix, "blade length").1;
    assert_eq!(blade.instrument, Instrument::Ruler, "a length takes a ruler");
    assert_eq!(told(&read, Code::CellNotUnderstood), []);
    assert_eq!(again(&read.matrix).matrix, read.matrix);
}

#[test]
fn what_is_no_season_or_instrument_is_told_with_what_to_type() {
    let read = hedge(
        TABLE,
        "character | season              | instrument | in order
         edge      | october, spring     | microscope | perhaps",
    );
    let edge = named(&read.matrix, "edge").1;
    assert_eq!(edge.seasons, BTreeSet::from([Season::Spring]));
    assert_eq!((edge.instrument, edge.ordered), (Instrument::Eyes, false));
    let told: Vec<_> =
        read.findings.iter().filter(|it| it.code == Code::CellNotUnderstood).collect();
    let fields = told.iter().map(|it| match &it.fact {
        Fact::Sheet(OfSheet::FieldOdd { is, words, .. }) => (*is, words.to_vec()),
        other => panic!("{other:?}"),
    });
    assert_eq!(
        fields.collect::<Vec<_>>(),
        [
            (FieldIs::Season, vec!["spring", "summer", "autumn", "winter"]),
            (FieldIs::Instrument, vec!["eyes", "lens", "ruler"]),
            (FieldIs::InOrder, vec!["yes", "no"]),
        ]
    );
}

#[test]
fn states_stand_in_the_order_in_which_they_are_listed() {
    let sheet = "character | in order | states
                 size      | yes      | large, middling, small
                 edge      | no       |";
    let read = hedge(TABLE, sheet);
    let size = named(&read.matrix, "size").1;
    assert!(size.ordered && !named(&read.matrix, "edge").1.ordered);
    let states = ["large", "middling", "small"].map(str::to_owned).to_vec();
    assert_eq!(size.scale, Scale::Words { states });
    assert_eq!(told(&read, Code::Assumed), []);
    assert_eq!(again(&read.matrix).matrix, read.matrix);

    let unlisted = hedge(TABLE, "character | ordered\n size | yes\n stalk length | yes");
    assert!(named(&unlisted.matrix, "size").1.ordered);
    assert!(!named(&unlisted.matrix, "stalk length").1.ordered, "numbers always are");
    let (about, states) =
        ("size".to_owned(), ["small", "middling", "large"].map(str::to_owned));
    let in_order = OfColumn::InOrder { about, states: states.to_vec() };
    let assumed: Vec<_> =
        unlisted.findings.iter().filter(|it| it.code == Code::Assumed).collect();
    assert!(assumed.len() == 1 && assumed[0].fact == in_order.into(), "{assumed:?}");
}

#[test]
fn single_kinds_may_be_read_right_less_often() {
    for text in ["90; holly 60", "90 %, Holly: 60 %", "0.9; \"holly\" = 60", "holly 60; 90"] {
        let read = hedge(TABLE, &format!("character | read right\n edge | {text}"));
        let edge = named(&read.matrix, "edge").1;
        assert_eq!(edge.read_right, Some(90), "{text}");
        assert_eq!(edge.read_right_of, BTreeMap::from([(TaxonIx(0), 60)]), "{text}");
        assert_eq!(again(&read.matrix).matrix, read.matrix);
    }
    let only = hedge(TABLE, "character | read right\n edge | hazel 70");
    let edge = named(&only.matrix, "edge").1;
    assert_eq!((edge.read_right, edge.read_right_of.len()), (None, 1));
    assert_eq!(again(&only.matrix).matrix, only.matrix);
}

#[test]
fn kinds_that_the_table_lacks_are_told() {
    let read = hedge(TABLE, "character | read right\n edge | 90; beech 60; hazel 50; hazel 55");
    let edge = named(&read.matrix, "edge").1;
    assert_eq!(edge.read_right, Some(90));
    assert_eq!(edge.read_right_of, BTreeMap::from([(TaxonIx(1), 50)]));
    let strange = [("beech", false), ("hazel", true)].map(|(name, twice)| {
        let [about, name] = owned(["edge", name]);
        Fact::from(OfColumn::ReadRight { about, name, twice, at: at("characters.csv!B2") })
    });
    assert_eq!(told(&read, Code::SheetDisagrees), strange);
    assert_eq!(places(&read, Code::SheetDisagrees), ["characters.csv!B2"; 2]);
    for text in ["often", "90; 80", "holly", "holly 160", "90-95", "-5"] {
        let read = hedge(TABLE, &format!("character | read right\n edge | {text}"));
        assert_eq!(named(&read.matrix, "edge").1.read_right, None, "{text}");
        assert_eq!(told(&read, Code::CellNotUnderstood).len(), 1, "{text}");
    }
}

fn range(low: i64, high: i64) -> Value {
    let [low, high] = [low, high].map(Quantity::from_thousandths);
    Value::Range { low, high }
}

fn values(matrix: &Matrix, at: CharacterIx) -> Vec<Value> {
    matrix.taxon_indices().map(|taxon| matrix.cell(taxon, at).value.clone()).collect()
}

#[test]
fn a_ratio_is_worked_out_of_two_lengths() {
    for typed in [
        "stalk length / blade length",
        "Stalk length over Blade length",
        "stalk length to blade length",
        "stalk length:blade length",
        "\"stalk length\" / \"blade length\"",
    ] {
        let read = hedge(TABLE, &format!("character | ratio of\n stalk to blade | {typed}"));
        let (at, ratio) = named(&read.matrix, "stalk to blade");
        assert_eq!(at, CharacterIx(4), "behind the columns of the table");
        assert_eq!(ratio.ratio_of, Some((CharacterIx(2), CharacterIx(3))), "{typed}");
        let gap = Quantity::from_thousandths(100);
        assert_eq!(ratio.scale, Scale::Measure { unit: Unit::Ratio, gap });
        assert_eq!(ratio.instrument, Instrument::Eyes);
        assert_eq!(
            values(&read.matrix, at),
            [
                range(62, 200),
                range(80, 250),
                range(500, 1_500),
                Value::Unknown,
                Value::DoesNotApply
            ]
        );
        assert_eq!(told(&read, Code::SheetDisagrees), []);
        // The blank stalk is told once, and nothing of the ratio is.
        assert_eq!(told(&read, Code::Unknown).len(), 1);
        assert_eq!(told(&read, Code::Assumed), []);
        let back = again(&read.matrix);
        assert_eq!(back.matrix, read.matrix);
        assert_eq!(back.findings.len(), read.findings.len(), "{:?}", back.findings);
    }
}

#[test]
fn what_is_worked_out_is_written_blank_and_follows_its_lengths() {
    let read = hedge(TABLE, "character | ratio of\n slimness | stalk length / blade length");
    let sheets = write(&read.matrix);
    assert!(sheets.table.lines().nth(1).unwrap().ends_with("50-80 mm,"), "{}", sheets.table);
    let longer = sheets.table.replace("50-80 mm", "100 mm");
    let source = |name: &str, text: &str| Source { name: name.to_owned(), bytes: text.into() };
    let sources = Sources {
        table: source("t.csv", &longer),
        characters: Some(source("c.csv", &sheets.characters)),
        ..Sources::default()
    };
    let back = spinney_exchange::table::read(&sources, &Settings::default()).unwrap();
    assert_eq!(values(&back.matrix, CharacterIx(4))[0], range(50, 100));
}

#[test]
fn ratios_that_were_typed_come_first() {
    let read = hedge(
        "kind    | stalk length | blade length | slimness
         holly   | 5-10 mm      | 50-80 mm     | 0.1-0.15
         hazel   | 8-16 mm      | 64-100 mm    |
         poplar  | 30-60 mm     | 40-60 mm     | 40 mm
         reed    | n/a          | 300-400 mm   | n/a",
        "character | ratio of                    | gap
         slimness  | stalk length / blade length | 0.05",
    );
    let (at, ratio) = named(&read.matrix, "slimness");
    let gap = Quantity::from_thousandths(50);
    assert_eq!(ratio.scale, Scale::Measure { unit: Unit::Ratio, gap });
    assert_eq!(
        values(&read.matrix, at),
        [range(100, 150), range(80, 250), range(500, 1_500), Value::DoesNotApply]
    );
    let cell = typed("hedge.csv!D4", "poplar", "slimness", "40 mm");
    assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, CellTrouble::OtherUnit));
    assert_eq!(again(&read.matrix).matrix, read.matrix);
}

#[test]
fn a_ratio_without_its_lengths_may_be_typed_too() {
    let read = hedge(
        "kind | slimness\n holly | 0.1\n poplar | 0.5-1.5",
        "character | unit\n slimness | ratio",
    );
    let ratio = named(&read.matrix, "slimness").1;
    assert!(matches!(ratio.scale, Scale::Measure { unit: Unit::Ratio, .. }));
    assert_eq!(ratio.ratio_of, None);
    assert_eq!(read.findings, [], "nothing is odd about it");
    assert_eq!(again(&read.matrix).matrix, read.matrix);
}

#[test]
fn a_ratio_of_what_is_not_there_is_told_and_left_out() {
    for (typed, why) in [
        ("stem length / blade length", WhyNoRatio::NoColumn("stem length".to_owned())),
        ("stalk length / lamina", WhyNoRatio::NoColumn("lamina".to_owned())),
        ("edge / blade length", WhyNoRatio::NotMeasured("edge".to_owned())),
        ("stalk length / stalk length", WhyNoRatio::OverItself),
        ("stalk length", WhyNoRatio::NotTwo("stalk length".to_owned())),
        ("other / stalk length", WhyNoRatio::OfARatio),
    ] {
        let sheet = format!(
            "character | ratio of\n slimness | {typed}\n other | stalk length / blade length"
        );
        let read = hedge(TABLE, &sheet);
        assert_eq!(read.matrix.characters().len(), 5, "{typed}");
        let (about, at) = ("slimness".to_owned(), at("characters.csv!B2"));
        let none = OfColumn::NoRatio { about, why, at };
        assert_eq!(only(&read, Code::SheetDisagrees), none.into());
        assert_eq!(places(&read, Code::SheetDisagrees), ["characters.csv!B2"]);
    }
    let zero = hedge(
        "kind | a | b\n x | 5 mm | 0-4 mm\n y | 5 mm | 2 mm",
        "character | ratio of\n r | a / b",
    );
    assert_eq!(values(&zero.matrix, CharacterIx(2)), [Value::Unknown, range(2_500, 2_500)]);
    let ([about, kind], parts) = (owned(["r", "x"]), owned(["a", "b"]));
    let none = OfCell::NoRatio { about, kind, parts };
    assert_eq!(only(&zero, Code::CellNotUnderstood), none.into());
}

#[test]
fn a_ratio_is_there_and_seen_where_both_its_lengths_are() {
    let read = hedge(
        "kind  | form      | stalk length | blade length
         holly | one piece | 5 mm         | 50 mm
         rose  | feather   | 9 mm         |
         ivy   | one piece or feather | 20 mm | 40 mm",
        "character    | seen on       | season         | applies when     | ratio of
         form         |               |                |                  |
         stalk length | twig, leaf    | summer, autumn |                  |
         blade length | leaf, rubbing |                | form = one piece |
         slimness     |               |                |                  | stalk length / blade length",
    );
    let (at, ratio) = named(&read.matrix, "slimness");
    assert_eq!(ratio.seen_on, BTreeSet::from([SeenOn::Leaf]));
    assert_eq!(ratio.seasons, BTreeSet::from([Season::Summer, Season::Autumn]));
    assert_eq!(ratio.governor, named(&read.matrix, "blade length").1.governor);
    assert!(ratio.governor.is_some());
    assert_eq!(
        values(&read.matrix, at),
        [range(100, 100), Value::DoesNotApply, range(500, 500)]
    );
    let [about, above] = owned(["blade length", "form"]);
    let blank = OfColumn::DoesNotApply { about, above, cells: 1 };
    assert_eq!(only(&read, Code::Assumed), blank.into(), "only the blade's blank cell");
    assert_eq!(again(&read.matrix).matrix, read.matrix);
}
