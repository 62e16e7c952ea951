//! What a group sorts fills the table for everybody, and never over anybody.

use crate::at_the_desk::{AtTheDesk, head_of};
use spinney_desk::Request;
use spinney_model::{CharacterEdit, CharacterId, Edit, KeyEdit, KeyId, KindId};

/// Hazel is toothed, oak smooth; of ash and lime nobody has said anything.
fn four_finds() -> AtTheDesk {
    let mut class = AtTheDesk::empty();
    class.paste("kind,edge\nhazel,toothed\noak,smooth\nash,\nlime,\n");
    class
}

/// A group begins with a question that is linked to the table.
fn begins(class: &mut AtTheDesk, key: &str, name: &str, character: &str, state: &str) {
    class.post("/do/start-heaps", &[("name", name)]);
    let words = format!("Is it {state}?");
    let form = [
        ("key", key),
        ("at", ""),
        ("character", character),
        ("state", state),
        ("words", words.as_str()),
        ("back", "/heaps"),
    ];
    class.post("/do/ask", &form);
}

fn puts(class: &mut AtTheDesk, key: &str, kind: &str, side: &str) -> String {
    let back = format!("/heaps?key={key}");
    let form = [("key", key), ("at", ""), ("kind", kind), ("side", side), ("back", &back)];
    class.post("/do/sort", &form)
}

/// A page as somebody sees it whose browser asks for German.
fn in_german(class: &mut AtTheDesk, path: &str) -> String {
    let request = Request { languages: vec!["de".to_owned()], ..Request::get(path) };
    String::from_utf8(class.send(request).body).expect("a page is text")
}

/// A card on the table top.
fn card(page: &str, kind: u32) -> &str {
    let mark = format!("<li class=\"card\" id=\"card-{kind}\"");
    let odd = format!("<li class=\"card contradicted\" id=\"card-{kind}\"");
    let from = page.find(&mark).or_else(|| page.find(&odd)).expect("the card lies there");
    let rest = &page[from + 4..];
    &rest[..rest.find("<li class=\"card").unwrap_or(rest.len())]
}

#[test]
fn a_blank_cell_is_filled_for_every_key_until_the_card_is_taken_back() {
    let mut class = four_finds();
    begins(&mut class, "1", "Fern", "1", "toothed");
    begins(&mut class, "2", "Moss", "1", "toothed");
    assert!(card(&class.get("/heaps?key=2"), 3).contains("not placed yet"));
    puts(&mut class, "1", "3", "yes");
    let page = class.get("/table");
    assert!(page.contains("name=\"c-3-1\" value=\"toothed\""));
    assert!(page.contains("Fern: “toothed”") && page.contains("(by its heaps)"));
    assert!(class.get("/finds/3").contains("toothed<span class=\"quiet\"> (Fern)"));
    assert!(card(&class.get("/heaps?key=2"), 3).contains("says Fern"));
    assert!(class.get("/heaps?key=2&at=y").contains("ash"));
    puts(&mut class, "1", "3", "middle");
    assert!(class.get("/table").contains("name=\"c-3-1\" value=\"\""));
    assert!(card(&class.get("/heaps?key=2"), 3).contains("not placed yet"));
}

