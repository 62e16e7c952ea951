//! The words by which a table says how a leaf looks: English and German, plain and the trade's.
//!
//! From a state ("double-toothed", "like a hand", "nicht gelappt") to what it says of the form,
//! lobes, edge, shape, hairs and stalk. A word that means different things on different things
//! ("smooth", "round", "spiny") counts only where its column says what it is about.

use super::blade::{Edge, Shape, Tip};

/// What words say of a leaf; None: nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Look {
    pub(super) form: Option<Pieces>,
    pub(super) lobed: Option<Lobed>,
    pub(super) edge: Option<Edge>,
    pub(super) shape: Option<Shape>,
    pub(super) tip: Option<Tip>,
    pub(super) hairy: Option<bool>,
    pub(super) stalk: Option<bool>,
    /// A needle, a scale, a frond: no line of ours shows it.
    pub(super) other: bool,
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

/// Whether a blade has lobes, and how they are arranged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Lobed {
    No,
    /// It has, nobody said how.
    Somehow,
    Feather,
    Hand,
}

impl Lobed {
    /// Both together: who says how it is lobed says more than who says that it is.
    fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::Somehow, Self::Feather | Self::Hand) => other,
            _ => self,
        }
    }
}

impl Look {
    /// Both together; where both speak of the same, the first holds.
    pub(super) fn or(self, other: Self) -> Self {
        let lobed = self.lobed.map(|lobed| other.lobed.map_or(lobed, |other| lobed.and(other)));
        Self {
            form: self.form.or(other.form),
            lobed: lobed.or(other.lobed),
            edge: self.edge.or(other.edge),
            shape: self.shape.or(other.shape),
            tip: self.tip.or(other.tip),
            hairy: self.hairy.or(other.hairy),
            stalk: self.stalk.or(other.stalk),
            other: self.other || other.other,
        }
    }

    /// Whether there is something to draw besides a plain line round one piece.
    pub(super) fn stands_out(self) -> bool {
        self.other
            || self.form.is_some_and(|pieces| pieces != Pieces::One)
            || self.lobed.is_some_and(|lobed| lobed != Lobed::No)
            || self.edge.is_some_and(|edge| edge != Edge::Smooth)
            || self.hairy == Some(true)
    }

    /// What is said by denying this. Who says that it is not toothed has not said what it is.
    pub(super) fn denied(self) -> Self {
        let lobed = self.lobed.filter(|lobed| *lobed == Lobed::Somehow);
        Self {
            form: self.form.filter(|form| *form == Pieces::Several).map(|_| Pieces::One),
            lobed: lobed.map(|_| Lobed::No),
            hairy: self.hairy.map(|hairy| !hairy),
            stalk: self.stalk.map(|stalk| !stalk),
            ..Self::default()
        }
    }
}

/// What a column is about, by its name and its question.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct About {
    /// A leaf, or a part that only leaves have.
    pub(super) leaf: bool,
    pub(super) edge: bool,
    /// A shape or form, or where the blade is widest.
    pub(super) form: bool,
    /// How a blade is lobed.
    pub(super) lobes: bool,
    /// How a blade ends.
    pub(super) tip: bool,
    /// How a blade begins at its stalk.
    pub(super) base: bool,
    /// Needles, scales or fronds.
    pub(super) other: bool,
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
            form: any(FORM),
            lobes: any(&["lobe*", "lappen", "gelappt*"]),
            tip: any(&["tip", "tips", "apex", "blattspitze"]),
            base: any(&["base", "foot", "blattgrund"]),
            other: any(OTHER),
            elsewhere: any(ELSEWHERE),
            animal: any(ANIMAL),
        }
    }
}

impl About {
    /// Whether it says how the outline of a leaf looks.
    pub(super) fn looks(self) -> bool {
        self.edge || self.form || self.lobes || self.tip || self.base
    }

