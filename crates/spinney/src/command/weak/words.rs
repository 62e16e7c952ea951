//! Where a table is weak in a teacher's words: from what the second opinion worked out to
//! headings with a few plain sentences.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::{Display, Write};

use spinney_model::{CharacterIx, Fewest, Hope, Look, Matrix, TaxonIx, Weak};
use spinney_voice::Tongue;

use crate::report::{self, Ink};

/// So many pairs of a sort are named; the others are counted.
pub(crate) const PAIRS_NAMED: usize = 12;
/// So many kinds are named in one sentence about a cell; the others are counted.
const KINDS_NAMED: usize = 6;
/// So many smallest sets are written out; JSON has up to 20.
const SETS_NAMED: usize = 5;

/// The whole answer; at most so many pairs of a sort by name.
pub(crate) fn weak(ink: &Ink, matrix: &Matrix, weak: &Weak, most: usize) -> String {
    let t = ink.t();
    let mut text = Text { t, matrix, most, text: String::new() };
    let kinds = t.count("weak-kinds", matrix.taxa().len());
    let columns = t.count("weak-columns", matrix.characters().len());
    match weak.pairs {
        None => {
            let texts: [(&str, &dyn Display); 2] = [("kinds", &kinds), ("columns", &columns)];
            text.say(&t.with("weak-too-many", &texts));
            text.say(&t.say("weak-smaller"));
            return text.text;
        }
        Some(0) => {
            text.say(&t.with("weak-nothing-to-tell", &[("kinds", &kinds)]));
            return text.text;
        }
        Some(pairs) => {
            let texts: [(&str, &dyn Display); 4] = [
                ("kinds", &kinds),
                ("columns", &columns),
                ("pairs", &t.count("weak-pairs", pairs)),
                ("distances", &distances(t, &weak.distances)),
            ];
            text.say(&t.with("weak-all", &texts));
        }
    }
    if !weak.alike.is_empty() {
        text.heading(ink, "weak-alike");
        text.alike(weak);
    }
    text.heading(ink, "weak-fragile");
    text.fragile(weak);
    text.heading(ink, "weak-next");
    text.next(weak);
    text.heading(ink, "weak-once");
    text.once(weak);
    text.heading(ink, "weak-twice");
    text.twice(weak);
    text.text
}

struct Text<'m> {
    t: Tongue,
    matrix: &'m Matrix,
    most: usize,
    text: String,
}

/// How the smallest sets of columns are said: one set, several, and what all of these do.
struct Sets {
    one: &'static str,
    several: &'static str,
    which: String,
}

