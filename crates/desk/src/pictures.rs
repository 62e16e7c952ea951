//! Pictures as they are kept: pixels and nothing else, and their names.
//!
//! From the bytes of a photograph or scan to a file that the press packed anew, upright, at most
//! so large, without place, time, camera or thumbnail. It opens no file.

use sha2::{Digest, Sha256};
use spinney_press::picture;

pub(crate) use picture::NoPicture;

/// The longest side that is kept, in pixels: sharp on half a page of A4 at 150 dots an inch,
/// and 200 to 400 kB.
const LONGEST_SIDE: u32 = 1600;

/// The picture as it is kept.
pub(crate) fn written_anew(bytes: &[u8]) -> Result<Vec<u8>, NoPicture> {
    picture::packed_anew(bytes, LONGEST_SIDE).map(spinney_press::Picture::into_bytes)
}

/// The longest side of a picture of a single leaf, in pixels: enough to see what is odd about it,
/// and 5 to 20 kB.
const LONGEST_OF_A_LEAF: u32 = 360;

/// The picture of a single leaf as it is kept.
pub(crate) fn small(bytes: &[u8]) -> Result<Vec<u8>, NoPicture> {
    picture::packed_anew(bytes, LONGEST_OF_A_LEAF).map(spinney_press::Picture::into_bytes)
}

/// A picture that is kept, as it may be shown: it may have been put there by another program.
pub(crate) fn bare(kept: Vec<u8>) -> Result<Vec<u8>, NoPicture> {
    if picture::is_bare(&kept) { Ok(kept) } else { written_anew(&kept) }
}

/// The name of a picture: the SHA-256 of its bytes in hexadecimal digits.
pub(crate) fn name(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

#[cfg(test)]
mod tests;
