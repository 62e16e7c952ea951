//! Good questions to begin with: what can be seen on leaves, twigs, pond animals, seeds, shells and
//! shapes, for a table in which nothing stands yet.
//!
//! From the list to the fields of a character's sheet, in the language of the person. It says of no
//! kind how it looks: that is for people to see. The names and their words are messages; which
//! word of the word list explains it stands here.
//!
//! Source: the leaf characters follow Ellis et al. 2009, *Manual of Leaf Architecture* (from
//! memory); the others, where each is seen and how hard it is are common practice, without a source.

mod looks;

use spinney_model::CharacterField as Field;

use crate::Tongue;

pub use looks::{Look, SEEN, seen_in};

/// What a question is about; the questions of a group are offered together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum About {
    /// The whole leaf.
    Leaf,
    /// Its edge.
    Edge,
    /// Its lobes.
    Lobes,
    /// Its stalk.
    Stalk,
    /// The twig that it grows on.
    Twig,
    /// What a hand feels, and how the surface looks.
    Feel,
    /// Animals from a pond.
    Pond,
    /// Seeds and fruits.
    Seeds,
    /// Shells.
    Shells,
    /// Shapes of paper, to practise with.
    Shapes,
}

impl About {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 10] = [
        Self::Leaf,
        Self::Edge,
        Self::Lobes,
        Self::Stalk,
        Self::Twig,
        Self::Feel,
        Self::Pond,
        Self::Seeds,
        Self::Shells,
        Self::Shapes,
    ];

    /// Its name.
    pub fn name(self, t: Tongue) -> String {
        t.say(match self {
            Self::Leaf => "start-about-leaf",
            Self::Edge => "start-about-edge",
            Self::Lobes => "start-about-lobes",
            Self::Stalk => "start-about-stalk",
            Self::Twig => "start-about-twig",
            Self::Feel => "start-about-feel",
            Self::Pond => "start-about-pond",
            Self::Seeds => "start-about-seeds",
            Self::Shells => "start-about-shells",
            Self::Shapes => "start-about-shapes",
        })
    }
}

/// What its column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Holds {
    /// States, which the message lists.
    States,
    /// Yes or no: its name is a question of its own.
    YesNo,
    /// Whole numbers.
    Counts,
    /// A length, in this unit.
    Length(&'static str),
}

/// A question to begin with.
#[derive(Debug, PartialEq, Eq)]
pub struct Starter {
    /// By this its messages and its place in a form are named: `leaf-form`.
    pub id: &'static str,
    /// What it is about.
    pub about: About,
    /// The words of the word list that explain it.
    pub words: &'static [&'static str],
    holds: Holds,
    seen_on: &'static str,
    difficulty: &'static str,
    by_touch: bool,
    /// It can only be asked where another one has one of these states (by their places).
    when: Option<(&'static str, &'static [usize])>,
}

/// The answers to what is asked with yes or no, as the sheet has them.
const YES_NO: [&str; 2] = ["yes", "no"];
const LEAF: &str = "twig, leaf, rubbing, photograph";
const ON_TWIG: &str = "tree, twig";
const TRAY: &str = "tray";
const ONE_PIECE: Option<(&str, &[usize])> = Some(("leaf-form", &[0]));

/// A question about states that are easy to see.
const fn states(
    about: About,
    id: &'static str,
    seen_on: &'static str,
    words: &'static [&'static str],
) -> Starter {
    let (holds, difficulty) = (Holds::States, "easy");
    Starter { id, about, words, holds, seen_on, difficulty, by_touch: false, when: None }
}

