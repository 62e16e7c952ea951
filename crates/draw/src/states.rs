//! Drawings of states: what an answer looks like, beside the question that asks for it.
//!
//! From a state of a column, and the word of the list that it is if it is one, to drawings that
//! show it and no more than it. Where lines would say something else (whether a surface is
//! smooth, whether a lobe is pointed) there are none.

use spinney_model::{CharacterIx, Drawing, Matrix, Scale, StateIx};

use crate::blade::{Edge, Shape, Tip};
use crate::columns::{Columns, words_of};
use crate::leaf_words::{About, Lobed, Look, Pieces, is, tokens};
use crate::words::{Shows, own};

/// The drawings of a state; several where it is said of several forms, none where it cannot be
/// shown truly.
pub fn of_state(
    matrix: &Matrix,
    at: CharacterIx,
    state: StateIx,
    word: Option<&str>,
) -> Vec<Drawing> {
    shown(matrix, at, state, word).iter().map(|shows| shows.drawing()).collect()
}

fn shown(matrix: &Matrix, at: CharacterIx, state: StateIx, word: Option<&str>) -> Vec<Shows> {
    let character = matrix.character(at);
    let Scale::Words { states } = &character.scale else { return Vec::new() };
    let Some(text) = states.get(state.0) else { return Vec::new() };
    let (column, said) = (words_of(character), tokens(text));
    if let Some(places) = by_place(&column, &said) {
        return places;
    }
    let columns = Columns::of(matrix);
    // A lobe has a tip as well.
    let elsewhere = |look: &Look| look.tip.is_some() && About::of(&column).lobes;
    let look = columns.look(at, state).filter(|look| !elsewhere(look));
    if let Some(shows) = look.map(by_look).filter(|some| !some.is_empty()) {
        return shows;
    }
    word.map_or(Vec::new(), |word| by_word(word, matrix, columns.any()))
}

/// Words that are said of a surface, a lobe or a whole as well: their drawing shows one of these.
const SAID_OF_MUCH: &[&str] = &[
    "egg-shaped",
    "heart-shaped",
    "lance-shaped",
    "lopsided",
    "mouth",
    "notched",
    "oval",
    "pair",
    "pointed",
    "smooth",
    "stalk",
    "wavy",
    "wedge-shaped",
    "whorl",
];

/// What a word of the list shows of this table.
fn by_word(word: &str, matrix: &Matrix, about_leaves: bool) -> Vec<Shows> {
    let animals = || matrix.characters().iter().any(|c| About::of(&words_of(c)).animal);
    match word {
        "wing" if animals() => vec![Shows::InsectWings],
        "wing" => vec![Shows::WingedFruit],
        "opposite" => vec![Shows::Opposite],
        "alternate" => vec![Shows::Alternate],
        word if SAID_OF_MUCH.contains(&word) => Vec::new(),
        word => own(word, about_leaves).to_vec(),
    }
}

/// What columns of these parts say in words that are said of other parts as well.
fn by_place(column: &[String], said: &[String]) -> Option<Vec<Shows>> {
    let of = |words: &[&str]| column.iter().any(|t| words.iter().any(|w| is(t, w)));
    let says = |words: &[&str]| said.iter().any(|t| words.iter().any(|w| is(t, w)));
    let two = says(&["opposite", "pairs", "two", "gegenständig*", "zweit"]);
    let one = says(&["alternate*", "one", "wechselständig*", "einzeln"]);
    let ring = says(&["ring*", "whorl*", "quirl*"]);
    let place = |leaves: Shows, buds: Shows| match () {
        () if of(&["bud*", "knospe*"]) => Some(vec![buds]),
        () if of(&["twig*", "zweig*"]) => Some(vec![leaves]),
        () => None,
    };
    let shell = of(&["shell", "shells", "schale", "gehäuse", "schneckenhaus*"]);
    if shell && of(&["mouth", "mündung"]) {
        let right = says(&["right", "rechts"]).then(|| vec![Shows::ShellMouth]);
        return right.or(says(&["left", "links"]).then(|| vec![Shows::LeftMouth]));
    }
    let coiled = says(&["coiled", "aufgerollt", "gewunden"]);
    match () {
        () if shell && coiled && says(&["flat", "flach"]) => Some(vec![Shows::FlatShell]),
        () if shell && says(&["pointed", "spitz"]) => Some(vec![Shows::PointedShell]),
        () if shell && coiled => Some(vec![Shows::PointedShell, Shows::FlatShell]),
        () if of(&["teeth", "zähne*"]) && says(&["sizes", "größen"]) => {
            Some(vec![Shows::DoubleToothed])
        }
        () if of(&["teeth", "zähne*"]) && says(&["size", "größe"]) => {
            Some(vec![Shows::ToothedLarge])
        }
        () if About::of(column).base && !About::of(column).form => base(&says),
        () if of(&["needle*", "nadel*"]) && says(&["bunch*", "büschel*"]) => {
            Some(vec![Shows::Bunch])
        }
        () if of(&["needle*", "nadel*"]) && one => Some(vec![Shows::Needles]),
        () if ring => place(Shows::Whorl, Shows::Whorl).filter(|_| !of(&["bud*", "knospe*"])),
        () if two && !one => place(Shows::Opposite, Shows::BudsOpposite),
        () if one && !two => place(Shows::Alternate, Shows::BudsAlternate),
        () => None,
    }
}

