//! Last season's key against a list of every key of small tables.
//!
//! The list comes from `fixtures::every_key`. Here each key of it is compared with the old one by
//! a plain recursion over both trees; the least effort for every number of changes must be what
//! the search says, and the key it gives must be so far from the old one and no further.

#[path = "revise/stories.rs"]
mod stories;

use std::collections::{BTreeMap, BTreeSet};

use fastrand::Rng;
use spinney_build::{Budget, Revising, build, revise};
use spinney_fixtures::every_key::Tree;
use spinney_fixtures::forms::{Form, Forms, Single};
use spinney_fixtures::seeded;
use spinney_model::{
    Ask, Asked, CharacterIx, Couplet, Destination, Difficulty, End, Instrument, Key, Matrix,
    Quantity, Scale, Scene, Share, Taxon, Value, Wishes, Wording,
};

/// A key as its questions alone; None: an end.
type Questions = Option<Box<Question>>;

#[derive(Clone)]
struct Question {
    character: CharacterIx,
    asked: Asked,
    /// The forms that come here; of an old key nothing is known of them.
    forms: BTreeSet<usize>,
    yes: Questions,
    no: Questions,
}

fn of_tree(tree: &Tree) -> Questions {
    let Tree::Couplet(question) = tree else { return None };
    Some(Box::new(Question {
        character: question.character,
        asked: question.asked.clone(),
        forms: question.forms.clone(),
        yes: of_tree(&question.yes),
        no: of_tree(&question.no),
    }))
}

fn size(questions: &Questions) -> u32 {
    questions.as_ref().map_or(0, |at| 1 + size(&at.yes) + size(&at.no))
}

/// What a form answers to a question as it stands on paper; None: it cannot be put to it.
fn answer(matrix: &Matrix, form: &Form, character: CharacterIx, asked: &Asked) -> Option<bool> {
    let gap = match matrix.character(character).scale {
        Scale::Measure { gap, .. } => gap.thousandths(),
        _ => 0,
    };
    let (least, above) = match asked {
        Asked::States(states) => {
            let Some(Single::State(state)) = form.values[character.0] else { return None };
            return Some(states.contains(&state));
        }
        Asked::AtLeast(least) => (least.thousandths(), true),
        Asked::Below(least) => (least.thousandths(), false),
    };
    let more = match form.values[character.0]? {
        Single::Count(count) => i64::from(count) * 1000 >= least,
        Single::Range(low, _) if low.thousandths() - least >= gap.max(0) => true,
        Single::Range(_, high) if least - high.thousandths() >= gap.max(1) => false,
        Single::Range(..) => return None,
        other => panic!("tables with unknown measures are passed over: {other:?}"),
    };
    Some(more == above)
}

type Halves = (BTreeSet<usize>, BTreeSet<usize>);

fn split(
    matrix: &Matrix,
    forms: &[Form],
    heap: &BTreeSet<usize>,
    character: CharacterIx,
    asked: &Asked,
) -> Option<Halves> {
    let mut halves = Halves::default();
    for form in heap {
        match answer(matrix, &forms[*form], character, asked)? {
            true => halves.0.insert(*form),
            false => halves.1.insert(*form),
        };
    }
    Some(halves)
}

struct Compared<'a> {
    matrix: &'a Matrix,
    forms: &'a [Form],
}

impl Compared<'_> {
    /// Whether an old question is asked here, and whether its answers are exchanged.
    fn same(&self, new: &Question, old: &Question) -> Option<bool> {
        if new.character != old.character {
            return None;
        }
        if let (Asked::States(a), Asked::States(b), Scale::Words { states }) =
            (&new.asked, &old.asked, &self.matrix.character(new.character).scale)
        {
            if a == b {
                return Some(false);
            }
            return (a.is_disjoint(b) && a.len() + b.len() == states.len()).then_some(true);
        }
        let split = |question: &Question| {
            split(self.matrix, self.forms, &new.forms, new.character, &question.asked)
        };
        let (now, before) = (split(new)?, split(old)?);
        if now == before {
            return Some(false);
        }
        (now == (before.1, before.0)).then_some(true)
    }

    fn changes(&self, new: &Questions, old: &Questions) -> u32 {
        let (Some(at), Some(was)) = (new, old) else { return size(new) + size(old) };
        let mut ways = vec![
            1 + self.changes(&at.yes, &was.yes) + self.changes(&at.no, &was.no),
            1 + self.changes(&at.yes, &was.no) + self.changes(&at.no, &was.yes),
            1 + size(&was.no) + self.changes(new, &was.yes),
            1 + size(&was.yes) + self.changes(new, &was.no),
            1 + size(&at.no) + self.changes(&at.yes, old),
            1 + size(&at.yes) + self.changes(&at.no, old),
        ];
        match self.same(at, was) {
            Some(false) => {
                ways.push(self.changes(&at.yes, &was.yes) + self.changes(&at.no, &was.no));
            }
            Some(true) => {
                ways.push(self.changes(&at.yes, &was.no) + self.changes(&at.no, &was.yes));
            }
            None => {}
        }
        ways.into_iter().min().expect("there are six ways at least")
    }

    fn of_key(&self, key: &Key, at: &Destination, heap: BTreeSet<usize>) -> Questions {
        let Destination::Couplet(number) = at else { return None };
        let couplet = key.couplets.iter().find(|couplet| couplet.number == *number);
        let couplet = couplet.expect("a key of ours is whole");
        let ask = couplet.ask.clone().expect("every question is linked");
        let (yes, no) = split(self.matrix, self.forms, &heap, ask.character, &ask.yes)
            .expect("not blocked");
        assert!(!yes.is_empty() && !no.is_empty(), "every question parts something");
        Some(Box::new(Question {
            character: ask.character,
            asked: ask.yes,
            forms: heap,
            yes: self.of_key(key, &couplet.yes, yes),
            no: self.of_key(key, &couplet.no, no),
        }))
    }
}

