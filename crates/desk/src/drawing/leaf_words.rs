//! The words by which a table says how a leaf looks: English and German, plain and the trade's.
//!
//! From a state ("double-toothed", "like a hand", "nicht gelappt") to what it says of the form,
//! lobes, edge, shape, hairs and stalk. A word that means different things on different things
//! ("smooth", "round", "spiny") counts only where its column says what it is about.

use super::blade::{Edge, Lobes, Shape};

/// What words say of a leaf; None: nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Look {
    pub(super) form: Option<Pieces>,
    pub(super) lobes: Option<Lobes>,
    pub(super) edge: Option<Edge>,
    pub(super) shape: Option<Shape>,
    pub(super) hairy: Option<bool>,
    pub(super) stalk: Option<bool>,
}

/// Of how many pieces a leaf is, and how they stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Pieces {
    One,
    /// Of several, nobody said how they stand.
    Several,
    Feather,
    Hand,
}

impl Look {
    /// Both together; where both speak of the same, the first holds.
    pub(super) fn or(self, other: Self) -> Self {
        Self {
            form: self.form.or(other.form),
            lobes: self.lobes.or(other.lobes),
            edge: self.edge.or(other.edge),
            shape: self.shape.or(other.shape),
            hairy: self.hairy.or(other.hairy),
            stalk: self.stalk.or(other.stalk),
        }
    }

    /// Whether there is something to draw besides a plain line round one piece.
    pub(super) fn stands_out(self) -> bool {
        self.form.is_some_and(|pieces| pieces != Pieces::One)
            || self.lobes.is_some_and(|lobes| lobes != Lobes::None)
            || self.edge.is_some_and(|edge| edge != Edge::Plain)
            || self.hairy == Some(true)
    }

    /// What is said by denying this.
    pub(super) fn denied(self) -> Self {
        let cut = self.edge.filter(|edge| *edge != Edge::Plain);
        let lobed = self.lobes.filter(|lobes| *lobes != Lobes::None);
        Self {
            form: self.form.filter(|form| *form == Pieces::Several).map(|_| Pieces::One),
            lobes: lobed.map(|_| Lobes::None),
            edge: cut.map(|_| Edge::Plain),
            shape: None,
            hairy: self.hairy.map(|hairy| !hairy),
            stalk: self.stalk.map(|stalk| !stalk),
        }
    }
}

/// What a column is about, by its name and its question.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct About {
    /// A leaf, or a part that only leaves have.
    pub(super) leaf: bool,
    pub(super) edge: bool,
    /// A shape or form.
    pub(super) form: bool,
    /// Another part of a plant, about which the same words say nothing of the leaf.
    pub(super) elsewhere: bool,
    /// What only animals have or do.
    pub(super) animal: bool,
}

impl About {
    pub(super) fn of(tokens: &[String]) -> Self {
        let any = |words: &[&str]| tokens.iter().any(|t| words.iter().any(|w| is(t, w)));
        Self {
            leaf: any(LEAF),
            edge: any(&["edge*", "margin*", "rim", "border", "rand", "blattrand"]),
            form: any(&["shape*", "form*", "outline", "umriss", "gestalt"]),
            elsewhere: any(ELSEWHERE),
            animal: any(ANIMAL),
        }
    }
}

/// Where a word counts.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Where {
    /// It is said of leaves alone.
    Anywhere,
    /// In a column about an edge.
    Edge,
    /// In a column about a leaf, a shape or a form.
    Leaf,
}

pub(super) const LEAF: &[&str] = &[
    "leaf",
    "leaves",
    "leaflet*",
    "blade*",
    "lamina",
    "petiole*",
    "leafstalk*",
    "blatt*",
    "blätt*",
    "spreite",
    "needle*",
    "nadel*",
];
pub(super) const STALK: &[&str] =
    &["stalk*", "petiole*", "leafstalk*", "stiel*", "blattstiel*"];
const ELSEWHERE: &[&str] = &[
    "twig*",
    "bark",
    "berr*",
    "fruit*",
    "flower*",
    "petal*",
    "bud*",
    "root*",
    "trunk*",
    "branch*",
    "tip",
    "tips",
    "base",
    "vein*",
    "seed*",
    "cone*",
    "nut*",
    "stem",
    "stems",
    "tree*",
    "shell*",
    "wing*",
    "zweig*",
    "rinde",
    "beere*",
    "frucht*",
    "früchte",
    "blüte*",
    "knospe*",
    "stamm",
    "ast",
    "spitze*",
    "grund",
    "blattspitze",
    "blattgrund",
    "ader*",
    "samen",
    "baum*",
    "zapfen",
];
const ANIMAL: &[&str] = &[
    "leg", "legs", "tail*", "antenna*", "feeler*", "shell*", "beak*", "eats", "eat", "swim*",
    "crawl*", "flies", "body", "mouth*", "moves", "bein*", "fühler*", "schnabel", "frisst",
    "körper*", "schwimm*",
];
/// Words that deny the word after them.
const DENIALS: &[&str] =
    &["not", "no", "without", "never", "nicht", "kein", "keine", "keinen", "ohne"];

