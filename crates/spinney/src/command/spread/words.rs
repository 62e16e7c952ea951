//! How leaves spread in a teacher's words: from what the second opinion worked out to headings
//! with a few plain sentences.

use std::collections::BTreeMap;
use std::fmt::{Display, Write};

use spinney_model::{
    Character, Cut, Matrix, Outlier, Quantity, Specimens, Spread, SpreadOf, TaxonIx, Trust,
};
use spinney_voice::Tongue;

use crate::report::{self, Ink};

/// So many pairs are named, those with the worst cuts first; the others are counted.
pub(crate) const PAIRS_NAMED: usize = 12;
/// So many outliers of a kind are named; the others are dots. JSON has all.
const OUTLIERS_NAMED: usize = 6;

/// The whole answer; at most so many pairs by name.
pub(crate) fn spread(
    ink: &Ink,
    (matrix, specimens): (&Matrix, &Specimens),
    spread: &Spread,
    most: usize,
) -> String {
    let t = ink.t();
    let mut text = Text { t, matrix, specimens, text: String::new() };
    let kinds = t.count("weak-kinds", matrix.taxa().len());
    let rows = specimens.written.len();
    text.say(0, &rows_of(t, rows, &kinds));
    if spread.of_kinds.is_empty() {
        text.say(0, &t.say("spread-nothing"));
        return text.text;
    }
    text.heading(ink, "spread-how-far");
    text.how_far(ink, spread);
    text.heading(ink, "spread-cuts");
    text.cuts(spread, most);
    text.text
}

fn rows_of(t: Tongue, rows: usize, kinds: &str) -> String {
    t.count_with("spread-all", rows, &[("kinds", &kinds)])
}

struct Text<'m> {
    t: Tongue,
    matrix: &'m Matrix,
    specimens: &'m Specimens,
    text: String,
}

