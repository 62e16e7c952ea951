//! The words in which programs read what was measured: one each for everything that can be said.

use spinney_model::{
    Arrangement, BaseForm, BaseSides, Doubt, EdgeKind, EdgeUnseen, How, LeafNote, LeftOut,
    Measurand, NoScale, NotMeasured, OneSide, PictureScale, TipForm, VeinPairs, VeinsUnseen,
    WhichSide::{self, Left, Neither, Right},
};

/// What is measured.
pub(crate) fn measurand(what: Measurand) -> &'static str {
    match what {
        Measurand::BladeLength => "blade length",
        Measurand::BladeWidth => "blade width",
        Measurand::StalkLength => "stalk length",
        Measurand::BladeArea => "blade area",
        Measurand::Perimeter => "blade perimeter",
        Measurand::LengthToWidth => "length to width",
        Measurand::StalkToBlade => "stalk to blade",
        Measurand::Solidity => "solidity",
        Measurand::Roundness => "roundness",
    }
}

/// How a measure is taken.
pub(crate) fn how(how: How) -> &'static str {
    match how {
        How::AlongMidrib => "along midrib",
        How::AcrossMidrib => "across midrib",
        How::AlongStalk => "along stalk",
        How::InsideOutline => "inside outline",
        How::AlongOutline => "along outline",
        How::OneOverOther => "one over other",
    }
}

/// Why a measure is not there.
pub(crate) fn not_measured(why: NotMeasured) -> &'static str {
    match why {
        NotMeasured::NoScale => "no scale",
        NotMeasured::NoStalk => "no stalk seen",
    }
}

/// What is to be said of a leaf.
pub(crate) fn note(note: LeafNote) -> &'static str {
    match note {
        LeafNote::BaseGuessed => "base guessed",
        LeafNote::Holes => "holes",
        LeafNote::FaintEdge => "faint edge",
        LeafNote::TwoStalks => "two stalks",
        LeafNote::CutApart => "cut apart",
        LeafNote::Mended => "mended",
        LeafNote::Rubbed => "rubbing",
    }
}

/// How parts are arranged.
pub(crate) fn arrangement(arrangement: Arrangement) -> &'static str {
    match arrangement {
        Arrangement::Feather => "feather",
        Arrangement::Hand => "hand",
    }
}

/// How an edge is.
pub(crate) fn edge_kind(kind: EdgeKind) -> &'static str {
    match kind {
        EdgeKind::Entire => "entire",
        EdgeKind::Wavy => "wavy",
        EdgeKind::Toothed => "toothed",
        EdgeKind::DoubleToothed => "double-toothed",
        EdgeKind::ToothedOrDouble => "toothed or double-toothed",
        EdgeKind::Spiny => "spiny",
    }
}

/// Why an edge was not seen.
pub(crate) fn edge_unseen(why: EdgeUnseen) -> &'static str {
    match why {
        EdgeUnseen::TooCoarse => "too coarse",
        EdgeUnseen::Rubbed => "rubbing",
    }
}

/// How side veins of both sides stand to each other.
pub(crate) fn vein_pairs(pairs: VeinPairs) -> &'static str {
    match pairs {
        VeinPairs::Opposite => "opposite",
        VeinPairs::Alternate => "alternate",
    }
}

/// Why no side veins are told.
pub(crate) fn veins_unseen(why: VeinsUnseen) -> &'static str {
    match why {
        VeinsUnseen::Faint => "faint",
        VeinsUnseen::NotLookedFor => "not looked for",
    }
}

/// How a base is.
pub(crate) fn base_form(form: BaseForm) -> &'static str {
    match form {
        BaseForm::HeartShaped => "heart-shaped",
        BaseForm::CutOff => "cut off",
        BaseForm::Rounded => "rounded",
        BaseForm::WedgeShaped => "wedge-shaped",
        BaseForm::DrawnIn => "drawn in",
    }
}

/// How both sides of a base stand to each other; None: that is not told.
pub(crate) fn base_sides(sides: BaseSides) -> Option<&'static str> {
    let which = |side: Option<OneSide>| side.and_then(|side| side.which);
    match (which(sides.lower), which(sides.wider)) {
        (Some(Left | Right), Some(Left | Right)) => Some("one further down and one wider"),
        (Some(Left | Right), _) => Some("one further down"),
        (_, Some(Left | Right)) => Some("one wider"),
        (Some(Neither), Some(Neither)) => Some("alike"),
        _ => None,
    }
}

/// Which of two sides has more.
pub(crate) fn which_side(which: WhichSide) -> &'static str {
    match which {
        Neither => "neither",
        Left => "left",
        Right => "right",
    }
}

/// How a tip is.
pub(crate) fn tip_form(form: TipForm) -> &'static str {
    match form {
        TipForm::DrawnOut => "drawn out",
        TipForm::Pointed => "pointed",
        TipForm::Rounded => "rounded",
        TipForm::Notched => "notched",
    }
}

/// What is no leaf.
pub(crate) fn left_out(what: LeftOut) -> &'static str {
    match what {
        LeftOut::CutOff => "cut off",
        LeftOut::OnStrip => "on strip",
        LeftOut::Label => "label",
        LeftOut::Speck => "speck",
        LeftOut::Faint => "faint",
    }
}

/// Where the scale comes from, or why there is none.
pub(crate) fn scale(scale: PictureScale) -> &'static str {
    match scale {
        PictureScale::Said { .. } => "said",
        PictureScale::OfRuler { .. } => "ruler",
        PictureScale::OfFile { doubt: None, .. } => "of file",
        PictureScale::OfFile { doubt: Some(Doubt::Usual), .. } => "doubtful",
        PictureScale::OfCard { .. } => "scale card",
        PictureScale::OfStrip { .. } => "scale strip",
        PictureScale::Unknown(NoScale::NotSaid) => "not said",
        PictureScale::Unknown(NoScale::Camera) => "camera",
        PictureScale::Unknown(NoScale::TooLarge { .. }) => "too large",
        PictureScale::Unknown(NoScale::NotSquare) => "not square",
        PictureScale::Unknown(NoScale::Rings) => "unclear rings",
    }
}
