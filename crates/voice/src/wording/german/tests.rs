//! A character and what is asked of it, and the German sentence that comes of it.

use spinney_model::{CharacterIx, Unit};

use super::super::tests::{
    at_least, below, measure, states, table, two_lengths, worded, words,
};
use super::super::{leads, phrase, question, second_look};
use super::*;
use crate::Tongue;

fn german() -> Tongue {
    Tongue::for_person(&["de".to_owned()])
}

fn asked(character: Character, yes: Asked) -> String {
    question(german(), &table(character, None), &Ask { character: CharacterIx(0), yes })
}

#[test]
fn states_become_sentences_where_the_article_is_known() {
    for (name, of, yes, sentence) in [
        ("Blattrand", &["gezähnt", "glatt"][..], &[0][..], "Ist der Blattrand gezähnt?"),
        ("rand", &["gezähnt", "gesägt", "glatt"], &[0, 1], "Ist der Rand gezähnt oder gesägt?"),
        ("BLATTSPITZE", &["spitz", "rund"], &[1], "Ist die Blattspitze rund?"),
        ("Blatt", &["gefiedert", "ungelappt"], &[1], "Ist das Blatt ungelappt?"),
        (
            "Blätter",
            &["gegenständig", "wechselständig"],
            &[0],
            "Sind die Blätter gegenständig?",
        ),
        ("Blattstellung", &["Gegenständig", "b"], &[0], "Ist die Blattstellung gegenständig?"),
        ("Blattrand", &["doppelt gesägt", "b"], &[0], "Ist der Blattrand doppelt gesägt?"),
        (
            "Unterseite der Blätter",
            &["kahl", "b"],
            &[0],
            "Ist die Unterseite der Blätter kahl?",
        ),
        (
            "Haare am Stiel",
            &["lang und weich", "b"],
            &[0],
            "Sind die Haare am Stiel lang und weich?",
        ),
        ("Rand (genau hinsehen)", &["glatt", "b"], &[0], "Ist der Rand glatt?"),
        (
            "Frucht",
            &["Nuss", "Zapfen", "Beere"],
            &[0, 2],
            "Ist die Frucht eine Nuss oder eine Beere?",
        ),
        // Nothing has to agree where nobody is sure.
        ("Frucht", &["Nuss", "Zapfen"], &[1], "Frucht: Zapfen?"),
        ("Flügel", &["durchsichtig", "b"], &[0], "Flügel: durchsichtig?"),
        ("Fundort", &["trocken", "b"], &[0], "Fundort: trocken?"),
        ("Blattrand", &["glatter Rand", "b"], &[0], "Blattrand: glatter Rand?"),
        ("Blattrand", &["nicht gezähnt", "b"], &[0], "Blattrand: nicht gezähnt?"),
        ("Haare auf Unterseite", &["dicht", "b"], &[0], "Haare auf Unterseite: dicht?"),
        (
            "Farbe",
            &["rot", "grün", "blau", "weiß", "x"],
            &[0, 1, 2, 3],
            "Farbe: rot, grün, blau oder weiß?",
        ),
        ("Moos", &["weich", "b"], &[0], "Moos: weich?"),
        // A table in English, read by somebody who reads German: its own words, German between.
        ("leaf edge", &["toothed", "spiny", "b"], &[0, 1], "Leaf edge: toothed oder spiny?"),
        ("twig", &["hairy", "b"], &[0], "Twig: hairy?"),
    ] {
        assert_eq!(asked(words(name, of), states(yes)), sentence);
    }
}

#[test]
fn yes_and_no_become_sentences() {
    for (name, sentence) in [
        ("behaart", "Ist es behaart?"),
        ("Immergrün", "Ist es immergrün?"),
        ("Dornen", "Hat es Dornen?"),
        ("Stiel", "Hat es einen Stiel?"),
        ("Nebenblatt", "Hat es ein Nebenblatt?"),
        ("Schale", "Hat es eine Schale?"),
        ("Milchsaft", "Hat es Milchsaft?"),
        ("Flügel", "Hat es Flügel?"),
        ("Dornen am Zweig", "Hat es Dornen am Zweig?"),
        ("hat einen Stiel", "Hat es einen Stiel?"),
        ("ist behaart", "Ist es behaart?"),
        ("kann fliegen", "Kann es fliegen?"),
        ("Unterseite behaart", "Ist die Unterseite behaart?"),
        ("Blätter gegenständig", "Sind die Blätter gegenständig?"),
        ("lebt im Wasser", "Lebt es im Wasser?"),
        ("fliegt", "Fliegt es?"),
        ("Ist es klebrig?", "Ist es klebrig?"),
        ("Pelz", "Pelz: ja?"),
        ("ohne Stiel", "Ohne Stiel: ja?"),
        ("sticht oder beißt", "Sticht es oder beißt?"),
        ("hairs", "Hairs: ja?"),
        ("big", "Big: ja?"),
    ] {
        assert_eq!(asked(words(name, &["yes", "no"]), states(&[0])), sentence, "{name}");
    }
    assert_eq!(asked(words("Dornen", &["yes", "no"]), states(&[1])), "Dornen: nein?");
}

