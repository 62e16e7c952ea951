//! Measured leaves come in beside what people typed, and ranges grow with every picture.

use std::collections::BTreeSet;

use spinney_exchange::table::{self, Source};
use spinney_model::{
    CharacterField, CharacterId, Edit, KindEdit, KindId, SpecimenField, SpecimenId, Value,
};

use spinney_voice::Tongue;
use spinney_voice::starters::{Look, SEEN};

use super::{ColumnOf, Named, Plan, Range, Shown, Words};
use crate::laid::Laid;
use crate::{Agreed, Collection, intake};

fn words() -> Words {
    Words {
        columns: [
            vec!["blade length".into(), "Länge der Blattspreite".into()],
            vec!["blade width".into()],
            vec!["stalk length".into()],
        ],
        fields: [Vec::new(), Vec::new(), Vec::new()],
        tongue: Tongue::of_terminal(),
        sources: vec!["measured".into(), "gemessen".into()],
    }
}

fn collection(table: &str) -> Collection {
    let source = Source { name: "table".into(), bytes: table.as_bytes().to_vec() };
    let sheets = table::typed_sheets(&[source]).expect("a table");
    let taken = intake::take_in(&Collection::default(), &sheets, "").expect("units that fit");
    after(&Collection::default(), &taken.edits)
}

fn after(collection: &Collection, edits: &[Edit]) -> Collection {
    let mut collection = collection.clone();
    edits.iter().for_each(|edit| collection.apply(edit));
    collection
}

fn leaf(kind: &str, length: f64) -> Option<Named> {
    let lengths = [Some((length, 0.4)), None, None];
    Some(Named { kind: kind.into(), lengths, looks: [None; SEEN.len()], fields: Vec::new() })
}

fn take(
    collection: &Collection,
    leaves: &[Option<Named>],
    instead: &[(usize, ColumnOf)],
) -> Collection {
    let instead: BTreeSet<_> = instead.iter().copied().collect();
    let plan = Plan::of(collection, &words(), leaves);
    let shown = shown(leaves.len());
    let edits = plan.edits(collection, &words(), (leaves, &shown), &instead);
    let edits = edits.expect("units that fit");
    after(collection, &edits)
}

/// A picture of each leaf, and that of the first of a kind for the kind.
fn shown(leaves: usize) -> Vec<Shown> {
    let one = |leaf: usize| Shown {
        alone: Some(format!("leaf {leaf} alone")),
        of_kind: Some(KindEdit::AddPicture(format!("picture of leaf {leaf}"))),
    };
    (0..leaves).map(one).collect()
}

/// What the table says of a kind's blade length in the end.
fn says(collection: &Collection, kind: &str) -> String {
    let kind = crate::kinds::called(collection, kind, None).expect("it is there");
    let column = collection.characters.keys().next().expect("a column");
    match Laid::of(collection).expect("kinds").said.agreed(kind, *column) {
        Agreed::Text(text) => text.to_owned(),
        Agreed::Blank => String::new(),
        Agreed::Contradicted => "contradicted".into(),
    }
}

#[test]
fn leaves_become_kinds_with_ranges_and_a_picture_each() {
    let leaves = [leaf("hazel", 52.4), leaf("oak", 80.0), None, leaf("Hazel", 60.6)];
    let found = take(&Collection::default(), &leaves, &[]);
    assert_eq!(says(&found, "hazel"), "52-61 mm (2 seen)");
    assert_eq!(says(&found, "oak"), "80 mm (1 seen)");
    let pictures: Vec<_> = found.kinds.values().map(|kind| kind.pictures.clone()).collect();
    assert_eq!(pictures, [["picture of leaf 0"], ["picture of leaf 1"]]);
    let laid = Laid::of(&found).expect("kinds");
    let cell = laid.matrix.cell(spinney_model::TaxonIx(0), spinney_model::CharacterIx(0));
    assert!(
        matches!(cell.value, Value::Range { .. })
            && cell.seen == Some(spinney_model::Seen::on(2)),
        "{cell:?}"
    );
    assert!(laid.findings.is_empty(), "{:?}", laid.findings);
}

#[test]
fn leaves_of_a_second_picture_widen_the_range() {
    let once = take(&Collection::default(), &[leaf("hazel", 52.0), leaf("hazel", 61.0)], &[]);
    let twice = take(&once, &[leaf("hazel", 48.0)], &[]);
    assert_eq!(says(&twice, "hazel"), "48-61 mm (3 seen)");
    assert_eq!(twice.kinds.len(), 1);
    let pictures = &twice.kinds[&KindId(1)].pictures;
    assert_eq!(pictures, &["picture of leaf 0"], "it has one already");
}

