//! Taking in a table: pasted, or from a file, with a word about whose it is.
//!
//! From separated values or a workbook to the edits that write its cells down. A table with a
//! name of its own lies beside what is there already: what two tables say differently is shown
//! and waits for a person.

#![deny(clippy::wildcard_enum_match_arm)]

use maud::{Markup, html};
use spinney_exchange::table::{self, Source, TypedSheets};
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, Edit, KindEdit};

use super::add::too_many;
use super::deeds::typed;
use super::left::{self, Told};
use super::{LONGEST_NAME, LONGEST_TEXT, MOST_KINDS};
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::Collection;
use spinney_collection::intake::Taken;
use spinney_collection::{intake, reworded};

use crate::Desk;
use spinney_voice::Tongue;

/// The longest text in a cell, in letters: no cell of a key says as much.
const LONGEST_CELL: usize = 2_000;
/// The most cells of one table.
const MOST_CELLS: usize = 100_000;

pub(super) fn form(t: Tongue) -> Markup {
    html! {
        form.add #take-table method="post" action="/do/take-table" enctype="multipart/form-data" {
            label for="table" { (t.say("finds-paste")) }
            textarea #table name="table" rows="5" wrap="off" placeholder=(t.say("finds-paste-example")) {}
            label for="table-file" { (t.say("finds-table-file")) }
            input #table-file type="file" name="file" accept=".csv,.tsv,.txt,.xlsx" multiple;
            label for="source" { (t.say("finds-whose")) }
            input #source name="source" maxlength=(LONGEST_NAME) aria-describedby="source-why"
                placeholder=(t.say("finds-whose-example"));
            p.quiet #source-why { (t.say("finds-whose-why")) }
            button #take-table-button { (t.say("finds-take-table")) }
        }
    }
}

pub(super) fn take(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let source = typed(asked, "source", LONGEST_NAME)?;
    let mut sources = Vec::new();
    let pasted = asked.request.form.iter().find(|(field, _)| field == "table");
    if let Some((_, text)) = pasted.filter(|(_, text)| !text.trim().is_empty()) {
        let bytes = text.clone().into_bytes();
        sources.push(Source { name: t.say("finds-pasted"), bytes });
    }
    let files = asked.request.files.iter().filter(|file| !file.bytes.is_empty());
    sources.extend(
        files.map(|file| Source { name: file.name.clone(), bytes: file.bytes.clone() }),
    );
    let collection = &desk.history.now;
    let (sheets, taken) = taken_in(t, collection, &sources, &source)?;
    if taken.edits.is_empty() && taken.left.is_empty() {
        return Err(Refused {
            sentence: t.say("finds-no-table"),
            remedy: t.say("finds-no-table-remedy"),
        });
    }
    small_enough(desk, t, &taken.edits)?;
    let told = Told::of(t, collection, &sheets, &taken);
    Ok(Deed::edits(taken.edits, left::address(asked.back("/finds"), &told)))
}

/// Files as the reader of tables reads them, and the edits that take them in.
pub(crate) fn taken_in(
    t: Tongue,
    collection: &Collection,
    sources: &[Source],
    who: &str,
) -> Result<(TypedSheets, Taken), Refused> {
    let sheets = table::typed_sheets(sources).map_err(|error| Refused {
        sentence: t.with("finds-table-error", &[("error", &error)]),
        remedy: error.remedy().to_owned(),
    })?;
    let mut taken =
        intake::take_in(collection, &sheets, who).map_err(|odd| left::odd_unit(t, &odd))?;
    taken.edits.extend(reworded::follow(collection, &taken.edits));
    Ok((sheets, taken))
}

fn small_enough(desk: &Desk, t: Tongue, edits: &[Edit]) -> Result<(), Refused> {
    let collection = &desk.history.now;
    let (mut kinds, mut characters, mut cells) =
        (collection.kinds.len(), collection.characters.len(), 0);
    for edit in edits {
        let (text, longest) = match edit {
            Edit::Kind(_, KindEdit::Add(name)) => {
                kinds += 1;
                (name, LONGEST_NAME)
            }
            Edit::Character(_, CharacterEdit::Add(name)) => {
                characters += 1;
                (name, LONGEST_NAME)
            }
            Edit::Cell { text, .. } => {
                cells += 1;
                (text, LONGEST_CELL)
            }
            Edit::Kind(_, KindEdit::Describe(_, text)) => (text, LONGEST_TEXT),
            Edit::Character(_, CharacterEdit::Describe(_, text)) | Edit::Scene(_, text) => {
                (text, LONGEST_CELL)
            }
            Edit::Kind(
                _,
                KindEdit::Remove
                | KindEdit::Merge(_)
                | KindEdit::AddPicture(_)
                | KindEdit::RemovePicture(_),
            )
            | Edit::Character(_, CharacterEdit::Remove | CharacterEdit::RenameState { .. })
            | Edit::Key(..)
            | Edit::BackTo(_) => continue,
        };
        if text.chars().count() > longest {
            let start: String = text.chars().take(40).collect();
            return Err(Refused {
                sentence: t.count_with("finds-long-text", longest, &[("start", &start)]),
                remedy: t.say("finds-long-text-remedy"),
            });
        }
    }
    if kinds > MOST_KINDS {
        return Err(too_many(t));
    }
    if characters > SCREENS_COLUMNS || cells > MOST_CELLS {
        return Err(Refused {
            sentence: t.count("finds-wide-table", SCREENS_COLUMNS),
            remedy: t.say("finds-wide-table-remedy"),
        });
    }
    Ok(())
}
