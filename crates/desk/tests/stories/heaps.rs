//! A group sorts its finds into heaps, from an empty table top to a key.

use crate::at_the_desk::AtTheDesk;
use spinney_model::{
    AskOf, AskedOf, CharacterId, Edit, Fork, KeyEdit, KeyId, KindId, Quantity,
};

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
    assert!(page.contains("Nothing is sorted yet.") && !page.contains("No find is forgotten."));
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
    assert!(page.contains("No find is forgotten."));
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
    let path = "/do/finish";
    let finish = |wanted| [("key", "1"), ("finish", wanted), ("back", "/heaps?key=1")];
    // Two windows that show the same button, one after the other.
    for _ in 0..2 {
        let page = teacher.post(path, &finish("yes"));
        assert!(page.contains("Leave the rest to the group again"));
        assert!(page.contains("name=\"finish\" value=\"\""), "it offers the other");
    }
    let lines = teacher.lines.len();
    assert!(teacher.post(path, &finish("")).contains("Finish it for me"));
    assert!(teacher.post(path, &finish("")).contains("name=\"finish\" value=\"yes\""));
    assert_eq!(teacher.lines.len(), lines + 1, "the second window changed nothing");
    teacher.refused(path, &[("key", "1"), ("back", "/heaps?key=1")]);
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
    let page = sort(&mut group, "", "1", "middle");
    assert!(!page.contains("The table is wrong"));
}

#[test]
fn the_table_is_asked_only_for_what_it_has() {
    let mut group = AtTheDesk::with_hedge_walk();
    group.post("/do/start-heaps", &[("name", "Group Red")]);
    // 4 is the edge, in words; 5 the length of the blade, measured.
    let nonsense: [&[(&str, &str)]; 9] = [
        &[("character", "4"), ("state", "toothed"), ("state", "made of glass")],
        &[("character", "4"), ("at-least", "4000")],
        &[("character", "99"), ("state", "toothed")],
        &[("character", "5"), ("at-least", "-9223372036854775808")],
        &[("character", "5"), ("below", "9223372036854775807")],
        &[("character", "5"), ("below", "a lot")],
        &[("character", "5"), ("state", "toothed")],
        &[("character", ""), ("state", "toothed")],
        &[("state", "toothed")],
    ];
    for meant in nonsense {
        let form = [&[("key", "1"), ("at", ""), ("words", "Really?")], meant].concat();
        let page = group.refused("/do/ask", &form);
        assert!(page.contains("The table cannot be asked that"), "{meant:?}");
    }
    let states = ["toothed", "smooth", "spiny"];
    let all: Vec<_> = states.iter().map(|state| ("state", *state)).collect();
    let form = [&[("key", "1"), ("words", "Any?"), ("character", "4")], &all[..]].concat();
    group.refused("/do/ask", &form);
    let form = [("key", "1"), ("at", ""), ("words", "Long?"), ("character", "5")];
    let form = [&form[..], &[("at-least", "50000")]].concat();
    assert!(group.post("/do/ask", &form).contains("Long?"));
}

#[test]
fn a_line_that_asks_for_a_monstrous_number_breaks_no_page() {
    let mut group = AtTheDesk::with_hedge_walk();
    group.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    for (place, number) in [(vec![], i64::MIN), (vec![true], i64::MAX)] {
        let yes = AskedOf::AtLeast(Quantity::from_thousandths(number));
        group.does(vec![Edit::Key(
            KeyId(1),
            KeyEdit::Ask {
                at: Fork(place),
                words: "As long as that?".to_owned(),
                ask: Some(AskOf { character: CharacterId(5), yes }),
            },
        )]);
    }
    for path in ["/heaps?key=1", "/key?key=1", "/copy?key=1", "/try?key=1", "/print?key=1"] {
        group.get(path);
    }
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

#[test]
fn a_card_says_which_group_it_lies_there_by() {
    let mut group = AtTheDesk::empty();
    group.paste("kind,edge\noak,smooth\nelm,toothed\nlime,\n");
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    let (kind, character) = (KindId(3), CharacterId(1));
    let (source, text) = ("Moss".to_owned(), "toothed".to_owned());
    let yes = AskedOf::States(vec!["toothed".to_owned()]);
    group.does(vec![
        Edit::Cell { kind, character, source, text },
        Edit::Key(
            KeyId(1),
            KeyEdit::Ask {
                at: Fork::default(),
                words: "Is the edge toothed?".to_owned(),
                ask: Some(AskOf { character, yes }),
            },
        ),
    ]);
    let page = group.get("/heaps?key=1");
    assert_eq!(page.matches("says Moss").count(), 1, "lime, and neither oak nor elm: {page}");
}

/// Where each kind has other lengths in each column there are thousands of questions: nobody
/// waits until all are compared, and the page says so.
#[test]
fn a_table_of_very_many_lengths_offers_no_questions_and_says_why() {
    let lengths = |kinds: usize| {
        let row = |kind: usize| {
            let range = |column: usize| (kind * 40 + column * 3, kind * 40 + column * 3 + 9);
            let cells = (0..4).map(range).map(|(low, high)| format!(",{low}-{high} mm"));
            format!("kind {kind}{}\n", cells.collect::<String>())
        };
        let head = "kind,blade,stalk,bud,tip\n".to_owned();
        std::iter::once(head).chain((1..=kinds).map(row)).collect::<String>()
    };
    for (kinds, compared) in [(12, true), (60, false)] {
        let mut class = AtTheDesk::empty();
        class.paste(&lengths(kinds));
        class.post("/do/start-heaps", &[("name", "Group Blue")]);
        let page = class.get("/heaps?key=1");
        assert_eq!(page.contains("class=\"offers\""), compared, "{kinds} kinds");
        assert_eq!(page.contains("cannot all be compared here"), !compared, "{kinds} kinds");
    }
}
