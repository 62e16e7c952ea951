//! Texts that were spoilt on their way into a file: letters saved twice, a cell that curly
//! quotation marks did not hold together.
//!
//! From a sheet to what is told; nothing is changed.

use spinney_model::OfCell;

use super::grid::Grid;
use super::report::Report;

/// Tells spoilt texts.
pub(super) fn tell(grid: &Grid, report: &mut Report) {
    for (row, cells) in grid.rows() {
        for (column, text) in cells {
            let Some(right) = saved_twice(text) else { continue };
            let at = grid.at(row, *column).into();
            let spoilt = OfCell::LettersSpoilt { text: text.clone(), right, at };
            report.add("letters", grid.place(row, *column), spoilt);
        }
        let cut = |pair: &&[(u32, String)]| {
            let [(_, one), (_, two)] = pair else { return false };
            one.starts_with('“')
                && !one.contains('”')
                && two.ends_with('”')
                && !two.contains('“')
        };
        for pair in cells.windows(2).filter(cut) {
            let [(column, one), (_, two)] = pair else { continue };
            let cut = OfCell::CutAtComma {
                before: one.trim_start_matches('“').to_owned(),
                behind: two.trim_end_matches('”').to_owned(),
                at: grid.at(row, *column).into(),
            };
            report.add("curly", grid.place(row, *column), cut);
        }
    }
}

/// What a text was before UTF-8 was taken for Windows-1252 and saved again: `BÃ¤r` was `Bär`.
fn saved_twice(text: &str) -> Option<String> {
    if text.is_ascii() {
        return None;
    }
    let (bytes, _, lost) = encoding_rs::WINDOWS_1252.encode(text);
    let right = String::from_utf8(bytes.into_owned()).ok().filter(|right| right != text);
    right.filter(|_| !lost)
}

#[cfg(test)]
mod tests {
    use super::saved_twice;

    #[test]
    fn letters_saved_twice_are_known_and_others_are_left_alone() {
        assert_eq!(saved_twice("BÃ¤rlauch").as_deref(), Some("Bärlauch"));
        assert_eq!(saved_twice("4 cm â€“ 5 cm").as_deref(), Some("4 cm – 5 cm"));
        for fine in ["Bärlauch", "érable", "jarząb", "São", "Ålesund", "✓", "30–50 mm", "Ã"]
        {
            assert_eq!(saved_twice(fine), None, "{fine}");
        }
    }
}
