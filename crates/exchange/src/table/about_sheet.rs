//! The sheet `about`: for whom, where, when and on what the key is.
//!
//! From two columns, what and which, to the scene.

use spinney_model::{Code, Scene};

use super::{grid::Grid, phrase::fold, report::Report};

/// The first column, in the order in which it is written.
pub(super) const ROWS: [&str; 5] = ["title", "place", "season", "part", "version"];

/// Reads the sheet.
pub(super) fn read(grid: &Grid, report: &mut Report) -> Scene {
    let mut scene = Scene::default();
    for (at, (row, cells)) in grid.rows().enumerate() {
        let (column, what) = &cells[0];
        let text = cells.get(1).map(|(_, text)| text.clone());
        let field = match fold(what.trim_end_matches(':')).as_str() {
            "title" => &mut scene.title,
            "place" | "where" => &mut scene.place,
            "season" | "when" | "date" => &mut scene.season,
            "part" | "on" => &mut scene.part,
            "version" => &mut scene.version,
            // A heading over the two columns.
            _ if at == 0 => continue,
            _ => {
                report.add(
                    Code::LeftOut,
                    &format!("about {}", grid.name),
                    grid.place(row, *column),
                    || format!("“{what}” of the sheet “{}” is not read.", grid.name),
                    "Nothing, or call it title, place, season, part or version.",
                );
                continue;
            }
        };
        *field = text;
    }
    scene
}
