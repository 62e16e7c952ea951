//! Every sheet ends: whatever the number of kinds, the depth of the key, the length of the words
//! and the size of the paper, each page takes something, and nothing stands in the margin.

use std::collections::BTreeMap;

use spinney_model::{
    Answer, Couplet, Destination, End, Key, Scene, Step, Taxon, TaxonIx, Walk, Wording,
};
use spinney_press::{Paper, Stamp, chart, key_pages, today, try_out};

use crate::boxes::faults;
use crate::hedge::{self, Walked};

/// A key to so many kinds, `deep` questions deep: kinds are split off one by one down to that
/// depth, and what is left is halved as long as it may be.
fn deep_key(kinds: usize, deep: usize, words: &str) -> Key {
    let mut couplets = Vec::new();
    let left = kinds.saturating_sub(1);
    for at in 0..left.min(deep) {
        let last = at + 1 == left.min(deep);
        let rest = End::of((at + 1..kinds).map(TaxonIx));
        let no = match last {
            true => Destination::End(rest),
            false => Destination::Couplet(at as u32 + 2),
        };
        couplets.push(Couplet {
            number: at as u32 + 1,
            back: None,
            wording: Wording::Question(format!("{words} {at}?")),
            ask: None,
            yes: Destination::End(End::of([TaxonIx(at)])),
            no,
            kept: false,
            line: None,
        });
    }
    Key { couplets }
}

/// So many ways of each kind: it varies, and each way is right.
fn ways(key: &Key, kinds: usize, many: usize) -> Vec<Walk> {
    let steps = |kind: usize| {
        let asked = key.couplets.iter().take(kind + 1);
        let step = |couplet: &Couplet| Step {
            couplet: couplet.number,
            answer: if couplet.number as usize == kind + 1 { Answer::Yes } else { Answer::No },
        };
        asked.map(step).collect::<Vec<_>>()
    };
    (0..kinds * many)
        .map(|at| at / many)
        .map(|kind| Walk { taxon: TaxonIx(kind), steps: steps(kind), arrived: true })
        .collect()
}

pub(crate) fn walked(kinds: usize, deep: usize, many: usize, letters: usize) -> Walked {
    let words = "rough hairs beneath ".repeat(letters.div_ceil(20));
    let words = words[..letters].trim().to_owned();
    let taxa = (0..kinds).map(|n| Taxon {
        caution: (n % 2 == 0).then(|| words.clone()),
        confirming: (n % 3 == 0).then(|| words.clone()),
        ..Taxon::named(format!("kind {n} {words}"))
    });
    let scene = Scene {
        title: Some(words.clone()),
        before_you_go: vec![words.clone(); 3],
        children: None,
        groups: None,
        second_language: None,
        second_questions: Vec::new(),
        ..Scene::default()
    };
    let matrix = hedge::matrix(taxa.collect(), scene);
    let key = deep_key(kinds, deep, &words);
    let walks = ways(&key, kinds, many);
    Walked { matrix, key, walks, pictures: BTreeMap::new() }
}

#[test]
fn however_deep_a_key_is_its_answer_list_ends() {
    for deep in [1, 5, 20, 30, 36, 38, 40, 41, 42, 43, 44, 46, 50, 80] {
        let walked = walked(deep + 1, deep, 9, 10);
        let sheet = try_out::sheet(&walked.booklet(Stamp::None), Paper::A4);
        assert!(sheet.pages.len() < 20 + 2 * deep, "{} pages", sheet.pages.len());
        let words: String = sheet.pages.iter().map(|page| page.words()).collect();
        for kind in 0..=deep {
            assert!(words.contains(&format!("kind {kind} ")), "kind {kind} has a row");
        }
        assert!(
            words.contains("more ways: follow them in the key"),
            "what is left out is said"
        );
    }
}

#[test]
fn whatever_is_printed_ends_and_stays_out_of_the_margin() {
    let mut random = fastrand::Rng::with_seed(10);
    let kinds = [0, 1, 2, 7, 23, 60];
    let depths = [1, 9, 42, 59];
    let letters = [0, 1, 30, 150, 400];
    let mut seen = 0;
    for _ in 0..16 {
        let (kinds, deep) = (kinds[random.usize(..6)], depths[random.usize(..4)]);
        let (many, letters) = (random.usize(1..9), letters[random.usize(..5)]);
        let walked = walked(kinds, deep, many, letters);
        let booklet = walked.booklet(Stamp::Draft);
        let paper = [Paper::A4, Paper::Letter, Paper::A3][random.usize(..3)];
        for sheet in [
            key_pages::sheet(&booklet, paper),
            try_out::sheet(&booklet, paper),
            chart::sheet(&booklet, paper),
            today::sheet(&booklet, paper),
        ] {
            // A kind takes at most a page in each list, and a question one in the key.
            assert!(sheet.pages.len() <= 40 + 4 * kinds, "{} pages", sheet.pages.len());
            for page in &sheet.pages {
                let faults = faults(page);
                assert!(
                    faults.is_empty(),
                    "{kinds} kinds, {deep} deep, {many} ways, {letters} letters, {paper:?}, \
                     {}: {faults:#?}",
                    sheet.title
                );
                seen += 1;
            }
        }
    }
    assert!(seen > 200, "{seen} pages");
}

#[test]
fn a_thousand_kinds_are_printed() {
    let walked = walked(1000, 60, 1, 12);
    let sheet = today::sheet(&walked.booklet(Stamp::None), Paper::A4);
    assert!((100..400).contains(&sheet.pages.len()), "{} pages", sheet.pages.len());
    let words: String = sheet.pages.iter().map(|page| page.words()).collect();
    assert!(words.contains("kind 999"), "the last one is there");
}
