//! Plays a story of requests from stdin, one a line, to the native desk and writes its replies to
//! stdout. `tests/outside/browser_build.sh` compares them with those of the pocket page's.
//!
//! `GET /heaps?key=1` asks for a page, `POST /do/sort key=1&kind=2&side=yes` sends a form. The
//! time of a request is its line.

use std::io::{Read, Write};

use spinney_desk::{Desk, Method, Reply, Request};

/// All replies to a story, one after another.
fn replies(story: &str) -> Vec<u8> {
    let mut desk = Desk::default();
    let mut out = Vec::new();
    for (line, text) in story.lines().enumerate() {
        let Some((method, rest)) = text.split_once(' ') else { continue };
        let (path, form) = rest.split_once(' ').unwrap_or((rest, ""));
        let mut request = Request::get(path);
        request.at = line as i64;
        if method == "POST" {
            request.method = Method::Post;
            // A form is written as the query of an address is.
            request.form = Request::get(&format!("/?{form}")).query;
            // It is filled in on a page that has seen everything.
            request.form.push(("head".to_owned(), desk.mark()));
        }
        out.extend_from_slice(format!("\n== {line} {text}\n").as_bytes());
        let reply = desk.handle(&request);
        say(&mut desk, reply, &request, &mut out);
    }
    out
}

fn say(desk: &mut Desk, reply: Reply, request: &Request, out: &mut Vec<u8>) {
    match reply {
        Reply::Keep { head, lines, then, .. } => {
            for line in &lines {
                out.extend_from_slice(line);
                out.push(b'\n');
            }
            assert_eq!(head, desk.head(), "the desk has seen all lines");
            desk.catch_up(lines.iter().map(Vec::as_slice)).expect("our own lines");
            out.extend_from_slice(format!("{} {:?}", then.status, then.location).as_bytes());
        }
        Reply::Page(page) => {
            let head = format!("{} {} {:?}\n", page.status, page.kind, page.location);
            out.extend_from_slice(head.as_bytes());
            out.extend_from_slice(&page.body);
        }
        other => out.extend_from_slice(format!("{other:?} to {}", request.path).as_bytes()),
    }
}

fn main() -> std::io::Result<()> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    std::io::stdout().write_all(&replies(&text))
}
