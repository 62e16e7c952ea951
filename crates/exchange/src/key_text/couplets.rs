//! Putting lines together: which belong to one couplet, and what could not be understood.
//!
//! From classified lines to drafts of couplets in their printed order. A number that stands
//! twice, or leads nowhere, is kept as it is: saying so is not this file's work.

use std::collections::BTreeMap;

use spinney_model::{Answer, Destination, Finding, Key, Matrix, OfKeyRead, OneTooMany, Place};

use super::destination::{self, tidy, trim_wording, unquote};
use super::draft::Draft;
use super::line::{self, Head, Lead, Line};
use crate::link::names::Names;

/// How far ahead one looks whether a number begins a question.
const LOOK_AHEAD: usize = 4;

/// Which wording the next line may go on with.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Open {
    First,
    Second,
    Closed,
}

/// The lines of a text and the couplets made of them so far.
pub(super) struct Gatherer<'a, 'm> {
    matrix: &'m Matrix,
    names: &'a Names<'m>,
    lines: Vec<Line<'a>>,
    drafts: Vec<Draft>,
    /// The last draft with a number, for second leads that stand apart.
    numbered: BTreeMap<u32, usize>,
    open: Open,
    /// Lines not understood: index, and whether it seems to lead somewhere.
    strange: Vec<(usize, bool)>,
    /// The last line that was used.
    used: usize,
    findings: Vec<Finding>,
}

impl<'a, 'm> Gatherer<'a, 'm> {
    pub(super) fn new(text: &'a str, matrix: &'m Matrix, names: &'a Names<'m>) -> Self {
        Self {
            matrix,
            names,
            lines: text.split('\n').map(|text| line::read(text, names)).collect(),
            drafts: Vec::new(),
            numbered: BTreeMap::new(),
            open: Open::Closed,
            strange: Vec::new(),
            used: 0,
            findings: Vec::new(),
        }
    }

    /// Reads every line, in order.
    pub(super) fn gather(mut self) -> (Key, Vec<Finding>) {
        for at in 0..self.lines.len() {
            match self.lines[at].clone() {
                Line::Blank => self.open = Open::Closed,
                Line::Numbered(head, text) => self.numbered(at, head, text),
                Line::Dash(text) => self.dash(at, text),
                Line::Answers(before, answers) => self.answers(at, before, &answers),
                Line::Other(text) => self.other(at, text),
            }
        }
        self.say_strange();
        self.findings.sort_by_key(|finding| match finding.place {
            Place::Line(line) => line,
            _ => 0,
        });
        let couplets = self.drafts.into_iter().map(Draft::couplet).collect();
        (Key { couplets }, self.findings)
    }

    fn numbered(&mut self, at: usize, head: Head, text: &'a str) {
        let starts = self.starts(at, head, text);
        if !starts && (self.drafts.is_empty() || !head.marked) || self.wraps(head, text) {
            // A year in the title, or "5 leaflets" at the start of a wrapped line.
            let whole = format!("{} {text}", head.number);
            return self.wrapped(at, &whole);
        }
        if let Some(draft) = self.second_lead_of(at, head, text) {
            return self.second(at, draft, head, text);
        }
        self.used = at;
        let draft =
            Draft { number: head.number, back: head.back, line: at + 1, ..Draft::default() };
        self.drafts.push(draft);
        self.numbered.insert(head.number, self.drafts.len() - 1);
        self.first(text);
    }

    /// Whether a number begins a couplet: it leads somewhere or asks, or what follows does.
    fn starts(&self, at: usize, head: Head, text: &str) -> bool {
        if text.ends_with('?') || self.leads(text) {
            return true;
        }
        let following = self.lines[at + 1..].iter().filter(|line| **line != Line::Blank);
        for line in following.take(LOOK_AHEAD) {
            match line {
                Line::Numbered(next, _) => return next.number == head.number,
                Line::Dash(_) | Line::Answers(..) => return true,
                Line::Other(_) | Line::Blank => {}
            }
        }
        false
    }

    fn leads(&self, text: &str) -> bool {
        text.starts_with('"')
            || line::answers(text, self.names).is_some()
            || destination::split(text, self.names).is_some()
    }

    /// Whether a bare number is a count inside a lead that goes over two lines.
    fn wraps(&self, head: Head, text: &str) -> bool {
        let Some(draft) = self.drafts.last() else { return false };
        self.open != Open::Closed
            && !head.marked
            && !draft.asks()
            && head.number != draft.number
            && head.number != draft.number.saturating_add(1)
            && text.starts_with(char::is_lowercase)
    }

