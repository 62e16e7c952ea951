//! The little German that the questions need: which article a noun has, what is an adjective.
//!
//! It knows lists of the words that stand in tables of finds, and no dictionary. The last part of
//! a German word says its gender: `Blattrand` is a `Rand`. A word that no list or ending knows is
//! said to be unknown, so that nobody makes a sentence with it. From memory, without a source.

use super::super::grammar::capital;

/// What a noun needs beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Noun {
    /// `der Rand`.
    Der,
    /// `die Spitze`.
    Die,
    /// `das Blatt`.
    Das,
    /// `die Blätter`.
    Several,
    /// `Flügel`: one or several, nobody can tell.
    Either,
}

const NOUNS: [(Noun, &str); 5] = [
    (
        Noun::Der,
        "rand blattgrund stiel stängel zweig ast stamm trieb körper kopf schwanz leib rüssel \
         schnabel panzer fuß zahn dorn stachel geruch duft umriss querschnitt nerv hals rücken \
         bauch mund hut ring kelch deckel fleck punkt kern griffel saft schleim filz flaum",
    ),
    (
        Noun::Die,
        "spitze basis spreite form farbe oberfläche fläche unterseite oberseite rinde borke \
         frucht nuss beere blüte knospe nadel schuppe rippe ader wurzel ranke schale hülle haut \
         borste kralle zange flosse schere stellung anordnung narbe öffnung hülse kapsel kante \
         mündung windung rosette drüse röhre länge breite höhe dicke tiefe größe feder klappe",
    ),
    (
        Noun::Das,
        "blatt bein auge ohr ende haus gehäuse holz gelenk segment haar maul loch netz fell harz \
         wachs",
    ),
    (
        Noun::Several,
        "blätter beine augen ohren zähne haare dornen stacheln zweige äste triebe früchte nüsse \
         beeren blüten knospen nadeln schuppen rippen adern nerven wurzeln ranken schalen \
         borsten krallen zangen flossen scheren ringe flecken punkte drüsen stiele ränder \
         spitzen fiedern lücken buchten kiemen füße segmente paare löcher hörner antennen \
         federn gelenke windungen kerne gallen klappen fransen",
    ),
    (
        Noun::Either,
        "blättchen lappen flügel fühler zapfen samen kätzchen härchen streifen köpfchen hörnchen",
    ),
];

/// What is not counted: one has no `einen Saft`.
const UNCOUNTED: [&str; 6] = ["saft", "schleim", "harz", "filz", "flaum", "wachs"];

/// Words that end like a noun of the list and are none of its kind.
const OTHERS: [&str; 5] = ["genuss", "verlust", "ballast", "kontrast", "reform"];

/// How a noun is used; None: nobody knows.
pub(super) fn known(word: &str) -> Option<Noun> {
    let small = word.to_lowercase();
    if !small.chars().all(char::is_alphabetic) || OTHERS.contains(&small.as_str()) {
        return None;
    }
    let ends = |noun: &&str| match small.strip_suffix(*noun) {
        Some(before) => before.is_empty() || before.chars().count() > 1,
        None => false,
    };
    let nouns = NOUNS.iter().flat_map(|(noun, list)| {
        list.split_whitespace().filter(ends).map(|found| (found.len(), *noun))
    });
    nouns.max_by_key(|(length, _)| *length).map(|(_, noun)| noun)
}

impl Noun {
    pub(super) fn is_one(self) -> bool {
        matches!(self, Self::Der | Self::Die | Self::Das)
    }

    /// `ein`, `eine`, of one thing.
    pub(super) fn one(self) -> Option<&'static str> {
        match self {
            Self::Der | Self::Das => Some("ein"),
            Self::Die => Some("eine"),
            Self::Several | Self::Either => None,
        }
    }
}

/// A thing that a heading names, with what is behind it: `Haare am Stiel`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Head {
    pub(super) noun: Noun,
    pub(super) phrase: String,
}

impl Head {
    pub(super) fn several(&self) -> bool {
        self.noun == Noun::Several
    }
}

/// Where a thing is: words behind which there must be an article, and such as have it in them.
const PLACES: [&str; 6] = ["an", "auf", "in", "unter", "über", "bei"];
const PLACES_WITH_ARTICLE: [&str; 5] = ["am", "im", "vom", "beim", "unterm"];
const ARTICLES: [&str; 8] = ["der", "des", "den", "dem", "die", "das", "einem", "einer"];

/// The thing that a heading begins with; None: its noun is not known, or it is typed like a
/// telegram.
pub(super) fn head(name: &str) -> Option<Head> {
    let words: Vec<&str> = name.split(' ').collect();
    let noun = known(words[0])?;
    let small: Vec<String> = words.iter().map(|word| word.to_lowercase()).collect();
    let at = |place: usize| small.get(place).map_or("", String::as_str);
    let reads_well = match words.len() {
        1 => true,
        2 => false,
        _ => {
            let genitive = matches!(at(1), "der" | "des");
            let placed = PLACES_WITH_ARTICLE.contains(&at(1));
            let far = words.len() > 3 && PLACES.contains(&at(1)) && ARTICLES.contains(&at(2));
            genitive || placed || far
        }
    };
    let phrase = format!("{}{}", capital(words[0]), &name[words[0].len()..]);
    reads_well.then_some(Head { noun, phrase })
}

