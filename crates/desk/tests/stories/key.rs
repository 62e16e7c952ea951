//! A key on the screen: found from the table, changed in its place, compared.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::Request;
use spinney_exchange::table;
use spinney_fixtures::seeded;

/// The hedge walk with a key that was found from its table.
fn found() -> AtTheDesk {
    let mut teacher = AtTheDesk::with_hedge_walk();
    let page = start(&mut teacher, "Hedge walk", "finish");
    assert!(page.contains("Nobody touches what may hurt. No such key needs fewer"));
    teacher
}

fn start(teacher: &mut AtTheDesk, name: &str, how: &str) -> String {
    teacher.post("/do/key-start", &[("name", name), ("group", ""), ("how", how)])
}

fn change(teacher: &mut AtTheDesk, what: &str, at: &str, more: &[(&str, &str)]) -> String {
    let back = format!("/key?key=1&open={at}");
    let mut form = vec![("key", "1"), ("at", at), ("back", &back)];
    form.extend(more);
    teacher.post(&format!("/do/key-{what}"), &form)
}

/// The text between two marks.
fn between<'p>(page: &'p str, before: &str, after: &str) -> &'p str {
    let rest = page.split(before).nth(1).unwrap_or_else(|| panic!("no {before} in {page}"));
    rest.split(after).next().expect("a first part")
}

/// The words of the question with a number.
fn words(page: &str, number: u32) -> String {
    let question = between(page, &format!("id=\"q{number}\">"), "</h2>");
    between(question, "<span dir=\"auto\">", "</span>").to_owned()
}

/// What stands behind an answer of a question, and how many questions are kept.
fn leads_to(page: &str, number: u32, side: &str) -> String {
    let question = page.split(&format!("id=\"q{number}\">")).nth(1).expect("the question");
    between(question, &format!("<li class=\"{side}\">"), "</li>").to_owned()
}

fn kept(page: &str) -> usize {
    page.matches("<span class=\"kept\">").count()
}

#[test]
fn a_key_is_found_from_the_table() {
    let mut teacher = found();
    let page = teacher.get("/key?key=1");
    assert_eq!(kept(&page), 0);
    assert!(page.contains("questions per find") && page.contains("id=\"q1\""));
    let tree = teacher.get("/key?key=1&as=tree");
    assert_eq!(
        tree.matches("class=\"branches\"").count(),
        page.matches("class=\"leads\"").count()
    );
}

#[test]
fn a_question_is_put_into_our_own_words() {
    let mut teacher = found();
    let page = change(&mut teacher, "reword", "", &[("words", "Prickly all around?")]);
    assert!(page.contains("Prickly all around?"));
    assert_eq!(kept(&page), 1, "what we worded stays");
    let walk = teacher.get("/try?key=1&at=");
    assert!(walk.contains("Prickly all around?"));
    let page = teacher.refused("/do/key-reword", &[("key", "1"), ("at", ""), ("words", " ")]);
    assert!(page.contains("There is no question yet."));
}

#[test]
fn yes_and_no_are_exchanged_with_all_that_lies_below() {
    let mut teacher = found();
    let before = change(&mut teacher, "keep", "n", &[]);
    assert_eq!(kept(&before), 2);
    let (yes, no) = (leads_to(&before, 1, "yes"), leads_to(&before, 1, "no"));
    let opposite = between(&before, "id=\"opposite\"", ">");
    assert!(opposite.contains("value="), "{opposite}");
    let page = change(&mut teacher, "swap", "", &[("words", "Is it the other?")]);
    assert_eq!(words(&page.replace(" asked open", " asked"), 1), "Is it the other?");
    assert_eq!(kept(&page), 2, "the question below is still kept");
    // The kinds that came out on one side come out on the other, whatever the numbers are.
    let out = |lead: &str| {
        lead.contains("class=\"out\"").then(|| between(lead, "class=\"out\"", "<").to_owned())
    };
    assert_eq!(out(&leads_to(&page, 1, "no")), out(&yes));
    assert_eq!(out(&leads_to(&page, 1, "yes")), out(&no));
    assert!(page.contains("a second opinion agrees"));
    let back = teacher.get("/key?key=1");
    assert!(!back.contains("mend this</p>"), "nothing is broken by it");
}

