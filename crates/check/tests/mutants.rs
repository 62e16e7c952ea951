//! Every code has a mutant: a good key or table broken in one way gives exactly that finding.

use std::collections::BTreeSet;

use spinney_check::{CODES, Report, Settings, check, table};
use spinney_model::{
    CellsOf, CharacterIx, Claim, Code, Finding, Goal, Matrix, OfTable, Reached, Share, Stopped,
    Wishes,
};

#[path = "drawn/good_key.rs"]
mod drawn;
#[path = "drawn/named.rs"]
mod named;

use named::named;

use drawn::{HEDGE, HEDGE_KEY, codes, key, matrix};

/// A way to break something: in the text of the table, of the key, or in the claim.
struct Mutant {
    code: Code,
    table: &'static [(&'static str, &'static str)],
    key: &'static [(&'static str, &'static str)],
}

const fn in_key(code: Code, key: &'static [(&'static str, &'static str)]) -> Mutant {
    Mutant { code, table: &[], key }
}

const fn in_table(code: Code, table: &'static [(&'static str, &'static str)]) -> Mutant {
    Mutant { code, table, key: &[] }
}

/// Mutants of the hedge that `check` must see.
const OF_THE_KEY: &[Mutant] = &[
    in_key(Code::NumberTwice, &[("9 (8).", "8 (8).")]),
    in_key(Code::NumberMissing, &[("lime / hazel", "lime / 99")]),
    in_key(Code::NumberMissing, &[("feather] -> 2", "feather] -> 22")]),
    in_key(Code::NumbersSkip, &[("9 (8).", "12 (8)."), ("holly / 9", "holly / 12")]),
    in_key(Code::NothingWritten, &[("ash / rowan", "ash / nothing")]),
    in_key(Code::Loop, &[("ash / rowan", "ash / 1")]),
    in_key(Code::Unreachable, &[("-> 3 / elder", "-> ash / elder")]),
    in_key(Code::BackWrong, &[("3 (2).", "3 (1).")]),
    in_key(Code::WaysMeet, &[("maple / ivy", "maple / 9")]),
    in_key(
        Code::SameBothWays,
        &[(
            "ivy / beech",
            "ivy / 10\n10 (9). Is the edge smooth? [edge = smooth] -> beech / beech",
        )],
    ),
    in_table(
        Code::NeverComesOut,
        &[("ash ", "rose | feather | 5 | - | - | 20-40 | alternate | papery\nash ")],
    ),
    in_key(Code::WrongPlace, &[("lime / hazel", "hazel / lime")]),
    in_key(Code::WrongPlace, &[("-> maple / ivy", "-> ivy / maple")]),
    in_key(Code::WrongPlace, &[("-> holly / 9", "-> 9 / holly")]),
    in_key(
        Code::SecondPlace,
        &[
            ("-> 3 / elder", "-> 3 / 10"),
            (
                "ivy / beech",
                "ivy / beech\n10 (2). Are they opposite? [place = opposite] -> elder / rowan",
            ),
        ],
    ),
    in_key(
        Code::EndUnreached,
        &[(
            "ivy / beech",
            "ivy / 10\n10 (9). Are they opposite? [place = opposite] -> maple / beech",
        )],
    ),
    in_key(
        Code::BothLeads,
        &[("Does it have 8 or more leaflets?", "Leaflets 7 or more | Leaflets 2-7")],
    ),
    in_key(
        Code::BothLeads,
        &[("Is the leaf edge spiny?", "Edge spiny or smooth | Edge smooth")],
    ),
    in_key(
        Code::NeitherLead,
        &[("Does it have 8 or more leaflets?", "Leaflets 10 or more | Leaflets 2-7")],
    ),
    in_key(
        Code::NeitherLead,
        &[(
            "Is the leaf stalk 22.5 mm or longer?",
            "Stalk 33 mm or longer | Stalk less than 22.5 mm",
        )],
    ),
    in_key(
        Code::DoesNotHave,
        &[("8 or more leaflets? [leaflets >= 8]", "teeth? [edge = toothed]")],
    ),
    in_table(
        Code::MayNotHave,
        &[
            ("edge: toothed, smooth, spiny; if form whole", ""),
            ("place: opposite, alternate", ""),
            (
                "form:",
                "place: opposite, alternate\nedge: toothed, smooth, spiny; if place alternate\nform:",
            ),
            (
                "ash    | feather | 9 or 11 | -       | -               | 30-60 | opposite ",
                "ash | opposite | - | feather | 9 or 11 | - | 30-60",
            ),
            (
                "elder  | feather | 5 or 7  | -       | -               | 20-40 | opposite ",
                "elder | opposite | - | feather | 5 | - | 20-40",
            ),
            (
                "rowan  | feather | 13      | -       | -               | 25-45 | alternate",
                "rowan | alternate | - | feather | 13 | - | 25-45",
            ),
            (
                "ivy    | whole   | -       | smooth  | lobed or entire | 30-70 | alternate",
                "ivy | alternate | smooth | whole | - | lobed or entire | 30-70",
            ),
            (
                "maple  | whole   | -       | smooth  | lobed           | 40-80 | opposite ",
                "maple | opposite | - | whole | - | lobed | 40-80",
            ),
            (
                "hazel  | whole   | -       | toothed | entire          | 5-15  | alternate",
                "hazel | opposite or alternate | toothed | whole | - | entire | 5-15",
            ),
            (
                "lime   | whole   | -       | toothed | entire          | 30-45 | alternate",
                "lime | alternate | toothed | whole | - | entire | 30-45",
            ),
            (
                "beech  | whole   | -       | smooth  | entire          | 5-15  | alternate",
                "beech | alternate | smooth | whole | - | entire | 5-15",
            ),
            (
                "holly! | whole   | -       | spiny   | entire          | ?     | alternate",
                "holly! | alternate | spiny | whole | - | entire | ?",
            ),
        ],
    ),
    in_table(
        Code::NobodyRecorded,
        &[("toothed | entire          | 5-15 ", "toothed | entire | ?")],
    ),
    in_table(Code::NobodyRecorded, &[("| 13 ", "| ? ")]),
    in_table(
        Code::ThresholdInside,
        &[("toothed | entire          | 5-15 ", "toothed | entire | 5-30")],
    ),
    in_table(
        Code::ThresholdNear,
        &[("toothed | entire          | 5-15 ", "toothed | entire | 5-20")],
    ),
    in_key(Code::VariesUsedAsFixed, &[("ivy / beech", "lime / beech")]),
    in_table(
        Code::VariesUsedAsFixed,
        &[
            ("spiny   | entire", "spiny or smooth | entire"),
            ("entire          | ? ", "entire | 5-15 "),
        ],
    ),
    in_table(
        Code::ThinEvidence,
        &[("toothed | entire          | 5-15 ", "toothed | entire | 5-15 x1")],
    ),
    in_key(
        Code::PartsNothing,
        &[
            ("maple / ivy", "maple / 10"),
            (
                "-> ivy / beech",
                "-> ivy / beech\n\
                 10 (5). Is it toothed? [edge = toothed] -> 11 / ivy\n\
                 11 (10). Is it spiny? [edge = spiny] -> holly / ash",
            ),
        ],
    ),
    in_key(
        Code::CouldBeParted,
        &[
            ("holly / 9", "holly / ivy or beech"),
            ("9 (8). Is the stalk 22.5 mm or longer? [stalk >= 22.5] -> ivy / beech", ""),
        ],
    ),
    in_key(Code::CouldBeParted, &[("lime / hazel", "lime / hazel or beech")]),
    in_key(Code::BareComparative, &[("Do the leaves stand opposite?", "Is the leaf big?")]),
    in_key(Code::VagueWord, &[("Do the leaves stand", "Do the leaves usually stand")]),
    in_key(Code::NotYesNo, &[("stand opposite?", "stand opposite or alternate?")]),
    in_key(
        Code::NotYesNo,
        &[("Is the leaf stalk 22.5 mm or longer?", "Is the leaf stalk 2 or 3 cm?")],
    ),
    in_key(Code::NotYesNo, &[("Is the leaf edge spiny?", "Which edge does the leaf have?")]),
    in_key(
        Code::Negative,
        &[("Is the leaf made of leaflets?", "Is the leaf not in one piece?")],
    ),
    in_key(Code::NameInQuestion, &[("Is the leaf made of leaflets?", "Is it a kind of ash?")]),
    in_key(
        Code::TooManyWords,
        &[(
            "Is the leaf edge spiny?",
            "Is the edge of the leaf that you hold in your hand now spiny?",
        )],
    ),
    in_key(Code::NoUnit, &[("Is the leaf stalk 22.5 mm", "Is the leaf stalk 22.5")]),
    in_key(
        Code::TouchCaution,
        &[(
            "Is the leaf edge spiny? [edge = spiny]",
            "Does it feel leathery? [feel = leathery]",
        )],
    ),
];

