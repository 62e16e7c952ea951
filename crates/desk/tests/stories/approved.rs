//! The words of every screen after one story, so that a change of any is seen.
//!
//! In English the words of the first screen of each kind in full; of the others, and in German, a
//! line with counts and checksums of its words and of what its forms and links send.
//! `WRITE_APPROVED=1 cargo test --workspace --test stories approved`, then `git diff`.

use std::collections::BTreeSet;

use spinney_fixtures::approved::{checksum, holds};

use crate::at_the_desk::AtTheDesk;
use crate::screens::{every_page, words};

/// Where links lead and what forms send, without addresses that say which version of a file.
fn sent(page: &str) -> Vec<&str> {
    let mut sent = Vec::new();
    for (at, _) in page.match_indices("=\"") {
        let name = page[..at].rsplit([' ', '\n', '"']).next().unwrap_or_default();
        let value = page[at + 2..].split('"').next().unwrap_or_default();
        let says =
            ["href", "action", "name", "value", "title", "aria-label", "placeholder", "id"];
        if says.contains(&name) && !value.starts_with("/assets/") {
            sent.push(value);
        }
    }
    sent
}

/// The words of a page, a line each.
fn lines(page: &str) -> Vec<String> {
    let body = page.split("<body").nth(1).unwrap_or(page);
    let body = body.split_once('>').map_or(body, |(_, body)| body);
    // So that the words of neighbours do not run together.
    let mut body = body.replace("</", " </").replace("<br", " <br");
    for ends in
        ["p", "li", "h1", "h2", "h3", "tr", "label", "button", "summary", "nav", "option"]
    {
        let end = format!("</{ends}>");
        body = body.replace(&end, &format!("{end}\n"));
    }
    let text = words(&body);
    let lines = text.lines().map(|line| line.split_whitespace().collect::<Vec<_>>().join(" "));
    lines.filter(|line| !line.is_empty()).collect()
}

/// Every screen that can be reached, those of one kind in full once.
fn screens(desk: &mut AtTheDesk, language: &str, full: bool) -> Vec<String> {
    let mut all = Vec::new();
    let mut kinds = BTreeSet::new();
    for (path, page) in every_page(desk, language) {
        let lines = lines(&page);
        let sent = sent(&page);
        all.push(format!(
            "{path}: {} lines {:016x}, sends {} {:016x}",
            lines.len(),
            checksum(&lines.join("\n")),
            sent.len(),
            checksum(&sent.join("\n")),
        ));
        let kind: String = path.split('?').next().unwrap_or_default().to_owned();
        let kind = kind.trim_end_matches(|sign: char| sign.is_ascii_digit() || sign == '/');
        if full && kinds.insert(kind.to_owned()) {
            all.extend(lines.iter().map(|line| format!("    {line}")));
        }
    }
    all
}

fn approved(name: &str, lines: &[String]) {
    holds(env!("CARGO_MANIFEST_DIR"), name, lines);
}

/// A class with a key of its own, a group that sorts, and a newcomer whom nobody has placed.
fn class(scenario: &str) -> AtTheDesk {
    let mut class = AtTheDesk::with_scenario(scenario);
    class.post("/do/describe-scene", &[("title", "Our walk"), ("place", "Mill Lane")]);
    class.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    class.post("/do/start-heaps", &[("name", "Foxes")]);
    class.post("/do/ask", &[("key", "2"), ("at", ""), ("words", "Is it spiny?")]);
    for (kind, side) in [("1", "yes"), ("2", "no"), ("3", "no"), ("4", "yes")] {
        class.post("/do/sort", &[("key", "2"), ("at", ""), ("kind", kind), ("side", side)]);
    }
    class.post("/do/add-kinds", &[("names", "yew")]);
    class.post("/do/add-character", &[("name", "smell")]);
    class
}

#[test]
fn approved_screens_of_a_class_at_the_hedge() {
    let mut class = class("hedge_walk");
    approved("screens_of_a_class.txt", &screens(&mut class, "en", true));
}

#[test]
fn approved_screens_in_german() {
    let mut class = class("hedge_walk");
    approved("screens_in_german.txt", &screens(&mut class, "de", false));
}

#[test]
fn approved_screens_of_a_pond() {
    let mut class = class("pond_tray");
    approved("screens_of_a_pond.txt", &screens(&mut class, "en", false));
}

#[test]
fn approved_screens_of_leaves_one_by_one() {
    let mut text = "kind,leaf,tree,which part,blade length (mm),edge\n".to_owned();
    for at in 0..30 {
        let kind = ["hazel", "lime", "elm"][at % 3];
        let length = 40 + 20 * (at % 3) + (at * at) % 17 + if at == 9 { 90 } else { 0 };
        let (tree, edge) = (at / 6, ["toothed", "smooth"][usize::from(at % 7 == 0)]);
        text +=
            &format!("{kind},{at},tree {tree},{},{length},{edge}\n", ["sun", "shade"][at % 2]);
    }
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/take-table", &[("table", &text), ("rows", "leaves")]);
    approved("screens_of_leaves.txt", &screens(&mut teacher, "en", false));
}
