//! The built-in words, in the order of the alphabet, each with its plain words, its look-alike,
//! its spellings and where its definition comes from.
//!
//! A [`leaf_word`] is true of leaves alone, and draws its line as Ellis et al. 2009, *Manual of Leaf Architecture*, does (from
//! memory: a page number would be a guess). All the others, and every look-alike, are common
//! practice, without a source. It holds no facts about kinds.

use super::{Entry, Listed};

const COMMON: &str = "common practice, no source";
const LEAF: &str = "after Ellis et al. 2009, Manual of Leaf Architecture (from memory)";

/// One line of the list.
const fn word(
    word: &'static str,
    forms: &'static [&'static str],
    plain: &'static str,
    not: &'static str,
) -> Listed {
    listed(COMMON, false, word, forms, plain, not)
}

/// One line of the list that is true of leaves alone, as common practice has it.
const fn of_leaves(
    word: &'static str,
    forms: &'static [&'static str],
    plain: &'static str,
    not: &'static str,
) -> Listed {
    listed(COMMON, true, word, forms, plain, not)
}

/// One line of the list that the handbook of leaves defines.
const fn leaf_word(
    word: &'static str,
    forms: &'static [&'static str],
    plain: &'static str,
    not: &'static str,
) -> Listed {
    listed(LEAF, true, word, forms, plain, not)
}

const fn listed(
    source: &'static str,
    leaves: bool,
    word: &'static str,
    forms: &'static [&'static str],
    plain: &'static str,
    not: &'static str,
) -> Listed {
    let not_to_be_confused = if not.is_empty() { None } else { Some(not) };
    Listed { entry: Entry { word, plain, not_to_be_confused, source }, leaves, forms }
}

