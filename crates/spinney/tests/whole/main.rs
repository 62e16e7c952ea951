//! Whole outputs across the rooms, each a line or a few of an approved file: keys with their proofs
//! and what is found of them, and drawings of words, states and kinds.
//!
//! `WRITE_APPROVED=1 cargo test --workspace --test whole`, then `git diff`.

mod drawings;
mod keys;
mod weakness;

/// Holds lines against an approved file.
fn approved(name: &str, lines: &[String]) {
    spinney_fixtures::approved::holds(env!("CARGO_MANIFEST_DIR"), name, lines);
}
