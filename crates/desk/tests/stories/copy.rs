//! Two minutes: a key from sugar paper comes in, and the group hears what it forgot.

use crate::at_the_desk::{AtTheDesk, hidden};
use spinney_desk::Request;
use spinney_model::{Edit, KindEdit, KindId};

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
fn a_word_on_which_people_do_not_agree_goes_back_to_the_group() {
    let mut group = group();
    let sides = [("kind-1", "no"), ("kind-2", "no"), ("kind-3", "yes"), ("kind-4", "yes")];
    copy(&mut group, "", "Is it nice?", &sides);
    copy(&mut group, "y", "Is it a needle?", &[("kind-3", "no"), ("kind-4", "yes")]);
    let page = group.get("/copy?key=1&at=end");
    assert!(page.contains("“Is it nice?”: people do not agree on “nice”."), "{page}");
    assert!(!page.contains("“Is it a needle?”: people do not agree"));
    let page = group.get("/key?key=1");
    assert!(!page.contains("is a good one"), "nothing here is the table's");
    assert!(page.contains("and people do not agree on what that is"), "{page}");
}

#[test]
fn the_lost_one_stands_stranded_in_the_groups_words() {
    let mut group = group();
    let sides = [("kind-1", "no"), ("kind-2", "no"), ("kind-3", "nowhere"), ("kind-4", "yes")];
    copy(&mut group, "", "Is it a needle?", &sides);
    let page = group.get("/copy?key=1&at=end");
    assert!(page.contains("At “Is it a needle?”: where does alder go?"));
    assert!(page.contains("sallow and spindle are still left together."));
    let verdict =
        page.split("verdict-names").nth(1).and_then(|rest| rest.split("</ul>").next());
    let verdict = verdict.expect("the answer begins with who does not come out alone");
    assert!(verdict.contains("sallow and spindle</strong> are left together."), "{verdict}");
    assert!(verdict.contains("alder</strong> comes to “Is it a needle?”"), "{verdict}");
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
fn a_word_that_a_person_links_fills_the_table_with_what_the_group_sorted() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste("kind,edge\nhazel,toothed\noak,smooth\nash,\n");
    teacher.post("/do/start-heaps", &[("name", "Group Green")]);
    let page = teacher.get("/copy?key=1&at=&words=Is+the+edge+toothed%3F");
    assert!(page.contains("Yes, the group means this: Is the edge toothed?"));
    let sides = [("kind-1", "yes"), ("kind-2", "no"), ("kind-3", "yes")];
    copy(&mut teacher, "", "Is the edge toothed?", &sides);
    assert!(teacher.get("/table").contains("name=\"c-3-1\" value=\"\""), "nobody linked it");
    teacher.undo("/finds");
    let means = [("means", "yes"), ("character", "1"), ("state", "toothed")];
    copy(&mut teacher, "", "Is the edge toothed?", &[&sides[..], &means].concat());
    let page = teacher.get("/table");
    assert!(page.contains("name=\"c-3-1\" value=\"toothed\""));
    assert!(page.contains("Group Green: “toothed”"));
}

/// Yew is the needle; of the others sallow is soft, alder and spindle are not.
fn copied() -> AtTheDesk {
    let mut group = group();
    let sides = [("kind-1", "no"), ("kind-2", "no"), ("kind-3", "nowhere"), ("kind-4", "yes")];
    copy(&mut group, "", "Is it a needle?", &sides);
    copy(&mut group, "n", "Is it soft underneath?", &[("kind-1", "yes"), ("kind-2", "yes")]);
    copy(&mut group, "ny", "Are they in pairs?", &[("kind-1", "no"), ("kind-2", "yes")]);
    group
}

#[test]
fn the_groups_own_names_stand_on_its_sheets_and_walks_beside_ours() {
    let mut group = copied();
    let page = group.get("/copy?key=1");
    assert!(page.contains("What does the group call them?"));
    assert!(page.contains("yew: the paper calls it"));
    let sheets = ["/print/chart.svg?key=1&page=1", "/print/key-pages.svg?key=1&page=1"];
    let before: Vec<String> = sheets.iter().map(|sheet| group.get(sheet)).collect();
    let form = [("key", "1"), ("name-4", " spiky  one "), ("name-2", "Spindle")];
    let page = group.post("/do/copy-names", &form);
    assert!(page.contains("spiky one (yew)") && page.contains("value=\"spiky one\""));
    assert!(!page.contains("Spindle (spindle)"), "our own name is no other name");
    assert!(group.get("/try?key=1&at=y").contains("spiky one (yew)"));
    assert!(group.get("/heaps?key=1").contains("spiky one (yew)"));
    // The drawn sheets have outlines for letters: that they change is what can be seen here.
    for (sheet, before) in sheets.iter().zip(&before) {
        assert_ne!(&group.get(sheet), before, "{sheet}");
    }
    assert!(group.get("/print/phone.html?key=1").contains("spiky one (yew)"));
    assert!(group.get("/print/key.txt?key=1").contains("yew"));
    assert!(!group.get("/print/key.txt?key=1").contains("spiky"), "files keep our names");
    assert!(group.get("/finds").contains("yew") && !group.get("/finds").contains("spiky"));
    assert!(group.get("/done").contains("Group Green calls yew “spiky one”"));
    let page = group.undo("/copy?key=1&at=end");
    assert!(!page.contains("spiky one (yew)"));
    for (sheet, before) in sheets.iter().zip(&before) {
        assert_eq!(&group.get(sheet), before, "{sheet}");
    }
}

