//! Marks within marks: each pair is single, whatever pair came before it.

use spinney_model::within_marks;

#[test]
fn a_pair_that_was_closed_says_nothing_of_the_next() {
    assert_eq!(within_marks("Is it “a” or \"b\"?"), "Is it ‘a’ or ‘b’?");
    assert_eq!(within_marks("Is it „a“ or \"b\"?"), "Is it ‚a‘ or ‘b’?");
    assert_eq!(within_marks("Is it „a“ or “b”?"), "Is it ‚a‘ or ‘b’?");
    assert_eq!(within_marks("Is it „a” or “b”?"), "Is it ‚a’ or ‘b’?");
}
