//! One finding of the reader of tables of each sort, and one more wherever its sentence takes
//! another turn.

use spinney_model::*;

use super::{names, pair, text};

/// C7 of a table, called by its address.
fn at() -> NamedCell {
    CellAt { sheet: text("hedge.csv"), row: 6, column: 2 }.into()
}

fn called(called: Called) -> NamedCell {
    NamedCell { called, ..at() }
}

fn elm() -> NamedCell {
    called(Called::KindUnder(text("elm"), text("blade (mm)")))
}

fn about() -> String {
    text("edge")
}

/// Every sample.
pub(super) fn all() -> Vec<Fact> {
    let mut all: Vec<Fact> = Vec::new();
    all.extend(cells().into_iter().map(Fact::Cell));
    all.extend(columns().into_iter().map(Fact::Column));
    all.extend(sheets().into_iter().map(Fact::Sheet));
    all.extend(more().into_iter().map(Fact::More));
    all
}

fn more() -> Vec<MoreLike> {
    let like = || Box::new(Fact::Sheet(OfSheet::Nameless { at: at() }));
    vec![
        MoreLike { more: 1, last: LastAt::Cell(elm()), like: like() },
        MoreLike { more: 2, last: LastAt::Cell(called(Called::Headings)), like: like() },
        MoreLike { more: 95, last: LastAt::Cell(at()), like: like() },
        MoreLike { more: 2, last: LastAt::Named(about()), like: like() },
    ]
}

fn typed(at: NamedCell) -> CellTyped {
    CellTyped { text: text("a lot"), kind: text("elm"), about: text("blade"), at }
}

fn cells() -> Vec<OfCell> {
    let mut all = Vec::new();
    all.extend(troubles().map(|trouble| OfCell::Odd { cell: typed(at()), trouble }));
    let cells = [called(Called::Here), elm()];
    all.extend(
        cells.map(|at| OfCell::Odd { cell: typed(at), trouble: CellTrouble::NotANumber }),
    );
    let reads = [
        ReadAs::Unknown,
        ReadAs::Each { words: names(["lobed", "entire"]) },
        ReadAs::Each { words: Vec::new() },
        ReadAs::OneRange,
        ReadAs::State,
        ReadAs::SomethingToSee,
        ReadAs::Word,
    ];
    all.extend(reads.map(|read| OfCell::ReadAs { cell: typed(at()), read }));
    let errors = [
        SheetError::LostCell,
        SheetError::NotFound,
        SheetError::CannotCalculate,
        SheetError::UnknownWord,
        SheetError::DividedByNothing,
        SheetError::NoNumber,
        SheetError::LostCells,
    ];
    all.extend(errors.map(|error| OfCell::Error { cell: typed(at()), error }));
    for at in [at(), called(Called::Here), elm()] {
        all.push(OfCell::Undeclared { state: text("wavy"), about: about(), at });
    }
    for at in [Some(at()), Some(elm()), None] {
        let states = names(["toothed", "tooted"]).try_into().expect("two");
        all.push(OfCell::Alike { states, about: about(), at });
    }
    all.extend(others());
    all
}

fn troubles() -> [CellTrouble; 20] {
    let ambiguous = |decimals: Option<&str>| CellTrouble::Ambiguous {
        thousands: text("1200 mm"),
        decimals: decimals.map(text),
    };
    [
        CellTrouble::Mixed,
        CellTrouble::HalfCounted,
        CellTrouble::Shares,
        CellTrouble::NoCount,
        CellTrouble::NotANumber,
        CellTrouble::Backwards { turned: Some(text("200-800")) },
        CellTrouble::Backwards { turned: None },
        CellTrouble::OneEnd,
        CellTrouble::OutOf,
        ambiguous(Some("1.2 mm")),
        ambiguous(None),
        CellTrouble::AWord,
        CellTrouble::NotWhole,
        CellTrouble::Wide,
        CellTrouble::BelowNothing,
        CellTrouble::OtherUnit,
        CellTrouble::ANumber,
        CellTrouble::NeitherYesNorNo,
        CellTrouble::Date { low: 3, high: 5 },
        CellTrouble::TwoMeasurements,
    ]
}

