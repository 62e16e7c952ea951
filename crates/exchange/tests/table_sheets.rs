//! The table with the sheets beside it: questions, kinds, conditions, and rows that are odd.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_exchange::table::{Settings, Source, Sources, TableError, TableRead, read};
use spinney_model::{
    CharacterIx, Code, Difficulty, Fact, FieldIs, OfCell, OfColumn, OfSheet, Quantity, RowOf,
    Scale, SeenOn, Share, StateIx, TaxonIx, Value, WhyNoCondition,
};

#[path = "drawn/table.rs"]
mod drawn;

use drawn::{at, only, owned, places, told};

fn source(name: &str, text: &str) -> Source {
    let rows = text.trim().lines().map(|line| {
        let cells = line.split('|').map(|cell| cell.trim().to_owned());
        cells.collect::<Vec<_>>().join("\t")
    });
    Source { name: name.to_owned(), bytes: rows.collect::<Vec<_>>().join("\n").into() }
}

fn hedge(table: &str, characters: &str, kinds: &str, about: &str) -> TableRead {
    let some = |name, text: &str| (!text.is_empty()).then(|| source(name, text));
    let sources = Sources {
        table: source("hedge.csv", table),
        characters: some("characters.csv", characters),
        kinds: some("kinds.csv", kinds),
        about: some("about.csv", about),
    };
    read(&sources, &Settings::default()).unwrap()
}

const TABLE: &str = "kind       | form      | leaflets | lobes | stalk length
                     hazel      | one piece |          | lobed | 8-15 mm
                     dog rose   | feather   | 5 or 7   |       | ?
                     bramble    | ?         |          | lobed | 20-30 mm
                     dogwood    | one piece | 3        |       | 5 mm";

#[test]
fn a_character_is_described_on_its_own_sheet() {
    let read = hedge(
        TABLE,
        "Question          | CHARACTER    | seen on             | how hard | read right | by touch | safety gap | states
         Is it {}?         | form         | twig, leaf; rubbing | fair     | 90 %       | no       |            | one piece or feather or hand
         Is the stalk {}?  | stalk length | leaves              | hard     | 0.8        | yes      | 0.2 cm     |",
        "",
        "",
    );
    let form = read.matrix.character(CharacterIx(0));
    assert_eq!(form.question.as_deref(), Some("Is it {}?"));
    assert_eq!(
        form.seen_on.iter().copied().collect::<Vec<_>>(),
        [SeenOn::Twig, SeenOn::Leaf, SeenOn::Rubbing]
    );
    assert_eq!((form.difficulty, form.read_right), (Difficulty::Fair, Some(90)));
    let states = ["one piece", "feather", "hand"].map(str::to_owned).to_vec();
    assert_eq!(form.scale, Scale::Words { states });
    let stalk = read.matrix.character(CharacterIx(3));
    assert_eq!(
        (stalk.difficulty, stalk.read_right, stalk.by_touch),
        (Difficulty::Hard, Some(80), true)
    );
    let Scale::Measure { gap, .. } = stalk.scale else { panic!("no measure") };
    assert_eq!(gap, Quantity::from_whole(2));
    assert!(told(&read, Code::SheetDisagrees).is_empty(), "{:?}", read.findings);
}

#[test]
fn a_condition_makes_a_governor_in_each_of_its_spellings() {
    for condition in ["form = feather", "form: feather", "form is feather", "Form = FEATHER"] {
        let characters = format!("character | applies when\n leaflets | {condition}");
        let read = hedge(TABLE, &characters, "", "");
        let governor = read.matrix.character(CharacterIx(1)).governor.clone().unwrap();
        assert_eq!(governor.character, CharacterIx(0));
        assert_eq!(governor.states.into_iter().collect::<Vec<_>>(), [StateIx(1)]);
        let leaflets = |kind| read.matrix.cell(TaxonIx(kind), CharacterIx(1)).value.clone();
        // An empty cell under "one piece" has no meaning; under "?" nobody knows.
        assert_eq!(leaflets(0), Value::DoesNotApply);
        assert_eq!(leaflets(2), Value::Unknown);
        // A value that cannot be there is told and read as "does not apply".
        assert_eq!(leaflets(3), Value::DoesNotApply);
        let [kind, about, above] = owned(["dogwood", "leaflets", "form"]);
        let blank =
            OfColumn::DoesNotApply { about: about.clone(), above: above.clone(), cells: 1 };
        let there = OfCell::GovernedButPresent { kind, about, above, at: at("hedge.csv!C5") };
        assert_eq!(only(&read, Code::GovernedButPresent), there.into());
        let silent = told(&read, Code::Assumed);
        assert!(silent.contains(&blank.into()), "{silent:#?}");
    }
}