/// Mutants of the hedge that `table` must see.
const OF_THE_TABLE: &[Mutant] = &[
    in_table(
        Code::NotSeparable,
        &[(
            "smooth  | entire          | 5-15  | alternate | papery",
            "spiny | entire | 5-15 | alternate | leathery",
        )],
    ),
    in_table(
        Code::FragilePair,
        &[("place: opposite, alternate", "place: opposite, alternate; hard")],
    ),
    in_table(Code::FragilePair, &[("entire          | 30-45", "entire | 26-45")]),
    in_table(Code::GapTooNarrow, &[("entire          | 30-45", "entire | 18-45")]),
    in_table(
        Code::Unknown,
        &[
            ("opposite  | papery", "? | papery"),
            ("30-60 | ?", "30-60 | opposite"),
            ("20-40 | ?", "20-40 | opposite"),
            ("smooth  | lobed           | 40-80 | ?", "? | lobed | 40-80 | opposite"),
        ],
    ),
];

fn changed(text: &str, changes: &[(&str, &str)]) -> String {
    changes.iter().fold(text.to_owned(), |text, (from, to)| {
        assert!(text.contains(from), "the drawing has no “{from}”");
        text.replace(from, to)
    })
}

fn opinion(matrix: &Matrix, key_text: &str, pupils: bool) -> Vec<Finding> {
    let settings = Settings { pupils_wrote_it: pupils, ..Settings::default() };
    check(matrix, &key(matrix, key_text), None, &settings).findings
}

