//! A scan of drawn leaves, to try the screen *Measure* with.
//!
//! `cargo run -p spinney-desk --example drawn_scan -- scan.png 12 300` draws twelve leaves of
//! four invented kinds on a page of A4 at 300 dots per inch, which the file says; `scan.jpg` is
//! packed as JPEG.

use std::io::BufWriter;

use fastrand::Rng;
use image::{ExtendedColorType, ImageEncoder};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Edge, Leaf, Plan, Shape};

/// A4 in mm.
const A4: (f64, f64) = (210.0, 297.0);

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut given = std::env::args().skip(1);
    let path = given.next().ok_or("where to?")?;
    let count: usize = given.next().map_or(Ok(12), |text| text.parse())?;
    let dpi: f64 = given.next().map_or(Ok(300.0), |text| text.parse())?;
    let mut rng = Rng::with_seed(9);
    let forms = [
        (Shape::Ovate, Edge::Toothed, 0),
        (Shape::Oblong, Edge::Smooth, 4),
        (Shape::Lance, Edge::Smooth, 0),
        (Shape::Heart, Edge::Toothed, 0),
    ];
    let columns = (count as f64).sqrt().ceil() as usize;
    let rows = count.div_ceil(columns);
    let (wide, high) = (A4.0 / columns as f64, A4.1 / rows as f64);
    let leaves: Vec<Leaf> = (0..count)
        .map(|at| {
            let (shape, edge, lobes) = forms[at % forms.len()];
            let plan = Plan::seeded(&mut rng, shape, edge, lobes);
            let most = (high - 24.0).min((wide - 12.0) / (2.4 * plan.half_width)).max(12.0);
            let length = plan.length.min(most);
            let stalk = (length * 0.25).min(high - length - 14.0).max(4.0);
            Plan { length, stalk, ..plan }.leaf()
        })
        .collect();
    let placed = leaves.iter().enumerate().map(|(at, leaf)| {
        let (column, row) = ((at % columns) as f64, (at / columns) as f64);
        let base = [(column + 0.5) * wide, (row + 0.5) * high + leaf.truth.length * 0.4];
        (leaf, base, 0.3 * (rng.f64() - 0.5))
    });
    let leaves = placed.collect();
    let page = Page {
        size: A4,
        dpi,
        leaves,
        noise: 2.0,
        shade: 0.2,
        ..Page::of_one(
            &Plan::seeded(&mut Rng::with_seed(1), Shape::Ovate, Edge::Smooth, 0).leaf(),
            0.0,
        )
    };
    let (width, height) = page.pixels();
    let pixels = page.scanned(&mut Rng::with_seed(5));
    let mut file = BufWriter::new(std::fs::File::create(&path)?);
    if path.ends_with(".jpg") {
        let mut encoder = image::codecs::jpeg::JpegEncoder::new_with_quality(&mut file, 90);
        encoder.set_pixel_density(image::codecs::jpeg::PixelDensity::dpi(dpi as u16));
        encoder.write_image(&pixels, width as u32, height as u32, ExtendedColorType::Rgb8)?;
        return Ok(());
    }
    let mut encoder = png::Encoder::new(file, width as u32, height as u32);
    encoder.set_color(png::ColorType::Rgb);
    let per_metre = (dpi / 0.0254).round() as u32;
    encoder.set_pixel_dims(Some(png::PixelDimensions {
        xppu: per_metre,
        yppu: per_metre,
        unit: png::Unit::Meter,
    }));
    encoder.write_header()?.write_image_data(&pixels)?;
    Ok(())
}
