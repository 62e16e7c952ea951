//! Keys as people write them, read and written again.

use std::cell::Cell;
use std::sync::LazyLock;

use spinney_fixtures::choices::{Choices, holds, same};
use spinney_model::{
    Code, Couplet, Destination, End, Fact, Finding, InSecond, Key, LinksLine, Matrix,
    OfKeyRead, OfLinks, Place, Scene, Taxon, TaxonIx, Wording,
};

use super::{KeyRead, read, write};
use crate::link::hedge::table;
use crate::link::{Link, Links};

static TABLE: LazyLock<Matrix> = LazyLock::new(table);

fn reading(text: &str) -> KeyRead {
    read(text, &TABLE, &Links::default())
}

/// A key as one line a couplet: `2(1) question? | yes | no`.
fn drawn(key: &Key, matrix: &Matrix) -> Vec<String> {
    let end = |destination: &Destination| match destination {
        Destination::Couplet(number) => number.to_string(),
        Destination::Missing => "-".to_owned(),
        Destination::End(end) => {
            let known = end.taxa.iter().map(|ix| matrix.taxon(*ix).name.clone());
            let all = known.chain(end.unrecognised.iter().map(|name| format!("{name}?")));
            all.collect::<Vec<_>>().join("+")
        }
    };
    let line = |couplet: &Couplet| {
        let back = couplet.back.map_or(String::new(), |back| format!("({back})"));
        let words = match &couplet.wording {
            Wording::Question(text) => text.clone(),
            Wording::Leads { yes, no } => format!("{yes} / {no}"),
        };
        let (yes, no) = (end(&couplet.yes), end(&couplet.no));
        format!("{}{back} {words} | {yes} | {no}", couplet.number)
    };
    key.couplets.iter().map(line).collect()
}

/// Reads a text without any finding and compares the key.
fn reads(text: &str, wanted: &[&str]) {
    let read = reading(text);
    assert_eq!(drawn(&read.key, &table()), wanted, "{text}");
    assert_eq!(read.findings, [], "{text}");
    again(&read.key);
}

/// Whatever was read is written and read again as the same key.
fn again(key: &Key) {
    is_same_again(key).unwrap_or_else(|wrong| panic!("{wrong}"));
}

fn is_same_again(key: &Key) -> Result<(), String> {
    let text = write(key, &TABLE);
    let back = reading(&text).key;
    same(&unplaced(&back), &unplaced(key), || text.clone())?;
    same(&write(&back, &TABLE), &text, || "the second text differs".to_owned())
}

fn unplaced(key: &Key) -> Key {
    let mut key = key.clone();
    for couplet in &mut key.couplets {
        couplet.line = None;
    }
    key
}

fn codes(findings: &[Finding]) -> Vec<(Code, Place)> {
    findings.iter().map(|finding| (finding.code, finding.place.clone())).collect()
}

#[test]
fn numbered_questions_on_one_line() {
    let wanted = &[
        "1 Is the leaf in one piece? | 2 | rowan",
        "2 Is the edge toothed? | hazel | dogwood",
    ];
    for (yes, no) in [
        ("Yes → 2, No → rowan", "Yes → hazel, No → dogwood"),
        ("Yes -> 2; No -> rowan.", "yes -> hazel; no -> dogwood."),
        ("Yes => 2 / No => rowan", "YES ⇒ hazel / NO ⇒ dogwood"),
        ("Yes: go to 2, No: rowan", "Yes: the hazel. No: a dogwood."),
        ("Yes 2, No rowan", "Yes hazel, No dogwood"),
        ("(yes → 2; no → rowan)", "(yes → hazel; no → dogwood)"),
        ("If yes, go to 2. If not, rowan", "If yes then hazel. If no then dogwood"),
        ("yes ..... 2 no ..... rowan", "yes … hazel no … dogwood"),
        ("Yes - 2, No - rowan", "Yes – hazel, No – dogwood"),
        ("Yes = 2 | No = rowan", "Y: hazel N: dogwood"),
    ] {
        reads(
            &format!("1. Is the leaf in one piece? {yes}\n2. Is the edge toothed? {no}\n"),
            wanted,
        );
    }
}

