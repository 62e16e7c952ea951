//! The second language of the sheets: what a person typed of it, where it belongs.
//!
//! From a table and a key to the second text of a name or a question, and from what people call
//! a language to its tag. Nothing is translated here: where nobody typed a text there is none. A
//! question about a column is put together from the person's own parts, a number or states in
//! the gap of their sentence; where a part is wanting there is no sentence.
//!
//! Source: the tags are those of ISO 639 as BCP 47 (RFC 5646, 2009) takes them over; which
//! languages are listed, and what they are called, is from memory.

use spinney_model::{Ask, Asked, Character, Key, Matrix, OtherName, Scale, Taxon, Wording};

use crate::{Tongue, wording};

/// Languages that children bring along: the tag, and what they are called in themselves, in
/// English and in German.
const LANGUAGES: [(&str, &[&str]); 58] = [
    ("am", &["አማርኛ", "Amharic", "Amharisch"]),
    ("ar", &["العربية", "Arabic", "Arabisch"]),
    ("bg", &["български", "Bulgarian", "Bulgarisch"]),
    ("bn", &["বাংলা", "Bengali", "Bengalisch"]),
    ("br", &["brezhoneg", "Breton", "Bretonisch"]),
    ("bs", &["bosanski", "Bosnian", "Bosnisch"]),
    ("ca", &["català", "Catalan", "Katalanisch"]),
    ("cs", &["čeština", "Czech", "Tschechisch"]),
    ("cy", &["Cymraeg", "Welsh", "Walisisch"]),
    ("da", &["dansk", "Danish", "Dänisch"]),
    ("de", &["Deutsch", "German"]),
    ("dsb", &["dolnoserbski", "Lower Sorbian", "Niedersorbisch"]),
    ("el", &["ελληνικά", "Greek", "Griechisch"]),
    ("en", &["English", "Englisch"]),
    ("es", &["español", "Spanish", "Spanisch"]),
    ("et", &["eesti", "Estonian", "Estnisch"]),
    ("eu", &["euskara", "Basque", "Baskisch"]),
    ("fa", &["فارسی", "Persian", "Farsi", "Persisch"]),
    ("fi", &["suomi", "Finnish", "Finnisch"]),
    ("fr", &["français", "French", "Französisch"]),
    ("fy", &["Frysk", "West Frisian", "Westfriesisch"]),
    ("ga", &["Gaeilge", "Irish", "Irisch"]),
    ("gd", &["Gàidhlig", "Scottish Gaelic", "Schottisch-Gälisch"]),
    ("gu", &["ગુજરાતી", "Gujarati"]),
    ("gv", &["Gaelg", "Manx"]),
    ("he", &["עברית", "Hebrew", "Hebräisch"]),
    ("hi", &["हिन्दी", "Hindi"]),
    ("hr", &["hrvatski", "Croatian", "Kroatisch"]),
    ("hsb", &["hornjoserbsce", "Upper Sorbian", "Obersorbisch"]),
    ("hu", &["magyar", "Hungarian", "Ungarisch"]),
    ("is", &["íslenska", "Icelandic", "Isländisch"]),
    ("it", &["italiano", "Italian", "Italienisch"]),
    ("kmr", &["Kurmancî", "Kurdish", "Kurmanji", "Kurdisch"]),
    ("kw", &["Kernewek", "Cornish", "Kornisch"]),
    ("lt", &["lietuvių", "Lithuanian", "Litauisch"]),
    ("lv", &["latviešu", "Latvian", "Lettisch"]),
    ("nds", &["Plattdüütsch", "Low German", "Niederdeutsch"]),
    ("nl", &["Nederlands", "Dutch", "Niederländisch"]),
    ("no", &["norsk", "Norwegian", "Norwegisch"]),
    ("pa", &["ਪੰਜਾਬੀ", "Punjabi"]),
    ("pl", &["polski", "Polish", "Polnisch"]),
    ("ps", &["پښتو", "Pashto", "Paschtu"]),
    ("pt", &["português", "Portuguese", "Portugiesisch"]),
    ("ro", &["română", "Romanian", "Rumänisch"]),
    ("ru", &["русский", "Russian", "Russisch"]),
    ("sk", &["slovenčina", "Slovak", "Slowakisch"]),
    ("sl", &["slovenščina", "Slovene", "Slowenisch"]),
    ("so", &["Soomaali", "Somali"]),
    ("sq", &["shqip", "Albanian", "Albanisch"]),
    ("sr", &["српски", "srpski", "Serbian", "Serbisch"]),
    ("sv", &["svenska", "Swedish", "Schwedisch"]),
    ("ta", &["தமிழ்", "Tamil", "Tamilisch"]),
    ("ti", &["ትግርኛ", "Tigrinya"]),
    ("tr", &["Türkçe", "Turkish", "Türkisch"]),
    ("uk", &["українська", "Ukrainian", "Ukrainisch"]),
    ("ur", &["اردو", "Urdu"]),
    ("vi", &["tiếng Việt", "Vietnamese", "Vietnamesisch"]),
    ("zh", &["中文", "Chinese", "Chinesisch"]),
];

