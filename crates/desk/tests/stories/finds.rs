//! A class brings its finds: by list, by picture, by two groups' tables; names come later.

use crate::at_the_desk::{AtTheDesk, head_of};
use spinney_desk::{Request, Upload};
use spinney_exchange::journal;
use spinney_model::limits::SCREENS_KINDS;
use spinney_model::{CharacterId, Done, Edit, Fork, KeyEdit, KeyId, KindId, Side};

/// A picture of one colour, as a PNG file.
fn picture(shade: u8) -> Vec<u8> {
    let pixels = image::RgbImage::from_pixel(6, 4, image::Rgb([shade, 120, 60]));
    let mut out = std::io::Cursor::new(Vec::new());
    pixels.write_to(&mut out, image::ImageFormat::Png).expect("it can be written");
    out.into_inner()
}

fn upload(shade: u8) -> Upload {
    Upload { field: "pictures".into(), name: "leaf.png".into(), bytes: picture(shade) }
}

#[test]
fn an_empty_table_top_says_what_to_do_first() {
    let mut teacher = AtTheDesk::empty();
    let page = teacher.get("/finds");
    assert!(page.contains("What did you find?") && page.contains("class=\"laying\""));
    let page = teacher.post("/do/add-kinds", &[("names", "oak\n\n  hazel \nOak\n")]);
    assert!(!page.contains("What did you find?"));
    assert_eq!(page.matches("class=\"slip\"").count(), 2, "the second oak is the first");
}

#[test]
fn a_later_name_changes_everywhere() {
    let mut teacher = AtTheDesk::empty();
    let page = teacher.upload("/do/add-kinds", &[], upload(1));
    assert_eq!(page.status, 303);
    assert!(teacher.get("/finds").contains("find A"));
    teacher.post("/do/start-heaps", &[("name", "Blue")]);
    let form =
        [("kind", "1"), ("name", "wild service tree"), ("how-sure", "certain: our ranger")];
    let page = teacher.post("/do/describe-kind", &form);
    assert!(page.contains("wild service tree") && page.contains("certain: our ranger"));
    for path in ["/finds", "/heaps?key=1"] {
        let page = teacher.get(path);
        assert!(page.contains("wild service tree") && !page.contains("find A"), "{path}");
    }
    let page = teacher.post("/do/describe-kind", &[("kind", "1"), ("how-sure", "")]);
    assert!(!page.contains("certain: our ranger") && page.contains("wild service tree"));
}

#[test]
fn no_two_finds_have_one_name() {
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/add-kinds", &[("names", "oak\nhazel")]);
    let form = [("kind", "2"), ("name", " OAK ")];
    let page = teacher.refused("/do/describe-kind", &form);
    assert!(page.contains("There is a find called “oak” already."));
    let page = teacher.refused("/do/split-kind", &[("kind", "2"), ("name", "oak")]);
    assert!(page.contains("There is a find called"));
}

#[test]
fn two_groups_tables_lie_side_by_side_and_a_person_decides() {
    let mut teacher = AtTheDesk::empty();
    let blue = "kind,edge,lobes\noak,smooth,lobed\nhazel,toothed,unlobed\n";
    let red = "kind\tedge\tlobes\noak\ttoothed\tlobed\nhazel\ttoothed\t\n";
    teacher.post("/do/take-table", &[("table", blue), ("source", "Blue")]);
    let page = teacher.post("/do/take-table", &[("table", red), ("source", "Red")]);
    assert!(page.contains("One thing that is seen differently"));
    assert!(page.contains("Blue: smooth") && page.contains("Red: toothed"));
    let form = [("kind", "1"), ("character", "1"), ("text", "smooth")];
    let page = teacher.post("/do/decide", &form);
    assert!(!page.contains("seen differently"));
    let page = teacher.get("/finds/1");
    assert!(page.contains("(Red)") && page.contains("(Blue)"), "what they said stays theirs");
    let page = teacher.undo("/finds");
    assert!(page.contains("One thing that is seen differently"));
    let form = [("kind", "1"), ("character", "1"), ("other", "spiny")];
    teacher.post("/do/decide", &form);
    assert!(teacher.get("/finds/1").contains("spiny"));
}

