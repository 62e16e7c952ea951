//! The pictures of the page: as many as a phone can hold, each no larger than it shows.
//!
//! From the booklet's pictures to what stands in the page, packed anew. All pictures share the
//! room that the page's words leave; where even small ones do not fit, the last kinds go
//! without, and the page says how many.

use std::collections::{BTreeMap, BTreeSet};

use base64::{Engine as _, engine::general_purpose::STANDARD};
use maud::{Markup, html};

use spinney_model::limits::PHONE_PICTURE as MOST_BYTES;
use spinney_voice::Tongue;

use crate::{Booklet, Picture, picture};

use super::tree::{Ending, Tree};

/// A picture in fewer bytes shows nothing that would help.
const LEAST_BYTES: usize = 8_000;
/// What the sentence about pictures that are left out may take, in bytes.
pub(super) const TOLD: usize = 200;
/// So many letters of the page for so many bytes of a picture (base64).
const LETTERS: usize = 4;
const BYTES: usize = 3;
/// What a tag takes around a picture, with the letters that fill up its last byte.
const AROUND: usize = 40;

/// The pictures of a page by their file names, ready to stand in it.
pub(super) struct Pictures<'a> {
    shown: BTreeMap<&'a str, String>,
    /// The files for which the page has no room.
    left_out: BTreeSet<&'a str>,
}

impl<'a> Pictures<'a> {
    /// No pictures: to see what the words take.
    pub(super) fn none() -> Self {
        Self { shown: BTreeMap::new(), left_out: BTreeSet::new() }
    }

    /// Packs the pictures of the kinds that come out; `room` is what the words leave, in bytes.
    pub(super) fn of(booklet: &Booklet<'a>, tree: &Tree, room: usize) -> Self {
        let wanted = wanted(booklet, tree);
        let mut left_out = BTreeSet::new();
        // A share for each that comes in, as long as there is enough for all before it.
        let mut uses = 0;
        let mut coming: Vec<(&str, usize)> = Vec::new();
        for (file, times) in wanted {
            if (uses + times) * letters(LEAST_BYTES) > room {
                left_out.insert(file);
                continue;
            }
            uses += times;
            coming.push((file, times));
        }
        let mut packed: BTreeMap<&str, Picture> = BTreeMap::new();
        for (file, _) in &coming {
            // What cannot be read has no picture here, as on the sheets.
            let given = booklet.pictures[*file].bytes();
            if let Ok(Some(small)) = picture::for_a_phone(given, MOST_BYTES) {
                packed.insert(file, small);
            }
        }
        let size =
            |file: &str| packed.get(file).map_or(0, |small| letters(small.bytes().len()));
        let mut sizes: Vec<_> =
            coming.iter().map(|(file, times)| (size(file), *times)).collect();
        if sizes.iter().map(|(size, times)| size * times).sum::<usize>() > room {
            let most = share(&mut sizes, room);
            for (file, _) in &coming {
                if size_over(&packed, file, most) {
                    let given = booklet.pictures[*file].bytes();
                    match picture::for_a_phone(given, bytes(most)) {
                        Ok(Some(small)) => drop(packed.insert(file, small)),
                        _ => {
                            packed.remove(file);
                            left_out.insert(file);
                        }
                    }
                }
            }
        }
        let shown = packed.into_iter().map(|(file, picture)| (file, data_url(&picture)));
        Self { shown: shown.collect(), left_out }
    }

    /// The picture of a file, as an address that holds it.
    pub(super) fn address(&self, file: &str) -> Option<&str> {
        self.shown.get(file).map(String::as_str)
    }

    /// What the page says of pictures that it has no room for; nothing where all are there.
    pub(super) fn told(&self, t: Tongue) -> Markup {
        let out = self.left_out.len();
        html! {
            @if out > 0 { p.left-out { (t.count("phone-left-out", out)) } }
        }
    }
}

/// The files of the kinds that come out, in order, and how often each is shown.
fn wanted<'a>(booklet: &Booklet<'a>, tree: &Tree) -> Vec<(&'a str, usize)> {
    let mut times: BTreeMap<&str, usize> = BTreeMap::new();
    let mut order = Vec::new();
    for ending in &tree.endings {
        let Ending::Kinds(end) = ending else { continue };
        for taxon in &end.taxa {
            let Some(file) = booklet.matrix.taxon(*taxon).picture.as_deref() else { continue };
            if !booklet.pictures.contains_key(file) {
                continue;
            }
            let before = times.entry(file).or_default();
            *before += 1;
            if *before == 1 {
                order.push(file);
            }
        }
    }
    order.into_iter().map(|file| (file, times[file])).collect()
}

/// The most letters for one picture, so that all fit: what small ones leave goes to the others.
fn share(sizes: &mut [(usize, usize)], room: usize) -> usize {
    sizes.sort_unstable();
    let mut room = room;
    let mut uses: usize = sizes.iter().map(|(_, times)| times).sum();
    for (size, times) in sizes.iter() {
        if size * uses > room {
            return room / uses;
        }
        room -= size * times;
        uses -= times;
    }
    usize::MAX
}

fn size_over(packed: &BTreeMap<&str, Picture>, file: &str, most: usize) -> bool {
    packed.get(file).is_some_and(|picture| letters(picture.bytes().len()) > most)
}

/// What so many bytes of a picture take in the page.
fn letters(bytes: usize) -> usize {
    bytes.div_ceil(BYTES) * LETTERS + AROUND
}

fn bytes(letters: usize) -> usize {
    letters.saturating_sub(AROUND) / LETTERS * BYTES
}

fn data_url(picture: &Picture) -> String {
    let (form, bytes) = match picture {
        Picture::Png(bytes) => ("png", bytes),
        Picture::Jpeg(bytes) => ("jpeg", bytes),
    };
    format!("data:image/{form};base64,{}", STANDARD.encode(bytes))
}

#[cfg(test)]
mod tests {
    use super::share;

    #[test]
    fn what_small_pictures_leave_goes_to_the_others() {
        assert_eq!(share(&mut [(10, 1), (50, 1), (90, 1)], 100), 45);
        assert_eq!(share(&mut [(50, 2), (50, 1)], 90), 30);
        assert_eq!(share(&mut [(30, 1), (40, 1)], 100), usize::MAX);
    }
}
