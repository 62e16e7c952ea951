//! Measures are said with no more digits than they are sure of, in each language.

use std::collections::BTreeSet;

use spinney_model::{
    Arrangement, BaseForm, BaseSides, Edge, EdgeKind, EdgeUnseen, Ends, LeafForm, Leaflets,
    Lobes, OneSide, Sinuses, TeethPerCm, TipForm, VeinPairs, Veins, VeinsUnseen,
    WhichSide::{self, Left, Neither, Right},
    WithPlusMinus,
};

use super::*;

fn said(t: Tongue, what: Measurand, value: f64, plus_minus: f64) -> String {
    measure(t, &Measure { what, value, plus_minus })
}

#[test]
fn a_measure_is_rounded_to_its_plus_minus() {
    let t = Tongue::of_terminal();
    let length = |value, half| said(t, Measurand::BladeLength, value, half);
    assert_eq!(length(62.3149, 0.42), "blade length 62.3 ± 0.4 mm");
    assert_eq!(length(62.3149, 0.13), "blade length 62.31 ± 0.13 mm");
    assert_eq!(length(62.3149, 2.6), "blade length 62 ± 3 mm");
    assert_eq!(length(1234.5, 31.0), "blade length 1230 ± 30 mm");
    assert_eq!(said(t, Measurand::Roundness, 0.8123, 0.02), "roundness 0.81 ± 0.02");
    let german = Tongue::for_person(&["de".to_owned()]);
    let area = said(german, Measurand::BladeArea, 1841.4, 7.7);
    assert_eq!(area, "Fläche der Spreite 1841 ± 8 mm²");
    let length = said(german, Measurand::StalkLength, 12.06, 0.52);
    assert_eq!(length, "Länge des Stiels 12,1 ± 0,5 mm");
}

#[test]
fn every_note_scale_and_error_has_words_of_its_own_in_each_language() {
    let scales = [
        PictureScale::Said { dpi: 300.0 },
        PictureScale::OfRuler { dpi: 300.0 },
        PictureScale::OfFile { dpi: 300.0, doubt: None },
        PictureScale::OfFile { dpi: 72.0, doubt: Some(Doubt::Usual) },
        PictureScale::OfCard { dpi: 212.4, off: 0.08 },
        PictureScale::OfStrip { dpi: 212.4, off: 0.08, unsure: 0.013 },
        PictureScale::Unknown(NoScale::NotSaid),
        PictureScale::Unknown(NoScale::Camera),
        PictureScale::Unknown(NoScale::NotSquare),
        PictureScale::Unknown(NoScale::Rings),
        PictureScale::Unknown(NoScale::TooLarge { dpi: 72.0, longer: 1237.6 }),
    ];
    let mut all = BTreeSet::new();
    let mut count = 0;
    for t in Tongue::all() {
        let mut said = Vec::new();
        for scale in scales {
            let shown = MeasuredPicture { scale, ..MeasuredPicture::of((9, 9)) };
            said.push(picture(t, "oak.png", &shown));
        }
        {
            let shown = MeasuredPicture { halved: true, ..MeasuredPicture::of((9, 9)) };
            said.push(picture(t, "oak.png", &shown));
        }
        for note in [
            LeafNote::BaseGuessed,
            LeafNote::Holes,
            LeafNote::FaintEdge,
            LeafNote::TwoStalks,
            LeafNote::CutApart,
            LeafNote::Mended,
            LeafNote::Rubbed,
        ] {
            said.push(leaf_note(t, note));
        }
        for what in LeftOut::ALL {
            said.extend([1, 3].map(|count| left_out(t, &[(what, count)])));
        }
        for error in [
            PictureError::NotRead,
            PictureError::TooLarge { most: 40_000_000 },
            PictureError::NothingThere,
        ] {
            let (sentence, remedy) = picture_error(t, "oak.png", error);
            said.extend([sentence, remedy]);
        }
        said.extend(Measurand::ALL.map(|what| measurand(t, what)));
        said.extend(EdgeKind::ALL.map(|kind| edge_kind(t, kind)));
        said.extend(BaseForm::ALL.map(|form| base_form(t, form)));
        said.extend(TipForm::ALL.map(|form| tip_form(t, form)));
        count += said.len();
        all.extend(said);
    }
    assert_eq!(all.len(), count, "{all:?}");
    assert!(all.iter().any(|text| text.contains("124 cm")));
    assert_eq!(left_out(Tongue::of_terminal(), &[]), "");
}

/// What is said of a base by which of its sides reaches further down, and which is wider.
fn sides(t: Tongue, lower: Option<WhichSide>, wider: Option<WhichSide>) -> Vec<String> {
    let value = WithPlusMinus { value: 0.081, plus_minus: 0.006 };
    let side = |which| Some(OneSide { value, which });
    let ends = Ends {
        widest: value,
        base: BaseForm::Rounded,
        base_angle: None,
        tip: TipForm::Pointed,
        tip_angle: None,
        sides: BaseSides { behind: false, lower: side(lower), wider: side(wider) },
    };
    let form = form(
        t,
        &LeafForm {
            leaflets: None,
            lobes: None,
            edge: Err(EdgeUnseen::TooCoarse),
            ends: Some(ends),
            veins: Err(VeinsUnseen::NotLookedFor),
        },
    );
    form[2..form.len() - 2].to_vec()
}

#[test]
fn each_leaf_that_was_cut_apart_has_a_line_that_puts_it_back() {
    for t in Tongue::all() {
        let said = cut_apart(t, &[1, 3, 2]);
        let places = ["leaf 3 is part of leaf 1", "leaf 2 is part of leaf 1"]
            .map(|line| said.find(line).expect("a line for each"));
        assert!(places[0] < places[1], "in the order in which they hang together: {said}");
        assert!(cut_apart(t, &[4, 5]).contains("leaf 5 is part of leaf 4"));
        assert_eq!(cut_apart(t, &[4]), "");
    }
}

