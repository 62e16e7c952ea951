//! Beside the table: which kinds are still alike, which cell to look at next, what to mend.

use maud::{Markup, html};
use spinney_check::{Settings, WeakSettings};
use spinney_model::{Alike, Code, Finding, Hope, Look, Place, TaxonIx};

use super::view::View;
use crate::pages::frame;
use spinney_collection::Collection;
use spinney_collection::laid::{Laid, folded};
use spinney_collection::told_apart;
use spinney_voice::Tongue;

/// So many pairs are named; the others are counted.
const PAIRS_NAMED: usize = 8;
/// So many kinds are named in a sentence.
const KINDS_NAMED: usize = 6;
/// The fewest columns are not looked for here, so these steps are not needed.
const LOOKING: WeakSettings = WeakSettings { steps: 0, sets_listed: 0, cells_named: 3 };

pub(super) fn margin(t: Tongue, view: &View, collection: &Collection) -> Markup {
    let Some(laid) = &view.laid else {
        return html! { p.quiet { (t.say("table-margin-empty")) } };
    };
    let mut found = view.of_table.clone();
    let of_table = spinney_check::table(&laid.matrix, &Settings::default());
    // The pairs that are alike stand above, with what may part them.
    found.extend(of_table.into_iter().filter(|f| f.code != Code::NotSeparable));
    found.sort_by_key(|finding| finding.severity);
    html! {
        @if laid.matrix.taxa().len() > 1 { (alike(t, view, laid, collection)) }
        h2 { (t.say("table-to-mend")) }
        (in_cells(t, view))
        @if found.is_empty() && view.of_cells.is_empty() { p.quiet { (t.say("table-nothing-to-mend")) } }
        (frame::findings(t, &found))
    }
}

fn alike(t: Tongue, view: &View, laid: &Laid, collection: &Collection) -> Markup {
    let weak = spinney_check::weak(&laid.matrix, &LOOKING);
    let name = |taxon: TaxonIx| laid.matrix.taxon(taxon).name.as_str();
    let kinds = |pair: &Alike| pair.taxa.map(|taxon| laid.kinds[taxon.0]);
    let pairs: Vec<_> = weak.alike.iter().map(kinds).collect();
    let told = told_apart::by_heaps(collection, laid, &pairs);
    let (told, alike): (Vec<_>, Vec<_>) = weak
        .alike
        .iter()
        .map(|pair| (pair, told.get(&kinds(pair))))
        .partition(|(_, by)| by.is_some());
    html! {
        h2 { (t.say("table-alike")) }
        @if alike.is_empty() && told.is_empty() {
            p { (t.say("table-none-alike")) }
        } @else if !alike.is_empty() {
            p { (t.count("table-alike-count", alike.len())) }
            ul.alike {
                @for (pair, _) in alike.iter().take(PAIRS_NAMED) {
                    @let [one, other] = pair.taxa.map(name);
                    li dir="auto" {
                        strong { (t.with("table-pair", &[("one", &one), ("other", &other)])) }
                        " " span.quiet { (t.say(hope(pair.hope))) }
                    }
                }
            }
            @if alike.len() > PAIRS_NAMED {
                p.quiet { (t.count("table-more-pairs", alike.len() - PAIRS_NAMED)) }
            }
        }
        @if !told.is_empty() {
            p { (t.say("table-told-by-heaps")) }
            ul.alike {
                @for (pair, by) in told.iter().filter_map(|(pair, by)| by.map(|by| (pair, by))).take(PAIRS_NAMED) {
                    @let [one, other] = pair.taxa.map(name);
                    @let texts: [(&str, &dyn std::fmt::Display); 4] = [("group", &collection.keys[&by.key].who(by.key)), ("one", &one), ("other", &other), ("words", &by.words)];
                    li dir="auto" { (t.with("table-told-pair", &texts)) }
                }
            }
            @if told.len() > PAIRS_NAMED {
                p.quiet { (t.count("table-more-pairs", told.len() - PAIRS_NAMED)) }
            }
        }
        @if let Some((first, rest)) = weak.next.split_first() {
            h2 { (t.say("table-look-at")) }
            (look(t, view, laid, first, true))
            @for one in rest { (look(t, view, laid, one, false)) }
        }
    }
}

