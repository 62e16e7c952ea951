//! Every message that the screens ask for is there, in every language, with the same gaps.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use super::{FILES, LANGUAGES};

thread_local! {
    /// The messages that were asked for in this thread.
    static ASKED: RefCell<BTreeSet<String>> = const { RefCell::new(BTreeSet::new()) };
}

/// Notes that a message was asked for.
pub(super) fn note(message: &str) {
    ASKED.with_borrow_mut(|asked| {
        asked.insert(message.to_owned());
    });
}

/// The messages that are asked for while something is said.
pub(crate) fn asked_for(say: impl FnOnce()) -> BTreeSet<String> {
    ASKED.with_borrow_mut(BTreeSet::clear);
    say();
    ASKED.with_borrow(BTreeSet::clone)
}

/// The messages in which findings are said.
pub(crate) fn messages_of_findings() -> BTreeSet<String> {
    let ours = |name: &String| name.starts_with("finding-") || name.starts_with("list-");
    messages(FILES[0]).into_keys().filter(ours).collect()
}

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("a folder can be read") {
        let path = entry.expect("an entry can be read").path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
}

/// The names of messages and, for each, the gaps it fills.
fn messages(files: &[&str]) -> BTreeMap<String, BTreeSet<String>> {
    let mut messages = BTreeMap::new();
    let mut current = None;
    for line in files.iter().flat_map(|file| file.lines()) {
        if !line.starts_with([' ', '#', '}', '*', '[']) {
            current = line.split_once(" =").map(|(name, _)| name.to_owned());
        }
        let Some(name) = &current else { continue };
        let gaps: &mut BTreeSet<String> = messages.entry(name.clone()).or_default();
        gaps.extend(line.split('$').skip(1).map(|rest| {
            rest.chars().take_while(|sign| sign.is_alphanumeric() || *sign == '-').collect()
        }));
    }
    messages
}

#[test]
fn every_message_that_is_asked_for_is_there() {
    let known = messages(FILES[0]);
    let mut files = Vec::new();
    for room in ["../desk/src", "../pocket/src", "../spinney/src"] {
        sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join(room), &mut files);
    }
    let (mut asked, mut refused) = (0, 0);
    for path in files.iter().filter(|path| !path.ends_with("tests.rs")) {
        let text = fs::read_to_string(path).expect("a file of ours is text");
        for call in
            ["Refused::", ".refused(", "Failure::new(", "Failure::usage(", "Self::usage("]
        {
            for rest in text.split(call).skip(1) {
                let Some((before, rest)) = rest.split_once('"') else { continue };
                let name = rest.split('"').next().unwrap_or_default();
                // A failure names its message first; what is refused says it after the tongue.
                let chosen_elsewhere =
                    call.ends_with("ailure::new(") || call.ends_with("usage(");
                let chosen_elsewhere = chosen_elsewhere && !before.trim().is_empty();
                let elsewhere = before.contains([';', ')', '}']) || chosen_elsewhere;
                if elsewhere || !is_a_name(name) {
                    continue;
                }
                // What is refused has a remedy beside it.
                for name in [name.to_owned(), format!("{name}-remedy")] {
                    assert!(known.contains_key(&name), "{} asks for {name}", path.display());
                }
                refused += 1;
            }
        }
        for call in [".say(\"", ".with(\"", ".count(\"", ".count_with(\""] {
            for rest in text.split(call).skip(1) {
                let name = rest.split('"').next().unwrap_or_default();
                let fits = is_a_name(name);
                assert!(
                    !fits || known.contains_key(name),
                    "{} asks for {name}",
                    path.display()
                );
                asked += usize::from(fits);
            }
        }
    }
    assert!(asked > 20 && refused > 80, "the search for messages has lost its way");
}

/// Whether a text may be the name of a message.
fn is_a_name(text: &str) -> bool {
    let plain = |c: char| c.is_ascii_lowercase() || c == '-' || c.is_ascii_digit();
    !text.is_empty() && text.chars().all(plain)
}

/// The messages that the sources of some rooms name, in whatever table or call they do.
fn named_in(rooms: &[&str], ours: fn(&str) -> bool) -> BTreeSet<String> {
    let mut files = Vec::new();
    for room in rooms {
        sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join(room), &mut files);
    }
    let texts = files.iter().filter(|path| !path.ends_with("tests.rs"));
    let texts = texts.map(|path| fs::read_to_string(path).expect("a file of ours is text"));
    let named = texts.flat_map(|text| {
        text.split('"').filter(|name| ours(name)).map(str::to_owned).collect::<Vec<_>>()
    });
    named.collect()
}

fn is_of_the_press(name: &str) -> bool {
    let ours = name.starts_with("sheet-") || name.starts_with("phone-");
    is_a_name(name) && ours && !name.ends_with('-')
}

#[test]
fn what_the_press_says_is_there_and_nothing_else_is() {
    let known = messages(FILES[0]).into_keys().filter(|name| is_of_the_press(name)).collect();
    assert_eq!(named_in(&["../press/src", "../desk/src", "src"], is_of_the_press), known);
}

/// How the names of messages begin that the command line alone says.
const COMMAND_LINE: [&str; 13] = [
    "error-",
    "door-",
    "template-",
    "failure-",
    "usage-",
    "report-",
    "run-",
    "opinion-",
    "explain-",
    "measure-",
    "weak-",
    "forgive-",
    "revise-",
];

fn is_of_the_command_line(name: &str) -> bool {
    is_a_name(name) && COMMAND_LINE.iter().any(|begins| name.starts_with(begins))
}

#[test]
fn what_the_command_line_says_is_there_and_nothing_else_is() {
    let known: BTreeSet<String> =
        messages(FILES[0]).into_keys().filter(|name| is_of_the_command_line(name)).collect();
    let mut named = named_in(&["../spinney/src", "src"], is_of_the_command_line);
    // Beside a message there may be its remedy, or what it means, which are named with it.
    let beside = |name: &String| [format!("{name}-remedy"), format!("{name}-means")];
    let beside: Vec<String> = named.iter().flat_map(beside).collect();
    named.extend(beside.into_iter().filter(|name| known.contains(name)));
    assert_eq!(named, known);
    assert!(known.len() > 200, "the search for messages has lost its way");
}

#[test]
fn every_language_has_every_message_with_the_same_gaps() {
    let english = messages(FILES[0]);
    for (at, (tag, _)) in LANGUAGES.iter().enumerate() {
        let there = messages(FILES[at]);
        let names = |of: &BTreeMap<String, _>| of.keys().cloned().collect::<BTreeSet<_>>();
        assert_eq!(names(&there), names(&english), "{tag}");
        for (name, gaps) in &english {
            assert_eq!(&there[name], gaps, "{tag}: {name}");
        }
    }
}
