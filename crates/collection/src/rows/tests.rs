//! Leaves one by one give their kinds what a table with a row a leaf would give them.

use spinney_exchange::table::{self, RowsAre, Settings, Source, Sources};
use spinney_model::{
    CharacterIx, Edit, Judged, KindEdit, KindId, SpecimenEdit, SpecimenField, SpecimenId, Trust,
};

use super::Rows;
use crate::laid::Laid;
use crate::{Agreed, Collection, intake};

/// Leaves that nobody measured: invented.
const LEAVES: &str = "kind,leaf,tree,which part,blade length (mm),teeth,edge\n\
    hazel,1,by the gate,sun,82,12,toothed\n\
    hazel,2,by the gate,shade,104,14,double-toothed\n\
    hazel,3,by the pond,sun,95.5,12,double-toothed\n\
    hazel,4,by the pond,sun,90,13,double-toothed\n\
    hazel,5,by the pond,sun,91,13,double-toothed\n\
    hazel,6,by the pond,shade,190,13,double-toothed\n\
    lime,1,by the church,,61,20,toothed\n\
    lime,2,by the church,,58,21,toothed\n\
    elm,1,,,?,,\n";

fn source() -> Source {
    Source { name: "table".into(), bytes: LEAVES.as_bytes().to_vec() }
}

fn pasted() -> Collection {
    taken_in(Collection::default(), LEAVES).0
}

/// With how many leaves were here already.
fn taken_in(mut collection: Collection, table: &str) -> (Collection, usize) {
    let source = Source { bytes: table.as_bytes().to_vec(), ..source() };
    let sheets = table::typed_sheets_of(&[source], RowsAre::Finds).expect("a table");
    let taken = intake::take_in(&collection, &sheets, "measured").expect("units that fit");
    taken.edits.iter().for_each(|edit| collection.apply(edit));
    (collection, taken.here_already)
}

/// The same table, read at the command line.
fn read() -> table::TableRead {
    let sources = Sources { table: source(), ..Sources::default() };
    let settings = Settings { rows: RowsAre::Finds, ..Settings::default() };
    table::read(&sources, &settings).expect("a table")
}

fn says(collection: &Collection, kind: u32, at: usize) -> String {
    let column = *collection.characters.keys().nth(at).expect("a column");
    match Laid::of(collection).expect("kinds").said.agreed(KindId(kind), column) {
        Agreed::Text(text) => text.to_owned(),
        Agreed::Blank => String::new(),
        Agreed::Contradicted => "contradicted".into(),
    }
}

#[test]
fn they_are_kept_and_their_kinds_say_what_they_come_to() {
    let found = pasted();
    assert_eq!((found.kinds.len(), found.specimens.len()), (3, 9));
    assert_eq!(says(&found, 1, 0), "82-190 mm (6 seen on 2 plants)");
    assert_eq!(says(&found, 1, 1), "12: 2, 13: 3, 14: 1 (6 seen on 2 plants)");
    assert_eq!(says(&found, 1, 2), "toothed 1, double-toothed 5 (6 seen on 2 plants)");
    assert_eq!(says(&found, 2, 0), "58-61 mm (2 seen on 1 plant)");
    assert_eq!(says(&found, 3, 0), "", "nothing was seen of it");
    assert!(found.cells.who().is_empty(), "no range is written down: it follows");
}

#[test]
fn they_spread_and_are_cut_as_the_table_that_they_came_in() {
    let found = pasted();
    let rows = Rows::of(&found).expect("leaves");
    let read = read();
    let specimens = read.specimens.expect("a row a leaf");
    let (here, there) = (rows.spread(), spinney_check::spread(&read.matrix, &specimens));
    assert_eq!(here.of_kinds, there.of_kinds);
    assert_eq!(here.cuts, there.cuts);
    let lime = &here.cuts.as_ref().expect("few kinds")[0];
    assert!(matches!(lime.trust[0], Trust::More(_)), "two are too few: {:?}", lime.trust);
    let names: Vec<&str> = rows.kinds.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
    assert_eq!(names, ["hazel", "lime", "elm"]);
}

