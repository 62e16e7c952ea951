//! German questions: `Ist der Blattrand gezähnt?`, or the plain form that is right whatever the
//! gender of a word: `Spreitenlänge: 4 cm oder mehr?`
//!
//! From a character and what is asked of it to a sentence, where the noun is known with its
//! article and the state is surely an adjective; else to the heading with a colon, in which
//! nothing has to agree. It translates nothing: names and states stay as they were typed. Common
//! practice, without a source.

mod grammar;
mod ratios;

use spinney_model::{Ask, Asked, Character, Matrix, Scale};

use super::grammar::capital;
use super::heading::{clean_as_written, without_remark, without_unit};
use super::language::Language::German;
use super::numbers::amount;
use super::states;
use grammar::{Head, Noun, accusative, head, is_predicate, known, nominative, verb};
pub(super) use ratios::yes_means as compared;

/// A question taken apart, so that it can be turned into a statement.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Sentence {
    /// `Ist der Rand gezähnt`, `Sind die Blätter gegenständig`.
    Is { several: bool, subject: String, how: String },
    /// `Hat es einen Stiel`; and what it has where it has not.
    Has { what: String, not: String },
    /// `Lebt es im Wasser`: the verb, its infinitive, and what follows.
    Does { verb: &'static str, infinitive: &'static str, rest: String },
    /// The plain form, or a question that somebody typed as a heading.
    Plain(String),
}

impl Sentence {
    /// The question, without its mark.
    pub(super) fn question(&self) -> String {
        match self {
            Self::Is { several, subject, how } => {
                let is = if *several { "Sind" } else { "Ist" };
                format!("{is} {subject} {how}")
            }
            Self::Has { what, .. } => format!("Hat es {what}"),
            Self::Does { verb, rest, .. } => {
                format!("{} es {rest}", capital(verb)).trim_end().to_owned()
            }
            Self::Plain(words) => words.clone(),
        }
    }

    /// What should be so, or not: `der Rand müsste gezähnt sein.` None: it cannot be turned.
    pub(super) fn statement(&self, so: bool) -> Option<String> {
        let must = match (so, self) {
            (true, Self::Is { several: true, .. }) => "müssten",
            (true, _) => "müsste",
            (false, Self::Is { several: true, .. }) => "dürften nicht",
            (false, Self::Has { .. }) => "dürfte",
            (false, _) => "dürfte nicht",
        };
        match self {
            Self::Is { subject, how, .. } => Some(format!("{subject} {must} {how} sein.")),
            Self::Has { what, not } => {
                let what = if so { what } else { not };
                Some(format!("es {must} {what} haben."))
            }
            Self::Does { infinitive, rest, .. } => {
                let space = if rest.is_empty() { "" } else { " " };
                Some(format!("es {must} {rest}{space}{infinitive}."))
            }
            Self::Plain(_) => None,
        }
    }
}

/// The sentence for what is asked; `wanted` is what yes means, in words.
pub(super) fn sentence(matrix: &Matrix, ask: &Ask, wanted: &str) -> Sentence {
    if let Some(sentence) = ratios::sentence(matrix, ask) {
        return sentence;
    }
    let character = matrix.character(ask.character);
    let name = clean_as_written(&character.name);
    let found = match (&ask.yes, &character.scale) {
        (Asked::States(asked), _) => {
            let named = states::names(character, asked);
            let name = without_remark(&name);
            match states::is_yes_no(character) {
                true if named == ["yes"] => whether(name),
                true => None,
                false => of_states(name, &named),
            }
        }
        (_, Scale::Measure { .. }) => measured(character, &ask.yes, without_unit(&name)),
        _ => counted(&name, wanted),
    };
    // `Blattrand: gezähnt`, `Dornen: ja`.
    let name = match character.scale {
        Scale::Measure { .. } => without_unit(&name),
        Scale::Words { .. } | Scale::Counts => &name,
    };
    found.unwrap_or_else(|| Sentence::Plain(format!("{}: {wanted}", capital(name))))
}

/// `Ist der Blattrand gezähnt oder gesägt`; None: no rule is sure.
fn of_states(name: &str, named: &[&str]) -> Option<Sentence> {
    let small: Vec<String> = named.iter().map(|state| in_small_letters(state)).collect();
    if small.is_empty() || small.len() > 3 {
        return None;
    }
    let subject = head(name)?;
    let small: Vec<&str> = small.iter().map(String::as_str).collect();
    if small.iter().all(|state| is_predicate(state)) {
        return subject.is(states::joined_by(German.or(), &small));
    }
    // `Ist die Frucht eine Nuss`.
    let fruit = subject.phrase.to_lowercase().ends_with("frucht") && !subject.several();
    let things = named.iter().map(|state| {
        let noun = known(state).filter(|noun| fruit && noun.is_one())?;
        Some(format!("{} {}", noun.one()?, capital(state)))
    });
    let things: Vec<String> = things.collect::<Option<_>>()?;
    let things: Vec<&str> = things.iter().map(String::as_str).collect();
    subject.is(states::joined_by(German.or(), &things))
}

/// A state as it stands in a sentence: an adjective has no capital.
fn in_small_letters(state: &str) -> String {
    let small = state.to_lowercase();
    if is_predicate(&small) { small } else { state.to_owned() }
}

impl Head {
    /// `Ist der Rand …`; None: it may be one or several.
    fn is(&self, how: String) -> Option<Sentence> {
        let subject = nominative(self)?;
        Some(Sentence::Is { several: self.several(), subject, how })
    }
}

