//! A sheet that was set and is looked at page by page.
//!
//! From a key and what is wanted of it to a sheet, kept until an edit or until another one is
//! wanted.

use std::sync::Arc;

use spinney_press::sheet::Sheet;

/// The sheet that was looked at last.
pub(crate) struct Pressed {
    /// Everything that it was made from besides the collection.
    pub(crate) from: String,
    pub(crate) sheet: Arc<Sheet>,
}
