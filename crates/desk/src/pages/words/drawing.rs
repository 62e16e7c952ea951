//! Drawings of the leaf words: two states side by side, at the same size and turn, that differ
//! in the word alone.
//!
//! From a word to two line drawings. Outline 0.6 mm, midrib 0.4, side veins 0.25; nothing is
//! filled. A word without a drawing simply has none.

use maud::{Markup, html};

use super::blade::{self, Form, Point, outline, path, placed, side_veins};
use crate::language::Tongue;

/// What a drawing shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shows {
    /// One blade on its stalk.
    Leaf(Form),
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

const LENGTH: f64 = 36.0;
const WIDTH: f64 = 24.0;

/// The word's drawing, and beside it what it is taken for.
pub(super) fn of_word(word: &str) -> Option<[Shows; 2]> {
    use Shows::{Alternate, Feather, Hand, Leaf, NoStalk, Opposite, Whorl};
    Some(match word {
        "lobed" | "lobe" | "sinus" => [Leaf(Form::Lobed), Leaf(Form::Smooth)],
        "unlobed" => [Leaf(Form::Smooth), Leaf(Form::Lobed)],
        "toothed" | "tooth" => [Leaf(Form::Toothed), Leaf(Form::Smooth)],
        "double-toothed" => [Leaf(Form::DoubleToothed), Leaf(Form::Toothed)],
        "entire" => [Leaf(Form::Smooth), Leaf(Form::Toothed)],
        "spine" | "spike" => [Leaf(Form::Spiny), Leaf(Form::Toothed)],
        "heart-shaped" => [Leaf(Form::Heart), Leaf(Form::Smooth)],
        "oval" => [Leaf(Form::Smooth), Leaf(Form::Heart)],
        "needle" => [Leaf(Form::Needle), Leaf(Form::Smooth)],
        "leaflet" | "compound" => [Feather, Leaf(Form::Lobed)],
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
                    svg.leaf viewBox="-21 -50 42 64" aria-hidden="true" focusable="false" { (drawn(one)) }
                    figcaption { (caption(t, one, shows[1 - n])) }
                }
            }
        }
    }
}

/// What a drawing shows, in the words that set it apart from its neighbour.
fn caption(t: Tongue, shows: Shows, beside: Shows) -> String {
    match shows {
        Shows::Leaf(Form::Smooth) if beside == Shows::Leaf(Form::Lobed) => {
            t.say("words-draw-unlobed")
        }
        Shows::Leaf(Form::Smooth)
            if matches!(beside, Shows::Leaf(Form::Heart | Form::Needle)) =>
        {
            t.say("words-draw-oval")
        }
        Shows::Leaf(Form::Smooth) => t.say("words-draw-smooth"),
        Shows::Leaf(Form::Toothed) => t.say("words-draw-toothed"),
        Shows::Leaf(Form::DoubleToothed) => t.say("words-draw-double"),
        Shows::Leaf(Form::Spiny) => t.say("words-draw-spiny"),
        Shows::Leaf(Form::Lobed) => t.say("words-draw-lobed"),
        Shows::Leaf(Form::Heart) => t.say("words-draw-heart"),
        Shows::Leaf(Form::Needle) => t.say("words-draw-needle"),
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
        Shows::Leaf(form) => leaf(form, None, true),
        Shows::Part(part) => leaf(Form::Smooth, Some(part), true),
        Shows::NoStalk => html! {
            (leaf(Form::Smooth, None, false))
            (line("midrib", &[(-12.0, -1.0), (12.0, 1.0)]))
        },
        Shows::Feather => feather(),
        Shows::Hand => hand(),
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

fn line(class: &str, points: &[Point]) -> Markup {
    html! { path class=(class) d=(path(points)) {} }
}

fn leaf(form: Form, heavy: Option<Part>, stalk: bool) -> Markup {
    let class = |part: Part, usual: &'static str| match heavy == Some(part) {
        true => "heavy",
        false => usual,
    };
    let mirrored = |points: &[Point; 2]| points.map(|(x, y)| (-x, y));
    html! {
        @if heavy == Some(Part::Blade) { (hatching()) }
        (line(class(Part::Edge, "outline"), &outline(form, LENGTH, WIDTH)))
        (line(class(Part::Midrib, "midrib"), &[(0.0, 0.0), (0.0, LENGTH * 0.97)]))
        @for vein in side_veins(form, LENGTH, WIDTH) {
            (line(class(Part::Veins, "vein"), &vein))
            (line(class(Part::Veins, "vein"), &mirrored(&vein)))
        }
        @if stalk { (line(class(Part::Stalk, "outline"), &[(0.0, 0.0), (0.6, -6.0), (2.0, -12.0)])) }
        @if heavy == Some(Part::Tip) { circle.heavy cx="0" cy=(-LENGTH) r="5" {} }
        @if heavy == Some(Part::Base) { circle.heavy cx="0" cy="0" r="5" {} }
    }
}

/// Hatching over the blade: lines across it, from edge to edge.
fn hatching() -> Markup {
    let edge = outline(Form::Smooth, LENGTH, WIDTH);
    let right = &edge[1..edge.len() / 2];
    html! {
        @for (x, y) in right.iter().step_by(3) { (line("hatch", &[(-x * 0.9, y - 0.8), (*x * 0.9, y + 0.8)])) }
    }
}

/// A small blade with its midrib, growing in a direction.
fn leaflet(at: Point, up: Point, length: f64) -> Markup {
    let blade = outline(Form::Smooth, length, length * 0.5);
    html! {
        (line("outline", &placed(&blade, at, up)))
        (line("vein", &placed(&[(0.0, 0.0), (0.0, length * 0.94)], at, up)))
    }
}

fn feather() -> Markup {
    html! {
        (line("outline", &[(2.0, -12.0), (0.6, -6.0), (0.0, 0.0), (0.0, 30.0)]))
        @for height in [2.0, 12.0, 22.0] {
            (leaflet((0.0, height), (-1.0, 0.55), 16.0))
            (leaflet((0.0, height), (1.0, 0.55), 16.0))
        }
        (leaflet((0.0, 30.0), (0.0, 1.0), 16.0))
    }
}

fn hand() -> Markup {
    html! {
        (line("outline", &[(2.0, -12.0), (0.6, -2.0), (0.0, 8.0)]))
        @for (up, length) in [
            ((-1.0, 0.1), 18.0),
            ((-0.8, 0.85), 23.0),
            ((0.0, 1.0), 28.0),
            ((0.8, 0.85), 23.0),
            ((1.0, 0.1), 18.0),
        ] {
            (leaflet((0.0, 8.0), up, length))
        }
    }
}

/// A twig with leaves at some heights.
fn twig(leaves: &[(f64, &[Point])]) -> Markup {
    html! {
        (line("twig-line", &[(0.0, -12.0), (0.0, 47.0)]))
        @for (height, ways) in leaves {
            @for way in *ways {
                @let foot = blade::placed(&[(0.0, 0.0), (0.0, 3.0)], (0.0, *height), *way);
                (line("outline", &foot))
                (leaflet(foot[1], *way, 14.0))
            }
        }
    }
}
