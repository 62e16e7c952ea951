//! What a leaf says besides lengths, in words.
//!
//! From its form to phrases, in the words that the glossary explains.

use spinney_model::{
    Arrangement, BaseForm, BaseSides, Edge, EdgeKind, EdgeUnseen, Ends, LeafForm, Leaflets,
    Lobes, OneSide, TipForm, VeinPairs, Veins, VeinsUnseen, WhichSide, WithPlusMinus,
};

use super::rounded;
use crate::Tongue;

/// What is to be said of a leaf's form: `7 lobes along the midrib`, `deepest gap 52 ± 6 % of the way
/// in`, `edge toothed`, `12 teeth on the left, 11 on the right`.
pub fn form(t: Tongue, form: &LeafForm) -> Vec<String> {
    let mut said = Vec::new();
    said.extend(form.leaflets.iter().flat_map(|it| leaflets(t, it)));
    said.extend(form.lobes.iter().flat_map(|it| lobes(t, it)));
    match &form.edge {
        Ok(edge) => said.extend(edge_of(t, edge, form.leaflets.is_some())),
        Err(EdgeUnseen::TooCoarse) => said.push(t.say("measure-edge-unseen")),
        Err(EdgeUnseen::Rubbed) => said.push(t.say("measure-edge-rubbed")),
    }
    said.extend(form.ends.iter().flat_map(|it| ends(t, it)));
    match &form.veins {
        Ok(seen) => said.extend(veins(t, seen)),
        Err(VeinsUnseen::Faint) => said.push(t.say("measure-veins-unseen")),
        Err(VeinsUnseen::NotLookedFor) => {}
    }
    said
}

fn veins(t: Tongue, veins: &Veins) -> [String; 2] {
    let [left, right] = veins.sides.each_ref().map(Vec::len);
    let pairs = match veins.pairs {
        Some(VeinPairs::Opposite) => "measure-veins-opposite",
        Some(VeinPairs::Alternate) => "measure-veins-alternate",
        None => "measure-veins-pairs-unseen",
    };
    [t.with("measure-veins", &[("left", &left), ("right", &right)]), t.say(pairs)]
}

fn ends(t: Tongue, ends: &Ends) -> Vec<String> {
    let angle = |what: String, angle: Option<WithPlusMinus>| match angle {
        None => what,
        Some(angle) => {
            let [value, half] = both(t, angle.value, angle.plus_minus);
            t.with("measure-angle", &[("what", &what), ("value", &value), ("half", &half)])
        }
    };
    let percent = |share: f64| 100.0 * share;
    let [value, half] = both(t, percent(ends.widest.value), percent(ends.widest.plus_minus));
    let base = match ends.base {
        BaseForm::Rounded | BaseForm::WedgeShaped if !is_clear(ends.base_angle) => {
            t.say("measure-base-rounded-or-wedge-shaped")
        }
        form => base_form(t, form),
    };
    let tip = match ends.tip {
        TipForm::Pointed | TipForm::Rounded if !is_clear(ends.tip_angle) => {
            t.say("measure-tip-pointed-or-rounded")
        }
        form => tip_form(t, form),
    };
    let (base, tip) = (angle(base, ends.base_angle), angle(tip, ends.tip_angle));
    let widest = t.with("measure-widest", &[("value", &value), ("half", &half)]);
    [base].into_iter().chain(base_sides(t, ends.sides)).chain([tip, widest]).collect()
}

/// Whether both sides of a base are the same, as far as it is told.
fn base_sides(t: Tongue, sides: BaseSides) -> Vec<String> {
    let more = |side: Option<OneSide>, left: &str, right: &str| {
        let side = side?;
        let key = match side.which? {
            WhichSide::Neither => return None,
            WhichSide::Left => left,
            WhichSide::Right => right,
        };
        let WithPlusMinus { value, plus_minus } = side.value;
        let [value, half] = both(t, 100.0 * value, 100.0 * plus_minus);
        Some(t.with(key, &[("value", &value), ("half", &half)]))
    };
    let lower = more(sides.lower, "measure-base-lower-left", "measure-base-lower-right");
    let wider = more(sides.wider, "measure-base-wider-left", "measure-base-wider-right");
    let said: Vec<String> = lower.into_iter().chain(wider).collect();
    if !said.is_empty() {
        return said;
    }
    let told = |side: Option<OneSide>| side.is_some_and(|side| side.which.is_some());
    vec![t.say(match (told(sides.lower), told(sides.wider)) {
        (true, true) => "measure-base-alike",
        (true, false) => "measure-base-begins-alike",
        (false, true) => "measure-base-as-wide",
        (false, false) => "measure-base-sides-unseen",
    })]
}

