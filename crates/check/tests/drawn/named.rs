//! What each mutant must be told of, worked out by hand from the drawings: the named finding.

use spinney_model::*;

fn names<const N: usize>(names: [&str; N]) -> Vec<String> {
    names.map(str::to_owned).to_vec()
}

fn step(couplet: u32, answer: Answer) -> Step {
    Step { couplet, answer }
}

fn end(name: &str) -> Vec<NameAtEnd> {
    vec![NameAtEnd::Kind(name.to_owned())]
}

fn mm(thousandths: i64) -> Written {
    let quantity = Quantity::from_thousandths(thousandths);
    Written { quantity, written_in: Some(WrittenIn::Millimetres) }
}

fn range(kind: &str, low: i64, high: i64) -> RangeOf {
    RangeOf { kind: kind.to_owned(), low: mm(low * 1000), high: mm(high * 1000) }
}

const YES: Answer = Answer::Yes;
const NO: Answer = Answer::No;

/// What is found of the first mutant of a code; None: nobody has worked it out.
pub(crate) fn named(code: Code) -> Option<Fact> {
    of_tree(code)
        .map(Fact::from)
        .or_else(|| of_ends(code).map(Fact::from))
        .or_else(|| of_answers(code).map(Fact::from))
        .or_else(|| of_table(code).map(Fact::from))
        .or_else(|| of_words(code))
        .or_else(|| by_other_means(code))
}

fn of_tree(code: Code) -> Option<OfTree> {
    Some(match code {
        Code::NumberTwice => OfTree::NumberTwice { number: 8, bearers: 2, meant: Some(9) },
        Code::NumberMissing => OfTree::NumberMissing {
            to: 99,
            from: vec![step(7, NO)],
            lost: names(["hazel"]),
            perhaps: None,
        },
        Code::NumbersSkip => OfTree::NumbersSkip { number: 12, expected: 9 },
        Code::NothingWritten => {
            OfTree::NothingWritten { question: 3, after: vec![NO], lost: names(["rowan"]) }
        }
        Code::Loop => OfTree::Loop { from: step(3, NO), to: 1, lost: names(["rowan"]) },
        Code::Unreachable => OfTree::Unreachable { question: 3, named_below: names(["rowan"]) },
        Code::BackWrong => OfTree::BackWrong { question: 3, back: 1, from: vec![2] },
        Code::WaysMeet => OfTree::WaysMeet { question: 9, from: vec![5, 8] },
        Code::SameBothWays => OfTree::SameBothWays { question: 10 },
        // A ladder of sixteen columns of which nobody knows anything.
        Code::TooLarge => OfTree::TooManyWays { kinds: names(["first", "second"]) },
        _ => return None,
    })
}

fn of_ends(code: Code) -> Option<OfEnds> {
    let astray = |kind: &str, answer, reads| Astray { kind: kind.to_owned(), answer, reads };
    Some(match code {
        Code::NeverComesOut => OfEnds::NeverComesOut {
            kind: "rose".to_owned(),
            reads: vec![end("elder")],
            all_linked: true,
        },
        Code::WrongPlace => OfEnds::WrongPlace {
            question: 7,
            about: "stalk".to_owned(),
            astray: vec![
                astray("lime", YES, vec![end("hazel")]),
                astray("hazel", NO, vec![end("lime")]),
            ],
        },
        Code::SecondPlace => OfEnds::SecondPlace {
            kind: "rowan".to_owned(),
            end: step(10, NO),
            wrong: step(2, NO),
        },
        Code::EndUnreached => {
            OfEnds::EndUnreached { end: step(10, YES), names: end("maple"), only_one: true }
        }
        // The form of ivy that is not lobed comes to question 9.
        Code::VariesUsedAsFixed => OfEnds::VariesUsedAsFixed {
            question: 4,
            about: "lobes".to_owned(),
            answer: NO,
            forms: vec![FormAstray {
                kind: "ivy".to_owned(),
                form: Form::States(names(["entire"])),
                reads: vec![end("lime")],
            }],
        },
        Code::PartsNothing => {
            OfEnds::PartsNothing { question: 10, answer: NO, kinds: names(["ivy"]) }
        }
        Code::CouldBeParted => OfEnds::CouldBeParted {
            end: step(8, NO),
            kinds: names(["ivy", "beech"]),
            about: "stalk".to_owned(),
        },
        _ => return None,
    })
}

