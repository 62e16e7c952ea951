//! A key's own layer over the table: what its people asked and how they sorted.
//!
//! From the laid-out table and a drawn key to the table that this key is made from: only the
//! kinds it is for, and one column more for every question that the people sorted by hand and
//! that the table does not answer in the same way. The table itself is never changed by it.

use std::collections::{BTreeMap, BTreeSet};

use spinney_check::{Says, WeakSettings};
use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Fork, Kept, KindId, Look, Matrix, Scale, Season,
    SeenOn, Share, Side, StateIx, TaxonIx, Value, WishField, Wishes,
};

use crate::laid::Laid;
use crate::{Agreed, Collection, Drawn, Question};

/// The table that a key is made from.
#[derive(Clone, Debug)]
pub struct Layer {
    /// The table with what the group sorted.
    pub matrix: Matrix,
    /// The kinds it is for, in the order of its matrix.
    pub kinds: Vec<KindId>,
    /// The heaps of its key, each at its place.
    pub forks: BTreeMap<Fork, Heap>,
    /// What the key is made for.
    pub wishes: Wishes,
    /// Columns from here on were made from sorting by hand.
    pub sorted_from: usize,
}

/// A heap of kinds on the way, and how its question divides it.
#[derive(Clone, Debug, Default)]
pub struct Heap {
    /// The kinds that come here.
    pub kinds: Vec<KindId>,
    /// Where each goes; None: nobody has said. Empty where nothing is asked.
    pub sides: BTreeMap<KindId, Placed>,
    /// What the question is to the matrix of the layer.
    pub ask: Option<Ask>,
}

/// How a kind lies at a question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placed {
    /// Where it lies; None: in the middle, nobody has said.
    pub side: Option<Side>,
    /// Whether somebody put it there by hand.
    pub by_hand: bool,
    /// What the table says; None: the question is not linked to it.
    pub table: Option<Says>,
    /// Whether people do not agree on what the table is to say here.
    pub differ: bool,
}

impl Placed {
    /// Whether people contradict each other here: on what the table is to say, or the hand the
    /// table.
    pub fn contradicted(&self) -> bool {
        let said = self.table.and_then(side_of);
        self.differ || self.by_hand && said.is_some() && said != self.side
    }
}

/// Looking for the smallest sets of characters is not what is wanted where answers are.
const FEW_STEPS: u64 = 1_000;

/// Where a kind goes of which the table says this; None: it decides nothing.
pub(crate) fn side_of(says: Says) -> Option<Side> {
    match says {
        Says::Yes => Some(Side::Yes),
        Says::No => Some(Side::No),
        Says::Both => Some(Side::Both),
        Says::NobodyKnows | Says::DoesNotHave => None,
    }
}

impl Layer {
    /// The layer of a key; None: none of its kinds is left.
    pub fn of(collection: &Collection, laid: &Laid, key: &Drawn) -> Option<Self> {
        let kinds = kinds_of(laid, key);
        if kinds.is_empty() {
            return None;
        }
        let base = chosen(&laid.matrix, laid, &kinds);
        let mut layer = Self {
            sorted_from: base.characters().len(),
            matrix: base,
            kinds: kinds.clone(),
            forks: BTreeMap::new(),
            wishes: Wishes::default(),
        };
        let mut extra = Vec::new();
        let mut open = vec![(Fork::default(), kinds)];
        while let Some((at, kinds)) = open.pop() {
            let sides = layer.fork(laid, key, at, kinds, &mut extra);
            open.extend(sides.into_iter().flatten().rev());
        }
        layer.add_columns(extra);
        layer.wishes = wishes(collection, laid, key);
        layer.wishes.kept = layer.kept();
        Some(layer)
    }

    /// Kinds that lie in the middle of a question, each with the place.
    pub fn stranded(&self) -> Vec<(Fork, KindId)> {
        let waiting = self.forks.iter().flat_map(|(at, heap)| {
            let unplaced = heap.sides.iter().filter(|(_, placed)| placed.side.is_none());
            unplaced.map(|(kind, _)| (at.clone(), *kind))
        });
        waiting.collect()
    }