#[test]
fn numbers_become_sentences() {
    let mm = Unit::Millimetres;
    let counts = |name: &str| Character::named(name, Scale::Counts);
    for (character, yes, sentence) in [
        (measure("Stiellänge", mm), at_least(40_000), "Ist der Stiel 4 cm lang oder länger?"),
        (
            measure("Blattstiel Länge (mm)", mm),
            at_least(22_500),
            "Ist der Blattstiel 22,5 mm lang oder länger?",
        ),
        (
            measure("Länge des Blattstiels", mm),
            below(40_000),
            "Ist der Blattstiel kürzer als 4 cm?",
        ),
        (
            measure("Breite der Spreite in cm", mm),
            at_least(35_000),
            "Ist die Spreite 3,5 cm breit oder breiter?",
        ),
        (
            measure("Wie lang ist das Blatt?", mm),
            at_least(40_000),
            "Ist das Blatt 4 cm lang oder länger?",
        ),
        (measure("Länge", mm), at_least(9_000), "Ist es 9 mm lang oder länger?"),
        (measure("Höhe", mm), below(9_000), "Ist es niedriger als 9 mm?"),
        (measure("Spreitenlänge", mm), at_least(40_000), "Spreitenlänge: 4 cm oder mehr?"),
        (
            measure("Winkel am Grund", Unit::Degrees),
            at_least(90_000),
            "Winkel am Grund: 90° oder mehr?",
        ),
        (measure("stalk length", mm), below(40_000), "Stalk length: weniger als 4 cm?"),
        (counts("Anzahl der Beine"), at_least(6_000), "Hat es 6 oder mehr Beine?"),
        (
            counts("Anzahl Fiederblättchen"),
            below(5_000),
            "Hat es weniger als 5 Fiederblättchen?",
        ),
        (counts("Beine"), at_least(6_000), "Hat es 6 oder mehr Beine?"),
        (counts("Wie viele Beine?"), at_least(6_000), "Hat es 6 oder mehr Beine?"),
        (counts("Anzahl von Beinen"), at_least(6_000), "Anzahl von Beinen: 6 oder mehr?"),
        (counts("legs"), at_least(6_000), "Legs: 6 oder mehr?"),
    ] {
        assert_eq!(asked(character, yes), sentence);
    }
    let mut inches = measure("Stiellänge", mm);
    inches.written_in = Some(spinney_model::WrittenIn::Inches);
    assert_eq!(asked(inches, at_least(63_500)), "Ist der Stiel 2,5 Zoll lang oder länger?");
}

#[test]
fn lengths_are_compared() {
    let ratio = |one: &str, other: &str, at: i64, yes| {
        let ranges = [(at - 150, at - 1), (at + 1, at + 90)];
        let matrix = two_lengths(one, other, &ranges, 0);
        question(german(), &matrix, &Ask { character: CharacterIx(2), yes })
    };
    for (at, sentence) in [
        (500, "Ist der Stiel mehr als halb so lang wie die Spreite?"),
        (1_000, "Ist der Stiel länger als die Spreite?"),
        (2_000, "Ist der Stiel mehr als doppelt so lang wie die Spreite?"),
        (333, "Ist der Stiel mehr als ein Drittel so lang wie die Spreite?"),
        (1_500, "Ist der Stiel mehr als anderthalbmal so lang wie die Spreite?"),
        (3_000, "Ist der Stiel mehr als dreimal so lang wie die Spreite?"),
        (400, "Ist der Stiel mehr als 0,4-mal so lang wie die Spreite?"),
    ] {
        let found = ratio("Stiellänge", "Länge der Spreite", at, at_least(at));
        assert_eq!(found, sentence);
    }
    for (one, other, at, sentence) in [
        ("Blattbreite", "Blattlänge", 1_000, "Ist das Blatt breiter als lang?"),
        ("Blattbreite", "Blattlänge", 500, "Ist das Blatt mehr als halb so breit wie lang?"),
        ("Breite", "Länge", 2_000, "Ist es mehr als doppelt so breit wie lang?"),
        ("Stiellänge", "Blattbreite", 1_000, "Ist der Stiel länger, als das Blatt breit ist?"),
        (
            "Stiellänge",
            "Blattbreite",
            500,
            "Ist der Stiel mehr als halb so lang, wie das Blatt breit ist?",
        ),
        (
            "Spreitenlänge",
            "Stiellänge",
            2_000,
            "Spreitenlänge: mehr als doppelt so groß wie Stiellänge?",
        ),
        ("stalk length", "blade length", 1_000, "Stalk length: größer als blade length?"),
    ] {
        assert_eq!(ratio(one, other, at, at_least(at)), sentence);
    }
    let shorter = ratio("Stiellänge", "Blattlänge", 500, below(500));
    assert_eq!(shorter, "Ist der Stiel weniger als halb so lang wie das Blatt?");
    // A kind has exactly as much.
    let touched = two_lengths("Stiellänge", "Blattlänge", &[(400, 499), (500, 600)], 0);
    let ask = Ask { character: CharacterIx(2), yes: at_least(500) };
    let found = question(german(), &touched, &ask);
    assert_eq!(found, "Ist der Stiel halb so lang wie das Blatt oder länger?");
    assert_eq!(
        phrase(german(), &touched, &ask),
        "slimness: halb so lang wie das Blatt oder länger"
    );
}