    /// Whether it names a leaf or a part of one.
    pub(super) fn named(self) -> bool {
        self.leaf || self.edge || self.lobes || self.tip
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
    /// In a column about lobes.
    Lobes,
    /// In a column about a tip.
    Tip,
}

const FORM: &[&str] =
    &["shape*", "form*", "outline", "widest", "broadest", "umriss", "gestalt", "breitest*"];
/// Leaves that these lines do not show.
const OTHER: &[&str] = &["needle*", "scale*", "frond*", "nadel*", "schuppe*", "wedel*"];

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
    "twig*", "bark", "berr*", "fruit*", "flower*", "petal*", "bud*", "root*", "trunk*",
    "branch*", "vein*", "seed*", "cone*", "nut*", "stem", "stems", "tree*", "shell*", "wing*",
    "zweig*", "rinde", "beere*", "frucht*", "früchte", "blüte*", "knospe*", "stamm", "ast",
    "ader*", "samen", "baum*", "zapfen",
];
const ANIMAL: &[&str] = &[
    "leg", "legs", "tail*", "antenna*", "feeler*", "shell*", "beak*", "eats", "eat", "swim*",
    "crawl*", "flies", "body", "mouth*", "moves", "bein*", "fühler*", "schnabel", "frisst",
    "körper*", "schwimm*",
];
/// Words that deny the word after them.
const DENIALS: &[&str] = &[
    "not", "no", "without", "never", "neither", "nor", "nicht", "kein", "keine", "keinen",
    "ohne",
];