/// Invented leaves.
#[test]
fn a_table_with_a_row_a_leaf_is_asked_about_and_then_read_so() {
    let mut teacher = AtTheDesk::empty();
    let leaves = "kind,leaf,tree,blade length (mm),edge\nhazel,1,gate,82,toothed\n\
        hazel,2,gate,104,double-toothed\nhazel,3,pond,95,toothed\nlime,1,church,61,toothed\n";
    let page = teacher.refused("/do/take-table", &[("table", leaves)]);
    assert!(page.contains("is on 3 rows of this table"), "{page}");
    assert!(page.contains("Is each row one leaf"), "{page}");
    let page = teacher.post("/do/take-table", &[("table", leaves), ("rows", "leaves")]);
    assert!(!page.contains("hazel (2)"), "{page}");
    let hazel = teacher.get("/finds/1");
    assert!(hazel.contains("82-104 mm (3 seen on 2 plants)"), "{hazel}");
    assert!(hazel.contains("toothed 2, double-toothed 1 (3 seen on 2 plants)"), "{hazel}");
    assert!(teacher.get("/finds/2").contains("61 mm (1 seen on 1 plant)"));
    let more =
        "kind,leaf,blade length (mm)\nelm,a,50\nelm,b,52\nelm,c,54\nelm,d,56\nelm,e,140\n";
    let page = teacher.post("/do/take-table", &[("table", more), ("rows", "leaves")]);
    assert!(page.contains("elm, blade length: 140 mm (row 6, number e)"), "{page}");
    assert!(teacher.get("/finds/3").contains("50-140 mm (5 seen)"), "it counts all the same");
}

#[test]
fn a_table_comes_from_a_file_and_no_table_is_refused_with_a_remedy() {
    let mut teacher = AtTheDesk::empty();
    let file = |name: &str, bytes: &[u8]| Upload {
        field: "file".into(),
        name: name.into(),
        bytes: bytes.to_vec(),
    };
    let csv = file("trees.csv", b"kind;blade length (mm)\noak;60-120\n");
    assert_eq!(teacher.upload("/do/take-table", &[], csv).status, 303);
    assert!(teacher.get("/finds/1").contains("60-120"));
    let page = teacher.upload("/do/take-table", &[], file("leaf.png", &picture(1)));
    assert_eq!(page.status, 422);
    let page = String::from_utf8(page.body).expect("text");
    assert!(page.contains("Spinney cannot read writing in a picture. Type the table into"));
    assert!(teacher.refused("/do/take-table", &[("table", " \n")]).contains("nothing new"));
}

#[test]
fn a_groups_workbook_leaves_what_is_written_here_and_says_so() {
    let sheet = |name: &str, text: &str| Upload {
        field: "file".into(),
        name: format!("{name}.csv"),
        bytes: text.as_bytes().to_vec(),
    };
    for (path, whose) in [("/do/take-table", "source"), ("/do/lay-over", "who")] {
        let mut teacher = AtTheDesk::with_hedge_walk();
        let table = sheet("table", "kind,edge\nhazel,wavy\n");
        let kinds = sheet("kinds", "kind,caution,where\nhazel,<b>None</b> at all,Mill Lane\n");
        let files = if path == "/do/take-table" { vec![table, kinds] } else { vec![kinds] };
        let request = spinney_desk::Request {
            files,
            ..spinney_desk::Request::post(path, &[(whose, "group Blue")])
        };
        let page = teacher.send(request);
        let to = page
            .location
            .unwrap_or_else(|| panic!("{path}: {}", String::from_utf8_lossy(&page.body)));
        let page = teacher.get(to.split('#').next().expect("an address"));
        assert!(page.contains("One thing was left as it is here"), "{path}: {page}");
        assert!(page.contains("hazel, What may hurt: here “If nuts make you ill"), "{path}");
        assert!(page.contains("in the sheet “&lt;b&gt;None&lt;/b&gt; at all”"), "{path}");
        let hazel = teacher.get("/finds/1");
        assert!(
            hazel.contains("leave its nuts and catkins alone") && hazel.contains("Mill Lane")
        );
    }
}

#[test]
fn a_heading_in_another_unit_is_refused_or_taken_along() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    let form = |table: &'static str| [("table", table), ("source", "group Blue")];
    let page = teacher.refused("/do/take-table", &form("kind,blade length (g)\nhazel,3\n"));
    assert!(page.contains("“blade length” is measured in mm here, and in g in this table."));
    teacher.post("/do/take-table", &form("kind,blade length (cm)\nhazel,3-4\n"));
    assert!(teacher.get("/finds/1").contains("3-4 cm"));
}

