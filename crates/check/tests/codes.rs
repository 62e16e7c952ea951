//! Every code of the model has somebody who tests that it appears: this crate by its mutants
//! (`mutants.rs`), or the crate of those who give it: the readers by `every_code.rs`, whose list
//! is read here, and the command line.

use std::collections::BTreeSet;

use spinney_check::CODES;
use spinney_model::Code;

#[path = "../../exchange/tests/drawn/codes.rs"]
mod codes;

use codes::OF_EXCHANGE;

/// What only the command line says, of wishes that `build` refused.
const OF_SPINNEY: &[Code] = &[Code::KeptRefused, Code::WishRefused, Code::LeftTogether];

#[test]
fn every_code_is_tested_by_somebody_and_by_one_only() {
    let all: Vec<Code> = [CODES, OF_EXCHANGE, OF_SPINNEY].concat();
    let different: BTreeSet<Code> = all.iter().copied().collect();
    assert_eq!(all.len(), different.len(), "a code is listed twice");
    let missing: Vec<&Code> =
        Code::ALL.iter().filter(|code| !different.contains(code)).collect();
    assert!(missing.is_empty(), "nobody tests {missing:?}");
    assert_eq!(all.len(), Code::ALL.len());
}
