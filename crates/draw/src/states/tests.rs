//! A state is shown by what it means in its column, or not at all.

use super::*;
use crate::tests::table;

/// What the first kind's state of the last column shows; the word is given where a list would.
fn shows(text: &str, word: Option<&str>) -> Vec<Shows> {
    let matrix = table(text);
    let last = CharacterIx(matrix.characters().len() - 1);
    super::shown(&matrix, last, StateIx(0), word)
}

/// A table of leaves with one more column.
fn of_leaves(column: &str, state: &str, word: Option<&str>) -> Vec<Shows> {
    shows(&format!("kind,leaf edge,{column}\nthis,smooth,{state}\nthat,toothed,else\n"), word)
}

#[test]
fn a_state_of_a_leaf_is_shown_as_its_column_means_it() {
    use Shows::*;
    for (column, state, drawn) in [
        ("edge", "toothed", &[Toothed][..]),
        ("edge", "spiny", &[Spiny]),
        ("edge", "smooth", &[Smooth]),
        ("form of the leaf", "in one piece", &[Unlobed]),
        ("form of the leaf", "like a feather", &[Feather]),
        ("form of the leaf", "like a hand", &[Hand]),
        ("lobes", "lobed", &[Lobed, HandLobed]),
        ("lobes", "unlobed", &[Unlobed]),
        ("how it is lobed", "from one place", &[HandLobed]),
        ("how it is lobed", "along the midrib", &[Lobed]),
        ("place on the twig", "opposite", &[Opposite]),
        ("place on the twig", "in pairs", &[Opposite]),
        ("place on the twig", "one by one", &[Alternate]),
        ("place on the twig", "in rings of at least three", &[Whorl]),
        ("place of the buds", "two by two", &[BudsOpposite]),
        ("place of the buds", "alternate", &[BudsAlternate]),
        ("leaf tip", "rounded", &[RoundTip]),
        ("leaf tip", "notched", &[NotchedTip]),
        ("base of the blade", "rounded", &[RoundBase]),
        ("base of the blade", "heart-shaped", &[Heart]),
        ("base of the blade", "narrowing to the stalk", &[WedgeBase]),
        ("widest part of the leaf", "near the tip", &[Upper]),
        ("sizes of the teeth", "two sizes", &[DoubleToothed]),
        ("needles", "in bunches", &[Bunch]),
        ("needles", "one by one", &[Needles]),
        ("Blattrand", "gezähnt", &[Toothed]),
        ("Stellung am Zweig", "gegenständig", &[Opposite]),
        ("Stellung der Knospen", "einzeln", &[BudsAlternate]),
    ] {
        assert_eq!(of_leaves(column, state, None), drawn, "{column}: {state}");
    }
}

/// The list has a drawing of the word, but of another part.
#[test]
fn what_is_said_of_another_part_is_not_shown_on_a_blade() {
    for (column, state, word) in [
        ("feel", "smooth", "smooth"),
        ("tips of the lobes of it", "pointed", "pointed"),
        ("bark", "smooth", "smooth"),
        ("seeds", "wedge-shaped", "wedge-shaped"),
        ("colour", "green", "leaf scar of it"),
    ] {
        assert_eq!(of_leaves(column, state, Some(word)), [], "{column}: {state}");
    }
}

#[test]
fn a_pond_shows_its_shells_and_no_leaves() {
    use Shows::*;
    let pond = |column: &str, state: &str, word| {
        shows(&format!("kind,tails,{column}\nthis,none,{state}\nthat,some,else\n"), word)
    };
    assert_eq!(pond("form of the shell", "pointed", Some("pointed")), [PointedShell]);
    assert_eq!(pond("form of the shell", "coiled flat", None), [FlatShell]);
    assert_eq!(pond("side of the mouth of the shell", "on the left", None), [LeftMouth]);
    assert_eq!(pond("case", "yes", Some("case")), [Case]);
    assert_eq!(pond("wings", "yes", Some("wing")), [InsectWings]);
    assert_eq!(pond("edge", "toothed", None), []);
    assert_eq!(shows("kind,flight\nthis,yes\nthat,no\n", Some("wing")), [WingedFruit]);
}
