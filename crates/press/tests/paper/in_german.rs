//! German sheets, and the German phone page, say nothing in English.
//!
//! Every message of the sheets and of the page, as the message files have it, is looked for in
//! what the press says in English of some odd keys, and in what it says in German of the same.
//! Names, sentences and questions are words of no language here, so that none is taken for a
//! message.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use spinney_model::{
    Ask, Asked, Cell, CharacterIx, Destination, End, Instrument, Key, LeftTogether, Matrix,
    Scale, Scene, SecondLooks, StateIx, Taxon, TaxonIx, Value, Walk, Wording,
};
use spinney_press::sheet::{Role, Sheet};
use spinney_press::sheets::SHEETS;
use spinney_press::{
    Booklet, Drawn, LeafLength, Paper, Picture, Sizes, Stamp, Wall, album, chart, key_pages,
    page, pdf, scale_card, scale_strip, today, try_out, visit,
};
use spinney_voice::Tongue;

use crate::hedge::{Walked, matrix};
use crate::words::poppler;
use crate::{endless, measured, second_look, words_to_look_at as drawings};

/// What none of these keys brings about: a key that saves a page by leaving its words to the wall
/// (`copies` has one), a second page of drawn words, and more pictures than a phone page has room
/// for; nor large print of texts that have no room in it, nor a chart for the wall so full that its
/// letters are small (`wall` has one), nor a caution for everybody as long as a page (`second_language`).
const SELDOM: [&str; 10] = [
    "sheet-rule-word-on-wall",
    "sheet-key-not-large",
    "sheet-chart-not-large",
    "sheet-words",
    "sheet-paper-in-all-alike",
    "sheet-drawing-of-leaf",
    "sheet-drawing-of-leaf-unnamed",
    "sheet-caution-for-all-in-key",
    "sheet-wall-small",
    "phone-left-out",
];

/// A message: its name, and for each of its turns the words between what is filled in.
type Message = (String, Vec<Vec<String>>);

/// The messages of a file, without those that have no letters.
fn messages(language: &str, file: &str) -> Vec<Message> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../voice/messages").join(language);
    let text = fs::read_to_string(folder.join(file)).unwrap();
    let mut found: Vec<Message> = Vec::new();
    for line in text.lines().filter(|line| !line.starts_with(['#', '}']) && !line.is_empty()) {
        let turn = match line.strip_prefix(' ') {
            Some(turn) => turn.split_once("] ").expect("a turn of a message").1,
            None => {
                let (name, text) = line.split_once(" = ").expect("a message");
                found.push((name.to_owned(), Vec::new()));
                text
            }
        };
        if !turn.ends_with("->") {
            let words = turn.split(['{', '}']).step_by(2).map(str::to_owned).collect();
            found.last_mut().unwrap().1.push(words);
        }
    }
    let letters = |turn: &Vec<String>| turn.concat().chars().any(char::is_alphabetic);
    found.retain(|(_, turns)| turns.iter().any(letters));
    found
}

/// Whether a line is this turn of a message with anything filled in.
fn says(line: &str, turn: &[String]) -> bool {
    let [first, rest @ ..] = turn else { return false };
    let Some(mut left) = line.strip_prefix(first.as_str()) else { return false };
    let Some((last, between)) = rest.split_last() else { return left.is_empty() };
    for words in between {
        let Some((_, after)) = left.split_once(words.as_str()) else { return false };
        left = after;
    }
    left.ends_with(last.as_str())
}

fn said(lines: &BTreeSet<String>, (_, turns): &Message) -> bool {
    lines.iter().any(|line| turns.iter().any(|turn| says(line, turn)))
}

/// Everything that is read or heard of a sheet, one line a text.
fn lines(sheet: &Sheet, into: &mut Vec<String>) {
    into.push(sheet.title.clone());
    for page in &sheet.pages {
        for placed in page.placed() {
            if let Role::Figure(words) = &placed.role {
                into.push(words.clone());
            }
        }
        let words = page.words();
        into.extend(words.lines().flat_map(|line| line.split(" · ")).map(str::to_owned));
    }
}

