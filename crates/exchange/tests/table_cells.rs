//! Cells as people type them, in small tables a teacher can read.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_model::{
    CellTrouble, CharacterIx, Code, Fact, FieldIs, KindAt, LastAt, MoreLike, OfCell, OfColumn,
    OfSheet, Quantity, ReadAs, Scale, StateIx, TaxonIx, Unit, Value, WrittenIn,
};

#[path = "drawn/table.rs"]
mod drawn;

use drawn::*;

#[test]
fn words_alternatives_and_counts_of_what_was_seen() {
    let read = table(
        "kind  | edge             | lobes
         hazel | toothed          | lobed or entire
         ivy   | Smooth           | lobed 8, entire 2
         oak   | toothed OR wavy  | 3 entire; 1 lobed
         lime  |  TOOTHED         | entire: 2, lobed: 2
         elm   | toothed          | lobed 75 %, entire 25 %",
    );
    assert_eq!(states(&read, 0), ["toothed", "Smooth", "wavy"]);
    assert_eq!(states(&read, 1), ["lobed", "entire"]);
    let half = |a: i128, b: i128, whole: i128| {
        Value::States(vec![(StateIx(0), share(a, whole)), (StateIx(1), share(b, whole))])
    };
    assert_eq!(value(&read, 0, 1), half(1, 1, 2));
    assert_eq!(value(&read, 1, 1), half(4, 1, 5));
    assert_eq!(value(&read, 2, 1), half(1, 3, 4));
    assert_eq!(value(&read, 3, 1), half(1, 1, 2));
    assert_eq!(value(&read, 4, 1), half(3, 1, 4));
    let seen = |kind| read.matrix.cell(TaxonIx(kind), CharacterIx(1)).seen.map(|seen| seen.on);
    assert_eq!([0, 1, 2, 3, 4].map(seen), [None, Some(10), Some(4), Some(4), None]);
    assert_eq!(value(&read, 3, 0), Value::States(vec![(StateIx(0), share(1, 1))]));
    assert!(read.findings.is_empty(), "{:?}", read.findings);
}

/// A common denominator of a million million is the finest.
#[test]
fn shares_are_read_as_finely_as_can_be_added_up() {
    for (whole, fine) in [
        (3, true),
        (999_999_999_999_i64, true),
        (1_000_000_000_000, true),
        (1_000_000_000_001, false),
    ] {
        let read = table(&format!(
            "kind  | lobes
             hazel | lobed 1/{whole}, entire {}/{whole}
             ivy   | lobed
             oak   | entire",
            whole - 1
        ));
        let rest = share(i128::from(whole) - 1, whole.into());
        let wanted = match fine {
            true => {
                Value::States(vec![(StateIx(0), share(1, whole.into())), (StateIx(1), rest)])
            }
            false => Value::Unknown,
        };
        assert_eq!(value(&read, 0, 0), wanted, "{whole}");
        assert_eq!(read.findings.is_empty(), fine, "{whole}: {:?}", read.findings);
    }
}

#[test]
fn counts_in_a_row_need_no_comma() {
    let read = table(
        "kind  | horned     | lobes
         hazel | yes 9 no 1 | lobed 3 entire 1
         ivy   | 9 no 1 yes | 3 entire 1 lobed
         oak   | yes        | lobed",
    );
    assert_eq!(states(&read, 0), ["yes", "no"]);
    assert_eq!(states(&read, 1), ["lobed", "entire"]);
    let of = |first: i128, second: i128, whole: i128| {
        Value::States(vec![
            (StateIx(0), share(first, whole)),
            (StateIx(1), share(second, whole)),
        ])
    };
    assert_eq!(value(&read, 0, 0), of(9, 1, 10));
    assert_eq!(value(&read, 1, 0), of(1, 9, 10));
    assert_eq!(value(&read, 0, 1), of(3, 1, 4));
    assert_eq!(value(&read, 1, 1), of(1, 3, 4));
    assert!(read.findings.is_empty(), "{:?}", read.findings);
}

