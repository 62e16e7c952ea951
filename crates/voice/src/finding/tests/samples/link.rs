//! One finding of links, wishes, files and pictures of each sort, and one more wherever its
//! sentence takes another turn.

use spinney_model::*;

use super::{names, pair, text};

/// Every sample.
pub(super) fn all() -> Vec<Fact> {
    let mut all: Vec<Fact> = Vec::new();
    all.extend(links().into_iter().map(Fact::Link));
    all.extend(lines().into_iter().map(Fact::Links));
    all.extend(key_files().into_iter().map(Fact::KeyFile));
    all.extend(unmet().into_iter().map(Fact::Unmet));
    all.extend(pictures().into_iter().map(Fact::Picture));
    all
}

fn links() -> Vec<OfLink> {
    let (question, about, line) = (4, || text("edge"), || text("question 4: edge = toothed"));
    let meanings = || names(["edge = toothed", "feel = soft", "lobes = lobed"]);
    let may = |meanings, denied, unit| OfLink::MayAsk {
        question,
        meanings,
        denied,
        unit,
        line: line(),
    };
    let there = |can| OfLink::NothingThere { question, about: about(), can };
    vec![
        OfLink::NoRatio { question, one: text("stalk length"), other: text("blade length") },
        OfLink::SpeaksOf { question, word: text("fruit") },
        OfLink::NotYesOrNo { question },
        OfLink::TwoThings { question },
        OfLink::TwoChoices { question },
        OfLink::OneOfTwoNumbers { question, about: text("number of leaflets") },
        OfLink::ExactlyOneNumber { question, about: text("number of leaflets") },
        OfLink::SeveralNumbers { question },
        OfLink::EveryState { question, about: about() },
        OfLink::NoMeasure {
            question,
            word: text("big"),
            example: Some((text("stalk length"), "mm")),
        },
        OfLink::NoMeasure { question, word: text("big"), example: None },
        may(meanings(), false, None),
        may(meanings(), true, None),
        may(names(["stalk length >= 20 mm"]), false, Some("mm")),
        OfLink::AsksBoth {
            question,
            first: text("edge = toothed"),
            second: text("feel = soft"),
            line: line(),
        },
        OfLink::NoWords { question },
        OfLink::NamesAKind { question, kind: text("holly"), name: text("hollies") },
        there(CanAsk::Whether),
        there(CanAsk::States(names(["toothed", "smooth"]))),
        there(CanAsk::Count),
        there(CanAsk::Measure("mm")),
        OfLink::Nothing { question, example: Some(text("leaf edge")) },
        OfLink::Nothing { question, example: None },
        OfLink::NotInTable { question, what: NotInTable::Named(text("red")) },
        OfLink::NotInTable { question, what: NotInTable::Of(text("edge")) },
    ]
}

fn lines() -> Vec<OfLinks> {
    let (about, known) = (|| text("edge"), || names(["toothed", "smooth"]));
    let (column, kind) = (|| text("stalk length"), || Some(text("hazel")));
    let lines = vec![
        LinksLine::Unread { text: text("hello") },
        LinksLine::Again { question: 4 },
        LinksLine::NoEquals { text: text("Hasel hazel"), example: kind() },
        LinksLine::NoSuchKind { text: text("hazle"), example: kind() },
        LinksLine::NoKind { example: None },
        LinksLine::NothingAsked { text: text("edge") },
        LinksLine::NumberOfWords { about: about(), instead: text("edge = toothed") },
        LinksLine::NoSuchColumn { text: text("rim"), known: names(["edge", "feel"]) },
        LinksLine::NoSuchState { about: about(), text: text("red"), known: known() },
        LinksLine::NotSomeStates { about: about(), known: known() },
        LinksLine::NumberUnread { text: text("long"), column: column(), unit: Some("mm") },
        LinksLine::NumberUnread { text: text("many"), column: text("leaflets"), unit: None },
        LinksLine::NumberUnfit { about: column(), column: column(), unit: Some("mm") },
        LinksLine::Exactly {
            about: column(),
            number: text("12 mm"),
            at_least: text("question 4: stalk length >= 12 mm"),
            below: text("question 4: stalk length < 12 mm"),
        },
    ];
    let lines = lines.into_iter().map(|why| OfLinks::Line { line: 3, why });
    std::iter::once(OfLinks::NoSuchQuestion { question: 12 }).chain(lines).collect()
}

