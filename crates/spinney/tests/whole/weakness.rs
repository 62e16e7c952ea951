//! Where tables are weak, and how finds spread.

use spinney_check::{WeakSettings, spread, weak};
use spinney_exchange::table::{RowsAre, Settings, Source, Sources, read};
use spinney_fixtures::approved::{brief, rounded};
use spinney_fixtures::seeded;

use crate::approved;

#[test]
fn approved_weak_points_of_small_tables() {
    let mut all = Vec::new();
    let settings = WeakSettings { steps: 20_000, ..WeakSettings::default() };
    for seed in 300..330 {
        let matrix = seeded::awkward_wide(seed);
        let weak = weak(&matrix, &settings);
        all.push(format!("awkward {seed}: {}", brief(&format!("{weak:?}"), 500)));
    }
    approved("weak_points.txt", &all);
}

/// Leaves in rows, numbers by a small rule; every tenth far from the others. Invented.
#[test]
fn approved_spread_of_finds() {
    let mut all = Vec::new();
    for round in 0..6_u32 {
        let mut text =
            String::from("kind\tleaf\ttree\twhich part\tblade length (mm)\tteeth\tedge\n");
        for at in 0..36_u32 {
            let kind = ["hazel", "lime", "elm"][(at % 3) as usize];
            let far = if at % 10 == 9 { 40 } else { 0 };
            let length = 40 + 15 * (at % 3) + (at * at * (round + 3)) % 17 + far;
            let teeth = 5 + (at * (round + 2)) % 7 + at % 3;
            let edge = ["toothed", "smooth"][usize::from(at % (round + 4) == 0)];
            let plant = at / 6 + 1;
            let part = ["sun", "shade"][usize::from(at % 4 == 0)];
            text += &format!("{kind}\t{at}\t{plant}\t{part}\t{length}\t{teeth}\t{edge}\n");
        }
        let table = Source { name: "finds.tsv".to_owned(), bytes: text.into_bytes() };
        let sources = Sources { table, ..Sources::default() };
        let read = read(&sources, &Settings { rows: RowsAre::Finds, ..Settings::default() })
            .expect("it is a table");
        all.push(format!("{round}: {}", brief(&format!("{:?}", read.findings), 200)));
        let specimens = read.specimens.expect("each find has a row");
        let spread = spread(&read.matrix, &specimens);
        for of in &spread.of_kinds {
            all.push(format!("  {}", brief(&rounded(&format!("{of:?}"), 6), 400)));
        }
        for cut in spread.cuts.iter().flatten() {
            all.push(format!("  {}", brief(&rounded(&format!("{cut:?}"), 6), 300)));
        }
    }
    approved("spread.txt", &all);
}