fn sheets(booklet: &Booklet<'_>, into: &mut Vec<String>) {
    for kind in SHEETS.iter().filter(|kind| (kind.has_something)(booklet)) {
        lines(&(kind.set)(booklet, Paper::A4), into);
    }
    lines(&try_out::set_sheet(booklet, Paper::A4), into);
}

/// Every text and attribute of a page, without its style and its script.
fn texts(html: &str, into: &mut Vec<String>) {
    let (_, body) = html.split_once("</style>").unwrap();
    let (body, _) = body.split_once("<script>").unwrap();
    into.extend(body.split(['<', '>', '"']).map(|text| text.trim().to_owned()));
}

/// The hedge walk with texts that no message has.
fn without_words() -> Walked {
    let mut walked = second_look::walk_with_hairs();
    let scene = Scene {
        title: Some("Zozo".to_owned()),
        place: Some("Zaza".to_owned()),
        season: Some("Zeze".to_owned()),
        part: Some("zizi".to_owned()),
        caution: Some("Zuzu.".to_owned()),
        before_you_go: vec!["Zyzy.".to_owned()],
        children: None,
        groups: None,
        second_language: None,
        second_questions: Vec::new(),
        version: Some("3".to_owned()),
    };
    let taxa = walked.matrix.taxa().iter().zip(1..).map(|(taxon, number)| Taxon {
        name: format!("zora{number}"),
        confirming: Some("Zuzu zaza.".to_owned()),
        caution: (number < 11).then(|| "Zaza zuzu zizi. ".repeat(24)),
        ..taxon.clone()
    });
    let mut characters = walked.matrix.characters().to_vec();
    // Asked in the plain form, which cannot be turned into what should be so.
    characters[0].name = "Zoza".to_owned();
    characters[0].scale = Scale::Words { states: vec!["zuza".to_owned(), "zize".to_owned()] };
    let taxa: Vec<Taxon> = taxa.collect();
    let rows = taxa.iter().map(|_| vec![Cell::from(Value::Unknown); 2]).collect();
    walked.matrix = Matrix::new(scene, taxa, characters, rows).unwrap();
    walked.key.couplets[10].no = Destination::Missing;
    for (at, couplet) in walked.key.couplets.iter_mut().enumerate() {
        let toothed = if at == 0 { "toothed" } else { "zaza" };
        couplet.wording = Wording::Question(format!("Zuzu {toothed} zizi {at}?"));
    }
    walked
}

/// The same with whatever can be wrong or missing, and nothing typed but the kinds.
fn broken() -> Walked {
    let mut walked = without_words();
    let mut taxa = walked.matrix.taxa().to_vec();
    for taxon in &mut taxa {
        (taxon.confirming, taxon.caution, taxon.picture) = (None, None, None);
    }
    taxa[0].name = "!!".to_owned();
    taxa[1].name = String::new();
    let scene = Scene::default();
    walked.matrix = matrix(taxa, scene);
    let couplets = &mut walked.key.couplets;
    let leads = |yes: &str, no: &str| Wording::Leads { yes: yes.to_owned(), no: no.to_owned() };
    couplets[0].wording = Wording::Question(String::new());
    couplets[1].wording = leads("", "Zozo");
    couplets[1].yes = Destination::Couplet(99);
    couplets[1].no = Destination::Missing;
    couplets[2].yes = Destination::End(End::of((0..12).map(TaxonIx)));
    couplets[2].no = Destination::End(End::default());
    couplets[3].yes = Destination::Couplet(3);
    couplets[3].no = Destination::Couplet(3);
    let unknown = End { unrecognised: vec!["Zaza".to_owned()], ..End::of([TaxonIx(3)]) };
    couplets[4].yes = Destination::End(unknown);
    let long = walked.walks.iter().max_by_key(|walk| walk.steps.len()).unwrap().steps.clone();
    let kind = |kind| {
        move |steps: &[_], arrived| Walk {
            taxon: TaxonIx(kind),
            steps: steps.to_vec(),
            arrived,
        }
    };
    let mut walks = vec![kind(0)(&[], true), kind(1)(&long, false)];
    walks.extend((0..7).map(|_| kind(2)(&long, true)));
    walks.extend((0..9).map(|_| kind(3)(&long, true)));
    walks.push(kind(4)(&long.repeat(20), true));
    walked.walks = walks;
    walked
}

