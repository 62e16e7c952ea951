//! The name of a picture: the SHA-256 of its bytes (FIPS 180-4).

use std::fmt;
use std::str::FromStr;

use sha2::{Digest, Sha256};

/// The SHA-256 of some bytes; written as 64 small hexadecimal digits.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Hash([u8; 32]);

impl Hash {
    /// The hash of some bytes.
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    pub(crate) fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    pub(crate) fn bytes(&self) -> &[u8; 32] {
        &self.0
    }
}

impl fmt::Display for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}

impl fmt::Debug for Hash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl FromStr for Hash {
    type Err = NotAHash;

    fn from_str(text: &str) -> Result<Self, NotAHash> {
        let digits = text.as_bytes();
        let mut hash = [0; 32];
        if digits.len() != 64 {
            return Err(NotAHash);
        }
        for (byte, pair) in hash.iter_mut().zip(digits.chunks_exact(2)) {
            let [high, low] = [pair[0], pair[1]].map(digit);
            *byte = high.zip(low).map(|(high, low)| high << 4 | low).ok_or(NotAHash)?;
        }
        Ok(Self(hash))
    }
}

fn digit(letter: u8) -> Option<u8> {
    match letter {
        b'0'..=b'9' => Some(letter - b'0'),
        b'a'..=b'f' => Some(letter - b'a' + 10),
        _ => None,
    }
}

/// A text that is no hash.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotAHash;
