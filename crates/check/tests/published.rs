//! Against figures worked out elsewhere: M1 and a printed key of oaks (`docs/TRADE.md`, "Check
//! values").
//!
//! M1's figures were found there by enumerating all 8,410 of its keys; they are no measured
//! data. The oaks' key is an encyclopaedia's example of a single-access key, written down from
//! memory, so its wording is not the source's to the letter.

use spinney_check::{Settings, check, table};
use spinney_model::{Code, Fact, Finding, OfTable, Share};

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{codes, key, matrix};

const M1: &str = "
    C: yes, no
    O: yes, no
    L: yes, no
    T: yes, no
    P: yes, no
    H: yes, no
    S: yes, no
    ash            | yes | yes | no  | yes | no  | no  | no
    rowan          | yes | no  | no  | yes | no  | no  | no
    horse chestnut | yes | yes | no  | yes | yes | no  | no
    sycamore       | no  | yes | yes | yes | yes | yes | no
    field maple    | no  | yes | yes | no  | yes | yes | no
    oak            | no  | no  | yes | no  | no  | no  | no
    beech          | no  | no  | no  | no  | no  | no  | no
    hornbeam       | no  | no  | no  | yes | no  | no  | no
    lime           | no  | no  | no  | yes | no  | yes | no
    holly          | no  | no  | no  | no  | no  | no  | yes
";

/// Laid out by hand: six kinds under T and four beside it, each part split as evenly as can be.
const M1_KEY: &str = "
    1. Is it toothed? [T = yes] -> 2 / 7
    2. Is it compound? [C = yes] -> 3 / 5
    3. Are the leaves opposite? [O = yes] -> 4 / rowan
    4. Do the leaflets come from one point? [P = yes] -> horse chestnut / ash
    5. Are the leaves opposite? [O = yes] -> sycamore / 6
    6. Is the base like a heart? [H = yes] -> lime / hornbeam
    7. Is it lobed? [L = yes] -> 8 / 9
    8. Are the leaves opposite? [O = yes] -> field maple / oak
    9. Is it spiny? [S = yes] -> holly / beech
";

#[test]
fn a_best_key_to_m1_takes_34_steps() {
    let matrix = matrix(M1);
    let report = check(&matrix, &key(&matrix, M1_KEY), None, &Settings::default());
    assert_eq!(report.findings, []);
    let effort = report.effort.unwrap();
    assert_eq!(effort.total, Share::from_integer(34));
    assert_eq!(effort.mean_questions, Share::new(34, 10));
    assert_eq!(effort.longest, 4);
}

#[test]
fn m1_has_the_eight_fragile_pairs_of_its_page_and_no_others() {
    let hard: String = M1.replace("yes, no", "yes, no; hard");
    let settings = Settings { pairs_named: 99, ..Settings::default() };
    let found = table(&matrix(&hard), &settings);
    let mut pairs: Vec<String> = found
        .iter()
        .map(|finding: &Finding| {
            let Fact::Table(OfTable::FragilePair { about, .. }) = &finding.fact else {
                panic!("{finding:?}");
            };
            format!("{} {about}", finding.place)
        })
        .collect();
    pairs.sort();
    assert_eq!(
        pairs,
        [
            "ash, horse chestnut P",
            "ash, rowan O",
            "beech, holly S",
            "beech, hornbeam T",
            "hornbeam, lime H",
            "oak, beech L",
            "rowan, hornbeam C",
            "sycamore, field maple T",
        ]
    );
    assert_eq!(table(&matrix(&hard), &Settings::default()).len(), 3, "the worst three");
    assert_eq!(table(&matrix(M1), &settings), [], "easy characters hang nobody");
}

#[test]
fn holly_that_loses_its_spines_is_never_parted_from_beech() {
    let varies = M1.replace(
        "no  | no  | no  | no  | no  | no  | yes",
        "no | no | no | no | no | no | yes or no",
    );
    let found = table(&matrix(&varies), &Settings::default());
    assert_eq!(codes(&found), [Code::NotSeparable]);
    assert_eq!(found[0].place.to_string(), "beech, holly");
}

const OAKS: &str = "
    any: yes, no
    live oak | ?
    dwarf live oak | ?
    willow oak | ?
    shingle oak | ?
    blackjack oak | ?
    red oak | ?
    white oak | ?
    swamp chestnut oak | ?
";

const OAKS_KEY: &str = "
    1. Leaves usually without teeth or lobes | Leaves usually with teeth or lobes [] -> 2 / 5
    2. Leaves evergreen | Leaves not evergreen [] -> 3 / 4
    3. Mature plant a large tree | Mature plant a small shrub [] -> live oak / dwarf live oak
    4. Leaf 4-6 times as long as broad | Leaf 2-3 times as long as broad [] -> willow oak / shingle oak
    5. Lobes or teeth bristle-tipped | Lobes or teeth rounded [] -> 6 / 7
    6. Leaves mostly with 3 lobes | Leaves mostly with 7-9 lobes [] -> blackjack oak / red oak
    7. Leaves with 5-9 deep lobes | Leaves with 21-27 shallow lobes [] -> white oak / swamp chestnut oak
";

#[test]
fn the_printed_oaks_are_whole_as_a_tree_and_use_vague_words_four_times() {
    let matrix = matrix(OAKS);
    let report = check(&matrix, &key(&matrix, OAKS_KEY), None, &Settings::default());
    let count = |code| report.findings.iter().filter(|finding| finding.code == code).count();
    assert_eq!(count(Code::VagueWord), 4);
    assert!(!report.broken_as_a_tree());
    // Large tree or small shrub: twice a bare comparative. A first lead says "without".
    assert_eq!(count(Code::BareComparative), 2);
    assert_eq!(count(Code::Negative), 1);
    assert_eq!(report.findings.len(), 7, "{:#?}", report.findings);
    assert_eq!((report.checked, report.questions), (0, 7));
    assert!(!report.works(), "nothing was checked, so nothing is said to work");
    assert_eq!(report.effort, None);
    assert!(report.walks.iter().all(|walk| walk.arrived && walk.steps.len() == 3));
}
