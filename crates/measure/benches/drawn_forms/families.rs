//! Which leaves are drawn: families by which the rules were built, and families by which they are
//! judged.

use fastrand::Rng;
use spinney_fixtures::leaves::Shape;
use spinney_fixtures::leaves::form::{Blade, Leaflets, LobeForm, Margin};

/// What a leaf is made of, without its numbers.
#[derive(Clone, Copy)]
pub(crate) enum Kind {
    Plain,
    Feather,
    Hand,
    CompoundFeather,
    CompoundHand,
}

/// A family of leaves.
#[derive(Clone, Copy)]
pub(crate) struct Family {
    pub(crate) shape: Shape,
    pub(crate) kind: Kind,
    pub(crate) lobe_form: LobeForm,
    pub(crate) margin: Margin,
}

impl Family {
    /// Its parts, by chance.
    pub(crate) fn blade(self, rng: &mut Rng) -> Blade {
        let mut between = |low: f64, high: f64| low + (high - low) * rng.f64();
        match self.kind {
            Kind::Plain => Blade::Plain,
            Kind::Feather => Blade::Feather(between(1.0, 6.0) as usize),
            Kind::Hand => match between(0.0, 3.0) as usize {
                0 => Blade::Hand(3, between(0.7, 1.0)),
                1 => Blade::Hand(5, between(0.65, 0.85)),
                _ => Blade::Hand(7, between(0.5, 0.62)),
            },
            Kind::CompoundFeather => Blade::Compound(Leaflets::Feather {
                pairs: between(1.0, 8.0) as usize,
                end: between(0.0, 1.0) < 0.6,
                lean: between(0.85, 1.3),
                stagger: [0.0, 0.3][between(0.0, 2.0) as usize],
                stalk: between(0.3, 3.0),
            }),
            Kind::CompoundHand => {
                let count = [3, 5, 7][between(0.0, 3.0) as usize];
                let apart = match count {
                    3 => between(0.8, 1.2),
                    5 => between(0.65, 0.9),
                    _ => between(0.5, 0.62),
                };
                let stalk = between(0.3, 3.0);
                Blade::Compound(Leaflets::Hand { count, apart, stalk })
            }
        }
    }
}

/// All families: shapes, edges and forms of lobes by which the rules are judged are none of those by
/// which they were built, except for edges that have one form only.
pub(crate) fn families(judged: bool) -> Vec<Family> {
    let (plain, lobed, leaflets, lobe_forms, margins): (&[_], &[_], &[_], &[_], [Margin; 6]) =
        match judged {
            false => (
                &[Shape::Ellipse, Shape::Obovate, Shape::Rhombus],
                &[Shape::Ellipse, Shape::Obovate, Shape::Rhombus],
                &[Shape::Ellipse, Shape::Obovate],
                &[LobeForm::Round],
                [
                    Margin::Smooth,
                    Margin::Serrate,
                    Margin::Dentate,
                    Margin::Wavy,
                    Margin::Double,
                    Margin::Spiny,
                ],
            ),
            true => (
                &[Shape::Ovate, Shape::Oblong, Shape::Heart, Shape::Lance],
                &[Shape::Ovate, Shape::Oblong],
                &[Shape::Ovate, Shape::Lance],
                &[LobeForm::Pointed, LobeForm::Broad],
                [
                    Margin::Smooth,
                    Margin::Serrate,
                    Margin::Crenate,
                    Margin::Wavy,
                    Margin::Double,
                    Margin::SpinyArc,
                ],
            ),
        };
    let mut all = Vec::new();
    for margin in margins {
        let mut add = |shape, kind, lobe_form| {
            all.push(Family { shape, kind, lobe_form, margin });
        };
        for shape in plain {
            add(*shape, Kind::Plain, lobe_forms[0]);
        }
        // Waves on lobes are lobes of lobes, and so are spines; nobody's words are clear.
        let waved = margin == Margin::Wavy || margin.is_spiny();
        let lobed = if waved { &[] } else { lobed };
        for lobe_form in lobe_forms.iter().filter(|_| !lobed.is_empty()) {
            add(lobed[0], Kind::Hand, *lobe_form);
            for shape in lobed {
                add(*shape, Kind::Feather, *lobe_form);
            }
        }
        if matches!(margin, Margin::Smooth | Margin::Serrate) {
            for shape in leaflets {
                add(*shape, Kind::CompoundFeather, lobe_forms[0]);
                add(*shape, Kind::CompoundHand, lobe_forms[0]);
            }
        }
    }
    all
}
