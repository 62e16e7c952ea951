//! A printed key of eight eastern oaks of North America, read as plain text.
//!
//! Source: the worked example in the encyclopaedia article "Single-access key", written out
//! from memory of its seven couplets; the wording is shortened.

use spinney_exchange::{key_text, link::Links};
use spinney_model::{Destination, End, Matrix, Scene, Taxon, TaxonIx};

const OAKS: &str = "
Key to some common oaks

1 Leaves usually without teeth or lobes ............................. 2
1 Leaves usually with teeth or lobes ................................ 5
2(1) Leaves evergreen ............................................... 3
2 Leaves not evergreen .............................................. 4
3(2) Mature plant a large tree ............................... live oak
3 Mature plant a small shrub ........................... dwarf live oak
4(2) Leaf narrow, about 4-6 times as long as broad ......... willow oak
4 Leaf broad, about 2-3 times as long as broad ............ shingle oak
5(1) Lobes or teeth bristle-tipped .................................. 6
5 Lobes or teeth rounded or blunt-pointed, no bristles .............. 7
6(5) Leaves mostly with 3 lobes .......................... blackjack oak
6 Leaves mostly with 7-9 lobes ..................... northern red oak
7(5) Leaves with 5-9 deep lobes .............................. white oak
7 Leaves with 21-27 shallow lobes ................ swamp chestnut oak
";

#[test]
fn the_printed_key_of_eight_oaks_is_read_whole() {
    let names = [
        "live oak",
        "dwarf live oak",
        "willow oak",
        "shingle oak",
        "blackjack oak",
        "northern red oak",
        "white oak",
        "swamp chestnut oak",
    ];
    let taxa: Vec<Taxon> = names.map(Taxon::named).into();
    let rows = vec![vec![]; taxa.len()];
    let matrix = Matrix::new(Scene::default(), taxa, vec![], rows).expect("a table of names");
    let read = key_text::read(OAKS, &matrix, &Links::default());
    assert_eq!(read.findings, []);
    let end = |ix| Destination::End(End::of([TaxonIx(ix)]));
    let on = Destination::Couplet;
    let wanted = [
        (1, None, on(2), on(5)),
        (2, Some(1), on(3), on(4)),
        (3, Some(2), end(0), end(1)),
        (4, Some(2), end(2), end(3)),
        (5, Some(1), on(6), on(7)),
        (6, Some(5), end(4), end(5)),
        (7, Some(5), end(6), end(7)),
    ];
    let found: Vec<_> = read
        .key
        .couplets
        .iter()
        .map(|couplet| (couplet.number, couplet.back, couplet.yes.clone(), couplet.no.clone()))
        .collect();
    assert_eq!(found, wanted);
    let again =
        key_text::read(&key_text::write(&read.key, &matrix), &matrix, &Links::default());
    assert_eq!(again.key.couplets.len(), 7);
}