#[test]
fn two_groups_disagree_and_each_goes_by_its_own_hand_until_a_person_decides() {
    let mut class = four_finds();
    begins(&mut class, "1", "Fern", "1", "toothed");
    begins(&mut class, "2", "Moss", "1", "toothed");
    puts(&mut class, "1", "3", "yes");
    let page = puts(&mut class, "2", "3", "no");
    let told = card(&page, 3);
    for said in [
        "people do not agree here.",
        "You put it on the no heap.",
        "Fern put it on the yes heap.",
    ] {
        assert!(told.contains(said), "{said}");
    }
    assert!(told.contains("href=\"/table?kind=3&amp;character=1#c-3-1\""), "the way to decide");
    let page = class.get("/heaps?key=1");
    assert!(
        card(&page, 3).contains("Moss put it on the no heap."),
        "the other group hears it too"
    );
    assert!(class.get("/heaps?key=1&at=y").contains("ash"));
    assert!(!class.get("/heaps?key=2&at=y").contains("id=\"card-3\""));
    assert!(class.get("/heaps?key=2&at=n").contains("id=\"card-3\""));
    assert!(class.get("/table?show=differ").contains("they differ"));
    let page = class.get("/finds");
    assert!(page.contains("One thing that is seen differently"));
    assert!(page.contains("Fern: toothed") && page.contains("Moss: smooth"));
    assert!(!page.contains("sorted differently"), "it is said once, of the cell");
    // One answer more would not help; of lime it would.
    assert!(class.get("/heaps/answers?key=2").contains("Look at lime: edge?"));
    // A third group, which has not put it anywhere, sees who says what as well.
    begins(&mut class, "3", "Oak", "1", "toothed");
    let page = class.get("/heaps?key=3");
    let told = card(&page, 3);
    assert!(
        told.contains("Fern put it on the yes heap.")
            && told.contains("Moss put it on the no heap.")
    );
    assert!(told.contains("not placed yet") && !told.contains("Take our card back"));
    assert!(!class.get("/heaps/answers?key=3").contains("Look at ash: edge?"));
    class.post("/do/decide", &[("kind", "3"), ("character", "1"), ("text", "smooth")]);
    assert!(!class.get("/finds").contains("seen differently"));
    assert!(card(&class.get("/heaps?key=1"), 3).contains("the table says no."));
    assert!(!card(&class.get("/heaps?key=2"), 3).contains("mend this"));
    assert!(card(&class.get("/heaps?key=3"), 3).contains("says the table"));
}

#[test]
fn a_group_that_looked_again_takes_its_card_back_or_writes_what_it_sees() {
    let mut class = four_finds();
    begins(&mut class, "1", "Fern", "1", "toothed");
    begins(&mut class, "2", "Moss", "1", "toothed");
    puts(&mut class, "1", "3", "yes");
    puts(&mut class, "2", "3", "no");
    let form = [("key", "2"), ("at", ""), ("kind", "3"), ("back", "/heaps?key=2")];
    let middle = [&form[..], &[("side", "middle")]].concat();
    let page = class.post("/do/sort", &middle);
    assert!(card(&page, 3).contains("says Fern") && !page.contains("do not agree"));
    class.undo("/heaps");
    let page = class.post("/do/table-as-sorted", &form);
    assert!(!page.contains("do not agree") && page.contains("id=\"card-3\""));
    assert!(class.get("/table").contains("name=\"c-3-1\" value=\"smooth\""));
}

#[test]
fn what_was_typed_or_measured_is_never_written_over() {
    let mut class = AtTheDesk::empty();
    class.paste("kind,edge,blade length (mm)\nhazel,toothed,60-110\noak,smooth,60-120\n");
    begins(&mut class, "1", "Fern", "1", "toothed");
    let page = puts(&mut class, "1", "1", "no");
    assert!(card(&page, 1).contains("the table says yes."));
    class.post("/do/start-heaps", &[("name", "Moss")]);
    let long = [
        ("key", "2"),
        ("at", ""),
        ("character", "2"),
        ("at-least", "50000"),
        ("words", "Is the blade longer than my finger?"),
        ("back", "/heaps?key=2"),
    ];
    class.post("/do/ask", &long);
    puts(&mut class, "2", "1", "no");
    let page = class.get("/table");
    assert!(page.contains("name=\"c-1-1\" value=\"toothed\""));
    assert!(page.contains("name=\"c-1-2\" value=\"60-110\""));
    // A table that a group laid over it is a source like any other.
    let blue = "kind,edge\nash,toothed\n";
    class.post("/do/take-table", &[("table", blue), ("source", "Blue")]);
    let page = puts(&mut class, "1", "3", "no");
    assert!(card(&page, 3).contains("Blue: “toothed”"));
    assert!(card(&page, 3).contains("You put it on the no heap."));
}

