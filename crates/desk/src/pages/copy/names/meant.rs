//! What a name on paper means: the group's own name for a find, a find that we know, or one that
//! comes out at this end after all. Where another window has named or moved it meanwhile, it is
//! asked back or refused.

use maud::{Markup, html};
use spinney_model::{Edit, Fork, KeyEdit, KeyId, KindEdit, KindField, KindId, Side};

use super::{MOST_ASKED_BACK, Names, Where, address, in_address, lie_apart, sounding_like};
use crate::Desk;
use crate::asking::way;
use crate::pages::finds::LONGEST_NAME;
use crate::pages::heaps::deeds;
use crate::pages::stood::{self, STOOD};
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::laid::folded;
use spinney_collection::{Collection, Drawn};

/// The hidden field with the name that a find had.
const STOOD_NAME: &str = "stood-name";

/// Keeps the names that were typed; what sounds like another find, is the name of another find
/// in this key, or has another name by now than the page showed, is asked back first.
pub(crate) fn keep(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, _) = deeds::place(desk, asked)?;
    let laid = desk.worked.laid(&desk.history.now).ok_or_else(|| deeds::gone(asked))?;
    let collection = &desk.history.now;
    let (mut edits, mut open) = (Vec::new(), at_empty_ends(asked));
    let typed = typed(collection, asked);
    let mut own = collection.keys[&key].called.clone();
    own.retain(|kind, _| !typed.iter().any(|(other, _)| other == kind));
    for (kind, name) in typed {
        let ours = folded(collection.kinds[&kind].field(KindField::Name)) == folded(&name);
        let namesake = !name.is_empty() && own.values().any(|own| folded(own) == folded(&name));
        let alone = !namesake && sounding_like(collection, &laid, &name, Some(kind)).is_empty();
        let now = called_now(collection, key, kind);
        let settled = now == name || !shown_other(asked, kind, now) && (ours || alone);
        match settled {
            true => edits.extend(called(collection, key, kind, &name)),
            false => open.push(in_address(&Where::At(kind), &name)),
        }
        own.insert(kind, name);
    }
    if open.len() > MOST_ASKED_BACK {
        let t = asked.tongue;
        let most: [(&str, &dyn std::fmt::Display); 1] = [("most", &MOST_ASKED_BACK)];
        return Err(Refused {
            sentence: t.count_with("copy-many-names", open.len(), &most),
            remedy: t.say("copy-many-names-remedy"),
        });
    }
    Ok(Deed::edits(edits, address(key, &open)))
}

fn called_now(collection: &Collection, key: KeyId, kind: KindId) -> &str {
    let drawn = collection.keys.get(&key);
    drawn.and_then(|key| key.called.get(&kind)).map_or("", String::as_str)
}

/// Whether the page showed another name than the kind has now.
fn shown_other(asked: &Asked<'_>, kind: KindId, now: &str) -> bool {
    let field = format!("o-name-{}", kind.0);
    let shown = asked.request.form.iter().find(|(name, _)| *name == field);
    shown.is_some_and(|(_, shown)| !shown.split_whitespace().eq(now.split_whitespace()))
}

/// The names that were changed, in the order of the form.
fn typed(collection: &Collection, asked: &Asked<'_>) -> Vec<(KindId, String)> {
    let typed = asked.request.form.iter().filter_map(|(field, _)| {
        let kind = KindId(field.strip_prefix("name-")?.parse().ok()?);
        let name = deeds::text(asked, field, LONGEST_NAME);
        let changed = collection.kinds.contains_key(&kind) && asked.touched(field, &name);
        changed.then_some((kind, name))
    });
    typed.collect()
}

/// The names that stand where nobody comes out; which finds they are is asked.
fn at_empty_ends(asked: &Asked<'_>) -> Vec<String> {
    let typed = asked.request.form.iter().filter_map(|(field, _)| {
        let end = way(field.strip_prefix("end-")?);
        let name = deeds::text(asked, field, LONGEST_NAME);
        (!name.is_empty()).then(|| in_address(&Where::Nobody(end), &name))
    });
    typed.collect()
}

/// A kind goes by a name of the group's own; by none where that is ours.
fn called(collection: &Collection, key: KeyId, kind: KindId, name: &str) -> Option<Edit> {
    let ours = collection.kinds.get(&kind).map_or("", |kind| kind.field(KindField::Name));
    let name = if folded(ours) == folded(name) { "" } else { name };
    (called_now(collection, key, kind) != name)
        .then(|| Edit::Key(key, KeyEdit::Call { kind, name: name.to_owned() }))
}

