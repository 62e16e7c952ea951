//! A spreadsheet comes in, and reading the collection gives the spreadsheet's own matrix.

use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_model::{
    AboutField, CharacterEdit, CharacterField, CharacterId, Edit, KindField, KindId, Quantity,
    Value,
};

use super::{Field, Left, OddUnit, Taken, not_understood, take_in};
use crate::Collection;
use crate::laid::Laid;

/// The invented hedge walk, as its files stand with the demo.
fn source(name: &str) -> Source {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../spinney/scenarios/hedge_walk/");
    let bytes = std::fs::read(format!("{folder}{name}.csv")).expect("the demo has it");
    Source { name: name.to_owned(), bytes }
}

fn take(collection: &Collection, sheets: &[Source], who: &str) -> Result<Taken, OddUnit> {
    take_in(collection, &table::typed_sheets(sheets).expect("it can be read"), who)
}

fn edits(collection: &Collection, sheets: &[Source], source: &str) -> Vec<Edit> {
    take(collection, sheets, source).expect("its units fit").edits
}

#[test]
fn what_comes_in_means_what_it_means_as_a_file() {
    let names = ["table", "characters", "kinds", "about"];
    let sheets = names.map(source);
    let mut collection = Collection::default();
    for edit in edits(&collection.clone(), &sheets, "") {
        collection.apply(&edit);
    }
    let laid = Laid::of(&collection).expect("there are kinds");
    let sources = Sources {
        table: source("table"),
        characters: Some(source("characters")),
        kinds: Some(source("kinds")),
        about: Some(source("about")),
    };
    let read = table::read(&sources, &Settings::default()).expect("it can be read");
    let without_version = spinney_model::Scene { version: None, ..read.matrix.scene().clone() };
    assert_eq!(laid.matrix, read.matrix.with_scene(without_version));
    assert!(edits(&collection, &sheets, "").iter().all(|edit| {
        let mut again = collection.clone();
        again.apply(edit);
        again == collection
    }));
}

fn sheet(name: &str, rows: &[&str]) -> Source {
    let row = |row: &&str| row.split('|').map(|cell| cell.trim().to_owned()).collect();
    table::typed(name, rows.iter().map(row).collect())
}

/// A small table with a caution, a unit and a title.
fn small() -> Collection {
    let sheets = [
        sheet("table", &["kind | edge | blade length (mm)", "oak | lobed | 60-110"]),
        sheet("characters", &["character | question", "edge | Is the edge {}?"]),
        sheet("kinds", &["kind | caution", "oak | Acorns upset the stomach."]),
        sheet("about", &["title | Hedge walk"]),
    ];
    let mut collection = Collection::default();
    for edit in edits(&collection.clone(), &sheets, "") {
        collection.apply(&edit);
    }
    collection
}

#[test]
fn a_groups_sheets_fill_what_is_empty_and_leave_what_is_filled() {
    let before = small();
    let sheets = [
        sheet("table", &["kind | edge", "oak | wavy"]),
        sheet(
            "characters",
            &["character | question | difficulty", "edge | Is it {} all round? | hard"],
        ),
        sheet(
            "kinds",
            &["kind | caution | where", "oak | Nothing. | at the gate", "ash | Sneeze. |"],
        ),
        sheet("about", &["title | Our walk", "place | Mill Lane"]),
    ];
    let taken = take(&before, &sheets, "group Blue").expect("no unit in it");
    let mut after = before.clone();
    taken.edits.iter().for_each(|edit| after.apply(edit));
    let (oak, edge) = (KindId(1), CharacterId(1));
    let fields = [
        (Field::Character(edge, CharacterField::Question), "Is the edge {}?"),
        (Field::Character(edge, CharacterField::Difficulty), "hard"),
        (Field::Kind(oak, KindField::Caution), "Acorns upset the stomach."),
        (Field::Kind(oak, KindField::Where), "at the gate"),
        (Field::Kind(KindId(2), KindField::Caution), "Sneeze."),
        (Field::About(AboutField::Title), "Hedge walk"),
        (Field::About(AboutField::Place), "Mill Lane"),
    ];
    for (field, text) in fields {
        assert_eq!(field.now(&after), text, "{field:?}");
    }
    let left = |of, theirs: &str| Left { of, theirs: theirs.to_owned() };
    let expected = [
        left(Field::Character(edge, CharacterField::Question), "Is it {} all round?"),
        left(Field::Kind(oak, KindField::Caution), "Nothing."),
        left(Field::About(AboutField::Title), "Our walk"),
    ];
    assert_eq!(taken.left, expected);
    assert_eq!(after.cells.said(oak, edge, ""), "lobed");
    assert_eq!(after.cells.said(oak, edge, "group Blue"), "wavy");
    // Without a name the sheets decide, as the table does.
    let taken = take(&before, &sheets, "").expect("no unit in it");
    assert!(taken.left.is_empty());
    // What one sheet says twice is not written over by itself either.
    let sheets = [sheet("kinds", &["kind | where", "oak | here", "oak | there"])];
    let taken = take(&before, &sheets, "").expect("no unit in it");
    assert_eq!(taken.left, [left(Field::Kind(oak, KindField::Where), "there")]);
    assert_eq!(taken.edits.len(), 1);
}

