//! A key as its screen reads it: where an answer leads, which kinds it leaves together, what is
//! missing where a kind goes both ways, and everywhere the way to mend it.
//!
//! From a key and its second opinion to names and addresses. Nothing is worked out here.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::guesses::{Missing, SaidAt};
use spinney_collection::keys::{KeyFrom, Made, letters};
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, Drawn};
use spinney_model::{Answer, Couplet, Fork, KeyId, KindId, LeftTogether, WhyNot};
use spinney_voice::Tongue;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::frame;
use crate::pages::heaps::place::way;

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

    /// The key with what it was made from.
    pub(super) fn from(&self) -> KeyFrom<'_> {
        let (collection, laid, made) = (self.collection, &*self.laid, &*self.made);
        KeyFrom { t: self.t, collection, laid, made, id: self.id }
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
            ("way", &self.made.asks_above(at)),
            ("asks", &self.made.asks_at(at)),
            ("back", &self.address(Some(at))),
        ])
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

/// Where a person says what is missing of a kind.
pub(crate) fn address_of(key: KeyId, kind: KindId, missing: &Missing) -> String {
    let kind = kind.0;
    match &missing.at {
        SaidAt::Table(at) => {
            format!("/table?kind={kind}&character={0}#c-{kind}-{0}", at.0)
        }
        SaidAt::Heap(at) => {
            format!("/heaps?key={}&at={}#card-{kind}", key.0, letters(at))
        }
        SaidAt::Kind => format!("/finds/{kind}"),
    }
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
