//! `spinney template`: an empty table with questions to start from.

use std::path::Path;

use spinney_exchange::template::{self, Begun, Content};
use spinney_voice::Tongue;
use spinney_voice::starters::Starter;

use crate::args::Template;
use crate::failure::Failure;
use crate::files::{self, Over};
use crate::terminal;

/// The questions in it: those about leaves that most begin with. Who governs stands before whom.
const QUESTIONS: [&str; 11] = [
    "leaf-form",
    "leaflets",
    "leaf-lobes",
    "how-lobed",
    "leaf-edge",
    "blade-length",
    "stalk-length",
    "leaf-places",
    "widest-part",
    "leaf-tip",
    "leaf-feel",
];

/// How it is filled in, row by row: each message has what it means beside it. None: an empty row.
const ADVICE: [Option<&str>; 23] = [
    Some("template-row"),
    Some("template-column"),
    Some("template-look"),
    None,
    Some("template-cell"),
    Some("template-state"),
    Some("template-several"),
    Some("template-counted"),
    Some("template-length"),
    Some("template-range"),
    Some("template-counts"),
    Some("template-yes"),
    Some("template-unknown"),
    Some("template-none"),
    None,
    Some("template-characters"),
    Some("template-applies-when"),
    Some("template-season"),
    Some("template-instrument"),
    Some("template-in-order"),
    Some("template-read-right"),
    Some("template-ratio-of"),
    Some("template-kinds"),
];

pub(crate) fn run(t: Tongue, args: &Template) -> Result<bool, Failure> {
    let today = jiff::Zoned::now().strftime("%Y-%m-%d").to_string();
    let workbook = template::xlsx(&today, &content(t))
        .map_err(|error| Failure::saying(move |t| spinney_voice::template_error(t, &error)))?;
    if args.file == Path::new("-") {
        return terminal::print_bytes(&workbook).map(|()| true);
    }
    if args.file.extension().is_none_or(|ending| !ending.eq_ignore_ascii_case("xlsx")) {
        return Err(Failure::usage("failure-not-xlsx", [("file", (&*args.file).into())]));
    }
    files::write_whole(&args.file, &workbook, Over::forced(args.force))?;
    let written = t.with("run-template", &[("file", &args.file.display())]);
    terminal::print(&format!("{written}\n"))?;
    Ok(true)
}

/// What stands in it, in a language.
fn content(t: Tongue) -> Content {
    let begun = QUESTIONS.iter().filter_map(|id| Starter::named(id)).map(|starter| Begun {
        name: starter.name(t),
        fields: starter.fields(t, true),
        hint: starter.hint(t),
    });
    let row = |message: &Option<&str>| match message {
        Some(message) => [t.say(message), t.say(&format!("{message}-means"))],
        None => [String::new(), String::new()],
    };
    let title = [t.say("template-how"), String::new()];
    let about = [t.say("template-about"), t.say("template-about-means")];
    let rows = ADVICE.iter().map(row);
    Content {
        title: t.say("template-title"),
        characters: begun.collect(),
        advice: std::iter::once(title).chain(rows).chain([about]).collect(),
    }
}

#[cfg(test)]
mod tests {
    use spinney_exchange::table::{Settings, Source, Sources, TableError, read};
    use spinney_model::{CharacterField as Field, Finding, Scale, Severity};

    use super::*;

    /// The fields that a question to begin with has, by their headings.
    const COLUMNS: [(Field, &str); 8] = [
        (Field::Question, "question"),
        (Field::Values, "values"),
        (Field::States, "states"),
        (Field::Unit, "unit"),
        (Field::SeenOn, "seen on"),
        (Field::Difficulty, "difficulty"),
        (Field::ByTouch, "by touch"),
        (Field::AppliesWhen, "applies when"),
    ];

    /// The sheet of characters as separated values, and a table of one kind with nothing said of it.
    fn as_csv(content: &Content) -> Sources {
        let names: Vec<&str> = content.characters.iter().map(|it| it.name.as_str()).collect();
        let table = format!("kind,{}\nhazel{}\n", names.join(","), ",".repeat(names.len()));
        let headings = COLUMNS.map(|(_, heading)| heading).join(",");
        let mut sheet = format!("character,{headings}");
        for begun in &content.characters {
            let text = |field: Field| {
                let found = begun.fields.iter().find(|(of, _)| *of == field);
                format!("\"{}\"", found.map_or("", |(_, text)| text.as_str()))
            };
            let row = COLUMNS.map(|(field, _)| text(field)).join(",");
            sheet.push_str(&format!("\n\"{}\",{row}", begun.name));
        }
        let source = |name: &str, text: String| Source {
            name: name.to_owned(),
            bytes: text.into_bytes(),
        };
        Sources {
            table: source("table.csv", table),
            characters: Some(source("characters.csv", sheet)),
            ..Sources::default()
        }
    }

    #[test]
    fn it_is_read_as_it_is_written_in_each_language() {
        let mut names = std::collections::BTreeSet::new();
        for t in Tongue::all() {
            let content = content(t);
            assert_eq!(
                content.characters.len(),
                QUESTIONS.len(),
                "every question is in the list"
            );
            let read = read(&as_csv(&content), &Settings::default()).expect("a kind is in it");
            let wrong = read.findings.iter().filter(|it| it.severity == Severity::MendThis);
            assert_eq!(wrong.collect::<Vec<_>>(), Vec::<&Finding>::new());
            let characters = read.matrix.characters();
            assert_eq!(characters.len(), QUESTIONS.len());
            let words = characters.iter().filter(|it| matches!(it.scale, Scale::Words { .. }));
            assert_eq!(words.count(), 8);
            assert_eq!(characters.iter().filter(|it| it.governor.is_some()).count(), 5);
            assert_eq!(characters.iter().filter(|it| it.by_touch).count(), 1);
            names.extend(characters.iter().map(|it| it.name.clone()));
            // As a workbook it lacks nothing but kinds.
            let bytes = template::xlsx("2026-10-03", &content).expect("it can be written");
            let table = Source { name: "leaves.xlsx".to_owned(), bytes };
            let empty = read_alone(table);
            assert_eq!(empty, Some(TableError::NoKinds { name: "table".to_owned() }));
        }
        assert_eq!(
            names.len(),
            2 * QUESTIONS.len(),
            "each has a name of its own in each language"
        );
    }

    fn read_alone(table: Source) -> Option<TableError> {
        read(&Sources { table, ..Sources::default() }, &Settings::default()).err()
    }
}
