//! The codes that only the readers of tables and keys give. `every_code` finds each of them; the
//! second opinion's tests see to it that no code is without anybody who gives it.

use spinney_model::Code;

/// What only the readers of tables and keys say.
pub(crate) const OF_EXCHANGE: &[Code] = &[
    Code::CellNotUnderstood,
    Code::CellNotPlain,
    Code::QuotationNotClosed,
    Code::LettersSpoilt,
    Code::NoHeadings,
    Code::Swapped,
    Code::KindTwice,
    Code::HeadingTwice,
    Code::LeftOut,
    Code::StatesAlike,
    Code::Assumed,
    Code::SheetDisagrees,
    Code::GovernedButPresent,
    Code::LineNotUnderstood,
    Code::LeadTooMany,
    Code::NameNotSure,
    Code::NameUnknown,
    Code::NotLinked,
    Code::LinkNotSure,
    Code::LinksNotUnderstood,
];
