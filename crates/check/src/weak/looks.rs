//! What to go and look at next: from blank cells to the pairs that they could part or secure.
//!
//! A cell comes first that could part most kinds still alike; then one that could do so
//! together with other blanks; then one that could give most pairs a second difference. It
//! says what could be, not how likely it is.

use std::cmp::Reverse;

use spinney_model::{CharacterIx, Hope, Look, TaxonIx};

use super::Compared;
use crate::pairs::Differences;

/// Cells worth a look.
pub(super) struct Looks {
    /// The most useful, as many as asked for.
    pub(super) next: Vec<Look>,
    /// How many there are in all.
    pub(super) useful: usize,
}

/// How many pairs a cell could help.
#[derive(Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Help {
    parts: u32,
    with_others: u32,
    secures: u32,
}

/// Ranks the blank cells, and notes for every pair of kinds alike what might help.
pub(super) fn find(
    differences: &Differences<'_, '_>,
    compared: &mut Compared,
    named: usize,
) -> Looks {
    let mut blanks = Blanks::of(differences, compared);
    for alike in &mut compared.alike {
        alike.hope = blanks.alike(alike.taxa);
    }
    for fragile in &compared.fragile {
        blanks.fragile(fragile.taxa);
    }
    let width = compared.characters;
    let mut ranked: Vec<(Reverse<Help>, usize, usize)> = blanks
        .help
        .iter()
        .enumerate()
        .filter(|(_, help)| **help != Help::default())
        .map(|(at, help)| (Reverse(*help), at % width, at / width))
        .collect();
    ranked.sort_unstable();
    let useful = ranked.len();
    ranked.truncate(named);
    let next = ranked
        .into_iter()
        .map(|(_, character, taxon)| {
            blanks.look(compared, (TaxonIx(taxon), CharacterIx(character)))
        })
        .collect();
    Looks { next, useful }
}

/// The blank cells of a table, and how much each could help.
struct Blanks<'d, 'v, 'm> {
    differences: &'d Differences<'v, 'm>,
    width: usize,
    /// Kind after kind: the characters in which nobody has looked.
    of: Vec<Vec<CharacterIx>>,
    /// Row after row, all cells.
    help: Vec<Help>,
    /// Room to write in.
    together: Vec<(TaxonIx, CharacterIx)>,
}

impl<'d, 'v, 'm> Blanks<'d, 'v, 'm> {
    fn of(differences: &'d Differences<'v, 'm>, compared: &Compared) -> Self {
        let width = compared.characters;
        let blanks = |taxon| {
            let blank = |c: &CharacterIx| differences.blank(TaxonIx(taxon), *c);
            (0..width).map(CharacterIx).filter(blank).collect()
        };
        Self {
            differences,
            width,
            of: (0..compared.kinds).map(blanks).collect(),
            help: vec![Help::default(); compared.kinds * width],
            together: Vec::new(),
        }
    }

    /// Two kinds that are alike.
    fn alike(&mut self, taxa: [TaxonIx; 2]) -> Hope {
        let mut hope = Hope::NewDifference;
        for (taxon, other) in both(taxa) {
            for at in 0..self.of[taxon.0].len() {
                let cell = (taxon, self.of[taxon.0][at]);
                if self.differences.after_filling(cell, other, 0) > 0 {
                    self.help(cell).parts += 1;
                    hope = Hope::OneBlank;
                }
            }
        }
        if hope == Hope::OneBlank || taxa.iter().all(|taxon| self.of[taxon.0].is_empty()) {
            return hope;
        }
        let cells = self.blanks_together(taxa);
        for cell in &cells {
            self.help(*cell).with_others += 1;
            hope = Hope::SeveralBlanks;
        }
        self.together = cells;
        hope
    }

    /// Two kinds that one character parts.
    fn fragile(&mut self, taxa: [TaxonIx; 2]) {
        for (taxon, other) in both(taxa) {
            for at in 0..self.of[taxon.0].len() {
                let cell = (taxon, self.of[taxon.0][at]);
                if self.differences.after_filling(cell, other, 1) > 1 {
                    self.help(cell).secures += 1;
                }
            }
        }
    }

    /// A cell with the kinds that it could help with.
    fn look(&mut self, compared: &Compared, cell: (TaxonIx, CharacterIx)) -> Look {
        let (taxon, character) = cell;
        let (mut parts, mut with_others, mut secures) = (Vec::new(), Vec::new(), Vec::new());
        for alike in compared.alike.iter().filter(|alike| alike.taxa.contains(&taxon)) {
            let other = partner(alike.taxa, taxon);
            if self.differences.after_filling(cell, other, 0) > 0 {
                parts.push(other);
            } else if alike.hope == Hope::SeveralBlanks {
                let cells = self.blanks_together(alike.taxa);
                if cells.contains(&cell) {
                    with_others.push(other);
                }
                self.together = cells;
            }
        }
        for fragile in compared.fragile.iter().filter(|pair| pair.taxa.contains(&taxon)) {
            let other = partner(fragile.taxa, taxon);
            if self.differences.after_filling(cell, other, 1) > 1 {
                secures.push(other);
            }
        }
        Look { taxon, character, parts, with_others, secures }
    }

    /// Each cell once; to be put back into `together`.
    fn blanks_together(&mut self, taxa: [TaxonIx; 2]) -> Vec<(TaxonIx, CharacterIx)> {
        let mut cells = std::mem::take(&mut self.together);
        self.differences.blanks_together(taxa[0], taxa[1], &mut cells);
        if self.differences.governed() {
            cells.sort_unstable();
            cells.dedup();
        }
        cells
    }

    fn help(&mut self, (taxon, character): (TaxonIx, CharacterIx)) -> &mut Help {
        &mut self.help[taxon.0 * self.width + character.0]
    }
}

fn both([one, other]: [TaxonIx; 2]) -> [(TaxonIx, TaxonIx); 2] {
    [(one, other), (other, one)]
}

fn partner(taxa: [TaxonIx; 2], taxon: TaxonIx) -> TaxonIx {
    if taxa[0] == taxon { taxa[1] } else { taxa[0] }
}
