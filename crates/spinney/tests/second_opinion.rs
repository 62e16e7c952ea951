//! What the search claims, the second opinion confirms: two crates that share no code, on
//! thousands of small awkward tables and on larger ones.

use std::collections::{BTreeMap, BTreeSet};

use spinney_build::{Budget, Built, build, forgive};
use spinney_check::{Proof, Report, Road, Settings, check};
use spinney_fixtures::{drawn, seeded};
use spinney_model::{
    Ask, Asked, CharacterIx, Claim, Code, Early, Goal, Instrument, Kept, Matrix, Quantity,
    Scale, Season, SeenOn, StateIx, TaxonIx, Wish, Wishes,
};

/// What would contradict the search. (A person's kept question may part nothing, and then both
/// its answers lead to the same place: that is the person's.)
const BLAME: [Code; 9] = [
    Code::CostWrong,
    Code::BoundWrong,
    Code::GoalWrong,
    Code::WishBroken,
    Code::NeverComesOut,
    Code::WrongPlace,
    Code::DoesNotHave,
    Code::MayNotHave,
    Code::ThresholdInside,
];

fn confirmed(matrix: &Matrix, wishes: &Wishes, name: &str) -> (Built, Report) {
    let built = build(matrix, wishes, Budget::default());
    let opinion = check(matrix, &built.key, Some(&built.claim), &Settings::default());
    let blame: Vec<_> =
        opinion.findings.iter().filter(|finding| BLAME.contains(&finding.code)).collect();
    assert!(blame.is_empty(), "{name}: {blame:#?}");
    if let Some(effort) = &opinion.effort {
        assert_eq!(effort.total, built.claim.total, "{name}");
        assert_eq!(effort.mean_questions, built.claim.mean_questions, "{name}");
        assert_eq!(effort.longest, built.claim.longest, "{name}");
    } else {
        panic!("{name}: the effort could not be added up again");
    }
    followed(matrix, &built, &opinion, name);
    (built, opinion)
}

/// A proved claim whose wishes add up carries a certificate, and following it says what looking
/// at every key says.
fn followed(matrix: &Matrix, built: &Built, opinion: &Report, name: &str) {
    let claim = &built.claim;
    let adds_up = |goal: &Goal| {
        matches!(goal, Goal::LeastEffort | Goal::MostRightEnds | Goal::FewestRulers)
    };
    let carried = claim.optimal()
        && claim.wishes.early.is_empty()
        && claim.wishes.goals.iter().all(adds_up);
    assert_eq!(claim.certificate.is_some(), carried, "{name}");
    if !carried {
        return;
    }
    let confirmed = matches!(opinion.proof, Proof::Confirmed(Road::Certificate { .. }));
    assert!(confirmed, "{name}: {:?} {:#?}", opinion.proof, opinion.findings);
    let alone = Claim { certificate: None, ..claim.clone() };
    let every_key = check(matrix, &built.key, Some(&alone), &Settings::default());
    let same = matches!(
        every_key.proof,
        Proof::Confirmed(Road::EveryKey { .. }) | Proof::NotCarried { .. }
    );
    assert!(same, "{name}: {:?} {:#?}", every_key.proof, every_key.findings);
}

#[test]
fn the_cost_of_awkward_tables_is_confirmed() {
    for seed in 0..3000 {
        let matrix = seeded::awkward(seed);
        confirmed(&matrix, &Wishes::default(), &format!("seed {seed}"));
        let prickly = seeded::prickly(&matrix, seed);
        confirmed(&prickly, &Wishes::default(), &format!("seed {seed}, prickly"));
    }
}

/// Every two goals, one before the other: the replay finds the very same numbers.
#[test]
fn what_two_goals_reach_is_found_a_second_time() {
    let mut confirmed_in_full = 0;
    for seed in 0..60 {
        let matrix = seeded::awkward(seed);
        for one in Goal::ALL {
            for two in Goal::ALL.into_iter().filter(|two| *two != one) {
                let wishes = Wishes { goals: vec![one, two], ..Wishes::default() };
                let (_, opinion) = confirmed(&matrix, &wishes, &format!("{seed}: {wishes:?}"));
                let same = matches!(opinion.proof, Proof::Confirmed(_));
                confirmed_in_full += usize::from(same);
            }
        }
    }
    assert!(confirmed_in_full > 60 * 30 * 9 / 10, "only {confirmed_in_full}");
}

#[test]
fn the_cost_of_larger_tables_is_confirmed() {
    for seed in 0..5 {
        confirmed(&seeded::skewed(seed, 24, 20, 10, 5), &Wishes::default(), "skewed");
        confirmed(&seeded::plain(seed, 40, 30, 10, 5), &Wishes::default(), "plain");
    }
}

