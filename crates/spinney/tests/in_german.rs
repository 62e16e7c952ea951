//! A German table at the command line: whatever it says in German, no English is in it.
//!
//! Each run is made twice, in English and in German, of the same invented table. No line of the
//! German run is also in the English one, apart from lines that consist of names and numbers alone,
//! and none has a word in it that an English sentence hardly does without.

#[path = "program/run.rs"]
mod run;

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use run::spinney;

/// Invented.
const TABLE: &str = "\
Art,Blattrand,Blattform,Stiellänge,Blüte,Dornen,Oberseite
Hasel,gezähnt,rund,6-14 mm,grün,nein,rau
Linde,gezähnt,rund,30-50 mm,gelb,nein,glatt
Efeu,glatt,gelappt,20-60 mm,grün,nein,glatt
Eiche,glatt,gelappt,2-5 mm,,nein,glatt
Ilex,gezähnt,rund,5-9 mm,weiß,ja,glatt
Weißdorn,gezähnt,gelappt,8-15 mm,weiß,ja,rau
Buche,glatt,rund,5-12 mm,grün,nein,glatt
Ulme,gezähnt,rund,4-10 mm,grün,nein,rau
Rüster,gezähnt,rund,4-10 mm,grün,nein,rau
";
/// The headings are those that every table has.
const CHARACTERS: &str = "\
character,states,unit,seen on,season,difficulty,read right,by touch,applies when
Blattrand,gezähnt; glatt,,leaf,,easy,90,no,
Blattform,rund; gelappt,,leaf,,fair,80,no,
Stiellänge,,mm,leaf,,fair,75,no,
Blüte,grün; gelb; weiß,,twig,spring,hard,,no,
Dornen,ja; nein,,twig,,easy,,no,
Oberseite,rau; glatt,,leaf,,easy,,yes,
";
const KINDS: &str = "kind,how often,caution\nHasel,often,\nIlex,rarely,Er sticht.\n";
const OLD: &str = "\
1. Ist der Blattrand gezähnt?  Ja -> 2, Nein -> 4
2. Hat es Dornen?  Ja -> Ilex, Nein -> 3
3. Ist der Stiel 22 mm oder länger?  Ja -> Linde, Nein -> Hasel
4. Ist die Blattform gelappt?  Ja -> 5, Nein -> Buche
5. Ist der Stiel 12 mm oder länger?  Ja -> Efeu, Nein -> Holunder
";
/// A key in which something is to be mended.
const BROKEN: &str = "\
1. Ist der Blattrand gezähnt?  Ja -> 2, Nein -> 9
2. Hat es Dornen?  Ja -> Ilex, Nein -> Hasel
";

/// Words that are in nearly every English sentence of ours, and in no German one.
const ENGLISH: &[&str] = &[
    "the",
    "is",
    "are",
    "of",
    "and",
    "not",
    "no",
    "this",
    "that",
    "these",
    "with",
    "without",
    "from",
    "to",
    "for",
    "which",
    "question",
    "questions",
    "find",
    "finds",
    "kind",
    "kinds",
    "there",
    "it",
    "its",
    "be",
    "by",
    "on",
    "at",
    "or",
    "have",
    "has",
    "than",
    "more",
    "most",
    "about",
    "what",
    "where",
    "who",
    "one",
    "two",
    "only",
    "column",
    "columns",
    "table",
    "proved",
    "saves",
    "costs",
    "heap",
    "heaps",
    "look",
    "first",
    "none",
    "every",
    "each",
    "could",
    "can",
    "would",
    "may",
    "must",
    "you",
    "your",
    "file",
    "folder",
    "nothing",
    "written",
    "give",
    "type",
];

