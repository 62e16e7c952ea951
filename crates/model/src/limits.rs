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
    SCREENS_SEARCH: u64 = 64 << 20, Bytes, "What a search on the screens reckons with",
        "Forms and pictures of others wait beside it; the command line takes more.";
    SCREENS_ROOM: usize = 160 << 20, Bytes, "Forms that arrive or wait, what copies hold and large answers on their way, together",
        "One packed collection and what it is unpacked to, or two forms full of photographs.";
    SCREENS_REST: u64 = 128 << 20, Bytes, "The rest of the screens: the program, the collection, a sheet that is set",
        "The largest collection that they hold takes less.";

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

    CHILDREN: u16 = 400, Things, "Children on one visit, and groups of them",
        "More than a coach holds: it is a school that prints.";

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
    PICTURE_STEPWISE: u64 = 12_000_000, Things, "Pixels of a photograph that shows coarse first (progressive)",
        "Unpacking it takes twelve bytes for each; telephones write no such files.";
    PICTURE_SIDE: u32 = 20_000, Things, "Pixels along one side of a picture",
        "A strip of 20,000 pixels is no picture of a leaf.";
    SCAN_BYTES: usize = 64 << 20, Bytes, "A scan as a file",
        "A page at 600 dots per inch takes 10 to 60 MB; on the screens a form holds less.";
    SCAN_SIDE: u32 = 40_000, Things, "Pixels along one side of a scan",
        "A long strip at 1,200 dots per inch; what is longer is not a picture of a leaf.";
    SCAN_PIXELS: u64 = 120_000_000, Things, "Pixels of a scan",
        "A4 at 1,000 dots per inch has 97 million; of more than 40 million, or on the screens of more than 18, each two by two become one.";
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
    JOURNAL_BYTES: u64 = 24 << 20, Bytes, "The journal of a collection",
        "A hundred thousand edits take 10 MB.";
    JOURNAL_LINES: usize = 200_000, Things, "Lines of a journal",
        "A line for each edit: a class makes some thousands a year.";

    SCREENS_KINDS: usize = 200, Things, "Kinds of a collection on the screens",
        "So that every page is there in two seconds, also on an old laptop; the command line takes more.";
    SCREENS_COLUMNS: usize = 50, Things, "Columns of a collection on the screens",
        "The same.";
    SCREENS_TEXTS: usize = 2 * SCREENS_KINDS * SCREENS_COLUMNS, Things, "Texts in cells on the screens, whoever says them",
        "Every cell of the largest collection, twice.";
    SCREENS_PAIRS: usize = 60_000, Things,
        "Pairs of different numbers on the screens, column by column",
        "Between any two there may be a question: six columns of ranges that all differ, of a hundred kinds.";
    SCREENS_LONG_TEXT: usize = 16_000, Bytes, "One text on the screens",
        "The longest list that can be typed, in any script.";
    SCREENS_TEXT_BYTES: usize = 2 << 20, Bytes, "All texts of a collection on the screens",
        "Every cell of the largest collection with 50 letters, twice.";
    SCREENS_KEYS: usize = 100, Things, "Keys of a collection on the screens",
        "One for each group of four classes, and last year's.";
    SCREENS_QUESTIONS: usize = 4_000, Things, "Questions that hands put into all keys on the screens",
        "Forty in each of a hundred keys.";
    SCREENS_PICTURES: usize = 10 * SCREENS_KINDS, Things, "Pictures of a collection on the screens",
        "Ten of each kind.";
    SCREENS_SPECIMENS: usize = 20 * SCREENS_KINDS, Things, "Single leaves of a collection on the screens",
        "Twenty of each kind; the rules for cuts ask for 5 to 60.";
    DRAWING_POINTS: usize = 4_000, Things, "Points of a drawing that is kept",
        "A leaf with a hundred teeth needs some 600.";
    SCREENS_SCAN_PIXELS: u64 = 18_000_000, Things, "Pixels that are measured at once on the screens",
        "A4 at 300 dots per inch has 9 million; of a larger picture each two by two become one first. The command line measures them all.";
    SCREENS_LEAVES: usize = 40, Things, "Leaves of one picture on the screens",
        "A page of A4 has room for twelve to twenty.";
    MENDS: usize = 1000, Things, "Mends of the leaves of one picture",
        "Ten for each of a hundred leaves.";

    FORM_BYTES: usize = 32 << 20, Bytes, "A form with its files",
        "Eight photographs of a good telephone.";
    COPY_BYTES: usize = 64 << 20, Bytes, "A copy that the screens save or open, its pictures, and pictures kept in memory only",
        "Two hundred pictures as they are kept; `spinney pack` and `unpack` take twice as much.";
    SMALL_FORM: usize = 64 << 10, Bytes, "What every form may bring without waiting for others",
        "Whatever is typed; 256 of them take 16 MB.";
    FORM_LET_GO_BY: usize = 1 << 30, Bytes, "What is let go by of a form that is too large",
        "Most browsers hear an answer only when they have said everything.";
    FORM_FIELDS: usize = 20_000, Things, "Fields of a form",
        "The cells of a large table, twice.";
    FORM_FILES: usize = 200, Things, "Files of a form",
        "A class of forty with five each.";
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
    LONG_WAITING: usize = 16, Things, "Requests for sheets and copies that wait for the one that is made",
        "A class of forty does not print at once; one takes a second or two.";
    HEAD_SECONDS: u64 = 30, Seconds, "For the headers of a request, and for silence between two",
        "A telephone at the edge of the school's wireless takes seconds.";
    FORM_SECONDS: u64 = 60, Seconds, "For a form to arrive",
        "Eight photographs by a slow wireless.";
    ANSWER_SECONDS: u64 = 30, Seconds, "For a browser that takes nothing of its answer",
        "A telephone that went out of reach.";
    ANSWER_RATE: usize = 1 << 20, Bytes, "What a browser takes of a large answer in a second, at least",
        "It is on the same machine; an old disk takes ten times as much. Whoever takes less is waited for 30 seconds in all.";
}

/// What unpacking one picture may take: four bytes for each pixel, twelve where it is
/// progressive.
pub const PICTURE_UNPACKED: u64 = {
    let (plain, stepwise) = (PICTURE_PIXELS * 4, PICTURE_STEPWISE * 12);
    if plain > stepwise { plain } else { stepwise }
};

/// The screens keep to the memory of all: one long search goes on at a time (what a page takes
/// apart while somebody waits is little, and of the rest), one picture is unpacked at a time,
/// what comes in and goes out shares one room, and the collection is of limited size.
const _: () = assert!(
    SCREENS_SEARCH + SCREENS_ROOM as u64 + PICTURE_UNPACKED + SCREENS_REST <= MEMORY,
    "what the screens may take together is more than the memory of a command"
);
/// A scan is unpacked and halved, or measured (five bytes a pixel beside its three), in the
/// room of one picture.
const _: () = assert!(
    PICTURE_PIXELS * 3 + PICTURE_PIXELS / 4 * 3 <= PICTURE_UNPACKED
        && SCREENS_SCAN_PIXELS * 8 <= PICTURE_UNPACKED,
    "what a scan takes on the screens is more than what a picture may take"
);
/// A copy that is opened or saved, and what it is unpacked to or packed from, has room; so has a
/// form with its files, taken apart.
const _: () = assert!(2 * COPY_BYTES <= SCREENS_ROOM && 2 * FORM_BYTES <= SCREENS_ROOM);

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
