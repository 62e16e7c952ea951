//! What a name on paper means: the group's own name for a find, a find that we know, or one that
//! comes out at this end after all. Where another window has named or moved it meanwhile, it is
//! asked back or refused.

use spinney_collection::keys::letters;
use spinney_collection::kinds::sounding_like;
use spinney_collection::laid::folded;
use spinney_collection::{Collection, Question};
use spinney_model::{Edit, Fork, KeyEdit, KeyId, KindEdit, KindField, KindId, Side};
use spinney_voice::Tongue;

use crate::asked::Deed;
use crate::forms::{At, Fact, Form, nothing};
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::heaps::place::{self, Place, way};
use crate::reply::Refused;

/// What a group calls a kind, as its page showed it.
fn called_then(key: KeyId, kind: KindId) -> Fact<'static> {
    let shows = move |of: &Collection| called_now(of, key, kind).to_owned();
    Fact::new(move |state| shows(state.collection), |at| place::gone(at.asked))
}

/// A group's names for its finds. Where somebody has named a find meanwhile, it is asked back
/// and not refused.
pub(crate) static NAMES: Form<Names> =
    Form { path: "/do/copy-names", read: Names::read, rests_on: nothing, act: Names::act };

/// The names of a group for its finds.
pub(crate) struct Names {
    key: KeyId,
    /// By kind, and as they stand at ends where nobody comes out.
    kinds: Vec<(KindId, String)>,
    nobody: Vec<(Fork, String)>,
}

impl Names {
    fn text(&self, (kind, name): &(KindId, String)) -> Fact<'_> {
        let (key, kind) = (self.key, *kind);
        Fact::typed(move |of: &Collection| called_now(of, key, kind).to_owned(), name)
    }

    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let key = place::key(at)?;
        let (mut kinds, mut nobody) = (Vec::new(), Vec::new());
        for (field, _) in &at.asked.request.form {
            let name = at.asked.cut(field, LONGEST_NAME);
            if let Some(kind) = field.strip_prefix("name-").and_then(|id| id.parse().ok()) {
                kinds.push((KindId(kind), name));
            } else if let (Some(end), false) = (field.strip_prefix("end-"), name.is_empty()) {
                nobody.push((way(end), name));
            }
        }
        kinds.retain(|(kind, _)| at.collection().kinds.contains_key(kind));
        Ok(Self { key, kinds, nobody })
    }

    /// What sounds like another find, is the name of another find in this key, or has another
    /// name by now than the page showed, is asked back first.
    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        let (key, collection) = (self.key, at.collection());
        let laid = at.desk.laid().ok_or_else(|| place::gone(at.asked))?;
        let mut edits = Vec::new();
        let nobody = self.nobody.iter();
        let mut open: Vec<String> =
            nobody.map(|(end, name)| in_address(&Where::Nobody(end.clone()), name)).collect();
        let typed = || self.kinds.iter().filter(|typed| at.typed_over(&self.text(typed)));
        let mut own = collection.keys[&key].called.clone();
        own.retain(|kind, _| !typed().any(|(other, _)| other == kind));
        for (kind, name) in typed() {
            let (kind, text) = (*kind, self.text(&(*kind, name.clone())));
            let ours = folded(collection.kinds[&kind].field(KindField::Name)) == folded(name);
            let namesake =
                !name.is_empty() && own.values().any(|own| folded(own) == folded(name));
            let alone =
                !namesake && sounding_like(collection, &laid, name, Some(kind)).is_empty();
            let now = called_now(collection, key, kind);
            match now == name || at.still(&text) && (ours || alone) {
                true => edits.extend(called(collection, key, (kind, now), name)),
                false => open.push(in_address(&Where::At(kind), name)),
            }
            own.insert(kind, name.clone());
        }
        if open.len() > MOST_ASKED_BACK {
            let t = at.asked.tongue;
            let most = &[("most", &MOST_ASKED_BACK as &dyn std::fmt::Display)];
            return Err(Refused::count_with(t, "copy-many-names", open.len(), most));
        }
        Ok(Deed::edits(edits, address(key, &open)))
    }
}

fn called_now(collection: &Collection, key: KeyId, kind: KindId) -> &str {
    let drawn = collection.keys.get(&key);
    drawn.and_then(|key| key.called.get(&kind)).map_or("", String::as_str)
}

/// A kind goes by a name of the group's own, and not by the one that it has now; by none where
/// that is ours.
fn called(
    collection: &Collection,
    key: KeyId,
    (kind, now): (KindId, &str),
    name: &str,
) -> Option<Edit> {
    let ours = collection.kinds.get(&kind).map_or("", |kind| kind.field(KindField::Name));
    let name = if folded(ours) == folded(name) { "" } else { name };
    (now != name).then(|| Edit::Key(key, KeyEdit::Call { kind, name: name.to_owned() }))
}

/// A person says what a name means. It rests on what stands on the way to an end, and where the
/// kind lies there; another name than the page showed is asked back.
pub(crate) static MEANT: Form<Meant> = Form {
    path: "/do/copy-name",
    read: Meant::read,
    rests_on: |meant| match &meant.what {
        What::Own(_) | What::Match(..) => Vec::new(),
        What::Place(kind, place) => {
            place.asks().into_iter().chain([lies(*kind, place)]).collect()
        }
    },
    act: Meant::act,
};

/// What a person says that a name means.
pub(crate) struct Meant {
    key: KeyId,
    name: String,
    what: What,
}

enum What {
    /// A name of the group's own for this kind.
    Own(KindId),
    /// This find is that kind, which we know.
    Match(KindId, KindId),
    /// This kind comes out at this end after all.
    Place(KindId, Place),
}