#[test]
fn numbered_questions_on_several_lines() {
    let wanted = &[
        "1 Is the leaf in one piece? | 2 | rowan",
        "2 Is the edge toothed? | hazel | dogwood",
    ];
    for text in [
        "1. Is the leaf in one piece?\n   Yes: go to 2\n   No - rowan\n\n2. Is the edge toothed?\n   yes ..... hazel\n   no ..... dogwood\n",
        "\u{feff}Our hedge key\r\nOctober, class 4\r\n\r\n1) Is the leaf in one piece?\r\n\tYes\t2\r\n\tNo\trowan\r\n2) Is the edge toothed?\r\n\tYes\thazel\r\n\tNo\tdogwood\r\n",
        "Q1: Is the leaf in\n one piece?\n- yes -> go to 2\n- no -> rowan\nQ2: Is the edge toothed?\n* Yes, it has teeth … hazel\n* No, it has none … dogwood",
        // The number of a chapter is none of a question.
        "5. Our hedge key\n\n1. Is the leaf in one piece?\nyes 2\nno rowan\n2. Is the edge toothed?\nyes hazel\nno dogwood\n",
        "12 kinds on Mill Lane\n2026\n1 Is the leaf in one piece?\nyes 2\nno rowan\n2 Is the edge toothed?\nyes hazel\nno dogwood\n\nMade by the owls.\n",
    ] {
        reads(text, wanted);
    }
}

#[test]
fn paired_leads_in_every_handbook_form() {
    let wanted = &[
        "1 Leaf in one piece / Leaf made of leaflets | 2 | rowan",
        "2(1) Edge toothed / Edge smooth | hazel | dogwood",
    ];
    for text in [
        "1 Leaf in one piece … 2\n- Leaf made of leaflets … rowan\n2(1) Edge toothed … hazel\n- Edge smooth … dogwood\n",
        "1a. Leaf in one piece .......... 2\n1b. Leaf made of leaflets ...... rowan\n2a(1). Edge toothed . . . . hazel\n2b. Edge smooth . . . . dogwood\n",
        "1 Leaf in one piece → 2\n1' Leaf made of leaflets → rowan\n2 (1) Edge toothed → hazel\n2' Edge smooth → dogwood\n",
        "1 Leaf in one piece ____ 2\n1 Leaf made of leaflets ____ rowan\n\n2. (1) Edge toothed ____ hazel\n2. Edge smooth ____ dogwood\n",
        "1 Leaf in one piece, go to 2\n– Leaf made of leaflets, rowan\n2 (from 1) Edge toothed: hazel\n– Edge smooth - dogwood\n",
        "1 Leaf in one piece 2\n— Leaf made of\n  leaflets . . rowan\n2(1) Edge toothed      hazel\n— Edge smooth      dogwood\n",
        "1\tLeaf in one piece\t2\n\tLeaf made of leaflets\trowan\n2(1)\tEdge toothed\thazel\n\tEdge smooth\tdogwood\n",
        // The first lead goes over two lines as well.
        "1 Leaf in\n  one piece … 2\n- Leaf made of leaflets … rowan\n2(1) Edge\n  toothed … hazel\n- Edge smooth … dogwood\n",
    ] {
        reads(text, wanted);
    }
}

#[test]
fn a_question_over_two_dashes_stands_before_both() {
    reads(
        "1. What is the edge like?\n - toothed … hazel\n - smooth … dogwood\n",
        &["1 What is the edge like? toothed / What is the edge like? smooth | hazel | dogwood"],
    );
}

#[test]
fn numbers_inside_leads_are_no_destinations() {
    reads(
        "1 Leaflets more than 4 … rowan\n- Leaflets with\n4 or fewer … bramble\n",
        &["1 Leaflets more than 4 / Leaflets with 4 or fewer | rowan | bramble"],
    );
    let read = reading("1 Leaflets more than 4\n- Leaflets 4 or fewer … bramble\n");
    assert_eq!(read.key.couplets[0].yes, Destination::Missing);
}

