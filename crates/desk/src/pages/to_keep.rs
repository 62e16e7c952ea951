//! A file for a person to keep: its name, and the answer that a browser saves instead of showing.

use crate::reply::Page;

/// The longest name of a file, in letters.
const LONGEST_NAME: usize = 60;

/// A file under a name.
pub(super) fn to_keep(kind: &'static str, bytes: Vec<u8>, name: String) -> Page {
    Page { file: Some(name), ..Page::of(kind, bytes) }
}

/// Letters and digits of any language, everything else a hyphen; `otherwise` where nothing is
/// left.
pub(super) fn file_name(name: &str, otherwise: &str) -> String {
    let mut file = String::new();
    for letter in name.to_lowercase().chars().take(LONGEST_NAME) {
        match letter.is_alphanumeric() {
            true => file.push(letter),
            false if !file.is_empty() && !file.ends_with('-') => file.push('-'),
            false => {}
        }
    }
    match file.trim_end_matches('-') {
        "" => otherwise.to_owned(),
        file => file.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::file_name;

    #[test]
    fn a_file_has_a_name_that_every_machine_takes() {
        assert_eq!(file_name("Group Blue, class 4", "key"), "group-blue-class-4");
        assert_eq!(file_name("../../<script>", "key"), "script");
        assert_eq!(file_name("Ulmen-Schlüssel", "key"), "ulmen-schlüssel");
        assert_eq!(file_name("🍂🍂", "key"), "key");
    }
}