/// The tag of BCP 47 for what a person calls a language: `Polski`, `Polish`, `pl`; `und`
/// (undetermined) for a language that is not in the list.
pub fn tag_of(name: &str) -> &'static str {
    let typed = name.trim().to_lowercase();
    let known = LANGUAGES.iter().find(|(tag, names)| {
        *tag == typed || names.iter().any(|name| name.to_lowercase() == typed)
    });
    known.map_or("und", |(tag, _)| tag)
}

/// What the second language is called; None: the sheets are in one language.
pub fn name(matrix: &Matrix) -> Option<&str> {
    said(matrix.scene().second_language.as_deref())
}

/// The name of a kind in the language of a tag: its second name, or else one of its other names
/// that says this language before it (`pl: leszczyna`); None: it has neither.
pub fn name_of<'t>(taxon: &'t Taxon, tag: &str) -> Option<&'t str> {
    let in_it = |other: &&OtherName| {
        let language = other.language.as_deref().unwrap_or_default();
        language.split('-').next().unwrap_or_default().eq_ignore_ascii_case(tag)
    };
    let other = || taxon.other_names.iter().find(in_it).map(|other| other.name.as_str());
    said(taxon.second_name.as_deref()).or_else(|| said(other()))
}

/// The second language, where it is one that Spinney speaks itself.
pub fn tongue(matrix: &Matrix) -> Option<Tongue> {
    let tag = tag_of(name(matrix)?);
    let ours = crate::LANGUAGES.iter().any(|(ours, _)| *ours == tag);
    ours.then(|| Tongue::for_person(&[tag.to_owned()]))
}

/// The second text of words that are printed and have no column: the title, a caution, `yes`.
/// It is typed like that of a question; None: nobody typed one.
pub fn of_words<'m>(matrix: &'m Matrix, words: &str) -> Option<&'m str> {
    let words = folded(words);
    let typed = matrix.scene().second_questions.iter();
    let mut of_these = typed.filter(|pair| folded(&pair.text) == words);
    of_these.find_map(|pair| said(Some(&pair.second)))
}

/// What an answer is called in the second language: as somebody typed it, else as our own
/// messages have it.
pub fn answer(matrix: &Matrix, t: Tongue, yes: bool) -> Option<String> {
    name(matrix)?;
    let message = if yes { "answer-yes" } else { "answer-no" };
    let typed = of_words(matrix, &t.say(message)).map(str::to_owned);
    typed.or_else(|| Some(tongue(matrix)?.say(message)))
}

/// The second text of a couplet; None: nobody typed one that says what it asks.
///
/// A text for the very words that are printed comes first, then the column's own question in the
/// second language with the number or the states in its gap.
pub fn question(matrix: &Matrix, key: &Key, at: usize) -> Option<String> {
    let Wording::Question(printed) = &key.couplets[at].wording else { return None };
    if let Some(text) = of_words(matrix, printed) {
        return Some(text.to_owned());
    }
    of_a_column(matrix, &wording::said(matrix, key, at)?)
}

/// The question about a column with its gap filled.
fn of_a_column(matrix: &Matrix, ask: &Ask) -> Option<String> {
    let character = matrix.character(ask.character);
    let template = said(character.second_question.as_deref())?;
    let fill = |text: String| template.contains("{}").then(|| template.replace("{}", &text));
    match &ask.yes {
        Asked::States(asked) => {
            let Scale::Words { states } = &character.scale else { return None };
            let asked: Vec<&str> =
                asked.iter().filter_map(|at| states.get(at.0)).map(String::as_str).collect();
            if wording::is_yes_no(character) {
                let plain = !template.contains("{}") && folded(&asked.join(" ")) == "yes";
                return plain.then(|| template.to_owned());
            }
            let second: Option<Vec<&str>> =
                asked.iter().map(|state| of_a_state(character, state)).collect();
            fill(second?.join(" / "))
        }
        Asked::AtLeast(least) => fill(character.amount(*least)),
        // The sentence says "so much or more"; no other comes of it.
        Asked::Below(_) => None,
    }
}

fn of_a_state<'c>(character: &'c Character, state: &str) -> Option<&'c str> {
    let pair = character.second_states.iter().find(|pair| folded(&pair.text) == folded(state));
    said(Some(&pair?.second))
}

fn said(text: Option<&str>) -> Option<&str> {
    text.map(str::trim).filter(|text| !text.is_empty())
}