#[test]
fn answers_run_together_or_in_another_language_are_read() {
    let wanted = &[
        "1 Is the leaf in one piece? | 2 | rowan",
        "2 Is the edge toothed? | hazel | dogwood",
    ];
    for (yes, no) in [
        ("Y 2 N rowan", "Y hazel N dogwood"),
        ("y 2 n rowan.", "yes hazel no dogwood"),
        ("Y -> 2, N -> rowan", "Y → hazel, N → dogwood"),
        ("Ja → 2, Nein → rowan", "Ja: hazel; Nein: dogwood"),
        ("J 2 N rowan", "J → hazel, N → dogwood"),
        ("Oui → 2, Non → rowan", "oui hazel, non dogwood"),
        ("Ie → 2, Na → rowan", "Ie: hazel / Na: dogwood"),
    ] {
        reads(
            &format!("1. Is the leaf in one piece? {yes}\n2. Is the edge toothed? {no}\n"),
            wanted,
        );
    }
    reads(
        "1. Is the leaf in one piece?\n   Ja → 2\n   Nein → rowan\n2. Is the edge toothed?\n\
         - Ja, sie hat Zähne … hazel\n- Nein, keine … dogwood\n",
        wanted,
    );
    // A slip in a name is asked back in any language.
    let read = reading("1. Is it toothed? Ja → 2, Nein → Hasel\n");
    assert_eq!(codes(&read.findings), [(Code::NameNotSure, Place::Couplet(1))]);
    assert_eq!(drawn(&read.key, &table()), ["1 Is it toothed? | 2 | Hasel?"]);
}

#[test]
fn what_may_be_two_destinations_is_quoted_and_never_a_kind() {
    let read = reading("1. Is it toothed? Y 5 N gooseberry\n");
    assert_eq!(codes(&read.findings), [(Code::NameUnknown, Place::Couplet(1))]);
    for (text, quoted) in [
        ("1. Is it toothed? Yes → 5 ivy, No → hazel\n", "5 ivy"),
        ("1. Is it toothed? Ja 5 ivy, Nein → hazel\n", "5 ivy"),
        ("1. Is it toothed? Yes → gooseberry N ivy\n", "gooseberry N ivy"),
        ("1 Edge toothed → gooseberry nein 5\n- Edge smooth → hazel\n", "gooseberry nein 5"),
    ] {
        let read = reading(text);
        let codes = codes(&read.findings);
        assert!(codes.contains(&(Code::LineNotUnderstood, Place::Couplet(1))), "{codes:?}");
        let written = quoted.to_owned();
        let fact = OfKeyRead::LeadsNobodyKnowsWhere { question: 1, written };
        assert_eq!(read.findings[0].fact, fact.into());
        assert_eq!(read.key.couplets[0].yes, Destination::Missing, "{text}");
        again(&read.key);
    }
}

#[test]
fn ends_name_one_or_several_kinds() {
    for end in [
        "hazel or wych elm",
        "hazel / wych elm",
        "Wych-Elm, hazel",
        "a cobnut or the \
        wych  elm",
        "Corylus avellana and Wych elm",
        "hazel (Corylus avellana) or wych elm",
    ] {
        let read = reading(&format!("1. Is it toothed? Yes → {end}\n   No → dogwood\n"));
        let wanted = Destination::End(End::of([TaxonIx(0), TaxonIx(11)]));
        assert_eq!(read.key.couplets[0].yes, wanted, "{end}");
        assert_eq!(read.findings, [], "{end}");
    }
}

#[test]
fn a_name_spelt_a_little_differently_is_asked_back() {
    let matrix = table();
    for written in ["Hasel", "hazle", "hazels", "hazel tree"] {
        let text = format!("1. Is it toothed? Yes → {written}, No → dogwood");
        let read = reading(&text);
        assert_eq!(codes(&read.findings), [(Code::NameNotSure, Place::Couplet(1))]);
        let near = vec!["hazel".to_owned()];
        let fact = OfKeyRead::NameNotSure { question: 1, written: written.to_owned(), near };
        assert_eq!(read.findings[0].fact, fact.into());
        // The line that the remedy offers.
        let line = &format!("name {written} = hazel");
        let end = End { taxa: vec![], unrecognised: vec![written.to_owned()] };
        assert_eq!(read.key.couplets[0].yes, Destination::End(end));
        again(&read.key);

        let (links, findings) = Links::read(line, &matrix);
        assert_eq!(findings, []);
        let read = super::read(&text, &matrix, &links);
        assert_eq!(read.findings, []);
        assert_eq!(read.key.couplets[0].yes, Destination::End(End::of([TaxonIx(0)])));
    }
    let read = reading("1. Is it toothed? Yes → gooseberry, No → dogwood");
    assert_eq!(codes(&read.findings), [(Code::NameUnknown, Place::Couplet(1))]);
}

