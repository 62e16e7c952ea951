//! Which outputs what is said of safety must reach: every one that is printed or shown to
//! children.

use spinney_model::{LeftTogether, Matrix, Scene, Taxon, TaxonIx};
use spinney_press::sheet::{Sheet, What};
use spinney_press::sheets::SHEETS;
use spinney_press::{Booklet, Paper, Stamp, chart, key_pages, page, today, try_out};
use spinney_voice::Tongue;

use crate::hedge::hedge_walk;

/// What a sheet says, without line breaks.
fn words(sheet: &Sheet) -> String {
    let placed = sheet.pages.iter().flat_map(|page| page.placed());
    let texts = placed.filter_map(|placed| match &placed.what {
        What::Text(block) => Some(block.words()),
        _ => None,
    });
    texts.collect::<Vec<_>>().join(" ").split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Every output of a booklet by name.
fn outputs(booklet: &Booklet) -> Vec<(&'static str, String)> {
    let paper = Paper::A4;
    vec![
        ("everything for today", words(&today::sheet(booklet, paper))),
        ("key pages", words(&key_pages::sheet(booklet, paper))),
        ("chart", words(&chart::sheet(booklet, paper))),
        ("try-out sheets", words(&try_out::sheet(booklet, paper))),
        ("a group's own set", words(&try_out::set_sheet(booklet, paper))),
        ("phone page", page::html(booklet).replace("&#39;", "'")),
    ]
}

/// Whatever leads somebody with a find in the hand to a name, or has it measured.
#[test]
fn the_visits_caution_reaches_every_form_of_the_key() {
    let walked = hedge_walk();
    let booklet = walked.booklet(Stamp::None);
    let forms =
        ["short-key", "pocket", "measuring", "trail", "indented", "holes", "visit", "lessons"];
    for name in forms {
        let sheet = SHEETS.iter().find(|sheet| sheet.name == name).expect("it is in the table");
        let text = words(&(sheet.set)(&booklet, Paper::Letter));
        assert!(text.contains("Wash your hands before lunch."), "{name} drops the caution");
    }
}

#[test]
fn the_visits_caution_reaches_every_output() {
    let walked = hedge_walk();
    for (name, text) in outputs(&walked.booklet(Stamp::None)) {
        assert!(
            text.contains("Wash your hands before lunch."),
            "{name} drops the visit's caution"
        );
    }
}

#[test]
fn a_kinds_caution_reaches_every_output_that_names_the_kinds() {
    let walked = hedge_walk();
    let warned = walked.matrix.taxa().iter().find(|taxon| taxon.caution.is_some());
    let warned: &Taxon = warned.expect("a kind of the hedge walk may hurt");
    let caution = warned.caution.as_deref().expect("just looked for");
    for (name, text) in outputs(&walked.booklet(Stamp::None)) {
        let said = match name {
            "everything for today" | "key pages" | "phone page" => caution,
            "chart" => "Read the cautions in the key first:",
            // Numbers, lines to write on and the right ways: they go with the key.
            _ => continue,
        };
        assert!(text.contains(said), "{name} drops the caution of {}", warned.name);
        assert!(text.contains(&warned.name), "{name} does not name {}", warned.name);
    }
}

#[test]
fn who_decides_is_on_every_output_also_where_nobody_typed_a_caution() {
    let rules = Tongue::of_terminal().say("foot-rules");
    let walked = hedge_walk();
    let scene =
        Scene { caution: None, before_you_go: Vec::new(), ..walked.matrix.scene().clone() };
    let taxa = walked.matrix.taxa().iter().cloned();
    let taxa = taxa.map(|taxon| Taxon { caution: None, ..taxon }).collect();
    let plain: Matrix = walked.matrix.clone().with_scene(scene).with_taxa(taxa).unwrap();
    let booklet = Booklet { matrix: &plain, ..walked.booklet(Stamp::None) };
    for (name, text) in
        outputs(&booklet).into_iter().chain(outputs(&walked.booklet(Stamp::None)))
    {
        assert!(text.contains(&rules), "{name} does not say who decides");
    }
    let bare = words(&today::sheet(&booklet, Paper::A4));
    assert!(!bare.contains("Before you go"), "an empty page is printed");
}

#[test]
fn what_the_adults_see_to_is_a_page_of_today() {
    let walked = hedge_walk();
    let text = words(&today::sheet(&walked.booklet(Stamp::None), Paper::A4));
    for line in
        ["The visit: for the adult who leads", "Ask the land's owner.", "Look for ticks."]
    {
        assert!(text.contains(line), "{line} is not printed");
    }
}

#[test]
fn kinds_that_are_left_together_stand_on_the_adults_page() {
    let walked = hedge_walk();
    let named = |name: &str| {
        let at = walked.matrix.taxa().iter().position(|taxon| taxon.name == name);
        TaxonIx(at.expect("a kind of the hedge walk"))
    };
    let together = |names: &[&str]| LeftTogether {
        taxa: names.iter().map(|name| named(name)).collect(),
        after: None,
        differ: None,
    };
    let left = [together(&["hazel", "lime"]), together(&["ivy", "holly", "rowan"])];
    let booklet = Booklet { left_together: &left, ..walked.booklet(Stamp::None) };
    let sheet = today::sheet(&booklet, Paper::A4);
    let first = Sheet { pages: sheet.pages[..1].to_vec(), ..sheet };
    let says = "These are left together: hazel and lime; ivy, holly and rowan.";
    assert!(words(&first).contains(says), "{}", words(&first));
    let whole = words(&today::sheet(&walked.booklet(Stamp::None), Paper::A4));
    assert!(!whole.contains("left together"));
}