#[test]
fn words_beside_numbers_are_not_always_counts() {
    for cell in ["between 5 and 7", "from 3 to 4", "type 2", "5 cm 3 mm", "2 rows of 5"] {
        let read = table(&format!("kind | what\nhazel | {cell}\nivy | toothed\noak | smooth"));
        let two = matches!(value(&read, 0, 0), Value::States(states) if states.len() > 1);
        assert!(!two, "{cell}");
    }
}

#[test]
fn unknown_and_does_not_apply_are_never_the_same() {
    let read = table(
        "kind  | edge    | leaflets
         hazel | ?       | n/a
         ivy   |         | Does not apply
         oak   | toothed | NA
         rose  | smooth  | 5",
    );
    assert_eq!(value(&read, 0, 0), Value::Unknown);
    assert_eq!(value(&read, 1, 0), Value::Unknown);
    for kind in 0..3 {
        assert_eq!(value(&read, kind, 1), Value::DoesNotApply);
    }
    // One finding for the character, with the cells in it.
    let kinds = [("hazel", "hedge.csv!B2"), ("ivy", "hedge.csv!B3")];
    let kinds = kinds.map(|(kind, cell)| KindAt { kind: kind.to_owned(), at: at(cell) }).into();
    let about = "edge".to_owned();
    let unknown = OfCell::NotRecorded { about, kinds, more: 0, beside_marks: false };
    assert_eq!(only(&read, Code::Unknown), unknown.into());
    assert_eq!(places(&read, Code::Unknown), ["edge"]);
}

#[test]
fn a_lone_dash_is_asked_back_and_means_unknown_meanwhile() {
    let read = table("kind | edge\n hazel | -\n ivy | –\n oak | wavy");
    assert_eq!(value(&read, 0, 0), Value::Unknown);
    assert_eq!(value(&read, 1, 0), Value::Unknown);
    let dash = |cell, kind, text| read_as(typed(cell, kind, "edge", text), ReadAs::Unknown);
    assert_eq!(
        told(&read, Code::CellNotPlain),
        [dash("hedge.csv!B2", "hazel", "-"), dash("hedge.csv!B3", "ivy", "–")]
    );
    assert_eq!(places(&read, Code::CellNotPlain), ["hedge.csv!B2", "hedge.csv!B3"]);
}

#[test]
fn lengths_in_any_unit_with_any_dash_are_kept_in_millimetres() {
    let read = table(
        "kind | blade length (mm)
         a | 4 cm
         b | 40 mm
         c | 3,5 cm
         d | 3.5cm
         e | 30-60
         f | 30 – 60
         g | 30—60 mm
         h | 30‑60
         i | 30 to 60
         j | 3 cm - 45 mm
         k | 1 in
         l | 0.5-1 inch
         m | 0,04 m
         n | 1-2 cm",
    );
    let wanted = [
        (40, 40),
        (40, 40),
        (35, 35),
        (35, 35),
        (30, 60),
        (30, 60),
        (30, 60),
        (30, 60),
        (30, 60),
        (30, 45),
    ];
    for (kind, (low, high)) in wanted.into_iter().enumerate() {
        assert_eq!(value(&read, kind, 0), mm(low * 1000, high * 1000), "kind {kind}");
    }
    assert_eq!(value(&read, 10, 0), mm(25_400, 25_400));
    assert_eq!(value(&read, 11, 0), mm(12_700, 25_400));
    assert_eq!(value(&read, 12, 0), mm(40_000, 40_000));
    assert_eq!(value(&read, 13, 0), mm(10_000, 20_000));
    let character = read.matrix.character(CharacterIx(0));
    assert_eq!(character.name, "blade length");
    let gap = Quantity::from_whole(5);
    assert_eq!(character.scale, Scale::Measure { unit: Unit::Millimetres, gap });
    assert!(read.findings.is_empty(), "{:?}", read.findings);
}

