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
    Certificate, CharacterIx, Claim, Code, Difficulty, Goal, Line, Matrix, Remaining, Scene,
    Share, StateIx, Taxon, TaxonIx, Value, Wishes,
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
        let text = json::report(&report);
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

/// What was done to a true proof.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Falsehood {
    /// A line says more, by the smallest number there is, than follows from its questions.
    RaisedALittle,
    /// A line says more than the best key of its heap takes, as a search of that heap alone finds.
    RaisedAboveTheBest,
    /// The line of one heap is missing. `build` strikes out what nothing rests on, so that
    /// without any one line the others do not hold.
    LeftOut,
    /// A character is easier now, and a search finds that there is a better key.
    CostLowered,
    /// The key is said to take less, and the lines about what lies open as well.
    TotalLowered,
    /// The claim stays, and the line it rests on says less.
    NotEnough,
    /// One kind of a heap is another one: the heap that was needed has no line.
    OtherKinds,
    /// Of a cell something else is left: the same.
    OtherRemains,
}

use Falsehood::*;

const ALL: [Falsehood; 8] = [
    RaisedALittle,
    RaisedAboveTheBest,
    LeftOut,
    CostLowered,
    TotalLowered,
    NotEnough,
    OtherKinds,
    OtherRemains,
];

#[test]
fn no_false_proof_is_accepted() {
    let mut made = BTreeMap::<Falsehood, usize>::new();
    let mut accepted = Vec::new();
    let mut seed = 0;
    while made.values().sum::<usize>() < 1250 {
        seed += 1;
        assert!(seed < 10_000, "enough tables have proofs to spoil: {made:?}");
        let mut rng = Rng::with_seed(seed);
        let matrix = table(seed);
        let built = build(&matrix, &Wishes::default(), Budget::default());
        if lines(&built).is_empty() {
            continue;
        }
        assert!(followed(&opinion(&matrix, &built)), "{seed}: the true one is accepted");
        for falsehood in ALL {
            let Some((matrix, built)) = spoilt(&mut rng, &matrix, &built, falsehood) else {
                continue;
            };
            *made.entry(falsehood).or_default() += 1;
            let opinion = opinion(&matrix, &built);
            let says = |code| {
                let found = opinion.findings.iter().find(|finding| finding.code == code);
                found.map(|finding| finding.sentence.as_str())
            };
            // Refused for what is false in it, and not since it could not be read.
            let said = match falsehood {
                TotalLowered => says(Code::CostWrong).is_some(),
                NotEnough => {
                    says(Code::BoundWrong).is_some_and(|s| s.contains("it only shows"))
                }
                RaisedALittle | RaisedAboveTheBest | CostLowered => {
                    says(Code::BoundWrong).is_some_and(|s| s.contains("it says too much"))
                }
                LeftOut | OtherKinds | OtherRemains => says(Code::BoundWrong).is_some(),
            };
            if matches!(opinion.proof, Proof::Confirmed(_)) || !said {
                accepted.push((seed, falsehood));
            }
        }
    }
    println!("{made:?}");
    assert_eq!(accepted, [], "of {made:?}");
    for falsehood in ALL {
        let times = made.get(&falsehood).copied().unwrap_or(0);
        assert!(times > 40, "{falsehood:?}: only {times} of {made:?}");
    }
}

