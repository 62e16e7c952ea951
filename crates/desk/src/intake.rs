//! Taking in a table: typed cells of a spreadsheet become edits.
//!
//! From sheets of cells to the edits that write them into a collection. Kinds and characters
//! are found again by name; blank cells say nothing. What a source says goes to its own layer.

use std::collections::BTreeMap;

use spinney_model::{AboutField, CharacterField, CharacterId, Edit, KindField, KindId};

use crate::collection::Collection;
use crate::laid::{CHARACTER_SHEET, KIND_SHEET, folded};

/// Sheets by name, each as rows of cells.
pub(crate) type Sheets = [(String, Vec<Vec<String>>)];

/// Further headings of the sheet `kinds`, which a table does not need but a collection keeps.
const FINDS_SHEET: [(KindField, &str); 4] = [
    (KindField::HowSure, "how sure"),
    (KindField::Where, "where"),
    (KindField::When, "when"),
    (KindField::WhichPlant, "which plant"),
];

/// The edits that take in sheets: the table (the first that is called nothing else), and those
/// called `characters`, `kinds` and `about`. `source` is who says it; empty: the table itself.
pub(crate) fn edits(collection: &Collection, sheets: &Sheets, source: &str) -> Vec<Edit> {
    let mut intake = Intake::of(collection);
    let called = |name: &str| {
        sheets.iter().find(|(sheet, _)| folded(sheet) == name).map(|(_, rows)| rows.as_slice())
    };
    let beside = ["characters", "kinds", "about"];
    let table = sheets.iter().find(|(name, _)| !beside.contains(&folded(name).as_str()));
    if let Some((_, rows)) = table {
        intake.table(rows, source);
    }
    if let Some(rows) = called("characters") {
        intake.characters(rows);
    }
    if let Some(rows) = called("kinds") {
        intake.kinds(rows);
    }
    if let Some(rows) = called("about") {
        intake.about(rows);
    }
    intake.edits
}

struct Intake {
    edits: Vec<Edit>,
    kinds: BTreeMap<String, KindId>,
    characters: BTreeMap<String, CharacterId>,
    next_kind: u32,
    next_character: u32,
}

impl Intake {
    fn of(collection: &Collection) -> Self {
        let kinds = collection.kinds.keys().map(|id| (folded(&collection.name(*id)), *id));
        let characters = collection.characters.keys();
        let characters = characters.map(|id| (folded(collection.character_name(*id)), *id));
        Self {
            edits: Vec::new(),
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
        self.edits.push(Edit::AddKind(id, name.to_owned()));
        id
    }

    fn character(&mut self, heading: &str) -> CharacterId {
        let (name, unit) = name_and_unit(heading);
        if let Some(id) = self.characters.get(&folded(name)) {
            return *id;
        }
        let id = CharacterId(self.next_character);
        self.next_character += 1;
        self.characters.insert(folded(name), id);
        self.edits.push(Edit::AddCharacter(id, name.to_owned()));
        if let Some(unit) = unit {
            let unit = unit.to_owned();
            self.edits.push(Edit::DescribeCharacter(id, CharacterField::Unit, unit));
        }
        id
    }

    fn table(&mut self, rows: &[Vec<String>], source: &str) {
        let [headings, rows @ ..] = rows else { return };
        let columns: Vec<Option<CharacterId>> = headings
            .iter()
            .enumerate()
            .map(|(at, heading)| {
                let heading = heading.trim();
                (at > 0 && !heading.is_empty()).then(|| self.character(heading))
            })
            .collect();
        for row in rows {
            let name = row.first().map_or("", |name| name.trim());
            if name.is_empty() {
                continue;
            }
            let kind = self.kind(name);
            for (character, text) in columns.iter().zip(row) {
                let text = text.trim();
                if let (Some(character), false) = (*character, text.is_empty()) {
                    let (source, text) = (source.to_owned(), text.to_owned());
                    self.edits.push(Edit::SetCell { kind, character, source, text });
                }
            }
        }
    }

    fn characters(&mut self, rows: &[Vec<String>]) {
        for (name, row) in records(rows) {
            let id = self.character(&name);
            for (field, heading) in &CHARACTER_SHEET[1..] {
                if let Some(text) = row.get(*heading) {
                    self.edits.push(Edit::DescribeCharacter(id, *field, text.clone()));
                }
            }
        }
    }

    fn kinds(&mut self, rows: &[Vec<String>]) {
        for (name, row) in records(rows) {
            let id = self.kind(&name);
            for (field, heading) in KIND_SHEET[1..].iter().chain(&FINDS_SHEET) {
                if let Some(text) = row.get(*heading) {
                    self.edits.push(Edit::DescribeKind(id, *field, text.clone()));
                }
            }
        }
    }

    fn about(&mut self, rows: &[Vec<String>]) {
        for row in rows {
            let [what, text, ..] = row.as_slice() else { continue };
            let field = match folded(what.trim_end_matches(':')).as_str() {
                "title" => AboutField::Title,
                "place" | "where" => AboutField::Place,
                "season" | "when" | "date" => AboutField::Season,
                "part" | "on" => AboutField::Part,
                "caution" => AboutField::Caution,
                _ => continue,
            };
            self.edits.push(Edit::DescribeScene(field, text.trim().to_owned()));
        }
    }
}

/// The rows of a sheet: the name in the first column, and what stands under each heading.
fn records(rows: &[Vec<String>]) -> Vec<(String, BTreeMap<String, String>)> {
    let [headings, rows @ ..] = rows else { return Vec::new() };
    let record = |row: &Vec<String>| {
        let name = row.first()?.trim();
        let filled = headings.iter().zip(row).filter(|(_, text)| !text.trim().is_empty());
        let fields = filled.map(|(heading, text)| (folded(heading), text.trim().to_owned()));
        (!name.is_empty()).then(|| (name.to_owned(), fields.collect()))
    };
    rows.iter().filter_map(record).collect()
}

/// `blade length (mm)` is a name and a unit.
pub(crate) fn name_and_unit(heading: &str) -> (&str, Option<&str>) {
    let parts = heading.strip_suffix(')').and_then(|rest| rest.rsplit_once('('));
    match parts {
        Some((name, unit)) if !name.trim().is_empty() && !unit.trim().is_empty() => {
            (name.trim(), Some(unit.trim()))
        }
        _ => (heading, None),
    }
}

#[cfg(test)]
mod tests;
