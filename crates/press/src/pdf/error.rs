//! Why a sheet could not be printed, in a sentence, with a remedy.

use std::fmt;

use krilla::error::KrillaError;

/// Why a sheet could not be printed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PressError {
    /// The file would not have passed the check for PDF/UA-1.
    NotValid {
        /// What the check said.
        said: String,
    },
}

impl PressError {
    /// What to do about it.
    pub fn remedy(&self) -> &'static str {
        match self {
            Self::NotValid { .. } => {
                "Print the page for the phone instead, and report this table and key: the \
                 press should have been able to print them."
            }
        }
    }
}

impl fmt::Display for PressError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotValid { said } => {
                write!(
                    f,
                    "The sheet could not be made into a PDF file that everybody can read: {said}."
                )
            }
        }
    }
}

impl std::error::Error for PressError {}

/// What `krilla` said, without the bytes of fonts and pictures.
pub(super) fn said(error: &KrillaError) -> String {
    match error {
        KrillaError::Validation(found) => {
            let mut faults: Vec<String> = Vec::new();
            for (fault, _) in found {
                let whole = format!("{fault:?}");
                let name = whole.split(['(', ' ', '{']).next().unwrap_or("").to_owned();
                if !faults.contains(&name) {
                    faults.push(name);
                }
            }
            faults.join(", ")
        }
        other => other.to_string(),
    }
}
