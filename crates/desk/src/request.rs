//! A request of a person, with everything that the desk may know of the world.

use std::collections::BTreeMap;

/// Whether something is only shown, or done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    /// Show something; nothing changes.
    Get,
    /// Do something.
    Post,
}

/// A request of a person.
#[derive(Clone, Debug)]
pub struct Request {
    /// Whether something is shown or done.
    pub method: Method,
    /// The path, decoded: `/finds/3`.
    pub path: String,
    /// What stands behind the question mark, decoded, in order.
    pub query: Vec<(String, String)>,
    /// The fields of a form, decoded, in order.
    pub form: Vec<(String, String)>,
    /// Files of a form.
    pub files: Vec<Upload>,
    /// The time, in milliseconds since 1 January 1970 UTC.
    pub at: i64,
    /// Today as a person reads it: `25 November 2026`.
    pub today: String,
    /// The languages that the person reads, the best first: `de`, `en-GB`.
    pub languages: Vec<String>,
    /// Pictures that the desk asked for, by their hash in hexadecimal digits; None: the host
    /// has lost it.
    pub pictures: BTreeMap<String, Option<Vec<u8>>>,
    /// Whether the host gave up giving pictures because there were too many to hold at once.
    pub pictures_cut: bool,
    /// Where the host keeps the collection.
    pub kept: KeptIn,
}

/// Where a host keeps a collection.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum KeptIn {
    /// In a file of its own.
    #[default]
    File,
    /// In memory only, so that it is gone afterwards.
    Memory,
    /// Beside others in a browser's storage, which a browser may clear.
    Browser {
        /// The copy that was saved last.
        copy: Option<SavedCopy>,
        /// Whether the browser has promised not to clear it by itself; None: it has not answered.
        promised: Option<bool>,
    },
}

impl KeptIn {
    /// Whether it is kept beside others in a browser's storage.
    pub(crate) fn is_in_browser(&self) -> bool {
        matches!(self, Self::Browser { .. })
    }
}

/// A copy of a collection that somebody saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SavedCopy {
    /// The name that its file was given.
    pub name: String,
    /// The day as a person reads it.
    pub day: String,
    /// The last line of the journal that is in it.
    pub head: u64,
}

/// A file of a form.
#[derive(Clone, Debug)]
pub struct Upload {
    /// The field of the form.
    pub field: String,
    /// The name of the file, as the person's machine has it.
    pub name: String,
    /// Its bytes.
    pub bytes: Vec<u8>,
}

impl Request {
    /// A request that shows something, at the beginning of time.
    pub fn get(path: &str) -> Self {
        let (path, query) = path.split_once('?').unwrap_or((path, ""));
        Self {
            method: Method::Get,
            path: path.to_owned(),
            query: form_urlencoded::parse(query.as_bytes()).into_owned().collect(),
            form: Vec::new(),
            files: Vec::new(),
            at: 0,
            today: String::new(),
            languages: Vec::new(),
            pictures: BTreeMap::new(),
            pictures_cut: false,
            kept: KeptIn::File,
        }
    }

    /// A request that does something.
    pub fn post(path: &str, form: &[(&str, &str)]) -> Self {
        let form = form.iter().map(|(name, text)| ((*name).to_owned(), (*text).to_owned()));
        Self { method: Method::Post, form: form.collect(), ..Self::get(path) }
    }

    /// What stands behind the question mark under a name; empty if nothing does.
    pub(crate) fn asked(&self, name: &str) -> &str {
        found(&self.query, name)
    }

    /// What stands in a field of the form, without blanks around it; empty if nothing does.
    pub(crate) fn field(&self, name: &str) -> &str {
        found(&self.form, name).trim()
    }

    /// Every text that stands in fields of this name.
    pub(crate) fn fields<'r>(&'r self, name: &'r str) -> impl Iterator<Item = &'r str> {
        self.form.iter().filter(move |(field, _)| field == name).map(|(_, text)| text.as_str())
    }
}

fn found<'f>(fields: &'f [(String, String)], name: &str) -> &'f str {
    fields.iter().find(|(field, _)| field == name).map_or("", |(_, text)| text.as_str())
}