/// Without capitals, spare spaces, and the mark at the end, which one forgets.
fn folded(text: &str) -> String {
    let words = text.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    words.trim_end_matches(['?', ' ']).to_owned()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use spinney_model::{
        Cell, CharacterIx, Couplet, Destination, InSecond, Quantity, Scene, StateIx, Unit,
        Value,
    };

    use super::*;

    #[test]
    fn a_language_has_one_tag_and_every_name_leads_to_it() {
        let tags: BTreeSet<_> = LANGUAGES.iter().map(|(tag, _)| tag).collect();
        assert_eq!(tags.len(), LANGUAGES.len());
        for (tag, names) in LANGUAGES {
            for name in names {
                assert_eq!(tag_of(name), tag, "{name}");
            }
            assert_eq!(tag_of(&format!(" {} ", tag.to_uppercase())), tag);
        }
        assert_eq!(tag_of("Klingon"), "und");
    }

    #[test]
    fn a_name_that_says_its_language_is_the_second_name() {
        let other = |language: Option<&str>, name: &str| OtherName {
            language: language.map(str::to_owned),
            name: name.to_owned(),
        };
        let names = vec![
            other(None, "cobnut"),
            other(Some("de"), "Hasel"),
            other(Some("pl-PL"), "orzech"),
        ];
        let mut hazel = Taxon { other_names: names, ..Taxon::named("hazel") };
        assert_eq!(name_of(&hazel, "pl"), Some("orzech"));
        assert_eq!(name_of(&hazel, "tr"), None);
        hazel.second_name = Some("leszczyna".to_owned());
        assert_eq!(name_of(&hazel, "pl"), Some("leszczyna"));
    }

    fn pair(text: &str, second: &str) -> InSecond {
        InSecond { text: text.to_owned(), second: second.to_owned() }
    }

    /// What is printed beneath a question about one column; the words of the question are given.
    fn beneath(
        character: Character,
        yes: Asked,
        printed: &str,
        by_hand: &[InSecond],
    ) -> Option<String> {
        let scene = Scene {
            second_language: Some("Polski".to_owned()),
            second_questions: by_hand.to_vec(),
            ..Scene::default()
        };
        let rows = vec![vec![Cell::from(Value::Unknown)]];
        let matrix = Matrix::new(scene, vec![Taxon::named("hazel")], vec![character], rows);
        let couplet = Couplet {
            number: 1,
            back: None,
            wording: Wording::Question(printed.to_owned()),
            ask: Some(Ask { character: CharacterIx(0), yes }),
            yes: Destination::Missing,
            no: Destination::Missing,
            kept: false,
            line: None,
        };
        let key = Key { couplets: vec![couplet] };
        question(&matrix.expect("a table of one cell"), &key, 0)
    }

    fn edge() -> Character {
        let states = ["toothed", "spiny", "smooth"].map(str::to_owned).to_vec();
        Character {
            second_question: Some("Czy brzeg liścia jest {}?".to_owned()),
            second_states: vec![
                pair("Toothed", "ząbkowany"),
                pair("spiny", "kolczasty"),
                pair("smooth", ""),
            ],
            ..Character::named("edge", Scale::Words { states })
        }
    }

    fn states(asked: &[usize]) -> Asked {
        Asked::States(asked.iter().map(|at| StateIx(*at)).collect())
    }

    #[test]
    fn states_stand_in_the_gap_and_one_that_is_missing_leaves_no_sentence() {
        let of = |asked: &[usize]| beneath(edge(), states(asked), "Is it?", &[]);
        assert_eq!(of(&[0]).as_deref(), Some("Czy brzeg liścia jest ząbkowany?"));
        assert_eq!(
            of(&[0, 1]).as_deref(),
            Some("Czy brzeg liścia jest ząbkowany / kolczasty?")
        );
        assert_eq!(of(&[0, 2]), None, "nobody typed what smooth is");
        let no_gap = Character { second_question: Some("Czy?".to_owned()), ..edge() };
        assert_eq!(beneath(no_gap, states(&[0]), "Is it?", &[]), None);
    }

    #[test]
    fn a_column_of_yes_and_no_asks_for_yes_alone() {
        let states_of = ["yes", "no"].map(str::to_owned).to_vec();
        let thorns = Character {
            second_question: Some("Czy są ciernie?".to_owned()),
            ..Character::named("thorns", Scale::Words { states: states_of })
        };
        let of = |at| beneath(thorns.clone(), states(&[at]), "Are there thorns?", &[]);
        assert_eq!(of(0).as_deref(), Some("Czy są ciernie?"));
        assert_eq!(of(1), None);
    }

    #[test]
    fn a_number_stands_in_the_gap_where_so_much_or_more_is_asked() {
        let gap = Quantity::from_whole(5);
        let stalk = Character {
            second_question: Some("Czy ogonek ma {} lub więcej?".to_owned()),
            ..Character::named("stalk", Scale::Measure { unit: Unit::Millimetres, gap })
        };
        let of = |yes| beneath(stalk.clone(), yes, "Is it?", &[]);
        let number = Quantity::from_whole(40);
        assert_eq!(
            of(Asked::AtLeast(number)).as_deref(),
            Some("Czy ogonek ma 40 mm lub więcej?")
        );
        assert_eq!(of(Asked::Below(number)), None);
    }

    #[test]
    fn a_text_for_the_very_words_comes_first() {
        let by_hand =
            [pair("is it  like a saw", "Czy jest jak piła?"), pair("Is it hollow?", "")];
        let of = |printed| beneath(edge(), states(&[0]), printed, &by_hand);
        assert_eq!(of("Is it like a saw?").as_deref(), Some("Czy jest jak piła?"));
        assert_eq!(of("Is it hollow?").as_deref(), Some("Czy brzeg liścia jest ząbkowany?"));
    }
}