#[test]
fn a_question_is_kept_with_all_above_it_and_let_go() {
    let mut teacher = found();
    let page = teacher.get("/key?key=1");
    let third =
        page.split("&amp;open=").skip(1).map(|rest| rest.split('#').next().unwrap_or(""));
    let third =
        third.into_iter().find(|way| way.len() == 2).expect("a third question").to_owned();
    let page = change(&mut teacher, "keep", &third, &[]);
    assert_eq!(kept(&page), 3);
    assert!(page.contains("No key that keeps to what you wished needs fewer questions"));
    assert!(page.contains("What you kept and wished for: no more questions per find."));
    let back = "/key?key=1";
    let first = [("key", "1"), ("at", &third[..1]), ("back", back)];
    let page = teacher.post("/do/take-out", &first);
    assert_eq!(kept(&page), 1);
}

#[test]
fn another_question_has_its_price() {
    let mut teacher = found();
    let page = teacher.get("/key?key=1&open=");
    let offers = between(&page, "<ol class=\"offers\">", "</ol>");
    let offer = offers.split("<form").skip(1).find(|offer| offer.contains("about "));
    let offer = offer.expect("some question costs more");
    let price = between(offer, "about ", " more questions per find").to_owned();
    let value =
        |name: &str| between(offer, &format!("name=\"{name}\" value=\""), "\"").to_owned();
    let character = value("character");
    let words_of = value("words");
    let mut form = vec![("words", words_of.as_str()), ("character", character.as_str())];
    let states: Vec<String> = offer
        .split("name=\"state\" value=\"")
        .skip(1)
        .map(|rest| rest.split('"').next().expect("a state").to_owned())
        .collect();
    form.extend(states.iter().map(|state| ("state", state.as_str())));
    let number = ["at-least", "below"].map(|name| {
        let mark = format!("name=\"{name}\" value=\"");
        offer.contains(&mark).then(|| (name, between(offer, &mark, "\"").to_owned()))
    });
    form.extend(number.iter().flatten().map(|(name, text)| (*name, text.as_str())));
    let page = change(&mut teacher, "replace", "", &form);
    assert_eq!(kept(&page), 1);
    assert!(page.contains(&words_of));
    let costs = format!("What you kept and wished for: about {price} more questions per find.");
    assert!(page.contains(&costs), "the price is what was said: {costs}");
}

/// Four kinds that a ruler tells apart.
fn measured() -> AtTheDesk {
    let mut group = AtTheDesk::empty();
    group.paste("kind,stalk length (mm)\nhazel,5-10\noak,20-30\nlime,40-60\nelder,80-95\n");
    start(&mut group, "Stalks", "finish");
    group
}

#[test]
fn a_threshold_moves_between_the_ranges_and_not_into_one() {
    let mut group = measured();
    let page = group.get("/key?key=1&open=");
    assert!(page.contains("What was measured: stalk length"));
    assert_eq!(page.matches("<svg class=\"range\"").count(), 4);
    let page = change(&mut group, "threshold", "", &[("number", "36")]);
    assert_eq!(words(&page, 1), "Is the stalk 36 mm or longer?");
    let form = [("key", "1"), ("at", ""), ("number", "50"), ("back", "/key?key=1")];
    let page = group.refused("/do/key-threshold", &form);
    assert!(page.contains("is inside the range of lime (40–60)"), "{page}");
    let form = [("key", "1"), ("at", ""), ("number", "long"), ("back", "/key?key=1")];
    assert!(group.refused("/do/key-threshold", &form).contains("That is not a number."));
    let form = [("key", "1"), ("at", ""), ("number", "200"), ("back", "/key?key=1")];
    assert!(group.refused("/do/key-threshold", &form).contains("answer it alike"));
    // Nearer than the gap it may stand, and is said to be looked at.
    let page = change(&mut group, "threshold", "", &[("number", "31")]);
    assert!(page.contains("two people who measure may disagree"), "{page}");
}

#[test]
fn the_shaded_band_is_drawn_whole_on_both_sides_of_the_cut_off() {
    let mut group = AtTheDesk::empty();
    group.paste("kind,stalk length (mm)\nhazel,5-10\noak,30\n");
    start(&mut group, "Stalks", "finish");
    // At the very end of what was measured: the band goes on beyond it.
    let page = change(&mut group, "threshold", "", &[("number", "30")]);
    let number = |name: &str| -> f64 {
        between(&page, &format!("{name}=\""), "\"").parse().expect("a number")
    };
    let (low, high, gap) = (number("data-low"), number("data-high"), number("data-gap"));
    assert!(gap > 0.0 && low < 5.0 && high > 30.0 + gap, "{low} to {high} with {gap}");
}