#[test]
fn a_persons_own_wording_stays_in_its_own_language() {
    let edge = words("edge", &["toothed", "spiny", "smooth"]);
    let own = asked(worded("Is the leaf edge {}?", edge), states(&[0, 1]));
    assert_eq!(own, "Is the leaf edge toothed or spiny?");
    let edge = words("Blattrand", &["gezähnt", "gesägt", "glatt"]);
    let own = asked(worded("Wie ist der Rand: {}?", edge), states(&[0, 1]));
    assert_eq!(own, "Wie ist der Rand: gezähnt oder gesägt?");
}

#[test]
fn a_question_is_turned_into_what_should_be_so() {
    for (character, yes, so, not) in [
        (
            words("Blattrand", &["gezähnt", "glatt"]),
            states(&[0]),
            "der Blattrand müsste gezähnt sein.",
            "der Blattrand dürfte nicht gezähnt sein.",
        ),
        (
            words("Blätter", &["gegenständig", "b"]),
            states(&[0]),
            "die Blätter müssten gegenständig sein.",
            "die Blätter dürften nicht gegenständig sein.",
        ),
        (
            words("Stiel", &["yes", "no"]),
            states(&[0]),
            "es müsste einen Stiel haben.",
            "es dürfte keinen Stiel haben.",
        ),
        (
            words("hat eine Schale", &["yes", "no"]),
            states(&[0]),
            "es müsste eine Schale haben.",
            "es dürfte keine Schale haben.",
        ),
        (
            words("lebt im Wasser", &["yes", "no"]),
            states(&[0]),
            "es müsste im Wasser leben.",
            "es dürfte nicht im Wasser leben.",
        ),
        (
            measure("Stiellänge", Unit::Millimetres),
            below(40_000),
            "der Stiel müsste kürzer als 4 cm sein.",
            "der Stiel dürfte nicht kürzer als 4 cm sein.",
        ),
        (
            words("Pelz", &["yes", "no"]),
            states(&[0]),
            "Pelz: ja? Das müsste ja sein.",
            "Pelz: ja? Das müsste nein sein.",
        ),
        (
            worded("Does it prick?", words("Dornen", &["yes", "no"])),
            states(&[0]),
            "Does it prick? Das müsste ja sein.",
            "Does it prick? Das müsste nein sein.",
        ),
    ] {
        let matrix = table(character, None);
        let ask = Ask { character: CharacterIx(0), yes };
        assert_eq!(second_look(german(), &matrix, &ask, false), so);
        assert_eq!(second_look(german(), &matrix, &ask, true), not);
    }
}

#[test]
fn leads_and_lists_are_german_between_the_tables_words() {
    let thorns = table(words("Dornen", &["yes", "no"]), None);
    let ask = Ask { character: CharacterIx(0), yes: states(&[0]) };
    assert_eq!(phrase(german(), &thorns, &ask), "Dornen: ja");
    let edge = table(words("edge", &["toothed", "smooth", "wavy"]), None);
    let (yes, no) = leads(german(), &edge, &ask);
    assert_eq!((yes.as_str(), no.as_str()), ("Edge: toothed", "Edge: smooth oder wavy"));
}