#[test]
fn whole_numbers_without_unit_are_counts_and_a_range_is_each_of_them() {
    let read =
        table("kind | leaflets\n rose | 5-7\n rowan | 13 or 15\n ash | 9\n elder | 5 leaflets");
    let third = share(1, 3);
    assert_eq!(value(&read, 0, 0), Value::Counts(vec![(5, third), (6, third), (7, third)]));
    assert_eq!(value(&read, 1, 0), Value::Counts(vec![(13, share(1, 2)), (15, share(1, 2))]));
    assert_eq!(value(&read, 2, 0), Value::Counts(vec![(9, share(1, 1))]));
    assert_eq!(value(&read, 3, 0), Value::Counts(vec![(5, share(1, 1))]));
    assert!(read.findings.is_empty(), "{:?}", read.findings);
}

#[test]
fn a_length_without_unit_is_read_in_millimetres_and_said() {
    for (about, least) in [("stalk length", "3-5"), ("stalk", "3-50")] {
        let read = table(&format!("kind | {about}\n a | {least}\n b | 9"));
        assert_eq!(value(&read, 1, 0), mm(9_000, 9_000));
        let (about, unit) = (about.to_owned(), Unit::Millimetres);
        let assumed = OfColumn::UnitAssumed { about, unit, at: at("hedge.csv!B2") };
        assert_eq!(only(&read, Code::Assumed), assumed.into());
    }
}

#[test]
fn decimals_without_unit_are_a_measure_without_unit() {
    let read = table("kind | ratio\n a | 1,5\n b | 2-2.5");
    let scale = &read.matrix.character(CharacterIx(0)).scale;
    assert!(matches!(scale, Scale::Measure { unit: Unit::Unstated, .. }));
    assert_eq!(value(&read, 0, 0), mm(1_500, 1_500));
    assert_eq!(told(&read, Code::Assumed).len(), 1);
}

#[test]
fn numbers_beside_centimetres_are_read_in_centimetres_and_the_cell_is_named() {
    let read = table("kind | stalk\n a | 3 cm\n b | 4");
    assert_eq!(value(&read, 1, 0), mm(40_000, 40_000));
    let (about, unit, at) = ("stalk".to_owned(), WrittenIn::Centimetres, at("hedge.csv!B3"));
    assert_eq!(only(&read, Code::Assumed), OfColumn::UnitOfOthers { about, unit, at }.into());
}

#[test]
fn degrees_and_grams_are_units_too() {
    let read = table("kind | angle | weight\n a | 30-45° | 2 g\n b | 60 degrees | 0.5 kg");
    assert_eq!(value(&read, 0, 0), mm(30_000, 45_000));
    assert_eq!(value(&read, 1, 1), mm(500_000, 500_000));
    let unit = |at| match read.matrix.character(CharacterIx(at)).scale {
        Scale::Measure { unit, .. } => unit,
        _ => panic!("no measure"),
    };
    assert_eq!([unit(0), unit(1)], [Unit::Degrees, Unit::Grams]);
}

#[test]
fn a_measure_with_or_is_one_range_and_said() {
    let read = table("kind | stalk (mm)\n a | 3 or 9\n b | 20");
    assert_eq!(value(&read, 0, 0), mm(3_000, 9_000));
    let cell = typed("hedge.csv!B2", "a", "stalk", "3 or 9");
    assert_eq!(only(&read, Code::CellNotPlain), read_as(cell, ReadAs::OneRange));
}

#[test]
fn yes_and_no_in_any_form_are_two_states() {
    let read = table("kind | spines?\n holly | Yes\n ivy | n\n oak | NO\n rose | y or no");
    assert_eq!(states(&read, 0), ["yes", "no"]);
    assert_eq!(value(&read, 1, 0), Value::States(vec![(StateIx(1), share(1, 1))]));
    // Both are states even where only one is met, so that a question can be asked.
    assert_eq!(states(&table("kind | spines\n holly | yes"), 0), ["yes", "no"]);
}

