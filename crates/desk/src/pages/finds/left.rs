//! What a table said, and what was left because something else stands here already.
//!
//! From what was left to the address of the page that tells it, and back. Nothing is lost: here
//! stands what stood here, and a person writes down the other if it is right.

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::intake::{self, Field, Left, OddUnit, Taken};
use spinney_exchange::table::{Leaves, TypedSheets};
use spinney_voice::{Tongue, spread as say};

use crate::asked::Asked;
use crate::pages::finds::deeds;
use crate::pages::table::fields::label as character_label;
use crate::reply::Refused;

/// So many are told one by one; more do not fit into an address.
const TOLD: usize = 12;
/// So many letters of each text.
const LETTERS: usize = 80;
/// So many letters of a sentence.
const SENTENCE: usize = 240;
/// So many bytes of an address tell it. A letter may take twelve, and hosts and what stands
/// before them take addresses of some thousand.
const BYTES: usize = 2_000;

/// What there is to tell of a table that came in.
#[derive(Default)]
pub(crate) struct Told {
    left: Vec<Left>,
    /// Sentences: of the reader, and of the screens.
    said: Vec<String>,
    /// Leaves that are far from the others of their kind.
    far: Vec<String>,
}

impl Told {
    /// What was left and not understood.
    pub(crate) fn of(
        t: Tongue,
        collection: &Collection,
        sheets: &TypedSheets,
        taken: &Taken,
    ) -> Self {
        let read = intake::not_understood(sheets);
        let sentence = |finding| spinney_voice::finding(&sheets.places.in_words(finding), t).0;
        let mut said: Vec<String> = read.map(sentence).collect();
        said.extend(taken.taken_for.iter().map(|(theirs, kind)| {
            let ours = collection.name(*kind);
            t.with("finds-taken-for", &[("theirs", theirs), ("ours", &ours)])
        }));
        if taken.pictures > 0 {
            said.push(t.count("finds-no-pictures", taken.pictures));
        }
        if taken.here_already > 0 {
            said.push(t.count("finds-leaves-here", taken.here_already));
        }
        if taken.changed > 0 {
            said.push(t.count("finds-leaves-changed", taken.changed));
        }
        let far = sheets.leaves.as_ref().map(|leaves| far(t, leaves)).unwrap_or_default();
        Self { left: taken.left.clone(), said, far }
    }

    /// One sentence of the screens.
    pub(crate) fn sentence(sentence: String) -> Self {
        Self { said: vec![sentence], ..Self::default() }
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.left.is_empty() && self.said.is_empty() && self.far.is_empty()
    }
}

/// Which leaves of a table are far from the others of their kind, a sentence a kind and column.
fn far(t: Tongue, leaves: &Leaves) -> Vec<String> {
    let Leaves { kinds, specimens } = leaves;
    let spread = intake::spread_of_kinds(leaves);
    let far = spread.iter().filter_map(|one| {
        let finds = say::far(t, kinds, specimens, one)?;
        let kind = &kinds.taxon(one.taxon).name;
        let about = &kinds.character(one.character).name;
        Some(t.with("finds-far-one", &[("kind", kind), ("about", about), ("finds", &finds)]))
    });
    far.collect()
}

/// The page to go to; where there is something to tell, it is told on *Our finds*.
pub(crate) fn address(to: String, told: &Told) -> String {
    if told.is_empty() {
        return to;
    }
    let mut query = String::new();
    let marks = told.left.iter().take(TOLD).map(|left| {
        let theirs: String = left.theirs.chars().take(LETTERS).collect();
        ("left", format!("{} {theirs}", left.of.mark()))
    });
    let short = |sentence: &String| sentence.chars().take(SENTENCE).collect::<String>();
    let said = told.said.iter().take(TOLD).map(|sentence| ("note", short(sentence)));
    let far = told.far.iter().take(TOLD).map(|sentence| ("far", short(sentence)));
    for (name, text) in said.chain(far).chain(marks) {
        let mut one = form_urlencoded::Serializer::new(String::new());
        let one = one.append_pair(name, &text).finish();
        if query.len() + one.len() > BYTES {
            break;
        }
        query.push_str(&one);
        query.push('&');
    }
    let at = match (told.said.is_empty(), told.far.is_empty()) {
        (false, _) => "not-read",
        (true, false) => "far",
        (true, true) => "left",
    };
    let [left, said, far] = [told.left.len(), told.said.len(), told.far.len()];
    format!("/finds?{query}of={left}&said={said}&far-of={far}#{at}")
}

