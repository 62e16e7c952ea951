//! One line of a person's key: does it begin a question, a second lead or an answer?
//!
//! From a line to what stands at its head. Numbers may be `1.`, `1)`, `(1)`, `1a`, `1'`,
//! `Q1:`, with a back number behind them: `2(1)`. It does not look at other lines.

use spinney_model::Answer;

use super::destination::{arrow, leads_somewhere};
use crate::link::names::Names;

/// What a line is, by its head.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Line<'t> {
    /// Nothing, or only a drawn rule.
    Blank,
    /// A number and what follows it.
    Numbered(Head, &'t str),
    /// A dash or bullet and what follows it.
    Dash(&'t str),
    /// One or both answers, with the words before the first.
    Answers(&'t str, Vec<(Answer, &'t str)>),
    /// Anything else.
    Other(&'t str),
}

/// A printed number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Head {
    pub(super) number: u32,
    pub(super) lead: Lead,
    pub(super) back: Option<u32>,
    /// Whether a mark, letter or back number shows that it is not just a count.
    pub(super) marked: bool,
}

/// Which lead of its couplet a number stands before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Lead {
    Unsaid,
    First,
    Second,
    Further,
}

/// Reads the head of a line.
pub(super) fn read<'t>(line: &'t str, names: &Names) -> Line<'t> {
    let line = line.trim();
    if !line.chars().any(char::is_alphanumeric) && !line.contains(['"', '…', '?', '→']) {
        return Line::Blank;
    }
    if let Some((head, text)) = head(line) {
        return Line::Numbered(head, text);
    }
    let text = dash(line);
    if let Some((before, answers)) = answers(text.unwrap_or(line), names) {
        return Line::Answers(before, answers);
    }
    match text {
        Some(text) => Line::Dash(text),
        None => Line::Other(line),
    }
}

/// What follows a dash or bullet.
fn dash(line: &str) -> Option<&str> {
    let mark = line.chars().next()?;
    if !matches!(mark, '-' | '–' | '—' | '•' | '*' | '▪' | '◦' | '‣') || arrow(line).is_some()
    {
        return None;
    }
    let rest = &line[mark.len_utf8()..];
    let close = rest.starts_with(|c: char| c.is_alphabetic() || c == '"' || c == '…');
    (rest.starts_with(char::is_whitespace) || close).then(|| rest.trim())
}

/// A number at the start of a line and what follows it.
fn head(line: &str) -> Option<(Head, &str)> {
    let (rest, mut marked) = after_word(line);
    let bracket = rest.strip_prefix('(');
    let rest = bracket.unwrap_or(rest);
    let digits = rest.bytes().take_while(u8::is_ascii_digit).count();
    let number = rest.get(..digits)?.parse().ok()?;
    let mut rest = &rest[digits..];
    if bracket.is_some() {
        rest = rest.strip_prefix(')')?;
        marked = true;
    }
    let (lead, behind) = letter(rest);
    marked |= lead != Lead::Unsaid;
    let (back, mut rest) = self::back(behind);
    let mut point = false;
    while let Some(after) = rest.strip_prefix(['.', ')', ':', ']']) {
        rest = after;
        point = true;
    }
    marked |= point;
    let (back, mut rest) = match back {
        Some(_) => (back, rest),
        None => self::back(rest),
    };
    marked |= back.is_some();
    rest = rest.strip_prefix(['.', ':']).unwrap_or(rest);
    // "3.5 cm" and "4-6 leaflets" are no numbers of couplets.
    let apart = rest.starts_with(|c: char| c.is_whitespace() || c == '"');
    let close = point && rest.starts_with(char::is_alphabetic);
    if !(apart || close) || rest.trim().is_empty() {
        return None;
    }
    Some((Head { number, lead, back, marked }, rest.trim()))
}

/// What follows a word such as `Question` before the number, and whether there was one.
fn after_word(line: &str) -> (&str, bool) {
    for word in ["question", "couplet", "step", "no.", "q"] {
        if let Some(head) = line.get(..word.len())
            && head.eq_ignore_ascii_case(word)
            && line[word.len()..].trim_start().starts_with(|c: char| c.is_ascii_digit())
        {
            return (line[word.len()..].trim_start(), true);
        }
    }
    (line, false)
}