#[test]
fn what_cannot_be_understood_is_named_with_its_cell_and_read_as_unknown() {
    let text =
        "kind | stalk (mm)\n a | about 5\n b | >40\n c | 5 +\n d | 1,500\n e | 3-5-7\n f | 12";
    let read = table(text);
    for kind in 0..5 {
        assert_eq!(value(&read, kind, 0), Value::Unknown, "kind {kind}");
    }
    let [thousands, decimals] = owned(["1500", "1.5"]);
    // What is odd in the same way is told together.
    let asked_back = [
        ("B2", "a", "about 5", CellTrouble::NotANumber),
        ("B4", "c", "5 +", CellTrouble::NotANumber),
        ("B6", "e", "3-5-7", CellTrouble::NotANumber),
        ("B3", "b", ">40", CellTrouble::OneEnd),
        ("B5", "d", "1,500", CellTrouble::Ambiguous { thousands, decimals: Some(decimals) }),
    ]
    .map(|(cell, kind, text, trouble)| {
        odd(typed(&format!("hedge.csv!{cell}"), kind, "stalk", text), trouble)
    });
    assert_eq!(told(&read, Code::CellNotUnderstood), asked_back);
}

#[test]
fn the_majority_of_a_mixed_column_wins_and_the_rest_is_told() {
    let read = table("kind | edge\n a | toothed\n b | smooth\n c | 4");
    assert_eq!(value(&read, 2, 0), Value::Unknown);
    let cell = typed("hedge.csv!B4", "c", "edge", "4");
    assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, CellTrouble::ANumber));
    let read = table("kind | leaflets\n a | 3\n b | many\n c | 5");
    assert_eq!(value(&read, 1, 0), Value::Unknown);
    let cell = typed("hedge.csv!B3", "b", "leaflets", "many");
    assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, CellTrouble::AWord));
}

#[test]
fn a_hundred_alike_are_said_once() {
    let rows: Vec<_> = (0..100).map(|kind| format!("k{kind} | >4")).collect();
    let read = table(&format!("kind | leaflets\n{}\n x | 3", rows.join("\n")));
    let all = told(&read, Code::CellNotUnderstood);
    assert_eq!(all.len(), 6);
    let (last, like) = (LastAt::Cell(at("hedge.csv!B101")), Box::new(all[4].clone()));
    assert_eq!(all[5], Fact::More(MoreLike { more: 95, last, like }));
}

#[test]
fn words_that_look_alike_are_told_and_never_merged() {
    let read = table("kind | edge\n a | toothed\n b | tooted\n c | smooth\n d | rough");
    assert_eq!(states(&read, 0), ["toothed", "tooted", "smooth", "rough"]);
    let alike = |cell| {
        let (states, about) = (owned(["toothed", "tooted"]), "edge".to_owned());
        Fact::from(OfCell::Alike { states, about, at: Some(at(cell)) })
    };
    assert_eq!(only(&read, Code::StatesAlike), alike("hedge.csv!B3"));
    // The slip stands first: it is told there, not at a kind that is spelt right.
    let read = table("kind | edge\n a | tooted\n b | toothed\n c | smooth\n d | toothed");
    assert_eq!(only(&read, Code::StatesAlike), alike("hedge.csv!B2"));
    let plain =
        table("kind | feel\n a | smooth\n b | rough\n c | round\n d | 1 pair\n e | soft");
    assert!(told(&plain, Code::StatesAlike).is_empty());
}

#[test]
fn a_list_without_counts_is_read_as_or() {
    let read = table("kind | edge\n a | toothed, wavy\n b | wavy");
    let half = share(1, 2);
    assert_eq!(value(&read, 0, 0), Value::States(vec![(StateIx(0), half), (StateIx(1), half)]));
    let cell = typed("hedge.csv!B2", "a", "edge", "toothed, wavy");
    let words = owned(["toothed", "wavy"]).to_vec();
    assert_eq!(only(&read, Code::CellNotPlain), read_as(cell, ReadAs::Each { words }));
}