#[test]
fn numbers_in_another_unit_take_it_along() {
    let before = small();
    let blade = CharacterId(2);
    let taken_from = |rows: &[&str], beside: &[Source]| {
        let sheets: Vec<_> =
            [sheet("table", rows)].into_iter().chain(beside.to_vec()).collect();
        let taken = take(&before, &sheets, "group Blue")?;
        let mut after = before.clone();
        taken.edits.iter().for_each(|edit| after.apply(edit));
        assert_eq!(after.characters.len(), 2, "{rows:?} is no new column");
        assert_eq!(after.character_field(blade, CharacterField::Unit), "mm");
        Ok::<_, OddUnit>(after)
    };
    let ash = |after: &Collection| after.cells.said(KindId(2), blade, "group Blue").to_owned();
    let rows = ["kind | Blade length (cm)", "ash | 2-4", "elm | 30 mm", "yew | n/a"];
    let after = taken_from(&rows, &[]).expect("cm fit mm");
    assert_eq!(ash(&after), "2-4 cm");
    assert_eq!(after.cells.said(KindId(3), blade, "group Blue"), "30 mm");
    assert_eq!(after.cells.said(KindId(4), blade, "group Blue"), "n/a");
    let laid = Laid::of(&after).expect("there are kinds");
    let cell = laid
        .matrix
        .cell(laid.taxon(KindId(2)).expect("ash"), laid.character(blade).expect("it"));
    let whole = Quantity::from_whole;
    assert_eq!(cell.value, Value::Range { low: whole(20), high: whole(40) });
    for same in ["kind | blade length (mm)", "kind | blade length", "kind | blade length in mm"]
    {
        assert_eq!(ash(&taken_from(&[same, "ash | 20-40"], &[]).expect("it fits")), "20-40");
    }
    // The group's own sheet says it, and the heading does not.
    let beside = [sheet("characters", &["character | unit", "blade length | cm"])];
    let rows = ["kind | blade length", "ash | 2-4"];
    assert_eq!(ash(&taken_from(&rows, &beside).expect("cm fit mm")), "2-4 cm");
    let odd = taken_from(&["kind | blade length (g)", "ash | 2-4"], &[]);
    let expected =
        OddUnit { name: "blade length".into(), theirs: "g".into(), ours: "mm".into() };
    assert_eq!(odd.expect_err("grams are no length"), expected);
}

#[test]
fn numbers_of_which_nobody_said_the_unit_are_not_given_one_by_others() {
    let mut before = small();
    let (oak, teeth) = (KindId(1), CharacterId(3));
    before.apply(&Edit::Character(teeth, CharacterEdit::Add("tooth".into())));
    let sheets = [sheet("table", &["kind | tooth (mm)", "ash | 3"])];
    let unit = |taken: &[Edit]| {
        let says = |edit: &&Edit| matches!(edit, Edit::Character(id, CharacterEdit::Describe(CharacterField::Unit, _)) if *id == teeth);
        taken.iter().filter(says).count()
    };
    let taken = take(&before, &sheets, "group Blue").expect("an empty column");
    assert_eq!(unit(&taken.edits), 1, "it has no number yet that could mean another");
    let cell = |text: &str| Edit::Cell {
        kind: oak,
        character: teeth,
        source: "group Red".into(),
        text: text.into(),
    };
    before.apply(&cell("?"));
    assert!(take(&before, &sheets, "group Blue").is_ok());
    before.apply(&cell("4-6"));
    let words = [sheet("table", &["kind | edge (m)", "ash | 3"])];
    assert!(take(&before, &words, "group Blue").is_err(), "lobed is no metre");
    let odd = take(&before, &sheets, "group Blue").expect_err("4-6 what?");
    assert_eq!((odd.theirs.as_str(), odd.ours.as_str()), ("mm", ""));
}

