//! Every code that a reader gives has something small to read in which it appears, saying as data
//! what the fault is, and the same without the fault in which it does not.

use std::collections::BTreeSet;

use spinney_exchange::key_text;
use spinney_exchange::link::{Links, link};
use spinney_model::{
    CellTrouble, Code, Fact, Finding, LinksLine, OfCell, OfColumn, OfKeyRead, OfLink, OfLinks,
    OfSheet, OneTooMany, ReadAs, RowOf, Unit,
};

#[path = "drawn/codes.rs"]
mod codes;
#[path = "drawn/table.rs"]
mod drawn;

use codes::OF_EXCHANGE;
use drawn::{at, odd, owned, read_as, table, typed, with_characters};

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

/// What is told of the fault.
fn named(code: Code) -> Fact {
    let name = str::to_owned;
    match code {
        Code::CellNotUnderstood => {
            odd(typed("hedge.csv!B2", "a", "stalk", "-3"), CellTrouble::BelowNothing)
        }
        Code::CellNotPlain => read_as(typed("hedge.csv!B2", "a", "edge", "-"), ReadAs::Unknown),
        Code::QuotationNotClosed => {
            OfSheet::QuotationNotClosed { at: at("hedge.csv!B2") }.into()
        }
        Code::LettersSpoilt => {
            let [text, right] = owned(["BÃ¤rlauch", "Bärlauch"]);
            OfCell::LettersSpoilt { text, right, at: at("hedge.csv!A2") }.into()
        }
        Code::NoHeadings => {
            let says = owned(["a", "wavy", "no"]).to_vec();
            OfSheet::NoHeadings { says, at: at("hedge.csv!A1") }.into()
        }
        Code::Swapped => OfSheet::Swapped.into(),
        Code::KindTwice => OfSheet::KindTwice {
            names: owned(["a", "a"]),
            called: name("a (2)"),
            differ: Some(owned(["wavy", "smooth"])),
            first: at("hedge.csv!A2"),
            second: at("hedge.csv!A3"),
        }
        .into(),
        Code::HeadingTwice => {
            let [heading, called] = owned(["edge", "edge (2)"]);
            OfColumn::HeadingTwice { heading, called, at: at("hedge.csv!C1") }.into()
        }
        Code::LeftOut => OfSheet::Nameless { at: at("hedge.csv!A3") }.into(),
        Code::StatesAlike => {
            let (states, about) = (owned(["toothed", "tooted"]), name("edge"));
            OfCell::Alike { states, about, at: Some(at("hedge.csv!B3")) }.into()
        }
        Code::Assumed => {
            let (about, unit) = (name("stalk length"), Unit::Millimetres);
            OfColumn::UnitAssumed { about, unit, at: at("hedge.csv!B2") }.into()
        }
        Code::SheetDisagrees => {
            let (of, name, at) = (RowOf::Character, name("shape"), at("characters.csv!A2"));
            OfSheet::NotInTable { of, name, at }.into()
        }
        Code::GovernedButPresent => {
            let [kind, about, above] = owned(["a", "teeth", "edge"]);
            OfCell::GovernedButPresent { kind, about, above, at: at("hedge.csv!C2") }.into()
        }
        Code::LineNotUnderstood => OfKeyRead::NoNumberedQuestion.into(),
        Code::LeadTooMany => {
            OfKeyRead::LeadTooMany { question: 1, what: OneTooMany::ThirdLead, line: 3 }.into()
        }
        Code::NameNotSure => {
            let (written, near) = (name("hazle"), vec![name("hazel")]);
            OfKeyRead::NameNotSure { question: 1, written, near }.into()
        }
        Code::NameUnknown => {
            OfKeyRead::NameUnknown { question: 1, written: name("oak") }.into()
        }
        Code::NotLinked => OfLink::Nothing { question: 1, example: Some(name("edge")) }.into(),
        Code::LinkNotSure => OfLink::MayAsk {
            question: 1,
            meanings: vec![name("stalk length >= 50 mm"), name("blade length >= 50 mm")],
            denied: false,
            unit: None,
            line: name("question 1: stalk length >= 50 mm"),
        }
        .into(),
        Code::LinksNotUnderstood => {
            OfLinks::Line { line: 1, why: LinksLine::Unread { text: name("hello") } }.into()
        }
        other => panic!("{other:?} is no code of the readers"),
    }
}

#[test]
fn each_code_says_what_its_fault_is() {
    for (code, [broken, _]) in EACH {
        let found = broken();
        let told = found.iter().filter(|finding| finding.code == *code);
        let facts: Vec<&Fact> = told.map(|finding| &finding.fact).collect();
        assert_eq!(facts, [&named(*code)]);
    }
}

#[test]
fn no_code_of_the_readers_is_left_out() {
    let each: BTreeSet<Code> = EACH.iter().map(|(code, _)| *code).collect();
    assert_eq!(each, OF_EXCHANGE.iter().copied().collect());
}
