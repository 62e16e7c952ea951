//! The words that a text uses, and no other, in the language of the reader.

use std::collections::BTreeSet;

use super::*;

const ENGLISH: Tongue = Tongue::of_terminal();

fn german() -> Tongue {
    Tongue::for_person(&["de".to_owned()])
}

fn heads(t: Tongue, leaves: bool, text: &str) -> Vec<String> {
    words_in(t, leaves, [text]).into_iter().map(|entry| entry.word).collect()
}

#[test]
fn only_whole_words_of_the_text_are_explained() {
    for (text, words) in [
        ("Is the leaf edge toothed?", &["edge", "toothed"][..]),
        ("Is the leaf stalk 22.5 mm or longer?", &["leaf stalk"]),
        ("Is it longer than a hand? Is it like a hand?", &["hand-shaped"]),
        ("Petioles?", &["leaf stalk"]),
        ("Are the LEAVES opposite?", &["leaf", "opposite"]),
        ("Two teeth, one lobe.", &["lobe", "tooth"]),
        ("Does it have 5 or more pairs of veins?", &["vein pair"]),
        ("Is the edge double-toothed?", &["double-toothed", "edge"]),
        ("Is it buddy, tipped or stalking?", &[]),
        ("Blattrand: gezähnt?", &[]),
        ("", &[]),
    ] {
        assert_eq!(heads(ENGLISH, true, text), words, "{text}");
    }
}

#[test]
fn german_words_are_found_with_their_endings_and_explained_in_german() {
    for (text, words) in [
        ("Blattrand: gezähnt?", &["Blattrand", "gezähnt"][..]),
        ("Hat es einen doppelt gesägten Rand?", &["Blattrand", "doppelt gezähnt"]),
        ("Ist der Blattstiel 4 cm lang oder länger?", &["Blattstiel"]),
        ("Hat es einen glatten Rand? Glänzende Blätter?", &["Blatt", "ganzrandig", "glänzend"]),
        ("Hat es ein paar Haare?", &["Haar"]),
        ("Läuft die Spitze spitz zu?", &["Blattspitze", "spitz"]),
        // A table in English, read by somebody who reads German.
        ("Leaf edge: toothed?", &["edge (Blattrand)", "toothed (gezähnt)"]),
        ("Edge: gezähnt oder toothed?", &["edge (Blattrand)", "gezähnt"]),
        ("Form: oval?", &["oval"]),
        ("Blattlaus? Randnotiz?", &[]),
    ] {
        assert_eq!(heads(german(), true, text), words, "{text}");
    }
    let entry = &words_in(german(), true, ["gezähnt"])[0];
    assert_eq!(entry.plain, "Mit kleinen Spitzen am Rand, wie eine Säge.");
    assert_eq!(entry.id, "toothed");
}

#[test]
fn a_state_is_a_word_of_the_list_only_as_a_whole() {
    for (t, text, word) in [
        (ENGLISH, "toothed", Some("toothed")),
        (ENGLISH, "a pod", Some("pod")),
        (ENGLISH, "Double-toothed", Some("double-toothed")),
        (ENGLISH, "Does it have a shell?", Some("shell")),
        (ENGLISH, "Are there gills?", Some("gill")),
        (ENGLISH, "toothed or lobed", None),
        (ENGLISH, "Is the tail longer than the body?", None),
        (ENGLISH, "Does it have a long tail?", None),
        (ENGLISH, "", None),
        (german(), "einer Hülse", Some("pod")),
        (german(), "Hat es eine Schale?", Some("shell")),
        (german(), "gezähnt", Some("toothed")),
        (german(), "toothed", Some("toothed")),
    ] {
        assert_eq!(whole(t, text), word, "{text}");
    }
}

#[test]
fn words_of_leaves_are_not_said_of_other_things() {
    for (text, of_leaves, of_others) in [
        ("Are its gills like a feather?", &["feather", "gill"][..], &["gill"][..]),
        ("Does it look like a leaf?", &["leaf"], &[]),
        ("Are the buds opposite?", &["bud", "opposite"], &["bud"]),
        ("Is the tip of the tail spiny?", &["spine", "tail", "tip"], &["tail"]),
        ("Is the shell smooth?", &["shell", "smooth"], &["shell", "smooth"]),
    ] {
        assert_eq!(heads(ENGLISH, true, text), of_leaves, "{text}");
        assert_eq!(heads(ENGLISH, false, text), of_others, "{text}");
    }
    let of_blades = |t: Tongue| match t.tag() {
        "de" => ["Spreite", "Blättchen", "Sucht die Knospe", "Zwei Blätter auf gleicher Höhe"],
        _ => ["blade", "leaflet", "Look for the bud", "leaves at the same height"],
    };
    for t in [ENGLISH, german()] {
        let leaves = WORDS.iter().filter(|word| word.leaves).map(|word| word.id);
        let leaves: BTreeSet<&str> = leaves.collect();
        for Entry { id, plain, .. } in all(t).iter().filter(|word| !leaves.contains(word.id)) {
            let said = of_blades(t).iter().any(|words| plain.contains(words));
            assert!(!said || *id == "gland", "{id}: {plain}");
        }
    }
}

#[test]
fn the_list_is_in_order_and_every_spelling_belongs_to_one_word() {
    assert!(WORDS.windows(2).all(|pair| pair[0].id < pair[1].id));
    for t in [ENGLISH, german()] {
        let words = all(t);
        assert!(words.windows(2).all(|pair| in_order(&pair[0].word) < in_order(&pair[1].word)));
        let forms: Vec<_> = list(t).forms.values().flatten().map(|(form, _)| form).collect();
        let once: BTreeSet<_> = forms.iter().collect();
        assert_eq!(once.len(), forms.len(), "{}", t.tag());
        for (at, entry) in list(t).entries.iter().enumerate() {
            let head = entry.word.to_lowercase().replace('-', " ");
            let words: Vec<String> = head.split(' ').map(str::to_owned).collect();
            assert_eq!(list(t).longest_at(&words), Some((at, words.len())), "{head}");
            assert!(entry.plain.ends_with('.'), "{head}");
        }
    }
}

#[test]
fn plain_words_are_short() {
    for entry in [ENGLISH, german()].into_iter().flat_map(all) {
        for sentence in entry.plain.split_inclusive('.') {
            assert!(sentence.split_whitespace().count() <= 20, "{sentence}");
        }
    }
}
