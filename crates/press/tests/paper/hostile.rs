//! Tables and keys that nobody would print, printed: legible, and never a panic.

use std::collections::BTreeMap;

use spinney_model::{Couplet, Destination, End, Key, Matrix, Scene, Taxon, TaxonIx, Wording};
use spinney_press::{Booklet, Letters, Paper, Stamp, chart, key_pages, today, try_out};

use crate::boxes::{all, faults};
use crate::hedge::{self, Walked};
use crate::large_print;

/// A couplet by number, question and destinations.
fn couplet(number: u32, wording: Wording, yes: Destination, no: Destination) -> Couplet {
    Couplet { number, back: None, wording, ask: None, yes, no, kept: false, line: None }
}

fn walked(matrix: Matrix, key: Key) -> Walked {
    let walks = hedge::walks(&key);
    Walked { matrix, key, walks, pictures: BTreeMap::new() }
}

/// Writes every sheet and looks at every box.
fn prints(name: &str, walked: &Walked, stamp: Stamp) {
    let booklet = walked.booklet(stamp);
    for (sheet_name, sheet) in all(&booklet) {
        for (page, number) in sheet.pages.iter().zip(1..) {
            let faults = faults(page);
            assert!(faults.is_empty(), "{name}: {sheet_name}, page {number}: {faults:#?}");
        }
    }
    let large = Booklet { letters: Letters::Large, ..booklet.clone() };
    for (sheet_name, sheet) in large_print::large(&large) {
        for (page, number) in sheet.pages.iter().zip(1..) {
            let faults = faults(page);
            assert!(faults.is_empty(), "{name}: {sheet_name}, page {number}: {faults:#?}");
        }
    }
    let makers: [fn(&Booklet, Paper) -> _; 4] =
        [key_pages::pdf, chart::pdf, try_out::pdf, today::pdf];
    for make in makers {
        let pdf = make(&booklet, Paper::A4).unwrap_or_else(|error| panic!("{name}: {error:?}"));
        assert!(pdf.starts_with(b"%PDF-1.7"));
    }
    let pdf = today::pdf(&booklet, Paper::A4).unwrap();
    std::fs::write(crate::look::folder().join(format!("hostile-{name}.pdf")), pdf).unwrap();
}

/// Kinds split off one by one, in halves, or in one heap.
fn halves(kinds: usize) -> Key {
    fn grow(from: usize, to: usize, couplets: &mut Vec<Couplet>) -> Destination {
        if to - from == 1 {
            return Destination::End(End::of([TaxonIx(from)]));
        }
        let at = couplets.len();
        let number = u32::try_from(at).unwrap() + 1;
        let question = format!("Does it look like one of the first heap of question {number}?");
        let wording = Wording::Question(question);
        couplets.push(couplet(number, wording, Destination::Missing, Destination::Missing));
        let middle = from + (to - from) / 2;
        couplets[at].yes = grow(from, middle, couplets);
        couplets[at].no = grow(middle, to, couplets);
        Destination::Couplet(number)
    }
    let mut key = Key::default();
    grow(0, kinds, &mut key.couplets);
    key
}

#[test]
fn forty_kinds() {
    let taxa = (1..=40).map(|n| Taxon {
        caution: (n % 3 == 0).then(|| "It scratches, and it is not to be eaten.".to_owned()),
        confirming: (n % 2 == 0).then(|| "A sentence by which one knows it.".to_owned()),
        ..Taxon::named(format!("kind of hedge number {n}"))
    });
    let matrix = hedge::matrix(taxa.collect(), hedge::scene());
    prints("forty", &walked(matrix, halves(40)), Stamp::None);
}

#[test]
fn forty_kinds_split_off_one_by_one() {
    let taxa: Vec<_> = (1..=40).map(|n| Taxon::named(format!("kind {n}"))).collect();
    let couplets = (1..40u32).map(|number| {
        let at = number as usize - 1;
        let no = if number == 39 {
            Destination::End(End::of([TaxonIx(39)]))
        } else {
            Destination::Couplet(number + 1)
        };
        let wording = Wording::Question(format!("Is it kind {number}?"));
        couplet(number, wording, Destination::End(End::of([TaxonIx(at)])), no)
    });
    let key = Key { couplets: couplets.collect() };
    prints("comb", &walked(hedge::matrix(taxa, hedge::scene()), key), Stamp::TryingOut);
}

