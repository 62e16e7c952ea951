//! Text as people typed it, made printable: nothing invisible, nothing endless.
//!
//! From any text (right-to-left scripts, emoji, control characters, three hundred letters) to
//! one that Andika can draw. A sign that the typeface lacks becomes Unicode's replacement sign,
//! so that a reader sees that something stood there; invisible signs vanish; long texts end in
//! an ellipsis.

use std::collections::BTreeSet;

use super::face::Faces;

/// What stands for a sign that the typeface lacks: Unicode's replacement sign, or a question
/// mark should a face ever come without it.
const LACKING: char = '\u{FFFD}';

/// A text that can be drawn, of at most `most` characters.
pub fn legible(faces: &Faces, text: &str, most: usize) -> String {
    let lacking = if faces.has(LACKING) { LACKING } else { '?' };
    let mut plain = String::new();
    let mut count = 0;
    for character in text.chars() {
        let printed = match character {
            c if c.is_whitespace() || c.is_control() => ' ',
            c if invisible(c) => continue,
            c if faces.has(c) && !private(c) => c,
            _ => lacking,
        };
        let space = printed == ' ';
        if space && (plain.is_empty() || plain.ends_with(' ') || count == most) {
            continue;
        }
        if count == most {
            plain.truncate(plain.trim_end().len());
            plain.push('…');
            return plain;
        }
        plain.push(printed);
        count += 1;
    }
    plain.truncate(plain.trim_end().len());
    plain
}

/// The letters of a text that the typeface lacks.
pub fn lacking(faces: &Faces, text: &str) -> BTreeSet<char> {
    let seen = |c: &char| !c.is_whitespace() && !c.is_control() && !invisible(*c);
    text.chars().filter(seen).filter(|c| !faces.has(*c) || private(*c)).collect()
}

/// Signs that only steer other signs: joiners, direction marks, variation selectors, tags.
fn invisible(character: char) -> bool {
    matches!(u32::from(character),
        0xAD | 0x34F | 0x61C | 0x180B..=0x180F | 0x200B..=0x200F | 0x202A..=0x202E
        | 0x2060..=0x206F | 0xFE00..=0xFE0F | 0xFEFF | 0xFFF0..=0xFFFB | 0xFFFE..=0xFFFF
        | 0x1F3FB..=0x1F3FF | 0xE0000..=0xE0FFF)
}

/// Signs without a meaning that everybody shares.
fn private(character: char) -> bool {
    matches!(u32::from(character), 0xE000..=0xF8FF | 0xF0000..)
}

/// Whether anything of a printable text can be read aloud.
pub fn says_something(text: &str) -> bool {
    text.chars().any(char::is_alphanumeric)
}

#[cfg(test)]
mod tests {
    use super::{Faces, lacking, legible};

    #[test]
    fn which_second_languages_can_be_printed() {
        let faces = Faces::new();
        let whole = [
            "zażółć gęślą jaźń",
            "Türkçe ağaç",
            "ґава їжак’",
            "tiếng Việt",
            "șarpe",
            "Kurmancî",
            "ŵ",
        ];
        for text in whole {
            assert!(lacking(&faces, text).is_empty(), "{text}");
        }
        for text in ["عربي", "ελιά", "עץ", "हिन्दी", "中文", "ትግርኛ"]
        {
            assert!(!lacking(&faces, text).is_empty(), "{text}");
        }
    }

    #[test]
    fn what_the_typeface_lacks_is_seen_and_what_is_invisible_is_gone() {
        let faces = Faces::new();
        assert_eq!(legible(&faces, "  field\t maple\u{0}\n", 80), "field maple");
        assert_eq!(legible(&faces, "Erle 🌳", 80), "Erle \u{FFFD}");
        assert_eq!(legible(&faces, "\u{202E}elpam\u{202C}", 80), "elpam");
        assert_eq!(legible(&faces, "אלון", 80), "\u{FFFD}\u{FFFD}\u{FFFD}\u{FFFD}");
        assert_eq!(legible(&faces, "onnen ŵ ё", 80), "onnen ŵ ё");
        assert_eq!(legible(&faces, "abcdef", 3), "abc…");
        assert_eq!(legible(&faces, "abc   ", 3), "abc");
    }
}
