//! Two minutes: a key from sugar paper comes in, and the group hears what it forgot.

#[path = "at_the_desk/person.rs"]
mod at_the_desk;

use at_the_desk::AtTheDesk;

fn group() -> AtTheDesk {
    let mut group = AtTheDesk::empty();
    group.post("/do/add-kinds", &[("names", "sallow\nspindle\nalder\nyew")]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    group
}

fn copy(group: &mut AtTheDesk, at: &str, words: &str, sides: &[(&str, &str)]) -> String {
    let form = [("key", "1"), ("at", at), ("words", words)];
    group.post("/do/copy", &[&form, sides].concat())
}

#[test]
fn a_key_that_works_is_praised() {
    let mut group = group();
    let page = group.get("/copy?key=1&at=&words=Is+it+a+needle%3F");
    assert!(page.contains("Where do they lie on the paper?"));
    let sides = [("kind-1", "no"), ("kind-2", "no"), ("kind-3", "no"), ("kind-4", "yes")];
    let page = copy(&mut group, "", "Is it a needle?", &sides);
    assert!(page.contains("here: 3 kinds"), "it goes on with the heap that is left");
    let sides = [("kind-1", "yes"), ("kind-2", "no"), ("kind-3", "no")];
    copy(&mut group, "n", "Is it soft underneath?", &sides);
    let sides = [("kind-2", "yes"), ("kind-3", "no")];
    let page = copy(&mut group, "nn", "Are they in pairs?", &sides);
    assert!(page.contains("Every find comes out of your key."));
}

#[test]
fn the_lost_one_stands_stranded_in_the_groups_words() {
    let mut group = group();
    let sides = [("kind-1", "no"), ("kind-2", "no"), ("kind-3", "nowhere"), ("kind-4", "yes")];
    copy(&mut group, "", "Is it a needle?", &sides);
    let page = group.get("/copy?key=1&at=end");
    assert!(page.contains("At “Is it a needle?”: where does alder go?"));
    assert!(page.contains("sallow and spindle still lie together."));
    let verdict =
        page.split("verdict-names").nth(1).and_then(|rest| rest.split("</ul>").next());
    let verdict = verdict.expect("the answer begins with who does not come out alone");
    assert!(verdict.contains("sallow and spindle</strong> stay together."), "{verdict}");
    assert!(verdict.contains("alder</strong> stands at “Is it a needle?”"), "{verdict}");
    assert!(!page.contains("Every find comes out of your key."));
    assert!(page.contains("2 questions back to the group:"));
}

#[test]
fn a_groups_word_that_says_what_the_table_says_is_linked_to_it() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    teacher.post("/do/start-heaps", &[("name", "Group Green")]);
    let page = teacher.get("/copy?key=1&at=&words=Is+the+edge+toothed%3F");
    assert!(page.contains("The table has filled in what it knows of this word."));
    assert!(page.contains("checked"));
}

#[test]
fn who_goes_both_ways_is_marked_at_both_ends() {
    let mut group = group();
    let sides = [("kind-1", "no"), ("kind-2", "both"), ("kind-3", "no"), ("kind-4", "yes")];
    copy(&mut group, "", "Is it a needle?", &sides);
    let page = group.get("/copy?key=1&at=end");
    let marks = page.matches("spindle goes both ways, so it comes out in another place too.");
    assert_eq!(marks.count(), 2, "once at each end");
    assert!(!page.contains("yew goes both ways"));
}

#[test]
fn a_key_on_paper_has_a_way_in_without_any_key() {
    let mut group = AtTheDesk::empty();
    assert!(group.get("/copy").contains("First the finds"));
    group.post("/do/add-kinds", &[("names", "sallow\nspindle\nyew")]);
    for screen in ["/finds", "/heaps"] {
        assert!(group.get(screen).contains("href=\"/copy/new\""), "{screen} leads there");
    }
    assert!(group.get("/copy/new").contains("Whose key is it?"));
    let page = group.post("/do/start-heaps", &[("name", "Group Red"), ("then", "copy")]);
    assert!(page.contains("What does the paper ask first of these kinds?"));
    assert!(group.get("/heaps?key=1").contains("href=\"/copy?key=1\""));
}
