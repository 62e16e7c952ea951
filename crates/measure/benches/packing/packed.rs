//! A drawn page as a scanner would pack it: PNG, or JPEG 60.

#[path = "pixels.rs"]
mod pixels;

use fastrand::Rng;
pub(crate) use pixels::kept;
use spinney_fixtures::leaves::scan::Page;

pub(crate) fn packed<T>(page: &Page<'_, T>, rng: &mut Rng, jpeg: bool) -> Vec<u8> {
    pixels::packed(&page.scanned(rng), page.pixels(), jpeg)
}