#[test]
fn names_that_end_in_a_number_are_names() {
    let read = table("kind | group\n a | group 1\n b | group 2\n c | group 1");
    assert_eq!(states(&read, 0), ["group 1", "group 2"]);
    let numbered = OfColumn::NumberedNames { about: "group".to_owned() };
    assert_eq!(only(&read, Code::Assumed), numbered.into());
}

#[test]
fn a_range_the_wrong_way_round_is_asked_about_and_not_turned() {
    for (heading, text, meant) in [
        ("stalk (mm)", "60-30", Some("30-60")),
        ("height (cm)", "800-200", Some("200-800")),
        ("stalk (mm)", "60 to 30 mm", Some("30 to 60 mm")),
        ("stalk (mm)", "6 cm - 30 mm", None),
        ("leaflets", "7-5", Some("5-7")),
    ] {
        let read = table(&format!("kind | {heading}\n a | {text}\n b | 5"));
        assert_eq!(value(&read, 0, 0), Value::Unknown, "{text}");
        let about = heading.split(" (").next().unwrap();
        let trouble = CellTrouble::Backwards { turned: meant.map(str::to_owned) };
        let cell = typed("hedge.csv!B2", "a", about, text);
        assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, trouble));
        assert!(told(&read, Code::CellNotPlain).is_empty());
    }
}

#[test]
fn a_stroke_with_spaces_or_a_comma_means_two_states() {
    let read = table(
        "kind | edge
         a | toothed / smooth
         b | toothed, smooth
         c | smooth
         d | toothed or smooth
         e | toothed/wavy
         f | 3/4 toothed, 1/4 smooth",
    );
    assert_eq!(states(&read, 0), ["toothed", "smooth", "wavy"]);
    let both = value(&read, 3, 0);
    assert_eq!([0, 1].map(|kind| value(&read, kind, 0)), [both.clone(), both]);
    let doubtful = told(&read, Code::CellNotPlain);
    assert_eq!(doubtful.len(), 3, "each is said: {doubtful:?}");
    let declared = "character | states\n edge | green/brown; red / blue";
    let read = with_characters("kind | edge\n a | green/brown\n b | red", Some(declared));
    assert_eq!(states(&read, 0), ["green/brown", "red", "blue"]);
}

#[test]
fn what_the_second_sheet_says_comes_first() {
    let read = with_characters(
        "kind | legs | stalk | edge
         a | 6 | 3-30 | smooth
         b | 8 | 5 | tooted",
        Some(
            "character | unit | gap | states
             legs | mm | 2 |
             stalk | count | |
             edge | | | toothed; smooth",
        ),
    );
    let gap = Quantity::from_whole(2);
    let legs = &read.matrix.character(CharacterIx(0)).scale;
    assert_eq!(*legs, Scale::Measure { unit: Unit::Millimetres, gap });
    assert_eq!(read.matrix.character(CharacterIx(1)).scale, Scale::Counts);
    assert_eq!(states(&read, 2), ["toothed", "smooth", "tooted"]);
    let [state, about] = owned(["tooted", "edge"]);
    let new = OfCell::Undeclared { state, about, at: at("hedge.csv!D3") };
    assert_eq!(only(&read, Code::SheetDisagrees), new.into());
    only(&read, Code::StatesAlike);
}