/// A question whether a yes/no character is so; None: no rule is sure.
fn whether(name: &str) -> Option<Sentence> {
    let words: Vec<&str> = name.split(' ').collect();
    let (first, rest) = (words[0].to_lowercase(), words[1..].join(" "));
    let second = words.get(1).map_or(String::new(), |word| word.to_lowercase());
    let of_it = matches!(second.as_str(), "es" | "er" | "sie" | "das" | "der" | "die" | "man");
    let asks = matches!(first.as_str(), "ist" | "sind" | "hat" | "haben" | "kann" | "können");
    if asks && of_it {
        return Some(Sentence::Plain(name.to_owned()));
    }
    match first.as_str() {
        "hat" if !rest.is_empty() => {
            let not = match rest.strip_prefix("ein") {
                Some(behind) if behind.starts_with([' ', 'e']) => format!("kein{behind}"),
                _ => format!("keine {rest}"),
            };
            return Some(Sentence::Has { what: rest, not });
        }
        "ist" if !rest.is_empty() => return Some(it_is(rest)),
        "kann" if !rest.is_empty() => return Some(Sentence::Plain(format!("Kann es {rest}"))),
        "ohne" | "kein" | "keine" | "keinen" | "nicht" => return None,
        _ => {}
    }
    if let Some((verb, infinitive)) = verb(&first) {
        return Some(Sentence::Does { verb, infinitive, rest });
    }
    let small = name.to_lowercase();
    if is_predicate(&small) {
        return Some(it_is(small));
    }
    if let Some(sentence) = part_is(&words) {
        return Some(sentence);
    }
    let thing = head(name)?;
    let (what, not) = accusative(&thing)?;
    Some(Sentence::Has { what, not })
}

fn it_is(how: String) -> Sentence {
    Sentence::Is { several: false, subject: "es".to_owned(), how }
}

/// `Ist die Unterseite behaart` of a heading that says both.
fn part_is(words: &[&str]) -> Option<Sentence> {
    let (last, part) = words.split_last()?;
    (!part.is_empty() && is_predicate(last))
        .then(|| head(&part.join(" ")))??
        .is((*last).to_owned())
}

/// `Hat es 5 oder mehr Beine`; None: it is not sure that the heading is of several.
fn counted(name: &str, wanted: &str) -> Option<Sentence> {
    let counts = [
        "Anzahl der ",
        "Anzahl ",
        "Zahl der ",
        "Wie viele ",
        "Wieviele ",
        "anzahl der ",
        "anzahl ",
    ];
    let rest = counts.iter().find_map(|start| name.strip_prefix(start));
    let rest = rest.map(|rest| rest.strip_suffix(" hat es").unwrap_or(rest));
    let things = head(rest.unwrap_or(name))?;
    let several = matches!(things.noun, Noun::Several | Noun::Either);
    // Not to be turned: "es dürfte nicht 5 oder mehr Beine haben" is hard to hear.
    several.then(|| Sentence::Plain(format!("Hat es {wanted} {}", things.phrase)))
}

/// What a length is called, how it is said, and more and less of it.
struct Dimension {
    noun: &'static str,
    plain: &'static str,
    more: &'static str,
    less: &'static str,
}

const DIMENSIONS: [Dimension; 5] = [
    Dimension { noun: "länge", plain: "lang", more: "länger", less: "kürzer" },
    Dimension { noun: "breite", plain: "breit", more: "breiter", less: "schmaler" },
    Dimension { noun: "höhe", plain: "hoch", more: "höher", less: "niedriger" },
    Dimension { noun: "dicke", plain: "dick", more: "dicker", less: "dünner" },
    Dimension { noun: "tiefe", plain: "tief", more: "tiefer", less: "flacher" },
];

/// `Ist der Stiel 4 cm lang oder länger`; None: no rule is sure what is measured.
fn measured(character: &Character, asked: &Asked, name: &str) -> Option<Sentence> {
    let (dimension, part) = dimension(name)?;
    let how = match asked {
        Asked::AtLeast(at) => {
            let at = amount(German, character, *at);
            format!("{at} {} oder {}", dimension.plain, dimension.more)
        }
        Asked::Below(at) => {
            format!("{} als {}", dimension.less, amount(German, character, *at))
        }
        Asked::States(_) => return None,
    };
    match part {
        None => Some(it_is(how)),
        Some(part) => part.is(how),
    }
}

/// What a heading measures, and of what; None: of the whole thing.
fn dimension(name: &str) -> Option<(&'static Dimension, Option<Head>)> {
    let small = name.to_lowercase();
    DIMENSIONS.iter().find_map(|dimension| {
        if small == dimension.noun || small == format!("wie {}", dimension.plain) {
            return Some((dimension, None));
        }
        // `Stiellänge`, `Stiel Länge`.
        if let Some(part) = small.strip_suffix(dimension.noun) {
            return Some((dimension, Some(head(part.trim_end())?)));
        }
        let asked = format!("wie {} ist ", dimension.plain);
        if let Some(part) = small.strip_prefix(&asked).filter(|part| *part != "es") {
            let (_, part) = part.split_once(' ')?;
            return Some((dimension, Some(head(part)?)));
        }
        let of = small.strip_prefix(dimension.noun)?.strip_prefix(' ')?;
        Some((dimension, Some(grammar::of_genitive(of)?)))
    })
}

#[cfg(test)]
mod tests;