    /// The draft whose second (or third) lead a numbered line is.
    fn second_lead_of(&self, at: usize, head: Head, text: &str) -> Option<usize> {
        let ix = *self.numbered.get(&head.number)?;
        let draft = &self.drafts[ix];
        if head.lead == Lead::First || draft.asks() || line::answers(text, self.names).is_some()
        {
            return None;
        }
        if matches!(head.lead, Lead::Second | Lead::Further) {
            return Some(ix);
        }
        if ix + 1 != self.drafts.len() {
            return None;
        }
        if draft.second.is_none() {
            return Some(ix);
        }
        // A complete couplet, and its number again: another couplet if its own second lead
        // or answers follow, else a third lead.
        let next = self.lines[at + 1..].iter().find(|line| **line != Line::Blank);
        let another = match next {
            Some(Line::Numbered(next, _)) => next.number == head.number,
            Some(Line::Dash(_) | Line::Answers(..)) => true,
            _ => text.ends_with('?'),
        };
        (!another).then_some(ix)
    }

    fn first(&mut self, text: &'a str) {
        let (wording, rest) = self.wording(text);
        let answers = match &wording {
            Some(_) => line::answers(rest, self.names),
            None => line::answers(text, self.names),
        };
        if let Some((before, answers)) = answers {
            let wording = wording.unwrap_or_else(|| tidy(before));
            self.last().first.push(wording);
            self.open = Open::Closed;
            return self.take(&answers);
        }
        let (wording, destination) = self.lead(text);
        self.last().first.push(wording);
        self.open = if destination.is_none() { Open::First } else { Open::Closed };
        self.last().yes = destination;
    }

    /// A wording in quotation marks is taken as it stands.
    fn wording(&self, text: &'a str) -> (Option<String>, &'a str) {
        if !text.starts_with('"') {
            return (None, text);
        }
        let (wording, rest) = unquote(text);
        let literal = rest.trim().is_empty()
            || (trim_wording(rest).is_empty() || destination::strip_go(rest) != rest.trim());
        if literal { (Some(wording), rest) } else { (None, text) }
    }

    /// Splits a lead and reads its destination.
    fn lead(&mut self, text: &'a str) -> (String, Option<Destination>) {
        let number = self.drafts.last().map_or(0, |draft| draft.number);
        let (wording, rest) = self.wording(text);
        let (wording, behind) = match wording {
            Some(wording) if rest.trim().is_empty() => return (wording, None),
            Some(wording) => (wording, rest),
            None => match destination::split(text, self.names) {
                Some((wording, behind)) => (tidy(wording), behind),
                None => return (tidy(text), None),
            },
        };
        (wording, Some(self.read(behind, number)))
    }

    fn read(&mut self, behind: &str, number: u32) -> Destination {
        let (destination, findings) =
            destination::read(behind, number, self.matrix, self.names);
        self.findings.extend(findings);
        destination
    }

    fn dash(&mut self, at: usize, text: &'a str) {
        if self.talked_round(at, text) {
            return;
        }
        let Some(draft) = self.drafts.last() else { return };
        let heads = draft.yes.is_none() && !draft.question && draft.second.is_none();
        let heading = draft.first.last().is_some_and(|text| text.ends_with(['?', ':']));
        if heads && heading && draft.heading.is_none() {
            self.used = at;
            let (wording, destination) = self.lead(text);
            let draft = self.last();
            draft.heading = Some(draft.first.join(" "));
            draft.first.push(wording);
            draft.yes = destination;
            self.open = Open::Closed;
            return;
        }
        if draft.question && draft.complete() {
            return self.strange(at);
        }
        let head = Head { number: draft.number, lead: Lead::Second, back: None, marked: true };
        self.second(at, self.drafts.len() - 1, head, text);
    }

    fn second(&mut self, at: usize, ix: usize, head: Head, text: &'a str) {
        self.used = at;
        self.open = Open::Closed;
        if self.drafts[ix].second.is_some() || head.lead == Lead::Further {
            return self.too_many(head.number, at, OneTooMany::ThirdLead);
        }
        let (wording, destination) = self.lead(text);
        if ix + 1 == self.drafts.len() && destination.is_none() {
            self.open = Open::Second;
        }
        let draft = &mut self.drafts[ix];
        draft.back = draft.back.or(head.back);
        draft.second = Some(draft.heading.iter().cloned().chain([wording]).collect());
        draft.no = destination;
    }

