//! What a form says of the questions, in the words of the columns.

use spinney_model::{
    BaseSides, Edge, EdgeUnseen, Leaflets, Lobes, OneSide, Sinuses, VeinsUnseen, WithPlusMinus,
};

use super::*;

fn form() -> LeafForm {
    let edge = Edge { kind: EdgeKind::Entire, teeth: [Vec::new(), Vec::new()], per_cm: None };
    let ends = Ends {
        widest: WithPlusMinus { value: 0.3, plus_minus: 0.05 },
        base: BaseForm::HeartShaped,
        base_angle: None,
        tip: TipForm::DrawnOut,
        tip_angle: None,
        sides: BaseSides { behind: false, lower: None, wider: None },
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
    let plain = "in one piece, n/a, unlobed, n/a, smooth, n/a, near the stalk, pointed, heart-shaped, -";
    assert_eq!(said(&form(), t), plain);
    let german = Tongue::for_person(&["de".to_owned()]);
    let plain = "aus einem Stück, n/a, nicht gelappt, n/a, glatt, n/a, nahe am Stiel, spitz, herzförmig, -";
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
    let hand = "like a hand, 5, n/a, n/a, toothed, one size, n/a, -, n/a, n/a";
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
    let open = "in one piece, n/a, lobed, -, toothed, -, -, -, -, -";
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

/// Every form that there is, in the words of both languages: the states of a message keep their order.
#[test]
fn every_form_has_its_word_in_each_language() {
    let in_ends = |base, tip| {
        let ends = Ends { base, tip, ..form().ends.expect("a plain leaf") };
        LeafForm { ends: Some(ends), ..form() }
    };
    let of_edge = |kind| ("leaf-edge", with_edge(kind));
    let of_tip = |tip| ("leaf-tip", in_ends(BaseForm::Rounded, tip));
    let of_base = |base| ("leaf-base", in_ends(base, TipForm::Pointed));
    let of_pieces = |arrangement| {
        let leaflets = Leaflets { middles: vec![[0.0; 2]; 7], arrangement, at_end: None };
        ("leaf-form", LeafForm { leaflets: Some(leaflets), ..form() })
    };
    let of_place = |value| {
        let widest = WithPlusMinus { value, plus_minus: 0.05 };
        let ends = Ends { widest, ..form().ends.expect("a plain leaf") };
        ("widest-part", LeafForm { ends: Some(ends), ..form() })
    };
    let german = Tongue::for_person(&["de".to_owned()]);
    for ((question, form), english_word, german_word) in [
        (of_edge(EdgeKind::Entire), "smooth", "glatt"),
        (of_edge(EdgeKind::Toothed), "toothed", "gezähnt"),
        (of_edge(EdgeKind::DoubleToothed), "toothed", "gezähnt"),
        (of_edge(EdgeKind::ToothedOrDouble), "toothed", "gezähnt"),
        (of_edge(EdgeKind::Wavy), "wavy", "gewellt"),
        (of_edge(EdgeKind::Spiny), "spiny", "stachelig"),
        (("teeth-sizes", with_edge(EdgeKind::DoubleToothed)), "two sizes", "zwei Größen"),
        (of_tip(TipForm::Pointed), "pointed", "spitz"),
        (of_tip(TipForm::DrawnOut), "pointed", "spitz"),
        (of_tip(TipForm::Rounded), "rounded", "rund"),
        (of_tip(TipForm::Notched), "notched", "eingekerbt"),
        (of_base(BaseForm::HeartShaped), "heart-shaped", "herzförmig"),
        (of_base(BaseForm::Rounded), "rounded", "rund"),
        (of_base(BaseForm::WedgeShaped), "narrowing to the stalk", "zum Stiel hin schmal"),
        (of_base(BaseForm::DrawnIn), "narrowing to the stalk", "zum Stiel hin schmal"),
        (of_pieces(Arrangement::Feather), "like a feather", "wie eine Feder"),
        (of_pieces(Arrangement::Hand), "like a hand", "wie eine Hand"),
        (of_place(0.2), "near the stalk", "nahe am Stiel"),
        (of_place(0.5), "in the middle", "in der Mitte"),
        (of_place(0.8), "near the tip", "nahe an der Spitze"),
    ] {
        let starter = Starter::named(question).expect("a question to begin with");
        let look = Look::of(&form, question).expect(english_word);
        assert_eq!(look.text(starter, Tongue::of_terminal()).as_deref(), Some(english_word));
        assert_eq!(look.text(starter, german).as_deref(), Some(german_word));
    }
}

#[test]
fn one_half_starts_lower_where_that_is_clear() {
    let said = |behind, which| {
        let value = WithPlusMinus { value: 0.05, plus_minus: 0.01 };
        let sides = BaseSides { behind, lower: Some(OneSide { value, which }), wider: None };
        let ends = Ends { sides, ..form().ends.expect("a plain leaf") };
        let form = LeafForm { ends: Some(ends), ..form() };
        let starter = Starter::named("lopsided-base").expect("a question to begin with");
        let look = Look::of(&form, "lopsided-base")?;
        look.text(starter, Tongue::of_terminal())
    };
    assert_eq!(said(false, Some(WhichSide::Left)).as_deref(), Some("yes"));
    assert_eq!(said(false, Some(WhichSide::Right)).as_deref(), Some("yes"));
    assert_eq!(said(false, Some(WhichSide::Neither)).as_deref(), Some("no"));
    assert_eq!(said(false, None), None, "it may be either");
    assert_eq!(said(true, Some(WhichSide::Left)), None, "it hangs lower, wherever it starts");
}

#[test]
fn near_a_right_angle_a_tip_is_neither() {
    let at = |value| {
        let angle = Some(WithPlusMinus { value, plus_minus: 5.0 });
        let ends = Ends {
            tip_angle: angle,
            base_angle: angle,
            base: BaseForm::Rounded,
            ..form().ends.expect("a plain leaf")
        };
        let form = LeafForm { ends: Some(ends), ..form() };
        ["leaf-tip", "leaf-base"].map(|question| Look::of(&form, question).is_some())
    };
    assert_eq!(
        [at(80.0), at(87.0), at(93.0), at(100.0)],
        [[true; 2], [false; 2], [false; 2], [true; 2]]
    );
}

#[test]
fn a_question_has_no_answers_of_another() {
    let t = Tongue::of_terminal();
    let edge = Starter::named("leaf-edge").expect("a question to begin with");
    let leaflets = Starter::named("leaflets").expect("a question to begin with");
    assert_eq!(Look::Count(5).text(edge, t), None);
    assert_eq!(Look::State(99).text(edge, t), None);
    assert_eq!(Look::State(0).text(leaflets, t), None);
    assert_eq!(seen_in(" Blattrand ").map(|it| it.id), Some("leaf-edge"));
    assert!(seen_in("where the seeds are").is_none(), "an outline shows no seeds");
}
