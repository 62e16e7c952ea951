//! What a table said, and what was left because something else stands here already.
//!
//! From what was left to the address of the page that tells it, and back. Nothing is lost: here
//! stands what stood here, and a person writes down the other if it is right.

use maud::{Markup, html};
use spinney_model::{AboutField, CharacterField, CharacterId, KindField, KindId};

use crate::collection::Collection;
use crate::intake::{Field, Left, OddUnit, kind_headings};
use crate::laid::{ABOUT_SHEET, CHARACTER_SHEET};
use crate::language::Tongue;
use crate::pages::table::label as character_label;
use crate::routes::{Asked, Refused};

/// So many are told one by one; more do not fit into an address.
const TOLD: usize = 12;
/// So many letters of each.
const LETTERS: usize = 80;
/// So many bytes of an address tell it. A letter may take twelve, and hosts and what stands
/// before them take addresses of some thousand.
const BYTES: usize = 2_000;

/// The page to go to; with what was left, it is told there.
pub(crate) fn address(to: String, left: &[Left]) -> String {
    if left.is_empty() {
        return to;
    }
    let mut query = String::new();
    for left in left.iter().take(TOLD) {
        let theirs: String = left.theirs.chars().take(LETTERS).collect();
        let mut one = form_urlencoded::Serializer::new(String::new());
        let one = one.append_pair("left", &format!("{} {theirs}", mark(left.of))).finish();
        if query.len() + one.len() > BYTES {
            break;
        }
        query.push_str(&one);
        query.push('&');
    }
    format!("/finds?{query}of={}#left", left.len())
}

/// `kind:3:caution`: the heading of the sheet has no blank in an address.
fn mark(of: Field) -> String {
    let plain = |heading: &str| heading.replace(' ', "-");
    match of {
        Field::Kind(id, field) => format!("kind:{}:{}", id.0, plain(heading_of_kind(field))),
        Field::Character(id, field) => {
            format!("character:{}:{}", id.0, plain(heading_of_character(field)))
        }
        Field::About(field) => format!("about:0:{}", plain(heading_of_about(field))),
    }
}

fn field(mark: &str) -> Option<Field> {
    let mut parts = mark.splitn(3, ':');
    let (sheet, number, heading) = (parts.next()?, parts.next()?, parts.next()?);
    let number = number.parse().ok()?;
    let heading = heading.replace('-', " ");
    Some(match sheet {
        "kind" => {
            let (field, _) = kind_headings().find(|(_, known)| *known == heading)?;
            Field::Kind(KindId(number), *field)
        }
        "character" => {
            let (field, _) = CHARACTER_SHEET.iter().find(|(_, known)| *known == heading)?;
            Field::Character(CharacterId(number), *field)
        }
        "about" => {
            let (known, _) = ABOUT_SHEET.iter().find(|(_, word)| *word == heading)?;
            Field::About(*known)
        }
        _ => return None,
    })
}

fn heading_of_kind(field: KindField) -> &'static str {
    kind_headings().find(|(known, _)| *known == field).map_or("", |(_, heading)| heading)
}

fn heading_of_character(field: CharacterField) -> &'static str {
    CHARACTER_SHEET.iter().find(|(known, _)| *known == field).map_or("", |(_, heading)| heading)
}

fn heading_of_about(field: AboutField) -> &'static str {
    ABOUT_SHEET.iter().find(|(known, _)| *known == field).map_or("", |(_, word)| word)
}

/// What the address says was left.
pub(super) fn list(asked: &Asked<'_>, collection: &Collection) -> Markup {
    let t = asked.tongue;
    let told = asked.request.query.iter().filter(|(name, _)| name == "left").take(TOLD);
    let told = told.filter_map(|(_, text)| {
        let (mark, theirs) = text.split_once(' ')?;
        let of = field(mark)?;
        let ours = of.now(collection);
        (!ours.is_empty()).then(|| one(t, collection, of, ours, theirs))
    });
    let told: Vec<String> = told.collect();
    let all = asked.request.asked("of").parse().unwrap_or(0).max(told.len());
    html! {
        @if !told.is_empty() {
            section.finding.look #left {
                h2 { (t.count("finds-left", all)) }
                p { (t.say("finds-left-why")) }
                ul { @for sentence in &told { li dir="auto" { (sentence) } } }
                @if all > told.len() { p { (t.count("finds-left-more", all - told.len())) } }
            }
        }
    }
}

fn one(t: Tongue, collection: &Collection, of: Field, ours: &str, theirs: &str) -> String {
    let (what, field) = match of {
        Field::Kind(id, field) => (collection.name(id), super::kind::label(field)),
        Field::Character(id, field) => {
            (collection.character_name(id).to_owned(), character_label(field))
        }
        Field::About(field) => (t.say("finds-left-about"), super::scene::label(field)),
    };
    let field = t.say(field);
    t.with(
        "finds-left-one",
        &[("what", &what), ("field", &field), ("ours", &ours), ("theirs", &theirs)],
    )
}

/// A unit that does not fit the column here.
pub(crate) fn odd_unit(t: Tongue, odd: &OddUnit) -> Refused {
    let (sentence, remedy) = match odd.ours.is_empty() {
        true => ("finds-unit-nobody-said", "finds-unit-nobody-said-remedy"),
        false => ("finds-unit-differs", "finds-unit-differs-remedy"),
    };
    let mut texts: Vec<(&str, &dyn std::fmt::Display)> =
        vec![("name", &odd.name), ("theirs", &odd.theirs)];
    if !odd.ours.is_empty() {
        texts.push(("ours", &odd.ours));
    }
    Refused { sentence: t.with(sentence, &texts), remedy: t.say(remedy) }
}

#[cfg(test)]
mod tests {
    use spinney_model::{KindField, KindId};

    use super::{BYTES, TOLD, address};
    use crate::intake::{Field, Left};

    #[test]
    fn an_address_stays_short_in_every_script() {
        for (letter, told) in [("a", TOLD), ("é", 3), ("毒", 2), ("🍂", 2)] {
            let left = |id| Left {
                of: Field::Kind(KindId(id), KindField::Caution),
                theirs: letter.repeat(300),
            };
            let left: Vec<Left> = (1..=20).map(left).collect();
            let address = address("/finds".to_owned(), &left);
            assert!(address.len() < BYTES + 40, "{letter}: {}", address.len());
            assert!(address.matches("left=").count() >= told, "{letter}: {address}");
            assert!(address.ends_with("of=20#left"), "all are counted");
        }
    }
}
