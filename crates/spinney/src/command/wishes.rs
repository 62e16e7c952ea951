//! What a person wishes on the command line: from words to wishes, and back to sentences.
//!
//! Names of kinds and characters are matched as people type them. What is not understood is
//! wrong use, said with the names that there are; what cannot be fulfilled is a finding.

use std::collections::BTreeSet;

use spinney_model::{
    CharacterIx, Code, Couplet, Destination, Early, Finding, Goal, Kept, Key, Matrix, Place,
    Refusal, TaxonIx, Wanted, WhyNot, Wishes,
};
use spinney_voice::{Tongue, wording};

use crate::failure::Failure;
use crate::near::nearest;
use crate::{args, command, opened, report};

/// The wishes of the command line, and what could not be understood of the questions to keep.
pub(crate) fn read(
    args: &args::Wishes,
    matrix: &Matrix,
) -> Result<(Wishes, Vec<Finding>), Failure> {
    let (kept, findings) = kept(args, matrix)?;
    let mut wishes = what_can_be_asked(matrix, &args.seen)?;
    wishes.kept = kept;
    for name in args.order.iter().flat_map(|list| names(list)) {
        wishes.order.push(character(matrix, &name)?);
    }
    for pair in &args.apart {
        let pair: Vec<String> = names(pair).collect();
        let [one, other] = pair.as_slice() else {
            return Err(Failure::usage(
                "--apart takes two kinds.",
                "Type them with a comma between: --apart \"hazel, lime\".",
            ));
        };
        let (one, other) = (taxon(matrix, one)?, taxon(matrix, other)?);
        if one == other {
            return Err(Failure::usage(
                "--apart takes two different kinds.",
                "Type the two look-alikes: --apart \"hazel, lime\".",
            ));
        }
        wishes.early.push(Early::Part(one, other));
    }
    for name in args.out_first.iter().flat_map(|list| names(list)) {
        wishes.early.push(Early::Leave(taxon(matrix, &name)?));
    }
    wishes.goals = args.goals.iter().map(|aim| aim.goal()).collect();
    Ok((wishes, findings))
}

/// Wishes that only say what can be asked at all.
pub(crate) fn what_can_be_asked(matrix: &Matrix, seen: &args::Seen) -> Result<Wishes, Failure> {
    let mut wishes = Wishes {
        hand: seen.hand.map(args::Hand::seen_on),
        season: seen.season.map(args::Season::season),
        allow_touch: seen.allow_touch,
        ..Wishes::default()
    };
    for name in seen.never.iter().flat_map(|list| names(list)) {
        wishes.never.insert(character(matrix, &name)?);
    }
    Ok(wishes)
}

fn names(list: &str) -> impl Iterator<Item = String> {
    list.split([',', ';']).map(|name| name.trim().to_owned()).filter(|name| !name.is_empty())
}

fn character(matrix: &Matrix, name: &str) -> Result<CharacterIx, Failure> {
    let all = matrix.characters().iter().map(|character| character.name.as_str());
    found(name, all, "column").map(CharacterIx)
}

fn taxon(matrix: &Matrix, name: &str) -> Result<TaxonIx, Failure> {
    let all = matrix.taxa().iter().map(|taxon| taxon.name.as_str());
    found(name, all, "kind").map(TaxonIx)
}

fn found<'a>(
    name: &str,
    all: impl Iterator<Item = &'a str>,
    what: &str,
) -> Result<usize, Failure> {
    let all: Vec<&str> = all.collect();
    let folded = name.to_lowercase();
    all.iter().position(|other| other.to_lowercase() == folded).ok_or_else(|| {
        let meant = nearest(name, all.iter().copied());
        let meant = meant.map(|near| format!("Did you mean {near}? ")).unwrap_or_default();
        Failure::usage(
            format!("The table has no {what} \"{name}\"."),
            format!("{meant}Its {what}s are: {}.", all.join(", ")),
        )
    })
}

/// The questions to keep, as linked to the table.
fn kept(args: &args::Wishes, matrix: &Matrix) -> Result<(Vec<Kept>, Vec<Finding>), Failure> {
    let text = match (&args.first, &args.keep) {
        (Some(question), _) => format!("1. {question} Yes -> ?, No -> ?\n"),
        (None, Some(path)) => opened::key(path)?,
        (None, None) => return Ok((Vec::new(), Vec::new())),
    };
    let mut findings = Vec::new();
    let links = command::check::links(args.links.as_deref(), matrix, &mut findings)?;
    let given = command::check::in_words(Tongue::of_terminal(), &text, matrix, links);
    findings.extend(given.findings);
    let open_ends = [Code::NothingWritten, Code::NameUnknown, Code::NameNotSure];
    findings.retain(|finding| !open_ends.contains(&finding.code));
    if let Some(couplet) = given.key.couplets.iter().find(|couplet| couplet.ask.is_none()) {
        return Err(not_linked(couplet, &findings, matrix));
    }
    let (kept, placed) = kept_from(&given.key);
    if kept.len() > MOST_KEPT {
        return Err(Failure::usage(
            format!("More than {MOST_KEPT} questions are to be kept, or ways meet in them."),
            "Keep the first few questions, each once; the rest is found for you.",
        ));
    }
    if kept.is_empty() {
        return Err(Failure::usage(
            "There is no numbered question to keep.",
            "Write it like this: 1. Is the leaf edge toothed?  Yes -> 2, No -> ?",
        ));
    }
    let left = (0..given.key.couplets.len()).find(|at| !placed.contains(at));
    if let Some(left) = left {
        let number = given.key.couplets[left].number;
        return Err(Failure::usage(
            format!("No answer leads to question {number}, so it cannot be kept."),
            format!("Let an answer lead to {number}, or take the question out."),
        ));
    }
    Ok((kept, findings))
}

