//! Cells that are almost as they should be: read where the meaning is plain, else asked back.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_exchange::table::decode;
use spinney_model::{
    CellTrouble, CharacterIx, Code, Fact, NotCounts, OfColumn, Quantity, ReadAs, Scale,
    StateIx, TaxonIx, Unit, Value,
};

#[path = "drawn/table.rs"]
mod drawn;

use drawn::*;

#[test]
fn other_words_in_a_yes_no_column_are_named_and_asked_back() {
    let read = table(
        "kind | spines
         a    | yes
         b    | no
         c    | No
         d    | yes or no
         e    | perhaps
         f    | sometimes
         g    | lobed or entire
         h    | yes",
    );
    assert_eq!(states(&read, 0), ["yes", "no"]);
    for kind in 4..7 {
        assert_eq!(value(&read, kind, 0), Value::Unknown);
    }
    let neither = [
        ("hedge.csv!B6", "e", "perhaps"),
        ("hedge.csv!B7", "f", "sometimes"),
        ("hedge.csv!B8", "g", "lobed or entire"),
    ]
    .map(|(cell, kind, text)| {
        odd(typed(cell, kind, "spines", text), CellTrouble::NeitherYesNorNo)
    });
    assert_eq!(told(&read, Code::CellNotUnderstood), neither);
    // Each is told once: not again among the kinds of which nobody knows.
    assert!(told(&read, Code::Unknown).is_empty());
}

#[test]
fn so_many_of_so_many_are_counts_of_yes_and_no() {
    let read = table(
        "kind | spines       | feel
         a    | yes          | soft
         b    | 3 of 10      | 3 of 10
         c    | yes 3 of 10  | soft 3 of 10
         d    | no 3 of 10   | rough
         e    | 4 out of 4   | rough
         f    | yes 0 of 5   | rough
         g    | yes: 9 of 5  | rough
         h    | no           | rough",
    );
    let both = |yes: i128, no: i128| {
        Value::States(vec![(StateIx(0), share(yes, 10)), (StateIx(1), share(no, 10))])
    };
    let one = |state| Value::States(vec![(StateIx(state), share(1, 1))]);
    let wanted =
        [one(0), both(3, 7), both(3, 7), both(7, 3), one(0), one(1), Value::Unknown, one(1)];
    for (kind, wanted) in wanted.into_iter().enumerate() {
        assert_eq!(value(&read, kind, 0), wanted, "kind {kind}");
    }
    assert_eq!(
        read.matrix.cell(TaxonIx(1), CharacterIx(0)).seen,
        Some(spinney_model::Seen::on(10))
    );
    assert_eq!(states(&read, 0), ["yes", "no"]);
    assert_eq!(states(&read, 1), ["soft", "rough"], "nobody said what the others felt like");
    assert_eq!(told(&read, Code::CellNotUnderstood).len(), 3);
}

/// The only yes of a column may stand in a count of finds.
#[test]
fn a_yes_in_so_many_of_so_many_makes_a_column_of_yes_and_no() {
    let read = table("kind | lobes\n a | few\n b | no\n c | yes 3 of 10");
    let both = vec![(StateIx(0), share(3, 10)), (StateIx(1), share(7, 10))];
    assert_eq!(states(&read, 0)[..2], ["yes", "no"]);
    assert_eq!(value(&read, 2, 0), Value::States(both));
    let none = table("kind | lobes\n a | few\n b | no\n c | no 3 of 10");
    assert_ne!(states(&none, 0)[..2], ["yes", "no"], "nobody said yes");
}

#[test]
fn a_yes_among_other_words_is_a_state_and_said() {
    let read = table("kind | lobes\n a | deep\n b | shallow\n c | yes\n d | no");
    assert_eq!(states(&read, 0), ["yes", "no"], "a tie goes to yes and no");
    let read = table("kind | lobes\n a | deep\n b | shallow\n c | yes\n d | deep");
    assert_eq!(states(&read, 0), ["deep", "shallow", "yes"]);
    let cell = typed("hedge.csv!B4", "c", "lobes", "yes");
    assert_eq!(only(&read, Code::CellNotPlain), read_as(cell, ReadAs::State));
    let read = table("kind | teeth\n a | no\n b | no\n c | many");
    assert_eq!(states(&read, 0), ["no", "many"]);
    assert!(read.findings.is_empty(), "{:?}", read.findings);
}

