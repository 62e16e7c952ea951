//! A class of four groups shares its finds out; each group begins a key of its own.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::{Reply, Request};

/// The values of hidden fields, by the beginning of their names.
fn hidden(page: &str, name: &str) -> Vec<String> {
    let field = format!("name=\"{name}-");
    let parts = page.split(&field).skip(1);
    parts
        .filter_map(|part| {
            let part = part.split_once("value=\"")?.1;
            Some(part.split_once('"')?.0.to_owned())
        })
        .collect()
}

#[test]
fn each_group_gets_a_set_and_a_key_of_its_own() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    let page = teacher.get("/share-out?groups=2&size=6");
    let sets = hidden(&page, "set");
    assert_eq!(sets.len(), 2);
    let mut all: Vec<u32> = sets
        .iter()
        .flat_map(|set| set.split(' '))
        .map(|kind| kind.parse().expect("a number"))
        .collect();
    all.sort_unstable();
    assert_eq!(all, (1..=12).collect::<Vec<u32>>(), "twelve kinds, each in one set");
    assert!(page.contains("Look closely"));
    let form = [("set-1", sets[0].as_str()), ("name-1", "Blue"), ("set-2", &sets[1])];
    let page = teacher.post("/do/share-out", &form);
    assert!(page.contains("Blue") && page.contains("Group 2"));
    assert!(page.contains("Next: print the sheets for each group"), "it leads on");
    assert!(!page.contains("id=\"share-start\""), "no second proposal until it is asked for");
    assert!(page.contains("href=\"/share-out/sheets/1\"") && !page.contains("/print?key=1"));
    let print = teacher.get("/print?key=1");
    assert!(print.contains("this key has no question") && !print.contains("today.pdf"));
    assert!(print.contains("<select id=\"which-key\""), "another key can be chosen");
    assert!(teacher.get("/done").contains("2 keys were begun, one for each group"));
    let heap = teacher.get("/heaps?key=1");
    assert!(heap.contains("here: 6 kinds"));
    match teacher.desk.handle(&Request::get("/share-out/sheets/1")) {
        Reply::Page(page) => {
            assert_eq!(page.kind, "application/pdf");
            assert!(page.body.starts_with(b"%PDF"));
        }
        other => panic!("no sheets: {other:?}"),
    }
    let page = teacher.undo("/share-out");
    assert!(!page.contains("Sets that groups have"), "one undo takes all of it back");
}

#[test]
fn two_that_look_the_same_never_share_a_set_and_it_is_said_why() {
    let mut teacher = AtTheDesk::empty();
    let table = "kind,edge,lobes\noak,smooth,lobed\nelm,toothed,unlobed\nlime,toothed,unlobed\n\
                 maple,toothed,lobed\n";
    teacher.post("/do/take-table", &[("table", table)]);
    let page = teacher.get("/share-out?groups=2&size=4");
    assert!(page.contains("The table cannot tell so many apart in one set: 3 at most."));
    assert!(page.contains("elm and lime"));
    let sets = hidden(&page, "set");
    assert_eq!(sets.len(), 2, "{sets:?}");
    let mut out: Vec<&str> = sets.iter().flat_map(|set| set.split(' ')).collect();
    out.sort_unstable();
    out.dedup();
    assert_eq!(out, ["1", "2", "3", "4"], "every find is in a set: {sets:?}");
    for set in &sets {
        assert_eq!(set.split(' ').count(), 3, "{set}");
        assert!(!(set.contains('2') && set.contains('3')), "{set}");
    }
}

#[test]
fn odd_numbers_and_empty_tables_are_borne() {
    let mut teacher = AtTheDesk::empty();
    assert!(teacher.get("/share-out").contains("at least 4 finds"));
    teacher.post("/do/add-kinds", &[("names", "a\nb\nc\nd\ne")]);
    for query in ["groups=0&size=999", "groups=-1&size=x", "groups=99999999999999999999"] {
        let page = teacher.get(&format!("/share-out?{query}"));
        assert!(page.contains("1 at most"), "a table without a word parts nobody: {query}");
    }
    assert!(teacher.refused("/do/share-out", &[("set-1", "77 78 79")]).contains("no set"));
    assert!(teacher.refused("/do/share-out", &[("set-1", "1")]).contains("no set"));
}

#[test]
fn anew_is_another_proposal_with_the_same_numbers() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    let sets = |page: &str| {
        let mut sets = hidden(page, "set");
        sets.sort();
        sets
    };
    let first = teacher.get("/share-out?groups=3&size=5");
    assert!(first.contains("name=\"time\" value=\"1\""));
    let second = teacher.get("/share-out?groups=3&size=5&time=1");
    assert!(second.contains("name=\"time\" value=\"2\""));
    assert_ne!(sets(&first), sets(&second));
    assert_eq!(sets(&second).len(), 3);
    assert!(
        second.contains("max=\"12\" value=\"3\"") && second.contains("max=\"10\" value=\"5\"")
    );
}
