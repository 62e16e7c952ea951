//! What findings hold where it matters: who, how much, why, and what can be done. How `voice`
//! says it is tested there.

use spinney_check::{Settings, check, table};
use spinney_model::{
    Answer, CellOf, CellsOf, Character, Code, Fact, Finding, InTheWay, Matrix, NameAtEnd,
    OfAnswers, OfEnds, OfShape, OfTable, OfTree, Place, Quantity, RangeOf, Scale, Scene, Step,
    Taxon, UNITS, Unit, Value, Written, WrittenIn,
};

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{HEDGE, HEDGE_KEY, codes, key, matrix};

fn of_table(text: &str) -> Vec<Finding> {
    table(&matrix(text), &Settings::default())
}

fn only(found: &[Finding], code: Code) -> Fact {
    let mut with = found.iter().filter(|finding| finding.code == code);
    let finding = with.next().unwrap_or_else(|| panic!("{code:?} in {found:#?}"));
    assert!(with.next().is_none(), "{found:#?}");
    finding.fact.clone()
}

fn named(kinds: &[&str]) -> Vec<String> {
    kinds.iter().map(|kind| (*kind).to_owned()).collect()
}

/// What was measured, in thousandths of a millimetre.
fn measured(kind: &str, low: i64, high: i64, written_in: WrittenIn) -> RangeOf {
    let figure = |thousandths| {
        let quantity = Quantity::from_thousandths(thousandths);
        Written { quantity, written_in: Some(written_in) }
    };
    RangeOf { kind: kind.to_owned(), low: figure(low), high: figure(high) }
}

#[test]
fn a_narrow_pair_holds_what_was_measured() {
    let found = of_table("stalk: mm gap 3\nhazel | 30-35\nlime | 40-40");
    let mm = WrittenIn::Millimetres;
    let margin = Written { quantity: Quantity::from_whole(3), written_in: Some(mm) };
    assert_eq!(
        only(&found, Code::GapTooNarrow),
        OfTable::GapTooNarrow {
            ranges: [
                measured("hazel", 30_000, 35_000, mm),
                measured("lime", 40_000, 40_000, mm)
            ],
            about: "stalk".to_owned(),
            margin,
            smaller_may_do: false,
            open: Vec::new(),
        }
        .into()
    );
    let matrix = matrix("stalk: mm gap 3\nhazel | 35-35\nlime | 50-60");
    let key = key(&matrix, "1. Is the stalk 37 mm or longer? [stalk >= 37] -> lime / hazel");
    let report = check(&matrix, &key, None, &Settings::default());
    assert_eq!(
        only(&report.findings, Code::ThresholdNear),
        OfAnswers::ThresholdNear {
            question: 1,
            about: "stalk".to_owned(),
            at: Written { quantity: Quantity::from_whole(37), written_in: Some(mm) },
            ranges: vec![measured("hazel", 35_000, 35_000, mm)],
            margin,
            smaller_may_do: false,
        }
        .into()
    );
    assert_eq!((report.checked, report.questions), (1, 1));
}

#[test]
fn where_lengths_are_small_beside_the_margin_its_setting_is_named() {
    for (table, named) in [
        ("stalk: mm gap 5\nhazel | 6-9\nlime | 12-15", true),
        ("stalk: mm gap 5\nhazel | 106-109\nlime | 112-115", false),
        // Nobody measures more closely than that.
        ("stalk: mm gap 2\nhazel | 6-9\nlime | 12-15", false),
    ] {
        let fact = only(&of_table(table), Code::GapTooNarrow);
        let Fact::Table(OfTable::GapTooNarrow { smaller_may_do, .. }) = fact else {
            panic!("{table}: {fact:?}");
        };
        assert_eq!(smaller_may_do, named, "{table}");
    }
    let matrix = matrix("stalk: mm gap 5\nhazel | 6-9\nlime | 12-15");
    let key = key(&matrix, "1. Is the stalk 11 mm or longer? [stalk >= 11] -> lime / hazel");
    let found = check(&matrix, &key, None, &Settings::default()).findings;
    let near = only(&found, Code::ThresholdNear);
    assert!(
        matches!(near, Fact::Answers(OfAnswers::ThresholdNear { smaller_may_do: true, .. })),
        "{near:?}"
    );
}

