//! A pupil tries the key, and a teacher prints it.

use crate::at_the_desk::AtTheDesk;
use spinney_desk::{Reply, Request};
use spinney_fixtures::packed_objects::with_packed_objects;
use spinney_fixtures::photographs::{PHOTOGRAPH, tales_in, telling_jpeg};
use spinney_model::{CharacterEdit, Edit, KindEdit, KindId};
use spinney_press::sheets::SHEETS;
use spinney_voice::Tongue;

fn found() -> AtTheDesk {
    let mut teacher = AtTheDesk::with_hedge_walk();
    teacher.post("/do/key-start", &[("name", "Hedge walk"), ("how", "finish")]);
    teacher
}

/// Where a link leads.
fn link(page: &str, id: &str) -> String {
    let tag = page.split("<a ").find(|tag| tag.contains(&format!("id=\"{id}\"")));
    let tag = tag.unwrap_or_else(|| panic!("no link {id}"));
    let href = tag.split("href=\"").nth(1).and_then(|rest| rest.split('"').next());
    href.expect("a link leads somewhere").replace("&amp;", "&")
}

#[test]
fn a_pupil_walks_to_an_end_and_back() {
    let mut pupil = found();
    let start = pupil.get("/try?key=1");
    assert!(start.contains("What did you find?") && !start.contains("<form"));
    let mut page = pupil.get(&link(&start, "begin"));
    let mut questions = 0;
    while page.contains("id=\"yes\"") {
        questions += 1;
        assert!(page.contains("class=\"bare\"") && !page.contains("<form"));
        page = pupil.get(&link(&page, "no"));
    }
    assert!(questions > 1 && page.contains("It comes out as"));
    assert_eq!(page.matches("<a href=\"/try?key=1&amp;at=").count(), questions, "the trail");
    let back = pupil.get(&link(&page, "back"));
    assert!(back.contains("id=\"yes\""));
    assert!(pupil.get(&link(&page, "again")).contains("Question 1"));
}

#[test]
fn the_visits_caution_and_who_decides_reach_the_walk_and_every_screen() {
    let rules = &Tongue::of_terminal().say("foot-rules");
    let mut teacher = found();
    let before = ["Ask the owner.", "Look for ticks."].join("\r\n\r\n");
    let form = [("caution", "Gloves stay on until noon."), ("before", &before)];
    let finds = teacher.post("/do/describe-scene", &form);
    assert!(finds.contains("Gloves stay on until noon.") && finds.contains("Look for ticks."));
    let start = teacher.get("/try?key=1");
    assert!(start.contains("Gloves stay on until noon."), "the walk drops it");
    let question = teacher.get(&link(&start, "begin"));
    for page in
        ["/finds", "/heaps", "/table", "/key", "/words", "/try?key=1", "/print", "/done"]
    {
        assert!(teacher.get(page).contains(rules), "{page} does not say who decides");
    }
    assert!(question.contains(rules), "a question of the walk does not say who decides");
    teacher.undo("/finds");
    assert!(!teacher.get("/try?key=1").contains("Gloves stay on until noon."), "undone");
}

#[test]
fn how_many_come_along_is_said_once_and_the_first_page_counts_by_it() {
    let mut teacher = found();
    let cover = |teacher: &mut AtTheDesk| teacher.get("/print/today.svg?key=1&page=1");
    let assumed = cover(&mut teacher);
    let page = teacher.post("/do/how-many", &[("children", "28"), ("groups", "7")]);
    assert!(page.contains("value=\"28\"") && page.contains("value=\"7\""), "{page}");
    let counted = cover(&mut teacher);
    assert_ne!(assumed, counted, "the first page does not go by it");
    let page = teacher.refused("/do/how-many", &[("children", "many"), ("groups", "7")]);
    assert!(page.contains("The number of children or groups could not be read."));
    teacher.post("/do/how-many", &[("children", ""), ("groups", "7")]);
    assert!(![&assumed, &counted].contains(&&cover(&mut teacher)), "children are assumed");
    teacher.undo("/print");
    assert_eq!(cover(&mut teacher), counted);
    teacher.undo("/print");
    assert_eq!(cover(&mut teacher), assumed);
}

