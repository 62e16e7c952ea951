//! Every number of sixty drawn leaves, so that a change of any is seen.
//!
//! Leaves of all shapes with all edges, whole, lobed and compound, scanned at 110 and 120 dpi: what
//! is measured and counted, to four decimals. That it is near the truth other tests say
//! (`scans`, `forms`); here nothing may change that nobody meant to change.

#[path = "packing/png.rs"]
mod png_file;

use fastrand::Rng;
use png_file::packed;
use spinney_fixtures::approved::{brief, checksum, holds, rounded};
use spinney_fixtures::leaves::form::{Blade, FormPlan, Leaflets, LobeForm, Margin};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Edge, Leaf, Plan, Shape};
use spinney_measure::{Picture, measure, read, upright};

fn scanned<T>(leaf: &Leaf<T>, dpi: f64, turn: f64, noise: f64) -> Picture {
    let page = Page { dpi, noise, ..Page::of_one(leaf, turn) };
    let file = packed(&page.scanned(&mut Rng::with_seed(11)), page.pixels());
    read(&file, Some(dpi)).expect("a picture")
}

/// All that is measured of a picture, a line a number.
fn lines(name: &str, picture: &Picture) -> Vec<String> {
    let mut lines = vec![name.to_owned()];
    let found = match measure(picture) {
        Ok(found) => found,
        Err(why) => {
            lines.push(format!("  {why:?}"));
            return lines;
        }
    };
    let mut line = |text: String| lines.push(format!("  {}", rounded(&text, 4)));
    line(format!("{:?} {:?} left out {:?}", found.size, found.scale, found.left_out));
    for leaf in &found.leaves {
        let mut said = String::new();
        for measure in &leaf.measures {
            match measure {
                Ok(it) => {
                    said += &format!("{:?} {:.4} ± {:.4}, ", it.what, it.value, it.plus_minus)
                }
                Err((of, why)) => said += &format!("{of:?} {why:?}, "),
            }
        }
        line(format!("leaf {} {said}{:?}", leaf.number, leaf.notes));
        line(format!("{:?}", leaf.form));
        line(brief(&format!("harmonics {:.4?}", leaf.harmonics), 90));
        let drawn =
            [&leaf.lines.outline, &leaf.lines.blade, &leaf.lines.midrib, &leaf.lines.stalk];
        let drawn = drawn
            .map(|line| format!("{} {:016x}", line.len(), checksum(&format!("{line:.3?}"))));
        line(format!(
            "lines {drawn:?} width {:.3?} cut {:.3?}",
            leaf.lines.width, leaf.lines.cut
        ));
        let upright = upright(picture, &leaf.lines).expect("it can be cut out");
        let sum = checksum(&format!("{:?}", upright.rgba));
        line(format!("upright {:?} {sum:016x}", upright.size));
    }
    lines
}

fn approved(name: &str, lines: &[String]) {
    holds(env!("CARGO_MANIFEST_DIR"), name, lines);
}

#[test]
fn approved_numbers_of_simple_leaves() {
    let mut all = Vec::new();
    for (at, shape) in Shape::ALL.into_iter().enumerate() {
        for (edge, lobes) in
            [(Edge::Smooth, 0), (Edge::Toothed, 0), (Edge::Wavy, 0), (Edge::Smooth, 2)]
        {
            let mut rng = Rng::with_seed(at as u64);
            let plan = Plan { length: 42.0, ..Plan::seeded(&mut rng, shape, edge, lobes) };
            let picture = scanned(&plan.leaf(), 110.0, 0.5 * at as f64, 0.0);
            all.extend(lines(&format!("{shape:?} {edge:?} {lobes} lobes"), &picture));
        }
    }
    approved("simple_leaves.txt", &all);
}

#[test]
fn approved_numbers_of_lobed_and_compound_leaves() {
    let mut all = Vec::new();
    let blades = [
        Blade::Plain,
        Blade::Feather(2),
        Blade::Feather(4),
        Blade::Hand(2, 0.7),
        Blade::Hand(1, 1.0),
        Blade::Compound(Leaflets::Feather {
            pairs: 3,
            end: true,
            lean: 0.2,
            stagger: 0.1,
            stalk: 1.5,
        }),
        Blade::Compound(Leaflets::Feather {
            pairs: 2,
            end: false,
            lean: 0.3,
            stagger: 0.0,
            stalk: 1.5,
        }),
        Blade::Compound(Leaflets::Hand { count: 5, apart: 0.6, stalk: 1.5 }),
    ];
    let margins = [Margin::Smooth, Margin::Serrate];
    for (at, blade) in blades.into_iter().enumerate() {
        for margin in margins {
            let mut rng = Rng::with_seed(40 + at as u64);
            let plan =
                FormPlan::seeded(&mut rng, (Shape::Ovate, blade, LobeForm::Round), margin);
            let picture = scanned(&plan.leaf(), 120.0, 0.3, 1.5);
            all.extend(lines(&format!("{blade:?} {margin:?}"), &picture));
        }
    }
    approved("lobed_and_compound_leaves.txt", &all);
}
