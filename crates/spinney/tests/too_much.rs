//! What is more than a limit lets in is told, with what to do; nothing is made of half of it.

use std::fmt::Write;
use std::fs;

#[path = "program/run.rs"]
mod run;
#[path = "screens/browser.rs"]
mod screens;

use run::spinney;
use screens::fresh;

#[test]
fn a_table_whose_questions_fill_the_memory_is_refused_with_what_would_be_enough() {
    let folder = fresh("too-many-questions");
    let mut table = "kind".to_owned();
    // Lengths that all differ, and midway between any two of them another threshold.
    (0..20).for_each(|column| _ = write!(table, ",length {column} mm"));
    for kind in 0..400_u64 {
        let _ = write!(table, "\nkind {kind}");
        let length = |column: u64| (kind * kind * 7_919 + column * 37) % 999_983;
        (0..20).for_each(|column| _ = write!(table, ",{}", length(column)));
    }
    fs::write(folder.join("measured.csv"), table).expect("written");
    for args in [&["key", "measured.csv"][..], &["explain", "measured.csv"][..]] {
        let output = spinney(&folder, args, "");
        let said = String::from_utf8(output.stderr).expect("it speaks UTF-8");
        assert_eq!(output.status.code(), Some(1), "{said}");
        assert!(said.contains("512 MiB may be taken") && said.contains("--memory "), "{said}");
    }
}

#[test]
fn a_bundle_with_more_in_it_than_fits_is_refused_and_makes_no_file() {
    let folder = fresh("too-much-in-a-bundle");
    let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    let options = zip::write::SimpleFileOptions::default();
    zip.start_file("journal.jsonl", options).expect("a file");
    std::io::Write::write_all(&mut zip, &b"x\n".repeat(13 << 20)).expect("memory");
    let packed = zip.finish().expect("a zip").into_inner();
    assert!(packed.len() < 1 << 20, "a small file: {} bytes", packed.len());
    fs::write(folder.join("bomb.zip"), packed).expect("written");
    let output = spinney(&folder, &["unpack", "bomb.zip", "walk.spinney"], "");
    let said = String::from_utf8(output.stderr).expect("it speaks UTF-8");
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert!(said.contains("larger than a packed collection may be"), "{said}");
    assert!(!folder.join("walk.spinney").exists());
}
