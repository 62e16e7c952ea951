//! Sheets to PDF: one drawing pass, tagged for listeners, checked against PDF/UA-1.
//!
//! From placed boxes to the bytes of a file. The typeface is embedded as a subset; there is no
//! creation time in the file, so the same sheets give the same bytes. What PDF/UA-1
//! (ISO 14289-1) can have checked by a program is checked by `krilla` on every export, and an
//! export that fails the check gives no file.

mod error;
mod packed;
mod pen;
mod tags;

use std::cell::OnceCell;

use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::metadata::Metadata;
use krilla::page::PageSettings;
use krilla::tagging::TagTree;
use krilla::text::Font;
use krilla::{Document, SerializeSettings};

pub use error::PressError;

use crate::sheet::face::{BOLD, Faces, REGULAR};
use crate::sheet::{Page, Sheet};

/// Points in a millimetre.
const PT: f64 = 72.0 / 25.4;

/// Both faces as `krilla` embeds them.
struct Fonts {
    regular: Font,
    bold: Font,
    /// The same for letters that are drawn as shapes.
    faces: OnceCell<Faces>,
}

/// Writes a sheet as a PDF file.
///
/// **Errors**: [`PressError`] if the file would not be valid.
pub fn write(sheet: &Sheet) -> Result<Vec<u8>, PressError> {
    let configuration = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .expect("one validator agrees with itself");
    let settings = SerializeSettings { configuration, ..SerializeSettings::default() };
    let mut document = Document::new_with(settings);
    let open =
        |bytes: &'static [u8]| Font::new(bytes.into(), 0).expect("the embedded face opens");
    let fonts = Fonts { regular: open(REGULAR), bold: open(BOLD), faces: OnceCell::new() };
    let mut tree = TagTree::new().with_lang(Some(sheet.language.to_owned()));
    let mut contents = tags::Contents::default();
    for (number, page) in sheet.pages.iter().enumerate() {
        draw(&mut document, page, number, &fonts, &mut tree, &mut contents);
    }
    document.set_tag_tree(tree);
    document.set_outline(contents.outline());
    document.set_metadata(
        Metadata::new()
            .title(sheet.title.clone())
            .language(sheet.language.to_owned())
            .creator("Spinney".to_owned()),
    );
    let file = document.finish();
    file.map(packed::packed).map_err(|error| PressError::NotValid { said: error::said(&error) })
}

fn draw(
    document: &mut Document,
    page: &Page,
    number: usize,
    fonts: &Fonts,
    tree: &mut TagTree,
    contents: &mut tags::Contents,
) {
    let (width, height) = ((page.width * PT) as f32, (page.height * PT) as f32);
    let settings =
        PageSettings::from_wh(width, height).expect("a page has a width and a height");
    let mut sheet = document.start_page_with(settings);
    let mut surface = sheet.surface();
    let nodes = tags::draw(&mut surface, &page.nodes, fonts);
    surface.finish();
    sheet.finish();
    nodes.into_iter().for_each(|node| tree.push(node));
    contents.gather(&page.nodes, number);
}