/// How a blade begins at its stalk.
fn base(says: &impl Fn(&[&str]) -> bool) -> Option<Vec<Shows>> {
    match () {
        () if says(&["heart*", "herzförmig"]) => Some(vec![Shows::Heart]),
        () if says(&["wedge*", "narrow*", "keil*", "schmal*"]) => Some(vec![Shows::WedgeBase]),
        () if says(&["round*", "rund*", "abgerundet*"]) => Some(vec![Shows::RoundBase]),
        () => None,
    }
}

/// What shows one thing that is said of a leaf; nothing where several are said at once.
fn by_look(look: Look) -> Vec<Shows> {
    let Look { form, lobed, edge, shape, tip, hairy, stalk, other } = look;
    let said = [
        form.is_some(),
        lobed.is_some(),
        edge.is_some(),
        shape.is_some(),
        tip.is_some(),
        hairy.is_some(),
    ];
    if other || stalk.is_some() || said.iter().filter(|said| **said).count() != 1 {
        return Vec::new();
    }
    let of_form = form.map(|form| match form {
        Pieces::One => vec![Shows::Unlobed],
        Pieces::Feather => vec![Shows::Feather],
        Pieces::Hand => vec![Shows::Hand],
        Pieces::Several => vec![Shows::Feather, Shows::Hand],
    });
    let of_lobes = lobed.map(|lobed| match lobed {
        Lobed::No => vec![Shows::Unlobed],
        Lobed::Feather => vec![Shows::Lobed],
        Lobed::Hand => vec![Shows::HandLobed],
        Lobed::Somehow => vec![Shows::Lobed, Shows::HandLobed],
    });
    let of_edge = edge.map(|edge| match edge {
        Edge::Smooth => vec![Shows::Smooth],
        Edge::Wavy => vec![Shows::Wavy],
        Edge::Toothed => vec![Shows::Toothed],
        Edge::DoubleToothed => vec![Shows::DoubleToothed],
        Edge::Spiny => vec![Shows::Spiny],
    });
    let of_shape = shape.map(|shape| match shape {
        Shape::Egg => vec![Shows::Egg],
        Shape::Oval => vec![Shows::Oval],
        Shape::Upper => vec![Shows::Upper],
        Shape::Heart => vec![Shows::Heart],
        Shape::Round => vec![Shows::RoundBlade],
        Shape::Narrow => vec![Shows::Lance],
        Shape::Leaflet => Vec::new(),
    });
    let of_tip = tip.map(|tip| match tip {
        Tip::Pointed => vec![Shows::PointedTip],
        Tip::Rounded => vec![Shows::RoundTip],
        Tip::Notched => vec![Shows::NotchedTip],
        Tip::Usual | Tip::Spine => Vec::new(),
    });
    let of_hairs = hairy.map(|hairy| vec![if hairy { Shows::Hairy } else { Shows::Bald }]);
    let all = [of_form, of_lobes, of_edge, of_shape, of_tip, of_hairs];
    all.into_iter().flatten().next().unwrap_or_default()
}

#[cfg(test)]
mod tests;