/// Also where a person's own first question stays.
#[test]
fn the_cost_with_a_kept_question_is_confirmed() {
    let mut kept = 0;
    for seed in 0..1500 {
        let matrix = seeded::awkward(seed);
        for at in matrix.character_indices() {
            let yes = match &matrix.character(at).scale {
                Scale::Words { .. } => Asked::States([StateIx(0)].into()),
                _ => Asked::AtLeast(Quantity::from_thousandths(4_321)),
            };
            let ask = Ask { character: at, yes };
            let wish = Kept { ask, yes: None, no: None };
            let wishes = Wishes { kept: vec![wish], ..Wishes::default() };
            confirmed(&matrix, &wishes, &format!("seed {seed}, character {}", at.0));
            kept += usize::from(build(&matrix, &wishes, Budget::default()).refused.is_empty());
        }
    }
    assert!(kept > 500, "only {kept} wishes were kept");
}

/// A small table with words to know, readings of single kinds, places, seasons and lenses.
fn table(seed: u64) -> Matrix {
    let matrix = seeded::awkward(seed);
    let mut rng = fastrand::Rng::with_seed(seed + 99);
    let mut characters = matrix.characters().to_vec();
    for character in &mut characters {
        if rng.bool() {
            character.read_right = Some(rng.u8(0..=100));
            character.read_right_of = BTreeMap::from([(TaxonIx(1), rng.u8(0..=100))]);
        }
        if rng.u8(..3) == 0 {
            let words = ["blade", "stalk", "vein", "c1"];
            character.terms = (0..2).map(|_| words[rng.usize(..4)].to_owned()).collect();
        }
        if rng.bool() {
            character.seen_on = BTreeSet::from([SeenOn::ALL[rng.usize(..2)]]);
            character.seasons = BTreeSet::from([Season::ALL[rng.usize(..2)]]);
        }
        if rng.u8(..4) == 0 {
            character.instrument = Instrument::ALL[rng.usize(..3)];
        }
    }
    drawn::remade(&matrix, matrix.taxa().to_vec(), characters)
}

fn random_ask(rng: &mut fastrand::Rng, matrix: &Matrix) -> Ask {
    let character = CharacterIx(rng.usize(..matrix.characters().len()));
    let yes = match &matrix.character(character).scale {
        Scale::Words { states } => Asked::States([StateIx(rng.usize(..states.len()))].into()),
        Scale::Counts => Asked::AtLeast(Quantity::from_whole(rng.i64(1..5))),
        Scale::Measure { .. } => Asked::Below(Quantity::from_thousandths(rng.i64(0..15_000))),
    };
    Ask { character, yes }
}

/// Any of the wishes, and often several.
fn wishes(rng: &mut fastrand::Rng, matrix: &Matrix) -> Wishes {
    let mut wishes = Wishes::default();
    let columns = matrix.characters().len();
    if rng.u8(..3) == 0 {
        wishes.never = BTreeSet::from([CharacterIx(rng.usize(..columns))]);
    }
    if rng.u8(..3) == 0 {
        wishes.hand = Some(SeenOn::ALL[rng.usize(..2)]);
    }
    if rng.u8(..3) == 0 {
        wishes.season = Some(Season::ALL[rng.usize(..2)]);
    }
    if rng.u8(..3) == 0 {
        wishes.order = (0..2).map(|_| CharacterIx(rng.usize(..columns))).collect();
        wishes.order.dedup();
    }
    for _ in 0..rng.usize(..3) {
        let mut taxon = || TaxonIx(rng.usize(..matrix.taxa().len()));
        let (one, other) = (taxon(), taxon());
        let apart = one != other && rng.bool();
        wishes.early.push(if apart { Early::Part(one, other) } else { Early::Leave(one) });
    }
    if rng.u8(..3) == 0 {
        for after in [None, Some((0, true)), Some((0, false))] {
            Kept::add(&mut wishes.kept, random_ask(rng, matrix), after);
        }
    }
    if rng.bool() {
        // The fewest words of a whole key take too long here; `build` has a list of keys for
        // them.
        wishes.goals = Goal::ALL.to_vec();
        wishes.goals.retain(|goal| *goal != Goal::FewestWords);
        rng.shuffle(&mut wishes.goals);
        wishes.goals.truncate(rng.usize(1..=4));
    }
    wishes
}