/// What is typed behind `spinney`; each ends with or without something to mend, but by itself.
const RUNS: &[&[&str]] = &[
    &["key", "."],
    &["key", ".", "--hand", "leaf", "--season", "autumn"],
    &["key", ".", "--goals", "right,teaching,words,no-ruler"],
    &["key", ".", "--apart", "Hasel, Linde", "--out-first", "Ilex", "--order", "Dornen"],
    &["key", ".", "--allow-touch", "--never", "Blattrand"],
    &["key", ".", "--first", "Ist die Blattform gelappt?"],
    &["key", ".", "--budget", "1"],
    &["key", ".", "--out", "OUT", "--date", "3 October 2026"],
    &["check", ".", "--key", "alt.txt"],
    &[
        "check",
        ".",
        "--key",
        "kaputt.txt",
        "--pupils",
        "--out",
        "OUT",
        "--date",
        "3 October 2026",
    ],
    &["explain", "."],
    &["explain", ".", "--keys", "4", "--alternatives", "6", "--allow-touch"],
    &["weak", "."],
    &["weak", ".", "--budget", "1", "--next", "1"],
    &["spread", "."],
    &["table", ".", "--rows", "leaves"],
    &["forgive", "."],
    &["forgive", ".", "--places", "3", "--budget", "5", "--season", "spring"],
    &["forgive", ".", "--places", "0"],
    &["revise", ".", "--old", "alt.txt"],
    &["revise", ".", "--old", "alt.txt", "--loss", "0", "--budget", "3"],
    &["revise", ".", "--old", "alt.txt", "--out", "OUT", "--date", "3 October 2026"],
    &["table", "."],
    &["table", ".", "--out", "OUT"],
    &["template", "OUT.xlsx"],
    &["measure", "blatt.png"],
    &["measure", "blatt.png", "table.csv", "--dpi", "300", "--out", "OUT"],
];

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("in_german").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("the folder can be made");
    for (name, text) in [
        ("table.csv", TABLE),
        ("characters.csv", CHARACTERS),
        ("kinds.csv", KINDS),
        ("alt.txt", OLD),
        ("kaputt.txt", BROKEN),
    ] {
        fs::write(folder.join(name), text).expect("a file can be written");
    }
    let leaf = image::RgbImage::from_fn(120, 160, |x, y| {
        let (across, down) = ((f64::from(x) - 60.0) / 30.0, (f64::from(y) - 80.0) / 60.0);
        image::Rgb(if across.hypot(down) < 1.0 { [60, 100, 50] } else { [250; 3] })
    });
    leaf.save(folder.join("blatt.png")).expect("a picture can be written");
    folder
}

/// What a run says on both streams and in the texts that it writes for people, line by line.
fn said(folder: &Path, typed: &[&str], language: &str) -> (Option<i32>, Vec<String>) {
    let out = format!("out-{language}");
    let xlsx = format!("{out}.xlsx");
    let typed = typed.iter().map(|word| match *word {
        "OUT" => out.as_str(),
        "OUT.xlsx" => xlsx.as_str(),
        other => other,
    });
    let typed: Vec<&str> = typed.chain(["--language", language]).collect();
    let place = folder.join(&out);
    let _ = fs::remove_dir_all(&place);
    let output = spinney(folder, &typed, "");
    let mut text = String::from_utf8(output.stdout).expect("it speaks UTF-8");
    text.push_str(&String::from_utf8(output.stderr).expect("it speaks UTF-8"));
    for name in ["findings.txt", "changes.txt", "opinion.txt", "key.txt"] {
        text.push_str(&fs::read_to_string(place.join(name)).unwrap_or_default());
    }
    let lines = text.lines().map(|line| line.trim().replace(&out, "OUT"));
    (output.status.code(), lines.filter(|line| !line.is_empty()).collect())
}

/// The words of a line that are nobody's names: without codes of findings, what is to be typed,
/// and names of files.
fn words(line: &str) -> Vec<String> {
    let mut words = Vec::new();
    let mut typed = false;
    // What is offered for a links file is copied as it is.
    let line = line.split("--links:").next().unwrap_or_default();
    for word in line.split_whitespace() {
        let of_a_file = word.trim_end_matches(['.', ',', ':', ')']).contains('.');
        typed |= word.trim_start_matches(['„', '“']).starts_with("spinney");
        if !typed
            && !of_a_file
            && !word.contains("--")
            && !word.contains("://")
            && !word.starts_with('[')
        {
            let bare = word.trim_matches(|sign: char| !sign.is_alphanumeric());
            words.extend(Some(bare.to_lowercase()).filter(|bare| !bare.is_empty()));
        }
        typed &= !word.ends_with(['“', '.', ':']);
    }
    words
}

/// Names that a person typed, and numbers with their units.
fn is_name(word: &str) -> bool {
    let typed = [TABLE, CHARACTERS, KINDS, OLD, BROKEN].concat().to_lowercase();
    let typed: BTreeSet<&str> = typed.split(|sign: char| !sign.is_alphanumeric()).collect();
    !word.contains(char::is_alphabetic) || typed.contains(word)
}

/// What is wrong with what a German run says.
fn wrong(english: &[String], german: &[String]) -> Vec<String> {
    let there: BTreeSet<&String> = english.iter().collect();
    let mut wrong = Vec::new();
    for line in german {
        let words = words(line);
        if there.contains(line) && !words.iter().all(|word| is_name(word)) {
            wrong.push(format!("in both: {line}"));
        }
        let found = words.iter().find(|word| ENGLISH.contains(&word.as_str()));
        wrong.extend(found.map(|word| format!("“{word}”: {line}")));
    }
    wrong
}

#[test]
fn no_english_is_in_what_a_german_run_says() {
    let folder = folder("runs");
    let mut all = Vec::new();
    for typed in RUNS {
        let (code, english) = said(&folder, typed, "en");
        let (german_code, german) = said(&folder, typed, "de");
        assert!(matches!(code, Some(0 | 1)), "{typed:?}: {code:?} {english:?}");
        assert_eq!(code, german_code, "{typed:?}: {german:?}");
        assert!(!german.is_empty(), "{typed:?} says nothing");
        all.extend(wrong(&english, &german).into_iter().map(|it| format!("{typed:?} {it}")));
    }
    assert!(all.is_empty(), "{} lines:\n{}", all.len(), all.join("\n"));
}

