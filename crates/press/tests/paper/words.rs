//! The sheets as another reader finds them: words in order, tags, alternative texts.

use std::process::Command;

use spinney_fixtures::packed_objects::with_packed_objects;
use spinney_model::{Destination, Scene};
use spinney_press::sheet::{Role, Sheet};
use spinney_press::{Paper, Stamp, chart, key_pages, today, try_out};

use crate::hedge::{Walked, hedge_walk, matrix, scene};
use crate::look::folder;

/// What a program of Poppler says of a file, white space made even.
pub(crate) fn poppler(program: &str, options: &[&str], name: &str, pdf: &[u8]) -> String {
    let path = folder().join(name);
    std::fs::write(&path, pdf).unwrap();
    let mut command = Command::new(program);
    command.args(options).arg(&path);
    if program == "pdftotext" {
        command.arg("-");
    }
    let said = command.output().expect("Poppler is installed (poppler-utils)");
    assert!(said.status.success(), "{}", String::from_utf8_lossy(&said.stderr));
    // Headings are said once more in a table of signs that is not UTF-8.
    String::from_utf8_lossy(&said.stdout).into_owned()
}

pub(crate) fn even(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Asserts that texts follow each other.
fn in_order<'t>(words: &str, texts: impl IntoIterator<Item = &'t str>) {
    let mut rest = words;
    for text in texts {
        let at = rest.find(text);
        let at = at.unwrap_or_else(|| panic!("“{text}” does not follow in: {rest}"));
        rest = &rest[at + text.len()..];
    }
}

#[test]
fn the_extracted_words_follow_the_key() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let pdf = key_pages::pdf(&booklet, Paper::A4).unwrap();
    let words = even(&poppler("pdftotext", &["-raw"], "order.pdf", &pdf));
    let mut expected =
        vec!["Hedge and street walk".to_owned(), "How to use this key".to_owned()];
    expected.push("Before you touch anything".to_owned());
    for couplet in &walked.key.couplets {
        expected.push(couplet.wording.first().to_owned());
        for (answer, to) in [("yes", &couplet.yes), ("no", &couplet.no)] {
            expected.push(answer.to_owned());
            match to {
                Destination::Couplet(number) => expected.push(format!("go to {number}")),
                Destination::End(end) => {
                    let names =
                        end.taxa.iter().map(|ix| walked.matrix.taxon(*ix).name.as_str());
                    expected.push(names.collect::<Vec<_>>().join(" or "));
                    for ix in &end.taxa {
                        expected.push(walked.matrix.taxon(*ix).confirming.clone().unwrap());
                    }
                    expected.push(
                        "Does the sentence not fit? Then stop: you may have found a newcomer."
                            .to_owned(),
                    );
                }
                Destination::Missing => {}
            }
        }
    }
    expected.push("Words in this key".to_owned());
    in_order(&words, expected.iter().map(String::as_str));
}

#[test]
fn cautions_come_before_the_first_question_and_again_where_one_touches() {
    let walked = hedge_walk();
    let sheet = key_pages::sheet(&walked.booklet(Stamp::None), Paper::A4);
    let words = even(&sheet.pages.iter().map(|page| page.words()).collect::<String>());
    in_order(
        &words,
        [
            "holly: The spines prick.",
            "Is the leaf made of several leaflets?",
            "Does the leaf feel like thin card?",
            "Before you touch: this may be hawthorn or ivy. Read the cautions first.",
            "Does the leaf feel like thin card?",
            "Before you touch: this may be ivy or holly. Read the cautions first.",
        ],
    );
    assert_eq!(words.matches("Before you touch:").count(), 2);
}

#[test]
fn a_listener_hears_headings_lists_tables_and_pictures() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let pdf = key_pages::pdf(&booklet, Paper::A4).unwrap();
    let tags = poppler("pdfinfo", &["-struct-text"], "tags.pdf", &pdf);
    in_order(
        &even(&tags),
        [
            "H1",
            "Hedge and street walk",
            "H2",
            "How to use this key",
            "L",
            "LI",
            "Lbl",
            "LBody",
            "H3",
            "Is the leaf made of several leaflets?",
            "Lbl",
            "yes",
            "LBody",
            "go to 2",
            "Lbl",
            "no",
            "LBody",
            "go to 4",
            "Figure",
        ],
    );
    // The list of contents that a reader of the file sees.
    let raw = String::from_utf8_lossy(&with_packed_objects(&pdf)).into_owned();
    assert!(raw.contains("/Title(How to use this key)"), "{:?}", raw.find("/Outlines"));
    let info = poppler("pdfinfo", &[], "tags.pdf", &pdf);
    assert!(even(&info).contains("Tagged: yes"), "{info}");
    assert!(!info.contains("CreationDate"), "{info}");
    let pdf = today::pdf(&booklet, Paper::A4).unwrap();
    let tags = poppler("pdfinfo", &["-struct-text"], "tags-today.pdf", &pdf);
    in_order(&even(&tags), ["Table", "TR", "TH", "Sheet", "TH", "Number labels", "TD"]);
}