/// Whatever is wished: the key keeps it, reaches what is claimed, and none is better.
#[test]
fn what_is_claimed_under_wishes_is_confirmed() {
    let (mut replayed, mut with) = (0, BTreeMap::<&str, usize>::new());
    const TABLES: usize = 1600;
    for seed in 0..TABLES as u64 {
        let matrix = table(seed);
        let matrix = if seed % 2 == 0 { seeded::prickly(&matrix, seed) } else { matrix };
        let mut rng = fastrand::Rng::with_seed(seed + 3);
        let mut wanted = wishes(&mut rng, &matrix);
        wanted.allow_touch = rng.u8(..4) == 0;
        let name = format!("seed {seed}: {wanted:?}");
        let (built, opinion) = confirmed(&matrix, &wanted, &name);
        assert!(built.claim.optimal(), "{name}: small tables are proved");
        let together = |finding: &&spinney_model::Finding| finding.code == Code::CouldBeParted;
        assert_eq!(opinion.findings.iter().find(together), None, "{name}");
        replayed += usize::from(matches!(opinion.proof, Proof::Confirmed(_)));
        let kept = &built.claim.wishes;
        for (what, some) in [
            ("kept", !kept.kept.is_empty()),
            ("never", !kept.never.is_empty()),
            ("hand", kept.hand.is_some()),
            ("season", kept.season.is_some()),
            ("order", !kept.order.is_empty()),
            ("early", !kept.early.is_empty()),
            ("goals", !kept.goals.is_empty()),
            ("touch", built.claim.prices.iter().any(|price| price.wish == Wish::Touch)),
            ("touching", !built.claim.touching.is_empty()),
        ] {
            *with.entry(what).or_default() += usize::from(some);
        }
    }
    assert!(replayed * 100 >= TABLES * 99, "only {replayed} proofs were replayed");
    for (what, times) in with {
        assert!(times > 100, "{what}: only {times}");
    }
}

/// A key that sends people to touch what may hurt does not pass for one that does not, nor the
/// other way round; and every such question must be named.
#[test]
fn what_is_claimed_of_touch_is_not_taken_on_trust() {
    let mut dearer = 0;
    for seed in 0..800 {
        let matrix = seeded::prickly(&seeded::awkward(seed), seed);
        let spared = build(&matrix, &Wishes::default(), Budget::default());
        let allowing = Wishes { allow_touch: true, ..Wishes::default() };
        let allowed = build(&matrix, &allowing, Budget::default());
        if spared.claim.total <= allowed.claim.total {
            continue;
        }
        dearer += 1;
        let codes = |built: &Built, claim: &Claim| -> Vec<Code> {
            let opinion = check(&matrix, &built.key, Some(claim), &Settings::default());
            assert!(!matches!(opinion.proof, Proof::Confirmed(_)), "{seed}");
            opinion.findings.iter().map(|finding| finding.code).collect()
        };
        let as_if_allowed = Claim { wishes: allowing.clone(), ..spared.claim.clone() };
        assert!(codes(&spared, &as_if_allowed).contains(&Code::BoundWrong), "{seed}");
        let as_if_spared = Claim { wishes: Wishes::default(), ..allowed.claim.clone() };
        assert!(codes(&allowed, &as_if_spared).contains(&Code::WishBroken), "{seed}");
        let silent = Claim { touching: Vec::new(), ..allowed.claim.clone() };
        assert!(codes(&allowed, &silent).contains(&Code::WishBroken), "{seed}");
    }
    assert!(dearer > 40, "touching saves something on {dearer} tables only");
}

/// Second places that are meant are nothing to be looked at, and leave nothing else to be mended;
/// the others are found, with questions that part nobody else.
#[test]
fn second_places_are_known_to_the_second_opinion() {
    let mut places = 0;
    for seed in 1..=60 {
        let matrix = seeded::binary(seed, 6, 6, 10, 0);
        for one in forgive(&matrix, &Wishes::default(), 3, Budget::default()).keys {
            let meant = one.both_ways.iter();
            let meant: BTreeSet<_> = meant.map(|p| (p.couplet, p.after, p.taxon)).collect();
            let settings = Settings { second_places: meant.clone(), ..Settings::default() };
            let faults = |settings: &Settings| {
                let opinion = check(&matrix, &one.key, None, settings);
                let fault = |code: Code| {
                    BLAME.contains(&code)
                        || [Code::SecondPlace, Code::EndUnreached, Code::PartsNothing]
                            .contains(&code)
                };
                let codes = opinion.findings.iter().map(|finding| finding.code);
                codes.filter(|code| fault(*code)).collect::<Vec<_>>()
            };
            assert_eq!(faults(&settings), [], "{seed}: {:#?}", one.key);
            let found = faults(&Settings::default());
            let second = |code: &&Code| **code == Code::SecondPlace;
            assert!(found.iter().filter(second).count() >= meant.len(), "{seed}: {found:?}");
            let parts = |code: &Code| second(&code) || *code == Code::PartsNothing;
            assert!(found.iter().all(parts), "{seed}: {found:?}");
            places += meant.len();
        }
    }
    assert!(places > 100, "{places}: the tables have kinds to forgive");
}