fn of_answers(code: Code) -> Option<OfAnswers> {
    let (edge, leaflets, stalk) =
        ("edge".to_owned(), "leaflets".to_owned(), "stalk".to_owned());
    Some(match code {
        Code::BothLeads => {
            OfAnswers::BothLeads { question: 2, about: leaflets, kinds: names(["elder"]) }
        }
        Code::NeitherLead => {
            OfAnswers::NeitherLead { question: 2, about: leaflets, kinds: names(["ash"]) }
        }
        Code::DoesNotHave => OfAnswers::DoesNotHave {
            question: 2,
            about: edge,
            kinds: names(["ash", "elder", "rowan"]),
        },
        Code::MayNotHave => OfAnswers::MayNotHave {
            question: 6,
            about: edge,
            kinds: names(["hazel"]),
            governor: Some("place".to_owned()),
        },
        Code::NobodyRecorded => OfAnswers::NobodyRecorded {
            question: 7,
            about: stalk,
            kinds: names(["hazel"]),
            lost: vec![("hazel".to_owned(), YES)],
        },
        Code::ThresholdInside => OfAnswers::ThresholdInside {
            question: 7,
            about: stalk,
            at: mm(22_500),
            ranges: vec![range("hazel", 5, 30)],
        },
        Code::ThresholdNear => OfAnswers::ThresholdNear {
            question: 7,
            about: stalk,
            at: mm(22_500),
            ranges: vec![range("hazel", 5, 20)],
            margin: mm(3_000),
            // Twenty is less than ten times three.
            smaller_may_do: true,
        },
        Code::ThinEvidence => {
            OfAnswers::ThinEvidence { question: 7, about: stalk, kind: "hazel".to_owned() }
        }
        _ => return None,
    })
}

fn of_table(code: Code) -> Option<OfTable> {
    Some(match code {
        Code::NotSeparable => OfTable::NotSeparable { kinds: names(["beech", "holly"]) },
        Code::FragilePair => OfTable::FragilePair {
            kinds: ["ivy", "maple"].map(str::to_owned),
            about: "place".to_owned(),
            hard: true,
            close: false,
        },
        Code::GapTooNarrow => OfTable::GapTooNarrow {
            ranges: [range("hazel", 5, 15), range("lime", 18, 45)],
            about: "stalk".to_owned(),
            margin: mm(3_000),
            smaller_may_do: false,
            open: Vec::new(),
        },
        Code::Unknown => OfTable::Unknown {
            cells: 1,
            columns: vec![CellsOf { about: "edge".to_owned(), kinds: names(["maple"]) }],
            more_columns: 0,
        },
        _ => return None,
    })
}

fn of_words(code: Code) -> Option<Fact> {
    let (question, text, fact) = match code {
        Code::BareComparative => {
            (5, "Is the leaf big?", OfWords::Bare { word: "big".to_owned() })
        }
        Code::VagueWord => {
            let word = "usually".to_owned();
            (5, "Do the leaves usually stand opposite?", OfWords::Vague { word })
        }
        Code::NotYesNo => (5, "Do the leaves stand opposite or alternate?", OfWords::Choice),
        Code::Negative => {
            let word = "not".to_owned();
            (1, "Is the leaf not in one piece?", OfWords::Negative { word })
        }
        Code::NameInQuestion => {
            (1, "Is it a kind of ash?", OfWords::NamesKind { kind: "ash".to_owned() })
        }
        Code::TooManyWords => (
            8,
            "Is the edge of the leaf that you hold in your hand now spiny?",
            OfWords::TooManyWords { words: 14, most: 12 },
        ),
        Code::NoUnit => {
            let number = "22.5".to_owned();
            (7, "Is the leaf stalk 22.5 or longer?", OfWords::NoUnit { number, sign: "mm" })
        }
        _ => return None,
    };
    let of = TextOf { question, which: WhichText::Question, text: text.to_owned() };
    Some(Fact::Words(of, fact))
}

fn by_other_means(code: Code) -> Option<Fact> {
    let whole = Share::from_integer;
    let (half, goal) = (Share::new(71, 2), Goal::ShortestLongestPath);
    Some(match code {
        Code::TouchCaution => OfShape::TouchCaution {
            question: 8,
            kinds: names(["holly"]),
            otherwise: Some("edge".to_owned()),
        }
        .into(),
        Code::GoodQuestion => OfShape::GoodQuestion { question: 1, kinds: 9 }.into(),
        // Six kinds: after four questions two of them are left for the fifth.
        Code::Comb => OfShape::Comb { question: 1, in_a_row: 4 }.into(),
        // Seven questions for the first eight of twelve kinds, and two for the four others.
        Code::LongPath => OfShape::LongPath { longest: 9, kinds: 12, even: 4 }.into(),
        Code::CostWrong => OfClaim::CostWrong {
            effort: Some(Differs { is: half, said: whole(35) }),
            mean_questions: None,
            longest: None,
        }
        .into(),
        Code::BoundWrong => OfClaim::BoundAboveKey { bound: whole(36), takes: half }.into(),
        Code::GoalWrong => {
            let differs = Differs { is: whole(5), said: whole(4) };
            OfClaim::GoalWrong(vec![GoalWrong::Reaches(goal, differs)]).into()
        }
        Code::WishBroken => OfWishes::NotToBeAsked {
            question: 1,
            about: "form".to_owned(),
            why: WhyLeftOut::Never,
        }
        .into(),
        _ => return None,
    })
}
