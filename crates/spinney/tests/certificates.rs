//! The proof that a key carries: it travels in the file, and nothing false passes for one.
//!
//! That the proofs of thousands of tables are accepted, and say what looking at every key says,
//! stands in `second_opinion`.

use std::collections::BTreeMap;

use fastrand::Rng;
use spinney_build::{Budget, Built, build};
use spinney_check::{Proof, Report, Road, Settings, check};
use spinney_exchange::json;
use spinney_fixtures::{drawn, seeded};
use spinney_model::{
    Ask, Certificate, CharacterIx, Claim, Code, Difficulty, Fact, Goal, Kept, Line, Matrix,
    OfClaim, ProofFault, Reaches, Remaining, Scene, Share, StateIx, Taxon, TaxonIx, Value,
    Wishes,
};

fn opinion(matrix: &Matrix, built: &Built) -> Report {
    check(matrix, &built.key, Some(&built.claim), &Settings::default())
}

fn followed(opinion: &Report) -> bool {
    matches!(opinion.proof, Proof::Confirmed(Road::Certificate { .. }))
}

fn lines(built: &Built) -> &[Line] {
    built.claim.certificate.as_ref().map_or(&[], |certificate| &certificate.lines)
}

/// Tables of all sorts, small enough to make hundreds of.
fn table(seed: u64) -> Matrix {
    match seed % 7 {
        0 => seeded::awkward_wide(seed),
        1 => seeded::evening(seed),
        2 => seeded::priced(seed, &seeded::skewed(seed, 14, 10, 10, 5), true, true),
        3 => seeded::priced(seed, &seeded::plain(seed, 14, 12, 10, 5), true, false),
        4 => seeded::priced(seed, &seeded::binary(seed, 16, 12, 0, 0), true, true),
        5 => seeded::prickly(&seeded::skewed(seed, 14, 10, 10, 5), seed),
        _ => seeded::skewed(seed, 14, 10, 15, 5),
    }
}

#[test]
fn a_proof_travels_in_the_file() {
    let mut with_remains = 0;
    for seed in 0..120 {
        let matrix = table(seed);
        let goals = [vec![], vec![Goal::FewestRulers], vec![Goal::MostRightEnds]];
        let wishes = Wishes { goals: goals[seed as usize % 3].clone(), ..Wishes::default() };
        let built = build(&matrix, &wishes, Budget::default());
        let report = json::Report {
            key: Some(&built.key),
            claim: Some(&built.claim),
            ..json::Report::of(&matrix)
        };
        let text = json::report(&report, |_| unreachable!("nothing was found"));
        let (key, found) = json::read_key(&text, &matrix).expect("our own file");
        let (claim, more) = json::read_claim(&text, &matrix).expect("our own file");
        assert_eq!((found, more), (Vec::new(), Vec::new()), "{seed}");
        assert_eq!(claim.as_ref(), Some(&built.claim), "{seed}");
        let there = check(&matrix, &key, claim.as_ref(), &Settings::default());
        assert!(followed(&there), "{seed}: {:?} {:#?}", there.proof, there.findings);
        with_remains += usize::from(lines(&built).iter().any(|line| !line.remains.is_empty()));
    }
    assert!(with_remains > 20, "{with_remains} proofs speak of what remains of a cell");
}

/// Sizes that no looking at every key comes to.
#[test]
fn large_proofs_are_followed() {
    for seed in 1..=2 {
        for matrix in [
            seeded::plain(seed, 60, 30, 10, 5),
            seeded::priced(seed, &seeded::binary(seed, 60, 30, 0, 0), false, true),
            seeded::skewed(seed, 60, 24, 0, 0),
        ] {
            let built = build(&matrix, &Wishes::default(), Budget::default());
            assert!(built.claim.optimal(), "{seed}");
            assert!(followed(&opinion(&matrix, &built)), "{seed}");
        }
    }
}

/// A table, what is wished of its key, and a key that is claimed to be the best.
#[derive(Clone)]
struct Case {
    matrix: Matrix,
    wishes: Wishes,
    built: Built,
}

impl Case {
    fn proof(&mut self) -> &mut Certificate {
        self.built.claim.certificate.as_mut().expect("it was carried")
    }

    fn opinion(&self) -> Report {
        opinion(&self.matrix, &self.built)
    }

