//! The command line as a person uses it: what it says, what it writes, how it exits.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Output;

#[path = "program/run.rs"]
mod run;

use run::spinney;
use spinney_voice::Tongue;

/// A folder of its own for one story.
fn desk(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("command_line").join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder).expect("an older story can be cleared away");
    }
    fs::create_dir_all(&folder).expect("the folder can be made");
    folder
}

fn said(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("it speaks UTF-8")
}

fn complained(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).expect("it speaks UTF-8")
}

const FINDS: &str = "kind,edge,lobes,stalk length
hazel,toothed,unlobed,6-14 mm
lime,toothed,unlobed,30-50 mm
dogwood,smooth,unlobed,5-14 mm
hawthorn,toothed,lobed,10-20 mm
";

#[test]
fn a_teacher_makes_a_key_from_a_small_table() {
    let desk = desk("small_table");
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    let output = spinney(&desk, &["key", "finds.csv", "--out", "visit", "--date", "today"], "");
    assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
    let text = said(&output);
    assert!(text.contains("Is the edge toothed?"), "{text}");
    assert!(text.contains("Proved"), "{text}");
    for name in ["key.txt", "key.json", "phone.html", "key-pages.pdf", "chart.pdf", "today.pdf"]
    {
        let written = fs::metadata(desk.join("visit").join(name));
        assert!(written.is_ok_and(|file| file.len() > 100), "{name} is missing");
    }
    let check = spinney(&desk, &["check", "finds.csv", "--key", "visit/key.json"], "");
    assert_eq!(check.status.code(), Some(0), "{}", said(&check));
    assert!(said(&check).contains("This key works"), "{}", said(&check));
    // The proof is in the file, and is followed here.
    let spoken = said(&check).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(spoken.contains("went through the proof and agrees"), "{spoken}");
    // A file whose proof was changed is refused; 11 is the effort of the whole key.
    let file = desk.join("visit").join("key.json");
    let json = fs::read_to_string(&file).expect("a file");
    assert!(json.contains("\"f||11\""), "{json}");
    let less = json.replace("\"f||11\"", "\"f||10\"");
    fs::write(desk.join("changed.json"), less).expect("written");
    let changed = spinney(&desk, &["check", "finds.csv", "--key", "changed.json"], "");
    assert_eq!(changed.status.code(), Some(1), "{}", said(&changed));
    assert!(said(&changed).contains("does not hold"), "{}", said(&changed));
    let in_words = spinney(&desk, &["check", "finds.csv", "--key", "visit/key.txt"], "");
    assert_eq!(in_words.status.code(), Some(0), "{}", said(&in_words));
    assert!(said(&in_words).contains("3 of 3 questions checked"), "{}", said(&in_words));
}