#[test]
fn one_couplet_and_none() {
    let taxa = || vec![Taxon::named("yew"), Taxon::named("box")];
    prints("one", &walked(hedge::matrix(taxa(), Scene::default()), halves(2)), Stamp::None);
    let empty = || walked(hedge::matrix(taxa(), Scene::default()), Key::default());
    prints("none", &empty(), Stamp::Draft);
    let nothing = Matrix::new(Scene::default(), vec![], vec![], vec![]).unwrap();
    prints("nothing", &walked(nothing, Key::default()), Stamp::Draft);
}

#[test]
fn hostile_names_and_words() {
    let long = "Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichen".repeat(6);
    let names = [
        "אלון מצוי".to_owned(),
        "\u{202E}txt.exe 🌳👩🏽‍🌾".to_owned(),
        long.clone(),
        "a\u{0}b\u{7}c\u{FEFF}\u{200B}\nd".to_owned(),
        String::new(),
        "   ".to_owned(),
        "e\u{301}\u{302}\u{303}\u{304}\u{305}".repeat(20),
        "\u{E000}\u{FFFF}\u{10FFFF}".to_owned(),
    ];
    let taxa = names.iter().map(|name| Taxon {
        caution: Some(name.repeat(12)),
        confirming: Some(name.repeat(20)),
        picture: Some(name.clone()),
        ..Taxon::named(name.clone())
    });
    let scene = Scene {
        title: Some(long.clone()),
        place: Some(names[0].clone()),
        season: Some(names[1].clone()),
        part: Some(long.clone()),
        caution: Some(long.clone()),
        before_you_go: vec![long.clone(); 3],
        children: None,
        groups: None,
        second_language: None,
        second_questions: Vec::new(),
        version: Some(long.repeat(3)),
    };
    let matrix = hedge::matrix(taxa.collect(), scene);
    let mut key = halves(8);
    for (at, couplet) in key.couplets.iter_mut().enumerate() {
        let text = names[at].repeat(9);
        couplet.wording = match at % 2 {
            0 => Wording::Question(text),
            _ => Wording::Leads { yes: text.clone(), no: text },
        };
    }
    prints("hostile", &walked(matrix, key), Stamp::Draft);
}

#[test]
fn a_key_broken_in_every_way() {
    let taxa: Vec<_> = (1..=12).map(|n| Taxon::named(format!("kind {n}"))).collect();
    let everything = End {
        taxa: (0..12).map(TaxonIx).collect(),
        unrecognised: vec!["mystery".to_owned(); 30],
    };
    let to = Destination::Couplet;
    let blank = || Wording::Question(String::new());
    let key = Key {
        couplets: vec![
            couplet(1, blank(), to(2), to(9)),
            couplet(2, blank(), to(1), Destination::Missing),
            couplet(2, blank(), to(2), to(2)),
            couplet(7, blank(), Destination::End(everything), Destination::End(End::default())),
            couplet(u32::MAX, blank(), to(7), to(7)),
        ],
    };
    prints(
        "broken",
        &walked_without_ways(hedge::matrix(taxa, hedge::scene()), key),
        Stamp::Draft,
    );
}

/// A key with a loop has no list of ways.
fn walked_without_ways(matrix: Matrix, key: Key) -> Walked {
    Walked { matrix, key, walks: Vec::new(), pictures: BTreeMap::new() }
}

#[test]
fn a_key_far_too_long_for_a_chart_says_so() {
    let taxa: Vec<_> = (1..=300).map(|n| Taxon::named(format!("kind {n}"))).collect();
    let walked = walked(hedge::matrix(taxa, hedge::scene()), halves(300));
    let sheet = chart::sheet(&walked.booklet(Stamp::None), Paper::A4);
    assert_eq!(sheet.pages.len(), 1);
    assert!(sheet.pages[0].words().contains("299 questions: too many for a chart"));
    assert!(key_pages::pdf(&walked.booklet(Stamp::None), Paper::Letter).is_ok());
}