/// A question to keep that is not linked to the table: why, and what settles it.
fn not_linked(couplet: &Couplet, findings: &[Finding], matrix: &Matrix) -> Failure {
    let words = command::words(&couplet.wording);
    let what = format!("\"{words}\" cannot be kept: it could not be linked to the table.");
    let here = findings.iter().find(|finding| finding.place == Place::Couplet(couplet.number));
    if let Some(why) = here {
        let (sentence, remedy) = report::in_english(why);
        return Failure::usage(format!("{what} {sentence}"), remedy);
    }
    let columns: Vec<&str> = matrix.characters().iter().map(|c| c.name.as_str()).collect();
    let columns = columns.join(", ");
    Failure::usage(what, format!("Ask with the table's own words. Its columns are: {columns}."))
}

/// So many questions may be kept. A key in which ways meet would be written out way by way.
const MOST_KEPT: usize = 500;

/// The linked questions of a beginning of a key, one more than may be kept at most, and which
/// couplets they are.
fn kept_from(key: &Key) -> (Vec<Kept>, BTreeSet<usize>) {
    let (mut kept, mut placed) = (Vec::new(), BTreeSet::new());
    let mut open = vec![(0, None)];
    while let Some((at, after)) = open.pop() {
        let Some(couplet) = key.couplets.get(at).filter(|_| kept.len() <= MOST_KEPT) else {
            continue;
        };
        let Some(ask) = couplet.ask.clone() else { continue };
        placed.insert(at);
        let here = Kept::add(&mut kept, ask, after);
        for (yes, to) in [(false, &couplet.no), (true, &couplet.yes)] {
            let Destination::Couplet(number) = to else { continue };
            let to = key.couplets.iter().position(|couplet| couplet.number == *number);
            open.extend(to.map(|to| (to, Some((here, yes)))));
        }
    }
    (kept, placed)
}

/// A wish that could not be fulfilled, why not, and what to do instead.
pub(crate) fn refused(matrix: &Matrix, refusal: &Refusal) -> Finding {
    let (code, place, wish) = match &refusal.wanted {
        Wanted::Ask(ask) => {
            let question = wording::question(Tongue::of_terminal(), matrix, ask);
            (
                Code::KeptRefused,
                Place::Character(matrix.character(ask.character).name.clone()),
                format!("\"{question}\" could not be kept where you wanted it"),
            )
        }
        Wanted::Order(at) => {
            let name = &matrix.character(*at).name;
            let wish = format!("{name} could not be asked about among the first");
            (Code::WishRefused, Place::Character(name.clone()), wish)
        }
        Wanted::Early(early) => {
            let wish =
                format!("The wish that {} could not be kept", early_in_words(matrix, *early));
            (Code::WishRefused, Place::Table, wish)
        }
        Wanted::Goal(goal) => {
            let wish = format!("\"{}\" could not be looked for", goal_in_words(*goal));
            (Code::WishRefused, Place::Table, wish)
        }
    };
    let (why, remedy) = why(matrix, refusal);
    Finding::new(code, place, format!("{wish}: {why}."), remedy)
}

fn why(matrix: &Matrix, refusal: &Refusal) -> (String, String) {
    let character = match &refusal.wanted {
        Wanted::Ask(ask) => matrix.character(ask.character).name.as_str(),
        Wanted::Order(at) => matrix.character(*at).name.as_str(),
        Wanted::Early(_) | Wanted::Goal(_) => "it",
    };
    match refusal.why {
        WhyNot::Blocked(taxon) => {
            let kind = &matrix.taxon(taxon).name;
            (
                format!("{kind} is still there and has no clear answer to it"),
                format!(
                    "Ask it further down, where {kind} is gone, or fill in the {character} of \
                     {kind}."
                ),
            )
        }
        WhyNot::AllAlike => (
            "all kinds that are left answer it alike".to_owned(),
            "Leave it out: it separates nothing there.".to_owned(),
        ),
        WhyNot::NoSuchState => (
            format!("{character} cannot be asked for that"),
            "Use one of the words that are in the table.".to_owned(),
        ),
        WhyNot::AfterRefused => (
            "the question before it could not be kept".to_owned(),
            "Mend the question before it first.".to_owned(),
        ),
        WhyNot::LeftOut => (
            format!("{character} must not be asked about, or cannot be seen on what is in the hand"),
            "Take back one of the two wishes.".to_owned(),
        ),
        WhyNot::NeverParted => (
            "nothing that may be asked tells them apart".to_owned(),
            "Look for a difference between them and add it to the table.".to_owned(),
        ),
        WhyNot::TooLarge => (
            "together with the wishes before it that needs larger numbers than exact arithmetic \
             has here"
                .to_owned(),
            "Wish for fewer things at once.".to_owned(),
        ),
    }
}

/// `hazel and lime part early`
pub(crate) fn early_in_words(matrix: &Matrix, early: Early) -> String {
    match early {
        Early::Part(one, other) => {
            format!(
                "{} and {} are told apart early",
                matrix.taxon(one).name,
                matrix.taxon(other).name
            )
        }
        Early::Leave(taxon) => format!("{} comes out first", matrix.taxon(taxon).name),
    }
}

/// What is best, in a teacher's words.
pub(crate) fn goal_in_words(goal: Goal) -> &'static str {
    match goal {
        Goal::LeastEffort => "the fewest questions per find",
        Goal::ShortestLongestPath => "no long way",
        Goal::MostRightEnds => "the most finds at the right name",
        Goal::EvenTeaching => "few new words at once",
        Goal::FewestWords => "few different words",
        Goal::FewestRulers => "as little measuring as possible",
    }
}
