//! From the words of the model to the shape of our JSON.

use spinney_model::{
    Alternative, Ask, Asked, BestKeys, CharacterIx, Claim, Couplet, Destination, Finding,
    KeptPrice, Key, Matrix, Reasons, Scale, Share, Stopped, TaxonIx, Wording,
};

use super::number::{exact, of_quantity, of_share};
use super::{Effort, Say, certificate, shape};

mod wished;

pub(super) fn report(report: &super::Report, say: Say) -> shape::Report {
    let matrix = report.matrix;
    let claimed = report.claim;
    shape::Report {
        key: report.key.map(|key| self::key(key, matrix)),
        cost: report.claim.map(Effort::from).or(report.effort).map(cost),
        proof: report.claim.map(|claim| proof(claim, matrix)),
        kept_price: report
            .claim
            .and_then(|claim| claim.kept.as_ref())
            .map(|kept| kept_price(kept, matrix)),
        wishes: report.claim.and_then(|claim| wished::wishes(claim, matrix)),
        reached: claimed.iter().flat_map(|claim| &claim.reached).map(wished::reached).collect(),
        prices: claimed
            .iter()
            .flat_map(|claim| claim.prices.iter().map(move |price| (price, claim)))
            .map(|(price, claim)| wished::price(price, claim, matrix))
            .collect(),
        refused: report.refused.iter().map(|one| wished::refused(one, matrix)).collect(),
        touching: claimed.map(|claim| claim.touching.clone()).unwrap_or_default(),
        links: report.questions_checked.map(|(checked, of)| shape::Checked { checked, of }),
        findings: report.findings.iter().map(|one| finding(one, say)).collect(),
        reasons: report.reasons.iter().map(|reason| reasons(reason, matrix)).collect(),
        best_keys: report.best_keys.map(|best| best_keys(best, matrix)),
    }
}

pub(super) fn key_alone(key: &Key, matrix: &Matrix) -> shape::Report {
    let alone = super::Report { key: Some(key), ..super::Report::of(matrix) };
    report(&alone, |_| unreachable!("a key alone comes without findings"))
}

fn best_keys(best: &BestKeys, matrix: &Matrix) -> shape::BestKeys {
    let one = |(one, total): &(Key, Share)| shape::OneOfTheBest {
        key: key(one, matrix),
        effort_total: of_share(*total),
        effort_total_exact: Some(exact(*total)),
    };
    shape::BestKeys {
        keys: best.keys.iter().map(one).collect(),
        sure: best.sure,
        as_good: best.as_good.map(|as_good| shape::AsGood {
            keys: as_good.keys.to_string(),
            nestings: as_good.nestings.to_string(),
        }),
    }
}

fn key(key: &Key, matrix: &Matrix) -> shape::Key {
    shape::Key { couplets: key.couplets.iter().map(|c| couplet(c, matrix)).collect() }
}

fn couplet(couplet: &Couplet, matrix: &Matrix) -> shape::Couplet {
    let leads = match &couplet.wording {
        Wording::Question(_) => None,
        Wording::Leads { yes, no } => Some((yes.clone(), no.clone())),
    };
    shape::Couplet {
        number: couplet.number,
        back: couplet.back,
        question: couplet.wording.first().to_owned(),
        leads,
        ask: couplet.ask.as_ref().map(|asked| ask(asked, matrix)),
        yes: destination(&couplet.yes, matrix),
        no: destination(&couplet.no, matrix),
        kept: couplet.kept,
    }
}

fn ask(ask: &Ask, matrix: &Matrix) -> shape::Ask {
    let character = matrix.character(ask.character);
    let mut shape = shape::Ask {
        character: character.name.clone(),
        states: None,
        at_least: None,
        below: None,
        unit: match &character.scale {
            Scale::Measure { unit, .. } => Some(unit.sign().to_owned()),
            Scale::Words { .. } | Scale::Counts => None,
        },
    };
    match &ask.yes {
        Asked::States(asked) => {
            let Scale::Words { states } = &character.scale else {
                shape.states = Some(Vec::new());
                return shape;
            };
            let names = asked.iter().filter_map(|ix| states.get(ix.0));
            shape.states = Some(names.cloned().collect());
        }
        Asked::AtLeast(number) => shape.at_least = Some(of_quantity(*number)),
        Asked::Below(number) => shape.below = Some(of_quantity(*number)),
    }
    shape
}

