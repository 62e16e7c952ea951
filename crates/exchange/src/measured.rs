//! What was measured of leaves as separated values: a row a leaf.
//!
//! From measured pictures, each with the name of its file, to RFC 4180 (2005). Each measure has a
//! column with its unit and one for its ±; what could not be measured is `?`, as in a table that
//! people type. The words are English in every language: programs read them.

mod form;
pub(crate) mod words;

use spinney_model::{Measurand, MeasuredIn, MeasuredPicture};

/// The rows of all leaves, with a heading.
pub fn csv(pictures: &[(String, MeasuredPicture)]) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let mut heading: Vec<String> = ["picture", "leaf", "dpi", "scale"].map(String::from).into();
    for what in Measurand::ALL {
        let name = words::measurand(what);
        heading.push(match what.unit() {
            MeasuredIn::Ratio => name.to_owned(),
            unit => format!("{name} ({})", unit.sign()),
        });
        heading.push(format!("± {name}"));
    }
    heading.extend(form::HEADING.map(String::from));
    heading.push("notes".to_owned());
    let mut rows = vec![heading];
    for (file, picture) in pictures {
        for leaf in &picture.leaves {
            let dpi = picture.scale.mm().map_or("?".to_owned(), |mm| number(25.4 / mm, 1));
            let scale = words::scale(picture.scale).to_owned();
            let mut row = vec![file.clone(), leaf.number.to_string(), dpi, scale];
            for measure in &leaf.measures {
                match measure {
                    Ok(measure) => {
                        let decimals = decimals(measure.plus_minus);
                        let both = [measure.value, measure.plus_minus];
                        row.extend(both.map(|value| number(value, decimals)));
                    }
                    Err(_) => row.extend(["?", "?"].map(String::from)),
                }
            }
            row.extend(form::cells(&leaf.form));
            let notes: Vec<&str> = leaf.notes.iter().map(|note| words::note(*note)).collect();
            row.push(notes.join("; "));
            rows.push(row);
        }
    }
    for row in rows {
        writer.write_record(row).expect("a row of text can be written into memory");
    }
    let bytes = writer.into_inner().expect("it is in memory");
    String::from_utf8(bytes).expect("texts were written")
}

/// So many that the ± has two digits.
fn decimals(plus_minus: f64) -> usize {
    if plus_minus > 0.0 {
        (1.0 - plus_minus.log10().floor()).clamp(0.0, 6.0) as usize
    } else {
        3
    }
}

/// Without noughts at its end.
fn number(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.').to_owned(),
        false => text,
    }
}

#[cfg(test)]
mod tests;
