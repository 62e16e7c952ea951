//! What findings say, word for word where it matters: numbers, singulars, reasons, remedies.

use spinney_check::{Settings, check, table};
use spinney_model::{
    Character, Code, Finding, Matrix, Place, Quantity, Scale, Scene, Taxon, UNITS, Unit, Value,
    WrittenIn,
};

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{HEDGE, HEDGE_KEY, codes, key, matrix};

fn of_table(text: &str) -> Vec<Finding> {
    table(&matrix(text), &Settings::default())
}

fn only(found: &[Finding], code: Code) -> (&str, &str) {
    let mut with = found.iter().filter(|finding| finding.code == code);
    let finding = with.next().unwrap_or_else(|| panic!("{code:?} in {found:#?}"));
    assert!(with.next().is_none(), "{found:#?}");
    (&finding.sentence, &finding.remedy)
}

#[test]
fn a_range_of_one_number_is_that_number() {
    let found = of_table("stalk: mm gap 3\nhazel | 30-35\nlime | 40-40");
    assert_eq!(
        only(&found, Code::GapTooNarrow).0,
        "Only stalk could tell hazel from lime (hazel 30 to 35 mm, lime 40 mm), but the \
         difference is less than twice the safety margin of 3 mm. So they are left together."
    );
    let matrix = matrix("stalk: mm gap 3\nhazel | 35-35\nlime | 50-60");
    let key = key(&matrix, "1. Is the stalk 37 mm or longer? [stalk >= 37] -> lime / hazel");
    let found = check(&matrix, &key, None, &Settings::default()).findings;
    let near = only(&found, Code::ThresholdNear).0;
    assert!(near.contains("the stalk of hazel (35 mm): two people"), "{near}");
    assert_eq!(
        check(&matrix, &key, None, &Settings::default()).coverage(),
        "1 of 1 question checked against the table"
    );
}

#[test]
fn where_lengths_are_small_beside_the_margin_its_setting_is_named() {
    let says = "Or make the safety margin of stalk smaller, if you measure that closely: at the \
                column on the screens, or with --gap 2 at the terminal.";
    for (table, named) in [
        ("stalk: mm gap 5\nhazel | 6-9\nlime | 12-15", true),
        ("stalk: mm gap 5\nhazel | 106-109\nlime | 112-115", false),
        // Nobody measures more closely than that.
        ("stalk: mm gap 2\nhazel | 6-9\nlime | 12-15", false),
    ] {
        let found = of_table(table);
        let narrow = found.iter().find(|finding| finding.code == Code::GapTooNarrow);
        let remedy = narrow.map(|finding| finding.remedy.contains(says));
        assert_eq!(remedy.unwrap_or(false), named, "{table}: {found:#?}");
    }
    let matrix = matrix("stalk: mm gap 5\nhazel | 6-9\nlime | 12-15");
    let key = key(&matrix, "1. Is the stalk 11 mm or longer? [stalk >= 11] -> lime / hazel");
    let found = check(&matrix, &key, None, &Settings::default()).findings;
    assert!(only(&found, Code::ThresholdNear).1.contains(says), "{found:#?}");
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
    assert_eq!(
        rest[0].sentence,
        "And 276 more pairs of kinds differ only in a measure, by less than twice its safety \
         margin, and are left together."
    );
    let found = of_table(&format!("stalk: mm gap 3\n{}", rows[..8].join("\n")));
    assert!(found.last().unwrap().sentence.starts_with("And 4 more pairs of kinds differ"));
}

