//! The faults of the lesson are faults: for each that the press plants in a good key, the second
//! opinion has a finding of that name which the good key has not. The press knows nothing of it.

use std::fs;
use std::path::Path;

use spinney_check::{Settings, check};
use spinney_exchange::table::{self, Source, Sources};
use spinney_model::{Code, Fact, Finding, Key, Matrix, OfEnds, OfTree, Wishes};
use spinney_press::lessons::planted::{Fault, faults, planted};
use spinney_voice::{Tongue, wording};

const TABLES: [(&str, &str); 4] = [
    ("hedge_walk", "table.csv"),
    ("hedge_walk", "table_with_spine.csv"),
    ("pond_tray", "table.csv"),
    ("pasta_shapes", "table.csv"),
];

fn read(outing: &str, name: &str) -> Matrix {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios").join(outing);
    let source = |name: &str| Source {
        name: name.to_owned(),
        bytes: fs::read(folder.join(name)).expect("the outing has this file"),
    };
    let sources = Sources {
        table: source(name),
        characters: Some(source(&name.replace("table", "characters"))),
        kinds: Some(source("kinds.csv")),
        about: Some(source("about.csv")),
    };
    table::read(&sources, &table::Settings::default()).expect("the table can be read").matrix
}

fn best(matrix: &Matrix) -> Key {
    let mut search = spinney_build::Search::new(matrix, &Wishes::default());
    search.step(spinney_build::Budget::default().heaps);
    let mut built = search.finish();
    wording::put_words(Tongue::of_terminal(), &mut built.key, matrix);
    built.key
}

fn findings(matrix: &Matrix, key: &Key) -> Vec<Finding> {
    check(matrix, key, None, &Settings::default()).findings
}

/// Whether a finding names this fault, and not merely one of its kind.
fn names(matrix: &Matrix, fault: &Fault, finding: &Finding) -> bool {
    match (fault, &finding.fact) {
        (Fault::NumberMissing { question, instead, .. }, Fact::Tree(fact)) => {
            matches!(fact, OfTree::NumberMissing { to, from, .. }
                if to == instead && from.iter().any(|step| step.couplet == *question))
        }
        (Fault::Lost { kind, .. }, Fact::Ends(OfEnds::NeverComesOut { kind: named, .. })) => {
            *named == matrix.taxon(*kind).name
        }
        (Fault::Swapped { question }, Fact::Ends(OfEnds::WrongPlace { question: at, .. })) => {
            at == question
        }
        _ => false,
    }
}

fn code(fault: &Fault) -> Code {
    match fault {
        Fault::NumberMissing { .. } => Code::NumberMissing,
        Fault::Lost { .. } => Code::NeverComesOut,
        Fault::Swapped { .. } => Code::WrongPlace,
    }
}

#[test]
fn each_planted_fault_is_found_by_its_name_and_the_good_key_has_none() {
    for (outing, name) in TABLES {
        let matrix = read(outing, name);
        let key = best(&matrix);
        let three = faults(&key).unwrap_or_else(|| panic!("{outing}: too few questions"));
        let good = findings(&matrix, &key);
        let all = findings(&matrix, &planted(&key, &three));
        for fault in &three {
            let (alone, at) = (findings(&matrix, &fault.planted_in(&key)), code(fault));
            assert!(!good.iter().any(|it| it.code == at), "{outing}: the good key has {at:?}");
            let by_name = |findings: &[Finding]| {
                findings.iter().any(|it| it.code == at && names(&matrix, fault, it))
            };
            assert!(by_name(&alone), "{outing}, {fault:?} alone: {alone:#?}");
            assert!(by_name(&all), "{outing}, {fault:?} with the others: {all:#?}");
        }
        let codes: std::collections::BTreeSet<_> =
            three.iter().map(code).map(|it| it.text()).collect();
        assert_eq!(codes.len(), 3, "{outing}: one of each");
    }
}

#[test]
fn a_key_too_small_to_hide_three_faults_gets_none() {
    let matrix = read("pasta_shapes", "table.csv");
    let mut key = best(&matrix);
    key.couplets.truncate(2);
    assert_eq!(faults(&key), None);
    assert_eq!(faults(&Key::default()), None);
}
