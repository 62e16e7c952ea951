//! What named leaves give finds and table, shown before it is taken; and taking it.
//!
//! From leaves with names to a page that says kind by kind on how many leaves each range rests,
//! what stands in the table already and what becomes of it; and from there to edits and
//! pictures.

use std::collections::{BTreeMap, BTreeSet};

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_collection::measured::{ColumnOf, LENGTHS, Named, OfKind, Plan, Ranged, Shown};
use spinney_model::{KeptDrawing, KindEdit, SpecimenField};
use spinney_voice::starters::SEEN;

use crate::asked::{Asked, Deed, What};
use crate::desk::Desk;
use crate::forms::{At, Fact, Form, hidden, nothing};
use crate::pages::finds::add::small_enough;
use crate::pages::finds::deeds::LONGEST_NAME;
use crate::pages::finds::kind::svg;
use crate::pages::finds::left::odd_unit;
use crate::pages::frame::{Parts, Screen};
use crate::pages::measure::leaves::{self, OFFERED, told};
use crate::pages::measure::lengths::{name_of, words};
use crate::pages::measure::mend;
use crate::pages::measure::sheet::{Leaf, Sheet};
use crate::pictures;
use crate::reply::{Page, Refused};

/// What stands in the field of a leaf that nobody can name.
const NOBODY_KNOWS: &str = "?";

/// The leaves with the names that were typed; refused where none has one.
fn named(asked: &Asked<'_>, sheet: &Sheet) -> Result<Vec<Option<Named>>, Refused> {
    let leaf = |leaf: &Leaf| {
        let kind = asked.typed(&format!("name-{}", leaf.number), LONGEST_NAME)?;
        let lengths = LENGTHS.map(|what| sheet.measure(leaf, what));
        let lengths = lengths.map(|one| one.map(|one| (one.value, one.plus_minus)));
        let of_leaf =
            |field: &str| asked.typed(&format!("{field}-{}", leaf.number), LONGEST_NAME);
        let fields = vec![
            // Not by the name of its file, which is often that of a child.
            (
                SpecimenField::Called,
                asked.tongue.with("scan-called", &[("number", &leaf.number)]),
            ),
            (SpecimenField::WhichPlant, of_leaf("plant")?),
            (SpecimenField::Where, asked.typed("where", LONGEST_NAME)?),
            (SpecimenField::When, asked.typed("when", LONGEST_NAME)?),
            (SpecimenField::Part, of_leaf("part")?),
        ];
        let is_named = !kind.is_empty() && kind != NOBODY_KNOWS;
        Ok(is_named.then_some(Named { kind, lengths, looks: leaf.looks, fields }))
    };
    let named: Vec<Option<Named>> =
        sheet.now.leaves.iter().map(leaf).collect::<Result<_, _>>()?;
    match named.iter().any(Option::is_some) {
        true => Ok(named),
        false => Err(asked.refused("scan-none-named")),
    }
}

