//! The forms of the file: which tables there are, and how an older file becomes one of today.
//!
//! Form 1 had lines without seals. It is read as it is, and becomes form 2 with the first line
//! that is appended: before that, opening a file changes nothing in it.

use rusqlite::{Connection, OptionalExtension, params};

use crate::seal::{self, Whole};
use crate::{Hash, hashes_of};

/// The form that is written; older forms are opened.
pub(crate) const FORM: i64 = 2;

const JOURNAL_1: &str =
    "CREATE TABLE journal (number INTEGER PRIMARY KEY, line BLOB NOT NULL) STRICT";
const JOURNAL: &str = "CREATE TABLE journal (number INTEGER PRIMARY KEY, epoch INTEGER NOT NULL, \
                       line BLOB NOT NULL, seal BLOB NOT NULL) STRICT";
const PICTURES: &str =
    "CREATE TABLE pictures (hash BLOB NOT NULL UNIQUE, bytes BLOB NOT NULL) STRICT";
const FACTS: &str = "CREATE TABLE facts (name TEXT PRIMARY KEY, value INTEGER NOT NULL) STRICT";
const WHOLE: &str = "CREATE TABLE whole (one INTEGER PRIMARY KEY, epoch INTEGER NOT NULL, \
                     lines INTEGER NOT NULL, chain BLOB NOT NULL, pictures INTEGER NOT NULL, \
                     sum BLOB NOT NULL, seal BLOB NOT NULL) STRICT";

/// Makes the tables of a new file.
pub(crate) fn make(connection: &Connection) -> rusqlite::Result<()> {
    connection.execute_batch(&format!(
        "{JOURNAL}; {PICTURES}; {FACTS}; {WHOLE}; \
         INSERT INTO facts (name, value) VALUES ('epoch', 1); PRAGMA user_version = {FORM};"
    ))?;
    Whole::of_epoch(1).write(connection)
}

/// The form that a file says it has.
pub(crate) fn of(connection: &Connection) -> rusqlite::Result<i64> {
    connection.pragma_query_value(None, "user_version", |row| row.get(0))
}

/// Whether the tables are those of one of our forms, to the letter. None: of none of them.
pub(crate) fn of_tables(connection: &Connection) -> rusqlite::Result<Option<i64>> {
    let mut query = connection.prepare(
        "SELECT type, name, tbl_name, COALESCE(sql, '') FROM sqlite_schema ORDER BY name",
    )?;
    let row = |row: &rusqlite::Row<'_>| {
        let [one, two, three, four] = [row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?];
        Ok::<[String; 4], _>([one, two, three, four])
    };
    let found: Vec<[String; 4]> = query.query_map([], row)?.collect::<Result<_, _>>()?;
    let table = |name: &str, sql: &str| ["table", name, name, sql].map(str::to_owned);
    let index = |name: &str, of: &str| ["index", name, of, ""].map(str::to_owned);
    let facts = [table("facts", FACTS)];
    let rest = [
        table("pictures", PICTURES),
        index("sqlite_autoindex_facts_1", "facts"),
        index("sqlite_autoindex_pictures_1", "pictures"),
    ];
    let first = [&facts[..], &[table("journal", JOURNAL_1)], &rest].concat();
    let whole = [table("whole", WHOLE)];
    let second = [&facts[..], &[table("journal", JOURNAL)], &rest, &whole].concat();
    Ok([(1, first), (2, second)].into_iter().find(|(_, form)| *form == found).map(|one| one.0))
}

/// Makes a file of form 1 one of today: every line is sealed as it is.
pub(crate) fn renew(connection: &Connection, epoch: i64) -> rusqlite::Result<()> {
    connection.execute_batch("ALTER TABLE journal RENAME TO unsealed")?;
    connection.execute_batch(&format!("{JOURNAL}; {WHOLE};"))?;
    let mut whole = Whole::of_epoch(epoch);
    let mut next = connection.prepare("SELECT line FROM unsealed WHERE number = ?1")?;
    let mut insert = insert(connection)?;
    for number in 1.. {
        let line: Option<Vec<u8>> = next.query_row([number], |row| row.get(0)).optional()?;
        let Some(line) = line else { break };
        let seal = seal::of_line(epoch, number as u64, &line);
        insert.execute(params![number, epoch, line, seal])?;
        whole.add_line(&seal);
    }
    hashes_of(connection)?.iter().for_each(|hash: &Hash| whole.add_picture(hash));
    whole.write(connection)?;
    connection.execute_batch(&format!("DROP TABLE unsealed; PRAGMA user_version = {FORM};"))
}

/// How a line is written.
pub(crate) fn insert(
    connection: &Connection,
) -> rusqlite::Result<rusqlite::CachedStatement<'_>> {
    connection.prepare_cached(
        "INSERT INTO journal (number, epoch, line, seal) VALUES (?1, ?2, ?3, ?4)",
    )
}