impl Text<'_> {
    fn heading(&mut self, ink: &Ink, heading: &str) {
        let _ = writeln!(self.text, "\n{}", ink.bold(&self.t.say(heading)));
    }

    fn say(&mut self, sentence: &str) {
        report::push_wrapped(&mut self.text, "  ", sentence);
    }

    fn alike(&mut self, weak: &Weak) {
        for (hope, says) in [
            (Hope::NewDifference, "weak-new-difference"),
            (Hope::OneBlank, "weak-one-blank"),
            (Hope::SeveralBlanks, "weak-several-blanks"),
        ] {
            let alike = weak.alike.iter().filter(|alike| alike.hope == hope);
            let pairs: Vec<_> = alike.map(|alike| alike.taxa).collect();
            if !pairs.is_empty() {
                let pairs = self.pairs(&pairs);
                self.say(&self.t.with(says, &[("pairs", &pairs)]));
            }
        }
    }

    fn fragile(&mut self, weak: &Weak) {
        let mut by_column: BTreeMap<CharacterIx, Vec<[TaxonIx; 2]>> = BTreeMap::new();
        for pair in &weak.fragile {
            by_column.entry(pair.character).or_default().push(pair.taxa);
        }
        if by_column.is_empty() {
            self.say(&self.t.say(match weak.alike.is_empty() {
                true => "weak-none-fragile",
                false => "weak-none-fragile-but",
            }));
            return;
        }
        for (column, pairs) in by_column {
            let pairs = self.pairs(&pairs);
            let texts: [(&str, &dyn Display); 2] =
                [("column", &self.column(column)), ("pairs", &pairs)];
            self.say(&self.t.with("weak-only", &texts));
        }
        self.say(&self.t.count("weak-wrong-kind", weak.fragile.len()));
    }

    fn next(&mut self, weak: &Weak) {
        if weak.next.is_empty() && weak.useful_blanks == 0 {
            self.say(&self.t.say(match weak.alike.is_empty() && weak.fragile.is_empty() {
                true => "weak-nothing-needed",
                false => "weak-no-blank",
            }));
            return;
        }
        for (place, look) in weak.next.iter().enumerate() {
            let line = self.look(place + 1, look);
            self.say(&line);
        }
        match weak.useful_blanks - weak.next.len() {
            0 => {}
            more => {
                let all: [(&str, &dyn Display); 1] = [("all", &weak.useful_blanks)];
                self.say(&self.t.count_with("weak-more-blanks", more, &all));
            }
        }
    }

    /// `1. stalk length of dog rose: could tell it from rowan.`
    fn look(&self, place: usize, look: &Look) -> String {
        let could = [
            (&look.parts, "weak-look-tells"),
            (&look.with_others, "weak-look-with-others"),
            (&look.secures, "weak-look-second"),
        ];
        let could = could.into_iter().filter(|(kinds, _)| !kinds.is_empty());
        let could =
            could.map(|(kinds, says)| self.t.with(says, &[("kinds", &self.kinds(kinds))]));
        let could = could.collect::<Vec<_>>().join("; ");
        let texts: [(&str, &dyn Display); 4] = [
            ("place", &place),
            ("column", &self.column(look.character)),
            ("kind", &self.kind(look.taxon)),
            ("could", &could),
        ];
        self.t.with("weak-look", &texts)
    }

    fn once(&mut self, weak: &Weak) {
        let fewest = &weak.once;
        if fewest.best == 0 {
            self.say(&self.t.say("weak-no-column"));
            return;
        }
        let [all, one, several] = match weak.alike.is_empty() {
            true => ["weak-all-needed", "weak-set-tells", "weak-sets-tell"],
            false => ["weak-all-needed-but", "weak-set-tells-but", "weak-sets-tell-but"],
        };
        if self.all_columns(fewest) {
            self.say(&self.t.count(all, fewest.best));
            return;
        }
        self.sets(fewest, &Sets { one, several, which: String::new() });
        self.proof(fewest);
        let needed = fewest.indispensable.len();
        if fewest.sets.len() == 1 && 0 < needed && needed < fewest.best {
            let columns = self.columns(&fewest.indispensable);
            let texts: [(&str, &dyn Display); 1] = [("columns", &columns)];
            self.say(&self.t.count_with("weak-indispensable", needed, &texts));
        }
    }

    fn twice(&mut self, weak: &Weak) {
        let fewest = &weak.twice;
        if fewest.best == 0 {
            self.say(&self.t.say("weak-no-column"));
            return;
        }
        if weak.distances.iter().skip(2).all(|pairs| *pairs == 0) {
            self.say(&self.t.say("weak-no-two"));
            return;
        }
        let every_pair = weak.fragile.is_empty() && weak.alike.is_empty();
        let which = self.t.say(match (every_pair, weak.fragile.is_empty()) {
            (true, _) => "weak-every-pair",
            (false, true) => "weak-every-pair-but-alike",
            (false, false) => "weak-every-pair-but-above",
        });
        if self.all_columns(fewest) {
            let texts: [(&str, &dyn Display); 2] =
                [("columns", &fewest.best), ("which", &which)];
            self.say(&self.t.with("weak-all-for-two", &texts));
        } else {
            let (one, several) = ("weak-set-shows-two", "weak-sets-show-two");
            self.sets(fewest, &Sets { one, several, which });
            self.proof(fewest);
        }
        self.say(&self.t.say(if every_pair { "weak-notice" } else { "weak-notice-but" }));
    }

    /// The smallest sets, with what they do.
    fn sets(&mut self, fewest: &Fewest, sets: &Sets) {
        let t = self.t;
        let count = fewest.best;
        let which: (&str, &dyn Display) = ("which", &sets.which);
        if let [only] = fewest.sets.as_slice() {
            let columns = self.columns(only);
            self.say(&t.count_with(sets.one, count, &[("columns", &columns), which]));
            return;
        }
        let always = &fewest.indispensable;
        let with = match always.is_empty() {
            true => t.say("weak-any"),
            false => t.with("weak-always", &[("columns", &self.columns(always))]),
        };
        self.say(&t.count_with(sets.several, count, &[("with", &with), which]));
        for set in fewest.sets.iter().take(SETS_NAMED) {
            let columns = self.columns(&(set - always));
            self.say(&t.with("weak-choice", &[("columns", &columns)]));
        }
        match fewest.sets.len().saturating_sub(SETS_NAMED) {
            _ if !fewest.all => self.say(&t.say("weak-choice-others")),
            0 => {}
            more => self.say(&t.count("weak-choice-more", more)),
        }
    }

    /// Whether nothing less than the whole table does it.
    fn all_columns(&self, fewest: &Fewest) -> bool {
        fewest.proved() && fewest.best > 1 && fewest.best == self.matrix.characters().len()
    }

    fn proof(&mut self, fewest: &Fewest) {
        let texts: [(&str, &dyn Display); 2] =
            [("least", &fewest.at_least), ("best", &fewest.best)];
        self.say(&match fewest.proved() {
            true => self.t.say("weak-proved"),
            false => self.t.with("weak-not-proved", &texts),
        });
    }

    /// `hazel from lime and elm; rowan from ash; and 3 more pairs`
    fn pairs(&self, pairs: &[[TaxonIx; 2]]) -> String {
        let named = &pairs[..pairs.len().min(self.most)];
        let mut said: Vec<String> = named
            .chunk_by(|[one, _], [other, _]| one == other)
            .map(|pairs| {
                let others = pairs.iter().map(|[_, other]| self.kind(*other));
                let others = self.listed(others.map(str::to_owned).collect(), 0);
                let one = self.kind(pairs[0][0]);
                self.t.with("weak-pair-from", &[("one", &one), ("others", &others)])
            })
            .collect();
        match pairs.len() - named.len() {
            0 => {}
            more => said.push(self.t.count("weak-and-more-pairs", more)),
        }
        said.join("; ")
    }

    fn kinds(&self, kinds: &[TaxonIx]) -> String {
        let names = kinds.iter().take(KINDS_NAMED).map(|kind| self.kind(*kind).to_owned());
        let names: Vec<String> = names.collect();
        let more = kinds.len() - names.len();
        self.listed(names, more)
    }

    fn columns(&self, columns: &BTreeSet<CharacterIx>) -> String {
        self.listed(columns.iter().map(|at| self.column(*at).to_owned()).collect(), 0)
    }

    /// `a, b and c`, or `a, b and 3 more`: all of the names, however many.
    fn listed(&self, mut names: Vec<String>, more: usize) -> String {
        if more > 0 {
            let before: [(&str, &dyn Display); 1] = [("before", &names.join(", "))];
            return self.t.count_with("list-and-more", more, &before);
        }
        let Some(last) = names.pop() else { return String::new() };
        match names.is_empty() {
            true => last,
            false => {
                let before = names.join(", ");
                self.t.with("list-and", &[("before", &before), ("last", &last)])
            }
        }
    }

    fn column(&self, column: CharacterIx) -> &str {
        &self.matrix.character(column).name
    }

    fn kind(&self, kind: TaxonIx) -> &str {
        &self.matrix.taxon(kind).name
    }
}

/// `1 cannot be told apart, 5 differ in one column, 4 in 2`
fn distances(t: Tongue, distances: &[usize]) -> String {
    let mut said: Vec<String> = Vec::new();
    let mut columns_said = false;
    for (columns, pairs) in distances.iter().enumerate().filter(|(_, pairs)| **pairs > 0) {
        said.push(match columns {
            0 => t.count("weak-alike-count", *pairs),
            _ if columns_said => {
                t.count_with("weak-differ-too", *pairs, &[("columns", &columns)])
            }
            _ => {
                columns_said = true;
                let columns = t.count("weak-columns", columns);
                t.count_with("weak-differ", *pairs, &[("columns", &columns)])
            }
        });
    }
    said.join(", ")
}