#[test]
fn two_keys_lie_side_by_side() {
    let mut teacher = found();
    start(&mut teacher, "Group Blue", "empty");
    let page = teacher.get("/key/compare?one=1&other=2");
    let table = between(&page, "<table class=\"compared\">", "</table>");
    for row in [
        "Does it work?",
        "Left together",
        "To mend",
        "Questions per find, about",
        "On the longest way",
        "Questions in all",
    ] {
        assert!(table.contains(row), "{row}");
    }
    assert!(table.contains("Hedge walk") && table.contains("Group Blue"));
}

#[test]
fn what_is_never_to_be_asked_is_not_asked() {
    let mut teacher = found();
    let page = teacher.get("/key?key=1");
    let first = words(&page, 1);
    let never = between(&page, "<fieldset class=\"never\">", "</fieldset>");
    let all: Vec<&str> = never.split("name=\"never\" value=\"").skip(1).collect();
    let numbers: Vec<&str> =
        all.iter().map(|rest| rest.split('"').next().expect("id")).collect();
    let describe = vec![("key", "1"), ("name", "Hedge walk"), ("group", "Green")];
    // One column is left out: what it was asked for is not asked, and something else is.
    let edge = all.iter().find(|rest| rest.contains(">edge</label>")).expect("the edge");
    let edge = edge.split('"').next().expect("id");

    let one = [describe.clone(), vec![("never", edge)]].concat();
    let without = teacher.post("/do/key-describe", &one);
    let questions = |page: &str| {
        let numbers = 1..=page.matches("class=\"leads\"").count() as u32;
        numbers.map(|number| words(page, number)).collect::<Vec<String>>()
    };
    assert!(questions(&page).iter().any(|words| words.contains("edge")));
    let left = questions(&without);
    assert!(left.len() > 5 && !left.iter().any(|words| words.contains("edge")), "{left:?}");
    let mut form = describe;
    form.extend(numbers.iter().map(|number| ("never", *number)));
    let page = teacher.post("/do/key-describe", &form);
    assert!(page.contains("This key has no question yet."), "nothing may be asked");
    teacher.undo("/key?key=1");
    assert_eq!(words(&teacher.get("/key?key=1"), 1), first);
}

#[test]
fn nobody_is_sent_to_touch_what_may_hurt_until_that_is_allowed() {
    let mut teacher = found();
    let page = teacher.get("/key?key=1");
    let price = between(&page, "<p id=\"touch-price\">", "</p>");
    assert!(price.starts_with("Nobody is sent to touch what may hurt"), "{price}");
    assert!(price.contains("more questions per find"), "{price}");
    let asks = |page: &str| {
        let numbers = 1..=page.matches("class=\"leads\"").count() as u32;
        numbers.map(|number| words(page, number)).collect::<Vec<String>>()
    };
    let feel = "Does the leaf feel like paper?".to_owned();
    assert!(!asks(&page).contains(&feel) && !page.contains("id=\"touching\""), "{page}");
    let describe = |teacher: &mut AtTheDesk, touch: &[(&'static str, &'static str)]| {
        let mut form = vec![("key", "1"), ("name", "Hedge walk")];
        form.extend(touch);
        teacher.post("/do/key-describe", &form)
    };
    let page = describe(&mut teacher, &[("touch", "allowed")]);
    assert!(asks(&page).contains(&feel));
    let saves = between(&page, "<p id=\"touch-price\">", "</p>");
    assert!(saves.starts_with("Touching is allowed.") && saves.contains("fewer"), "{saves}");
    let page = describe(&mut teacher, &[]);
    assert!(!asks(&page).contains(&feel), "the box is empty again");
    teacher.undo("/key?key=1");
    assert!(asks(&teacher.get("/key?key=1")).contains(&feel));
}

