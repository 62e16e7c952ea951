//! How much is taken in at most, and why: the one table, for the command line and the screens.
//!
//! Whatever comes in (a file, a form, a picture) is counted before it is held, so that no input
//! makes the program take more than [`MEMORY`]; and nothing honest meets a limit.
//! `docs/limits.md` is this table as a page; a test compares the two.

/// One row of the table.
#[derive(Clone, Copy, Debug)]
pub struct Limit {
    /// What is limited.
    pub what: &'static str,
    /// How much of it is taken.
    pub most: u64,
    /// What is counted.
    pub of: Of,
    /// Why so much and no more.
    pub why: &'static str,
}

/// What a limit counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// Bytes.
    Bytes,
    /// Things.
    Things,
    /// Seconds.
    Seconds,
}

impl Limit {
    /// The limit in words: `24 MiB`, `20,000`, `30 seconds`.
    pub fn shown(&self) -> String {
        let unit = match self.of {
            Of::Bytes if self.most.is_multiple_of(1 << 20) => {
                return format!("{} MiB", thousands(self.most >> 20));
            }
            Of::Bytes if self.most.is_multiple_of(1 << 10) => {
                return format!("{} KiB", thousands(self.most >> 10));
            }
            Of::Bytes => " bytes",
            Of::Things => "",
            Of::Seconds => " seconds",
        };
        format!("{}{unit}", thousands(self.most))
    }

    /// The row of the page.
    pub fn row(&self) -> String {
        format!("| {} | {} | {} |", self.what, self.shown(), self.why)
    }
}

fn thousands(number: u64) -> String {
    match (number / 1000, number % 1000) {
        (0, rest) => rest.to_string(),
        (more, rest) => format!("{},{rest:03}", thousands(more)),
    }
}

macro_rules! limits {
    ($($name:ident: $kind:ty = $most:expr, $of:ident, $what:literal, $why:literal;)*) => {
        $(
            #[doc = concat!($what, ". ", $why)]
            pub const $name: $kind = $most;
        )*
        /// Every limit, in the order of the page.
        pub const ALL: &[Limit] = &[
            $(Limit { what: $what, most: $most as u64, of: Of::$of, why: $why },)*
        ];
    };
}