    fn answers(&mut self, at: usize, before: &'a str, answers: &[(Answer, &'a str)]) {
        let Some(draft) = self.drafts.last() else { return };
        if draft.second.is_some() {
            return self.strange(at);
        }
        if !before.is_empty() {
            if self.open != Open::First {
                return self.strange(at);
            }
            self.last().first.push(tidy(before));
        }
        self.used = at;
        self.open = Open::Closed;
        self.take(answers);
    }

    fn take(&mut self, answers: &[(Answer, &'a str)]) {
        for (answer, behind) in answers {
            let Some(draft) = self.drafts.last_mut() else { return };
            draft.question = true;
            let number = draft.number;
            let filled = match answer {
                Answer::Yes => draft.yes.is_some(),
                Answer::No => draft.no.is_some(),
            };
            if filled {
                let at = self.used;
                self.too_many(number, at, OneTooMany::Twice(*answer));
                continue;
            }
            // `box, horse chestnut`: what stands before the last name is no wording, but a name.
            let leads = |wording: &str| {
                destination::leads_somewhere(wording, self.names)
                    || line::holds_an_answer(wording)
            };
            let behind = destination::split(behind, self.names)
                .filter(|(wording, _)| !wording.is_empty() && !behind.contains('"'))
                .filter(|(wording, _)| !leads(wording))
                .map_or(*behind, |(_, behind)| behind);
            let destination = Some(self.read(behind, number));
            match answer {
                Answer::Yes => self.last().yes = destination,
                Answer::No => self.last().no = destination,
            }
        }
    }

    /// `Yes, it has teeth … 2` under a question.
    fn talked_round(&mut self, at: usize, text: &'a str) -> bool {
        if let Some(draft) = self.drafts.last()
            && draft.asks()
            && draft.second.is_none()
            && let Some((answer, behind)) = line::talked_round(text)
            && let Some((_, behind)) = destination::split(behind, self.names)
        {
            self.used = at;
            self.open = Open::Closed;
            self.take(&[(answer, behind)]);
            return true;
        }
        false
    }

    fn other(&mut self, at: usize, text: &'a str) {
        if self.talked_round(at, text) {
            return;
        }
        let waits = self.drafts.last().is_some_and(|draft| {
            !draft.question && draft.yes.is_some() && draft.second.is_none()
        });
        if self.open == Open::Closed
            && waits
            && destination::split(text, self.names).is_some()
            && let Some(draft) = self.drafts.last()
        {
            let head =
                Head { number: draft.number, lead: Lead::Second, back: None, marked: true };
            return self.second(at, self.drafts.len() - 1, head, text);
        }
        self.wrapped(at, text);
    }

    /// A line that goes on with the one before, or that nobody understands.
    fn wrapped(&mut self, at: usize, text: &str) {
        let asked = self.drafts.last().is_some_and(|draft| {
            let last = draft.second.as_ref().unwrap_or(&draft.first).last();
            last.is_some_and(|text| text.ends_with('?'))
        });
        if self.open == Open::Closed || asked {
            return self.strange(at);
        }
        self.used = at;
        let split = destination::split(text, self.names);
        let (wording, behind) = split.map_or((text, None), |(w, b)| (w, Some(b)));
        let number = self.last().number;
        let destination = behind.map(|behind| self.read(behind, number));
        let open = self.open;
        if destination.is_some() {
            self.open = Open::Closed;
        }
        let draft = self.last();
        let wording = tidy(wording);
        if open == Open::First {
            draft.first.push(wording);
            draft.yes = destination;
        } else {
            draft.second.get_or_insert_default().push(wording);
            draft.no = destination;
        }
    }

    fn last(&mut self) -> &mut Draft {
        self.drafts.last_mut().expect("lines are only read into a couplet that was begun")
    }

    fn strange(&mut self, at: usize) {
        if !self.drafts.is_empty() {
            let leads = match &self.lines[at] {
                Line::Other(text) => destination::split(text, self.names).is_some(),
                _ => true,
            };
            self.strange.push((at, leads));
        }
    }

    /// Notes under a finished key are passed over like a title above it.
    fn say_strange(&mut self) {
        let finished = self.drafts.last().is_some_and(Draft::complete);
        // Looked for once: a long text under a key would be gone through again for every line.
        let blank = self.lines.iter().skip(self.used).position(|line| *line == Line::Blank);
        let apart = |at: usize| blank.is_some_and(|blank| self.used + blank < at);
        let note = |at: usize, leads: bool| finished && !leads && apart(at);
        let lines: Vec<usize> = self
            .strange
            .iter()
            .filter(|(at, leads)| !note(*at, *leads))
            .map(|(at, _)| at + 1)
            .collect();
        self.findings.extend(
            lines
                .into_iter()
                .map(|line| Finding::of(Place::Line(line), OfKeyRead::LineNeither { line })),
        );
    }

    fn too_many(&mut self, question: u32, at: usize, what: OneTooMany) {
        let fact = OfKeyRead::LeadTooMany { question, what, line: at + 1 };
        self.findings.push(Finding::of(Place::Couplet(question), fact));
    }
}
