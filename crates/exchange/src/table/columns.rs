//! The table of columns: of each column of the sheets `characters`, `kinds` and `about` its
//! field, its headings, how it is filled in, how it is read and written, and how wide it is.
//!
//! Reading, writing, the template and the screens go by it, so that a new column is a new row
//! here. Columns are read in this order, and findings are told in it.

use spinney_model::{
    AboutField, Character, CharacterField, FieldIs, KindField, Matrix, Scene, Taxon,
};

use super::characters_sheet::{self as of_characters, Described};
use super::kinds_sheet::{self as of_kinds, Weighed};
use super::phrase::{in_second, in_second_listed};
use super::report::Report;
use super::second_sheet::Record;
use super::{about_sheet, write};

/// How a column is filled in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Input {
    /// Something to type.
    Line,
    /// One of some words.
    OneOf(&'static [&'static str]),
    /// Any of some words.
    SomeOf(&'static [&'static str]),
}

/// One row of a sheet, while one of its columns is read.
pub(super) struct Reading<'r> {
    pub(super) row: Record<'r>,
    /// The column.
    pub(super) at: usize,
    /// Words that it may be.
    pub(super) words: &'static [&'static str],
}

impl<'r> Reading<'r> {
    /// What stands there; empty: nothing.
    pub(super) fn get(&self) -> &'r str {
        self.row.get(self.at)
    }

    /// What stands there, if anything does.
    pub(super) fn text(&self) -> Option<String> {
        self.row.text(self.at)
    }

    /// Says that it is not understood.
    pub(super) fn odd(&self, is: FieldIs, report: &mut Report) {
        self.row.odd(self.at, is, self.words, report);
    }
}

/// A column of the sheet `characters`.
pub(crate) struct OfCharacters {
    pub(crate) field: CharacterField,
    /// The usual heading, and what else people call it.
    pub(crate) headings: &'static [&'static str],
    pub(crate) input: Input,
    /// In letters.
    pub(crate) width: f64,
    read: fn(&mut Described, &Reading<'_>, &mut Report),
    pub(super) write: fn(&Character, &Matrix) -> String,
}

/// A column of the sheet `kinds`.
pub(crate) struct OfKinds {
    /// None: a file with a picture.
    pub(crate) field: Option<KindField>,
    /// The usual heading, and what else people call it.
    pub(crate) headings: &'static [&'static str],
    pub(crate) input: Input,
    /// In letters.
    pub(crate) width: f64,
    read: fn(&mut Weighed, &Reading<'_>, &mut Report),
    /// None: it belongs to the finds, and no key needs it.
    pub(crate) write: Option<fn(&Taxon) -> String>,
}

/// A row of the sheet `about`.
pub(crate) struct OfAbout {
    /// None: the version, of which a collection keeps its own.
    pub(crate) field: Option<AboutField>,
    /// The usual word in the first column, and what else people write there.
    pub(crate) headings: &'static [&'static str],
    pub(super) read: fn(&mut Scene, Option<String>),
    pub(super) write: fn(&Scene) -> Vec<String>,
    /// Whether it says how many: anything but a whole number is not understood.
    pub(super) counts: bool,
}

const YES_NO: Input = Input::OneOf(&["yes", "no"]);