#[test]
fn every_screen_takes_as_many_columns_as_the_screens_hold() {
    let wide = |columns: usize| {
        let names: Vec<String> = (0..columns).map(|n| format!("column {n}")).collect();
        format!("kind,{}\noak{}\n", names.join(","), ",x".repeat(columns))
    };
    let most = spinney_model::limits::SCREENS_COLUMNS;
    for path in ["/do/take-table", "/do/lay-over"] {
        let mut teacher = AtTheDesk::empty();
        teacher.refused(path, &[("table", &wide(most + 1))]);
        let page = teacher.send(spinney_desk::Request::post(path, &[("table", &wide(most))]));
        assert_eq!(page.status, 303, "{path}");
        let form = [("name", "one more")];
        assert!(teacher.refused("/do/add-character", &form).contains(&most.to_string()));
        assert!(
            teacher.get("/table").contains(&format!("column {}", most - 1)),
            "all are read"
        );
    }
}

#[test]
fn pictures_are_added_put_first_and_taken_away() {
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/add-kinds", &[("names", "oak")]);
    for shade in [1, 2, 3, 3] {
        let page = teacher.upload("/do/add-pictures", &[("kind", "1")], upload(shade));
        assert_eq!(page.status, 303);
    }
    let hashes = |page: &str| -> Vec<String> {
        let parts = page.split("<img src=\"/picture/").skip(1);
        parts.map(|part| part[..64].to_owned()).collect()
    };
    let before = hashes(&teacher.get("/finds/1"));
    let prints = |all: &[String]| all[..3].to_vec();
    let first = [("kind", "1"), ("picture", before[2].as_str())];
    let after = hashes(&teacher.post("/do/picture-first", &first));
    assert_eq!(prints(&after)[0], prints(&before)[2]);
    assert_eq!(hashes(&teacher.get("/finds"))[0], before[2], "the slip shows the first");
    let page = teacher.post("/do/picture-away", &first);
    assert!(!page.contains(&before[2]));
    let broken = Upload { bytes: b"\x89PNG\r\n\x1a\n and no more".to_vec(), ..upload(1) };
    let page = teacher.upload("/do/add-pictures", &[("kind", "1")], broken);
    assert_eq!(page.status, 422);
}

#[test]
fn a_find_turns_out_to_be_another_or_to_be_two() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    teacher.post("/do/add-kinds", &[("names", "nut bush")]);
    let page = teacher.post("/do/merge-kinds", &[("kind", "13"), ("with", "1")]);
    assert!(page.contains("<h1 dir=\"auto\">hazel</h1>"));
    assert!(!teacher.get("/finds").contains("nut bush"));
    teacher.post("/do/start-heaps", &[("name", "Ours")]);
    let ask = [("key", "1"), ("at", ""), ("words", "Soft?"), ("back", "/heaps")];
    teacher.post("/do/ask", &ask);
    let sort = [("key", "1"), ("at", ""), ("kind", "1"), ("side", "yes"), ("back", "/heaps")];
    teacher.post("/do/sort", &sort);
    let page = teacher.post("/do/split-kind", &[("kind", "1"), ("name", "filbert")]);
    assert!(page.contains("<h1 dir=\"auto\">filbert</h1>") && page.contains("toothed"));
    assert!(page.contains("leave its nuts and catkins alone"), "a caution is never lost");
    assert!(!page.contains("Corylus"), "its scientific name is not known");
    let yes = teacher.get("/heaps?key=1&at=y");
    assert!(yes.contains("hazel") && yes.contains("filbert"), "it lies where the first lay");
    teacher.post("/do/remove-kind", &[("kind", "14")]);
    assert!(!teacher.get("/finds").contains("filbert"));
}

#[test]
fn the_head_of_the_sheets_is_written() {
    let mut teacher = AtTheDesk::empty();
    let form = [("title", "Pond"), ("place", "Long Water"), ("caution", "Mind the edge.")];
    let page = teacher.post("/do/describe-scene", &form);
    assert!(page.contains("Long Water") && page.contains("Mind the edge."));
    assert!(page.contains("<title>Our finds · Pond</title>"));
}

