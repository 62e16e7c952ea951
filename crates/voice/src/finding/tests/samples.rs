//! One finding of each sort, and one more wherever its sentence takes another turn.

use spinney_model::*;

mod link;
mod read;

fn text(text: &str) -> String {
    text.to_owned()
}

fn names<const N: usize>(names: [&str; N]) -> Vec<String> {
    names.map(text).to_vec()
}

fn pair() -> [String; 2] {
    ["hazel", "lime"].map(text)
}

fn step(couplet: u32, answer: Answer) -> Step {
    Step { couplet, answer }
}

fn figure(thousandths: i64, unit: WrittenIn) -> Written {
    let quantity = Quantity::from_thousandths(thousandths);
    Written { quantity, written_in: Some(unit) }
}

fn mm(thousandths: i64) -> Written {
    figure(thousandths, WrittenIn::Millimetres)
}

fn range(kind: &str, low: Written, high: Written) -> RangeOf {
    RangeOf { kind: text(kind), low, high }
}

fn end(name: &str) -> Vec<NameAtEnd> {
    vec![NameAtEnd::Kind(text(name))]
}

fn cell(about: &str, kind: &str) -> CellOf {
    CellOf { about: text(about), kind: text(kind) }
}

fn whole(number: i128) -> Share {
    Share::from_integer(number)
}

fn differs(is: i128, said: i128) -> Differs<Share> {
    Differs { is: whole(is), said: whole(said) }
}

fn wanted(form: Form) -> WhatIsAsked {
    WhatIsAsked::Of { about: text("edge"), form }
}

const YES: Answer = Answer::Yes;
const NO: Answer = Answer::No;

/// Every sample, family by family.
pub(super) fn all() -> Vec<Fact> {
    let mut all: Vec<Fact> = Vec::new();
    all.extend(tree().into_iter().map(Fact::Tree));
    all.extend(ends().into_iter().map(Fact::Ends));
    all.extend(answers().into_iter().map(Fact::Answers));
    all.extend(table().into_iter().map(Fact::Table));
    all.extend(claim().into_iter().map(Fact::Claim));
    all.extend(wishes().into_iter().map(Fact::Wishes));
    all.extend(words());
    all.extend(shape().into_iter().map(Fact::Shape));
    all.extend(key_read().into_iter().map(Fact::KeyRead));
    all.extend(read::all());
    all.extend(link::all());
    all
}

fn tree() -> Vec<OfTree> {
    let many = (1..=10).map(|n| format!("kind {n}")).collect();
    vec![
        OfTree::NumberTwice { number: 8, bearers: 2, meant: None },
        OfTree::NumberTwice { number: 8, bearers: 3, meant: Some(9) },
        OfTree::NumberMissing {
            to: 9,
            from: vec![step(10, NO)],
            lost: names(["holly"]),
            perhaps: None,
        },
        OfTree::NumberMissing {
            to: 9,
            from: vec![step(3, YES), step(10, NO)],
            lost: names(["holly", "ivy"]),
            perhaps: Some(4),
        },
        OfTree::NumberMissing {
            to: 9,
            from: vec![step(1, YES), step(3, YES), step(10, NO)],
            lost: Vec::new(),
            perhaps: None,
        },
        OfTree::NumbersSkip { number: 12, expected: 9 },
        OfTree::NothingWritten { question: 3, after: vec![YES, NO], lost: Vec::new() },
        OfTree::Loop { from: step(3, NO), to: 1, lost: names(["rowan"]) },
        OfTree::Unreachable { question: 3, named_below: Vec::new() },
        OfTree::Unreachable { question: 3, named_below: names(["ash"]) },
        OfTree::Unreachable { question: 3, named_below: names(["ash", "rowan"]) },
        OfTree::BackWrong { question: 3, back: 1, from: vec![2, 4] },
        OfTree::WaysMeet { question: 9, from: vec![6, 8] },
        OfTree::SameBothWays { question: 10 },
        OfTree::TooManyWays { kinds: many },
    ]
}