#[test]
fn the_good_key_is_good() {
    let matrix = matrix(HEDGE);
    let report = check(&matrix, &key(&matrix, HEDGE_KEY), None, &Settings::default());
    assert_eq!(report.findings, []);
    assert!(report.works() && !report.broken_as_a_tree() && !report.says_mend_this());
    assert_eq!((report.checked, report.questions), (9, 9));
    assert!(report.walks.iter().all(|walk| walk.arrived));
    // Ivy comes out twice, everything else once.
    assert_eq!(report.walks.len(), matrix.taxa().len() + 1);
}

#[test]
fn the_good_table_has_one_unknown_cell_and_nothing_else() {
    let found = table(&matrix(HEDGE), &Settings::default());
    assert_eq!(codes(&found), [Code::Unknown], "{found:#?}");
    let columns = vec![CellsOf { about: "stalk".to_owned(), kinds: vec!["holly".to_owned()] }];
    assert_eq!(found[0].fact, OfTable::Unknown { cells: 1, columns, more_columns: 0 }.into());
}

#[test]
fn each_broken_key_gives_exactly_its_finding() {
    for mutant in OF_THE_KEY {
        let matrix = matrix(&changed(HEDGE, mutant.table));
        let found = opinion(&matrix, &changed(HEDGE_KEY, mutant.key), false);
        assert_eq!(codes(&found), [mutant.code], "{:?}\n{found:#?}", mutant.key);
        assert!(found.iter().all(|finding| finding.severity == mutant.code.severity()));
    }
}