#[test]
fn a_search_that_goes_on_is_seen_stopped_and_found() {
    let mut teacher = AtTheDesk::with_scenario("hedge_walk");
    start(&mut teacher, "Hedge walk", "finish");
    teacher.send(spinney_desk::Request::post("/do/key-look-on", &[("key", "1")]));
    assert!(teacher.desk.at_work());
    let progress = teacher.desk.work_on(100_000).expect("it was begun");
    assert!(progress.over, "a small table is proved at once");
    assert!(!teacher.desk.at_work());
    assert!(teacher.get("/key?key=1").contains("a second opinion agrees"));
    teacher.send(spinney_desk::Request::post("/do/key-look-on", &[("key", "1")]));
    teacher.post("/do/key-start", &[("name", "another"), ("how", "empty")]);
    assert!(teacher.desk.at_work(), "another key is no matter of this one");
    teacher.post("/do/describe-kind", &[("kind", "1"), ("how-often", "90")]);
    assert!(!teacher.desk.at_work(), "an edit of what it looks at ends it");
    teacher.send(spinney_desk::Request::post("/do/key-look-on", &[("key", "1")]));
    teacher.send(spinney_desk::Request::post("/do/key-stop", &[("key", "1")]));
    assert!(!teacher.desk.at_work() && teacher.desk.work_on(1).is_none());
}

#[test]
fn what_is_not_sure_is_said_and_looked_at_for_longer() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste(&table::write(&seeded::skewed(1, 20, 20, 20, 5)).table);
    let page = start(&mut teacher, "All of them", "finish");
    assert!(
        page.contains(
            "The best so far, not yet sure: no key for this table can use fewer than"
        )
    );
    teacher.send(spinney_desk::Request::post("/do/key-look-on", &[("key", "1")]));
    let progress = teacher.desk.work_on(1).expect("it is under way");
    assert!(!progress.over && progress.heaps == 1);
    let page = teacher.get("/key/looking?key=1");
    let refresh = "<noscript><meta http-equiv=\"refresh\" content=\"1\"></noscript>";
    assert!(page.contains(refresh) && page.contains("601 heaps taken apart."));
    let page = teacher.post("/do/key-stop", &[("key", "1")]);
    assert!(page.contains("The best so far, not yet sure") && page.contains("id=\"look-on\""));
    assert!(
        teacher.get("/key/looking?key=1").contains("id=\"look-on\""),
        "nothing is under way"
    );
}

#[test]
fn a_hostile_name_is_only_a_name() {
    let mut teacher = found();
    let name = "</title><script>alert(1)</script>\"'&\u{202e}🍂\nand more";
    let page = start(&mut teacher, name, "finish");
    assert!(!page.contains("<script>alert"));
    let long = "x".repeat(10_000);
    let page = change(&mut teacher, "reword", "", &[("words", &long)]);
    assert!(!page.contains(&"x".repeat(301)));
    for path in
        ["/key?key=2&as=tree", "/key/compare?one=1&other=2", "/try?key=2&at=", "/print?key=2"]
    {
        assert!(!teacher.get(path).contains("<script>alert"), "{path}");
    }
}

#[test]
fn what_nobody_has_said_of_a_kind_stands_once_and_its_ends_are_marked() {
    let mut class = AtTheDesk::empty();
    class.paste(
        "kind\tedge\tlobes\tshine\nelm\ttoothed\tno\tdull\noak\tsmooth\tyes\tdull\n\
         box\tsmooth\tno\tshiny\nash\t?\t?\t?\n",
    );
    let page = class.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    let margin = page.split("id=\"margin\"").nth(1).expect("the key has a margin");
    assert_eq!(page.matches("Nobody has said of ash what").count(), 1);
    assert!(margin.contains("Nobody has said of ash what these 2 questions ask:"), "{margin}");
    assert!(!page.contains("and nobody has looked at that on"), "not at each question as well");
    let ends = page.matches("perhaps ash");
    assert_eq!(ends.count(), 3, "it comes out at all three ends");
    assert!(!page.contains("perhaps elm"));
    // A pupil hears the same at the end of a walk.
    let end = class.get("/try?key=1&at=yy");
    let end = if end.contains("id=\"yes\"") { class.get("/try?key=1&at=yyy") } else { end };
    let why = "Nobody has looked at what question 1 asks of ash";
    assert!(end.contains(why), "{end}");
}

#[test]
fn a_length_is_asked_shown_and_moved_in_the_unit_of_its_column() {
    let mut class = AtTheDesk::empty();
    class.paste("kind\tblade length (cm)\nelm\t6-9\nbox\t1-2\n");
    let page = class.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    assert!(page.contains("Is the blade 4 cm or longer?"), "{page}");
    let open = class.get("/key?key=1&open=");
    assert!(
        open.contains("6–9 cm") && open.contains("1–2 cm") && !open.contains(" mm"),
        "{open}"
    );
    assert!(open.contains("value=\"4\""), "the number is typed in centimetres too");
    let form = [("key", "1"), ("at", ""), ("number", "3.5"), ("back", "/key?key=1")];
    let moved = class.post("/do/key-threshold", &form);
    assert!(moved.contains("Is the blade 3.5 cm or longer?"), "{moved}");
    let form = [("key", "1"), ("at", ""), ("number", "7"), ("back", "/key?key=1")];
    let inside = class.refused("/do/key-threshold", &form);
    assert!(inside.contains("elm (6–9)"), "{inside}");
}

