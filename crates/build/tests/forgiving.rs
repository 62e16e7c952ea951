//! Forgiving keys by a second road: every key with every choice of second places, tried by plain
//! recursion over forms with their masses; worked values; and pupils who err, by chance.

use std::collections::{BTreeMap, BTreeSet};

use fastrand::Rng;
use spinney_build::{Budget, forgive};
use spinney_fixtures::drawn;
use spinney_fixtures::forms::{Forms, Single};
use spinney_fixtures::seeded;
use spinney_model::{
    Answer, Asked, CharacterIx, Destination, Difficulty, Forgiving, Matrix, Share, Stopped,
    TaxonIx, Wishes,
};

fn forgiven(matrix: &Matrix, most: u32) -> Vec<Forgiving> {
    let keys = forgive(matrix, &Wishes::default(), most, Budget::default());
    assert_eq!(keys.keys.len(), most as usize + 1);
    keys.keys
}

fn with_odds(matrix: &Matrix, odds: &[u8]) -> Matrix {
    let mut characters = matrix.characters().to_vec();
    for (character, right) in characters.iter_mut().zip(odds) {
        character.read_right = Some(*right);
    }
    drawn::remade(matrix, matrix.taxa().to_vec(), characters)
}

/// What a key comes to: right ends first, then few second places, then few steps.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Worth {
    right: Share,
    places: u32,
    steps: Share,
}

impl Worth {
    fn better(&self, other: &Self) -> bool {
        (other.right, self.places, self.steps) < (self.right, other.places, other.steps)
            || self.right == other.right
                && (self.places, self.steps) < (other.places, other.steps)
    }
}

/// A form that finds of a kind are walked on as: its number, how many, and what was misread.
type Flow = (usize, Share, BTreeSet<CharacterIx>);

struct Road<'a> {
    matrix: &'a Matrix,
    forms: &'a Forms<'a>,
    answers: Vec<(CharacterIx, Vec<Option<bool>>)>,
    seen: BTreeMap<(Vec<Flow>, u32), Option<Worth>>,
}

impl<'a> Road<'a> {
    fn of(matrix: &'a Matrix, forms: &'a Forms<'a>) -> Self {
        Self { matrix, forms, answers: forms.answers(), seen: BTreeMap::new() }
    }

    fn whole(&mut self, places: u32) -> Worth {
        let all = self.forms.forms().iter().enumerate();
        let all = all.map(|(at, form)| (at, form.weight, BTreeSet::new())).collect();
        self.best(all, places).expect("without second places there is always a key")
    }

    fn kind(&self, flow: &Flow) -> TaxonIx {
        self.forms.forms()[flow.0].taxon
    }

    fn odds(&self, at: CharacterIx, kind: TaxonIx) -> Share {
        let character = self.matrix.character(at);
        let usual = character.read_right.unwrap_or(match character.difficulty {
            Difficulty::Easy => 95,
            Difficulty::Fair => 90,
            Difficulty::Hard => 80,
        });
        let right = character.read_right_of.get(&kind).copied().unwrap_or(usual);
        Share::new(right.into(), 100)
    }

    /// None: kinds that came in by wrong answers cannot be parted from the others.
    fn best(&mut self, flows: Vec<Flow>, places: u32) -> Option<Worth> {
        if let Some(best) = self.seen.get(&(flows.clone(), places)) {
            return best.clone();
        }
        let zero = Share::from_integer(0);
        let all: Share = flows.iter().map(|flow| flow.1).sum();
        let kinds: BTreeSet<TaxonIx> = flows.iter().map(|flow| self.kind(flow)).collect();
        let mut best: Option<Worth> = None;
        let mut asked = false;
        let touch = |question: usize| self.matrix.character(self.answers[question].0).by_touch;
        let no_touch = kinds.iter().any(|kind| self.matrix.taxon(*kind).caution.is_some())
            && (0..self.answers.len())
                .any(|other| !touch(other) && self.sides(&flows, other).is_some());
        for question in 0..self.answers.len() {
            if no_touch && self.matrix.character(self.answers[question].0).by_touch {
                continue;
            }
            let Some(sides) = self.sides(&flows, question) else { continue };
            asked = kinds.len() > 1;
            if !asked {
                break;
            }
            let one_sided: Vec<TaxonIx> =
                sides.iter().filter(|(_, sides)| sides.len() == 1).map(|(at, _)| *at).collect();
            for mask in 0_u32..1 << one_sided.len() {
                let Some(left) = places.checked_sub(mask.count_ones()) else { continue };
                let sent: BTreeSet<TaxonIx> = (0..one_sided.len())
                    .filter(|at| mask >> at & 1 == 1)
                    .map(|at| one_sided[at])
                    .collect();
                let (yes, no) = self.part(&flows, question, &sent);
                for in_yes in 0..=left {
                    let Some(yes) = self.best(yes.clone(), in_yes) else { continue };
                    let Some(no) = self.best(no.clone(), left - in_yes) else { continue };
                    let worth = Worth {
                        right: yes.right + no.right,
                        places: mask.count_ones() + yes.places + no.places,
                        steps: all * self.forms.steps_of(self.answers[question].0)
                            + yes.steps
                            + no.steps,
                    };
                    if best.as_ref().is_none_or(|best| worth.better(best)) {
                        best = Some(worth);
                    }
                }
            }
        }
        let misread = flows.iter().any(|flow| !flow.2.is_empty());
        if !asked && (kinds.len() == 1 || !misread) {
            best = Some(Worth { right: all, places: 0, steps: zero });
        }
        self.seen.insert((flows, places), best.clone());
        best
    }

