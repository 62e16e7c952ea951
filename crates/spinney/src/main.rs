//! The binary: command line, files, clock.

fn main() {}