    /// What adds up, in order: a line has a number for each.
    fn goals(&self) -> Vec<Goal> {
        let mut goals = self.wishes.goals.clone();
        if !goals.contains(&Goal::LeastEffort) {
            goals.push(Goal::LeastEffort);
        }
        goals
    }
}

/// What is wished of a table, which may be changed so that the wish says something.
type Wished = fn(&mut Rng, &mut Matrix) -> Wishes;

const WISHES: [(&str, Wished); 9] = [
    ("nothing", |_, _| Wishes::default()),
    ("a question kept", |rng, matrix| Wishes {
        kept: kept(rng, matrix, 1),
        ..Wishes::default()
    }),
    ("three kept", |rng, matrix| Wishes { kept: kept(rng, matrix, 2), ..Wishes::default() }),
    ("an order", |rng, matrix| Wishes { order: some(rng, matrix), ..Wishes::default() }),
    ("some left out", |rng, matrix| Wishes {
        never: some(rng, matrix).into_iter().collect(),
        ..Wishes::default()
    }),
    ("no touch", |rng, matrix| {
        *matrix = seeded::prickly(matrix, rng.u64(..));
        Wishes::default()
    }),
    ("touch allowed", |rng, matrix| {
        *matrix = seeded::prickly(matrix, rng.u64(..));
        Wishes { allow_touch: true, ..Wishes::default() }
    }),
    ("two goals", |rng, _| {
        let goals = [Goal::MostRightEnds, Goal::FewestRulers];
        Wishes { goals: vec![goals[rng.usize(..2)]], ..Wishes::default() }
    }),
    ("three goals, an order, some left out", |rng, matrix| {
        let mut goals = vec![Goal::FewestRulers, Goal::LeastEffort, Goal::MostRightEnds];
        rng.shuffle(&mut goals);
        let never = some(rng, matrix).into_iter().collect();
        Wishes { goals, order: some(rng, matrix), never, ..Wishes::default() }
    }),
];

/// One or two characters.
fn some(rng: &mut Rng, matrix: &Matrix) -> Vec<CharacterIx> {
    let mut all: Vec<CharacterIx> = matrix.character_indices().collect();
    rng.shuffle(&mut all);
    all.truncate(rng.usize(1..=2));
    all
}

/// Questions of the best key, but from its end, and so many after each other.
fn kept(rng: &mut Rng, matrix: &Matrix, deep: usize) -> Vec<Kept> {
    let best = build(matrix, &Wishes::default(), Budget::default()).key;
    let asks: Vec<Ask> =
        best.couplets.iter().filter_map(|couplet| couplet.ask.clone()).collect();
    let (mut kept, mut open) = (Vec::new(), vec![(None, deep)]);
    while let Some((after, deep)) = open.pop() {
        let (Some(deeper), Some(ask)) = (deep.checked_sub(1), rng.choice(&asks)) else {
            continue;
        };
        let here = Kept::add(&mut kept, ask.clone(), after);
        open.extend([false, true].map(|yes| (Some((here, yes)), deeper)));
    }
    kept
}

/// Something that is not so.
struct Falsehood {
    name: &'static str,
    /// Whether it can be told in every number of a line.
    in_every_number: bool,
    /// Makes it so in the number at this place; None: nothing here can be made so.
    tell: fn(&mut Rng, &mut Case, usize) -> Option<()>,
    /// Refused for what is false in it, and not since it could not be read.
    refused: fn(&Report) -> bool,
}