fn key_files() -> Vec<OfKeyFile> {
    let wishes = [
        StrangeWish::Named(text("Hasel")),
        StrangeWish::Asked(NotInTable::Named(text("red"))),
        StrangeWish::Goal(text("few dots")),
        StrangeWish::Early,
        StrangeWish::Hand(text("root")),
        StrangeWish::Season(text("monsoon")),
        StrangeWish::Priced(text("gold")),
    ];
    let mut all: Vec<_> = wishes.map(|name| OfKeyFile::Wishes { name }).into();
    all.push(OfKeyFile::TooManyKept { most: 500 });
    all.push(OfKeyFile::Proof { name: text("hazle") });
    all
}

fn unmet() -> Vec<OfUnmet> {
    let (about, kind) = (|| text("edge"), text("holly"));
    let goals = [
        Goal::LeastEffort,
        Goal::ShortestLongestPath,
        Goal::MostRightEnds,
        Goal::EvenTeaching,
        Goal::FewestWords,
        Goal::FewestRulers,
    ];
    let refused = |wish, why| OfUnmet::Refused { wish, why };
    let question = || WishedFor::Question(text("Is the edge toothed?"));
    let mut all = vec![
        refused(question(), WhyUnmet::Blocked { kind, about: about() }),
        refused(question(), WhyUnmet::AllAlike),
        refused(question(), WhyUnmet::NoSuchState { about: about() }),
        refused(question(), WhyUnmet::AfterRefused),
        refused(WishedFor::Order(about()), WhyUnmet::LeftOut { about: about() }),
        refused(WishedFor::Early(EarlyOf::Apart(pair())), WhyUnmet::NeverParted),
        refused(WishedFor::Early(EarlyOf::Out(text("yew"))), WhyUnmet::NeverParted),
    ];
    all.extend(goals.map(|goal| refused(WishedFor::Goal(goal), WhyUnmet::TooLarge)));
    for pairs in [2, 7, 9] {
        all.push(OfUnmet::LeftTogether { pairs: vec![pair(); pairs] });
    }
    all
}

fn pictures() -> Vec<OfPicture> {
    let troubles = [
        FileTrouble::NotThere,
        FileTrouble::NoRight,
        FileTrouble::IsThere,
        FileTrouble::NotAFolder,
        FileTrouble::IsAFolder,
        FileTrouble::ReadOnly,
        FileTrouble::Full,
        FileTrouble::TooLarge,
        FileTrouble::BadName,
        FileTrouble::InUse,
        FileTrouble::NoAddress,
        FileTrouble::NoAnswer,
        FileTrouble::Closed,
        FileTrouble::NoMemory,
        FileTrouble::Gone,
        FileTrouble::DiskFailed,
        FileTrouble::DiskRefused,
        FileTrouble::BadPlace,
        FileTrouble::NotHeld,
        FileTrouble::Unknown,
    ];
    let why = [
        WhyNoPicture::TooManyBytes,
        WhyNoPicture::Elsewhere,
        WhyNoPicture::NoFile,
        WhyNoPicture::TooLarge(32),
        WhyNoPicture::NotRead,
        WhyNoPicture::TooManyPixels,
    ];
    let why = why.into_iter().chain(troubles.map(WhyNoPicture::File));
    let left_out =
        |why| OfPicture::LeftOut { kind: text("hazel"), picture: text("hazel.png"), why };
    let damaged = OfPicture::Damaged { kind: text("hazel") };
    why.map(left_out).chain(std::iter::once(damaged)).collect()
}