fn ends() -> Vec<OfEnds> {
    let strange = vec![NameAtEnd::Kind(text("lime")), NameAtEnd::Strange(text("hazle"))];
    let astray = |kind: &str, answer, reads| Astray { kind: text(kind), answer, reads };
    let wrong = |astray| OfEnds::WrongPlace { question: 6, about: text("stalk"), astray };
    let several = (1..=9).map(|n| end(&format!("kind {n}"))).collect();
    let varies = |form, reads| OfEnds::VariesUsedAsFixed {
        question: 2,
        about: text("leaflets"),
        answer: YES,
        forms: vec![FormAstray { kind: text("bramble"), form, reads }],
    };
    let entire = Form::States(names(["entire", "wavy"]));
    let never =
        |reads, all_linked| OfEnds::NeverComesOut { kind: text("rowan"), reads, all_linked };
    vec![
        never(Vec::new(), true),
        never(vec![strange], true),
        never(several, false),
        OfEnds::NoQuestions { about: text("edge") },
        wrong(vec![astray("hazel", YES, vec![end("lime")])]),
        wrong(vec![
            astray("hazel", YES, vec![end("lime"), end("oak")]),
            astray("lime", NO, Vec::new()),
        ]),
        varies(
            Form::AtLeast(Written { quantity: Quantity::from_whole(5), written_in: None }),
            vec![end("rose")],
        ),
        varies(Form::Below(mm(40_000)), Vec::new()),
        varies(Form::Between(mm(4_000), mm(22_500)), vec![end("rose")]),
        varies(Form::Exactly(mm(5_000)), vec![end("rose")]),
        varies(entire, vec![end("rose")]),
        OfEnds::SecondPlace { kind: text("elder"), end: step(10, YES), wrong: step(2, NO) },
        OfEnds::SecondPlace { kind: text("elder"), end: step(2, NO), wrong: step(2, NO) },
        OfEnds::EndUnreached { end: step(10, YES), names: end("maple"), only_one: false },
        OfEnds::EndUnreached { end: step(10, YES), names: end("maple"), only_one: true },
        OfEnds::EndOnlyGuessed {
            end: step(2, YES),
            names: end("lime"),
            kinds: names(["hazel"]),
            cells: vec![cell("lobes", "hazel"), cell("Is it soft?", "hazel")],
        },
        OfEnds::PartsNothing { question: 5, answer: NO, kinds: names(["hazel", "lime"]) },
        OfEnds::NamedTooOften { end: step(4, YES), kinds: names(["maple"]) },
        OfEnds::CouldBeParted {
            end: step(4, YES),
            kinds: pair().to_vec(),
            about: text("lobes"),
        },
        OfEnds::CouldBeParted {
            end: step(4, YES),
            kinds: pair().to_vec(),
            about: text("Is it “soft”?"),
        },
    ]
}

fn answers() -> Vec<OfAnswers> {
    let question = 7;
    let (one, two) = (names(["hazel"]), pair().to_vec());
    let recorded = |about: &str, lost| OfAnswers::NobodyRecorded {
        question,
        about: text(about),
        kinds: names(["lime"]),
        lost,
    };
    let may = |governor: Option<&str>| OfAnswers::MayNotHave {
        question,
        about: text("edge"),
        kinds: names(["hazel"]),
        governor: governor.map(text),
    };
    let inside = |ranges| OfAnswers::ThresholdInside {
        question,
        about: text("stalk"),
        at: mm(22_500),
        ranges,
    };
    let near = |unit, smaller_may_do| OfAnswers::ThresholdNear {
        question,
        about: text("stalk"),
        at: figure(53_340, unit),
        ranges: vec![range("hazel", figure(25_400, unit), figure(50_800, unit))],
        margin: figure(25_400, unit),
        smaller_may_do,
    };
    let hazel = range("hazel", mm(5_000), mm(30_500));
    let lime = range("lime", mm(25_000), mm(25_000));
    let about = || text("edge");
    vec![
        OfAnswers::BothLeads { question, about: about(), kinds: one.clone() },
        OfAnswers::BothLeads { question, about: about(), kinds: two.clone() },
        OfAnswers::NeitherLead { question, about: about(), kinds: one.clone() },
        OfAnswers::NeitherLead { question, about: about(), kinds: two.clone() },
        OfAnswers::DoesNotHave { question, about: about(), kinds: one },
        OfAnswers::DoesNotHave { question, about: about(), kinds: two },
        may(Some("form")),
        may(None),
        recorded("edge", vec![(text("lime"), YES), (text("lime"), NO)]),
        recorded("Is it “soft”?", Vec::new()),
        inside(vec![hazel.clone()]),
        inside(vec![hazel, lime]),
        near(WrittenIn::Inches, false),
        near(WrittenIn::Millimetres, true),
        OfAnswers::ThresholdNear {
            question,
            about: text("height"),
            at: figure(609_600, WrittenIn::Feet),
            ranges: vec![range(
                "hazel",
                figure(304_800, WrittenIn::Feet),
                figure(304_800, WrittenIn::Feet),
            )],
            margin: figure(5_000, WrittenIn::Degrees),
            smaller_may_do: false,
        },
        OfAnswers::ThinEvidence { question, kind: text("hazel"), about: text("stalk") },
    ]
}

