//! The binary: a contents page. What each command does stands in `command/<verb>.rs`.

// What cannot be written must not end the program as a bug: see `terminal`.
#![deny(clippy::print_stdout, clippy::print_stderr)]

mod args;
mod command;
mod failure;
mod files;
mod folder;
mod named;
mod near;
mod opened;
mod report;
mod rescue;
mod scenarios;
mod terminal;
mod web;
mod words;

use std::process::ExitCode;

use args::Verb;
use failure::Failure;
use spinney_voice::Tongue;

/// The search goes as deep as a table has kinds; the main thread's stack differs from system to
/// system.
const STACK: usize = 8 << 20;

fn main() -> ExitCode {
    files::bear_a_size_limit();
    // A bug may quote what somebody typed.
    std::panic::set_hook(Box::new(|bug| terminal::complain(&format!("{bug}\n"))));
    let args = match args::read() {
        Ok(args) => args,
        Err(said) => return said,
    };
    let t = args.tongue();
    // The screens have an end of their own: see `web::ending`.
    if !matches!(args.verb, None | Some(Verb::Open(_))) {
        files::clear_away_when_ended();
    }
    let work = std::thread::Builder::new().stack_size(STACK).spawn(move || run(t, args.verb));
    match work.map(std::thread::JoinHandle::join) {
        Ok(Ok(code)) => code,
        Ok(Err(_)) => ExitCode::from(failure::BUG),
        Err(error) => {
            let why = failure::trouble(&error).into();
            Failure::new("failure-start", [("why", why)]).tell(t)
        }
    }
}

fn run(t: Tongue, verb: Option<Verb>) -> ExitCode {
    let done = match verb.unwrap_or_else(|| Verb::Open(args::Open::default())) {
        Verb::Open(args) => command::open::run(t, &args),
        Verb::Demo(args) => command::demo::run(t, &args),
        Verb::Key(args) => command::key::run(t, &args),
        Verb::Check(args) => command::check::run(t, &args),
        Verb::Explain(args) => command::explain::run(t, &args),
        Verb::Table(args) => command::table::run(t, &args),
        Verb::Weak(args) => command::weak::run(t, &args),
        Verb::Spread(args) => command::spread::run(t, &args),
        Verb::Forgive(args) => command::forgive::run(t, &args),
        Verb::Revise(args) => command::revise::run(t, &args),
        Verb::Pocket(args) => command::pocket::run(t, &args),
        Verb::Measure(args) => command::measure::run(t, &args),
        Verb::Template(args) => command::template::run(t, &args),
        Verb::Pack(args) => command::pack::pack(t, &args),
        Verb::Unpack(args) => command::pack::unpack(t, &args),
        Verb::Rescue(args) => command::rescue::run(t, &args),
    };
    match done {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(failure::FAILED),
        Err(failure) => failure.tell(t),
    }
}
