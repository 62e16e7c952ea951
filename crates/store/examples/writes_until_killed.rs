//! Appends lines to a collection until somebody kills it, and says each number once the line
//! is acknowledged. `tests/killed.rs` starts it.

use std::io::Write;
use std::path::PathBuf;

use spinney_store::Store;

fn main() {
    let path = PathBuf::from(std::env::args_os().nth(1).expect("the file comes first"));
    let mut store = Store::open(&path).expect("the file is there");
    let mut head = store.head().expect("it can be read");
    let mut told = std::io::stdout().lock();
    loop {
        let line = format!("line {} {}", head + 1, "x".repeat(100 + (head % 900) as usize));
        let pictures: &[Vec<u8>] =
            if head.is_multiple_of(7) { &[vec![head as u8; 40_000]] } else { &[] };
        // What is being written is said first, so that a kill in the middle can be counted.
        let _ = writeln!(told, "begin {}", head + 1).and_then(|()| told.flush());
        head = store.append(head, &[line.into_bytes()], pictures).expect("it can be written");
        let _ = writeln!(told, "kept {head}").and_then(|()| told.flush());
    }
}
