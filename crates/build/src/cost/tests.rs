//! Rounded flows against exact ones.

use super::*;

/// Every flow is rounded down, and what is made up for is more than what was lost.
#[test]
fn rounded_flows_enclose_the_exact_ones() {
    let mut rng = fastrand::Rng::with_seed(5);
    for _ in 0..2000 {
        let cells: Vec<Vec<Share>> = (0..rng.usize(0..12))
            .map(|_| {
                let parts: Vec<i128> = (0..rng.usize(2..6)).map(|_| rng.i128(1..6)).collect();
                let all: i128 = parts.iter().sum();
                parts.iter().map(|part| Share::new(*part, all)).collect()
            })
            .collect();
        let weight = Share::new(rng.i128(1..50), rng.i128(1..7));
        let kind = || Shares { weight, cells: cells.iter().map(Vec::as_slice).collect() };
        let (Some(exact), Some(rounded)) = (exactly(&[kind()], 40), rounded(&[kind()], 40))
        else {
            panic!("twelve cells fit");
        };
        assert!(
            exact.denominator.exact
                && !rounded.denominator.exact
                && rounded.denominator.rounded
        );
        // What is left of every cell: some of its values, at least one.
        let left: Vec<u32> = cells.iter().map(|cell| rng.u32(1..1 << cell.len())).collect();
        let flow = |whole: &Whole, bits: u32| {
            let cells = whole.numerators[0].iter().zip(&left);
            cells.fold(whole.base[0], |flow, (cell, left)| {
                let values = cell.iter().enumerate().filter(|(at, _)| left >> at & 1 == 1);
                (flow * values.map(|(_, numerator)| numerator).sum::<Effort>()) >> bits
            })
        };
        let true_flow = exact.denominator.share(flow(&exact, 0));
        let low = flow(&rounded, SHARE_BITS);
        assert!(rounded.denominator.share(low) <= true_flow);
        let lost = true_flow / LOST + Share::new(cells.len() as Effort, 1 << FLOW_BITS);
        assert!(rounded.denominator.share(low) + lost >= true_flow);
    }
}
