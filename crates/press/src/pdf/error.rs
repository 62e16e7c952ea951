//! Why a sheet could not be printed.

use krilla::error::KrillaError;
use spinney_voice::Tongue;

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
    /// Why not, and what to do about it, in the language of a person.
    pub fn told(&self, t: Tongue) -> (String, String) {
        match self {
            Self::NotValid { said } => spinney_voice::not_valid(t, said),
        }
    }
}

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