/// The questions, group by group, those first that most begin with.
pub static STARTERS: [Starter; 39] = {
    use About::{Edge, Feel, Leaf, Lobes, Pond, Seeds, Shapes, Shells, Stalk, Twig};
    [
        states(Leaf, "leaf-form", LEAF, &["compound", "feather", "hand-shaped"]),
        Starter {
            holds: Holds::Counts,
            when: Some(("leaf-form", &[1, 2])),
            ..states(Leaf, "leaflets", LEAF, &["leaflet"])
        },
        Starter {
            holds: Holds::Length("mm"),
            difficulty: "fair",
            when: ONE_PIECE,
            ..states(Leaf, "blade-length", "twig, leaf, rubbing", &["blade"])
        },
        Starter {
            when: ONE_PIECE,
            ..states(Leaf, "widest-part", LEAF, &["egg-shaped", "oval"])
        },
        states(Leaf, "leaf-tip", LEAF, &["tip", "pointed"]),
        Starter {
            difficulty: "fair",
            when: ONE_PIECE,
            ..states(Leaf, "leaf-base", LEAF, &["base", "heart-shaped"])
        },
        Starter {
            holds: Holds::YesNo,
            difficulty: "fair",
            when: ONE_PIECE,
            ..states(Leaf, "lopsided-base", LEAF, &["lopsided"])
        },
        states(Edge, "leaf-edge", LEAF, &["edge", "toothed", "wavy", "spine"]),
        Starter {
            difficulty: "fair",
            when: Some(("leaf-edge", &[1])),
            ..states(Edge, "teeth-sizes", LEAF, &["double-toothed", "toothed"])
        },
        Starter { when: ONE_PIECE, ..states(Lobes, "leaf-lobes", LEAF, &["lobed", "unlobed"]) },
        Starter {
            difficulty: "fair",
            when: Some(("leaf-lobes", &[0])),
            ..states(Lobes, "how-lobed", LEAF, &["hand-shaped", "feather"])
        },
        Starter {
            holds: Holds::Counts,
            difficulty: "fair",
            when: Some(("leaf-lobes", &[0])),
            ..states(Lobes, "lobe-count", LEAF, &["lobe", "gap"])
        },
        Starter {
            holds: Holds::Length("mm"),
            difficulty: "fair",
            ..states(Stalk, "stalk-length", "twig, leaf, rubbing", &["leaf stalk"])
        },
        Starter {
            holds: Holds::YesNo,
            difficulty: "hard",
            ..states(Stalk, "stalk-knobs", "tree, twig, leaf", &["gland", "leaf stalk"])
        },
        states(Twig, "leaf-places", ON_TWIG, &["opposite", "alternate", "whorl"]),
        Starter {
            holds: Holds::YesNo,
            ..states(Twig, "twig-spikes", "tree, twig, winter twig", &["thorn", "prickle"])
        },
        Starter {
            difficulty: "fair",
            ..states(Twig, "bud-places", "tree, twig, winter twig", &["bud"])
        },
        Starter {
            difficulty: "fair",
            by_touch: true,
            ..states(Feel, "leaf-feel", "tree, twig, leaf", &["smooth", "hair"])
        },
        states(Feel, "leaf-shine", "tree, twig, leaf", &["shiny"]),
        Starter {
            holds: Holds::YesNo,
            difficulty: "fair",
            ..states(Feel, "leaf-hairs", "tree, twig, leaf", &["hair", "underside"])
        },
        Starter { holds: Holds::YesNo, ..states(Pond, "pond-shell", TRAY, &["shell", "case"]) },
        Starter { holds: Holds::Counts, ..states(Pond, "pond-legs", TRAY, &["jointed"]) },
        Starter {
            holds: Holds::Counts,
            difficulty: "fair",
            ..states(Pond, "pond-tails", TRAY, &["tail"])
        },
        Starter { holds: Holds::YesNo, ..states(Pond, "pond-case", TRAY, &["case", "shell"]) },
        states(Pond, "pond-moves", TRAY, &[]),
        Starter {
            holds: Holds::YesNo,
            difficulty: "fair",
            ..states(Pond, "pond-gills", TRAY, &["gill"])
        },
        states(Seeds, "seed-travels", TRAY, &["wing"]),
        states(Seeds, "fruit-form", TRAY, &["pod", "cone", "nut", "berry"]),
        Starter {
            holds: Holds::Length("mm"),
            difficulty: "fair",
            ..states(Seeds, "seed-length", TRAY, &["seed"])
        },
        Starter { by_touch: true, ..states(Seeds, "seed-feel", TRAY, &["rib"]) },
        states(Shells, "shell-pieces", TRAY, &["shell"]),
        Starter {
            when: Some(("shell-pieces", &[0])),
            ..states(Shells, "shell-form", TRAY, &["coiled", "spiral"])
        },
        Starter {
            difficulty: "fair",
            when: Some(("shell-form", &[0])),
            ..states(Shells, "shell-mouth", TRAY, &["mouth"])
        },
        Starter { holds: Holds::YesNo, ..states(Shells, "shell-ribs", TRAY, &["rib"]) },
        Starter {
            holds: Holds::Length("mm"),
            difficulty: "fair",
            ..states(Shells, "shell-length", TRAY, &["shell"])
        },
        states(Shapes, "shape-line", TRAY, &[]),
        Starter {
            holds: Holds::Counts,
            when: Some(("shape-line", &[0])),
            ..states(Shapes, "shape-corners", TRAY, &[])
        },
        Starter {
            when: Some(("shape-line", &[0])),
            difficulty: "fair",
            ..states(Shapes, "shape-sides", TRAY, &[])
        },
        Starter { holds: Holds::YesNo, ..states(Shapes, "shape-hole", TRAY, &[]) },
    ]
};