/// Every word that can be explained.
pub(crate) const WORDS: &[Listed] = &[
    word(
        "abdomen",
        &["abdomen", "abdomens"],
        "The hind part of an insect's body, behind the legs.",
        "",
    ),
    of_leaves(
        "alternate",
        &["alternate", "alternately"],
        "One leaf at each height of the twig, left and right by turns.",
        "opposite: opposite leaves are in pairs.",
    ),
    word(
        "antenna",
        &["antenna", "antennae", "antennas"],
        "A feeler on the head of a small animal.",
        "leg: legs grow from the body, feelers from the head.",
    ),
    word("bark", &["bark"], "The skin of a trunk or a branch.", ""),
    leaf_word(
        "base",
        &["base", "bases"],
        "The end of the blade where the stalk comes in.",
        "tip: the other end.",
    ),
    word("berry", &["berry", "berries"], "A soft round fruit. Never taste it.", ""),
    leaf_word(
        "blade",
        &["blade", "blades", "leaf blade", "leaf blades", "lamina"],
        "The flat part of a leaf, without its stalk.",
        "leaf stalk: the thin part that holds the blade.",
    ),
    word(
        "bristle",
        &["bristle", "bristles"],
        "A stiff hair.",
        "spine: a spine pricks, a bristle bends.",
    ),
    word(
        "bud",
        &["bud", "buds"],
        "A small closed bump on the twig, from which a new shoot grows. It sits in the angle above a leaf stalk.",
        "gall: a swelling that a tiny animal caused. It can be anywhere.",
    ),
    word(
        "case",
        &["case", "cases"],
        "A tube that an animal builds around its body from bits of plant or sand.",
        "shell: a shell grows with the animal.",
    ),
    word("catkin", &["catkin", "catkins"], "A hanging tail of tiny flowers.", ""),
    word("claw", &["claw", "claws"], "A hooked end of a leg.", ""),
    word("coiled", &["coiled"], "Wound round and round, like a rolled-up rope.", ""),
    leaf_word(
        "compound",
        &["compound"],
        "Made of several separate leaflets on one leaf stalk.",
        "lobed: a lobed leaf is still in one piece.",
    ),
    word(
        "cone",
        &["cone", "cones"],
        "Scales round a middle stalk. The seeds lie on the scales.",
        "catkin: a catkin is soft, a cone is woody.",
    ),
    leaf_word(
        "double-toothed",
        &["double toothed", "doubly toothed"],
        "Each big tooth of the edge has small teeth of its own.",
        "toothed: there all the teeth are about the same size.",
    ),
    leaf_word(
        "edge",
        &["edge", "edges", "margin", "margins", "leaf edge", "leaf edges", "leaf margin"],
        "The rim of the blade, all the way round.",
        "tip: the tip is only the far end.",
    ),
    leaf_word(
        "egg-shaped",
        &["egg shaped", "like an egg", "ovate"],
        "Longer than wide, and widest near the stalk.",
        "oval: an oval is widest in the middle.",
    ),
    leaf_word(
        "entire",
        &["entire", "untoothed", "smooth edge", "smooth edges", "smooth edged"],
        "With a smooth edge: a plain line without teeth.",
        "toothed: there small points run along the edge.",
    ),
    leaf_word(
        "feather",
        &["feather", "feathers", "pinnate", "feather shaped", "feather like"],
        "With leaflets, or lobes, in two rows along the middle, like a feather.",
        "hand-shaped: there they all start at one point.",
    ),
    word(
        "feeler",
        &["feeler", "feelers"],
        "A thin stalk on the head, to touch and smell with.",
        "leg: legs grow from the body.",
    ),
    word("fin", &["fin", "fins"], "A thin flap for swimming.", ""),
    word("fringe", &["fringe", "fringes", "fringed"], "A row of hairs along a rim.", ""),
    word("frond", &["frond", "fronds"], "The whole leaf of a fern.", ""),
    word("fruit", &["fruit", "fruits"], "The part of a plant that holds the seeds.", ""),
    leaf_word(
        "gap",
        &["gap", "gaps", "sinus", "sinuses"],
        "The space between two lobes, where the blade is cut in.",
        "lobe: a lobe is blade, a gap is air.",
    ),
    word(
        "gill",
        &["gill", "gills"],
        "A part that breathes under water: a thin plate or feather on the body.",
        "leg: gills do not walk.",
    ),
    word(
        "gland",
        &["gland", "glands"],
        "A tiny knob that gives off juice, often where blade and stalk meet.",
        "bud: a bud sits on the twig.",
    ),
    word(
        "hair",
        &["hair", "hairs", "hairy"],
        "Very thin threads on the surface. Hold it against the light.",
        "",
    ),
    leaf_word(
        "hand-shaped",
        &["hand shaped", "like a hand", "hand like", "palmate", "like the fingers of a hand"],
        "With leaflets, or lobes, that all start at one point, like fingers. Leaflets are separate; lobes are joined.",
        "feather: there they are in two rows.",
    ),
    word("head", &["head", "heads"], "The front end, with the eyes and the mouth.", ""),
    leaf_word(
        "heart-shaped",
        &["heart shaped", "like a heart"],
        "Cut in at the stalk, with a round corner on each side, like the heart on a playing card.",
        "egg-shaped: an egg is not cut in at the stalk.",
    ),
    word(
        "hip",
        &["hip", "hips"],
        "The red fruit of a rose.",
        "berry: a hip is full of hairs and hard seeds.",
    ),
    word(
        "jointed",
        &["jointed", "joint", "joints"],
        "Made of pieces that bend against each other.",
        "",
    ),
    word(
        "larva",
        &["larva", "larvae"],
        "The young of an insect, before it has wings.",
        "worm: most larvae have legs or a hard head.",
    ),
    of_leaves(
        "leaf",
        &["leaf", "leaves"],
        "Look for the bud. The stalk below it, and everything on that stalk, is one leaf.",
        "leaflet: a leaflet has no bud above its foot.",
    ),
    leaf_word(
        "leaf stalk",
        &["leaf stalk", "leaf stalks", "petiole", "petioles"],
        "The thin part that holds the blade on the twig.",
        "twig: a twig has buds along it, a leaf stalk has none.",
    ),
    leaf_word(
        "leaflet",
        &["leaflet", "leaflets"],
        "One of the separate small blades that together make one leaf.",
        "leaf: a leaf has a bud above its foot, a leaflet has none.",
    ),
    leaf_word(
        "lobe",
        &["lobe", "lobes"],
        "A large part that sticks out of the blade, with a deep gap beside it.",
        "tooth: a tooth is a small point on the edge.",
    ),
    leaf_word(
        "lobed",
        &["lobed"],
        "With large parts that stick out and deep gaps between them, like a piece of a jigsaw.",
        "toothed: teeth are small points on the edge.",
    ),
    leaf_word(
        "lopsided",
        &["lopsided", "lop sided", "asymmetrical", "asymmetric"],
        "One half of the blade is larger, or starts lower on the stalk.",
        "",
    ),
    leaf_word(
        "midrib",
        &["midrib", "midribs"],
        "The thick vein down the middle of the blade.",
        "side veins: they are thinner and branch off the midrib.",
    ),
    word("mouth", &["mouth", "mouths"], "The opening of a shell, or of an animal's head.", ""),
    word(
        "needle",
        &["needle", "needles"],
        "A whole leaf that is long and very thin, like a sewing needle.",
        "spine: a spine is only a hard point on a leaf.",
    ),
    word(
        "nut",
        &["nut", "nuts"],
        "A dry fruit in a hard shell. Never taste it.",
        "berry: a berry is soft.",
    ),
    of_leaves(
        "opposite",
        &["opposite"],
        "Two leaves at the same height of the twig, face to face.",
        "alternate: one leaf at each height. Leaflets in pairs do not count: look for the buds, and see how whole leaves are placed.",
    ),
    leaf_word(
        "oval",
        &["oval", "elliptic"],
        "Longer than wide, and widest in the middle.",
        "egg-shaped: an egg is wider at one end.",
    ),
    word("pair", &["pair", "pairs"], "Two that belong together.", ""),
    word(
        "petal",
        &["petal", "petals"],
        "One of the coloured parts round the middle of a flower.",
        "sepal: sepals are under the petals.",
    ),
    word("pod", &["pod", "pods"], "A long dry fruit with the seeds in a row.", ""),
    word("pointed", &["pointed"], "Ending in a point.", "rounded: it ends in a curve."),
    word(
        "prickle",
        &["prickle", "prickles", "prickly"],
        "A sharp point on the skin of a stem. It snaps off sideways.",
        "thorn: a thorn is a hard twig and does not snap off.",
    ),
    word(
        "rib",
        &["rib", "ribs", "ribbed", "ridge", "ridges", "ridged"],
        "A raised line along a surface.",
        "",
    ),
    word("rosette", &["rosette", "rosettes"], "A ring of leaves flat on the ground.", ""),
    word("sap", &["sap"], "The juice of a plant. Keep it off your skin.", ""),
    word(
        "scale",
        &["scale", "scales"],
        "A small flat plate that lies on others like a roof tile.",
        "",
    ),
    word("seed", &["seed", "seeds"], "What a new plant grows from. Never taste it.", ""),
    word(
        "segment",
        &["segment", "segments"],
        "One of the rings that a body is made of.",
        "leg: count the rings, not the legs.",
    ),
    word(
        "sepal",
        &["sepal", "sepals"],
        "One of the parts under the petals, green as a rule.",
        "petal: petals are coloured.",
    ),
    word(
        "shell",
        &["shell", "shells"],
        "A hard house that grows with the animal.",
        "case: a case is built from bits of plant or sand.",
    ),
    word(
        "shiny",
        &["shiny", "glossy"],
        "Light flashes off it, as if it were wet or polished.",
        "smooth: you feel smooth, you see shiny.",
    ),
    word("shoot", &["shoot", "shoots"], "This year's new piece of a twig.", ""),
    word(
        "smooth",
        &["smooth"],
        "An edge is smooth when it has no teeth. A surface is smooth when nothing rough can be felt.",
        "shiny: you see shiny, you feel smooth.",
    ),
    word("snout", &["snout", "snouts"], "A long nose.", ""),
    word(
        "spike",
        &["spike", "spikes", "spiky"],
        "A hard, sharp point that pricks.",
        "tooth: a tooth of a leaf is soft and does not prick.",
    ),
    of_leaves(
        "spine",
        &["spine", "spines", "spiny"],
        "A sharp, hard point on a leaf. It pricks.",
        "tooth: a tooth of the edge is soft and does not prick.",
    ),
    word(
        "spiral",
        &["spiral", "spirals"],
        "A line that winds round and round, and outwards.",
        "",
    ),
    word("stalk", &["stalk", "stalks"], "The thin part that holds something up.", ""),
    word(
        "stem",
        &["stem", "stems"],
        "The part of a plant that carries the leaves.",
        "leaf stalk: it carries one leaf only.",
    ),
    word(
        "stipule",
        &["stipule", "stipules"],
        "A small leafy part where the leaf stalk begins, as a rule one on each side.",
        "leaflet: leaflets belong to the blade.",
    ),
    word("sucker", &["sucker", "suckers"], "A round pad that an animal holds on with.", ""),
    word(
        "tail",
        &["tail", "tails"],
        "A thin part at the hind end.",
        "leg: a tail is behind all the legs.",
    ),
    word(
        "tendril",
        &["tendril", "tendrils"],
        "A thin curling thread with which a plant holds on.",
        "",
    ),
    word(
        "thorn",
        &["thorn", "thorns", "thorny"],
        "A hard, sharp twig that pricks. It has wood inside.",
        "prickle: a prickle sits on the skin and snaps off.",
    ),
    leaf_word(
        "tip",
        &["tip", "tips"],
        "The end of the blade that is farthest from the stalk.",
        "base: the end at the stalk.",
    ),
    leaf_word(
        "tooth",
        &["tooth", "teeth"],
        "A small point on the edge, like one of a saw.",
        "lobe: a lobe is a big part of the blade.",
    ),
    leaf_word(
        "toothed",
        &["toothed", "serrate", "jagged"],
        "With small points along the edge, like a saw.",
        "lobed: lobes are big, with deep gaps between them.",
    ),
    word("trunk", &["trunk", "trunks"], "The thick stem of a tree.", ""),
    word(
        "twig",
        &["twig", "twigs"],
        "A thin branch, with buds along it.",
        "leaf stalk: it has no buds along it.",
    ),
    of_leaves(
        "underside",
        &["underside", "undersides"],
        "The lower side of a leaf, where the veins stick out.",
        "",
    ),
    leaf_word(
        "unlobed",
        &["unlobed"],
        "Without deep gaps: the blade is one plain shape. It may still have teeth.",
        "",
    ),
    leaf_word(
        "vein",
        &["vein", "veins"],
        "One of the lines in the blade that carry water.",
        "midrib: the thickest vein, in the middle.",
    ),
    of_leaves(
        "vein pair",
        &["vein pair", "vein pairs", "pairs of veins", "pair of veins"],
        "Two side veins, one on the left and one on the right of the midrib.",
        "",
    ),
    leaf_word(
        "wavy",
        &["wavy"],
        "Going in and out in soft bends, without points.",
        "toothed: teeth are points.",
    ),
    word(
        "whorl",
        &["whorl", "whorls", "whorled"],
        "On a twig: three or more leaves at one height. On a shell: one turn.",
        "opposite: there just two leaves are at one height.",
    ),
    word("wing", &["wing", "wings", "winged"], "A thin flat flap.", ""),
];