#[test]
fn one_that_was_measured_wrongly_is_kept_and_does_not_count() {
    let mut found = pasted();
    let length = *found.characters.keys().next().expect("a column");
    let far = Rows::of(&found).expect("leaves").spread().of_kinds[0].outliers.clone();
    assert_eq!(far.len(), 1, "{far:?}");
    let rows = Rows::of(&found).expect("leaves");
    let (id, looked_at) = rows.outlier(&found, CharacterIx(0), &far[0]);
    assert_eq!((id, looked_at), (SpecimenId(6), false));
    let judge = |judged| Edit::Specimen(id, SpecimenEdit::Judge { character: length, judged });
    found.apply(&judge(Some(Judged::Right)));
    assert_eq!(says(&found, 1, 0), "82-190 mm (6 seen on 2 plants)");
    assert!(rows.outlier(&found, CharacterIx(0), &far[0]).1, "somebody has looked");
    found.apply(&judge(Some(Judged::Wrong)));
    assert_eq!(says(&found, 1, 0), "82-104 mm (5 seen on 2 plants)");
    assert_eq!(found.specimens.len(), 9, "it is still there");
    // Measured again: nobody has looked at the new number.
    let (text, plus_minus) = ("99 mm".to_owned(), String::new());
    let again = SpecimenEdit::Measure { character: length, text, plus_minus };
    found.apply(&Edit::Specimen(id, again));
    assert_eq!(says(&found, 1, 0), "82-104 mm (6 seen on 2 plants)");
}

#[test]
fn one_of_another_kind_goes_over_and_ranges_follow() {
    let mut found = pasted();
    found.apply(&Edit::Specimen(SpecimenId(6), SpecimenEdit::OfKind(KindId(3))));
    assert_eq!(says(&found, 1, 0), "82-104 mm (5 seen on 2 plants)");
    assert_eq!(says(&found, 3, 0), "190 mm (1 seen on 1 plant)");
    found.apply(&Edit::Kind(KindId(1), spinney_model::KindEdit::Merge(KindId(2))));
    assert_eq!(says(&found, 1, 0), "58-104 mm (7 seen on 3 plants)", "two that are one");
    found.apply(&Edit::Kind(KindId(1), spinney_model::KindEdit::Remove));
    assert_eq!(found.specimens.len(), 2, "leaves go with their kind");
}

#[test]
fn what_a_person_typed_decides_and_another_source_is_another_voice() {
    let mut found = pasted();
    let length = *found.characters.keys().next().expect("a column");
    let cell = |source: &str, text: &str| Edit::Cell {
        kind: KindId(2),
        character: length,
        source: source.into(),
        text: text.into(),
    };
    found.apply(&cell("Blue", "30-40"));
    assert_eq!(says(&found, 2, 0), "contradicted");
    found.apply(&cell("", "58-70"));
    assert_eq!(says(&found, 2, 0), "58-70");
    assert!(found.who().contains("measured") && found.who().contains("Blue"));
    assert!(found.says_itself(KindId(2), length, "measured"));
}

#[test]
fn a_column_that_is_called_as_what_says_which_leaf_it_is_is_left() {
    let mut found = pasted();
    let length = *found.characters.keys().next().expect("a column");
    let named = spinney_model::CharacterEdit::Describe(
        spinney_model::CharacterField::Name,
        "Tree".to_owned(),
    );
    found.apply(&Edit::Character(length, named));
    assert_eq!(says(&found, 1, 0), "", "it is no name of a plant either");
    assert_eq!(says(&found, 1, 1), "12: 2, 13: 3, 14: 1 (6 seen on 2 plants)");
    let plants = found.specimens.values().map(|one| one.field(SpecimenField::WhichPlant));
    assert_eq!(plants.filter(|plant| *plant == "by the pond").count(), 4);
}

#[test]
fn a_table_that_comes_again_with_rows_more_brings_these_alone() {
    let more =
        format!("{LEAVES}lime,1,by the church,,61,20,toothed\nlime,3,by the church,,64,,\n");
    let (found, here_already) = taken_in(pasted(), &more);
    assert_eq!((found.specimens.len(), here_already), (11, 9), "two that are alike are two");
    assert_eq!(says(&found, 2, 0), "58-64 mm (4 seen on 1 plant)");
}

