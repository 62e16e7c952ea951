//! A damaged collection: what is wrong with it, and what can be read saved into a new file.
//!
//! From a file of a collection, or a bundle, to every line of it that is what was kept. Where a
//! line is lost, a line that does nothing takes its place, so that an *undo* after it takes back
//! the same step as it did then. The damaged file is only read.

use std::path::{Path, PathBuf};

use spinney_desk::{Damage, Desk};
use spinney_exchange::bundle;
use spinney_exchange::journal::{self, LineError};
use spinney_model::{Done, Entry};
use spinney_store::{Picture, Salvage, Saved, Store, StoreError};
use spinney_voice::Tongue;

use crate::failure::Failure;
use crate::files::{self, Over};

/// A line of a damaged collection.
enum Line {
    /// It is what was kept, and when that was.
    Sound(Vec<u8>, i64),
    /// It is not; when it was kept, if that can be told.
    Damaged(Option<i64>),
}

/// Where the pictures are.
enum Pictures {
    InFile(Box<Salvage>, Vec<Picture>),
    InBundle(Vec<Vec<u8>>),
}

/// How much is saved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum HowMuch {
    /// All that can be read.
    All,
    /// Only what came before the damage.
    Before,
}

/// What can be read of a damaged collection.
pub(crate) struct Rescue {
    path: PathBuf,
    lines: Vec<Line>,
    end_known: bool,
    pictures: Pictures,
    /// None: that is not known.
    pictures_lost: Option<usize>,
    /// Whether the file is whole after all.
    whole: bool,
}

impl Rescue {
    /// Looks at a file.
    ///
    /// **Errors**: nothing of a collection is in it, or it is of a newer program.
    pub(crate) fn of(path: &Path) -> Result<Self, Failure> {
        files::note_collection(path);
        match Salvage::of(path) {
            Ok(salvage) => Self::of_file(path, salvage),
            Err(error @ StoreError::NotACollection { .. }) => {
                let bytes = super::command::pack::read(path)?;
                let saved = bundle::Saved::of(&bytes).ok_or_else(|| Failure::kept(error))?;
                Self::of_bundle(path, saved)
            }
            Err(error) => Err(Failure::kept(error)),
        }
    }

    fn of_file(path: &Path, mut salvage: Salvage) -> Result<Self, Failure> {
        let whole = salvage.is_whole();
        let lines = std::mem::take(&mut salvage.lines).into_iter().map(|line| match line {
            Saved::Sound(line) => read(line),
            Saved::Changed(line) => Ok(Line::Damaged(when_of(&line))),
            Saved::Lost => Ok(Line::Damaged(None)),
        });
        let lines = lines.collect::<Result<Vec<_>, _>>()?;
        let pictures = std::mem::take(&mut salvage.pictures);
        Ok(Self {
            path: path.to_owned(),
            whole: whole && lines.iter().all(|line| matches!(line, Line::Sound(..))),
            lines,
            end_known: salvage.end_known,
            pictures_lost: salvage.pictures_lost.map(|lost| lost as usize),
            pictures: Pictures::InFile(Box::new(salvage), pictures),
        })
    }

    /// What can be read of a damaged bundle.
    pub(crate) fn of_bundle(path: &Path, saved: bundle::Saved) -> Result<Self, Failure> {
        let read = |line: Option<Vec<u8>>| line.map_or(Ok(Line::Damaged(None)), read);
        let mut lines = saved.lines.into_iter().map(read).collect::<Result<Vec<_>, _>>()?;
        let sound = |line: &Line| matches!(line, Line::Sound(..));
        let bytes = lines.iter().filter_map(|line| match line {
            Line::Sound(bytes, _) => Some(bytes.clone()),
            Line::Damaged(_) => None,
        });
        // A bundle is a stranger's: its pictures are written anew, and its lines name those.
        let kept = Desk::unpacked(bytes.collect(), saved.pictures);
        let kept = kept.map_err(Failure::of_line)?;
        let sounds = lines.iter_mut().filter(|line| sound(line));
        for (line, bytes) in sounds.zip(kept.lines) {
            if let Line::Sound(old, _) = line {
                *old = bytes;
            }
        }
        let pictures_lost = saved.pictures_lost.map(|lost| lost + kept.lost);
        Ok(Self {
            path: path.to_owned(),
            whole: saved.end_known && pictures_lost == Some(0) && lines.iter().all(sound),
            lines,
            end_known: saved.end_known,
            pictures: Pictures::InBundle(kept.pictures),
            pictures_lost,
        })
    }

