//! What is so of a file that says what questions mean.

/// What is so of a file that says what questions mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfLinks {
    /// It speaks of a question that the key does not have.
    NoSuchQuestion {
        /// The number.
        question: u32,
    },
    /// A line of it cannot be used.
    Line {
        /// The line, counted from 1.
        line: usize,
        /// Why not.
        why: LinksLine,
    },
}

/// Why a line of a links file cannot be used. A text of the line is cut where it is long.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LinksLine {
    /// It is neither a question nor a name.
    Unread {
        /// The line.
        text: String,
    },
    /// It says again what a question means.
    Again {
        /// The question.
        question: u32,
    },
    /// A name without an equals sign.
    NoEquals {
        /// The line.
        text: String,
        /// A kind of the table, as an example.
        example: Option<String>,
    },
    /// A name that is to mean a kind that the table does not have.
    NoSuchKind {
        /// The kind.
        text: String,
        /// A kind of the table, as an example.
        example: Option<String>,
    },
    /// A name that is to mean no kind.
    NoKind {
        /// A kind of the table, as an example.
        example: Option<String>,
    },
    /// It does not say what is asked.
    NothingAsked {
        /// What stands there.
        text: String,
    },
    /// It asks a column for a number whose states are words.
    NumberOfWords {
        /// The column.
        about: String,
        /// What could stand there, as a links file has it.
        instead: String,
    },
    /// It names a column that the table does not have.
    NoSuchColumn {
        /// The name.
        text: String,
        /// The columns that there are, as a links file has them.
        known: Vec<String>,
    },
    /// It asks for a state that a column does not have.
    NoSuchState {
        /// The column.
        about: String,
        /// The state.
        text: String,
        /// The states that there are, as a links file has them.
        known: Vec<String>,
    },
    /// It names no state, or all of them.
    NotSomeStates {
        /// The column.
        about: String,
        /// The states that there are, as a links file has them.
        known: Vec<String>,
    },
    /// Its number cannot be read.
    NumberUnread {
        /// What stands there.
        text: String,
        /// The column, as a links file has it.
        column: String,
        /// The unit of its numbers; None: it has none.
        unit: Option<&'static str>,
    },
    /// Its number is none of the column's: of another unit, or a half of a count.
    NumberUnfit {
        /// The column.
        about: String,
        /// The same, as a links file has it.
        column: String,
        /// The unit of its numbers; None: it has none.
        unit: Option<&'static str>,
    },
    /// It asks for exactly a number.
    Exactly {
        /// The column.
        about: String,
        /// The number as it stands there.
        number: String,
        /// The line for that much or more.
        at_least: String,
        /// The line for less.
        below: String,
    },
}
