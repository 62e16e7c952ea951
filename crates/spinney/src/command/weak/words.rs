//! Where a table is weak in a teacher's words: from what the second opinion worked out to
//! headings with a few plain sentences.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

use spinney_model::{CharacterIx, Fewest, Hope, Look, Matrix, TaxonIx, Weak};

use crate::report::{self, Ink};

/// So many pairs of a sort are named; the others are counted.
pub(crate) const PAIRS_NAMED: usize = 12;
/// So many kinds are named in one sentence about a cell; the others are counted.
const KINDS_NAMED: usize = 6;
/// So many smallest sets are written out; JSON has up to 20.
const SETS_NAMED: usize = 5;

/// The whole answer; at most so many pairs of a sort by name.
pub(crate) fn weak(ink: &Ink, matrix: &Matrix, weak: &Weak, most: usize) -> String {
    let mut text = Text { matrix, most, text: String::new() };
    let (kinds, columns) = (matrix.taxa().len(), matrix.characters().len());
    let kinds = counted(kinds, "kind");
    match weak.pairs {
        None => {
            text.say(&format!(
                "{kinds} and {}: too many to compare each kind with each.",
                counted(columns, "column")
            ));
            text.say("Make a smaller table for one place and one group of kinds.");
            return text.text;
        }
        Some(0) => {
            text.say(&format!("{kinds}: there is nothing to tell apart."));
            return text.text;
        }
        Some(pairs) => text.say(&format!(
            "{kinds}, {}, {} of kinds: {}.",
            counted(columns, "column"),
            counted(pairs, "pair"),
            distances(&weak.distances)
        )),
    }
    if !weak.alike.is_empty() {
        text.heading(ink, "Not told apart yet");
        text.alike(weak);
    }
    text.heading(ink, "Told apart by one column only");
    text.fragile(weak);
    text.heading(ink, "Go and look next");
    text.next(weak);
    text.heading(ink, "The fewest columns");
    text.once(weak);
    text.heading(ink, "If one answer may be wrong");
    text.twice(weak);
    text.text
}

struct Text<'m> {
    matrix: &'m Matrix,
    most: usize,
    text: String,
}