#[test]
fn a_name_that_sounds_like_a_find_is_asked_back_before_anything_is_matched() {
    let mut group = copied();
    group.post("/do/describe-kind", &[("kind", "3"), ("other-names", "de: Erle")]);
    let lines = group.lines.len();
    let page = group.post("/do/copy-names", &[("key", "1"), ("name-1", "Erle")]);
    assert_eq!(group.lines.len(), lines, "nothing is kept before it is asked back");
    assert!(page.contains("The paper says “Erle” for sallow. It sounds like alder."));
    assert!(!page.contains("This find is alder"), "sallow has a name of its own");
    let own = [("key", "1"), ("as", "own"), ("kind", "1"), ("name", "Erle")];
    assert!(group.post("/do/copy-name", &own).contains("Erle (sallow)"));
}

#[test]
fn a_find_without_a_name_may_be_one_that_we_know() {
    let mut group = AtTheDesk::empty();
    let nameless = [Edit::Kind(KindId(1), KindEdit::Add(String::new()))];
    group.does(nameless.to_vec());
    group.post("/do/add-kinds", &[("names", "holly\nyew")]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    let sides = [("kind-1", "yes"), ("kind-2", "nowhere"), ("kind-3", "no")];
    copy(&mut group, "", "Is it spiky?", &sides);
    let page = group.post("/do/copy-names", &[("key", "1"), ("name-1", "Holly leaf")]);
    assert!(page.contains("The paper says “Holly leaf” for find A. It sounds like holly."));
    assert!(page.contains("This find is holly"));
    let same =
        [("key", "1"), ("as", "match"), ("kind", "1"), ("with", "2"), ("name", "Holly leaf")];
    let page = group.post("/do/copy-name", &same);
    assert!(page.contains("Holly leaf (holly)") && page.contains("Every find comes out"));
    assert!(!group.get("/finds").contains("find A"));
    // A name goes along when its find turns out to be another.
    group.post("/do/merge-kinds", &[("kind", "2"), ("with", "3")]);
    assert!(group.get("/heaps?key=1").contains("Holly leaf (yew)"));
}

#[test]
fn two_finds_of_one_name_within_a_key_are_asked_back_and_told_apart() {
    let mut group = AtTheDesk::empty();
    group.does((1..4).map(|id| Edit::Kind(KindId(id), KindEdit::Add(String::new()))).collect());
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    let sides = [("kind-1", "yes"), ("kind-2", "no"), ("kind-3", "no")];
    copy(&mut group, "", "Is it flat?", &sides);
    copy(&mut group, "n", "Is it soft?", &[("kind-2", "yes"), ("kind-3", "no")]);
    let names = [("key", "1"), ("name-2", "spiky"), ("name-3", " Spiky")];
    let page = group.post("/do/copy-names", &names);
    let asked = "The paper says “Spiky” for find C. It sounds like spiky (find B).";
    assert!(page.contains(asked), "{page}");
    // They lie on different heaps: as one find, one of them would lose its card.
    assert!(page.contains("find C cannot become spiky (find B) here: at “Is it soft?”"));
    assert!(!page.contains("This find is"));
    assert!(!group.get("/heaps?key=1&at=n").contains("Spiky"), "first it is decided");
    let own = [("key", "1"), ("as", "own"), ("kind", "3"), ("name", "Spiky")];
    group.post("/do/copy-name", &own);
    let page = group.get("/heaps?key=1&at=n");
    assert!(page.contains("spiky (find B)") && page.contains("Spiky (find C)"), "{page}");
    // Names that change places are nobody's namesakes.
    let page = group.post("/do/copy-names", &[("key", "1"), ("name-2", "flat one")]);
    assert!(!page.contains("It sounds like"));
    let swapped = [("key", "1"), ("name-2", "Spiky"), ("name-3", "flat one")];
    let page = group.post("/do/copy-names", &swapped);
    assert!(!page.contains("It sounds like"), "{page}");
    assert!(page.contains("Spiky (find B)") && page.contains("flat one (find C)"));
}

#[test]
fn more_names_than_can_be_asked_back_are_not_lost() {
    let mut group = AtTheDesk::empty();
    let (names, sides): (Vec<String>, Vec<String>) =
        (1..=50).map(|id| (format!("kind {id:02}"), format!("kind-{id}"))).unzip();
    group.post("/do/add-kinds", &[("names", &names.join("\n"))]);
    group.post("/do/start-heaps", &[("name", "Group Green")]);
    let lying: Vec<(&str, &str)> = sides.iter().map(|side| (side.as_str(), "yes")).collect();
    copy(&mut group, "", "Is it flat?", &lying);
    // Each of the first finds is called as one of the last is: 26 of them, then 24.
    let fields: Vec<String> = (1..=26).map(|id| format!("name-{id}")).collect();
    let called: Vec<String> = (24..50).map(|id| format!("{} there", names[id])).collect();
    let mut form = vec![("key", "1")];
    form.extend(
        fields.iter().zip(&called).map(|(field, name)| (field.as_str(), name.as_str())),
    );
    let page = group.refused("/do/copy-names", &form);
    assert!(page.contains("26 of these names sound like other finds"), "{page}");
    for name in &called {
        assert!(page.contains(&format!("<pre class=\"typed\" dir=\"auto\">{name}<")), "{name}");
    }
    let page = group.post("/do/copy-names", &form[..25]);
    assert_eq!(page.matches("The paper says “").count(), 24);
}

#[test]
fn an_end_where_nobody_comes_out_may_be_the_lost_ones() {
    let mut group = copied();
    let page = group.get("/copy?key=1&at=end");
    assert!(page.contains("No find comes out here. What does the paper say?"));
    let page = group.post("/do/copy-names", &[("key", "1"), ("end-nn", "cone bush")]);
    assert!(
        page.contains("The paper says “cone bush” where no find comes out. Which find is it?")
    );
    assert!(page.contains("It is alder: put it there"), "it waits on the way");
    let place =
        [("key", "1"), ("as", "place"), ("with", "3"), ("at", "nn"), ("name", "cone bush")];
    let page = group.post("/do/copy-name", &place);
    assert!(page.contains("cone bush (alder)") && page.contains("Every find comes out"));
    assert!(group.refused("/do/copy-name", &[("key", "1"), ("as", "x")]).contains("not there"));
}

#[test]
fn a_groups_name_goes_for_good_with_its_find() {
    let mut group = copied();
    group.post("/do/copy-names", &[("key", "1"), ("name-4", "Wilma's spike")]);
    group.post("/do/copy-names", &[("key", "1"), ("name-2", "no wilma's spike")]);
    let head = group.desk.mark();
    let form = [("kind", "4"), ("head", head.as_str()), ("sure", "yes"), ("words", "yes")];
    assert_eq!(group.send(Request::post("/do/forget-kind", &form)).status, 303);
    let journal = group.lines.concat();
    let journal = String::from_utf8_lossy(&journal).to_lowercase();
    assert!(!journal.contains("wilma") && journal.contains("no …"));
}

#[test]
fn hostile_names_are_only_text() {
    let mut group = copied();
    let name = "<script>alert(1)</script>\" onload=\"x";
    group.post("/do/copy-names", &[("key", "1"), ("name-4", name), ("end-nn", name)]);
    let called =
        "/copy?key=1&at=end&called=4-%3Cscript%3Ealert(1)&called=x&called=99-y&called=nn";
    for path in ["/copy?key=1&at=end", "/try?key=1&at=y", "/heaps?key=1", "/done", called] {
        let page = group.get(path);
        assert!(!page.contains("<script>alert") && !page.contains("\" onload=\"x"), "{path}");
    }
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

/// The form of a page as it is sent, with what a person fills in.
fn filled<'f>(
    form: &'f [(String, String)],
    by_hand: &[(&'f str, &'f str)],
) -> Vec<(&'f str, &'f str)> {
    let hidden = form.iter().map(|(name, text)| (name.as_str(), text.as_str()));
    hidden.chain(by_hand.iter().copied()).collect()
}

#[test]
fn a_second_window_copies_nothing_over_the_question_of_the_first() {
    let mut group = group();
    let page = group.get("/copy?key=1&at=&words=Is+it+flat%3F");
    let second = hidden(&page, "action=\"/do/copy\"");
    let sides = [("kind-1", "no"), ("kind-2", "no"), ("kind-3", "no"), ("kind-4", "yes")];
    copy(&mut group, "", "Is it a needle?", &sides);
    let page = group.refused("/do/copy", &filled(&second, &sides));
    assert!(page.contains("Someone changed the question here in another window."), "{page}");
    // Nor below a question that is another one by now.
    let page = group.get("/copy?key=1&at=n&words=Is+it+soft%3F");
    let below = hidden(&page, "action=\"/do/copy\"");
    group.post("/do/take-out", &[("key", "1"), ("at", "")]);
    copy(&mut group, "", "Is it flat?", &sides);
    let page =
        group.refused("/do/copy", &filled(&below, &[("kind-1", "yes"), ("kind-2", "no")]));
    assert!(page.contains("changed a question on the way to this heap"), "{page}");
    assert!(group.get("/heaps?key=1").contains("Is it flat?"));
}

#[test]
fn a_question_is_linked_only_to_what_the_table_has() {
    let mut group = group();
    let form = [("key", "1"), ("at", ""), ("words", "Is it soft?"), ("means", "yes")];
    let means = [("character", "77"), ("state", "soft"), ("kind-1", "yes")];
    let page = group.refused("/do/copy", &[&form[..], &means].concat());
    assert!(page.contains("The table cannot be asked that"), "{page}");
}

#[test]
fn a_find_that_another_window_has_put_somewhere_is_not_put_at_an_empty_end_unseen() {
    let mut group = copied();
    let named = [("key", "1"), ("end-nn", "cone bush")];
    let places = |group: &mut AtTheDesk| {
        hidden(&group.post("/do/copy-names", &named), "name=\"as\" value=\"place\"")
    };
    let form = places(&mut group);
    assert!(form.contains(&("with".to_owned(), "3".to_owned())), "{form:?}");
    group.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", "3"), ("side", "yes")]);
    let page = group.refused("/do/copy-name", &filled(&form, &[]));
    assert!(page.contains("Someone put alder on a heap in another window"), "{page}");
    group.undo("/copy");
    // Where the way there leads past another question by now, it is another end.
    let form = places(&mut group);
    group.post("/do/take-out", &[("key", "1"), ("at", "n")]);
    copy(&mut group, "n", "Is it round?", &[("kind-1", "yes"), ("kind-2", "yes")]);
    let page = group.refused("/do/copy-name", &filled(&form, &[]));
    assert!(page.contains("changed a question on the way"), "{page}");
}

#[test]
fn two_windows_that_name_one_find_are_asked_back() {
    let mut group = copied();
    let seen = group.desk.mark();
    let shown = [("key", "1"), ("head", seen.as_str()), ("name-4", "spike")];
    group.post("/do/copy-names", &shown);
    let spiked = group.desk.mark();
    let lines = group.lines.len();
    let other = [("key", "1"), ("head", seen.as_str()), ("name-4", "prickle")];
    let page = group.post("/do/copy-names", &other);
    assert_eq!(group.lines.len(), lines, "nothing is kept before it is asked back");
    assert!(page.contains("By now they call yew “spike”. You typed “prickle”."), "{page}");
    assert!(page.contains("Leave it as it is"));
    group.post("/do/copy-names", &shown);
    assert_eq!(group.lines.len(), lines, "the same once more is nothing new");
    // A third name comes in while it is asked: it is asked once more.
    let form = hidden(&page, "name=\"as\" value=\"own\"");
    group.post("/do/copy-names", &[("key", "1"), ("name-4", "thorn")]);
    let page = group.post("/do/copy-name", &filled(&form, &[]));
    assert!(page.contains("By now they call yew “thorn”. You typed “prickle”."), "{page}");
    let form = hidden(&page, "name=\"as\" value=\"own\"");
    let page = group.post("/do/copy-name", &filled(&form, &[]));
    assert!(page.contains("prickle (yew)") && !page.contains("By now they call"), "{page}");
    group.post("/do/copy-names", &[("key", "1"), ("name-2", "x")]);
    let seen = group.desk.mark();
    group.undo("/copy");
    let old = [("key", "1"), ("head", seen.as_str()), ("name-2", "y")];
    let page = group.post("/do/copy-names", &old);
    assert!(page.contains("By now they have no name of their own for spindle."), "{page}");
    // A name that was taken away over a newer one is asked back as well.
    let old = [("key", "1"), ("head", spiked.as_str()), ("name-4", "")];
    let page = group.post("/do/copy-names", &old);
    assert!(page.contains("You took its name away."), "{page}");
    let form = hidden(&page, "name=\"as\" value=\"own\"");
    assert!(!group.post("/do/copy-name", &filled(&form, &[])).contains("prickle"));
}