#[test]
fn what_a_person_typed_stays_unless_they_say_so() {
    let before = collection("kind,blade length (mm)\nhazel,30-60\n");
    let leaves = [leaf("hazel", 52.0), leaf("hazel", 70.0)];
    let plan = Plan::of(&before, &words(), &leaves);
    assert_eq!(plan.kinds[0].ranges[0].typed, "30-60");
    assert_eq!(says(&take(&before, &leaves, &[]), "hazel"), "30-60");
    assert_eq!(
        says(&take(&before, &leaves, &[(0, ColumnOf::Length(0))]), "hazel"),
        "52-70 mm (2 seen)"
    );
}

#[test]
fn a_column_in_centimetres_and_in_another_language_is_the_same_column() {
    let before = collection("kind,Länge der Blattspreite (cm)\nhazel,\n");
    let once = take(&before, &[leaf("hazel", 52.0)], &[]);
    assert_eq!(once.characters.len(), 1);
    assert_eq!(says(&once, "hazel"), "52 mm (1 seen)");
    assert_eq!(says(&take(&once, &[leaf("hazel", 61.0)], &[]), "hazel"), "52-61 mm (2 seen)");
}

#[test]
fn nothing_goes_into_a_column_that_holds_words_or_counts() {
    for cells in ["long\noak,short", "3\noak,5"] {
        let before = collection(&format!("kind,blade length\nhazel,{cells}\n"));
        let leaves = [leaf("hazel", 52.0)];
        assert!(!Plan::of(&before, &words(), &leaves).kinds[0].ranges[0].fits, "{cells}");
        let found = take(&before, &leaves, &[]);
        assert_eq!(found.cells, before.cells, "{cells}");
        assert_eq!(found.kinds[&KindId(1)].pictures.len(), 1, "its picture comes all the same");
    }
}

#[test]
fn another_group_is_not_outvoted() {
    let mut before = collection("kind,blade length (mm)\nhazel,\n");
    let column = *before.characters.keys().next().expect("a column");
    let (source, text) = ("Blue".to_owned(), "30-60".to_owned());
    before.apply(&Edit::Cell { kind: KindId(1), character: column, source, text });
    let leaves = [leaf("hazel", 52.0)];
    let plan = Plan::of(&before, &words(), &leaves);
    assert_eq!(plan.kinds[0].ranges[0].others, [("Blue".to_owned(), "30-60".to_owned())]);
    assert_eq!(says(&take(&before, &leaves, &[]), "hazel"), "contradicted");
}

#[test]
fn without_lengths_only_names_and_pictures_come_in() {
    let looks = [None; SEEN.len()];
    let bare =
        Some(Named { kind: "hazel".into(), lengths: [None; 3], looks, fields: Vec::new() });
    let found = take(&Collection::default(), std::slice::from_ref(&bare), &[]);
    assert_eq!(found.kinds[&KindId(1)].pictures, ["picture of leaf 0"]);
    let kept = &found.specimens[&SpecimenId(1)];
    assert_eq!((kept.kind, kept.picture.as_str()), (KindId(1), "leaf 0 alone"));
    assert!(found.characters.is_empty() && kept.measured.is_empty());
}

/// A collection of before leaves were kept: what it says of three counts as three.
#[test]
fn leaves_join_a_range_that_was_kept_without_its_leaves() {
    let mut before = collection("kind,blade length (mm)\nhazel,\n");
    let column = *before.characters.keys().next().expect("a column");
    let (source, text) = ("measured".to_owned(), "52-61 (3 seen)".to_owned());
    before.apply(&Edit::Cell { kind: KindId(1), character: column, source, text });
    let leaves = [leaf("hazel", 48.0)];
    let plan = Plan::of(&before, &words(), &leaves);
    assert_eq!(plan.kinds[0].ranges[0].together.text(), "48-61");
    let found = take(&before, &leaves, &[]);
    assert_eq!(says(&found, "hazel"), "48-61 mm (4 seen)");
    assert_eq!(says(&take(&found, &[leaf("hazel", 70.0)], &[]), "hazel"), "48-70 mm (5 seen)");
}

#[test]
fn each_leaf_is_kept_with_what_is_known_of_it() {
    let mut hazel = leaf("hazel", 52.43).expect("it has a name");
    hazel.fields = vec![
        (SpecimenField::Called, "1, scan.png".to_owned()),
        (SpecimenField::WhichPlant, "by the gate".to_owned()),
        (SpecimenField::Part, String::new()),
    ];
    let found = take(&Collection::default(), &[Some(hazel)], &[]);
    let kept = &found.specimens[&SpecimenId(1)];
    assert_eq!(kept.field(SpecimenField::WhichPlant), "by the gate");
    assert_eq!(kept.field(SpecimenField::Source), "measured");
    let one = kept.measured.values().next().expect("a length");
    assert_eq!((one.text.as_str(), one.plus_minus.as_str()), ("52.4 mm", "0.4"));
    assert_eq!(kept.fields.len(), 3, "nothing that nobody said");
}