fn others() -> Vec<OfCell> {
    let governed = |at| OfCell::GovernedButPresent {
        kind: text("elm"),
        about: text("leaflets"),
        above: text("form"),
        at,
    };
    let kind = |at| KindAt { kind: text("elm"), at };
    let not_recorded = |kinds, more, beside_marks| OfCell::NotRecorded {
        about: about(),
        kinds,
        more,
        beside_marks,
    };
    let [one, other] = pair();
    vec![
        governed(at()),
        governed(elm()),
        OfCell::SomeHaveNone { about: about(), kind: text("elm"), none: 2, finds: 12 },
        OfCell::NoRatio {
            about: text("stalk by blade"),
            kind: text("elm"),
            parts: [one, other],
        },
        not_recorded(vec![kind(at()), kind(elm())], 0, false),
        not_recorded(vec![kind(at())], 3, true),
        OfCell::LettersSpoilt { text: text("BÃ¤rlauch"), right: text("Bärlauch"), at: at() },
        OfCell::CutAtComma { before: text("long"), behind: text("thin"), at: at() },
        OfCell::TooFar { most: 1_000, at: at() },
        OfCell::TooLong { most: 4_096, at: at() },
        OfCell::TooLong { most: 4_096, at: called(Called::Here) },
        OfCell::Formula { at: at() },
        OfCell::Formula { at: called(Called::Here) },
        OfCell::Formula { at: called(Called::Kind(text("elm"))) },
        OfCell::TextLost { at: at() },
        OfCell::ShowsError { error: text("#REF!"), at: at() },
        OfCell::MadeADate { at: at() },
        OfCell::Merged { text: text("wavy"), at: at(), to: called(Called::Row) },
    ]
}

fn columns() -> Vec<OfColumn> {
    let twice = |at| OfColumn::HeadingTwice { heading: about(), called: text("edge (2)"), at };
    let nameless = |at| OfColumn::NoHeading { called: text("column C"), at };
    let no_unit = |because| OfColumn::NoUnit { about: about(), because };
    let cell = |at| NotCounts::Cell { text: text("2.5"), kind: text("elm"), at };
    let read_right =
        |twice| OfColumn::ReadRight { about: about(), name: text("elm"), twice, at: at() };
    let mut all = vec![
        twice(at()),
        twice(called(Called::Heading(about()))),
        nameless(at()),
        nameless(called(Called::Headings)),
        OfColumn::Touch { about: about() },
        OfColumn::InOrder { about: about(), states: names(["small", "middling", "large"]) },
        OfColumn::MarginOtherUnit { about: about() },
        OfColumn::NumberedNames { about: about() },
        OfColumn::NumberWords { about: about(), text: text("five"), at: at() },
        OfColumn::TooManyCounts { about: about(), most: 64 },
        OfColumn::UnitOfOthers { about: about(), unit: WrittenIn::Centimetres, at: at() },
        OfColumn::UnitOfOthers { about: about(), unit: WrittenIn::Centimetres, at: elm() },
        OfColumn::UnitAssumed { about: about(), unit: Unit::Millimetres, at: at() },
        no_unit(cell(at())),
        no_unit(cell(elm())),
        no_unit(NotCounts::MoreThan(64)),
        OfColumn::Remarks { about: about() },
        OfColumn::Notes { about: about(), most: 64 },
        OfColumn::StatesNotOnce { about: about(), most: 64 },
        OfColumn::DoesNotApply { about: text("leaflets"), above: text("form"), cells: 1 },
        OfColumn::DoesNotApply { about: text("leaflets"), above: text("form"), cells: 3 },
        OfColumn::NoRoom { about: about() },
        read_right(false),
        read_right(true),
    ];
    all.extend(ratios().map(|why| OfColumn::NoRatio {
        about: text("slimness"),
        why,
        at: at(),
    }));
    all.extend(conditions().map(|why| OfColumn::NoCondition {
        about: text("leaflets"),
        why,
        at: called(Called::RowOfSheet),
    }));
    all
}

fn ratios() -> [WhyNoRatio; 6] {
    [
        WhyNoRatio::NoColumn(text("stalk")),
        WhyNoRatio::NotTwo(text("stalk blade")),
        WhyNoRatio::OfARatio,
        WhyNoRatio::NotMeasured(text("stalk")),
        WhyNoRatio::OverItself,
        WhyNoRatio::DifferentUnits,
    ]
}