/// What the press says of all of it, on paper and on the phone: every line, and what a line ends
/// with, since some messages are a part of others.
fn everything(t: Tongue) -> BTreeSet<String> {
    let mut all = Vec::new();
    let mut walked = without_words();
    let drawn = Drawn { word: drawings::word, ..Drawn::NOTHING };
    let ask = |at| Ask { character: CharacterIx(at), yes: Asked::States([StateIx(0)].into()) };
    let looks: SecondLooks =
        [(4, vec![(ask(0), true)]), (5, vec![(ask(0), false)])].into_iter().collect();
    let set = |kinds: [usize; 2]| LeftTogether {
        taxa: kinds.map(TaxonIx).to_vec(),
        after: None,
        differ: None,
    };
    let one = [set([0, 1])];
    let whole = |stamp| Booklet {
        tongue: t,
        second_looks: &looks,
        left_together: &one,
        drawn,
        ..walked.booklet(stamp)
    };
    sheets(&whole(Stamp::TryingOut), &mut all);
    texts(&page::html(&whole(Stamp::TryingOut)), &mut all);
    walked.pictures.insert("hazel.png".to_owned(), Picture::Png(vec![0; (32 << 20) + 1]));
    sheets(&Booklet { tongue: t, ..walked.booklet(Stamp::None) }, &mut all);
    // Lengths, drawings and places; lengths beyond the paper and beyond a metre.
    let drawings = measured::drawings();
    for mut walked in [measured::walk(), measured::walk_far()] {
        // Its season is a message of ours.
        let part = Some("leaf".to_owned());
        walked.matrix = walked.matrix.with_scene(Scene { part, ..Scene::default() });
        let booklet = measured::booklet(&walked, &drawings);
        let booklet = Booklet { tongue: t, ..booklet };
        sheets(&booklet, &mut all);
        let sizes = Sizes { places: LeafLength::read("120"), wall: Wall::A1 };
        let wished = Booklet { sizes, ..booklet };
        lines(&chart::wall::sheet(&wished, Paper::A4), &mut all);
        lines(&album::sheet(&wished, Paper::A4), &mut all);
    }
    // Who comes along, said in full and in halves; the words hang on the wall.
    for (children, groups) in [(Some(28), Some(7)), (Some(28), None), (None, Some(7))] {
        let scene = Scene { children, groups, ..walked.matrix.scene().clone() };
        let mut characters = walked.matrix.characters().to_vec();
        characters[0].instrument = Instrument::Ruler;
        characters[1].instrument = Instrument::Lens;
        let taxa = walked.matrix.taxa().to_vec();
        let rows = taxa.iter().map(|_| vec![Cell::from(Value::Unknown); 2]).collect();
        let matrix = &Matrix::new(scene, taxa, characters, rows).unwrap();
        let mut key = walked.key.clone();
        for (couplet, at) in key.couplets.iter_mut().zip([0, 1]) {
            let yes = Asked::States(BTreeSet::from([StateIx(0)]));
            couplet.ask = Some(Ask { character: CharacterIx(at), yes });
        }
        let booklet =
            Booklet { tongue: t, drawn, matrix, key: &key, ..walked.booklet(Stamp::None) };
        lines(&today::sheet(&booklet, Paper::A4), &mut all);
        lines(&visit::sheet(&booklet, Paper::A4), &mut all);
        // So much to see to that the visit takes a second page.
        let before_you_go = vec!["♦".to_owned(); 24];
        let scene = Scene { before_you_go, ..matrix.scene().clone() };
        let matrix = &matrix.clone().with_scene(scene);
        let booklet = Booklet { matrix, ..booklet };
        lines(&today::sheet(&booklet, Paper::A4), &mut all);
    }
    let (broken, many) = (broken(), [0; 9].map(|_| set([2, 3])));
    let booklet = Booklet { tongue: t, left_together: &many, ..broken.booklet(Stamp::Draft) };
    sheets(&booklet, &mut all);
    texts(&page::html(&booklet), &mut all);
    // Too much for one page; too much for any.
    for deep in [(40, 30), (260, 250)] {
        let walked = endless::walked(deep.0, deep.1, 1, 0);
        let booklet = Booklet { tongue: t, ..walked.booklet(Stamp::None) };
        lines(&chart::sheet(&booklet, Paper::A4), &mut all);
    }
    let empty = Key::default();
    for month in [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ] {
        let date = format!("3 {month} 2026");
        let booklet = Booklet {
            tongue: t,
            key: &empty,
            date: Some(&date),
            ..broken.booklet(Stamp::None)
        };
        lines(&key_pages::sheet(&booklet, Paper::A4), &mut all);
        lines(&chart::sheet(&booklet, Paper::A4), &mut all);
        texts(&page::html(&booklet), &mut all);
    }
    lines(&scale_card::alone(t, Paper::A4), &mut all);
    lines(&scale_strip::alone(t, Paper::A4), &mut all);
    let dates: Vec<_> = all.iter().filter_map(|line| line.strip_suffix(" 2026")).collect();
    let months: Vec<_> = dates.into_iter().map(str::to_owned).collect();
    let lines: BTreeSet<String> = all.into_iter().chain(months).collect();
    let ends = |line: &String| {
        let starts: Vec<usize> = line.match_indices(' ').map(|(at, _)| at + 1).collect();
        starts.into_iter().map(|at| line[at..].to_owned()).collect::<Vec<_>>()
    };
    let ends: BTreeSet<String> = lines.iter().flat_map(ends).collect();
    lines.into_iter().chain(ends).collect()
}

