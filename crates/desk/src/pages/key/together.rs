//! Kinds that a key leaves together, by name, and where one more thing about them can be said.
//!
//! From the second opinion's list to a sentence and links. Nothing is worked out here: whoever
//! finished the key has asked all that the table can answer, so what is missing is a difference
//! that nobody has written down yet.

use maud::{Markup, html};
use spinney_model::{Answer, Fork, KeyId, KindId, LeftTogether};

use spinney_collection::Collection;
use spinney_collection::keys::Made;
use spinney_collection::keys::letters;
use spinney_voice::Tongue;

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