fn table() -> Vec<OfTable> {
    let way = |separates| InTheWay {
        about: text("stalk"),
        separates,
        without: Vec::new(),
        perhaps: Vec::new(),
        between: Vec::new(),
    };
    let three = || names(["elm", "hazel", "lime"]);
    let blocked = |because, fill_in| OfTable::Blocked { kinds: three(), because, fill_in };
    let fragile =
        |hard, close| OfTable::FragilePair { kinds: pair(), about: text("lobes"), hard, close };
    let narrow = |open, smaller_may_do| OfTable::GapTooNarrow {
        ranges: [range("hazel", mm(30_000), mm(35_000)), range("lime", mm(40_000), mm(40_000))],
        about: text("stalk"),
        margin: mm(3_000),
        smaller_may_do,
        open,
    };
    let edges = CellsOf { about: text("edge"), kinds: pair().to_vec() };
    let unknown = |cells, more_columns| OfTable::Unknown {
        cells,
        columns: vec![edges.clone()],
        more_columns,
    };
    vec![
        OfTable::NotSeparable { kinds: three() },
        blocked(
            vec![
                InTheWay {
                    without: names(["holly"]),
                    perhaps: names(["ivy"]),
                    between: names(["oak"]),
                    ..way(Some(pair()))
                },
                InTheWay { without: pair().to_vec(), between: pair().to_vec(), ..way(None) },
            ],
            None,
        ),
        blocked(
            vec![InTheWay { perhaps: pair().to_vec(), ..way(None) }],
            Some(CellsOf { about: text("form"), kinds: names(["holly"]) }),
        ),
        fragile(true, true),
        fragile(true, false),
        fragile(false, true),
        narrow(Vec::new(), false),
        narrow(vec![cell("edge", "hazel"), cell("edge", "lime")], true),
        OfTable::MoreTooNarrow { pairs: 1 },
        OfTable::MoreTooNarrow { pairs: 276 },
        unknown(1, 0),
        unknown(2, 1),
        unknown(7, 3),
        OfTable::TooManyGroups,
        OfTable::TooManyKinds,
    ]
}

fn claim() -> Vec<OfClaim> {
    let goals =
        |value| Goal::ALL.map(|goal| GoalWrong::Reaches(goal, differs(value, 9))).to_vec();
    let best = |best| OfClaim::BetterKey { best, said: whole(3) };
    let mut silent: Vec<GoalWrong> = Goal::ALL.map(GoalWrong::NothingSaid).to_vec();
    silent.push(GoalWrong::NotCounted(Goal::EvenTeaching));
    silent.push(GoalWrong::NewWords(differs(16, 17)));
    vec![
        OfClaim::EffortNotAdded,
        OfClaim::CostWrong {
            effort: Some(differs(32, 31)),
            mean_questions: Some(Differs { is: Share::new(7, 2), said: whole(3) }),
            longest: Some(Differs { is: 5, said: 4 }),
        },
        OfClaim::CostWrong { effort: None, mean_questions: Some(differs(1, 2)), longest: None },
        OfClaim::BoundAboveKey { bound: whole(36), takes: Share::new(71, 2) },
        OfClaim::NotAtBound { takes: whole(36), bound: whole(34) },
        OfClaim::BoundAboveSome { bound: whole(9), least: whole(8) },
        OfClaim::GoalWrong(goals(1)),
        OfClaim::GoalWrong(goals(2)),
        OfClaim::GoalWrong(silent),
        OfClaim::ProofFails(ProofFault::DoesNotFit),
        OfClaim::ProofFails(ProofFault::CannotSeparate { kinds: pair().to_vec() }),
        OfClaim::ProofFails(ProofFault::SaysTooMuch {
            kinds: pair().to_vec(),
            about: text("lobes"),
        }),
        OfClaim::ProofFails(ProofFault::ShowsLess {
            claimed: Reaches::Goal(Goal::LeastEffort, whole(8)),
            least: whole(7),
        }),
        best(Reaches::AllNewWords(whole(2))),
        best(Reaches::Apart(pair(), 1)),
        best(Reaches::Apart(pair(), 2)),
        best(Reaches::Out(text("hazel"), 1)),
        best(Reaches::Out(text("hazel"), 2)),
        OfClaim::NoKeyReaches {
            best: Reaches::Goal(Goal::LeastEffort, whole(8)),
            said: whole(4),
        },
    ]
}