    /// The damaged file.
    pub(crate) fn path(&self) -> &Path {
        &self.path
    }

    /// Whether nothing is damaged.
    pub(crate) fn is_whole(&self) -> bool {
        self.whole
    }

    /// Whether there is anything to save.
    pub(crate) fn is_empty(&self) -> bool {
        !self.lines.iter().any(|line| matches!(line, Line::Sound(..)))
    }

    /// The damage, for a page. What can be read would be saved in `new`.
    pub(crate) fn damage(&self, new: &Path) -> Damage {
        let damaged = |line: &Line| matches!(line, Line::Damaged(_));
        let first = self.lines.iter().position(damaged);
        Damage {
            file: self.path.display().to_string(),
            new: new.display().to_string(),
            steps: self.lines.len(),
            first: first.map(|at| at + 1),
            when: first.and_then(|at| self.when(at)).map(clock),
            lost: self.lines.iter().filter(|line| damaged(line)).count(),
            pictures_lost: self.pictures_lost,
            end_known: self.end_known,
        }
    }

    /// The damage, for a terminal.
    pub(crate) fn described(&self) -> Described {
        let damage = self.damage(Path::new(""));
        let before = damage.first.filter(|_| damage.when.is_none());
        let made_after = before.and_then(|first| self.after(first - 1)).map(clock);
        Described { damage, made_after }
    }

    /// When a line was written, if that can be true beside its neighbours.
    fn when(&self, at: usize) -> Option<i64> {
        let Line::Damaged(Some(when)) = self.lines[at] else { return None };
        let next = self.lines[at..].iter().find_map(|line| match line {
            Line::Sound(_, when) => Some(*when),
            Line::Damaged(_) => None,
        });
        let fits = self.after(at).is_none_or(|before| before <= when)
            && next.is_none_or(|next| when <= next);
        fits.then_some(when)
    }

    /// When the last line before this one was written.
    fn after(&self, at: usize) -> Option<i64> {
        self.lines[..at].iter().rev().find_map(|line| match line {
            Line::Sound(_, when) => Some(*when),
            Line::Damaged(_) => None,
        })
    }

    /// Whether steps after the damage can be read, which may rest on what is lost.
    pub(crate) fn goes_on(&self) -> bool {
        let damaged = |line: &Line| matches!(line, Line::Damaged(_));
        let first = self.lines.iter().position(damaged);
        first.is_some_and(|first| !self.lines[first..].iter().all(damaged))
    }

    /// Saves what can be read into a new file. Returns how many lines were saved, and how many
    /// pictures.
    ///
    /// **Errors**: no line can be saved; an empty collection is not made of a damaged one.
    pub(crate) fn save(&mut self, to: &Path, much: HowMuch) -> Result<(usize, usize), Failure> {
        let mut at = 0;
        let damaged = |line: &Line| matches!(line, Line::Damaged(_));
        let end = match much {
            HowMuch::All => self.lines.len(),
            HowMuch::Before => self.lines.iter().position(damaged).unwrap_or(self.lines.len()),
        };
        let sound = self.lines[..end].iter().filter(|line| !damaged(line)).count();
        if sound == 0 {
            let (described, goes_on) = (self.described(), self.goes_on());
            return Err(Failure::saying(move |t| {
                let said = described.said(t);
                if !goes_on {
                    return (said, t.say("damaged-nothing"));
                }
                let (before, remedy) = t.told("failure-nothing-before", &[]);
                (format!("{said} {before}"), remedy)
            }));
        }
        let lines = self.lines[..end].iter().map(|line| match line {
            Line::Sound(line, when) => {
                at = *when;
                line.clone()
            }
            Line::Damaged(_) => journal::write(&Entry { at, done: Done::Edits(Vec::new()) }),
        });
        let lines: Vec<Vec<u8>> = lines.collect();
        // A collection that cannot be opened would be no help.
        Desk::open(lines.iter().map(Vec::as_slice)).map_err(Failure::of_line)?;
        let mut count = 0;
        let counted = |picture| {
            count += 1;
            picture
        };
        match &mut self.pictures {
            Pictures::InBundle(pictures) => {
                let pictures = pictures.iter().cloned().map(Ok).map(counted);
                new_collection(to, &lines, pictures)?;
            }
            Pictures::InFile(salvage, pictures) => {
                let pictures =
                    pictures.iter().map(|one| salvage.picture(one).map_err(Failure::kept));
                new_collection(to, &lines, pictures.map(counted))?;
            }
        }
        Ok((sound, count))
    }

