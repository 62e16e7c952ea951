//! Taking in a table: typed sheets become edits.
//!
//! From sheets as the reader of tables gives them to the edits that write them into a collection.
//! Kinds and characters are found again by name; blank cells say nothing. What a source says
//! goes to its own layer. The sheets beside the table have no layers: what a group's say of a
//! field that is filled already is left, and told. It reads no headings: that is the reader's.

mod again;
mod units;

use std::collections::BTreeMap;

use spinney_exchange::table::{self, TypedColumn, TypedSheets};
use spinney_model::{
    AboutField, CharacterEdit, CharacterField, CharacterId, CharacterIx, Code, Edit, Fact,
    Finding, KindEdit, KindField, KindId, OfSheet, SpecimenId, Specimens, SpreadOf, TaxonIx,
    Value,
};

use crate::Collection;
use crate::laid::folded;
use again::Leaf;

pub use units::OddUnit;

/// What was taken in.
#[derive(Debug, Default)]
pub struct Taken {
    /// What there is to do.
    pub edits: Vec<Edit>,
    /// What was left, because something else stands there.
    pub left: Vec<Left>,
    /// Names that were taken for a kind whose name is written in other letters.
    pub taken_for: Vec<(String, KindId)>,
    /// How many files with pictures the sheets name; they do not come along.
    pub pictures: usize,
    /// How many leaves of it are here already.
    pub here_already: usize,
    /// Of how many of these it says more, or something else.
    pub changed: usize,
}

/// Something that a sheet says, and that was left.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Left {
    /// What is written there.
    pub of: Field,
    /// What the table says that comes in.
    pub theirs: String,
}

/// A field that the sheets beside the table fill.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Field {
    /// Of a kind.
    Kind(KindId, KindField),
    /// Of a character.
    Character(CharacterId, CharacterField),
    /// Of the visit.
    About(AboutField),
}

impl Field {
    /// What stands there; empty: nothing does.
    pub fn now(self, collection: &Collection) -> &str {
        match self {
            Self::Kind(id, field) => {
                collection.kinds.get(&id).map_or("", |kind| kind.field(field))
            }
            Self::Character(id, field) => collection.character_field(id, field),
            Self::About(field) => collection.about_field(field),
        }
    }

    /// It in an address, `kind:3:caution`: the heading of the sheet has no blank there.
    pub fn mark(self) -> String {
        let (sheet, number, heading) = match self {
            Self::Kind(id, of) => ("kind", id.0, heading_of(table::kind_headings(), of)),
            Self::Character(id, of) => {
                ("character", id.0, heading_of(table::character_headings(), of))
            }
            Self::About(of) => ("about", 0, heading_of(table::about_headings(), of)),
        };
        format!("{sheet}:{number}:{}", heading.replace(' ', "-"))
    }

    /// The field of such a mark; None: it is none.
    pub fn of_mark(mark: &str) -> Option<Self> {
        let mut parts = mark.splitn(3, ':');
        let (sheet, number) = (parts.next()?, parts.next()?.parse().ok()?);
        let heading = parts.next()?.replace('-', " ");
        Some(match sheet {
            "kind" => Self::Kind(KindId(number), field_of(table::kind_headings(), &heading)?),
            "character" => {
                let of = field_of(table::character_headings(), &heading)?;
                Self::Character(CharacterId(number), of)
            }
            "about" => Self::About(field_of(table::about_headings(), &heading)?),
            _ => return None,
        })
    }

    fn written(self, text: String) -> Edit {
        match self {
            Self::Kind(id, field) => Edit::Kind(id, KindEdit::Describe(field, text)),
            Self::Character(id, field) => {
                Edit::Character(id, CharacterEdit::Describe(field, text))
            }
            Self::About(field) => Edit::Scene(field, text),
        }
    }
}

type Headings<F> = (F, &'static str);

fn heading_of<F: PartialEq>(mut all: impl Iterator<Item = Headings<F>>, of: F) -> &'static str {
    all.find(|(known, _)| *known == of).map_or("", |(_, heading)| heading)
}

fn field_of<F>(mut all: impl Iterator<Item = Headings<F>>, heading: &str) -> Option<F> {
    all.find(|(_, known)| *known == heading).map(|(field, _)| field)
}

/// The edits that take in sheets. `source` is who says it; empty: the table itself. Where rows
/// are leaves, each is kept as a specimen; the source has a name there, so that what people type
/// in the table goes before it.
///
/// **Errors**: a heading has a unit that says nothing of the column that is there.
pub fn take_in(
    collection: &Collection,
    sheets: &TypedSheets,
    source: &str,
) -> Result<Taken, OddUnit> {
    let mut intake = Intake::of(collection, source);
    intake.table(sheets)?;
    intake.characters(&sheets.characters);
    intake.kinds(sheets);
    for (field, text) in &sheets.about {
        intake.write(Field::About(*field), text.clone());
    }
    Ok(intake.taken)
}