/// A letter or stroke behind the number: `1a`, `1b`, `1'`.
fn letter(rest: &str) -> (Lead, &str) {
    for (mark, lead) in [
        ("''", Lead::Further),
        ("″", Lead::Further),
        ("'", Lead::Second),
        ("’", Lead::Second),
        ("′", Lead::Second),
        ("*", Lead::Second),
    ] {
        if let Some(behind) = rest.strip_prefix(mark) {
            return (lead, behind);
        }
    }
    let mut chars = rest.chars();
    let lead = match chars.next().map(|c| c.to_ascii_lowercase()) {
        Some('a') => Lead::First,
        Some('b') => Lead::Second,
        Some('c'..='h') => Lead::Further,
        _ => return (Lead::Unsaid, rest),
    };
    let behind = chars.as_str();
    if behind.starts_with(char::is_alphanumeric) {
        return (Lead::Unsaid, rest);
    }
    (lead, behind)
}

/// A back number: `(1)`, `(from 1)`; of several the first.
fn back(rest: &str) -> (Option<u32>, &str) {
    let Some(inside) = rest.trim_start().strip_prefix('(') else {
        return (None, rest);
    };
    let Some((inside, behind)) = inside.split_once(')') else {
        return (None, rest);
    };
    let inside = inside.trim_start_matches("from").trim();
    let allowed = |c: char| c.is_ascii_digit() || matches!(c, ',' | ' ' | '&');
    if inside.len() > 40 || !inside.chars().all(allowed) {
        return (None, rest);
    }
    let first = inside.split(|c: char| !c.is_ascii_digit()).next().unwrap_or("");
    match first.parse() {
        Ok(number) => (Some(number), behind),
        Err(_) => (None, rest),
    }
}

/// The answers on a line, each with the text of its destination, and what stands before.
pub(super) fn answers<'t>(
    text: &'t str,
    names: &Names,
) -> Option<(&'t str, Vec<(Answer, &'t str)>)> {
    let words = answer_words(text);
    let mut found: Vec<(usize, usize, Answer)> = Vec::new();
    for (ix, word) in words.iter().enumerate() {
        let next = words.get(ix + 1).map_or(text.len(), |next| next.0);
        // `Y 5 N ivy`: the other answer behind a destination needs no mark before it.
        let other = found.last().is_some_and(|(_, end, answer)| {
            *answer != word.2 && leads_somewhere(&text[*end..word.0], names)
        });
        if other || leads_on(text, word.0, word.1, next, found.is_empty(), names) {
            found.push(*word);
        }
    }
    let first = found.first()?.0;
    let answers = found
        .iter()
        .enumerate()
        .map(|(ix, (_, end, answer))| {
            let next = found.get(ix + 1).map_or(text.len(), |next| next.0);
            let behind = text[*end..next].trim_end();
            let hanging = |c: char| matches!(c, ',' | ';' | '/' | '|' | ')' | '(' | '.' | '-');
            let behind = if behind.contains('"') {
                behind.trim_end_matches([',', ';', '/', '|', ' '])
            } else {
                behind.trim_end_matches(hanging)
            };
            (*answer, behind.trim_end())
        })
        .collect();
    Some((text[..first].trim_end().trim_end_matches(['(', '[', '|']).trim_end(), answers))
}

/// Yes and no in English, German, French and Welsh, or as a letter. (`o` for oui is a bullet
/// more often than an answer.)
fn answer(word: &str) -> Option<Answer> {
    match word.to_ascii_lowercase().as_str() {
        "yes" | "y" | "ja" | "j" | "oui" | "ie" => Some(Answer::Yes),
        "no" | "n" | "nein" | "non" | "na" => Some(Answer::No),
        _ => None,
    }
}

/// Whether a text holds a yes or no behind something else: `5 N ivy` is no kind's name.
pub(super) fn holds_an_answer(text: &str) -> bool {
    answer_words(text).iter().any(|(start, _, _)| !text[..*start].trim().is_empty())
}