#[test]
fn a_sheet_in_black_has_no_colour() {
    let mut teacher = found();
    let colours = |svg: &str| {
        let found = svg.split('#').skip(1).filter_map(|rest| rest.get(..6));
        let found = found.filter(|it| it.bytes().all(|byte| byte.is_ascii_hexdigit()));
        found.filter(|it| it[..2] != it[2..4] || it[2..4] != it[4..]).count()
    };
    assert!(colours(&teacher.get("/print/short-key.svg?key=1&page=1")) > 0);
    assert_eq!(colours(&teacher.get("/print/short-key.svg?key=1&page=1&ink=black")), 0);
    let page = teacher.get("/print?key=1&sheet=short-key&ink=black");
    assert!(link(&page, "download").contains("ink=black"), "the file is as the picture");
}

#[test]
fn what_a_question_of_touch_warns_of_is_one_line_that_opens() {
    let mut pupil = AtTheDesk::empty();
    pupil.paste("kind,feel\nivy,leathery\nlime,thin\n");
    pupil.post(
        "/do/describe-kind",
        &[("kind", "1"), ("caution", "Its sap can make skin sore.")],
    );
    pupil.does(vec![Edit::Character(
        spinney_model::CharacterId(1),
        CharacterEdit::Describe(spinney_model::CharacterField::ByTouch, "yes".to_owned()),
    )]);
    pupil.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    let question = pupil.get("/try?key=1&at=");
    let (_, rest) =
        question.split_once("<details class=\"caution\"").expect("a line that opens");
    let (warning, after) = rest.split_once("</details>").expect("it ends");
    assert!(warning.contains("Its sap can make skin sore."), "{warning}");
    assert!(after.contains("id=\"yes\""), "the warning comes before the answers");
}

#[test]
fn who_cannot_tell_goes_both_ways_and_compares() {
    let mut pupil = found();
    let first = pupil.get("/try?key=1&at=");
    let mut page = pupil.get(&link(&first, "cannot-tell"));
    while page.contains("id=\"yes\"") {
        page = pupil.get(&link(&page, "yes"));
    }
    assert!(page.contains("Both ways: compare these, and see which fits"));
    assert!(page.contains("could not tell"));
    assert!(page.matches("class=\"ending\"").count() > 1);
}

#[test]
fn the_end_says_what_may_hurt_and_what_must_fit() {
    let mut pupil = found();
    let mut open = vec![String::new()];
    let (mut cautions, mut confirmed) = (0, 0);
    while let Some(at) = open.pop() {
        let page = pupil.get(&format!("/try?key=1&at={at}"));
        if page.contains("id=\"yes\"") {
            open.extend([format!("{at}y"), format!("{at}n")]);
        } else {
            cautions += page.matches("class=\"caution\"").count();
            confirmed += page.matches("class=\"confirm\"").count();
        }
    }
    assert!(cautions > 0 && confirmed > 0, "{cautions} {confirmed}");
}

fn file(teacher: &mut AtTheDesk, path: &str) -> spinney_desk::Page {
    match teacher
        .desk
        .handle(&Request { today: "25 November 2026".into(), ..Request::get(path) })
    {
        Reply::Page(page) if page.status == 200 => page,
        other => panic!("{path}: {other:?}"),
    }
}