    /// Heaps of several kinds that nothing is asked of yet.
    pub fn together(&self) -> Vec<(Fork, &[KindId])> {
        let open = self.forks.iter();
        let open = open.filter(|(_, heap)| heap.ask.is_none() && heap.kinds.len() > 1);
        open.map(|(at, heap)| (at.clone(), heap.kinds.as_slice())).collect()
    }

    /// Blank cells that could part kinds which are alike, at most so many, the most useful first.
    /// Where people differ one answer more would not help: somebody has to decide.
    pub fn answers_needed(&self, laid: &Laid, most: usize) -> Vec<Look> {
        let settings = WeakSettings { steps: FEW_STEPS, sets_listed: 1, cells_named: most };
        let weak = spinney_check::weak(&self.matrix, &settings);
        let useful = weak.next.into_iter().filter(|look| {
            let of_the_table = look.character.0 < self.sorted_from;
            let character = laid.characters.get(look.character.0).copied().flatten();
            let agreed = character.map(|at| laid.said.agreed(self.kinds[look.taxon.0], at));
            let differ = matches!(agreed, Some(Agreed::Contradicted));
            of_the_table && !differ && !(look.parts.is_empty() && look.with_others.is_empty())
        });
        useful.collect()
    }

    /// The table with the name of its key behind its title.
    pub fn titled(&self, name: &str) -> Matrix {
        let mut scene = self.matrix.scene().clone();
        scene.title = Some(match scene.title.as_deref().map(str::trim) {
            Some(title) if !title.is_empty() && title != name => format!("{title}: {name}"),
            _ => name.to_owned(),
        });
        self.matrix.clone().with_scene(scene)
    }

    /// A table of these kinds with other names for them.
    pub fn called(&self, matrix: Matrix, name: impl Fn(KindId) -> String) -> Matrix {
        let mut taxa = matrix.taxa().to_vec();
        for (taxon, kind) in taxa.iter_mut().zip(&self.kinds) {
            taxon.name = name(*kind);
        }
        matrix.with_taxa(taxa).expect("other names fit the same table")
    }

    /// Divides the heap at a fork; the heaps it makes, yes and no. None: it is not divided.
    fn fork(
        &mut self,
        laid: &Laid,
        key: &Drawn,
        at: Fork,
        kinds: Vec<KindId>,
        extra: &mut Vec<(String, Vec<Value>)>,
    ) -> Option<[(Fork, Vec<KindId>); 2]> {
        let Some(question) = key.questions.get(&at) else {
            self.forks.insert(at, Heap { kinds, ..Heap::default() });
            return None;
        };
        let linked = question.ask.as_ref().and_then(|of| laid.ask(of));
        let says = linked.as_ref().map(|ask| spinney_check::says(&self.matrix, ask));
        let placed = |kind: &KindId| {
            let taxon = self.kinds.iter().position(|id| id == kind);
            let table = says.as_ref().zip(taxon).map(|(says, taxon)| says[taxon]);
            let by_hand = question.sorted.get(kind).copied();
            let side = by_hand.or_else(|| table.and_then(side_of));
            let agreed = question.ask.as_ref().map(|of| laid.said.agreed(*kind, of.character));
            let differ = matches!(agreed, Some(Agreed::Contradicted));
            (*kind, Placed { side, by_hand: by_hand.is_some(), table, differ })
        };
        let sides: BTreeMap<KindId, Placed> = kinds.iter().map(placed).collect();
        let same = sides
            .values()
            .all(|placed| !placed.by_hand || placed.table.and_then(side_of) == placed.side);
        let ask = match linked {
            Some(ask) if same => ask,
            _ => self.column(question, &sides, extra),
        };
        let heaps = [(true, Side::Yes), (false, Side::No)].map(|(yes, side)| {
            let goes = |kind: &&KindId| {
                let placed = sides[*kind].side;
                placed == Some(side) || placed == Some(Side::Both)
            };
            (at.after(yes), kinds.iter().filter(goes).copied().collect())
        });
        self.forks.insert(at, Heap { kinds, sides, ask: Some(ask) });
        Some(heaps)
    }