#[test]
fn of_many_pairs_that_only_the_gap_keeps_together_the_closest_are_named() {
    // Every kind 1 to 5 mm from every other: 300 pairs.
    let rows: Vec<String> = (0..25)
        .map(|n| {
            let mm = f64::from(n) * 0.2;
            format!("kind {n} | {mm:.1}-{mm:.1}")
        })
        .collect();
    let found = of_table(&format!("stalk: mm gap 3\n{}", rows.join("\n")));
    assert_eq!(codes(&found), [Code::GapTooNarrow; 25], "24 pairs, and one for the rest");
    let (pairs, rest) = found.split_at(24);
    assert_eq!(pairs[0].place.to_string(), "kind 0, kind 1");
    assert!(pairs.iter().all(|finding| matches!(finding.place, Place::Taxa(_))));
    assert_eq!(rest[0].place, Place::Table);
    assert_eq!(rest[0].fact, OfTable::MoreTooNarrow { pairs: 276 }.into());
    let found = of_table(&format!("stalk: mm gap 3\n{}", rows[..8].join("\n")));
    assert_eq!(found.last().unwrap().fact, OfTable::MoreTooNarrow { pairs: 4 }.into());
}

#[test]
fn a_question_that_a_third_kind_blocks_is_not_denied() {
    let stalk = |separates: Option<[&str; 2]>| InTheWay {
        about: "stalk".to_owned(),
        separates: separates.map(|kinds| kinds.map(str::to_owned)),
        without: Vec::new(),
        perhaps: Vec::new(),
        between: Vec::new(),
    };
    let across = of_table("stalk: mm gap 3\nelm | 2-5\nhazel | 4-32\nlime | 30-40");
    assert_eq!(
        only(&across, Code::NotSeparable),
        OfTable::Blocked {
            kinds: named(&["elm", "hazel", "lime"]),
            because: vec![InTheWay {
                between: named(&["hazel"]),
                ..stalk(Some(["elm", "lime"]))
            }],
            fill_in: None,
        }
        .into()
    );
    let lacks = of_table(
        "form: feather, whole\nstalk: mm gap 3; if form whole
         hazel | whole            | 5-15
         holly | feather or whole | ?
         ivy   | feather or whole | -
         lime  | whole            | 30-45",
    );
    assert_eq!(
        only(&lacks, Code::NotSeparable),
        OfTable::Blocked {
            kinds: named(&["hazel", "holly", "ivy", "lime"]),
            because: vec![InTheWay {
                without: named(&["ivy"]),
                perhaps: named(&["holly"]),
                ..stalk(Some(["hazel", "lime"]))
            }],
            fill_in: None,
        }
        .into()
    );
    // Nobody knows the form of holly: that can be looked up.
    let unknown = of_table(
        "form: feather, whole\nstalk: mm gap 3; if form whole
         hazel | whole | 5-15\nholly | ? | ?\nlime | whole | 30-45",
    );
    assert_eq!(
        only(&unknown, Code::NotSeparable),
        OfTable::Blocked {
            kinds: named(&["hazel", "holly", "lime"]),
            because: vec![InTheWay {
                perhaps: named(&["holly"]),
                ..stalk(Some(["hazel", "lime"]))
            }],
            fill_in: Some(CellsOf { about: "form".to_owned(), kinds: named(&["holly"]) }),
        }
        .into()
    );
    let alike = of_table("colour: red, blue\nhazel | red\nlime | red");
    assert_eq!(
        only(&alike, Code::NotSeparable),
        OfTable::NotSeparable { kinds: named(&["hazel", "lime"]) }.into()
    );
}

