//! How a kind looks on a card: its first picture, or a drawing of what the table says of it; and a
//! drawing for an empty table top.
//!
//! Which leaf is drawn, and how, is the room `draw`; here it becomes part of a page.

use maud::{Markup, PreEscaped, html};
use spinney_collection::laid::Laid;
use spinney_collection::{Collection, Kind};
use spinney_model::{Drawing, KindId};
use spinney_voice::Tongue;

/// The first picture of a kind; else a drawing of what the table says of it; else nothing.
pub(crate) fn face(id: KindId, kind: &Kind, laid: Option<&Laid>) -> Markup {
    html! {
        @if let Some(hash) = kind.pictures.first() {
            img src={"/picture/" (hash)} alt="" loading="lazy";
        } @else if let Some(drawing) = laid.and_then(|laid| of_kind(laid, id)) { (drawing) }
    }
}

/// A line that says what the drawings are, where one of these finds is shown by a drawing.
pub(crate) fn drawn_line<'k>(
    t: Tongue,
    collection: &Collection,
    mut kinds: impl Iterator<Item = &'k KindId>,
    laid: Option<&Laid>,
) -> Markup {
    let bare = |id| collection.kinds.get(id).is_some_and(|kind| kind.pictures.is_empty());
    let drawn = |id: &KindId| laid.is_some_and(|laid| of_kind(laid, *id).is_some());
    let some = kinds.any(|id| bare(id) && drawn(id));
    html! { @if some { p.quiet { (t.say("finds-drawn")) } } }
}

/// A hand that lays leaves in a row.
pub(super) fn hand_laying_leaves() -> Markup {
    html! {
        svg.laying viewBox="0 0 360 190" aria-hidden="true" focusable="false" {
            // The edge of the table.
            path d="M8 168 C90 164 260 164 352 168" {}
            // A leaf in one piece, with its veins.
            path d="M52 160 C20 138 18 104 52 76 C86 104 84 138 52 160 M52 168 L52 84" {}
            path.fine d="M52 148 L36 134 M52 148 L68 134 M52 130 L33 114 M52 130 L71 114 M52 112 L40 100 M52 112 L64 100" {}
            // A lobed one.
            path d="M134 160 C124 150 112 154 108 144 C116 140 114 132 106 128 C106 116 118 118 120 110 C116 100 124 92 134 80 C144 92 152 100 148 110 C150 118 162 116 162 128 C154 132 152 140 160 144 C156 154 144 150 134 160 M134 168 L134 90" {}
            path.fine d="M134 148 L118 144 M134 148 L150 144 M134 130 L114 124 M134 130 L154 124 M134 112 L124 104 M134 112 L144 104" {}
            // One like a feather, still held by its stalk.
            path d="M228 158 C222 138 222 118 230 98 L244 76" {}
            path d="M224 140 C210 142 202 136 198 128 C210 124 220 128 224 140 M224 140 C234 146 246 144 252 136 C244 128 232 130 224 140" {}
            path d="M225 122 C212 122 204 116 202 106 C214 104 223 110 225 122 M225 122 C236 126 248 122 252 114 C243 108 231 112 225 122" {}
            path d="M228 158 C218 164 208 163 201 156 C210 148 222 150 228 158 M228 158 C238 164 250 161 254 152 C244 146 233 149 228 158" {}
            // The hand: two fingers and the thumb on the stalk, the others behind.
            path d="M240 84 C246 74 256 64 266 56 C278 46 292 38 306 36 L352 28" {}
            path d="M246 78 C252 82 258 80 262 75 L278 62" {}
            path d="M252 68 C246 62 240 66 240 72 C238 78 240 82 244 82" {}
            path d="M262 75 C262 86 272 88 278 80 L292 68" {}
            path d="M278 80 C280 90 290 90 296 82 L308 72" {}
            path d="M296 82 C300 89 308 88 312 81 C322 72 334 66 352 62" {}
        }
    }
}

/// The drawing of what the table says of a kind; None: it says nothing of a leaf, or not enough.
pub(crate) fn of_kind(laid: &Laid, kind: KindId) -> Option<Markup> {
    laid.drawing(kind, spinney_draw::of_kinds).map(|drawing| svg(drawing, "leaf drawn"))
}

/// A drawing on a page. Nothing that anybody typed is in it: it is made of numbers.
pub(crate) fn svg(drawing: &Drawing, class: &str) -> Markup {
    PreEscaped(spinney_press::lines::svg(drawing, class))
}
