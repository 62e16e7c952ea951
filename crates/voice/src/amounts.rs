//! Numbers of questions as people say them: `about 0.3 more questions per find`.
//!
//! From exact shares to a whole number where a key is described, to one decimal where keys are
//! compared, and to a sentence. Effort stands for questions: a hard one, or
//! one with a ruler, counts for two or three.

use spinney_model::Share;

use crate::Tongue;

/// One decimal, and none where it would be 0: `3.1`, `3`.
pub fn one_decimal(share: Share) -> String {
    let tenths = (share * 10).round().to_integer();
    let sign = if tenths < 0 { "-" } else { "" };
    match (tenths.abs() / 10, tenths.abs() % 10) {
        (whole, 0) => format!("{sign}{whole}"),
        (whole, tenth) => format!("{sign}{whole}.{tenth}"),
    }
}

/// About so many questions: what a person says aloud of one key.
pub fn in_whole(questions: Share) -> i128 {
    questions.round().to_integer()
}

/// What something costs, in questions per find.
pub fn price(t: Tongue, extra: Share, exact: bool) -> String {
    let nothing = Share::from_integer(0);
    let small = Share::new(1, 20);
    let size = if extra < nothing { -extra } else { extra };
    let amount = t.decimal(&one_decimal(size));
    match (extra == nothing, size < small, extra > nothing, exact) {
        (true, _, _, true) => t.say("amount-nothing"),
        (true, _, _, false) => t.say("amount-not-sure"),
        (_, true, true, _) => t.say("amount-hardly-more"),
        (_, true, false, _) => t.say("amount-hardly-fewer"),
        (_, false, true, true) => t.with("amount-more", &[("amount", &amount)]),
        (_, false, true, false) => t.with("amount-at-least", &[("amount", &amount)]),
        (_, false, false, _) => t.with("amount-fewer", &[("amount", &amount)]),
    }
}

#[cfg(test)]
mod tests {
    use super::{Share, one_decimal};

    #[test]
    fn a_number_of_questions_has_one_decimal_where_that_says_something() {
        let said = [(31, 10), (3, 1), (299, 100), (1, 3), (-1, 2), (0, 1)]
            .map(|(over, under)| one_decimal(Share::new(over, under)));
        assert_eq!(said, ["3.1", "3", "3", "0.3", "-0.5", "0"]);
    }
}