#[test]
fn a_measure_without_unit_has_no_gap_and_names_the_decimal_that_made_it_one() {
    let read = table("kind | ratio\n a | 3\n b | 2.5\n c | 4");
    let gap = Quantity::ZERO;
    let scale = &read.matrix.character(CharacterIx(0)).scale;
    assert_eq!(*scale, Scale::Measure { unit: Unit::Unstated, gap });
    let [about, text, kind] = owned(["ratio", "2.5", "b"]);
    let because = NotCounts::Cell { text, kind, at: at("hedge.csv!B3") };
    assert_eq!(only(&read, Code::Assumed), OfColumn::NoUnit { about, because }.into());
    let given = with_characters(
        "kind | ratio\n a | 3\n b | 2.5",
        Some("character | values | unit | gap\n ratio | measure | none | 0.5"),
    );
    let gap = Quantity::from_thousandths(500);
    let scale = &given.matrix.character(CharacterIx(0)).scale;
    assert_eq!(*scale, Scale::Measure { unit: Unit::Unstated, gap });
}

#[test]
fn counts_are_at_most_sixty_four_numbers_declared_or_not() {
    let rows = |count: u32| {
        let rows: Vec<_> = (0..count).map(|at| format!("k{at} | {}", 3 * at)).collect();
        format!("kind | legs\n{}", rows.join("\n"))
    };
    let declared = Some("character | values\n legs | count");
    let (about, because) = ("legs".to_owned(), NotCounts::MoreThan(64));
    let taken: Fact = OfColumn::NoUnit { about: about.clone(), because }.into();
    let too_many: Fact = OfColumn::TooManyCounts { about, most: 64 }.into();
    for (characters, fact) in [(None, taken), (declared, too_many)] {
        let read = with_characters(&rows(64), characters);
        assert_eq!(read.matrix.character(CharacterIx(0)).scale, Scale::Counts);
        assert!(read.findings.is_empty(), "{:?}", read.findings);
        let read = with_characters(&rows(65), characters);
        let scale = &read.matrix.character(CharacterIx(0)).scale;
        let gap = Quantity::ZERO;
        assert_eq!(*scale, Scale::Measure { unit: Unit::Unstated, gap });
        assert_eq!(value(&read, 64, 0), mm(192_000, 192_000));
        let facts: Vec<_> = read.findings.iter().map(|finding| &finding.fact).collect();
        assert_eq!(facts, [&fact]);
    }
}

#[test]
fn give_or_take_and_dots_are_ranges() {
    let read = table(
        "kind | stalk (mm)
         a | 8±1 mm
         b | 8 ± 1
         c | 1 cm +/- 5 mm
         d | 1±2
         e | 4..5 cm
         f | 4 cm..5 cm
         g | 4…5
         h | 3.5...4.5",
    );
    let wanted = [
        (7_000, 9_000),
        (7_000, 9_000),
        (5_000, 15_000),
        (0, 3_000),
        (40_000, 50_000),
        (40_000, 50_000),
        (4_000, 5_000),
        (3_500, 4_500),
    ];
    for (kind, (low, high)) in wanted.into_iter().enumerate() {
        assert_eq!(value(&read, kind, 0), mm(low, high), "kind {kind}");
    }
    assert!(read.findings.is_empty(), "{:?}", read.findings);
}

#[test]
fn numbers_in_words_are_counts_beside_digits_or_alone() {
    let whole = |count| Value::Counts(vec![(count, share(1, 1))]);
    let read =
        table("kind | legs\n a | six\n b | 8\n c | Twelve\n d | two or four\n e | one to two");
    assert_eq!([0, 1, 2].map(|kind| value(&read, kind, 0)), [6, 8, 12].map(whole));
    let half = share(1, 2);
    assert_eq!(value(&read, 3, 0), Value::Counts(vec![(2, half), (4, half)]));
    assert_eq!(value(&read, 4, 0), Value::Counts(vec![(1, half), (2, half)]));
    assert!(read.findings.is_empty(), "{:?}", read.findings);
    let alone = table("kind | legs\n a | six\n b | eight");
    assert_eq!(value(&alone, 1, 0), whole(8));
    let [about, text] = owned(["legs", "six"]);
    let numbers = OfColumn::NumberWords { about, text, at: at("hedge.csv!B2") };
    assert_eq!(only(&alone, Code::Assumed), numbers.into());
    let words = table("kind | shells\n a | one\n b | one\n c | many");
    assert_eq!(states(&words, 0), ["one", "many"]);
    let declared = "character | states\n legs | six; eight";
    let named = with_characters("kind | legs\n a | six\n b | eight", Some(declared));
    assert_eq!(states(&named, 0), ["six", "eight"]);
}