#[test]
fn a_plan_rests_on_what_stands_in_its_cells_and_on_nothing_else() {
    let leaves = [leaf("hazel", 52.0)];
    let now = |collection: &Collection| Plan::of(collection, &words(), &leaves).rests_on();
    let before = collection("kind,blade length (mm),edge\nhazel,,\noak,,\n");
    let columns: Vec<_> = before.characters.keys().copied().collect();
    let with = |kind: u32, at: usize, text: &str| {
        let (character, source) = (columns[at], String::new());
        after(
            &before,
            &[Edit::Cell { kind: KindId(kind), character, source, text: text.into() }],
        )
    };
    assert_ne!(now(&before), now(&with(1, 0, "40")));
    assert_eq!(now(&before), now(&with(2, 0, "40")), "another kind");
    assert_eq!(now(&before), now(&with(1, 1, "smooth")), "another column");
}

#[test]
fn a_range_is_written_as_a_ruler_shows_it() {
    let text = |mm: &[f64]| {
        let all = mm.iter().map(|mm| Range::of_one((*mm, 0.4)));
        all.reduce(Range::with).expect("some").text()
    };
    assert_eq!(text(&[52.4, 60.6]), "52-61");
    assert_eq!(text(&[52.4, 52.3]), "52");
    assert_eq!(text(&[3.13, 8.96]), "3.1-9");
    assert_eq!(text(&[7.1, 18.2]), "7-18");
}

/// A leaf that says something of some of the questions of [`SEEN`].
fn looking(kind: &str, says: &[(&str, Look)]) -> Option<Named> {
    let mut leaf = leaf(kind, 50.0)?;
    for (question, look) in says {
        let at = SEEN.iter().position(|known| known == question).expect("it is seen");
        leaf.looks[at] = Some(*look);
    }
    Some(leaf)
}

/// What the table says of a kind in a column, by its name.
fn says_of(collection: &Collection, kind: &str, column: &str) -> String {
    let kind = crate::kinds::called(collection, kind, None).expect("it is there");
    let named = |id: &&CharacterId| collection.character_name(**id) == column;
    let column = *collection.characters.keys().find(named).expect("a column of this name");
    match Laid::of(collection).expect("kinds").said.agreed(kind, column) {
        Agreed::Text(text) => text.to_owned(),
        Agreed::Blank => String::new(),
        Agreed::Contradicted => "contradicted".into(),
    }
}

#[test]
fn how_leaves_look_becomes_columns_with_all_that_is_known_of_them() {
    let (toothed, smooth) = (("leaf-edge", Look::State(1)), ("leaf-edge", Look::State(0)));
    let lobed = [("leaf-lobes", Look::State(0)), ("how-lobed", Look::State(1)), smooth];
    let unlobed = |edge| [("leaf-lobes", Look::State(1)), ("how-lobed", Look::NotThere), edge];
    let leaves = [
        looking("hazel", &unlobed(toothed)),
        looking("oak", &lobed),
        looking("hazel", &unlobed(toothed)),
        looking("holly", &unlobed(toothed)),
        looking("holly", &unlobed(smooth)),
        looking("holly", &unlobed(toothed)),
    ];
    let found = take(&Collection::default(), &leaves, &[]);
    let names: Vec<&str> =
        found.characters.keys().map(|id| found.character_name(*id)).collect();
    assert_eq!(names, ["lobes", "how it is lobed", "edge", "blade length"]);
    assert_eq!(says_of(&found, "hazel", "edge"), "toothed 2");
    assert_eq!(says_of(&found, "holly", "edge"), "smooth 1, toothed 2");
    assert_eq!(says_of(&found, "oak", "how it is lobed"), "along the midrib 1");
    assert_eq!(says_of(&found, "hazel", "how it is lobed"), "n/a");
    let laid = Laid::of(&found).expect("kinds");
    assert!(laid.findings.is_empty(), "{:?}", laid.findings);
    let governed = &laid.matrix.characters()[1];
    assert!(governed.governor.is_some(), "asked of lobed leaves only");
}

#[test]
fn a_column_in_another_language_gets_its_own_words() {
    let before = collection("kind,Blattrand\nhazel,\noak,glatt\n");
    let leaves = [looking("hazel", &[("leaf-edge", Look::State(1))])];
    let found = take(&before, &leaves, &[]);
    assert_eq!(says_of(&found, "hazel", "Blattrand"), "gezähnt 1");
}

