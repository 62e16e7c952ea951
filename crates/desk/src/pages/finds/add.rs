//! Adding finds: a list of names, pictures that are dropped in, a table from elsewhere.

use maud::{Markup, html};
use spinney_model::{Edit, KindEdit, KindId};

use super::left::{self, Told};
use super::{LONGEST_NAME, MOST_KINDS, take_table};
use crate::Desk;
use crate::pictures::{self, NoPicture};
use crate::routes::{Asked, Deed, Refused};
use spinney_collection::laid::folded;
use spinney_voice::Tongue;

pub(super) fn forms(t: Tongue) -> Markup {
    html! {
        h2 { (t.say("finds-add")) }
        div.adding {
            form.add #add method="post" action="/do/add-kinds" enctype="multipart/form-data" {
                label for="names" { (t.say("finds-names")) }
                textarea #names name="names" rows="5" placeholder=(t.say("finds-names-example")) {}
                div.drop {
                    label for="pictures" { (t.say("finds-pictures")) }
                    input #pictures type="file" name="pictures" accept="image/jpeg,image/png" multiple
                        data-dropped=(t.say("finds-dropped"));
                    p.quiet.drop-here hidden { (t.say("finds-drop-here")) }
                }
                button.main #add-finds { (t.say("finds-add-button")) }
            }
            (take_table::form(t))
        }
    }
}

/// Adds a kind for every line, and one for every picture.
pub(super) fn add(desk: &mut Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
    let t = asked.tongue;
    let collection = &desk.history.now;
    let mut next = collection.next_kind().0;
    let (mut edits, mut here_already) = (Vec::new(), Vec::new());
    let mut known: Vec<String> =
        collection.kinds.keys().map(|id| folded(&collection.name(*id))).collect();
    for (at, name) in asked.request.field("names").lines().enumerate() {
        let name = name.split_whitespace().collect::<Vec<_>>().join(" ");
        if name.chars().count() > LONGEST_NAME {
            return Err(Refused {
                sentence: t.count_with("finds-long-line", LONGEST_NAME, &[("line", &(at + 1))]),
                remedy: t.say("finds-long-line-remedy"),
            });
        }
        if name.is_empty() {
            continue;
        }
        if known.contains(&folded(&name)) {
            here_already.push(name);
            continue;
        }
        known.push(folded(&name));
        edits.push(Edit::Kind(KindId(next), KindEdit::Add(name)));
        next += 1;
    }
    let pictures = pictures_of(asked)?;
    for picture in &pictures {
        edits.push(Edit::Kind(KindId(next), KindEdit::Add(String::new())));
        edits.push(Edit::Kind(KindId(next), KindEdit::AddPicture(pictures::name(picture))));
        next += 1;
    }
    if edits.is_empty() {
        return Err(Refused {
            sentence: t.say("finds-nothing-new"),
            remedy: t.say("finds-nothing-new-remedy"),
        });
    }
    let added =
        edits.iter().filter(|edit| matches!(edit, Edit::Kind(_, KindEdit::Add(..)))).count();
    if collection.kinds.len() + added > MOST_KINDS {
        return Err(too_many(t));
    }
    let back = asked.back("/finds");
    let to = match here_already.len() {
        0 => back,
        count => {
            let names = here_already.join(", ");
            let sentence = t.count_with("finds-here-already", count, &[("names", &names)]);
            left::address(back, &Told::sentence(sentence))
        }
    };
    Ok(Deed { pictures, ..Deed::edits(edits, to) })
}

pub(super) fn too_many(t: Tongue) -> Refused {
    Refused {
        sentence: t.count("finds-too-many", MOST_KINDS),
        remedy: t.say("finds-too-many-remedy"),
    }
}

/// The most pictures of one form.
const MOST_AT_ONCE: usize = 40;

/// The pictures of a form, written anew.
pub(crate) fn pictures_of(asked: &Asked<'_>) -> Result<Vec<Vec<u8>>, Refused> {
    let given: Vec<_> =
        asked.request.files.iter().filter(|file| !file.bytes.is_empty()).collect();
    // Counted before any is opened: a picture takes a tenth of a second, and all windows wait.
    if given.len() > MOST_AT_ONCE {
        let t = asked.tongue;
        return Err(Refused {
            sentence: t.count("finds-many-at-once", MOST_AT_ONCE),
            remedy: t.say("finds-many-at-once-remedy"),
        });
    }
    given
        .into_iter()
        .map(|file| {
            let picture = pictures::written_anew(&file.bytes);
            picture.map_err(|why| not_a_picture(asked.tongue, &file.name, why))
        })
        .collect()
}

pub(crate) fn not_a_picture(t: Tongue, file: &str, why: NoPicture) -> Refused {
    let sentence = match why {
        NoPicture::NotRead => "picture-not-read",
        NoPicture::TooLarge => "picture-too-large",
    };
    let file: String = file.chars().take(LONGEST_NAME).collect();
    Refused { sentence: t.with(sentence, &[("file", &file)]), remedy: t.say("picture-remedy") }
}