impl Text<'_> {
    fn heading(&mut self, ink: &Ink, heading: &str) {
        let _ = writeln!(self.text, "\n{}", ink.bold(heading));
    }

    fn say(&mut self, sentence: &str) {
        report::push_wrapped(&mut self.text, "  ", sentence);
    }

    fn alike(&mut self, weak: &Weak) {
        for (hope, says) in [
            (Hope::NewDifference, "Nothing tells these apart, so look for a new difference"),
            (Hope::OneBlank, "One more cell filled in could tell these apart (see below)"),
            (Hope::SeveralBlanks, "Only several cells filled in could tell these apart"),
        ] {
            let alike = weak.alike.iter().filter(|alike| alike.hope == hope);
            let pairs: Vec<_> = alike.map(|alike| alike.taxa).collect();
            if !pairs.is_empty() {
                let listed = self.pairs(&pairs);
                self.say(&format!("{says}: {listed}."));
            }
        }
    }

    fn fragile(&mut self, weak: &Weak) {
        let mut by_column: BTreeMap<CharacterIx, Vec<[TaxonIx; 2]>> = BTreeMap::new();
        for pair in &weak.fragile {
            by_column.entry(pair.character).or_default().push(pair.taxa);
        }
        if by_column.is_empty() {
            let all = if weak.alike.is_empty() { "Every pair" } else { "Every other pair" };
            self.say(&format!("None. {all} differs in two columns or more."));
            return;
        }
        for (column, pairs) in by_column {
            let listed = self.pairs(&pairs);
            self.say(&format!("Only {} tells {listed}.", self.quoted(column)));
        }
        let (one, several) = ("a second difference.", "a second difference for each.");
        let each = if weak.fragile.len() == 1 { one } else { several };
        self.say(&format!("One wrong answer there ends at the wrong kind. Look for {each}"));
    }

    fn next(&mut self, weak: &Weak) {
        if weak.next.is_empty() && weak.useful_blanks == 0 {
            self.say(if weak.alike.is_empty() && weak.fragile.is_empty() {
                "Nothing is needed."
            } else {
                "No blank cell would help. Look for a new difference and add it as a column."
            });
            return;
        }
        for (place, look) in weak.next.iter().enumerate() {
            let line = format!("{}. {}", place + 1, self.look(look));
            self.say(&line);
        }
        match weak.useful_blanks - weak.next.len() {
            0 => {}
            more => self.say(&format!(
                "{} could help as well (--next {} names them).",
                counted(more, "more blank cell"),
                weak.useful_blanks
            )),
        }
    }

    /// `stalk length of dog rose: could tell it from rowan`
    fn look(&self, look: &Look) -> String {
        let mut could = Vec::new();
        if !look.parts.is_empty() {
            could.push(format!("could tell it from {}", self.kinds(&look.parts)));
        }
        if !look.with_others.is_empty() {
            let kinds = self.kinds(&look.with_others);
            could.push(format!("with other blanks, could tell it from {kinds}"));
        }
        if !look.secures.is_empty() {
            let kinds = self.kinds(&look.secures);
            could.push(format!("could be a second difference from {kinds}"));
        }
        let (column, kind) = (self.column(look.character), self.kind(look.taxon));
        format!("{column} of {kind}: {}.", could.join("; "))
    }

    fn once(&mut self, weak: &Weak) {
        let fewest = &weak.once;
        let what = if weak.alike.is_empty() {
            "tell all kinds apart"
        } else {
            "tell apart whatever the whole table can"
        };
        if fewest.best == 0 {
            self.say("No column tells two of these kinds apart.");
            return;
        }
        if self.all_columns(fewest) {
            self.say(&format!(
                "All {} columns are needed to {what}: leave out any one of them, and two kinds \
                 can no longer be told apart.",
                fewest.best
            ));
            return;
        }
        self.sets(fewest, &format!("alone {what}"), &format!("alone {}", singular(what)));
        self.proof(fewest);
        let needed = fewest.indispensable.len();
        if fewest.sets.len() == 1 && 0 < needed && needed < fewest.best {
            let columns = self.columns(&fewest.indispensable);
            self.say(&format!("Indispensable {} {columns}.", is_or_are(needed)));
        }
    }

    fn twice(&mut self, weak: &Weak) {
        let fewest = &weak.twice;
        if fewest.best == 0 {
            self.say("No column tells two of these kinds apart.");
            return;
        }
        if weak.distances.iter().skip(2).all(|pairs| *pairs == 0) {
            self.say("No pair differs in two columns: every wrong answer goes unnoticed.");
            return;
        }
        let but = match (weak.fragile.len(), weak.alike.len()) {
            (0, 0) => "every pair",
            (0, _) => "every pair but those still alike",
            _ => "every pair but those above",
        };
        if self.all_columns(fewest) {
            let columns = fewest.best;
            self.say(&format!(
                "It takes all {columns} columns to show two differences in {but}."
            ));
        } else {
            let differences = format!("two differences in {but}");
            self.sets(fewest, &format!("show {differences}"), &format!("shows {differences}"));
            self.proof(fewest);
        }
        self.say(if but == "every pair" {
            "Whoever looks at all of them will notice one wrong answer."
        } else {
            "Whoever looks at all of them will notice one wrong answer, but for those pairs."
        });
    }

    /// The smallest sets with what they do, in the plural and in the singular.
    fn sets(&mut self, fewest: &Fewest, do_this: &str, does_this: &str) {
        let count = fewest.best;
        if fewest.sets.len() == 1 {
            let columns = self.columns(&fewest.sets[0]);
            self.say(&match count {
                1 => format!("The column {columns} {does_this}."),
                _ => format!("These {count} columns {do_this}: {columns}."),
            });
            return;
        }
        let always = &fewest.indispensable;
        let with = if always.is_empty() {
            "any of these choices".to_owned()
        } else {
            format!("{}, and any of these choices", self.columns(always))
        };
        self.say(&match count {
            1 => format!("One column {does_this}, any of these:"),
            _ => format!("{count} columns {do_this}: {with}:"),
        });
        for set in fewest.sets.iter().take(SETS_NAMED) {
            let line = format!("- {}", self.columns(&(set - always)));
            self.say(&line);
        }
        match fewest.sets.len().saturating_sub(SETS_NAMED) {
            _ if !fewest.all => self.say("- and others"),
            0 => {}
            more => self.say(&format!("- and {more} more")),
        }
    }

    /// Whether nothing less than the whole table does it.
    fn all_columns(&self, fewest: &Fewest) -> bool {
        fewest.proved() && fewest.best > 1 && fewest.best == self.matrix.characters().len()
    }

    fn proof(&mut self, fewest: &Fewest) {
        self.say(&if fewest.proved() {
            "Proved: fewer cannot do it.".to_owned()
        } else {
            format!(
                "Not proved: at least {} are needed, and with {} it can be done. A larger \
                 --budget goes on.",
                fewest.at_least, fewest.best
            )
        });
    }

    /// `hazel from lime and elm; rowan from ash; and 3 more pairs`
    fn pairs(&self, pairs: &[[TaxonIx; 2]]) -> String {
        let named = &pairs[..pairs.len().min(self.most)];
        let mut said: Vec<String> = named
            .chunk_by(|[one, _], [other, _]| one == other)
            .map(|pairs| {
                let others: Vec<&str> =
                    pairs.iter().map(|[_, other]| self.kind(*other)).collect();
                format!("{} from {}", self.kind(pairs[0][0]), listed(&others))
            })
            .collect();
        match pairs.len() - named.len() {
            0 => {}
            more => said.push(format!("and {}", counted(more, "more pair"))),
        }
        said.join("; ")
    }

    fn kinds(&self, kinds: &[TaxonIx]) -> String {
        let names: Vec<&str> =
            kinds.iter().take(KINDS_NAMED).map(|kind| self.kind(*kind)).collect();
        match kinds.len() - names.len() {
            0 => listed(&names),
            more => format!("{} and {more} more", names.join(", ")),
        }
    }

    fn columns(&self, columns: &BTreeSet<CharacterIx>) -> String {
        let names: Vec<&str> = columns.iter().map(|at| self.column(*at)).collect();
        listed(&names)
    }

    fn quoted(&self, column: CharacterIx) -> String {
        format!("\"{}\"", self.column(column))
    }

    fn column(&self, column: CharacterIx) -> &str {
        &self.matrix.character(column).name
    }

    fn kind(&self, kind: TaxonIx) -> &str {
        &self.matrix.taxon(kind).name
    }
}

