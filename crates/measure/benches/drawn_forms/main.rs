//! How often lobes, edges and leaflets of drawn leaves are told right:
//! `cargo bench -p spinney-measure --bench drawn_forms -- 4`.
//!
//! Some hundred leaves (`fixtures::leaves::form`), each on a page of its own: shapes × edges × lobes ×
//! leaflets, turned, at 150, 300 and 600 dpi, with blur, noise, shade, uneven light, as PNG and as
//! JPEG 60. Families by which the rules were built and families by which they are judged have no
//! shape and no seed in common, and are listed apart. `-- N` draws N of each. `WORST=1` lists what
//! was told wrong, `KEEP=folder` keeps its scans, and `-- built` or `-- judged` draws those alone.

mod families;

use std::io::Cursor;

use families::{Family, families};
use fastrand::Rng;
use image::ImageEncoder;
use spinney_fixtures::leaves::form::{Blade, FormPlan, FormTruth};
use spinney_fixtures::leaves::scan::Page;
use spinney_model::{Arrangement, MeasuredLeaf};

/// A drawn leaf and what was measured of it.
struct Pair {
    plan: FormPlan,
    truth: FormTruth,
    leaf: Option<MeasuredLeaf>,
    told: String,
}

fn main() {
    let count = std::env::args().filter_map(|word| word.parse().ok()).next().unwrap_or(4);
    let named = |name: &str| std::env::args().any(|word| word == name);
    for (name, seed) in [("built", 11), ("judged", 12)] {
        // One of the two alone, where it is named.
        if (named("built") || named("judged")) && !named(name) {
            continue;
        }
        let mut rng = Rng::with_seed(seed);
        let mut pairs = Vec::new();
        for family in families(name == "judged") {
            for _ in 0..count {
                pairs.push(drawn(&mut rng, family));
            }
        }
        told(name, &pairs);
    }
}

fn drawn(rng: &mut Rng, family: Family) -> Pair {
    let blade = family.blade(rng);
    let plan = FormPlan::seeded(rng, (family.shape, blade, family.lobe_form), family.margin);
    let leaf = plan.leaf();
    let mut page = Page::of_one(&leaf, rng.f64() * 6.3);
    page.dpi = [150.0, 300.0, 600.0][rng.usize(..3)];
    page.blur = 0.4 + 1.1 * rng.f64();
    page.noise = 4.0 * rng.f64();
    page.shade = [0.0, 0.3][rng.usize(..2)];
    page.uneven = [0.0, 0.25][rng.usize(..2)];
    let jpeg = rng.bool();
    let told = format!(
        "{:?} {:?} {:?} {:?} depth {:.2} {:.0} mm pitch {:.1} tooth {:.1}, {} dpi, blur {:.1}, noise {:.1}, shade {}, uneven {}, {}",
        family.shape,
        blade,
        plan.lobe_form,
        plan.margin,
        plan.depth,
        plan.length,
        plan.pitch,
        plan.tooth,
        page.dpi,
        page.blur,
        page.noise,
        page.shade,
        page.uneven,
        if jpeg { "JPEG" } else { "PNG" },
    );
    let file = packed(&page, rng, jpeg);
    let found = spinney_measure::read(&file, Some(page.dpi))
        .and_then(|picture| spinney_measure::measure(&picture));
    let found = found.ok().filter(|found| found.leaves.len() == 1);
    let leaf = found.and_then(|found| found.leaves.into_iter().next());
    let pair = Pair { truth: plan.leaf().truth, plan, leaf, told };
    if let Ok(folder) = std::env::var("KEEP")
        && asked().iter().any(|asked| (asked.right)(&pair) == Some(false))
    {
        let name: String = pair
            .told
            .chars()
            .filter(|letter| letter.is_alphanumeric() || *letter == '.')
            .collect();
        let ending = if jpeg { "jpg" } else { "png" };
        std::fs::write(format!("{folder}/{name}.{ending}"), &file)
            .expect("a folder to keep in");
    }
    pair
}

fn packed(page: &Page<'_, FormTruth>, rng: &mut Rng, jpeg: bool) -> Vec<u8> {
    let pixels = page.scanned(rng);
    let (width, height) = page.pixels();
    let mut file = Cursor::new(Vec::new());
    if jpeg {
        jpeg_encoder::Encoder::new(&mut file, 60)
            .encode(&pixels, width as u16, height as u16, jpeg_encoder::ColorType::Rgb)
            .expect("it can be packed");
    } else {
        image::codecs::png::PngEncoder::new(&mut file)
            .write_image(&pixels, width as u32, height as u32, image::ExtendedColorType::Rgb8)
            .expect("it can be packed");
    }
    file.into_inner()
}

/// Something that is asked of each leaf.
struct Asked {
    what: &'static str,
    /// None: it is not asked of this leaf.
    right: fn(&Pair) -> Option<bool>,
}

/// A leaf that was not found has nothing right.
fn of(pair: &Pair, right: impl Fn(&MeasuredLeaf) -> bool) -> bool {
    pair.leaf.as_ref().is_some_and(right)
}

fn simple(pair: &Pair) -> bool {
    !matches!(pair.plan.blade, Blade::Compound(_))
}

fn asked() -> Vec<Asked> {
    vec![
        Asked {
            what: "number of lobes",
            right: |pair| {
                simple(pair)
                    .then(|| of(pair, |leaf| leaf.form.lobes.count() == pair.truth.lobes))
            },
        },
        Asked {
            what: "feather or hand, where it is said",
            right: |pair| {
                let said = pair.leaf.as_ref()?.form.lobes.sinuses.as_ref()?.arrangement;
                simple(pair).then_some(())?;
                said.map(|said: Arrangement| Some(said) == pair.truth.arrangement)
            },
        },
        Asked {
            what: "feather or hand is said of five lobes and more",
            right: |pair| {
                let lobes = &pair.leaf.as_ref()?.form.lobes;
                let said = lobes.sinuses.as_ref()?.arrangement.is_some();
                (simple(pair) && pair.truth.lobes >= 5).then_some(said)
            },
        },
        Asked {
            what: "depth within 0.1",
            right: |pair| {
                let depth = pair.leaf.as_ref()?.form.lobes.sinuses.as_ref()?.depth;
                (simple(pair) && pair.truth.lobes > 1)
                    .then_some((depth - pair.plan.depth).abs() <= 0.1)
            },
        },
    ]
}

fn told(name: &str, pairs: &[Pair]) {
    let found = pairs.iter().filter(|pair| pair.leaf.is_some()).count();
    println!("\n{name}: {} leaves, {found} found", pairs.len());
    println!("asked | n | right");
    for asked in asked() {
        let all: Vec<(bool, &Pair)> = pairs
            .iter()
            .filter_map(|pair| (asked.right)(pair).map(|right| (right, pair)))
            .collect();
        let right = all.iter().filter(|(right, _)| *right).count();
        let share = 100.0 * right as f64 / all.len().max(1) as f64;
        println!("{} | {} | {share:.1} %", asked.what, all.len());
        if std::env::var("WORST").is_ok() {
            for (_, pair) in all.iter().filter(|(right, _)| !right) {
                let form = pair.leaf.as_ref().map(|leaf| families::said(&leaf.form));
                let truth = pair.truth;
                println!("    {}\n        {truth:?}\n        {form:?}", pair.told);
            }
        }
    }
}