const FALSEHOODS: [Falsehood; 8] = [
    // A line says more, by the smallest number there is, than follows from its questions.
    Falsehood {
        name: "raised a little",
        in_every_number: true,
        tell: |rng, case, number| {
            any(rng, case.proof()).at_least[number] += 1;
            Some(())
        },
        refused: |opinion| {
            proof_fails(opinion, |why| matches!(why, ProofFault::SaysTooMuch { .. }))
        },
    },
    // A line says more than the best key of its heap takes, as a search of that heap alone finds.
    Falsehood {
        name: "raised above the best",
        in_every_number: true,
        tell: raised_above_the_best,
        refused: |opinion| {
            proof_fails(opinion, |why| matches!(why, ProofFault::SaysTooMuch { .. }))
        },
    },
    // The line of one heap is missing. `build` strikes out what nothing rests on, so that without
    // any one line the others do not hold.
    Falsehood {
        name: "left out",
        in_every_number: false,
        tell: |rng, case, _| {
            let lines = &mut case.proof().lines;
            lines.remove(rng.usize(..lines.len()));
            Some(())
        },
        refused: |opinion| proof_fails(opinion, |_| true),
    },
    // A character is easier now, and a search finds that there is a better key.
    Falsehood {
        name: "a cost lowered",
        in_every_number: false,
        tell: cost_lowered,
        refused: |opinion| {
            proof_fails(opinion, |why| matches!(why, ProofFault::SaysTooMuch { .. }))
        },
    },
    // The key is said to reach more than it does, and the line about what lies open says so too.
    Falsehood {
        name: "more claimed",
        in_every_number: true,
        tell: |_, case, number| {
            let goal = case.goals()[number];
            let part = Share::new(1, case.proof().whole);
            open(case.proof(), number)?;
            let claim = &mut case.built.claim;
            if goal == Goal::LeastEffort {
                claim.total -= part;
                claim.lower_bound -= part;
            }
            let reached = claim.reached.iter_mut().filter(|reached| reached.goal == goal);
            reached.for_each(|reached| reached.value -= part);
            Some(())
        },
        refused: |opinion| has(opinion, Code::CostWrong) || has(opinion, Code::GoalWrong),
    },
    // The claim stays, and a line it rests on says less.
    Falsehood {
        name: "not enough",
        in_every_number: true,
        tell: |_, case, number| open(case.proof(), number),
        refused: |opinion| {
            proof_fails(opinion, |why| matches!(why, ProofFault::ShowsLess { .. }))
        },
    },
    // One kind of a heap is another one: the heap that was needed has no line.
    Falsehood {
        name: "other kinds",
        in_every_number: false,
        tell: |rng, case, _| {
            let all: Vec<TaxonIx> = case.matrix.taxon_indices().collect();
            let proof = case.proof();
            let at = rng.usize(..proof.lines.len());
            let line = &mut proof.lines[at];
            let varies = |kind: &TaxonIx| {
                line.remains.iter().any(|place| proof.remains[*place].taxon == *kind)
            };
            let inside: Vec<TaxonIx> =
                line.kinds.iter().filter(|kind| !varies(kind)).copied().collect();
            let outside = all.into_iter().filter(|kind| !line.kinds.contains(kind));
            let outside: Vec<TaxonIx> = outside.collect();
            let gone = rng.choice(inside)?;
            line.kinds.retain(|kind| *kind != gone);
            line.kinds.extend(rng.choice(outside));
            line.kinds.sort_unstable();
            Some(())
        },
        refused: |opinion| has(opinion, Code::BoundWrong),
    },
    // Of a cell something else is left: the same.
    Falsehood {
        name: "other remains",
        in_every_number: false,
        tell: other_remains,
        refused: |opinion| has(opinion, Code::BoundWrong),
    },
];

fn has(opinion: &Report, code: Code) -> bool {
    opinion.findings.iter().any(|finding| finding.code == code)
}

/// Whether the proof does not hold, for such a reason.
fn proof_fails(opinion: &Report, reason: impl Fn(&ProofFault) -> bool) -> bool {
    opinion.findings.iter().any(
        |finding| matches!(&finding.fact, Fact::Claim(OfClaim::ProofFails(why)) if reason(why)),
    )
}

fn any<'a>(rng: &mut Rng, proof: &'a mut Certificate) -> &'a mut Line {
    let at = rng.usize(..proof.lines.len());
    &mut proof.lines[at]
}

/// Takes a little off what is said of the largest heap, which stands first: nothing else rests on
/// it, but the claim does.
fn open(proof: &mut Certificate, number: usize) -> Option<()> {
    let said = &mut proof.lines[0].at_least[number];
    *said = said.checked_sub(1).filter(|said| *said >= 0)?;
    Some(())
}

fn raised_above_the_best(rng: &mut Rng, case: &mut Case, number: usize) -> Option<()> {
    let (goals, matrix) = (case.goals(), case.matrix.clone());
    let wishes = Wishes { kept: Vec::new(), ..case.wishes.clone() };
    let proof = case.proof();
    let at = rng.usize(..proof.lines.len());
    let alone = alone(&matrix, proof, &proof.lines[at])?;
    let best = build(&alone, &wishes, Budget::default()).claim;
    let reached = |goal: &Goal| match best.reached.iter().find(|reached| reached.goal == *goal)
    {
        Some(reached) => reached.value,
        None => best.total,
    };
    let parts = |share: Share| (share * Share::from_integer(proof.whole)).floor().to_integer();
    let best_of_all: Vec<i128> = goals.iter().map(reached).map(parts).collect();
    let line = &mut proof.lines[at];
    assert!(best.optimal() && best_of_all >= line.at_least, "the line was true");
    line.at_least = best_of_all;
    line.at_least[number] += 1;
    line.at_least[number + 1..].fill(0);
    Some(())
}

