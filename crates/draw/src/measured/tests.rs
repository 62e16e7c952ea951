//! A measured leaf is drawn in its true size, and not at all where nothing is known.

use spinney_model::{
    Arrangement, Drawing, EdgeUnseen, LeafForm, LeafLines, Lobes, Sinuses, VeinPairs, Veins,
    VeinsUnseen, Weight,
};

use super::of_measured;

/// 300 dots per inch.
const MM: f64 = 25.4 / 300.0;

/// An ellipse with a point, lying on its side: 60 mm long and 30 mm wide, with a stalk of 20 mm.
fn lines() -> LeafLines {
    let around = |at: usize| {
        let turn = std::f64::consts::TAU * at as f64 / 2000.0;
        // A scanner's steps: half a pixel to and fro.
        let step = if at.is_multiple_of(2) { 0.25 } else { -0.25 };
        [400.0 + (30.0 / MM) * (1.0 - turn.cos()), 300.0 + (15.0 / MM) * turn.sin() + step]
    };
    let blade: Vec<[f64; 2]> = (0..2000).map(around).collect();
    let end = [400.0 - 20.0 / MM, 300.0];
    LeafLines {
        outline: blade.clone(),
        midrib: (0..=48).map(|at| [400.0 + f64::from(at) * 1.25 / MM, 300.0]).collect(),
        width: [[400.0, 300.0]; 2],
        stalk: (0..=30).map(|at| [end[0] + f64::from(at) * 20.0 / 30.0 / MM, 300.0]).collect(),
        cut: Some([blade[12], blade[1988]]),
        blade,
    }
}

fn plain() -> LeafForm {
    LeafForm {
        leaflets: None,
        lobes: Some(Lobes { tips: vec![[0.0; 2]], sinuses: None }),
        edge: Err(EdgeUnseen::TooCoarse),
        ends: None,
        veins: Err(VeinsUnseen::Faint),
    }
}

fn span(drawing: &Drawing, weight: Weight, side: usize) -> f64 {
    let strokes = drawing.strokes.iter().filter(|stroke| stroke.weight == weight);
    let places = strokes.flat_map(|stroke| &stroke.points);
    let places = places.map(|point| if side == 0 { point.0 } else { point.1 });
    let ends = places.fold((f64::MAX, f64::MIN), |(low, high), at| (low.min(at), high.max(at)));
    ends.1 - ends.0
}

#[test]
fn it_stands_upright_in_its_true_size() {
    let drawing = of_measured(&lines(), &plain(), Some(MM)).expect("all is known");
    // The outline alone: the stalk, of another pen, is longer than its width.
    assert!((span(&drawing, Weight::Outline, 0) - 30.0).abs() < 0.1);
    let [_, top, width, height] = drawing.frame;
    assert!((height - 80.0 - 3.0).abs() < 0.15, "{height}");
    assert!((width - 30.0 - 3.0).abs() < 0.15, "{width}");
    // The tip is above.
    assert!((top + 61.5).abs() < 0.15, "{top}");
    assert!(drawing.strokes.is_sorted_by_key(|stroke| stroke.weight));
}

#[test]
fn teeth_stay_sharp() {
    let mut lines = lines();
    lines.cut = None;
    // Forty teeth of 1.5 mm, of straight sides.
    for (at, point) in lines.blade.iter_mut().enumerate() {
        let turn = std::f64::consts::TAU * at as f64 / 2000.0;
        let tooth = (at % 50) as f64 / 50.0 * 1.5 / MM;
        *point = [point[0] - turn.cos() * tooth, point[1] + turn.sin() * tooth];
    }
    let drawing = of_measured(&lines, &plain(), Some(MM)).expect("all is known");
    let outline = drawing.strokes.iter().find(|stroke| stroke.weight == Weight::Outline);
    let outline = &outline.expect("there is an outline").points;
    // Each tip is still there, to a fifth of a millimetre.
    for at in (49..2000).step_by(50) {
        let [x, y] = lines.blade[at];
        // On its side, the tip to the right: upright, right is down.
        let tip = ((y - 300.0) * MM, -(x - 400.0) * MM);
        let near = outline.iter().map(|point| super::distance(*point, tip));
        let near = near.fold(f64::MAX, f64::min);
        assert!(near < 0.25, "{at}: {near}");
    }
}

#[test]
fn side_veins_are_drawn_where_they_were_seen_and_begin_at_the_main_vein() {
    let lines = lines();
    let main = lines.midrib.clone();
    let vein = |at: usize, way: f64| -> Vec<[f64; 2]> {
        let [x, y] = main[at];
        (0..10)
            .map(|step| f64::from(step) * 10.0)
            .map(|s| [x + s, y + way * s + 2.0 * way])
            .collect()
    };
    let sides = [vec![vein(10, -1.0), vein(20, -1.0)], vec![vein(10, 1.0), vein(20, 1.0)]];
    let pairs = Some(VeinPairs::Opposite);
    let seen = LeafForm { veins: Ok(Veins { main, sides, pairs }), ..plain() };
    let with = of_measured(&lines, &seen, Some(MM)).expect("all is known");
    let without = of_measured(&lines, &plain(), Some(MM)).expect("all is known");
    assert_eq!(with.strokes.len(), without.strokes.len() + 4);
    let fine = with.strokes.iter().filter(|stroke| stroke.weight == Weight::Fine);
    let feet = fine.filter(|stroke| stroke.points[0].0.abs() < 1e-6);
    assert!(feet.count() >= 4);
}

#[test]
fn what_is_not_known_is_not_drawn() {
    assert_eq!(of_measured(&lines(), &plain(), None), None);
    assert_eq!(
        of_measured(&LeafLines { midrib: Vec::new(), ..lines() }, &plain(), Some(MM)),
        None
    );
    let count = |form: &LeafForm| {
        let drawing = of_measured(&lines(), form, Some(MM)).expect("all is known");
        drawing.strokes.iter().filter(|stroke| stroke.weight == Weight::Midrib).count()
    };
    let lobed = |arrangement| {
        let places = vec![[0.0; 2]; 4];
        let sinuses = Some(Sinuses { depth: 0.5, plus_minus: 0.1, arrangement, places });
        let lobes = Some(Lobes { tips: vec![[0.0; 2]; 5], sinuses });
        LeafForm { lobes, veins: Err(VeinsUnseen::NotLookedFor), ..plain() }
    };
    assert_eq!(count(&plain()), 1);
    assert_eq!(count(&lobed(Some(Arrangement::Feather))), 1);
    assert_eq!(count(&lobed(Some(Arrangement::Hand))), 0);
    assert_eq!(count(&LeafForm { lobes: None, ..plain() }), 0);
}