#[test]
fn each_broken_table_gives_exactly_its_finding() {
    let known = changed(HEDGE, &[("entire          | ? ", "entire          | 5-15 ")]);
    assert_eq!(table(&matrix(&known), &Settings::default()), []);
    for mutant in OF_THE_TABLE {
        let found = table(&matrix(&changed(&known, mutant.table)), &Settings::default());
        assert_eq!(codes(&found), [mutant.code], "{:?}\n{found:#?}", mutant.table);
    }
}

#[test]
fn good_questions_are_praised_in_a_key_that_pupils_wrote() {
    let found = opinion(&matrix(HEDGE), HEDGE_KEY, true);
    let places: Vec<String> = found.iter().map(|finding| finding.place.to_string()).collect();
    assert_eq!(codes(&found), [Code::GoodQuestion; 2]);
    assert_eq!(places, ["question 1", "question 6"]);
}

/// A claim of a search that stopped: nothing takes less than 30.
fn claim(total: Share) -> Claim {
    Claim {
        total,
        lower_bound: Share::from_integer(30),
        mean_questions: Share::new(32, 9),
        longest: 5,
        stopped: Some(Stopped::Budget),
        heaps: 0,
        kept: None,
        wishes: Wishes::default(),
        reached: Vec::new(),
        prices: Vec::new(),
        within: Vec::new(),
        touching: Vec::new(),
        certificate: None,
    }
}

/// Questions by hand: ash and rowan 3, elder 2, ivy 3 and 5 in halves, maple 3, hazel and lime
/// 4, beech 5, holly 4: 3 + 3 + 2 + 4 + 3 + 4 + 4 + 5 + 4 = 32. The ruler takes one step more of
/// hazel, lime, beech and half of ivy: 35.5 steps. The best key takes 34, by a plain recursion
/// over this table alone, written for this test in another language.
#[test]
fn a_true_claim_stands_and_a_false_one_falls() {
    let matrix = matrix(HEDGE);
    let key = key(&matrix, HEDGE_KEY);
    let codes_of = |claim: Claim| {
        codes(&check(&matrix, &key, Some(&claim), &Settings::default()).findings)
    };
    let by_hand = Share::new(71, 2);
    let right = claim(by_hand);
    assert_eq!(codes_of(right.clone()), []);
    assert_eq!(codes_of(claim(by_hand - 1)), [Code::CostWrong]);
    assert_eq!(codes_of(Claim { longest: 4, ..right.clone() }), [Code::CostWrong]);
    let mean_questions = Share::from_integer(4);
    assert_eq!(codes_of(Claim { mean_questions, ..right.clone() }), [Code::CostWrong]);
    let bound = |lower_bound: i128| Claim {
        lower_bound: Share::from_integer(lower_bound),
        ..right.clone()
    };
    assert_eq!(codes_of(bound(34)), []);
    // Above the best key, though not above this one; and above this one.
    assert_eq!(codes_of(bound(35)), [Code::BoundWrong]);
    assert_eq!(codes_of(bound(36)), [Code::BoundWrong]);
    // Nobody proved that this is the best key.
    let best = Claim { stopped: None, lower_bound: by_hand, ..right };
    assert_eq!(codes_of(best), [Code::BoundWrong]);
}

/// Kinds that are told by a number alone, and keys to them by the sizes of the first heaps.
fn numbered(kinds: usize, heads: &[usize]) -> (Matrix, String) {
    let rows: Vec<String> = (1..=kinds).map(|n| format!("kind {n} | {n}")).collect();
    let matrix = matrix(&format!("rings: counts\n{}", rows.join("\n")));
    let mut lines = Vec::new();
    lay_out(1, kinds, heads, &mut 1, &mut lines);
    lines.sort_by_key(|(number, _)| *number);
    let lines: Vec<String> = lines.into_iter().map(|(_, line)| line).collect();
    (matrix, lines.join("\n"))
}