    /// A column of yes and no for a question that was sorted by hand.
    fn column(
        &self,
        question: &Question,
        sides: &BTreeMap<KindId, Placed>,
        extra: &mut Vec<(String, Vec<Value>)>,
    ) -> Ask {
        let one = Share::from_integer(1);
        let cells = self.kinds.iter().map(|kind| {
            match sides.get(kind).and_then(|placed| placed.side) {
                Some(Side::Yes) => Value::States(vec![(StateIx(0), one)]),
                Some(Side::No) => Value::States(vec![(StateIx(1), one)]),
                Some(Side::Both) => {
                    Value::States(vec![(StateIx(0), one / 2), (StateIx(1), one / 2)])
                }
                None => Value::Unknown,
            }
        });
        let at = CharacterIx(self.sorted_from + extra.len());
        extra.push((question.words.clone(), cells.collect()));
        Ask { character: at, yes: Asked::States(BTreeSet::from([StateIx(0)])) }
    }

    fn add_columns(&mut self, extra: Vec<(String, Vec<Value>)>) {
        if extra.is_empty() {
            return;
        }
        let matrix = &self.matrix;
        let mut characters = matrix.characters().to_vec();
        let mut rows: Vec<Vec<Cell>> = matrix
            .taxon_indices()
            .map(|t| matrix.character_indices().map(|c| matrix.cell(t, c).clone()).collect())
            .collect();
        for (words, cells) in extra {
            let states = vec!["yes".to_owned(), "no".to_owned()];
            let mut character = Character::named(words.clone(), Scale::Words { states });
            character.question = Some(words);
            characters.push(character);
            for (row, value) in rows.iter_mut().zip(cells) {
                row.push(value.into());
            }
        }
        let taxa = matrix.taxa().to_vec();
        self.matrix = Matrix::new(matrix.scene().clone(), taxa, characters, rows)
            .expect("columns of yes and no fit any table");
    }

    /// The fixed questions.
    fn kept(&self) -> Vec<Kept> {
        let (mut kept, mut open) = (Vec::new(), vec![(Fork::default(), None)]);
        while let Some((at, after)) = open.pop() {
            let Some(ask) = self.forks.get(&at).and_then(|heap| heap.ask.clone()) else {
                continue;
            };
            let here = Kept::add(&mut kept, ask, after);
            open.push((at.after(false), Some((here, false))));
            open.push((at.after(true), Some((here, true))));
        }
        kept
    }
}

fn kinds_of(laid: &Laid, key: &Drawn) -> Vec<KindId> {
    laid.kinds.iter().copied().filter(|kind| key.is_for(*kind)).collect()
}

/// Numbers with spaces between.
pub fn numbers(text: &str) -> BTreeSet<u32> {
    text.split_whitespace().filter_map(|word| word.parse().ok()).collect()
}

/// The matrix with only some of its kinds.
pub fn chosen(matrix: &Matrix, laid: &Laid, kinds: &[KindId]) -> Matrix {
    let taxa: Vec<TaxonIx> = kinds.iter().filter_map(|kind| laid.taxon(*kind)).collect();
    let mut characters = matrix.characters().to_vec();
    for character in &mut characters {
        let of = std::mem::take(&mut character.read_right_of);
        let new = |old: TaxonIx| taxa.iter().position(|taxon| *taxon == old).map(TaxonIx);
        let moved = of.into_iter().filter_map(|(old, right)| Some((new(old)?, right)));
        character.read_right_of = moved.collect();
    }
    let row = |taxon: &TaxonIx| {
        matrix.character_indices().map(|at| matrix.cell(*taxon, at).clone()).collect()
    };
    let rows = taxa.iter().map(row).collect();
    let kinds = taxa.iter().map(|taxon| matrix.taxon(*taxon).clone()).collect();
    Matrix::new(matrix.scene().clone(), kinds, characters, rows)
        .expect("fewer kinds fit the same characters")
}

fn wishes(collection: &Collection, laid: &Laid, key: &Drawn) -> Wishes {
    let never = collection.characters.keys().filter(|id| key.never.contains(*id));
    Wishes {
        hand: SeenOn::ALL.into_iter().find(|form| form.word() == key.wish(WishField::Hand)),
        season: Season::ALL.into_iter().find(|s| s.word() == key.wish(WishField::Season)),
        allow_touch: !key.wish(WishField::Touch).is_empty(),
        never: never.filter_map(|id| laid.character(*id)).collect(),
        ..Wishes::default()
    }
}