#[test]
fn no_pair_is_said_to_hang_on_what_nothing_parts() {
    let texts = [
        "stalk: mm gap 3\nelm | 2-5\nhazel | 4-32\nlime | 15-40",
        "form: feather, whole\nstalk: mm gap 3; if form whole
         hazel | whole | 5-15\nholly | feather or whole | ?\nlime | whole | 25-45",
    ];
    for text in texts {
        let found = of_table(text);
        let fragile = only(&found, Code::FragilePair);
        let Fact::Table(OfTable::FragilePair { about, .. }) = fragile else {
            panic!("{fragile:?}");
        };
        assert_eq!(about, "stalk");
        let together = only(&found, Code::NotSeparable);
        assert!(matches!(together, Fact::Table(OfTable::Blocked { .. })), "{together:?}");
    }
}

#[test]
fn what_an_earlier_question_settles_is_no_reason_to_end_together() {
    // Because of ash the form can be asked, and of holly without leaflets the stalk.
    let with = |more: &str| {
        of_table(&format!(
            "form: feather, whole\nstalk: mm gap 1; if form whole\nplace: opposite, alternate
             hazel | whole            | 5-15  | alternate
             holly | feather or whole | 90-99 | alternate
             lime  | whole            | 30-45 | alternate
             {more}",
        ))
    };
    assert_eq!(with("ash | feather | - | opposite"), []);
    assert_eq!(codes(&with("")), [Code::NotSeparable], "nobody makes the form worth asking");
    // Two that may both have leaflets stay together where they do.
    let both =
        with("ash | feather | - | opposite\n ivy | feather or whole | 60-70 | alternate");
    assert_eq!(
        only(&both, Code::NotSeparable),
        OfTable::Blocked {
            kinds: named(&["holly", "ivy"]),
            because: vec![InTheWay {
                about: "stalk".to_owned(),
                separates: None,
                without: Vec::new(),
                perhaps: named(&["holly", "ivy"]),
                between: Vec::new(),
            }],
            fill_in: None,
        }
        .into()
    );
    assert_eq!(both.len(), 1);
}

#[test]
fn a_caution_is_said_to_be_printed_where_pupils_touch() {
    let matrix = matrix(HEDGE);
    let text = HEDGE_KEY.replace(
        "Is the leaf edge spiny? [edge = spiny]",
        "Does it feel leathery? [feel = leathery]",
    );
    let found = check(&matrix, &key(&matrix, &text), None, &Settings::default()).findings;
    let touch = |question, otherwise: Option<&str>| -> Fact {
        let otherwise = otherwise.map(str::to_owned);
        OfShape::TouchCaution { question, kinds: named(&["holly"]), otherwise }.into()
    };
    assert_eq!(only(&found, Code::TouchCaution), touch(8, Some("edge")));
    let table = "feel: leathery, papery; by touch
         holly | leathery
         lime  | papery";
    let mut matrix = drawn::matrix(table);
    let mut taxa = matrix.taxa().to_vec();
    taxa[0].caution = Some("It pricks.".to_owned());
    matrix = spinney_fixtures::drawn::remade(&matrix, taxa, matrix.characters().to_vec());
    let text = "1. Does it feel leathery? [feel = leathery] -> holly / lime";
    let found = check(&matrix, &key(&matrix, text), None, &Settings::default()).findings;
    assert_eq!(only(&found, Code::TouchCaution), touch(1, None));
}

