//! Stories of the table, told through requests.

use spinney_exchange::journal;

use crate::desk::Desk;
use crate::reply::{Page, Reply};
use crate::request::Request;

/// A desk whose host keeps everything at once.
struct AtTheTable(Desk);

impl AtTheTable {
    fn with(table: &str) -> Self {
        let rows =
            table.lines().map(|line| line.split('|').map(|c| c.trim().to_owned()).collect());
        let sheets = [spinney_exchange::table::typed("table", rows.collect())];
        let lines = Desk::lines_of_table(&sheets, 0).expect("the table has kinds");
        Self(Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines are read"))
    }

    fn page(&mut self, address: &str) -> String {
        match self.0.handle(&Request::get(address)) {
            Reply::Page(Page { status: 200, body, .. }) => {
                String::from_utf8(body).expect("text")
            }
            other => panic!("{address}: {other:?}"),
        }
    }

    /// Posts, keeps, and gives the address that follows.
    fn post(&mut self, path: &str, form: &[(&str, &str)]) -> String {
        match self.sent(path, form) {
            Reply::Keep { lines, then, .. } => {
                self.0
                    .catch_up(lines.iter().map(Vec::as_slice))
                    .expect("our own lines are read");
                then.location.expect("a deed leads on")
            }
            Reply::Page(Page { status: 303, location: Some(to), .. }) => to,
            other => panic!("{path}: {other:?}"),
        }
    }

    /// A form on a page that has seen everything, unless it says otherwise.
    fn sent(&mut self, path: &str, form: &[(&str, &str)]) -> Reply {
        let head = self.0.mark();
        let seen = form.iter().any(|(name, _)| *name == "head");
        let form = form.iter().copied().chain((!seen).then_some(("head", head.as_str())));
        self.0.handle(&Request::post(path, &form.collect::<Vec<_>>()))
    }

    fn refused(&mut self, path: &str, form: &[(&str, &str)]) -> String {
        match self.sent(path, form) {
            Reply::Page(Page { status: 422, body, .. }) => {
                String::from_utf8(body).expect("text")
            }
            other => panic!("{path}: {other:?}"),
        }
    }

    fn cell(&mut self, kind: u32, character: u32) -> String {
        let at = (spinney_model::KindId(kind), spinney_model::CharacterId(character));
        let laid = self.0.laid().expect("there are kinds");
        laid.said.shown("", at.0, at.1).to_owned()
    }
}

const HEDGE: &str = "kind | edge | leaf form
hazel | toothed | one piece
oak | smooth | one piece
ash | toothed |
rowan | toothed | leaflets";

#[test]
fn two_windows_write_different_cells_and_neither_is_lost() {
    let mut desk = AtTheTable::with(HEDGE);
    let whole = |changes: &[(&'static str, &'static str)]| {
        let mut form = vec![
            ("c-1-1", "toothed"),
            ("b-1-1", "toothed"),
            ("c-2-1", "smooth"),
            ("b-2-1", "smooth"),
            ("c-3-2", ""),
            ("b-3-2", ""),
        ];
        for (name, text) in changes {
            form.iter_mut().find(|(field, _)| field == name).expect("it is there").1 = text;
        }
        form
    };
    desk.post("/do/cells", &whole(&[("c-3-2", "leaflets")]));
    // The other window still shows an empty cell for ash, and sends it along.
    assert_eq!(desk.post("/do/cells", &whole(&[("c-2-1", "wavy")])), "/table");
    assert_eq!(desk.cell(3, 2), "leaflets");
    assert_eq!(desk.cell(2, 1), "wavy");
    // Now both want the same cell.
    let to = desk.post("/do/cells", &whole(&[("c-2-1", "lobed"), ("c-1-1", "double-toothed")]));
    assert_eq!(desk.cell(2, 1), "wavy", "nothing is overwritten");
    assert_eq!(desk.cell(1, 1), "double-toothed", "the other cell is kept");
    let page = desk.page(to.split('#').next().expect("an address"));
    assert!(page.contains("Someone wrote “wavy” here while you typed “lobed”."), "{to}");
    assert!(
        page.contains("name=\"c-2-1\" value=\"lobed\""),
        "what was typed stays in its cell"
    );
    assert!(page.contains("name=\"b-2-1\" value=\"wavy\""));
    desk.post("/do/cells", &[("c-2-1", "lobed"), ("b-2-1", "wavy"), ("decide", "2-1-leave")]);
    assert_eq!(desk.cell(2, 1), "wavy");
    desk.post("/do/cells", &[("c-2-1", "lobed"), ("b-2-1", "wavy"), ("decide", "2-1-mine")]);
    assert_eq!(desk.cell(2, 1), "lobed");
}

#[test]
fn two_groups_tables_are_merged_and_their_disagreements_decided() {
    let mut desk = AtTheTable::with("kind | leaf form\nhazel | one piece");
    let blue =
        "kind,edge,stalk length (mm)\nhazel,toothed,8-12\noak,smooth,2-5\nash,toothed,40";
    let red =
        "kind\tedge\tstalk length (mm)\nhazel\tspiny\t10-15\noak\tSmooth\t2-5\nash\t?\t40";
    assert_eq!(desk.post("/do/lay-over", &[("who", "Blue"), ("table", blue)]), "/table");
    let to = desk.post("/do/lay-over", &[("who", "Red"), ("table", red)]);
    assert_eq!(to, "/table?show=differ");
    let page = desk.page(&to);
    for said in
        ["Blue: “toothed”", "Red: “spiny”", "Take “spiny”", "It varies: “toothed or spiny”"]
    {
        assert!(page.contains(said), "{said}");
    }
    assert!(page.contains("in 3 cells people differ"));
    assert!(!page.contains("id=\"k-2\""), "oak is not shown: both groups agree on it");
    desk.post("/do/cells", &[("decide", "1-2-take-spiny")]);
    assert_eq!(desk.cell(1, 2), "spiny");
    desk.post("/do/cells", &[("decide", "1-3-take-8-12 or 10-15")]);
    assert_eq!(desk.cell(1, 3), "8-12 or 10-15");
    desk.post("/do/cells", &[("decide", "3-2-look")]);
    assert_eq!(desk.cell(3, 2), "?");
    let page = desk.page("/table?show=differ");
    assert!(page.contains("Nobody contradicts anybody here."));
    // Nobody's words are lost.
    assert!(desk.page("/table").contains("Red: “?”"));
    assert!(desk.page("/table?as=Red").contains("name=\"c-1-2\" value=\"spiny\""));
}

#[test]
fn a_group_writes_its_own_view_and_never_over_the_table() {
    let mut desk = AtTheTable::with(HEDGE);
    let form =
        [("as", "Green"), ("c-1-1", "smooth"), ("b-1-1", ""), ("c-2-1", ""), ("b-2-1", "")];
    desk.post("/do/cells", &form);
    assert_eq!(desk.cell(1, 1), "toothed", "the table decides");
    assert!(desk.page("/table").contains("Green: “smooth”"));
    // A cell that only a group filled is open again when the table's hand empties it.
    desk.post("/do/cells", &[("as", "Green"), ("c-3-2", "leaflets"), ("b-3-2", "")]);
    assert_eq!(desk.cell(3, 2), "leaflets");
    desk.post("/do/cells", &[("c-3-2", ""), ("b-3-2", "leaflets")]);
    assert_eq!(desk.cell(3, 2), "?");
}

#[test]
fn the_margin_names_what_is_alike_and_the_cell_that_helps() {
    let mut desk = AtTheTable::with(HEDGE);
    let page = desk.page("/table");
    assert!(page.contains("hazel and ash"), "they are alike");
    assert!(page.contains("href=\"/table#i-3-2\""), "the way to the blank cell");
    desk.post("/do/cells", &[("c-3-2", "leaflets"), ("b-3-2", "")]);
    let page = desk.page("/table");
    assert!(page.contains("ash and rowan") && !page.contains("hazel and ash"));
    desk.post("/do/add-character", &[("name", "leaflet length (mm)")]);
    desk.post(
        "/do/cells",
        &[("c-3-3", "60-90"), ("b-3-3", ""), ("c-4-3", "20-40"), ("b-4-3", "")],
    );
    assert!(desk.page("/table").contains("Every two kinds can be told apart."));
}

#[test]
fn a_renamed_state_keeps_the_questions_that_ask_for_it() {
    let mut desk = AtTheTable::with(HEDGE);
    desk.post("/do/character/1", &[("f-states", "toothed, smooth")]);
    desk.post("/do/character/2", &[("f-applies-when", "edge = toothed or smooth")]);
    let fork = spinney_model::Fork::default();
    let key = spinney_model::KeyId(1);
    let of = spinney_model::AskOf {
        character: spinney_model::CharacterId(1),
        yes: spinney_model::AskedOf::States(vec!["toothed".to_owned()]),
    };
    let edits = vec![
        spinney_model::Edit::Key(key, spinney_model::KeyEdit::Start("ours".to_owned())),
        spinney_model::Edit::Key(
            key,
            spinney_model::KeyEdit::Ask {
                at: fork.clone(),
                words: "Teeth?".to_owned(),
                ask: Some(of),
            },
        ),
    ];
    let done = spinney_model::Done::Edits(edits);
    let line = journal::write(&spinney_model::Entry { at: 0, done });
    desk.0.catch_up([line.as_slice()]).expect("our own line is read");
    assert!(desk.page("/table/1").contains("“toothed”, 3 kinds"));
    desk.post("/do/rename-state/1", &[("from", "toothed"), ("to", "jagged, like a saw")]);
    assert_eq!(desk.cell(1, 1), "\"jagged, like a saw\"");
    let made = desk.0.made(spinney_voice::Tongue::of_tokens(), key).expect("the key has kinds");
    assert_eq!(made.key.couplets.len(), 1);
    assert!(made.key.couplets[0].ask.is_some());
    let laid = desk.0.laid().expect("there are kinds");
    let ask = made.key.couplets[0].ask.as_ref().expect("it is asked");
    assert_eq!(
        laid.ask_of(ask).expect("of the table").yes,
        spinney_model::AskedOf::States(vec!["jagged, like a saw".to_owned()])
    );
    let governor = &laid.matrix.characters()[1].governor;
    assert_eq!(
        governor.as_ref().map(|of| of.states.len()),
        Some(2),
        "the condition came along"
    );
    assert!(made.layer.forks[&fork].sides.values().all(|placed| !placed.by_hand));
}

#[test]
fn a_renamed_character_is_named_anew_where_others_speak_of_it() {
    let mut desk = AtTheTable::with(HEDGE);
    desk.post("/do/character/1", &[("f-applies-when", "leaf form = one piece")]);
    let seen = desk.0.mark();
    desk.post("/do/character/2", &[("f-name", "shape")]);
    assert!(desk.page("/table/1").contains("value=\"shape = one piece\""));
    let page = desk.refused("/do/character/2", &[("f-name", "EDGE ")]);
    assert!(page.contains("“EDGE” is in the table already."));
    let old = [("head", seen.as_str()), ("f-name", "outline")];
    let page = desk.refused("/do/character/2", &old);
    assert!(page.contains("Someone wrote “shape” there while you typed “outline”."));
}

#[test]
fn a_character_sheet_writes_only_what_was_changed() {
    let mut desk = AtTheTable::with(HEDGE);
    let form = [
        ("boxes", "seen-on"),
        ("f-seen-on", "twig"),
        ("f-seen-on", "winter twig"),
        ("boxes", "season"),
        ("f-difficulty", "hard"),
        ("f-question", "Is the edge {}?"),
    ];
    let head = desk.0.head();
    desk.post("/do/character/1", &form);
    assert_eq!(desk.0.head(), head + 1, "one deed, undone in one go");
    let page = desk.page("/table/1");
    assert!(page.contains("value=\"winter twig\" checked"));
    assert!(page.contains("It asks, for instance: “Is the edge toothed?”"));
    let again = [("boxes", "seen-on"), ("f-seen-on", "winter twig"), ("f-seen-on", "twig")];
    desk.post("/do/character/1", &again);
    assert_eq!(desk.0.head(), head + 1, "the same boxes are no change");
    desk.post("/do/character/1", &[("boxes", "seen-on")]);
    assert!(!desk.page("/table/1").contains("value=\"twig\" checked"), "none is ticked");
}

#[test]
fn what_the_reader_does_not_understand_stands_at_its_cell() {
    let mut desk =
        AtTheTable::with("kind | blade length (mm)\nhazel | 60-90\noak | about 5\nash | 40");
    let page = desk.page("/table");
    let cell = page
        .split("id=\"c-2-1\"")
        .nth(1)
        .expect("the cell")
        .split("</td>")
        .next()
        .expect("its end");
    assert!(cell.contains("about 5") && cell.contains("mend this"), "{cell}");
    assert!(page.contains("One cell is worth a look:"));
}

#[test]
fn hostile_names_are_only_text() {
    let mut desk = AtTheTable::with(HEDGE);
    let script = "<script>alert(1)</script>";
    desk.post("/do/add-character", &[("name", script)]);
    desk.post(
        "/do/cells",
        &[("c-1-3", "\"><img src=x>"), ("b-1-3", ""), ("c-2-3", "שלום 🌳"), ("b-2-3", "")],
    );
    let page = desk.page("/table/3");
    assert!(!page.contains("<script>alert") && !page.contains("<img src=x"));
    assert!(page.contains("&lt;script&gt;alert(1)"));
    let long = "a".repeat(10_000);
    assert!(desk.refused("/do/add-character", &[("name", &long)]).contains(&long));
    assert!(
        desk.refused("/do/cells", &[("c-1-1", &long), ("b-1-1", "toothed")]).contains(&long)
    );
    desk.post("/do/add-character", &[("name", "two\nlines")]);
    assert_eq!(desk.0.history.now.character_name(spinney_model::CharacterId(4)), "two lines");
    desk.post(
        "/do/cells",
        &[("c-99-1", "x"), ("c-x", "y"), ("decide", "1-1-77"), ("decide", "a-b")],
    );
}

#[test]
fn a_column_is_headed_by_the_unit_that_is_typed_in_it() {
    let mut table =
        AtTheTable::with("kind | stalk (cm) | blade\nlime | 4 | 6 cm\nelm | 1 | 9 cm");
    let page = table.page("/table");
    assert_eq!(page.matches(">in cm</span>").count(), 2, "by its heading, and by its cells");
    assert!(!page.contains(">in mm</span>"));
    for column in [1, 2] {
        let page = table.page(&format!("/table/{column}"));
        assert!(page.contains(" cm or more?”") && !page.contains("kept-in"), "{column}");
    }
    let mut table = AtTheTable::with("kind | stalk (in)\nlime | 4\nelm | 1");
    let page = table.page("/table/1");
    assert!(page.contains(">in in</span>"), "what was typed");
    assert!(page.contains(" inches or more?”") && !page.contains("kept-in"), "{page}");
    let mut table = AtTheTable::with("kind | weight (kg)\nlime | 4\nelm | 1");
    let page = table.page("/table/1");
    assert!(page.contains("It is typed in “kg” here. Questions and sheets say “g”."));
}

#[test]
fn a_slip_is_told_at_its_own_kind() {
    let mut table = AtTheTable::with(
        "kind | edge\nlime | tooted\nelm | toothed\noak | toothed\nash | wavy",
    );
    let page = table.page("/table");
    let cells = page.split("cells-to-mend").nth(1).expect("one cell is to be looked at");
    let cells = cells.split("</ul>").next().expect("the list ends");
    assert!(cells.contains("lime, edge") && !cells.contains("elm, edge"), "{cells}");
}

/// The value of a hidden field.
fn hidden(page: &str, name: &str) -> String {
    let tag = page.split("<input ").find(|tag| tag.contains(&format!("name=\"{name}\"")));
    let value = tag.and_then(|tag| tag.split("value=\"").nth(1)?.split('"').next());
    value.unwrap_or_else(|| panic!("no field {name} in {page}")).to_owned()
}

#[test]
fn a_button_takes_the_text_it_shows_or_nothing() {
    let mut desk = AtTheTable::with("kind | edge\nhazel |\noak | smooth");
    let lay = |desk: &mut AtTheTable, who: &str, says: &str| {
        let table = format!("kind,edge\nhazel,{says}");
        desk.post("/do/lay-over", &[("who", who), ("table", &table)]);
    };
    lay(&mut desk, "Foxes", "toothed");
    lay(&mut desk, "Owls", "smooth");
    let page = desk.page("/table?show=differ");
    assert!(page.contains("value=\"1-1-take-toothed\""), "{page}");
    let seen = hidden(&page, "head-1-1");
    // Another window lays a third view over it; its group comes first in the order.
    lay(&mut desk, "Adders", "lobed");
    let old = |word: &'static str| {
        [("c-1-1", ""), ("b-1-1", ""), ("head-1-1", seen.as_str()), ("decide", word)]
    };
    for word in ["1-1-take-toothed", "1-1-take-toothed or smooth", "1-1-look", "1-1-mine"] {
        let page = desk.refused("/do/cells", &old(word));
        assert!(page.contains("Adders: lobed"), "{word}: {page}");
        let old = format!("value=\"{seen}\"");
        assert!(!page.contains("take-") && !page.contains(&old), "nobody typed that");
        assert_eq!(desk.cell(1, 1), "", "{word}");
    }
    let seen = hidden(&desk.page("/table?show=differ"), "head-1-1");
    let now = [("head-1-1", seen.as_str()), ("decide", "1-1-take-toothed")];
    desk.post("/do/cells", &now);
    assert_eq!(desk.cell(1, 1), "toothed");
    // Pressed once more, it takes what nobody says any more for nothing.
    desk.refused("/do/cells", &now);
}

