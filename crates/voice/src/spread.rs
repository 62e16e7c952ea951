//! How leaves spread, in words: from the smallest to the largest, what is far from the others,
//! where to cut between two kinds and how far to trust that.
//!
//! From what `check` worked out to sentences in the language of a person. Numbers are in the unit
//! of their column.

use std::fmt::Display;

use spinney_model::{
    Character, Cut, Matrix, Outlier, Quantity, Specimens, SpreadOf, TaxonIx, Trust,
};

use crate::{Tongue, all};

/// So many outliers of a kind are named; the others are dots. JSON has all.
const OUTLIERS_NAMED: usize = 6;

/// How many leaves of how many kinds there are: `12 rows of 3 kinds.`
pub fn rows(t: Tongue, matrix: &Matrix, specimens: &Specimens) -> String {
    let kinds = t.count("weak-kinds", matrix.taxa().len());
    t.count_with("spread-all", specimens.written.len(), &[("kinds", &kinds)])
}

/// How many leaves of how many kinds are kept: `12 leaves of 3 kinds.`
pub fn leaves(t: Tongue, matrix: &Matrix, specimens: &Specimens) -> String {
    let kinds = t.count("weak-kinds", matrix.taxa().len());
    t.count_with("leaves-all", specimens.written.len(), &[("kinds", &kinds)])
}

/// `80–115 mm, 5 leaves of 2 plants`
pub fn reach(t: Tongue, matrix: &Matrix, one: &SpreadOf) -> String {
    let span = span(t, matrix.character(one.character), one.least, one.most);
    let mut leaves = t.count("leaves-count", one.finds);
    if let Some(plants) = one.plants {
        leaves = t.count_with("leaves-of-plants", plants, &[("leaves", &leaves)]);
    }
    t.with("leaves-reach-of", &[("span", &span), ("leaves", &leaves)])
}

/// A find far from the others: `hazel, blade length: 190 mm. The others are 82–104 mm.`
pub fn far_one(
    t: Tongue,
    matrix: &Matrix,
    one: &SpreadOf,
    outlier: &Outlier,
    (least, most): (Quantity, Quantity),
) -> String {
    let character = matrix.character(one.character);
    let (value, others) =
        (amount(t, character, outlier.value), span(t, character, least, most));
    let texts: [(&str, &dyn Display); 4] = [
        ("kind", &kind(matrix, one.taxon)),
        ("about", &character.name),
        ("value", &value),
        ("others", &others),
    ];
    t.with("leaves-far-one", &texts)
}

fn span(t: Tongue, character: &Character, least: Quantity, most: Quantity) -> String {
    let most_said = amount(t, character, most);
    match least == most {
        true => most_said,
        false => format!("{}–{most_said}", t.decimal(&character.number(least))),
    }
}

/// `hazel: 80 to 115 mm, mean 96 mm, standard deviation 18 mm (3 measured on 2 plants)`
pub fn of_kind(t: Tongue, matrix: &Matrix, one: &SpreadOf) -> String {
    let character = matrix.character(one.character);
    let name = one.part.as_deref().unwrap_or(&matrix.taxon(one.taxon).name);
    let mut measured = t.count("spread-measured", one.finds);
    if let Some(plants) = one.plants {
        measured = t.count_with("spread-measured-on", plants, &[("measured", &measured)]);
    }
    let Some(deviation) = one.deviation.filter(|_| one.least < one.most) else {
        let value = amount(t, character, one.least);
        let texts: [(&str, &dyn Display); 3] =
            [("name", &name), ("value", &value), ("measured", &measured)];
        return t.with("spread-of-one", &texts);
    };
    let low = t.decimal(&character.number(one.least));
    let high = amount(t, character, one.most);
    let span = t.with("run-span", &[("low", &low), ("high", &high)]);
    let [mean, deviation] =
        [one.mean, deviation].map(|value| rounded(t, character, value, deviation));
    let texts: [(&str, &dyn Display); 5] = [
        ("name", &name),
        ("span", &span),
        ("mean", &mean),
        ("deviation", &deviation),
        ("measured", &measured),
    ];
    t.with("spread-of", &texts)
}

/// Which finds of a kind are far from the others, with what to do; None: none is.
pub fn outliers(
    t: Tongue,
    matrix: &Matrix,
    specimens: &Specimens,
    one: &SpreadOf,
) -> Option<String> {
    let finds: [(&str, &dyn Display); 1] = [("finds", &far(t, matrix, specimens, one)?)];
    Some(t.count_with("spread-outliers", one.outliers.len(), &finds))
}

/// Which finds of a kind are far from the others: `160 mm (row 7)`; None: none is.
pub fn far(
    t: Tongue,
    matrix: &Matrix,
    specimens: &Specimens,
    one: &SpreadOf,
) -> Option<String> {
    let character = matrix.character(one.character);
    let named = one.outliers.iter().take(OUTLIERS_NAMED).map(|one| {
        let value = amount(t, character, one.value);
        let find = find(t, specimens, one.find);
        t.with("spread-outlier", &[("value", &value), ("find", &find)])
    });
    let mut named: Vec<String> = named.collect();
    if one.outliers.len() > OUTLIERS_NAMED {
        named.push("…".to_owned());
    }
    (!named.is_empty()).then(|| named.join("; "))
}