#[test]
fn hostile_finds_stay_words() {
    let mut teacher = AtTheDesk::empty();
    let name = "<img src=x onerror=alert(1)>";
    let long = "a".repeat(10_000);
    assert!(teacher.refused("/do/add-kinds", &[("names", &long)]).contains("Line 1 is longer"));
    teacher.post("/do/add-kinds", &[("names", &format!("{name}\n\u{202e}kao 🌿"))]);
    let form = [
        ("kind", "1"),
        ("caution", "<script>alert(2)</script>"),
        ("other-names", "x\"><b>: <i>y</i>"),
        ("where", "a\nb\u{0}c"),
    ];
    teacher.post("/do/describe-kind", &form);
    let table = format!("kind,<b>edge</b>\n{name},<i>x</i>\n");
    teacher.post("/do/take-table", &[("table", &table), ("source", "<u>me</u>")]);
    let other = format!("kind,<b>edge</b>\n{name},y\n");
    teacher.post("/do/take-table", &[("table", &other), ("source", "we")]);
    for path in ["/finds", "/finds/1", "/finds/2", "/done"] {
        let page = teacher.get(path);
        for tag in ["<img src=x", "<script>alert", "<b>", "<i>", "<u>"] {
            assert!(!page.contains(tag), "{path} lets {tag} through");
        }
    }
    assert!(teacher.refused("/do/describe-kind", &[("kind", "99")]).contains("not there"));
    let form = [("kind", "1"), ("where", long.as_str())];
    assert!(teacher.refused("/do/describe-kind", &form).contains("is longer than 600"));
    assert!(teacher.refused("/do/merge-kinds", &[("kind", "1"), ("with", "1")]).len() > 100);
}

/// The drawing in a card that begins with these words; None: it has none.
fn drawing<'p>(page: &'p str, begins: &str) -> Option<&'p str> {
    let card = page.split(begins).nth(1).unwrap_or_else(|| panic!("no {begins}"));
    let card = card.split("</li>").next().expect("a card ends");
    let from = card.find("<svg class=\"leaf drawn\"")?;
    let to = card.find("</svg>").expect("a drawing ends");
    Some(&card[from..to])
}

#[test]
fn a_find_without_a_picture_is_drawn_as_the_table_says_and_follows_every_edit() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste(
        "kind,form of the leaf,lobes,leaf edge\n\
         hazel,in one piece,unlobed,toothed\n\
         dogwood,in one piece,unlobed,smooth\n\
         spindle,in one piece,unlobed,\n\
         pine,needle,,smooth\n",
    );
    let page = teacher.get("/finds");
    assert!(drawing(&page, "id=\"kind-4\"").is_none(), "a pine is no broadleaf");
    let [hazel, dogwood, spindle] = ["kind-1", "kind-2", "kind-3"]
        .map(|id| drawing(&page, &format!("id=\"{id}\"")).map(str::to_owned));
    assert!(hazel.is_some() && dogwood.is_some() && hazel != dogwood);
    assert!(spindle.is_none() && !page.contains("no-picture"), "only its name");
    assert!(hazel.as_deref().is_some_and(|svg| svg.contains("aria-hidden=\"true\"")));
    assert!(page.contains("Drawn from what the table says; not a portrait."));
    let (kind, character) = (KindId(1), CharacterId(3));
    let (source, text) = (String::new(), "smooth".to_owned());
    teacher.does(vec![Edit::Cell { kind, character, source, text }]);
    let page = teacher.get("/finds");
    assert_eq!(drawing(&page, "id=\"kind-1\"").map(str::to_owned), dogwood, "at once");
    teacher.upload("/do/add-pictures", &[("kind", "1")], upload(3));
    let page = teacher.get("/finds");
    assert!(drawing(&page, "id=\"kind-1\"").is_none() && page.contains("<img src=\"/picture/"));
    let mut pupil = AtTheDesk::with_scenario("pond_tray");
    let page = pupil.get("/finds");
    assert!(!page.contains("class=\"leaf drawn\"") && !page.contains("not a portrait"));
}

#[test]
fn the_twelve_kinds_of_the_hedge_walk_are_drawn_as_its_table_says() {
    let page = AtTheDesk::with_hedge_walk().get("/finds");
    let drawn = |kind: usize| {
        let drawing = drawing(&page, &format!("id=\"kind-{kind}\"")).map(str::to_owned);
        drawing.unwrap_or_else(|| panic!("kind {kind} has no drawing"))
    };
    let all: std::collections::BTreeSet<String> = (1..=12).map(drawn).collect();
    assert_eq!(
        all.len(),
        12,
        "hazel and lime are told apart by their stalks, and all others too"
    );
    let mut pasta = AtTheDesk::with_scenario("pasta_shapes");
    assert!(!pasta.get("/finds").contains("class=\"leaf drawn\""));
}