/// Phrases, the longer ones first; `*` stands for any ending.
const PHRASES: &[(&str, Where, Says)] = {
    use Says::{Cut, Divided, Hairs, Lobed, Outline, Stalk};
    use Where::{Anywhere, Edge as AtEdge, Leaf};
    &[
        ("double tooth*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doubly tooth*", Anywhere, Cut(Edge::DoubleToothed)),
        ("double serrat*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doubly serrat*", Anywhere, Cut(Edge::DoubleToothed)),
        ("biserrat*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doppelt gez*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doppelt ges*", Anywhere, Cut(Edge::DoubleToothed)),
        ("untoothed", Anywhere, Cut(Edge::Plain)),
        ("toothless", AtEdge, Cut(Edge::Plain)),
        ("ungezähnt", Anywhere, Cut(Edge::Plain)),
        ("ganzrandig", Anywhere, Cut(Edge::Plain)),
        ("tooth*", Anywhere, Cut(Edge::Toothed)),
        ("teeth", Anywhere, Cut(Edge::Toothed)),
        ("serrat*", Anywhere, Cut(Edge::Toothed)),
        ("dentate", Anywhere, Cut(Edge::Toothed)),
        ("jagged", AtEdge, Cut(Edge::Toothed)),
        ("saw*", AtEdge, Cut(Edge::Toothed)),
        ("notched", AtEdge, Cut(Edge::Toothed)),
        ("zigzag", AtEdge, Cut(Edge::Toothed)),
        ("zig zag", AtEdge, Cut(Edge::Toothed)),
        ("gezähnt", Anywhere, Cut(Edge::Toothed)),
        ("gesägt", Anywhere, Cut(Edge::Toothed)),
        ("zähn*", Anywhere, Cut(Edge::Toothed)),
        ("spin*", AtEdge, Cut(Edge::Spiny)),
        ("spik*", AtEdge, Cut(Edge::Spiny)),
        ("prickl*", AtEdge, Cut(Edge::Spiny)),
        ("thorn*", AtEdge, Cut(Edge::Spiny)),
        ("stachel*", AtEdge, Cut(Edge::Spiny)),
        ("stachlig", AtEdge, Cut(Edge::Spiny)),
        ("dornig", AtEdge, Cut(Edge::Spiny)),
        ("smooth", AtEdge, Cut(Edge::Plain)),
        ("plain", AtEdge, Cut(Edge::Plain)),
        ("even", AtEdge, Cut(Edge::Plain)),
        ("entire", AtEdge, Cut(Edge::Plain)),
        ("glatt", AtEdge, Cut(Edge::Plain)),
        ("unlobed", Anywhere, Lobed(Lobes::None)),
        ("ungelappt", Anywhere, Lobed(Lobes::None)),
        ("hand lobe*", Anywhere, Lobed(Lobes::Hand)),
        ("palmately lobed", Anywhere, Lobed(Lobes::Hand)),
        ("lobed like a hand", Anywhere, Lobed(Lobes::Hand)),
        ("handförmig gelappt", Anywhere, Lobed(Lobes::Hand)),
        ("feather lobe*", Anywhere, Lobed(Lobes::Feather)),
        ("pinnately lobed", Anywhere, Lobed(Lobes::Feather)),
        ("lobed like a feather", Anywhere, Lobed(Lobes::Feather)),
        ("fiederlappig", Anywhere, Lobed(Lobes::Feather)),
        ("fiederförmig gelappt", Anywhere, Lobed(Lobes::Feather)),
        ("lobed", Anywhere, Lobed(Lobes::Some)),
        ("lobe*", Anywhere, Lobed(Lobes::Some)),
        ("gelappt", Anywhere, Lobed(Lobes::Some)),
        ("lappen", Leaf, Lobed(Lobes::Some)),
        ("like a hand", Leaf, Divided(Pieces::Hand)),
        ("hand shaped", Leaf, Divided(Pieces::Hand)),
        ("palmate", Anywhere, Divided(Pieces::Hand)),
        ("fingered", Leaf, Divided(Pieces::Hand)),
        ("gefingert", Anywhere, Divided(Pieces::Hand)),
        ("handförmig", Leaf, Divided(Pieces::Hand)),
        ("wie eine hand", Leaf, Divided(Pieces::Hand)),
        ("like a feather", Leaf, Divided(Pieces::Feather)),
        ("feather shaped", Leaf, Divided(Pieces::Feather)),
        ("pinnate", Anywhere, Divided(Pieces::Feather)),
        ("gefiedert", Anywhere, Divided(Pieces::Feather)),
        ("wie eine feder", Leaf, Divided(Pieces::Feather)),
        ("one piece", Leaf, Divided(Pieces::One)),
        ("single piece", Leaf, Divided(Pieces::One)),
        ("undivided", Leaf, Divided(Pieces::One)),
        ("simple", Leaf, Divided(Pieces::One)),
        ("einem stück", Leaf, Divided(Pieces::One)),
        ("ungeteilt", Leaf, Divided(Pieces::One)),
        ("compound", Leaf, Divided(Pieces::Several)),
        ("divided", Leaf, Divided(Pieces::Several)),
        ("leaflets", Anywhere, Divided(Pieces::Several)),
        ("several pieces", Leaf, Divided(Pieces::Several)),
        ("many pieces", Leaf, Divided(Pieces::Several)),
        ("zusammengesetzt", Leaf, Divided(Pieces::Several)),
        ("blättchen", Anywhere, Divided(Pieces::Several)),
        ("heart*", Leaf, Outline(Shape::Heart)),
        ("herzförmig", Leaf, Outline(Shape::Heart)),
        ("round*", Leaf, Outline(Shape::Round)),
        ("circular", Leaf, Outline(Shape::Round)),
        ("rund", Leaf, Outline(Shape::Round)),
        ("egg*", Leaf, Outline(Shape::Egg)),
        ("oval", Leaf, Outline(Shape::Egg)),
        ("eiförmig", Leaf, Outline(Shape::Egg)),
        ("narrow", Leaf, Outline(Shape::Narrow)),
        ("lance*", Leaf, Outline(Shape::Narrow)),
        ("schmal", Leaf, Outline(Shape::Narrow)),
        ("lanzettlich", Leaf, Outline(Shape::Narrow)),
        ("needle*", Leaf, Outline(Shape::Needle)),
        ("nadel*", Leaf, Outline(Shape::Needle)),
        ("hairy", Leaf, Hairs(true)),
        ("hairs", Leaf, Hairs(true)),
        ("downy", Leaf, Hairs(true)),
        ("furry", Leaf, Hairs(true)),
        ("fuzzy", Leaf, Hairs(true)),
        ("woolly", Leaf, Hairs(true)),
        ("behaart", Leaf, Hairs(true)),
        ("hairless", Leaf, Hairs(false)),
        ("kahl", Leaf, Hairs(false)),
        ("stalkless", Leaf, Stalk(false)),
        ("sessile", Leaf, Stalk(false)),
        ("ungestielt", Leaf, Stalk(false)),
        ("stalk*", Leaf, Stalk(true)),
        ("leafstalk*", Leaf, Stalk(true)),
        ("petiole*", Leaf, Stalk(true)),
        ("gestielt", Leaf, Stalk(true)),
        ("blattstiel*", Leaf, Stalk(true)),
    ]
};

