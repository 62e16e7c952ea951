//! What happens to last season's key, told one by one on the worked table M1.

use std::collections::BTreeSet;

use spinney_build::{Budget, Revised, Revising, build, revise};
use spinney_fixtures::{drawn, seeded};
use spinney_model::{
    Ask, Asked, Character, CharacterIx, Couplet, Destination, End, Key, Matrix, Quantity,
    Scale, Scene, Share, StateIx, Stopped, Taxon, TaxonIx, Unit, Value, Wishes, Wording,
};

/// The best key of a table, in words of its own.
fn last_season(matrix: &Matrix) -> Key {
    let mut key = build(matrix, &Wishes::default(), Budget::default()).key;
    for couplet in &mut key.couplets {
        couplet.wording = Wording::Question(format!("Our question {}?", couplet.number));
    }
    key
}

/// A key of one table with the names of its ends looked up in another.
fn carried(mut key: Key, from: &Matrix, to: &Matrix) -> Key {
    for couplet in &mut key.couplets {
        for side in [&mut couplet.yes, &mut couplet.no] {
            let Destination::End(end) = side else { continue };
            let names = end.taxa.iter().map(|taxon| from.taxon(*taxon).name.clone());
            let mut found = End::default();
            for name in names {
                match to.taxa().iter().position(|taxon| taxon.name == name) {
                    Some(at) => found.taxa.push(TaxonIx(at)),
                    None => found.unrecognised.push(name),
                }
            }
            *end = found;
        }
    }
    key
}

/// The table without some kinds.
fn without(matrix: &Matrix, gone: &[&str]) -> Matrix {
    let stay = |taxon: &TaxonIx| !gone.contains(&matrix.taxon(*taxon).name.as_str());
    let stay: Vec<TaxonIx> = matrix.taxon_indices().filter(stay).collect();
    let row = |taxon: &TaxonIx| {
        matrix.character_indices().map(|at| matrix.cell(*taxon, at).clone()).collect()
    };
    let taxa = stay.iter().map(|taxon| matrix.taxon(*taxon).clone()).collect();
    let rows = stay.iter().map(row).collect();
    let characters = matrix.characters().to_vec();
    Matrix::new(matrix.scene().clone(), taxa, characters, rows).expect("fewer kinds")
}

fn revised(matrix: &Matrix, old: &Key) -> Revised {
    revise(matrix, old, &Wishes::default(), Revising::default())
}

fn named(key: &Key) -> BTreeSet<TaxonIx> {
    let sides = key.couplets.iter().flat_map(|couplet| [&couplet.yes, &couplet.no]);
    let ends = sides.filter_map(|side| match side {
        Destination::End(end) => Some(&end.taxa),
        _ => None,
    });
    ends.flatten().copied().collect()
}

#[test]
fn nothing_changes_where_the_table_is_the_same() {
    let matrix = drawn::m1();
    let old = last_season(&matrix);
    let revision = revised(&matrix, &old).revision;
    assert_eq!(revision.changes, 0);
    let same: Vec<(u32, u32)> = (1..=9).map(|number| (number, number)).collect();
    assert_eq!(revision.parts.kept, same);
    assert_eq!(revision.key, old);
    assert_eq!((revision.gone, revision.arrived), (vec![], vec![]));
}

#[test]
fn a_kind_that_went_takes_its_question_along_and_the_words_of_the_others_stay() {
    let (before, now) = (drawn::m1(), without(&drawn::m1(), &["lime"]));
    let old = carried(last_season(&before), &before, &now);
    let revision = revised(&now, &old).revision;
    assert_eq!((revision.changes, revision.fewest), (1, 1));
    assert_eq!(revision.gone, ["lime"]);
    let struck = revision.parts.struck.as_slice();
    assert_eq!((struck.len(), revision.parts.kept.len()), (1, 8));
    for (was, is) in &revision.parts.kept {
        let words = &revision.key.couplets[*is as usize - 1].wording;
        assert_eq!(*words, Wording::Question(format!("Our question {was}?")));
    }
}

#[test]
fn a_kind_that_came_brings_one_question() {
    let (before, now) = (without(&drawn::m1(), &["lime"]), drawn::m1());
    let old = carried(last_season(&before), &before, &now);
    let revision = revised(&now, &old).revision;
    assert_eq!((revision.changes, revision.parts.added.len()), (1, 1));
    assert_eq!(revision.arrived.len(), 1);
    assert_eq!(now.taxon(revision.arrived[0]).name, "lime");
}

#[test]
fn a_question_that_the_table_does_not_have_any_more_is_rewritten_or_struck_out() {
    let matrix = drawn::m1();
    let mut old = last_season(&matrix);
    old.couplets[0].ask = None;
    let revision = revised(&matrix, &old).revision;
    assert!(revision.changes >= 1);
    assert!(revision.parts.kept.iter().all(|(was, _)| *was != 1));
    assert_eq!(named(&revision.key).len(), 10);
}

#[test]
fn an_old_key_that_is_broken_is_followed_as_far_as_it_goes() {
    let matrix = drawn::m1();
    let mut old = last_season(&matrix);
    old.couplets[0].yes = Destination::Couplet(99);
    old.couplets[2].no = Destination::Couplet(1);
    old.couplets[3].yes = Destination::Missing;
    for broken in [&old, &Key::default()] {
        let revision = revised(&matrix, broken).revision;
        assert_eq!(named(&revision.key).len(), 10);
        assert_eq!(revision.stopped, None);
    }
}

