//! One leaf that was found wrongly: where its blade begins and ends, what belongs to it.
//!
//! From a leaf to a page that shows it large, with numbers around its outline: a place is such a number, or
//! two pixels (which a click writes). What is said there becomes one more mend of the sheet.

use maud::{Markup, html};
use spinney_exchange::mends;
use spinney_model::Mend;
use spinney_model::limits::{MENDS, SCREENS_LEAVES};
use spinney_voice::measured as say;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::frame::{Parts, Screen};
use crate::pages::measure::leaves::{self, LEAF, MEND, RULER, RULER_LIES, UNDO};
use crate::pages::measure::sheet::{Leaf, NotMended, Sheet};
use crate::reply::{Page, Refused};

/// What is said of a leaf by a button, and where.
const SAID: &str = "said";
const BASE: &str = "base";
const TIP: &str = "tip";
const TWO: [&str; 2] = ["one-side", "other-side"];
const PART: &str = "part-of";
const NO_LEAF: &str = "no-leaf";

/// So many places around an outline have numbers.
const DOTS: usize = 24;
/// How much is shown around a leaf, of its longer side.
const AROUND: f64 = 0.12;
/// The longest that a place is, in characters.
const LONGEST_PLACE: usize = 40;

/// The sheet that a form brings, after all that was said of it before.
///
/// **Errors**: it brings none.
pub(super) fn sheet_of(asked: &Asked<'_>) -> Result<Sheet, Refused> {
    let none = || asked.refused("scan-no-picture");
    let (sheet, mends) = Sheet::read(asked.request).ok_or_else(none)?;
    sheet.mended(asked.tongue, mends).map_err(|_| none())
}

/// The sheet after what is said of it now; None: nothing is.
pub(super) fn said(asked: &Asked<'_>, sheet: &Sheet) -> Result<Option<Sheet>, Refused> {
    let mut mends = sheet.mends.clone();
    if !asked.request.field(UNDO).is_empty() {
        mends.pop();
    } else {
        let Some(mend) = one(asked, sheet)? else { return Ok(None) };
        if mends.len() >= MENDS {
            return Err(Refused::count(asked.tongue, "mend-many", MENDS));
        }
        mends.push(mend);
    }
    let told = |(sentence, remedy)| Refused { sentence, remedy };
    let after = sheet.mended(asked.tongue, mends).map_err(|why| match why {
        NotMended::Cannot(why) => told(say::cannot_mend(asked.tongue, why)),
        NotMended::Many(count) => {
            Refused::count_with(asked.tongue, "scan-many", SCREENS_LEAVES, &[("found", &count)])
        }
        NotMended::Damaged => asked.refused("scan-no-picture"),
    })?;
    Ok(Some(after))
}

/// The mend that a form brings.
fn one(asked: &Asked<'_>, sheet: &Sheet) -> Result<Option<Mend>, Refused> {
    let words = asked.request.field(MEND);
    if !words.is_empty() {
        let read = mends::read(words).ok().and_then(|read| read.first().map(|(_, mend)| *mend));
        return read.map(Some).ok_or_else(|| asked.refused("mend-nothing-said"));
    }
    let typed = |field: &str| !asked.cut(field, LONGEST_PLACE).is_empty();
    // Enter presses no button: then it is said by what was typed.
    let of_leaf = !asked.request.field(LEAF).is_empty();
    if !asked.request.field(RULER_LIES).is_empty() || !of_leaf && RULER.into_iter().any(typed) {
        return ruler(asked).map(Some);
    }
    let said = match asked.request.field(SAID) {
        "" if typed(BASE) => BASE,
        "" if typed(TIP) => TIP,
        "" if TWO.into_iter().any(typed) => TWO[0],
        said => said,
    };
    let Some(leaf) = leaf_of(asked, sheet).filter(|_| !said.is_empty()) else {
        return Ok(None);
    };
    let number = leaf.number;
    let place = |field: &str| place(asked, leaf, field);
    Ok(Some(match said {
        BASE => Mend::Base { leaf: number, at: place(BASE)? },
        TIP => Mend::Tip { leaf: number, at: place(TIP)? },
        PART => {
            let of = asked.request.field(PART).parse();
            let of = of.map_err(|_| asked.refused("mend-nothing-said"))?;
            Mend::PartOf { part: number, leaf: of }
        }
        NO_LEAF => Mend::NoLeaf { leaf: number },
        _ => Mend::Two { leaf: number, between: [place(TWO[0])?, place(TWO[1])?] },
    }))
}

