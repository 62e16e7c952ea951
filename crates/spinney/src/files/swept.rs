//! What a run that was killed has left half-made, cleared away by the next one that writes there.
//!
//! From a folder to the same without files and folders that bear our mark and that nobody makes
//! any more. The name of a half-made thing says which process makes it, on which machine since it
//! was started: `key.txt.spinney-5f0c2a91-4711-f3Tz9a.part`. What another machine makes, or one
//! that was started again since, is left alone for a day. A folder with folders in it stays:
//! a person's files may have been moved aside there.

use std::ffi::{OsStr, OsString};
use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::Path;
use std::time::Duration;

/// Nobody works so long on one file.
const LONGEST: Duration = Duration::from_secs(24 * 60 * 60);
/// In the name of everything half-made, behind the name that it will have.
const MARK: &str = ".spinney-";
const ENDING: &str = ".part";
const LONGEST_NAME: usize = 180;

/// The beginning and the end of the name of what is half-made; between them is what nobody has.
pub(crate) fn name_of_part(name: &OsStr) -> (OsString, &'static str) {
    // A name may have 255 bytes on most disks.
    let short = if name.len() > LONGEST_NAME { OsStr::new("half-made") } else { name };
    let mut prefix = short.to_owned();
    prefix.push(format!("{MARK}{}-{}-", machine(), std::process::id()));
    (prefix, ENDING)
}

/// This machine since it was started, as far as processes have numbers of their own in it.
fn machine() -> String {
    let mut hasher = DefaultHasher::new();
    fs::read_to_string("/proc/sys/kernel/random/boot_id").unwrap_or_default().hash(&mut hasher);
    fs::read_link("/proc/self/ns/pid").unwrap_or_default().hash(&mut hasher);
    format!("{:08x}", hasher.finish() >> 32)
}

/// Clears away what killed runs have left in a folder. What cannot be cleared away stays.
pub(crate) fn sweep(folder: &Path) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let name = entry.file_name();
        let Some(maker) = name.to_str().and_then(Maker::of) else { continue };
        let path = entry.path();
        if !maker.has_gone(&path) {
            continue;
        }
        if fs::remove_file(&path).is_err() && holds_files_only(&path) {
            let _ = fs::remove_dir_all(&path);
        }
        let mut journal = path.into_os_string();
        journal.push("-journal");
        let _ = fs::remove_file(journal);
    }
}

fn holds_files_only(folder: &Path) -> bool {
    let plain = |entry: std::io::Result<fs::DirEntry>| {
        entry.and_then(|entry| entry.file_type()).is_ok_and(|kind| kind.is_file())
    };
    fs::read_dir(folder).is_ok_and(|mut entries| entries.all(plain))
}

/// Who makes a half-made thing.
struct Maker<'n> {
    machine: &'n str,
    process: u32,
}

impl<'n> Maker<'n> {
    /// None: it does not bear our mark.
    fn of(name: &'n str) -> Option<Self> {
        let (_, marked) = name.strip_suffix(ENDING)?.rsplit_once(MARK)?;
        let (machine, rest) = marked.split_once('-')?;
        let (process, fresh) = rest.split_once('-')?;
        let ours = machine.len() == 8 && machine.bytes().all(|byte| byte.is_ascii_hexdigit());
        let fresh = !fresh.is_empty() && fresh.bytes().all(|byte| byte.is_ascii_alphanumeric());
        (ours && fresh).then_some(Self { machine, process: process.parse().ok()? })
    }

    fn has_gone(&self, path: &Path) -> bool {
        let processes = Path::new("/proc/self");
        if self.machine == machine() && processes.exists() {
            return !Path::new("/proc").join(self.process.to_string()).exists();
        }
        let touched = fs::symlink_metadata(path).and_then(|there| there.modified());
        touched.is_ok_and(|at| at.elapsed().is_ok_and(|since| since > LONGEST))
    }
}

#[cfg(test)]
mod tests {
    use std::path::PathBuf;
    use std::process::Command;
    use std::time::SystemTime;

    use super::*;

    fn fresh(name: &str) -> PathBuf {
        let name = format!("spinney-swept-{}-{name}", std::process::id());
        let folder = std::env::temp_dir().join(name);
        let _ = fs::remove_dir_all(&folder);
        fs::create_dir_all(&folder).expect("a folder for a test");
        folder
    }

    fn names(folder: &Path) -> Vec<String> {
        let entries = fs::read_dir(folder).expect("it is there");
        let name = |entry: std::io::Result<fs::DirEntry>| {
            entry.expect("read").file_name().into_string().expect("a name")
        };
        let mut names: Vec<String> = entries.map(name).collect();
        names.sort();
        names
    }

    fn part(machine: &str, process: u32) -> String {
        format!("key.txt{MARK}{machine}-{process}-f3Tz9a{ENDING}")
    }

    #[test]
    fn what_is_called_half_made_is_known_by_its_name() {
        let (prefix, ending) = name_of_part("key.txt".as_ref());
        let name = format!("{}aB3{ending}", prefix.to_str().expect("a name"));
        let maker = Maker::of(&name).expect("it bears our mark");
        assert_eq!((maker.machine, maker.process), (&*machine(), std::process::id()));
        let others = ["key.txt.part", "a.spinney-x-1-b.part", "a.spinney-00000000-1-.part"];
        assert!(others.iter().all(|name| Maker::of(name).is_none()));
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn what_a_killed_run_left_goes_and_nothing_else_does() {
        let folder = fresh("goes");
        let mut ended = Command::new(std::env::current_exe().expect("this test"))
            .arg("--list")
            .stdout(std::process::Stdio::null())
            .spawn()
            .expect("it starts");
        let gone = ended.id();
        ended.wait().expect("it ends");
        let here = machine();
        let stays = [
            "key.txt".to_owned(),
            "ours.part".to_owned(),
            part(&here, std::process::id()),
            part("00000000", gone),
        ];
        let left = part(&here, gone);
        for name in stays.iter().chain([&left, &format!("{left}-journal")]) {
            fs::write(folder.join(name), "half").expect("written");
        }
        let set = folder.join(left.replace("key.txt", "visit"));
        fs::create_dir(&set).expect("made");
        fs::write(set.join("key.txt"), "half").expect("written");
        let aside = folder.join(left.replace("key.txt", "aside"));
        fs::create_dir_all(aside.join("before")).expect("made");
        fs::write(aside.join("before/mine.txt"), "a person's").expect("written");
        sweep(&folder);
        let mut all = stays.to_vec();
        all.push(aside.file_name().expect("a name").to_str().expect("text").to_owned());
        all.sort();
        assert_eq!(names(&folder), all);
        fs::remove_dir_all(folder).expect("cleared");
    }

    #[test]
    fn what_another_machine_makes_is_left_alone_for_a_day() {
        let folder = fresh("day");
        for (process, hours) in [(1, 23), (2, 25)] {
            let file = fs::File::create(folder.join(part("00000000", process)));
            let then = SystemTime::now() - Duration::from_secs(hours * 60 * 60);
            file.and_then(|file| file.set_modified(then)).expect("as if it were old");
        }
        sweep(&folder);
        assert_eq!(names(&folder), [part("00000000", 1)]);
        fs::remove_dir_all(folder).expect("cleared");
    }
}