#[test]
fn one_end_of_a_range_is_not_understood_and_says_what_to_write() {
    for text in ["≥ 5", "≥5", ">= 5", "< 2 cm", "<2", "<= 2 cm"] {
        let read = table(&format!("kind | stalk (mm)\n a | {text}\n b | 20"));
        assert_eq!(value(&read, 0, 0), Value::Unknown, "{text}");
        let cell = typed("hedge.csv!B2", "a", "stalk", text);
        assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, CellTrouble::OneEnd));
    }
}

#[test]
fn a_thousand_or_a_decimal_is_asked_back_in_the_persons_own_number() {
    for (text, thousand, decimal) in [
        ("1,200 mm", "1200 mm", "1.2 mm"),
        ("1,250", "1250", "1.25"),
        ("900-1,000", "900-1000", "900-1"),
    ] {
        let read = table(&format!("kind | stalk (mm)\n a | {text}\n b | 20"));
        assert_eq!(value(&read, 0, 0), Value::Unknown, "{text}");
        let [thousands, decimals] = owned([thousand, decimal]);
        let trouble = CellTrouble::Ambiguous { thousands, decimals: Some(decimals) };
        let cell = typed("hedge.csv!B2", "a", "stalk", text);
        assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, trouble));
    }
    let read = table("kind | stalk (mm)\n a | 1,200,000\n b | 20");
    let trouble = CellTrouble::Ambiguous { thousands: "1200000".to_owned(), decimals: None };
    let cell = typed("hedge.csv!B2", "a", "stalk", "1,200,000");
    assert_eq!(only(&read, Code::CellNotUnderstood), odd(cell, trouble));
}

#[test]
fn bytes_become_text_by_mark_by_utf8_or_by_windows_1252() {
    let utf16 = |big: bool| -> Vec<u8> {
        let units = "\u{feff}Öl".encode_utf16();
        units
            .flat_map(|unit| if big { unit.to_be_bytes() } else { unit.to_le_bytes() })
            .collect()
    };
    let cases: [&[u8]; 5] =
        [b"\xd6l", "Öl".as_bytes(), "\u{feff}Öl".as_bytes(), &utf16(true), &utf16(false)];
    for bytes in cases {
        assert_eq!(decode(bytes), "Öl", "{bytes:?}");
    }
}

#[test]
fn yes_no_and_does_not_apply_are_read_in_eight_languages() {
    for (yes, no, none, unknown) in [
        ("yes", "no", "n/a", "unknown"),
        ("ja", "nein", "entfällt", "unbekannt"),
        ("Oui", "Non", "sans objet", "inconnu"),
        ("sí", "no", "no aplica", "desconocido"),
        ("si", "no", "non applicabile", "sconosciuto"),
        ("ja", "nee", "n.v.t.", "onbekend"),
        ("oes", "nac oes", "amherthnasol", "anhysbys"),
        ("tak", "nie", "nie dotyczy", "nieznane"),
    ] {
        let text = format!(
            "kind | spines\n a | {yes}\n b | {no}\n c | {none}\n d | {unknown}\n \
             e | {yes} 3, {no} 7\n f | {yes} or {no}\n g | {yes} 3 of 10"
        );
        let read = table(&text);
        assert_eq!(states(&read, 0), ["yes", "no"], "{yes}");
        let one = |state| Value::States(vec![(StateIx(state), share(1, 1))]);
        let both = Value::States(vec![(StateIx(0), share(3, 10)), (StateIx(1), share(7, 10))]);
        let wanted = [one(0), one(1), Value::DoesNotApply, Value::Unknown, both.clone()];
        for (kind, wanted) in wanted.into_iter().enumerate() {
            assert_eq!(value(&read, kind, 0), wanted, "{text}");
        }
        assert_eq!(value(&read, 6, 0), both, "{text}");
        assert!(told(&read, Code::CellNotUnderstood).is_empty(), "{:?}", read.findings);
        // Named as states they are the same two, so that the column asks for yes.
        let declared = format!("character | states\n spines | {yes}; {no}");
        let read = with_characters(&text, Some(&declared));
        assert_eq!(states(&read, 0), ["yes", "no"], "{declared}");
        assert!(told(&read, Code::SheetDisagrees).is_empty(), "{:?}", read.findings);
    }
}

#[test]
fn a_condition_says_yes_in_the_language_of_its_table() {
    let read = with_characters(
        "kind | Stacheln | Stachelfarbe\n a | ja | rot\n b | nein | entfällt",
        Some("character | only when\n Stachelfarbe | Stacheln = ja"),
    );
    assert!(told(&read, Code::SheetDisagrees).is_empty(), "{:?}", read.findings);
    let governor = read.matrix.character(CharacterIx(1)).governor.as_ref();
    let governor = governor.expect("the condition is read");
    assert_eq!(governor.states, [StateIx(0)].into());
}
