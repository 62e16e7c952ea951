//! What Spinney asks in German it also understands: worded by one room, read back by another, and
//! answered alike by every kind; and a German key that was printed is linked whole.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use spinney_exchange::link;
use spinney_exchange::table::{self, Source, Sources};
use spinney_model::{Ask, Asked, CharacterIx, Matrix, Quantity, Scale, StateIx};
use spinney_voice::{Tongue, wording};

#[path = "program/run.rs"]
mod run;

use run::spinney;

/// A hedge in German: known nouns, and such as no list has.
const HEDGE: &str = "\
kind,Blattrand,Blattform,Blätter,Stiellänge (mm),Breite der Spreite (cm),Nebenblatt,behaart,Anzahl Blättchen,Frucht,Fundort,Spreitenlänge (mm),Dornen am Zweig
Hasel,doppelt gesägt,rund,wechselständig,8-15,6-9,ja,ja,1,Nuss,Hecke,60-90,nein
Rotbuche,gewellt,oval,wechselständig,5-10,4-6,nein,nein,1,Nuss,Wald,50-80,nein
Esche,gesägt,oval,gegenständig,40-70,3-4,nein,nein,9-13,Flügelnuss,am Bach,70-100,nein
Weißdorn,gelappt,rautenförmig,wechselständig,12-20,2-3,ja,nein,1,Beere,Hecke,20-40,ja
Holunder,gesägt,oval,gegenständig,30-45,3-5,nein,nein,5-7,Beere,Hecke,60-100,nein
Hartriegel,ganzrandig,eiförmig,gegenständig,8-12,4-6,nein,ja,1,Beere,Wald,50-80,nein
";

/// The same sort of table in English, read by somebody who reads German.
const ENGLISH: &str = "\
kind,leaf edge,place on the twig,stalk length (mm),number of leaflets,thorns
hazel,toothed,alternate,8-15,1,no
ash,toothed,opposite,40-70,9-13,no
hawthorn,lobed,alternate,12-20,1,yes
dogwood,wavy,opposite,8-12,1,no
";

fn german() -> Tongue {
    Tongue::for_person(&["de".to_owned()])
}

fn read(text: &str) -> Matrix {
    let sources = Sources {
        table: Source { name: "table.csv".to_owned(), bytes: text.as_bytes().to_vec() },
        ..Sources::default()
    };
    table::read(&sources, &table::Settings::default()).expect("the table can be read").matrix
}

/// Questions of each column: every state, every two, and some thresholds.
fn questions(matrix: &Matrix) -> Vec<Ask> {
    let mut asks = Vec::new();
    for character in matrix.character_indices() {
        let mut ask = |yes| asks.push(Ask { character, yes });
        match &matrix.character(character).scale {
            Scale::Words { states } => {
                let states: Vec<StateIx> = (0..states.len()).map(StateIx).collect();
                let two = states.len() > 2;
                for (at, one) in states.iter().enumerate() {
                    ask(Asked::States([*one].into()));
                    for other in states[at + 1..].iter().filter(|_| two) {
                        ask(Asked::States([*one, *other].into()));
                    }
                }
            }
            Scale::Counts => {
                for count in [2, 5, 8] {
                    ask(Asked::AtLeast(Quantity::from_whole(count)));
                    ask(Asked::Below(Quantity::from_whole(count)));
                }
            }
            Scale::Measure { .. } => {
                for thousandths in [10_000, 22_500, 35_000, 47_000] {
                    ask(Asked::AtLeast(Quantity::from_thousandths(thousandths)));
                    ask(Asked::Below(Quantity::from_thousandths(thousandths)));
                }
            }
        }
    }
    asks
}

/// Of a yes/no column only "yes" is asked by a key; "Dornen: nein?" is asked back.
fn is_no(matrix: &Matrix, ask: &Ask) -> bool {
    let Scale::Words { states } = &matrix.character(ask.character).scale else { return false };
    let no = |state: &StateIx| states[state.0] == "no";
    matches!(&ask.yes, Asked::States(asked) if asked.iter().all(no))
}

