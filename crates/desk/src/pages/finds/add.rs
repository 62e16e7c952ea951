//! Adding finds: a list of names, pictures that are dropped in, a table from elsewhere.
//!
//! From separated values or a workbook to the edits that write its cells down, with a word about
//! whose it is. A table with a name of its own lies beside what is there already: what two tables
//! say differently is shown and waits for a person.

#![deny(clippy::wildcard_enum_match_arm)]

use std::fmt::Display;

use maud::{Markup, html};
use spinney_collection::intake::{self, Taken};
use spinney_collection::{Collection, kinds, measured, reworded};
use spinney_exchange::table::{self, RowsAre, Source, TableError, TypedSheets};
use spinney_model::limits::SCREENS_COLUMNS;
use spinney_model::{CharacterEdit, Edit, KindEdit, KindId, SpecimenEdit};
use spinney_voice::Tongue;

use crate::asked::{Asked, Deed};
use crate::forms::{Form, hidden, nothing};
use crate::pages::cell::measured_sources;
use crate::pages::finds::deeds::{
    LONGEST_NAME, LONGEST_TEXT, MOST_KINDS, pictures_of, too_many,
};
use crate::pages::finds::left::{self, Told};
use crate::pictures;
use crate::reply::Refused;

pub(super) fn forms(t: Tongue) -> Markup {
    html! {
        h2 { (t.say("finds-add")) }
        div.adding {
            form.add #add method="post" action=(ADD_KINDS.path) enctype="multipart/form-data" {
                (hidden(&[]))
                label for="names" { (t.say("finds-names")) }
                textarea #names name="names" rows="5" placeholder=(t.say("finds-names-example")) {}
                div.drop {
                    label for="pictures" { (t.say("finds-pictures")) }
                    input #pictures type="file" name="pictures" accept="image/jpeg,image/png" multiple
                        data-dropped=(t.say("finds-dropped"));
                    p.quiet.drop-here hidden { (t.say("finds-drop-here")) }
                }
                button.main #add-finds { (t.say("finds-add-button")) }
                p.or { a #to-measure href="/measure" { (t.say("scan-or-link")) } }
            }
            (table_form(t))
        }
    }
}

/// A kind more for every line, and one for every picture.
pub(crate) static ADD_KINDS: Form<String> = Form {
    path: "/do/add-kinds",
    read: |at| Ok(at.asked.request.field("names").to_owned()),
    rests_on: nothing,
    act: |names, at| {
        let (t, asked, collection) = (at.asked.tongue, at.asked, at.collection());
        let lines = names.lines().map(str::split_whitespace);
        let lines: Vec<String> =
            lines.map(|words| words.collect::<Vec<_>>().join(" ")).collect();
        let long = lines.iter().position(|name| name.chars().count() > LONGEST_NAME);
        if let Some(line) = long.map(|at| at + 1) {
            let line = &[("line", &line as &dyn Display)];
            return Err(Refused::count_with(t, "finds-long-line", LONGEST_NAME, line));
        }
        let (names, here_already) = kinds::new_names(collection, lines);
        let mut next = collection.next_kind().0;
        let mut edits = Vec::new();
        for name in names {
            edits.push(Edit::Kind(KindId(next), KindEdit::Add(name)));
            next += 1;
        }
        let pictures = pictures_of(asked)?;
        for picture in &pictures {
            edits.push(Edit::Kind(KindId(next), KindEdit::Add(String::new())));
            edits.push(Edit::Kind(KindId(next), KindEdit::AddPicture(pictures::name(picture))));
            next += 1;
        }
        if edits.is_empty() {
            return Err(asked.refused("finds-nothing-new"));
        }
        let added =
            edits.iter().filter(|edit| matches!(edit, Edit::Kind(_, KindEdit::Add(_)))).count();
        if collection.kinds.len() + added > MOST_KINDS {
            return Err(too_many(t));
        }
        let back = asked.back("/finds");
        let to = match here_already.len() {
            0 => back,
            count => {
                let names = here_already.join(", ");
                let sentence = t.count_with("finds-here-already", count, &[("names", &names)]);
                left::address(back, &Told::sentence(sentence))
            }
        };
        Ok(Deed { pictures, ..Deed::edits(edits, to) })
    },
};

/// The longest text in a cell, in letters: no cell of a key says as much.
const LONGEST_CELL: usize = 2_000;
/// The most cells of one table.
const MOST_CELLS: usize = 100_000;

fn table_form(t: Tongue) -> Markup {
    html! {
        form.add #take-table method="post" action=(TAKE_TABLE.path) enctype="multipart/form-data" {
            (hidden(&[]))
            label for="table" { (t.say("finds-paste")) }
            textarea #table name="table" rows="5" wrap="off" placeholder=(t.say("finds-paste-example")) {}
            label for="table-file" { (t.say("finds-table-file")) }
            input #table-file type="file" name="file" accept=".csv,.tsv,.txt,.xlsx" multiple;
            fieldset {
                legend { (t.say("finds-rows")) }
                p.choice {
                    input #rows-kinds type="radio" name="rows" value="" checked;
                    label for="rows-kinds" { (t.say("finds-rows-kinds")) }
                }
                p.choice {
                    input #rows-leaves type="radio" name="rows" value=(LEAVES);
                    label for="rows-leaves" { (t.say("finds-rows-leaves")) }
                }
            }
            label for="source" { (t.say("finds-whose")) }
            input #source name="source" maxlength=(LONGEST_NAME) aria-describedby="source-why"
                placeholder=(t.say("finds-whose-example"));
            p.quiet #source-why { (t.say("finds-whose-why")) }
            button #take-table-button { (t.say("finds-take-table")) }
        }
    }
}