#[test]
fn what_is_said_in_english_is_not_said_on_german_sheets() {
    let english = everything(Tongue::of_terminal());
    let german = everything(Tongue::for_person(&["de".to_owned()]));
    let mut unsaid = Vec::new();
    for file in ["sheets.ftl", "sheets_to_cut.ftl", "visit.ftl", "lessons.ftl", "phone.ftl"] {
        let ours: BTreeMap<_, _> = messages("de", file).into_iter().collect();
        for message in messages("en", file) {
            if !said(&english, &message) {
                unsaid.push(message.0.clone());
            }
            let same = ours[&message.0] == message.1;
            assert!(same || !said(&german, &message), "German: {message:?}");
            let message = (message.0.clone(), ours[&message.0].clone());
            let known = unsaid.contains(&message.0);
            assert!(known || said(&german, &message), "not in German: {message:?}");
        }
    }
    assert_eq!(unsaid, SELDOM);
}

#[test]
fn a_german_file_says_that_it_is_german() {
    let walked = without_words();
    let booklet = Booklet {
        tongue: Tongue::for_person(&["de".to_owned()]),
        ..walked.booklet(Stamp::None)
    };
    for (name, booklet, tag) in
        [("de.pdf", &booklet, "de"), ("en.pdf", &walked.booklet(Stamp::None), "en")]
    {
        let file = pdf::write(&key_pages::sheet(booklet, Paper::A4)).unwrap();
        let said = poppler("pdfinfo", &["-meta"], name, &file);
        let language = format!("<dc:language><rdf:Bag><rdf:li>{tag}</rdf:li>");
        assert!(said.contains(&language), "{said}");
        assert!(page::html(booklet).contains(&format!("<html lang=\"{tag}\">")));
    }
}

/// The lock has the same SHA-256 of the script in every language.
#[test]
fn the_script_of_the_page_has_no_words_of_its_own() {
    let walked = without_words();
    let script = |language: &str| {
        let tongue = Tongue::for_person(&[language.to_owned()]);
        let html = page::html(&Booklet { tongue, ..walked.booklet(Stamp::None) });
        let (_, script) = html.split_once("<script>").unwrap();
        script.split_once("</script>").unwrap().0.to_owned()
    };
    assert_eq!(script("de"), script("en"));
}
