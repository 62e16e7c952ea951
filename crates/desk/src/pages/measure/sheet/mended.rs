//! What follows from what was found in a picture and from what a person says of it.
//!
//! The scan itself is not there any more: outlines are, and so are the cut-outs and the smaller
//! picture of the page. What is mended is measured anew and cut out of those.

use base64::{Engine as _, engine::general_purpose::STANDARD};
use spinney_measure::{LeafAfterMends, Lying, LyingLeaf, Picture, Upright};
use spinney_model::limits::SCREENS_LEAVES;
use spinney_model::{MeasuredLeaf, Mend, PictureScale};
use spinney_voice::Tongue;

use super::{ASSUMED, Leaf, NotMended, Sheet, There};

impl Sheet {
    /// It after mends, which are all that it has then.
    pub(crate) fn mended(&self, t: Tongue, mends: Vec<Mend>) -> Result<Self, NotMended> {
        if mends.is_empty() {
            return Ok(Self { now: self.found.clone(), mends, ..self.clone() });
        }
        let lying = |leaf: &Leaf| LyingLeaf {
            number: leaf.number,
            outline: leaf.lines[0].clone(),
            notes: leaf.notes.clone(),
        };
        let lying = Lying {
            leaves: self.found.leaves.iter().map(lying).collect(),
            aside: self.found.aside.clone(),
            mm: Some(25.4 / self.pixels(self.dpi)),
            unsure: spinney_measure::unsure(self.found.scale),
        };
        let after = spinney_measure::mend(lying, &mends);
        let after = after.map_err(|(_, why)| NotMended::Cannot(why))?;
        if after.leaves.len() > SCREENS_LEAVES {
            return Err(NotMended::Many(after.leaves.len()));
        }
        let leaves = after.leaves.iter().map(|leaf| self.leaf(t, leaf, after.mm));
        let leaves = leaves.collect::<Result<_, _>>()?;
        let left_out = spinney_measure::without(&self.found.left_out, &after.taken);
        let scale = match after.mm.map(|mm| PictureScale::OfRuler { dpi: 25.4 / mm }) {
            Some(scale) if self.halved => scale.doubled(),
            Some(scale) => scale,
            None => self.found.scale,
        };
        let now = There { scale, leaves, left_out, aside: after.aside };
        Ok(Self { now, mends, ..self.clone() })
    }

    fn leaf(
        &self,
        t: Tongue,
        after: &LeafAfterMends,
        mm: Option<f64>,
    ) -> Result<Leaf, NotMended> {
        let mm = mm.or(Some(25.4 / self.pixels(self.dpi)));
        let found = |number| {
            let leaf = self.found.leaves.iter().find(|leaf| leaf.number == number);
            leaf.ok_or(NotMended::Damaged)
        };
        match &after.mended {
            None => found(after.number).cloned(),
            Some(leaf) if after.lies_as_found => {
                let picture = found(after.number)?.picture.clone();
                Ok(Leaf::with_picture(t, leaf, mm, picture))
            }
            Some(leaf) => {
                let alone = match after.of.as_slice() {
                    [only] => out_of_leaf(found(*only)?, leaf)?,
                    _ => self.out_of_picture(leaf)?,
                };
                Ok(Leaf::of(t, leaf, mm, alone)?)
            }
        }
    }

    /// A leaf cut out of the picture of the page.
    fn out_of_picture(&self, leaf: &MeasuredLeaf) -> Result<Upright, NotMended> {
        let picture = opened(&self.picture)?.pixels;
        Ok(spinney_measure::upright_of_copy(&picture, self.size.0, &leaf.lines)?)
    }
}

/// A leaf cut out of the cut-out of the one that it was found as.
fn out_of_leaf(found: &Leaf, leaf: &MeasuredLeaf) -> Result<Upright, NotMended> {
    let before = opened(&found.picture)?.pixels;
    let lines = [found.lines[0].as_slice(), found.lines[1].as_slice()];
    Ok(spinney_measure::upright_again(&before, lines, &leaf.lines)?)
}

/// A picture that stands in the page.
fn opened(base64: &str) -> Result<Picture, NotMended> {
    let bytes = STANDARD.decode(base64).map_err(|_| NotMended::Damaged)?;
    // Nobody looks for a scale card in what was laid flat by one.
    let read = spinney_measure::read_small(&bytes, Some(ASSUMED), u64::MAX)?;
    Ok(read.picture)
}