#[test]
fn wherever_a_find_stands_its_drawing_stands_with_it() {
    let mut teacher = AtTheDesk::with_hedge_walk();
    let finds = teacher.get("/finds");
    let holly = drawing(&finds, "id=\"kind-9\"").expect("its edge is known").to_owned();
    teacher.post("/do/start-heaps", &[("name", "Blue")]);
    assert!(teacher.get("/finds/9").contains(&holly));
    assert!(teacher.get("/share-out").contains(&holly));
    assert_eq!(drawing(&teacher.get("/heaps?key=1"), "id=\"card-9\""), Some(holly.as_str()));
    assert!(teacher.get("/copy?key=1&words=Is+it+spiny").contains(&holly));
    let spiny = [("key", "1"), ("at", ""), ("words", "Is the edge spiny?")];
    teacher.post("/do/ask", &spiny);
    teacher.post("/do/sort", &[("key", "1"), ("at", ""), ("kind", "9"), ("side", "yes")]);
    assert_eq!(drawing(&teacher.get("/heaps?key=1"), "id=\"card-9\""), Some(holly.as_str()));
    for path in ["/try?key=1&at=y", "/newcomer?key=1&walk=y"] {
        let page = teacher.get(path);
        assert!(page.contains(&holly) && page.contains("not a portrait"), "{path}");
    }
}

#[test]
fn what_an_old_page_decides_is_not_written_over_a_newer_word() {
    let mut teacher = AtTheDesk::empty();
    for (who, says) in [("Blue", "smooth"), ("Red", "toothed")] {
        let table = format!("kind,edge\noak,{says}\nhazel,toothed\n");
        teacher.post("/do/take-table", &[("table", &table), ("source", who)]);
    }
    let seen = head_of(&teacher.get("/finds"), "/do/decide");
    let decides = |text| [("kind", "1"), ("character", "1"), ("head", &seen), ("text", text)];
    teacher.post("/do/decide", &decides("smooth"));
    let page = teacher.refused("/do/decide", &decides("toothed"));
    assert!(page.contains("Someone changed edge of oak in another window."), "{page}");
    assert!(page.contains("The table: smooth"), "{page}");
    let old = format!("value=\"{seen}\"");
    assert!(page.contains("Red: toothed") && !page.contains(&old), "{page}");
    assert!(teacher.get("/finds/1").contains("smooth"));
}

#[test]
fn an_answer_that_was_given_meanwhile_is_not_written_over() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste("kind,edge\noak,smooth\nhazel,toothed\nash,\nelm,toothed\n");
    teacher.post("/do/start-heaps", &[("name", "Foxes")]);
    let page = teacher.get("/heaps/answers?key=1");
    assert!(page.contains("Look at ash: edge?"), "{page}");
    let seen = teacher.desk.mark();
    let answers = |text| {
        let back = ("back", "/heaps/answers?key=1");
        [("key", "1"), ("kind", "3"), ("character", "1"), ("head", &seen), back, ("text", text)]
    };
    teacher.post("/do/answer", &answers("smooth"));
    let lines = teacher.lines.len();
    teacher.post("/do/answer", &answers("smooth"));
    assert_eq!(teacher.lines.len(), lines, "the same once more is nothing new");
    let page = teacher.refused("/do/answer", &answers("toothed"));
    assert!(page.contains("Foxes: smooth"), "{page}");
    assert!(page.contains("class=\"main\" href=\"/heaps/answers?key=1\""), "{page}");
    assert!(teacher.get("/table").contains("Foxes: “smooth”"));
}

