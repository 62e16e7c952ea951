//! `spinney measure` on a folder of scans: every picture in its place, whatever is done first.

use std::fs;
use std::path::{Path, PathBuf};

#[path = "program/run.rs"]
mod run;

fn desk(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("measure_folder").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for one case");
    folder
}

/// A scan of one leaf, so many pixels long.
fn scan(path: &Path, long: f64) {
    let leaf = image::RgbImage::from_fn(300, 400, |x, y| {
        let (across, down) =
            ((f64::from(x) - 150.0) / 60.0, (f64::from(y) - 190.0) / long * 2.0);
        let stalk = (x.abs_diff(150) < 4) && y > 190 && f64::from(y) < 210.0 + long / 2.0;
        image::Rgb(if across.hypot(down) < 1.0 || stalk { [60, 100, 50] } else { [250; 3] })
    });
    leaf.save(path).expect("a picture can be written");
}

fn json(folder: &Path, args: &[&str], code: i32) -> (serde_json::Value, String) {
    let args: Vec<&str> = ["measure", "--dpi", "300", "--format", "json"]
        .into_iter()
        .chain(args.iter().copied())
        .collect();
    let output = run::spinney(folder, &args, "");
    let complained = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(code), "{complained}");
    (serde_json::from_slice(&output.stdout).unwrap_or_default(), complained)
}

#[test]
fn a_folder_is_measured_in_the_order_of_its_pages_and_as_each_page_alone() {
    let desk = desk("pages");
    let scans = desk.join("scans");
    fs::create_dir(&scans).expect("a folder");
    for page in 1..=11 {
        scan(&scans.join(format!("page {page}.png")), 100.0 + 10.0 * f64::from(page));
    }
    fs::write(scans.join("notes.txt"), "no picture").expect("written");
    fs::write(scans.join("page 5b.PNG"), "not a picture either").expect("written");
    fs::write(scans.join("._page 1.png"), "what another system left").expect("written");
    let (all, complained) = json(&desk, &["scans", "--out", "out"], 1);
    assert!(complained.contains("page 5b.PNG"), "{complained}");
    assert!(!complained.contains("notes.txt") && !complained.contains("._"), "{complained}");
    fs::write(desk.join("mends.txt"), "leaf 1 is no leaf\n").expect("written");
    let (_, complained) = json(&desk, &["scans", "--mends", "mends.txt"], 2);
    assert!(complained.contains("--mends"), "mends are of one picture: {complained}");
    let pictures = all["pictures"].as_array().expect("pictures");
    let files: Vec<_> =
        pictures.iter().map(|one| one["file"].as_str().expect("a name").to_owned()).collect();
    let wanted: Vec<String> = (1..=11)
        .map(|page| Path::new("scans").join(format!("page {page}.png")).display().to_string())
        .collect();
    assert_eq!(files, wanted);
    for (file, picture) in files.iter().zip(pictures) {
        let (alone, _) = json(&desk, &[file], 0);
        assert_eq!(&alone["pictures"][0], picture, "{file}");
        let stem = Path::new(file).file_stem().expect("a name").to_string_lossy().into_owned();
        for ending in ["measured.svg", "leaf-01.png", "leaf-01-lines.svg"] {
            assert!(desk.join("out").join(format!("{stem}-{ending}")).is_file(), "{stem}");
        }
        let lines = fs::read(desk.join("out").join(format!("{stem}-leaf-01-lines.svg")));
        let bytes = lines.expect("it is there").len();
        assert!(bytes < 4_000, "some hundred points: {bytes} bytes");
    }
    // What was written says the same as what was answered.
    let written = fs::read(desk.join("out/leaves.json")).expect("it is there");
    assert_eq!(serde_json::from_slice::<serde_json::Value>(&written).expect("JSON"), all);
}

#[test]
fn a_folder_without_pictures_and_a_file_that_is_not_there_are_wrong_uses() {
    let desk = desk("nothing");
    fs::create_dir(desk.join("empty")).expect("a folder");
    let (_, complained) = json(&desk, &["empty"], 2);
    assert!(complained.contains("There is no picture in empty."), "{complained}");
    scan(&desk.join("leaf.png"), 120.0);
    let (_, complained) = json(&desk, &["leaf.png", "gone.png", "--out", "out"], 2);
    assert!(complained.contains("gone.png"), "{complained}");
    assert!(!desk.join("out").exists(), "nothing is written of half of them");
}