fn cost_lowered(rng: &mut Rng, case: &mut Case, _: usize) -> Option<()> {
    if case.goals() != [Goal::LeastEffort] {
        return None;
    }
    let mut characters = case.matrix.characters().to_vec();
    let easier = rng.usize(..characters.len());
    characters[easier].difficulty = Difficulty::Easy;
    case.matrix = drawn::remade(&case.matrix, case.matrix.taxa().to_vec(), characters);
    let effort = case.opinion().effort?;
    let best = build(&case.matrix, &case.wishes, Budget::default()).claim;
    if !best.optimal() || best.total >= effort.total {
        return None;
    }
    case.built.claim.total = effort.total;
    case.built.claim.lower_bound = effort.total;
    Some(())
}

fn other_remains(rng: &mut Rng, case: &mut Case, _: usize) -> Option<()> {
    let matrix = case.matrix.clone();
    let proof = case.proof();
    let with = |at: &usize| !proof.lines[*at].remains.is_empty();
    let with: Vec<usize> = (0..proof.lines.len()).filter(with).collect();
    let line = &mut proof.lines[rng.choice(with)?];
    let at = rng.usize(..line.remains.len());
    let mut other = proof.remains[line.remains[at]].clone();
    match (&mut other.values, &matrix.cell(other.taxon, other.character).value) {
        (Remaining::States(left), Value::States(shares)) => {
            let others = shares.iter().map(|(state, _)| *state);
            *left = others.filter(|state| !left.contains(state)).collect();
            line.remains[at] = proof.remains.len();
            proof.remains.push(other);
        }
        // All of it is left.
        _ => {
            line.remains.remove(at);
        }
    }
    Some(())
}

#[test]
fn no_false_proof_is_accepted() {
    let mut made = BTreeMap::<(&str, &str, usize), usize>::new();
    let mut accepted = Vec::new();
    let mut seed = 0;
    while made.values().sum::<usize>() < 2000 {
        seed += 1;
        assert!(seed < 10_000, "enough tables have proofs to spoil: {made:?}");
        let mut rng = Rng::with_seed(seed);
        let (wished, wishes) = &WISHES[seed as usize % WISHES.len()];
        let mut matrix = table(seed / WISHES.len() as u64);
        let wishes = wishes(&mut rng, &mut matrix);
        let built = build(&matrix, &wishes, Budget::default());
        if !built.refused.is_empty() || lines(&built).is_empty() {
            continue;
        }
        let case = Case { matrix, wishes, built };
        let opinion = case.opinion();
        assert!(followed(&opinion), "{seed}, {wished}: the true one: {:?}", opinion.findings);
        for falsehood in &FALSEHOODS {
            let numbers = if falsehood.in_every_number { case.goals().len() } else { 1 };
            for number in 0..numbers {
                let mut case = case.clone();
                if (falsehood.tell)(&mut rng, &mut case, number).is_none() {
                    continue;
                }
                *made.entry((*wished, falsehood.name, number)).or_default() += 1;
                let opinion = case.opinion();
                if matches!(opinion.proof, Proof::Confirmed(_))
                    || !(falsehood.refused)(&opinion)
                {
                    accepted.push((seed, *wished, falsehood.name, number, opinion.findings));
                }
            }
        }
    }
    println!("{made:#?}");
    assert_eq!(accepted, [], "of {made:?}");
    let of = |fits: &dyn Fn(&(&str, &str, usize)) -> bool| -> usize {
        made.iter().filter(|(what, _)| fits(what)).map(|(_, times)| times).sum()
    };
    for (wished, _) in WISHES {
        let times = of(&|what| what.0 == wished);
        assert!(times >= 100, "{wished}: only {times} of {made:?}");
    }
    for falsehood in &FALSEHOODS {
        let times = of(&|what| what.1 == falsehood.name);
        assert!(times >= 40, "{}: only {times} of {made:?}", falsehood.name);
        for number in 1..if falsehood.in_every_number { 3 } else { 1 } {
            let times = of(&|what| (what.1, what.2) == (falsehood.name, number));
            assert!(times >= 15, "{} in {number}: only {times} of {made:?}", falsehood.name);
        }
    }
}

