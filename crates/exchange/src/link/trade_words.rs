//! The words of the trade that questions are compared with: synonyms, opposites, parts.
//!
//! Only lists; `words` stems and uses them. They are those of field work with schools, and
//! `docs/key-text.md` shows them to whoever writes a key.

/// Words and phrases that go under a further key. An entry's own stem is always a key.
pub(super) const SYNONYMS: &[(&str, &str)] = &[
    (
        "tooth",
        "jagged, serrate, serrated, saw, sawtooth, notched, notches, teeth, saw edged, \
      saw toothed, like a saw, zig zag, zigzag",
    ),
    ("smooth", "plain, even, entire"),
    ("lobe", "lobed, lobes"),
    (
        "leaflet",
        "little leaf, small leaf, mini leaf, tiny leaf, baby leaf, small leaflet, \
      little leaflet, made of leaflets, made up of leaflets, made of little leaves, \
      made of small leaves, made up of little leaves, several leaflets, many leaflets, \
      lots of leaflets, lots of little leaves, lots of small leaves, separate leaflets",
    ),
    (
        "compound",
        "made of leaflets, made up of leaflets, made of little leaves, \
      made of small leaves, made up of little leaves, several leaflets, many leaflets, \
      lots of leaflets, lots of little leaves, lots of small leaves, separate leaflets, \
      divided, divided into leaflets, several pieces, many pieces, lots of pieces, \
      more than one piece, more than one part",
    ),
    (
        "simple",
        "one piece, single piece, all in one, undivided, single blade, one blade, \
      one part, whole",
    ),
    ("stalk", "petiole, leafstalk, leaf stalk, leaf stem"),
    ("edge", "margin, rim, border, leaf edge"),
    ("blade", "lamina, leaf blade"),
    (
        "opposite",
        "pair, pairs, paired, in pairs, two by two, face each other, \
      facing each other, across from each other, face to face",
    ),
    (
        "alternate",
        "alternating, alternately, one by one, one at a time, singly, staggered, \
      one after the other, one after another, take turns, taking turns, by turns",
    ),
    ("spine", "spiny, prickle, prickles, prickly, thorn, thorns, thorny, spike, spikes, spiky"),
    ("feather", "pinnate, feather shaped, like a feather"),
    ("hand", "palmate, finger, fingers, fingered, hand shaped, like a hand"),
    ("card", "leathery, leather, stiff"),
    ("hair", "hairy, fuzzy, furry, downy, woolly"),
    ("point", "pointed, pointy"),
    ("round", "rounded, circular"),
    ("length", "long, longer, longest"),
    ("width", "wide, wider, broad, broader"),
    ("height", "tall, taller, high, higher"),
    ("weight", "heavy, heavier"),
    ("thickness", "thick, thicker"),
];

/// The keys above that say how something is: left over in a question, they ask for more.
pub(super) const DESCRIBING: [&str; 14] = [
    "tooth",
    "smooth",
    "lobe",
    "compound",
    "simple",
    "opposite",
    "alternate",
    "spine",
    "feather",
    "hand",
    "card",
    "hair",
    "point",
    "round",
];

/// Words by which a question asks whether there is something at all.
pub(super) const EXISTENCE: [&str; 14] = [
    "have", "has", "had", "having", "got", "there", "with", "without", "no", "see", "find",
    "show", "shows", "lack",
];

/// Where a table lacks the first word, its opposite is denied instead.
pub(super) const OPPOSITES: [(&str, &str); 6] = [
    ("compound", "simple"),
    ("simple", "compound"),
    ("smooth", "tooth"),
    ("alternate", "opposite"),
    ("opposite", "alternate"),
    ("round", "point"),
];

/// Words that mean different things on different parts: they need the part named beside them.
pub(super) const AMBIGUOUS: [&str; 7] =
    ["smooth", "plain", "even", "entire", "whole", "round", "point"];

/// Parts that make a sentence speak of something else, unless the character names them.
pub(super) const PARTS: [&str; 24] = [
    "twig",
    "bark",
    "berry",
    "fruit",
    "flower",
    "bud",
    "stem",
    "root",
    "tip",
    "base",
    "vein",
    "trunk",
    "branch",
    "tail",
    "head",
    "leg",
    "wing",
    "eye",
    "shell",
    "nut",
    "petal",
    "underside",
    "upperside",
    "top",
];

/// Parts of the person who asks, by which sizes are told: "as long as your finger".
pub(super) const BODY: [&str; 8] =
    ["hand", "hands", "finger", "fingers", "thumb", "fingernail", "arm", "foot"];

/// What joins two things that are asked at once.
pub(super) const JOINERS: [&str; 4] = ["and", "but", "with", "without"];

/// Comparatives that commit to nothing without a measure.
pub(super) const SIZES: [&str; 30] = [
    "big", "bigger", "biggest", "small", "smaller", "large", "larger", "long", "longer",
    "short", "shorter", "wide", "wider", "narrow", "narrower", "thick", "thin", "tall", "tiny",
    "huge", "little", "heavy", "light", "dark", "bright", "pale", "broad", "high", "deep",
    "many",
];

/// Words that hold sentences together, and those that say only that somebody looks.
pub(super) const FILLERS: &str = "a an the is are was were be been does do did has have had having it its \
    it's they them their this that these those there here of on in at to from by with as and or \
    but if then than so for into onto up down out off over under above below about around along \
    more most less least fewer fewest longer shorter bigger smaller larger wider narrower \
    taller higher greater lower heavier lighter exactly roughly nearly at like look looks \
    looking seem seems feel sit sits sitting grow grows growing stand stands come comes \
    arranged shaped shape made make consist consists each other another every all any some \
    only just very really quite clearly obviously always mostly usually often can could will \
    would you your yours we our i my me see find found get got when what which who how where \
    one ones thing kind plant animal creature specimen leaf leaves leafs piece part own whole \
    them together set sets place number form type count size you've it'll not no \
    without never neither nor lack lacks lacking none please now also both touch counted much \
    upwards between against next side sides show shows go goes going way";

/// Words after which what follows is denied.
pub(super) const DENIALS: [&str; 20] = [
    "not", "no", "without", "never", "neither", "nor", "lack", "lacks", "lacking", "none",
    "isn't", "aren't", "doesn't", "don't", "hasn't", "haven't", "isnt", "doesnt", "hasnt",
    "arent",
];

/// Words that only look as if they began with a denying `un`.
pub(super) const NOT_UN: [&str; 12] = [
    "under",
    "underneath",
    "underside",
    "until",
    "unit",
    "union",
    "unite",
    "uniform",
    "unusual",
    "unique",
    "uncle",
    "understand",
];