#[test]
fn a_condition_that_cannot_hold_is_told_and_left_out() {
    let because = |why| {
        let (about, at) = ("leaflets".to_owned(), at("characters.csv!B2"));
        Fact::from(OfColumn::NoCondition { about, why, at })
    };
    let is_odd = |text: &str| {
        let (text, is) = (text.to_owned(), FieldIs::Condition);
        Fact::from(OfSheet::FieldOdd { text, is, words: &[], at: at("characters.csv!B2") })
    };
    let [shape, stalk, form, paw] = owned(["shape", "stalk length", "form", "paw"]);
    for (condition, told_of_it) in [
        ("shape = feather", because(WhyNoCondition::NoColumn(shape))),
        ("form = paw", because(WhyNoCondition::NoState { state: paw, of: form.clone() })),
        ("stalk length = 5", because(WhyNoCondition::HoldsNumbers(stalk))),
        ("leaflets", is_odd("leaflets")),
        ("leaflets = 3", because(WhyNoCondition::HoldsNumbers("leaflets".to_owned()))),
        ("form =", because(WhyNoCondition::NoStates(form))),
    ] {
        let characters = format!("character | applies when\n leaflets | {condition}");
        let read = hedge(TABLE, &characters, "", "");
        assert_eq!(read.matrix.character(CharacterIx(1)).governor, None, "{condition}");
        let told = [told(&read, Code::SheetDisagrees), told(&read, Code::CellNotUnderstood)];
        assert_eq!(told.concat(), [told_of_it], "{condition}");
    }
    let circle = hedge(
        "kind | a | b\n x | p | q\n y | r | s",
        "character | applies when\n a | b = q\n b | a = p",
        "",
        "",
    );
    let governors: Vec<_> =
        circle.matrix.characters().iter().filter(|it| it.governor.is_some()).collect();
    assert_eq!(governors.len(), 1);
    let itself = |fact: &Fact| {
        let why = WhyNoCondition::Itself;
        matches!(fact, Fact::Column(OfColumn::NoCondition { why: because, .. }) if *because == why)
    };
    let told = told(&circle, Code::SheetDisagrees);
    assert!(told.len() == 1 && told.iter().all(itself), "{told:#?}");
}

#[test]
fn governors_stand_above_governors() {
    let read = hedge(
        "kind | leaf | form | leaflets\n pine | none | | \n rose | some | feather | 5\n oak | some | one | ",
        "character | applies when\n leaflets | form = feather\n form | leaf = some",
        "",
        "",
    );
    let cell =
        |kind, character| read.matrix.cell(TaxonIx(kind), CharacterIx(character)).value.clone();
    assert_eq!(cell(0, 1), Value::DoesNotApply);
    assert_eq!(cell(0, 2), Value::DoesNotApply);
    assert_eq!(cell(2, 2), Value::DoesNotApply);
    assert!(matches!(cell(1, 2), Value::Counts(_)));
}

/// A colon stands behind a language, or is a part of the name.
#[test]
fn another_name_may_have_a_colon() {
    let read = hedge(
        TABLE,
        "",
        "kind  | other names
         hazel | the nut: cob; \"de: Hasel\"; de: Hasel: die Nuss; : x; de:",
        "",
    );
    let names = &read.matrix.taxon(TaxonIx(0)).other_names;
    let names: Vec<_> =
        names.iter().map(|other| (other.language.as_deref(), other.name.as_str())).collect();
    assert_eq!(
        names,
        [
            (None, "the nut: cob"),
            (None, "de: Hasel"),
            (Some("de"), "Hasel: die Nuss"),
            (None, ": x"),
            (None, "de:"),
        ]
    );
}