fn conditions() -> [WhyNoCondition; 5] {
    [
        WhyNoCondition::NoColumn(text("form")),
        WhyNoCondition::HoldsNumbers(text("lobes")),
        WhyNoCondition::NoState { state: text("feather"), of: text("form") },
        WhyNoCondition::NoStates(text("form")),
        WhyNoCondition::Itself,
    ]
}

fn sheets() -> Vec<OfSheet> {
    let sheet = || text("characters");
    let left = |others| OfSheet::SheetsNotRead { read: text("hedge"), others };
    let no_kind = |adds_up| OfSheet::NoKind { name: text("total"), adds_up, at: at() };
    let twice = |differ: Option<[&str; 2]>, second| OfSheet::KindTwice {
        names: ["Oak", "oak"].map(text),
        called: text("oak (2)"),
        differ: differ.map(|two| two.map(text)),
        first: at(),
        second,
    };
    let several_rows = |kinds| OfSheet::KindsOnSeveralRows {
        kinds,
        kind: text("hazel"),
        rows: 12,
        first: at(),
        called: text("hazel (2)"),
    };
    let measuring = |columns| OfSheet::MeasuringColumns { first: text("dpi"), columns };
    let counts =
        |heading: &str| OfSheet::CountsRows { heading: text(heading), kinds: text("kind") };
    let mut all = vec![
        OfSheet::RowNotRead {
            text: text("weather"),
            sheet: text("about"),
            usual: vec!["title", "place", "season"],
        },
        OfSheet::ColumnNotRead {
            heading: text("colour"),
            sheet: sheet(),
            usual: vec!["unit", "gap"],
        },
        OfSheet::QuotationNotClosed { at: at() },
        OfSheet::QuotationNotClosed { at: elm() },
        OfSheet::Title { title: text("Our hedge") },
        counts(""),
        counts("no"),
        OfSheet::Swapped,
        OfSheet::NoHeadings { says: names(["hazel", "toothed"]), at: at() },
        OfSheet::OftenInWords,
        several_rows(1),
        several_rows(3),
        OfSheet::FindColumns { headings: names(["leaf", "tree"]) },
        measuring(1),
        measuring(12),
        OfSheet::OfNoKind { rows: 1, first: at() },
        OfSheet::OfNoKind { rows: 7, first: elm() },
        OfSheet::FileNotRead { file: text("ivy.csv"), read: text("hedge.csv") },
        left(names(["old"])),
        left(names(["old", "older"])),
        left(names(["old", "older", "oldest"])),
        no_kind(true),
        no_kind(false),
        OfSheet::Nameless { at: at() },
        OfSheet::Nameless { at: called(Called::Row) },
        OfSheet::TooManyKinds { most: 20_000, kind: text("elm") },
        OfSheet::TooManyFinds { most: 8_000, row: 8_002 },
        twice(None, called(Called::RowUnder(text("kind")))),
        twice(Some(["toothed", "wavy"]), at()),
        OfSheet::Damaged { at: at() },
        OfSheet::Full { cells: 1_000_000, megabytes: 16, at: at() },
    ];
    for of in [RowOf::Character, RowOf::Kind] {
        for at in [at(), called(Called::RowOfSheet)] {
            all.push(OfSheet::NotInTable { of, name: text("elm"), at: at.clone() });
            all.push(OfSheet::SecondRow { of, name: text("elm"), at });
        }
    }
    all.extend(fields().map(|(is, words)| OfSheet::FieldOdd {
        text: text("perhaps"),
        is,
        words,
        at: at(),
    }));
    all
}

fn fields() -> [(FieldIs, &'static [&'static str]); 14] {
    [
        (FieldIs::Values, &["words", "counts", "measure"]),
        (FieldIs::Unit, &["mm", "cm"]),
        (FieldIs::UnitOfRatio, &[]),
        (FieldIs::Margin, &[]),
        (FieldIs::SeenOn, &["tree", "twig"]),
        (FieldIs::Difficulty, &["easy", "fair", "hard"]),
        (FieldIs::PerCent, &[]),
        (FieldIs::ByTouch, &["yes", "no"]),
        (FieldIs::InOrder, &["yes", "no"]),
        (FieldIs::Season, &["spring", "summer"]),
        (FieldIs::Instrument, &["eyes", "lens", "ruler"]),
        (FieldIs::Condition, &[]),
        (FieldIs::TimesMet, &["often"]),
        (FieldIs::HowMany, &[]),
    ]
}