/// The leaves that are not here yet, and how many are: the same scan gives the same pictures.
fn not_here(
    asked: &Asked<'_>,
    collection: &Collection,
    sheet: &Sheet,
) -> Result<(Vec<Option<Named>>, usize), Refused> {
    let mut named = named(asked, sheet)?;
    let kept = collection.specimens.values().map(|one| one.picture.as_str());
    let kept: BTreeSet<&str> = kept.filter(|picture| !picture.is_empty()).collect();
    let mut here = 0;
    for (leaf, named) in sheet.now.leaves.iter().zip(&mut named) {
        if kept.is_empty() || named.is_none() {
            continue;
        }
        let picture = leaf.file().and_then(|file| pictures::small(&file).ok());
        if picture.is_some_and(|picture| kept.contains(pictures::name(&picture).as_str())) {
            *named = None;
            here += 1;
        }
    }
    match named.iter().any(Option::is_some) {
        true => Ok((named, here)),
        false => Err(asked.refused("scan-all-here")),
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
    let (named, here) = match not_here(asked, &desk.history.now, sheet) {
        Ok(named) => named,
        Err(trouble) => return leaves::page(desk, asked, sheet, Some(&trouble)),
    };
    let plan = Plan::of(&desk.history.now, &words(t), &named);
    let left_out = named.iter().filter(|leaf| leaf.is_none()).count() - here;
    let work = html! {
        h1 { (t.say("scan-look-title")) }
        @if let Some(trouble) = trouble { (told(trouble)) }
        @if !sheet.has_lengths() { p.no-scale { (t.say("scan-look-no-scale")) } }
        form.taking method="post" action=(TAKE.path) enctype="multipart/form-data" {
            (hidden(&[("back", &"/measure")]))
            (leaves::carried(asked, sheet, None))
            (looks(asked, &plan))
            ul.taken-kinds {
                @for kind in &plan.kinds { (of_kind(desk, asked, (sheet, &plan), kind)) }
            }
            @if here > 0 { p.quiet { (t.count("scan-here-already", here)) } }
            @if left_out > 0 { p.quiet { (t.count("scan-left-out-names", left_out)) } }
            div.both-ways {
                button.main #measure-take { (t.say("scan-take")) }
                button #measure-back formaction=(leaves::PATH) { (t.say("scan-back")) }
            }
        }
    };
    leaves::finished(
        desk,
        asked,
        &Parts::new(Screen::Finds, t.say("scan-title"), work),
        trouble,
    )
}

fn of_kind(
    desk: &Desk,
    asked: &Asked<'_>,
    (sheet, plan): (&Sheet, &Plan),
    kind: &OfKind,
) -> Markup {
    let t = asked.tongue;
    let first = kind.leaves.first().map(|leaf| &sheet.now.leaves[*leaf]);
    let number = first.map_or(0, |leaf| leaf.number);
    let numbers: Vec<String> =
        kind.leaves.iter().map(|leaf| sheet.now.leaves[*leaf].number.to_string()).collect();
    let bare = bare(&desk.history.now, kind);
    html! {
        li {
            @if let Some(leaf) = first {
                img src={"data:image/jpeg;base64," (leaf.picture)} alt="";
            }
            div {
                h2 dir="auto" { (kind.name) }
                p {
                    (t.count_with("scan-leaves-of-kind", numbers.len(), &[("numbers", &numbers.join(", "))]))
                    " " (t.say(if kind.id.is_none() { "scan-new-kind" } else { "scan-known-kind" }))
                    @if let (true, Some(leaf)) = (bare, first) {
                        " " (t.with("scan-becomes-picture", &[("number", &leaf.number)]))
                    }
                }
                @for range in &kind.ranges { (ranged(asked, number, range)) }
                @if !kind.looks.is_empty() { (looked(asked, plan, (number, kind))) }
                @if let Some((leaf, drawing)) = first.and_then(|leaf| Some((leaf, sheet.drawing(leaf)?))) {
                    (as_drawing(asked, leaf.number, drawing, draw_words(&desk.history.now, kind)))
                }
                @if kind.ranges.iter().any(|one| one.fits && one.together.leaves == 1) {
                    p.finding.look { (t.say("scan-one-leaf")) }
                }
            }
        }
    }
}

/// What the outlines say besides lengths: a tick for each question that is to become a column.
fn looks(asked: &Asked<'_>, plan: &Plan) -> Markup {
    let t = asked.tongue;
    let all = plan.looks();
    let ticked = ticked(asked, plan);
    html! {
        @if !all.is_empty() {
            fieldset.how-they-look {
                legend { (t.say("scan-looks-title")) }
                p.quiet {
                    (t.say("scan-looks-why")) " "
                    (t.say(if plan.kinds.len() == 1 { "scan-looks-of-one" } else { "scan-looks-ticked" })) " "
                    (t.say("scan-looks-compare"))
                }
                @for (look, states) in &all {
                    @let id = format!("look-{}", SEEN[*look]);
                    input type="hidden" name=(OFFERED) value=(SEEN[*look]);
                    p.choice {
                        input id=(id) type="checkbox" name="look" value=(SEEN[*look]) checked[ticked.contains(look)];
                        label for=(id) dir="auto" { span { strong { (labelled(&plan.name_of(*look, t))) } " " (states.join(", ")) } }
                    }
                }
            }
        }
    }
}

/// The questions that are ticked; of those that nobody could tick yet, those that are wanted.
fn ticked(asked: &Asked<'_>, plan: &Plan) -> BTreeSet<usize> {
    let sent: BTreeSet<&str> = asked.request.fields("look").collect();
    let offered: BTreeSet<&str> = asked.request.fields(OFFERED).collect();
    let is_ticked = |look: &usize| match offered.contains(SEEN[*look]) {
        true => sent.contains(SEEN[*look]),
        false => plan.is_wanted(*look),
    };
    (0..SEEN.len()).filter(is_ticked).collect()
}

/// A column before what stands in it: a question has its mark already.
fn labelled(column: &str) -> String {
    if column.ends_with('?') { column.to_owned() } else { format!("{column}:") }
}

/// How the leaves of a kind look, and what becomes of what is typed of it.
fn looked(asked: &Asked<'_>, plan: &Plan, (number, kind): (usize, &OfKind)) -> Markup {
    let t = asked.tongue;
    let asked_of = kind.looks.iter().filter(|one| one.is_asked());
    html! {
        p.as-seen dir="auto" {
            @for (nth, one) in asked_of.enumerate() {
                @if nth > 0 { " · " }
                strong { (labelled(&plan.name_of(one.look, t))) } " " (one.now.join(", "))
                @if !one.before.is_empty() && one.fits {
                    " " (t.with("scan-looks-before", &[("before", &one.before)]))
                }
            }
        }
        @for one in kind.looks.iter().filter(|one| one.is_asked()) {
            @let name = plan.name_of(one.look, t);
            @if !one.fits {
                p.quiet dir="auto" {
                    (t.with("scan-other-words", &[("column", &name)])) " "
                    a href="/table" { (t.say("scan-fill-in-table")) }
                }
            } @else if !one.typed.is_empty() && one.now != [one.typed.as_str()] {
                (typed(asked, (number, ColumnOf::Look(one.look)), &one.typed, Some(&name)))
            } @else {
                @for (who, text) in &one.others {
                    p.quiet dir="auto" { strong { (labelled(&name)) } " " (t.with("scan-others", &[("who", who), ("text", text)])) }
                }
            }
        }
    }
}

/// What is typed stays, unless this is ticked.
fn typed(asked: &Asked<'_>, of: (usize, ColumnOf), typed: &str, name: Option<&str>) -> Markup {
    let id = instead_field(of);
    html! {
        p.choice {
            input type="checkbox" id=(id) name="instead" value=(id)
                checked[asked.request.fields("instead").any(|sent| sent == id)];
            label for=(id) dir="auto" {
                @if let Some(name) = name { strong { (labelled(name)) } " " }
                (asked.tongue.with("scan-typed", &[("typed", &typed)]))
            }
        }
    }
}

/// The leaf in lines, for whoever wants it to stand for its kind.
fn as_drawing(asked: &Asked<'_>, number: usize, drawing: &KeptDrawing, words: &str) -> Markup {
    let t = asked.tongue;
    let id = draw_field(number);
    html! {
        p.choice.as-drawing {
            input type="checkbox" id=(id) name="draw" value=(id)
                checked[asked.request.fields("draw").any(|sent| sent == id)];
            label for=(id) {
                (svg(&drawing.drawing(), "leaf drawn"))
                (t.with(words, &[("number", &number)]))
            }
        }
    }
}

/// What is said beside it: what stands for the kind now.
fn draw_words(collection: &Collection, kind: &OfKind) -> &'static str {
    match kind.id.and_then(|id| collection.kinds.get(&id)) {
        Some(kind) if !kind.pictures.is_empty() => "scan-draw-beside",
        Some(kind) if kind.drawing.is_some() => "scan-draw-instead",
        _ => "scan-draw",
    }
}