/// How the form says that each row is one leaf.
const LEAVES: &str = "leaves";

/// A table that comes in.
pub(super) struct Incoming {
    /// Whose it is; empty: it decides.
    source: String,
    sheets: Vec<Source>,
    rows: RowsAre,
}

/// A table comes in, with a word about whose it is.
pub(super) static TAKE_TABLE: Form<Incoming> = Form {
    path: "/do/take-table",
    read: |at| {
        let source = at.asked.typed("source", LONGEST_NAME)?;
        let pasted = at.asked.request.fields("table").next();
        let pasted = pasted.filter(|text| !text.trim().is_empty()).map(|text| Source {
            name: at.asked.tongue.say("finds-pasted"),
            bytes: text.as_bytes().to_vec(),
        });
        let files = at.asked.request.files.iter().filter(|file| !file.bytes.is_empty());
        let files =
            files.map(|file| Source { name: file.name.clone(), bytes: file.bytes.clone() });
        let rows = match at.asked.request.field("rows") {
            LEAVES => RowsAre::Finds,
            _ => RowsAre::Kinds,
        };
        Ok(Incoming { source, sheets: pasted.into_iter().chain(files).collect(), rows })
    },
    rests_on: nothing,
    act: |Incoming { source, sheets, rows }, at| {
        let (t, collection) = (at.asked.tongue, at.collection());
        let (sheets, taken) = taken_in(t, collection, (&sheets, rows), &source)?;
        if taken.edits.is_empty() && taken.left.is_empty() && taken.here_already == 0 {
            return Err(at.asked.refused("finds-no-table"));
        }
        small_enough(collection, at.asked, &taken.edits)?;
        let told = Told::of(t, collection, &sheets, &taken);
        Ok(Deed::edits(taken.edits, left::address(at.asked.back("/finds"), &told)))
    },
};

/// Files as the reader of tables reads them, and the edits that take them in. Where kinds are on
/// several rows, it is asked first what a row is.
pub(crate) fn taken_in(
    t: Tongue,
    collection: &Collection,
    (sources, rows): (&[Source], RowsAre),
    who: &str,
) -> Result<(TypedSheets, Taken), Refused> {
    let sheets = table::typed_sheets_of(sources, rows).map_err(|error| {
        let (sentence, remedy) = spinney_voice::table_error(t, &error);
        // On a screen it is said which text is too long.
        if let TableError::DoesNotFit { what } = &error {
            return Refused { sentence: spinney_voice::finding(what, t).0, remedy };
        }
        Refused { sentence, remedy }
    })?;
    if let Some((kind, rows)) = intake::on_several_rows(&sheets) {
        let texts: [(&str, &dyn Display); 2] = [("kind", &kind), ("rows", &rows)];
        return Err(Refused::with(t, "finds-several-rows", &texts));
    }
    // What leaves come to is one voice, beside what people type.
    let measured = || measured::source(collection, &measured_sources(t));
    let who = match (who, &sheets.leaves) {
        ("", Some(_)) => measured(),
        (who, _) => who.to_owned(),
    };
    let mut taken =
        intake::take_in(collection, &sheets, &who).map_err(|odd| left::odd_unit(t, &odd))?;
    taken.edits.extend(reworded::follow(collection, &taken.edits));
    Ok((sheets, taken))
}

/// Refused where a table is more than the screens hold, or a text of it longer than could be
/// typed.
pub(crate) fn small_enough(
    collection: &Collection,
    asked: &Asked<'_>,
    edits: &[Edit],
) -> Result<(), Refused> {
    let t = asked.tongue;
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
            Edit::Specimen(_, SpecimenEdit::Measure { text, .. }) => (text, LONGEST_CELL),
            Edit::Kind(_, KindEdit::Describe(_, text))
            | Edit::Specimen(_, SpecimenEdit::Describe(_, text)) => (text, LONGEST_TEXT),
            Edit::Character(_, CharacterEdit::Describe(_, text)) | Edit::Scene(_, text) => {
                (text, LONGEST_CELL)
            }
            Edit::Kind(
                _,
                KindEdit::Remove
                | KindEdit::Merge(_)
                | KindEdit::AddPicture(_)
                | KindEdit::RemovePicture(_)
                | KindEdit::Draw(_),
            )
            | Edit::Character(_, CharacterEdit::Remove | CharacterEdit::RenameState { .. })
            | Edit::Specimen(
                _,
                SpecimenEdit::Add(_)
                | SpecimenEdit::OfKind(_)
                | SpecimenEdit::Picture(_)
                | SpecimenEdit::Judge { .. }
                | SpecimenEdit::Remove,
            )
            | Edit::Key(..)
            | Edit::BackTo(_) => continue,
        };
        if text.chars().count() > longest {
            return Err(asked.too_long(text, longest));
        }
    }
    if kinds > MOST_KINDS {
        return Err(too_many(t));
    }
    if characters > SCREENS_COLUMNS || cells > MOST_CELLS {
        return Err(Refused::count(t, "finds-wide-table", SCREENS_COLUMNS));
    }
    Ok(())
}