#[test]
fn what_must_not_be_asked_any_more_is_not_kept() {
    let matrix = drawn::m1();
    let old = last_season(&matrix);
    let first = old.couplets[0].ask.clone().expect("linked").character;
    let wishes = Wishes { never: BTreeSet::from([first]), ..Wishes::default() };
    let revision = revise(&matrix, &old, &wishes, Revising::default()).revision;
    let asks = revision.key.couplets.iter().filter_map(|couplet| couplet.ask.as_ref());
    assert!(asks.into_iter().all(|ask| ask.character != first));
    assert!(revision.changes > 0);
}

/// Where there was no time to look for anything, the first question that parts them is asked.
#[test]
fn without_any_time_every_kind_comes_out_alone_all_the_same() {
    let matrix = drawn::m1();
    let settings = Revising { budget: Budget { heaps: 0 }, ..Revising::default() };
    let old = Key { couplets: Vec::new() };
    let key = revise(&matrix, &old, &Wishes::default(), settings).revision.key;
    assert_eq!(key.couplets.len(), matrix.taxa().len() - 1);
    assert_eq!(named(&key).len(), matrix.taxa().len());
}

#[test]
fn a_search_that_stops_gives_a_key_and_claims_nothing_that_is_not_so() {
    let mut stopped = 0;
    for seed in 0..40 {
        let before = seeded::plain(seed, 14, 12, 5, 3);
        let now = seeded::plain(seed + 1, 14, 12, 5, 3);
        let old = build(&before, &Wishes::default(), Budget::default()).key;
        let full = revised(&now, &old).revision;
        let short = Revising { budget: Budget { heaps: 40 }, ..Revising::default() };
        let short = revise(&now, &old, &Wishes::default(), short);
        stopped += usize::from(short.revision.stopped == Some(Stopped::Budget));
        assert_eq!(short.claim.total, short.revision.effort, "seed {seed}");
        assert!(short.revision.fewest <= full.fewest, "seed {seed}");
        let least = |changes| {
            let within = full.curve.iter().filter(|point| point.changes <= changes);
            within.map(|point| point.effort).min()
        };
        for point in &short.revision.curve {
            let truly = least(point.changes).expect("no key has so few changes");
            assert!(point.effort >= truly, "seed {seed}: {point:?}");
            assert!(!point.proved || point.effort == truly, "seed {seed}: {point:?}");
        }
    }
    assert!(stopped > 20, "only {stopped} searches stopped");
}

#[test]
fn a_question_that_the_table_by_itself_would_not_ask_may_stay() {
    // Beyond six states the table asks for one state against the rest.
    let states = (0..7).map(|state| format!("colour {state}")).collect();
    let colour = Character::named("colour", Scale::Words { states });
    let kinds = (0..4).map(|kind| Taxon::named(format!("kind {kind}"))).collect();
    let one = Share::from_integer(1);
    let rows = (0..4).map(|kind| vec![Value::States(vec![(StateIx(kind), one)]).into()]);
    let matrix = Matrix::new(Scene::default(), kinds, vec![colour], rows.collect());
    let matrix = matrix.expect("a table");
    let ask = |states: &[usize]| {
        let states = states.iter().copied().map(StateIx).collect();
        Ask { character: CharacterIx(0), yes: Asked::States(states) }
    };
    let end = |kind| Destination::End(End::of([TaxonIx(kind)]));
    let old = Key {
        couplets: vec![
            couplet(1, ask(&[0, 1]), Destination::Couplet(2), Destination::Couplet(3)),
            couplet(2, ask(&[0]), end(0), end(1)),
            couplet(3, ask(&[2]), end(2), end(3)),
        ],
    };
    let revised = revised(&matrix, &old);
    assert_eq!(revised.revision.changes, 0);
    assert_eq!(revised.claim.total, Share::from_integer(8));
    assert_eq!(revised.revision.best, Share::from_integer(9));
}

#[test]
fn an_old_threshold_stays_while_it_keeps_the_gap() {
    let scale = Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(3) };
    let length = Character::named("blade length", scale);
    let range = |low, high| Value::Range {
        low: Quantity::from_whole(low),
        high: Quantity::from_whole(high),
    };
    let kinds = ["short", "long", "nobody looked"].map(Taxon::named).to_vec();
    let at_least =
        |mm| Ask { character: CharacterIx(0), yes: Asked::AtLeast(Quantity::from_whole(mm)) };
    for (high, changes) in [(10, 0), (13, 1)] {
        let rows = [range(2, high), range(20, 30), Value::Unknown];
        let rows = rows.into_iter().map(|value| vec![value.into()]).collect();
        let columns = vec![length.clone()];
        let matrix = Matrix::new(Scene::default(), kinds.clone(), columns, rows);
        let matrix = matrix.expect("a table");
        let old = Key {
            couplets: vec![couplet(
                1,
                at_least(14),
                Destination::End(End::of([TaxonIx(1)])),
                Destination::End(End::of([TaxonIx(0)])),
            )],
        };
        let revision = revised(&matrix, &old).revision;
        assert_eq!(revision.changes, changes, "up to {high} mm");
        let asked = revision.key.couplets[0].ask.clone();
        let kept = if changes == 0 { 14_000 } else { 16_500 };
        let kept = Asked::AtLeast(Quantity::from_thousandths(kept));
        assert_eq!(asked.map(|ask| ask.yes), Some(kept));
    }
}

fn couplet(number: u32, ask: Ask, yes: Destination, no: Destination) -> Couplet {
    Couplet {
        number,
        back: None,
        wording: Wording::Question(format!("Our question {number}?")),
        ask: Some(ask),
        yes,
        no,
        kept: false,
        line: None,
    }
}
