//! What is left of one cell that varies, and what a question takes of it.

/// What is left of a varying cell, or what of it a question takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Remains {
    /// A mask over the cell's own values.
    Values(u64),
    /// Intervals from the first to before the second.
    Intervals(u32, u32),
}

impl Remains {
    pub(crate) fn is_empty(self) -> bool {
        match self {
            Self::Values(mask) => mask == 0,
            Self::Intervals(from, to) => from >= to,
        }
    }

    /// What is left after a yes and after a no. Intervals are cut once, from either end.
    pub(crate) fn cut(self, yes: Self) -> (Self, Self) {
        match (self, yes) {
            (Self::Values(left), Self::Values(taken)) => {
                (Self::Values(left & taken), Self::Values(left & !taken))
            }
            (Self::Intervals(from, to), Self::Intervals(first, last)) => {
                let kept = Self::Intervals(from.max(first), to.min(last).max(from.max(first)));
                let rest = if first == 0 {
                    Self::Intervals(from.max(last), to.max(from.max(last)))
                } else {
                    Self::Intervals(from, to.min(first).max(from))
                };
                (kept, rest)
            }
            _ => unreachable!("a slot keeps values or intervals, never both"),
        }
    }
}
