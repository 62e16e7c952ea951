//! What is to be said to a person at the command line, before it is known in which language.
//!
//! From the name of a message and what is to be filled in, as data, to a sentence. It holds no
//! sentence itself.

use std::path::{Display, Path};

use spinney_model::{FileTrouble, Instead};
use spinney_voice::Tongue;

/// A message and what is to be filled in.
#[derive(Clone, Debug)]
pub(crate) struct Words {
    message: &'static str,
    texts: Vec<(&'static str, Text)>,
}

/// What is filled into a message.
#[derive(Clone, Debug)]
pub(crate) enum Text {
    /// Names of files, and words that somebody typed.
    Plain(String),
    /// A whole number, in groups of three digits from six digits on.
    Whole(String),
    /// A day, as in `3 October 2026`.
    Day(String),
    /// All of these.
    All(Vec<String>),
    /// One of these.
    Any(Vec<String>),
    /// Why a file cannot be used.
    Trouble(FileTrouble),
    /// What a file is.
    What(Instead),
}

impl Words {
    pub(crate) fn new<const N: usize>(
        message: &'static str,
        texts: [(&'static str, Text); N],
    ) -> Self {
        Self { message, texts: texts.into() }
    }

    /// Without anything to fill in.
    pub(crate) fn of(message: &'static str) -> Self {
        Self::new(message, [])
    }

    /// In a language.
    pub(crate) fn said(&self, t: Tongue) -> String {
        let texts = self.filled_in(t);
        t.with(self.message, &shown(&texts))
    }

    /// In a language, with the remedy of the same name beside it.
    pub(crate) fn told(&self, t: Tongue) -> (String, String) {
        let texts = self.filled_in(t);
        t.told(self.message, &shown(&texts))
    }

    fn filled_in(&self, t: Tongue) -> Vec<(&'static str, String)> {
        self.texts.iter().map(|(name, text)| (*name, text.said(t))).collect()
    }
}

fn shown<'t>(texts: &'t [(&'static str, String)]) -> Vec<(&'t str, &'t dyn std::fmt::Display)> {
    texts.iter().map(|(name, text)| (*name, text as &dyn std::fmt::Display)).collect()
}

impl Text {
    fn said(&self, t: Tongue) -> String {
        match self {
            Self::Plain(text) => text.clone(),
            Self::Whole(digits) => grouped(t, digits),
            Self::Day(day) => t.day(day),
            Self::All(names) => spinney_voice::all(t, names),
            Self::Any(names) => spinney_voice::any(t, names),
            Self::Trouble(trouble) => spinney_voice::trouble(t, *trouble),
            Self::What(what) => spinney_voice::what_it_is(t, *what),
        }
    }
}

impl From<&str> for Text {
    fn from(text: &str) -> Self {
        Self::Plain(text.to_owned())
    }
}

impl From<String> for Text {
    fn from(text: String) -> Self {
        Self::Plain(text)
    }
}

impl From<&Path> for Text {
    fn from(path: &Path) -> Self {
        path.display().into()
    }
}

impl From<Display<'_>> for Text {
    fn from(path: Display<'_>) -> Self {
        Self::Plain(path.to_string())
    }
}

impl From<FileTrouble> for Text {
    fn from(trouble: FileTrouble) -> Self {
        Self::Trouble(trouble)
    }
}

impl From<Instead> for Text {
    fn from(what: Instead) -> Self {
        Self::What(what)
    }
}

macro_rules! whole {
    ($($number:ty),*) => {$(
        impl From<$number> for Text {
            fn from(number: $number) -> Self {
                Self::Plain(number.to_string())
            }
        }
    )*};
}

whole!(u16, u32, u64, usize);

/// `1048576` as `1,048,576`, in German `1.048.576`; shorter numbers as they are.
fn grouped(t: Tongue, digits: &str) -> String {
    if digits.len() < 6 || !digits.bytes().all(|byte| byte.is_ascii_digit()) {
        return digits.to_owned();
    }
    let between = if t.tag() == "de" { "." } else { "," };
    let first = digits.len() % 3;
    let (start, rest) = digits.split_at(first);
    let rest = rest.as_bytes().chunks(3).map(|three| String::from_utf8_lossy(three));
    let start = Some(start).filter(|start| !start.is_empty()).map(Into::into);
    start.into_iter().chain(rest).collect::<Vec<_>>().join(between)
}