fn hope(hope: Hope) -> &'static str {
    match hope {
        Hope::OneBlank => "table-hope-one",
        Hope::SeveralBlanks => "table-hope-several",
        Hope::NewDifference => "table-hope-new",
    }
}

/// A cell that is worth a look, and why.
fn look(t: Tongue, view: &View, laid: &Laid, look: &Look, first: bool) -> Markup {
    let kind = laid.kinds.get(look.taxon.0);
    let at = laid.characters.get(look.character.0).copied().flatten();
    let (Some(kind), Some(at)) = (kind, at) else { return html! {} };
    let shown = view.kinds.contains(kind) && view.characters.contains(&at);
    let there = format!("#i-{}-{}", kind.0, at.0);
    let address = match shown {
        true => format!("{}{there}", view.address()),
        false => format!("/table?kind={}{there}", kind.0),
    };
    let names = |taxa: &[TaxonIx]| {
        let few = taxa.iter().take(KINDS_NAMED).map(|at| laid.matrix.taxon(*at).name.as_str());
        let text = few.collect::<Vec<_>>().join(", ");
        match taxa.len().saturating_sub(KINDS_NAMED) {
            0 => text,
            more => t.count_with("table-and-more", more, &[("kinds", &text)]),
        }
    };
    let (message, taxa) = match (look.parts.is_empty(), look.with_others.is_empty()) {
        (false, _) => ("table-look-parts", &look.parts),
        (true, false) => ("table-look-with-others", &look.with_others),
        (true, true) => ("table-look-secures", &look.secures),
    };
    html! {
        p.look-at dir="auto" {
            a.first[first] href=(address) {
                (t.with("table-look-cell", &[
                    ("kind", &laid.matrix.taxon(look.taxon).name),
                    ("character", &laid.matrix.character(look.character).name),
                ]))
            }
            br;
            (t.with(message, &[("kinds", &names(taxa))]))
        }
    }
}

/// How many cells the reader has something to say of, with a way to each.
fn in_cells(t: Tongue, view: &View) -> Markup {
    let bad = |findings: &Vec<Finding>| {
        findings.iter().any(|f| f.severity != spinney_model::Severity::GoodToKnow)
    };
    let cells: Vec<_> = view.of_cells.iter().filter(|(_, findings)| bad(findings)).collect();
    html! {
        @if !cells.is_empty() {
            p { (t.count("table-cells-to-mend", cells.len())) }
            ul.cells-to-mend {
                @for ((kind, at), findings) in cells.iter().take(PAIRS_NAMED) {
                    li dir="auto" {
                        a href={"/table?kind=" (kind.0) "#i-" (kind.0) "-" (at.0)} { (name_of(view, *kind, *at)) }
                        ": " (spinney_voice::finding(&findings[0], t).0)
                    }
                }
            }
        }
    }
}

fn name_of(view: &View, kind: spinney_model::KindId, at: spinney_model::CharacterId) -> String {
    let Some(laid) = &view.laid else { return String::new() };
    let kind = laid.taxon(kind).map_or("", |at| laid.matrix.taxon(at).name.as_str());
    let at = laid.character(at).map_or("", |at| laid.matrix.character(at).name.as_str());
    format!("{kind}, {at}")
}

/// What is to be said of one character.
pub(super) fn of_character<'v>(view: &'v View, name: &str) -> Vec<&'v Finding> {
    let about = |finding: &&Finding| match &finding.place {
        Place::Character(of) => folded(of) == folded(name),
        _ => false,
    };
    view.of_table.iter().filter(about).collect()
}
