//! Seeded tables with what is built of them: the key, what it costs and why, other keys as good,
//! and the second opinion on each, also where the key was broken.

use spinney_build::{Budget, Progress, Revising, Search, forgive, revise};
use spinney_check::{Settings, check, table};
use spinney_fixtures::approved::brief;
use spinney_fixtures::{drawn, seeded};
use spinney_model::{
    Ask, Asked, CharacterIx, Destination, Early, Finding, Goal, Kept, Key, Matrix, SeenOn,
    TaxonIx, Wishes,
};

use crate::approved;

fn ask(ask: &Ask) -> String {
    let yes = match &ask.yes {
        Asked::States(states) => {
            format!(
                "= {}",
                states.iter().map(|ix| ix.0.to_string()).collect::<Vec<_>>().join("|")
            )
        }
        Asked::AtLeast(at) => format!(">= {at}"),
        Asked::Below(at) => format!("< {at}"),
    };
    format!("c{} {yes}", ask.character.0)
}

fn end(destination: &Destination) -> String {
    match destination {
        Destination::Couplet(number) => number.to_string(),
        Destination::Missing => "-".to_owned(),
        Destination::End(end) => {
            format!("{:?}", end.taxa.iter().map(|ix| ix.0).collect::<Vec<_>>())
        }
    }
}

/// A key in a line: `1 c0 = 1 -> 2 / [3]; …`.
fn key(key: &Key) -> String {
    let couplet = |couplet: &spinney_model::Couplet| {
        let ask = couplet.ask.as_ref().map_or("nothing".to_owned(), ask);
        let kept = if couplet.kept { " kept" } else { "" };
        let (yes, no) = (end(&couplet.yes), end(&couplet.no));
        let back = couplet.back.map_or(String::new(), |back| format!("({back})"));
        format!("{}{back} {ask}{kept} -> {yes} / {no}", couplet.number)
    };
    key.couplets.iter().map(couplet).collect::<Vec<_>>().join("; ")
}

/// Everything that a search says.
fn built(matrix: &Matrix, wishes: &Wishes, heaps: u64) -> (Vec<String>, Key) {
    let mut lines = Vec::new();
    let mut search = Search::new(matrix, wishes);
    let mut steps = Vec::new();
    for _ in 0..4 {
        match search.step(heaps / 4) {
            Progress::Done => break,
            progress => steps.push(format!("{progress:?}")),
        }
    }
    let built = search.finish();
    let claim = &built.claim;
    lines.push(format!("  {}", brief(&key(&built.key), 300)));
    lines.push(format!(
        "  total {} bound {} questions {} longest {} {:?} heaps {} {}",
        claim.total,
        claim.lower_bound,
        claim.mean_questions,
        claim.longest,
        claim.stopped,
        claim.heaps,
        brief(&steps.join(" "), 160)
    ));
    let more = format!(
        "{:?} {:?} {:?} {:?} {:?} {:?}",
        claim.kept, claim.reached, claim.prices, claim.within, claim.touching, built.refused
    );
    lines.push(format!("  {}", brief(&more, 200)));
    lines.push(format!("  proof {}", brief(&format!("{:?}", claim.certificate), 120)));
    let budget = Budget { heaps };
    let reasons = search.explain(&built.key, budget);
    lines.push(format!("  why {}", brief(&format!("{reasons:?}"), 160)));
    let looks = search.second_looks(&built.key);
    lines.push(format!("  looks {}", brief(&format!("{looks:?}"), 100)));
    let report = check(matrix, &built.key, Some(claim), &Settings::default());
    lines.extend(opinion(&report));
    (lines, built.key)
}

fn found(findings: &[Finding]) -> Vec<String> {
    let line = |finding: &Finding| {
        format!(
            "    {} {}: {}",
            finding.code.text(),
            finding.place,
            brief(&format!("{:?}", finding.fact), 200)
        )
    };
    findings.iter().map(line).collect()
}

fn opinion(report: &spinney_check::Report) -> Vec<String> {
    let mut lines = vec![
        format!(
            "  checked {} of {}, {:?}, unfinished {:?}, {}, left out {}",
            report.checked,
            report.questions,
            report.effort,
            report.unfinished,
            brief(&format!("{:?}", report.proof), 100),
            report.walks_left_out,
        ),
        format!("  walks {}", brief(&format!("{:?}", report.walks), 60)),
        format!("  together {}", brief(&format!("{:?}", report.left_together), 120)),
    ];
    lines.extend(found(&report.findings));
    lines
}

