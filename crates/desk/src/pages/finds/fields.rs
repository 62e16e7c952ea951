//! What can be written down about a kind and about the visit, and how much.

use spinney_model::{AboutField, KindField};

/// The longest name of a kind, in letters.
pub(crate) const LONGEST_NAME: usize = 120;
/// The longest of whatever else is written down about a kind, in letters: three sentences.
pub(crate) const LONGEST_TEXT: usize = 600;
/// The most kinds of a collection.
pub(crate) const MOST_KINDS: usize = spinney_model::limits::SCREENS_KINDS;
/// The most pictures of one kind: a sheet of contact prints.
pub(crate) const MOST_PICTURES: usize = 24;

/// What can be written down about a kind: the field, its name in the form, its label, what
/// helps to fill it in, and whether a sentence or two belong there.
pub(super) const KIND_FIELDS: [(KindField, &str, &str, &str, bool); 10] = [
    (KindField::Name, "name", "finds-name", "finds-name-help", false),
    (KindField::HowSure, "how-sure", "finds-how-sure", "finds-how-sure-help", false),
    (
        KindField::ScientificName,
        "scientific",
        "finds-scientific",
        "finds-scientific-help",
        false,
    ),
    (
        KindField::OtherNames,
        "other-names",
        "finds-other-names",
        "finds-other-names-help",
        false,
    ),
    (KindField::Caution, "caution", "finds-caution", "finds-caution-help", true),
    (KindField::ConfirmBy, "confirm", "finds-confirm", "finds-confirm-help", true),
    (KindField::HowOften, "how-often", "finds-how-often", "finds-how-often-help", false),
    (KindField::Where, "where", "finds-where", "finds-where-help", false),
    (KindField::When, "when", "finds-when", "finds-when-help", false),
    (KindField::WhichPlant, "which", "finds-which", "finds-which-help", false),
];

/// The label of a field.
pub(super) fn of_kind(field: KindField) -> &'static str {
    KIND_FIELDS.iter().find(|(known, ..)| *known == field).map_or("", |(_, _, label, ..)| label)
}

/// What can be said of the scene: the field, its name in the form, its label and an example.
pub(super) const SCENE_FIELDS: [(AboutField, &str, &str, &str); 5] = [
    (AboutField::Title, "title", "finds-title", "finds-title-example"),
    (AboutField::Place, "place", "finds-place", "finds-place-example"),
    (AboutField::Season, "season", "finds-season", "finds-season-example"),
    (AboutField::Part, "part", "finds-part", "finds-part-example"),
    (AboutField::Caution, "caution", "finds-scene-caution", "finds-scene-caution-example"),
];

/// The label of a field.
pub(super) fn of_scene(field: AboutField) -> &'static str {
    SCENE_FIELDS.iter().find(|(known, ..)| *known == field).map_or("", |(_, _, label, _)| label)
}