#[test]
fn lines_that_cannot_be_read_are_named() {
    let read = reading(
        "A title\n1. Is it toothed?\nYes → 2\nNo → dogwood\nask the teacher here\n2. Is it lobed? Yes → ivy, No → hazel\n",
    );
    assert_eq!(codes(&read.findings), [(Code::LineNotUnderstood, Place::Line(5))]);
    assert_eq!(read.key.couplets.len(), 2);
    let read = reading("There is no key in here.\n");
    assert_eq!(codes(&read.findings), [(Code::LineNotUnderstood, Place::Key)]);
}

/// Words between a question that is at its end and its answers are no part of the question.
#[test]
fn a_line_after_the_question_mark_is_not_taken_into_the_question() {
    let read = reading(
        "1. Is the leaf\n in one piece?\nLook at the twig.\nyes 2\nno rowan\n2. Is the edge toothed?\nyes hazel\nno dogwood\n",
    );
    assert_eq!(codes(&read.findings), [(Code::LineNotUnderstood, Place::Line(3))]);
    assert_eq!(
        drawn(&read.key, &TABLE),
        ["1 Is the leaf in one piece? | 2 | rowan", "2 Is the edge toothed? | hazel | dogwood"]
    );
}

/// Notes under a finished key are passed over, but not what would lead somebody somewhere.
#[test]
fn answers_under_a_finished_key_are_named() {
    let key = "1 Leaf in one piece … hazel\n- Leaf made of leaflets … rowan\n\n";
    for (under, wanted) in [
        ("Made by the owls.\n", vec![]),
        ("Yes: ivy. No: holly.\n", vec![(Code::LineNotUnderstood, Place::Line(4))]),
    ] {
        let read = reading(&format!("{key}{under}"));
        assert_eq!(codes(&read.findings), wanted, "{under}");
        let wanted = ["1 Leaf in one piece / Leaf made of leaflets | hazel | rowan"];
        assert_eq!(drawn(&read.key, &TABLE), wanted, "{under}");
    }
}

#[test]
fn a_third_lead_and_a_second_yes_are_findings() {
    for text in [
        "1 Leaf red … 2\n- Leaf green … hazel\n- Leaf blue … ivy\n2 Edge toothed … holly\n- Edge smooth … lime\n",
        "1a Leaf red … 2\n1b Leaf green … hazel\n1c Leaf blue … ivy\n2a Edge toothed … holly\n2b Edge smooth … lime\n",
        "1. Is it red? Yes → 2, No → hazel\nYes → ivy\n2. Is it toothed? Yes → holly, No → lime\n",
    ] {
        let read = reading(text);
        assert_eq!(codes(&read.findings), [(Code::LeadTooMany, Place::Couplet(1))], "{text}");
        assert_eq!(read.key.couplets.len(), 2, "{text}");
        assert_eq!(read.key.couplets[0].no, Destination::End(End::of([TaxonIx(0)])), "{text}");
    }
}

/// The very text, since people print it, mail it and keep it.
#[test]
fn a_key_is_written_just_so() {
    let key = reading(
        "1. Is it toothed? yes - 2, no - dogwood\n2 (1). Is it lobed? Yes ivy or holly / No hazel\n",
    );
    assert_eq!(
        write(&key.key, &TABLE),
        "1. Is it toothed?\n   Yes → 2\n   No → dogwood\n\n\
         2(1). Is it lobed?\n   Yes → ivy or holly\n   No → hazel\n\n"
    );
    let leads = reading(
        "1 Leaf red … 2\n- Leaf green … hazel\n2 (1) Edge toothed … holly\n- Edge smooth … lime\n",
    );
    assert_eq!(
        write(&leads.key, &TABLE),
        "1 Leaf red … 2\n- Leaf green … hazel\n\n2(1) Edge toothed … holly\n- Edge smooth … lime\n\n"
    );
}

/// An answer may stand on a line of its own with nothing behind it, and be talked round where the
/// question has no question mark.
#[test]
fn an_answer_alone_is_an_answer() {
    let alone = reading("1. Is it lobed?\nYes\nNo → hazel\n");
    assert_eq!(drawn(&alone.key, &TABLE), ["1 Is it lobed? | - | hazel"]);
    let other = reading("1. Is it lobed?\nYes → hazel\nNo\n");
    assert_eq!(drawn(&other.key, &TABLE), ["1 Is it lobed? | hazel | -"]);
    let round = reading("1. Lobed: yes → ivy\nNo, it has none … hazel\n");
    assert_eq!(drawn(&round.key, &TABLE), ["1 Lobed: | ivy | hazel"]);
}