/// What the address says was not understood, and what was left.
pub(super) fn list(asked: &Asked<'_>, collection: &Collection) -> Markup {
    html! {
        (not_read(asked))
        (far_from_others(asked))
        (left(asked, collection))
    }
}

fn not_read(asked: &Asked<'_>) -> Markup {
    let t = asked.tongue;
    let said = asked.request.query.iter().take(2 * TOLD);
    let said: Vec<&str> =
        said.filter(|(name, _)| name == "note").map(|(_, text)| text.as_str()).collect();
    let all = asked.request.asked("said").parse().unwrap_or(0).max(said.len());
    html! {
        @if !said.is_empty() {
            section.finding.look #not-read {
                h2 { (t.say("finds-not-read")) }
                ul {
                    @for sentence in &said {
                        li dir="auto" { (sentence) }
                    }
                }
                @if all > said.len() { p { (t.count("finds-left-more", all - said.len())) } }
                p.remedy { (t.say("finds-not-read-remedy")) }
            }
        }
    }
}

fn far_from_others(asked: &Asked<'_>) -> Markup {
    let t = asked.tongue;
    let far = asked.request.query.iter().filter(|(name, _)| name == "far").take(TOLD);
    let far: Vec<&str> = far.map(|(_, sentence)| sentence.as_str()).collect();
    let all = asked.request.asked("far-of").parse().unwrap_or(0).max(far.len());
    html! {
        @if !far.is_empty() {
            section.finding.look #far {
                h2 { (t.say("finds-far")) }
                ul { @for sentence in &far { li dir="auto" { (sentence) } } }
                @if all > far.len() { p { (t.count("finds-left-more", all - far.len())) } }
                p.remedy {
                    (t.say("finds-far-remedy")) " "
                    a href="/leaves#far" { (t.say("leaves-link")) }
                }
            }
        }
    }
}

fn left(asked: &Asked<'_>, collection: &Collection) -> Markup {
    let t = asked.tongue;
    let told = asked.request.query.iter().filter(|(name, _)| name == "left").take(TOLD);
    let told = told.filter_map(|(_, text)| {
        let (mark, theirs) = text.split_once(' ')?;
        let of = Field::of_mark(mark)?;
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
        Field::Kind(id, field) => (collection.name(id), deeds::of_kind(field)),
        Field::Character(id, field) => {
            (collection.character_name(id).to_owned(), character_label(field))
        }
        Field::About(field) => (t.say("finds-left-about"), deeds::of_scene(field)),
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

    use super::{BYTES, TOLD, Told, address};
    use spinney_collection::intake::{Field, Left};

    #[test]
    fn an_address_stays_short_in_every_script() {
        for (letter, told) in [("a", TOLD), ("é", 3), ("毒", 2), ("🍂", 2)] {
            let left = |id| Left {
                of: Field::Kind(KindId(id), KindField::Caution),
                theirs: letter.repeat(300),
            };
            let left: Vec<Left> = (1..=20).map(left).collect();
            let all = Told { left, ..Told::default() };
            let address = address("/finds".to_owned(), &all);
            assert!(address.len() < BYTES + 40, "{letter}: {}", address.len());
            assert!(address.matches("left=").count() >= told, "{letter}: {address}");
            assert!(address.ends_with("of=20&said=0&far-of=0#left"), "all are counted");
        }
    }
}