/// The heap of a line as a table of its own; None: columns of numbers would ask other things.
fn alone(matrix: &Matrix, proof: &Certificate, line: &Line) -> Option<Matrix> {
    let words = |character: &spinney_model::Character| {
        matches!(character.scale, spinney_model::Scale::Words { .. })
    };
    if !matrix.characters().iter().all(words) {
        return None;
    }
    let kinds: Vec<TaxonIx> = line.kinds.to_vec();
    let mut taxa: Vec<Taxon> = kinds.iter().map(|kind| matrix.taxon(*kind).clone()).collect();
    let mut rows = Vec::new();
    for (place, kind) in kinds.iter().enumerate() {
        let mut row = Vec::new();
        for at in matrix.character_indices() {
            let mut cell = matrix.cell(*kind, at).clone();
            let mut left = line.remains.iter().map(|place| &proof.remains[*place]);
            let remains = left.find(|left| left.taxon == *kind && left.character == at);
            if let Some(remains) = remains {
                let Remaining::States(left) = &remains.values else { return None };
                let spinney_model::Scale::Words { states } = &matrix.character(at).scale else {
                    return None;
                };
                let all = match &cell.value {
                    Value::States(shares) => shares.clone(),
                    _ => {
                        let share = Share::new(1, states.len() as i128);
                        (0..states.len()).map(|state| (StateIx(state), share)).collect()
                    }
                };
                let kept: Vec<_> = all.into_iter().filter(|(s, _)| left.contains(s)).collect();
                let whole: Share = kept.iter().map(|(_, share)| *share).sum();
                taxa[place].weight *= whole;
                let one = |(state, share)| (state, share / whole);
                cell.value = Value::States(kept.into_iter().map(one).collect());
            }
            row.push(cell);
        }
        rows.push(row);
    }
    let characters = matrix.characters().to_vec();
    Matrix::new(Scene::default(), taxa, characters, rows).ok()
}

/// The words of a claim with a proof that does not hold.
#[test]
fn what_is_wrong_with_a_proof_is_said() {
    let matrix = drawn::yes_no(
        "       hairy shiny lobed toothed
         hazel  1     1     0     0
         lime   1     0     1     0
         beech  0     1     1     0
         maple  0     0     0     1",
    );
    let built = build(&matrix, &Wishes::default(), Budget::default());
    assert!(followed(&opinion(&matrix, &built)));
    let with = |lines: Vec<Line>| {
        let certificate = Some(Certificate { whole: 1, remains: Vec::new(), lines });
        let claim = Claim { certificate, ..built.claim.clone() };
        let opinion = check(&matrix, &built.key, Some(&claim), &Settings::default());
        let found = opinion.findings.into_iter().find(|f| f.code == Code::BoundWrong);
        found.expect("it is found").fact
    };
    let line = |kinds: &[usize], at_least: i128| Line {
        kinds: kinds.iter().map(|kind| TaxonIx(*kind)).collect(),
        remains: Vec::new(),
        at_least: vec![at_least],
    };
    let total = built.claim.total.to_integer();
    let fails = |why| Fact::from(OfClaim::ProofFails(why));
    let claimed = Reaches::Goal(Goal::LeastEffort, Share::from_integer(total));
    let short = with(vec![line(&[0, 1, 2, 3], total - 1)]);
    let least = Share::from_integer(total - 1);
    assert_eq!(short, fails(ProofFault::ShowsLess { claimed, least }));
    let raised = with(vec![line(&[0, 1, 2, 3], total + 1)]);
    let too_much = |fact: &Fact| {
        matches!(fact, Fact::Claim(OfClaim::ProofFails(ProofFault::SaysTooMuch { .. })))
    };
    assert!(too_much(&raised), "{raised:?}");
    let kinds = vec!["hazel".to_owned()];
    let end = with(vec![line(&[0], 1)]);
    assert_eq!(end, fails(ProofFault::CannotSeparate { kinds }));
    assert_eq!(with(vec![line(&[7], 1)]), fails(ProofFault::DoesNotFit));
}