fn steps(matrix: &Matrix, character: CharacterIx) -> i128 {
    let character = matrix.character(character);
    let base = match character.difficulty {
        Difficulty::Easy => 1,
        Difficulty::Fair => 2,
        Difficulty::Hard => 3,
    };
    if character.instrument == Instrument::Eyes { base } else { 2 * base }
}

fn effort(matrix: &Matrix, tree: &Tree) -> Share {
    let Tree::Couplet(question) = tree else { return Share::from_integer(0) };
    let flow: Share = question.flows.values().sum();
    flow * steps(matrix, question.character)
        + effort(matrix, &question.yes)
        + effort(matrix, &question.no)
}

/// Numbers an old key. Every end is left open: ends need no account.
fn on_paper(questions: &Questions) -> Key {
    fn lay(questions: &Questions, couplets: &mut Vec<Couplet>) -> Destination {
        let Some(at) = questions else { return Destination::End(End::default()) };
        let place = couplets.len();
        let number = place as u32 + 1;
        couplets.push(Couplet {
            number,
            back: None,
            wording: Wording::Question(format!("Old question {number}?")),
            ask: Some(Ask { character: at.character, yes: at.asked.clone() }),
            yes: Destination::Missing,
            no: Destination::Missing,
            kept: false,
            line: None,
        });
        couplets[place].yes = lay(&at.yes, couplets);
        couplets[place].no = lay(&at.no, couplets);
        Destination::Couplet(number)
    }
    let mut key = Key::default();
    lay(questions, &mut key.couplets);
    key
}

/// The table as it may have been last season: kinds gone, kinds new, cells changed.
fn last_season(matrix: &Matrix, rng: &mut Rng) -> Matrix {
    let mut taxa = matrix.taxa().to_vec();
    let columns: Vec<CharacterIx> = matrix.character_indices().collect();
    let mut rows: Vec<Vec<_>> = matrix
        .taxon_indices()
        .map(|taxon| columns.iter().map(|at| matrix.cell(taxon, *at).clone()).collect())
        .collect();
    for _ in 0..rng.usize(1..=3) {
        let of = |rng: &mut Rng, rows: &[Vec<_>]| rng.usize(..rows.len());
        match rng.u8(..4) {
            0 if rows.len() > 2 => {
                let gone = of(rng, &rows);
                taxa.remove(gone);
                rows.remove(gone);
            }
            1 => {
                let mixed =
                    columns.iter().map(|at| rows[of(rng, &rows)][at.0].clone()).collect();
                taxa.push(Taxon::named(format!("stranger {}", rows.len())));
                rows.push(mixed);
            }
            _ => {
                let (to, from) = (of(rng, &rows), of(rng, &rows));
                let at = rng.usize(..columns.len());
                rows[to][at] = rows[from][at].clone();
                if let (Value::Range { low, high }, true) = (&rows[to][at].value, rng.bool()) {
                    let more = Quantity::from_whole(rng.i64(1..=4));
                    let longer =
                        Quantity::from_thousandths(high.thousandths() + more.thousandths());
                    rows[to][at] = Value::Range { low: *low, high: longer }.into();
                }
            }
        }
    }
    Matrix::new(Scene::default(), taxa, matrix.characters().to_vec(), rows)
        .expect("every cell came from its own column")
}

fn has_unknown_measure(matrix: &Matrix) -> bool {
    matrix.character_indices().any(|at| {
        matches!(matrix.character(at).scale, Scale::Measure { .. })
            && matrix
                .taxon_indices()
                .any(|taxon| matrix.cell(taxon, at).value == Value::Unknown)
    })
}

/// Whether nobody is sent to touch a kind with a caution, wherever something else separates.
fn spares_hands(matrix: &Matrix, tree: &Tree) -> bool {
    let Tree::Couplet(question) = tree else { return true };
    question.spares_hands(matrix, question.character)
        && spares_hands(matrix, &question.yes)
        && spares_hands(matrix, &question.no)
}

