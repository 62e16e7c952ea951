//! The little English that the questions need: number, article, what a word is.
//!
//! It knows lists of the words that stand in tables of finds, and no dictionary. A word that no
//! list or ending knows is said to be unknown, so that nobody makes a sentence with it. Common
//! practice, without a source.

/// How a noun is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Noun {
    /// One: `spine`.
    Singular,
    /// Several: `spines`.
    Plural,
    /// Not counted: `sap`.
    Uncounted,
}

/// Words that begin with where, how or whose, and end a noun before them.
const JOINTS: &[&str] = &[
    "of",
    "at",
    "on",
    "in",
    "under",
    "with",
    "along",
    "near",
    "between",
    "above",
    "below",
    "from",
    "that",
    "when",
    "where",
    "for",
    "per",
    "through",
    "round",
    "around",
    "to",
    "by",
    "inside",
    "outside",
    "without",
    "like",
    "over",
    "across",
    "underneath",
    "into",
];

/// Whether a word begins with where or how.
pub(super) fn is_joint(word: &str) -> bool {
    JOINTS.contains(&word)
}

/// The noun at the front of a name: `hairs` of `hairs on the vein`.
pub(super) fn front(name: &str) -> &str {
    let mut end = 0;
    for word in name.split(' ') {
        if is_joint(word) {
            break;
        }
        end += word.len() + 1;
    }
    name[..end.min(name.len())].trim_end()
}

/// How the first noun of a name is counted: that of `hairs on the vein` is `hairs`.
pub(super) fn noun_of(name: &str) -> Noun {
    let before = front(name);
    let numeral = before.split(' ').next().is_some_and(is_several);
    let noun = before.rsplit(' ').next().unwrap_or(name);
    if is_plural(noun) || numeral {
        Noun::Plural
    } else if UNCOUNTED.contains(&noun) {
        Noun::Uncounted
    } else {
        Noun::Singular
    }
}

const UNCOUNTED: &[&str] = &[
    "bark", "down", "dust", "felt", "fluff", "foam", "fur", "gum", "hair", "latex", "milk",
    "moss", "resin", "sap", "slime", "wax", "wool", "water", "juice", "cork", "pith", "pollen",
    "skin", "silk", "grass", "bloom",
];

/// Nouns that stand in tables of finds, one of each: only of these is a bare heading or state
/// surely a thing.
const NOUNS: &str = "leaf leaflet edge margin base tip stalk stem twig bud bark vein midrib lobe \
    tooth thorn spine prickle hook hair tail wing leg eye head body shell antenna feeler gill \
    claw foot mouth fin beak pincer sucker segment ring spot stripe band ridge rib hole cap case \
    lid seed fruit berry nut acorn pod cone capsule catkin flower petal sepal needle scale root \
    bulb trunk branch shoot tendril crown parachute beard feather smell mark line scar pore \
    underside surface side point groove opening turn layer node pappus abdomen thorax larva \
    fungus insect spider worm snail slug beetle bug fly bee wasp ant mite moth caterpillar \
    shield collar husk cup plume keel joint knob bump wart pit cluster lens egg horn snout \
    stone pebble log stick feet tube bow spiral fan kidney star bell trumpet cup disc cross \
    triangle square oval circle diamond spoon sword arrow heart hand finger plant animal tree \
    back belly top bottom end middle ground side neck pasta face wall rim flesh hoof trail hump \
    chin cheek lip tongue";

/// Whether a word names a thing that is known, in one or in several.
pub(super) fn is_noun(word: &str) -> bool {
    let known = |word: &str| NOUNS.split_whitespace().any(|noun| noun == word);
    known(word) || known(&singular(word)) || UNCOUNTED.contains(&word)
}

/// `two`, `many`, `7`: how many there are, and more than one.
pub(super) fn is_several(word: &str) -> bool {
    [
        "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "many",
        "several", "few",
    ]
    .contains(&word)
        || word.parse::<u32>().is_ok_and(|number| number != 1)
}

/// Whether a noun means several.
pub(super) fn is_plural(noun: &str) -> bool {
    match noun {
        "teeth" | "feet" | "antennae" | "larvae" | "fungi" | "people" | "fronds" | "leaves"
        | "pupae" | "nymphae" => true,
        "lens" | "species" | "gas" | "canvas" | "series" | "has" | "is" | "indoors"
        | "outdoors" | "sideways" | "always" | "upwards" | "downwards" => false,
        _ => {
            noun.len() > 2
                && noun.ends_with('s')
                && !["ss", "us", "is"].iter().any(|end| noun.ends_with(end))
        }
    }
}

/// Several of a noun: `leaflets` of `leaflet`, `flies` of `fly`.
pub(super) fn plural(noun: &str) -> String {
    if is_plural(noun) {
        return noun.to_string();
    }
    let vowel_before_y = ["ay", "ey", "oy", "uy"].iter().any(|end| noun.ends_with(end));
    match noun {
        "tooth" => "teeth".to_string(),
        "leaf" => "leaves".to_string(),
        "foot" => "feet".to_string(),
        "antenna" => "antennae".to_string(),
        "larva" => "larvae".to_string(),
        "fungus" => "fungi".to_string(),
        _ if noun.ends_with('y') && !vowel_before_y => {
            format!("{}ies", &noun[..noun.len() - 1])
        }
        _ if ["ch", "sh", "x", "s"].iter().any(|end| noun.ends_with(end)) => {
            format!("{noun}es")
        }
        _ => format!("{noun}s"),
    }
}