#[test]
fn a_kind_is_described_on_its_own_sheet() {
    let read = hedge(
        TABLE,
        "",
        "kind     | scientific name  | other names                      | how often | caution     | confirm by
         hazel    | Corylus avellana | de: Hasel; cy: collen; cobnut    | 3         |             | Look for nuts.
         dog rose | Rosa canina      |                                  | 0.5       | It pricks.  |
         beech    |                  |                                  | 1         |             |",
        "",
    );
    let hazel = read.matrix.taxon(TaxonIx(0));
    assert_eq!(hazel.scientific_name.as_deref(), Some("Corylus avellana"));
    let names: Vec<_> = hazel
        .other_names
        .iter()
        .map(|other| (other.language.as_deref(), other.name.as_str()))
        .collect();
    assert_eq!(names, [(Some("de"), "Hasel"), (Some("cy"), "collen"), (None, "cobnut")]);
    assert_eq!(hazel.confirming.as_deref(), Some("Look for nuts."));
    let weights: Vec<_> = read.matrix.taxa().iter().map(|taxon| taxon.weight).collect();
    let whole = Share::from_integer;
    assert_eq!(weights, [whole(3), Share::new(1, 2), whole(1), whole(1)]);
    assert_eq!(read.matrix.taxon(TaxonIx(1)).caution.as_deref(), Some("It pricks."));
    let (of, name, at) = (RowOf::Kind, "beech".to_owned(), at("kinds.csv!A4"));
    assert_eq!(only(&read, Code::SheetDisagrees), OfSheet::NotInTable { of, name, at }.into());
}

#[test]
fn how_often_may_be_said_in_words() {
    let kinds = "kind | how often\n hazel | often\n dog rose | rarely\n bramble |";
    let read = hedge(TABLE, "", kinds, "");
    let weights: Vec<_> = read.matrix.taxa().iter().map(|taxon| taxon.weight).collect();
    assert_eq!(weights, [4, 1, 2, 2].map(Share::from_integer));
    let assumed = told(&read, Code::Assumed);
    assert!(assumed.contains(&OfSheet::OftenInWords.into()), "{assumed:#?}");
    let odd =
        hedge(TABLE, "", "kind | how often\n hazel | 0\n dog rose | -3\n bramble | now", "");
    assert!(odd.matrix.taxa().iter().all(|taxon| taxon.weight == Share::from_integer(1)));
    assert_eq!(told(&odd, Code::CellNotUnderstood).len(), 3);
}

#[test]
fn the_scene_stands_in_two_columns() {
    let about = "title | Hedge walk\n Place: | Mill Lane\n season | October\n colour | green";
    let read = hedge(TABLE, "", "", about);
    let scene = read.matrix.scene();
    assert_eq!(scene.title.as_deref(), Some("Hedge walk"));
    assert_eq!(scene.place.as_deref(), Some("Mill Lane"));
    assert_eq!((scene.season.as_deref(), &scene.part), (Some("October"), &None));
    let Fact::Sheet(OfSheet::RowNotRead { text, sheet, .. }) = only(&read, Code::LeftOut)
    else {
        panic!("{:#?}", read.findings)
    };
    assert_eq!([text, sheet], ["colour", "about.csv"]);
    assert_eq!(places(&read, Code::LeftOut), ["about.csv!A4"]);
}

#[test]
fn touching_is_guessed_from_the_heading_and_said() {
    let table = "kind | feel | edge\n holly | stiff | spiny\n ivy | soft | smooth";
    let read = hedge(table, "", "", "");
    assert!(read.matrix.character(CharacterIx(0)).by_touch);
    assert!(!read.matrix.character(CharacterIx(1)).by_touch);
    let touch = OfColumn::Touch { about: "feel".to_owned() };
    assert_eq!(only(&read, Code::Assumed), touch.into());
    let said = hedge(table, "character | by touch\n feel | no", "", "");
    assert!(!said.matrix.character(CharacterIx(0)).by_touch);
    assert!(told(&said, Code::Assumed).is_empty());
}

#[test]
fn repeated_kinds_and_headings_keep_their_rows_and_columns() {
    let read = hedge(
        "kind | edge | edge |\n hazel | toothed | smooth | red\n Hazel | wavy | smooth | red\n ivy | wavy | smooth | blue",
        "",
        "",
        "",
    );
    let names: Vec<_> = read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
    assert_eq!(names, ["hazel", "Hazel (2)", "ivy"]);
    let twice = OfSheet::KindTwice {
        names: owned(["hazel", "Hazel"]),
        called: "Hazel (2)".to_owned(),
        differ: Some(owned(["toothed", "wavy"])),
        first: at("hedge.csv!A2"),
        second: at("hedge.csv!A3"),
    };
    assert_eq!(only(&read, Code::KindTwice), twice.into());
    let characters: Vec<_> =
        read.matrix.characters().iter().map(|character| character.name.as_str()).collect();
    assert_eq!(characters, ["edge", "edge (2)", "column D"]);
    let [heading, called, nameless] = owned(["edge", "edge (2)", "column D"]);
    let edge = OfColumn::HeadingTwice { heading, called, at: at("hedge.csv!C1") };
    let none = OfColumn::NoHeading { called: nameless, at: at("hedge.csv!D1") };
    assert_eq!(told(&read, Code::HeadingTwice), [edge.into(), none.into()]);
}

