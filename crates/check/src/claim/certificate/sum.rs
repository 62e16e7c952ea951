//! A number for each goal that adds up.

/// A number for each goal that adds up, compared from the first on.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Sum<const N: usize>(pub(super) [i128; N]);

impl<const N: usize> Default for Sum<N> {
    fn default() -> Self {
        Self([0; N])
    }
}

impl<const N: usize> Sum<N> {
    pub(super) fn plus(mut self, other: Self) -> Self {
        self.0.iter_mut().zip(other.0).for_each(|(sum, more)| *sum += more);
        self
    }

    pub(super) fn times(mut self, flow: i128) -> Self {
        self.0.iter_mut().for_each(|part| *part *= flow);
        self
    }
}