#[test]
fn a_form_is_said_in_each_language() {
    let teeth = [vec![[0.0; 2]; 12], vec![[0.0; 2]; 9]];
    let per_cm = Some(TeethPerCm { value: 2.518, plus_minus: 0.13 });
    let edge = Edge { kind: EdgeKind::Toothed, teeth, per_cm };
    let sinuses = Sinuses {
        depth: 0.521,
        plus_minus: 0.061,
        arrangement: Some(Arrangement::Hand),
        places: Vec::new(),
    };
    let lobes = Some(Lobes { tips: vec![[0.0; 2]; 5], sinuses: Some(sinuses) });
    let lobed = LeafForm {
        leaflets: None,
        lobes,
        edge: Ok(edge.clone()),
        ends: None,
        veins: Err(VeinsUnseen::NotLookedFor),
    };
    let (english, german) = (Tongue::of_terminal(), Tongue::for_person(&["de".to_owned()]));
    assert_eq!(
        form(english, &lobed).join(" · "),
        "5 lobes from one place · deepest gap 52 ± 6 % of the way in · edge toothed \
         · teeth: 12 on the left, 9 on the right · 2.52 ± 0.13 in a cm"
    );
    assert_eq!(
        form(german, &lobed).join(" · "),
        "5 Lappen, die von einem Punkt ausgehen · tiefste Bucht zu 52 ± 6 % eingeschnitten · Rand gezähnt \
         · Zähne: 12 links, 9 rechts · 2,52 ± 0,13 auf 1 cm"
    );
    let middles = vec![[0.0; 2]; 9];
    let arrangement = Arrangement::Feather;
    let leaflets = Some(Leaflets { middles, arrangement, at_end: Some(true) });
    let compound = LeafForm {
        leaflets,
        lobes: None,
        edge: Err(EdgeUnseen::TooCoarse),
        ends: None,
        veins: Err(VeinsUnseen::NotLookedFor),
    };
    let said = form(english, &compound);
    assert_eq!(said[..2], ["9 leaflets like a feather", "one of them at the end"]);
    assert!(said[2].contains("300 dots per inch"), "{said:?}");
    let ends = Ends {
        widest: WithPlusMinus { value: 0.3812, plus_minus: 0.044 },
        base: BaseForm::Rounded,
        base_angle: Some(WithPlusMinus { value: 131.4, plus_minus: 4.2 }),
        tip: TipForm::Notched,
        tip_angle: None,
        sides: BaseSides { behind: false, lower: None, wider: None },
    };
    let whole = LeafForm { ends: Some(ends), ..compound };
    assert_eq!(
        form(english, &whole)[3..],
        [
            "base rounded (131 ± 4°)",
            "whether both sides of the base are the same can't be told here",
            "tip notched",
            "widest 38 ± 4 % of the way up"
        ]
    );
    // Near a right angle nobody can say which of two forms it is.
    let near = Some(WithPlusMinus { value: 88.0, plus_minus: 4.2 });
    let ends = whole.ends.expect("it has ends");
    let ends = Ends { base_angle: near, tip: TipForm::Pointed, tip_angle: near, ..ends };
    let between = form(english, &LeafForm { ends: Some(ends), ..whole.clone() });
    assert_eq!(between[3], "base rounded or wedge-shaped (88 ± 4°)");
    assert_eq!(between[5], "tip pointed or rounded (88 ± 4°)");
    assert_eq!(
        sides(english, Some(Neither), Some(Neither)),
        ["base about the same on both sides"]
    );
    let height = "both sides of the base start at about the same height";
    assert_eq!(sides(english, Some(Neither), None), [height]);
    assert_eq!(
        sides(english, Some(Left), Some(Right)),
        [
            "base reaches further down on the left (by 8.1 ± 0.6 % of the blade's length)",
            "base wider on the right (which has 8.1 ± 0.6 % of the width)"
        ]
    );
    assert_eq!(
        sides(german, Some(Right), Some(Neither)),
        [
            "Blattgrund reicht rechts weiter hinunter (um 8,1 ± 0,6 % der Länge der Blattspreite)"
        ]
    );
    let all: BTreeSet<Vec<String>> = [None, Some(Neither), Some(Left), Some(Right)]
        .into_iter()
        .flat_map(|lower| [None, Some(Neither), Some(Left)].map(|wider| (lower, wider)))
        .map(|(lower, wider)| sides(german, lower, wider))
        .collect();
    // Where one is lower, nothing is said of a width that is alike or not told.
    assert_eq!(all.len(), 12 - 3, "{all:?}");
    let line = vec![[0.0; 2]; 2];
    let sides = [vec![line.clone(); 9], vec![line.clone(); 8]];
    let veins = Ok(Veins { main: line, sides, pairs: Some(VeinPairs::Alternate) });
    let veined = LeafForm { ends: None, veins, ..whole.clone() };
    assert_eq!(
        form(english, &veined)[3..],
        ["side veins: 9 on the left, 8 on the right", "side veins in turn, left and right"]
    );
    assert_eq!(
        form(german, &veined)[3..],
        ["Seitennerven: 9 links, 8 rechts", "Seitennerven abwechselnd links und rechts"]
    );
    let faint = LeafForm { ends: None, veins: Err(VeinsUnseen::Faint), ..whole };
    assert_eq!(form(english, &faint)[3..], ["side veins can't be seen clearly in this scan"]);
}