/// The words of the first question after somebody has moved its number.
fn moved_by(class: &mut AtTheDesk, language: &str, number: &str) -> String {
    let form = [("key", "1"), ("at", ""), ("number", number), ("back", "/key?key=1")];
    let request = Request::post("/do/key-threshold", &form);
    let page = class.send(Request { languages: vec![language.to_owned()], ..request });
    assert_eq!(page.status, 303, "{}", String::from_utf8_lossy(&page.body));
    words(&class.get("/key?key=1"), 1)
}

/// Whoever reads another language than the one in which a question was kept does not make it
/// somebody's own words.
#[test]
fn a_question_is_worded_in_the_language_in_which_it_was_kept_when_its_number_moves() {
    let mut class = AtTheDesk::empty();
    class.paste("kind\tStiellänge (cm)\nHasel\t6-9\nEfeu\t1-2\n");
    start(&mut class, "Unser", "finish");
    let german = moved_by(&mut class, "de", "3.5");
    assert_eq!(german, "Ist der Stiel 3,5 cm lang oder länger?");
    let read_in_english = moved_by(&mut class, "en", "4.5");
    assert_eq!(read_in_english, "Ist der Stiel 4,5 cm lang oder länger?");
    // What people worded themselves stays, with the new number in it.
    change(&mut class, "reword", "", &[("words", "Ist er über 4.5 cm?")]);
    assert_eq!(moved_by(&mut class, "en", "3.5"), "Ist er über 3.5 cm?");
    assert_eq!(moved_by(&mut class, "de", "4"), "Ist er über 4 cm?");
}

#[test]
fn a_key_that_is_kept_whole_does_not_change_with_the_table() {
    let questions = |page: &str| -> Vec<String> {
        let places = page.split("id=\"q").skip(1);
        places.map(|rest| between(rest, "<span dir=\"auto\">", "</span>").to_owned()).collect()
    };
    // A find that is met very often turns the key about.
    let changed = |teacher: &mut AtTheDesk| {
        teacher.post("/do/describe-kind", &[("kind", "12"), ("how-often", "90")]);
        questions(&teacher.get("/key?key=1"))
    };
    let mut teacher = found();
    let before = questions(&teacher.get("/key?key=1"));
    assert_ne!(changed(&mut teacher), before);
    let mut teacher = found();
    assert!(teacher.get("/key?key=1").contains("its questions may change"));
    let page = teacher.post("/do/key-keep-all", &[("key", "1"), ("back", "/key?key=1")]);
    assert!(page.contains("Every question of this key is kept"), "{page}");
    assert_eq!(questions(&page), before);
    assert_eq!(changed(&mut teacher), before);
    assert!(teacher.undo("/key?key=1").contains("Undone: "), "what was taken back is said");
}

#[test]
fn a_key_that_changed_meanwhile_is_not_kept_unseen() {
    let mut teacher = found();
    let page = teacher.get("/key?key=1");
    let form = between(&page, "action=\"/do/key-keep-all\">", "</form>");
    let seen = between(form, "name=\"asks\" value=\"", "\"").to_owned();
    let keep = [("key", "1"), ("asks", seen.as_str()), ("back", "/key?key=1")];
    teacher.post("/do/describe-kind", &[("kind", "12"), ("how-often", "90")]);
    let page = teacher.refused("/do/key-keep-all", &keep);
    assert!(page.contains("have changed, perhaps"), "{page}");
    teacher.post("/do/describe-kind", &[("kind", "12"), ("how-often", "4")]);
    assert!(
        teacher.post("/do/key-keep-all", &keep).contains("Every question of this key is kept")
    );
}

#[test]
fn an_opened_question_offers_others_also_where_no_key_is_named() {
    let mut teacher = found();
    assert!(!teacher.get("/key").contains("<ol class=\"offers\">"));
    assert!(teacher.get("/key?open=").contains("<ol class=\"offers\">"));
}
