//! Going back and forth, and what changed between two states.

use spinney_model::{
    AskOf, AskedOf, CharacterId, Done, Edit, Entry, Fork, KeyEdit, KeyId, KindEdit, KindId,
    WishField,
};

use crate::desk::Desk;
use crate::reply::{Page, Reply};
use crate::request::Request;

fn desk() -> Desk {
    let rows =
        ["kind|edge|shape", "hazel|toothed|round", "oak|smooth|lobed", "ash|toothed|long"];
    let rows = rows.map(|row| row.split('|').map(str::to_owned).collect()).to_vec();
    let lines = Desk::lines_of_table(&[spinney_exchange::table::typed("table", rows)], 0)
        .expect("it has kinds");
    Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines are read")
}

fn done(desk: &mut Desk, edits: Vec<Edit>) {
    let line = spinney_exchange::journal::write(&Entry { at: 0, done: Done::Edits(edits) });
    desk.catch_up([line.as_slice()]).expect("our own line is read");
}

fn cell(kind: u32, character: u32, text: &str) -> Edit {
    let (kind, character) = (KindId(kind), CharacterId(character));
    Edit::Cell { kind, character, source: String::new(), text: text.to_owned() }
}

/// A form on a page that has seen everything, unless it says otherwise.
fn sent(desk: &mut Desk, path: &str, form: &[(&str, &str)]) -> Reply {
    let head = desk.mark();
    let seen = form.iter().any(|(name, _)| *name == "head");
    let form = form.iter().copied().chain((!seen).then_some(("head", head.as_str())));
    desk.handle(&Request::post(path, &form.collect::<Vec<_>>()))
}

fn post(desk: &mut Desk, path: &str, form: &[(&str, &str)]) {
    match sent(desk, path, form) {
        Reply::Keep { lines, .. } => {
            desk.catch_up(lines.iter().map(Vec::as_slice)).expect("our own lines are read");
        }
        other => panic!("{path}: {other:?}"),
    }
}

/// "Undo" or "Do it again" on a page that has seen everything.
fn again(desk: &mut Desk, what: &str) {
    post(desk, &format!("/do/{what}"), &[]);
}

fn page(desk: &mut Desk, request: &Request) -> String {
    match desk.handle(request) {
        Reply::Page(Page { status: 200, body, .. }) => String::from_utf8(body).expect("text"),
        other => panic!("{}: {other:?}", request.path),
    }
}

fn refused(desk: &mut Desk, path: &str, form: &[(&str, &str)]) -> String {
    match sent(desk, path, form) {
        Reply::Page(Page { status: 422, body, .. }) => String::from_utf8(body).expect("text"),
        other => panic!("{path}: {other:?}"),
    }
}

fn get(desk: &mut Desk, address: &str) -> String {
    page(desk, &Request::get(address))
}

#[test]
fn undo_to_a_place_and_forth_again() {
    let mut desk = desk();
    let mut states = vec![desk.history.now.clone()];
    for text in ["wavy", "lobed", "spiny"] {
        done(&mut desk, vec![cell(2, 1, text)]);
        states.push(desk.history.now.clone());
    }
    let text = get(&mut desk, "/done");
    assert!(text.contains("Undo the 2 things after this"));
    assert!(text.find("spiny") < text.find("wavy"), "the latest on top");
    let to = |desk: &mut Desk, place: &str| {
        post(desk, "/do/hold-to", &[("place", place)]);
    };
    to(&mut desk, "2");
    assert_eq!(desk.history.now, states[1]);
    assert!(get(&mut desk, "/done").contains("Bring back all 2 down to this"));
    to(&mut desk, "4");
    assert_eq!(desk.history.now, states[3], "all is back");
    to(&mut desk, "0");
    assert!(desk.history.now.kinds.is_empty());
    again(&mut desk, "redo");
    assert_eq!(desk.history.now, states[0]);
    to(&mut desk, "3");
    assert_eq!(desk.history.now, states[2]);
    again(&mut desk, "undo");
    assert_eq!(desk.history.now, states[1]);
    // Whatever the way, the journal read anew says the same.
    let lines: Vec<_> =
        desk.history.entries.iter().map(spinney_exchange::journal::write).collect();
    let again = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines are read");
    assert_eq!(again.history.now, desk.history.now);
    assert_eq!(
        (again.history.holding.clone(), again.history.undone.clone()),
        (desk.history.holding.clone(), desk.history.undone.clone())
    );
}