/// The least effort for every number of changes, as far as it falls.
fn curve(all: &[(u32, Share)]) -> Vec<(u32, Share)> {
    let mut least: BTreeMap<u32, Share> = BTreeMap::new();
    for (changes, effort) in all {
        let known = least.entry(*changes).or_insert(*effort);
        *known = (*known).min(*effort);
    }
    let mut curve: Vec<(u32, Share)> = Vec::new();
    for (changes, effort) in least {
        if curve.last().is_none_or(|(_, before)| effort < *before) {
            curve.push((changes, effort));
        }
    }
    curve
}

#[test]
fn the_whole_curve_is_what_the_list_of_every_key_says() {
    let (mut compared, mut bent, mut unchanged, mut lossy, mut barred) = (0, 0, 0, 0, 0);
    for seed in 0..3000 {
        let matrix = seeded::awkward(seed);
        let matrix = if seed % 3 == 0 { seeded::prickly(&matrix, seed) } else { matrix };
        let mut rng = Rng::with_seed(seed + 400);
        let before = last_season(&matrix, &mut rng);
        if has_unknown_measure(&matrix) {
            continue;
        }
        let forms = Forms::of(&matrix);
        let Some(mut keys) = forms.every_key(1500) else { continue };
        let all = keys.len();
        keys.retain(|key| spares_hands(&matrix, key));
        barred += usize::from(keys.len() < all);
        let Some(old_keys) = Forms::of(&before).every_key(3000) else { continue };
        // Last season's best key, or any other that somebody may have drawn.
        let best = build(&before, &Wishes::default(), Budget::default()).key;
        let drawn = on_paper(&of_tree(&old_keys[rng.usize(..old_keys.len())]));
        let paper = if rng.bool() { best } else { drawn };
        let old = as_questions(&paper, paper.couplets.first().map(|couplet| couplet.number));
        let compare = Compared { matrix: &matrix, forms: forms.forms() };
        let all: Vec<(u32, Share)> = keys
            .iter()
            .map(|key| (compare.changes(&of_tree(key), &old), effort(&matrix, key)))
            .collect();
        let expected = curve(&all);
        let least = all.iter().map(|(_, effort)| *effort).min().unwrap();
        let weight: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
        let loss = [Share::new(0, 1), Share::new(1, 10), Share::new(1, 4), Share::new(1, 1)]
            [rng.usize(..4)];
        let chosen = expected.iter().find(|(_, effort)| *effort <= least + loss * weight);
        let (changes, effort) = *chosen.unwrap();

        let settings = Revising { loss, ..Revising::default() };
        let revised = revise(&matrix, &paper, &Wishes::default(), settings);
        let revision = &revised.revision;
        let found: Vec<(u32, Share)> =
            revision.curve.iter().map(|point| (point.changes, point.effort)).collect();
        assert_eq!(found, expected, "seed {seed}");
        assert!(revision.curve.iter().all(|point| point.proved), "seed {seed}");
        assert_eq!(revision.fewest, expected[0].0, "seed {seed}");
        assert_eq!(revision.best, least, "seed {seed}");
        assert_eq!((revision.changes, revision.effort), (changes, effort), "seed {seed}");
        assert_eq!(revision.stopped, None, "seed {seed}");
        assert_eq!(revised.claim.total, effort, "seed {seed}");
        let parts = &revision.parts;
        let counted = parts.rewritten.len() + parts.added.len() + parts.struck.len();
        assert_eq!(counted as u32, changes, "seed {seed}");
        // The key itself is so far from the old one.
        let start = match revision.key.couplets.first() {
            Some(first) => Destination::Couplet(first.number),
            None => Destination::Missing,
        };
        let everything = (0..forms.forms().len()).collect();
        let new = compare.of_key(&revision.key, &start, everything);
        assert_eq!(compare.changes(&new, &old), changes, "seed {seed}");
        compared += 1;
        bent += usize::from(expected.len() > 1);
        unchanged += usize::from(changes == 0);
        lossy += usize::from(effort > least);
    }
    assert!(compared > 1800, "only {compared} tables had a list");
    assert!(barred > 100, "only {barred} tables had keys that send people to touch");
    assert!(bent > 200, "only {bent} curves had more than one point");
    assert!(unchanged > 100, "only {unchanged} keys stayed as they were");
    assert!(lossy > 50, "only {lossy} keys kept something at a loss");
}

fn as_questions(key: &Key, number: Option<u32>) -> Questions {
    let couplet = key.couplets.iter().find(|couplet| Some(couplet.number) == number)?;
    let ask = couplet.ask.clone().expect("every question is linked");
    let next = |destination: &Destination| match destination {
        Destination::Couplet(number) => as_questions(key, Some(*number)),
        _ => None,
    };
    Some(Box::new(Question {
        character: ask.character,
        asked: ask.yes,
        forms: BTreeSet::new(),
        yes: next(&couplet.yes),
        no: next(&couplet.no),
    }))
}
