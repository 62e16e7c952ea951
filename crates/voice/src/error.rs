//! Why something could not be done, in words: a sentence, and what to do about it.
//!
//! From the errors of the rooms, as data, to sentences in the language of a person.

use spinney_model::{
    BundleError, Instead, KeyFileError, LineError, OldFormat, TableError, TemplateError,
};

use crate::{Tongue, finding};

/// Why nothing of a table could be read: a sentence, and a remedy.
pub fn table_error(t: Tongue, error: &TableError) -> (String, String) {
    match error {
        TableError::NotATable { name, what } => {
            let texts: [(&str, &dyn std::fmt::Display); 2] =
                [("file", name), ("what", &what_it_is(t, *what))];
            (t.with("error-not-a-table", &texts), t.say(no_table_remedy(*what)))
        }
        TableError::OldFormat { name, format } => {
            let format = t.say(match format {
                OldFormat::Office => "error-office",
                OldFormat::OpenDocument => "error-open-document",
            });
            t.told("error-old-format", &[("file", name), ("format", &format)])
        }
        TableError::Protected { name } => t.told("error-protected", &[("file", name)]),
        TableError::TooLarge { name } => t.told("error-too-large", &[("file", name)]),
        TableError::OtherSheet { name, other } => {
            t.told("error-other-sheet", &[("sheet", name), ("other", other)])
        }
        TableError::OtherPart { name, is, wanted } => {
            t.told("error-other-part", &[("file", name), ("is", is), ("wanted", wanted)])
        }
        TableError::Broken { name } => t.told("error-broken", &[("file", name)]),
        TableError::NoKinds { name } => t.told("error-no-kinds", &[("file", name)]),
        TableError::NoKindColumn { name } => t.told("error-no-kind-column", &[("file", name)]),
        TableError::DoesNotFit { what } => {
            t.told("error-does-not-fit", &[("place", &finding::place(&what.place, t))])
        }
    }
}

/// What a file is, within a sentence: `a PDF`.
pub fn what_it_is(t: Tongue, what: Instead) -> String {
    t.say(match what {
        Instead::Empty => "error-is-empty",
        Instead::Pdf => "error-is-pdf",
        Instead::Picture => "error-is-picture",
        Instead::Photograph => "error-is-photograph",
        Instead::TextDocument => "error-is-text-document",
        Instead::WordDocument => "error-is-word",
        Instead::LibreOffice => "error-is-libre-office",
        Instead::Numbers => "error-is-numbers",
        Instead::GoogleSheet => "error-is-google-sheet",
        Instead::ExcelLock => "error-is-excel-lock",
        Instead::Database => "error-is-database",
        Instead::PackedCollection => "error-is-packed",
        Instead::Spreadsheet => "error-is-spreadsheet",
        Instead::Zip => "error-is-zip",
        Instead::NotText => "error-is-not-text",
        Instead::WebPage => "error-is-web-page",
        Instead::Json => "error-is-json",
        Instead::KeyInWords => "error-is-key",
        Instead::Writing => "error-is-writing",
        Instead::LinedUp => "error-is-lined-up",
    })
}

/// What to do with it, where a table is wanted.
fn no_table_remedy(what: Instead) -> &'static str {
    match what {
        Instead::Pdf => "error-is-pdf-remedy",
        Instead::Picture | Instead::Photograph => "error-is-picture-remedy",
        Instead::WordDocument | Instead::TextDocument => "error-is-word-remedy",
        Instead::LibreOffice => "error-is-libre-office-remedy",
        Instead::Numbers => "error-is-numbers-remedy",
        Instead::GoogleSheet => "error-is-google-sheet-remedy",
        Instead::ExcelLock => "error-is-excel-lock-remedy",
        Instead::Zip => "error-is-zip-remedy",
        Instead::LinedUp => "error-is-lined-up-remedy",
        Instead::Empty
        | Instead::Database
        | Instead::PackedCollection
        | Instead::Spreadsheet
        | Instead::NotText
        | Instead::WebPage
        | Instead::Json
        | Instead::KeyInWords
        | Instead::Writing => "error-is-other-remedy",
    }
}

/// Why a file of programs holds no key, or not what is claimed of it.
pub fn key_file_error(t: Tongue, file: &str, error: &KeyFileError) -> (String, String) {
    match error {
        KeyFileError::NotOurs { line, column } => t.told(
            "error-key-file-not-ours",
            &[("file", &file), ("line", line), ("column", column)],
        ),
        KeyFileError::CutOff { line } => {
            t.told("error-key-file-cut-off", &[("file", &file), ("line", line)])
        }
        KeyFileError::Unknown { field } => {
            t.told("error-key-file-unknown", &[("file", &file), ("field", field)])
        }
        KeyFileError::NoKey => t.told("error-key-file-no-key", &[("file", &file)]),
        KeyFileError::Disagree { field, number, exact } => t.told(
            "error-key-file-disagree",
            &[("file", &file), ("field", field), ("number", number), ("exact", exact)],
        ),
        KeyFileError::Line { line } => {
            t.told("error-key-file-line", &[("file", &file), ("line", line)])
        }
        KeyFileError::Form { form } => {
            t.told("error-key-file-form", &[("file", &file), ("form", form)])
        }
        KeyFileError::Cost { field } => {
            t.told("error-key-file-cost", &[("file", &file), ("field", field)])
        }
    }
}

/// Why a line of a journal cannot be read.
pub fn line_error(t: Tongue, error: LineError) -> (String, String) {
    match error {
        LineError::Newer(form) => t.told("error-line-newer", &[("form", &form)]),
        LineError::NotALine => t.told("error-line-damaged", &[]),
    }
}

/// Why a packed collection cannot be packed or unpacked.
pub fn bundle_error(t: Tongue, file: &str, error: BundleError) -> (String, String) {
    let message = match error {
        BundleError::NotABundle => "error-packed-not",
        BundleError::TooLarge => "error-packed-too-large",
        BundleError::CutOff => "error-packed-cut-off",
        BundleError::Damaged => "error-packed-damaged",
    };
    t.told(message, &[("file", &file)])
}

/// Why there is no empty table to fill in.
pub fn template_error(t: Tongue, error: &TemplateError) -> (String, String) {
    match error {
        TemplateError::Date(date) => t.told("error-template-date", &[("date", date)]),
        TemplateError::Writer(said) => t.told("error-template-writer", &[("said", said)]),
    }
}

/// Why a sheet could not be printed, as the check of the file says it.
pub fn not_valid(t: Tongue, said: &str) -> (String, String) {
    t.told("error-not-valid", &[("said", &said)])
}

#[cfg(test)]
mod tests;