#[test]
fn a_column_with_other_words_is_left_to_people() {
    let saw = looking("hazel", &[("leaf-edge", Look::State(1))]);
    for (there, fits) in [
        ("kind,edge\nhazel,\noak,serrate\n", false),
        ("kind,edge\nhazel,\noak,smooth\n", true),
        ("kind,edge\nhazel,\noak,\n", true),
        ("kind,edge\nhazel,\noak,3\n", false),
        ("kind,edge (mm)\nhazel,\noak,3\n", false),
    ] {
        let before = collection(there);
        let leaves = [saw.clone()];
        let plan = Plan::of(&before, &words(), &leaves);
        assert_eq!(plan.kinds[0].looks[0].fits, fits, "{there}");
        let said = says_of(&take(&before, &leaves, &[]), "hazel", "edge");
        assert_eq!(said, if fits { "toothed 1" } else { "" }, "{there}");
    }
}

#[test]
fn what_is_typed_of_a_look_stays_unless_the_person_says_so() {
    let before = collection("kind,edge\nhazel,smooth\noak,toothed\n");
    let leaves = [looking("hazel", &[("leaf-edge", Look::State(1))])];
    let edge = SEEN.iter().position(|known| *known == "leaf-edge").expect("it is seen");
    assert_eq!(says_of(&take(&before, &leaves, &[]), "hazel", "edge"), "smooth");
    let instead = take(&before, &leaves, &[(0, ColumnOf::Look(edge))]);
    assert_eq!(says_of(&instead, "hazel", "edge"), "toothed 1");
}

#[test]
fn a_question_is_wanted_where_it_tells_kinds_apart_or_is_in_the_table() {
    let leaf = |kind, edge| {
        looking(kind, &[("leaf-form", Look::State(0)), ("leaf-edge", Look::State(edge))])
    };
    let wanted = |collection: &Collection| {
        let leaves = [leaf("hazel", 1), leaf("oak", 0)];
        let plan = Plan::of(collection, &words(), &leaves);
        ["leaf-form", "leaf-edge", "leaf-tip"].map(|question| {
            plan.is_wanted(SEEN.iter().position(|known| *known == question).expect("seen"))
        })
    };
    assert_eq!(wanted(&Collection::default()), [false, true, false]);
    assert_eq!(wanted(&collection("kind,form of the leaf\nhazel,\n")), [true, true, false]);
}

#[test]
fn a_column_takes_what_it_can_hold_and_a_leaf_without_leaflets_is_no_other_word() {
    let leaves = [
        looking("hazel", &[("leaflets", Look::NotThere), ("leaf-edge", Look::State(1))]),
        looking("rowan", &[("leaflets", Look::Count(13))]),
    ];
    let fits = |there: &str| {
        let plan = Plan::of(&collection(there), &words(), &leaves);
        plan.kinds.iter().map(|kind| kind.looks[0].fits).collect::<Vec<_>>()
    };
    assert_eq!(fits("kind,number of leaflets\ndog rose,5 or 7\nbramble,3\n"), [true, true]);
    assert_eq!(fits("kind,number of leaflets\ndog rose,few\nbramble,many\n"), [true, false]);
    assert_eq!(fits("kind,number of leaflets\ndog rose,\nbramble,\n"), [true, true]);
    let edge = |there: &str| {
        let plan = Plan::of(&collection(there), &words(), &leaves);
        plan.kinds[0].looks[1].fits
    };
    assert!(edge("kind,edge\noak,smooth\nholly,spiny\n"));
    assert!(!edge("kind,edge\noak,smooth\nholly,serrate\n"), "a second word for one thing");
}

#[test]
fn a_question_hangs_on_another_only_where_that_one_has_the_states() {
    let lobed = [("leaf-lobes", Look::State(0)), ("how-lobed", Look::State(1))];
    let leaves = [looking("oak", &lobed)];
    let when = |there: &str| {
        let found = take(&collection(there), &leaves, &[]);
        let how = found
            .characters
            .keys()
            .find(|id| found.character_name(**id) == "how it is lobed")
            .expect("a column of its own");
        found.character_field(*how, CharacterField::AppliesWhen).to_owned()
    };
    assert_eq!(when("kind,stalk\noak,\n"), "lobes = lobed", "both are new");
    assert_eq!(when("kind,lobes\noak,lobed\nbeech,unlobed\n"), "lobes = lobed");
    assert_eq!(when("kind,lobes\noak,yes\nbeech,no\n"), "", "there is no state “lobed”");
}

#[test]
fn a_plan_rests_on_how_leaves_look_too() {
    let leaves = [looking("hazel", &[("leaf-edge", Look::State(1))])];
    let now = |there: &str| Plan::of(&collection(there), &words(), &leaves).rests_on();
    let before = now("kind,edge,blade length (mm)\nhazel,,\n");
    assert_ne!(before, now("kind,edge,blade length (mm)\nhazel,smooth,\n"));
    assert_ne!(before, now("kind,Blattrand,blade length (mm)\nhazel,,\n"), "other words");
    let tip = now("kind,edge,blade length (mm),tip\nhazel,,,\n");
    assert_eq!(before, tip, "nobody says anything of the tip");
}
