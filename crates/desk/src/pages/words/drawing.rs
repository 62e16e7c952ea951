//! Drawings of the leaf words: two states side by side, at the same size and turn, that differ
//! in the word alone.
//!
//! From a word to two line drawings. Outline 0.6 mm, midrib 0.4, side veins 0.25; nothing is
//! filled. A word without a drawing simply has none.

use maud::{Markup, html};

use crate::drawing::blade::{Blade, Edge, Lobes, Shape};
use crate::drawing::class;
use crate::drawing::leaf::{self, Form, LENGTH, Leaf, TIP};
use crate::drawing::pen::{Point, path, placed};
use crate::language::Tongue;

/// What a drawing shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shows {
    /// One blade on its stalk.
    Leaf(Look),
    /// The same leaf, one part of it heavy.
    Part(Part),
    Feather,
    Hand,
    Opposite,
    Alternate,
    Whorl,
    /// A leaf that sits on its twig without a stalk.
    NoStalk,
}

/// How its blade looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Look {
    Smooth,
    Toothed,
    DoubleToothed,
    Spiny,
    Lobed,
    Heart,
    Needle,
}

/// A part of a leaf.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Part {
    Blade,
    Stalk,
    Edge,
    Midrib,
    Veins,
    Tip,
    Base,
}

/// A stalk a third of the blade, long enough to be pointed at.
const STALK: f64 = 1.0 / 3.0;

/// The word's drawing, and beside it what it is taken for.
pub(super) fn of_word(word: &str) -> Option<[Shows; 2]> {
    use Shows::{Alternate, Feather, Hand, Leaf, NoStalk, Opposite, Whorl};
    Some(match word {
        "lobed" | "lobe" | "sinus" => [Leaf(Look::Lobed), Leaf(Look::Smooth)],
        "unlobed" => [Leaf(Look::Smooth), Leaf(Look::Lobed)],
        "toothed" | "tooth" => [Leaf(Look::Toothed), Leaf(Look::Smooth)],
        "double-toothed" => [Leaf(Look::DoubleToothed), Leaf(Look::Toothed)],
        "entire" => [Leaf(Look::Smooth), Leaf(Look::Toothed)],
        "spine" | "spike" => [Leaf(Look::Spiny), Leaf(Look::Toothed)],
        "heart-shaped" => [Leaf(Look::Heart), Leaf(Look::Smooth)],
        "oval" => [Leaf(Look::Smooth), Leaf(Look::Heart)],
        "needle" => [Leaf(Look::Needle), Leaf(Look::Smooth)],
        "leaflet" | "compound" => [Feather, Leaf(Look::Lobed)],
        "feather" => [Feather, Hand],
        "hand-shaped" => [Hand, Feather],
        "opposite" | "pair" => [Opposite, Alternate],
        "alternate" => [Alternate, Opposite],
        "whorl" => [Whorl, Opposite],
        "blade" => [Shows::Part(Part::Blade), Shows::Part(Part::Stalk)],
        "leaf stalk" | "stalk" => [Shows::Part(Part::Stalk), NoStalk],
        "edge" => [Shows::Part(Part::Edge), Shows::Part(Part::Tip)],
        "midrib" => [Shows::Part(Part::Midrib), Shows::Part(Part::Veins)],
        "vein" | "vein pair" => [Shows::Part(Part::Veins), Shows::Part(Part::Midrib)],
        "tip" => [Shows::Part(Part::Tip), Shows::Part(Part::Base)],
        "base" => [Shows::Part(Part::Base), Shows::Part(Part::Tip)],
        _ => return None,
    })
}

/// Two drawings side by side, the word's own first.
pub(super) fn pair(t: Tongue, shows: [Shows; 2]) -> Markup {
    html! {
        div.two-states {
            @for (n, one) in shows.into_iter().enumerate() {
                figure.other[n == 1] {
                    svg.leaf viewBox="-24 -50 48 64" aria-hidden="true" focusable="false" { (drawn(one)) }
                    figcaption { (caption(t, one, shows[1 - n])) }
                }
            }
        }
    }
}

/// What a drawing shows, in the words that set it apart from its neighbour.
fn caption(t: Tongue, shows: Shows, beside: Shows) -> String {
    match shows {
        Shows::Leaf(Look::Smooth) if beside == Shows::Leaf(Look::Lobed) => {
            t.say("words-draw-unlobed")
        }
        Shows::Leaf(Look::Smooth)
            if matches!(beside, Shows::Leaf(Look::Heart | Look::Needle)) =>
        {
            t.say("words-draw-oval")
        }
        Shows::Leaf(Look::Smooth) => t.say("words-draw-smooth"),
        Shows::Leaf(Look::Toothed) => t.say("words-draw-toothed"),
        Shows::Leaf(Look::DoubleToothed) => t.say("words-draw-double"),
        Shows::Leaf(Look::Spiny) => t.say("words-draw-spiny"),
        Shows::Leaf(Look::Lobed) => t.say("words-draw-lobed"),
        Shows::Leaf(Look::Heart) => t.say("words-draw-heart"),
        Shows::Leaf(Look::Needle) => t.say("words-draw-needle"),
        Shows::Feather => t.say("words-draw-feather"),
        Shows::Hand => t.say("words-draw-hand"),
        Shows::Opposite => t.say("words-draw-opposite"),
        Shows::Alternate => t.say("words-draw-alternate"),
        Shows::Whorl => t.say("words-draw-whorl"),
        Shows::NoStalk => t.say("words-draw-no-stalk"),
        Shows::Part(Part::Blade) => t.say("words-draw-blade"),
        Shows::Part(Part::Stalk) => t.say("words-draw-stalk"),
        Shows::Part(Part::Edge) => t.say("words-draw-edge"),
        Shows::Part(Part::Midrib) => t.say("words-draw-midrib"),
        Shows::Part(Part::Veins) => t.say("words-draw-veins"),
        Shows::Part(Part::Tip) => t.say("words-draw-tip"),
        Shows::Part(Part::Base) => t.say("words-draw-base"),
    }
}