#[test]
fn a_german_question_is_read_back_as_the_same_question() {
    let mut sentences = BTreeSet::new();
    for text in [HEDGE, ENGLISH] {
        let matrix = read(text);
        for ask in questions(&matrix) {
            let words = wording::question(german(), &matrix, &ask);
            let read = link::proposals(&words, &matrix);
            let sure = read.iter().find(|proposal| proposal.sure);
            if is_no(&matrix, &ask) {
                assert!(sure.is_none(), "{words}: {read:?}");
                continue;
            }
            let sure = sure.unwrap_or_else(|| panic!("{words}: {read:?}"));
            assert_eq!(sure.ask, ask, "{words}");
            sentences.insert(words);
        }
    }
    for said in [
        "Ist der Blattrand doppelt gesägt oder gewellt?",
        "Sind die Blätter gegenständig?",
        "Ist der Stiel 22,5 mm lang oder länger?",
        "Ist die Spreite schmaler als 3,5 cm?",
        "Hat es ein Nebenblatt?",
        "Ist es behaart?",
        "Hat es weniger als 5 Blättchen?",
        "Ist die Frucht eine Nuss oder eine Beere?",
        "Fundort: Hecke oder am Bach?",
        "Spreitenlänge: 47 mm oder mehr?",
        "Hat es Dornen am Zweig?",
        "Leaf edge: toothed oder lobed?",
        "Thorns: ja?",
    ] {
        assert!(sentences.contains(said), "{said}: {sentences:#?}");
    }
}

#[test]
fn a_german_key_that_was_printed_is_linked_whole() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("german_questions");
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for a test");
    for (name, text) in [("hecke.csv", HEDGE), ("hedge.csv", ENGLISH)] {
        fs::write(folder.join(name), text).expect("written");
        let key = spinney(&folder, &["key", name, "--language", "de"], "");
        let words = String::from_utf8(key.stdout).expect("text");
        let asked = |line: &&str| line.starts_with(|c: char| c.is_ascii_digit());
        let questions = words.lines().filter(asked).count();
        assert!(questions > 2 && !words.contains("Is the "), "{words}");
        assert!(words.contains("Ja → ") && !words.contains("Yes → "), "{words}");
        fs::write(folder.join("key.txt"), &words).expect("written");
        let check =
            spinney(&folder, &["check", name, "--key", "key.txt", "--format", "json"], "");
        let opinion = String::from_utf8(check.stdout).expect("text");
        let number = |name: &str| {
            let (_, rest) = opinion.split_once(&format!("\"{name}\":")).expect("it is said");
            let digits = rest.trim_start().chars().take_while(char::is_ascii_digit);
            digits.collect::<String>().parse::<usize>().expect("a number")
        };
        assert_eq!((number("checked"), number("of")), (questions, questions), "{opinion}");
    }
}

#[test]
fn german_lengths_over_each_other_are_read_back() {
    let table = |one: &str, other: &str, at: i64, touched: bool| {
        let measure = |name: &str, unit| {
            let gap = Quantity::ZERO;
            spinney_model::Character::named(name, Scale::Measure { unit, gap })
        };
        let mut ratio = measure("Schlankheit", spinney_model::Unit::Ratio);
        ratio.ratio_of = Some((CharacterIx(0), CharacterIx(1)));
        let mm = spinney_model::Unit::Millimetres;
        let characters = vec![measure(one, mm), measure(other, mm), ratio];
        let from = if touched { at } else { at + 1 };
        let rows = [(at - 90, at - 1), (from, at + 90)].map(|(low, high)| {
            let [low, high] = [low, high].map(Quantity::from_thousandths);
            let cell = |value| spinney_model::Cell::from(value);
            let unknown = || cell(spinney_model::Value::Unknown);
            vec![unknown(), unknown(), cell(spinney_model::Value::Range { low, high })]
        });
        let taxa = ["Ulme", "Linde"].map(spinney_model::Taxon::named).to_vec();
        let scene = spinney_model::Scene::default();
        Matrix::new(scene, taxa, characters, rows.to_vec()).expect("a small table")
    };
    for (one, other) in [
        ("Stiellänge", "Länge der Spreite"),
        ("Blattbreite", "Blattlänge"),
        ("Stiellänge", "Blattbreite"),
        ("Spreitenlänge", "Stiellänge"),
        ("Spreitenlänge", "Nervenbreite"),
    ] {
        for at in [250, 333, 400, 500, 667, 750, 1_000, 1_500, 2_000, 2_345, 3_000] {
            for (touched, below) in [(false, false), (true, false), (false, true)] {
                let matrix = table(one, other, at, touched);
                let threshold = Quantity::from_thousandths(at);
                let yes = match below {
                    true => Asked::Below(threshold),
                    false => Asked::AtLeast(threshold),
                };
                let ask = Ask { character: CharacterIx(2), yes };
                let words = wording::question(german(), &matrix, &ask);
                let read = link::proposals(&words, &matrix);
                let sure = read.iter().find(|proposal| proposal.sure);
                let sure = sure.unwrap_or_else(|| panic!("{words}: {read:?}"));
                assert_eq!(sure.ask.character, ask.character, "{words}");
                let says = |ask: &Ask| spinney_check::says(&matrix, ask);
                assert_eq!(says(&sure.ask), says(&ask), "{words}: {:?}", sure.ask);
            }
        }
    }
}