/// A gap is read in its own unit, else in its column's; of another sort it is none.
#[test]
fn a_gap_may_have_a_unit_of_its_own() {
    let gap = |row: &str| {
        let read = with_characters(
            "kind | stalk\n a | 3-30\n b | 60-70",
            Some(&format!("character | unit | gap\n stalk | {row}")),
        );
        let Scale::Measure { gap, .. } = read.matrix.character(CharacterIx(0)).scale else {
            panic!("no measure")
        };
        (gap, told(&read, Code::CellNotUnderstood).len())
    };
    let millimetres = |mm| Quantity::from_whole(mm);
    assert_eq!(gap("mm | 0.5 cm"), (millimetres(5), 0));
    assert_eq!(gap("cm | 2 mm"), (millimetres(2), 0));
    assert_eq!(gap("cm | 3"), (millimetres(30), 0));
    let usual = gap("mm |").0;
    assert_eq!(gap("mm | 2 g"), (usual, 1), "grams are no length");
}

#[test]
fn a_column_goes_on_to_be_written_as_it_was_typed() {
    let read = table(
        "kind | stalk (cm) | blade | bud (mm) | trunk | twig (in)\n\
         a | 4 | 6 cm | 5 | 2 m | 1\n b | 1 | 90 mm | 9 | 3 m | 2\n c | 2 | 5 cm | 2 | 9 m | 3",
    );
    let written: Vec<_> = read.matrix.characters().iter().map(|c| c.sign()).collect();
    assert_eq!(written, ["cm", "cm", "mm", "m", "in"]);
    assert_eq!(
        value(&read, 0, 0),
        mm(40_000, 40_000),
        "it is kept in millimetres all the same"
    );
}

#[test]
fn no_length_is_less_than_nothing() {
    let read = table(
        "kind  | stalk length (mm)
         hazel | -3
         ivy   | -3 to 6
         lime  | 0-4",
    );
    assert_eq!(value(&read, 0, 0), Value::Unknown);
    assert_eq!(value(&read, 1, 0), Value::Unknown);
    assert!(matches!(value(&read, 2, 0), Value::Range { .. }));
    let below = [("hedge.csv!B2", "hazel", "-3"), ("hedge.csv!B3", "ivy", "-3 to 6")];
    let below = below.map(|(cell, kind, text)| {
        odd(typed(cell, kind, "stalk length", text), CellTrouble::BelowNothing)
    });
    assert_eq!(told(&read, Code::CellNotUnderstood), below);
}

#[test]
fn a_column_is_called_a_ratio_by_its_sort_of_values_or_by_its_unit() {
    for sheet in
        ["character | values\n slimness | ratio", "character | unit\n slimness | ratio"]
    {
        let read = with_characters("kind | slimness\n a | 2\n b | 3", Some(sheet));
        let scale = &read.matrix.character(CharacterIx(0)).scale;
        assert!(
            matches!(scale, Scale::Measure { unit: Unit::Ratio, .. }),
            "{sheet}: {scale:?}"
        );
        assert_eq!(told(&read, Code::SheetDisagrees), [], "{sheet}");
        assert_eq!(value(&read, 1, 0), mm(3_000, 3_000), "{sheet}");
    }
}

/// As many words as numbers: the number is the one that is asked back.
#[test]
fn a_column_of_as_many_words_as_numbers_holds_words() {
    let read = table("kind | teeth\n a | 3\n b | few\n c | ?");
    assert_eq!(states(&read, 0), ["few"]);
    let cell = typed("hedge.csv!B2", "a", "teeth", "3");
    assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, CellTrouble::ANumber));
    let read = table("kind | teeth\n a | 3\n b | few\n c | 5");
    assert_eq!(read.matrix.character(CharacterIx(0)).scale, Scale::Counts);
}

/// What stands in a column of the second sheet is called by its own heading where it is odd.
#[test]
fn an_odd_safety_gap_is_told_at_its_own_cell() {
    let sheet = "character | gap\n stalk | wide";
    let read = with_characters("kind | stalk (mm)\n a | 3-5\n b | 40-50", Some(sheet));
    let (text, is, at) = ("wide".to_owned(), FieldIs::Margin, at("characters.csv!B2"));
    let wide = OfSheet::FieldOdd { text, is, words: &[], at };
    assert_eq!(only(&read, Code::CellNotUnderstood), wide.into());
}
