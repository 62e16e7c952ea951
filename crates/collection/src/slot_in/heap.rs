//! A newcomer in a key that people are still making: the heap where it lies asks for the new
//! difference at once.

use spinney_model::{Ask, CharacterId, Edit, KeyEdit, KeyId, KindId, WishField};
use spinney_voice::{Tongue, wording};

use crate::Collection;
use crate::keys::make;
use crate::laid::Laid;
use crate::layer::Layer;

/// The edit by which the heap asks for a character, with the words. None: the newcomer lies in
/// no heap that nothing is asked of, or in several, or the table cannot ask it of all there.
pub(super) fn asking(
    t: Tongue,
    after: &Collection,
    laid: &Laid,
    layer: &Layer,
    key: KeyId,
    (kind, new): (KindId, CharacterId),
) -> Option<(Edit, String)> {
    let open = layer.forks.iter();
    let mut open = open.filter(|(_, heap)| heap.ask.is_none() && heap.kinds.contains(&kind));
    let ((at, _), None) = (open.next()?, open.next()) else { return None };
    // What could be asked there is what the machine could go on with.
    let mut drawn = after.keys.get(&key)?.clone();
    drawn.wishes.insert(WishField::Finish, "yes".to_owned());
    let made = make(after, laid, &drawn)?;
    let couplet = made.couplet(at)?;
    let reasons = made.reasons.iter().find(|reasons| reasons.couplet == couplet.number)?;
    let others = reasons.alternatives.iter().map(|other| &other.ask);
    let mut offered = couplet.ask.iter().chain(others);
    let character = laid.character(new)?;
    let ask: &Ask = offered.find(|ask| ask.character == character)?;
    let words = wording::question(t, &made.layer.matrix, ask);
    let ask = laid.ask_of(ask);
    let edit = Edit::Key(key, KeyEdit::Ask { at: at.clone(), words: words.clone(), ask });
    Some((edit, words))
}
