//! A disk on which only what was synced is sure to be there after a power cut.
//!
//! From the trace of a program's system calls (`strace -f -y -xx`) to what it did to its files,
//! and from that to what may be on the disk if the power fails after any of them: of what was
//! not synced, everything, nothing, or any part, in pieces of 512 bytes and in any order.

use std::collections::BTreeMap;

/// One thing that the program did.
#[derive(Debug)]
pub(crate) enum Did {
    Made(String),
    Wrote(String, usize, Vec<u8>),
    Cut(String, usize),
    Synced(String),
    Removed(String),
    /// It said that a step is kept: the step, and the name of the file.
    Said(usize, String),
}

/// The smallest piece that a disk writes whole.
const PIECE: usize = 512;

/// What the program did, in order. **Panics** on a call that it does not know.
pub(crate) fn read(trace: &str) -> Vec<Did> {
    trace.lines().filter_map(call).collect()
}

fn call(line: &str) -> Option<Did> {
    // The number of the process comes first.
    let line = line.trim_start_matches(|sign: char| sign.is_ascii_digit()).trim_start();
    let (name, rest) = line.split_once('(')?;
    let (rest, answer) = rest.rsplit_once(" = ")?;
    let rest = rest.trim_end().strip_suffix(')')?;
    if answer.starts_with('-') {
        return None;
    }
    let strings: Vec<Vec<u8>> = rest.split('"').skip(1).step_by(2).map(bytes).collect();
    let text = |at: usize| String::from_utf8(strings[at].clone()).expect("a path of the test");
    // `3</folder/walk.spinney>` or, in hexadecimal digits, `3<\x2f...>`.
    let file = || {
        let path = rest.split_once('<')?.1.split_once('>')?.0;
        String::from_utf8(bytes(path)).ok()
    };
    let number = |text: &str| text.trim().parse::<usize>().expect("a number of the trace");
    match name {
        "openat" => rest.contains("O_CREAT").then(|| Did::Made(text(0))),
        "pwrite64" => {
            let at = rest.rsplit_once(',').map(|(_, at)| number(at))?;
            assert_eq!(number(answer), strings[0].len(), "the trace was cut short: {answer}");
            Some(Did::Wrote(file()?, at, strings[0].clone()))
        }
        "write" => {
            let said = String::from_utf8_lossy(strings.first()?).into_owned();
            let said = said.lines().find_map(|line| line.strip_prefix("kept "))?;
            let (step, file) = said.split_once(" of ")?;
            Some(Did::Said(number(step), file.to_owned()))
        }
        "ftruncate" => {
            let length = rest.rsplit_once(',').map(|(_, length)| number(length))?;
            Some(Did::Cut(file()?, length))
        }
        "fsync" | "fdatasync" => Some(Did::Synced(file()?)),
        "unlink" => Some(Did::Removed(text(0))),
        "unlinkat" => Some(Did::Removed(text(0))),
        other => panic!("the disk does not know {other}"),
    }
}

/// The bytes of a string of the trace.
fn bytes(text: &str) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(text.len() / 4);
    let mut rest = text.as_bytes();
    while let [first, more @ ..] = rest {
        match rest {
            [b'\\', b'x', high, low, more @ ..] => {
                let digits = [*high, *low];
                let digits = std::str::from_utf8(&digits).expect("digits");
                bytes.push(u8::from_str_radix(digits, 16).expect("hexadecimal digits"));
                rest = more;
            }
            _ => {
                bytes.push(*first);
                rest = more;
            }
        }
    }
    bytes
}

/// What may still be lost of a file.
#[derive(Clone, Debug)]
enum Change {
    Wrote(usize, Vec<u8>),
    Cut(usize),
}

#[derive(Clone, Debug, Default)]
struct File {
    sure: Vec<u8>,
    unsure: Vec<Change>,
}

/// How the power fails.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Cut {
    /// Everything that was written is there.
    All,
    /// Nothing is there that was not synced.
    Nothing,
    /// Any part is.
    AnyPart,
}

/// A disk with one folder.
#[derive(Default)]
pub(crate) struct Disk {
    files: Vec<File>,
    /// The names that the program sees.
    names: BTreeMap<String, usize>,
    /// The names that are sure to be there.
    sure: BTreeMap<String, usize>,
    /// Names that came (with their file) and went since.
    unsure: Vec<(String, Option<usize>)>,
    /// It forgets what it was told to sync: to see that this is found out.
    lies: bool,
}

