//! What every screen keeps to: what next makes sense, no marks within marks, no addresses of
//! cells, nothing shown as typed that nobody typed.

use std::collections::BTreeSet;

use crate::at_the_desk::AtTheDesk;
use spinney_desk::{Desk, Reply, Request};

/// The margin of *Our finds*.
fn next(desk: &mut AtTheDesk) -> String {
    let page = desk.get("/finds");
    let margin = page.split("What next?").nth(1).expect("it says what next");
    margin.split("</ul>").next().unwrap_or_default().to_owned()
}

fn main_way(margin: &str) -> &str {
    let link = margin.split("id=\"next\"").nth(1).expect("one main thing");
    link.split('>').nth(1).and_then(|words| words.split('<').next()).unwrap_or_default()
}

#[test]
fn what_next_offers_what_makes_sense_now() {
    let mut class = AtTheDesk::empty();
    assert!(!class.get("/finds").contains("What next?"), "first the finds");
    class.post("/do/add-kinds", &[("names", "holly")]);
    let margin = next(&mut class);
    assert_eq!(main_way(&margin), "Add one find more: a key tells at least two apart");
    assert!(!margin.contains("/share-out") && !margin.contains("/newcomer"), "{margin}");
    class.post("/do/add-kinds", &[("names", "yew")]);
    let margin = next(&mut class);
    assert_eq!(main_way(&margin), "Sort them into heaps");
    assert!(!margin.contains("/share-out"), "two finds make no sets");
    assert!(!margin.contains("/newcomer"), "there is no key yet");
    class.post("/do/start-heaps", &[("name", "Group Green")]);
    assert_eq!(main_way(&next(&mut class)), "Sort them into heaps");
    class.post("/do/ask", &[("key", "1"), ("at", ""), ("words", "Is it spiny?")]);
    assert_eq!(main_way(&next(&mut class)), "Go on sorting into heaps");
    for (kind, side) in [("1", "yes"), ("2", "no")] {
        class.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", kind), ("side", side)]);
    }
    let margin = next(&mut class);
    assert_eq!(main_way(&margin), "Try the key");
    assert!(!margin.contains("href=\"/heaps"), "all is sorted: {margin}");
    assert!(margin.contains("/newcomer?key=1") && margin.contains("/print?key=1"));
}

#[test]
fn what_is_offered_next_never_says_that_something_is_missing() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    let margin = next(&mut teacher);
    assert!(margin.contains("/share-out"));
    teacher.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    let margin = next(&mut teacher);
    assert_eq!(main_way(&margin), "Try the key");
    for path in ["/try?key=1", "/print?key=1", "/newcomer?key=1", "/share-out"] {
        assert!(margin.contains(path), "{path}: {margin}");
        assert!(!teacher.get(path).contains("class=\"empty\">First"), "{path}");
    }
}

/// Every page that a link leads to, from *Our finds* on.
pub(crate) fn every_page(desk: &mut AtTheDesk, language: &str) -> Vec<(String, String)> {
    let mut open = vec!["/finds".to_owned()];
    let mut seen: BTreeSet<String> = open.iter().cloned().collect();
    let mut pages = Vec::new();
    while let Some(path) = open.pop() {
        let asked = Request { languages: vec![language.to_owned()], ..Request::get(&path) };
        let page = desk.send(asked);
        if page.status != 200 || !page.kind.starts_with("text/html") || page.file.is_some() {
            continue;
        }
        let body = String::from_utf8(page.body).expect("a page is text");
        for link in body.split("href=\"").skip(1).filter_map(|rest| rest.split('"').next()) {
            let link = link.split('#').next().unwrap_or_default().replace("&amp;", "&");
            let walk = link.contains("&at=") && link.matches(['y', 'n', 'u']).count() > 12;
            let other = ["/assets/", "/picture/", "/print/", "/saved/", "/share-out/sheets"];
            let skip = walk
                || link.contains("language=")
                || link.contains("page=")
                || link.contains("paper=")
                || other.iter().any(|start| link.starts_with(start));
            if link.starts_with('/') && !skip && seen.len() < 120 && seen.insert(link.clone()) {
                open.push(link);
            }
        }
        pages.push((path, body));
    }
    pages
}

/// The words of a page, without its tags.
pub(crate) fn words(page: &str) -> String {
    let mut out = String::new();
    let mut inside = false;
    for sign in page.chars() {
        match sign {
            '<' => inside = true,
            '>' => inside = false,
            _ if !inside => out.push(sign),
            _ => {}
        }
    }
    out.replace("&quot;", "\"").replace("&amp;", "&")
}

