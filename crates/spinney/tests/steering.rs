//! What other people typed never steers a terminal: every command, with names that try to.

use std::fs;
use std::path::{Path, PathBuf};

#[path = "program/run.rs"]
mod run;

use run::spinney;

/// Clears the screen, renames the window, colours by C1, deletes, turns the direction round;
/// and the signs with which the program paints its own words.
const STEERING: &str = "\u{1b}[2J\u{1b}]0;mine\u{7}\u{9b}31m\u{7f}\u{8}\u{202e}\u{2066}\
     \u{fdd0}\u{fdd1}\u{fdd2}\u{fdd3}\u{fddf}";

fn folder() -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("steering");
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for a test");
    folder
}

/// Signs that steer: C0 but new line and tab, DEL, C1, and those that turn the direction.
fn steering(text: &str) -> Vec<char> {
    let steers = |sign: &char| {
        let number = u32::from(*sign);
        (number < 0x20 && !matches!(sign, '\n' | '\t'))
            || (0x7f..0xa0).contains(&number)
            || (0x202a..=0x202e).contains(&number)
            || (0x2066..=0x2069).contains(&number)
    };
    text.chars().filter(steers).collect()
}

#[test]
fn no_name_steers_the_terminal_of_any_command() {
    assert_eq!(steering(STEERING).len(), 8, "the test can find them");
    let folder = folder();
    let table = format!("finds{STEERING}.csv").replace('\u{7f}', "");
    let finds = format!(
        "kind,edge{STEERING},lobes,feel\n\
         hazel{STEERING},toothed{STEERING},unlobed,soft\nlime,toothed{STEERING},lobed,soft\n\
         yew{STEERING},smooth,unlobed,?{STEERING}\nholly,smooth,unlobed,?{STEERING}\n"
    );
    fs::write(folder.join(&table), &finds).expect("written");
    fs::write(folder.join("finds.csv"), &finds).expect("written");
    let kinds = format!("kind,picture,caution\nlime,no{STEERING}.png,it stings{STEERING}\n");
    fs::write(folder.join("kinds.csv"), kinds).expect("written");
    let key = format!(
        "1. Is the edge{STEERING} smooth{STEERING}?  Yes -> yew{STEERING}, No -> 2\n\
         2. Is it {STEERING} spotted?  Yes -> hazel{STEERING}, No -> linden{STEERING}\n"
    );
    fs::write(folder.join("key.txt"), &key).expect("written");
    let zip = format!("walk{STEERING}.zip");
    fs::write(folder.join(&zip), "no zip").expect("written");
    let (gone, hostile) = (format!("gone{STEERING}.csv"), STEERING);
    let commands: Vec<Vec<&str>> = vec![
        vec!["key", &table],
        vec!["key", "finds.csv", "--kinds", "kinds.csv", "--out", "visit"],
        vec!["key", &table, "--first", &key],
        vec!["key", &table, "--apart", &table],
        vec!["key", &gone],
        vec!["check", &table, "--key", "key.txt"],
        vec!["check", &table, "--key", "key.txt", "--pupils", "--write-links", "links.txt"],
        vec!["check", &table, "--key", &gone],
        vec!["check", &table, "--key", &table],
        vec!["explain", &table],
        vec!["table", "finds.csv", "--kinds", "kinds.csv", "--all-pairs"],
        vec!["table", "finds.csv", "--about", "key.txt"],
        vec!["weak", &table, "--all-pairs"],
        vec!["spread", &table, "--all-pairs"],
        vec!["forgive", &table],
        vec!["revise", &table, "--old", "key.txt"],
        vec!["template", &gone],
        vec!["pack", &zip, "out.zip"],
        vec!["pack", &gone, &zip],
        vec!["unpack", &zip, "out.spinney"],
        vec!["unpack", &gone, "out.spinney"],
        vec!["open", &zip, "--no-browser"],
        vec!["open", hostile, hostile, "--no-browser"],
        vec![hostile],
        vec!["key", &table, "--gap", hostile],
        vec!["key", &table, "--budget", hostile],
        vec!["key", &table, "--season", hostile],
    ];
    let mut shown = 0;
    for command in &commands {
        for format in [&[][..], &["--format", "json"][..]] {
            let takes =
                ["key", "check", "explain", "table", "weak", "spread", "forgive", "revise"];
            if !format.is_empty() && !takes.contains(&command[0]) {
                continue;
            }
            let args = [command.as_slice(), format].concat();
            let output = spinney(&folder, &args, "");
            assert!(output.status.code().is_some_and(|code| code <= 2), "{args:?}");
            for channel in [&output.stdout, &output.stderr] {
                let text = String::from_utf8(channel.clone()).expect("it speaks UTF-8");
                assert_eq!(steering(&text), Vec::<char>::new(), "{args:?}: {text:?}");
                shown += usize::from(text.contains('\u{fffd}') || text.contains("\\u001b"));
            }
        }
    }
    assert!(shown >= 25, "names are quoted, seen and harmless: {shown}");
}