#[test]
fn a_question_that_a_third_kind_blocks_is_not_denied() {
    let across = of_table("stalk: mm gap 3\nelm | 2-5\nhazel | 4-32\nlime | 30-40");
    assert_eq!(
        only(&across, Code::NotSeparable),
        (
            "Elm, hazel and lime are left together, because stalk, which tells elm and lime \
             apart, cannot be asked of hazel, whose range is in between.",
            "Add a column with something that can be asked of all of them, or leave them \
             together."
        )
    );
    let lacks = of_table(
        "form: feather, whole\nstalk: mm gap 3; if form whole
         hazel | whole            | 5-15
         holly | feather or whole | ?
         ivy   | feather or whole | -
         lime  | whole            | 30-45",
    );
    assert_eq!(
        only(&lacks, Code::NotSeparable).0,
        "Hazel, holly, ivy and lime are left together, because stalk, which tells hazel and \
         lime apart, cannot be asked of ivy, which has none, and of holly, which may have \
         none."
    );
    // Nobody knows the form of holly: that can be looked up.
    let unknown = of_table(
        "form: feather, whole\nstalk: mm gap 3; if form whole
         hazel | whole | 5-15\nholly | ? | ?\nlime | whole | 30-45",
    );
    assert_eq!(
        only(&unknown, Code::NotSeparable),
        (
            "Hazel, holly and lime are left together, because stalk, which tells hazel and \
             lime apart, cannot be asked of holly, which may have none.",
            "Fill in form of holly, or add a column with something that can be asked of all \
             of them."
        )
    );
    let alike = of_table("colour: red, blue\nhazel | red\nlime | red");
    assert_eq!(
        only(&alike, Code::NotSeparable).0,
        "Nothing in the table tells hazel and lime apart."
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
        let fragile = only(&found, Code::FragilePair).0;
        assert!(fragile.contains("hang on stalk alone"), "{fragile}");
        let together = only(&found, Code::NotSeparable).0;
        assert!(!together.starts_with("Nothing in the table tells"), "{together}");
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
    let said: Vec<&str> = both.iter().map(|finding| finding.sentence.as_str()).collect();
    assert_eq!(
        said,
        ["Holly and ivy are left together, because stalk, which tells them apart, cannot \
             be asked of holly and ivy, which may have none."]
    );
}

#[test]
fn a_caution_is_said_to_be_printed_where_pupils_touch() {
    let matrix = matrix(HEDGE);
    let text = HEDGE_KEY.replace(
        "Is the leaf edge spiny? [edge = spiny]",
        "Does it feel leathery? [feel = leathery]",
    );
    let found = check(&matrix, &key(&matrix, &text), None, &Settings::default()).findings;
    assert_eq!(
        only(&found, Code::TouchCaution),
        (
            "Question 8 asks pupils to touch, and holly is still among what they may hold.",
            "Ask about edge first: nobody has to touch anything for it. The caution is printed at \
             this question."
        )
    );
    let table = "feel: leathery, papery; by touch
         holly | leathery
         lime  | papery";
    let mut matrix = drawn::matrix(table);
    let mut taxa = matrix.taxa().to_vec();
    taxa[0].caution = Some("It pricks.".to_owned());
    matrix = spinney_fixtures::drawn::remade(&matrix, taxa, matrix.characters().to_vec());
    let text = "1. Does it feel leathery? [feel = leathery] -> holly / lime";
    let found = check(&matrix, &key(&matrix, text), None, &Settings::default()).findings;
    let (_, remedy) = only(&found, Code::TouchCaution);
    assert_eq!(
        remedy,
        "The caution is printed at this question. Let an adult hand round what may hurt, or add a \
         difference that people can see."
    );
}

#[test]
fn a_question_in_peoples_own_words_is_quoted_and_not_asked_for() {
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
    let (sentence, remedy) = only(&found, Code::NobodyRecorded);
    assert!(
        sentence.starts_with(
            "Question 1 asks “Is it soft?”, and nobody has looked at that on lime."
        ),
        "{sentence}"
    );
    assert_eq!(remedy, "Look at lime and say yes or no to it, or move the question.");
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
    let near = only(&found, Code::ThresholdNear).0;
    assert!(near.contains("asks at 3.7 cm, which is nearer than 0.3 cm"), "{near}");
    assert!(near.contains("hazel (3 to 3.5 cm)"), "{near}");
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
        found.into_iter().map(|finding| (finding.place, finding.sentence)).collect::<Vec<_>>()
    };
    assert_eq!(told("hazel"), []);
    assert_eq!(
        told("lime"),
        [(
            Place::Couplet(2),
            "Lime never comes out after yes at question 2, where its name is. Only hazel \
             can, because nobody has looked at lobes of hazel."
                .to_owned()
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
    let near = only(&found, Code::ThresholdNear).0;
    assert!(near.contains("asks at 2.1 inches"), "{near}");
    assert!(near.contains("hazel (1 to 2 inches)"), "{near}");
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
        only(&found, Code::Unreachable).0.to_owned()
    };
    let names = |sentence: &str| sentence.split_once(", and so ").map(|(_, so)| so.to_owned());
    let two = names(&lost("lime / maple")).expect("two are named");
    assert!(two.starts_with("lime and maple never come out"), "{two}");
    let one = names(&lost("lime / hazel")).expect("one is named");
    assert!(one.starts_with("lime never comes out"), "{one}");
    assert_eq!(names(&lost("beech / hazel")), None, "both come out elsewhere");
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