/// A key that the machine finished, with every question kept.
fn all_kept(table: &mut AtTheTable) {
    table.post("/do/key-start", &[("name", "Ours"), ("how", "finish")]);
    let page = table.page("/key");
    let asks = hidden(page.split("do/key-keep-all").nth(1).expect("it may be kept"), "asks");
    table.post("/do/key-keep-all", &[("key", "1"), ("asks", &asks)]);
}

fn kept_words(table: &AtTheTable) -> Vec<String> {
    let key = &table.0.history.now.keys[&spinney_model::KeyId(1)];
    key.questions.values().map(|question| question.words.clone()).collect()
}

#[test]
fn a_column_worded_anew_words_its_questions_but_not_a_persons_own() {
    let mut table = AtTheTable::with(
        "kind | edge | blade\nlime | wavy | 6 cm\nelm | wavy | 30 cm\noak | smooth | 30 cm",
    );
    all_kept(&mut table);
    let before = kept_words(&table);
    assert_eq!(before.len(), 2, "{before:?}");
    // Its question, then a state, then the name: kept questions follow each time.
    let describe = [("f-question", "Does its edge look {}?")];
    table.post("/do/character/1", &describe);
    assert!(
        kept_words(&table).iter().any(|words| words.starts_with("Does its edge look ")),
        "{:?}",
        kept_words(&table)
    );
    table.post("/do/rename-state/1", &[("from", "smooth"), ("to", "plain")]);
    table.post("/do/rename-state/1", &[("from", "wavy"), ("to", "in waves")]);
    let words = kept_words(&table).join(" ");
    assert!(words.contains("look plain?") || words.contains("look in waves?"), "{words}");
    assert!(!table.page("/table/1").contains("id=\"own-words\""));
    // A person's own words stay, and both screens say why.
    let key = spinney_model::KeyId(1);
    let at = table.0.history.now.keys[&key].questions.iter();
    let mut at =
        at.filter(|(_, question)| question.words.contains("edge")).map(|(at, _)| at.clone());
    let at = spinney_collection::keys::letters(&at.next_back().expect("it was kept"));
    table.post("/do/key-reword", &[("key", "1"), ("at", &at), ("words", "Has it got waves?")]);
    table.post("/do/character/1", &[("f-question", "Is the rim {}?")]);
    assert!(kept_words(&table).contains(&"Has it got waves?".to_owned()));
    let page = table.page("/table/1");
    assert!(page.contains("id=\"own-words\"") && page.contains("Has it got waves?"));
    let page = table.page(&format!("/key?key=1&open={at}"));
    assert!(page.contains("These words are your own") && page.contains("Is the rim "));
}

