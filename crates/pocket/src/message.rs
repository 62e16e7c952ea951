//! A message between the worker and the desk: named texts, and parts of bytes.
//!
//! The texts are written as the query of an address is (`application/x-www-form-urlencoded`,
//! WHATWG URL), which a browser and the desk both read already. A message is its number of
//! parts, then each part after its length (four bytes, the lowest first); the first part is
//! the texts.

/// A message.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Message {
    texts: Vec<(String, String)>,
    /// What goes with the texts, in order.
    pub parts: Vec<Vec<u8>>,
}

impl Message {
    /// A message that says what it is.
    pub fn new(what: &str) -> Self {
        Self::default().saying("what", what)
    }

    /// The same message with a text more.
    #[must_use]
    pub fn saying(mut self, name: &str, text: impl Into<String>) -> Self {
        self.texts.push((name.to_owned(), text.into()));
        self
    }

    /// The same message with these parts.
    #[must_use]
    pub fn with_parts(self, parts: Vec<Vec<u8>>) -> Self {
        Self { parts, ..self }
    }

    /// The first text of a name; empty if there is none.
    pub fn text(&self, name: &str) -> &str {
        self.texts.iter().find(|(of, _)| of == name).map_or("", |(_, text)| text)
    }

    /// All texts of a name, in order.
    pub fn texts<'m>(&'m self, name: &'m str) -> impl Iterator<Item = &'m str> {
        self.texts.iter().filter(move |(of, _)| of == name).map(|(_, text)| text.as_str())
    }

    /// The number in a text; 0 if it is none.
    pub fn number<N: std::str::FromStr + Default>(&self, name: &str) -> N {
        self.text(name).parse().unwrap_or_default()
    }

    /// Reads a message. What is cut off reads as what is there of it.
    pub fn read(bytes: Vec<u8>) -> Self {
        let mut rest = bytes.as_slice();
        let count = length(&mut rest).unwrap_or(0);
        let mut parts = Vec::new();
        for _ in 0..count {
            let Some(part) = length(&mut rest).and_then(|bytes| rest.split_at_checked(bytes))
            else {
                break;
            };
            parts.push(part.0.to_vec());
            rest = part.1;
        }
        let texts = if parts.is_empty() { Vec::new() } else { parts.remove(0) };
        Self { texts: form_urlencoded::parse(&texts).into_owned().collect(), parts }
    }

    /// The bytes of the message.
    pub fn write(self) -> Vec<u8> {
        let mut texts = form_urlencoded::Serializer::new(String::new());
        texts.extend_pairs(&self.texts);
        let texts = texts.finish().into_bytes();
        let all = || std::iter::once(&texts).chain(&self.parts);
        let mut out = Vec::with_capacity(4 + all().map(|part| part.len() + 4).sum::<usize>());
        out.extend(four(self.parts.len() + 1));
        for part in all() {
            out.extend(four(part.len()));
            out.extend(part);
        }
        out
    }
}

fn length(rest: &mut &[u8]) -> Option<usize> {
    let (first, after) = rest.split_first_chunk::<4>()?;
    *rest = after;
    usize::try_from(u32::from_le_bytes(*first)).ok()
}

fn four(length: usize) -> [u8; 4] {
    u32::try_from(length).expect("the memory of WebAssembly ends before").to_le_bytes()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_message_is_read_as_it_was_written() {
        let message =
            Message::new("ask").saying("path", "/heaps?key=1&x=ä ö").saying("language", "de");
        let message = message.with_parts(vec![b"PNG".to_vec(), Vec::new(), vec![0, 255]]);
        let read = Message::read(message.clone().write());
        assert_eq!(read, message);
        assert_eq!(read.text("path"), "/heaps?key=1&x=ä ö");
        assert_eq!(read.text("nothing"), "");
    }

    #[test]
    fn what_is_cut_off_is_read_as_far_as_it_goes() {
        let whole = Message::new("open").with_parts(vec![vec![7; 9]]).write();
        for end in 0..whole.len() {
            let read = Message::read(whole[..end].to_vec());
            assert!(read.parts.is_empty(), "no half of a part is taken for a whole one");
        }
        assert_eq!(Message::read(whole).parts, [vec![7; 9]]);
    }
}