#[test]
fn titles_empty_rows_and_rows_without_a_name() {
    let read = hedge(
        "Our hedge\n | \n kind | edge\n hazel | toothed\n \n | smooth\n ivy | smooth",
        "",
        "",
        "",
    );
    let names: Vec<_> = read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
    assert_eq!(names, ["hazel", "ivy"]);
    let title = OfSheet::Title { title: "Our hedge".to_owned() };
    let nameless = OfSheet::Nameless { at: at("hedge.csv!A6") };
    assert_eq!(told(&read, Code::LeftOut), [title.into(), nameless.into()]);
    assert_eq!(places(&read, Code::LeftOut), ["hedge.csv!A1", "hedge.csv!A6"]);
}

#[test]
fn a_column_of_notes_is_left_out() {
    let rows: Vec<_> =
        (0..65).map(|at| format!("k{at} | note {} here | red", words(at))).collect();
    let read = hedge(&format!("kind | notes | colour\n{}", rows.join("\n")), "", "", "");
    assert_eq!(read.matrix.characters().len(), 1);
    assert_eq!(read.matrix.taxa().len(), 65);
    let notes = OfColumn::Notes { about: "notes".to_owned(), most: 64 };
    assert_eq!(only(&read, Code::LeftOut), notes.into());
    let rows: Vec<_> = (0..64).map(|at| format!("k{at} | note {} here", words(at))).collect();
    let read = hedge(&format!("kind | notes\n{}", rows.join("\n")), "", "", "");
    assert_eq!(read.matrix.characters().len(), 1, "64 are still states");
}

/// A number in letters, so that it is not read as a count.
fn words(number: usize) -> String {
    number.to_string().bytes().map(|digit| char::from(digit - b'0' + b'a')).collect()
}

#[test]
fn ten_thousand_kinds_in_thirty_columns_are_read_whole() {
    let mut text = String::from("kind");
    (0..30).for_each(|at| text.push_str(&format!("\tcharacter {at}")));
    for kind in 0..10_000 {
        text.push_str(&format!("\nkind {kind}"));
        for at in 0..30 {
            text.push('\t');
            text.push_str(match (kind + at) % 4 {
                0 => "toothed",
                1 => "toothed or smooth",
                2 => "smooth 3, wavy 2",
                _ => "?",
            });
        }
    }
    let table = Source { name: "large.tsv".to_owned(), bytes: text.into() };
    let sources = Sources { table, ..Sources::default() };
    let read = read(&sources, &Settings::default()).unwrap();
    assert_eq!((read.matrix.taxa().len(), read.matrix.characters().len()), (10_000, 30));
    assert!(read.findings.iter().all(|finding| finding.code == Code::Unknown));
}

#[test]
fn without_a_kind_nothing_is_read_and_that_is_said() {
    for text in ["", "kind\tedge", "\n\n\n", " , , \n"] {
        let table = Source { name: "empty.csv".to_owned(), bytes: text.into() };
        let sources = Sources { table, ..Sources::default() };
        let error = read(&sources, &Settings::default()).unwrap_err();
        assert_eq!(error, TableError::NoKinds { name: "empty.csv".to_owned() });
    }
}

#[test]
fn the_usual_gap_is_a_setting() {
    let sources = Sources {
        table: source("t.csv", "kind | a (mm)\n x | 5\n y | 9"),
        ..Sources::default()
    };
    let gap = |gap| {
        let read = read(&sources, &Settings { gap, ..Settings::default() }).unwrap();
        match read.matrix.character(CharacterIx(0)).scale {
            Scale::Measure { gap, .. } => gap,
            _ => panic!("no measure"),
        }
    };
    assert_eq!(gap(None), Quantity::from_whole(5));
    assert_eq!(gap(Some(Quantity::from_whole(1))), Quantity::from_whole(1));
}

#[test]
fn a_kind_of_one_unknown_cell_is_named_by_the_cell() {
    let read = hedge("kind | edge\n hazel | toothed\n maple | ?", "", "", "");
    let unknown: Vec<_> =
        read.findings.iter().filter(|finding| finding.code == Code::Unknown).collect();
    assert_eq!(unknown[0].place.to_string(), "hedge.csv!B3");
}