#[test]
fn a_no_among_three_says_nothing_but_contradicts_the_very_thing() {
    let mut class = AtTheDesk::with_hedge_walk();
    class.post("/do/add-kinds", &[("names", "stranger")]);
    begins(&mut class, "1", "Fern", "4", "toothed");
    begins(&mut class, "2", "Moss", "4", "toothed");
    puts(&mut class, "1", "13", "no");
    assert!(class.get("/table?kind=13").contains("name=\"c-13-4\" value=\"\""));
    let page = puts(&mut class, "2", "13", "yes");
    assert!(card(&page, 13).contains("Fern put it on the no heap."));
    let page = class.get("/heaps?key=1");
    assert!(card(&page, 13).contains("Moss put it on the yes heap."));
    assert!(!card(&page, 13).contains("write what we see"), "no is not one thing here");
    let page = class.get("/table?show=differ");
    assert!(page.contains("Fern: not toothed") && page.contains("Take “toothed”"));
    assert!(!page.contains("It varies: “") && !page.contains("value=\"\u{2260}"));
    assert!(class.get("/finds").contains("Fern: not toothed"));
    assert!(class.get("/finds/13").contains("not toothed"));
}

#[test]
fn a_group_sees_in_its_own_column_what_its_heaps_say() {
    let mut class = four_finds();
    begins(&mut class, "1", "Fern", "1", "toothed");
    puts(&mut class, "1", "3", "yes");
    let page = class.get("/table?as=Fern");
    assert!(page.contains("name=\"c-3-1\" value=\"toothed\""));
    let emptied = [("as", "Fern"), ("c-3-1", ""), ("b-3-1", "toothed")];
    class.post("/do/cells", &emptied);
    assert!(class.get("/table?as=Fern").contains("name=\"c-3-1\" value=\"?\""));
}

#[test]
fn the_same_words_sorted_differently_are_shown_to_both_groups() {
    let mut class = AtTheDesk::empty();
    class.post("/do/add-kinds", &[("names", "holly\nyew")]);
    for (key, name, words) in [("1", "Fern", "Is it spiky?"), ("2", "Moss", " is it  SPIKY?")] {
        class.post("/do/start-heaps", &[("name", name)]);
        let form = [("key", key), ("at", ""), ("words", words), ("back", "/heaps")];
        class.post("/do/ask", &form);
    }
    puts(&mut class, "1", "1", "yes");
    puts(&mut class, "1", "2", "no");
    puts(&mut class, "2", "2", "no");
    assert!(
        !class.get("/finds").contains("sorted differently"),
        "they agree, as far as both said"
    );
    puts(&mut class, "2", "1", "no");
    let page = class.get("/finds");
    assert!(page.contains("One find that is sorted differently"));
    assert!(page.contains("holly: Is it spiky?"));
    assert!(
        page.contains("href=\"/heaps?key=1&amp;at=#card-1\"") && page.contains("Fern: yes")
    );
    assert!(page.contains("Moss: no"));
    assert!(!page.contains("seen differently"), "no cell is touched");
    // A third group, and another question about the same find: it is still one find.
    class.post("/do/start-heaps", &[("name", "Reed")]);
    let form = [("key", "3"), ("at", ""), ("words", "Is it spiky?"), ("back", "/heaps")];
    class.post("/do/ask", &form);
    puts(&mut class, "3", "1", "both");
    for (key, at, side) in [("1", "y", "yes"), ("2", "n", "no")] {
        let form = [("key", key), ("at", at), ("words", "Is it soft?"), ("back", "/heaps")];
        class.post("/do/ask", &form);
        let form = [("key", key), ("at", at), ("kind", "1"), ("side", side)];
        class.post("/do/sort", &form);
    }
    let page = class.get("/finds");
    assert!(page.contains("Is it soft?</h3>") && page.contains("Reed: varies"), "{page}");
    assert!(
        page.contains("One find that is sorted differently") && !page.contains("Two groups")
    );
    puts(&mut class, "3", "2", "both");
    assert!(class.get("/finds").contains("2 finds that are sorted differently"));
    puts(&mut class, "3", "1", "yes");
    puts(&mut class, "3", "2", "no");
    puts(&mut class, "2", "1", "yes");
    assert!(!class.get("/finds").contains("sorted differently"));
}

#[test]
fn where_the_table_cannot_say_it_any_more_the_cards_are_told() {
    let mut class = four_finds();
    begins(&mut class, "1", "Fern", "1", "toothed");
    begins(&mut class, "2", "Moss", "1", "toothed");
    puts(&mut class, "1", "3", "yes");
    puts(&mut class, "2", "3", "no");
    assert!(!class.get("/finds").contains("sorted differently"), "it is said of the cell");
    class.does(vec![Edit::Character(CharacterId(1), CharacterEdit::Remove)]);
    let page = class.get("/finds");
    assert!(
        page.contains("ash: Is it toothed?") && !page.contains("seen differently"),
        "{page}"
    );
}

