//! The parts of a workbook: a zip that is unpacked as a stream, with all bytes counted.
//!
//! From the bytes of a file to XML events of one part. Sizes that the zip declares are not
//! believed; what really comes out is counted over all parts together.

use std::cell::Cell;
use std::io::{self, BufRead, BufReader, Cursor, Read};
use std::rc::Rc;

use quick_xml::Reader;
use quick_xml::escape::resolve_predefined_entity;
use quick_xml::events::{BytesStart, Event};
use zip::ZipArchive;

use crate::table::{OldFormat, TableError, caps};

/// The zip of a workbook.
pub(super) struct Parts<'a> {
    file: String,
    archive: ZipArchive<Cursor<&'a [u8]>>,
    left: Rc<Cell<u64>>,
}

/// Why a part could not be read to its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Damage {
    /// It unpacks to more than is ever read.
    Spent,
    /// It is no sound XML, or the zip is damaged.
    Broken,
}

impl Damage {
    /// The error that it is where nothing of the file is any use.
    pub(super) fn of(self, file: &str) -> TableError {
        let name = file.to_owned();
        match self {
            Self::Spent => TableError::TooLarge { name },
            Self::Broken => TableError::Broken { name },
        }
    }
}

impl<'a> Parts<'a> {
    /// Opens the zip.
    pub(super) fn open(file: &str, bytes: &'a [u8]) -> Result<Self, TableError> {
        let archive =
            ZipArchive::new(Cursor::new(bytes)).map_err(|_| Damage::Broken.of(file))?;
        let left = Rc::new(Cell::new(caps::MOST_UNPACKED));
        let parts = Self { file: file.to_owned(), archive, left };
        if parts.place("content.xml").is_some() && parts.place("mimetype").is_some() {
            let name = file.to_owned();
            return Err(TableError::OldFormat { name, format: OldFormat::OpenDocument });
        }
        Ok(parts)
    }

    /// The name of the file.
    pub(super) fn file(&self) -> &str {
        &self.file
    }

    /// Where a part is, by its name; capitals do not matter.
    fn place(&self, path: &str) -> Option<usize> {
        self.archive.index_for_name(path).or_else(|| {
            let same = |index: &usize| {
                let name = self.archive.name_for_index(*index);
                matches!(name, Some(Ok(name)) if name.eq_ignore_ascii_case(path))
            };
            (0..self.archive.len()).find(same)
        })
    }

    /// The XML of a part, unpacked as it is read; None if there is no such part.
    pub(super) fn xml(&mut self, path: &str) -> Result<Option<Xml<'_>>, TableError> {
        let Some(place) = self.place(path) else { return Ok(None) };
        let left = Rc::clone(&self.left);
        let part = self.archive.by_index(place).map_err(|_| Damage::Broken.of(&self.file))?;
        let counted = Counted { inner: part, left: Rc::clone(&left) };
        let mut reader: Reader<Box<dyn BufRead + '_>> =
            Reader::from_reader(Box::new(BufReader::new(counted)));
        let config = reader.config_mut();
        config.expand_empty_elements = true;
        config.check_end_names = false;
        config.allow_unmatched_ends = true;
        config.allow_dangling_amp = true;
        Ok(Some(Xml { reader, left, buffer: Vec::new() }))
    }

    /// Hands over everything in a part; false if there is no such part.
    pub(super) fn each(
        &mut self,
        path: &str,
        mut take: impl FnMut(&Found<'_>),
    ) -> Result<bool, TableError> {
        let file = self.file.clone();
        let Some(mut xml) = self.xml(path)? else { return Ok(false) };
        loop {
            match xml.next().map_err(|damage| damage.of(&file))? {
                Found::Eof => return Ok(true),
                found => take(&found),
            }
        }
    }
}

/// The XML of one part.
pub(super) struct Xml<'p> {
    reader: Reader<Box<dyn BufRead + 'p>>,
    left: Rc<Cell<u64>>,
    buffer: Vec<u8>,
}

/// What comes next in a part.
pub(super) enum Found<'b> {
    /// An element begins.
    Start(BytesStart<'b>),
    /// The element with this local name ends.
    End(String),
    /// Text, with references resolved.
    Text(String),
    /// The part is over.
    Eof,
}

impl Xml<'_> {
    /// The next element or text.
    pub(super) fn next(&mut self) -> Result<Found<'_>, Damage> {
        // The buffer is emptied first, and given back if a giant tag made it large.
        self.buffer.clear();
        self.buffer.shrink_to(1 << 16);
        let left = self.left.get();
        let event = self.reader.read_event_into(&mut self.buffer).map_err(|_| {
            if self.left.get() == 0 || left == 0 { Damage::Spent } else { Damage::Broken }
        })?;
        Ok(match event {
            Event::Start(element) | Event::Empty(element) => Found::Start(element),
            Event::End(element) => Found::End(element.local_name().as_ref().to_owned()),
            Event::Text(text) => Found::Text(without_nul(text.xml10_content().into_owned())),
            Event::CData(text) => Found::Text(without_nul(text.xml10_content().into_owned())),
            Event::GeneralRef(reference) => Found::Text(match reference.resolve_char_ref() {
                Ok(Some(sign)) => without_nul(sign.to_string()),
                _ => resolve_predefined_entity(&reference).unwrap_or_default().to_owned(),
            }),
            Event::Eof => Found::Eof,
            _ => Found::Text(String::new()),
        })
    }
}

/// A text without the one sign that XML does not have (XML 1.0, 2.2) and no table of ours may
/// hold: with it, what was written would not be taken for text.
fn without_nul(text: String) -> String {
    if text.contains('\0') { text.replace('\0', "") } else { text }
}

/// A reader that stops when all parts together have given too much.
struct Counted<R> {
    inner: R,
    left: Rc<Cell<u64>>,
}

impl<R: Read> Read for Counted<R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let read = self.inner.read(into)?;
        let count = u64::try_from(read).unwrap_or(u64::MAX);
        match self.left.get().checked_sub(count) {
            Some(left) => self.left.set(left),
            None => {
                self.left.set(0);
                return Err(io::Error::other("unpacks to too much"));
            }
        }
        Ok(read)
    }
}
