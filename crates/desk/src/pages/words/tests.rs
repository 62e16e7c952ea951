//! Only the words of the key, each beside what its text warns of, and leaves only for leaves.

use spinney_model::{Done, Edit, Entry, Fork, KeyEdit, KeyId};
use spinney_voice::glossary;

use crate::desk::Desk;
use crate::reply::{Page, Reply};
use crate::request::Request;

fn page(desk: &mut Desk, address: &str) -> String {
    match desk.handle(&Request::get(address)) {
        Reply::Page(Page { status: 200, body, .. }) => String::from_utf8(body).expect("text"),
        other => panic!("{address}: {other:?}"),
    }
}

#[test]
fn only_the_words_of_the_chosen_key_are_there() {
    let rows = ["kind|edge", "hazel|toothed", "oak|smooth"];
    let rows = rows.map(|row| row.split('|').map(str::to_owned).collect()).to_vec();
    let lines = Desk::lines_of_table(&[spinney_exchange::table::typed("table", rows)], 0)
        .expect("it has kinds");
    let mut desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    assert!(page(&mut desk, "/words").contains("Begin a key first."));
    let ask = |key, words: &str| {
        vec![
            Edit::Key(KeyId(key), KeyEdit::Start(format!("<key {key}>"))),
            Edit::Key(
                KeyId(key),
                KeyEdit::Ask { at: Fork::default(), words: words.to_owned(), ask: None },
            ),
        ]
    };
    for edits in [ask(1, "Is the leaf lobed & <b>big</b>?"), ask(2, "Are the leaves opposite?")]
    {
        let line = spinney_exchange::journal::write(&Entry { at: 0, done: Done::Edits(edits) });
        desk.catch_up([line.as_slice()]).expect("our own line is read");
    }
    let first = page(&mut desk, "/words?key=1");
    assert!(first.contains("id=\"word-lobed\"") && !first.contains("id=\"word-opposite\""));
    assert!(first.contains("toothed: teeth are small points on the edge."), "its look-alike");
    assert!(first.contains("Question 1: Is the leaf lobed &amp; &lt;b&gt;big&lt;/b&gt;?"));
    assert!(first.contains("&lt;key 1&gt;") && first.contains("<svg class=\"leaf\""));
    let second = page(&mut desk, "/words?key=2");
    assert!(second.contains("id=\"word-opposite\"") && !second.contains("id=\"word-lobed\""));
}

#[test]
fn a_word_is_drawn_beside_what_its_text_warns_of() {
    let tongue = spinney_voice::Tongue::for_person(&[]);
    let mut drawn = 0;
    for entry in glossary::all(tongue) {
        let Some(word) = spinney_draw::of_word(entry.id, true) else { continue };
        let text = super::drawn(tongue, entry.id, true).expect("the same").into_string();
        let many = word.own.len() + word.other.len();
        assert_eq!(text.matches("viewBox=\"-24 -50 48 64\"").count(), many, "{}", entry.id);
        assert_eq!(text.matches("<figcaption></figcaption>").count(), 0, "{}", entry.id);
        // Every drawing has its own words under it, in every language.
        for shows in word.own.iter().chain(&word.other) {
            for language in ["en", "de"] {
                let id = format!("words-draw-{}", shows.caption);
                let tongue = spinney_voice::Tongue::for_person(&[language.to_owned()]);
                assert!(!tongue.say(&id).contains("words-draw"), "{id} in {language}");
            }
        }
        drawn += 1;
    }
    assert!(drawn >= 30, "{drawn} words have a drawing");
    let captions = |word: &str| {
        let word = spinney_draw::of_word(word, true).expect("it is drawn");
        word.other.iter().map(|shows| shows.caption).collect::<Vec<_>>()
    };
    for (word, warned_of) in [
        ("lobe", &["tooth"][..]),
        ("lobed", &["toothed"]),
        ("tooth", &["lobe"]),
        ("toothed", &["lobed"]),
        ("needle", &["spiny"]),
        ("midrib", &["veins"]),
        ("leaf", &["one-leaflet"]),
        ("leaflet", &["one-leaf"]),
        ("opposite", &["alternate", "paired-leaflets"]),
        ("bud", &["gall"]),
        ("oval", &["egg"]),
    ] {
        assert_eq!(captions(word), warned_of, "{word}");
    }
}

#[test]
fn a_shell_that_is_smooth_is_no_leaf() {
    let rows = ["kind|surface|shell", "snail|smooth|pointed", "limpet|ridged|flat"];
    let rows = rows.map(|row| row.split('|').map(str::to_owned).collect()).to_vec();
    let lines = Desk::lines_of_table(&[spinney_exchange::table::typed("table", rows)], 0)
        .expect("it has kinds");
    let mut desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
    let edits = vec![
        Edit::Key(KeyId(1), KeyEdit::Start("Blue".to_owned())),
        Edit::Key(
            KeyId(1),
            KeyEdit::Ask {
                at: Fork::default(),
                words: "Is it smooth and pointed?".to_owned(),
                ask: None,
            },
        ),
    ];
    let line = spinney_exchange::journal::write(&Entry { at: 0, done: Done::Edits(edits) });
    desk.catch_up([line.as_slice()]).expect("our own line is read");
    let page = page(&mut desk, "/words?key=1");
    assert!(page.contains("id=\"word-smooth\"") && page.contains("id=\"word-pointed\""));
    assert!(!page.contains("two-states"), "no leaf beside a shell");
}
