//! Quotation marks within quotation marks.
//!
//! From a sentence or a text to the same with single marks inside double ones, so that nobody
//! reads `“Is it “spiny”?”`. It changes nothing but marks.

/// A text that is about to be put between double marks: its own become single ones, and marks
/// around the whole of it go.
pub fn within_marks(text: &str) -> String {
    single(bare(text.trim()))
}

/// Without marks around the whole text.
fn bare(text: &str) -> &str {
    const AROUND: [(char, char); 4] = [('“', '”'), ('„', '“'), ('„', '”'), ('"', '"')];
    let inner = AROUND.iter().find_map(|(open, close)| {
        let inner = text.strip_prefix(*open)?.strip_suffix(*close)?;
        (!inner.contains([*open, *close])).then_some(inner)
    });
    inner.unwrap_or(text)
}

fn single(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut open = false;
    let mut low = false;
    for sign in text.chars() {
        match sign {
            '„' => {
                (open, low) = (true, true);
                out.push('‚');
            }
            // After a low mark the high one closes, as in German.
            '“' if low => {
                (open, low) = (false, false);
                out.push('‘');
            }
            '“' => {
                open = true;
                out.push('‘');
            }
            '”' => {
                (open, low) = (false, false);
                out.push('’');
            }
            '"' => {
                out.push(if open { '’' } else { '‘' });
                open = !open;
            }
            other => out.push(other),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::within_marks;

    #[test]
    fn marks_within_marks_are_single() {
        assert_eq!(within_marks("Is it “spiny”?"), "Is it ‘spiny’?");
        assert_eq!(within_marks("„Ist es glatt?“"), "Ist es glatt?");
        assert_eq!(within_marks("Ist es „glatt“?"), "Ist es ‚glatt‘?");
        assert_eq!(within_marks("\"jagged, like a saw\""), "jagged, like a saw");
        assert_eq!(within_marks("Is it \"a\" or \"b\"?"), "Is it ‘a’ or ‘b’?");
        assert_eq!(within_marks("the leaf's edge"), "the leaf's edge");
    }
}