#[test]
fn nothing_is_undone_unseen() {
    let mut desk = desk();
    done(&mut desk, vec![cell(2, 1, "wavy")]);
    let seen = desk.mark();
    done(&mut desk, vec![cell(1, 1, "spiny")]);
    let form = [("place", "1"), ("head", seen.as_str())];
    for path in ["/do/hold-to", "/do/undo", "/do/redo"] {
        assert!(refused(&mut desk, path, &form).contains("Something else was done"), "{path}");
        let text = refused(&mut desk, path, &[("head", "")]);
        assert!(text.contains("cannot tell which page this form came from"), "{path}");
    }
    let text = refused(&mut desk, "/do/undo", &form);
    assert!(text.contains("would take this back now: hazel, edge: “spiny”"), "{text}");
}

#[test]
fn nothing_comes_back_unseen() {
    let mut desk = desk();
    done(&mut desk, vec![cell(2, 1, "wavy")]);
    done(&mut desk, vec![cell(2, 1, "smooth")]);
    again(&mut desk, "undo");
    let seen = desk.mark();
    // Another window undoes one thing more.
    again(&mut desk, "undo");
    let text = refused(&mut desk, "/do/redo", &[("head", &seen)]);
    assert!(text.contains("would bring this back now: oak, edge: “wavy”"), "{text}");
    assert!(text.contains(&format!("name=\"head\" value=\"{}\"", desk.mark())), "{text}");
}

#[test]
fn a_name_can_be_given_up_and_others_keep_their_own() {
    let mut desk = desk();
    for name in ["first", "second", "third"] {
        post(&mut desk, "/do/version", &[("name", name)]);
    }
    let before = desk.history.now.clone();
    assert!(get(&mut desk, "/done/version/1").contains("“Undo” does not bring the name back."));
    post(&mut desk, "/do/unname", &[("version", "1")]);
    assert_eq!(desk.history.now, before, "what was done stays");
    let text = get(&mut desk, "/done");
    assert!(text.contains("first") && text.contains("third") && !text.contains("second"));
    assert!(get(&mut desk, "/done/version/2").contains("<h1 dir=\"auto\">third</h1>"));
    assert!(!get(&mut desk, "/done/between?from=0").contains("second"));
    for path in ["/done/version/1", "/done/between?from=1"] {
        let Reply::Page(page) = desk.handle(&Request::get(path)) else { panic!("{path}") };
        assert_eq!(page.status, 404, "{path}");
    }
    for path in ["/do/unname", "/do/back-to-version"] {
        for version in ["1", "3", "-1", ""] {
            let text = refused(&mut desk, path, &[("version", version)]);
            assert!(
                text.contains("no saved version with that name any more"),
                "{path} {version}"
            );
        }
    }
    // The journal read anew says the same.
    let lines: Vec<_> =
        desk.history.entries.iter().map(spinney_exchange::journal::write).collect();
    let again = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines are read");
    let names = |desk: &Desk| {
        desk.history
            .versions()
            .map(|(n, version)| (n, version.name.clone()))
            .collect::<Vec<_>>()
    };
    assert_eq!(names(&again), [(0, "first".to_owned()), (2, "third".to_owned())]);
}

#[test]
fn there_are_only_so_many_names() {
    let mut desk = desk();
    for number in 0..super::version::MOST_VERSIONS {
        post(&mut desk, "/do/version", &[("name", &format!("state {number}"))]);
    }
    let text = refused(&mut desk, "/do/version", &[("name", "one more")]);
    assert!(text.contains("at most 200 saved versions"), "{text}");
    assert!(get(&mut desk, "/done").contains("at most 200 saved versions"));
    post(&mut desk, "/do/unname", &[("version", "7")]);
    post(&mut desk, "/do/version", &[("name", "one more")]);
    assert!(get(&mut desk, "/done").contains("one more"));
}