    /// Who goes where, if the question may be asked here.
    fn sides(
        &self,
        flows: &[Flow],
        question: usize,
    ) -> Option<BTreeMap<TaxonIx, BTreeSet<bool>>> {
        let (at, answers) = &self.answers[question];
        let mut sides: BTreeMap<TaxonIx, BTreeSet<bool>> = BTreeMap::new();
        for flow in flows {
            if flow.2.contains(at) {
                return None;
            }
            sides.entry(self.kind(flow)).or_default().insert(answers[flow.0]?);
        }
        let only = |answer| sides.values().any(|answers| *answers == BTreeSet::from([answer]));
        (only(true) && only(false)).then_some(sides)
    }

    fn part(
        &self,
        flows: &[Flow],
        question: usize,
        sent: &BTreeSet<TaxonIx>,
    ) -> (Vec<Flow>, Vec<Flow>) {
        let (at, answers) = &self.answers[question];
        let mut sides = (Vec::new(), Vec::new());
        let kinds: BTreeSet<TaxonIx> = flows.iter().map(|flow| self.kind(flow)).collect();
        for kind in kinds {
            let own: Vec<&Flow> = flows.iter().filter(|flow| self.kind(flow) == kind).collect();
            let says = |flow: &Flow| answers[flow.0].expect("it can be put");
            let sum = |answer: bool| -> Share {
                own.iter().filter(|flow| says(flow) == answer).map(|flow| flow.1).sum()
            };
            let (right, (yes, no)) = (self.odds(*at, kind), (sum(true), sum(false)));
            let wrong = Share::from_integer(1) - right;
            let zero = Share::from_integer(0);
            for flow in own {
                let (same, other) = if says(flow) { (yes, no) } else { (no, yes) };
                let (rightly, wrongly) = if says(flow) {
                    (&mut sides.0, &mut sides.1)
                } else {
                    (&mut sides.1, &mut sides.0)
                };
                // Wrong answers on the other side are walked on as this side's forms.
                let share = right + if other == zero { zero } else { wrong * other / same };
                rightly.push((flow.0, flow.1 * share, flow.2.clone()));
                if sent.contains(&kind) {
                    let mut misread = flow.2.clone();
                    misread.insert(*at);
                    wrongly.push((flow.0, flow.1 * wrong, misread));
                }
            }
        }
        sides.0.sort();
        sides.1.sort();
        sides
    }
}

/// Compares all budgets up to `most`; whether second places gained anything.
fn compare(matrix: &Matrix, most: u32, what: &str) -> bool {
    let forms = Forms::of(matrix);
    let all: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
    let mut road = Road::of(matrix, &forms);
    let keys = forgiven(matrix, most);
    for (places, key) in keys.iter().enumerate() {
        let worth = road.whole(places as u32);
        assert_eq!(key.right, worth.right / all, "{what}, {places} second places");
        assert_eq!((key.at_most, key.stopped), (key.right, None), "{what}");
        assert_eq!(key.both_ways.len(), worth.places as usize, "{what}, {places}");
        for place in &key.both_ways {
            assert!(place.saves > Share::from_integer(0), "{what}: a place that saves nothing");
        }
    }
    keys.last().is_some_and(|last| last.right > keys[0].right)
}

