//! The sheet `about`: for whom, where, when and on what the key is, and what is to be minded.
//!
//! From two columns, what and which, to the scene. A row may be there several times where it
//! holds several lines.

use spinney_model::{FieldIs, OfSheet, Place, Scene, limits};

use super::columns::{ABOUT, OfAbout};
use super::{grid::Grid, phrase::fold, report::Report};

/// Reads the sheet.
pub(super) fn read(grid: &Grid, report: &mut Report) -> Scene {
    let mut scene = Scene::default();
    for (at, (row, cells)) in grid.rows().enumerate() {
        let (column, what) = &cells[0];
        let text = cells.get(1).map(|(_, text)| text.clone());
        let folded = fold(what.trim_end_matches(':'));
        match ABOUT.iter().find(|row| row.headings.contains(&folded.as_str())) {
            Some(known) => {
                let said = text.as_deref().map(str::trim).filter(|text| !text.is_empty());
                let odd = said.filter(|said| known.counts && how_many(said).is_none());
                if let Some(odd) = odd {
                    let cell = grid.at(row, cells[1].0);
                    let odd = OfSheet::FieldOdd {
                        text: odd.to_owned(),
                        is: FieldIs::HowMany,
                        words: &[],
                        at: cell.clone().into(),
                    };
                    report.add(&format!("how many {}", grid.name), Place::Cell(cell), odd);
                }
                (known.read)(&mut scene, text);
            }
            // A heading over the two columns.
            None if at == 0 => {}
            None => {
                let usual = ABOUT.each_ref().map(|row| row.headings[0]);
                let not_read = OfSheet::RowNotRead {
                    text: what.clone(),
                    sheet: grid.name.clone(),
                    usual: usual.to_vec(),
                };
                let group = format!("about {}", grid.name);
                report.add(&group, grid.place(row, *column), not_read);
            }
        }
    }
    scene
}

/// Cautions of several rows are one text.
pub(super) fn caution(scene: &mut Scene, text: Option<String>) {
    let said = scene.caution.take().into_iter().chain(text);
    let said: Vec<String> = said.filter(|text| !text.is_empty()).collect();
    scene.caution = Some(said.join(" ")).filter(|said| !said.is_empty());
}

/// The lines of a text that say something, without the dashes that people put before them.
pub(super) fn lines(text: &str) -> impl Iterator<Item = String> {
    let bare = |line: &'_ str| -> usize {
        ["- ", "* ", "• "]
            .iter()
            .find(|dash| line.starts_with(**dash))
            .map_or(0, |dash| dash.len())
    };
    let lines = text.lines().map(str::trim).map(move |line| line[bare(line)..].trim());
    lines.filter(|line| !line.is_empty()).map(str::to_owned)
}

/// How many children or groups a text says: a whole number from one on, and no word beside it.
pub fn how_many(text: &str) -> Option<u16> {
    let number = text.trim().parse::<u16>().ok()?;
    (1..=limits::CHILDREN).contains(&number).then_some(number)
}

/// The rows that say something, as they are written.
pub(super) fn rows(scene: &Scene) -> Vec<(&'static str, String)> {
    let of = |row: &'static OfAbout| {
        (row.write)(scene).into_iter().map(|text| (row.headings[0], text))
    };
    let filled = ABOUT.iter().flat_map(of);
    filled.filter(|(_, text)| !text.is_empty()).collect()
}