fn drawn(shows: Shows) -> Markup {
    match shows {
        Shows::Leaf(look) => leaf(of_look(look), None),
        Shows::Part(part) => leaf(of_look(Look::Smooth), Some(part)),
        Shows::NoStalk => html! {
            (leaf(Leaf { stalk: Some(0.0), ..of_look(Look::Smooth) }, None))
            (line("midrib", &[(-12.0, TIP - LENGTH - 1.0), (12.0, TIP - LENGTH + 1.0)]))
        },
        Shows::Feather => leaf(of_form(Form::Feather(leaf::USUAL_FEATHER)), None),
        Shows::Hand => leaf(of_form(Form::Hand(leaf::USUAL_HAND)), None),
        Shows::Opposite => {
            twig(&[(30.0, &[(-1.0, 0.5), (1.0, 0.5)]), (8.0, &[(-1.0, 0.5), (1.0, 0.5)])])
        }
        Shows::Alternate => twig(&[
            (36.0, &[(-1.0, 0.5)]),
            (25.0, &[(1.0, 0.5)]),
            (14.0, &[(-1.0, 0.5)]),
            (3.0, &[(1.0, 0.5)]),
        ]),
        Shows::Whorl => twig(&[
            (30.0, &[(-1.0, 0.3), (0.35, 1.0), (1.0, 0.3)]),
            (4.0, &[(-1.0, 0.3), (0.35, 1.0), (1.0, 0.3)]),
        ]),
    }
}

fn of_look(look: Look) -> Leaf {
    let plain = Blade::default();
    let blade = match look {
        Look::Smooth => plain,
        Look::Toothed => Blade { edge: Edge::Toothed, ..plain },
        Look::DoubleToothed => Blade { edge: Edge::DoubleToothed, ..plain },
        Look::Spiny => Blade { edge: Edge::Spiny, ..plain },
        Look::Lobed => Blade { lobes: Lobes::Some, ..plain },
        Look::Heart => Blade { shape: Shape::Heart, ..plain },
        Look::Needle => Blade { shape: Shape::Needle, ..plain },
    };
    Leaf { blade, stalk: Some(STALK), ..Leaf::default() }
}

fn of_form(form: Form) -> Leaf {
    Leaf { form, ..of_look(Look::Smooth) }
}

fn line(class: &str, points: &[Point]) -> Markup {
    html! { path class=(class) d=(path(points)) {} }
}

/// A leaf, one part of it heavy.
fn leaf(leaf: Leaf, heavy: Option<Part>) -> Markup {
    let of = |part: leaf::Part| match (part, heavy) {
        (leaf::Part::Edge, Some(Part::Edge))
        | (leaf::Part::Midrib, Some(Part::Midrib))
        | (leaf::Part::Veins, Some(Part::Veins))
        | (leaf::Part::Stalk, Some(Part::Stalk)) => "heavy",
        _ => class(part),
    };
    html! {
        @if heavy == Some(Part::Blade) { (hatching(leaf.blade)) }
        @for part in leaf.lines() { (line(of(part.part), &part.points)) }
        @if heavy == Some(Part::Tip) { circle.heavy cx="0" cy=(-TIP) r="5" {} }
        @if heavy == Some(Part::Base) { circle.heavy cx="0" cy=(LENGTH - TIP) r="5" {} }
    }
}

/// Hatching over the blade: lines across it, from edge to edge.
fn hatching(blade: Blade) -> Markup {
    let base = TIP - LENGTH;
    let across = (1..LENGTH as u32 / 2).filter_map(|n| {
        let y = f64::from(n) * 2.0;
        let half = blade.half_width(LENGTH, LENGTH * blade.usual_width(), y)? * 0.9;
        Some([(-half, base + y - 0.8), (half, base + y + 0.8)])
    });
    html! { @for hatch in across { (line("hatch", &hatch)) } }
}

/// A twig with leaves at some heights.
fn twig(leaves: &[(f64, &[Point])]) -> Markup {
    let blade = Blade { shape: Shape::Leaflet, ..Blade::default() };
    let (length, width) = (14.0, 14.0 * blade.usual_width());
    html! {
        (line("twig-line", &[(0.0, -12.0), (0.0, 47.0)]))
        @for (height, ways) in leaves {
            @for way in *ways {
                @let foot = placed(&[(0.0, 0.0), (0.0, 3.0)], (0.0, *height), *way);
                (line("outline", &foot))
                (line("outline", &placed(&blade.outline(length, width), foot[1], *way)))
                (line("vein", &placed(&[(0.0, 0.0), (0.0, length * 0.92)], foot[1], *way)))
            }
        }
    }
}