/// The ruler that a form brings.
fn ruler(asked: &Asked<'_>) -> Result<Mend, Refused> {
    let typed = RULER.map(|field| asked.cut(field, LONGEST_PLACE));
    let [one, other] = [&typed[0], &typed[1]].map(|typed| numbers(typed));
    match (one.as_deref(), other.as_deref(), length(&typed[2])) {
        (Some(&[a, b]), Some(&[c, d]), Some(mm)) => {
            Ok(Mend::Length { between: [[a, b], [c, d]], mm })
        }
        _ => {
            let typed = typed.join(" · ");
            Err(Refused::with(asked.tongue, "scan-odd-ruler", &[("typed", &typed)]))
        }
    }
}

/// A length in mm: `140`, `140 mm` or `14 cm`.
fn length(typed: &str) -> Option<f64> {
    let typed = typed.to_lowercase();
    let (number, times) = match (typed.strip_suffix("cm"), typed.strip_suffix("mm")) {
        (Some(number), _) => (number, 10.0),
        (None, number) => (number.unwrap_or(&typed), 1.0),
    };
    let &[number] = numbers(number)?.as_slice() else { return None };
    (number > 0.0).then_some(number * times)
}

/// The numbers of a text, where it has nothing else; commas are decimal marks.
fn numbers(typed: &str) -> Option<Vec<f64>> {
    let typed = typed.replace(',', ".");
    let words = typed.split([' ', ';']).filter(|word| !word.is_empty());
    let number = |word: &str| word.parse().ok().filter(|number: &f64| number.is_finite());
    words.map(number).collect()
}

/// The leaf that a form names.
fn leaf_of<'s>(asked: &Asked<'_>, sheet: &'s Sheet) -> Option<&'s Leaf> {
    let number: usize = asked.request.field(LEAF).parse().ok()?;
    sheet.now.leaves.iter().find(|leaf| leaf.number == number)
}

/// A place that was typed: a number on the outline, or two pixels.
fn place(asked: &Asked<'_>, leaf: &Leaf, field: &str) -> Result<[f64; 2], Refused> {
    let typed = asked.cut(field, LONGEST_PLACE);
    let found = match numbers(&typed).as_deref() {
        Some(&[dot]) => dots(leaf).into_iter().nth((dot as usize).wrapping_sub(1)),
        Some(&[x, y]) => Some([x, y]),
        _ => None,
    };
    found.ok_or_else(|| {
        Refused::count_with(asked.tongue, "mend-odd-place", DOTS, &[("typed", &typed)])
    })
}

/// Places around a leaf, as a clock goes, from the uppermost on.
fn dots(leaf: &Leaf) -> Vec<[f64; 2]> {
    let outline = &leaf.lines[0];
    let first = (0..outline.len()).min_by(|a, b| outline[*a][1].total_cmp(&outline[*b][1]));
    let first = first.unwrap_or(0);
    let at = |dot: usize| (first + dot * outline.len() / DOTS) % outline.len();
    (0..DOTS).map(|dot| outline[at(dot)]).collect()
}

