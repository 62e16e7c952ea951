//! What goes back to a group that drew a key: which finds are lost or lie together, which words
//! say too little, and which cards it should look at again.
//!
//! From a drawn key with its layer to questions back, in the order in which they help. What words
//! seem to mean in the table is asked back and not said: the group may mean something else.

use spinney_model::{Fork, KindId};

use crate::Drawn;
use crate::laid::Laid;
use crate::layer::Layer;
use crate::offers::{reading, table_side};

/// Something to ask the group, and at which of its questions.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Back<'a> {
    /// Where.
    pub at: Fork,
    /// What.
    pub what: What<'a>,
}

/// What a group is asked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What<'a> {
    /// Nobody has placed this kind.
    Lost(KindId),
    /// This word of the question says too little.
    Vague(String),
    /// The table, or other people, put this kind elsewhere.
    LookAgain(KindId),
    /// These kinds still lie together.
    Together(&'a [KindId]),
}

/// The lost first, then words that say too little, then what the table contradicts, then who
/// still lies together.
pub fn asked_back<'a>(drawn: &Drawn, layer: &'a Layer, laid: &Laid) -> Vec<Back<'a>> {
    let lost = layer.stranded().into_iter();
    let lost = lost.map(|(at, kind)| Back { at, what: What::Lost(kind) });
    let vague = drawn.questions.iter().filter_map(|(at, question)| {
        // A question that is not on the way any more is nobody's.
        layer.forks.get(at).filter(|heap| heap.ask.is_some())?;
        let word = spinney_check::vague_word(&question.words)?;
        Some(Back { at: at.clone(), what: What::Vague(word) })
    });
    let again = layer.forks.keys().flat_map(|at| look_again(drawn, layer, laid, at));
    let together = layer.together().into_iter();
    let together = together.map(|(at, kinds)| Back { at, what: What::Together(kinds) });
    lost.chain(vague).chain(again).chain(together).collect()
}

/// The kinds at a question that the table puts elsewhere, by what a person confirmed that it
/// means, else by what its words seem to say; and those about which people differ.
fn look_again<'a>(drawn: &Drawn, layer: &Layer, laid: &Laid, at: &Fork) -> Vec<Back<'a>> {
    let question = drawn.questions.get(at);
    let words = question.map_or("", |question| question.words.as_str());
    let meant = question.and_then(|question| question.ask.clone());
    let reading = meant.or_else(|| reading(laid, words));
    let sides = layer.forks[at].sides.iter().filter(|(kind, placed)| {
        let table = reading.as_ref().and_then(|of| table_side(laid, of, **kind));
        let other = table.is_some() && table != placed.side;
        placed.side.is_some() && (other || placed.by_hand && placed.differ)
    });
    sides.map(|(kind, _)| Back { at: at.clone(), what: What::LookAgain(*kind) }).collect()
}
