//! Many pictures on all cores, in as much memory as a command may take.
//!
//! From files to what became of each, handed on as it is done. Each file is read when its turn
//! comes, and what its pixels will take is kept free before the next is read; so it is the memory and
//! not the number of cores that says how many large pictures are measured at once.

use std::num::NonZero;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::mpsc::sync_channel;
use std::sync::{Condvar, Mutex, PoisonError};

use crate::failure::{Failure, trouble};
use crate::opened;

/// What pictures may take together: the 512 MiB of every command, without what the program and
/// the numbers take.
const MEMORY: usize = 448 << 20;

/// Reads the files in their order and works on them beside each other; `done` gets each with its
/// place, in the order in which they are done. None: the work panicked, which the others outlive.
///
/// **Errors**: a file could not be read, or `done` fails; then no further file is begun.
pub(super) fn each<T: Send>(
    files: &[PathBuf],
    work: impl Fn(&Path, &[u8]) -> T + Sync,
    mut done: impl FnMut(usize, Option<T>) -> Result<(), Failure>,
) -> Result<(), Failure> {
    let cores = std::thread::available_parallelism().map_or(1, NonZero::get);
    let queue = Queue { files, next: Mutex::new(0), room: Room::of(MEMORY) };
    std::thread::scope(|scope| {
        // Whoever is done waits until that was taken, so that little lies about.
        let (sender, receiver) = sync_channel(0);
        for _ in 0..cores.min(files.len()) {
            let (sender, queue, work) = (sender.clone(), &queue, &work);
            let thread = std::thread::Builder::new().stack_size(crate::STACK);
            let begun = thread.spawn_scoped(scope, move || {
                while let Some((at, read)) = queue.next() {
                    let made = read.map(|(bytes, _taken)| {
                        catch_unwind(AssertUnwindSafe(|| work(&files[at], &bytes))).ok()
                    });
                    if sender.send((at, made)).is_err() {
                        break;
                    }
                }
            });
            begun.map_err(|error| {
                Failure::new("failure-start", [("why", trouble(&error).into())])
            })?;
        }
        drop(sender);
        // Whoever leaves this loop early takes the receiver along, and nobody begins another file.
        for (at, made) in receiver {
            done(at, made?)?;
        }
        Ok(())
    })
}

/// The bytes of a file, and the memory that is kept for it.
type Read<'r> = (Vec<u8>, Taken<'r>);

/// The files that nobody has begun, and the memory that is free.
struct Queue<'f> {
    files: &'f [PathBuf],
    next: Mutex<usize>,
    room: Room,
}

impl Queue<'_> {
    /// The next file with its place, once there is room for its pixels; None: all are begun.
    fn next(&self) -> Option<(usize, Result<Read<'_>, Failure>)> {
        // Nobody reads a file while another one waits for room.
        let mut next = self.next.lock().unwrap_or_else(PoisonError::into_inner);
        let at = *next;
        let read = opened::scan_bytes(self.files.get(at)?);
        *next += 1;
        let read = read.map(|bytes| {
            let taken = self.room.take(spinney_measure::takes(&bytes));
            (bytes, taken)
        });
        Some((at, read))
    }
}

/// Memory that is counted before it is taken.
struct Room {
    all: usize,
    free: Mutex<usize>,
    freed: Condvar,
}

impl Room {
    fn of(all: usize) -> Self {
        Self { all, free: Mutex::new(all), freed: Condvar::new() }
    }

    /// Waits until so many bytes are free; what takes more than there is waits for all.
    fn take(&self, wanted: usize) -> Taken<'_> {
        let wanted = wanted.min(self.all);
        let free = self.free.lock().unwrap_or_else(PoisonError::into_inner);
        let enough = self.freed.wait_while(free, |free| *free < wanted);
        *enough.unwrap_or_else(PoisonError::into_inner) -= wanted;
        Taken { room: self, bytes: wanted }
    }
}

/// Bytes that are not free until this is dropped.
struct Taken<'r> {
    room: &'r Room,
    bytes: usize,
}

impl Drop for Taken<'_> {
    fn drop(&mut self) {
        *self.room.free.lock().unwrap_or_else(PoisonError::into_inner) += self.bytes;
        self.room.freed.notify_all();
    }
}

#[cfg(test)]
mod tests {
    use std::sync::atomic::{AtomicUsize, Ordering};

    use super::Room;

    #[test]
    fn no_more_is_taken_than_there_is_and_nobody_waits_for_ever() {
        let room = Room::of(100);
        let (now, most) = (AtomicUsize::new(0), AtomicUsize::new(0));
        std::thread::scope(|scope| {
            for wanted in [10, 60, 60, 250, 40, 0, 100, 30] {
                let (room, now, most) = (&room, &now, &most);
                scope.spawn(move || {
                    for _ in 0..200 {
                        let _taken = room.take(wanted);
                        let wanted = wanted.min(100);
                        let all = now.fetch_add(wanted, Ordering::SeqCst) + wanted;
                        most.fetch_max(all, Ordering::SeqCst);
                        std::thread::yield_now();
                        now.fetch_sub(wanted, Ordering::SeqCst);
                    }
                });
            }
        });
        assert_eq!(now.into_inner(), 0);
        assert_eq!(most.into_inner(), 100, "what wants all gets it, and nobody gets more");
        assert_eq!(*room.free.lock().expect("nobody panicked"), 100);
    }
}