/// The same key with faults, one after the other.
fn broken(key: &Key) -> Vec<(&'static str, Key)> {
    let mut all = Vec::new();
    let Some(last) = key.couplets.len().checked_sub(1) else { return all };
    let mut with = |name, change: &dyn Fn(&mut Key)| {
        let mut key = key.clone();
        change(&mut key);
        all.push((name, key));
    };
    with("answers exchanged", &|key| {
        let couplet = &mut key.couplets[0];
        std::mem::swap(&mut couplet.yes, &mut couplet.no);
    });
    with("nothing written", &|key| key.couplets[last].yes = Destination::Missing);
    with("in a circle", &|key| key.couplets[last].no = Destination::Couplet(1));
    with("no such number", &|key| key.couplets[0].no = Destination::Couplet(99));
    with("without a question", &|key| key.couplets[0].ask = None);
    with("another question", &|key| {
        let ask = key.couplets[last].ask.clone();
        key.couplets[0].ask = ask;
    });
    all
}

fn wishes(at: u64, matrix: &Matrix) -> Wishes {
    let mut wishes = Wishes::default();
    let first = CharacterIx(0);
    match at % 8 {
        1 => wishes.goals = vec![Goal::ShortestLongestPath, Goal::LeastEffort],
        2 => wishes.goals = vec![Goal::FewestWords, Goal::FewestRulers],
        3 => wishes.never = [first].into(),
        4 => wishes.order = matrix.character_indices().take(2).collect(),
        5 => wishes.early = vec![Early::Part(TaxonIx(0), TaxonIx(1)), Early::Leave(TaxonIx(1))],
        6 => wishes.hand = Some(SeenOn::Leaf),
        7 => wishes.goals = vec![Goal::EvenTeaching, Goal::MostRightEnds],
        _ => wishes.allow_touch = true,
    }
    if at % 5 == 3 {
        let mut search = Search::new(matrix, &Wishes::default());
        search.step(2_000);
        let key = search.finish().key;
        if let Some(ask) = key.couplets.last().and_then(|last| last.ask.clone()) {
            Kept::add(&mut wishes.kept, ask, None);
        }
    }
    wishes
}

#[test]
fn approved_keys_of_small_awkward_tables() {
    let mut all = Vec::new();
    for seed in 0..40 {
        let matrix = seeded::awkward_wide(seed);
        all.push(format!("awkward {seed}"));
        all.extend(found(&table(&matrix, &Settings::default())));
        all.extend(built(&matrix, &wishes(seed, &matrix), 4_000).0);
    }
    approved("keys_of_small_tables.txt", &all);
}

#[test]
fn approved_keys_of_larger_tables() {
    let mut all = Vec::new();
    let tables = [
        ("m1", drawn::m1()),
        ("m2", drawn::m2()),
        ("comb", drawn::comb(7)),
        ("digits", drawn::digits(3)),
        ("plain", seeded::plain(3, 14, 8, 20, 10)),
        ("skewed", seeded::skewed(4, 16, 9, 20, 10)),
        ("binary", seeded::binary(5, 12, 9, 15, 5)),
        ("evening", seeded::evening(6)),
        ("priced", seeded::priced(7, &seeded::plain(7, 10, 8, 10, 0), true, true)),
    ];
    for (at, (name, matrix)) in (0..).zip(tables) {
        all.push(name.to_owned());
        all.extend(built(&matrix, &Wishes::default(), 1_500).0);
        all.extend(built(&matrix, &wishes(at, &matrix), 1_500).0);
    }
    approved("keys_of_larger_tables.txt", &all);
}

#[test]
fn approved_opinions_on_broken_keys() {
    let mut all = Vec::new();
    for seed in 100..116 {
        let matrix = seeded::awkward_wide(seed);
        let (_, key) = built(&matrix, &Wishes::default(), 1_000);
        for (name, key) in broken(&key) {
            all.push(format!("awkward {seed}, {name}"));
            let settings = Settings { pupils_wrote_it: seed % 2 == 0, ..Settings::default() };
            all.extend(opinion(&check(&matrix, &key, None, &settings)));
        }
    }
    approved("broken_keys.txt", &all);
}

#[test]
fn approved_further_keys() {
    let mut all = Vec::new();
    for seed in 200..212 {
        let matrix = seeded::awkward_wide(seed);
        let other = seeded::prickly(&matrix, seed);
        let budget = Budget { heaps: 600 };
        all.push(format!("awkward {seed}"));
        let best = Search::new(&matrix, &Wishes::default()).best_keys(3, budget);
        for (best, total) in &best.keys {
            all.push(format!("  {total}: {}", brief(&key(best), 200)));
        }
        all.push(format!("  {:?} sure {}", best.as_good, best.sure));
        let forgiving = forgive(&matrix, &Wishes::default(), 2, budget);
        all.push(format!("  forgiving {}", brief(&format!("{forgiving:?}"), 200)));
        let (_, old) = built(&matrix, &Wishes::default(), 600);
        let settings = Revising { budget, ..Revising::default() };
        let revised = revise(&other, &old, &Wishes::default(), settings);
        all.push(format!("  revised {}", brief(&format!("{revised:?}"), 200)));
    }
    approved("further_keys.txt", &all);
}
