//! Leaves are kept one by one: a teacher sees how far they reach, decides of one that is far from
//! the others, moves one to another kind, and all ranges follow.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::Request;
use spinney_model::{CharacterEdit, CharacterField, CharacterId, Edit};

/// Invented leaves.
const LEAVES: &str = "kind,leaf,tree,which part,blade length (mm)\n\
    elm,a,gate,sun,50\nelm,b,gate,sun,52\nelm,c,pond,shade,54\nelm,d,pond,,56\n\
    elm,e,pond,,140\noak,f,hill,,90\noak,g,hill,,95\n";

fn with_leaves() -> AtTheDesk {
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/take-table", &[("table", LEAVES), ("rows", "leaves")]);
    teacher
}

#[test]
fn without_leaves_the_page_says_where_they_come_from() {
    let mut teacher = AtTheDesk::empty();
    assert!(!teacher.get("/finds").contains("/leaves\""));
    let page = teacher.get("/leaves");
    assert!(page.contains("No leaf is kept by itself yet") && page.contains("/measure"));
}

#[test]
fn leaves_are_shown_with_how_far_they_reach_and_where_to_cut() {
    let mut teacher = with_leaves();
    assert!(teacher.get("/finds").contains("<a id=\"to-leaves\" href=\"/leaves\">"));
    assert!(teacher.get("/finds/1").contains("Leaves one by one</a> (5 leaves)"));
    let page = teacher.get("/leaves");
    assert!(page.contains("7 leaves of 2 kinds."));
    assert!(page.contains("50–140 mm, 5 leaves of 2 plants"), "{page}");
    assert!(page.contains("50–52 mm, 2 leaves of 1 plant"), "sun leaves apart");
    // Seven of the kinds, two of sun, one of shade: each a dot.
    assert_eq!(page.matches("<circle").count(), 10);
    assert!(page.contains("elm, blade length: 140 mm. The others are 50–56 mm."));
    assert!(page.contains("elm or oak? “blade length”"), "{page}");
    assert!(page.contains("before you trust this") || page.contains("Do not trust this"));
}

#[test]
fn one_far_from_the_others_is_right_or_wrong_and_both_can_be_undone() {
    let mut teacher = with_leaves();
    let of = |says: &'static str| [("leaf", "5"), ("character", "1"), ("says", says)];
    let page = teacher.post("/do/judge-leaf", &of("right"));
    assert!(!page.contains("id=\"far\""), "nobody is asked again");
    assert!(page.contains("50–140 mm, 5 leaves"), "it counts");
    teacher.undo("/leaves");
    assert!(teacher.get("/leaves").contains("id=\"far\""));
    let page = teacher.post("/do/judge-leaf", &of("wrong"));
    assert!(page.contains("50–56 mm, 4 leaves") && page.contains("id=\"not-counted\""));
    assert!(teacher.get("/finds/1").contains("50-56 mm (4 seen on 2 plants)"));
    assert!(teacher.get("/done").contains("Leaf 5 (elm) was measured wrongly"));
    let page = teacher.post("/do/judge-leaf", &of("again"));
    assert!(page.contains("id=\"far\"") && !page.contains("id=\"not-counted\""));
}

#[test]
fn one_of_another_kind_goes_over_and_one_is_taken_out() {
    let mut teacher = with_leaves();
    let page = teacher.post("/do/leaf-of-kind", &[("leaf", "5"), ("kind", "2")]);
    assert!(page.contains("90–140 mm, 3 leaves") && page.contains("50–56 mm, 4 leaves"));
    assert!(teacher.get("/finds/2").contains("90-140 mm (3 seen on 2 plants)"));
    let page = teacher.get("/leaves/5");
    assert!(
        page.contains(">oak</a>") && page.contains("140 mm") && page.contains("value=\"pond\"")
    );
    let told =
        [("leaf", "5"), ("plant", "hill"), ("part", "shade"), ("where", ""), ("when", "")];
    teacher.post("/do/describe-leaf", &told);
    assert!(teacher.get("/leaves").contains("90–140 mm, 3 leaves of 1 plant"));
    teacher.post("/do/take-out-leaf", &[("leaf", "5")]);
    assert!(teacher.get("/leaves").contains("90–95 mm, 2 leaves"));
    let gone = teacher.refused("/do/judge-leaf", &[("leaf", "5"), ("says", "right")]);
    assert!(gone.contains("This leaf is not here any more."));
    assert_eq!(teacher.send(Request::get("/leaves/5")).status, 404);
}

#[test]
fn whoever_was_overtaken_is_told_and_nothing_is_done() {
    let mut teacher = with_leaves();
    let head = teacher.desk.mark();
    teacher.post("/do/leaf-of-kind", &[("leaf", "5"), ("kind", "2")]);
    let old = [("leaf", "5"), ("character", "1"), ("says", "wrong"), ("head", head.as_str())];
    let page = teacher.refused("/do/judge-leaf", &old);
    assert!(page.contains("Someone changed this leaf in another window."));
}