#[test]
fn every_sheet_is_a_file_and_has_a_preview_of_every_page() {
    let mut teacher = found();
    let offers = teacher.get("/print?key=1");
    let offered = |sheet: &&str| offers.contains(&format!("id=\"sheet-{sheet}\""));
    let (offered, not): (Vec<_>, Vec<_>) = SHEETS.iter().map(|it| it.name).partition(offered);
    assert_eq!(
        not,
        ["scale-strip"],
        "the walk has leaves, which have the card, lengths and words"
    );
    for sheet in offered {
        let page = teacher.get(&format!("/print?key=1&sheet={sheet}"));
        let of: usize = page
            .split("page 1 of ")
            .nth(1)
            .and_then(|rest| rest.split(|c: char| !c.is_ascii_digit()).next()?.parse().ok())
            .expect("it says how many pages");
        let pdf = file(&mut teacher, &format!("/print/{sheet}.pdf?key=1&paper=a4"));
        assert!(pdf.body.starts_with(b"%PDF"));
        assert_eq!(pdf.file.as_deref(), Some(format!("hedge-walk-{sheet}-a4.pdf").as_str()));
        let objects = with_packed_objects(&pdf.body);
        let text = String::from_utf8_lossy(&objects);
        assert_eq!(
            text.matches("/Type/Page/").count() + text.matches("/Type/Page\n").count(),
            of
        );
        for page in 1..=of {
            let path = format!("/print/{sheet}.svg?key=1&paper=a4&page={page}");
            let preview = file(&mut teacher, &path);
            assert!(preview.kind == "image/svg+xml" && preview.body.starts_with(b"<svg "));
        }
        let over = format!("/print/{sheet}.svg?key=1&paper=a4&page={}", of + 1);
        let Reply::Page(none) = teacher.desk.handle(&Request::get(&over)) else { panic!() };
        assert_eq!(none.status, 404);
    }
}

#[test]
fn large_print_is_a_wish_of_whoever_prints_and_a_sheet_without_it_says_why() {
    let mut teacher = found();
    let page = teacher.get("/print?key=1&sheet=key-pages&letters=large");
    assert!(page.contains("<option value=\"large\" selected"), "{page}");
    assert!(!page.contains("id=\"not-large\""));
    assert!(page.contains("letters=large&amp;page=2"), "the next page is large as well");
    let ruler = teacher.get("/print?key=1&sheet=ruler&letters=large");
    assert!(ruler.contains("id=\"not-large\">This sheet stays as it is: lengths"), "{ruler}");
    assert!(!teacher.get("/print?key=1&sheet=ruler").contains("id=\"not-large\""));
    let pdf = |teacher: &mut AtTheDesk, sheet: &str, letters: &str| {
        file(teacher, &format!("/print/{sheet}.pdf?key=1&letters={letters}")).body
    };
    let mut differs =
        |sheet: &str| pdf(&mut teacher, sheet, "usual") != pdf(&mut teacher, sheet, "large");
    assert!(differs("key-pages") && !differs("ruler"));
}

/// How large places and the chart are is a wish of whoever prints, like ink; a length that there
/// cannot be is said beside its field, and nothing is refused for it.
#[test]
fn sizes_are_wished_on_the_print_screen() {
    let mut teacher = found();
    let page = teacher.get("/print?key=1&sheet=album&places=12+cm&wall=a1");
    assert!(page.contains("value=\"12 cm\"") && page.contains("<option value=\"a1\" selected"));
    assert!(!page.contains("id=\"places-not\""));
    assert!(page.contains("/print/album.pdf?key=1&amp;paper=a4&amp;ink=colour&amp;letters=usual&amp;places=120&amp;wall=a1"), "{page}");
    for typed in ["12", "a+lot", "-40", "30+cm"] {
        let page = teacher.get(&format!("/print?key=1&sheet=album&places={typed}"));
        assert!(page.contains(
            "id=\"places-not\">That is no length for a place. Type a length from 20 to 200 mm"
        ));
        let file = link(&page, "download");
        assert!(file.starts_with("/print/album.pdf") && !file.contains("places"), "{file}");
    }
    let mut words = |wish: &str| {
        let svg = file(&mut teacher, &format!("/print/album.svg?key=1&page=1{wish}"));
        String::from_utf8(svg.body).expect("a picture is text")
    };
    let usual = words("");
    assert_eq!(usual, words("&places=lots"));
    assert_ne!(usual, words("&places=120"));
    let pages = |teacher: &mut AtTheDesk, wall: &str| {
        let page = teacher.get(&format!("/print?key=1&sheet=wall&wall={wall}"));
        let of = page.split("page 1 of ").nth(1).expect("it says how many pages").to_owned();
        of.split(|c: char| !c.is_ascii_digit()).next().map(str::to_owned)
    };
    assert_ne!(pages(&mut teacher, "a2"), pages(&mut teacher, "a1"));
}

