//! One line of a proof as text: `2f|2 7|31`.
//!
//! From kinds, what remains and numbers to text and back, one byte after the other.

use std::fmt::{self, Write};

use serde::de::{Error, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::json::shape::Line;

impl fmt::Display for Line {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (kinds, remains, at_least) = match self {
            Self::Unread(text) => return f.write_str(text),
            Self::Says { kinds, remains, at_least } => (kinds, remains, at_least),
        };
        let digits = kinds.iter().max().map_or(1, |last| last / 4 + 1);
        let mut digits = vec![0_u8; digits];
        for kind in kinds {
            digits[kind / 4] |= 1 << (kind % 4);
        }
        for digit in digits.iter().rev() {
            f.write_char(char::from_digit((*digit).into(), 16).expect("four bits"))?;
        }
        let separated = |f: &mut fmt::Formatter<'_>, begins: char, at: usize| {
            f.write_char(if at == 0 { begins } else { ' ' })
        };
        if remains.is_empty() {
            f.write_char('|')?;
        }
        for (at, place) in remains.iter().enumerate() {
            separated(f, '|', at)?;
            write!(f, "{place}")?;
        }
        for (at, number) in at_least.iter().enumerate() {
            separated(f, '|', at)?;
            // The numbers of most proofs are small, and small ones are written sooner.
            match u64::try_from(*number) {
                Ok(number) => write!(f, "{number}")?,
                Err(_) => write!(f, "{number}")?,
            }
        }
        Ok(())
    }
}

/// What a line of text says; None: it is none of ours.
fn read(text: &str) -> Option<Line> {
    let bytes = text.as_bytes();
    let first = bytes.iter().position(|byte| *byte == b'|').filter(|first| *first > 0)?;
    let (digits, rest) = (&bytes[..first], &bytes[first + 1..]);
    let second = rest.iter().position(|byte| *byte == b'|')?;
    let mut kinds = Vec::with_capacity(16);
    for (place, digit) in digits.iter().rev().enumerate() {
        let digit = match digit {
            b'0'..=b'9' => digit - b'0',
            b'a'..=b'f' => digit - b'a' + 10,
            _ => return None,
        };
        kinds.extend((0..4).filter(|bit| digit >> bit & 1 == 1).map(|bit| 4 * place + bit));
    }
    let mut remains: Vec<usize> = Vec::new();
    if second > 0 {
        for word in rest[..second].split(|byte| *byte == b' ') {
            let place = usize::try_from(number(word)?).ok()?;
            if remains.last().is_some_and(|before| *before >= place) {
                return None;
            }
            remains.push(place);
        }
    }
    let numbers = rest[second + 1..].split(|byte| *byte == b' ');
    let at_least: Vec<i128> = numbers.map(number).collect::<Option<_>>()?;
    Some(Line::Says { kinds, remains, at_least })
}

/// A whole number of digits alone.
fn number(digits: &[u8]) -> Option<i128> {
    let digit = |byte: &u8| byte.is_ascii_digit().then(|| byte - b'0');
    if (1..=18).contains(&digits.len()) {
        let number = digits
            .iter()
            .try_fold(0_u64, |number, byte| Some(10 * number + u64::from(digit(byte)?)));
        return number.map(i128::from);
    }
    let mut number = (!digits.is_empty()).then_some(0_i128)?;
    for byte in digits {
        number = number.checked_mul(10)?.checked_add(digit(byte)?.into())?;
    }
    Some(number)
}

impl Serialize for Line {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Line {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;

        impl Visitor<'_> for Text {
            type Value = Line;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a line of a proof")
            }

            fn visit_str<E: Error>(self, text: &str) -> Result<Line, E> {
                Ok(read(text).unwrap_or_else(|| Line::Unread(text.to_owned())))
            }
        }

        deserializer.deserialize_str(Text)
    }
}
