//! Two roads to the walks: `check` against kinds expanded into forms and walked one by one.

use std::collections::BTreeSet;

use fastrand::Rng;
use spinney_check::{Report, Settings, check};
use spinney_model::*;

#[path = "second_road/road.rs"]
mod second_road;

use second_road::{Layout, by_forms, depth, forms, random_key, random_matrix, roads};

#[test]
fn random_keys_are_walked_alike_on_both_roads() {
    let mut rng = Rng::with_seed(20);
    let (mut varied, mut cut, mut met) = (0, 0, 0);
    for round in 0..2000 {
        let meet = round % 3 == 0;
        let matrix = random_matrix(&mut rng, false);
        let key = random_key(&mut rng, &matrix, meet);
        let (ways, ends, effort) = by_forms(&matrix, &key);
        let report = check(&matrix, &key, None, &Settings::default());
        let said: BTreeSet<(usize, Vec<Step>)> =
            report.walks.iter().map(|walk| (walk.taxon.0, walk.steps.clone())).collect();
        let came_out: BTreeSet<(usize, Step, bool)> = report
            .walks
            .iter()
            .map(|walk| (walk.taxon.0, *walk.steps.last().unwrap(), walk.arrived))
            .collect();
        assert_eq!(came_out, ends, "{matrix:#?}\n{key:#?}");
        if meet {
            assert!(said.is_subset(&ways), "{matrix:#?}\n{key:#?}");
        } else {
            assert_eq!(said, ways, "{matrix:#?}\n{key:#?}");
            assert_eq!(said.len(), report.walks.len(), "no way is written down twice");
        }
        let weights: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
        let expected = effort.map(|(total, steps)| (total, steps / weights));
        let readded = report.effort.map(|effort| (effort.total, effort.mean_questions));
        assert_eq!(readded, expected, "{matrix:#?}\n{key:#?}");
        varied += usize::from(ways.len() > matrix.taxa().len());
        cut += usize::from(effort.is_none());
        met += usize::from(said.len() < ways.len());
    }
    assert!(varied > 600 && cut > 60 && met > 15, "{varied} varied, {cut} cut, {met} met");
}

#[test]
fn keys_within_the_rules_work_and_cost_what_their_forms_cost() {
    let mut rng = Rng::with_seed(7);
    let (mut governed, mut stopped_early, mut together, mut empty) = (0, 0, 0, 0);
    for _ in 0..2000 {
        let matrix = random_matrix(&mut rng, true);
        let no_key = Key::default();
        let heap = forms(&matrix, &no_key);
        let mut layout =
            Layout { matrix: &matrix, couplets: Vec::new(), stopped: BTreeSet::new(), next: 1 };
        layout.lay(&mut rng, heap, 0);
        layout.couplets.sort_by_key(|couplet| couplet.number);
        let key = Key { couplets: layout.couplets };
        if key.couplets.is_empty() {
            let report = check(&matrix, &key, None, &Settings::default());
            assert!(report.works(), "nothing can be asked here: {:#?}", report.findings);
            empty += 1;
            continue;
        }
        let (_, ends, effort) = by_forms(&matrix, &key);
        assert!(ends.iter().all(|(_, _, arrived)| *arrived), "the second road is right");
        let (total, steps) = effort.expect("no range is cut within the rules");
        let weights: Share = matrix.taxa().iter().map(|taxon| taxon.weight).sum();
        let longest = depth(&key, 1);
        let claim = Claim {
            total,
            // Such a key is seldom the best, and a replay would say so.
            lower_bound: Share::from_integer(0),
            mean_questions: steps / weights,
            longest,
            stopped: Some(Stopped::Budget),
            heaps: 0,
            kept: None,
            wishes: spinney_model::Wishes::default(),
            reached: Vec::new(),
            prices: Vec::new(),
            within: Vec::new(),
            touching: Vec::new(),
            certificate: None,
        };
        let report = check(&matrix, &key, Some(&claim), &Settings::default());
        let expected = [Code::NobodyRecorded, Code::CouldBeParted, Code::Comb, Code::LongPath];
        for finding in &report.findings {
            assert!(expected.contains(&finding.code), "{finding:#?}\n{matrix:#?}\n{key:#?}");
        }
        assert!(report.works() && report.walks.iter().all(|walk| walk.arrived));
        let could: BTreeSet<String> = report
            .findings
            .iter()
            .filter(|finding| finding.code == Code::CouldBeParted)
            .map(|finding| finding.place.to_string())
            .collect();
        let stopped = layout.stopped.iter().map(|number| format!("question {number}"));
        assert_eq!(could, stopped.collect(), "{:#?}\n{matrix:#?}\n{key:#?}", report.findings);
        stopped_early += usize::from(!layout.stopped.is_empty());
        governed += usize::from(key.couplets.iter().any(|couplet| {
            let ask = couplet.ask.as_ref().unwrap();
            matrix.character(ask.character).governor.is_some()
        }));
        together += usize::from(ends.iter().any(|(_, step, _)| {
            let couplet = key.couplets.iter().find(|c| c.number == step.couplet).unwrap();
            let to = if step.answer == Answer::Yes { &couplet.yes } else { &couplet.no };
            matches!(to, Destination::End(end) if end.taxa.len() > 1)
        }));
    }
    assert!(
        governed > 200 && stopped_early > 200 && together > 200 && empty > 20,
        "{governed} governed, {stopped_early} stopped, {together} together, {empty} empty"
    );
}