/// What a phrase says.
#[derive(Clone, Copy)]
enum Says {
    Cut(Edge),
    Lobed(Lobes),
    Divided(Pieces),
    Outline(Shape),
    Hairs(bool),
    Stalk(bool),
}

impl Says {
    fn look(self) -> Look {
        let nothing = Look::default();
        match self {
            Self::Cut(edge) => Look { edge: Some(edge), ..nothing },
            Self::Lobed(lobes) => Look { lobes: Some(lobes), ..nothing },
            Self::Divided(pieces) => Look { form: Some(pieces), ..nothing },
            Self::Outline(shape) => Look { shape: Some(shape), ..nothing },
            Self::Hairs(hairy) => Look { hairy: Some(hairy), ..nothing },
            Self::Stalk(stalk) => Look { stalk: Some(stalk), ..nothing },
        }
    }
}

/// A text as words in small letters.
pub(super) fn tokens(text: &str) -> Vec<String> {
    let words = text.split(|c: char| !c.is_alphanumeric());
    words.filter(|word| !word.is_empty()).map(str::to_lowercase).collect()
}

/// Whether a word is this one; `*` stands for any ending.
pub(super) fn is(word: &str, known: &str) -> bool {
    match known.strip_suffix('*') {
        Some(begin) => word.starts_with(begin),
        None => word == known,
    }
}

/// What words say of a leaf, in a column about this.
pub(super) fn look(tokens: &[String], about: About) -> Look {
    let mut look = Look::default();
    // Words that a longer phrase has used say nothing of their own: "hand" in "hand-lobed".
    let mut used = vec![false; tokens.len()];
    for (phrase, place, says) in PHRASES {
        let counts = match place {
            Where::Anywhere => true,
            Where::Edge => about.edge,
            Where::Leaf => about.leaf || about.form,
        };
        if !counts {
            continue;
        }
        let phrase: Vec<&str> = phrase.split(' ').collect();
        let fits =
            |words: &[String]| words.iter().zip(&phrase).all(|(word, known)| is(word, known));
        let Some(at) = tokens.windows(phrase.len()).position(fits) else { continue };
        let taken = &mut used[at..at + phrase.len()];
        if taken.contains(&true) {
            continue;
        }
        taken.fill(true);
        let before = at.checked_sub(1).map(|before| tokens[before].as_str());
        let denied = before.is_some_and(|word| DENIALS.contains(&word));
        let said = says.look();
        look = look.or(if denied { said.denied() } else { said });
    }
    look
}