/// One of several: `lobe` of `lobes`. A name in the singular stays as it is.
pub(super) fn singular(noun: &str) -> String {
    match noun {
        "teeth" => "tooth".to_string(),
        "leaves" => "leaf".to_string(),
        "feet" => "foot".to_string(),
        "antennae" => "antenna".to_string(),
        "larvae" => "larva".to_string(),
        "fungi" => "fungus".to_string(),
        _ if !is_plural(noun) => noun.to_string(),
        _ if noun.ends_with("ies") && noun.len() > 4 => format!("{}y", &noun[..noun.len() - 3]),
        _ if ["ches", "shes", "xes"].iter().any(|end| noun.ends_with(end)) => {
            noun[..noun.len() - 2].to_string()
        }
        _ => noun[..noun.len() - 1].to_string(),
    }
}

/// Adjectives that no ending shows.
const ADJECTIVES: &str = "evergreen opposite compound smooth round flat soft hard stiff straight \
    hollow rough green red white yellow brown black grey gray orange pink purple blue cream \
    silver golden alive winged edible simple open closed entire serrate wavy oval narrow wide \
    broad long short thick thin blunt sharp even uneven bare solid single double whole split \
    plain dull dark pale light bright fine coarse upright hanging peeling creeping climbing \
    floating crawling strong weak sour sweet bitter dry wet big small large little tiny middling \
    medium tall low high deep shallow loose tight parallel see-through two-tone different same \
    joined free square hooked lopsided female male hairless toothless wingless legless fresh \
    rotten alternate whorled deciduous native wild left right clear cloudy oblong linear lanceolate \
    ovate acute obtuse";

/// Nouns with the ending of an adjective.
const NO_ADJECTIVES: &[&str] = &[
    "body", "berry", "belly", "petal", "seed", "bud", "reed", "plate", "fly", "bee", "ivy",
    "cavity", "colony", "sepal", "animal", "crystal", "metal", "daisy", "lily", "cherry",
    "weed", "honey", "clay", "abdomen", "mint", "spiral", "bead", "key", "ray", "spray",
    "pansy", "poppy", "bulb",
];

/// Whether a word surely says how something is: `hairy`, `toothed`, `heart-shaped`.
pub(super) fn is_adjective(word: &str) -> bool {
    const ENDS: &[&str] = &[
        "ed", "y", "ous", "ish", "like", "less", "shaped", "al", "ate", "ular", "ic", "sided",
    ];
    !NO_ADJECTIVES.contains(&word)
        && (ADJECTIVES.split_whitespace().any(|known| known == word)
            || ENDS.iter().any(|end| word.len() > end.len() + 2 && word.ends_with(end)))
}

/// Verbs that stand in headings as "floats" or "lives in": that form, and the plain one.
const VERBS: &[(&str, &str)] = &[
    ("lives", "live"),
    ("moves", "move"),
    ("eats", "eat"),
    ("grows", "grow"),
    ("travels", "travel"),
    ("swims", "swim"),
    ("floats", "float"),
    ("sinks", "sink"),
    ("rolls", "roll"),
    ("curls", "curl"),
    ("breathes", "breathe"),
    ("falls", "fall"),
    ("flies", "fly"),
    ("crawls", "crawl"),
    ("hops", "hop"),
    ("jumps", "jump"),
    ("feels", "feel"),
    ("smells", "smell"),
    ("tastes", "taste"),
    ("looks", "look"),
    ("has", "have"),
    ("hangs", "hang"),
    ("climbs", "climb"),
    ("feeds", "feed"),
    ("bends", "bend"),
    ("snaps", "snap"),
    ("peels", "peel"),
    ("sticks", "stick"),
    ("spins", "spin"),
    ("opens", "open"),
    ("bites", "bite"),
    ("stings", "sting"),
    ("glows", "glow"),
    ("bounces", "bounce"),
    ("bleeds", "bleed"),
    ("stands", "stand"),
    ("shines", "shine"),
];

/// The plain form of a verb in a heading, and whether the heading has it of one thing.
pub(super) fn verb(word: &str) -> Option<(&'static str, bool)> {
    VERBS.iter().find_map(|(one, plain)| match () {
        () if *one == word => Some((*plain, true)),
        () if *plain == word => Some((*plain, false)),
        () => None,
    })
}

/// The indefinite article with its space; none before another article.
pub(super) fn article(name: &str) -> &'static str {
    let first = name.split(' ').next().unwrap_or_default();
    if ["a", "an", "the", "one", "any", "some", "only", "no"].contains(&first) {
        return "";
    }
    match name.chars().next() {
        Some('a' | 'e' | 'i' | 'o') => "an ",
        Some('u') if !name.starts_with("uni") => "an ",
        _ => "a ",
    }
}

/// A name as the subject of a sentence: `the leaf edge`.
pub(super) fn the(name: &str) -> String {
    let first = name.split(' ').next().unwrap_or_default();
    if ["the", "its", "their", "each", "every", "a", "an", "both", "it", "all"].contains(&first)
    {
        return name.to_string();
    }
    format!("the {name}")
}

/// The text with a capital first letter.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// The text in small letters, but for single ones: `U-shaped`, `like an S`.
pub(super) fn lower(text: &str) -> String {
    let words = text.split(' ').map(|word| {
        let first = word.split('-').next().unwrap_or_default();
        let single = first.chars().count() == 1 && !matches!(first, "A" | "I");
        if single { word.to_string() } else { word.to_lowercase() }
    });
    words.collect::<Vec<_>>().join(" ")
}
