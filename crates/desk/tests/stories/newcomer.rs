//! Somebody brings a leaf that is not in the key, and it gets a place.

use crate::at_the_desk::{AtTheDesk, hidden};
use spinney_desk::{Request, Upload};
use spinney_exchange::journal;
use spinney_model::{
    AskOf, AskedOf, CharacterEdit, CharacterId, Done, Edit, KeyEdit, KindEdit, KindId,
};

fn with_key() -> AtTheDesk {
    let mut class = AtTheDesk::with_hedge_walk();
    assert!(class.get("/newcomer").contains("There is no key yet"));
    let page = class.post("/do/newcomer-key", &[]);
    assert!(page.contains("Which key?"));
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

/// Looks what would change, and keeps it.
fn slots_in(class: &mut AtTheDesk, form: &[(&str, &str)]) -> String {
    let change = hidden(&class.look("/newcomer/slot", form), "action=\"/do/slot-in\"");
    class.post("/do/slot-in", &as_sent(&change))
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
    let form: Vec<(String, String)> =
        form_urlencoded::parse(query.as_bytes()).into_owned().collect();
    let form: Vec<(&str, &str)> = form.iter().map(|(n, t)| (n.as_str(), t.as_str())).collect();
    let page = class.look("/newcomer/slot", &form);
    assert!(
        page.contains("A place for spindle")
            && page.contains("One question comes in after question")
            && page.contains("Nothing is kept yet.")
    );
    assert!(!page.contains("was added"), "nothing was, yet");
    assert_eq!(class.lines.len(), 2, "a look changes nothing");
    let page = slots_in(&mut class, &form);
    assert!(page.contains("spindle has a place in the key"));
    assert!(class.get("/finds").contains("spindle"));
    let again = class.refused("/do/slot-in", &form);
    assert!(again.contains("There is a find called “spindle” already."));
    class.undo("/finds");
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

/// The value of a hidden or radio field.
fn value(page: &str, id: &str) -> String {
    let tag = page.split("<input ").find(|tag| tag.contains(&format!("id=\"{id}\"")));
    let tag = tag.unwrap_or_else(|| panic!("no field {id} in {page}"));
    let value = tag.split("value=\"").nth(1).and_then(|rest| rest.split('"').next());
    value.expect("a value").replace("&quot;", "\"").replace("&amp;", "&")
}

#[test]
fn what_is_written_of_another_find_is_never_decided_unseen() {
    let mut class = with_key();
    let (walk, page) = walked(&mut class, &["hand"]);
    let bramble = "12";
    assert!(page.contains("It comes out at bramble<"), "{page}");
    // A group contradicts the table of a blank cell, and another one of its own: two views.
    let cell = |source: &str, character: u32, text: &str| Edit::Cell {
        kind: KindId(12),
        character: CharacterId(character),
        source: source.into(),
        text: text.into(),
    };
    class.does(vec![cell("", 8, ""), cell("Blue", 8, "furry"), cell("Red", 8, "smooth")]);
    let page = class.get(&format!("/newcomer?key=1&name=dewberry&walk={walk}"));
    assert!(page.contains("Blue: furry") && page.contains("Red: smooth"), "both views");
    let field = format!("k-{bramble}-8");
    let typed =
        [("key", "1"), ("walk", walk.as_str()), ("name", "dewberry"), (&field, "rough")];
    let page = class.look("/newcomer/slot", &typed);
    for said in
        ["says something else already", "Blue: furry", "Red: smooth", "What you typed: rough"]
    {
        assert!(page.contains(said), "{said}: {page}");
    }
    assert!(!page.contains("/do/slot-in"), "first it is decided");
    let page_of = class.refused("/do/slot-in", &typed);
    assert!(page_of.contains("Someone changed a find beside the newcomer"), "{page_of}");
    // Left as it stands.
    let over = format!("over-{bramble}-8");
    let seen = class.desk.mark();
    let typed = [&typed[..], &[("head", seen.as_str())]].concat();
    let leave = [&typed[..], &[(&over, "")]].concat();
    assert!(class.look("/newcomer/slot", &leave).contains("/do/slot-in"));
    let write = value(&page, &format!("{over}-write"));
    let write = [&typed[..], &[(&over, write.as_str())]].concat();
    let shown = class.look("/newcomer/slot", &write);
    assert!(shown.contains("/do/slot-in") && shown.contains("value=\"rough\""));
    // Another window writes meanwhile: the answer was for something else.
    class.does(vec![cell("Green", 8, "like felt")]);
    let page = class.refused("/do/slot-in", &write);
    assert!(page.contains("Someone changed a find beside the newcomer"), "{page}");
    let page = class.look("/newcomer/slot", &write);
    assert!(page.contains("Green: like felt"), "it is asked anew");
    class.undo("/finds");
    slots_in(&mut class, &leave);
    assert!(!class.get("/finds/12").contains("rough"));
    class.undo("/finds");
    slots_in(&mut class, &write);
    assert!(class.get("/finds/12").contains("rough"));
    let page = class.get("/table");
    assert!(
        page.contains("Blue: “furry”") && page.contains("Red: “smooth”"),
        "nobody's word is lost"
    );
}

#[test]
fn a_cell_that_was_filled_meanwhile_is_not_written_over() {
    let mut class = with_key();
    let (walk, page) = walked(&mut class, &["hand"]);
    assert!(page.contains("It comes out at bramble<"), "{page}");
    let blank = |text: &str| Edit::Cell {
        kind: KindId(12),
        character: CharacterId(8),
        source: String::new(),
        text: text.into(),
    };
    class.does(vec![blank("")]);
    let form =
        [("key", "1"), ("walk", walk.as_str()), ("name", "dewberry"), ("k-12-8", "rough")];
    assert!(class.look("/newcomer/slot", &form).contains("/do/slot-in"), "the cell is blank");
    class.does(vec![blank("like paper")]);
    assert!(
        class
            .refused("/do/slot-in", &form)
            .contains("Someone changed a find beside the newcomer")
    );
    let page = class.look("/newcomer/slot", &form);
    assert!(page.contains("The table: like paper") && page.contains("What you typed: rough"));
    // The same again is no contradiction.
    let same = [
        ("key", "1"),
        ("walk", walk.as_str()),
        ("name", "dewberry"),
        ("k-12-8", "Like  paper"),
    ];
    assert!(class.look("/newcomer/slot", &same).contains("/do/slot-in"));
}

#[test]
fn a_long_form_loses_nothing_on_the_way_there_and_back() {
    let mut class = with_key();
    let (walk, _) = walked(&mut class, &["one piece", "toothed", "opposite"]);
    let long: Vec<String> =
        (0..20).map(|n| format!("{n} {}", "what somebody saw of it ".repeat(15))).collect();
    let names: Vec<String> = (0..20).map(|n| format!("note-{n}")).collect();
    let mut form = vec![("key", "1"), ("walk", walk.as_str()), ("name", "spindle")];
    form.push(("c-8", "like paper"));
    form.extend(names.iter().zip(&long).map(|(name, text)| (name.as_str(), text.trim())));
    assert!(long.iter().map(String::len).sum::<usize>() > 7_000, "longer than an address");
    let page = class.look("/newcomer/slot", &form);
    for (name, text) in names.iter().zip(&long) {
        let field = format!("name=\"{name}\" value=\"{}\"", text.trim());
        assert_eq!(page.matches(&field).count(), 2, "to be kept, and to go back");
    }
    assert!(page.contains("<form method=\"post\" action=\"/newcomer\""));
    let page = class.look("/newcomer", &form);
    assert!(page.contains("name=\"c-8\" value=\"like paper\"") && page.contains("Lay the two"));
}

#[test]
fn the_new_difference_is_what_the_key_asks() {
    let mut class = with_key();
    let (walk, page) = walked(&mut class, &["hand"]);
    assert!(page.contains("It comes out at bramble<"), "{page}");
    // An old column tells the two apart as well.
    let form = [
        ("key", "1"),
        ("walk", walk.as_str()),
        ("name", "dewberry"),
        ("c-1", "like a hand"),
        ("c-2", "3 or 5"),
        ("c-3", "n/a"),
        ("c-4", "toothed"),
        ("c-5", "n/a"),
        ("c-6", "2-6 cm"),
        ("c-7", "opposite"),
        ("c-8", "like thin card"),
        ("d-name", "underside"),
        ("d-ours", "white"),
        ("d-theirs-12", "green"),
    ];
    let page = class.look("/newcomer/slot", &form);
    let comes_in = page.split("One question comes in").nth(1).expect("one question more");
    let comes_in = comes_in.split("</li>").next().expect("it ends");
    assert!(comes_in.contains("Is the underside green?"), "{comes_in}");
    let page = slots_in(&mut class, &form);
    assert!(page.contains("Is the underside green?"), "its way ends with it: {page}");
    let entry = journal::read(class.lines.last().expect("a line")).expect("our own line");
    let Done::Edits(edits) = entry.done else { panic!("{entry:?}") };
    let underside = edits.iter().find_map(|edit| match edit {
        Edit::Character(character, CharacterEdit::Add(name)) if name == "underside" => {
            Some(*character)
        }
        _ => None,
    });
    let underside = underside.expect("a new column");
    let asked: Vec<&AskOf> = edits
        .iter()
        .filter_map(|edit| match edit {
            Edit::Key(_, KeyEdit::Ask { ask, .. }) => ask.as_ref(),
            _ => None,
        })
        .filter(|ask| ask.character == underside)
        .collect();
    let green = AskedOf::States(vec!["green".into()]);
    assert_eq!(asked, [&AskOf { character: underside, yes: green }]);
    let key = class.get("/key?key=1");
    assert!(key.contains("Is the underside green?"));
}

#[test]
fn both_cards_show_their_pictures() {
    let mut class = with_key();
    let (one, two) = ("ab".repeat(32), "cd".repeat(32));
    let pictures =
        [&one, &two].map(|hash| Edit::Kind(KindId(12), KindEdit::AddPicture(hash.clone())));
    class.does(pictures.to_vec());
    let (walk, page) = walked(&mut class, &["hand"]);
    for hash in [&one, &two] {
        assert!(page.contains(&format!("src=\"/picture/{hash}\"")), "all that there are");
    }
    let form = [("key", "1"), ("walk", walk.as_str()), ("name", "dewberry")];
    let grey =
        Upload { field: "pictures".into(), name: "dewberry.png".into(), bytes: GREY.to_vec() };
    let change = hidden(&class.look("/newcomer/slot", &form), "action=\"/do/slot-in\"");
    let page = class.upload("/do/slot-in", &as_sent(&change), grey);
    assert_eq!((page.status, class.pictures.len()), (303, 1));
    let page = class.get(&page.location.expect("the way it comes out now"));
    let cards = page.split("class=\"cards two\"").nth(1).expect("the cards");
    let cards = cards.split("</ul>").next().expect("they end");
    assert_eq!(cards.matches("src=\"/picture/").count(), 3, "the newcomer's and bramble's two");
    assert!(
        cards.find("dewberry").expect("its card") < cards.find("bramble").expect("the other")
    );
}

/// One grey pixel as PNG (W3C PNG, third edition: signature, IHDR, IDAT, IEND).
const GREY: &[u8] = &[
    137, 80, 78, 71, 13, 10, 26, 10, 0, 0, 0, 13, 73, 72, 68, 82, 0, 0, 0, 1, 0, 0, 0, 1, 8, 0,
    0, 0, 0, 58, 126, 155, 85, 0, 0, 0, 10, 73, 68, 65, 84, 120, 218, 99, 104, 0, 0, 0, 130, 0,
    129, 218, 69, 8, 59, 0, 0, 0, 0, 73, 69, 78, 68, 174, 66, 96, 130,
];

/// Three finds on heaps: holly is spiky, of the others yew is a needle.
fn on_heaps() -> AtTheDesk {
    let mut group = AtTheDesk::empty();
    group.post("/do/add-kinds", &[("names", "yew\nholly\noak")]);
    group.post("/do/start-heaps", &[("name", "Foxes")]);
    asks(
        &mut group,
        "",
        "Is it spiky?",
        &[("kind-1", "no"), ("kind-2", "yes"), ("kind-3", "no")],
    );
    asks(&mut group, "n", "Is it a needle?", &[("kind-1", "yes"), ("kind-3", "no")]);
    group
}

fn asks(group: &mut AtTheDesk, at: &str, words: &str, sides: &[(&str, &str)]) {
    let form = [("key", "1"), ("at", at), ("words", words)];
    group.post("/do/copy", &[&form[..], sides].concat());
}

fn as_sent(form: &[(String, String)]) -> Vec<(&str, &str)> {
    form.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect()
}

/// Where a link of a page leads.
fn link(page: &str, id: &str) -> String {
    let tag = page.split("<a ").find(|tag| tag.contains(&format!("id=\"{id}\"")));
    let to = tag.and_then(|tag| tag.split("href=\"").nth(1)?.split('"').next());
    to.unwrap_or_else(|| panic!("no link {id} in {page}")).replace("&amp;", "&")
}

/// Another window takes the first question out, and asks something else.
fn asks_something_else_first(group: &mut AtTheDesk) {
    group.post("/do/take-out", &[("key", "1"), ("at", "")]);
    asks(group, "", "Is it soft?", &[("kind-1", "yes"), ("kind-2", "no"), ("kind-3", "yes")]);
}

#[test]
fn answers_hold_only_for_the_questions_that_they_were_given_to() {
    let mut group = on_heaps();
    let first = group.get("/newcomer?key=1&name=gorse&walk=");
    let second = link(&first, "walk-no");
    let cards = group.get(&link(&first, "walk-yes"));
    assert!(cards.contains("It comes out at holly"), "{cards}");
    let form = hidden(&cards, "action=\"/newcomer/slot\"");
    let form = [&as_sent(&form)[..], &[("name", "gorse"), ("c-9", "thorns")]].concat();
    let preview = group.look("/newcomer/slot", &form);
    assert!(preview.contains("It comes out at holly"), "the page says where it came out");
    let kept = hidden(&preview, "action=\"/do/slot-in\"");
    asks_something_else_first(&mut group);
    let page = group.refused("/do/slot-in", &as_sent(&kept));
    assert!(page.contains("Its answers were for other questions."), "{page}");
    assert!(page.contains("thorns"), "what was typed is not lost: {page}");
    for path in ["/newcomer/slot", "/newcomer"] {
        assert!(group.refused(path, &form).contains("Its answers were for other questions."));
    }
    // Nor does a walk that is still under way go on with another key.
    let page = group.send(Request::get(&second));
    assert_eq!(page.status, 422);
    let page = String::from_utf8(page.body).expect("text");
    assert!(page.contains("href=\"/newcomer?key=1&amp;name=gorse&amp;walk=\""), "{page}");
    assert!(!group.get("/finds").contains("gorse"));
}

#[test]
fn a_question_that_came_in_at_the_end_of_the_way_is_asked_first() {
    let mut group = on_heaps();
    let mut page = group.get("/newcomer?key=1&name=gorse&walk=");
    for answer in ["walk-no", "walk-no"] {
        page = group.get(&link(&page, answer));
    }
    assert!(page.contains("It comes out at oak"), "{page}");
    let form = hidden(&page, "action=\"/newcomer/slot\"");
    group.post("/do/add-kinds", &[("names", "elm")]);
    for at in ["", "n"] {
        let elm = [("key", "1"), ("at", at), ("kind", "4"), ("side", "no")];
        group.post("/do/sort", &elm);
    }
    asks(&mut group, "nn", "Is it lobed?", &[("kind-3", "yes"), ("kind-4", "no")]);
    group.refused("/newcomer/slot", &as_sent(&form));
    assert!(group.look("/newcomer", &as_sent(&form)).contains("Is it lobed?"));
}

#[test]
fn what_is_kept_is_the_change_that_was_shown() {
    let mut group = on_heaps();
    let page = group.get("/newcomer?key=1&name=gorse&walk=");
    let cards = group.get(&link(&page, "walk-yes"));
    let form = hidden(&cards, "action=\"/newcomer/slot\"");
    let form = [&as_sent(&form)[..], &[("name", "gorse")]].concat();
    let kept = hidden(&group.look("/newcomer/slot", &form), "action=\"/do/slot-in\"");
    // The questions are the same, but holly no longer lies where it came out.
    group.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", "2"), ("side", "no")]);
    let page = group.refused("/do/slot-in", &as_sent(&kept));
    assert!(page.contains("would not come in as the page said"), "{page}");
    let shown = group.look("/newcomer/slot", &form);
    assert!(!shown.contains("It comes out at holly"), "{shown}");
    let kept = hidden(&shown, "action=\"/do/slot-in\"");
    group.post("/do/slot-in", &as_sent(&kept));
    assert!(group.get("/finds").contains("gorse"));
}

#[test]
fn an_answer_about_a_number_asks_for_the_number_itself() {
    let mut class = with_key();
    // No to all: not in one piece, like a feather, fewer than eleven leaflets.
    let (_, page) = walked(&mut class, &["feather"]);
    assert!(page.contains("You said no to “Are there 11 or more leaflets?”"), "{page}");
    let (_, page) = walked(&mut class, &["hand"]);
    assert!(!page.contains("Type the number"), "nothing was asked about a number");
}
