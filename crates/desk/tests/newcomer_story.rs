//! Somebody brings a leaf that is not in the key, and it gets a place.

#[path = "at_the_desk/person.rs"]
mod at_the_desk;

use at_the_desk::AtTheDesk;

fn with_key() -> AtTheDesk {
    let mut class = AtTheDesk::with_hedge_walk();
    assert!(class.get("/newcomer").contains("There is no key yet"));
    let page = class.post("/do/newcomer-key", &[]);
    assert!(page.contains("Which key does it walk?"));
    class
}

/// Answers until it comes out: yes where the question is in `yes`, no elsewhere.
fn walked(class: &mut AtTheDesk, yes: &[&str]) -> (String, String) {
    let mut walk = String::new();
    loop {
        let page = class.get(&format!("/newcomer?key=1&name=spindle&walk={walk}"));
        if page.contains("Lay the two side by side") {
            return (walk, page);
        }
        let question = page.split("<h1 dir=\"auto\">").nth(1).expect("a question");
        let question = question.split("</h1>").next().expect("it ends");
        walk.push(if yes.iter().any(|word| question.contains(word)) { 'y' } else { 'n' });
        assert!(walk.len() < 20, "the walk does not end");
    }
}

#[test]
fn a_spindle_walks_comes_out_differs_and_is_slotted_in() {
    let mut class = with_key();
    let (walk, page) = walked(&mut class, &["one piece", "toothed", "opposite"]);
    assert!(page.contains("It comes out at"));
    assert!(page.contains("What the key asked on the way"));
    let query = format!(
        "key=1&walk={walk}&name=spindle&c-1=in+one+piece&c-3=unlobed&c-4=toothed&c-5=30-70+mm\
         &c-6=5-12+mm&c-7=opposite&c-8=like+paper"
    );
    let page = class.get(&format!("/newcomer/slot?{query}"));
    assert!(
        page.contains("A place for spindle")
            && page.contains("One question was added after question")
    );
    assert_eq!(class.lines.len(), 2, "a look changes nothing");
    let form: Vec<(String, String)> =
        form_urlencoded::parse(query.as_bytes()).into_owned().collect();
    let form: Vec<(&str, &str)> = form.iter().map(|(n, t)| (n.as_str(), t.as_str())).collect();
    let page = class.post("/do/slot-in", &form);
    assert!(page.contains("spindle has a place in the key"));
    assert!(class.get("/finds").contains("spindle"));
    let again = class.refused("/do/slot-in", &form);
    assert!(again.contains("There is a find called “spindle” already."));
    class.post("/do/undo", &[("back", "/finds")]);
    assert!(!class.get("/finds").contains(">spindle<"), "one undo takes all of it back");
}

#[test]
fn who_cannot_tell_goes_both_ways() {
    let mut class = with_key();
    let mut walk = String::new();
    while !class.get(&format!("/newcomer?key=1&walk={walk}")).contains("side by side") {
        walk.push('u');
        assert!(walk.len() < 40, "the walk does not end");
    }
    let page = class.get(&format!("/newcomer?key=1&walk={walk}"));
    for kind in ["hazel", "ivy", "bramble", "plane"] {
        let heading = page.split("It comes out at").nth(1).expect("it does");
        assert!(
            heading.split("</h1>").next().is_some_and(|names| names.contains(kind)),
            "{kind}"
        );
    }
}

#[test]
fn half_a_difference_is_refused_and_nonsense_is_borne() {
    let mut class = with_key();
    let (walk, _) = walked(&mut class, &[]);
    let form = [("key", "1"), ("walk", walk.as_str()), ("d-ours", "soft")];
    assert!(class.refused("/do/slot-in", &form).contains("only half there"));
    let form = [("key", "1"), ("walk", &walk), ("d-name", "EDGE"), ("d-ours", "soft")];
    assert!(class.refused("/do/slot-in", &form).contains("is in the table already"));
    for path in [
        "/newcomer?key=77&walk=yyyyyyyyyyyyyyyyyyyyyyyyyyyy",
        "/newcomer?key=1&walk=%00x&name=%3Cscript%3E",
        "/newcomer?key=1&walk=nnnnnnnnnnnnnnnnnnnn&name=%3Cscript%3Ealert",
    ] {
        let page = class.get(path);
        assert!(!page.contains("<script>"), "{path}");
    }
    let mut empty = AtTheDesk::empty();
    assert!(empty.get("/newcomer").contains("First lay out the finds"));
    empty.post("/do/add-kinds", &[("names", "oak\nelm")]);
    empty.post("/do/start-heaps", &[("name", "Blue")]);
    assert!(empty.get("/newcomer").contains("does not ask anything yet"));
}