fn lay_out(
    from: usize,
    to: usize,
    heads: &[usize],
    next: &mut usize,
    lines: &mut Vec<(usize, String)>,
) -> String {
    if from == to {
        return format!("kind {from}");
    }
    let number = *next;
    *next += 1;
    let (head, heads) = heads.split_first().map_or((0, heads), |(head, rest)| (*head, rest));
    let cut = if head == 0 { (from + to).div_ceil(2) } else { from + head };
    let no = lay_out(from, cut - 1, &[], next, lines);
    let yes = lay_out(cut, to, heads, next, lines);
    let line =
        format!("{number}. Has it {cut} or more rings? [rings >= {cut}] -> {yes} / {no}");
    lines.push((number, line));
    number.to_string()
}

#[test]
fn a_comb_and_a_long_path_are_told_from_an_even_key() {
    for (kinds, heads, expected) in [
        (6, &[][..], vec![]),
        (6, &[1, 1, 1, 1][..], vec![Code::Comb]),
        (12, &[][..], vec![]),
        (12, &[1, 1, 1, 2, 1, 1, 1][..], vec![Code::LongPath]),
    ] {
        let (matrix, text) = numbered(kinds, heads);
        let found = opinion(&matrix, &text, false);
        assert_eq!(codes(&found), expected, "{text}\n{found:#?}");
    }
}

/// Two rows of couplets, every answer on to the next row, and every character asked twice: a
/// kind of which nothing is known stands there in more forms than can be followed.
fn ladder(characters: usize, cell: &str) -> (Matrix, String) {
    let columns: Vec<String> = (0..characters).map(|c| format!("c{c}: a, b")).collect();
    let row = vec![cell; characters].join(" | ");
    let matrix = matrix(&format!("{}\nfirst | {row}\nsecond | {row}", columns.join("\n")));
    let layers = 2 * characters;
    let mut lines = Vec::new();
    for layer in 0..layers {
        for rail in 0..2 {
            if layer == 0 && rail == 1 {
                continue;
            }
            let number = if layer == 0 { 1 } else { 2 * layer + rail };
            let (yes, no) = if layer + 1 == layers {
                ("first or second".to_owned(), "second or first".to_owned())
            } else {
                ((2 * layer + 2).to_string(), (2 * layer + 3).to_string())
            };
            let character = layer % characters;
            lines.push(format!("{number}. Is it a? [c{character} = a] -> {yes} / {no}"));
        }
    }
    (matrix, lines.join("\n"))
}

#[test]
fn a_key_with_too_many_ways_says_so() {
    let (matrix, text) = ladder(16, "?");
    let report = check(&matrix, &key(&matrix, &text), None, &Settings::default());
    assert!(report.findings.iter().any(|finding| finding.code == Code::TooLarge));
    assert!(!report.works() && report.unfinished.len() == 2);
    let (matrix, text) = ladder(16, "a");
    let report = check(&matrix, &key(&matrix, &text), None, &Settings::default());
    assert!(report.findings.iter().all(|finding| finding.code != Code::TooLarge));
}

/// A key, or what is claimed of one, in which a code must appear; and a sound one beside it.
type Pair = fn() -> [Report; 2];

