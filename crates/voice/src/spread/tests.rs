//! Every sentence in both languages, as somebody reads it. The numbers are invented.

use spinney_model::{
    Cell, CellAt, Character, CharacterIx, Cut, Matrix, Outlier, Quantity, Scale, Scene,
    Specimen, Specimens, SpreadOf, Taxon, TaxonIx, Trust, Unit, Value,
};

use super::{cut, of_kind, outliers, rows};
use crate::Tongue;

fn mm(number: i64) -> Quantity {
    Quantity::from_thousandths(number * 1000)
}

fn table() -> (Matrix, Specimens) {
    let scale = Scale::Measure { unit: Unit::Millimetres, gap: mm(5) };
    let characters = vec![Character::named("blade length", scale)];
    let matrix = |names: &[&str]| {
        let rows = vec![vec![Cell::from(Value::Unknown)]; names.len()];
        let taxa = names.iter().copied().map(Taxon::named).collect();
        Matrix::new(Scene::default(), taxa, characters.clone(), rows).expect("it fits")
    };
    let written = |row: u32, find: &str, picture: &str| Specimen {
        kind: TaxonIx(0),
        at: CellAt { sheet: "leaves".to_owned(), row, column: 0 },
        find: find.to_owned(),
        picture: picture.to_owned(),
        plant: String::new(),
        place: String::new(),
        when: String::new(),
        part: String::new(),
    };
    let written = vec![written(1, "", ""), written(2, "3", ""), written(3, "4", "oak.png")];
    (matrix(&["hazel", "lime"]), Specimens { finds: matrix(&["hazel"; 3]), written })
}

fn spread(finds: usize, deviation: Option<f64>) -> SpreadOf {
    SpreadOf {
        taxon: TaxonIx(0),
        character: CharacterIx(0),
        part: None,
        finds,
        plants: None,
        least: mm(61),
        most: mm(104),
        mean: 80.04,
        deviation,
        outliers: Vec::new(),
    }
}

fn tongues() -> [Tongue; 2] {
    ["en", "de"].map(|tag| Tongue::for_person(&[tag.to_owned()]))
}

#[test]
fn a_kind_has_its_ends_its_mean_and_on_how_many_it_rests() {
    let (matrix, specimens) = table();
    let [english, german] = tongues();
    assert_eq!(rows(english, &matrix, &specimens), "3 rows of 2 kinds.");
    assert_eq!(rows(german, &matrix, &specimens), "3 Zeilen, 2 Arten.");
    let many = SpreadOf { plants: Some(1), ..spread(12, Some(7.42)) };
    assert_eq!(
        of_kind(english, &matrix, &many),
        "hazel: 61 to 104 mm, mean 80 mm, standard deviation 7.4 mm (12 measured on 1 plant)"
    );
    let sun = SpreadOf { part: Some("sun".to_owned()), ..spread(12, Some(0.123)) };
    assert_eq!(
        of_kind(german, &matrix, &sun),
        "sun: 61 bis 104 mm, Mittelwert 80,04 mm, Standardabweichung 0,12 mm (12 gemessen)"
    );
    assert_eq!(of_kind(english, &matrix, &spread(1, None)), "hazel: 61 mm (1 measured)");
}

#[test]
fn what_is_far_from_the_others_is_named_by_its_row() {
    let (matrix, specimens) = table();
    let [english, german] = tongues();
    let outlier = |find: usize| Outlier { find, value: mm(160), far: true };
    let three = SpreadOf { outliers: [0, 1, 2].map(outlier).into(), ..spread(12, Some(1.0)) };
    assert_eq!(
        outliers(english, &matrix, &specimens, &three).as_deref(),
        Some(
            "Far from the others: 160 mm (row 2); 160 mm (row 3, number 3); 160 mm (row 4, \
             number 4 in oak.png). Measure them again, or see whether they are another kind. \
             They count until you change them."
        )
    );
    let one = SpreadOf { outliers: vec![outlier(1)], ..three.clone() };
    assert_eq!(
        outliers(german, &matrix, &specimens, &one).as_deref(),
        Some(
            "Weit weg von den anderen: 160 mm (Zeile 3, Nummer 3). Messt diesen Fund nach, oder \
             seht nach, ob er von einer anderen Art ist. Er zählt mit, bis ihr ihn ändert."
        )
    );
    let many = SpreadOf { outliers: vec![outlier(0); 9], ..three };
    let said = outliers(english, &matrix, &specimens, &many).expect("nine");
    assert!(said.contains("160 mm (row 2); …. Measure them again"), "{said}");
    assert_eq!(outliers(english, &matrix, &specimens, &spread(3, None)), None);
}

fn between() -> Cut {
    Cut {
        character: CharacterIx(0),
        taxa: [TaxonIx(0), TaxonIx(1)],
        at: mm(71),
        finds: [12, 10],
        wrong: [0, 0],
        left_out: Some([0, 0]),
        normal: [Some(0.004), Some(0.002)],
        margin: Some(mm(11)),
        trust: [Trust::More(6), Trust::Enough],
    }
}

#[test]
fn a_cut_says_what_is_on_which_side_and_what_it_takes_to_trust_it() {
    let (matrix, _) = table();
    let [english, german] = tongues();
    assert_eq!(
        cut(english, &matrix, &between()),
        [
            "hazel or lime? “blade length”: 71 mm or more is lime, less is hazel.",
            "All 22 are on the right side. The safety margin is 11 mm.",
            "Each left out once comes out right. Of 10 that is not much: up to 26 in 100 more may \
             still come out wrong.",
            "If the numbers of both kinds follow the normal curve, about 0.3 in 100 more are on the wrong side.",
            "Measure 6 more of hazel before you trust this.",
        ]
    );
    let wrong = Cut {
        wrong: [1, 2],
        left_out: Some([2, 2]),
        margin: None,
        trust: [Trust::Never, Trust::More(3)],
        ..between()
    };
    assert_eq!(
        cut(german, &matrix, &wrong)[1..],
        [
            "Auf der falschen Seite: 1 von 12 (hazel), 2 von 10 (lime). Es gibt keinen \
             Sicherheitsabstand.",
            "Lässt man jeden Fund einmal weg, kommen 18 von 100 falsch heraus.",
            "Sind beide Arten normalverteilt, liegen von 100 weiteren etwa 0,3 auf der falschen \
             Seite.",
            "Traut dem nicht, so viele ihr auch messt: Auch wenn weitere Funde so ausfallen wie diese, \
             liegen mehr als 5 von 100 auf der falschen Seite (hazel).",
        ]
    );
    let few = Cut { left_out: None, normal: [None, Some(0.1)], ..between() };
    assert_eq!(cut(english, &matrix, &few).len(), 3);
    let both = Cut { trust: [Trust::More(6), Trust::More(1)], ..between() };
    let said = cut(english, &matrix, &both).pop().expect("what it takes");
    assert_eq!(said, "Measure 6 more of hazel and 1 more of lime before you trust this.");
    let enough = Cut { trust: [Trust::Enough; 2], ..between() };
    let said = cut(german, &matrix, &enough).pop().expect("what it takes");
    assert_eq!(said, "Es wurde genug gemessen, um dem zu trauen.");
    let endless = Cut { trust: [Trust::TooMany, Trust::Enough], ..between() };
    let said = cut(english, &matrix, &endless).pop().expect("what it takes");
    assert!(said.starts_with("It would take more than 300 of hazel"), "{said}");
}
