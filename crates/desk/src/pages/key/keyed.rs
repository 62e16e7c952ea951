//! A key as its screen reads it: where an answer leads, which kinds it leaves together, what is
//! missing where a kind goes both ways, and everywhere the way to mend it.
//!
//! From a key and its second opinion to names and addresses. Nothing is worked out here.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::keys::{Made, letters, token};
use spinney_collection::laid::Laid;
use spinney_collection::{Agreed, Collection, Drawn};
use spinney_model::{
    Answer, CharacterId, Code, Couplet, Destination, End, Finding, Fork, KeyId, KindId,
    LeftTogether, Place, WhyNot,
};
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::asking::way;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::frame;

/// A key with everything that the parts of this screen look at.
pub(super) struct Keyed<'d> {
    pub(super) t: Tongue,
    pub(super) id: KeyId,
    pub(super) collection: &'d Collection,
    pub(super) laid: Arc<Laid>,
    pub(super) made: Arc<Made>,
    /// The key as the machine would finish it, with what every other question would cost: where
    /// a question is open.
    pub(super) explained: Option<Arc<Made>>,
    /// The question that is open to be changed.
    pub(super) open: Option<Fork>,
    pub(super) as_tree: bool,
}

impl<'d> Keyed<'d> {
    /// The key that is asked for; None: none was begun, or it has no kinds.
    pub(super) fn of(desk: &'d Desk, asked: &Asked<'_>) -> Option<Self> {
        let key = Self::by_id(desk, asked.tongue, frame::key_asked(desk, asked)?)?;
        let request = asked.request;
        let opened = request.query.iter().any(|(name, _)| name == "open");
        Some(Self {
            explained: opened.then(|| desk.explained(key.id)).flatten(),
            open: opened.then(|| way(request.asked("open"))),
            as_tree: request.asked("as") == "tree",
            ..key
        })
    }

    /// A key with no question open.
    pub(super) fn by_id(desk: &'d Desk, t: Tongue, id: KeyId) -> Option<Self> {
        Some(Self {
            t,
            id,
            collection: &desk.history.now,
            laid: desk.laid()?,
            made: desk.made(t, id)?,
            explained: None,
            open: None,
            as_tree: false,
        })
    }

    pub(super) fn drawn(&self) -> &Drawn {
        &self.collection.keys[&self.id]
    }

    /// What is missing of a kind at a question.
    pub(super) fn missing(&self, number: u32, kind: KindId) -> Missing {
        let (collection, laid, made) = (self.collection, &*self.laid, &*self.made);
        Missing::of(From { collection, laid, made, key: self.id }, number, kind)
    }

    /// The kinds that the key leaves together.
    pub(super) fn together(&self) -> Together<'_> {
        let (t, collection, key, made) = (self.t, self.collection, self.id, &*self.made);
        Together { t, collection, key, made }
    }

    pub(super) fn place(&self, couplet: &Couplet) -> &Fork {
        &self.made.places[&couplet.number]
    }

    /// Whether a question is open to be changed.
    pub(super) fn is_open(&self, couplet: &Couplet) -> bool {
        self.open.as_ref() == Some(self.place(couplet))
    }

    /// The address of this page, with a question open or none.
    pub(super) fn address(&self, open: Option<&Fork>) -> String {
        let mut address = format!("/key?key={}", self.id.0);
        if self.as_tree {
            address.push_str("&as=tree");
        }
        if let Some(at) = open {
            address.push_str(&format!("&open={}", letters(at)));
        }
        address
    }

    /// The hidden fields of a form that changes a question.
    pub(super) fn where_fields(&self, at: &Fork) -> Markup {
        hidden(&[
            ("key", &self.id.0),
            ("at", &letters(at)),
            ("way", &asks_above(&self.made, at)),
            ("asks", &asks_at(&self.made, at)),
            ("back", &self.address(Some(at))),
        ])
    }

    /// What was found at one question; what nobody has said is gathered in the margin.
    pub(super) fn findings_at(&self, number: u32) -> Vec<Finding> {
        let here = Place::Couplet(number);
        let found = self.made.findings().iter();
        let found = found.filter(|found| found.place == here && !self.said_of_a_kind(found));
        found.cloned().collect()
    }

    /// Whether a finding is said kind by kind, and not by itself: what nobody has said of a kind,
    /// and that a kind never comes out which nobody has placed.
    pub(super) fn said_of_a_kind(&self, found: &Finding) -> bool {
        let made = &self.made;
        let unplaced = |name: &String| {
            let open = made.guesses.of_kinds.iter().filter(|(_, open)| open.lost);
            open.into_iter().any(|(taxon, _)| made.layer.matrix.taxon(*taxon).name == *name)
        };
        match (found.code, &found.place) {
            (Code::NobodyRecorded, _) => true,
            (Code::NeverComesOut, Place::Taxon(name)) => unplaced(name),
            _ => false,
        }
    }

    /// Why a question cannot be asked, in a sentence.
    pub(super) fn why_not(&self, why: WhyNot) -> String {
        let t = self.t;
        match why {
            WhyNot::Blocked(taxon) => {
                let kind = self.made.layer.kinds.get(taxon.0);
                let name = kind.map(|kind| self.collection.name_in(self.id, *kind));
                t.with("key-why-blocked", &[("kind", &name.unwrap_or_default())])
            }
            WhyNot::AllAlike => t.say("key-why-alike"),
            WhyNot::NoSuchState => t.say("key-why-no-state"),
            WhyNot::AfterRefused => t.say("key-why-after"),
            WhyNot::LeftOut => t.say("key-why-left-out"),
            WhyNot::NeverParted | WhyNot::TooLarge => t.say("key-why-never"),
        }
    }
}