#[test]
fn a_question_in_peoples_own_words_is_a_column_like_others() {
    let matrix = matrix(
        "Is it soft?: yes, no
         edge: toothed, smooth
         hazel | yes | toothed
         lime  | ?   | smooth
         oak   | no  | toothed",
    );
    let key = key(
        &matrix,
        "1. Is it soft? [Is it soft? = yes] -> hazel / 2
         2. Is the edge smooth? [edge = smooth] -> lime / oak",
    );
    let found = check(&matrix, &key, None, &Settings::default()).findings;
    assert_eq!(
        only(&found, Code::NobodyRecorded),
        OfAnswers::NobodyRecorded {
            question: 1,
            about: "Is it soft?".to_owned(),
            kinds: named(&["lime"]),
            lost: vec![("lime".to_owned(), Answer::Yes)],
        }
        .into()
    );
}

#[test]
fn a_length_is_said_in_the_unit_of_its_column() {
    let mut character = Character::named(
        "stalk",
        Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(3) },
    );
    character.written_in = Some(WrittenIn::Centimetres);
    let range = |low, high| {
        let (low, high) = (Quantity::from_whole(low), Quantity::from_whole(high));
        vec![Value::Range { low, high }.into()]
    };
    let taxa = ["hazel", "lime"].map(Taxon::named).to_vec();
    let rows = vec![range(30, 35), range(50, 60)];
    let matrix = Matrix::new(Scene::default(), taxa, vec![character], rows).expect("it fits");
    let key = key(&matrix, "1. Is the stalk 3.7 cm or longer? [stalk >= 37] -> lime / hazel");
    let found = check(&matrix, &key, None, &Settings::default()).findings;
    let near = only(&found, Code::ThresholdNear);
    let Fact::Answers(OfAnswers::ThresholdNear { at, margin, ranges, .. }) = near else {
        panic!("{near:?}");
    };
    assert_eq!((at.to_string().as_str(), margin.to_string().as_str()), ("3.7 cm", "0.3 cm"));
    assert_eq!(ranges, [measured("hazel", 30_000, 35_000, WrittenIn::Centimetres)]);
}

/// Hazel may be lobed, since nobody has looked: the key names it on both sides, until somebody
/// writes lime over it where nothing but that comes out.
#[test]
fn a_wrong_name_where_a_kind_comes_only_because_nobody_looked_is_told() {
    let table = matrix(
        "edge: toothed, smooth
         lobes: lobed, entire
         hazel | toothed | ?
         oak   | smooth  | lobed
         lime  | smooth  | entire",
    );
    let opinion = |end: &str| {
        let text = format!(
            "1. Is it lobed? [lobes = lobed] -> 2 / 3
             2 (1). Is the edge toothed? [edge = toothed] -> {end} / oak
             3 (1). Is the leaf edge toothed? [edge = toothed] -> hazel / lime"
        );
        check(&table, &key(&table, &text), None, &Settings::default()).findings
    };
    let told = |end: &str| {
        let mut found = opinion(end);
        found.retain(|finding| finding.code == Code::EndUnreached);
        found.into_iter().map(|finding| (finding.place, finding.fact)).collect::<Vec<_>>()
    };
    assert_eq!(told("hazel"), []);
    assert_eq!(
        told("lime"),
        [(
            Place::Couplet(2),
            OfEnds::EndOnlyGuessed {
                end: Step { couplet: 2, answer: Answer::Yes },
                names: vec![NameAtEnd::Kind("lime".to_owned())],
                kinds: named(&["hazel"]),
                cells: vec![CellOf { about: "lobes".to_owned(), kind: "hazel".to_owned() }],
            }
            .into()
        )]
    );
}