#[test]
fn broken_keys_are_kept_as_they_stand() {
    let read = reading(
        "2. Is it red? Yes → 9, No →\n2. Is it toothed? Yes → holly, No → 2\n7. Is it blue?\n",
    );
    assert_eq!(
        drawn(&read.key, &table()),
        ["2 Is it red? | 9 | -", "2 Is it toothed? | holly | 2", "7 Is it blue? | - | -"]
    );
    let lines: Vec<_> = read.key.couplets.iter().map(|couplet| couplet.line).collect();
    assert_eq!(lines, [Some(1), Some(2), Some(3)]);
    again(&read.key);
}

#[test]
fn links_files_are_read_and_written() {
    let matrix = table();
    let text = "# ours\nquestion 3: edge = toothed or spiny\nquestion 4: stalk length >= 2.25 cm\n\
        Question 5: number of leaflets < 5\nquestion 6: feel = like paper\n\
        question 7: nothing in the table\nname Hasel = hazel\nname elm = wych elm or lime\n";
    let (links, findings) = Links::read(text, &matrix);
    assert_eq!(findings, []);
    assert_eq!(links.question(7), Some(&Link::Nothing));
    let written = links.write(&matrix);
    assert_eq!(Links::read(&written, &matrix), (links, vec![]), "{written}");
    assert!(written.contains("question 4: stalk length >= 22.5 mm\n"), "{written}");
}

#[test]
fn a_line_of_a_links_file_that_cannot_be_used_is_named() {
    let matrix = table();
    for bad in [
        "question three: edge = toothed",
        "question 3: edge",
        "question 3: colour = red",
        "question 3: edge = red",
        "question 3: lobes = lobed or unlobed",
        "question 3: edge >= 4",
        "question 3: number of leaflets >= 2.5",
        "question 3: number of leaflets >= 4 mm",
        "question 3: stalk length = 4 cm",
        "question 3: stalk length >= 4 g",
        "name Hasel",
        "name Hasel = gooseberry",
        "hello",
    ] {
        let (links, findings) = Links::read(&format!("# x\n{bad}\n"), &matrix);
        assert_eq!(codes(&findings), [(Code::LinksNotUnderstood, Place::Line(2))], "{bad}");
        assert_eq!(links, Links::default(), "{bad}");
    }
}

#[test]
fn a_threshold_may_be_said_in_words() {
    let matrix = table();
    for (line, same) in [
        ("stalk length > 2 mm", "stalk length >= 2 mm"),
        ("stalk length over 2 mm", "stalk length >= 2 mm"),
        ("stalk length = over 2 mm", "stalk length >= 2 mm"),
        ("stalk length is more than 2 mm", "stalk length >= 2 mm"),
        ("stalk length = at least 2 mm", "stalk length >= 2 mm"),
        ("stalk length more than 2 mm", "stalk length >= 2 mm"),
        ("stalk length = 2 mm or more", "stalk length >= 2 mm"),
        ("stalk length is under 3 cm", "stalk length < 30 mm"),
        ("stalk length <= 30 mm", "stalk length < 30 mm"),
        ("number of leaflets > 4", "number of leaflets >= 5"),
        ("number of leaflets = fewer than 5", "number of leaflets < 5"),
        ("number of leaflets = at most 4", "number of leaflets < 5"),
    ] {
        let (links, findings) = Links::read(&format!("question 5: {line}"), &matrix);
        assert_eq!(findings, [], "{line}");
        assert_eq!(links.write(&matrix), format!("question 5: {same}\n"), "{line}");
    }
}

#[test]
fn a_number_that_is_no_threshold_is_told_with_the_number_that_was_typed() {
    let matrix = table();
    for (line, write) in [
        ("stalk length = 12 mm", "stalk length >= 12 mm"),
        ("stalk length is 3 cm", "stalk length >= 30 mm"),
        ("number of leaflets = 7", "number of leaflets >= 7"),
    ] {
        let (_, findings) = Links::read(&format!("question 5: {line}"), &matrix);
        let [Finding { fact: Fact::Links(OfLinks::Line { why, .. }), .. }] = &findings[..]
        else {
            panic!("{line}: {findings:?}");
        };
        let LinksLine::Exactly { at_least, .. } = why else { panic!("{line}: {why:?}") };
        assert_eq!(*at_least, format!("question 5: {write}"), "{line}");
        let (_, again) = Links::read(&format!("question 5: {write}"), &matrix);
        assert_eq!(again, []);
    }
}