/// The page; without a leaf that there is, that of all leaves.
pub(super) fn page(
    desk: &Desk,
    asked: &Asked<'_>,
    sheet: &Sheet,
    trouble: Option<&Refused>,
) -> Page {
    let t = asked.tongue;
    let Some(leaf) = leaf_of(asked, sheet) else {
        return leaves::page(desk, asked, sheet, trouble);
    };
    let number = leaf.number;
    let title = t.with("mend-title", &[("number", &number)]);
    let work = html! {
        h1 { (title) }
        @if let Some(trouble) = trouble { (leaves::told(trouble)) }
        form.measured.mending method="post" action=(leaves::PATH) enctype="multipart/form-data" {
            (hidden(&[("back", &"/measure"), (LEAF, &number)]))
            // Enter presses the first button of a form.
            button hidden {}
            (leaves::carried(asked, sheet, None))
            (leaves::ticked(asked))
            div.scan { (picture(asked, sheet, leaf)) }
            div {
                p { (t.count("mend-how", DOTS)) }
                p.by-click hidden { (t.say("mend-click")) }
                (by_place(asked, BASE, "mend-base-elsewhere", &[(BASE, "mend-base-where")], "mend-base-do"))
                (by_place(asked, TIP, "mend-tip-elsewhere", &[(TIP, "mend-tip-where")], "mend-tip-do"))
                (by_place(asked, "two", "mend-touching",
                    &[(TWO[0], "mend-one-side"), (TWO[1], "mend-other-side")], "mend-two-do"))
                (part_of(asked, sheet, leaf))
                fieldset {
                    legend { (t.say("mend-none")) }
                    button #said-no-leaf name=(SAID) value=(NO_LEAF) { (t.say("mend-none-do")) }
                }
                p { button #mend-back formaction=(leaves::BACK) { (t.say("mend-back")) } }
            }
        }
    };
    let parts = Parts { hand: Some("measure"), ..Parts::new(Screen::Finds, title, work) };
    leaves::finished(desk, asked, &parts, trouble)
}

/// Fields for places, and the button that says what is there.
fn by_place(
    asked: &Asked<'_>,
    said: &str,
    title: &str,
    fields: &[(&str, &str)],
    button: &str,
) -> Markup {
    let t = asked.tongue;
    html! {
        fieldset {
            legend { (t.say(title)) }
            div.one-line {
                @for (field, label) in fields {
                    div {
                        label for=(field) { (t.say(label)) }
                        input.place id=(field) name=(field) maxlength=(LONGEST_PLACE) autocomplete="off"
                            inputmode="numeric" value=(asked.cut(field, LONGEST_PLACE));
                    }
                }
                button id={"said-" (said)} name=(SAID) value=(said) { (t.say(button)) }
            }
        }
    }
}

fn part_of(asked: &Asked<'_>, sheet: &Sheet, leaf: &Leaf) -> Markup {
    let t = asked.tongue;
    let others: Vec<usize> = sheet.now.leaves.iter().map(|other| other.number).collect();
    html! {
        @if others.len() > 1 {
            fieldset {
                legend { (t.say("mend-part")) }
                div.one-line {
                    div {
                        label for=(PART) { (t.say("mend-part-which")) }
                        select id=(PART) name=(PART) {
                            @for other in others.into_iter().filter(|other| *other != leaf.number) {
                                option value=(other) { (t.with("measure-leaf", &[("number", &other)])) }
                            }
                        }
                    }
                    button #said-part-of name=(SAID) value=(PART) { (t.say("mend-part-do")) }
                }
            }
        }
    }
}

/// The leaf, large, with numbers around it.
fn picture(asked: &Asked<'_>, sheet: &Sheet, leaf: &Leaf) -> Markup {
    let span = |side: usize| {
        let places = leaf.lines[0].iter().map(|at| at[side]);
        places.fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)))
    };
    let ((left, right), (top, bottom)) = (span(0), span(1));
    let longer = (right - left).max(bottom - top);
    let room = AROUND * longer;
    let label = asked.tongue.with("mend-picture-alt", &[("number", &leaf.number)]);
    let frame = [left - room, top - room, right - left + 2.0 * room, bottom - top + 2.0 * room];
    let frame = frame.map(|side| format!("{side:.1}")).join(" ");
    // Numbers are as large around any leaf.
    let unit = longer / 700.0;
    html! {
        svg.overlay.large.places #mend-picture viewBox=(frame) role="img" aria-label=(label) {
            (leaves::laid(sheet))
            @for (at, place) in dots(leaf).into_iter().enumerate() {
                (leaves::sign(place, &(at + 1).to_string(), unit))
            }
        }
    }
}