#[test]
fn going_back_to_a_named_state_can_be_undone() {
    let mut desk = desk();
    post(&mut desk, "/do/version", &[("name", "before <b>class</b> 4")]);
    let then = desk.history.now.clone();
    done(&mut desk, vec![Edit::Kind(KindId(3), KindEdit::Remove), cell(1, 2, "oval")]);
    let later = desk.history.now.clone();
    let text = get(&mut desk, "/done/version/0");
    assert!(text.contains("before &lt;b&gt;class&lt;/b&gt; 4") && text.contains("ash"));
    post(&mut desk, "/do/back-to-version", &[("version", "0")]);
    assert_eq!(desk.history.now, then);
    assert!(get(&mut desk, "/done").contains("Back to the saved version “before &lt;b&gt;"));
    assert!(get(&mut desk, "/done/version/0").contains("It is like this now."));
    again(&mut desk, "undo");
    assert_eq!(desk.history.now, later);
}

#[test]
fn what_changed_in_the_key_between_two_states_is_told_in_words() {
    let mut desk = desk();
    let key = KeyId(1);
    let of = |state: &str| AskOf {
        character: CharacterId(1),
        yes: AskedOf::States(vec![state.to_owned()]),
    };
    let start = vec![
        Edit::Key(key, KeyEdit::Start("ours".to_owned())),
        Edit::Key(
            key,
            KeyEdit::Ask {
                at: Fork::default(),
                words: "Teeth?".to_owned(),
                ask: Some(of("toothed")),
            },
        ),
        Edit::Key(key, KeyEdit::Wish(WishField::Finish, "yes".to_owned())),
    ];
    done(&mut desk, start);
    post(&mut desk, "/do/version", &[("name", "first")]);
    assert!(get(&mut desk, "/done/between?from=0").contains("Nothing changed in the key."));
    let at = Fork::default();
    let edits = vec![
        Edit::Key(key, KeyEdit::Reword { at, words: "Is the edge like a saw?".to_owned() }),
        Edit::Kind(KindId(9), KindEdit::Add("holly".to_owned())),
        cell(9, 1, "spiny"),
        cell(9, 2, "round"),
        Edit::Kind(KindId(3), KindEdit::Remove),
    ];
    done(&mut desk, edits);
    let text = get(&mut desk, "/done/between?from=0");
    for said in [
        "“Teeth?” is “Is the edge like a saw?” now",
        "Kinds that left",
        ">ash<",
        "Kinds that came",
        ">holly<",
        "No longer asked",
        "New questions",
        "A find takes about",
    ] {
        assert!(text.contains(said), "{said}");
    }
    post(&mut desk, "/do/version", &[("name", "second")]);
    assert!(get(&mut desk, "/done/between?from=1&to=0").contains(">holly<"));
    let name = "nut".to_owned();
    done(&mut desk, vec![Edit::Key(key, KeyEdit::Call { kind: KindId(1), name })]);
    let text = get(&mut desk, "/done/between?from=1");
    assert!(text.contains("nut (hazel)"), "the group's name is another name: {text}");
}

#[test]
fn the_list_says_what_was_true_when_it_was_done() {
    let mut desk = desk();
    done(&mut desk, vec![cell(3, 1, "wavy")]);
    let named = Edit::Kind(
        KindId(3),
        KindEdit::Describe(spinney_model::KindField::Name, "rowan".to_owned()),
    );
    done(&mut desk, vec![named]);
    done(&mut desk, vec![Edit::Kind(KindId(3), KindEdit::Remove)]);
    let request = Request { at: 3 * 3_600_000, ..Request::get("/done") };
    let text = page(&mut desk, &request);
    assert!(text.contains("ash, edge: “wavy”"), "it was called ash then");
    assert!(text.contains("rowan was taken out"));
    assert!(text.contains("3 hours ago") && text.contains("datetime=\"1970-01-01T00:00:00Z\""));
}

#[test]
fn what_a_key_is_for_is_said_in_words() {
    let mut desk = desk();
    let key = KeyId(1);
    let wish = |field, text: &str| Edit::Key(key, KeyEdit::Wish(field, text.to_owned()));
    done(&mut desk, vec![wish(WishField::Finish, "yes")]);
    let kinds = vec![KindId(1), KindId(2)];
    done(&mut desk, vec![Edit::Key(key, KeyEdit::ForKinds(Some(kinds)))]);
    done(&mut desk, vec![Edit::Key(key, KeyEdit::Never(vec![CharacterId(1)]))]);
    let text = get(&mut desk, "/done");
    assert!(text.contains("is found from the table"), "{text}");
    assert!(text.contains("never asks about: edge"), "{text}");
    assert!(!text.contains("made for: yes") && !text.contains("made for: 1"), "{text}");
}
