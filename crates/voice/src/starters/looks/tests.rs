//! What a form says of the questions, in the words of the columns.

use spinney_model::{Edge, EdgeUnseen, Leaflets, Lobes, Sinuses, VeinsUnseen, WithPlusMinus};

use super::*;

fn form() -> LeafForm {
    let edge = Edge { kind: EdgeKind::Entire, teeth: [Vec::new(), Vec::new()], per_cm: None };
    let ends = Ends {
        widest: WithPlusMinus { value: 0.3, plus_minus: 0.05 },
        base: BaseForm::HeartShaped,
        base_angle: None,
        tip: TipForm::DrawnOut,
        tip_angle: None,
    };
    LeafForm {
        leaflets: None,
        lobes: Some(Lobes { tips: vec![[0.0, 0.0]], sinuses: None }),
        edge: Ok(edge),
        ends: Some(ends),
        veins: Err(VeinsUnseen::NotLookedFor),
    }
}

fn with_edge(kind: EdgeKind) -> LeafForm {
    let mut form = form();
    form.edge = form.edge.map(|edge| Edge { kind, ..edge });
    form
}

/// What is said of all questions, in the order of the columns; `-`: nothing.
fn said(form: &LeafForm, t: Tongue) -> String {
    let one = |id: &str| {
        let starter = Starter::named(id).expect("a question to begin with");
        Look::of(form, id).and_then(|look| look.text(starter, t)).unwrap_or("-".into())
    };
    SEEN.map(one).join(", ")
}

#[test]
fn a_plain_leaf_says_all_of_it_in_the_words_of_the_columns() {
    let t = Tongue::of_terminal();
    let plain =
        "in one piece, n/a, unlobed, n/a, smooth, n/a, near the stalk, pointed, heart-shaped";
    assert_eq!(said(&form(), t), plain);
    let german = Tongue::for_person(&["de".to_owned()]);
    let plain = "aus einem Stück, n/a, nicht gelappt, n/a, glatt, n/a, nahe am Stiel, spitz, herzförmig";
    assert_eq!(said(&form(), german), plain);
}

#[test]
fn leaflets_are_counted_and_leave_nothing_to_ask_of_the_blade() {
    let leaflets =
        Leaflets { middles: vec![[0.0; 2]; 5], arrangement: Arrangement::Hand, at_end: None };
    let form = LeafForm {
        leaflets: Some(leaflets),
        lobes: None,
        ends: None,
        ..with_edge(EdgeKind::Toothed)
    };
    let hand = "like a hand, 5, n/a, n/a, toothed, one size, n/a, -, n/a";
    assert_eq!(said(&form, Tongue::of_terminal()), hand);
}

#[test]
fn what_the_outline_does_not_tell_stays_open() {
    let sinuses = |arrangement| {
        Some(Sinuses { depth: 0.5, plus_minus: 0.1, arrangement, places: vec![[0.0; 2]; 2] })
    };
    let lobed = |arrangement| LeafForm {
        lobes: Some(Lobes { tips: vec![[0.0; 2]; 3], sinuses: sinuses(arrangement) }),
        ends: None,
        ..with_edge(EdgeKind::ToothedOrDouble)
    };
    let t = Tongue::of_terminal();
    let open = "in one piece, n/a, lobed, -, toothed, -, -, -, -";
    assert_eq!(said(&lobed(None), t), open);
    for (arrangement, states) in
        [(Arrangement::Hand, "from one place"), (Arrangement::Feather, "along the midrib")]
    {
        assert_eq!(said(&lobed(Some(arrangement)), t), open.replacen('-', states, 1));
    }
    let unseen = LeafForm { edge: Err(EdgeUnseen::TooCoarse), ..form() };
    assert_eq!(Look::of(&unseen, "leaf-edge"), None);
    assert_eq!(Look::of(&unseen, "teeth-sizes"), None);
    let cut_off = |widest| {
        let ends =
            Ends { widest, base: BaseForm::CutOff, ..form().ends.expect("a plain leaf") };
        LeafForm { ends: Some(ends), ..form() }
    };
    let at = |value, plus_minus| cut_off(WithPlusMinus { value, plus_minus });
    assert_eq!(Look::of(&at(0.5, 0.1), "leaf-base"), None);
    assert_eq!(Look::of(&at(0.5, 0.05), "widest-part"), Some(Look::State(1)));
    assert_eq!(Look::of(&at(0.65, 0.04), "widest-part"), Some(Look::State(2)));
    assert_eq!(Look::of(&at(0.58, 0.05), "widest-part"), None, "it may lie in either");
}

#[test]
fn every_state_that_is_said_is_one_of_the_column() {
    let states = |id: &str| Starter::named(id).map(|it| it.states(Tongue::of_terminal()).len());
    assert!(SEEN.iter().all(|id| states(id).is_some()));
    for kind in EdgeKind::ALL {
        let said = Look::of(&with_edge(kind), "leaf-edge").expect("an edge that was seen");
        let Look::State(at) = said else { panic!("{said:?}") };
        assert!(Some(at) < states("leaf-edge"));
    }
}
