//! The words that can be explained, in the order of the English alphabet, each with where its
//! definition comes from.
//!
//! A [`leaf_word`] is true of leaves alone, and draws its line as Ellis et al. 2009, *Manual of
//! Leaf Architecture*, does (from memory: a page number would be a guess), or as the book that was
//! looked at instead. Of others, too, the glossary that was looked at is named; it was read as a page
//! or in part, and its words are not ours. All the rest, and every look-alike, are common practice, without a source. What is said of a word
//! stands in `messages/<language>/glossary.ftl`. It holds no facts about kinds.

const COMMON: &str = "common practice, no source";
const LEAF: &str = "after Ellis et al. 2009, Manual of Leaf Architecture (from memory)";
const CORNELL: &str =
    "after Cornell University's glossary of woody plants (bhort.bh.cornell.edu)";
const NYBG: &str = "after the New York Botanical Garden's botanical glossary (sweetgum.nybg.org), read in part";
const MCCUSKER: &str =
    "after A. McCusker, glossary of the Flora of Australia (ausflora.net), read in part";
const GRAY: &str = "after Asa Gray, The Elements of Botany: lobing and veining, read in part";
const HERBARIUM: &str =
    "after the glossary of the Virtual Herbarium (virtualherbarium.com), its leaf margins";
const FOREST_SERVICE: &str = "after Brown and Grelen, Identifying Hardwoods Growing on Pine Sites: glossary, read in part";
const CORE: &str = "after Woody Plants in Winter: glossary (chestofbooks.com), read in part";
const TREES: &str =
    "after Guide to the Common Trees of Pennsylvania: glossary (cookforest.com)";
const KENTUCKY: &str = "after Kentucky Geological Survey, gastropod shells (uky.edu/KGS)";
const BOREAL: &str = "after Glossary of Insect Terminology (borealforest.org)";
const LEECH: &str = "after Britannica Students, leech (kids.britannica.com), its caption";
const TWIGS: &str = "after Winter Twigs (espsciencetime.org), a page for children";

/// A word of the list.
pub(super) struct Word {
    /// Its name in English, by which drawings and messages know it.
    pub(super) id: &'static str,
    /// Whether its plain words are true of leaves alone: a feather of a mayfly has no leaflets.
    pub(super) leaves: bool,
    /// Who defines it so, or that it is common practice.
    pub(super) source: &'static str,
}

const fn word(id: &'static str) -> Word {
    Word { id, leaves: false, source: COMMON }
}

/// A word that is true of leaves alone, as common practice has it.
const fn of_leaves(id: &'static str) -> Word {
    Word { id, leaves: true, source: COMMON }
}

/// A word that the handbook of leaves defines.
const fn leaf_word(id: &'static str) -> Word {
    Word { id, leaves: true, source: LEAF }
}

impl Word {
    /// The same after a glossary that was looked at.
    const fn after(self, source: &'static str) -> Self {
        Self { source, ..self }
    }
}

/// Every word that can be explained.
pub(super) const WORDS: &[Word] = &[
    word("abdomen").after(BOREAL),
    of_leaves("alternate").after(CORNELL),
    word("antenna").after(BOREAL),
    word("bark"),
    leaf_word("base"),
    word("berry").after(CORE),
    leaf_word("blade"),
    word("bristle"),
    word("bud").after(CORE),
    word("case"),
    word("catkin").after(FOREST_SERVICE),
    word("claw"),
    word("coiled"),
    leaf_word("compound").after(MCCUSKER),
    word("cone"),
    leaf_word("double-toothed").after(HERBARIUM),
    leaf_word("edge"),
    leaf_word("egg-shaped").after(MCCUSKER),
    word("end bud").after(CORNELL),
    leaf_word("end leaflet").after(MCCUSKER),
    leaf_word("entire").after(MCCUSKER),
    leaf_word("feather").after(MCCUSKER),
    leaf_word("feather-veined").after(GRAY),
    word("feeler").after(BOREAL),
    word("fin"),
    word("fringe").after(FOREST_SERVICE),
    word("frond"),
    word("fruit").after(FOREST_SERVICE),
    leaf_word("gap").after(GRAY),
    word("gill"),
    word("gland"),
    word("hair"),
    leaf_word("hand-shaped").after(MCCUSKER),
    leaf_word("hand-veined").after(GRAY),
    word("head").after(BOREAL),
    leaf_word("heart-shaped").after(MCCUSKER),
    word("hip"),
    word("jointed"),
    of_leaves("lance-shaped").after(CORNELL),
    word("larva").after(BOREAL),
    of_leaves("leaf").after(TREES),
    word("leaf scar").after(CORNELL),
    leaf_word("leaf stalk"),
    leaf_word("leaflet"),
    leaf_word("lobe"),
    leaf_word("lobed").after(GRAY),
    leaf_word("lopsided").after(MCCUSKER),
    leaf_word("midrib"),
    word("mouth").after(KENTUCKY),
    word("needle"),
    leaf_word("notched"),
    word("nut"),
    of_leaves("opposite").after(CORNELL),
    leaf_word("oval").after(MCCUSKER),
    word("pair"),
    word("petal"),
    word("pod"),
    word("pointed"),
    word("prickle").after(NYBG),
    word("rib"),
    word("rosette"),
    word("sap"),
    word("scale"),
    word("seed").after(MCCUSKER),
    word("segment"),
    word("sepal"),
    word("shell"),
    word("shiny"),
    word("shoot").after(TWIGS),
    word("smooth"),
    word("snout"),
    word("spike"),
    of_leaves("spine"),
    word("spiral"),
    word("stalk"),
    word("stem"),
    word("stipule"),
    word("sucker").after(LEECH),
    word("tail"),
    word("tendril"),
    word("thorn").after(NYBG),
    leaf_word("tip"),
    leaf_word("tooth"),
    leaf_word("toothed").after(MCCUSKER),
    word("trunk"),
    word("twig"),
    of_leaves("underside"),
    leaf_word("unlobed"),
    leaf_word("vein"),
    of_leaves("vein pair"),
    leaf_word("wavy").after(MCCUSKER),
    leaf_word("wedge-shaped").after(MCCUSKER),
    word("whorl").after(TREES),
    word("wing").after(MCCUSKER),
];