/// The sheet `characters`.
pub(crate) static CHARACTERS: [OfCharacters; 18] = [
    OfCharacters {
        field: CharacterField::Name,
        headings: &["character", "characters", "name", "heading"],
        input: Input::Line,
        width: 20.0,
        read: |into, cell, _| into.name = cell.get().to_owned(),
        write: |character, _| character.name.clone(),
    },
    OfCharacters {
        field: CharacterField::Question,
        headings: &["question", "wording", "how to ask"],
        input: Input::Line,
        width: 38.0,
        read: |into, cell, _| into.question = cell.text(),
        write: |character, _| character.question.clone().unwrap_or_default(),
    },
    OfCharacters {
        field: CharacterField::Values,
        headings: &["values", "holds"],
        input: Input::OneOf(&["words", "counts", "measure"]),
        width: 10.0,
        read: of_characters::values,
        write: |character, _| write::values(character).to_owned(),
    },
    OfCharacters {
        field: CharacterField::States,
        headings: &["states", "state", "words"],
        input: Input::Line,
        width: 38.0,
        read: of_characters::states_listed,
        write: |character, _| write::states(character),
    },
    OfCharacters {
        field: CharacterField::Unit,
        headings: &["unit", "units", "measured in"],
        input: Input::OneOf(&["mm", "cm", "m", "in", "ft", "°", "g", "ratio", "count"]),
        width: 8.0,
        // What a column holds may show in its unit alone: both are read together.
        read: |_, _, _| {},
        write: |character, _| write::unit(character).to_owned(),
    },
    OfCharacters {
        field: CharacterField::Gap,
        headings: &["gap", "safety gap", "safety margin"],
        input: Input::Line,
        width: 8.0,
        read: of_characters::gap,
        write: |character, _| write::gap(character),
    },
    OfCharacters {
        field: CharacterField::SeenOn,
        headings: &["seen on", "where seen", "where"],
        input: Input::SomeOf(&[
            "tree",
            "twig",
            "leaf",
            "rubbing",
            "photograph",
            "winter twig",
            "tray",
        ]),
        width: 30.0,
        read: of_characters::seen_on,
        write: |character, _| {
            write::joined(character.seen_on.iter().map(|form| form.word()), ", ")
        },
    },
    OfCharacters {
        field: CharacterField::Difficulty,
        headings: &["difficulty", "how hard", "hard to see"],
        input: Input::OneOf(&["easy", "fair", "hard"]),
        width: 10.0,
        read: of_characters::difficulty,
        write: |character, _| write::difficulty(character).to_owned(),
    },
    OfCharacters {
        field: CharacterField::ReadRight,
        headings: &["read right", "reliability", "read right (per cent)", "read right (%)"],
        input: Input::Line,
        width: 11.0,
        read: of_characters::read_right,
        write: write::read_right,
    },
    OfCharacters {
        field: CharacterField::ByTouch,
        headings: &["by touch", "touch"],
        input: YES_NO,
        width: 9.0,
        read: |into, cell, report| {
            into.by_touch = of_characters::yes_or_no(cell, FieldIs::ByTouch, report)
        },
        write: |character, _| if character.by_touch { "yes" } else { "no" }.to_owned(),
    },
    OfCharacters {
        field: CharacterField::AppliesWhen,
        headings: &["applies when", "applies if", "only when", "only if"],
        input: Input::Line,
        width: 44.0,
        read: of_characters::applies,
        write: write::applies_when,
    },
    OfCharacters {
        field: CharacterField::Season,
        headings: &["season", "seasons", "when seen"],
        input: Input::SomeOf(&["spring", "summer", "autumn", "winter"]),
        width: 16.0,
        read: of_characters::seasons,
        write: |character, _| {
            write::joined(character.seasons.iter().map(|season| season.word()), ", ")
        },
    },
    OfCharacters {
        field: CharacterField::Instrument,
        headings: &["instrument", "instruments", "tool", "seen with"],
        input: Input::OneOf(&["eyes", "lens", "ruler"]),
        width: 11.0,
        read: of_characters::instrument,
        write: |character, _| character.instrument.word().to_owned(),
    },
    OfCharacters {
        field: CharacterField::InOrder,
        headings: &["in order", "ordered", "states in order"],
        input: YES_NO,
        width: 9.0,
        read: |into, cell, report| {
            into.in_order =
                of_characters::yes_or_no(cell, FieldIs::InOrder, report).unwrap_or(false);
        },
        write: |character, _| if character.ordered { "yes" } else { "" }.to_owned(),
    },
    OfCharacters {
        field: CharacterField::WordsToKnow,
        headings: &["words to know", "word to know", "terms", "vocabulary"],
        input: Input::Line,
        width: 24.0,
        read: |into, cell, _| into.terms = of_characters::terms(cell.get()),
        write: |character, _| write::terms(character),
    },
    OfCharacters {
        field: CharacterField::RatioOf,
        headings: &["ratio of", "ratio", "proportion of"],
        input: Input::Line,
        width: 30.0,
        read: |into, cell, _| into.ratio = of_characters::ratio(cell.row),
        write: write::ratio_of,
    },
    OfCharacters {
        field: CharacterField::SecondQuestion,
        headings: &["second question", "question in the second language"],
        input: Input::Line,
        width: 38.0,
        read: |into, cell, _| into.second_question = cell.text(),
        write: |character, _| character.second_question.clone().unwrap_or_default(),
    },
    OfCharacters {
        field: CharacterField::SecondStates,
        headings: &["second states", "states in the second language"],
        input: Input::Line,
        width: 38.0,
        read: |into, cell, _| into.second_states = in_second_listed(cell.get()),
        write: |character, _| write::in_second_listed(&character.second_states),
    },
];

