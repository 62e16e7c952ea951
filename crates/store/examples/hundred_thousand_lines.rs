//! Times the opening of a collection of 100,000 lines of 150 bytes and 200 pictures of 200 kB.

use std::path::PathBuf;
use std::time::Instant;

use spinney_store::Store;

fn main() {
    let path = PathBuf::from(std::env::args_os().nth(1).expect("a new file comes first"));
    let mut store = Store::create(&path).expect("there is none yet");
    let lines: Vec<Vec<u8>> =
        (0..100_000).map(|at| format!("{at:0>150}").into_bytes()).collect();
    let pictures: Vec<Vec<u8>> = (0..200_u8).map(|at| vec![at; 200_000]).collect();
    store.append(0, &lines, &pictures).expect("it can be written");
    drop(store);
    for _ in 0..5 {
        let start = Instant::now();
        let store = Store::open(&path).expect("it opens");
        let rows = store.rows(0).expect("it can be read");
        println!("{} lines in {:.1} ms", rows.len(), start.elapsed().as_secs_f64() * 1e3);
    }
}