    /// A name for a new file beside the damaged one: `walk-saved.spinney`.
    pub(crate) fn new_name(&self) -> PathBuf {
        let stem = self.path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let name =
            |number: &str| self.path.with_file_name(format!("{stem}-saved{number}.spinney"));
        let numbered = (2_u32..).map(|number| name(&format!("-{number}")));
        let mut names = std::iter::once(name("")).chain(numbered);
        let free = |path: &PathBuf| std::fs::symlink_metadata(path).is_err();
        names.find(free).expect("some number is free")
    }
}

/// A line that is what was kept; one that says nothing is damaged all the same.
fn read(line: Vec<u8>) -> Result<Line, Failure> {
    match journal::read(&line) {
        Ok(Entry { at, .. }) => Ok(Line::Sound(line, at)),
        Err(LineError::NotALine) => Ok(Line::Damaged(when_of(&line))),
        Err(error) => Err(Failure::of_line(error)),
    }
}

/// When a damaged line says that it was written.
fn when_of(line: &[u8]) -> Option<i64> {
    if let Ok(entry) = journal::read(line) {
        return Some(entry.at);
    }
    let text = String::from_utf8_lossy(line);
    let rest = text.split_once("\"at\":")?.1;
    rest.split([',', '}']).next()?.trim().parse().ok()
}

/// `3 October 2026` and `10:12`, by the clock of this machine.
fn clock(at: i64) -> (String, String) {
    let time = jiff::Timestamp::from_millisecond(at).unwrap_or_default();
    let time = time.to_zoned(jiff::tz::TimeZone::system());
    (time.strftime("%-d %B %Y").to_string(), time.strftime("%H:%M").to_string())
}

/// The damage of a collection, to be said.
pub(crate) struct Described {
    damage: Damage,
    /// When the last step before the damage was made, where nobody knows more.
    made_after: Option<(String, String)>,
}

impl Described {
    /// In a few sentences.
    pub(crate) fn said(&self, t: Tongue) -> String {
        let Damage { file, lost, pictures_lost, end_known, .. } = &self.damage;
        let mut said = vec![t.with("run-damaged", &[("file", file)]), self.damage.step(t)];
        said.extend(
            self.made_after.as_ref().map(|when| {
                t.with("run-made-after", &[("when", &spinney_desk::when(t, when))])
            }),
        );
        match lost.saturating_sub(1) {
            0 => {}
            more => said.push(t.count("damaged-more", more)),
        }
        match pictures_lost {
            Some(0) => {}
            None => said.push(t.say("damaged-pictures-unknown")),
            Some(some) => said.push(t.count("damaged-pictures", *some)),
        }
        if !end_known {
            said.push(t.say("damaged-end"));
        }
        said.join(" ")
    }
}

/// Makes a file of a collection, whole or not at all: beside its place first, since another
/// program may make a file of that name meanwhile, and that one is not ours to take away.
pub(crate) fn new_collection(
    path: &Path,
    lines: &[Vec<u8>],
    pictures: impl IntoIterator<Item = Result<Vec<u8>, Failure>>,
) -> Result<(), Failure> {
    files::may_be_written(path, Over::Nothing)?;
    // An empty file is a collection that is just beginning.
    let part = files::part_of(path).map_err(|error| Failure::writing(path, &error))?;
    let kept = |error: StoreError| Failure::kept(error.of_place(part.path(), path));
    let mut store = Store::create(part.path()).map_err(kept)?;
    let head = store.append(0, lines, &[]).map_err(kept)?;
    for picture in pictures {
        store.append(head, &[], &[picture?]).map_err(kept)?;
    }
    drop(store);
    files::put_in_place(part, path, Over::Nothing)
}