/// What of a table was not understood or could not be taken in, as its reader says it. What it
/// assumed, and what nobody has looked at yet, the table itself goes on to say.
pub fn not_understood(sheets: &TypedSheets) -> impl Iterator<Item = &Finding> {
    sheets.findings.iter().filter(|finding| match finding.code {
        Code::CellNotUnderstood | Code::CellNotPlain | Code::HeadingTwice => true,
        Code::LeftOut | Code::StatesAlike | Code::SheetDisagrees => true,
        // Asked about among the finds, where it can be answered.
        Code::KindTwice => false,
        _ => false,
    })
}

/// How the leaves of each kind of a table spread, where each row was one.
pub fn spread_of_kinds(leaves: &table::Leaves) -> Vec<SpreadOf> {
    spinney_check::spread_of_kinds(&leaves.kinds, &leaves.specimens)
}

/// A kind that is on several rows, as where each row is one leaf, and on how many.
pub fn on_several_rows(sheets: &TypedSheets) -> Option<(&str, usize)> {
    sheets.findings.iter().find_map(|finding| match &finding.fact {
        Fact::Sheet(OfSheet::KindsOnSeveralRows { kind, rows, .. }) => {
            Some((kind.as_str(), *rows))
        }
        _ => None,
    })
}

/// Whether numbers in a unit can go into a column that is there.
pub(crate) fn takes(collection: &Collection, id: CharacterId, unit: &str) -> bool {
    units::fitting(collection, id, unit).is_ok()
}

struct Intake<'c> {
    collection: &'c Collection,
    source: &'c str,
    taken: Taken,
    /// What these sheets have written into fields.
    written: BTreeMap<Field, String>,
    kinds: BTreeMap<String, KindId>,
    characters: BTreeMap<String, CharacterId>,
    next_kind: u32,
    next_character: u32,
}

/// A column of the table that is taken in.
struct Column {
    character: CharacterId,
    /// Written behind its numbers, since the column is measured in another.
    unit: Option<String>,
}

impl<'c> Intake<'c> {
    fn of(collection: &'c Collection, source: &'c str) -> Self {
        let kinds = collection.kinds.keys().map(|id| (folded(&collection.name(*id)), *id));
        let characters = collection.characters.keys();
        let characters = characters.map(|id| (folded(collection.character_name(*id)), *id));
        Self {
            collection,
            source,
            taken: Taken::default(),
            written: BTreeMap::new(),
            kinds: kinds.collect(),
            characters: characters.collect(),
            next_kind: collection.next_kind().0,
            next_character: collection.next_character().0,
        }
    }

    fn kind(&mut self, name: &str) -> KindId {
        if let Some(id) = self.kinds.get(&folded(name)).copied() {
            let ours = self.collection.kinds.contains_key(&id);
            let letters = || self.collection.name(id) == name;
            let told = || self.taken.taken_for.iter().any(|(theirs, _)| theirs == name);
            if ours && !letters() && !told() {
                self.taken.taken_for.push((name.to_owned(), id));
            }
            return id;
        }
        let id = KindId(self.next_kind);
        self.next_kind += 1;
        self.kinds.insert(folded(name), id);
        self.taken.edits.push(Edit::Kind(id, KindEdit::Add(name.to_owned())));
        id
    }

    fn character(&mut self, name: &str) -> CharacterId {
        if let Some(id) = self.characters.get(&folded(name)) {
            return *id;
        }
        let id = CharacterId(self.next_character);
        self.next_character += 1;
        self.characters.insert(folded(name), id);
        self.taken.edits.push(Edit::Character(id, CharacterEdit::Add(name.to_owned())));
        id
    }

    fn table(&mut self, sheets: &TypedSheets) -> Result<(), OddUnit> {
        let columns = sheets.columns.iter().map(|column| self.column(column, sheets));
        let columns: Vec<Column> = columns.collect::<Result<_, _>>()?;
        if let Some(leaves) = &sheets.leaves {
            self.specimens(leaves, &columns);
            return Ok(());
        }
        for (name, texts) in &sheets.rows {
            let kind = self.kind(name);
            for (column, text) in columns.iter().zip(texts) {
                if text.is_empty() {
                    continue;
                }
                let text = match &column.unit {
                    Some(unit) => table::measured_in(text, unit),
                    None => text.to_owned(),
                };
                let (character, source) = (column.character, self.source.to_owned());
                self.taken.edits.push(Edit::Cell { kind, character, source, text });
            }
        }
        Ok(())
    }

