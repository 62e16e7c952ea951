//! Which of some names a person probably meant who typed another one.
//!
//! From what was typed and the names that there are to the nearest; None: none is near enough.
//! How near two names are is counted as for two words of a table that look like one
//! (Damerau–Levenshtein; Jaro–Winkler, Winkler 1990).

/// So alike are names of which one may be meant by the other, from 0 to 1. `papper` and `paper`
/// have 0.95, `hazle` and `hazel` 0.97, `print` and `pint` 0.93, `table` and `tray` 0.74.
const ALIKE: f64 = 0.85;
/// So many letters may be wrong in names that are not alike from their beginning on.
const WRONG_LETTERS: usize = 2;

/// The nearest of the names, apart from capitals.
pub(crate) fn nearest<'a>(
    typed: &str,
    names: impl IntoIterator<Item = &'a str>,
) -> Option<&'a str> {
    let typed = typed.to_lowercase();
    let length = typed.chars().count();
    let near = |name: &'a str| {
        let folded = name.to_lowercase();
        let wrong = strsim::damerau_levenshtein(&typed, &folded);
        let alike = strsim::jaro_winkler(&typed, &folded);
        // Of two short names every other letter may be wrong by chance.
        let few = wrong <= WRONG_LETTERS && 2 * wrong < length;
        (few || alike >= ALIKE && wrong <= length.div_ceil(3)).then_some((alike, name))
    };
    let all = names.into_iter().filter_map(near);
    all.reduce(|best, other| if other.0 > best.0 { other } else { best }).map(|(_, name)| name)
}

#[cfg(test)]
mod tests {
    use super::nearest;

    #[test]
    fn the_nearest_name_is_found_and_none_where_none_is_near() {
        let columns = ["edge", "lobes", "stalk length"];
        assert_eq!(nearest("egde", columns), Some("edge"));
        assert_eq!(nearest("Stalk lenght", columns), Some("stalk length"));
        assert_eq!(nearest("colour", columns), None);
        assert_eq!(nearest("of", columns), None);
        assert_eq!(nearest("", columns), None);
        assert_eq!(nearest("finds.cvs", ["notes.csv", "finds.csv"]), Some("finds.csv"));
    }
}