/// The token of what a key asks on the way to a place. A key that a long search found is in no
/// journal: the tokens travel with the form.
pub(super) fn asks_above(made: &Made, at: &Fork) -> String {
    token((0..at.0.len()).map(|length| words_at(made, &at.0[..length])))
}

/// The token of what it asks there.
pub(super) fn asks_at(made: &Made, at: &Fork) -> String {
    token([words_at(made, &at.0)])
}

fn words_at<'m>(made: &'m Made, way: &[bool]) -> &'m str {
    made.couplet(&Fork(way.to_vec())).map_or("", |couplet| made.compared(couplet.number))
}

/// The token of all questions of a key, each with its place.
pub(super) fn asks_all(made: &Made) -> String {
    token(made.key.couplets.iter().flat_map(|couplet| {
        [letters(&made.places[&couplet.number]), made.compared(couplet.number).to_owned()]
    }))
}

/// Where an answer leads.
pub(crate) enum Ending<'m> {
    /// On to the question with this number.
    On(u32),
    /// Kinds come out, and names that are none of the collection's.
    Out(Vec<KindId>, &'m [String]),
    /// Nothing comes out.
    Nothing,
}

impl<'m> Ending<'m> {
    pub(crate) fn of(made: &'m Made, to: &'m Destination) -> Self {
        match to {
            Destination::Couplet(number) => Self::On(*number),
            Destination::End(End { taxa, unrecognised })
                if !(taxa.is_empty() && unrecognised.is_empty()) =>
            {
                let kinds = taxa.iter().filter_map(|taxon| made.layer.kinds.get(taxon.0));
                Self::Out(kinds.copied().collect(), unrecognised)
            }
            Destination::End(_) | Destination::Missing => Self::Nothing,
        }
    }
}

/// The names of kinds in a key, one after another.
pub(crate) fn names(
    collection: &Collection,
    key: KeyId,
    kinds: &[KindId],
    strange: &[String],
) -> Vec<String> {
    let known = kinds.iter().map(|kind| collection.name_in(key, *kind));
    known.chain(strange.iter().cloned()).collect()
}

/// What is missing of a kind at a question.
pub(crate) struct Missing {
    /// Whether people said different things; otherwise nobody has said anything.
    pub(crate) differ: bool,
    /// Where a person says it.
    pub(crate) address: String,
}

/// A key and what it was made from.
#[derive(Clone, Copy)]
pub(crate) struct From<'a> {
    pub(crate) collection: &'a Collection,
    pub(crate) laid: &'a Laid,
    pub(crate) made: &'a Made,
    pub(crate) key: KeyId,
}

impl Missing {
    pub(crate) fn of(from: From<'_>, number: u32, kind: KindId) -> Self {
        let column = column(from, number);
        let agreed = column.map(|at| from.laid.said.agreed(kind, at));
        let differ = matches!(agreed, Some(Agreed::Contradicted));
        let address = match (column, lies_at(from, number, kind)) {
            (Some(at), card) if differ || card.is_none() => {
                let (kind, at) = (kind.0, at.0);
                format!("/table?kind={kind}&character={at}#c-{kind}-{at}")
            }
            (_, Some(at)) => {
                format!("/heaps?key={}&at={}#card-{}", from.key.0, letters(&at), kind.0)
            }
            (_, None) => format!("/finds/{}", kind.0),
        };
        Self { differ, address }
    }
}

/// The character that a question asks the table for, or is linked to.
fn column(from: From<'_>, number: u32) -> Option<CharacterId> {
    let Made { key, layer, places, .. } = from.made;
    let ask = key.couplets.iter().find(|couplet| couplet.number == number)?.ask.as_ref()?;
    if ask.character.0 < layer.sorted_from {
        return from.laid.characters.get(ask.character.0).copied().flatten();
    }
    let question = from.collection.keys.get(&from.key)?.questions.get(places.get(&number)?)?;
    let linked = question.ask.as_ref().map(|of| of.character);
    linked.filter(|at| from.laid.character(*at).is_some())
}