limits! {
    MEMORY: u64 = 512 << 20, Bytes, "Memory of a command or of the screens",
        "A school's old laptop has 4 GiB and other work to do.";
    SEARCH: u64 = 512 << 20, Bytes, "What `--memory` lets a command take, if nothing is said",
        "The search keeps to three quarters of it; the rest is for the table and for words.";
    SCREENS_SEARCH: u64 = 192 << 20, Bytes, "What a search on the screens reckons with",
        "Forms and pictures of others wait beside it.";

    TABLE_BYTES: usize = 24 << 20, Bytes, "A table or another sheet, as a file",
        "10,000 kinds × 30 columns take 4 MB; pictures in a workbook come on top.";
    TABLE_UNPACKED: u64 = 64 << 20, Bytes, "The parts of one workbook, unpacked",
        "The honest large table unpacks to 12 MB.";
    TABLE_CELLS: usize = 400_000, Things, "Cells with something in them, and kinds × columns",
        "A cell can need 650 bytes once it is understood.";
    TABLE_SHARES: usize = 4_000_000, Things, "Shares of states and counts in all cells",
        "Each takes 48 bytes.";
    TABLE_KINDS: usize = 20_000, Things, "Kinds of a table",
        "A key for more is a book of keys.";
    TABLE_COLUMNS: u32 = 256, Things, "Columns of a table",
        "A table for children has ten.";
    CELL_BYTES: usize = 4_000, Bytes, "The text of one cell",
        "Room for 64 states, or for a long caution.";
    TABLE_TEXT: usize = 16 << 20, Bytes, "All text of one sheet",
        "Understood text takes up to ten times as much.";
    WORKSHEETS: usize = 256, Things, "Worksheets that are looked through",
        "A workbook of a class has ten.";

    KEY_BYTES: usize = 8 << 20, Bytes, "A key as a file, in words or as JSON",
        "A key to 4,000 kinds with its proof takes 3 MB.";
    KEY_LINES: usize = 40_000, Things, "Lines of a key in words",
        "Two lines for each question.";
    KEY_QUESTIONS: usize = 20_000, Things, "Questions of a key, and how deep it may be",
        "One for every kind that a table may have.";
    FORGIVING_KINDS: usize = 300, Things, "Kinds of a table that is searched for second places",
        "Each kind is followed to every wrong end; a class that errs has some dozen kinds.";
    KEY_LINE_BYTES: usize = 4_000, Bytes, "One line of a key, and one question",
        "A question that is read aloud has 80 letters.";

    PICTURE_BYTES: usize = 32 << 20, Bytes, "A picture as a file",
        "A photograph of a telephone takes 10 MB.";
    PICTURE_PIXELS: u64 = 40_000_000, Things, "Pixels of a picture",
        "More than any sheet can show; unpacked they take 160 MB.";
    PICTURE_SIDE: u32 = 20_000, Things, "Pixels along one side of a picture",
        "A strip of 20,000 pixels is no picture of a leaf.";
    PICTURES_OF_A_KEY: usize = 64 << 20, Bytes, "All pictures of one key, as they are packed for paper",
        "400 photographs as sheets show them.";
    PHONE_PICTURE: usize = 60_000, Bytes, "A picture on the phone page",
        "640 pixels across: sharp enough to tell a leaf by.";
    PHONE_PAGE: usize = 2_000_000, Bytes, "A phone page with its pictures",
        "Some seconds at the edge of a network.";

    BUNDLE_BYTES: usize = 128 << 20, Bytes, "A packed collection, as a file",
        "Four hundred pictures as they are kept.";
    BUNDLE_UNPACKED: u64 = 128 << 20, Bytes, "A packed collection, unpacked",
        "Pictures hardly pack; a journal of a long year takes 10 MB.";
    BUNDLE_FILES: usize = 20_000, Things, "Files in a packed collection",
        "One for each picture.";
    JOURNAL_BYTES: u64 = 24 << 20, Bytes, "The journal of a packed collection",
        "A hundred thousand edits take 10 MB.";
    JOURNAL_LINES: usize = 200_000, Things, "Lines of a journal that comes from elsewhere",
        "A line for each edit: a class makes some thousands a year.";

    FORM_BYTES: usize = 32 << 20, Bytes, "A form with its files",
        "Eight photographs of a good telephone.";
    FORMS_BYTES: usize = 128 << 20, Bytes, "All forms that arrive or wait, together",
        "One packed collection, or four forms full of photographs.";
    SMALL_FORM: usize = 64 << 10, Bytes, "What every form may bring without waiting for others",
        "Whatever is typed; 256 of them take 16 MB.";
    FORM_LET_GO_BY: usize = 1 << 30, Bytes, "What is let go by of a form that is too large",
        "Most browsers hear an answer only when they have said everything.";
    FORM_FIELDS: usize = 20_000, Things, "Fields of a form",
        "The cells of a large table, twice.";
    FORM_FILES: usize = 200, Things, "Files of a form",
        "A class of forty with five each.";
    ANSWERS_BYTES: usize = 160 << 20, Bytes, "Large answers on their way, together",
        "One packed collection, and sheets for a class.";
    ADDRESS_BYTES: usize = 8_000, Bytes, "An address",
        "What browsers take as well.";
    HEAD_BYTES: usize = 32 << 10, Bytes, "All headers of a request",
        "Browsers send 2 KiB.";
    HEADERS: usize = 100, Things, "Headers of a request",
        "Browsers send 20.";
    CONNECTIONS: usize = 256, Things, "Connections at a time",
        "A browser opens six; a class of forty has room.";
    TURNED_AWAY: usize = 64, Things, "Connections that are told at a time that there is no room",
        "Each is listened to for two seconds, so that it hears the answer.";
    WAITING: usize = 512, Things, "Requests that wait for the desk",
        "Two for each connection.";
    HEAD_SECONDS: u64 = 30, Seconds, "For the headers of a request, and for silence between two",
        "A telephone at the edge of the school's wireless takes seconds.";
    FORM_SECONDS: u64 = 60, Seconds, "For a form to arrive",
        "Eight photographs by a slow wireless.";
    ANSWER_SECONDS: u64 = 30, Seconds, "For a browser that takes nothing of its answer",
        "A telephone that went out of reach.";
}

#[cfg(test)]
mod tests {
    use super::{ALL, Limit, Of};

    #[test]
    fn a_limit_is_said_as_a_person_says_it() {
        let shown = |most, of| Limit { what: "", most, of, why: "" }.shown();
        assert_eq!(shown(24 << 20, Of::Bytes), "24 MiB");
        assert_eq!(shown(64 << 10, Of::Bytes), "64 KiB");
        assert_eq!(shown(60_000, Of::Bytes), "60,000 bytes");
        assert_eq!(shown(40_000_000, Of::Things), "40,000,000");
        assert_eq!(shown(30, Of::Seconds), "30 seconds");
        assert!(ALL.iter().all(|limit| limit.why.ends_with('.')));
    }
}