/// Every yes and no in a text that is a word of its own, outside quotation marks.
fn answer_words(text: &str) -> Vec<(usize, usize, Answer)> {
    let mut found = Vec::new();
    let mut quoted = false;
    let mut start = None;
    for (at, c) in text.char_indices().chain([(text.len(), ' ')]) {
        let inside = quoted;
        if c == '"' {
            quoted = !quoted;
        }
        if c.is_alphanumeric() || matches!(c, '\'' | '’') {
            start = start.or(Some(at));
            continue;
        }
        let Some(begin) = start.take() else { continue };
        let answer = match text[begin..at].to_ascii_lowercase().as_str() {
            "so" if after_if(text, begin) => Answer::Yes,
            "not" if after_if(text, begin) => Answer::No,
            word => match answer(word) {
                Some(answer) => answer,
                None => continue,
            },
        };
        if !inside {
            let begin = if after_if(text, begin) { if_before(text, begin) } else { begin };
            found.push((begin, at, answer));
        }
    }
    found
}

/// Whether the word before is `if`.
fn after_if(text: &str, begin: usize) -> bool {
    let before = text[..begin].trim_end();
    let if_at = before.len().saturating_sub(2);
    let Some(word) = before.get(if_at..) else { return false };
    let apart = before[..if_at].chars().next_back().is_none_or(|c| !c.is_alphanumeric());
    word.eq_ignore_ascii_case("if") && apart
}

/// Where the `if` before a word begins.
fn if_before(text: &str, begin: usize) -> usize {
    text[..begin].trim_end().len() - 2
}

/// Whether a yes or no leads somewhere, rather than being a word of the question.
fn leads_on(
    text: &str,
    start: usize,
    end: usize,
    next: usize,
    first: bool,
    names: &Names,
) -> bool {
    let behind = &text[end..];
    let trimmed = behind.trim_start();
    let spaced = behind.len() != trimmed.len();
    let mark = trimmed.chars().next();
    let dots = trimmed.starts_with("..") || trimmed.starts_with('…');
    let line = trimmed.starts_with("__") || behind.starts_with('\t');
    let strong = arrow(trimmed).is_some() || dots || line;
    let colon = matches!(mark, Some(':' | '='));
    let dash = matches!(mark, Some('-' | '–' | '—'))
        && (spaced || trimmed.chars().nth(1).is_some_and(char::is_whitespace));
    let word = trimmed.trim_start_matches([',', ' ']);
    let go = ["go to", "goto", "go on", "then"]
        .iter()
        .any(|go| word.get(..go.len()).is_some_and(|head| head.eq_ignore_ascii_case(go)));
    if strong || colon || dash || go {
        return true;
    }
    let before = text[..start].trim_end();
    let begins =
        before.is_empty() || before.ends_with(['?', '.', ';', ',', '/', '|', '(', ':']);
    let segment = text[end..next].split([';', '|']).next().unwrap_or("");
    let nothing = segment.trim_matches([' ', '?', ',', '.', ')']).is_empty();
    if nothing {
        // "Yes ?" or "No" alone at its line's end: an answer after which nothing is written.
        return begins
            && (segment.contains('?') || (before.is_empty() && next == text.len()))
            && (before.is_empty() || !first);
    }
    // `… toothed? Yes 5 ivy`: an answer, though nobody can tell where it leads.
    let numbered = segment.trim_start().starts_with(|c: char| c.is_ascii_digit());
    let answers = before.ends_with('?') && numbered;
    begins && (answers || leads_somewhere(segment.trim_end_matches([',', ' ', '/']), names))
}

/// An answer that is talked round: `Yes, it has teeth … 2`.
pub(super) fn talked_round(line: &str) -> Option<(Answer, &str)> {
    let word = line.split(|c: char| !c.is_alphabetic()).next()?;
    let behind = &line[word.len()..];
    let answer = answer(word).filter(|_| word.len() > 1)?;
    behind.starts_with(',').then_some((answer, behind))
}
