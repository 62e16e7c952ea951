//! A character or one of its states gets another name: where else it is named, it is named anew.
//!
//! From a collection and the new name to the edits that follow. What a condition says of another
//! character (`form = feather or hand`) and what a ratio is of (`length / width`) are texts that
//! name a character, so they come along.

use spinney_exchange::table;
use spinney_model::{CharacterEdit, CharacterField, CharacterId, Edit};

use crate::Collection;
use crate::laid::folded;

/// Where other characters name this one, they name it so.
pub fn named_elsewhere(collection: &Collection, id: CharacterId, name: &str) -> Vec<Edit> {
    let old = collection.character_name(id);
    let mut edits = Vec::new();
    for &other in collection.characters.keys().filter(|other| **other != id) {
        let when = collection.character_field(other, CharacterField::AppliesWhen);
        if let Some(rest) = condition(when, old) {
            let text = format!("{name} {rest}");
            edits.push(described(other, CharacterField::AppliesWhen, text));
        }
        let ratio = collection.character_field(other, CharacterField::RatioOf);
        let parts = || ratio.split('/').map(str::trim);
        let named = parts().map(|part| if folded(part) == folded(old) { name } else { part });
        let text = named.collect::<Vec<_>>().join(" / ");
        let before = parts().collect::<Vec<_>>().join(" / ");
        if !ratio.is_empty() && folded(&text) != folded(&before) {
            edits.push(described(other, CharacterField::RatioOf, text));
        }
    }
    edits
}

/// A state gets another word, in its cells and wherever a condition names it; not in a condition
/// that would be longer than this then.
pub fn state(
    collection: &Collection,
    id: CharacterId,
    from: &str,
    to: &str,
    longest: usize,
) -> Vec<Edit> {
    let name = collection.character_name(id);
    let rename = CharacterEdit::RenameState { from: from.to_owned(), to: to.to_owned() };
    let mut edits = vec![Edit::Character(id, rename)];
    for &other in collection.characters.keys().filter(|other| **other != id) {
        let when = collection.character_field(other, CharacterField::AppliesWhen);
        let Some(rest) = condition(when, name) else { continue };
        let (mark, states) = rest.split_at(if rest.starts_with("is ") { 2 } else { 1 });
        let new = table::renamed(states.trim(), from, to);
        let text = format!("{name} {mark} {new}");
        if folded(&new) != folded(states) && text.chars().count() <= longest {
            edits.push(described(other, CharacterField::AppliesWhen, text));
        }
    }
    edits
}

fn described(id: CharacterId, field: CharacterField, text: String) -> Edit {
    Edit::Character(id, CharacterEdit::Describe(field, text))
}

/// What stands behind a character's name in a condition: `= feather or hand`.
fn condition<'t>(text: &'t str, name: &str) -> Option<&'t str> {
    let (front, rest) = text.split_at_checked(name.len())?;
    let rest = rest.trim_start();
    let means = rest.starts_with(['=', ':']) || rest.starts_with("is ");
    (!name.is_empty() && means && folded(front) == folded(name)).then_some(rest)
}
