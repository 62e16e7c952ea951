//! From the words of the model to the shape of our JSON.

use spinney_model::{
    Ask, Asked, Claim, Couplet, Destination, Finding, KeptPrice, Key, Matrix, Reasons, Scale,
    Stopped, Wording,
};

use super::number::{exact, of_quantity, of_share};
use super::{Effort, shape};

pub(super) fn report(report: &super::Report) -> shape::Report {
    let matrix = report.matrix;
    shape::Report {
        key: report.key.map(|key| self::key(key, matrix)),
        cost: report.claim.map(Effort::from).or(report.effort).map(cost),
        proof: report.claim.map(proof),
        kept_price: report
            .claim
            .and_then(|claim| claim.kept.as_ref())
            .map(|kept| kept_price(kept, matrix)),
        links: report.questions_checked.map(|(checked, of)| shape::Checked { checked, of }),
        findings: report.findings.iter().map(finding).collect(),
        reasons: report.reasons.iter().map(|reason| reasons(reason, matrix)).collect(),
    }
}

pub(super) fn key_alone(key: &Key, matrix: &Matrix) -> shape::Report {
    shape::Report {
        key: Some(self::key(key, matrix)),
        cost: None,
        proof: None,
        kept_price: None,
        links: None,
        findings: Vec::new(),
        reasons: Vec::new(),
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
        total: of_share(effort.total),
        total_exact: Some(exact(effort.total)),
        mean_steps: of_share(effort.mean_steps),
        mean_steps_exact: Some(exact(effort.mean_steps)),
        longest: effort.longest,
    }
}

fn proof(claim: &Claim) -> shape::Proof {
    let stopped = claim.stopped.map(|stopped| match stopped {
        Stopped::Budget => "budget",
        Stopped::Overflow => "overflow",
    });
    shape::Proof {
        optimal: claim.optimal(),
        lower_bound: of_share(claim.lower_bound),
        lower_bound_exact: Some(exact(claim.lower_bound)),
        stopped: stopped.map(str::to_owned),
        heaps: claim.heaps,
    }
}

fn kept_price(kept: &KeptPrice, matrix: &Matrix) -> shape::KeptPrice {
    shape::KeptPrice {
        free_total: of_share(kept.free_total),
        free_total_exact: Some(exact(kept.free_total)),
        free_optimal: kept.free_optimal,
        refused: kept.refused.iter().map(|refused| ask(refused, matrix)).collect(),
    }
}

fn finding(finding: &Finding) -> shape::Finding {
    shape::Finding {
        code: finding.code.text().to_owned(),
        severity: finding.severity.words().to_owned(),
        place: finding.place.to_string(),
        sentence: finding.sentence.clone(),
        remedy: finding.remedy.clone(),
    }
}

fn reasons(reasons: &Reasons, matrix: &Matrix) -> shape::Reasons {
    let (yes, no, both) = reasons.heaps;
    let alternative = |other: &spinney_model::Alternative| shape::Alternative {
        ask: ask(&other.ask, matrix),
        extra: of_share(other.extra),
        extra_exact: Some(exact(other.extra)),
        exact: other.exact,
    };
    shape::Reasons {
        couplet: reasons.couplet,
        kinds: reasons.kinds,
        heaps: shape::Heaps { yes, no, both },
        alternatives: reasons.alternatives.iter().map(alternative).collect(),
    }
}
