//! A group sorts its finds into heaps, from an empty table top to a key.

#[path = "at_the_desk/person.rs"]
mod at_the_desk;

use at_the_desk::AtTheDesk;

const SIX: &str = "sallow\nguelder rose\nspindle\nalder\naspen\nyew";

fn six_finds() -> AtTheDesk {
    let mut group = AtTheDesk::empty();
    group.post("/do/add-kinds", &[("names", SIX)]);
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    group
}

fn sort(group: &mut AtTheDesk, at: &str, kind: &str, side: &str) -> String {
    let back = format!("/heaps?key=1&at={at}");
    let form = [("key", "1"), ("at", at), ("kind", kind), ("side", side), ("back", &back)];
    group.post("/do/sort", &form)
}

fn ask(group: &mut AtTheDesk, at: &str, words: &str) -> String {
    let back = format!("/heaps?key=1&at={at}");
    group.post("/do/ask", &[("key", "1"), ("at", at), ("words", words), ("back", &back)])
}

#[test]
fn nobody_is_forgotten() {
    let mut group = six_finds();
    let page = group.get("/heaps?key=1");
    assert!(page.contains("Nothing is sorted yet.") && !page.contains("Nobody is forgotten."));
    ask(&mut group, "", "Is the leaf a needle?");
    sort(&mut group, "", "6", "yes");
    for kind in ["1", "2", "3", "4"] {
        sort(&mut group, "", kind, "no");
    }
    let page = group.get("/heaps?key=1");
    let waiting = page.split("Not placed yet</h2>").nth(1).expect("the margin says it");
    assert!(waiting.split("</ul>").next().is_some_and(|list| list.contains("aspen")));
    assert!(page.contains("yew comes out here."));
    let page = sort(&mut group, "", "5", "no");
    assert!(page.contains("Nobody is forgotten."));
    assert!(page.contains("Go on with these 5"));
}

#[test]
fn what_varies_goes_both_ways() {
    let mut group = six_finds();
    ask(&mut group, "", "Is the leaf lobed?");
    for (kind, side) in
        [("1", "no"), ("2", "yes"), ("3", "no"), ("4", "no"), ("5", "both"), ("6", "no")]
    {
        sort(&mut group, "", kind, side);
    }
    let yes = group.get("/heaps?key=1&at=y");
    assert!(yes.contains("here: 2 kinds") && yes.contains("aspen"));
    let no = group.get("/heaps?key=1&at=n");
    assert!(no.contains("here: 5 kinds") && no.contains("aspen"));
}

#[test]
fn the_rest_is_found_by_the_machine_and_given_back() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    teacher.post("/do/start-heaps", &[("name", "Ours")]);
    let page = teacher.get("/heaps?key=1");
    assert!(page.contains("What you could ask here") && page.contains("the shortest way"));
    let finish = [("key", "1"), ("at", ""), ("back", "/heaps?key=1")];
    assert!(teacher.post("/do/finish", &finish).contains("Leave the rest to the group again"));
    assert!(teacher.post("/do/finish", &finish).contains("Finish it for me"));
}

#[test]
fn a_card_that_the_table_contradicts_says_so_and_a_person_decides() {
    let mut group = AtTheDesk::with_hedge_walk();
    group.post("/do/start-heaps", &[("name", "Group Red")]);
    ask(&mut group, "", "Is the edge toothed?");
    let back = "/heaps?key=1";
    let linked = [
        ("key", "1"),
        ("at", ""),
        ("character", "4"),
        ("state", "toothed"),
        ("words", "Is the edge toothed?"),
        ("back", back),
    ];
    let page = group.post("/do/ask", &linked);
    assert!(!page.contains("The table is wrong"), "nobody has put a card anywhere");
    // Hazel, the first kind, is toothed in the table.
    let page = sort(&mut group, "", "1", "no");
    assert!(page.contains("the table says yes.") && page.contains("The table is wrong"));
    let form = [("key", "1"), ("at", ""), ("kind", "1"), ("back", back)];
    let page = group.post("/do/sort-as-table", &form);
    assert!(!page.contains("The table is wrong"));
}

#[test]
fn a_typed_question_is_asked_back_before_the_table_counts() {
    let mut group = AtTheDesk::with_hedge_walk();
    group.post("/do/start-heaps", &[("name", "Group Red")]);
    let page = ask(&mut group, "", "Is the edge toothed?");
    assert!(page.contains("Does your question mean this?"));
    assert!(page.contains("not placed yet"), "the table does not count before that");
}

#[test]
fn hostile_words_stay_words() {
    let mut group = AtTheDesk::empty();
    let name = "<script>alert(1)</script>\" onload=\"x";
    group.post("/do/add-kinds", &[("names", name)]);
    group.post("/do/add-kinds", &[("names", "\u{202e}edoc\nyew")]);
    group.post("/do/start-heaps", &[("name", name)]);
    let page = ask(&mut group, "", name);
    assert!(page.contains("&lt;script&gt;alert(1)"));
    for path in ["/finds", "/heaps?key=1", "/done", "/copy?key=1"] {
        let page = group.get(path);
        assert!(!page.contains("<script>alert") && !page.contains("\" onload=\"x"), "{path}");
    }
}
