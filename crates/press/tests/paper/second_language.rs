//! Two languages on one sheet: every name under both, marked for listeners, and nothing changed
//! where there is one.

use spinney_fixtures::packed_objects::with_packed_objects;
use spinney_model::{Character, InSecond, Matrix, Scene, Taxon};
use spinney_press::second_language::missing;
use spinney_press::sheet::{Role, Sheet, What};
use spinney_press::{Booklet, Paper, Stamp, cards_to_sort, key_pages, page, pdf, short_key};
use spinney_voice::Tongue;

use crate::hedge::{Walked, hedge_walk, scene};
use crate::words::{even, poppler};

/// Every kind in Polish, from memory.
const NAMES: [&str; 12] = [
    "leszczyna",
    "lipa",
    "tarnina",
    "dereń",
    "głóg",
    "klon polny",
    "platan",
    "bluszcz",
    "ostrokrzew",
    "dzika róża",
    "jarzębina",
    "jeżyna",
];

/// The walk in two languages; `names` and questions as typed.
pub(crate) fn in_two(names: &[&str], language: &str) -> Walked {
    let mut walked = hedge_walk();
    let taxa = walked.matrix.taxa().iter().zip(names);
    let taxa = taxa.map(|(taxon, name)| Taxon {
        second_name: (!name.is_empty()).then(|| (*name).to_owned()),
        ..taxon.clone()
    });
    let questions = walked.key.couplets.iter().map(|couplet| InSecond {
        text: couplet.wording.first().to_owned(),
        second: format!("Pytanie żółć {}?", couplet.number),
    });
    let scene = Scene {
        second_language: Some(language.to_owned()),
        second_questions: questions.collect(),
        ..scene()
    };
    let matrix = &walked.matrix;
    let rows = matrix.taxon_indices().map(|taxon| {
        let cells = matrix.character_indices();
        cells.map(|character| matrix.cell(taxon, character).clone()).collect()
    });
    let characters: Vec<Character> = matrix.characters().to_vec();
    walked.matrix = Matrix::new(scene, taxa.collect(), characters, rows.collect()).unwrap();
    walked
}

fn sheets(booklet: &Booklet<'_>, paper: Paper) -> [(&'static str, Sheet); 3] {
    [
        ("key", key_pages::sheet(booklet, paper)),
        ("short-key", short_key::sheet(booklet, paper)),
        ("cards", cards_to_sort::sheet(booklet, paper)),
    ]
}

/// What is set in the second language.
fn seconds(sheet: &Sheet) -> Vec<String> {
    let placed = sheet.pages.iter().flat_map(|page| page.placed());
    let of = |placed: &spinney_press::sheet::Placed| match (&placed.role, &placed.what) {
        (Role::Second("pl"), What::Text(block)) => Some(even(&block.words())),
        _ => None,
    };
    placed.filter_map(of).collect()
}

#[test]
fn every_kind_and_every_question_is_read_back_under_both() {
    let walked = in_two(&NAMES, "Polski");
    let booklet = walked.booklet(Stamp::None);
    assert!(missing(&booklet).unwrap().nothing());
    for paper in [Paper::A4, Paper::Letter, Paper::A3] {
        for (name, sheet) in sheets(&booklet, paper) {
            let bytes = pdf::write(&sheet).unwrap();
            let file = format!("two-languages-{name}-{paper:?}.pdf");
            let words = even(&poppler("pdftotext", &["-raw"], &file, &bytes));
            for (taxon, second) in walked.matrix.taxa().iter().zip(NAMES) {
                assert!(words.contains(&taxon.name), "{name}: {}", taxon.name);
                assert!(words.contains(second), "{name}: {second}: {words}");
            }
            // The tag of the language stands in the file, once for each text.
            let told = String::from_utf8_lossy(&with_packed_objects(&bytes)).into_owned();
            let marked = told.matches("/Lang(pl").count() + told.matches("/Lang (pl").count();
            assert_eq!(marked, seconds(&sheet).len(), "{name}");
            if name != "cards" {
                for couplet in &walked.key.couplets {
                    assert!(words.contains(couplet.wording.first()), "{name}");
                    // Questions 7 and 11 have the same words, and so the same text.
                    let number = if couplet.number == 11 { 7 } else { couplet.number };
                    let second = format!("Pytanie żółć {number}?");
                    assert!(words.contains(&second), "{name}: {second}");
                }
            }
        }
    }
}

#[test]
fn without_a_second_language_nothing_is_printed_otherwise() {
    let plain = hedge_walk();
    let mut typed = in_two(&NAMES, "Polski");
    typed.matrix = typed.matrix.clone().with_scene(scene());
    for paper in [Paper::A4, Paper::Letter] {
        let before = sheets(&plain.booklet(Stamp::None), paper);
        let after = sheets(&typed.booklet(Stamp::None), paper);
        for ((name, before), (_, after)) in before.into_iter().zip(after) {
            assert_eq!(pdf::write(&before).unwrap(), pdf::write(&after).unwrap(), "{name}");
        }
    }
    let [plain_page, typed_page] =
        [&plain, &typed].map(|walked| page::html(&walked.booklet(Stamp::None)));
    assert_eq!(plain_page, typed_page);
    assert_eq!(missing(&typed.booklet(Stamp::None)), None);
}

#[test]
fn what_is_missing_is_counted_and_the_first_is_printed_alone() {
    let mut names = NAMES;
    names[0] = "";
    names[8] = "";
    let mut walked = in_two(&names, "Polski");
    walked.key.couplets[3].wording =
        spinney_model::Wording::Question("Is it another question?".to_owned());
    let booklet = walked.booklet(Stamp::None);
    let missing = missing(&booklet).unwrap();
    assert_eq!((missing.names.len(), missing.questions.as_slice()), (2, &[3][..]));
    let told = missing.told(Tongue::of_terminal());
    assert_eq!(told.len(), 2);
    assert!(told[0].starts_with("2 kinds") && told[1].starts_with("1 question"), "{told:?}");
    let printed = seconds(&key_pages::sheet(&booklet, Paper::A4));
    assert!(!printed.iter().any(|text| text.contains("ostrokrzew") || text.contains("żółć 4")));
    assert!(printed.iter().any(|text| text == "bluszcz"));
    // "ivy or holly": one name alone would seem to be the name of both.
    let html = page::html(&booklet);
    assert!(html.contains("lang=\"pl\" dir=\"auto\">bluszcz<"));
}

#[test]
fn letters_that_the_typeface_lacks_are_named_and_stand_on_the_phone_alone() {
    let mut names = NAMES;
    names[0] = "بندق";
    let walked = in_two(&names, "العربية");
    let booklet = walked.booklet(Stamp::None);
    let missing = missing(&booklet).unwrap();
    assert_eq!((missing.names.len(), missing.not_printed), (0, 1));
    assert!(missing.letters.contains(&'ب'), "{:?}", missing.letters);
    assert!(missing.told(Tongue::of_terminal())[0].contains("ب"));
    for (name, sheet) in sheets(&booklet, Paper::A4) {
        let words: String = sheet.pages.iter().map(|page| page.words()).collect();
        assert!(!words.contains('\u{FFFD}') && !words.contains('ب'), "{name}");
    }
    assert!(page::html(&booklet).contains("lang=\"ar\" dir=\"auto\">بندق<"));
}