#[test]
fn keys_that_groups_begin_do_not_stand_before_the_finished_one() {
    let mut table = AtTheTable::with("kind | edge\nlime | wavy\nelm | toothed\noak | smooth");
    all_kept(&mut table);
    for group in ["Blue", "Red"] {
        table.post("/do/key-start", &[("name", group), ("how", "empty")]);
    }
    for screen in ["/key", "/words", "/print", "/try", "/heaps", "/newcomer", "/copy"] {
        let page = table.page(screen);
        assert_eq!(page.matches("id=\"which-key\"").count(), 1, "{screen} lets one choose");
        assert!(
            page.contains("<option value=\"1\" selected>Ours · finished</option>"),
            "{screen}"
        );
        assert!(page.contains("<option value=\"3\">Red</option>"), "{screen}");
    }
    for screen in ["/key", "/words", "/print", "/try", "/heaps", "/copy"] {
        let page = table.page(&format!("{screen}?key=2"));
        assert!(page.contains("<option value=\"2\" selected>Blue</option>"), "{screen}");
    }
}

/// Every question to begin with is a column that the table reads as it is meant, in each language.
#[test]
fn questions_to_begin_with_become_columns_that_are_read_without_a_word() {
    use spinney_voice::starters::STARTERS;
    for language in ["en", "de"] {
        let mut table = AtTheTable(Desk::default());
        table.post("/do/add-kinds", &[("names", "holly, sallow")]);
        let head = table.0.mark();
        let ticked = STARTERS.iter().map(|one| ("start", one.id));
        let form: Vec<_> = ticked.chain([("head", head.as_str())]).collect();
        let mut request = Request::post("/do/take-starters", &form);
        request.languages = vec![language.to_owned()];
        let Reply::Keep { lines, .. } = table.0.handle(&request) else { panic!("it is kept") };
        table.0.catch_up(lines.iter().map(Vec::as_slice)).expect("our own lines");
        let laid = table.0.laid().expect("there are kinds");
        let told: Vec<_> = laid
            .findings
            .iter()
            .filter(|finding| finding.code != spinney_model::Code::Unknown)
            .collect();
        assert!(told.is_empty(), "{language}: {told:?}");
        assert_eq!(laid.matrix.characters().len(), STARTERS.len());
        let hanging = STARTERS.iter().filter(|one| one.governor().is_some()).count();
        let characters = laid.matrix.characters();
        assert_eq!(characters.iter().filter(|it| it.governor.is_some()).count(), hanging);
        let t = spinney_voice::Tongue::for_person(&[language.to_owned()]);
        for (starter, character) in STARTERS.iter().zip(characters) {
            assert_eq!(character.name, starter.name(t));
            let spinney_model::Scale::Words { states } = &character.scale else { continue };
            let meant = match starter.states(t) {
                none if none.is_empty() => vec!["yes".to_owned(), "no".to_owned()],
                states => states,
            };
            assert_eq!(states, &meant, "{language}: {}", starter.id);
        }
    }
}

#[test]
fn a_question_that_hangs_on_another_hangs_on_it_only_where_it_is_in_the_table() {
    let mut table = AtTheTable(Desk::default());
    table.post("/do/add-kinds", &[("names", "holly, sallow")]);
    assert!(table.refused("/do/take-starters", &[]).contains("No question was ticked."));
    table.post("/do/take-starters", &[("start", "leaf-lobes")]);
    let applies = |table: &AtTheTable, at: usize| {
        table.0.laid().expect("there are kinds").matrix.characters()[at].governor.is_some()
    };
    assert!(!applies(&table, 0), "nobody said how many pieces a leaf has");
    table.post("/do/take-starters", &[("start", "lobe-count"), ("start", "leaf-lobes")]);
    assert!(applies(&table, 1), "only a lobed leaf has lobes to count");
    assert_eq!(table.0.laid().expect("there are kinds").matrix.characters().len(), 2);
    let page = table.page("/table");
    assert!(
        page.contains("value=\"leaf-lobes\" disabled"),
        "what is there is not offered again"
    );
}
