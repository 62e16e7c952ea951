//! The leaves of a picture: the picture with its lines, and a card a leaf with its measures and
//! a field for its name.
//!
//! From what was found to a page. A field that is left empty, or says `?`, leaves its leaf out.

use std::collections::BTreeSet;

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::measured::LENGTHS;
use spinney_exchange::mends;
use spinney_model::limits::SCREENS_LEAVES;
use spinney_model::{Aside, LeafNote, Measurand, Mend, PictureScale};
use spinney_voice::starters::SEEN;
use spinney_voice::{Tongue, measured as say};

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::frame::{self, Parts, Screen};
use crate::pages::measure::lengths::name_of;
use crate::pages::measure::sheet::{self, Leaf, Sheet};
use crate::reply::{Page, Refused};

/// Where a picture, or what was found in one, is sent to be shown.
pub(super) const PATH: &str = "/measure/leaves";

/// The same, whatever else was typed.
pub(super) const BACK: &str = "/measure/back";

/// Where leaves with names are sent, to see what would be taken.
pub(super) const LOOK: &str = "/measure/look";

/// Where a leaf that was found wrongly is sent to be put right, and the field of its number.
pub(super) const ONE: &str = "/measure/leaf";
pub(super) const LEAF: &str = "leaf";

/// The fields of a mend in words, and of taking the last one back.
pub(super) const MEND: &str = "mend";
pub(super) const UNDO: &str = "undo-mend";

/// The fields of a ruler: its two marks and what is between them; and that it is to be used.
pub(super) const RULER: [&str; 3] = ["ruler-one", "ruler-other", "ruler-mm"];
pub(super) const RULER_LIES: &str = "ruler-lies";

/// What is typed of a leaf: its kind, which plant it is of, which part of it; and of all in the
/// picture: where and when they were found.
pub(super) const OF_LEAF: [&str; 3] = ["name", "plant", "part"];
pub(super) const OF_PICTURE: [&str; 2] = ["where", "when"];

/// What is ticked on the page of what goes into the table.
const TICKS: [&str; 4] = ["look", OFFERED, "instead", "draw"];
/// Which questions could be ticked there.
pub(super) const OFFERED: &str = "offered";
/// The longest such tick, in bytes, and how many there can be: of forty leaves one for each column.
const LONGEST_TICK: usize = 40;
const MOST_TICKS: usize = SCREENS_LEAVES * (LENGTHS.len() + SEEN.len());

/// What was left out has letters in the picture.
const LETTERS: &str = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/// What went wrong.
pub(super) fn told(trouble: &Refused) -> Markup {
    html! {
        div.finding.mend role="alert" {
            p { (trouble.sentence) }
            p.remedy { (trouble.remedy) }
        }
    }
}