/// Fields of a kind are named by the number of its first leaf: places move when others take leaves in.
fn draw_field(number: usize) -> String {
    format!("draw-{number}")
}

fn ranged(asked: &Asked<'_>, number: usize, one: &Ranged) -> Markup {
    let t = asked.tongue;
    let what = name_of(t, one.length);
    let leaves = one.together.leaves as usize;
    let range = one.together.text().replace('-', "–");
    html! {
        p {
            strong { (what) ":" } " "
            @if one.fits {
                (t.count_with("scan-range", leaves, &[("range", &t.decimal(&range))]))
                @if !one.before.is_empty() {
                    " " (t.with("scan-joined", &[("before", &one.before), ("now", &t.decimal(&one.now.text()))]))
                }
            } @else { (t.say("scan-does-not-fit")) }
        }
        @if one.fits && !one.typed.is_empty() {
            (typed(asked, (number, ColumnOf::Length(one.length)), &one.typed, None))
        } @else if one.fits {
            @for (who, text) in &one.others {
                p.quiet dir="auto" { (t.with("scan-others", &[("who", who), ("text", text)])) }
            }
        }
    }
}

fn instead_field((number, of): (usize, ColumnOf)) -> String {
    match of {
        ColumnOf::Length(length) => format!("instead-{number}-{length}"),
        ColumnOf::Look(look) => format!("instead-{number}-{}", SEEN[look]),
    }
}