/// The hidden field with the name that a kind had when a button was shown.
pub(super) fn stood_name(names: &Names<'_>, kind: KindId) -> Markup {
    let now = called_now(names.collection, names.key, kind);
    stood::field(STOOD_NAME, &stood::token([now]))
}

/// What stood on the way to an end, and where a kind lay there, when a button was shown.
pub(super) fn stood_place(names: &Names<'_>, kind: KindId, end: &Fork) -> Markup {
    let drawn = &names.collection.keys[&names.key];
    html! {
        (stood_name(names, kind))
        (deeds::seen_fields(drawn, end))
        (stood::field(STOOD, &lies(drawn, kind, end)))
    }
}

/// The token of where hands have put a kind on the way to a place.
fn lies(drawn: &Drawn, kind: KindId, at: &Fork) -> String {
    stood::token((0..at.0.len()).map(|length| {
        let question = drawn.questions.get(&Fork(at.0[..length].to_vec()));
        match question.and_then(|question| question.sorted.get(&kind)) {
            Some(Side::Yes) => "yes",
            Some(Side::No) => "no",
            Some(Side::Both) => "both",
            None => "",
        }
    }))
}

/// Asked back once more, where the kind that would be named has another name by now than the
/// page showed.
fn asked_again(
    desk: &Desk,
    asked: &Asked<'_>,
    (key, kind): (KeyId, KindId),
    (place, name): (&Where, &str),
) -> Option<Deed> {
    let now = called_now(&desk.history.now, key, kind);
    let still = stood::still(&asked.request.form, STOOD_NAME, &stood::token([now]));
    (now != name && !still).then(|| {
        let back = asked.back(&address(key, &[]));
        let mut query = form_urlencoded::Serializer::new(String::new());
        query.append_pair("called", &in_address(place, name));
        let page = back.split('#').next().unwrap_or_default();
        Deed::edits(Vec::new(), format!("{page}&{}#own-names", query.finish()))
    })
}

/// What a person says that a name means: a name of their own, a find that we know, or a find
/// that comes out at this end.
pub(crate) fn decide(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let (key, at) = deeds::place(desk, asked)?;
    let collection = &desk.history.now;
    let name = deeds::text(asked, "name", LONGEST_NAME);
    let kind = |field| {
        let kind = KindId(asked.request.field(field).parse().unwrap_or(0));
        collection.kinds.get(&kind).map(|of| (kind, of)).ok_or_else(|| deeds::gone(asked))
    };
    let mut edits = Vec::new();
    let what = asked.request.field("as");
    let place = match what {
        "place" => Where::Nobody(at.clone()),
        _ => Where::At(KindId(asked.request.field("kind").parse().unwrap_or(0))),
    };
    let named = kind(if what == "own" { "kind" } else { "with" })?.0;
    if let Some(deed) = asked_again(desk, asked, (key, named), (&place, &name)) {
        return Ok(deed);
    }
    match what {
        "own" => edits.extend(called(collection, key, kind("kind")?.0, &name)),
        "match" => {
            let ((find, of), (with, _)) = (kind("kind")?, kind("with")?);
            if !of.field(KindField::Name).is_empty() || find == with {
                return Err(deeds::gone(asked));
            }
            if let Some((_, question)) = collection.keys[&key].parts(find, with) {
                let t = asked.tongue;
                return Err(Refused {
                    sentence: lie_apart(t, collection, key, (find, with), question),
                    remedy: t.say("copy-lie-apart-remedy"),
                });
            }
            let same = Edit::Kind(with, KindEdit::Merge(find));
            // A name that the find had goes over to the kind, unless this one takes its place.
            let mut merged = collection.clone();
            merged.apply(&same);
            edits.push(same);
            edits.extend(called(&merged, key, with, &name));
        }
        "place" => {
            let (kind, _) = kind("with")?;
            deeds::seen_place(desk, asked)?;
            let lies = lies(&collection.keys[&key], kind, &at);
            if !stood::still(&asked.request.form, STOOD, &lies) {
                let t = asked.tongue;
                let name = collection.name(kind);
                return Err(Refused {
                    sentence: t.with("copy-card-moved", &[("kind", &name)]),
                    remedy: t.say("copy-card-moved-remedy"),
                });
            }
            for (length, yes) in at.0.iter().enumerate() {
                let at = Fork(at.0[..length].to_vec());
                let side = Some(if *yes { Side::Yes } else { Side::No });
                edits.push(Edit::Key(key, KeyEdit::Sort { at, kind, side }));
            }
            edits.extend(called(collection, key, kind, &name));
        }
        _ => return Err(deeds::gone(asked)),
    }
    Ok(Deed::edits(edits, asked.back(&address(key, &[]))))
}
