//! What is said of a cell: in words, and as something that a form rests on.
//!
//! From who says what, typed or by sorting, to words; and from a cell to whether its page
//! still shows all of it, so that nobody decides between texts that are others by now.

use spinney_model::{CharacterId, KindId};

use crate::forms::{At, Fact};
use crate::reply::Refused;
use crate::worked::State;
use spinney_collection::{Saying, Sayings, laid};
use spinney_voice::Tongue;

/// What somebody says, as it was typed, or what a card leaves open.
pub(crate) fn words(t: Tongue, saying: &Saying) -> String {
    let (message, states) = match saying {
        Saying::Text(text) => return text.clone(),
        Saying::OneOf(states) => ("saying-one-of", states),
        Saying::NoneOf(states) => ("saying-none-of", states),
        Saying::Varies(states) => ("saying-varies", states),
    };
    t.count_with(message, states.len(), &[("states", &states.join(", "))])
}

/// What one source says; the table itself has no name.
pub(crate) fn says(t: Tongue, source: &str, saying: &Saying) -> String {
    let text = words(t, saying);
    match source {
        "" => t.with("newcomer-table-says", &[("text", &text)]),
        source => t.with("finds-says", &[("source", &source), ("text", &text)]),
    }
}

/// By what names measured leaves say something of a cell: in this language first, then in all
/// others, since a collection goes from one to another.
pub(crate) fn measured_sources(t: Tongue) -> Vec<String> {
    std::iter::once(t).chain(Tongue::all()).map(|t| t.say("scan-source")).collect()
}

/// How many groups say something of a cell, and whether measured leaves do: `one group,
/// measured`.
pub(crate) fn who(t: Tongue, sources: &[&str]) -> String {
    let ours = measured_sources(t);
    let named = sources.iter().copied().filter(|who| !who.is_empty());
    let (measured, groups): (Vec<&str>, Vec<&str>) =
        named.partition(|who| ours.iter().any(|our| our == who));
    let mut said = Vec::new();
    if !groups.is_empty() {
        said.push(t.count("table-who", groups.len()));
    }
    said.extend(measured.into_iter().map(str::to_owned));
    said.join(", ")
}

/// Everything that is said of a cell.
pub(crate) fn fact(cell: (KindId, CharacterId)) -> Fact<'static> {
    Fact::new(move |state| all(state, cell), move |at| moved(at, cell))
}

/// Everything that is said of a cell, to be held against what was said of it before.
pub(crate) fn all(state: State<'_>, cell: (KindId, CharacterId)) -> String {
    let laid = state.laid();
    let said = laid::said(state.collection, laid.as_deref());
    let lines = everything(Tongue::of_tokens(), &said, cell, |t, source, saying| {
        format!("{source}\t{}", words(t, saying))
    });
    lines.join("\n")
}

/// Why nothing is written into a cell of which something else is said by now.
pub(crate) fn moved(at: &At<'_>, cell: (KindId, CharacterId)) -> Refused {
    let (t, collection) = (at.asked.tongue, at.collection());
    let laid = at.desk.laid();
    let said = laid::said(collection, laid.as_deref());
    let all = everything(t, &said, cell, says);
    let says = if all.is_empty() { t.say("stood-nothing") } else { all.join("; ") };
    let (kind, character) = (collection.name(cell.0), collection.character_name(cell.1));
    Refused::with(
        t,
        "stood-cell",
        &[("kind", &kind), ("character", &character), ("says", &says)],
    )
}

fn everything(
    t: Tongue,
    said: &Sayings,
    (kind, character): (KindId, CharacterId),
    one: fn(Tongue, &str, &Saying) -> String,
) -> Vec<String> {
    let sources = said.sources_and_open(kind, character).into_iter();
    sources.map(|(source, saying)| one(t, source, saying)).collect()
}
