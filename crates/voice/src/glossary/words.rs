//! The words that can be explained, in the order of the English alphabet, each with where its
//! definition comes from.
//!
//! A [`leaf_word`] is true of leaves alone, and draws its line as Ellis et al. 2009, *Manual of
//! Leaf Architecture*, does (from memory: a page number would be a guess). All the others, and
//! every look-alike, are common practice, without a source. What is said of a word stands in
//! `messages/<language>/glossary.ftl`. It holds no facts about kinds.

const COMMON: &str = "common practice, no source";
const LEAF: &str = "after Ellis et al. 2009, Manual of Leaf Architecture (from memory)";

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

/// Every word that can be explained.
pub(super) const WORDS: &[Word] = &[
    word("abdomen"),
    of_leaves("alternate"),
    word("antenna"),
    word("bark"),
    leaf_word("base"),
    word("berry"),
    leaf_word("blade"),
    word("bristle"),
    word("bud"),
    word("case"),
    word("catkin"),
    word("claw"),
    word("coiled"),
    leaf_word("compound"),
    word("cone"),
    leaf_word("double-toothed"),
    leaf_word("edge"),
    leaf_word("egg-shaped"),
    leaf_word("entire"),
    leaf_word("feather"),
    word("feeler"),
    word("fin"),
    word("fringe"),
    word("frond"),
    word("fruit"),
    leaf_word("gap"),
    word("gill"),
    word("gland"),
    word("hair"),
    leaf_word("hand-shaped"),
    word("head"),
    leaf_word("heart-shaped"),
    word("hip"),
    word("jointed"),
    word("larva"),
    of_leaves("leaf"),
    leaf_word("leaf stalk"),
    leaf_word("leaflet"),
    leaf_word("lobe"),
    leaf_word("lobed"),
    leaf_word("lopsided"),
    leaf_word("midrib"),
    word("mouth"),
    word("needle"),
    word("nut"),
    of_leaves("opposite"),
    leaf_word("oval"),
    word("pair"),
    word("petal"),
    word("pod"),
    word("pointed"),
    word("prickle"),
    word("rib"),
    word("rosette"),
    word("sap"),
    word("scale"),
    word("seed"),
    word("segment"),
    word("sepal"),
    word("shell"),
    word("shiny"),
    word("shoot"),
    word("smooth"),
    word("snout"),
    word("spike"),
    of_leaves("spine"),
    word("spiral"),
    word("stalk"),
    word("stem"),
    word("stipule"),
    word("sucker"),
    word("tail"),
    word("tendril"),
    word("thorn"),
    leaf_word("tip"),
    leaf_word("tooth"),
    leaf_word("toothed"),
    word("trunk"),
    word("twig"),
    of_leaves("underside"),
    leaf_word("unlobed"),
    leaf_word("vein"),
    of_leaves("vein pair"),
    leaf_word("wavy"),
    word("whorl"),
    word("wing"),
];
