//! What a file is, from its first bytes: a workbook, text, or something that is no table.
//!
//! From bytes to text in UTF-8 or to "a workbook". It trusts no file ending. Text without a
//! byte order mark that is not UTF-8 is taken for Windows-1252, as the WHATWG Encoding
//! Standard decodes it (<https://encoding.spec.whatwg.org/#windows-1252>).

use std::borrow::Cow;

use super::instead::{COMPOUND, is_zip, what_it_is};
use super::{Instead, OldFormat, Source, TableError, caps};

/// What a file turned out to be.
#[derive(Debug)]
pub(super) enum Form<'a> {
    /// A zip, so probably an XLSX.
    Workbook,
    /// A text; separated values.
    Text(Cow<'a, str>),
}

/// Says what a file is, and decodes it if it is text.
pub(super) fn form(source: &Source) -> Result<Form<'_>, TableError> {
    let (name, bytes) = (|| source.name.clone(), source.bytes.as_slice());
    if bytes.len() > caps::MOST_BYTES {
        return Err(TableError::TooLarge { name: name() });
    }
    let what = what_it_is(&source.name, bytes);
    if is_zip(bytes) && matches!(what, Some(Instead::Spreadsheet | Instead::Zip)) {
        return Ok(Form::Workbook);
    }
    if bytes.starts_with(COMPOUND) {
        return Err(if has_encrypted_package(bytes) {
            TableError::Protected { name: name() }
        } else {
            TableError::OldFormat { name: name(), format: OldFormat::Office }
        });
    }
    match what {
        // Whoever reads it says that it has no kinds.
        None | Some(Instead::Empty) => Ok(Form::Text(decode(bytes))),
        Some(what) => Err(TableError::NotATable { name: name(), what }),
    }
}

/// The name that the container of an encrypted workbook holds, in UTF-16.
fn has_encrypted_package(bytes: &[u8]) -> bool {
    let name: Vec<u8> = "EncryptedPackage".encode_utf16().flat_map(u16::to_le_bytes).collect();
    bytes.windows(name.len()).any(|window| window == name)
}

/// Text by its byte order mark, else UTF-8, else Windows-1252.
pub(super) fn decode(bytes: &[u8]) -> Cow<'_, str> {
    if let Some((encoding, length)) = encoding_rs::Encoding::for_bom(bytes) {
        return encoding.decode_without_bom_handling(&bytes[length..]).0;
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => encoding_rs::WINDOWS_1252.decode_without_bom_handling(bytes).0,
    }
}
