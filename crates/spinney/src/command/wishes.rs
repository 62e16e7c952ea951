//! What a person wishes on the command line: from words to wishes, and back to sentences.
//!
//! Names of kinds and characters are matched as people type them. What is not understood is
//! wrong use, said with the names that there are; what cannot be fulfilled is a finding.

use std::collections::BTreeSet;

use spinney_model::{
    CharacterIx, Code, Couplet, Destination, Early, EarlyOf, Finding, Kept, Key, Matrix,
    OfUnmet, Place, Refusal, TaxonIx, Wanted, WhyNot, WhyUnmet, WishedFor, Wishes,
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

/// A wish that could not be fulfilled, and why not; a question in the words of a language.
pub(crate) fn refused(t: Tongue, matrix: &Matrix, refusal: &Refusal) -> Finding {
    let name = |at: CharacterIx| matrix.character(at).name.clone();
    let (place, wish) = match &refusal.wanted {
        Wanted::Ask(ask) => {
            let question = wording::question(t, matrix, ask);
            (Place::Character(name(ask.character)), WishedFor::Question(question))
        }
        Wanted::Order(at) => (Place::Character(name(*at)), WishedFor::Order(name(*at))),
        Wanted::Early(early) => (Place::Table, WishedFor::Early(early_of(matrix, *early))),
        Wanted::Goal(goal) => (Place::Table, WishedFor::Goal(*goal)),
    };
    Finding::of(place, OfUnmet::Refused { wish, why: why(matrix, refusal) })
}

fn why(matrix: &Matrix, refusal: &Refusal) -> WhyUnmet {
    let about = match &refusal.wanted {
        Wanted::Ask(ask) => matrix.character(ask.character).name.clone(),
        Wanted::Order(at) => matrix.character(*at).name.clone(),
        Wanted::Early(_) | Wanted::Goal(_) => "it".to_owned(),
    };
    match refusal.why {
        WhyNot::Blocked(taxon) => {
            WhyUnmet::Blocked { kind: matrix.taxon(taxon).name.clone(), about }
        }
        WhyNot::AllAlike => WhyUnmet::AllAlike,
        WhyNot::NoSuchState => WhyUnmet::NoSuchState { about },
        WhyNot::AfterRefused => WhyUnmet::AfterRefused,
        WhyNot::LeftOut => WhyUnmet::LeftOut { about },
        WhyNot::NeverParted => WhyUnmet::NeverParted,
        WhyNot::TooLarge => WhyUnmet::TooLarge,
    }
}

fn early_of(matrix: &Matrix, early: Early) -> EarlyOf {
    let name = |taxon: TaxonIx| matrix.taxon(taxon).name.clone();
    match early {
        Early::Part(one, other) => EarlyOf::Apart([name(one), name(other)]),
        Early::Leave(taxon) => EarlyOf::Out(name(taxon)),
    }
}

/// `hazel and lime are told apart early`
pub(crate) fn early_in_words(t: Tongue, matrix: &Matrix, early: Early) -> String {
    spinney_voice::early(t, &early_of(matrix, early))
}