/// What a column says of a find itself, where each row of the table is a find.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum OfFind {
    Kind,
    Find,
    Picture,
    WhichPlant,
    Where,
    When,
    Part,
}

/// The columns of a table in which each row is a find that say which find it is. All others are
/// characters.
pub(crate) const FINDS: [(OfFind, &[&str]); 7] = [
    (OfFind::Kind, &["kind", "kinds", "name", "species"]),
    (OfFind::Find, &["find", "leaf", "no", "no.", "nr", "nr.", "#", "number"]),
    (OfFind::Picture, &["picture", "photo", "image", "picture file"]),
    (OfFind::WhichPlant, &["which plant", "which one", "plant", "tree", "shrub"]),
    (OfFind::Where, &["where", "where found", "place"]),
    (OfFind::When, &["when", "when found", "date"]),
    (OfFind::Part, &["which part", "part", "sun or shade"]),
];

/// The sheet `kinds`; what belongs to the finds comes last.
pub(crate) static KINDS: [OfKinds; 12] = [
    OfKinds {
        field: Some(KindField::Name),
        headings: &["kind", "kinds", "name", "species"],
        input: Input::Line,
        width: 20.0,
        read: |into, cell, _| into.taxon.name = cell.get().to_owned(),
        write: Some(|taxon| taxon.name.clone()),
    },
    OfKinds {
        field: Some(KindField::ScientificName),
        headings: &["scientific name", "latin name", "botanical name"],
        input: Input::Line,
        width: 24.0,
        read: |into, cell, _| into.taxon.scientific_name = cell.text(),
        write: Some(|taxon| taxon.scientific_name.clone().unwrap_or_default()),
    },
    OfKinds {
        field: Some(KindField::OtherNames),
        headings: &["other names", "other name", "also called"],
        input: Input::Line,
        width: 30.0,
        read: |into, cell, _| into.taxon.other_names = of_kinds::other_names(cell.get()),
        write: Some(write::other_names),
    },
    OfKinds {
        field: Some(KindField::HowOften),
        headings: &["how often", "how often met", "weight", "frequency"],
        input: Input::OneOf(&["often", "sometimes", "rarely"]),
        width: 14.0,
        read: of_kinds::weight,
        write: Some(|taxon| write::weight(taxon.weight)),
    },
    OfKinds {
        field: Some(KindField::Caution),
        headings: &["caution", "cautions", "take care"],
        input: Input::Line,
        width: 34.0,
        read: |into, cell, _| into.taxon.caution = cell.text(),
        write: Some(|taxon| taxon.caution.clone().unwrap_or_default()),
    },
    OfKinds {
        field: None,
        headings: &["picture", "photo", "image", "picture file"],
        input: Input::Line,
        width: 20.0,
        read: |into, cell, _| into.taxon.picture = cell.text(),
        write: Some(|taxon| taxon.picture.clone().unwrap_or_default()),
    },
    OfKinds {
        field: Some(KindField::ConfirmBy),
        headings: &["confirm by", "confirm", "confirming", "to be sure"],
        input: Input::Line,
        width: 40.0,
        read: |into, cell, _| into.taxon.confirming = cell.text(),
        write: Some(|taxon| taxon.confirming.clone().unwrap_or_default()),
    },
    OfKinds {
        field: Some(KindField::SecondName),
        headings: &["second name", "name in the second language"],
        input: Input::Line,
        width: 20.0,
        read: |into, cell, _| into.taxon.second_name = cell.text(),
        write: Some(|taxon| taxon.second_name.clone().unwrap_or_default()),
    },
    of_a_find(KindField::HowSure, &["how sure", "sure"]),
    of_a_find(KindField::Where, &["where", "where found", "place"]),
    of_a_find(KindField::When, &["when", "when found", "date"]),
    of_a_find(KindField::WhichPlant, &["which plant", "which one"]),
];

