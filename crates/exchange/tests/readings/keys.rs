//! Keys as people write them: what is read, how it links to a table, and how it is written again.

use spinney_exchange::key_text::{read, write};
use spinney_exchange::link::{Links, link};
use spinney_model::{Destination, Key, Matrix, Wording};

use crate::{approved, hedge, leaves, pond, said};

fn end(destination: &Destination, matrix: &Matrix) -> String {
    match destination {
        Destination::Couplet(number) => number.to_string(),
        Destination::Missing => "-".to_owned(),
        Destination::End(end) => {
            let known = end.taxa.iter().map(|ix| matrix.taxon(*ix).name.clone());
            let all = known.chain(end.unrecognised.iter().map(|name| format!("{name}?")));
            all.collect::<Vec<_>>().join(" + ")
        }
    }
}

fn couplets(key: &Key, matrix: &Matrix) -> Vec<String> {
    let mut lines = Vec::new();
    for couplet in &key.couplets {
        let back = couplet.back.map_or(String::new(), |back| format!("({back})"));
        let words = match &couplet.wording {
            Wording::Question(text) => text.clone(),
            Wording::Leads { yes, no } => format!("{yes} / {no}"),
        };
        let ask =
            couplet.ask.as_ref().map_or("not linked".to_owned(), |ask| said::ask(ask, matrix));
        let (yes, no) = (end(&couplet.yes, matrix), end(&couplet.no, matrix));
        let line = couplet.line.map_or(String::new(), |line| format!("line {line:?}: "));
        let kept = if couplet.kept { ", kept" } else { "" };
        let number = couplet.number;
        lines.push(format!("  {line}{number}{back} {words} | {yes} | {no} | {ask}{kept}"));
    }
    lines
}

#[test]
fn keys_in_words() {
    let mut lines = Vec::new();
    for (table, matrix) in [("leaves", leaves()), ("pond", pond()), ("hedge", hedge())] {
        for text in include_str!("keys.txt").split("\n=== ").skip(1) {
            let (of, text) = text.split_once('\n').expect("a heading and a text");
            let (of, links) = of.split_once(" with ").unwrap_or((of, ""));
            if of != table {
                continue;
            }
            lines.extend(text.trim_end().lines().map(|line| format!("> {line}")));
            let (links, findings) = Links::read(&links.replace("; ", "\n"), &matrix);
            lines.extend(
                findings.iter().map(|finding| format!("  links: {}", said::short(finding))),
            );
            let mut found = read(text, &matrix, &links);
            let report = link(&mut found.key, &matrix, &links);
            lines.extend(couplets(&found.key, &matrix));
            let told = found.findings.iter().chain(&report.findings);
            lines.extend(told.map(|finding| format!("  {}", said::short(finding))));
            lines.push(format!("  {} of {} linked; written again:", report.linked, report.of));
            let written = write(&found.key, &matrix);
            lines.extend(written.lines().map(|line| format!("< {line}")));
            lines.push(String::new());
        }
    }
    approved("keys.txt", &lines);
}