/// `1 cannot be told apart, 5 differ in one column, 4 in 2`
fn distances(distances: &[usize]) -> String {
    let mut said: Vec<String> = Vec::new();
    let mut columns_said = false;
    for (columns, pairs) in distances.iter().enumerate().filter(|(_, pairs)| **pairs > 0) {
        said.push(match columns {
            0 if *pairs == 1 => "1 cannot be told apart".to_owned(),
            0 => format!("{pairs} cannot be told apart"),
            _ if columns_said => format!("{pairs} in {columns}"),
            _ => {
                columns_said = true;
                let differ = if *pairs == 1 { "differs" } else { "differ" };
                format!("{pairs} {differ} in {}", counted(columns, "column"))
            }
        });
    }
    said.join(", ")
}

/// "tell all kinds apart" of one column: "tells all kinds apart".
fn singular(what: &str) -> String {
    what.replacen("tell ", "tells ", 1)
}

fn is_or_are(count: usize) -> &'static str {
    if count == 1 { "is" } else { "are" }
}

/// `a, b and c`
fn listed(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [most @ .., last] => format!("{} and {last}", most.join(", ")),
    }
}

/// `1 pair`, `12 pairs`
fn counted(count: usize, word: &str) -> String {
    let plural = if count == 1 { "" } else { "s" };
    format!("{count} {word}{plural}")
}