fn destination(destination: &Destination, matrix: &Matrix) -> Option<shape::Destination> {
    match destination {
        Destination::Missing => None,
        Destination::Couplet(number) => Some(shape::Destination {
            couplet: Some(*number),
            taxa: None,
            unrecognised: Vec::new(),
        }),
        Destination::End(end) => Some(shape::Destination {
            couplet: None,
            taxa: Some(end.taxa.iter().map(|ix| matrix.taxon(*ix).name.clone()).collect()),
            unrecognised: end.unrecognised.clone(),
        }),
    }
}

fn cost(effort: Effort) -> shape::Cost {
    shape::Cost {
        effort_total: of_share(effort.total),
        effort_total_exact: Some(exact(effort.total)),
        mean_questions: of_share(effort.mean_questions),
        mean_questions_exact: Some(exact(effort.mean_questions)),
        longest: effort.longest,
    }
}

fn proof(claim: &Claim, matrix: &Matrix) -> shape::Proof {
    shape::Proof {
        optimal: claim.optimal(),
        lower_bound: of_share(claim.lower_bound),
        lower_bound_exact: Some(exact(claim.lower_bound)),
        stopped: stopped(claim.stopped).map(str::to_owned),
        heaps: Some(claim.heaps),
        certificate: claim.certificate.as_ref().map(|proof| certificate::write(proof, matrix)),
    }
}

/// Why a search ended before it was sure.
pub(super) fn stopped(why: Option<Stopped>) -> Option<&'static str> {
    why.map(|why| match why {
        Stopped::Budget => "budget",
        Stopped::Memory => "memory",
        Stopped::Overflow => "overflow",
    })
}

fn kept_price(kept: &KeptPrice, matrix: &Matrix) -> shape::KeptPrice {
    shape::KeptPrice {
        without_wishes: of_share(kept.without_wishes),
        without_wishes_exact: Some(exact(kept.without_wishes)),
        without_wishes_optimal: kept.without_wishes_optimal,
        refused: kept.refused.iter().map(|refused| ask(refused, matrix)).collect(),
    }
}

pub(super) fn finding(finding: &Finding, say: Say) -> shape::Finding {
    let (sentence, remedy) = say(finding);
    shape::Finding {
        code: finding.code.text().to_owned(),
        severity: finding.severity.words().to_owned(),
        place: finding.place.to_string(),
        sentence,
        remedy,
    }
}

fn reasons(reasons: &Reasons, matrix: &Matrix) -> shape::Reasons {
    let alternative = |other: &Alternative| shape::Alternative {
        ask: ask(&other.ask, matrix),
        heaps: Some(heaps(other.heaps)),
        extra: of_share(other.extra),
        extra_exact: Some(exact(other.extra)),
        exact: other.exact,
    };
    let also = |(also, opposite): &(Ask, bool)| shape::Also {
        ask: ask(also, matrix),
        opposite: *opposite,
    };
    let blocked = |(at, taxon): &(CharacterIx, TaxonIx)| shape::Blocked {
        character: matrix.character(*at).name.clone(),
        kind: matrix.taxon(*taxon).name.clone(),
    };
    shape::Reasons {
        couplet: reasons.couplet,
        kinds: reasons.kinds,
        heaps: heaps(reasons.heaps),
        also: reasons.also.iter().map(also).collect(),
        alternatives: reasons.alternatives.iter().map(alternative).collect(),
        blocked: reasons.blocked.iter().map(blocked).collect(),
        not_by_touch: reasons.not_by_touch.as_ref().map(|barred| shape::NotByTouch {
            instead: alternative(&barred.instead),
            kinds: barred.kinds.iter().map(|at| matrix.taxon(*at).name.clone()).collect(),
        }),
    }
}

fn heaps((yes, no, both): (usize, usize, usize)) -> shape::Heaps {
    shape::Heaps { yes, no, both }
}