/// The thing of `der Spreite`, `des Stiels` or `vom Stiel`.
pub(super) fn of_genitive(of: &str) -> Option<Head> {
    let (article, thing) = of.split_once(' ')?;
    let named = |word: &str, noun: Noun| Head { noun, phrase: capital(word) };
    let found = |word: &str| known(word).map(|noun| named(word, noun));
    match article {
        "der" => found(thing).filter(|of| matches!(of.noun, Noun::Die | Noun::Several)),
        "des" => {
            let bare =
                [thing.strip_suffix('s'), thing.strip_suffix("es")].into_iter().flatten();
            bare.filter_map(found).find(|of| matches!(of.noun, Noun::Der | Noun::Das))
        }
        "vom" => found(thing).filter(|of| matches!(of.noun, Noun::Der | Noun::Das)),
        _ => None,
    }
}

/// A thing as the subject: `der Rand`, `die Haare am Stiel`.
pub(super) fn nominative(thing: &Head) -> Option<String> {
    let article = match thing.noun {
        Noun::Der => "der",
        Noun::Die | Noun::Several => "die",
        Noun::Das => "das",
        Noun::Either => return None,
    };
    Some(format!("{article} {}", thing.phrase))
}

/// A thing that one has, and the same where one has it not: `einen Stiel`, `keinen Stiel`.
pub(super) fn accusative(thing: &Head) -> Option<(String, String)> {
    let (article, not) = match thing.noun {
        Noun::Der => ("einen ", "keinen"),
        Noun::Die => ("eine ", "keine"),
        Noun::Das => ("ein ", "kein"),
        Noun::Several | Noun::Either => ("", "keine"),
    };
    let noun = thing.phrase.split(' ').next().unwrap_or_default().to_lowercase();
    let article = if UNCOUNTED.iter().any(|of| noun.ends_with(of)) { "" } else { article };
    Some((format!("{article}{}", thing.phrase), format!("{not} {}", thing.phrase)))
}

/// Adjectives that no ending shows.
const ADJECTIVES: &str = "glatt rund oval flach weich hart steif gerade hohl rau grün rot weiß gelb \
    braun schwarz grau orange rosa lila violett blau bunt hell dunkel lang kurz dick dünn breit \
    schmal hoch tief groß klein spitz stumpf scharf eben uneben kahl nackt ganz einfach doppelt \
    matt fein grob aufrecht stark schwach sauer süß bitter trocken nass feucht schwer leicht \
    locker dicht frei frisch alt jung fest zart krumm schief schräg quer offen geschlossen \
    behaart bewimpert bedornt bestachelt beblättert bereift belaubt beschuppt verzweigt \
    elliptisch immergrün sommergrün wintergrün durchsichtig paarweise einzeln";

/// Words that end like an adjective and are none.
const NO_ADJECTIVES: [&str; 12] = [
    "honig", "essig", "käfig", "könig", "pfennig", "reisig", "fisch", "tisch", "abend",
    "gegend", "nachbar", "sprig",
];

const ENDINGS: [&str; 8] = ["ig", "lich", "isch", "los", "bar", "haft", "sam", "end"];

/// What may stand before the `ge` of a participle: `abgerundet`.
const BEFORE_GE: [&str; 16] = [
    "", "ab", "an", "auf", "aus", "ein", "zu", "zusammen", "um", "herab", "vor", "hervor",
    "zurück", "un", "über", "unter",
];

/// Words that say only how much, or in which way, before an adjective.
const ADVERBS: [&str; 14] = [
    "sehr", "fast", "ganz", "etwas", "doppelt", "fein", "grob", "stark", "schwach", "leicht",
    "dicht", "tief", "lang", "kurz",
];

/// Whether `ist` may surely stand before some words: `gezähnt`, `doppelt gesägt`, `lang und dünn`.
pub(super) fn is_predicate(words: &str) -> bool {
    words.split(" und ").all(|part| {
        let words: Vec<&str> = part.split(' ').collect();
        let Some((last, before)) = words.split_last() else { return false };
        is_adjective(last) && before.iter().all(|word| ADVERBS.contains(word))
    })
}

fn is_adjective(word: &str) -> bool {
    if word.chars().any(|letter| !letter.is_lowercase()) || NO_ADJECTIVES.contains(&word) {
        return false;
    }
    let listed = ADJECTIVES.split_whitespace().any(|known| known == word);
    let letters = word.chars().count();
    listed
        || letters > 4 && ENDINGS.iter().any(|end| word.ends_with(end))
        || is_participle(word)
}

/// `gezähnt`, `abgerundet`, `gebogen`.
fn is_participle(word: &str) -> bool {
    let ends = word.ends_with('t') || word.ends_with("en");
    let ge = BEFORE_GE.iter().any(|before| {
        word.strip_prefix(before).is_some_and(|rest| {
            rest.strip_prefix("ge").is_some_and(|stem| stem.chars().count() > 3)
        })
    });
    ends && ge
}

/// Verbs of headings, and their infinitives.
const VERBS: [(&str, &str); 17] = [
    ("fliegt", "fliegen"),
    ("schwimmt", "schwimmen"),
    ("kriecht", "kriechen"),
    ("läuft", "laufen"),
    ("hüpft", "hüpfen"),
    ("springt", "springen"),
    ("lebt", "leben"),
    ("sticht", "stechen"),
    ("beißt", "beißen"),
    ("duftet", "duften"),
    ("riecht", "riechen"),
    ("klettert", "klettern"),
    ("wächst", "wachsen"),
    ("hängt", "hängen"),
    ("brennt", "brennen"),
    ("glänzt", "glänzen"),
    ("schmeckt", "schmecken"),
];

/// A verb that a heading begins with, and its infinitive.
pub(super) fn verb(word: &str) -> Option<(&'static str, &'static str)> {
    VERBS.iter().find(|(verb, _)| *verb == word).copied()
}
