//! One byte of a file is changed, anywhere: it is found, and the rest is saved.
//!
//! The long run: `CHANGES=20000 cargo test -p spinney-store --test damaged -- --nocapture`.

use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};
use spinney_store::{Hash, Salvage, Saved, Store, StoreError};

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("damaged").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for the test");
    folder
}

fn line(number: usize) -> Vec<u8> {
    // Now and then one that does not fit on a page: a pasted table.
    let length = if number.is_multiple_of(23) { 9_000 } else { 60 + number * 37 % 240 };
    format!("line {number} {}", "abcdefghij".repeat(length / 10)).into_bytes()
}

fn picture(random: &mut fastrand::Rng) -> Vec<u8> {
    let length = random.usize(2_000..30_000);
    std::iter::repeat_with(|| random.u8(..)).take(length).collect()
}

/// Lines in their order, and pictures in the order of their hashes.
type Held = (Vec<Vec<u8>>, Vec<Vec<u8>>);

/// A collection with a life behind it: lines one by one, pictures, a removal for good.
fn collection(path: &Path) -> Held {
    let mut random = fastrand::Rng::with_seed(11);
    let mut store = Store::create(path).expect("a new file");
    let (mut lines, mut pictures) = (Vec::new(), Vec::new());
    for number in 1..=150 {
        let new: Vec<_> =
            (number % 25 == 0).then(|| picture(&mut random)).into_iter().collect();
        store.append(number as u64 - 1, &[line(number)], &new).expect("kept");
        lines.push(line(number));
        pictures.extend(new);
    }
    pictures.remove(1);
    lines.remove(70);
    let keep = pictures.iter().map(|bytes| Hash::of(bytes)).collect();
    store.rewrite(150, &lines, &keep).expect("removed");
    for number in 151..=200 {
        store.append(number as u64 - 2, &[line(number)], &[]).expect("kept");
        lines.push(line(number));
    }
    pictures.sort_by_key(|bytes| Hash::of(bytes));
    (lines, pictures)
}

/// Everything in a file, if nothing in it is damaged.
fn all_of(path: &Path) -> Result<Held, StoreError> {
    let store = Store::open(path)?;
    let lines = store.rows(0)?.into_iter().map(|row| row.bytes).collect();
    store.check()?;
    let pictures = store.pictures()?.into_iter();
    let pictures = pictures.map(|hash| Ok(store.picture(hash)?.expect("it was checked")));
    Ok((lines, pictures.collect::<Result<_, StoreError>>()?))
}

#[derive(Default)]
struct Figures {
    noticed: usize,
    named: usize,
    without_effect: usize,
    silent: usize,
    /// Of those noticed: nothing at all is lost; one line or one picture is; more is.
    nothing_lost: usize,
    one_lost: usize,
    more_lost: usize,
    before_saved: usize,
}

#[test]
fn a_changed_byte_is_found_and_the_rest_is_saved() {
    let changes = std::env::var("CHANGES").ok().and_then(|n| n.parse().ok()).unwrap_or(1_000);
    let path = folder("changes").join("walk.spinney");
    let whole = collection(&path);
    assert_eq!(all_of(&path).as_ref(), Ok(&whole));
    let good = fs::read(&path).expect("read");
    let mut random = fastrand::Rng::with_seed(23);
    let mut figures = Figures::default();
    for _ in 0..changes {
        let mut bytes = good.clone();
        let at = random.usize(..bytes.len());
        bytes[at] ^= random.u8(1..);
        fs::write(&path, &bytes).expect("written");
        let found = all_of(&path);
        assert_eq!(fs::read(&path).expect("read"), bytes, "looking changed the file ({at})");
        match found {
            Ok(found) if found == whole => {
                figures.without_effect += 1;
                // And it stays without one: the next line is kept as well.
                let mut store = Store::open(&path).expect("it opens");
                let head = whole.0.len() as u64;
                store.append(head, &[line(7)], &[]).expect("it can be written");
                assert_eq!(store.check(), Ok(()), "byte {at} came to bear later");
            }
            Ok(_) => figures.silent += 1,
            Err(error) => {
                figures.noticed += 1;
                figures.named += usize::from(matches!(error, StoreError::Damaged { .. }));
                saved(&path, &whole, &mut figures);
            }
        }
    }
    let Figures { noticed, named, without_effect, silent, .. } = figures;
    println!(
        "{changes} changed bytes: {noticed} noticed ({named} as damage), {without_effect} in bytes \
         that hold nothing, {silent} silent; of those noticed, nothing was lost after {}, one line \
         or picture after {}, more after {}; everything before the damage was saved after {}",
        figures.nothing_lost, figures.one_lost, figures.more_lost, figures.before_saved
    );
    assert_eq!(silent, 0);
    assert!(noticed * 2 > changes, "most bytes hold something");
    assert!(figures.before_saved * 100 >= noticed * 95);
    assert!((figures.nothing_lost + figures.one_lost) * 100 >= noticed * 99);
}

