//! Taking in a table: typed cells of a spreadsheet become edits.
//!
//! From sheets of cells to the edits that write them into a collection. Kinds and characters
//! are found again by name; blank cells say nothing. What a source says goes to its own layer.
//! The sheets beside the table have no layers: what a group's say of a field that is filled
//! already is left, and told.

mod units;

use std::collections::BTreeMap;

use spinney_exchange::table;
use spinney_model::{AboutField, CharacterField, CharacterId, Edit, KindField, KindId};

use crate::collection::Collection;
use crate::laid::{CHARACTER_SHEET, KIND_SHEET, folded};

pub(crate) use units::OddUnit;

/// Sheets by name, each as rows of cells.
pub(crate) type Sheets = [(String, Vec<Vec<String>>)];

/// Further headings of the sheet `kinds`, which a table does not need but a collection keeps.
const FINDS_SHEET: [(KindField, &str); 4] = [
    (KindField::HowSure, "how sure"),
    (KindField::Where, "where"),
    (KindField::When, "when"),
    (KindField::WhichPlant, "which plant"),
];

/// What was taken in.
#[derive(Debug, Default)]
pub(crate) struct Taken {
    pub(crate) edits: Vec<Edit>,
    /// What was left, because something else stands there.
    pub(crate) left: Vec<Left>,
}

/// Something that a sheet says, and that was left.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Left {
    pub(crate) of: Field,
    pub(crate) theirs: String,
}

/// A field that the sheets beside the table fill.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Field {
    Kind(KindId, KindField),
    Character(CharacterId, CharacterField),
    About(AboutField),
}

impl Field {
    /// What stands there; empty: nothing does.
    pub(crate) fn now(self, collection: &Collection) -> &str {
        match self {
            Self::Kind(id, field) => {
                collection.kinds.get(&id).map_or("", |kind| kind.field(field))
            }
            Self::Character(id, field) => collection.character_field(id, field),
            Self::About(field) => collection.about_field(field),
        }
    }

    fn written(self, text: String) -> Edit {
        match self {
            Self::Kind(id, field) => Edit::DescribeKind(id, field, text),
            Self::Character(id, field) => Edit::DescribeCharacter(id, field, text),
            Self::About(field) => Edit::DescribeScene(field, text),
        }
    }
}

/// The headings of the sheet `kinds`, but for the name.
pub(crate) fn kind_headings() -> impl Iterator<Item = &'static (KindField, &'static str)> {
    KIND_SHEET[1..].iter().chain(&FINDS_SHEET)
}