#[test]
fn clean_tables_agree_with_every_key_and_every_second_place() {
    let mut gained = 0;
    for seed in 0..300 {
        let mut rng = Rng::with_seed(seed);
        let (kinds, columns) = (rng.usize(3..=5), rng.usize(3..=4));
        let mut drawing: Vec<String> = vec!["  a b c d"[..1 + 2 * columns].to_owned()];
        for kind in 0..kinds {
            let cells: Vec<String> = (0..columns).map(|_| rng.u8(..2).to_string()).collect();
            drawing.push(format!("k{kind} {}", cells.join(" ")));
        }
        let table = drawn::yes_no(&drawing.join("\n"));
        let odds: Vec<u8> =
            (0..columns).map(|_| [50, 70, 80, 80, 90, 95, 100][rng.usize(..7)]).collect();
        let mut table = with_odds(&table, &odds);
        if rng.bool() {
            let weights: Vec<i128> = (0..kinds).map(|_| rng.i128(1..=4)).collect();
            table = drawn::weighted(&table, &weights);
        }
        if rng.u8(..3) == 0 {
            let mut characters = table.characters().to_vec();
            let taxon = TaxonIx(rng.usize(..kinds));
            characters[rng.usize(..columns)].read_right_of.insert(taxon, rng.u8(40..=100));
            table = drawn::remade(&table, table.taxa().to_vec(), characters);
        }
        gained += usize::from(compare(&table, 2, &format!("clean {seed}")));
    }
    assert!(gained > 30, "second places gained something on {gained} tables only");
}

#[test]
fn awkward_tables_agree_with_every_key_and_every_second_place() {
    let (mut tried, mut gained) = (0, 0);
    for seed in 0..400 {
        let table = seeded::awkward(seed);
        if Forms::of(&table).forms().len() > 9 {
            continue;
        }
        tried += 1;
        gained += usize::from(compare(&table, 2, &format!("awkward {seed}")));
    }
    assert!(tried > 100 && gained > 5, "{tried} tried, {gained} gained");
}

#[test]
fn nobody_is_sent_to_touch_what_may_hurt_in_a_forgiving_key_either() {
    let (mut tried, mut gained, mut dearer) = (0, 0, 0);
    for seed in 0..900 {
        let table = seeded::prickly(&seeded::awkward(seed), seed);
        if Forms::of(&table).forms().len() > 8 {
            continue;
        }
        tried += 1;
        gained += usize::from(compare(&table, 2, &format!("prickly {seed}")));
        let allowed = Wishes { allow_touch: true, ..Wishes::default() };
        let allowed = forgive(&table, &allowed, 0, Budget::default());
        dearer += usize::from(allowed.keys[0].right > forgiven(&table, 0)[0].right);
    }
    assert!(gained > 5 && dearer > 5, "{tried} tried, {gained} gained, {dearer} dearer");
}

#[test]
fn m1_brings_out_6903_of_10000_with_lobes_first() {
    let table = with_odds(&drawn::m1(), &[80, 85, 95, 85, 90, 90, 97]);
    let keys = forgiven(&table, 3);
    let first = keys[0].key.couplets[0].ask.as_ref().map(|ask| ask.character);
    assert_eq!(first.map(|at| table.character(at).name.as_str()), Some("L"));
    let of_10000 = (keys[0].right * 10_000).round().to_integer();
    assert_eq!(of_10000, 6903);
    assert!(keys.iter().all(|key| key.stopped.is_none()));
    assert!(keys.windows(2).all(|pair| pair[0].right < pair[1].right));
}

/// Kraft: at one half every key without second places names exactly one nth right.
#[test]
fn at_one_half_every_key_names_one_nth_right() {
    for table in [drawn::m1(), drawn::comb(7), drawn::digits(8)] {
        let n = table.taxa().len();
        let odds = vec![50; table.characters().len()];
        let keys = forgiven(&with_odds(&table, &odds), 0);
        assert_eq!(keys[0].right, Share::new(1, n as i128));
    }
}

#[test]
fn balanced_keys_and_combs_have_the_known_shares() {
    let power = |p: Share, n: i32| p.pow(n);
    for per_cent in [70_u8, 85, 95] {
        let p = Share::new(per_cent.into(), 100);
        let of = |table: &Matrix| {
            let odds = vec![per_cent; table.characters().len()];
            forgiven(&with_odds(table, &odds), 0)[0].right
        };
        assert_eq!(of(&drawn::digits(8)), power(p, 3));
        let comb = (1..=7).map(|d| power(p, d)).sum::<Share>() + power(p, 7);
        assert_eq!(of(&drawn::comb(8)), comb / 8);
    }
}

