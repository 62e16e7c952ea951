//! How long a person waits for the key after an edit.
//!
//! `cargo bench -p spinney-desk --bench key_page`. Tables of 20 kinds × 20 characters, three of
//! the kinds varying in every fifth character (`fixtures::seeded::plain`, seeds 1 to 25, words of
//! two and three states). Each time: one edit (a caution is written down), then GET `/key` with
//! nothing remembered: the table is read, the key found, explained and looked at a second time,
//! the page written. Then the same page again, as questions and as a tree, with nothing to work
//! out; and with a question open. Eleven edits a table; one core.

use std::time::{Duration, Instant};

use spinney_desk::{Desk, Reply, Request};
use spinney_exchange::table;
use spinney_fixtures::seeded;
use spinney_model::{Matrix, Value};

const EDITS: usize = 11;
const TABLES: u64 = 25;

fn main() {
    let mut edited = Vec::new();
    let mut again = Vec::new();
    let mut tree = Vec::new();
    let mut open = Vec::new();
    let mut bytes = 0;
    for seed in 1..=TABLES {
        let mut desk = opened(seed);
        for edit in 0..EDITS {
            let caution = format!("{edit} thorns");
            let form = [("name", caution.as_str()), ("key", "1"), ("group", "")];
            keep(&mut desk, "/do/key-describe", &form);
            edited.push(timed(&mut desk, "/key?key=1", &mut bytes));
            again.push(timed(&mut desk, "/key?key=1", &mut bytes));
            tree.push(timed(&mut desk, "/key?key=1&as=tree", &mut bytes));
            open.push(timed(&mut desk, "/key?key=1&open=", &mut bytes));
        }
    }
    println!("| GET | median | 99 of 100 | worst |");
    println!("| --- | --- | --- | --- |");
    row("/key after an edit", edited);
    row("/key again", again);
    row("/key as a tree", tree);
    row("/key with a question open", open);
    println!("\n{} KiB a page at most", bytes / 1024);
}

/// A desk with a table and a key that is to be finished.
fn opened(seed: u64) -> Desk {
    let sheets = table::write(&three_vary(&seeded::plain(seed, 20, 20, 20, 0), seed));
    let source = |name: &str, text: String| table::Source {
        name: name.to_owned(),
        bytes: text.into_bytes(),
    };
    let sources = [source("table", sheets.table), source("characters", sheets.characters)];
    let lines = Desk::lines_of_table(&sources, 0).expect("it has kinds");
    let mut desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    let form = [("name", "bench"), ("how", "finish")];
    keep(&mut desk, "/do/key-start", &form);
    desk
}

/// Three kinds vary; the others have the first of their states.
fn three_vary(matrix: &Matrix, seed: u64) -> Matrix {
    let rows = matrix.taxon_indices().map(|taxon| {
        let varies = taxon.0 % 6 == (seed % 6) as usize && taxon.0 < 18;
        let cells = matrix.character_indices().map(|at| {
            let mut cell = matrix.cell(taxon, at).clone();
            if let (false, Value::States(states)) = (varies, &mut cell.value) {
                states.truncate(1);
                states.iter_mut().for_each(|(_, share)| *share = 1.into());
            }
            cell
        });
        cells.collect()
    });
    let rows = rows.collect();
    let (taxa, characters) = (matrix.taxa().to_vec(), matrix.characters().to_vec());
    Matrix::new(matrix.scene().clone(), taxa, characters, rows).expect("the same size")
}

fn keep(desk: &mut Desk, path: &str, form: &[(&str, &str)]) {
    let seen = desk.mark();
    let form = [form, &[("head", seen.as_str())]].concat();
    let Reply::Keep { lines, .. } = desk.handle(&Request::post(path, &form)) else {
        panic!("it is an edit")
    };
    desk.catch_up(lines.iter().map(Vec::as_slice)).expect("our own lines");
}

fn timed(desk: &mut Desk, path: &str, bytes: &mut usize) -> Duration {
    let request = Request::get(path);
    let before = Instant::now();
    let reply = desk.handle(&request);
    let took = before.elapsed();
    let Reply::Page(page) = reply else { panic!("it is a page") };
    assert_eq!(page.status, 200, "{path}");
    *bytes = (*bytes).max(page.body.len());
    took
}

fn row(what: &str, mut times: Vec<Duration>) {
    times.sort();
    let at = |share: f64| times[((times.len() - 1) as f64 * share).round() as usize];
    let ms = |time: Duration| format!("{:.2} ms", time.as_secs_f64() * 1000.0);
    println!("| {what} | {} | {} | {} |", ms(at(0.5)), ms(at(0.99)), ms(at(1.0)));
}