/// The page.
pub(super) fn page(
    desk: &Desk,
    asked: &Asked<'_>,
    sheet: &Sheet,
    trouble: Option<&Refused>,
) -> Page {
    let t = asked.tongue;
    let work = html! {
        h1 { (t.count("scan-found", sheet.now.leaves.len())) }
        @if let Some(trouble) = trouble { (told(trouble)) }
        form.measured method="post" action=(LOOK) enctype="multipart/form-data" {
            (hidden(&[("back", &"/measure")]))
            // Enter presses the first button of a form.
            button hidden {}
            (carried(asked, sheet, Some(&sheet.now.leaves)))
            (ticked(asked))
            div.scan { (picture(t, sheet)) }
            div.cards-of-leaves {
                (scale(asked, sheet, trouble.is_some()))
                (left_out(t, sheet))
                (rubbed(t, sheet))
                (mends(t, sheet))
                @if sheet.now.leaves.is_empty() { p { (t.say("scan-no-leaf")) } }
                @else {
                    p #naming { (t.say("scan-naming")) }
                    (offered(t, &desk.history.now))
                    ol.leaves {
                        @for leaf in &sheet.now.leaves { (card(asked, sheet, leaf)) }
                    }
                    (found_at(asked))
                    button.main #measure-look { (t.say("scan-look")) }
                }
            }
        }
        p { a #another-picture href="/measure" { (t.say("scan-another")) } }
    };
    let parts =
        Parts { hand: Some("measure"), ..Parts::new(Screen::Finds, t.say("scan-title"), work) };
    finished(desk, asked, &parts, trouble)
}

/// A page of a sheet; with what went wrong, where something did.
pub(super) fn finished(
    desk: &Desk,
    asked: &Asked<'_>,
    parts: &Parts,
    trouble: Option<&Refused>,
) -> Page {
    let page = frame::page(desk, asked, parts);
    Page { status: if trouble.is_some() { 422 } else { 200 }, ..page }
}

/// What travels with each form: the sheet, and what was typed on the page of all leaves, unless this is that page
/// (and these its leaves), where it has fields of its own. A leaf that was left out keeps its name: that may be
/// taken back.
pub(super) fn carried(
    asked: &Asked<'_>,
    sheet: &Sheet,
    with_fields: Option<&[Leaf]>,
) -> Markup {
    let has_field = |number: usize| {
        with_fields.is_some_and(|leaves| leaves.iter().any(|leaf| leaf.number == number))
    };
    html! {
        @for (name, text) in sheet.fields() { input type="hidden" name=(name) value=(text); }
        @for field in RULER.iter().filter(|_| with_fields.is_none()) {
            @let typed = asked.cut(field, 40);
            @if !typed.is_empty() { input type="hidden" name=(field) value=(typed); }
        }
        @for field in OF_PICTURE.iter().filter(|_| with_fields.is_none()) {
            @let typed = asked.cut(field, LONGEST_NAME);
            @if !typed.is_empty() { input type="hidden" name=(field) value=(typed); }
        }
        @for number in sheet.numbers().into_iter().filter(|number| !has_field(*number)) {
            @for of in OF_LEAF {
                @let field = format!("{of}-{number}");
                @let typed = asked.cut(&field, LONGEST_NAME);
                @if !typed.is_empty() { input type="hidden" name=(field) value=(typed); }
            }
        }
    }
}

/// What was ticked on the page of what goes into the table, for when a person comes back to it.
pub(super) fn ticked(asked: &Asked<'_>) -> Markup {
    let sent = TICKS.iter().flat_map(|field| {
        let sent = asked.request.fields(field).filter(|text| text.len() <= LONGEST_TICK);
        sent.take(MOST_TICKS).map(move |text| (*field, text))
    });
    html! {
        @for (field, text) in sent { input type="hidden" name=(field) value=(text); }
    }
}

/// That it is a rubbing, or looks like one.
fn rubbed(t: Tongue, sheet: &Sheet) -> Markup {
    let notes: Vec<&[LeafNote]> = sheet.now.leaves.iter().map(|leaf| &leaf.notes[..]).collect();
    let said = say::rubbed(t, &notes);
    html! {
        @if !said.is_empty() { p #rubbed { (said) } }
        @if sheet.like_a_rubbing { p #like-a-rubbing { (t.say("scan-like-a-rubbing")) } }
    }
}

/// How large a dot is, and the field to say it otherwise.
fn scale(asked: &Asked<'_>, sheet: &Sheet, again: bool) -> Markup {
    let t = asked.tongue;
    let doubtful = matches!(sheet.now.scale, PictureScale::OfFile { doubt: Some(_), .. });
    let sure = sheet.has_lengths() && !doubtful;
    // What stood in a field stays, unless it was used.
    let used = [MEND, UNDO, LEAF].iter().all(|field| asked.request.field(field).is_empty());
    let typed = |field: &str, most: usize| match again || !used {
        true => asked.cut(field, most),
        false => String::new(),
    };
    let dpi = typed("dpi", 20);
    html! {
        p.no-scale[!sure] { (say::scale_on_screen(t, sheet.now.scale)) }
        @let coarse = say::coarse(t, sheet.now.scale);
        @if !coarse.is_empty() { p #coarse.no-scale { (coarse) } }
        details open[!sure || !dpi.is_empty()] {
            summary { (t.say("scan-other-dpi")) }
            label for="dpi" { (t.say("scan-dpi")) }
            div.one-line {
                input #dpi name="dpi" maxlength="20" inputmode="decimal" value=(dpi);
                button #measure-scale formaction=(PATH) { (t.say("scan-scale-take")) }
            }
        }
        details #ruler open[RULER.iter().any(|field| !typed(field, 40).is_empty())] {
            summary { (t.say("scan-ruler")) }
            p { (t.say("scan-ruler-how")) }
            p.by-click hidden { (t.say("mend-click")) }
            div.one-line.ruler {
                @for (field, label) in RULER.iter().zip(["scan-ruler-one", "scan-ruler-other", "scan-ruler-mm"]) {
                    div {
                        label for=(field) { (t.say(label)) }
                        input.place[*field != RULER[2]] id=(field) name=(field) maxlength="40" autocomplete="off"
                            inputmode="decimal" value=(typed(field, 40));
                    }
                }
                button #measure-ruler name=(RULER_LIES) value="1" formaction=(PATH) { (t.say("scan-scale-take")) }
            }
        }
    }
}

/// Where and when all of them were found.
fn found_at(asked: &Asked<'_>) -> Markup {
    let t = asked.tongue;
    html! {
        fieldset.found-at {
            legend { (t.say("scan-found-at")) }
            div.one-line {
                @for (field, label) in OF_PICTURE.into_iter().zip(["scan-where", "scan-when"]) {
                    div {
                        label for=(field) { (t.say(label)) }
                        input id=(field) name=(field) maxlength=(LONGEST_NAME) dir="auto" autocomplete="off"
                            value=(asked.cut(field, LONGEST_NAME));
                    }
                }
            }
        }
    }
}

/// Which plant a leaf is of, and which part of it: what a range rests on, and why leaves of one
/// kind differ.
fn which_plant(asked: &Asked<'_>, number: usize) -> Markup {
    let t = asked.tongue;
    html! {
        @for (of, label) in OF_LEAF.into_iter().skip(1).zip(["scan-plant", "scan-part"]) {
            @let field = format!("{of}-{number}");
            label for=(field) { (t.say(label)) }
            input id=(field) name=(field) maxlength=(LONGEST_NAME) dir="auto" autocomplete="off"
                list=[(of == "part").then_some("parts")] value=(asked.cut(&field, LONGEST_NAME));
        }
    }
}

/// Parts of a plant whose leaves differ.
const PARTS: [&str; 3] = ["scan-part-sun", "scan-part-shade", "scan-part-sucker"];

/// The kinds so far, offered while one types.
fn offered(t: Tongue, collection: &Collection) -> Markup {
    let names: BTreeSet<String> =
        collection.kinds.keys().map(|id| collection.name(*id)).collect();
    html! {
        datalist #kinds { @for name in names { option value=(name) {} } }
        datalist #parts { @for part in PARTS { option value=(t.say(part)) {} } }
    }
}

/// What was left out and is seen whole, each with its letter.
fn lettered(sheet: &Sheet) -> impl Iterator<Item = (char, &Aside)> {
    LETTERS.chars().zip(sheet.now.aside.iter().filter(|aside| aside.why.is_whole()))
}

/// What was left out, and a way to take a thing of it for a leaf.
fn left_out(t: Tongue, sheet: &Sheet) -> Markup {
    let now = &sheet.now;
    html! {
        @if !now.left_out.is_empty() { p.quiet { (say::left_out(t, &now.left_out)) } }
        @let whole = now.aside.iter().filter(|aside| aside.why.is_whole()).count();
        @if whole > 0 {
            details #left-out {
                summary { (t.count("mend-is-a-leaf", whole)) }
                p { (t.say("mend-letters")) }
                p.letters {
                    @for (letter, aside) in lettered(sheet) {
                        @if let Some(at) = spinney_measure::place_inside(&aside.outline) {
                            button name=(MEND) value=(mends::in_words(&Mend::ALeaf { at }))
                                formaction=(PATH) {
                                (t.with("mend-take", &[("letter", &letter)]))
                            }
                        }
                    }
                }
            }
        }
    }
}

/// What a person said of the leaves so far, and a way to take the last of it back.
fn mends(t: Tongue, sheet: &Sheet) -> Markup {
    let said: Vec<String> = sheet.mends.iter().map(|mend| say::mend(t, mend)).collect();
    html! {
        @if !said.is_empty() {
            p #mends { (t.with("mend-so-far", &[("mends", &said.join(" · "))])) }
            button #mend-undo name=(UNDO) value="1" formaction=(PATH) { (t.say("mend-undo")) }
        }
    }
}

fn card(asked: &Asked<'_>, sheet: &Sheet, leaf: &Leaf) -> Markup {
    let t = asked.tongue;
    let number = leaf.number;
    let field = format!("name-{number}");
    // The lengths at once, by the names of their columns; the rest is folded.
    let lengths = LENGTHS.into_iter().enumerate();
    let lengths = lengths.filter_map(|(at, what)| Some((at, sheet.measure(leaf, what)?)));
    let others = Measurand::ALL.into_iter().filter(|what| !LENGTHS.contains(what));
    let others = others.filter_map(|what| sheet.measure(leaf, what));
    html! {
        li.leaf-card id={"leaf-card-" (number)} {
            img src={"data:image/jpeg;base64," (leaf.picture)}
                alt=(t.with("measure-leaf", &[("number", &number)]));
            div {
                label for=(field) { (t.with("scan-name", &[("number", &number)])) }
                input id=(field) name=(field) list="kinds" maxlength=(LONGEST_NAME) dir="auto"
                    autocomplete="off" value=(asked.cut(&field, LONGEST_NAME));
                dl.measures {
                    @for (at, one) in lengths {
                        div { dt { (name_of(t, at)) } dd { (say::amount(t, &one)) } }
                    }
                }
                @if !leaf.form.is_empty() { p { (leaf.form) } }
                @for note in leaf.notes.iter().filter(|note| **note != LeafNote::Rubbed) { p.quiet { (say::leaf_note(t, *note)) } }
                @let typed = |of: &&str| !asked.cut(&format!("{of}-{number}"), LONGEST_NAME).is_empty();
                details open[OF_LEAF[1..].iter().any(typed)] {
                    summary { (t.say("scan-more")) }
                    (which_plant(asked, number))
                    dl.measures {
                        @for one in others {
                            div { dt { (say::measurand(t, one.what)) } dd { (say::amount(t, &one)) } }
                        }
                    }
                }
                button.put-right id={"mend-" (number)} name=(LEAF) value=(number) formaction=(ONE) {
                    (t.with("mend-open", &[("number", &number)]))
                }
            }
        }
    }
}

/// The picture with what was measured drawn into it.
fn picture(t: Tongue, sheet: &Sheet) -> Markup {
    let (width, height) = sheet.size;
    let label = t.with("scan-picture-alt", &[("file", &sheet.file)]);
    // Numbers are as large on any picture.
    let unit = f64::from(width.max(height)) / 1000.0;
    html! {
        svg.overlay.places viewBox={"0 0 " (width) " " (height)} role="img" aria-label=(label) {
            (laid(sheet))
            @for aside in &sheet.now.aside {
                @let outline = sheet::shown(&aside.outline, sheet.size);
                path.aside d=(way(&outline, true)) {}
            }
            @for (letter, aside) in lettered(sheet) {
                @if let Some(at) = spinney_measure::place_inside(&aside.outline) {
                    (sign(at, &letter.to_string(), unit))
                }
            }
            @for leaf in &sheet.now.leaves { (number(leaf, unit)) }
        }
    }
}

/// The picture and the lines of its leaves.
pub(super) fn laid(sheet: &Sheet) -> Markup {
    let (width, height) = sheet.size;
    html! {
        image href={"data:image/jpeg;base64," (sheet.picture)} width=(width) height=(height)
            preserveAspectRatio="none" {}
        @for leaf in &sheet.now.leaves {
            g.of-leaf id={"lines-" (leaf.number)} {
                @for (line, class) in leaf.lines.iter().zip(["outline", "midrib", "width", "stalk", "cut"]) {
                    @let line = sheet::shown(line, sheet.size);
                    @if line.len() > 1 {
                        @let way = way(&line, class == "outline");
                        path.halo d=(way) {}
                        path class=(class) d=(way) {}
                    }
                }
            }
        }
    }
}

fn way(line: &[[f64; 2]], closed: bool) -> String {
    let mut way = String::new();
    for (at, [x, y]) in line.iter().enumerate() {
        let letter = if at == 0 { 'M' } else { 'L' };
        // The middle of the first pixel is half a pixel from the corner.
        way.push_str(&format!("{letter}{:.1} {:.1}", x + 0.5, y + 0.5));
    }
    if closed {
        way.push('Z');
    }
    way
}

/// The number of a leaf on its blade, a quarter of the way from base to tip.
fn number(leaf: &Leaf, unit: f64) -> Markup {
    let midrib = &leaf.lines[1];
    let Some(at) = midrib.get(midrib.len() / 4) else { return html! {} };
    sign(*at, &leaf.number.to_string(), unit)
}

/// A number or a letter at a place; `unit`: how large.
pub(super) fn sign([x, y]: [f64; 2], text: &str, unit: f64) -> Markup {
    html! {
        g.number {
            circle cx=(format!("{x:.1}")) cy=(format!("{y:.1}")) r=(format!("{:.1}", 17.0 * unit)) {}
            text x=(format!("{x:.1}")) y=(format!("{:.1}", y + 8.5 * unit))
                font-size=(format!("{:.1}", 24.0 * unit)) text-anchor="middle" { (text) }
        }
    }
}