#[test]
fn that_a_number_is_right_was_said_among_the_leaves_of_its_kind() {
    let judged = |found: &Collection, id: u32| {
        let leaf = &found.specimens[&SpecimenId(id)];
        leaf.measured.values().next().expect("it was measured").judged
    };
    let mut before = pasted();
    let at = *before.characters.keys().next().expect("a column");
    for (id, judged) in [(5, Judged::Right), (6, Judged::Wrong)] {
        let edit = SpecimenEdit::Judge { character: at, judged: Some(judged) };
        before.apply(&Edit::Specimen(SpecimenId(id), edit));
    }
    let (mut moved, mut merged) = (before.clone(), before);
    for id in [5, 6] {
        moved.apply(&Edit::Specimen(SpecimenId(id), SpecimenEdit::OfKind(KindId(2))));
    }
    merged.apply(&Edit::Kind(KindId(2), KindEdit::Merge(KindId(1))));
    for after in [moved, merged] {
        assert_eq!(after.specimens[&SpecimenId(5)].kind, KindId(2));
        assert_eq!(judged(&after, 5), None, "among others it is looked at anew");
        assert_eq!(judged(&after, 6), Some(Judged::Wrong), "it stays measured wrongly");
    }
}

#[test]
fn a_column_with_numbers_of_leaves_alone_is_not_empty() {
    let (found, _) = taken_in(Collection::default(), "kind,leaf,leaflets\nhazel,1,8\n");
    let source = Source { bytes: b"kind,leaflets (mm)\nlime,61\n".to_vec(), ..source() };
    let sheets = table::typed_sheets(&[source]).expect("a table");
    let odd = intake::take_in(&found, &sheets, "").expect_err("8 of what?");
    assert_eq!((odd.theirs.as_str(), odd.ours.as_str()), ("mm", ""));
}

/// What is written of a leaf, with what was measured in each column.
fn leaf(found: &Collection, id: u32) -> (KindId, String, Vec<&str>) {
    let leaf = &found.specimens[&SpecimenId(id)];
    let texts = leaf.measured.values().map(|one| one.text.as_str());
    (leaf.kind, leaf.field(SpecimenField::WhichPlant).to_owned(), texts.collect())
}

#[test]
fn the_same_sheet_with_a_column_more_brings_no_leaf_twice() {
    let wider: Vec<String> =
        LEAVES.lines().enumerate().map(|(at, line)| format!("{line},{}", 20 + at)).collect();
    let wider = wider.join("\n").replacen(",20\n", ",blade width (mm)\n", 1);
    let (found, here) = taken_in(pasted(), &wider);
    assert_eq!((found.specimens.len(), here), (9, 9), "{wider}");
    assert_eq!(leaf(&found, 1).2, ["82 mm", "12", "toothed", "21 mm"]);
    assert_eq!(taken_in(found.clone(), &wider), (found, 9), "nothing is left to be done");
}

#[test]
fn a_leaf_that_somebody_moved_or_described_stays_as_it_is() {
    let mut found = pasted();
    let of = |id, edit| Edit::Specimen(SpecimenId(id), edit);
    found.apply(&of(6, SpecimenEdit::OfKind(KindId(2))));
    let plant = SpecimenEdit::Describe(SpecimenField::WhichPlant, "by the well".into());
    found.apply(&of(1, plant));
    assert_eq!(taken_in(found.clone(), LEAVES), (found, 9));
}

#[test]
fn a_number_that_was_mended_in_the_sheet_is_mended_here() {
    let (found, here) = taken_in(pasted(), &LEAVES.replace("shade,190", "shade,90"));
    assert_eq!((found.specimens.len(), here), (9, 9));
    assert_eq!(leaf(&found, 6).2[0], "90 mm");
}

/// The next day's leaves begin with 1 again: whoever takes them for those of the first day loses
/// them.
#[test]
fn another_leaf_with_the_same_number_is_another_leaf() {
    let sheet = |rows: &str| format!("kind,leaf,tree,when,length (mm),edge\n{rows}");
    let one = taken_in(Collection::default(), &sheet("hazel,1,,,82,toothed\n")).0;
    for other in ["hazel,1,,,61,toothed\n", "lime,1,,,61,toothed\n", "hazel,,,,83,toothed\n"] {
        let (both, here) = taken_in(one.clone(), &sheet(other));
        assert_eq!((both.specimens.len(), here), (2, 0), "{other}");
    }
    let dated = taken_in(Collection::default(), &sheet("hazel,1,gate,May,82,toothed\n")).0;
    for other in ["hazel,1,gate,June,82,toothed\n", "lime,1,gate,May,61,toothed\n"] {
        let (both, here) = taken_in(dated.clone(), &sheet(other));
        assert_eq!((both.specimens.len(), here), (2, 0), "{other}");
    }
}