/// Pieces of which key texts are made, sense and nonsense.
const PIECES: &[&str] = &[
    "1",
    "2",
    "3(1)",
    "1a",
    "1b",
    "2'",
    ".",
    ")",
    ":",
    " ",
    " ",
    " ",
    "\n",
    "\n",
    "\n- ",
    "\n• ",
    "\t",
    "…",
    " .... ",
    " → ",
    "->",
    "=>",
    "go to ",
    "then ",
    "Yes",
    "yes ",
    "No",
    "no ",
    "If ",
    "?",
    "? ",
    "Is it big",
    "Is the leaf lobed? ",
    "leaf in one piece",
    "hazel",
    "Hasel",
    "ivy",
    " or ",
    "/",
    ", ",
    "wych elm",
    "rowan",
    "\"",
    "\"\"",
    "2",
    "99999999999",
    "4-6 cm",
    "(",
    ")",
    "—",
    "–",
    "_",
    "__",
    "é",
    "日本",
    "\u{feff}",
    "\r\n",
    "\u{a0}",
    "Question 4: ",
    "*",
    "**",
    "\n1. ",
    "\n2. ",
    "\n2 ",
    "\n2(1) leaf red",
    "\n1a ",
    "\n1b ",
    "\n3. Is it red? ",
    "\nYes → ",
    "\nNo: ",
    " … 2\n",
    " … hazel\n- ",
    "\n4 leaf ",
    "\nQ5: ",
    "\n5. \"",
    " yes 2",
    "; no: ",
    "#",
    "%",
    "'",
    "’",
    "it is",
    "a ",
    "the ",
    "not",
    "so ",
    "y",
    "n ",
    "Ja ",
    " nein → ",
    "Oui: ",
    "non ",
    "Y 2 N ivy",
    "5 ivy",
    "0",
    "-",
    ";",
    "|",
    "=",
];

fn scribble(choices: &mut Choices, pieces: usize) -> String {
    (0..choices.usize(..pieces)).map(|_| PIECES[choices.usize(..PIECES.len())]).collect()
}

#[test]
fn text_to_key_to_text_is_the_same_for_any_scribble() {
    let couplets = Cell::new(0);
    holds(3_000, |choices| {
        let text = scribble(choices, 60);
        let key = reading(&text).key;
        couplets.set(couplets.get() + key.couplets.len());
        is_same_again(&key)
    });
    let couplets = couplets.get();
    assert!(couplets > 2_000, "the scribbles hold only {couplets} couplets");
}

#[test]
fn a_key_with_any_words_is_written_so_that_it_reads_back() {
    let matrix = table();
    holds(2_000, |choices| {
        let count = choices.usize(1..5);
        let couplets = (0..count).map(|_| scribbled(choices, &matrix)).collect();
        is_same_again(&Key { couplets })
    });
}

/// One line of words without a break, as a wording is.
fn words(choices: &mut Choices) -> String {
    let text = scribble(choices, 8);
    text.replace('\u{feff}', "").split_whitespace().collect::<Vec<_>>().join(" ")
}

fn scribbled(choices: &mut Choices, matrix: &Matrix) -> Couplet {
    let destination = |choices: &mut Choices| match choices.u8(..4) {
        0 => Destination::Missing,
        1 => Destination::Couplet(choices.u32(..5)),
        2 => Destination::End(End::of([TaxonIx(choices.usize(..matrix.taxa().len()))])),
        _ => {
            let end = End { taxa: vec![TaxonIx(1)], unrecognised: vec!["go to 2".to_owned()] };
            Destination::End(end)
        }
    };
    let wording = if choices.bool() {
        Wording::Question(words(choices))
    } else {
        Wording::Leads { yes: words(choices), no: words(choices) }
    };
    Couplet {
        number: choices.u32(..5),
        back: choices.bool().then(|| choices.u32(..5)),
        wording,
        ask: None,
        yes: destination(choices),
        no: destination(choices),
        kept: false,
        line: None,
    }
}