/// The heap where the kind's card waits: at the question, if people drew it, or above, where it
/// was left on the way there.
fn lies_at(from: From<'_>, number: u32, kind: KindId) -> Option<Fork> {
    let drawn = from.collection.keys.get(&from.key)?;
    let place = from.made.places.get(&number)?;
    let forks = &from.made.layer.forks;
    let asked = forks.get(place)?.ask.as_ref()?;
    let couplet = from.made.key.couplets.iter().find(|couplet| couplet.number == number)?;
    if couplet.ask.as_ref() != Some(asked) {
        return None;
    }
    let above = (0..=place.0.len()).rev().map(|length| Fork(place.0[..length].to_vec()));
    above.into_iter().find(|at| {
        drawn.questions.contains_key(at)
            && forks.get(at).is_some_and(|heap| heap.kinds.contains(&kind))
    })
}

/// So many kinds of a set are named, and so many sets; the others are counted.
const MOST: usize = 8;

/// A key that may leave kinds together.
#[derive(Clone, Copy)]
pub(crate) struct Together<'a> {
    pub(crate) t: Tongue,
    pub(crate) collection: &'a Collection,
    pub(crate) key: KeyId,
    pub(crate) made: &'a Made,
}

impl Together<'_> {
    fn left(&self) -> &[LeftTogether] {
        &self.made.opinion.left_together
    }

    /// Whether the key tells every kind from every other.
    pub(crate) fn none(&self) -> bool {
        self.left().is_empty()
    }

    fn finished(&self) -> bool {
        self.collection.keys.get(&self.key).is_some_and(|drawn| drawn.finished())
    }

    fn kinds(&self, left: &LeftTogether) -> Vec<KindId> {
        left.taxa
            .iter()
            .filter_map(|taxon| self.made.layer.kinds.get(taxon.0).copied())
            .collect()
    }

    /// The names of one set: `hazel and lime`.
    fn named(&self, left: &LeftTogether) -> String {
        let kinds = self.kinds(left);
        let names = kinds.iter().map(|kind| self.collection.name_in(self.key, *kind));
        joined(self.t, names.collect())
    }

    /// All sets by name, without a sentence: `hazel and lime; oak and elm`.
    pub(crate) fn names(&self) -> String {
        let first = self.left().iter().take(MOST).map(|left| self.named(left));
        let first = first.collect::<Vec<_>>().join("; ");
        match self.left().len().saturating_sub(MOST) {
            0 => first,
            more => self.t.count_with("key-together-more", more, &[("kinds", &first)]),
        }
    }

    /// Which kinds are left together, in a sentence; None: none.
    pub(crate) fn sentence(&self) -> Option<String> {
        let nothing_asked = self.made.key.couplets.is_empty();
        match self.left() {
            [] => None,
            [all] if nothing_asked => Some(self.t.count("key-together-all", all.taxa.len())),
            _ => Some(self.t.with("key-left-together", &[("kinds", &self.names())])),
        }
    }

    /// What would tell each set apart, a link each to where it can be said.
    pub(crate) fn needs(&self) -> Markup {
        let word = if self.finished() { "key-one-more-thing" } else { "key-one-more-question" };
        html! {
            ul.needs {
                @for left in self.left().iter().take(MOST) {
                    li {
                        a href=(self.address(left)) dir="auto" {
                            (self.t.with(word, &[("kinds", &self.named(left))]))
                        }
                    }
                }
            }
        }
    }

    /// Where one more thing can be said: the heap, where people asked all the way to it, or else
    /// a column of the table.
    fn address(&self, left: &LeftTogether) -> String {
        let place = left.after.map_or_else(
            || Some(Fork::default()),
            |step| Some(self.made.places.get(&step.couplet)?.after(step.answer == Answer::Yes)),
        );
        let open = place.filter(|at| {
            let heap = self.made.layer.forks.get(at).filter(|heap| heap.ask.is_none());
            heap.is_some_and(|heap| {
                self.kinds(left).iter().all(|kind| heap.kinds.contains(kind))
            })
        });
        match open {
            Some(at) => format!("/heaps?key={}&at={}", self.key.0, letters(&at)),
            None => "/table#new-character".to_owned(),
        }
    }

    /// All of it as the first thing that is to be mended; nothing where no kinds are left
    /// together.
    pub(crate) fn slip(&self) -> Markup {
        let t = self.t;
        let table_can = self.left().iter().any(|left| left.differ.is_some());
        let remedy = match (self.finished(), table_can) {
            (true, _) => "key-together-finished",
            (false, true) => "key-together-table-can",
            (false, false) => "key-together-look",
        };
        html! {
            @if let Some(sentence) = self.sentence() {
                div.finding.look #left-together {
                    p.severity { (t.say("severity-look")) }
                    p dir="auto" { (sentence) }
                    p.remedy { (t.say(remedy)) }
                    (self.needs())
                }
            }
        }
    }
}

/// Names as they are said one after another: `sallow, yew and alder`.
pub(crate) fn joined(t: Tongue, mut names: Vec<String>) -> String {
    let more = names.len().saturating_sub(MOST);
    names.truncate(MOST);
    if more > 0 {
        return t.count_with("key-together-more", more, &[("kinds", &names.join(", "))]);
    }
    match names.as_slice() {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => {
            t.with("share-pair", &[("one", &first.join(", ")), ("other", last)])
        }
    }
}