#[test]
fn what_is_not_for_a_printer_is_a_file_too() {
    let mut teacher = found();
    let text = |page: spinney_desk::Page| String::from_utf8(page.body).expect("text");
    assert!(
        text(file(&mut teacher, "/print/phone.html?key=1")).contains("Content-Security-Policy")
    );
    assert!(text(file(&mut teacher, "/print/key.txt?key=1")).starts_with("1. "));
    assert!(text(file(&mut teacher, "/print/key.json?key=1")).starts_with("{"));
    assert!(text(file(&mut teacher, "/print/table.csv?key=1")).starts_with("kind,"));
}

#[test]
fn a_groups_poster_is_in_its_own_words() {
    let mut group = found();
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    let back = "/heaps?key=2";
    let ask = [("key", "2"), ("at", ""), ("words", "Spiky all round?"), ("back", back)];
    group.post("/do/ask", &ask);
    for kind in ["1", "2", "3", "4", "5", "6", "7", "8"] {
        let side = if kind == "1" { "yes" } else { "no" };
        let form = [("key", "2"), ("at", ""), ("kind", kind), ("side", side), ("back", back)];
        group.post("/do/sort", &form);
    }
    let text = String::from_utf8(file(&mut group, "/print/key.txt?key=2").body).expect("text");
    assert!(text.contains("Spiky all round?"), "{text}");
    assert!(file(&mut group, "/print/chart.pdf?key=2&paper=a3").body.starts_with(b"%PDF"));
}

#[test]
fn pictures_are_asked_for_until_they_come_or_are_lost() {
    let mut teacher = found();
    let hash = "ab".repeat(32);
    teacher.does(vec![Edit::Kind(KindId(1), KindEdit::AddPicture(hash.clone()))]);
    let print = Request::get("/print?key=1");
    let Reply::NeedPictures(wanted) = teacher.desk.handle(&print) else {
        panic!("no pictures")
    };
    assert_eq!(wanted, [hash.clone()].into());
    assert!(
        matches!(teacher.desk.handle(&print), Reply::NeedPictures(again) if again == wanted)
    );
    let another = Request { pictures: [("cd".repeat(32), None)].into(), ..print.clone() };
    assert!(matches!(teacher.desk.handle(&another), Reply::NeedPictures(_)));
    let lost = Request { pictures: [(hash.clone(), None)].into(), ..print.clone() };
    let Reply::Page(page) = teacher.desk.handle(&lost) else { panic!("it is asked again") };
    assert_eq!(page.status, 200, "a lost picture does not stop the printing");
    assert!(matches!(teacher.desk.handle(&print), Reply::NeedPictures(_)));
    let pictures = [(hash, Some(vec![0xFF, 0xD8, 0, 0]))].into();
    let given = Request { pictures, ..Request::get("/print/today.pdf?key=1") };
    let Reply::Page(pdf) = teacher.desk.handle(&given) else { panic!("it has them") };
    assert!(pdf.body.starts_with(b"%PDF"), "a broken picture does not stop it either");
}

