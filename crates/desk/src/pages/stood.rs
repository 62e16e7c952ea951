//! What stood on a page when it was shown, so that nothing is decided or written on what the
//! page no longer shows.
//!
//! From words to a short token in a hidden field, and from the token that comes back to whether
//! the same words stand there now. A token says only that; nothing is read out of it. A form
//! without one is taken at its word, as one without `seen` or `o-` is.

use maud::{Markup, html};
use spinney_model::{CharacterId, KindId};

pub(crate) use spinney_collection::keys::token;

use super::saying;
use crate::routes::{Asked, Refused};
use spinney_collection::{Collection, Sayings};
use spinney_voice::Tongue;

/// The hidden fields that carry tokens begin so; they are nothing that somebody typed.
pub(super) const STOOD: &str = "stood";
/// The hidden field.
pub(super) fn field(name: &str, token: &str) -> Markup {
    html! { input type="hidden" name=(name) value=(token); }
}

/// Whether the page that sent these fields showed what this token is of.
pub(super) fn still(fields: &[(String, String)], name: &str, token: &str) -> bool {
    let sent = fields.iter().find(|(field, _)| field == name);
    sent.is_none_or(|(_, sent)| sent == token)
}

/// The token of everything that is said of a cell.
pub(super) fn cell(said: &Sayings, at: (KindId, CharacterId)) -> String {
    token(
        everything(Tongue::of_tokens(), said, at)
            .into_iter()
            .flat_map(|(source, says)| [source, says]),
    )
}

/// Whether the form's page showed everything that is said of a cell now.
pub(super) fn cell_still(asked: &Asked<'_>, said: &Sayings, at: (KindId, CharacterId)) -> bool {
    still(&asked.request.form, STOOD, &cell(said, at))
}

/// Why nothing is written into a cell of which something else is said by now.
pub(super) fn cell_moved(
    asked: &Asked<'_>,
    collection: &Collection,
    said: &Sayings,
    at: (KindId, CharacterId),
) -> Refused {
    let t = asked.tongue;
    let named = |(source, text): (String, String)| match source.as_str() {
        "" => t.with("newcomer-table-says", &[("text", &text)]),
        source => t.with("finds-says", &[("source", &source), ("text", &text)]),
    };
    let says: Vec<String> = everything(t, said, at).into_iter().map(named).collect();
    let says = if says.is_empty() { t.say("stood-nothing") } else { says.join("; ") };
    let (kind, character) = (collection.name(at.0), collection.character_name(at.1));
    Refused {
        sentence: t
            .with("stood-cell", &[("kind", &kind), ("character", &character), ("says", &says)]),
        remedy: t.say("stood-cell-remedy"),
    }
}

fn everything(
    t: Tongue,
    said: &Sayings,
    (kind, character): (KindId, CharacterId),
) -> Vec<(String, String)> {
    let sources = said.sources_and_open(kind, character).into_iter();
    sources.map(|(source, saying)| (source.to_owned(), saying::words(t, saying))).collect()
}
