//! The lists of mistakes: from TOML to entries, and from what a file holds to its bytes.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use rust_xlsxwriter::{Format, Formula, Workbook, Worksheet};
use toml::{Table, Value};

/// One mistake, and what should be said to it.
pub(crate) struct Mistake {
    pub(crate) name: String,
    /// Files by their names, with their bytes.
    pub(crate) files: BTreeMap<String, Vec<u8>>,
    pub(crate) before: Vec<Vec<String>>,
    pub(crate) stdin: String,
    pub(crate) run: Vec<String>,
    pub(crate) exit: i64,
    pub(crate) says: Vec<String>,
    pub(crate) never: Vec<String>,
    pub(crate) want: String,
}

/// All lists.
pub(crate) struct Lists {
    pub(crate) mistakes: Vec<Mistake>,
    pub(crate) never_anywhere: Vec<String>,
}

impl Lists {
    /// Reads `mistakes.toml` and the lists beside it.
    pub(crate) fn read() -> Self {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/mistakes");
        let first: Table = list(&folder.join("mistakes.toml"));
        let shared = first["shared"]["files"].as_table().expect("files").clone();
        let mut tables = vec![first.clone()];
        let mut others: Vec<_> = fs::read_dir(&folder)
            .expect("the folder of this test")
            .map(|entry| entry.expect("an entry").path())
            .filter(|path| path.extension().is_some_and(|ending| ending == "toml"))
            .filter(|path| !path.ends_with("mistakes.toml"))
            .collect();
        others.sort();
        tables.extend(others.iter().map(|path| list(path)));
        let all = tables.iter().flat_map(|table| table["mistake"].as_array().expect("a list"));
        Self {
            mistakes: all.map(|one| mistake(one, &shared)).collect(),
            never_anywhere: texts(&first["never_anywhere"]),
        }
    }
}

/// A text as it is compared: small letters, single spaces, straight quotation marks.
pub(crate) fn plain(text: &str) -> String {
    let straight = text.replace(['“', '”'], "\"").replace(['‘', '’'], "'").to_lowercase();
    straight.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn list(path: &Path) -> Table {
    let text = fs::read_to_string(path).expect("a list can be read");
    text.parse().unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

fn texts(value: &Value) -> Vec<String> {
    let all = value.as_array().expect("a list of texts").iter();
    all.map(|text| text.as_str().expect("a text").to_owned()).collect()
}

fn mistake(value: &Value, shared: &Table) -> Mistake {
    let text = |name: &str| value[name].as_str().expect("a text").to_owned();
    let given = |name: &str| value.get(name).map(texts).unwrap_or_default();
    let mut files = BTreeMap::new();
    for name in given("uses") {
        files.insert(name.clone(), bytes(&shared[&name]));
    }
    if let Some(own) = value.get("files") {
        let own = own.as_table().expect("files by their names");
        files.extend(own.iter().map(|(name, holds)| (name.clone(), bytes(holds))));
    }
    let before = value.get("before").and_then(Value::as_array);
    Mistake {
        name: text("name"),
        files,
        before: before.map(|runs| runs.iter().map(texts).collect()).unwrap_or_default(),
        stdin: value.get("stdin").map(|_| text("stdin")).unwrap_or_default(),
        run: given("run"),
        exit: value["exit"].as_integer().expect("a number"),
        says: given("says"),
        never: given("never"),
        want: text("want"),
    }
}

fn bytes(holds: &Value) -> Vec<u8> {
    if let Some(text) = holds.as_str() {
        return text.as_bytes().to_vec();
    }
    if let Some(base64) = holds.get("bytes_base64") {
        return STANDARD.decode(base64.as_str().expect("a text")).expect("base64");
    }
    let mut workbook = Workbook::new();
    for one in holds["xlsx"].as_array().expect("sheets") {
        let (name, rows) = one.as_array().and_then(|one| one.split_first()).expect("a sheet");
        let sheet = workbook.add_worksheet();
        sheet.set_name(name.as_str().expect("a name")).expect("a name of a sheet");
        let cells = rows.iter().filter_map(Value::as_array);
        for (row, cells) in (0_u32..).zip(cells) {
            for (column, value) in (0_u16..).zip(cells) {
                put(sheet, row, column, value);
            }
        }
        for merge in rows.iter().filter_map(|row| row.get("merge")) {
            let [from, to] = corners(merge.as_str().expect("cells"));
            let first = rows.iter().filter_map(Value::as_array).nth(from.0 as usize);
            let text = first.and_then(|row| row[usize::from(from.1)].as_str()).unwrap_or("");
            sheet
                .merge_range(from.0, from.1, to.0, to.1, text, &Format::new())
                .expect("cells that can be merged");
        }
    }
    workbook.save_to_buffer().expect("a workbook")
}

fn put(sheet: &mut Worksheet, row: u32, column: u16, value: &Value) {
    let put = match value {
        Value::String(text) if text.is_empty() => return,
        Value::String(text) => sheet.write_string(row, column, text),
        Value::Integer(number) => sheet.write_number(row, column, *number as f64),
        Value::Float(number) => sheet.write_number(row, column, *number),
        Value::Datetime(day) => {
            let date = Format::new().set_num_format("d-mmm");
            let day = day.date.expect("a day");
            sheet.write_number_with_format(row, column, days(day), &date)
        }
        value => {
            let part = |name: &str| value.get(name).and_then(Value::as_str);
            let formula = Formula::new(part("formula").unwrap_or("=A1"));
            let result = part("value").or(part("error")).unwrap_or_default();
            sheet.write_formula(row, column, formula.set_result(result))
        }
    };
    put.expect("a cell that can be written");
}

/// Days since the last day of 1899, as spreadsheets count them from March 1900 on.
fn days(day: toml::value::Date) -> f64 {
    let (year, month) = match day.month {
        1 | 2 => (i64::from(day.year) - 1, i64::from(day.month) + 12),
        month => (i64::from(day.year), i64::from(month)),
    };
    let leap = year / 4 - year / 100 + year / 400;
    let since = 365 * year + leap + (153 * (month - 3) + 2) / 5 + i64::from(day.day);
    (since - 693_900) as f64
}

/// `B2:B3` as row and column, from 0.
fn corners(cells: &str) -> [(u32, u16); 2] {
    let (from, to) = cells.split_once(':').expect("two corners");
    [from, to].map(|cell| {
        let row: u32 = cell[1..].parse().expect("a row");
        (row - 1, u16::from(cell.as_bytes()[0] - b'A'))
    })
}