impl Text<'_> {
    fn heading(&mut self, ink: &Ink, heading: &str) {
        let _ = writeln!(self.text, "\n{}", ink.bold(&self.t.say(heading)));
    }

    fn say(&mut self, deep: usize, sentence: &str) {
        report::push_wrapped(&mut self.text, &"  ".repeat(deep), sentence);
    }

    fn how_far(&mut self, ink: &Ink, spread: &Spread) {
        for at in self.matrix.character_indices() {
            let character = self.matrix.character(at);
            let of: Vec<&SpreadOf> =
                spread.of_kinds.iter().filter(|one| one.character == at).collect();
            if !of.is_empty() {
                let _ = writeln!(self.text, "  {}", ink.bold(&character.name));
            }
            for one in of {
                let deep = if one.part.is_some() { 3 } else { 2 };
                let sentence = self.one(character, one);
                self.say(deep, &sentence);
                if !one.outliers.is_empty() {
                    let sentence = self.outliers(character, &one.outliers);
                    self.say(3, &sentence);
                }
            }
        }
    }

    /// `hazel: 80 to 115 mm, mean 96 mm, standard deviation 18 mm (3 measured on 2 plants)`
    fn one(&self, character: &Character, one: &SpreadOf) -> String {
        let t = self.t;
        let name = one.part.as_deref().unwrap_or_else(|| self.kind(one.taxon));
        let mut measured = t.count("spread-measured", one.finds);
        if let Some(plants) = one.plants {
            let texts: [(&str, &dyn Display); 1] = [("measured", &measured)];
            measured = t.count_with("spread-measured-on", plants, &texts);
        }
        let Some(deviation) = one.deviation.filter(|_| one.least < one.most) else {
            let value = self.amount(character, one.least);
            let texts: [(&str, &dyn Display); 3] =
                [("name", &name), ("value", &value), ("measured", &measured)];
            return t.with("spread-of-one", &texts);
        };
        let low = t.decimal(&character.number(one.least));
        let high = self.amount(character, one.most);
        let span = t.with("run-span", &[("low", &low), ("high", &high)]);
        let [mean, deviation] =
            [one.mean, deviation].map(|value| self.rounded(character, value, deviation));
        let texts: [(&str, &dyn Display); 5] = [
            ("name", &name),
            ("span", &span),
            ("mean", &mean),
            ("deviation", &deviation),
            ("measured", &measured),
        ];
        t.with("spread-of", &texts)
    }

    fn outliers(&self, character: &Character, outliers: &[Outlier]) -> String {
        let t = self.t;
        let one = |one: &Outlier| {
            let value = self.amount(character, one.value);
            let texts: [(&str, &dyn Display); 2] =
                [("value", &value), ("find", &self.find(one.find))];
            t.with("spread-outlier", &texts)
        };
        let mut named: Vec<String> = outliers.iter().take(OUTLIERS_NAMED).map(one).collect();
        if outliers.len() > OUTLIERS_NAMED {
            named.push("…".to_owned());
        }
        let finds: [(&str, &dyn Display); 1] = [("finds", &named.join("; "))];
        t.count_with("spread-outliers", outliers.len(), &finds)
    }

    /// Which row, and what it is called there.
    fn find(&self, at: usize) -> String {
        let written = &self.specimens.written[at];
        let row = written.at.row + 1;
        let texts: [(&str, &dyn Display); 3] =
            [("row", &row), ("find", &written.find), ("picture", &written.picture)];
        let message = match (written.find.is_empty(), written.picture.is_empty()) {
            (true, _) => "spread-row",
            (false, true) => "spread-row-called",
            (false, false) => "spread-row-in",
        };
        self.t.with(message, &texts)
    }

    fn cuts(&mut self, spread: &Spread, most: usize) {
        let t = self.t;
        let Some(cuts) = &spread.cuts else {
            self.say(1, &t.say("spread-too-many-kinds"));
            return;
        };
        let pairs = best_of_pairs(cuts);
        if pairs.is_empty() {
            self.say(
                1,
                &t.say(match self.matrix.taxa().len() {
                    1 => "spread-one-kind",
                    _ => "spread-not-both",
                }),
            );
        }
        for cut in pairs.iter().take(most) {
            let sentences = self.cut(cut);
            self.say(1, &sentences[0]);
            sentences[1..].iter().for_each(|sentence| self.say(2, sentence));
        }
        match pairs.len().saturating_sub(most) {
            0 => {}
            more => self.say(1, &t.count("spread-more-pairs", more)),
        }
    }

    fn cut(&self, cut: &Cut) -> Vec<String> {
        let t = self.t;
        let character = self.matrix.character(cut.character);
        let [low, high] = cut.taxa.map(|taxon| self.kind(taxon));
        let at = self.amount(character, cut.at);
        let texts: [(&str, &dyn Display); 4] =
            [("low", &low), ("high", &high), ("about", &character.name), ("at", &at)];
        let mut said = vec![t.with("spread-cut", &texts)];
        said.push(match cut.margin {
            Some(margin) => {
                let margin = self.amount(character, margin);
                let all = cut.finds[0] + cut.finds[1];
                t.with("spread-none-wrong", &[("finds", &all), ("margin", &margin)])
            }
            None => {
                let texts: [(&str, &dyn Display); 6] = [
                    ("low-wrong", &cut.wrong[0]),
                    ("low-finds", &cut.finds[0]),
                    ("low", &low),
                    ("high-wrong", &cut.wrong[1]),
                    ("high-finds", &cut.finds[1]),
                    ("high", &high),
                ];
                t.with("spread-wrong", &texts)
            }
        });
        said.extend(self.expected(cut));
        said.extend(self.trust(cut));
        said
    }

    /// `Of 100 more, expect about 8 (each left out once) or 6 (normal theory) on the wrong side.`
    fn expected(&self, cut: &Cut) -> Option<String> {
        let t = self.t;
        let share = |message: &str, share: f64| {
            let share = t.decimal(&in_a_hundred(share));
            t.with(message, &[("share", &share)])
        };
        let left_out = cut.left_out_share().map(|one| share("spread-left-out", one));
        let normal = cut.normal_share().map(|one| share("spread-normal", one));
        let shares = match (left_out, normal) {
            (Some(one), Some(other)) => {
                t.with("spread-or", &[("one", &one), ("other", &other)])
            }
            (one, other) => one.or(other)?,
        };
        Some(t.with("spread-expect", &[("shares", &shares)]))
    }

    fn trust(&self, cut: &Cut) -> Vec<String> {
        let t = self.t;
        let kinds = |wanted: Trust| {
            let of = cut.taxa.iter().zip(cut.trust).filter(|(_, trust)| *trust == wanted);
            of.map(|(taxon, _)| self.kind(*taxon).to_owned()).collect::<Vec<_>>()
        };
        let mut said = Vec::new();
        for (trust, message) in
            [(Trust::Never, "spread-never"), (Trust::TooMany, "spread-too-many")]
        {
            let kinds = kinds(trust);
            if !kinds.is_empty() {
                said.push(t.with(message, &[("kinds", &spinney_voice::all(t, &kinds))]));
            }
        }
        let more = cut.taxa.iter().zip(cut.trust).filter_map(|(taxon, trust)| match trust {
            Trust::More(more) => {
                let kind: [(&str, &dyn Display); 1] = [("kind", &self.kind(*taxon))];
                Some(t.count_with("spread-more-of", more, &kind))
            }
            Trust::Enough | Trust::TooMany | Trust::Never => None,
        });
        let more: Vec<String> = more.collect();
        if said.is_empty() && !more.is_empty() {
            let more = spinney_voice::all(t, &more);
            said.push(t.with("spread-measure", &[("more", &more)]));
        }
        if said.is_empty() {
            said.push(t.say("spread-enough"));
        }
        said
    }

    fn kind(&self, kind: TaxonIx) -> &str {
        &self.matrix.taxon(kind).name
    }

    fn amount(&self, character: &Character, value: Quantity) -> String {
        self.t.decimal(&character.amount(value))
    }

    /// A mean or a deviation with as many digits as show two of the deviation.
    fn rounded(&self, character: &Character, value: f64, deviation: f64) -> String {
        let one = character.one().as_f64();
        let decimals = match deviation / one {
            deviation if deviation > 0.0 => (1.0 - deviation.log10().floor()).clamp(0.0, 3.0),
            _ => 3.0,
        };
        let number = self.t.decimal(&report::shown(value / one, decimals as usize));
        format!("{number} {}", character.sign()).trim_end().to_owned()
    }
}

/// The best cut of every two kinds, those with the most on the wrong side first.
fn best_of_pairs(cuts: &[Cut]) -> Vec<&Cut> {
    let expected = |cut: &Cut| {
        let left_out = cut.left_out_share().unwrap_or(1.0);
        (left_out, cut.normal_share().unwrap_or(1.0))
    };
    let better = |one: &Cut, other: &Cut| expected(one) < expected(other);
    let mut best = BTreeMap::<[TaxonIx; 2], &Cut>::new();
    for cut in cuts {
        let mut pair = cut.taxa;
        pair.sort_unstable();
        let known = best.entry(pair).or_insert(cut);
        if better(cut, known) {
            *known = cut;
        }
    }
    let mut pairs: Vec<&Cut> = best.into_values().collect();
    let order = |one: &&Cut, other: &&Cut| expected(other).partial_cmp(&expected(one));
    pairs.sort_by(|one, other| order(one, other).unwrap_or(std::cmp::Ordering::Equal));
    pairs
}

/// A share as a number of 100: `8`, or `0.4` where it is small.
fn in_a_hundred(share: f64) -> String {
    let number = share * 100.0;
    report::shown(number, if number < 10.0 { 1 } else { 0 })
}