/// Which row of the table a find is, and what it is called there.
fn find(t: Tongue, specimens: &Specimens, at: usize) -> String {
    let written = &specimens.written[at];
    let row = written.at.row + 1;
    let texts: [(&str, &dyn Display); 3] =
        [("row", &row), ("find", &written.find), ("picture", &written.picture)];
    let message = match (written.find.is_empty(), written.picture.is_empty()) {
        (true, _) => "spread-row",
        (false, true) => "spread-row-called",
        (false, false) => "spread-row-in",
    };
    t.with(message, &texts)
}

/// Where to cut, how many are on the wrong side, how many to expect there, and how many more to
/// measure: a sentence each.
pub fn cut(t: Tongue, matrix: &Matrix, cut: &Cut) -> Vec<String> {
    let character = matrix.character(cut.character);
    let [low, high] = cut.taxa.map(|taxon| kind(matrix, taxon));
    let at = amount(t, character, cut.at);
    let texts: [(&str, &dyn Display); 4] =
        [("low", &low), ("high", &high), ("about", &character.name), ("at", &at)];
    let mut said = vec![t.with("spread-cut", &texts), sides(t, matrix, cut)];
    said.extend(left_out(t, cut));
    said.extend(cut.normal_share().map(|share| {
        let share = t.decimal(&in_a_hundred(share));
        t.with("spread-normal", &[("share", &share)])
    }));
    said.extend(trust(t, matrix, cut));
    said
}

fn sides(t: Tongue, matrix: &Matrix, cut: &Cut) -> String {
    let Some(margin) = cut.margin else {
        let [low, high] = cut.taxa.map(|taxon| kind(matrix, taxon));
        let texts: [(&str, &dyn Display); 6] = [
            ("low-wrong", &cut.wrong[0]),
            ("low-finds", &cut.finds[0]),
            ("low", &low),
            ("high-wrong", &cut.wrong[1]),
            ("high-finds", &cut.finds[1]),
            ("high", &high),
        ];
        return t.with("spread-wrong", &texts);
    };
    let margin = amount(t, matrix.character(cut.character), margin);
    let finds = cut.finds[0] + cut.finds[1];
    t.with("spread-none-wrong", &[("finds", &finds), ("margin", &margin)])
}

/// What comes out wrong where each is left out once. None of few is not none of all: of the kind
/// with fewer finds the share may still be so large (`docs/TRADE.md`, "How many to look at").
fn left_out(t: Tongue, cut: &Cut) -> Option<String> {
    let share = cut.left_out_share()?;
    if share > 0.0 {
        let share = t.decimal(&in_a_hundred(share));
        return Some(t.with("spread-left-out", &[("share", &share)]));
    }
    let fewest = cut.finds[0].min(cut.finds[1]);
    let still = 1.0 - 0.05_f64.powf(1.0 / fewest as f64);
    let still = t.decimal(&in_a_hundred(still));
    Some(t.with("spread-none-left-out", &[("finds", &fewest), ("still", &still)]))
}

fn trust(t: Tongue, matrix: &Matrix, cut: &Cut) -> Vec<String> {
    let kinds = |wanted: Trust| {
        let of = cut.taxa.iter().zip(cut.trust).filter(|(_, trust)| *trust == wanted);
        of.map(|(taxon, _)| kind(matrix, *taxon).to_owned()).collect::<Vec<_>>()
    };
    let mut said = Vec::new();
    for (trust, message) in
        [(Trust::Never, "spread-never"), (Trust::TooMany, "spread-too-many")]
    {
        let kinds = kinds(trust);
        if !kinds.is_empty() {
            said.push(t.with(message, &[("kinds", &all(t, &kinds))]));
        }
    }
    let more = cut.taxa.iter().zip(cut.trust).filter_map(|(taxon, trust)| match trust {
        Trust::More(more) => {
            let kind: [(&str, &dyn Display); 1] = [("kind", &kind(matrix, *taxon))];
            Some(t.count_with("spread-more-of", more, &kind))
        }
        Trust::Enough | Trust::TooMany | Trust::Never => None,
    });
    let more: Vec<String> = more.collect();
    if said.is_empty() && !more.is_empty() {
        said.push(t.with("spread-measure", &[("more", &all(t, &more))]));
    }
    if said.is_empty() {
        said.push(t.say("spread-enough"));
    }
    said
}

fn kind(matrix: &Matrix, kind: TaxonIx) -> &str {
    &matrix.taxon(kind).name
}

fn amount(t: Tongue, character: &Character, value: Quantity) -> String {
    t.decimal(&character.amount(value))
}

/// A mean or a deviation with as many digits as show two of the deviation.
fn rounded(t: Tongue, character: &Character, value: f64, deviation: f64) -> String {
    let one = character.one().as_f64();
    let decimals = match deviation / one {
        deviation if deviation > 0.0 => (1.0 - deviation.log10().floor()).clamp(0.0, 3.0),
        _ => 3.0,
    };
    let number = t.decimal(&shown(value / one, decimals as usize));
    format!("{number} {}", character.sign()).trim_end().to_owned()
}

/// A share as a number of 100: `8`, or `0.4` where it is small.
fn in_a_hundred(share: f64) -> String {
    let number = share * 100.0;
    shown(number, if number < 9.95 { 1 } else { 0 })
}

/// Without noughts at its end.
fn shown(number: f64, decimals: usize) -> String {
    let text = format!("{number:.decimals$}");
    match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    }
}

#[cfg(test)]
mod tests;
