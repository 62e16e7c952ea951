//! Yes, no, "does not apply" and "nobody knows" in the languages that tables come in.
//!
//! From one word, or a few that are said as one, to what it means in every table. English,
//! German, French, Spanish, Italian, Dutch, Welsh, Polish; the words are ours, from memory. Only
//! words that mean nothing else in a table of finds: the Welsh `na` is left out, since it is
//! `n/a` here, and so is every single letter but y and n.

use super::phrase::fold;

const YES: [&str; 12] =
    ["yes", "y", "ja", "oui", "sí", "si", "sì", "ie", "ydy", "ydi", "oes", "tak"];

const NO: [&str; 11] =
    ["no", "n", "nein", "non", "nee", "nage", "nac ydy", "nac ydi", "nac oes", "naddo", "nie"];

const UNKNOWN: [&str; 14] = [
    "?",
    "??",
    "???",
    "unknown",
    "not known",
    "unbekannt",
    "inconnu",
    "desconocido",
    "sconosciuto",
    "onbekend",
    "anhysbys",
    "nieznane",
    "nieznany",
    "nie wiadomo",
];

const DOES_NOT_APPLY: [&str; 32] = [
    "n/a",
    "na",
    "n.a.",
    "n. a.",
    "n.a",
    "does not apply",
    "doesn't apply",
    "doesn’t apply",
    "not applicable",
    "entfällt",
    "entfaellt",
    "trifft nicht zu",
    "nicht zutreffend",
    "nicht anwendbar",
    "sans objet",
    "ne s'applique pas",
    "ne s’applique pas",
    "non applicable",
    "no aplica",
    "no se aplica",
    "no procede",
    "non applicabile",
    "non si applica",
    "n.v.t.",
    "n.v.t",
    "nvt",
    "niet van toepassing",
    "amherthnasol",
    "ddim yn berthnasol",
    "nid yw'n berthnasol",
    "nid yw’n berthnasol",
    "nie dotyczy",
];

/// Whether a text says yes.
pub(super) fn is_yes(text: &str) -> bool {
    YES.contains(&fold(text).as_str())
}

/// Whether a text says no.
pub(super) fn is_no(text: &str) -> bool {
    NO.contains(&fold(text).as_str())
}

/// Whether a text says that nobody knows.
pub(super) fn is_unknown(folded: &str) -> bool {
    UNKNOWN.contains(&folded)
}

/// Whether a text says that there is no such thing.
pub(super) fn is_not_applicable(folded: &str) -> bool {
    DOES_NOT_APPLY.contains(&folded)
}