const fn of_a_find(field: KindField, headings: &'static [&'static str]) -> OfKinds {
    OfKinds {
        field: Some(field),
        headings,
        input: Input::Line,
        width: 20.0,
        read: |_, _, _| {},
        write: None,
    }
}

/// The sheet `about`.
pub(crate) static ABOUT: [OfAbout; 11] = [
    OfAbout {
        field: Some(AboutField::Title),
        headings: &["title"],
        read: |scene, text| scene.title = text,
        write: |scene| scene.title.iter().cloned().collect(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::Place),
        headings: &["place", "where"],
        read: |scene, text| scene.place = text,
        write: |scene| scene.place.iter().cloned().collect(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::Season),
        headings: &["season", "when", "date"],
        read: |scene, text| scene.season = text,
        write: |scene| scene.season.iter().cloned().collect(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::Part),
        headings: &["part", "on"],
        read: |scene, text| scene.part = text,
        write: |scene| scene.part.iter().cloned().collect(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::Caution),
        headings: &["caution", "cautions", "take care"],
        read: about_sheet::caution,
        write: |scene| scene.caution.iter().cloned().collect(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::BeforeYouGo),
        headings: &["before you go", "before we go"],
        read: |scene, text| {
            scene.before_you_go.extend(about_sheet::lines(&text.unwrap_or_default()));
        },
        write: |scene| scene.before_you_go.clone(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::Children),
        headings: &["children", "pupils", "number of children"],
        read: |scene, text| scene.children = text.as_deref().and_then(about_sheet::how_many),
        write: |scene| scene.children.iter().map(u16::to_string).collect(),
        counts: true,
    },
    OfAbout {
        field: Some(AboutField::Groups),
        headings: &["groups", "number of groups"],
        read: |scene, text| scene.groups = text.as_deref().and_then(about_sheet::how_many),
        write: |scene| scene.groups.iter().map(u16::to_string).collect(),
        counts: true,
    },
    OfAbout {
        field: Some(AboutField::SecondLanguage),
        headings: &["second language"],
        read: |scene, text| scene.second_language = text,
        write: |scene| scene.second_language.iter().cloned().collect(),
        counts: false,
    },
    OfAbout {
        field: Some(AboutField::SecondQuestions),
        headings: &["second question", "question in the second language"],
        read: |scene, text| {
            let text = text.unwrap_or_default();
            let lines = about_sheet::lines(&text);
            scene.second_questions.extend(lines.filter_map(|line| in_second(&line)));
        },
        write: |scene| {
            scene.second_questions.iter().map(|pair| write::in_second(pair, &[])).collect()
        },
        counts: false,
    },
    OfAbout {
        field: None,
        headings: &["version"],
        read: |scene, text| scene.version = text,
        write: |scene| scene.version.iter().cloned().collect(),
        counts: false,
    },
];

/// Where a field of a character stands.
pub(super) fn place_of(field: CharacterField) -> usize {
    let place = CHARACTERS.iter().position(|column| column.field == field);
    place.expect("every field of a character has its column")
}

impl OfCharacters {
    /// Reads the cell of a row.
    pub(super) fn read(&self, into: &mut Described, row: Record<'_>, report: &mut Report) {
        (self.read)(into, &self.reading(row), report);
    }

    fn reading<'r>(&self, row: Record<'r>) -> Reading<'r> {
        Reading { row, at: place_of(self.field), words: words(self.input) }
    }

    /// Says of a row that its cell is not understood.
    pub(super) fn odd(&self, row: Record<'_>, is: FieldIs, report: &mut Report) {
        self.reading(row).odd(is, report);
    }
}

impl OfKinds {
    /// Reads the cell of a row, which is the one `at`.
    pub(super) fn read(
        &self,
        into: &mut Weighed,
        (row, at): (Record<'_>, usize),
        report: &mut Report,
    ) {
        (self.read)(into, &Reading { row, at, words: words(self.input) }, report);
    }
}

/// The words among which one chooses.
fn words(input: Input) -> &'static [&'static str] {
    match input {
        Input::OneOf(words) | Input::SomeOf(words) => words,
        Input::Line => &[],
    }
}

#[cfg(test)]
mod tests;
