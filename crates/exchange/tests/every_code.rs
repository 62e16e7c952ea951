//! Every code that a reader gives has something small to read in which it appears, and the same
//! without the fault in which it does not.

use std::collections::BTreeSet;

use spinney_exchange::key_text;
use spinney_exchange::link::{Links, link};
use spinney_model::{Code, Finding};

#[path = "drawn/codes.rs"]
mod codes;
#[path = "drawn/table.rs"]
mod drawn;

use codes::OF_EXCHANGE;
use drawn::{table, with_characters};

/// What is read with the fault and without it.
type Pair = [fn() -> Vec<Finding>; 2];

const EACH: &[(Code, Pair)] = &[
    (Code::CellNotUnderstood, [|| of("stalk (mm)\n a | -3"), || of("stalk (mm)\n a | 3")]),
    (
        Code::CellNotPlain,
        [|| of("edge\n a | -\n b | wavy"), || of("edge\n a | smooth\n b | wavy")],
    ),
    (
        Code::QuotationNotClosed,
        [|| of("edge | lobes\n a | \"wavy | no\n b | smooth | no"), || of("edge\n a | wavy")],
    ),
    (Code::LettersSpoilt, [|| of("edge\n BÃ¤rlauch | wavy"), || of("edge\n Bärlauch | wavy")]),
    (
        Code::NoHeadings,
        [
            || table("a | wavy | no\n b | wavy | no\n c | smooth | yes").findings,
            || of("edge | lobes\n a | wavy | no\n b | wavy | no\n c | smooth | yes"),
        ],
    ),
    (
        Code::Swapped,
        [
            || {
                let rows = "what | hazel | lime | ivy\n edge | toothed | toothed | smooth\n \
                            stalk length | 6-14 mm | 30-50 mm | 20-60 mm";
                table(rows).findings
            },
            || of("edge | stalk\n a | wavy | 6 mm\n b | wavy | 30 mm\n c | smooth | 20 mm"),
        ],
    ),
    (Code::KindTwice, [|| of("edge\n a | wavy\n a | smooth"), || of("edge\n a | wavy")]),
    (Code::HeadingTwice, [|| of("edge | edge\n a | x | y"), || of("edge | feel\n a | x | y")]),
    (Code::LeftOut, [|| of("edge\n a | wavy\n | x"), || of("edge\n a | wavy")]),
    (
        Code::StatesAlike,
        [|| of("edge\n a | toothed\n b | tooted"), || of("edge\n a | toothed\n b | smooth")],
    ),
    (Code::Assumed, [|| of("stalk length\n a | 3-5"), || of("stalk length (mm)\n a | 3-5")]),
    (Code::SheetDisagrees, [|| sheet("shape |"), || sheet("edge |")]),
    (Code::GovernedButPresent, [|| sheet("teeth | edge = toothed"), || sheet("teeth |")]),
    (Code::LineNotUnderstood, [|| text("No key."), || text(GOOD)]),
    (Code::LeadTooMany, [|| text("1 Wavy … a\n- Smooth … b\n- Red … a"), || text(GOOD)]),
    (Code::NameNotSure, [|| text("1. Wavy? Yes → hazle, No → b"), || text(GOOD)]),
    (Code::NameUnknown, [|| text("1. Wavy? Yes → oak, No → b"), || text(GOOD)]),
    (Code::NotLinked, [|| linked("Does it smell nice?"), || linked("Is the edge wavy?")]),
    (Code::LinkNotSure, [|| linked("Is it longer than 5 cm?"), || linked("Is the edge wavy?")]),
    (Code::LinksNotUnderstood, [|| links("hello"), || links("question 1: edge = wavy")]),
];

const GOOD: &str = "1. Is the edge wavy? Yes → hazel, No → b";

/// Invented.
const HEDGE: &str = "kind | edge | stalk length (mm) | blade length (mm)
    hazel | wavy | 2-4 | 20-30\n a | wavy | 5-6 | 40-60\n b | smooth | 9-10 | 70-90";

fn of(rest: &str) -> Vec<Finding> {
    table(&format!("kind | {rest}")).findings
}

fn sheet(row: &str) -> Vec<Finding> {
    let characters = format!("character | applies when\n {row}");
    with_characters(
        "kind | edge | teeth\n a | wavy | sharp\n b | toothed | blunt",
        Some(&characters),
    )
    .findings
}

fn text(key: &str) -> Vec<Finding> {
    key_text::read(key, &table(HEDGE).matrix, &Links::default()).findings
}

fn linked(question: &str) -> Vec<Finding> {
    let (matrix, links) = (table(HEDGE).matrix, Links::default());
    let mut read = key_text::read(&format!("1. {question} Yes → a, No → b"), &matrix, &links);
    assert_eq!(read.findings, [], "{question}");
    link(&mut read.key, &matrix, &links).findings
}

fn links(line: &str) -> Vec<Finding> {
    Links::read(line, &table(HEDGE).matrix).1
}

#[test]
fn each_code_is_found_where_its_fault_is_and_not_without_it() {
    for (code, [broken, sound]) in EACH {
        let [broken, sound] = [broken(), sound()];
        let in_it = |found: &[Finding]| found.iter().any(|finding| finding.code == *code);
        assert!(in_it(&broken), "{code:?}: {broken:#?}");
        assert!(!in_it(&sound), "{code:?}: {sound:#?}");
    }
}

#[test]
fn no_code_of_the_readers_is_left_out() {
    let each: BTreeSet<Code> = EACH.iter().map(|(code, _)| *code).collect();
    assert_eq!(each, OF_EXCHANGE.iter().copied().collect());
}
