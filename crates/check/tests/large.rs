//! Keys and tables far larger than a class needs: answered, bounded, and said so.

use spinney_check::{Settings, check, table};
use spinney_model::{Code, Fact, OfTable};

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{codes, key, matrix};

/// Kinds told by a length, in a key that halves the heap (`even`) or splits off one by one.
fn numbered(kinds: usize, even: bool) -> (spinney_model::Matrix, spinney_model::Key) {
    let rows: Vec<String> = (1..=kinds).map(|n| format!("kind {n} | {n}-{n}")).collect();
    let text = format!("stalk: mm gap 0.5\n{}", rows.join("\n"));
    let matrix = matrix(&text);
    let mut couplets = Vec::new();
    let mut open = vec![(1, kinds, 1)];
    let mut next = 2;
    while let Some((from, to, number)) = open.pop() {
        let cut = if even { (from + to).div_ceil(2) } else { from + 1 };
        let mut on = |from: usize, to: usize| {
            if from == to {
                let end = spinney_model::End::of([spinney_model::TaxonIx(from - 1)]);
                return spinney_model::Destination::End(end);
            }
            open.push((from, to, next));
            next += 1;
            spinney_model::Destination::Couplet(next - 1)
        };
        let (no, yes) = (on(from, cut - 1), on(cut, to));
        couplets.push(spinney_model::Couplet {
            number,
            back: None,
            wording: spinney_model::Wording::Question(String::new()),
            ask: Some(spinney_model::Ask {
                character: spinney_model::CharacterIx(0),
                yes: spinney_model::Asked::AtLeast(spinney_model::Quantity::from_thousandths(
                    cut as i64 * 1000 - 500,
                )),
            }),
            yes,
            no,
            kept: false,
            line: None,
        });
    }
    couplets.sort_by_key(|couplet| couplet.number);
    (matrix, spinney_model::Key { couplets })
}

#[test]
fn ten_thousand_kinds_come_out_of_an_even_key() {
    let (matrix, key) = numbered(10_000, true);
    let report = check(&matrix, &key, None, &Settings::default());
    // Fourteen questions are a long path for children, and nothing else is amiss.
    assert_eq!(codes(&report.findings), [Code::LongPath]);
    assert!(report.works() && report.walks.len() == 10_000);
    assert_eq!(report.effort.unwrap().longest, 14);
}

#[test]
fn a_comb_ten_thousand_deep_is_followed_as_far_as_agreed_and_that_is_said() {
    let (matrix, key) = numbered(10_000, false);
    let report = check(&matrix, &key, None, &Settings::default());
    assert_eq!(codes(&report.findings), [Code::TooLarge, Code::Comb, Code::LongPath]);
    assert!(!report.works() && !report.broken_as_a_tree() && report.walks_left_out);
    assert_eq!(report.effort, None);
}

#[test]
fn a_table_of_ten_thousand_kinds_names_equal_rows_and_says_that_is_all() {
    let long = |n: usize| if n == 2 { 1 } else { n };
    let rows: Vec<String> =
        (1..=10_000).map(|n| format!("kind {n} | {0}-{0}", long(n))).collect();
    let text = format!("stalk: mm gap 0.5\n{}", rows.join("\n"));
    let found = table(&matrix(&text), &Settings::default());
    assert_eq!(codes(&found), [Code::TooLarge, Code::NotSeparable]);
    assert!(found.iter().any(|finding| finding.place.to_string() == "kind 1, kind 2"));
}

#[test]
fn a_thousand_kinds_that_nothing_parts_are_one_group() {
    let text = (0..1_000).fold(String::from("colour: red, blue\n"), |text, n| {
        text + &format!("kind {n} | red\n")
    });
    let found = table(&matrix(&text), &Settings::default());
    assert_eq!(codes(&found), [Code::NotSeparable]);
}

/// Up to six states every group of them is a question; beyond, one state against the rest. Two
/// kinds of two states each are parted by a group, but by no state alone.
#[test]
fn of_more_than_six_states_one_alone_must_part() {
    let drawn = |states: usize, first: &str| {
        let names: Vec<String> = (1..=states).map(|n| format!("s{n}")).collect();
        let text = format!("form: {}\none | {first}\nother | s3 or s4", names.join(", "));
        codes(&table(&matrix(&text), &Settings::default()))
    };
    assert_eq!(drawn(7, "s1 or s2"), [Code::NotSeparable]);
    assert!(!drawn(6, "s1 or s2").contains(&Code::NotSeparable), "a group of two parts them");
    assert!(!drawn(7, "s1").contains(&Code::NotSeparable), "s1 against the rest parts them");
    assert_eq!(drawn(7, "s3"), [Code::NotSeparable], "s3 is what both may have");
}