#[test]
fn heaps_are_named_in_german_and_several_say() {
    let mut class = four_finds();
    for (key, name) in [("1", "Fern"), ("2", "Moss"), ("3", "Reed")] {
        begins(&mut class, key, name, "1", "toothed");
    }
    puts(&mut class, "1", "3", "yes");
    assert!(card(&class.get("/heaps?key=3"), 3).contains(">says Fern<"));
    puts(&mut class, "2", "3", "yes");
    assert!(card(&class.get("/heaps?key=3"), 3).contains(">say Fern, Moss<"));
    assert!(card(&in_german(&mut class, "/heaps?key=3"), 3).contains(">sagen Fern, Moss<"));
    puts(&mut class, "2", "3", "both");
    assert!(card(&class.get("/heaps?key=2"), 3).contains("You put it on both heaps."));
    let page = in_german(&mut class, "/heaps?key=2");
    assert!(card(&page, 3).contains("Ihr habt es auf beide Haufen gelegt."));
    assert!(card(&page, 3).contains("Bei „Fern“ liegt es auf dem Ja-Haufen."));
    assert!(in_german(&mut class, "/table").contains("(so liegt es auf ihren Haufen)"));
}

#[test]
fn a_card_its_buttons_and_the_margin_say_one_name() {
    let mut class = four_finds();
    begins(&mut class, "1", "Fern", "1", "toothed");
    let name = "spiky".to_owned();
    class.does(vec![Edit::Key(KeyId(1), KeyEdit::Call { kind: KindId(3), name })]);
    let page = class.get("/heaps?key=1");
    assert!(card(&page, 3).contains("aria-label=\"yes: spiky (ash)\""), "{page}");
    let margin = page.split("Not placed yet</h2>").nth(1).expect("the margin");
    let waiting = margin.split("</ul>").next().expect("it ends");
    assert!(waiting.contains("spiky (ash)") && !waiting.contains(">ash<"), "{waiting}");
    puts(&mut class, "1", "3", "yes");
    let page = class.get("/heaps?key=1");
    let margin = page.split("Still left together</h2>").nth(1).expect("the margin");
    assert!(margin.contains("hazel, spiky (ash)"), "{margin}");
}

#[test]
fn a_heap_is_written_over_the_table_only_as_both_were_seen() {
    let mut class = AtTheDesk::empty();
    class.paste("kind,edge\nhazel,toothed\noak,smooth\nash,toothed\n");
    begins(&mut class, "1", "Fern", "1", "toothed");
    let page = puts(&mut class, "1", "1", "no");
    let told = card(&page, 1);
    assert!(told.contains("the table says yes."), "{told}");
    assert!(told.contains("/do/table-as-sorted"), "the heap can be written");
    let seen = head_of(&page, "/do/table-as-sorted");
    let ours = [("key", "1"), ("at", ""), ("kind", "1"), ("head", seen.as_str())];
    // Another window looks at hazel once more, and writes what it sees.
    let both = [("c-1-1", "toothed or smooth"), ("b-1-1", "toothed")];
    class.post("/do/cells", &both);
    let page = class.refused("/do/table-as-sorted", &ours);
    assert!(page.contains("The table: toothed or smooth"), "{page}");
    class.undo("/heaps");
    class.post("/do/table-as-sorted", &ours);
    assert!(class.get("/table").contains("name=\"c-1-1\" value=\"smooth\""));
}

/// What a second opinion finds is said in the language of the person, and marked so.
#[test]
fn a_finding_is_said_in_the_persons_language() {
    let mut class = AtTheDesk::empty();
    class.paste("kind\tstalk (mm)\nhazel\t30-35.5\nlime\t37-40\n");
    let english =
        "Only stalk could tell hazel from lime (hazel 30 to 35.5 mm, lime 37 to 40 mm)";
    assert!(class.get("/table").contains(english));
    let page = in_german(&mut class, "/table");
    let german = "<p dir=\"auto\" lang=\"de\">Nur „stalk“ könnte hazel von lime \
                  unterscheiden (hazel 30 bis 35,5 mm, lime 37 bis 40 mm).";
    assert!(page.contains(german), "{page}");
    assert!(!page.contains(english));
}
