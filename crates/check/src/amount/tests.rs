//! Amounts past the end of machine numbers.

use super::*;

fn unit(denominator: i128) -> Share {
    Share::new(1, denominator)
}

/// 1/2 + 1/3 + 1/5 + ... of the primes below 200: the denominator has 82 digits.
#[test]
fn a_sum_that_fits_nowhere_is_said_a_little_above() {
    let primes: Vec<i128> =
        (2..200).filter(|n| (2..*n).all(|divisor| n % divisor != 0)).collect();
    let sum =
        primes.iter().fold(Amount::zero(), |sum, prime| sum.plus(&Amount::Short(unit(*prime))));
    assert!(matches!(sum, Amount::Long(_)));
    let said = sum.said().expect("a small number");
    assert_eq!(UNITS % said.denom(), 0);
    let said = Amount::Short(said).long();
    assert!(said > sum.long() && said < sum.long() + long(unit(UNITS)));
    // Taken apart again, what is left is exact.
    let less =
        primes[1..].iter().fold(sum, |sum, prime| sum.plus(&Amount::Short(-unit(*prime))));
    assert_eq!(less.said(), Some(unit(2)));
}

#[test]
fn parts_of_parts_are_exact() {
    let mut part = Amount::Short(Share::from_integer(1));
    for _ in 0..60 {
        part = part.narrowed(Share::new(1, 1), Share::new(1, 7));
    }
    for _ in 0..60 {
        part = part.times(Share::from_integer(7));
    }
    assert_eq!(part.said(), Some(Share::from_integer(1)));
    let third = Amount::Short(unit(6)).over(&Amount::Short(unit(2)));
    assert_eq!(third.said(), Some(unit(3)));
}
