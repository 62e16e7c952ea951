//! Plays a story from stdin to the native desk and writes its replies to stdout.
//! `tests/outside/browser_build.sh` compares them with those of the browser's build.

#[path = "story/requests.rs"]
mod story;

use std::io::{Read, Write};

fn main() -> std::io::Result<()> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    std::io::stdout().write_all(&story::replies(&text))
}