impl Disk {
    /// A disk that does what it is told, or one that lies.
    pub(crate) fn new(lies: bool) -> Self {
        Self { lies, ..Self::default() }
    }

    /// Puts a file on it that was there before.
    pub(crate) fn put(&mut self, path: &str, bytes: Vec<u8>) {
        self.files.push(File { sure: bytes, unsure: Vec::new() });
        self.names.insert(path.to_owned(), self.files.len() - 1);
        self.sure.insert(path.to_owned(), self.files.len() - 1);
    }

    /// Does what the program did.
    pub(crate) fn take(&mut self, did: &Did) {
        match did {
            Did::Made(path) if !self.names.contains_key(path) => {
                self.files.push(File::default());
                self.names.insert(path.clone(), self.files.len() - 1);
                self.unsure.push((path.clone(), Some(self.files.len() - 1)));
            }
            Did::Wrote(path, at, bytes) => self.change(path, Change::Wrote(*at, bytes.clone())),
            Did::Cut(path, length) => self.change(path, Change::Cut(*length)),
            Did::Removed(path) => {
                self.names.remove(path);
                self.unsure.push((path.clone(), None));
            }
            Did::Synced(_) if self.lies => {}
            Did::Synced(path) => match self.names.get(path) {
                Some(file) => {
                    let file = &mut self.files[*file];
                    let File { sure, unsure } = file;
                    unsure.drain(..).for_each(|change| apply(sure, &change));
                }
                // The folder: names are sure now.
                None => {
                    for (path, file) in self.unsure.drain(..) {
                        rename(&mut self.sure, path, file);
                    }
                }
            },
            Did::Made(_) | Did::Said(..) => {}
        }
    }

    fn change(&mut self, path: &str, change: Change) {
        let file = self.names.get(path).unwrap_or_else(|| panic!("{path} is not there"));
        self.files[*file].unsure.push(change);
    }

    /// What is on the disk after a power cut.
    pub(crate) fn after(
        &self,
        cut: Cut,
        random: &mut fastrand::Rng,
    ) -> BTreeMap<String, Vec<u8>> {
        let there = |random: &mut fastrand::Rng| match cut {
            Cut::All => true,
            Cut::Nothing => false,
            Cut::AnyPart => random.bool(),
        };
        let mut names = self.sure.clone();
        for (path, file) in &self.unsure {
            if there(random) {
                rename(&mut names, path.clone(), *file);
            }
        }
        let of = |file: usize, random: &mut fastrand::Rng| {
            let File { sure, unsure } = &self.files[file];
            let mut bytes = sure.clone();
            for change in unsure {
                match change {
                    Change::Wrote(at, new) if matches!(cut, Cut::AnyPart) => {
                        pieces(*at, new).for_each(|(at, piece)| {
                            if random.u8(..4) > 0 {
                                apply(&mut bytes, &Change::Wrote(at, piece.to_vec()));
                            }
                        });
                    }
                    change if there(random) => apply(&mut bytes, change),
                    _ => {}
                }
            }
            bytes
        };
        names.into_iter().map(|(path, file)| (path, of(file, random))).collect()
    }
}

fn rename(names: &mut BTreeMap<String, usize>, path: String, file: Option<usize>) {
    match file {
        Some(file) => drop(names.insert(path, file)),
        None => drop(names.remove(&path)),
    }
}

/// A write in the pieces that the disk knows.
fn pieces(at: usize, bytes: &[u8]) -> impl Iterator<Item = (usize, &[u8])> {
    let mut from = 0;
    std::iter::from_fn(move || {
        let start = from;
        let here = PIECE - (at + start) % PIECE;
        from = bytes.len().min(start + here);
        (start < bytes.len()).then(|| (at + start, &bytes[start..from]))
    })
}

fn apply(bytes: &mut Vec<u8>, change: &Change) {
    match change {
        Change::Wrote(at, new) => {
            if bytes.len() < at + new.len() {
                bytes.resize(at + new.len(), 0);
            }
            bytes[*at..at + new.len()].copy_from_slice(new);
        }
        Change::Cut(length) => bytes.resize(*length, 0),
    }
}