/// A key within the rules, then changed in one place as a slip of the pen would.
fn with_a_slip(rng: &mut Rng, matrix: &Matrix) -> Option<Key> {
    let heap = forms(matrix, &Key::default());
    let mut layout = Layout { matrix, couplets: Vec::new(), stopped: BTreeSet::new(), next: 1 };
    layout.lay(rng, heap, 0);
    layout.couplets.sort_by_key(|couplet| couplet.number);
    let mut key = Key { couplets: layout.couplets };
    if key.couplets.is_empty() {
        return None;
    }
    let size = key.couplets.len();
    let asks: Vec<Option<Ask>> = key.couplets.iter().map(|c| c.ask.clone()).collect();
    let couplet = &mut key.couplets[rng.usize(..size)];
    match rng.usize(..7) {
        0 => std::mem::swap(&mut couplet.yes, &mut couplet.no),
        1 => couplet.ask = asks[rng.usize(..size)].clone(),
        2 => couplet.yes = Destination::Couplet(rng.u32(1..size as u32 + 3)),
        3 => couplet.no = Destination::Missing,
        4 => couplet.number = rng.u32(1..size as u32 + 1),
        5 => {
            for to in [&mut couplet.yes, &mut couplet.no] {
                if let Destination::End(end) = to {
                    end.taxa.retain(|_| rng.bool());
                }
            }
        }
        _ => {}
    }
    Some(key)
}

/// Whether every form of every kind comes out under its name and is asked only what it has.
fn all_is_well(matrix: &Matrix, key: &Key) -> bool {
    forms(matrix, key).iter().all(|form| {
        roads(matrix, key, form).is_some_and(|roads| {
            let named = |end: &End| end.taxa.contains(&TaxonIx(form.taxon));
            roads.iter().all(|road| !road.cut && named(&road.end))
        })
    })
}

/// Whether the report blames something that a kind meets on its way. A part that nobody gets
/// to, or an end, spoils no walk.
fn blames(report: &Report) -> Vec<Code> {
    let apart = [
        Code::EndUnreached,
        Code::Unreachable,
        Code::NumberTwice,
        Code::NumberMissing,
        Code::NothingWritten,
        Code::Loop,
        Code::SameBothWays,
    ];
    let must = report.findings.iter().filter(|f| f.severity == Severity::MendThis);
    must.map(|finding| finding.code).filter(|code| !apart.contains(code)).collect()
}

#[test]
fn what_is_said_to_work_works_and_what_works_is_not_blamed() {
    let mut rng = Rng::with_seed(99);
    let (mut well, mut ill) = (0, 0);
    for _ in 0..2000 {
        let matrix = random_matrix(&mut rng, true);
        let Some(key) = with_a_slip(&mut rng, &matrix) else { continue };
        let report = check(&matrix, &key, None, &Settings::default());
        assert_eq!(report, check(&matrix, &key, None, &Settings::default()));
        if all_is_well(&matrix, &key) {
            let blamed = blames(&report);
            assert_eq!(blamed, [], "{:#?}\n{matrix:#?}\n{key:#?}", report.findings);
            assert!(report.walks.iter().all(|walk| walk.arrived));
            well += 1;
        } else {
            assert!(
                !report.works(),
                "{:?}\n{:?}\n{key:?}\n{:?}",
                report.findings,
                matrix,
                report.walks
            );
            ill += 1;
        }
    }
    assert!(well > 300 && ill > 300, "{well} well, {ill} ill");
}