/// Whether a kind has neither a picture nor a drawing yet.
fn bare(collection: &Collection, kind: &OfKind) -> bool {
    let there = kind.id.and_then(|id| collection.kinds.get(&id));
    there.is_none_or(|kind| kind.pictures.is_empty() && kind.drawing.is_none())
}

/// Named leaves become finds, pictures, and single leaves from which ranges follow.
pub(super) static TAKE: Form<Sheet> = Form {
    path: "/do/take-leaves",
    read: |at| mend::sheet_of(at.asked),
    // What its page showed is looked at by `act`: whoever was overtaken sees the page again.
    rests_on: nothing,
    act: |sheet, at| {
        Ok(take(&sheet, at).unwrap_or_else(|trouble| {
            let page = page(at.desk, at.asked, &sheet, Some(&trouble));
            Deed { what: What::Shown(Box::new(page)), pictures: Vec::new(), to: String::new() }
        }))
    },
};

fn take(sheet: &Sheet, at: &At<'_>) -> Result<Deed, Refused> {
    let (asked, collection) = (at.asked, at.collection());
    let (mut leaves, _) = not_here(asked, collection, sheet)?;
    let words = words(asked.tongue);
    let ticked = ticked(asked, &Plan::of(collection, &words, &leaves));
    for leaf in leaves.iter_mut().flatten() {
        for (look, said) in leaf.looks.iter_mut().enumerate() {
            *said = said.filter(|_| ticked.contains(&look));
        }
    }
    at.holds(&Fact::new(
        |state| Plan::of(state.collection, &words, &leaves).rests_on(),
        |at| at.asked.refused("scan-moved"),
    ))?;
    let plan = Plan::of(collection, &words, &leaves);
    let sent: BTreeSet<&str> = asked.request.fields("instead").collect();
    let all = (0..plan.kinds.len()).flat_map(|kind| {
        let lengths = (0..LENGTHS.len()).map(ColumnOf::Length);
        lengths.chain((0..SEEN.len()).map(ColumnOf::Look)).map(move |of| (kind, of))
    });
    let first = |kind: usize| {
        let leaf = plan.kinds[kind].leaves.first().map(|leaf| &sheet.now.leaves[*leaf]);
        leaf.map_or(0, |leaf| leaf.number)
    };
    let ticked = |(kind, of): &(usize, ColumnOf)| {
        sent.contains(instead_field((first(*kind), *of)).as_str())
    };
    let instead = all.filter(ticked).collect();
    let mut kept: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    let mut keep = |bytes: Vec<u8>| {
        let name = pictures::name(&bytes);
        kept.insert(name.clone(), bytes);
        name
    };
    let drawn: BTreeSet<&str> = asked.request.fields("draw").collect();
    let mut shown: Vec<Shown> = vec![Shown::default(); sheet.now.leaves.len()];
    for (at, kind) in plan.kinds.iter().enumerate() {
        for (nth, place) in kind.leaves.iter().enumerate() {
            let leaf = &sheet.now.leaves[*place];
            let Some(file) = leaf.file() else { continue };
            let drawing = sheet.drawing(leaf).filter(|_| nth == 0);
            let drawing = drawing.filter(|_| drawn.contains(draw_field(first(at)).as_str()));
            shown[*place] = Shown {
                alone: pictures::small(&file).ok().map(&mut keep),
                of_kind: match drawing {
                    Some(drawing) => Some(KindEdit::Draw(Some(drawing.clone()))),
                    None if nth > 0 || !bare(collection, kind) => None,
                    None => pictures::bare(file).ok().map(&mut keep).map(KindEdit::AddPicture),
                },
            };
        }
    }
    let edits = plan.edits(collection, &words, (&leaves, &shown), &instead);
    let edits = edits.map_err(|odd| odd_unit(asked.tongue, &odd))?;
    small_enough(collection, asked, &edits)?;
    let to = if plan.has_columns() { "/table" } else { "/finds" };
    Ok(Deed { pictures: kept.into_values().collect(), ..Deed::edits(edits, to) })
}