/// A table and a claim of which something is false; None: nothing here can be made so.
fn spoilt(
    rng: &mut Rng,
    matrix: &Matrix,
    built: &Built,
    falsehood: Falsehood,
) -> Option<(Matrix, Built)> {
    let mut spoilt = built.clone();
    let all = spoilt.claim.certificate.as_mut().expect("it was carried");
    let unit = unit(all);
    let at = rng.usize(..all.lines.len());
    // The heap of all kinds: nothing is kept, so the claim rests on it.
    let root = all.lines.iter().position(|line| line.kinds.len() == matrix.taxa().len());
    match falsehood {
        RaisedALittle => all.lines[at].at_least[0] += unit,
        RaisedAboveTheBest => {
            let line = &mut all.lines[at];
            let alone = alone(matrix, line)?;
            let best = build(&alone, &Wishes::default(), Budget::default()).claim;
            assert!(best.optimal() && best.total >= line.at_least[0], "the line was true");
            line.at_least[0] = best.total + unit;
        }
        LeftOut => {
            all.lines.remove(at);
        }
        CostLowered => {
            let character = CharacterIx(rng.usize(..matrix.characters().len()));
            let mut characters = matrix.characters().to_vec();
            characters[character.0].difficulty = Difficulty::Easy;
            let easier = drawn::remade(matrix, matrix.taxa().to_vec(), characters);
            let effort = opinion(&easier, &spoilt).effort?;
            let best = build(&easier, &Wishes::default(), Budget::default()).claim;
            if !best.optimal() || best.total >= effort.total {
                return None;
            }
            spoilt.claim.total = effort.total;
            spoilt.claim.lower_bound = effort.total;
            return Some((easier, spoilt));
        }
        TotalLowered => {
            all.lines[root?].at_least[0] -= unit;
            spoilt.claim.total -= unit;
            spoilt.claim.lower_bound -= unit;
        }
        NotEnough => all.lines[root?].at_least[0] -= unit,
        OtherKinds => {
            let line = &mut all.lines[at];
            let varies = |kind: &TaxonIx| line.remains.iter().any(|r| r.taxon == *kind);
            let inside: Vec<TaxonIx> =
                line.kinds.iter().filter(|kind| !varies(kind)).copied().collect();
            let outside: Vec<TaxonIx> =
                matrix.taxon_indices().filter(|kind| !line.kinds.contains(kind)).collect();
            line.kinds.remove(&rng.choice(inside)?);
            line.kinds.extend(rng.choice(outside));
        }
        OtherRemains => {
            let with: Vec<usize> =
                (0..all.lines.len()).filter(|at| !all.lines[*at].remains.is_empty()).collect();
            let line = &mut all.lines[rng.choice(with)?];
            let place = rng.usize(..line.remains.len());
            let remains = &mut line.remains[place];
            let value = &matrix.cell(remains.taxon, remains.character).value;
            match (&mut remains.values, value) {
                (Remaining::States(left), Value::States(shares)) => {
                    let other = shares.iter().map(|(state, _)| *state);
                    *left = other.filter(|state| !left.contains(state)).collect();
                }
                // All of it is left.
                _ => {
                    line.remains.remove(place);
                }
            }
        }
    }
    Some((matrix.clone(), spoilt))
}

/// The smallest number by which lines can differ, as far as these show.
fn unit(certificate: &Certificate) -> Share {
    let common = |a: i128, b: i128| {
        let (mut x, mut y) = (a, b);
        while y != 0 {
            (x, y) = (y, x % y);
        }
        a / x * b
    };
    let all = certificate.lines.iter().flat_map(|line| &line.at_least);
    Share::new(1, all.map(|share| *share.denom()).fold(1, common))
}

/// The heap of a line as a table of its own; None: columns of numbers would ask other things.
fn alone(matrix: &Matrix, line: &Line) -> Option<Matrix> {
    let words = |character: &spinney_model::Character| {
        matches!(character.scale, spinney_model::Scale::Words { .. })
    };
    if !matrix.characters().iter().all(words) {
        return None;
    }
    let kinds: Vec<TaxonIx> = line.kinds.iter().copied().collect();
    let mut taxa: Vec<Taxon> = kinds.iter().map(|kind| matrix.taxon(*kind).clone()).collect();
    let mut rows = Vec::new();
    for (place, kind) in kinds.iter().enumerate() {
        let mut row = Vec::new();
        for at in matrix.character_indices() {
            let mut cell = matrix.cell(*kind, at).clone();
            let remains = line.remains.iter().find(|r| r.taxon == *kind && r.character == at);
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
        let certificate = Some(Certificate { lines });
        let claim = Claim { certificate, ..built.claim.clone() };
        let opinion = check(&matrix, &built.key, Some(&claim), &Settings::default());
        let found = opinion.findings.into_iter().find(|f| f.code == Code::BoundWrong);
        found.expect("it is found").sentence
    };
    let line = |kinds: &[usize], at_least: i128| Line {
        kinds: kinds.iter().map(|kind| TaxonIx(*kind)).collect(),
        remains: Vec::new(),
        at_least: vec![Share::from_integer(at_least)],
    };
    let total = built.claim.total.to_integer();
    let short = with(vec![line(&[0, 1, 2, 3], total - 1)]);
    assert!(
        short.contains(&format!("but it only shows that no key comes below {}", total - 1))
    );
    let raised = with(vec![line(&[0, 1, 2, 3], total + 1)]);
    assert!(raised.contains("it says too much of what it takes to separate"), "{raised}");
    let end = with(vec![line(&[0], 1)]);
    assert!(end.contains("no question can do that"), "{end}");
    let nowhere = with(vec![line(&[7], 1)]);
    assert!(nowhere.contains("do not fit the table"), "{nowhere}");
}
