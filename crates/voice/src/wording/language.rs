//! The language of a table, and the plain form of a question that is right in each.
//!
//! From the headings and states of a table to one of eight languages, by their common words;
//! English where nothing says otherwise, and "some other" where letters do. Sentences are made
//! in English only. Every other table is asked by its own words alone: `Blattrand: gezähnt?`
//! The lists hold words that stand in tables of finds, and none that is an English word too.

use std::collections::{BTreeMap, HashMap};
use std::sync::OnceLock;

use spinney_model::{Matrix, Scale};

/// The language of a table's words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Language {
    English,
    German,
    French,
    Spanish,
    Italian,
    Dutch,
    Welsh,
    Polish,
    /// Not English, by its letters, and nobody can say which.
    Other,
}

use Language::{Dutch, English, French, German, Italian, Other, Polish, Spanish, Welsh};

/// Common words of each language. Common knowledge, no source.
const WORDS: [(Language, &str); 8] = [
    (
        English,
        "the of in on with without and or is are has have leaf leaves leaflet leaflets edge base \
         tip stalk length width height colour color shape number how many like feel smell bark \
         twig bud underside found lives round smooth hairy shiny toothed legs shell",
    ),
    (
        German,
        "ja nein der das und oder mit ohne wie viele blatt blattrand blattform blattstiel \
         rand gezähnt gesägt glatt behaart kahl länge breite höhe farbe anzahl beine dornen \
         ist im unterseite gelappt glänzend rinde geruch stachelig",
    ),
    (
        French,
        "oui non le la les des du avec sans et ou feuille feuilles bord forme longueur largeur \
         couleur nombre combien dentée denté lisse pattes épines poilue écorce tige dessous une",
    ),
    (
        Spanish,
        "sí los las el con sin hoja hojas borde forma longitud anchura número cuántas \
         cuántos patas espinas liso dentado envés peludo tallo corteza",
    ),
    (
        Italian,
        "sì il lo gli con senza foglia foglie margine lunghezza larghezza colore numero quante \
         quanti zampe liscio dentato picciolo corteccia peloso di",
    ),
    (
        Dutch,
        "nee het een zonder blad bladrand bladeren bladvorm gaaf getand lengte breedte kleur \
         aantal hoeveel poten doornen harig kaal bladstand behaard schors",
    ),
    (
        Welsh,
        "oes nac ydy nad gyda heb deilen ddeilen dail ymyl hyd lled lliw nifer coesau \
         llyfn danheddog blewog siâp rhisgl ",
    ),
    (
        Polish,
        "tak nie bez liść liścia liści brzeg kształt długość szerokość kolor liczba nóg kolce \
         gładki ząbkowany owłosiony kora ogonek",
    ),
];

/// In which of the lists a word stands. Every question of a table asks for its language.
fn known() -> &'static HashMap<&'static str, Vec<usize>> {
    static KNOWN: OnceLock<HashMap<&str, Vec<usize>>> = OnceLock::new();
    KNOWN.get_or_init(|| {
        let mut known = HashMap::<_, Vec<usize>>::new();
        for (at, (_, list)) in WORDS.iter().enumerate() {
            for word in list.split_whitespace() {
                known.entry(word).or_default().push(at);
            }
        }
        known
    })
}

/// The language that most words of a table are in.
pub(super) fn of(matrix: &Matrix) -> Language {
    let mut words: BTreeMap<String, usize> = BTreeMap::new();
    for character in matrix.characters() {
        let states: &[String] = match &character.scale {
            Scale::Words { states } => states,
            Scale::Counts | Scale::Measure { .. } => &[],
        };
        for text in std::iter::once(&character.name).chain(states) {
            let parts = text.split(|letter: char| !letter.is_alphabetic());
            for word in parts.filter(|word| !word.is_empty()) {
                *words.entry(word.to_lowercase()).or_default() += 1;
            }
        }
    }
    let mut counted = WORDS.map(|(language, _)| (0, language));
    for (word, times) in &words {
        for at in known().get(word.as_str()).into_iter().flatten() {
            counted[*at].0 += times;
        }
    }
    let (english, others) = (counted[0].0, &counted[1..]);
    let most = others.iter().map(|(count, _)| *count).max().unwrap_or(0);
    let foreign = words.keys().any(|word| !word.is_ascii());
    if english >= most && (english > 0 || !foreign) {
        return English;
    }
    let mut best = others.iter().filter(|(count, _)| *count == most && most > 0);
    match (best.next(), best.next()) {
        (Some((_, one)), None) => *one,
        _ => Other,
    }
}

impl Language {
    /// `Blattrand: gezähnt?`, with the marks of the language.
    pub(super) fn safe(self, heading: &str, wanted: &str) -> String {
        match self {
            French => format!("{heading} : {wanted} "),
            Spanish => format!("{heading}: ¿{wanted}"),
            _ => format!("{heading}: {wanted}"),
        }
    }

    /// `5 or more`.
    pub(super) fn or_more(self, amount: &str) -> String {
        let words = match self {
            English => "or more",
            German => "oder mehr",
            French => "ou plus",
            Spanish => "o más",
            Italian => "o più",
            Dutch => "of meer",
            Welsh => "neu fwy",
            Polish => "lub więcej",
            Other => return format!("≥ {amount}"),
        };
        format!("{amount} {words}")
    }

    /// `fewer than 5`, for a count or a measure.
    pub(super) fn less_than(self, amount: &str, count: bool) -> String {
        let words = match self {
            English if count => "fewer than",
            English => "less than",
            German => "weniger als",
            French => "moins de",
            Spanish => "menos de",
            Italian => "meno di",
            Dutch => "minder dan",
            Welsh => "llai na",
            Polish => "mniej niż",
            Other => "<",
        };
        format!("{words} {amount}")
    }

    /// Yes, or no: a reader of tables makes "yes" of every language's own word.
    pub(super) fn yes_or_no(self, yes: bool) -> &'static str {
        let (one, other) = match self {
            English | Other => ("yes", "no"),
            German => ("ja", "nein"),
            French => ("oui", "non"),
            Spanish => ("sí", "no"),
            Italian => ("sì", "no"),
            Dutch => ("ja", "nee"),
            Welsh => ("oes", "nac oes"),
            Polish => ("tak", "nie"),
        };
        if yes { one } else { other }
    }

    /// The word between two states, either of which is asked for.
    pub(super) fn or(self) -> &'static str {
        match self {
            English => "or",
            German => "oder",
            French => "ou",
            Spanish | Italian => "o",
            Dutch => "of",
            Welsh => "neu",
            Polish => "lub",
            Other => "/",
        }
    }
}