#[test]
fn every_picture_says_what_it_shows_and_a_broken_one_says_so() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let sheets = [key_pages::sheet(&booklet, Paper::A4), chart::sheet(&booklet, Paper::A3)];
    for sheet in sheets {
        let placed: Vec<_> = sheet.pages.iter().flat_map(|page| page.placed()).collect();
        let alternatives: Vec<_> = placed
            .iter()
            .filter_map(|placed| match &placed.role {
                Role::Figure(words) => Some(words.as_str()),
                _ => None,
            })
            .collect();
        let mut sorted = alternatives.clone();
        sorted.sort_unstable();
        assert_eq!(sorted, ["Picture of hazel", "Picture of rowan"]);
    }
    let pdf = key_pages::pdf(&booklet, Paper::A4).unwrap();
    let whole = String::from_utf8_lossy(&with_packed_objects(&pdf)).into_owned();
    assert!(
        whole.contains("/Alt(Picture of hazel)") || whole.contains("/Alt (Picture of hazel)")
    );
    assert!(whole.contains("/Subtype/Image") || whole.contains("/Subtype /Image"));
    let words = poppler("pdftotext", &[], "broken.pdf", &pdf);
    assert!(even(&words).contains("This picture file could not be opened."), "{words}");
}

#[test]
fn how_the_key_stands_is_on_every_page_of_the_key_and_on_no_other() {
    let walked = hedge_walk();
    let of_key = ["Key", "Chart", "Answers, for the adult"];
    let makers = [key_pages::pdf, chart::pdf, try_out::pdf, today::pdf];
    for (make, name) in makers.into_iter().zip(["key", "chart", "try-out", "today"]) {
        let pages = |stamp| {
            let pdf = make(&walked.booklet(stamp), Paper::A4).unwrap();
            let words = poppler("pdftotext", &["-layout"], &format!("stamp-{name}.pdf"), &pdf);
            let pages = words.trim_end_matches('\u{c}').split('\u{c}').map(str::to_owned);
            pages.collect::<Vec<_>>()
        };
        let mut stamped = 0;
        for (draft, trying) in pages(Stamp::Draft).into_iter().zip(pages(Stamp::TryingOut)) {
            let head =
                draft.lines().find(|line| !line.trim().is_empty() && line.trim() != "DRAFT");
            let head = head.unwrap_or_default().trim();
            let key = of_key.iter().any(|sheet| head.starts_with(sheet));
            // The adult's page shows no key, and says in a sentence how it stands.
            let cover = head.starts_with("Today: for the adult");
            assert_eq!(draft.contains("DRAFT"), key, "{name}: {draft}");
            assert_eq!(draft.contains("This key is a draft."), cover, "{name}: {draft}");
            assert_eq!(trying.contains("trying-out copy"), key || cover, "{name}: {trying}");
            assert!(!trying.contains("DRAFT"), "{name}: {trying}");
            stamped += usize::from(key);
        }
        assert!(stamped > 0, "{name} shows the key nowhere");
        for page in pages(Stamp::None) {
            assert!(!page.contains("DRAFT") && !page.contains("trying-out copy"), "{page}");
        }
    }
}

#[test]
fn the_answer_list_has_every_right_way() {
    let walked = hedge_walk();
    let pdf = try_out::pdf(&walked.booklet(Stamp::None), Paper::A4).unwrap();
    let words = even(&poppler("pdftotext", &["-layout"], "answers.pdf", &pdf));
    let list = &words[words.find("Answers, for the adult").unwrap()..];
    in_order(
        list,
        [
            "hazel",
            "1 no · 4 no · 8 yes · 9 no · 10 yes",
            "ivy",
            "1 no · 4 yes · 5 no · 6 no · 7 yes",
            "1 no · 4 no · 8 no · 11 yes · 12 no",
            "bramble",
            "1 yes · 2 yes",
        ],
    );
}

#[test]
fn two_runs_give_the_same_bytes() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::Draft);
    for make in [key_pages::pdf, chart::pdf, try_out::pdf, today::pdf] {
        assert_eq!(make(&booklet, Paper::A4).unwrap(), make(&booklet, Paper::A4).unwrap());
    }
}

