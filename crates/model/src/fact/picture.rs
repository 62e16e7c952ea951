//! What is so of a picture that was left out.

/// Why a file cannot be used, in as much as a person can do something about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileTrouble {
    /// It is not there, or its place is not.
    NotThere,
    /// It may not be opened or written.
    NoRight,
    /// Something of its name is there.
    IsThere,
    /// A part of its name is a file.
    NotAFolder,
    /// It is a folder.
    IsAFolder,
    /// The disk may only be read.
    ReadOnly,
    /// The disk is full.
    Full,
    /// It is larger than a file may be.
    TooLarge,
    /// Its name is none.
    BadName,
    /// Another program uses it.
    InUse,
    /// This machine has no such address.
    NoAddress,
    /// Its disk does not answer.
    NoAnswer,
    /// The other end was closed.
    Closed,
    /// There is not enough memory.
    NoMemory,
    /// It was moved or taken away while it was open.
    Gone,
    /// The disk did not do what was asked of it.
    DiskFailed,
    /// The disk did not take what was written to it.
    DiskRefused,
    /// Its disk, or the place where it is, does not work as it should.
    BadPlace,
    /// Something in it is too large to be kept.
    NotHeld,
    /// Nobody says why.
    Unknown,
}

/// Why a picture was left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNoPicture {
    /// All pictures together would take too much memory.
    TooManyBytes,
    /// It is not beside the table.
    Elsewhere,
    /// There is no such file.
    NoFile,
    /// Its file cannot be opened.
    File(FileTrouble),
    /// Its file is larger than so many MiB.
    TooLarge(usize),
    /// It is neither a whole PNG nor a whole JPEG file.
    NotRead,
    /// It has too many pixels.
    TooManyPixels,
}

/// What is so of a picture that was left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OfPicture {
    /// A file that the table names.
    LeftOut {
        /// The kind.
        kind: String,
        /// The name of the file.
        picture: String,
        /// Why.
        why: WhyNoPicture,
    },
    /// A picture of a collection that cannot be read any more.
    Damaged {
        /// The kind.
        kind: String,
    },
}
