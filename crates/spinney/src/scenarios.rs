//! The three invented outings that come with the program, and the keys drawn for them by hand.

/// A file of an outing.
pub(crate) struct File {
    pub(crate) name: &'static str,
    pub(crate) text: &'static str,
}

/// An outing: its table with its sheets, and keys drawn by hand.
pub(crate) struct Outing {
    pub(crate) name: &'static str,
    /// The message that names it.
    pub(crate) title: &'static str,
    pub(crate) files: &'static [File],
    /// Keys drawn by hand, with the table that they are for.
    pub(crate) keys: &'static [(&'static str, &'static str)],
}

macro_rules! outing {
    ($name:literal, $title:literal, [$($file:literal),* $(,)?], $keys:expr) => {
        Outing {
            name: $name,
            title: $title,
            files: &[$(File {
                name: $file,
                text: include_str!(concat!("../scenarios/", $name, "/", $file)),
            }),*],
            keys: $keys,
        }
    };
}

/// All outings. Everything in them is invented; see `scenarios/SOURCES.md`.
pub(crate) const OUTINGS: &[Outing] = &[
    outing!(
        "hedge_walk",
        "run-hedge-walk",
        [
            "table.csv",
            "characters.csv",
            "table_with_spine.csv",
            "characters_with_spine.csv",
            "kinds.csv",
            "about.csv",
            "key_by_hand.txt",
            "key_by_hand_mended.txt",
            "key_in_leads.txt",
            "strangers.csv",
        ],
        &[
            ("key_by_hand.txt", "table_with_spine.csv"),
            ("key_by_hand_mended.txt", "table_with_spine.csv"),
            ("key_in_leads.txt", "table_with_spine.csv"),
        ]
    ),
    outing!(
        "pond_tray",
        "run-pond-tray",
        ["table.csv", "characters.csv", "kinds.csv", "about.csv", "key_by_hand.txt",],
        &[("key_by_hand.txt", "table.csv")]
    ),
    outing!(
        "pasta_shapes",
        "run-pasta",
        ["table.csv", "characters.csv", "kinds.csv", "about.csv", "key_by_hand.txt"],
        &[("key_by_hand.txt", "table.csv")]
    ),
];

impl Outing {
    /// The text of one of its files. **Panics** on a name that it does not list.
    pub(crate) fn text(&self, name: &str) -> &'static str {
        let file = self.files.iter().find(|file| file.name == name);
        file.expect("an outing is asked only for files that it lists").text
    }
}
