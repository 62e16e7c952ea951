//! Readers of scans: files as a scanner or anybody else writes them, and outlines that no leaf has.
//!
//! As in `readers`: one function each, from bytes that anybody may have written to nothing.

use spinney_exchange::mends;
use spinney_measure::{cut_out, measure, mended, read};
use spinney_model::Mend;

use crate::readers::{Reader, parts};

/// The readers of scans.
pub(crate) const READERS: &[Reader] = &[("scan", 4_000, scan), ("leaves", 2_000, leaves)];

/// A file is refused, or measured and cut out.
fn scan(bytes: &[u8]) {
    look(bytes, &[]);
}

/// Black and white pixels, as many in a row as the first byte says, each as many times as large as the
/// second one says; then mends.
fn leaves(bytes: &[u8]) {
    let parts = parts(bytes);
    let [wide, large, bits @ ..] = parts[0] else { return };
    let (wide, large) = (usize::from(*wide % 64) + 8, usize::from(*large % 2) + 1);
    let high = (8 * bits.len()).div_ceil(wide).clamp(1, 64);
    let dark = |x: usize, y: usize| {
        let at = y / large * wide + x / large;
        bits.get(at / 8).is_some_and(|byte| byte >> (at % 8) & 1 == 1)
    };
    let file = bitmap((wide + 2) * large, (high + 2) * large, |x, y| {
        // A rim of paper, so that not all is cut off.
        let inside = x >= large && y >= large && x < (wide + 1) * large;
        if inside && dark(x - large, y - large) { 40 } else { 250 }
    });
    let text = parts.get(1).map(|text| String::from_utf8_lossy(text)).unwrap_or_default();
    let mends = mends::read(&text).unwrap_or_default();
    let mends: Vec<Mend> = mends.into_iter().map(|(_, mend)| mend).collect();
    look(&file, &mends);
}

fn look(file: &[u8], mends: &[Mend]) {
    let Ok(picture) = read(file, Some(300.0)) else { return };
    let Ok(found) = measure(&picture) else { return };
    let all = mended(&found, mends).unwrap_or_else(|_| found.clone());
    for leaf in found.leaves.iter().chain(&all.leaves) {
        for measure in leaf.measures.iter().flatten() {
            let (value, half) = (measure.value, measure.plus_minus);
            assert!(value.is_finite() && value >= 0.0, "{measure:?}");
            assert!(half.is_finite() && half >= 0.0, "{measure:?}");
        }
        let _ = cut_out(&picture, &leaf.lines);
    }
}

/// A BMP file of eight bits, grey: a head, a palette, rows from below.
fn bitmap(width: usize, height: usize, grey: impl Fn(usize, usize) -> u8) -> Vec<u8> {
    const HEAD: u32 = 14 + 40 + 4 * 256;
    let row = width.div_ceil(4) * 4;
    let mut file = b"BM".to_vec();
    let mut number = |number: u32| file.extend(number.to_le_bytes());
    [HEAD + (row * height) as u32, 0, HEAD, 40, width as u32, height as u32]
        .into_iter()
        .for_each(&mut number);
    number(8 << 16 | 1);
    [0, (row * height) as u32, 0, 0, 256, 0].into_iter().for_each(&mut number);
    (0..256).for_each(|grey| number(grey << 16 | grey << 8 | grey));
    for y in (0..height).rev() {
        file.extend((0..row).map(|x| if x < width { grey(x, y) } else { 0 }));
    }
    file
}
