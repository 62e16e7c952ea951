//! What a scan says: the leaves in a picture, each with its measures.
//!
//! From the bytes of a picture to a [`MeasuredPicture`]: the ground is estimated, leaves stand out
//! from it, each is outlined between pixels, cut into stalk and blade, and measured; every number
//! leaves with its unit and its ±.
//! [`cut_out()`] hands each leaf on alone, upright. It opens no file and has no sentence.
//!
//! In reading order: `picture` (bytes to pixels, `resolution`) · `card` (a photograph laid flat) ·
//! `ground` (what is no leaf) · `pieces` (what hangs together) · `outline` (between pixels) · `polygon` · `stalk` (cut from
//! the blade) · `axis` (midrib, length, width) · `turns` (sinuses and what is between them) ·
//! `lobes` · `edge` · `ends` (base and tip) · `base_sides` · `fourier` · `leaflets` · `form` (what is counted of one) · `veins` · `leaf` (all measures of one) ·
//! `touching` (leaves cut apart) · `plus_minus` · `mended` (what a person says otherwise) · `rubbing` (crayon over leaves).

mod axis;
mod base_sides;
mod card;
mod cut_out;
mod edge;
mod ends;
mod equations;
mod form;
mod fourier;
mod ground;
mod leaf;
mod leaflets;
mod lobes;
mod mended;
mod outline;
mod picture;
mod pieces;
mod plus_minus;
mod polygon;
mod resolution;
mod rubbing;
mod seam;
mod stalk;
mod touching;
mod turns;
mod veins;

use spinney_model::{LeftOut, MeasuredLeaf, MeasuredPicture, PictureError, VeinsUnseen};

pub use cut_out::{Upright, cut_out, upright, upright_again, upright_of_copy};
pub use mended::{
    AfterMends, LeafAfterMends, Lying, LyingLeaf, mend, mended, place_inside, without,
};
pub use picture::{LITTLE_MEMORY, Picture, Small, formats, read, read_small, takes};
pub use plus_minus::unsure;
pub use rubbing::{dpi_of_page, measure_rubbing, on_white};

/// Looks for the side veins of leaves that were put right by hand: their pixels were not needed for
/// that.
pub fn look_for_veins(picture: &Picture, measured: &mut MeasuredPicture) {
    let not_looked = |leaf: &&mut MeasuredLeaf| {
        leaf.form.veins.as_ref().err() == Some(&VeinsUnseen::NotLookedFor)
    };
    let leaves = measured.leaves.iter_mut().filter(not_looked);
    leaves.for_each(|leaf| veins::look(&picture.pixels, leaf));
}

/// Finds the leaves of a picture and measures each.
///
/// **Guarantees**: the same picture gives the same numbers. One leaf's failure never loses the
/// others.
/// **Errors**: nothing stands out from the ground.
/// **Cost**: some 30 ns a pixel, and what the leaves' outlines take; five bytes of memory a pixel.
pub fn measure(picture: &Picture) -> Result<MeasuredPicture, PictureError> {
    let contrast = ground::contrast(picture);
    let level = ground::level(&contrast).ok_or(PictureError::NothingThere)?;
    let found = leaf::found(&contrast, level, picture.scale.mm(), picture.strip.as_ref());
    let mut leaves: Vec<_> = found.leaves;
    let cut_apart = leaf::number(&mut leaves);
    plus_minus::of_scale(&mut leaves, picture.scale);
    leaves.iter_mut().for_each(|leaf| veins::look(&picture.pixels, leaf));
    let mut left_out: Vec<(LeftOut, usize)> = Vec::new();
    for what in LeftOut::ALL {
        match found.left_out.iter().filter(|out| **out == what).count() {
            0 => {}
            count => left_out.push((what, count)),
        }
    }
    if leaves.is_empty() && left_out.is_empty() {
        return Err(PictureError::NothingThere);
    }
    let empty = MeasuredPicture::of(picture.pixels.dimensions());
    let (scale, halved, aside) = (picture.scale, picture.halved, found.aside);
    let like_a_rubbing = rubbing::looks_like_one(picture, &contrast, level);
    let found =
        MeasuredPicture { scale, halved, like_a_rubbing, leaves, left_out, aside, ..empty };
    Ok(MeasuredPicture { cut_apart, ..found })
}