#[test]
fn a_unit_is_a_unit_in_whatever_spelling() {
    let length = Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(100) };
    let mut character = Character::named("height", length);
    character.written_in = Some(WrittenIn::Metres);
    let range = |low, high| {
        let (low, high) = (Quantity::from_whole(low), Quantity::from_whole(high));
        vec![Value::Range { low, high }.into()]
    };
    let taxa = ["hazel", "lime"].map(Taxon::named).to_vec();
    let rows = vec![range(1000, 1500), range(3000, 9000)];
    let matrix = Matrix::new(Scene::default(), taxa, vec![character], rows).expect("it fits");
    let unit_missing = |asked: &str| {
        let text = format!("1. Is it {asked}? [height >= 2000] -> lime / hazel");
        let found = check(&matrix, &key(&matrix, &text), None, &Settings::default()).findings;
        found.iter().any(|finding| finding.code == Code::NoUnit)
    };
    assert!(unit_missing("taller than 2"));
    assert!(unit_missing("taller than 2 grams"), "no length is weighed");
    for row in UNITS.iter().filter(|row| row.kept_as == Unit::Millimetres) {
        for spelt in row.spelt.iter().filter(|spelt| spelt.chars().all(char::is_alphabetic)) {
            assert!(!unit_missing(&format!("taller than 2 {spelt}")), "{spelt}");
        }
    }
}

#[test]
fn a_column_of_inches_is_said_in_inches() {
    let length = Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(3) };
    let mut character = Character::named("stalk", length);
    character.written_in = Some(WrittenIn::Inches);
    let range = |low, high| {
        let [low, high] = [low, high].map(Quantity::from_thousandths);
        vec![Value::Range { low, high }.into()]
    };
    let taxa = ["hazel", "lime"].map(Taxon::named).to_vec();
    let rows = vec![range(25_400, 50_800), range(76_200, 101_600)];
    let matrix = Matrix::new(Scene::default(), taxa, vec![character], rows).expect("it fits");
    let key =
        key(&matrix, "1. Is the stalk 2.1 inches or longer? [stalk >= 53.34] -> lime / hazel");
    let found = check(&matrix, &key, None, &Settings::default()).findings;
    let near = only(&found, Code::ThresholdNear);
    let Fact::Answers(OfAnswers::ThresholdNear { at, ranges, .. }) = near else {
        panic!("{near:?}");
    };
    assert_eq!(at.to_string(), "2.1 inches");
    assert_eq!(ranges, [measured("hazel", 25_400, 50_800, WrittenIn::Inches)]);
}

/// Of a question that nobody gets to, the kinds are named that come out nowhere else.
#[test]
fn who_never_comes_out_below_a_lost_question_is_named() {
    let matrix = matrix(
        "edge: toothed, smooth
         lobes: lobed, entire
         hazel | toothed | entire
         lime  | toothed | lobed
         beech | smooth  | entire
         maple | smooth  | lobed",
    );
    let lost = |below: &str| {
        let text = format!(
            "1. Is the edge toothed? [edge = toothed] -> hazel / beech
             2. Is it lobed? [lobes = lobed] -> {below}"
        );
        let found = check(&matrix, &key(&matrix, &text), None, &Settings::default()).findings;
        only(&found, Code::Unreachable)
    };
    let unreachable =
        |kinds: &[&str]| OfTree::Unreachable { question: 2, named_below: named(kinds) }.into();
    assert_eq!(lost("lime / maple"), unreachable(&["lime", "maple"]));
    assert_eq!(lost("lime / hazel"), unreachable(&["lime"]));
    assert_eq!(lost("beech / hazel"), unreachable(&[]), "both come out elsewhere");
}

/// Questions that hang together and to which nobody gets are told of once, at the first.
#[test]
fn a_lost_part_of_a_key_is_told_of_once_at_its_first_question() {
    let matrix = matrix("edge: toothed, smooth\nhazel | toothed\nbeech | smooth");
    let text = "1. Is it toothed? [edge = toothed] -> hazel / beech
                2. Is it smooth? [edge = smooth] -> 3 / hazel
                3. Is the edge smooth? [edge = smooth] -> 4 / hazel
                4. Is the edge toothed? [edge = toothed] -> hazel / beech";
    let found = check(&matrix, &key(&matrix, text), None, &Settings::default()).findings;
    let lost = found.iter().filter(|finding| finding.code == Code::Unreachable);
    assert_eq!(lost.map(|finding| &finding.place).collect::<Vec<_>>(), [&Place::Couplet(2)]);
}
