//! Two languages on one sheet: every name under both, marked for listeners, and nothing changed
//! where there is one.

use spinney_fixtures::packed_objects::with_packed_objects;
use spinney_model::{Character, InSecond, Matrix, Scene, Taxon};
use spinney_press::second_language::missing;
use spinney_press::sheet::{Role, Sheet, What};
use spinney_press::{
    Booklet, Letters, Paper, Stamp, album, cards_to_sort, key_pages, page, pdf, pocket,
    short_key, today, visit,
};
use spinney_voice::Tongue;

use crate::hedge::{Walked, hedge_walk, scene};
use crate::words::{even, poppler};

/// Every kind in Polish, from memory.
pub(crate) const NAMES: [&str; 12] = [
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
    let pair = |text: &str, second: String| InSecond { text: text.to_owned(), second };
    let cautions = walked.matrix.taxa().iter().filter_map(|taxon| taxon.caution.as_deref());
    let cautions = cautions.map(|text| pair(text, format!("Uwaga: {}", text.len())));
    let others = [
        ("Hedge and street walk", "Spacer wzdłuż żywopłotu"),
        ("Wash your hands before lunch.", "Przed obiadem myjemy ręce."),
        ("yes", "tak"),
        ("no", "nie"),
    ];
    let others = others.map(|(text, second)| pair(text, second.to_owned()));
    let questions = questions.chain(cautions).chain(others);
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

fn sheets(booklet: &Booklet<'_>, paper: Paper) -> [(&'static str, Sheet); 4] {
    let large = Booklet { letters: Letters::Large, ..booklet.clone() };
    [
        ("large short-key", short_key::sheet(&large, paper)),
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
    assert_eq!(told.len(), 2, "{told:?}");
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

/// The title, every caution, yes and no stand in both on whatever shows the key; a tab has both
/// words, as often as it has the first.
#[test]
fn title_cautions_yes_and_no_are_in_both_languages() {
    let walked = in_two(&NAMES, "Polski");
    let booklet = walked.booklet(Stamp::None);
    let cautions = walked.matrix.taxa().iter().filter_map(|taxon| taxon.caution.as_deref());
    let cautions: Vec<String> = cautions.map(|text| format!("Uwaga: {}", text.len())).collect();
    for paper in [Paper::A4, Paper::Letter] {
        let sheets = sheets(&booklet, paper).into_iter().filter(|(name, _)| *name != "cards");
        for (name, sheet) in sheets {
            let printed = seconds(&sheet);
            let many = |text: &str| printed.iter().filter(|other| *other == text).count();
            assert_eq!(many("Spacer wzdłuż żywopłotu"), 1, "{name}: {printed:?}");
            assert_eq!(many("Przed obiadem myjemy ręce."), 1, "{name}");
            for caution in &cautions {
                assert!(many(caution) >= 1, "{name}: {caution}");
            }
            let couplets = walked.key.couplets.len();
            assert_eq!([many("tak"), many("nie")], [couplets; 2], "{name}");
            // Both words lie on the tab, the second to the right of the first.
            for page in &sheet.pages {
                let placed = page.placed();
                let of = |wanted: &str, label: bool| -> Vec<_> {
                    let of = placed.iter().filter(|placed| match &placed.what {
                        What::Text(block) => block.words().trim() == wanted,
                        _ => false,
                    });
                    of.filter(|placed| (placed.role == Role::Label) == label)
                        .map(|placed| placed.rect)
                        .collect()
                };
                for (first, second) in [("yes", "tak"), ("no", "nie")] {
                    let (first, second) = (of(first, true), of(second, false));
                    assert_eq!(first.len(), second.len(), "{name}");
                    for (first, second) in first.iter().zip(&second) {
                        let middle = first.y + first.h / 2.0 - second.y - second.h / 2.0;
                        assert!(middle.abs() < 0.6, "{name}: {middle}");
                        assert!(second.x >= first.x + first.w * 0.5, "{name}");
                        assert!(!first.overlaps(second), "{name}: {first:?} {second:?}");
                    }
                }
            }
        }
    }
    let html = page::html(&booklet);
    for text in ["Spacer wzdłuż żywopłotu", "Przed obiadem myjemy ręce.", &cautions[0]] {
        assert!(
            html.contains(&format!("<p class=\"second\" lang=\"pl\" dir=\"auto\">{text}<"))
        );
    }
    let yes = "<span class=\"second\" lang=\"pl\" dir=\"auto\">tak<";
    assert_eq!(html.matches(yes).count(), walked.key.couplets.len());
}

/// A caution in the second language is never cut, however long: not in the key, not in large print,
/// not on the back of a card, where the first says that the key has it, and not on the phone.
#[test]
fn a_long_caution_is_whole_in_the_second_language_too() {
    let mut walked = in_two(&NAMES, "Polski");
    let mut scene = walked.matrix.scene().clone();
    let long = "Nie wolno dotykać kolców ani zrywać owoców. ".repeat(9);
    let long = format!("{long}Koniec uwagi.");
    assert!(long.chars().count() >= 400);
    let caution = walked.matrix.taxa().iter().find_map(|taxon| taxon.caution.clone());
    let caution = caution.expect("a kind carries one");
    let pair = scene.second_questions.iter_mut().find(|pair| pair.text == caution.trim());
    pair.expect("a caution has a second text").second = long.clone();
    // And one for everybody that is longer than any line of a sheet, in both.
    let everybody =
        format!("{}End of it.", "Stay where an adult sees you, and ask. ".repeat(14));
    let second = format!("{}Koniec tego.", "Trzymaj się blisko dorosłych i pytaj. ".repeat(14));
    scene.caution = Some(everybody.clone());
    scene.second_questions.push(InSecond { text: everybody.clone(), second: second.clone() });
    walked.matrix = walked.matrix.with_scene(scene);
    let booklet = walked.booklet(Stamp::None);
    for paper in [Paper::A4, Paper::Letter, Paper::A3] {
        let sheets = sheets(&booklet, paper).into_iter().filter(|(name, _)| *name != "cards");
        for (name, sheet) in sheets {
            let printed = even(&seconds(&sheet).join(" "));
            assert!(printed.contains(&even(&long)), "{name}: {printed}");
            assert!(printed.contains(&even(&second)), "{name}: {printed}");
            let words: String = sheet.pages.iter().map(|page| page.words()).collect();
            assert!(even(&words).contains("and ask. End of it."), "{name}: {words}");
        }
        let backs = cards_to_sort::with_backs(&booklet, paper);
        let words: String = backs.pages.iter().map(|page| page.words()).collect();
        let words = even(&words);
        assert!(words.contains(&even(&long)) || !words.contains("Nie wolno"), "{words}");
        assert!(words.contains("Uwaga: "), "a short one stands on its card");
    }
    for sheet in [visit::sheet(&booklet, Paper::A4), today::sheet(&booklet, Paper::A4)] {
        let words: String = sheet.pages.iter().map(|page| page.words()).collect();
        assert!(even(&words).contains("and ask. End of it."), "{words}");
    }
    // Where there is room for a line or two, it says where the whole is.
    let words: String = album::sheet(&booklet, Paper::A4).pages[0].words();
    assert!(even(&words).contains("it is in the key") && !words.contains('…'), "{words}");
    let html = page::html(&booklet);
    // Above the first question, and where the kind comes out.
    let whole = format!("lang=\"pl\" dir=\"auto\">{}<", long.trim());
    assert!(html.matches(&whole).count() >= 2, "{}", html.matches(&whole).count());
}

/// A language that Spinney speaks has its yes and no, and who decides, without anybody's typing.
#[test]
fn yes_and_no_of_our_own_languages_need_no_typing() {
    let mut walked = in_two(&NAMES, "Deutsch");
    let mut scene = walked.matrix.scene().clone();
    scene.second_questions.retain(|pair| pair.text != "yes" && pair.text != "no");
    walked.matrix = walked.matrix.with_scene(scene.clone());
    let german = |walked: &Walked| -> Vec<String> {
        let sheet = short_key::sheet(&walked.booklet(Stamp::None), Paper::A4);
        let placed = sheet.pages.iter().flat_map(|page| page.placed());
        let of = placed.filter(|placed| placed.role == Role::Second("de"));
        let words = of.filter_map(|placed| match &placed.what {
            What::Text(block) => Some(even(&block.words())),
            _ => None,
        });
        words.collect()
    };
    let printed = german(&walked);
    assert_eq!(printed.iter().filter(|text| *text == "ja").count(), walked.key.couplets.len());
    assert!(printed.iter().any(|text| text.starts_with("Kein Schlüssel kann sagen")));
    assert!(missing(&walked.booklet(Stamp::None)).unwrap().texts.is_empty());
    // What somebody typed comes first.
    let typed = InSecond { text: "yes".to_owned(), second: "jawohl".to_owned() };
    scene.second_questions.push(typed);
    walked.matrix = walked.matrix.with_scene(scene.clone());
    assert!(german(&walked).contains(&"jawohl".to_owned()));
    // Where it is none of ours and nobody typed them, they are missing and said so.
    scene.second_language = Some("Polski".to_owned());
    scene.second_questions.pop();
    walked.matrix = walked.matrix.with_scene(scene);
    let missing = missing(&walked.booklet(Stamp::None)).unwrap();
    assert_eq!(missing.texts, ["yes", "no"]);
    assert!(missing.told(Tongue::of_terminal())[0].starts_with("2 other texts"));
}

/// The folded key holds both languages, or says that it has no room for them.
#[test]
fn the_pocket_key_has_both_languages_too() {
    let mut walked = in_two(&NAMES, "Polski");
    // Long cautions in two languages are for larger sheets.
    let taxa: Vec<Taxon> = walked.matrix.taxa().to_vec();
    let few = taxa.into_iter().enumerate().map(|(at, taxon)| match at {
        0 => taxon,
        _ => Taxon { caution: None, ..taxon },
    });
    walked.matrix = crate::hedge::matrix(few.collect(), walked.matrix.scene().clone());
    for paper in [Paper::A4, Paper::Letter] {
        let booklet = walked.booklet(Stamp::None);
        assert_eq!(pocket::refused(&booklet, paper), None, "{paper:?}");
        let sheet = pocket::sheet(&booklet, paper);
        assert_eq!(sheet.pages.len(), 1);
        let printed = seconds(&sheet);
        let text = printed.join("\n");
        for name in ["leszczyna", "tarnina", "Spacer wzdłuż żywopłotu", "Przed obiadem"] {
            assert!(text.contains(name), "{name}: {text}");
        }
        for couplet in &walked.key.couplets {
            let number = if couplet.number == 11 { 7 } else { couplet.number };
            assert!(text.contains(&format!("Pytanie żółć {number}?")), "{text}");
        }
        let tabs = |word: &str| printed.iter().filter(|text| *text == word).count();
        assert_eq!([tabs("tak"), tabs("nie")], [walked.key.couplets.len(); 2]);
        let smallest = sheet.pages[0].placed().into_iter().filter_map(|placed| {
            let What::Text(block) = &placed.what else { return None };
            matches!(placed.role, Role::Second(_)).then(|| block.smallest())
        });
        assert!(smallest.fold(f64::MAX, f64::min) >= 8.99, "nothing under 9 pt");
    }
}

/// Large print is large in both.
#[test]
fn the_second_language_is_large_in_large_print() {
    let walked = in_two(&NAMES, "Polski");
    let booklet = Booklet { letters: Letters::Large, ..walked.booklet(Stamp::None) };
    let sheets = [short_key::sheet(&booklet, Paper::A4), key_pages::sheet(&booklet, Paper::A4)];
    for sheet in sheets {
        let placed = sheet.pages.iter().flat_map(|page| page.placed());
        let mut many = 0;
        for placed in placed.filter(|placed| matches!(placed.role, Role::Second(_))) {
            let What::Text(block) = &placed.what else { continue };
            assert!(block.smallest() >= 17.99, "{}", block.words());
            many += 1;
        }
        assert!(many > 40, "{many}");
    }
}
