//! The words that a text uses, and no other.

use std::collections::BTreeSet;

use super::*;

fn heads(text: &str) -> Vec<&'static str> {
    words_in(true, [text]).into_iter().map(|entry| entry.word).collect()
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
        ("", &[]),
    ] {
        assert_eq!(heads(text), words, "{text}");
    }
}

#[test]
fn words_of_leaves_are_not_said_of_other_things() {
    let heads = |leaves, text| -> Vec<&str> {
        words_in(leaves, [text]).into_iter().map(|entry| entry.word).collect()
    };
    for (text, of_leaves, of_others) in [
        ("Are its gills like a feather?", &["feather", "gill"][..], &["gill"][..]),
        ("Does it look like a leaf?", &["leaf"], &[]),
        ("Are the buds opposite?", &["bud", "opposite"], &["bud"]),
        ("Is the tip of the tail spiny?", &["spine", "tail", "tip"], &["tail"]),
        ("Is the shell smooth?", &["shell", "smooth"], &["shell", "smooth"]),
    ] {
        assert_eq!(heads(true, text), of_leaves, "{text}");
        assert_eq!(heads(false, text), of_others, "{text}");
    }
    for listed in WORDS.iter().filter(|listed| !listed.leaves) {
        let of_blades = ["blade", "leaflet", "Look for the bud", "leaves at the same height"];
        let plain = listed.entry.plain;
        let said = of_blades.iter().any(|words| plain.contains(words));
        assert!(!said || listed.entry.word == "gland", "{}: {plain}", listed.entry.word);
    }
}

#[test]
fn the_list_is_in_order_and_every_spelling_belongs_to_one_word() {
    assert!(WORDS.windows(2).all(|pair| pair[0].entry.word < pair[1].entry.word));
    let forms: Vec<_> = WORDS.iter().flat_map(|listed| listed.forms).collect();
    assert_eq!(forms.iter().collect::<BTreeSet<_>>().len(), forms.len());
    for listed in WORDS {
        let head = listed.entry.word.replace('-', " ");
        assert!(listed.forms.contains(&head.as_str()), "{head} does not match itself");
        assert!(listed.entry.plain.ends_with('.'), "{head}");
    }
}

#[test]
fn plain_words_are_short() {
    for listed in WORDS {
        for sentence in listed.entry.plain.split_inclusive('.') {
            assert!(sentence.split_whitespace().count() <= 20, "{sentence}");
        }
    }
}
