//! Whom a sheet is for, and how often it is printed so that everybody has what they need.
//!
//! From whom a sheet is for and how many children and groups there are to how often its pages
//! are printed. Every sheet says it in the table of sheets ([`crate::sheets`]), every part of
//! everything for today in its list of parts; the numbers are worked out here alone.
//!
//! Source: four to a group, and an adult with each group, are common practice, without a source;
//! the rules of school and employer say how many adults there must be.

use spinney_model::Scene;

/// Children in a class, where nobody said how many: the most of the 24 to 32 that are usual, so
/// that nobody is left without.
const USUAL_CHILDREN: usize = 32;
/// Children in a group.
const A_GROUP: usize = 4;

/// Who comes along.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Class {
    /// Children.
    pub children: usize,
    /// Groups of them; an adult goes with each.
    pub groups: usize,
    /// What of it somebody said.
    pub said: Said,
}

/// What somebody said of who comes along; the rest is assumed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// How many children, and in how many groups.
    Both,
    /// How many children.
    Children,
    /// How many groups.
    Groups,
    /// Nothing.
    Nothing,
}

impl Class {
    /// A class of which nobody said how large it is.
    pub const USUAL: Self = Self {
        children: USUAL_CHILDREN,
        groups: USUAL_CHILDREN / A_GROUP,
        said: Said::Nothing,
    };

    /// Who comes along on a visit.
    pub fn of(scene: &Scene) -> Self {
        let [children, groups] =
            [scene.children, scene.groups].map(|many| many.map(usize::from));
        match (children, groups) {
            (Some(children), Some(groups)) => Self { children, groups, said: Said::Both },
            (Some(children), None) => {
                Self { children, groups: children.div_ceil(A_GROUP), said: Said::Children }
            }
            (None, Some(groups)) => {
                Self { children: groups * A_GROUP, groups, said: Said::Groups }
            }
            (None, None) => Self::USUAL,
        }
    }
}

/// Whom a sheet is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum For {
    /// The adult who leads: one.
    Once,
    /// The wall, or a table that everybody comes to: one.
    Wall,
    /// Every adult who goes with a group.
    EachAdult,
    /// Every group.
    EachGroup,
    /// Every child.
    EachChild,
}

impl For {
    /// How many there are of them.
    pub fn count(self, class: Class) -> usize {
        match self {
            Self::Once | Self::Wall => 1,
            Self::EachAdult | Self::EachGroup => class.groups,
            Self::EachChild => class.children,
        }
    }
}

/// What is done with the pages of a sheet before they are handed out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cutting {
    /// Nothing: everybody gets its pages as they are.
    Whole,
    /// Everybody gets its pages, and they are cut apart: cards.
    Apart,
    /// Its pages hold a piece for each, exactly as many as there must be: they are printed once
    /// and cut apart. The sheet lays out [`For::count`] pieces.
    Shared,
}

/// How many copies are made of a sheet: what it says of itself in the table of sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Copies {
    /// Whom it is for.
    pub whom: For,
    /// Whether it is cut.
    pub cutting: Cutting,
}

impl Copies {
    /// Its pages for each, as they are.
    pub const fn whole(whom: For) -> Self {
        Self { whom, cutting: Cutting::Whole }
    }

    /// Its pages for each, to cut apart.
    pub const fn apart(whom: For) -> Self {
        Self { whom, cutting: Cutting::Apart }
    }

    /// A piece for each on pages that are printed once.
    pub const fn shared(whom: For) -> Self {
        Self { whom, cutting: Cutting::Shared }
    }

    /// How often its pages are printed.
    pub fn of(self, class: Class) -> usize {
        match self.cutting {
            Cutting::Whole | Cutting::Apart => self.whom.count(class),
            Cutting::Shared => 1,
        }
    }
}

#[cfg(test)]
mod tests {
    use spinney_model::Scene;

    use super::{Class, Copies, For, Said};

    #[test]
    fn what_nobody_said_is_reckoned_in_fours() {
        let class = |children, groups| {
            let class = Class::of(&Scene { children, groups, ..Scene::default() });
            (class.children, class.groups, class.said)
        };
        assert_eq!(class(Some(28), Some(5)), (28, 5, Said::Both));
        assert_eq!(class(Some(29), None), (29, 8, Said::Children));
        assert_eq!(class(None, Some(6)), (24, 6, Said::Groups));
        assert_eq!(class(None, None), (32, 8, Said::Nothing));
    }

    #[test]
    fn each_gets_one_and_what_is_cut_from_shared_pages_is_printed_once() {
        let class = Class { children: 28, groups: 7, said: Said::Both };
        let times = [
            (Copies::whole(For::Once), 1),
            (Copies::whole(For::Wall), 1),
            (Copies::whole(For::EachAdult), 7),
            (Copies::whole(For::EachGroup), 7),
            (Copies::apart(For::EachGroup), 7),
            (Copies::shared(For::EachGroup), 1),
            (Copies::whole(For::EachChild), 28),
            (Copies::shared(For::EachChild), 1),
        ];
        for (copies, many) in times {
            assert_eq!(copies.of(class), many, "{copies:?}");
        }
    }
}