#[test]
fn what_stands_twice_is_two_as_in_a_file() {
    let rows =
        ["kind | edge | Edge | edge (leaf)", "oak | lobed | wavy | x", "Oak | round | |"];
    let sheets = [sheet("table", &rows)];
    let mut collection = Collection::default();
    for _ in 0..2 {
        for edit in edits(&collection.clone(), &sheets, "") {
            collection.apply(&edit);
        }
        let characters = collection.characters.keys();
        let names: Vec<&str> = characters.map(|id| collection.character_name(*id)).collect();
        assert_eq!(names, ["edge", "Edge (2)", "edge (leaf)"]);
        let kinds: Vec<String> =
            collection.kinds.keys().map(|id| collection.name(*id)).collect();
        assert_eq!(kinds, ["oak", "Oak (2)"]);
        for (kind, character, text) in [(1, 1, "lobed"), (1, 2, "wavy"), (2, 1, "round")] {
            let said = collection.cells.said(KindId(kind), CharacterId(character), "");
            assert_eq!(said, text);
        }
    }
    let read = Sources { table: sheets[0].clone(), ..Sources::default() };
    let read = table::read(&read, &Settings::default()).expect("it can be read").matrix;
    let names: Vec<&str> = read.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
    assert_eq!(names, ["oak", "Oak (2)"]);
    let names: Vec<&str> = read.characters().iter().map(|c| c.name.as_str()).collect();
    assert_eq!(names, ["edge", "Edge (2)", "edge (leaf)"]);
}

#[test]
fn a_sheet_is_read_here_as_the_command_line_reads_it() {
    // A title above, headings under other names in another order, a kind twice, a note.
    let sheets = [
        sheet(
            "finds.csv",
            &[
                "Our hedge, invented",
                "kind | edge | legs | blade length",
                "oak | lobed / wavy | 4 | 40-20",
                "ash | toothed | 2 | 3 cm",
                "Oak | smooth | |",
                " | smooth | |",
            ],
        ),
        sheet(
            "characters.csv",
            &[
                "how to ask | name | holds | colour of the pen",
                "Is the edge {}? | edge | |",
                "How many legs? | legs | words | red",
            ],
        ),
        sheet(
            "Kinds.csv",
            &[
                "take care | species | photo | where found",
                "Acorns upset the stomach. | oak | oak.jpg | at the gate",
            ],
        ),
        sheet("about.csv", &["Title: | Hedge walk", "weather | rain"]),
    ];
    let typed = table::typed_sheets(&sheets).expect("it can be read");
    let taken = take_in(&Collection::default(), &typed, "").expect("no unit in it");
    let mut collection = Collection::default();
    taken.edits.iter().for_each(|edit| collection.apply(edit));
    let (oak, edge, legs) = (KindId(1), CharacterId(1), CharacterId(2));
    assert_eq!(collection.character_field(edge, CharacterField::Question), "Is the edge {}?");
    assert_eq!(collection.character_field(legs, CharacterField::Values), "words");
    assert_eq!(collection.kinds[&oak].field(KindField::Caution), "Acorns upset the stomach.");
    assert_eq!(collection.kinds[&oak].field(KindField::Where), "at the gate");
    assert_eq!(collection.about_field(AboutField::Title), "Hedge walk");
    assert_eq!(taken.pictures, 1);
    let [finds, characters, kinds, about] = sheets;
    let sources = Sources {
        table: finds,
        characters: Some(characters),
        kinds: Some(kinds),
        about: Some(about),
    };
    let read = table::read(&sources, &Settings::default()).expect("it can be read");
    assert_eq!(read.findings, typed.findings, "the same findings");
    let laid = Laid::of(&collection).expect("there are kinds");
    let without_pictures: Vec<_> = (read.matrix.taxa().iter())
        .map(|taxon| spinney_model::Taxon { picture: None, ..taxon.clone() })
        .collect();
    let expected = read.matrix.with_taxa(without_pictures).expect("the same kinds");
    assert_eq!(laid.matrix, expected, "the same matrix");
    let english = spinney_voice::Tongue::of_terminal();
    let told: Vec<String> = not_understood(&typed)
        .map(|finding| spinney_voice::finding(finding, english).0)
        .collect();
    for part in
        ["Our hedge", "colour of the pen", "weather", "40-20", "lobed / wavy", "no name"]
    {
        assert!(told.iter().any(|sentence| sentence.contains(part)), "{part}: {told:?}");
    }
}

#[test]
fn a_name_in_other_letters_is_the_find_that_is_here_and_is_told() {
    let before = small();
    let sheets = [sheet("table", &["kind | edge", "Oak | wavy", "ash | smooth"])];
    let taken = take(&before, &sheets, "group Blue").expect("no unit in it");
    assert_eq!(taken.taken_for, [("Oak".to_owned(), KindId(1))]);
}

#[test]
fn writing_is_no_table_here_either() {
    let text =
        "We went to the hedge today and looked at leaves.\nIt rained all morning, sadly.\n";
    let source = Source { name: "letter".into(), bytes: text.into() };
    let error = table::typed_sheets(&[source]).expect_err("a letter");
    let (name, what) = ("letter".to_owned(), table::Instead::Writing);
    assert_eq!(error, table::TableError::NotATable { name, what });
}