/// The edits that take in sheets: the table (the first that is called nothing else), and those
/// called `characters`, `kinds` and `about`. `source` is who says it; empty: the table itself.
///
/// **Errors**: a heading has a unit that says nothing of the column that is there.
pub(crate) fn take_in(
    collection: &Collection,
    sheets: &Sheets,
    source: &str,
) -> Result<Taken, OddUnit> {
    let mut intake = Intake::of(collection, source);
    let called = |name: &str| {
        sheets.iter().find(|(sheet, _)| folded(sheet) == name).map(|(_, rows)| rows.as_slice())
    };
    let beside = ["characters", "kinds", "about"];
    let described = called("characters").map_or(Vec::new(), records);
    let table = sheets.iter().find(|(name, _)| !beside.contains(&folded(name).as_str()));
    if let Some((_, rows)) = table {
        intake.table(rows, &described)?;
    }
    intake.characters(described);
    intake.kinds(called("kinds").map_or(Vec::new(), records));
    intake.about(called("about").unwrap_or_default());
    Ok(intake.taken)
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
        if let Some(id) = self.kinds.get(&folded(name)) {
            return *id;
        }
        let id = KindId(self.next_kind);
        self.next_kind += 1;
        self.kinds.insert(folded(name), id);
        self.taken.edits.push(Edit::AddKind(id, name.to_owned()));
        id
    }

    fn character(&mut self, name: &str) -> CharacterId {
        if let Some(id) = self.characters.get(&folded(name)) {
            return *id;
        }
        let id = CharacterId(self.next_character);
        self.next_character += 1;
        self.characters.insert(folded(name), id);
        self.taken.edits.push(Edit::AddCharacter(id, name.to_owned()));
        id
    }

    fn table(&mut self, rows: &[Vec<String>], described: &[Record]) -> Result<(), OddUnit> {
        let [headings, rows @ ..] = rows else { return Ok(()) };
        let mut columns: Vec<Option<Column>> = Vec::new();
        let mut seen = BTreeMap::new();
        for (at, heading) in headings.iter().enumerate() {
            let heading = heading.trim();
            let column = (at > 0 && !heading.is_empty())
                .then(|| self.column(heading, described, &mut seen));
            columns.push(column.transpose()?);
        }
        let mut seen = BTreeMap::new();
        for row in rows {
            let name = row.first().map_or("", |name| name.trim());
            if name.is_empty() {
                continue;
            }
            let kind = self.kind(&unseen(name, &mut seen));
            for (column, text) in columns.iter().zip(row) {
                let text = text.trim();
                let (Some(column), false) = (column, text.is_empty()) else { continue };
                let text = match &column.unit {
                    Some(unit) => table::measured_in(text, unit),
                    None => text.to_owned(),
                };
                let (character, source) = (column.character, self.source.to_owned());
                self.taken.edits.push(Edit::SetCell { kind, character, source, text });
            }
        }
        Ok(())
    }

    /// The column under a heading.
    fn column(
        &mut self,
        heading: &str,
        described: &[Record],
        seen: &mut BTreeMap<String, usize>,
    ) -> Result<Column, OddUnit> {
        // A name that is known, letter for letter, is the whole name.
        let known = self.characters.contains_key(&folded(heading));
        let (name, unit) = match known {
            true => (heading.to_owned(), None),
            false => table::name_and_unit(heading),
        };
        let name = unseen(&name, seen);
        let there = self.characters.get(&folded(&name)).copied();
        let there = there.filter(|id| self.collection.characters.contains_key(id));
        let theirs = unit.clone().or_else(|| units::described(described, &name));
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
            self.taken.edits.push(Edit::DescribeCharacter(
                character,
                CharacterField::Unit,
                unit,
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

    fn characters(&mut self, described: Vec<Record>) {
        for (name, mut row) in described {
            let id = self.character(&name);
            for (field, heading) in &CHARACTER_SHEET[1..] {
                if let Some(text) = row.remove(*heading) {
                    self.write(Field::Character(id, *field), text);
                }
            }
        }
    }

    fn kinds(&mut self, rows: Vec<Record>) {
        for (name, mut row) in rows {
            let id = self.kind(&name);
            for (field, heading) in kind_headings() {
                if let Some(text) = row.remove(*heading) {
                    self.write(Field::Kind(id, *field), text);
                }
            }
        }
    }

    fn about(&mut self, rows: &[Vec<String>]) {
        // What is there several times holds several lines.
        let mut said: BTreeMap<AboutField, Vec<&str>> = BTreeMap::new();
        for row in rows {
            let [what, text, ..] = row.as_slice() else { continue };
            let field = match folded(what.trim_end_matches(':')).as_str() {
                "title" => AboutField::Title,
                "place" | "where" => AboutField::Place,
                "season" | "when" | "date" => AboutField::Season,
                "part" | "on" => AboutField::Part,
                "caution" => AboutField::Caution,
                "before you go" => AboutField::BeforeYouGo,
                _ => continue,
            };
            if !text.trim().is_empty() {
                said.entry(field).or_default().push(text.trim());
            }
        }
        for (field, lines) in said {
            let between = if field == AboutField::BeforeYouGo { "\n" } else { " " };
            self.write(Field::About(field), lines.join(between));
        }
    }
}

/// A name that did not stand there before: what stands twice is two kinds, or two columns, so that
/// neither writes over the other. A table that is read from a file is read so as well.
fn unseen(name: &str, seen: &mut BTreeMap<String, usize>) -> String {
    let mut given = name.to_owned();
    while seen.contains_key(&folded(&given)) {
        // Counting on from the last of this name: twenty thousand of one name are quick.
        let count = seen.entry(folded(name)).or_default();
        *count += 1;
        given = format!("{name} ({count})");
    }
    seen.insert(folded(&given), 1);
    given
}

/// A row of a sheet: the name in the first column, and what stands under each heading.
type Record = (String, BTreeMap<String, String>);

fn records(rows: &[Vec<String>]) -> Vec<Record> {
    let [headings, rows @ ..] = rows else { return Vec::new() };
    let record = |row: &Vec<String>| {
        let name = row.first()?.trim();
        let filled = headings.iter().zip(row).filter(|(_, text)| !text.trim().is_empty());
        let fields = filled.map(|(heading, text)| (folded(heading), text.trim().to_owned()));
        (!name.is_empty()).then(|| (name.to_owned(), fields.collect()))
    };
    rows.iter().filter_map(record).collect()
}

#[cfg(test)]
mod tests;