/// Codes that no change of one word in the drawn key brings about.
const BY_OTHER_MEANS: &[(Code, Pair)] = &[
    (Code::GoodQuestion, || {
        [true, false].map(|pupils_wrote_it| {
            let matrix = matrix(HEDGE);
            let settings = Settings { pupils_wrote_it, ..Settings::default() };
            check(&matrix, &key(&matrix, HEDGE_KEY), None, &settings)
        })
    }),
    (Code::CostWrong, || claims([claim(Share::from_integer(35)), claim(Share::new(71, 2))])),
    (Code::BoundWrong, || {
        let right = claim(Share::new(71, 2));
        let wrong = Claim { lower_bound: Share::from_integer(36), ..right.clone() };
        claims([wrong, right])
    }),
    (Code::GoalWrong, || {
        // By hand: the longest path has five questions.
        claims([4, 5].map(|questions| {
            let value = Share::from_integer(questions);
            let reached =
                vec![Reached { goal: Goal::ShortestLongestPath, value, then: None }, effort()];
            let goals = vec![Goal::ShortestLongestPath];
            let wishes = Wishes { goals, ..Wishes::default() };
            Claim { wishes, reached, ..claim(Share::new(71, 2)) }
        }))
    }),
    (Code::WishBroken, || {
        // The first question is about the character of the first column of the drawing.
        claims([[CharacterIx(0)].into(), BTreeSet::new()].map(|never| {
            let wishes = Wishes { never, ..Wishes::default() };
            Claim { wishes, ..claim(Share::new(71, 2)) }
        }))
    }),
    (Code::Comb, || [&[1, 1, 1, 1][..], &[]].map(|heads| of_rings(6, heads))),
    (Code::LongPath, || [&[1, 1, 1, 2, 1, 1, 1][..], &[]].map(|heads| of_rings(12, heads))),
    (Code::TooLarge, || {
        ["?", "a"].map(|cell| {
            let (matrix, text) = ladder(16, cell);
            check(&matrix, &key(&matrix, &text), None, &Settings::default())
        })
    }),
];

fn effort() -> Reached {
    Reached { goal: Goal::LeastEffort, value: Share::new(71, 2), then: None }
}

fn claims(of: [Claim; 2]) -> [Report; 2] {
    let matrix = matrix(HEDGE);
    let key = key(&matrix, HEDGE_KEY);
    of.map(|claim| check(&matrix, &key, Some(&claim), &Settings::default()))
}

fn of_rings(kinds: usize, heads: &[usize]) -> Report {
    let (matrix, text) = numbered(kinds, heads);
    check(&matrix, &key(&matrix, &text), None, &Settings::default())
}

#[test]
fn each_code_by_other_means_is_found_where_it_belongs_and_nowhere_else() {
    for (code, pair) in BY_OTHER_MEANS {
        let [broken, sound] = pair();
        let found = |report: &Report| codes(&report.findings).contains(code);
        assert!(found(&broken), "{code:?}: {:#?}", broken.findings);
        assert!(!found(&sound), "{code:?}: {:#?}", sound.findings);
    }
}

/// The findings of the first mutant of each code.
fn of_first_mutants() -> Vec<(Code, Vec<Finding>)> {
    let known = changed(HEDGE, &[("entire          | ? ", "entire          | 5-15 ")]);
    let of_key = OF_THE_KEY.iter().map(|mutant| {
        let matrix = matrix(&changed(HEDGE, mutant.table));
        (mutant.code, opinion(&matrix, &changed(HEDGE_KEY, mutant.key), false))
    });
    let of_table = OF_THE_TABLE.iter().map(|mutant| {
        let matrix = matrix(&changed(&known, mutant.table));
        (mutant.code, table(&matrix, &Settings::default()))
    });
    let by_other_means =
        BY_OTHER_MEANS.iter().map(|(code, pair)| (*code, pair()[0].findings.clone()));
    let mut seen = BTreeSet::new();
    let all = of_key.chain(of_table).chain(by_other_means);
    all.filter(|(code, _)| seen.insert(*code)).collect()
}

/// A code is covered only if what is found says what was broken: which question, which kinds,
/// which number. No code is left out.
#[test]
fn every_code_has_a_mutant_of_which_the_named_finding_is_told() {
    let mut covered = BTreeSet::new();
    for (code, found) in of_first_mutants() {
        let fact = named(code).unwrap_or_else(|| panic!("{code:?} is worked out"));
        let facts: Vec<_> = found.into_iter().map(|finding| finding.fact).collect();
        assert!(facts.contains(&fact), "{code:?}: {fact:#?} in {facts:#?}");
        covered.insert(code);
    }
    assert_eq!(covered, CODES.iter().copied().collect());
}