    /// Each row that is a leaf is kept as one; what its kind comes to follows from them. One that
    /// is here already gets what the row says of it, and stays of its kind.
    fn specimens(&mut self, leaves: &table::Leaves, columns: &[Column]) {
        let table::Leaves { kinds, specimens } = leaves;
        // Kinds come in the order of the table, and one of which nothing was seen comes, too.
        let ids: Vec<KindId> =
            kinds.taxa().iter().map(|taxon| self.kind(&taxon.name)).collect();
        let written = specimens.written.iter().enumerate();
        let rows = written.map(|(row, written)| Leaf {
            kind: ids[written.kind.0],
            fields: Leaf::fields(self.source, written),
            measured: measured(specimens, TaxonIx(row), columns),
        });
        let rows: Vec<Leaf> = rows.collect();
        let mut next = self.collection.next_specimen().0;
        for (row, known) in rows.iter().zip(again::known(self.collection, &rows)) {
            let (id, edits) = match known {
                Some((id, known)) => {
                    let edits = row.more_than(known);
                    self.taken.here_already += 1;
                    self.taken.changed += usize::from(!edits.is_empty());
                    (id, edits)
                }
                None => {
                    next += 1;
                    (SpecimenId(next - 1), row.as_new())
                }
            };
            self.taken.edits.extend(edits.into_iter().map(|edit| Edit::Specimen(id, edit)));
        }
    }

    /// The column under a heading.
    fn column(&mut self, typed: &TypedColumn, sheets: &TypedSheets) -> Result<Column, OddUnit> {
        // A name that is known, letter for letter, is the whole name.
        let known =
            typed.unit.is_some() && self.characters.contains_key(&folded(&typed.heading));
        let (name, unit) = match known {
            true => (typed.heading.clone(), None),
            false => (typed.name.clone(), typed.unit.map(str::to_owned)),
        };
        let there = self.characters.get(&folded(&name)).copied();
        let there = there.filter(|id| self.collection.characters.contains_key(id));
        let theirs = unit.clone().or_else(|| units::described(sheets, &name));
        if let Some(id) = there {
            let unit = match theirs {
                Some(theirs) => units::fitting(self.collection, id, &theirs)?,
                None => units::Fitting::AsTyped,
            };
            let unit = match unit {
                units::Fitting::AsTyped => None,
                units::Fitting::Written(unit) => Some(unit),
                units::Fitting::First(unit) => {
                    self.write(Field::Character(id, CharacterField::Unit), unit);
                    None
                }
            };
            return Ok(Column { character: id, unit });
        }
        let character = self.character(&name);
        if let Some(unit) = unit {
            self.taken.edits.push(Edit::Character(
                character,
                CharacterEdit::Describe(CharacterField::Unit, unit),
            ));
        }
        Ok(Column { character, unit: None })
    }

    /// Writes a field. What a group says of one that is filled is left, and so is another unit
    /// for numbers that are there, and whatever these sheets say a second time.
    fn write(&mut self, of: Field, theirs: String) {
        let first = self.written.get(&of).map(String::as_str);
        let now = first.unwrap_or_else(|| of.now(self.collection));
        let unit = matches!(of, Field::Character(_, CharacterField::Unit));
        let decides = self.source.is_empty() && !unit && first.is_none();
        if now.is_empty() || decides {
            self.written.insert(of, theirs.clone());
            self.taken.edits.push(of.written(theirs));
        } else if !now.split_whitespace().eq(theirs.split_whitespace()) {
            self.taken.left.push(Left { of, theirs });
        }
    }

    fn characters(&mut self, described: &[(String, Vec<(CharacterField, String)>)]) {
        for (name, fields) in described {
            let id = self.character(name);
            for (field, text) in fields {
                self.write(Field::Character(id, *field), text.clone());
            }
        }
    }

    fn kinds(&mut self, sheets: &TypedSheets) {
        for row in &sheets.kinds {
            let id = self.kind(&row.name);
            for (field, text) in &row.fields {
                self.write(Field::Kind(id, *field), text.clone());
            }
            self.taken.pictures += usize::from(row.picture.is_some());
        }
    }
}

/// What a row that is a leaf says in each column.
fn measured(
    specimens: &Specimens,
    row: TaxonIx,
    columns: &[Column],
) -> BTreeMap<CharacterId, String> {
    let texts = columns.iter().enumerate().filter_map(|(at, column)| {
        let at = CharacterIx(at);
        let cell = specimens.finds.cell(row, at);
        if cell.value == Value::Unknown {
            return None;
        }
        let text = table::cell_text(cell, &specimens.finds.character(at).scale);
        let text = match &column.unit {
            Some(unit) => table::measured_in(&text, unit),
            None => text,
        };
        Some((column.character, text))
    });
    texts.collect()
}

#[cfg(test)]
mod tests;