/// Phrases, the longer ones first; `*` stands for any ending.
const PHRASES: &[(&str, Where, Says)] = {
    use Says::{Cut, Divided, Ends, Hairs, Lobes, Other, Outline, Stalk};
    use Where::{Anywhere, Edge as AtEdge, Leaf, Lobes as AtLobes, Tip as AtTip};
    &[
        ("double tooth*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doubly tooth*", Anywhere, Cut(Edge::DoubleToothed)),
        ("double serrat*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doubly serrat*", Anywhere, Cut(Edge::DoubleToothed)),
        ("biserrat*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doppelt gez*", Anywhere, Cut(Edge::DoubleToothed)),
        ("doppelt ges*", Anywhere, Cut(Edge::DoubleToothed)),
        ("without teeth", Anywhere, Cut(Edge::Smooth)),
        ("no teeth", Anywhere, Cut(Edge::Smooth)),
        ("not toothed", AtEdge, Cut(Edge::Smooth)),
        ("nicht gezähnt", AtEdge, Cut(Edge::Smooth)),
        ("ohne zähne", AtEdge, Cut(Edge::Smooth)),
        ("wavy", AtEdge, Cut(Edge::Wavy)),
        ("wav*", AtEdge, Cut(Edge::Wavy)),
        ("gewellt", AtEdge, Cut(Edge::Wavy)),
        ("wellig", AtEdge, Cut(Edge::Wavy)),
        ("untoothed", Anywhere, Cut(Edge::Smooth)),
        ("toothless", AtEdge, Cut(Edge::Smooth)),
        ("ungezähnt", Anywhere, Cut(Edge::Smooth)),
        ("ganzrandig", Anywhere, Cut(Edge::Smooth)),
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
        ("smooth", AtEdge, Cut(Edge::Smooth)),
        ("plain", AtEdge, Cut(Edge::Smooth)),
        ("even", AtEdge, Cut(Edge::Smooth)),
        ("entire", AtEdge, Cut(Edge::Smooth)),
        ("glatt", AtEdge, Cut(Edge::Smooth)),
        ("unlobed", Anywhere, Lobes(Lobed::No)),
        ("ungelappt", Anywhere, Lobes(Lobed::No)),
        ("hand lobe*", Anywhere, Lobes(Lobed::Hand)),
        ("palmately lobed", Anywhere, Lobes(Lobed::Hand)),
        ("lobed like a hand", Anywhere, Lobes(Lobed::Hand)),
        ("handförmig gelappt", Anywhere, Lobes(Lobed::Hand)),
        ("feather lobe*", Anywhere, Lobes(Lobed::Feather)),
        ("pinnately lobed", Anywhere, Lobes(Lobed::Feather)),
        ("lobed like a feather", Anywhere, Lobes(Lobed::Feather)),
        ("fiederlappig", Anywhere, Lobes(Lobed::Feather)),
        ("fiederförmig gelappt", Anywhere, Lobes(Lobed::Feather)),
        ("lobes like a hand", Anywhere, Lobes(Lobed::Hand)),
        ("lobes like a feather", Anywhere, Lobes(Lobed::Feather)),
        ("hand*", AtLobes, Lobes(Lobed::Hand)),
        ("palmate*", AtLobes, Lobes(Lobed::Hand)),
        ("finger*", AtLobes, Lobes(Lobed::Hand)),
        ("one point", AtLobes, Lobes(Lobed::Hand)),
        ("one place", AtLobes, Lobes(Lobed::Hand)),
        ("wie eine hand", AtLobes, Lobes(Lobed::Hand)),
        ("feather*", AtLobes, Lobes(Lobed::Feather)),
        ("pinnate*", AtLobes, Lobes(Lobed::Feather)),
        ("two rows", AtLobes, Lobes(Lobed::Feather)),
        ("along the midrib", AtLobes, Lobes(Lobed::Feather)),
        ("wie eine feder", AtLobes, Lobes(Lobed::Feather)),
        ("lobed", Anywhere, Lobes(Lobed::Somehow)),
        ("lobe*", Anywhere, Lobes(Lobed::Somehow)),
        ("gelappt", Anywhere, Lobes(Lobed::Somehow)),
        ("lappen", Leaf, Lobes(Lobed::Somehow)),
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
        ("ovate", Leaf, Outline(Shape::Egg)),
        ("oval", Leaf, Outline(Shape::Oval)),
        ("ellip*", Leaf, Outline(Shape::Oval)),
        ("eiförmig", Leaf, Outline(Shape::Egg)),
        ("narrow", Leaf, Outline(Shape::Narrow)),
        ("lance*", Leaf, Outline(Shape::Narrow)),
        ("schmal", Leaf, Outline(Shape::Narrow)),
        ("lanzettlich", Leaf, Outline(Shape::Narrow)),
        ("near the stalk", Leaf, Outline(Shape::Egg)),
        ("below the middle", Leaf, Outline(Shape::Egg)),
        ("in the middle", Leaf, Outline(Shape::Oval)),
        ("near the tip", Leaf, Outline(Shape::Upper)),
        ("above the middle", Leaf, Outline(Shape::Upper)),
        ("needle*", Anywhere, Other),
        ("scale*", Anywhere, Other),
        ("frond*", Anywhere, Other),
        ("nadel*", Anywhere, Other),
        ("schuppe*", Anywhere, Other),
        ("wedel*", Anywhere, Other),
        ("blunt", AtTip, Ends(Tip::Rounded)),
        ("round*", AtTip, Ends(Tip::Rounded)),
        ("notch*", AtTip, Ends(Tip::Notched)),
        ("spine*", AtTip, Ends(Tip::Spine)),
        ("spin*", AtTip, Ends(Tip::Spine)),
        ("point*", AtTip, Ends(Tip::Pointed)),
        ("sharp", AtTip, Ends(Tip::Pointed)),
        ("spitz", AtTip, Ends(Tip::Pointed)),
        ("abgerundet", AtTip, Ends(Tip::Rounded)),
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
    Lobes(Lobed),
    Divided(Pieces),
    Outline(Shape),
    Ends(Tip),
    Other,
    Hairs(bool),
    Stalk(bool),
}

impl Says {
    fn look(self) -> Look {
        let nothing = Look::default();
        match self {
            Self::Cut(edge) => Look { edge: Some(edge), ..nothing },
            Self::Lobes(lobed) => Look { lobed: Some(lobed), ..nothing },
            Self::Ends(tip) => Look { tip: Some(tip), ..nothing },
            Self::Other => Look { other: true, ..nothing },
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
            // "Round" is said of a tip as well, and then it is no round leaf.
            Where::Leaf => (about.leaf || about.form) && !about.tip && !about.lobes,
            Where::Lobes => about.lobes,
            Where::Tip => about.tip,
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
