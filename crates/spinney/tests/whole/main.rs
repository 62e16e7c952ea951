//! Whole outputs across the rooms, each a line or a few of an approved file: keys with their proofs
//! and what is found of them, and drawings of words, states and kinds.
//!
//! `WRITE_APPROVED=1 cargo test --workspace --test whole`, then `git diff`.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

mod drawings;
mod keys;
mod weakness;

/// Holds lines against an approved file.
fn approved(name: &str, lines: &[String]) {
    let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
    spinney_fixtures::approved::holds(env!("CARGO_MANIFEST_DIR"), name, &text);
}