#[test]
fn the_end_has_a_second_look_and_drawings_of_its_words() {
    let mut pupil = found();
    let mut open = vec![String::new()];
    let (mut looks, mut drawn) = (0, 0);
    while let Some(at) = open.pop() {
        let page = pupil.get(&format!("/try?key=1&at={at}"));
        if page.contains("id=\"yes\"") {
            if page.contains("opposite on the twig?") {
                assert!(page.contains("class=\"two-states\""), "a drawn word is shown");
            }
            open.extend([format!("{at}y"), format!("{at}n")]);
        } else {
            looks += page.matches("To make sure, look once more").count();
            drawn += page.matches("class=\"two-states\"").count();
        }
    }
    assert!(looks > 0 && drawn > 0, "{looks} {drawn}");
}

#[test]
fn a_word_is_explained_once_on_an_end() {
    let mut pupil = found();
    let mut ends = 0;
    let mut open = vec![String::new()];
    while let Some(at) = open.pop() {
        let page = pupil.get(&format!("/try?key=1&at={at}"));
        if page.contains("id=\"yes\"") {
            // Whoever can tell nothing ends at many kinds.
            let answers = if at.len() < 3 { "ynu" } else { "u" };
            open.extend(answers.chars().map(|answer| format!("{at}{answer}")));
            continue;
        }
        ends += 1;
        let mut words: Vec<&str> =
            page.split("<dt>").skip(1).filter_map(|rest| rest.split("</dt>").next()).collect();
        let all = words.len();
        words.sort_unstable();
        words.dedup();
        assert_eq!(words.len(), all, "{at}: {words:?}");
    }
    assert!(ends > 1, "only {ends} ends");
}

#[test]
fn a_way_that_could_not_be_told_is_marked_at_the_end() {
    let mut pupil = found();
    let mut page = pupil.get("/try?key=1&at=u");
    while page.contains("id=\"yes\"") {
        page = pupil.get(&link(&page, "no"));
    }
    assert!(page.contains("so you went both ways."));
    let sure = pupil.get("/try?key=1&at=nn");
    assert!(!sure.contains("so you went both ways."));
}

#[test]
fn a_key_with_questions_of_people_is_a_trying_out_copy_also_when_it_is_finished() {
    let mut group = found();
    let phone = |group: &mut AtTheDesk, key: u32| {
        let page = file(group, &format!("/print/phone.html?key={key}"));
        String::from_utf8(page.body).expect("text")
    };
    assert!(!phone(&mut group, 1).contains("trying-out copy"), "the machine's own");
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    group.post("/do/ask", &[("key", "2"), ("at", ""), ("words", "Is it soft?")]);
    for kind in 1..=12 {
        let (kind, side) = (kind.to_string(), if kind % 2 == 0 { "yes" } else { "no" });
        group.post("/do/sort", &[("key", "2"), ("at", ""), ("kind", &kind), ("side", side)]);
    }
    assert!(phone(&mut group, 2).contains("trying-out copy"));
    group.post("/do/finish", &[("key", "2"), ("at", ""), ("finish", "yes")]);
    assert!(group.get("/key?key=2").contains("Is it soft?"));
    assert!(phone(&mut group, 2).contains("trying-out copy"), "the rest is the machine's");

    // People tried it as it is; another question is another key.
    let page = group.get("/key?key=2");
    let fields = crate::at_the_desk::hidden(&page, "/do/key-tried");
    let fields: Vec<(&str, &str)> =
        fields.iter().map(|(n, v)| (n.as_str(), v.as_str())).collect();
    let page = group.post("/do/key-tried", &fields);
    assert!(page.contains("We have not tried it after all"));
    assert!(!phone(&mut group, 2).contains("trying-out copy"), "people tried it");
    group.post("/do/key-reword", &[("key", "2"), ("at", ""), ("words", "Is it quite soft?")]);
    assert!(phone(&mut group, 2).contains("trying-out copy"), "nobody tried it so");
    let said = group.refused("/do/key-tried", &fields);
    assert!(said.contains("This key has changed since the page was shown."));
    group.undo("/key?key=2");
    assert!(!phone(&mut group, 2).contains("trying-out copy"), "as it was tried");
}