#[test]
fn the_same_sheet_again_brings_no_leaf_twice() {
    let mut teacher = with_leaves();
    let more = format!("{LEAVES}oak,h,hill,,99\n");
    let page = teacher.post("/do/take-table", &[("table", &more), ("rows", "leaves")]);
    assert!(page.contains("7 leaves of this table are here already"), "{page}");
    assert!(teacher.get("/leaves").contains("90–99 mm, 3 leaves"));
    assert!(
        teacher.get("/done").contains("Leaves came in one by one, as rows of a table: elm")
    );
    let wider = "kind,leaf,tree,blade length (mm),blade width (mm)\nelm,a,gate,50,30\n";
    let page = teacher.post("/do/take-table", &[("table", wider), ("rows", "leaves")]);
    assert!(page.contains("1 of them got what this table says of it now."), "{page}");
    assert!(teacher.get("/leaves/1").contains("30 mm"));
    assert!(
        teacher.get("/done").contains("Leaves that are here already got what a table says")
    );
}

#[test]
fn a_kind_that_is_removed_for_good_takes_its_leaves_along() {
    let mut teacher = with_leaves();
    let page = teacher.get("/forget/kind/1");
    assert!(page.contains("Its 5 leaves that were kept one by one go as well."), "{page}");
    teacher.post("/do/forget-kind", &[("kind", "1"), ("sure", "yes")]);
    let lines = teacher.lines.concat();
    let text = String::from_utf8_lossy(&lines);
    assert!(!text.contains("gate") && !text.contains("140") && text.contains("hill"), "{text}");
    assert!(teacher.get("/leaves").contains("2 leaves of 1 kind."));
}

#[test]
fn what_is_far_from_the_others_is_decided_among_the_leaves() {
    let mut teacher = AtTheDesk::empty();
    let page = teacher.post("/do/take-table", &[("table", LEAVES), ("rows", "leaves")]);
    assert!(
        page.contains("href=\"/leaves#far\"") && teacher.get("/leaves").contains("id=\"far\"")
    );
    assert!(!teacher.get("/leaves/5").contains("What is wrong with it?"), "nobody says so yet");
    teacher.post("/do/judge-leaf", &[("leaf", "5"), ("character", "1"), ("says", "wrong")]);
    assert!(teacher.get("/leaves/5").contains("What is wrong with it?"));
}

#[test]
fn it_speaks_german() {
    let mut teacher = with_leaves();
    let german = Request { languages: vec!["de".into()], ..Request::get("/leaves") };
    let page = teacher.send(german);
    let page = String::from_utf8(page.body).expect("a page is text");
    assert!(page.contains("Einzelne Blätter") && page.contains("5 Blätter von 2 Pflanzen"));
    assert!(page.contains("Die anderen haben 50–56 mm."));
}

#[test]
fn a_number_is_put_right_on_the_page_of_its_leaf() {
    let mut teacher = with_leaves();
    let page = teacher.get("/leaves/5");
    assert!(page.contains("id=\"put-right\"") && page.contains("value=\"140 mm\""));
    let put = |text: &'static str| [("leaf", "5"), ("measured-1", text), ("back", "/leaves/5")];
    let page = teacher.post("/do/measure-leaf", &put("54 mm"));
    assert!(page.contains("54 mm") && !page.contains("140 mm"));
    assert!(teacher.get("/finds/1").contains("50-56 mm (5 seen on 2 plants)"));
    assert!(!teacher.get("/leaves").contains("id=\"far\""));
    assert!(teacher.get("/done").contains("Leaf 5 (elm), blade length: “54 mm”"));
    for wrong in ["long", "54 kg", "50-60 mm"] {
        let page = teacher.refused("/do/measure-leaf", &put(wrong));
        assert!(page.contains("cannot be read in the column “blade length”"), "{wrong}");
        assert!(teacher.get("/finds/1").contains("50-56 mm (5 seen on 2 plants)"), "{wrong}");
    }
    let page = teacher.post("/do/measure-leaf", &put(""));
    assert!(page.contains("Nothing was measured on it."));
    assert!(teacher.get("/finds/1").contains("50-56 mm (4 seen on 2 plants)"));
    teacher.undo("/leaves/5");
    assert!(teacher.get("/finds/1").contains("(5 seen on 2 plants)"));
}

#[test]
fn what_can_no_longer_be_read_is_listed_and_can_be_put_right() {
    let mut teacher = with_leaves();
    assert!(!teacher.get("/leaves").contains("id=\"unread\""));
    let values = Edit::Character(
        CharacterId(1),
        CharacterEdit::Describe(CharacterField::Values, "counts".into()),
    );
    let unit = Edit::Character(
        CharacterId(1),
        CharacterEdit::Describe(CharacterField::Unit, "count".into()),
    );
    teacher.does(vec![values, unit]);
    let page = teacher.get("/leaves");
    let list = page.split("id=\"unread\"").nth(1).expect("they are listed");
    assert!(list.contains("elm, blade length: 140 mm"));
    let listed = list.split("</section>").next().expect("its own part").matches("<li>").count();
    assert_eq!(listed, 7, "each of them");
}
