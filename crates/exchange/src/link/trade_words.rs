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
      made of small leaves, made up of little leaves, made up of lots of little leaflets, \
      made up of lots of little leaves, made up of lots of small leaflets, separate leaflets",
    ),
    (
        "compound",
        "made of leaflets, made up of leaflets, made of little leaves, \
      made of small leaves, made up of little leaves, separate leaflets, divided, divided into leaflets, made up of lots of little leaflets, made up of lots of little leaves, \
      made up of lots of small leaflets, several pieces, many pieces, lots of pieces, \
      more than one piece, more than one part",
    ),
    (
        "simple",
        "one piece, single piece, all in one, undivided, single blade, one blade, \
      one part, whole",
    ),
    ("stalk", "petiole, leafstalk, leaf stalk, leaf stem"),
    ("edge", "margin, rim, border, leaf edge"),
    (
        "blade",
        "without its stalk, without the stalk, without its leaf stalk, without the leaf stalk, lamina, leaf blade",
    ),
    (
        "opposite",
        "another leaf across, two leaves grow at the same place, pair, pairs, paired, in pairs, two by two, face each other, \
      facing each other, across from each other, face to face",
    ),
    (
        "alternate",
        "in turn, left and right in turn, one leaf at each, alternating, alternately, one by one, one at a time, singly, staggered, \
      one after the other, one after another, take turns, taking turns, by turns",
    ),
    (
        "spine",
        "prick, pricks, sharp spine, sharp spines, spiny, prickle, prickles, prickly, thorn, thorns, thorny, spike, spikes, spiky",
    ),
    ("feather", "in two rows, two rows, pinnate, feather shaped, like a feather"),
    (
        "hand",
        "palmate, finger, fingers, fingered, hand shaped, like a hand, from one point, \
      from the same point",
    ),
    ("card", "leathery, leather, stiff"),
    ("hair", "hairy, fuzzy, furry, downy, woolly"),
    ("point", "pointed, pointy"),
    ("round", "rounded, circular"),
    ("double", "doubly, smaller teeth, teeth on teeth, big and little teeth, double saw"),
    (
        "underside",
        "underneath, lower side, back of the leaf, from below, turn it over, turned over, \
      undersurface",
    ),
    ("feel", "to the touch, to touch"),
    ("rough", "like sandpaper, sandpaper"),
    ("shin", "shiny, shine, shines, glossy, gleaming"),
    ("!shin", "dull, matt"),
    ("lopsided", "uneven, crooked, one side lower"),
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

/// The parts of plants and animals, and the whole of them where a leaf is not meant. The leaf is
/// not among them: in a table of leaves it is the thing itself.
pub(super) const PARTS: &str = "twig bark berry fruit flower bud stem root tip base vein trunk \
    branch tail head leg wing eye shell nut petal underside upperside top edge stalk blade \
    leaflet lobe tooth thorn prickle spine seed cone catkin needle scale crown plant tree bush \
    shrub hedge gall stipule sap nutshell pod acorn antenna feeler claw foot mouth fin skin \
    fur stamen pollen midrib rib shoot tendril sepal stigma husk conker samara abdomen thorax \
    body gill beak hoof neck resin spore bloom \
    blossom nest egg pupa";

/// Words that only lead over to how things are placed: "spread out like a hand".
pub(super) const PLACING: [&str; 9] =
    ["spread", "spreads", "lined", "start", "starts", "begin", "begins", "lie", "lies"];

/// Parts of the person who asks, by which sizes are told: "as long as your finger".
pub(super) const BODY: [&str; 8] =
    ["hand", "hands", "finger", "fingers", "thumb", "fingernail", "arm", "foot"];

/// Words by which a question asks for more than yes or no.
pub(super) const OPENERS: [&str; 6] = ["what", "which", "how", "where", "who", "why"];

/// Words with which a question begins; behind an "and" a second one does.
pub(super) const ASKS: [&str; 10] =
    ["is", "are", "do", "does", "has", "have", "can", "isn't", "aren't", "doesn't"];

/// Words that compare; without a number they say nothing that others can tell.
pub(super) const COMPARES: [&str; 22] = [
    "more", "most", "less", "least", "fewer", "fewest", "longer", "shorter", "bigger",
    "smaller", "larger", "wider", "narrower", "taller", "higher", "lower", "greater",
    "heavier", "lighter", "thicker", "thinner", "much",
];

/// How many, without a number.
pub(super) const AMOUNTS: [&str; 6] = ["many", "lots", "several", "few", "loads", "some"];

/// What joins two things that are asked at once.
pub(super) const JOINERS: [&str; 4] = ["and", "but", "with", "without"];

/// Comparatives that commit to nothing without a measure.
pub(super) const SIZES: [&str; 34] = [
    "big", "bigger", "biggest", "small", "smaller", "large", "larger", "long", "longer",
    "short", "shorter", "wide", "wider", "narrow", "narrower", "thick", "thin", "tall", "tiny",
    "huge", "little", "heavy", "light", "dark", "bright", "pale", "broad", "high", "deep",
    "many", "lots", "several", "few", "loads",
];

/// Words that hold sentences together, and those that say only that somebody looks.
pub(super) const FILLERS: &str = "a an the am is are was were be been does do did has have had having it its \
    it's they them their this that these those there here of on in at to from by with as and or \
    but if then than so for into onto up down out off over under above below about around along \
    more most less least fewer fewest longer shorter bigger smaller larger wider narrower \
    taller higher greater lower heavier lighter exactly at like look looks \
    looking seem seems feel sit sits sitting grow grows growing stand stands come comes \
    arranged shaped shape made make consist consists each other another every all any some \
    only just clearly obviously either always can could will \
    would you your yours we our i my me see find found get got when what which who how where \
    one ones thing kind animal creature specimen leaf leaves leafs piece part own whole \
    them together set sets place number form type count size you've it'll not no \
    without never neither nor lack lacks lacking none please now also both touch counted much \
    upwards between against next side sides show shows go goes going way \
    measure measures measured stroke rub light outline";

/// How a question begins in another language (German: see `german`), and the words that hold it together there; from
/// memory. What denies is not among them: nobody reads it, so that such a question is asked back.
pub(super) const ELSEWHERE: [(&str, &str); 5] = [
    (
        "est sont a ont la le les l",
        "est sont a ont ce que la le les l un une des elle il ils t",
    ),
    (
        "es son tiene tienen está están",
        "es son tiene tienen está están el la los las un una en",
    ),
    ("è sono ha hanno il lo gli", "è sono ha hanno il lo la i gli le un una l"),
    ("zijn heeft hebben", "is zijn heeft hebben de het een er"),
    ("czy", "czy jest są ma mają"),
];

/// Words after which what follows is denied.
pub(super) const DENIALS: [&str; 20] = [
    "not", "no", "without", "never", "neither", "nor", "lack", "lacks", "lacking", "none",
    "isn't", "aren't", "doesn't", "don't", "hasn't", "haven't", "isnt", "doesnt", "hasnt",
    "arent",
];

/// Words that only look as if they began with a denying `un`.
pub(super) const NOT_UN: [&str; 13] = [
    "uneven",
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