/// What of the whole is saved, and that nothing is passed off as what it is not.
fn saved(path: &Path, whole: &Held, figures: &mut Figures) {
    let Ok(mut salvage) = Salvage::of(path) else {
        figures.more_lost += 1;
        return;
    };
    let lines = std::mem::take(&mut salvage.lines);
    let sound = |(found, line): (&Saved, &Vec<u8>)| match found {
        Saved::Sound(found) => {
            assert_eq!(found, line, "another line is passed off as this one");
            true
        }
        Saved::Changed(_) | Saved::Lost => false,
    };
    let sound: Vec<bool> = lines.iter().zip(&whole.0).map(sound).collect();
    assert!(sound.len() <= whole.0.len());
    let lost = whole.0.len() - sound.iter().filter(|sound| **sound).count();
    let pictures: Vec<Vec<u8>> = std::mem::take(&mut salvage.pictures)
        .iter()
        .map(|picture| salvage.picture(picture).expect("it was there just now"))
        .collect();
    assert!(pictures.iter().all(|picture| whole.1.contains(picture)));
    let lost_pictures = whole.1.len() - pictures.len();
    match lost + lost_pictures {
        0 => figures.nothing_lost += 1,
        1 => figures.one_lost += 1,
        _ => figures.more_lost += 1,
    }
    // One byte damages one line; all others were before or after it.
    figures.before_saved += usize::from(lost <= 1);
}

#[test]
fn a_lost_end_is_noticed() {
    let path = folder("end").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    store.append(0, &[line(1), line(2), line(3)], &[b"leaf".to_vec()]).expect("kept");
    drop(store);
    let damaged = Err(StoreError::Damaged { path: path.clone() });
    let good = fs::read(&path).expect("read");
    for sql in [
        "DELETE FROM journal WHERE number = 3",
        "DELETE FROM journal WHERE number = 2",
        "UPDATE journal SET line = (SELECT line FROM journal WHERE number = 1) WHERE number = 2",
        // As a program would that mixes two copies of one file.
        "UPDATE journal SET (line, seal) = (SELECT line, seal FROM journal WHERE number = 1) \
         WHERE number = 2",
        "DELETE FROM pictures",
        "UPDATE whole SET lines = 2; DELETE FROM journal WHERE number = 3",
    ] {
        fs::write(&path, &good).expect("written");
        let other = rusqlite::Connection::open(&path).expect("it is SQLite");
        other.execute_batch(sql).expect("changed");
        drop(other);
        let found = Store::open(&path).and_then(|store| store.check());
        assert_eq!(found, damaged, "{sql}");
    }
}

/// A line that was removed for good and is still somewhere in the file does not come back.
#[test]
fn what_was_removed_is_not_saved() {
    let path = folder("removed").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    store.append(0, &[line(1), line(2), line(3)], &[]).expect("kept");
    let old = fs::read(&path).expect("read");
    store.rewrite(3, &[line(1)], &Default::default()).expect("removed");
    drop(store);
    // The old pages are put behind today's, as a copy that went wrong might.
    let mut bytes = fs::read(&path).expect("read");
    bytes.extend(old);
    fs::write(&path, bytes).expect("written");
    let salvage = Salvage::of(&path).expect("it can be read");
    assert_eq!(salvage.lines, [Saved::Sound(line(1))]);
}

/// The seal of the row that says what the whole adds up to, made as anybody can make it.
fn sealed_whole(path: &Path, lines: i64) {
    let other = rusqlite::Connection::open(path).expect("it is SQLite");
    let read = |row: &rusqlite::Row<'_>| {
        let [chain, sum]: [[u8; 32]; 2] = [row.get(1)?, row.get(3)?];
        Ok::<_, rusqlite::Error>((row.get::<_, i64>(0)?, chain, row.get::<_, i64>(2)?, sum))
    };
    let (epoch, chain, pictures, sum) = other
        .query_row("SELECT epoch, chain, pictures, sum FROM whole", [], read)
        .expect("there is one");
    let mut text = b"whole".to_vec();
    text.extend(epoch.to_be_bytes());
    text.extend(lines.to_be_bytes());
    text.extend(chain);
    text.extend(pictures.to_be_bytes());
    text.extend(sum);
    let seal: [u8; 32] = Sha256::digest(&text).into();
    other
        .execute("UPDATE whole SET lines = ?1, seal = ?2", rusqlite::params![lines, seal])
        .expect("changed");
}

/// A number in a file is not believed because it is sealed: memory is taken for what is there.
#[test]
fn a_sealed_number_without_end_is_not_believed() {
    let folder = folder("endless");
    let [path, far] = ["whole.spinney", "line.spinney"].map(|name| folder.join(name));
    for path in [&path, &far] {
        let mut store = Store::create(path).expect("a new file");
        store.append(0, &[line(1), line(2)], &[]).expect("kept");
    }
    sealed_whole(&path, 1 << 40);
    // One line with a number that no collection reaches, and its seal.
    let number: i64 = 1 << 40;
    let mut text = b"line".to_vec();
    text.extend(1_i64.to_be_bytes());
    text.extend(number.to_be_bytes());
    text.extend(line(3));
    let seal: [u8; 32] = Sha256::digest(&text).into();
    let other = rusqlite::Connection::open(&far).expect("it is SQLite");
    other
        .execute(
            "INSERT INTO journal VALUES (?1, 1, ?2, ?3)",
            rusqlite::params![number, line(3), seal],
        )
        .expect("written");
    drop(other);
    for path in [&path, &far] {
        let salvage = Salvage::of(path).expect("it can be read");
        let [one, two] = [1, 2].map(|number| Saved::Sound(line(number)));
        assert_eq!(salvage.lines[..2], [one, two]);
        let length = fs::metadata(path).expect("it is there").len() as usize;
        assert!(salvage.lines.len() <= length + 3, "{}", salvage.lines.len());
        assert!(!salvage.end_known && !salvage.is_whole());
    }
}

