//! The second look under a question: what it says, where it is left out, and that it needs no
//! further page.

use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Matrix, Scale, SecondLooks, StateIx, Value,
};
use spinney_press::{Booklet, Paper, Stamp, key_pages, page};

use crate::hedge::{Walked, hedge_walk, scene};
use crate::words::poppler;

/// A look at this character for each question; the first is the opposite of the question.
fn looks(walked: &Walked, at: usize) -> SecondLooks {
    let ask = Ask { character: CharacterIx(at), yes: Asked::States([StateIx(0)].into()) };
    let couplets = walked.key.couplets.iter().enumerate();
    couplets.map(|(at, couplet)| (couplet.number, vec![(ask.clone(), at == 0)])).collect()
}

/// The walk with a second column, which is looked at, not felt.
pub(crate) fn walk_with_hairs() -> Walked {
    let mut walked = hedge_walk();
    let states = ["hairy", "bare", "waxy"].map(str::to_owned).to_vec();
    let mut characters = walked.matrix.characters().to_vec();
    characters.push(Character::named("leaf face", Scale::Words { states }));
    let taxa = walked.matrix.taxa().to_vec();
    let row = || vec![Cell::from(Value::Unknown); 2];
    let rows = taxa.iter().map(|_| row()).collect();
    walked.matrix =
        Matrix::new(scene(), taxa, characters, rows).expect("the cells fit their characters");
    walked
}

fn with<'a>(walked: &'a Walked, looks: &'a SecondLooks) -> Booklet<'a> {
    Booklet { second_looks: looks, ..walked.booklet(Stamp::None) }
}

#[test]
fn a_second_look_says_what_is_seen_on_yes() {
    let mut walked = walk_with_hairs();
    walked.key.couplets.truncate(2);
    let looks = looks(&walked, 1);
    let html = page::html(&with(&walked, &looks));
    let straight = "On yes, check: the leaf face should be hairy.";
    assert_eq!(html.matches(straight).count(), 1, "the second question: {straight}");
    let crossed = "On yes, check: the leaf face should not be hairy.";
    assert_eq!(html.matches(crossed).count(), 1, "the first question: {crossed}");
    let pdf = key_pages::pdf(&with(&walked, &looks), Paper::A4).expect("a file");
    let text = poppler("pdftotext", &["-raw"], "second-look.pdf", &pdf);
    assert!(text.contains(straight) && text.contains(crossed), "{text}");
}

#[test]
fn no_second_look_needs_a_further_page() {
    let looks = looks(&walk_with_hairs(), 1);
    let mut printed = 0;
    for count in 1..=hedge_walk().key.couplets.len() {
        let mut shorter = walk_with_hairs();
        shorter.key.couplets.truncate(count);
        for paper in [Paper::A4, Paper::Letter, Paper::A3] {
            let plain = key_pages::sheet(&shorter.booklet(Stamp::None), paper);
            let more = key_pages::sheet(&with(&shorter, &looks), paper);
            let enough = more.pages.len() <= plain.pages.len();
            assert!(enough, "{count} questions, {paper:?}");
            printed += usize::from(format!("{plain:?}") != format!("{more:?}"));
        }
    }
    assert!(printed > 20, "only {printed} sheets have a second look");
}