#[test]
fn no_screen_has_marks_within_marks_or_addresses_of_cells() {
    for (language, name) in [("en", "hedge_walk"), ("de", "hedge_walk"), ("en", "pond_tray")] {
        let mut class = AtTheDesk::with_scenario(name);
        class.post("/do/add-character", &[("name", "is it \"spiny\"?")]);
        class.post("/do/key-start", &[("name", "The „blue“ key"), ("how", "finish")]);
        class.post("/do/start-heaps", &[("name", "\"Foxes\"")]);
        let asked = [("key", "2"), ("at", ""), ("words", "Does it say “buzz”?")];
        class.post("/do/ask", &asked);
        class.post("/do/describe-scene", &[("title", "“Our” walk")]);
        let pages = every_page(&mut class, language);
        assert!(pages.len() > 30, "{language} {name}: {} pages", pages.len());
        for (path, page) in pages {
            let words = words(&page);
            for marks in ["““", "””", "„“", "“„", "„„", "““", "“\"", "\"”", "„\""]
            {
                let at = words.find(marks);
                let around =
                    at.map(|at| words[..at].chars().rev().take(60).collect::<String>());
                let around = around.map(|text| text.chars().rev().collect::<String>());
                assert_eq!(around, None, "{language} {name} {path}: {marks}");
            }
            for sheet in ["table!", "characters!", "kinds!", "about!"] {
                assert!(!words.contains(sheet), "{language} {name} {path}: {sheet}");
            }
        }
    }
}

#[test]
fn a_cell_that_was_not_understood_is_named_by_its_row_and_column() {
    let mut class = AtTheDesk::empty();
    let table = "kind,edge,blade (mm)\nhazel,toothed,60-110\nelm,toothed,=2\nyew,smooth,20\n";
    let page = class.post("/do/take-table", &[("table", table)]);
    let told = words(&page);
    assert!(!told.contains("C3"), "{told}");
    assert!(told.contains("elm"), "{told}");
    for path in ["/finds", "/table", "/key"] {
        assert!(!words(&class.get(path)).contains("table!"), "{path}");
    }
}

#[test]
fn a_number_that_was_moved_is_not_called_typed() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    teacher.post("/do/key-start", &[("name", "Ours"), ("how", "")]);
    let ask = [
        ("key", "1"),
        ("at", ""),
        ("character", "5"),
        ("at-least", "50000"),
        ("words", "Is it long?"),
    ];
    teacher.post("/do/ask", &ask);
    let moved = [("key", "1"), ("at", ""), ("number", "62"), ("back", "/key?key=1")];
    let page = teacher.refused("/do/key-threshold", &moved);
    assert!(page.contains("That was not done"));
    assert!(!page.contains("What you typed"), "{page}");
    let long = "a".repeat(700);
    let page = teacher.refused("/do/describe-scene", &[("title", &long)]);
    assert!(page.contains("What you typed") && page.contains(&long), "a typed text is kept");
    assert!(!page.contains(">Walk</pre>"), "what stood there before was not typed");
}

#[test]
fn a_walk_speaks_of_a_sentence_only_where_somebody_wrote_one() {
    let mut class = AtTheDesk::empty();
    class.paste("kind,edge\nholly,spiny\nyew,smooth\n");
    class.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    assert!(!class.get("/try?key=1").contains("read the sentence"));
    assert!(!class.get("/try?key=1&at=y").contains("Does this fit?"));
    let page = class.get("/print/phone.html?key=1");
    let page = page.split("<script>").next().expect("a page").to_owned();
    assert!(
        !page.contains("read the sentence") && !page.contains("Does the sentence not fit?")
    );
    let confirm = [("kind", "1"), ("name", "holly"), ("confirm", "The edge pricks.")];
    class.post("/do/describe-kind", &confirm);
    assert!(class.get("/try?key=1").contains("read the sentence: it must fit"));
    let page = class.get("/print/phone.html?key=1");
    assert_eq!(
        page.matches("Does the sentence not fit?").count(),
        1,
        "at the end of holly alone"
    );
}

#[test]
fn a_person_who_reads_german_is_spoken_to_in_german_and_can_choose() {
    let mut desk = Desk::default();
    for (languages, said) in
        [(vec!["de-AT"], "Was wir gemacht haben"), (vec!["cy"], "What we did")]
    {
        let languages = languages.into_iter().map(str::to_owned).collect();
        let request = Request { languages, ..Request::get("/done?before=3") };
        let Reply::Page(page) = desk.handle(&request) else { panic!("a page") };
        let text = String::from_utf8(page.body).expect("a page is text");
        assert!(text.contains(said));
        assert!(text.contains("/done?before=3&amp;language=de\" lang=\"de\""));
    }
}