#[test]
fn our_finds_says_at_once_what_of_a_table_was_not_understood() {
    let mut teacher = AtTheDesk::empty();
    let table = "Our hedge\nkind,edge,height (cm)\nIvy,smooth,800-200\nivy,toothed / smooth,300\n\
                 ,smooth,20\noak,lobed,\n";
    let page = teacher.post("/do/take-table", &[("table", table)]);
    let told = page.split("id=\"not-read\"").nth(1).expect("it is said at once");
    let told = told.split("</section>").next().expect("it ends");
    let parts = ["“Our hedge” is alone", "“800-200” for Ivy under “height” begins"];
    for part in parts.into_iter().chain(["Row 5 has no name and was left out."]) {
        assert!(told.contains(part), "{part}: {told}");
    }
    assert!(!told.contains("C3") && !told.contains("A5"), "cells are named in words: {told}");
    // One find or two? A hand answers.
    assert!(page.contains("“Ivy” and “ivy” are written almost alike."));
    let page = teacher.post("/do/merge-kinds", &[("kind", "2"), ("with", "1")]);
    assert!(!page.contains("almost alike") && !teacher.get("/finds").contains("ivy (2)"));
    // The same name in other letters, another day; and a list of names.
    let page = teacher
        .post("/do/take-table", &[("table", "kind,edge\nOAK,lobed\n"), ("source", "we")]);
    assert!(page.contains("“OAK” was taken for “oak”, which is here already."), "{page}");
    let page = teacher.post("/do/add-kinds", &[("names", "Oak\nelm")]);
    assert!(page.contains("“Oak” is here already and was not added again."));
    assert!(!teacher.get("/finds").contains("id=\"not-read\""), "said once");
    let letter = "Dear class,\ntoday we go out and look for leaves, twigs and shells.\n\
                  Bring boots, a coat and a bag.\n";
    let page = teacher.refused("/do/take-table", &[("table", letter)]);
    assert!(page.contains("does not look like a table"), "{page}");
}

/// The second of two that were one lies in the heaps where the first does, by one line.
#[test]
fn what_was_split_off_lies_where_it_was_sorted() {
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/add-kinds", &[("names", "hazel\noak")]);
    teacher.post("/do/start-heaps", &[("name", "Fern")]);
    let (key, at, back) = (("key", "1"), ("at", ""), ("back", "/heaps?key=1"));
    teacher.post("/do/ask", &[key, at, ("words", "Is it lobed?"), back]);
    for (kind, side) in [("1", "no"), ("2", "yes")] {
        teacher.post("/do/sort", &[key, at, ("kind", kind), ("side", side), back]);
    }
    teacher.post("/do/split-kind", &[("kind", "1"), ("name", "filbert")]);
    let last = journal::read(teacher.lines.last().expect("a line")).expect("our own line");
    let Done::Edits(edits) = last.done else { panic!("{last:?}") };
    let sorted = edits.iter().filter_map(|edit| match edit {
        Edit::Key(key, KeyEdit::Sort { at, kind, side }) => {
            Some((*key, at.clone(), *kind, *side))
        }
        _ => None,
    });
    let wanted = (KeyId(1), Fork::default(), KindId(3), Some(Side::No));
    assert_eq!(sorted.collect::<Vec<_>>(), [wanted]);
}

#[test]
fn as_many_kinds_are_taken_as_the_screens_hold_and_not_one_more() {
    let mut teacher = AtTheDesk::empty();
    let names: Vec<String> = (1..=SCREENS_KINDS).map(|at| format!("kind {at}")).collect();
    let page = teacher.send(Request::post("/do/add-kinds", &[("names", &names.join("\n"))]));
    assert_eq!(page.status, 303);
    let page = teacher.send(Request::post("/do/add-kinds", &[("names", "one more")]));
    assert_eq!(page.status, 422);
}

/// A key for some of the kinds is one for the second of two that were one as well.
#[test]
fn what_was_split_off_is_in_the_keys_of_the_first() {
    let mut teacher = AtTheDesk::empty();
    teacher.post("/do/add-kinds", &[("names", "hazel\noak\nelm")]);
    teacher.post("/do/start-heaps", &[("name", "Fern")]);
    let wish = |kinds: &[u32]| {
        let kinds = kinds.iter().copied().map(KindId).collect();
        Edit::Key(KeyId(1), KeyEdit::ForKinds(Some(kinds)))
    };
    teacher.does(vec![wish(&[1, 2])]);
    teacher.post("/do/split-kind", &[("kind", "1"), ("name", "filbert")]);
    let last = journal::read(teacher.lines.last().expect("a line")).expect("our own line");
    let Done::Edits(edits) = last.done else { panic!("{last:?}") };
    assert!(edits.contains(&wish(&[1, 2, 4])), "{edits:?}");
}