#[test]
fn a_hand_drawn_key_that_loses_a_find_is_a_draft_and_cannot_be_said_to_be_tried() {
    let mut group = AtTheDesk::empty();
    group.post("/do/add-kinds", &[("names", "hazel\nlime\nivy")]);
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    group.post("/do/ask", &[("key", "1"), ("at", ""), ("words", "Is the edge toothed?")]);
    for (kind, side) in [("1", "yes"), ("3", "no")] {
        group.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", kind), ("side", side)]);
    }
    let page = file(&mut group, "/print/phone.html?key=1");
    let page = String::from_utf8(page.body).expect("text");
    assert!(page.contains("DRAFT"), "lime comes out nowhere");
    assert!(!group.get("/key?key=1").contains("/do/key-tried"));
}

#[test]
fn a_picture_kept_by_another_program_tells_nothing_on_paper_or_on_a_phone() {
    let mut teacher = found();
    let hash = "ab".repeat(32);
    teacher.does(vec![Edit::Kind(KindId(1), KindEdit::AddPicture(hash.clone()))]);
    let raw = telling_jpeg(PHOTOGRAPH, 1);
    assert!(tales_in(&raw).len() > 5, "it tells everything");
    let files = ["phone.html", "chart.svg", "key-pages.pdf", "chart.pdf", "try-out.pdf"];
    for name in files.into_iter().chain(["today.pdf", "key.json", "key.txt", "table.csv"]) {
        let pictures = [(hash.clone(), Some(raw.clone()))].into();
        let given = Request { pictures, ..Request::get(&format!("/print/{name}?key=1")) };
        let Reply::Page(page) = teacher.desk.handle(&given) else { panic!("{name}") };
        assert_eq!(page.status, 200, "{name}");
        let packed = name.ends_with(".pdf").then(|| with_packed_objects(&page.body));
        let told = packed.unwrap_or(page.body.clone());
        assert_eq!(tales_in(&told), Vec::<&str>::new(), "{name}");
        let text = String::from_utf8_lossy(&page.body);
        // In letters too: the first bytes of the Exif of a file that is handed on as it is.
        assert!(!text.contains("RXhpZg") && !text.contains("V4aWYA"), "{name}");
    }
}

#[test]
fn a_second_language_is_typed_where_it_is_missing_and_printed_beneath_the_first() {
    let mut teacher = found();
    let kind = teacher.get("/finds/1");
    assert!(!kind.contains("second-name") && !teacher.get("/print?key=1").contains("second-"));
    teacher.post("/do/describe-scene", &[("second-language", "Polski")]);
    assert!(teacher.get("/finds/1").contains("name=\"second-name\""));
    assert!(teacher.get("/table/1").contains("name=\"f-second-states\""));
    let page = teacher.get("/print?key=1");
    assert!(
        page.contains(
            "12 kinds have no name in the second language yet (\u{2068}Polski\u{2069})"
        ) || page.contains("12 kinds have no name in the second language yet (Polski)"),
        "{page}"
    );
    // The words of the first question, as they are printed.
    let question = page.split("name=\"question\" value=\"").nth(1).expect("a line for each");
    let question = question.split('"').next().expect("its words").to_owned();
    let lines = page.matches("name=\"question\"").count();
    let typed = [
        ("kind", "1"),
        ("name", "leszczyna"),
        ("kind", "2"),
        ("name", ""),
        ("question", &question),
        ("second", "Czy tak = nie?"),
        ("back", "/print?key=1"),
    ];
    let page = teacher.post("/do/second-language", &typed);
    assert!(page.contains("11 kinds have no name"), "{page}");
    assert_eq!(page.matches("name=\"question\"").count(), lines - 1);
    let phone = teacher.get("/print/phone.html?key=1");
    for second in ["leszczyna", "Czy tak = nie?"] {
        assert!(phone.contains(&format!("lang=\"pl\" dir=\"auto\">{second}<")), "{second}");
    }
    teacher.undo("/print");
    assert!(!teacher.get("/print/phone.html?key=1").contains("leszczyna"), "undone");
}