/// Pages that follow each other in a circle, and heads that all lead into one long chain: what
/// is read is little more than the file.
#[test]
fn pages_that_have_no_end_are_not_followed() {
    let path = folder("circle").join("walk.spinney");
    let mut store = Store::create(&path).expect("a new file");
    store.append(0, &[line(1)], &[]).expect("kept");
    drop(store);
    let mut bytes = fs::read(&path).expect("read");
    let pages = bytes.len() / 4096;
    // A page full of heads of pictures of 60 MiB, each of which goes on at the page itself.
    let field: u32 = 2 * (60 << 20) + 12;
    let part = |at: u32| (field >> (7 * at) & 0x7F) as u8;
    let head = [6, 76, part(3) | 0x80, part(2) | 0x80, part(1) | 0x80, part(0)];
    let itself = (pages as u32 + 1).to_be_bytes();
    let mut page: Vec<u8> = itself.iter().copied().cycle().take(4096).collect();
    for at in (4..3000).step_by(8) {
        page[at..at + 6].copy_from_slice(&head);
    }
    bytes.extend(&page);
    fs::write(&path, &bytes).expect("written");
    let begun = std::time::Instant::now();
    let salvage = Salvage::of(&path).expect("it can be read");
    assert_eq!(salvage.lines, [Saved::Sound(line(1))]);
    let took = begun.elapsed();
    assert!(took.as_secs() < 5, "{took:?} for {} bytes", bytes.len());
}

#[test]
fn a_healthy_file_of_the_first_form_is_whole() {
    let kept = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/fixtures/form_1.spinney");
    let mut salvage = Salvage::of(Path::new(kept)).expect("it can be read");
    assert!(salvage.is_whole());
    let picture = salvage.pictures[0].clone();
    let picture = salvage.picture(&picture).expect("it is there");
    let path = folder("first_form").join("walk.spinney");
    let mut bytes = fs::read(kept).expect("read");
    // A picture is not what its name says.
    let some = &picture[..picture.len().min(64)];
    let at = bytes.windows(some.len()).position(|part| part == some).expect("it is there");
    bytes[at] ^= 1;
    fs::write(&path, bytes).expect("written");
    let whole = Salvage::of(&path).is_ok_and(|salvage| salvage.is_whole());
    assert!(!whole, "a changed picture");
}

#[test]
fn what_can_be_read_of_a_file_of_the_first_form_is_read() {
    let kept = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/fixtures/form_1.spinney");
    let mut salvage = Salvage::of(Path::new(kept)).expect("it can be read");
    assert_eq!((salvage.lines.len(), salvage.end_known), (1, false));
    assert!(matches!(&salvage.lines[0], Saved::Sound(line) if line.ends_with(b"\"yew\"}}]}")));
    let picture = salvage.pictures[0].clone();
    assert_eq!(salvage.picture(&picture).map(|bytes| Hash::of(&bytes)), Ok(picture.hash));
    let table = folder("table").join("finds.csv");
    fs::write(&table, "kind,edge\nyew,smooth\n".repeat(1000)).expect("written");
    assert_eq!(Salvage::of(&table).err(), Some(StoreError::NotACollection { path: table }));
}

/// What SQLite takes for a place in memory is the name of a file to a person.
#[test]
fn every_name_is_the_name_of_a_file() {
    let folder = folder("names");
    let test = std::env::current_exe().expect("this test is a program");
    for name in [":memory:", "file:walk?mode=memory", "file::memory:?cache=shared", "walk?x"] {
        // In a process of its own: where a program works is one thing for all of its tests.
        let mut command = std::process::Command::new(&test);
        command.args(["--exact", "keeps_a_line_under_a_name", "--nocapture"]);
        let ended = command.env("NAME", name).current_dir(&folder).output().expect("it runs");
        assert!(ended.status.success(), "{name}: {}", String::from_utf8_lossy(&ended.stderr));
        let rows = Store::open(&folder.join(name)).and_then(|store| store.rows(0));
        assert_eq!(rows.map(|rows| rows.len()), Ok(1), "{name}");
    }
}

/// The other half of the test above; asked for by itself, it has nothing to do.
#[test]
fn keeps_a_line_under_a_name() {
    let Ok(name) = std::env::var("NAME") else { return };
    let path = Path::new(&name);
    let mut store = Store::create(path).expect("a new file");
    store.append(0, &[line(1)], &[]).expect("kept");
    drop(store);
    assert_eq!(Store::open(path).and_then(|store| store.head()), Ok(1));
}