#[test]
fn a_circle_of_numbers_ends() {
    let matrix = matrix("colour: red, blue\none | red\nother | blue");
    let text = "1. Is it red? [colour = red] -> 2 / 3\n\
                2. Is it red? [colour = red] -> 1 / 2\n\
                3. Is it red? [colour = red] -> one / 3";
    let report = check(&matrix, &key(&matrix, text), None, &Settings::default());
    let loops = report.findings.iter().filter(|f| f.code == Code::Loop).count();
    assert_eq!(loops, 3, "{:#?}", report.findings);
    assert!(report.broken_as_a_tree());
}

/// Ranges precise to a thousandth, so that hardly two kinds share an end, and one kind of
/// which nobody knows the width.
fn precise(kinds: usize) -> spinney_model::Matrix {
    let row = |n: usize| {
        let low = (n * 7_919) % 1_000_003;
        let mm =
            |thousandths: usize| format!("{}.{:03}", thousandths / 1000, thousandths % 1000);
        format!("kind {n} | {}-{}", mm(low), mm(low + 1 + n % 40))
    };
    let rows: Vec<String> = (1..kinds).map(row).collect();
    matrix(&format!("width: mm gap 0.002\n{}\nkind {kinds} | ?", rows.join("\n")))
}

#[test]
fn twenty_thousand_precise_ranges_are_read_in_reasonable_time() {
    let matrix = precise(20_000);
    let found = table(&matrix, &Settings::default());
    assert_eq!(codes(&found), [Code::TooLarge, Code::Unknown], "{found:#?}");
    // All kinds at two ends.
    let (low, high): (Vec<_>, Vec<_>) = matrix.taxon_indices().partition(|taxon| {
        let cell = matrix.cell(*taxon, spinney_model::CharacterIx(0));
        matches!(cell.value, spinney_model::Value::Range { low, .. } if low < HALFWAY)
    });
    let unknown = spinney_model::TaxonIx(19_999);
    let mut key = key(&matrix, "1. Is it so wide? [width >= 500] -> kind 1 / kind 2");
    key.couplets[0].ask.as_mut().unwrap().yes = spinney_model::Asked::AtLeast(HALFWAY);
    key.couplets[0].yes = spinney_model::Destination::End(spinney_model::End::of(high));
    let low = low.into_iter().chain([unknown]);
    key.couplets[0].no = spinney_model::Destination::End(spinney_model::End::of(low));
    let report = check(&matrix, &key, None, &Settings::default());
    // One look with a ruler, two steps, at each of 20,000 finds.
    let effort = report.effort.as_ref().expect("it can be added up");
    assert_eq!(effort.total, spinney_model::Share::from_integer(40_000));
    assert_eq!((effort.longest, report.checked, report.questions), (1, 1, 1));
    assert_eq!(report.walks.len(), 20_001, "the unknown one goes both ways");
}

/// A number in none of the ranges above; the test would have no effort otherwise.
const HALFWAY: spinney_model::Quantity = spinney_model::Quantity::from_thousandths(500_000);

#[test]
fn in_a_long_column_only_neighbours_have_a_threshold_between_them() {
    // From kind to kind there are 6 mm, twice the gap.
    let rows: Vec<String> =
        (1..=1_200).map(|n| format!("kind {n} | {}-{}", 10 * n, 10 * n + 4)).collect();
    let text = format!("width: mm gap 3\n{}", rows.join("\n"));
    let found = table(&matrix(&text), &Settings { pairs_named: 0, ..Settings::default() });
    assert_eq!(codes(&found), [], "each of these is parted from each");
    // Others that fill all the room between some of them: what is left is too narrow, and in
    // a shorter column the two ends of the room would still have had their middle.
    let close: Vec<String> =
        (1..=1_200).map(|n| format!("near {n} | {}-{}", 10 * n + 5, 10 * n + 9)).collect();
    let text = format!("{text}\n{}", close[..200].join("\n"));
    let found = table(&matrix(&text), &Settings { pairs_named: 0, ..Settings::default() });
    let together = found.iter().any(|finding| {
        let Fact::Table(OfTable::NotSeparable { kinds } | OfTable::Blocked { kinds, .. }) =
            &finding.fact
        else {
            return false;
        };
        kinds.starts_with(&["kind 1".to_owned(), "kind 2".to_owned()])
    });
    assert!(together, "{found:#?}");
}