impl Meant {
    /// The kind that would be named.
    fn named(&self) -> KindId {
        match &self.what {
            What::Own(kind) | What::Match(_, kind) | What::Place(kind, _) => *kind,
        }
    }

    /// Asked back once more, where the kind that would be named has another name by now than the
    /// page showed.
    fn asked_again(&self, at: &At<'_>) -> Option<Deed> {
        let called = called_then(self.key, self.named());
        let now = called_now(at.collection(), self.key, self.named());
        (now != self.name && !at.still(&called)).then(|| {
            let place = match &self.what {
                What::Own(kind) | What::Match(kind, _) => Where::At(*kind),
                What::Place(_, place) => Where::Nobody(place.at.clone()),
            };
            let back = at.asked.back(&address(self.key, &[]));
            let mut query = form_urlencoded::Serializer::new(String::new());
            query.append_pair("called", &in_address(&place, &self.name));
            let page = back.split('#').next().unwrap_or_default();
            Deed::edits(Vec::new(), format!("{page}&{}#own-names", query.finish()))
        })
    }

    /// Two finds turn out to be one.
    fn matched(&self, at: &At<'_>, find: KindId, with: KindId) -> Result<Vec<Edit>, Refused> {
        let collection = at.collection();
        let nameless = collection.kinds[&find].field(KindField::Name).is_empty();
        if !nameless || find == with {
            return Err(place::gone(at.asked));
        }
        if let Some((_, question)) = collection.keys[&self.key].parts(find, with) {
            let t = at.asked.tongue;
            let sentence = lie_apart(t, collection, self.key, (find, with), question);
            return Err(Refused { sentence, remedy: t.say("copy-lie-apart-remedy") });
        }
        let same = Edit::Kind(with, KindEdit::Merge(find));
        // A name that the find had goes over to the kind, unless this one takes its place.
        let now = match called_now(collection, self.key, with) {
            "" => called_now(collection, self.key, find),
            now => now,
        };
        let named = called(collection, self.key, (with, now), &self.name);
        Ok([same].into_iter().chain(named).collect())
    }
}

/// Where hands have put a kind on the way to a place.
fn lies(kind: KindId, place: &Place) -> Fact<'_> {
    Fact::new(
        move |state| {
            let drawn = state.collection.keys.get(&place.key);
            let put = |length| {
                let above = Fork(place.at.0[..length].to_vec());
                drawn.and_then(|drawn| drawn.questions.get(&above)?.sorted.get(&kind))
            };
            format!("{:?}", (0..place.at.0.len()).map(put).collect::<Vec<_>>())
        },
        move |at| {
            let name = at.collection().name(kind);
            Refused::with(at.asked.tongue, "copy-card-moved", &[("kind", &name)])
        },
    )
}

impl Meant {
    fn read(at: &At<'_>) -> Result<Self, Refused> {
        let place = Place::read(at)?;
        let kind = |field| {
            let kind = KindId(at.asked.id(field));
            let known = at.collection().kinds.contains_key(&kind);
            known.then_some(kind).ok_or_else(|| place::gone(at.asked))
        };
        let key = place.key;
        let what = match at.asked.request.field("as") {
            "own" => What::Own(kind("kind")?),
            "match" => What::Match(kind("kind")?, kind("with")?),
            "place" => What::Place(kind("with")?, place),
            _ => return Err(place::gone(at.asked)),
        };
        Ok(Self { key, name: at.asked.cut("name", LONGEST_NAME), what })
    }

    fn act(self, at: &At<'_>) -> Result<Deed, Refused> {
        if let Some(deed) = self.asked_again(at) {
            return Ok(deed);
        }
        let (key, collection) = (self.key, at.collection());
        let now = |kind| (kind, called_now(collection, key, kind));
        let named = |kind| called(collection, key, now(kind), &self.name);
        let edits = match &self.what {
            What::Own(kind) => named(*kind).into_iter().collect(),
            What::Match(find, with) => self.matched(at, *find, *with)?,
            What::Place(kind, place) => {
                let way = place.at.0.iter().enumerate().map(|(length, yes)| {
                    Edit::Key(
                        key,
                        KeyEdit::Sort {
                            at: Fork(place.at.0[..length].to_vec()),
                            kind: *kind,
                            side: Some(if *yes { Side::Yes } else { Side::No }),
                        },
                    )
                });
                way.chain(named(*kind)).collect()
            }
        };
        Ok(Deed::edits(edits, at.asked.back(&address(key, &[]))))
    }
}

/// So many names are asked back at once.
pub(super) const MOST_ASKED_BACK: usize = 24;

/// Where a name stands on the paper.
pub(super) enum Where {
    /// At the end where this kind lies.
    At(KindId),
    /// At an end where nobody comes out.
    Nobody(Fork),
}

/// That two finds cannot be one while their cards lie on different heaps.
pub(super) fn lie_apart(
    t: Tongue,
    collection: &Collection,
    key: KeyId,
    (find, known): (KindId, KindId),
    question: &Question,
) -> String {
    let (find, known) = (collection.name_in(key, find), collection.name_in(key, known));
    t.with("copy-lie-apart", &[("find", &find), ("kind", &known), ("words", &question.words)])
}

pub(super) fn in_address(place: &Where, name: &str) -> String {
    match place {
        Where::At(kind) => format!("{}-{name}", kind.0),
        Where::Nobody(end) => format!("{}-{name}", letters(end)),
    }
}

pub(super) fn address(key: KeyId, called: &[String]) -> String {
    let mut query = form_urlencoded::Serializer::new(String::new());
    query.append_pair("key", &key.0.to_string()).append_pair("at", "end");
    called.iter().take(MOST_ASKED_BACK).for_each(|text| {
        query.append_pair("called", text);
    });
    format!("/copy?{}#own-names", query.finish())
}
