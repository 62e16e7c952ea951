//! The one writer of everything that a terminal gets, and what a terminal adds: colour, progress,
//! questions. Nothing of the latter reaches a pipe.
//!
//! Names of kinds, names of files and quoted texts are other people's. A sign in them that would
//! steer a terminal (move its cursor, rename its window, turn the direction of reading) is shown
//! as `�`, or in JSON written as its number.

use std::collections::hash_map::RandomState;
use std::fmt::Write as _;
use std::hash::{BuildHasher, Hasher};
use std::io::{BufRead, IsTerminal, Write};
use std::sync::OnceLock;

use spinney_voice::Tongue;

use crate::failure::{Failure, trouble};

/// Where painted words begin, behind it the colour, and where they end. Unicode keeps these for
/// a program's own use (noncharacters); the writer turns them into what a terminal understands.
/// In other people's words they are signs that steer.
const PAINT: [char; 4] = ['\u{FDD0}', '\u{FDD1}', '\u{FDD2}', '\u{FDD3}'];
const COLOURS: [&str; 4] = ["1", "31", "33", "36"];
const PAINT_ENDS: char = '\u{FDDF}';

/// A colour, or bold letters (ECMA-48, SGR).
#[derive(Clone, Copy)]
pub(crate) enum Paint {
    Bold,
    Red,
    Yellow,
    Cyan,
}

/// Words in a colour, as the writer understands it.
pub(crate) fn painted(paint: Paint, words: &str) -> String {
    let ours = ours();
    format!("{}{ours}{words}{PAINT_ENDS}{ours}", PAINT[paint as usize])
}

/// Stands behind our own signs for paint, and is different in every run: nobody else can write
/// it into a name.
fn ours() -> &'static str {
    static OURS: OnceLock<String> = OnceLock::new();
    // The keys that the standard library gives its hash maps are random.
    OURS.get_or_init(|| format!("{:016x}", RandomState::new().build_hasher().finish()))
}

/// Whether to write in colour: on a terminal, and unless `NO_COLOR` is set (no-color.org).
pub(crate) fn colour() -> bool {
    let wanted = std::env::var_os("NO_COLOR").is_none_or(|value| value.is_empty());
    let able = std::env::var_os("TERM").is_none_or(|term| term != "dumb");
    wanted && able && std::io::stdout().is_terminal()
}

/// Whether a sign steers a terminal or the direction of reading instead of being read: the
/// controls of ISO 6429 (C0, C1, DEL), and Unicode's embeddings, overrides, isolates (UAX 9)
/// and separators of lines, and our own signs for paint. A new line and a tab are only space.
fn steers(sign: char) -> bool {
    match sign {
        '\n' | '\t' => false,
        '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{2028}' | '\u{2029}' => true,
        '\u{FDD0}'..='\u{FDEF}' => true,
        _ => sign.is_control(),
    }
}

/// Text as a terminal gets it.
fn harmless(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(sign) = rest.chars().next() {
        rest = &rest[sign.len_utf8()..];
        if !steers(sign) {
            plain.push(sign);
            continue;
        }
        let colour = match PAINT.iter().position(|paint| *paint == sign) {
            Some(at) => Some(COLOURS[at]),
            None => (sign == PAINT_ENDS).then_some("0"),
        };
        match colour.zip(rest.strip_prefix(ours())) {
            Some((colour, behind)) => {
                let _ = write!(plain, "\u{1b}[{colour}m");
                rest = behind;
            }
            None => plain.push('\u{FFFD}'),
        }
    }
    plain
}

/// JSON as a terminal gets it: the same value, with numbers for signs that steer (RFC 8259, 7).
fn harmless_json(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for sign in text.chars() {
        match steers(sign) {
            // Outside of a text, JSON has no such sign: it stands in one, where this is the same.
            true => {
                let _ = write!(plain, "\\u{:04x}", u32::from(sign));
            }
            false => plain.push(sign),
        }
    }
    plain
}

/// A line on stderr that is written over, while a person watches.
pub(crate) struct Progress {
    watched: bool,
    shown: usize,
}

impl Progress {
    pub(crate) fn new() -> Self {
        Self { watched: std::io::stderr().is_terminal(), shown: 0 }
    }

