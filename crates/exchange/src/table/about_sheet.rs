//! The sheet `about`: for whom, where, when and on what the key is, and what is to be minded.
//!
//! From two columns, what and which, to the scene. A row may be there several times where it holds
//! several lines.

use spinney_model::{Code, Scene};

use super::{grid::Grid, phrase::fold, report::Report};

/// The first column, in the order in which it is written.
const ROWS: [&str; 7] =
    ["title", "place", "season", "part", "caution", "before you go", "version"];

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
            "caution" | "cautions" | "take care" => {
                let text = text.unwrap_or_default();
                let said = scene.caution.take().into_iter().chain([text]);
                let said: Vec<String> = said.filter(|text| !text.is_empty()).collect();
                scene.caution = Some(said.join(" ")).filter(|said| !said.is_empty());
                continue;
            }
            "before you go" | "before we go" => {
                scene.before_you_go.extend(lines(&text.unwrap_or_default()));
                continue;
            }
            // A heading over the two columns.
            _ if at == 0 => continue,
            _ => {
                let (last, before) = ROWS.split_last().expect("there are rows");
                report.add(
                    Code::LeftOut,
                    &format!("about {}", grid.name),
                    grid.place(row, *column),
                    || format!("“{what}” of the sheet “{}” is not read.", grid.name),
                    &format!("Nothing, or call it {} or {last}.", before.join(", ")),
                );
                continue;
            }
        };
        *field = text;
    }
    scene
}

/// The lines of a text that say something, without the dashes that people put before them.
fn lines(text: &str) -> impl Iterator<Item = String> {
    let bare = |line: &'_ str| -> usize {
        ["- ", "* ", "• "]
            .iter()
            .find(|dash| line.starts_with(**dash))
            .map_or(0, |dash| dash.len())
    };
    let lines = text.lines().map(str::trim).map(move |line| line[bare(line)..].trim());
    lines.filter(|line| !line.is_empty()).map(str::to_owned)
}

/// The rows that say something, as they are written.
pub(super) fn rows(scene: &Scene) -> Vec<(&'static str, &str)> {
    let [title, place, season, part, caution, before, version] = ROWS;
    let head = [
        (title, scene.title.as_deref()),
        (place, scene.place.as_deref()),
        (season, scene.season.as_deref()),
        (part, scene.part.as_deref()),
        (caution, scene.caution.as_deref()),
    ];
    let before = scene.before_you_go.iter().map(|line| (before, Some(line.as_str())));
    let rows = head.into_iter().chain(before).chain([(version, scene.version.as_deref())]);
    let filled = rows.filter_map(|(what, text)| Some((what, text?)));
    filled.filter(|(_, text)| !text.is_empty()).collect()
}
