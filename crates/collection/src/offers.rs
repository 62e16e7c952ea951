//! What could be asked of a heap: the table's questions, each with what it costs, the cheapest
//! first; and what words may mean in the table.
//!
//! From a key as the machine would finish it, or from words, to questions. A reading is a proposal:
//! it is asked back, since "spiky" may not mean "spiny".

use spinney_exchange::link;
use spinney_model::{AskOf, Fork, KindId, Share, Side};
use spinney_voice::{Tongue, wording};

use crate::keys::KeyFrom;
use crate::laid::Laid;
use crate::layer::side_of;

/// A question of the table that could be asked.
pub struct Offer {
    /// What it asks for.
    pub ask: AskOf,
    /// As the table words it.
    pub words: String,
    /// How many say only yes, only no, and both.
    pub heaps: (usize, usize, usize),
    /// Further questions a find, against the cheapest.
    pub extra: Share,
    /// Whether that is so, or the least that it can be.
    pub exact: bool,
}

impl KeyFrom<'_> {
    /// What could be asked at a place, the cheapest first, of a key that was explained.
    pub fn offers(&self, at: &Fork) -> Vec<Offer> {
        let made = self.made;
        let found = made.couplet(at).and_then(|couplet| {
            let mut reasons = made.reasons.iter();
            Some((couplet, reasons.find(|reasons| reasons.couplet == couplet.number)?))
        });
        let Some((couplet, reasons)) = found else { return Vec::new() };
        let free = Share::from_integer(0);
        let best = couplet.ask.iter().map(|ask| (ask, reasons.heaps, free, true));
        let others = reasons.alternatives.iter();
        let others = others.map(|other| (&other.ask, other.heaps, other.extra, other.exact));
        let offers = best.chain(others).filter_map(|(asked, heaps, extra, exact)| {
            let words = wording::question(self.t, &made.layer.matrix, asked);
            let (ask, extra) = (self.of_the_table(asked)?, made.a_find(extra));
            Some(Offer { ask, words, heaps, extra, exact })
        });
        offers.collect()
    }
}

/// What a question may mean, the likeliest first, each as the table would ask it.
pub fn readings(t: Tongue, laid: &Laid, words: &str) -> Vec<(AskOf, String)> {
    let proposals = link::proposals(words, &laid.matrix);
    let readings = proposals.iter().filter_map(|proposal| {
        let words = wording::question(t, &laid.matrix, &proposal.ask);
        Some((laid.ask_of(&proposal.ask)?, words))
    });
    readings.collect()
}

/// What a question most likely means; None: nothing of the table.
pub fn reading(laid: &Laid, words: &str) -> Option<AskOf> {
    link::proposals(words, &laid.matrix).iter().find_map(|proposal| laid.ask_of(&proposal.ask))
}

/// What the table says of a kind; None: nothing that decides.
pub fn table_side(laid: &Laid, of: &AskOf, kind: KindId) -> Option<Side> {
    let ask = laid.ask(of)?;
    side_of(spinney_check::says(&laid.matrix, &ask)[laid.taxon(kind)?.0])
}