    pub(crate) fn say(&mut self, line: &str) {
        if self.watched {
            let length = line.chars().count();
            let rest = self.shown.saturating_sub(length);
            to_stderr(&format!("\r{}{}", harmless(line), " ".repeat(rest)));
            self.shown = length;
        }
    }

    /// Takes the line away.
    pub(crate) fn clear(&mut self) {
        if self.shown > 0 {
            to_stderr(&format!("\r{}\r", " ".repeat(self.shown)));
        }
        self.shown = 0;
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.clear();
    }
}

/// Where stderr cannot be written, the exit code still says it: the macros of the standard
/// library would end the program as a bug.
fn to_stderr(text: &str) {
    let mut stderr = std::io::stderr().lock();
    let _ = stderr.write_all(text.as_bytes()).and_then(|()| stderr.flush());
}

/// Says on stderr what went wrong.
pub(crate) fn complain(text: &str) {
    to_stderr(&harmless(text));
}

/// Asks a yes/no question if a person sits there; None if not, or if they do not say.
pub(crate) fn ask(t: Tongue, question: &str) -> Option<bool> {
    if !std::io::stdin().is_terminal() || !std::io::stderr().is_terminal() {
        return None;
    }
    complain(&format!("{question} {} ", t.say("run-yes-or-no")));
    let mut answer = String::new();
    std::io::stdin().lock().read_line(&mut answer).ok()?;
    let answer = answer.trim().to_lowercase();
    let is = |words: &str| t.say(words).split(", ").any(|word| word == answer);
    match (is("run-yes-words"), is("run-no-words")) {
        (true, _) => Some(true),
        (_, true) => Some(false),
        _ => None,
    }
}

/// Writes to stdout. A reader that has gone away (`| head`) is not a failure.
pub(crate) fn print(text: &str) -> Result<(), Failure> {
    to_stdout(harmless(text).as_bytes())
}

/// The same for JSON.
pub(crate) fn print_json(text: &str) -> Result<(), Failure> {
    to_stdout(harmless_json(text).as_bytes())
}

/// The same for what is no text, and so not for a terminal.
pub(crate) fn print_bytes(bytes: &[u8]) -> Result<(), Failure> {
    if std::io::stdout().is_terminal() {
        return Err(Failure::usage("failure-not-text", []));
    }
    to_stdout(bytes)
}

fn to_stdout(bytes: &[u8]) -> Result<(), Failure> {
    let mut stdout = std::io::stdout().lock();
    // Flushed here: what is left to the end of the program fails without a word.
    match stdout.write_all(bytes).and_then(|()| stdout.flush()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => {
            Err(Failure::new("failure-answer", [("why", trouble(&error).into())]))
        }
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::{Paint, harmless, harmless_json, painted};

    #[test]
    fn signs_that_steer_are_seen_and_steer_nothing() {
        assert_eq!(harmless("ha\u{1b}[2Jzel\r\u{7f}\u{9b}31m"), "ha�[2Jzel���31m");
        assert_eq!(harmless("\u{202e}lezah\u{2066} \u{2028}"), "�lezah� �");
        assert_eq!(harmless("a\tb\nŵ 🌳 אלון\n"), "a\tb\nŵ 🌳 אלון\n");
    }

    #[test]
    fn our_own_colours_come_through() {
        let words = painted(Paint::Red, "mend\u{1b}[0m this");
        assert_eq!(harmless(&words), "\u{1b}[31mmend�[0m this\u{1b}[0m");
        assert_eq!(harmless(&painted(Paint::Bold, "key")), "\u{1b}[1mkey\u{1b}[0m");
    }

    #[test]
    fn signs_for_paint_in_a_name_paint_nothing() {
        let name = "\u{fdd1}hazel\u{fddf}\u{fdd0}\u{fdef}";
        assert_eq!(harmless(name), "�hazel���");
        let words = painted(Paint::Red, name);
        assert_eq!(harmless(&words), "\u{1b}[31m�hazel���\u{1b}[0m");
    }

    #[test]
    fn json_says_the_same_without_steering() {
        let json = "{\n  \"name\": \"ha\u{9b}zel\u{202e}\u{7f}\"\n}\n";
        assert_eq!(harmless_json(json), "{\n  \"name\": \"ha\\u009bzel\\u202e\\u007f\"\n}\n");
    }
}