#[test]
fn a_file_that_a_listener_could_not_read_is_refused_with_a_remedy() {
    use spinney_press::sheet::face::Faces;
    use spinney_press::sheet::ink::Style;
    use spinney_press::sheet::text::{Block, Run};
    use spinney_press::sheet::{Page, Piece, Sheet};

    // A sign that the typeface lacks, and that nobody made legible first.
    let block = Block::set(&Faces::new(), &[Run::new("tree: 🌳", Style::BODY)], 100.0);
    let nodes = Piece::text(block, Role::Paragraph).moved(20.0, 20.0).nodes;
    let page = Page { width: 210.0, height: 297.0, nodes };
    let sheet = Sheet { title: "Trees".to_owned(), language: "en", pages: vec![page] };
    let error = spinney_press::pdf::write(&sheet).unwrap_err();
    for language in ["en", "de"] {
        let (sentence, remedy) =
            error.told(spinney_voice::Tongue::for_person(&[language.to_owned()]));
        assert!(sentence.contains("ContainsNotDefGlyph"), "{sentence}");
        assert!(!remedy.is_empty());
    }
}

#[test]
fn a_lead_is_read_before_the_place_it_leads_to() {
    let mut walked = hedge_walk();
    walked.key.couplets[0].wording = spinney_model::Wording::Leads {
        yes: "Leaf made of several leaflets".to_owned(),
        no: "Leaf in one piece".to_owned(),
    };
    let pdf = key_pages::pdf(&walked.booklet(Stamp::TryingOut), Paper::A4).unwrap();
    let words = even(&poppler("pdftotext", &["-raw"], "leads.pdf", &pdf));
    in_order(
        &words,
        [
            "Which of the two fits?",
            "a",
            "Leaf made of several leaflets",
            "go to 2",
            "b",
            "Leaf in one piece",
            "go to 4",
        ],
    );
}

/// What a booklet says on paper and on the phone page, sheet by sheet.
fn every_sheet(walked: &Walked) -> Vec<(&'static str, String)> {
    let booklet = walked.booklet(Stamp::None);
    let said =
        |sheet: Sheet| even(&sheet.pages.iter().map(|page| page.words()).collect::<String>());
    let page = spinney_press::page::html(&booklet);
    let page = page.split("<script>").next().unwrap().to_owned();
    vec![
        ("key", said(key_pages::sheet(&booklet, Paper::A4))),
        ("chart", said(chart::sheet(&booklet, Paper::A3))),
        ("try-out", said(try_out::sheet(&booklet, Paper::A4))),
        ("phone", page.split("</style>").nth(1).unwrap().to_owned()),
    ]
}

#[test]
fn a_sentence_that_nobody_wrote_is_not_spoken_of() {
    let spoken = [
        "Does the sentence not fit?",
        "read the sentence",
        "The sentence fits",
        "Read what it says of each",
    ];
    let all = |walked: &Walked| {
        every_sheet(walked).into_iter().flat_map(|(sheet, words)| {
            let here = spoken.into_iter().filter(move |line| words.contains(line));
            here.map(move |line| format!("{sheet}: {line}")).collect::<Vec<_>>()
        })
    };
    let walked = hedge_walk();
    assert_eq!(all(&walked).count(), 6, "here every sentence is written");
    let mut taxa = walked.matrix.taxa().to_vec();
    taxa.iter_mut().for_each(|taxon| taxon.confirming = None);
    let bare = Walked { matrix: matrix(taxa.clone(), scene()), ..hedge_walk() };
    assert_eq!(all(&bare).collect::<Vec<_>>(), Vec::<String>::new());
    for (sheet, words) in every_sheet(&bare) {
        assert!(
            sheet == "try-out" || words.contains("you may have found a newcomer"),
            "{sheet}"
        );
    }
    // One sentence: only its own end asks whether it fits.
    taxa[0].confirming = Some("The blade is round.".to_owned());
    let one = Walked { matrix: matrix(taxa, scene()), ..hedge_walk() };
    let (_, key) = &every_sheet(&one)[0];
    assert_eq!(key.matches("Does the sentence not fit?").count(), 1);
}

#[test]
fn only_a_table_about_leaves_has_boxes_for_leaves() {
    let walked = hedge_walk();
    assert!(every_sheet(&walked)[0].1.contains("stick the leaf or the rubbing here"));
    let pond = Scene {
        title: Some("Pond".to_owned()),
        part: Some("a tray with water".to_owned()),
        ..Scene::default()
    };
    let taxa = walked.matrix.taxa().to_vec();
    let pond = Walked { matrix: matrix(taxa, pond), ..walked };
    for (sheet, words) in every_sheet(&pond) {
        assert!(!words.contains("stick "), "{sheet}");
    }
    assert!(every_sheet(&pond)[0].1.contains("draw it here"));
}