/// By hand: the feel first, two questions per find. But holly pricks: so the edge comes first,
/// then the feel, then the lobes: 4 + 3 + 2 for four finds, a quarter of a step more.
#[test]
fn nobody_is_sent_to_touch_what_may_hurt_unless_a_person_allows_it() {
    let desk = desk("touch");
    let finds = "kind,feel,edge,lobes
ivy,leathery,smooth,unlobed
holly,leathery,spiny,unlobed
lime,papery,smooth,lobed
hazel,papery,smooth,unlobed
";
    fs::write(desk.join("finds.csv"), finds).expect("written");
    fs::write(desk.join("kinds.csv"), "kind,caution\nholly,It pricks.\n").expect("written");
    let asked = |more: &[&str]| {
        let mut args = vec!["key", "finds.csv", "--kinds", "kinds.csv"];
        args.extend(more);
        let output = spinney(&desk, &args, "");
        assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
        said(&output).split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let usual = asked(&[]);
    let spared = "Nobody is sent to touch what may hurt while something else separates. That \
                  costs 0.25 questions per find.";
    assert!(usual.contains(spared), "{usual}");
    assert!(usual.starts_with("1. Is the edge"), "{usual}");
    let allowed = asked(&["--allow-touch"]);
    assert!(allowed.contains("Touching is allowed. That saves"), "{allowed}");
    assert!(allowed.contains("Question 1 is answered by touch while a kind"), "{allowed}");
    let json = asked(&["--allow-touch", "--format", "json"]);
    assert!(json.contains("\"allow_touch\": true"), "{json}");
    assert!(json.contains("\"touching\": [ 1 ]"), "{json}");
    let explain = spinney(&desk, &["explain", "finds.csv", "--kinds", "kinds.csv"], "");
    let why = said(&explain).split_whitespace().collect::<Vec<_>>().join(" ");
    let touch = "per find, but children would have to touch, and holly may be in the hand.";
    assert!(why.contains(touch), "{why}");
    let help = spinney(&desk, &["key", "--help"], "");
    assert!(said(&help).contains("--allow-touch"), "{}", said(&help));
}

#[test]
fn a_table_may_come_from_stdin_and_the_answer_be_json() {
    let desk = desk("stdin");
    let output = spinney(&desk, &["key", "-", "--format", "json"], FINDS);
    assert_eq!(output.status.code(), Some(0));
    let text = said(&output);
    assert!(text.starts_with('{') && text.ends_with("}\n"), "{text}");
    assert!(text.contains("\"optimal\": true"), "{text}");
    // By hand: dogwood 1, hawthorn 2, and hazel and lime 2 and a question with a ruler, which
    // counts 2: 1 + 2 + 4 + 4.
    assert!(text.contains("\"effort_total\": 11"), "{text}");
}

#[test]
fn a_key_with_a_forgotten_kind_is_found_out() {
    let desk = desk("forgotten");
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    let key = "1. Is the edge toothed? Yes -> 2, No -> dogwood\n\
               2. Is the leaf lobed? Yes -> hawthorn, No -> lime\n";
    fs::write(desk.join("ours.txt"), key).expect("written");
    let output = spinney(&desk, &["check", "finds.csv", "--key", "ours.txt"], "");
    assert_eq!(output.status.code(), Some(1));
    assert!(said(&output).contains("Hazel never comes out"), "{}", said(&output));
    let same = spinney(&desk, &["check", "finds.csv", "--key", "-"], key);
    assert_eq!(said(&same), said(&output));
}

#[test]
fn a_persons_first_question_is_kept_and_priced() {
    let desk = desk("first");
    let finds = "kind,a,b,c\nw,yes,yes,no\nx,yes,no,no\ny,no,yes,no\nz,no,no,yes\n";
    let output = spinney(&desk, &["key", "-", "--first", "Is c yes?"], finds);
    let text = said(&output);
    assert!(text.contains("Keeping your questions costs 0.25 questions per find."), "{text}");
    let none = spinney(&desk, &["key", "-", "--first", "Does it sing?"], finds);
    assert_eq!(none.status.code(), Some(2));
    assert!(complained(&none).contains("could not be linked"), "{}", complained(&none));
}

/// A question to keep is never dropped: it is linked, or the key is not made.
#[test]
fn a_question_to_keep_that_cannot_be_linked_is_refused() {
    let desk = desk("keep");
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    let keep = |text: &str, more: &[&str]| {
        fs::write(desk.join("keep.txt"), text).expect("written");
        let mut words = vec!["key", "finds.csv", "--keep", "keep.txt"];
        words.extend(more);
        spinney(&desk, &words, "")
    };
    let two = "1. Is it lobed? Yes -> ?, No -> 2\n2. Is the edge toothed? Yes -> ?, No -> ?\n";
    let fine = keep(two, &[]);
    assert_eq!(fine.status.code(), Some(0), "{}{}", said(&fine), complained(&fine));
    let second = two.replace("Is the edge toothed", "Does it sing");
    let sings = keep(&second, &[]);
    assert_eq!(sings.status.code(), Some(2), "{}", said(&sings));
    let why = complained(&sings);
    assert!(why.contains("“Does it sing?” cannot be kept"), "{why}");
    // What the remedy says is done: a line in a links file.
    fs::write(desk.join("links.txt"), "question 2: edge = toothed\n").expect("written");
    let linked = keep(&second, &["--links", "links.txt"]);
    assert_eq!(linked.status.code(), Some(0), "{}{}", said(&linked), complained(&linked));
    assert!(said(&linked).contains("Is the edge toothed?"), "{}", said(&linked));
    let alone = keep(&two.replace("No -> 2", "No -> ?"), &[]);
    assert_eq!(alone.status.code(), Some(2), "{}", said(&alone));
    assert!(complained(&alone).contains("No answer leads to question 2"));
}

/// Four kinds of which nothing may be asked: their key has no questions.
#[test]
fn a_key_without_questions_is_checked() {
    let desk = desk("no_questions");
    let alike = "kind,edge\nhazel,toothed\nlime,toothed\n";
    fs::write(desk.join("finds.csv"), alike).expect("written");
    let check = |text: &str| spinney(&desk, &["check", "finds.csv", "--key", "-"], text);
    let right = check("{\"couplets\": []}");
    assert_eq!(right.status.code(), Some(0), "{}{}", said(&right), complained(&right));
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    let wrong = check("{\"couplets\": []}");
    assert_eq!(wrong.status.code(), Some(1), "{}{}", said(&wrong), complained(&wrong));
    assert!(said(&wrong).contains("The key has no questions"), "{}", said(&wrong));
    let ours = said(&spinney(&desk, &["key", "-", "--format", "json"], alike));
    fs::write(desk.join("finds.csv"), alike).expect("written");
    let again = check(&ours);
    assert_eq!(again.status.code(), Some(0), "{}{}", said(&again), complained(&again));
}

#[test]
fn kinds_that_are_left_together_are_named_before_anything_good_is_said() {
    let place = desk("left_together");
    let table = "kind,edge\nhazel,toothed\nlime,toothed\nbox,smooth\n";
    fs::write(place.join("finds.csv"), table).expect("a table");
    let left = "These are left together: hazel and lime.";
    let before = |text: &str, praise: &str| {
        let named = text.find(left).unwrap_or_else(|| panic!("nobody is named: {text}"));
        let praised = text.find(praise).unwrap_or_else(|| panic!("no {praise}: {text}"));
        assert!(named < praised, "{text}");
    };
    before(&said(&spinney(&place, &["key", "finds.csv"], "")), "Proved:");
    before(&said(&spinney(&place, &["explain", "finds.csv"], "")), "Proved:");
    let key = "1. Is the edge toothed? Yes -> hazel or lime, No -> box\n";
    let checked = spinney(&place, &["check", "finds.csv", "--key", "-"], key);
    assert!(checked.status.success(), "{}", complained(&checked));
    before(&said(&checked), "this key works");
    let whole = "kind,edge\nhazel,toothed\nbox,smooth\n";
    fs::write(place.join("finds.csv"), whole).expect("a table");
    assert!(!said(&spinney(&place, &["key", "finds.csv"], "")).contains("left together"));
}

#[test]
fn goals_are_wished_by_the_name_that_the_json_has() {
    let desk = desk("goals");
    let json = ["key", "-", "--goals", "words,short", "--format", "json"];
    let output = spinney(&desk, &json, FINDS);
    assert_eq!(output.status.code(), Some(0), "{}", complained(&output));
    assert!(said(&output).contains("\"fewest words\""), "{}", said(&output));
}

#[test]
fn explain_names_what_else_could_be_asked() {
    let desk = desk("explain");
    let output = spinney(&desk, &["explain", "-"], FINDS);
    assert_eq!(output.status.code(), Some(0));
    let text = said(&output);
    assert!(text.contains("costs the same"), "{text}");
    // Whole words, broken to lines that a narrow window shows.
    let widest = text.lines().map(|line| line.chars().count()).max();
    assert!(widest.is_some_and(|widest| widest <= 88), "{text}");
}

/// Hazel and lime have green buds, and toothed edges; the others have neither.
const ALIKE: &str = "kind,edge,lobes,bud
hazel,toothed,unlobed,green
lime,toothed,lobed,green
dogwood,smooth,unlobed,brown
ivy,smooth,lobed,brown
";

#[test]
fn explain_names_a_second_look() {
    let output = spinney(&desk("second_look"), &["explain", "-"], ALIKE);
    let text = said(&output).split_whitespace().collect::<Vec<_>>().join(" ");
    let second = "A second look that separates them in the same way: Is the bud green?";
    assert!(text.contains(second), "{text}");
}

#[test]
fn wrong_use_exits_with_2_and_says_what_is_right() {
    let desk = desk("wrong_use");
    for args in [
        vec!["key"],
        vec!["sing"],
        vec!["key", "not_there.csv"],
        vec!["key", "-", "--gap", "much"],
        vec!["template", "finds.doc"],
    ] {
        let output = spinney(&desk, &args, "");
        assert_eq!(output.status.code(), Some(2), "{args:?}: {}", complained(&output));
        assert!(!complained(&output).trim().is_empty(), "{args:?} says nothing");
    }
}

#[test]
fn a_broken_table_says_where_and_everything_readable_is_read() {
    let desk = desk("broken");
    let table = "kind;edge;lobes\nhazel;toothed;unlobed\nhazel;smooth;lobed\n;;\nlime;=1+1;?\n";
    let output = spinney(&desk, &["table", "-", "--format", "json"], table);
    assert_eq!(output.status.code(), Some(1));
    assert!(said(&output).contains("stdin!A3"), "{}", said(&output));
    let columns = said(&spinney(&desk, &["table", "-"], FINDS));
    assert!(columns.contains("edge: toothed, smooth"), "{columns}");
    assert!(columns.contains("stalk length: measured, 5 to 50 mm"), "{columns}");
    let nothing = spinney(&desk, &["key", "-"], "");
    assert_eq!(nothing.status.code(), Some(1), "{}", said(&nothing));
    assert!(!complained(&nothing).is_empty());
}

#[test]
fn the_scale_card_is_written_on_either_paper_before_there_is_any_table() {
    let desk = desk("scale_card");
    let written = spinney(&desk, &["measure", "--scale-card", "card.pdf"], "");
    assert_eq!(written.status.code(), Some(0), "{}", complained(&written));
    assert!(said(&written).contains("spinney measure photo.jpg"), "{}", said(&written));
    let a4 = fs::read(desk.join("card.pdf")).expect("it is there");
    let letter = ["measure", "--scale-card", "-", "--paper", "letter"];
    let letter = spinney(&desk, &letter, "").stdout;
    assert!(a4.starts_with(b"%PDF-") && letter.starts_with(b"%PDF-") && a4 != letter);
    // It measures nothing: no pictures beside it, and none missing.
    let both = spinney(&desk, &["measure", "scan.png", "--scale-card", "card.pdf"], "");
    assert_eq!(both.status.code(), Some(2), "{}", complained(&both));
    let neither = spinney(&desk, &["measure"], "");
    assert_eq!(neither.status.code(), Some(2), "{}", complained(&neither));
}

#[test]
fn mends_turn_a_leaf_that_was_read_upside_down() {
    let desk = desk("mends");
    let leaf = image::RgbImage::from_fn(120, 160, |x, y| {
        let (across, down) = ((f64::from(x) - 60.0) / 30.0, (f64::from(y) - 80.0) / 60.0);
        image::Rgb(if across.hypot(down) < 1.0 { [60, 100, 50] } else { [250; 3] })
    });
    leaf.save(desk.join("leaf.png")).expect("a picture can be written");
    let told = |mends: &str, format: &str| {
        let run = ["measure", "leaf.png", "--mends", "-", "--format", format];
        let told = spinney(&desk, &run, mends);
        assert_eq!(told.status.code(), Some(0), "{}", complained(&told));
        said(&told)
    };
    let (found, mended) = ("# nothing\n", "Leaf 1 begins at 60 19\n");
    assert!(told(found, "text").contains("which end is the base is a guess"));
    assert!(told(mended, "text").contains("Put right by hand."));
    assert!(told(found, "json").contains("\"mends\": []"));
    assert!(told(mended, "json").contains("\"leaf 1 begins at 60 19\""));
    let lost =
        spinney(&desk, &["measure", "leaf.png", "--mends", "-"], "\nleaf 2 is no leaf\n");
    assert_eq!(lost.status.code(), Some(1));
    let complaint = complained(&lost);
    assert!(
        complaint.contains("line 2, “leaf 2 is no leaf”: There is no leaf 2"),
        "{complaint}"
    );
}

#[test]
fn the_template_is_written_once_and_never_over_work() {
    let desk = desk("template");
    let first = spinney(&desk, &["template", "finds.xlsx"], "");
    assert_eq!(first.status.code(), Some(0), "{}", complained(&first));
    let before = fs::read(desk.join("finds.xlsx")).expect("it is there");
    let second = spinney(&desk, &["template", "finds.xlsx"], "");
    assert_eq!(second.status.code(), Some(1));
    assert!(complained(&second).contains("--force"));
    assert_eq!(fs::read(desk.join("finds.xlsx")).expect("still there"), before);
}

#[test]
fn help_teaches_and_a_pipe_gets_no_colour() {
    let desk = desk("help");
    let help = spinney(&desk, &["check", "--help"], "");
    assert_eq!(help.status.code(), Some(0));
    assert!(said(&help).contains("Is the leaf made of leaflets?"), "{}", said(&help));
    let key = spinney(&desk, &["key", "-"], FINDS);
    assert!(!said(&key).contains('\u{1b}') && !complained(&key).contains('\u{1b}'));
}

/// The eight oaks of an encyclopaedia article on single-access keys, written out from memory:
/// read against a table of its kinds, seven questions, a tree in which every kind comes out.
#[test]
fn the_printed_key_of_eight_oaks_is_checked_as_a_tree() {
    let desk = desk("oaks");
    let key = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios/eight_oaks.txt");
    let kinds = [
        "live oak",
        "dwarf live oak",
        "willow oak",
        "shingle oak",
        "blackjack oak",
        "red oak",
        "white oak",
        "swamp chestnut oak",
    ];
    let table: String = kinds.iter().map(|kind| format!("{kind},?\n")).collect();
    let table = format!("kind,acorn\n{table}");
    let key = key.to_str().expect("a path of ours is text");
    let output = spinney(&desk, &["check", "-", "--key", key, "--format", "json"], &table);
    let text = said(&output);
    assert!(text.contains("\"checked\": 0") && text.contains("\"of\": 7"), "{text}");
    for lost in ["never-comes-out", "number-missing", "unreachable", "loop", "name-unknown"] {
        assert!(!text.contains(&format!("\"{lost}\"")), "{lost}: {text}");
    }
    assert!(text.contains("vague-word"), "{text}");
    assert_eq!(output.status.code(), Some(1), "a bare comparative is to be mended");
}

#[test]
fn a_wish_that_cannot_be_kept_is_named_with_the_kind_in_the_way() {
    let desk = desk("refused");
    let finds = "kind,edge,lobes\nhazel,toothed,unlobed\nivy,smooth,lobed\nrose,toothed,n/a\n";
    let output = spinney(&desk, &["key", "-", "--first", "Is it lobed?"], finds);
    let text = said(&output);
    assert!(text.contains("One of your questions could not be kept"), "{text}");
    assert!(text.contains("kept-refused") && text.contains("rose is still there"), "{text}");
    assert!(!text.contains("costs nothing"), "{text}");
}

/// What the help promises of exit codes: 1 only for what failed, or what says *mend this*.
#[test]
fn only_what_is_to_be_mended_makes_a_check_fail() {
    let desk = desk("exit_codes");
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    let check = |key: &str| {
        let output = spinney(&desk, &["check", "finds.csv", "--key", "-"], key);
        (output.status.code(), said(&output))
    };
    let key = said(&spinney(&desk, &["key", "finds.csv"], ""));
    let (code, text) = check(&key);
    assert!(code == Some(0) && text.contains("This key works"), "{code:?} {text}");
    // Nothing to mend, though not all of it could be checked.
    let two = "kind,edge\nhazel,toothed\nlime,smooth\n";
    fs::write(desk.join("two.csv"), two).expect("written");
    let unsure = "1. Does it make you think of a saw?  Yes -> hazel, No -> lime\n";
    let output = spinney(&desk, &["check", "two.csv", "--key", "-"], unsure);
    let (code, text) = (output.status.code(), said(&output));
    assert!(code == Some(0) && text.contains("worth a look"), "{code:?} {text}");
    assert!(text.contains("not all of it could be") && !text.contains("key works"), "{text}");
    let whole = "1. Is the edge toothed?  Yes -> 2, No -> 3\n2. Is it lobed?  Yes -> hazel, No -> lime\n";
    let (code, text) = check(whole);
    assert!(code == Some(1) && text.contains("mend this"), "{code:?} {text}");
}

/// Invented: told apart only by what nobody should touch, and nobody kept anything.
#[test]
fn where_only_touch_separates_that_is_said_and_nothing_else() {
    let desk = desk("only_touch");
    let finds = "kind,edge,feel\nnettle,toothed,furry\ngiant hogweed,toothed,bristly\n\
                 hazel,smooth,furry\n";
    fs::write(desk.join("finds.csv"), finds).expect("written");
    let kinds = "kind,caution\nnettle,It stings.\ngiant hogweed,Its sap burns the skin.\n";
    fs::write(desk.join("kinds.csv"), kinds).expect("written");
    let output = spinney(&desk, &["key", "finds.csv", "--kinds", "kinds.csv"], "");
    let text = said(&output).split_whitespace().collect::<Vec<_>>().join(" ");
    let says = "Question 2 is answered by touch while a kind with a caution may be in the hand. \
                Nothing else separates there.";
    assert!(text.contains(says), "{text}");
    assert!(!text.contains("kept it") && !text.contains("costs nothing"), "{text}");
}

#[test]
fn stdin_can_be_only_one_of_the_files() {
    let desk = desk("stdin_twice");
    for args in [["check", "-", "--key", "-"], ["key", "-", "--kinds", "-"]] {
        let output = spinney(&desk, &args, FINDS);
        assert_eq!(output.status.code(), Some(2), "{args:?}");
        assert!(complained(&output).contains("Only one of the files"), "{args:?}");
    }
}

#[test]
fn a_text_without_a_question_is_no_key() {
    let desk = desk("no_question");
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    for text in ["", "hello world\n", "{\"a\": 1}"] {
        let output = spinney(&desk, &["check", "finds.csv", "--key", "-"], text);
        assert_eq!(output.status.code(), Some(1), "{text}");
        assert!(output.stdout.is_empty() && !complained(&output).is_empty(), "{text}");
    }
}

/// A cost that was changed by hand is found out, with and without our exact fields.
#[test]
fn a_false_cost_does_not_pass() {
    let desk = desk("false_cost");
    fs::write(desk.join("finds.csv"), FINDS).expect("written");
    let json = said(&spinney(&desk, &["key", "finds.csv", "--format", "json"], ""));
    let exact_out: String = json
        .lines()
        .filter(|line| !line.contains("_exact"))
        .map(|l| format!("{l}\n"))
        .collect();
    let plain = exact_out.replace(",\n  }", "\n  }");
    let check = |text: &str| spinney(&desk, &["check", "finds.csv", "--key", "-"], text);
    assert_eq!(check(&json).status.code(), Some(0), "{}", said(&check(&json)));
    let told = check(&plain);
    assert_eq!(told.status.code(), Some(0), "{}{}", said(&told), complained(&told));
    for text in [&json, &plain] {
        let false_cost = check(&text.replace("\"effort_total\": 11", "\"effort_total\": 10"));
        assert_eq!(false_cost.status.code(), Some(1), "{}", said(&false_cost));
    }
}

#[test]
fn the_help_teaches_and_says_who_decides() {
    let output = spinney(&desk("help"), &["--help"], "");
    assert_eq!(output.status.code(), Some(0));
    let text = said(&output).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains(&Tongue::of_terminal().say("foot-rules")), "{text}");
    assert!(text.contains("spinney key finds.xlsx --out visit"), "{text}");
}

#[test]
fn a_text_that_is_no_table_says_so_and_exits_with_1() {
    let desk = desk("no_table");
    let letter = "Dear class,\ntoday we go out and look for leaves, twigs and shells.\n\
                  Bring boots, a coat and a bag.\n";
    for (name, text) in [("letter.txt", letter), ("a.html", "<!DOCTYPE html>\n<html></html>\n")]
    {
        fs::write(desk.join(name), text).expect("written");
        let output = spinney(&desk, &["key", name], "");
        assert_eq!(output.status.code(), Some(1), "{name}");
        let told = complained(&output);
        assert!(told.contains("does not look like a table"), "{told}");
        assert!(told.replace("\n", " ").contains("one kind a"), "{told}");
    }
}
