//! A row a leaf, with a unit and a ± for each measure.

use spinney_model::{
    Arrangement, BaseForm, BaseSides, Edge, EdgeKind, EdgeUnseen, Ends, LeafForm, LeafLines,
    LeafNote, Leaflets, Lobes, Measure, MeasuredLeaf, NoScale, NotMeasured, OneSide,
    PictureScale, Sinuses, TeethPerCm, TipForm, VeinPairs, Veins, VeinsUnseen, WhichSide,
    WithPlusMinus,
};

use super::*;

/// A leaf of which only the length is known.
pub(crate) fn one_leaf(scale: PictureScale) -> MeasuredPicture {
    let measures = Measurand::ALL.map(|what| match (what, scale.mm()) {
        (Measurand::BladeLength, Some(_)) => {
            Ok(Measure { what, value: 62.3149, plus_minus: 0.42 })
        }
        (Measurand::BladeLength, None) => Err((what, NotMeasured::NoScale)),
        (Measurand::Roundness, _) => Ok(Measure { what, value: 0.5, plus_minus: 0.031 }),
        _ => Err((what, NotMeasured::NoStalk)),
    });
    let lines = LeafLines {
        outline: vec![[10.0, 10.0], [20.25, 10.0], [15.0, 30.0]],
        blade: Vec::new(),
        midrib: vec![[15.0, 30.0], [15.0, 10.0]],
        width: [[10.0, 10.0], [20.25, 10.0]],
        stalk: Vec::new(),
        cut: None,
    };
    let notes = vec![LeafNote::BaseGuessed, LeafNote::Holes];
    let leaf = MeasuredLeaf {
        number: 1,
        measures: measures.into(),
        form: lobed(),
        notes,
        harmonics: Vec::new(),
        lines,
    };
    MeasuredPicture { scale, leaves: vec![leaf], ..MeasuredPicture::of((40, 50)) }
}

/// Five lobes with teeth.
fn lobed() -> LeafForm {
    let tips = vec![[1.0, 2.0]; 5];
    let arrangement = Some(Arrangement::Feather);
    let places = vec![[2.0, 3.0]; 4];
    let sinuses = Sinuses { depth: 0.5214, plus_minus: 0.061, arrangement, places };
    let per_cm = Some(TeethPerCm { value: 2.518, plus_minus: 0.13 });
    let teeth = [vec![[1.0, 2.0]; 12], vec![[1.0, 2.0]; 9]];
    let edge = Edge { kind: EdgeKind::Toothed, teeth, per_cm };
    let lobes = Some(Lobes { tips, sinuses: Some(sinuses) });
    let veins = Err(VeinsUnseen::NotLookedFor);
    LeafForm { leaflets: None, lobes, edge: Ok(edge), ends: None, veins }
}

#[test]
fn a_leaf_is_a_row_and_what_is_not_known_is_a_question_mark() {
    let known = one_leaf(PictureScale::Said { dpi: 300.0 });
    let unknown = one_leaf(PictureScale::Unknown(NoScale::NotSaid));
    let text = csv(&[("a, b.png".to_owned(), known), ("c.png".to_owned(), unknown)]);
    let rows: Vec<&str> = text.lines().collect();
    let heading = "picture,leaf,dpi,scale,blade length (mm),± blade length,blade width (mm),";
    assert!(rows[0].starts_with(heading), "{}", rows[0]);
    assert!(rows[0].contains(",blade area (mm²),± blade area,"), "{}", rows[0]);
    let first = "\"a, b.png\",1,300,said,62.31,0.42,?,?,?,?,?,?,?,?,?,?,?,?,?,?,0.5,0.031,";
    assert_eq!(
        rows[1],
        format!(
            "{first}-,-,-,5,feather,0.521,0.061,toothed,12,9,2.52,0.13,-,-,-,-,-,-,-,-,-,-,-,-,-,?,?,?,base guessed; holes"
        )
    );
    assert!(rows[2].starts_with("c.png,1,?,not said,?,?,"), "{}", rows[2]);
    let columns = |row: &str| row.matches(',').count();
    assert_eq!(columns(rows[0]), columns(rows[2]));
}

#[test]
fn what_a_leaf_has_none_of_is_no_question_mark() {
    let middles = vec![[1.0, 2.0]; 9];
    let leaflets = Leaflets { middles, arrangement: Arrangement::Feather, at_end: Some(true) };
    let mut form = LeafForm {
        leaflets: Some(leaflets),
        lobes: None,
        edge: Err(EdgeUnseen::TooCoarse),
        ends: None,
        veins: Err(VeinsUnseen::NotLookedFor),
    };
    let said = |form: &LeafForm| form::cells(form).join(",");
    let none = ",-,-,-,-,-,-,-,-,-,-,-,-,-,?,?,?";
    assert_eq!(said(&form), format!("9,feather,yes,-,-,-,-,?,?,?,?,?{none}"));
    form.edge = Ok(Edge { kind: EdgeKind::Entire, teeth: Default::default(), per_cm: None });
    assert_eq!(said(&form), format!("9,feather,yes,-,-,-,-,entire,0,0,0,-{none}"));
    form.ends = Some(Ends {
        widest: WithPlusMinus { value: 0.3812, plus_minus: 0.044 },
        base: BaseForm::HeartShaped,
        base_angle: None,
        tip: TipForm::DrawnOut,
        tip_angle: Some(WithPlusMinus { value: 48.27, plus_minus: 3.1 }),
        sides: BaseSides { behind: false, lower: None, wider: None },
    });
    let ends = said(&form).split_off(said(&form).find("0.381").expect("it is there"));
    assert_eq!(ends, "0.381,0.044,heart-shaped,-,-,?,?,?,?,?,drawn out,48.3,3.1,?,?,?");
    let side = |value, which| {
        Some(OneSide { value: WithPlusMinus { value, plus_minus: 0.004 }, which: Some(which) })
    };
    let mut told = |lower, wider| {
        let ends = form.ends.as_mut().expect("it was said");
        ends.sides = BaseSides { behind: false, lower, wider };
        said(&form)
    };
    let neither = told(side(0.002, WhichSide::Neither), side(0.51, WhichSide::Neither));
    assert!(neither.contains(",alike,0.002,0.004,0.51,0.004,"), "{neither}");
    let lower = told(side(0.0812, WhichSide::Left), None);
    assert!(lower.contains(",one further down,0.0812,0.004,?,?,"), "{lower}");
    let both = told(side(0.0812, WhichSide::Left), side(0.62, WhichSide::Right));
    assert!(both.contains(",one further down and one wider,"), "{both}");
    assert!(told(None, side(0.5, WhichSide::Neither)).contains(",?,?,?,0.5,"));
    let line = vec![[1.0, 2.0], [3.0, 4.0]];
    let sides = [vec![line.clone(); 9], vec![line.clone(); 8]];
    let mut veins = Veins { main: line, sides, pairs: Some(VeinPairs::Alternate) };
    form.veins = Ok(veins.clone());
    assert!(said(&form).ends_with(",9,8,alternate"), "{}", said(&form));
    veins.pairs = None;
    form.veins = Ok(veins);
    assert!(said(&form).ends_with(",9,8,?"), "{}", said(&form));
}