impl Starter {
    /// The one of this name.
    pub fn named(id: &str) -> Option<&'static Self> {
        STARTERS.iter().find(|starter| starter.id == id)
    }

    /// What its column is called.
    pub fn name(&self, t: Tongue) -> String {
        t.say(&format!("start-{}", self.id))
    }

    /// Its question as a child reads it, of one of its states or numbers.
    pub fn example(&self, t: Tongue) -> String {
        let first = match self.holds {
            Holds::YesNo => return self.name(t),
            Holds::States => self.states(t).into_iter().next().unwrap_or_default(),
            Holds::Counts => t.say("start-some-count"),
            Holds::Length(_) => t.say("start-some-length"),
        };
        t.with(&format!("start-{}-question", self.id), &[("state", &first)])
    }

    /// Its states, where it has some.
    pub fn states(&self, t: Tongue) -> Vec<String> {
        match self.holds {
            Holds::States => {
                let all = t.say(&format!("start-{}-states", self.id));
                all.split("; ").map(str::to_owned).collect()
            }
            Holds::YesNo | Holds::Counts | Holds::Length(_) => Vec::new(),
        }
    }

    /// What can be typed into its column where that is words: its states, or yes and no as the sheet has
    /// them, which its reader knows in every language.
    pub fn answers(&self, t: Tongue) -> Vec<String> {
        match self.holds {
            Holds::YesNo => YES_NO.map(str::to_owned).to_vec(),
            Holds::States | Holds::Counts | Holds::Length(_) => self.states(t),
        }
    }

    /// What a person minds who fills it in.
    pub fn hint(&self, t: Tongue) -> String {
        let own = format!("start-{}-hint", self.id);
        if t.has(&own) {
            return t.say(&own);
        }
        t.say(match self.holds {
            Holds::States => "start-hint-states",
            Holds::YesNo => "start-hint-yes-no",
            Holds::Counts => "start-hint-counts",
            Holds::Length(_) => "start-hint-length",
        })
    }

    /// The one whose states say whether this can be asked at all.
    pub fn governor(&self) -> Option<&'static Self> {
        self.when.and_then(|(id, _)| Self::named(id))
    }

    /// The same, and the states of it of which this can be asked.
    pub fn governing(&self, t: Tongue) -> Option<(&'static Self, Vec<String>)> {
        let (id, of) = self.when?;
        let governor = Self::named(id)?;
        let states = governor.states(t);
        Some((governor, of.iter().map(|at| states[*at].clone()).collect()))
    }

    /// The fields of its sheet, but its name. `governed`: the one that it hangs on is in the table, by the
    /// name that it has in this language.
    pub fn fields(&self, t: Tongue, governed: bool) -> Vec<(Field, String)> {
        let word = |text: &str| text.to_owned();
        let (values, unit, states) = match self.holds {
            Holds::States => ("words", "", self.states(t).join("; ")),
            Holds::YesNo => ("words", "", YES_NO.join("; ")),
            Holds::Counts => ("counts", "count", String::new()),
            Holds::Length(unit) => ("measure", unit, String::new()),
        };
        let question = match self.holds {
            Holds::YesNo => String::new(),
            _ => t.with(&format!("start-{}-question", self.id), &[("state", &"{}")]),
        };
        let governing = self.governing(t).filter(|_| governed);
        let when = governing.map_or_else(String::new, |(governor, of)| {
            // The sheet's own words, which its reader knows in every language.
            format!("{} = {}", governor.name(t), of.join(" or "))
        });
        let fields = [
            (Field::Question, question),
            (Field::Values, word(values)),
            (Field::States, states),
            (Field::Unit, word(unit)),
            (Field::SeenOn, word(self.seen_on)),
            (Field::Difficulty, word(self.difficulty)),
            (Field::ByTouch, word(if self.by_touch { "yes" } else { "" })),
            (Field::AppliesWhen, when),
        ];
        fields.into_iter().filter(|(_, text)| !text.is_empty()).collect()
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn each_has_a_name_of_its_own_and_words_that_the_list_has() {
        for t in Tongue::all() {
            let names: BTreeSet<String> = STARTERS.iter().map(|one| one.name(t)).collect();
            assert_eq!(names.len(), STARTERS.len(), "no two columns have one name");
            for one in &STARTERS {
                let states: BTreeSet<String> = one.states(t).into_iter().collect();
                assert_eq!(states.len(), one.states(t).len(), "{}: every state once", one.id);
                assert!(one.holds != Holds::States || states.len() >= 2, "{}", one.id);
                let example = one.example(t);
                assert!(example.ends_with('?') && !example.contains('{'), "{example}");
                for word in one.words {
                    assert!(crate::glossary::entry(t, word).is_some(), "{}: {word}", one.id);
                }
            }
        }
    }

    #[test]
    fn whoever_governs_stands_before_it_and_has_the_states() {
        for (at, one) in STARTERS.iter().enumerate() {
            let Some((id, of)) = one.when else { continue };
            let governor = STARTERS.iter().position(|other| other.id == id);
            assert!(governor.is_some_and(|governor| governor < at), "{}", one.id);
            let states =
                Starter::named(id).map_or(0, |it| it.states(Tongue::of_terminal()).len());
            assert!(of.iter().all(|state| *state < states) && of.len() < states, "{}", one.id);
        }
    }

    #[test]
    fn the_groups_stand_together_in_their_order() {
        let groups: Vec<About> = STARTERS.iter().map(|one| one.about).collect();
        assert!(groups.is_sorted());
        assert!(About::ALL.iter().all(|about| groups.contains(about)));
    }
}