#[test]
fn long_texts_of_one_piece_are_read_to_their_end() {
    let matrix = table();
    for piece in [
        "1 leaf … 2\n",
        "1. Is it lobed? Yes → 2, No → hazel\n",
        "yes no ",
        "yes → ",
        "a",
        ".",
        "- ",
        "\"",
        "go to ",
        "1\n",
        "1 with\n",
        "leaf ",
        "(1",
        "1. Yes → Hasle\n",
    ] {
        let text = format!("1. Is it {}", piece.repeat(100_000 / piece.len()));
        let mut read = read(&text, &matrix, &Links::default());
        crate::link::link(&mut read.key, &matrix, &Links::default());
        let (_, _) = Links::read(&text, &matrix);
        write(&read.key, &matrix);
    }
}

#[test]
fn links_files_of_scribbles_never_fail_and_write_back() {
    let matrix = table();
    let pieces = [
        "question ",
        "name ",
        "\nquestion 3: ",
        "\nquestion 5: edge = ",
        "toothed\n",
        "3",
        ":",
        " ",
        "edge",
        "form",
        "stalk length",
        "=",
        ">=",
        "<",
        "toothed",
        " or ",
        "one piece",
        "\"",
        "22.5",
        " mm",
        "cm",
        "hazel",
        "Hasel",
        "\n",
        "#",
        "number of leaflets",
        "5",
        ",",
        "/",
        " at least ",
        "nothing",
        "é",
        "\r",
    ];
    let read_lines = Cell::new(0);
    holds(5_000, |choices| {
        let text: String =
            (0..choices.usize(..40)).map(|_| pieces[choices.usize(..pieces.len())]).collect();
        let (links, _) = Links::read(&text, &matrix);
        read_lines.set(read_lines.get() + links.numbers().count());
        let written = links.write(&matrix);
        let show = || format!("{text}\n--\n{written}");
        same(&Links::read(&written, &matrix), &(links, vec![]), show)
    });
    let read_lines = read_lines.get();
    assert!(read_lines > 20, "only {read_lines} lines could be read");
}

/// The table of the hedge with a second language.
fn in_two_languages() -> Matrix {
    let table = table();
    let pair = |text: &str, second: &str| InSecond {
        text: text.to_owned(),
        second: second.to_owned(),
    };
    let scene = Scene {
        second_language: Some("Polski".to_owned()),
        second_questions: vec![pair("Is it hollow?", "Czy jest pusty w środku?")],
        ..table.scene().clone()
    };
    let second = |at: usize| match at {
        0 => "leszczyna".to_owned(),
        at => format!("gatunek {at}"),
    };
    let taxa = table
        .taxa()
        .iter()
        .enumerate()
        .map(|(at, taxon)| Taxon { second_name: Some(second(at)), ..taxon.clone() });
    let taxa = taxa.collect();
    table.with_taxa(taxa).expect("as many kinds").with_scene(scene)
}

#[test]
fn a_key_printed_in_two_languages_is_read_as_in_one() {
    let table = in_two_languages();
    let names: Vec<&str> = table.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
    let text = |second: bool| {
        let mut text = String::from("1. Is it hollow?\n");
        let beneath = |text: &mut String, line: String| {
            if second {
                text.push_str(&line);
            }
            text.push('\n');
        };
        beneath(&mut text, "Czy jest pusty w środku?".to_owned());
        text.push_str(&format!("yes → {}\n", names[0]));
        beneath(&mut text, "leszczyna".to_owned());
        text.push_str(&format!("no → {} or {}\n", names[1], names[2]));
        beneath(&mut text, "gatunek 1 / gatunek 2".to_owned());
        text
    };
    let plain = read(&text(false), &table, &Links::default());
    let both = read(&text(true), &table, &Links::default());
    assert_eq!((&both.key, &both.findings), (&plain.key, &plain.findings));
    assert_eq!((plain.findings.len(), plain.key.couplets.len()), (0, 1));
    // In one language, even if it is the second, nothing goes.
    let second = "1. Czy jest pusty w środku?\nyes → leszczyna\nno → gatunek 1\n";
    let read = read(second, &table, &Links::default());
    assert_eq!(read.findings, []);
    assert_eq!(
        drawn(&read.key, &table),
        [format!("1 Czy jest pusty w środku? | {} | {}", names[0], names[1])]
    );
}
