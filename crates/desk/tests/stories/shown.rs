//! What a screen says is so, and where it says that something is to be done there is a way.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::Request;
use spinney_model::{
    AskOf, AskedOf, CharacterId, Edit, Fork, KeyEdit, KeyId, KindEdit, KindId, Side, WishField,
};

const EDGE: CharacterId = CharacterId(1);
const HOLLY: KindId = KindId(2);

fn says(source: &str, text: &str) -> Edit {
    let (source, text) = (source.to_owned(), text.to_owned());
    Edit::Cell { kind: HOLLY, character: EDGE, source, text }
}

fn copy(group: &mut AtTheDesk, at: &str, words: &str, sides: &[(&str, &str)]) -> String {
    let form = [("key", "1"), ("at", at), ("words", words)];
    group.post("/do/copy", &[&form, sides].concat())
}

/// The first kind has no name; the others are holly and yew.
fn nameless() -> AtTheDesk {
    let mut group = AtTheDesk::empty();
    group.does(vec![Edit::Kind(KindId(1), KindEdit::Add(String::new()))]);
    group.post("/do/add-kinds", &[("names", "holly\nyew")]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    group
}

const IS_HOLLY: [(&str, &str); 5] =
    [("key", "1"), ("as", "match"), ("kind", "1"), ("with", "2"), ("name", "holly")];

#[test]
fn a_find_that_lies_on_another_heap_is_not_made_the_same() {
    let mut group = nameless();
    let sides = [("kind-1", "yes"), ("kind-2", "no"), ("kind-3", "no")];
    copy(&mut group, "", "Is it spiky?", &sides);
    let page = group.post("/do/copy-names", &[("key", "1"), ("name-1", "holly")]);
    let apart =
        "find A cannot become holly here: at “Is it spiky?” they are in different heaps.";
    assert!(page.contains(apart), "{page}");
    assert!(!page.contains("This find is holly"), "nothing is offered that would lose a card");
    assert!(page.contains("href=\"/heaps?key=1&amp;at=#card-1\""), "{page}");
    // A window that was opened before offers it still.
    assert!(group.refused("/do/copy-name", &IS_HOLLY).contains(apart));
    group.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", "2"), ("side", "yes")]);
    let page = group.post("/do/copy-names", &[("key", "1"), ("name-1", "holly")]);
    assert!(page.contains("This find is holly") && !page.contains("cannot become"));
    group.post("/do/copy-name", &IS_HOLLY);
    assert!(!group.get("/finds").contains("find A"));
}

#[test]
fn a_find_that_turns_out_to_be_holly_is_called_what_was_said_last() {
    let mut group = nameless();
    let sides = [("kind-1", "yes"), ("kind-2", "nowhere"), ("kind-3", "no")];
    copy(&mut group, "", "Is it spiky?", &sides);
    let page = group.post("/do/copy-names", &[("key", "1"), ("name-1", "gorse")]);
    assert!(page.contains("gorse (find A)"));
    group.post("/do/copy-name", &IS_HOLLY);
    let page = group.get("/heaps?key=1");
    assert!(page.contains("holly") && !page.contains("gorse"), "{page}");
}

#[test]
fn one_name_is_not_said_twice() {
    let mut group = nameless();
    copy(&mut group, "", "Is it spiky?", &[("kind-1", "yes"), ("kind-2", "no")]);
    group.post("/do/copy-names", &[("key", "1"), ("name-1", "Gorse")]);
    assert!(group.get("/heaps?key=1").contains("Gorse (find A)"));
    group.does(vec![Edit::Kind(
        KindId(1),
        KindEdit::Describe(spinney_model::KindField::Name, "gorse".to_owned()),
    )]);
    let page = group.get("/heaps?key=1");
    assert!(page.contains("Gorse") && !page.contains("(gorse)"), "{page}");
}

/// Yew is smooth, oak is lobed; of holly the table itself says nothing.
fn edges() -> AtTheDesk {
    let mut class = AtTheDesk::empty();
    class.paste(
        "kind,edge,stalk\nyew,smooth,long\nholly,,long\noak,lobed,long\nash,toothed,short\n",
    );
    class
}

/// The values that buttons, fields and lists of a page offer, as a browser would send them.
fn offered(page: &str, tag: &str) -> Vec<String> {
    let tags = page.split(tag).skip(1).filter_map(|rest| rest.split('>').next());
    let values = tags.filter_map(|tag| tag.split("value=\"").nth(1)?.split('"').next());
    values.map(|value| value.replace("&quot;", "\"").replace("&amp;", "&")).collect()
}

#[test]
fn a_state_with_a_comma_stays_one_state_wherever_it_is_tapped() {
    const JAGGED: &str = "\"jagged, like a saw\"";
    let mut class = AtTheDesk::empty();
    class.paste("kind,edge\nyew,smooth\nholly,\noak,\nash,\n");
    class.does(vec![says("", JAGGED)]);
    class.post("/do/start-heaps", &[("name", "Foxes")]);
    let page = class.get("/heaps/answers?key=1");
    let buttons = offered(&page, "<button name=\"text\" ");
    assert!(buttons.iter().any(|button| button == JAGGED), "{buttons:?}");
    let kind = offered(&page, "<input type=\"hidden\" name=\"kind\" ").remove(0);
    let answer = [("key", "1"), ("kind", &kind), ("character", "1"), ("text", JAGGED)];
    class.post("/do/answer", &answer);
    let page = class.get("/heaps/answers?key=1");
    assert_eq!(offered(&page, "<button name=\"text\" "), buttons, "no state more");
    class.post("/do/newcomer-key", &[]);
    let seen: Vec<String> = ["y", "n"]
        .map(|walk| class.get(&format!("/newcomer?key=2&name=elm&walk={walk}")))
        .iter()
        .flat_map(|page| {
            assert!(offered(page, "<option ").iter().any(|state| state == JAGGED), "{page}");
            offered(page, "<input id=\"c-1\" ")
        })
        .collect();
    assert!(seen.iter().any(|text| text == JAGGED), "filled in from the walk: {seen:?}");
}

#[test]
fn where_people_do_not_agree_the_key_says_so_and_leads_there() {
    let mut class = edges();
    class.post("/do/start-heaps", &[("name", "Machine"), ("then", "")]);
    class.post("/do/finish", &[("key", "1"), ("finish", "yes"), ("back", "/key?key=1")]);
    let cell = "href=\"/table?kind=2&amp;character=1#c-2-1\"";
    let page = class.get("/key?key=1");
    assert!(page.contains("Nobody has said of holly what"), "{page}");
    assert!(page.contains(cell), "it leads to what nobody has said: {page}");
    class.does(vec![says("Foxes", "toothed"), says("Owls", "smooth")]);
    let page = class.get("/key?key=1");
    assert!(page.contains("People do not agree about holly"), "{page}");
    assert!(!page.contains("Nobody has said of holly"), "two groups have said something");
    assert!(page.contains(cell), "{page}");
    let mut walks = vec![String::new()];
    let mut ends = Vec::new();
    while let Some(walk) = walks.pop() {
        let page = class.get(&format!("/try?key=1&at={walk}"));
        match page.contains("id=\"again\"") {
            true => ends.push(page),
            false => walks.extend(["y", "n"].map(|answer| format!("{walk}{answer}"))),
        }
        assert!(walk.len() < 9, "the walk does not end");
    }
    let guess = "People do not agree about what question";
    let guesses: Vec<_> =
        ends.iter().filter(|page| page.contains("so it goes both ways here")).collect();
    assert!(guesses.len() > 1 && guesses.iter().all(|page| page.contains(guess)));
    assert!(guesses.iter().all(|page| page.contains(cell)));
}

#[test]
fn who_was_not_put_anywhere_is_put_there_from_the_key() {
    let mut group = edges();
    group.does(vec![says("", "spiny")]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    let sides = [("kind-1", "yes"), ("kind-2", "nowhere"), ("kind-3", "no"), ("kind-4", "no")];
    copy(&mut group, "", "Is it a needle?", &sides);
    let finish = [("key", "1"), ("finish", "yes"), ("back", "/key?key=1")];
    group.post("/do/finish", &finish);
    let called =
        Edit::Key(KeyId(1), KeyEdit::Call { kind: HOLLY, name: "spiky one".to_owned() });
    group.does(vec![called]);
    let page = group.get("/key?key=1");
    assert!(page.contains("Nobody has said of spiky one (holly) what"), "{page}");
    assert!(page.contains("href=\"/heaps?key=1&amp;at=#card-2\""), "{page}");
    assert!(page.contains("perhaps spiky one (holly)"), "{page}");
}

#[test]
fn a_screen_of_a_key_says_the_groups_names() {
    let mut group = AtTheDesk::empty();
    group.post("/do/add-kinds", &[("names", "sallow\nholly\nyew\nash")]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    let called =
        Edit::Key(KeyId(1), KeyEdit::Call { kind: HOLLY, name: "spiky one".to_owned() });
    group.does(vec![called]);
    let page = group.get("/copy?key=1&at=&words=Is+it+a+needle%3F");
    assert!(page.contains("<legend dir=\"auto\">spiky one (holly)</legend>"), "{page}");
    let margin = page.split("Still to copy").nth(1).unwrap_or_default();
    assert!(margin.contains("spiky one (holly)"), "{margin}");
    let sides = [("kind-1", "no"), ("kind-2", "nowhere"), ("kind-3", "yes"), ("kind-4", "no")];
    copy(&mut group, "", "Is it a needle?", &sides);
    copy(&mut group, "n", "Is it soft?", &[("kind-1", "yes"), ("kind-4", "yes")]);
    let page = group.post("/do/copy-names", &[("key", "1"), ("end-nn", "cone")]);
    assert!(page.contains("It is spiky one (holly): put it there"), "{page}");
    let page = group.get("/newcomer/done?key=1&kind=2&beside=1");
    assert!(page.contains("spiky one (holly)</span>"), "{page}");
    assert!(page.contains("spiky one (holly)</strong>"), "{page}");
}

#[test]
fn what_a_newcomer_would_write_over_is_asked_under_the_groups_name() {
    let mut class = edges();
    class.post("/do/newcomer-key", &[]);
    let name = "feathery".to_owned();
    class.does(vec![Edit::Key(KeyId(1), KeyEdit::Call { kind: KindId(4), name })]);
    let asked = ["yy", "yn", "ny", "nn", "y", "n"].into_iter().any(|walk| {
        let typed = [("key", "1"), ("walk", walk), ("name", "elm"), ("k-4-1", "wavy")];
        let page = class.look("/newcomer/slot", &typed);
        page.contains("<legend dir=\"auto\">feathery (ash): edge</legend>")
    });
    assert!(asked);
}

/// Two keys ask whether the edge is toothed; the first puts holly to yes, the second to no.
fn put_holly_differently(class: &mut AtTheDesk, groups: [&str; 2]) {
    for (number, (group, side)) in (1..).zip(groups.into_iter().zip([Side::Yes, Side::No])) {
        let (key, at) = (KeyId(number), Fork::default());
        let ask = AskOf { character: EDGE, yes: AskedOf::States(vec!["toothed".to_owned()]) };
        let words = "Is the edge toothed?".to_owned();
        class.does(vec![
            Edit::Key(key, KeyEdit::Start(format!("key {number}"))),
            Edit::Key(key, KeyEdit::Wish(WishField::Group, group.to_owned())),
            Edit::Key(key, KeyEdit::Ask { at: at.clone(), words, ask: Some(ask) }),
            Edit::Key(key, KeyEdit::Sort { at, kind: HOLLY, side: Some(side) }),
        ]);
    }
}

#[test]
fn two_keys_of_one_group_that_put_a_find_differently_are_told() {
    let mut class = edges();
    put_holly_differently(&mut class, ["Foxes", "Foxes"]);
    let page = class.get("/finds");
    let told = page.contains("id=\"unlike\"") || page.contains("id=\"disagree\"");
    assert!(told, "nobody says that the two keys differ: {page}");
    class.does(vec![says("", "toothed")]);
    let page = class.get("/finds");
    assert!(!page.contains("id=\"unlike\""), "somebody decided: {page}");
}

#[test]
fn a_group_that_typed_one_thing_and_sorted_another_is_told_of_its_other_key() {
    let mut class = edges();
    put_holly_differently(&mut class, ["Group 1", "Group 2"]);
    assert!(!class.get("/finds").contains("id=\"unlike\""), "the cell says it");
    // What a group typed counts before its card, so the cell is no contradiction any more.
    class.does(vec![says("Group 1", "smooth")]);
    assert!(class.get("/finds").contains("id=\"unlike\""));
}

#[test]
fn what_was_left_is_told_in_the_persons_language() {
    let mut class = edges();
    class.does(vec![Edit::Kind(
        HOLLY,
        KindEdit::Describe(spinney_model::KindField::Caution, "spitz".to_owned()),
    )]);
    let path = "/finds?left=kind%3A2%3Acaution+giftig&of=1";
    assert!(class.get(path).contains("holly, What may hurt: here “spitz”"));
    let request = Request { languages: vec!["de".to_owned()], ..Request::get(path) };
    let page = String::from_utf8(class.send(request).body).expect("a page is text");
    assert!(page.contains("holly, Was schaden kann: hier „spitz“"), "{page}");
}

#[test]
fn who_was_never_placed_is_not_said_to_land_anywhere() {
    let mut group = AtTheDesk::empty();
    group.post("/do/add-kinds", &[("names", "sallow\nspindle\nyew")]);
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    group.post("/do/ask", &[("key", "1"), ("at", ""), ("words", "Is it soft?")]);
    for (kind, side) in [("1", "yes"), ("2", "no")] {
        group.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", kind), ("side", side)]);
    }
    let page = group.get("/key?key=1");
    assert!(page.contains("yew") && page.contains("Until then it goes both ways."), "{page}");
    assert!(!page.contains("never comes out"), "it waits for its place");
}
