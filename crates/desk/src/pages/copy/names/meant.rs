//! What a name on paper means: the group's own name for a find, a find that we know, or one that
//! comes out at this end after all.

use spinney_model::{Edit, Fork, KeyId, KindField, KindId, Side};

use super::{MOST_ASKED_BACK, Where, address, in_address, lie_apart, sounding_like};
use crate::Desk;
use crate::asking::way;
use crate::collection::Collection;
use crate::laid::folded;
use crate::pages::finds::LONGEST_NAME;
use crate::pages::heaps::deeds;
use crate::routes::{Asked, Deed, Refused};

/// Keeps the names that were typed; what sounds like another find, or is the name of another
/// find in this key, is asked back first.
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
        match ours || alone {
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
    let now = collection.keys.get(&key).and_then(|key| key.called.get(&kind));
    let same = now.map_or("", String::as_str) == name;
    (!same).then(|| Edit::CallKind { key, kind, name: name.to_owned() })
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
    match asked.request.field("as") {
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
            let same = Edit::MergeKinds(with, find);
            // A name that the find had goes over to the kind, unless this one takes its place.
            let mut merged = collection.clone();
            merged.apply(&same);
            edits.push(same);
            edits.extend(called(&merged, key, with, &name));
        }
        "place" => {
            let (kind, _) = kind("with")?;
            for (length, yes) in at.0.iter().enumerate() {
                let at = Fork(at.0[..length].to_vec());
                let side = Some(if *yes { Side::Yes } else { Side::No });
                edits.push(Edit::Sort { key, at, kind, side });
            }
            edits.extend(called(collection, key, kind, &name));
        }
        _ => return Err(deeds::gone(asked)),
    }
    Ok(Deed::edits(edits, asked.back(&address(key, &[]))))
}
