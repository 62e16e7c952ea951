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
use crate::words::Words;
use crate::{args, command, opened};

/// The wishes of the command line, and what could not be understood of the questions to keep.
pub(crate) fn read(
    t: Tongue,
    args: &args::Wishes,
    matrix: &Matrix,
) -> Result<(Wishes, Vec<Finding>), Failure> {
    let (kept, findings) = kept(t, args, matrix)?;
    let mut wishes = what_can_be_asked(matrix, &args.seen)?;
    wishes.kept = kept;
    for name in args.order.iter().flat_map(|list| names(list)) {
        wishes.order.push(character(matrix, &name)?);
    }
    for pair in &args.apart {
        let pair: Vec<String> = names(pair).collect();
        let [one, other] = pair.as_slice() else {
            return Err(Failure::usage("failure-apart-two", []));
        };
        let (one, other) = (taxon(matrix, one)?, taxon(matrix, other)?);
        if one == other {
            return Err(Failure::usage("failure-apart-different", []));
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
    found(name, all, NO_SUCH_COLUMN).map(CharacterIx)
}

fn taxon(matrix: &Matrix, name: &str) -> Result<TaxonIx, Failure> {
    let all = matrix.taxa().iter().map(|taxon| taxon.name.as_str());
    found(name, all, NO_SUCH_KIND).map(TaxonIx)
}

/// A name that the table does not have: what is said, the remedy, and the remedy where one of its
/// names is near.
const NO_SUCH_COLUMN: [&str; 3] =
    ["failure-no-such-column", "failure-no-such-column-remedy", "failure-no-such-column-near"];
const NO_SUCH_KIND: [&str; 3] =
    ["failure-no-such-kind", "failure-no-such-kind-remedy", "failure-no-such-kind-near"];

fn found<'a>(
    name: &str,
    all: impl Iterator<Item = &'a str>,
    [sentence, remedy, remedy_near]: [&'static str; 3],
) -> Result<usize, Failure> {
    let all: Vec<&str> = all.collect();
    let folded = name.to_lowercase();
    all.iter().position(|other| other.to_lowercase() == folded).ok_or_else(|| {
        let names = ("names", all.join(", ").into());
        let remedy = match nearest(name, all.iter().copied()) {
            Some(near) => Words::new(remedy_near, [("near", near.into()), names]),
            None => Words::new(remedy, [names]),
        };
        Failure::of(Words::new(sentence, [("name", name.into())]), remedy).wrongly_used()
    })
}

/// The questions to keep, as linked to the table.
fn kept(
    t: Tongue,
    args: &args::Wishes,
    matrix: &Matrix,
) -> Result<(Vec<Kept>, Vec<Finding>), Failure> {
    let text = match (&args.first, &args.keep) {
        (Some(question), _) => format!("1. {question} Yes -> ?, No -> ?\n"),
        (None, Some(path)) => opened::key(path)?,
        (None, None) => return Ok((Vec::new(), Vec::new())),
    };
    let mut findings = Vec::new();
    let links = command::check::links(args.links.as_deref(), matrix, &mut findings)?;
    let given = command::check::in_words(t, &text, matrix, links);
    findings.extend(given.findings);
    let open_ends = [Code::NothingWritten, Code::NameUnknown, Code::NameNotSure];
    findings.retain(|finding| !open_ends.contains(&finding.code));
    if let Some(couplet) = given.key.couplets.iter().find(|couplet| couplet.ask.is_none()) {
        return Err(not_linked(couplet, &findings, matrix));
    }
    let (kept, placed) = kept_from(&given.key);
    if kept.len() > MOST_KEPT {
        return Err(Failure::usage("failure-too-many-kept", [("most", MOST_KEPT.into())]));
    }
    if kept.is_empty() {
        return Err(Failure::usage("failure-nothing-kept", []));
    }
    let left = (0..given.key.couplets.len()).find(|at| !placed.contains(at));
    if let Some(left) = left {
        let number = given.key.couplets[left].number;
        return Err(Failure::usage("failure-not-led-to", [("question", number.into())]));
    }
    Ok((kept, findings))
}

/// A question to keep that is not linked to the table: why, and what settles it.
fn not_linked(couplet: &Couplet, findings: &[Finding], matrix: &Matrix) -> Failure {
    let words = command::words(&couplet.wording).to_owned();
    let columns: Vec<&str> = matrix.characters().iter().map(|c| c.name.as_str()).collect();
    let texts = [("question", words.into()), ("columns", columns.join(", ").into())];
    let what = Words::new("failure-not-linked", texts);
    let here = findings.iter().find(|finding| finding.place == Place::Couplet(couplet.number));
    let Some(why) = here.cloned() else {
        return Failure::saying(move |t| what.told(t)).wrongly_used();
    };
    Failure::saying(move |t| {
        let (sentence, remedy) = spinney_voice::finding(&why, t);
        (format!("{} {sentence}", what.said(t)), remedy)
    })
    .wrongly_used()
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
