//! Normal theory: shares beyond a cut, and how many finds are enough to trust one.
//!
//! From mean and standard deviation to shares. The rule of trust is the one-sided tolerance bound
//! for a normal distribution (Hahn and Meeker, *Statistical Intervals*, 1991, section 4.6;
//! NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3): n finds are enough if, with a
//! confidence of 95 %, at most 5 % of all finds of the kind lie beyond the cut. Its factor
//! k(n) = t(n-1, z √n; 0.95) / √n is not worked out: a cut D standard deviations from the mean is
//! far enough if the noncentral t distribution has at least 0.95 below D √n.

/// At most this share beyond the cut …
const BEYOND: f64 = 0.05;
/// … in so many of all cases in which somebody measures as many.
const CONFIDENCE: f64 = 0.95;
/// The normal deviate with [`BEYOND`] above it.
const Z: f64 = 1.644_853_626_951_472_2;
/// More finds of one kind nobody measures for a key.
const MOST_FINDS: usize = 300;

/// The mean. There is at least one value.
pub(super) fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

/// The standard deviation, with n - 1.
pub(super) fn deviation(values: &[f64]) -> Option<f64> {
    let mean = mean(values);
    let squares: f64 = values.iter().map(|value| (value - mean).powi(2)).sum();
    (values.len() > 1).then(|| (squares / (values.len() - 1) as f64).sqrt())
}

/// The share of a normal distribution that is so many standard deviations above its mean or more.
pub(super) fn share_above(deviations: f64) -> f64 {
    libm::erfc(deviations / std::f64::consts::SQRT_2) / 2.0
}

/// How many finds in all are enough for a cut so many standard deviations from the mean, not
/// fewer than there are; None: no number is, or more than anybody measures.
pub(super) fn enough(finds: usize, deviations: f64) -> Option<usize> {
    let least = finds.max(2);
    if least > MOST_FINDS || !is_enough(MOST_FINDS, deviations) {
        return is_enough(least, deviations).then_some(least);
    }
    // The factor falls with every find.
    let (mut low, mut high) = (least, MOST_FINDS);
    while low < high {
        let middle = usize::midpoint(low, high);
        match is_enough(middle, deviations) {
            true => high = middle,
            false => low = middle + 1,
        }
    }
    Some(low)
}

/// Whether more finds could ever be enough.
pub(super) fn can_be_enough(deviations: f64) -> bool {
    deviations > Z
}

/// How many finds that are all alike are enough: if less than [`BEYOND`] were unlike them, so
/// many would hardly all be alike (n = ln 0.05 / ln 0.95, `docs/TRADE.md`, "How many to look at").
pub(super) fn enough_alike() -> usize {
    ((1.0 - CONFIDENCE).ln() / (1.0 - BEYOND).ln()).ceil() as usize
}

fn is_enough(finds: usize, deviations: f64) -> bool {
    let root = (finds as f64).sqrt();
    noncentral_t(deviations * root, (finds - 1) as f64, Z * root) >= CONFIDENCE
}

/// Steps of Simpson's rule.
const STEPS: usize = 400;

/// The share of the noncentral t distribution below `t`: the normal share below `t u - shift`, in
/// the mean over `u`, the root of chi-squared over its degrees of freedom. Simpson's rule over
/// the nine standard deviations on each side in which all of it lies.
fn noncentral_t(t: f64, degrees: f64, shift: f64) -> f64 {
    // u is close to normal around 1 with variance 1 / (2 degrees).
    let spread = 9.0 / (2.0 * degrees).sqrt();
    let (from, to) = ((1.0 - spread).max(0.0), 1.0 + spread);
    let step = (to - from) / STEPS as f64;
    let (mut below, mut all) = (0.0, 0.0);
    for at in 0..=STEPS {
        let u = from + step * at as f64;
        if u <= 0.0 && degrees > 1.0 {
            continue;
        }
        // The density without its constant, which falls out, scaled to 1 at u = 1.
        let power = if degrees > 1.0 { (degrees - 1.0) * u.ln() } else { 0.0 };
        let density = (power - degrees * (u * u - 1.0) / 2.0).exp();
        let weight = match at {
            0 | STEPS => 1.0,
            _ if at % 2 == 1 => 4.0,
            _ => 2.0,
        };
        all += weight * density;
        below += weight * density * (1.0 - share_above(t * u - shift));
    }
    below / all
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(one: f64, other: f64, within: f64) {
        assert!((one - other).abs() <= within, "{one} is not {other}");
    }

    /// `docs/TRADE.md`, "Thresholds": two normal ranges D apart, the cut midway.
    #[test]
    fn shares_beyond_a_cut_midway_are_those_of_the_trade() {
        for (apart, share) in [(1.0, 0.309), (2.0, 0.159), (3.0, 0.067), (4.0, 0.023)] {
            near(share_above(apart / 2.0), share, 0.0005);
        }
        near(share_above(-1.0), 0.841_344_746, 1e-9);
    }

    /// Factors for 95 % with 95 % confidence, as tables of one-sided tolerance bounds have them
    /// (Hahn and Meeker 1991, table A.12; from memory).
    #[test]
    fn the_factors_are_those_of_the_tables() {
        for (finds, factor) in
            [(5, 4.203), (10, 2.911), (15, 2.566), (20, 2.396), (30, 2.220), (50, 2.065)]
        {
            assert!(is_enough(finds, factor + 0.001), "{finds} {factor}");
            assert!(!is_enough(finds, factor - 0.001), "{finds} {factor}");
        }
    }

    #[test]
    fn the_nearer_the_cut_the_more_are_needed_until_none_are_enough() {
        assert_eq!(enough(5, 4.3), Some(5));
        assert_eq!(enough(5, 2.92), Some(10));
        assert_eq!(enough(12, 2.92), Some(12));
        assert_eq!(enough(2, 30.0), Some(2));
        assert_eq!(enough(5, 1.6), None);
        assert!(!can_be_enough(1.6) && can_be_enough(1.65));
        let more: Vec<_> = [3.5, 3.0, 2.5, 2.2].map(|at| enough(3, at)).to_vec();
        assert!(more.windows(2).all(|pair| pair[0] < pair[1]), "{more:?}");
        assert_eq!(enough_alike(), 59);
    }

    #[test]
    fn one_find_has_no_deviation() {
        assert_eq!(deviation(&[4.0]), None);
        near(
            deviation(&[2.0, 4.0, 4.0, 4.0, 5.0, 5.0, 7.0, 9.0]).expect("eight"),
            2.138_089_935,
            1e-9,
        );
    }
}