/// Where the language cannot be read from what was understood, it is read from what was typed.
#[test]
fn a_wrong_use_and_a_failure_are_told_in_german_too() {
    let folder = folder("wrong");
    fs::write(folder.join("eine.csv"), "Art,Rand\nHasel,glatt\n").expect("it can be written");
    fs::write(folder.join("leer.txt"), "").expect("it can be written");
    fs::write(folder.join("kein.spinney"), "Hallo").expect("it can be written");
    fs::create_dir_all(folder.join("leerer-ordner")).expect("the folder can be made");
    let typed: &[&[&str]] = &[
        &["schlüssel"],
        &["print"],
        &["table.csv"],
        &["key"],
        &["check", "."],
        &["revise", "."],
        &["pack"],
        &["key", ".", "--papr", "a4"],
        &["key", ".", "-out", "x"],
        &["key", ".", "–out", "x"],
        &["weak", ".", "--out", "x"],
        &["key", ".", "--paper", "a5"],
        &["key", ".", "--paper"],
        &["key", ".", "--out"],
        &["key", ".", "--memory", "0"],
        &["key", ".", "--budget", "viele"],
        &["key", ".", "--date", "bald"],
        &["key", ".", "--date", "31/02/2026"],
        &["key", ".", "--date", "2026-13-01"],
        &["key", ".", "--gap", "viel"],
        &["key", ".", "--gap", "99999"],
        &["revise", ".", "--old", "alt.txt", "--loss", "viel"],
        &["key", ".", "--first", "a", "--keep", "b"],
        &["key", ".", "alt.txt"],
        &["check", "table.csv", "alt.txt"],
        &["key", "tabel.csv"],
        &["key", "TABLE.csv"],
        &["key", "ordner/table.csv"],
        &["key", "nirgends.csv"],
        &["key", "leerer-ordner"],
        &["key", "http://example.org/table.csv"],
        &["key", "file:///table.csv"],
        &["key", "“table.csv”"],
        &["key", " table.csv"],
        &["key", "~/table.csv"],
        &["key", "eine.csv"],
        &["key", "leer.txt"],
        &["key", "alt.txt"],
        &["key", ".", "--never", "Blattrnd"],
        &["key", ".", "--never", "Farbe"],
        &["key", ".", "--apart", "Hasel"],
        &["key", ".", "--apart", "Hasel, Hasel"],
        &["key", ".", "--first", "Singt es?"],
        &["key", ".", "--out", "table.csv"],
        &["check", ".", "--key", "leer.txt"],
        &["check", ".", "--key", "table.csv"],
        &["check", ".", "--key", "alt.txt", "--write-links", "alt.txt"],
        &["pack", "kein.spinney", "x.zip"],
        &["pack", "leerer-ordner", "x.zip"],
        &["pack", "leer.txt", "x.zip"],
        &["unpack", "table.csv", "x.spinney"],
        &["rescue", "table.csv", "x.spinney"],
        &["template", "x.csv"],
        &["measure"],
        &["measure", "table.csv"],
        &["measure", "nirgends.png"],
        &["measure", "blatt.png", "--dpi", "viele"],
        &["pocket", "x.txt"],
        &["open", "leerer-ordner"],
    ];
    let mut all = Vec::new();
    for typed in typed {
        let (code, english) = said(&folder, typed, "en");
        let (german_code, german) = said(&folder, typed, "de");
        assert!(matches!(code, Some(1 | 2)), "{typed:?}: {code:?} {english:?}");
        assert_eq!(code, german_code, "{typed:?}: {german:?}");
        // A sentence, and what to do.
        assert!(
            german.len() >= 2 && german[0].starts_with("spinney: "),
            "{typed:?}: {german:?}"
        );
        let german: Vec<String> =
            german.iter().map(|line| line.replacen("spinney: ", "", 1)).collect();
        all.extend(wrong(&english, &german).into_iter().map(|it| format!("{typed:?} {it}")));
        let same = german[1..].iter().find(|line| english.contains(line));
        all.extend(same.map(|line| format!("{typed:?} has the remedy of the English: {line}")));
    }
    assert!(all.is_empty(), "{} lines:\n{}", all.len(), all.join("\n"));
}

/// What the tests above look for is found where it is.
#[test]
fn english_would_be_found() {
    let english = ["Proved: no key from this table takes less.".to_owned(), "Hasel".to_owned()];
    assert_eq!(wrong(&english, &english).len(), 2);
    let german = ["Bewiesen: Kein Schlüssel braucht weniger.".to_owned(), "Hasel".to_owned()];
    assert_eq!(wrong(&english, &german), Vec::<String>::new());
}