/// A pupil walks the printed key, reads each question right as often as the table says, and
/// knows nothing of second places: does the end name the kind in the hand?
fn walk(table: &Matrix, forms: &Forms<'_>, key: &Forgiving, rng: &mut Rng) -> bool {
    let total: Share = forms.forms().iter().map(|form| form.weight).sum();
    let mut drawn = Share::new(rng.i128(0..1 << 40), 1 << 40) * total;
    let mut form = &forms.forms()[0];
    for other in forms.forms() {
        form = other;
        drawn -= other.weight;
        if drawn < Share::from_integer(0) {
            break;
        }
    }
    let mut at = 1;
    loop {
        let couplet = &key.key.couplets[at - 1];
        let ask = couplet.ask.as_ref().expect("every couplet asks");
        // On a side that was not meant for it, a question that does not fit is guessed at.
        let truth = match (&ask.yes, form.values[ask.character.0]) {
            (Asked::States(states), Some(Single::State(state))) => states.contains(&state),
            _ => rng.bool(),
        };
        let right = table.character(ask.character).read_right.expect("the odds are given");
        let says = truth == (rng.u8(..100) < right);
        match if says { &couplet.yes } else { &couplet.no } {
            Destination::Couplet(number) => at = *number as usize,
            Destination::End(end) => return end.taxa.contains(&form.taxon),
            Destination::Missing => panic!("an end is missing"),
        }
    }
}

#[test]
fn pupils_who_err_come_out_as_often_as_was_said() {
    const WALKS: u32 = 200_000;
    let m1 = with_odds(&drawn::m1(), &[80, 85, 95, 85, 90, 90, 97]);
    let varying = drawn::yes_no(
        "        C L T S
         ash     1 0 1 0
         maple   0 1 v 0
         oak     0 1 0 1
         beech   0 0 0 0
         holly   0 0 v 1",
    );
    let varying = with_odds(&varying, &[80, 85, 90, 75]);
    for table in [m1, varying] {
        let forms = Forms::of(&table);
        for key in forgiven(&table, 3) {
            let mut rng = Rng::with_seed(u64::from(key.budget) + 11);
            let right = (0..WALKS).filter(|_| walk(&table, &forms, &key, &mut rng)).count();
            let said = *key.right.numer() as f64 / *key.right.denom() as f64;
            let found = right as f64 / f64::from(WALKS);
            let error = (said * (1.0 - said) / f64::from(WALKS)).sqrt();
            assert!((said - found).abs() < 4.0 * error, "{}: {said} {found}", key.budget);
        }
    }
}

#[test]
fn a_second_place_stands_in_the_key_where_it_is_said_to() {
    let table = with_odds(&drawn::m1(), &[80, 85, 95, 85, 90, 90, 97]);
    for key in forgiven(&table, 3) {
        assert_eq!(key.both_ways.len(), key.budget as usize);
        for place in &key.both_ways {
            let couplet = &key.key.couplets[place.couplet as usize - 1];
            let to = if place.after == Answer::Yes { &couplet.yes } else { &couplet.no };
            let mut open = vec![to];
            let mut named = false;
            while let Some(to) = open.pop() {
                match to {
                    Destination::Couplet(number) => {
                        let next = &key.key.couplets[*number as usize - 1];
                        open.extend([&next.yes, &next.no]);
                    }
                    Destination::End(end) => named |= end.taxa == [place.taxon],
                    Destination::Missing => panic!("an end is missing"),
                }
            }
            assert!(named, "{} is not named there", table.taxon(place.taxon).name);
        }
    }
}

#[test]
fn a_budget_that_is_used_up_leaves_a_key_and_a_bound() {
    let table = with_odds(&drawn::m1(), &[80, 85, 95, 85, 90, 90, 97]);
    let sure = forgiven(&table, 2);
    let (mut stopped, mut proved) = (0, 0);
    // Wherever it ends on the way: the bound holds, and nothing is called proved that is not.
    for heaps in (0..10).chain((10..400).step_by(10)).chain([100_000]) {
        let keys = forgive(&table, &Wishes::default(), 2, Budget { heaps }).keys;
        assert_eq!(keys.len(), sure.len(), "{heaps}");
        for (key, sure) in keys.iter().zip(&sure) {
            assert!(!key.key.couplets.is_empty());
            assert!(key.right <= sure.right && sure.right <= key.at_most, "{heaps}");
            match key.stopped {
                None => {
                    assert_eq!((key.right, key.at_most), (sure.right, sure.right), "{heaps}");
                    proved += 1;
                }
                Some(why) => {
                    assert_eq!(why, Stopped::Budget, "{heaps}");
                    assert!(heaps < 100_000, "that is enough for all of them");
                    stopped += 1;
                }
            }
        }
    }
    // Nothing can be proved by taking no heap apart.
    assert!(
        stopped >= sure.len() && proved >= sure.len(),
        "{stopped} stopped, {proved} proved"
    );
}

#[test]
fn tables_with_nothing_to_ask_say_so_quietly() {
    let one = drawn::yes_no("  a\noak 1");
    for key in forgiven(&one, 3) {
        assert_eq!((key.right, key.key.couplets.len()), (Share::from_integer(1), 0));
    }
    let alike = drawn::yes_no("  a\noak 1\nash 1");
    assert_eq!(forgiven(&alike, 1)[1].right, Share::from_integer(1));
}
