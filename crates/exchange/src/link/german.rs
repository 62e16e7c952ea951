//! The German that holds a question together, as the English that the rules of reading know.
//!
//! From the words and marks of a text, in small letters, to the same with German articles, verbs
//! and comparisons in English: `ist der stiel länger als die spreite` is `is the stiel longer than
//! the spreite`. Names and states stay as they are. What denies is not among it: nobody reads it,
//! so that such a question is asked back. From memory, without a source.

/// Words that are German and no other language's here: where one is, a text is German. They are
/// read alike in every text, so that a state is the same in the table and in a question.
const SURE: [(&str, &str); 66] = [
    ("ist", "is"),
    ("sind", "are"),
    ("haben", "have"),
    ("sitzen", "sit"),
    ("stehen", "stand"),
    ("oder", "or"),
    ("und", "and"),
    ("als", "than"),
    ("mehr", "more"),
    ("weniger", "less"),
    ("mindestens", "at least"),
    ("höchstens", "at most"),
    ("länge", "length"),
    ("lang", "long"),
    ("länger", "longer"),
    ("kurz", "short"),
    ("kürzer", "shorter"),
    ("breite", "width"),
    ("breit", "wide"),
    ("breiter", "wider"),
    ("schmal", "narrow"),
    ("schmaler", "narrower"),
    ("höhe", "height"),
    ("hoch", "high"),
    ("höher", "higher"),
    ("niedrig", "low"),
    ("niedriger", "lower"),
    ("dicke", "thickness"),
    ("dick", "thick"),
    ("dicker", "thicker"),
    ("dünn", "thin"),
    ("dünner", "thinner"),
    ("tiefe", "depth"),
    ("tief", "deep"),
    ("tiefer", "deeper"),
    ("flacher", "shallower"),
    ("groß", "large"),
    ("größer", "larger"),
    ("klein", "small"),
    ("kleiner", "smaller"),
    ("halb", "half"),
    ("doppelt", "twice"),
    ("drittel", "third"),
    ("viertel", "quarter"),
    ("anderthalbmal", "1.5 times"),
    ("dreimal", "3 times"),
    ("viermal", "4 times"),
    ("fünfmal", "5 times"),
    ("anzahl", "number"),
    ("viele", "many"),
    ("ja", "yes"),
    ("zoll", "inches"),
    ("der", "the"),
    ("das", "the"),
    ("dem", "the"),
    ("ein", "a"),
    ("eine", "a"),
    ("einen", "a"),
    ("einem", "a"),
    ("einer", "a"),
    ("auf", "on"),
    ("im", "in"),
    ("vom", "of"),
    ("wie", "as"),
    ("zwei", "two"),
    ("drei", "three"),
];

/// Words that are words of other languages, too: they are read only where a German one is.
const SHARED: [(&str, &str); 8] = [
    ("hat", "has"),
    ("die", "the"),
    ("den", "the"),
    ("des", "the"),
    ("es", "it"),
    ("er", "it"),
    ("sie", "it"),
    ("mal", "times"),
];

/// What a length is called, at the end of a word: `stiellänge`.
const DIMENSIONS: [(&str, &str); 5] = [
    ("länge", "length"),
    ("breite", "width"),
    ("höhe", "height"),
    ("dicke", "thickness"),
    ("tiefe", "depth"),
];

fn sure(token: &str) -> Option<&'static str> {
    SURE.iter().find(|(german, _)| *german == token).map(|(_, english)| *english)
}

fn shared(token: &str) -> Option<&'static str> {
    SHARED.iter().find(|(german, _)| *german == token).map(|(_, english)| *english)
}

/// The two halves of `stiellänge`.
fn halves(token: &str) -> Option<(&str, &'static str)> {
    DIMENSIONS.iter().find_map(|(noun, dimension)| {
        let part = token.strip_suffix(noun)?;
        (part.chars().count() > 2).then_some((part, *dimension))
    })
}

/// A word of the rules as it stands in some sentence.
pub(super) fn as_typed(typed: &[String], word: &str) -> String {
    let german = |token: &&String| sure(token).or_else(|| shared(token)) == Some(word);
    let known = typed.iter().any(|token| token == word);
    let typed = typed.iter().find(german).filter(|_| !known);
    typed.map_or_else(|| word.to_owned(), Clone::clone)
}

/// The words of a text, with the German ones that the rules know in English.
pub(super) fn in_english(tokens: Vec<String>) -> Vec<String> {
    let german = |token: &String| sure(token).is_some() || halves(token).is_some();
    let begins = tokens.first().is_some_and(|first| first == "hat");
    if !begins && !tokens.iter().any(german) {
        return tokens;
    }
    let mut found: Vec<String> = Vec::with_capacity(tokens.len());
    for (at, token) in tokens.iter().enumerate() {
        let next = tokens.get(at + 1).map_or("", String::as_str);
        let before = at.checked_sub(1).map_or("", |at| tokens[at].as_str());
        // "Länger, als die Spreite breit ist"; "0,4-mal".
        if token == "," && matches!(next, "als" | "wie" | "oder")
            || token == "-" && next == "mal"
        {
            continue;
        }
        let wide = ["viele", "lang", "breit", "hoch", "dick", "tief"].contains(&next);
        let so_far = at.checked_sub(2).is_some_and(|at| tokens[at] == "so");
        let as_much = tokens[at + 1..].iter().filter(|token| *token != ",").nth(1);
        if let Some((part, dimension)) = halves(token) {
            found.extend([part.to_owned(), dimension.to_owned()]);
            continue;
        }
        let english = match token.as_str() {
            "wie" if wide && !so_far => "how",
            "so" if as_much.is_some_and(|token| token == "wie") => "as",
            "fuß" if before.starts_with(|c: char| c.is_ascii_digit()) => "feet",
            other => sure(other).or_else(|| shared(other)).unwrap_or(other),
        };
        found.extend(english.split(' ').map(str::to_owned));
    }
    found
}