/// A number and its ±, with as many digits as they are sure of.
fn both(t: Tongue, value: f64, half: f64) -> [String; 2] {
    [value, half].map(|number| t.decimal(&rounded(number, half)))
}

/// Whether an angle is surely on one side of a right one, where forms part.
pub(crate) fn is_clear(angle: Option<WithPlusMinus>) -> bool {
    angle.is_none_or(|angle| (angle.value - 90.0).abs() > angle.plus_minus)
}

/// How a base is: `base rounded`.
pub fn base_form(t: Tongue, form: BaseForm) -> String {
    t.say(match form {
        BaseForm::HeartShaped => "measure-base-heart-shaped",
        BaseForm::CutOff => "measure-base-cut-off",
        BaseForm::Rounded => "measure-base-rounded",
        BaseForm::WedgeShaped => "measure-base-wedge-shaped",
        BaseForm::DrawnIn => "measure-base-drawn-in",
    })
}

/// How a tip is: `tip pointed`.
pub fn tip_form(t: Tongue, form: TipForm) -> String {
    t.say(match form {
        TipForm::DrawnOut => "measure-tip-drawn-out",
        TipForm::Pointed => "measure-tip-pointed",
        TipForm::Rounded => "measure-tip-rounded",
        TipForm::Notched => "measure-tip-notched",
    })
}

fn leaflets(t: Tongue, leaflets: &Leaflets) -> Vec<String> {
    let count = t.count("measure-leaflets", leaflets.middles.len());
    let arranged = match leaflets.arrangement {
        Arrangement::Feather => "measure-like-a-feather",
        Arrangement::Hand => "measure-like-a-hand",
    };
    let mut said = vec![t.with(arranged, &[("what", &count)])];
    said.extend(leaflets.at_end.map(|at_end| match at_end {
        true => t.say("measure-leaflet-at-end"),
        false => t.say("measure-no-leaflet-at-end"),
    }));
    said
}

fn lobes(t: Tongue, lobes: &Lobes) -> Vec<String> {
    let Some(sinuses) = &lobes.sinuses else { return vec![t.say("measure-unlobed")] };
    let count = t.count("measure-lobes", lobes.count());
    let [depth, half] = both(t, 100.0 * sinuses.depth, 100.0 * sinuses.plus_minus);
    vec![
        // In the words of the good questions, of which these become columns.
        match sinuses.arrangement {
            None => count,
            Some(Arrangement::Feather) => {
                t.with("measure-along-the-midrib", &[("what", &count)])
            }
            Some(Arrangement::Hand) => t.with("measure-from-one-place", &[("what", &count)]),
        },
        t.with("measure-deepest-gap", &[("depth", &depth), ("half", &half)]),
    ]
}

fn edge_of(t: Tongue, edge: &Edge, of_leaflets: bool) -> Vec<String> {
    let mut said = vec![edge_kind(t, edge.kind)];
    let [left, right] = edge.teeth.each_ref().map(Vec::len);
    let sides = [("left", &left as &dyn std::fmt::Display), ("right", &right)];
    match edge.kind {
        EdgeKind::Entire => {}
        EdgeKind::Wavy => said.push(t.with("measure-waves", &sides)),
        _ if of_leaflets => said.push(t.count("measure-teeth-of-leaflets", left + right)),
        _ => said.push(t.with("measure-teeth", &sides)),
    }
    if let Some(per_cm) = edge.per_cm {
        let [value, half] = both(t, per_cm.value, per_cm.plus_minus);
        said.push(t.with("measure-per-cm", &[("value", &value), ("half", &half)]));
    }
    said
}

/// How an edge is: `edge toothed`.
pub fn edge_kind(t: Tongue, kind: EdgeKind) -> String {
    t.say(match kind {
        EdgeKind::Entire => "measure-edge-entire",
        EdgeKind::Wavy => "measure-edge-wavy",
        EdgeKind::Toothed => "measure-edge-toothed",
        EdgeKind::DoubleToothed => "measure-edge-double-toothed",
        EdgeKind::ToothedOrDouble => "measure-edge-toothed-or-double",
        EdgeKind::Spiny => "measure-edge-spiny",
    })
}