fn wishes() -> Vec<OfWishes> {
    let left_out = |why| OfWishes::NotToBeAsked { question: 1, about: text("edge"), why };
    let early = [EarlyOf::Apart(pair()), EarlyOf::Out(text("beech"))];
    let mut all = vec![
        OfWishes::KeptNotAsked { after: None, wanted: wanted(Form::Nothing) },
        OfWishes::KeptNotAsked { after: Some(step(2, YES)), wanted: WhatIsAsked::NotOfTable },
        OfWishes::KeptOther {
            after: None,
            wanted: wanted(Form::States(names(["toothed", "spiny"]))),
            question: 1,
            asks: Some(wanted(Form::AtLeast(mm(22_500)))),
        },
        OfWishes::KeptOther {
            after: Some(step(2, NO)),
            wanted: wanted(Form::Below(mm(22_500))),
            question: 3,
            asks: None,
        },
        left_out(WhyLeftOut::Never),
        OfWishes::SentToTouch {
            question: 1,
            kinds: names(["holly"]),
            otherwise: text("lobes"),
        },
        OfWishes::TouchNotSo { question: 1 },
        OfWishes::TouchNotSaid { question: 1 },
        OfWishes::OutOfOrder { question: 1, about: text("edge"), first: text("lobes") },
    ];
    all.extend(SeenOn::ALL.map(|hand| left_out(WhyLeftOut::InTheHand(hand))));
    all.extend(Season::ALL.map(|season| left_out(WhyLeftOut::InSeason(season))));
    for wish in early {
        all.push(OfWishes::EarlyNotSaid { wish: wish.clone() });
        for (within, up_to) in [(1, Some(3)), (2, None)] {
            all.push(OfWishes::Late { wish: wish.clone(), within, takes: 3, up_to });
        }
    }
    all
}

fn words() -> Vec<Fact> {
    let of = |which, text: &str| TextOf { question: 2, which, text: text.to_owned() };
    let question = || of(WhichText::Question, "Is it “big” and soft?");
    let word = || text("big");
    vec![
        Fact::Words(question(), OfWords::Bare { word: word() }),
        Fact::Words(question(), OfWords::Compared { word: text("the others") }),
        Fact::Words(question(), OfWords::Vague { word: text("usually") }),
        Fact::Words(question(), OfWords::NotYesNo),
        Fact::Words(question(), OfWords::TwoAtOnce),
        Fact::Words(question(), OfWords::Choice),
        Fact::Words(
            of(WhichText::FirstLead, "Not lobed"),
            OfWords::Negative { word: text("not") },
        ),
        Fact::Words(question(), OfWords::NamesKind { kind: text("holly") }),
        Fact::Words(question(), OfWords::TooManyWords { words: 14, most: 12 }),
        Fact::Words(
            of(WhichText::SecondLead, "Stalk 22.5 or longer"),
            OfWords::NoUnit { number: text("22.5"), sign: "mm" },
        ),
    ]
}

fn shape() -> Vec<OfShape> {
    let touch = |kinds, otherwise: Option<&str>| OfShape::TouchCaution {
        question: 8,
        kinds,
        otherwise: otherwise.map(text),
    };
    vec![
        touch(names(["holly"]), None),
        touch(names(["holly", "yew"]), Some("edge")),
        OfShape::Comb { question: 1, in_a_row: 4 },
        OfShape::LongPath { longest: 9, kinds: 12, even: 4 },
        OfShape::GoodQuestion { question: 1, kinds: 9 },
    ]
}

fn key_read() -> Vec<OfKeyRead> {
    let question = 4;
    let what = [OneTooMany::ThirdLead, OneTooMany::Twice(YES), OneTooMany::Twice(NO)];
    let mut all = vec![
        OfKeyRead::NoNumberedQuestion,
        OfKeyRead::OnlyFirstQuestions { read: 20_000 },
        OfKeyRead::OnlyFirstLines { read: 40_000 },
        OfKeyRead::LineTooLong { letters: 4_096 },
        OfKeyRead::LineNeither { line: 5 },
        OfKeyRead::LeadsNobodyKnowsWhere { question, written: text("5 ivy") },
        OfKeyRead::NameNotSure {
            question,
            written: text("Hasel"),
            near: names(["hazel", "hazelnut"]),
        },
        OfKeyRead::NameUnknown { question, written: text("gooseberry") },
    ];
    all.extend(what.map(|what| OfKeyRead::LeadTooMany { question, what, line: 7 }));
    all
}
