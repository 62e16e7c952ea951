//! What is said of a picture that was left out, and of a file that cannot be used.

use spinney_model::{FileTrouble, OfPicture, WhyNoPicture};

use super::Told;
use crate::Tongue;

pub(super) fn told(t: Tongue, fact: &OfPicture) -> Told {
    match fact {
        OfPicture::LeftOut { kind, picture, why } => t.told(
            "finding-picture",
            &[("kind", kind), ("picture", picture), ("why", &told_why(t, *why))],
        ),
        OfPicture::Damaged { kind } => t.told("finding-picture-damaged", &[("kind", kind)]),
    }
}

fn told_why(t: Tongue, why: WhyNoPicture) -> String {
    match why {
        WhyNoPicture::TooManyBytes => t.say("finding-picture-too-many"),
        WhyNoPicture::Elsewhere => t.say("finding-picture-elsewhere"),
        WhyNoPicture::NoFile => t.say("finding-picture-no-file"),
        WhyNoPicture::File(of) => trouble(t, of),
        WhyNoPicture::TooLarge(most) => t.with("finding-picture-too-large", &[("most", &most)]),
        WhyNoPicture::NotRead => t.say("finding-picture-not-read"),
        WhyNoPicture::TooManyPixels => t.say("finding-picture-pixels"),
    }
}

/// Why a file cannot be used, within a sentence: "the disk is full".
pub fn trouble(t: Tongue, trouble: FileTrouble) -> String {
    t.say(match trouble {
        FileTrouble::NotThere => "finding-file-not-there",
        FileTrouble::NoRight => "finding-file-no-right",
        FileTrouble::IsThere => "finding-file-is-there",
        FileTrouble::NotAFolder => "finding-file-not-a-folder",
        FileTrouble::IsAFolder => "finding-file-is-a-folder",
        FileTrouble::ReadOnly => "finding-file-read-only",
        FileTrouble::Full => "finding-file-full",
        FileTrouble::TooLarge => "finding-file-too-large",
        FileTrouble::BadName => "finding-file-bad-name",
        FileTrouble::InUse => "finding-file-in-use",
        FileTrouble::NoAddress => "finding-file-no-address",
        FileTrouble::NoAnswer => "finding-file-no-answer",
        FileTrouble::Closed => "finding-file-closed",
        FileTrouble::NoMemory => "finding-file-no-memory",
        FileTrouble::Gone => "finding-file-gone",
        FileTrouble::DiskFailed => "finding-file-disk-failed",
        FileTrouble::DiskRefused => "finding-file-disk-refused",
        FileTrouble::BadPlace => "finding-file-bad-place",
        FileTrouble::NotHeld => "finding-file-not-held",
        FileTrouble::Unknown => "finding-file-unknown",
    })
}
