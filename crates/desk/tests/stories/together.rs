//! Kinds that a key leaves together are named before anything good is said of it, on every
//! screen; whoever lets it be finished is told what is still needed, and where.

use crate::at_the_desk::AtTheDesk;

/// Hazel and lime are the same in all that the table says; box is not.
const ALIKE: &str = "kind,edge\nhazel,toothed\nlime,toothed\nbox,smooth\n";

/// The same table, and one key with the wish that it is finished.
fn finished() -> AtTheDesk {
    let mut teacher = AtTheDesk::empty();
    teacher.paste(ALIKE);
    let form = [("name", "Ours"), ("group", ""), ("how", "finish")];
    teacher.post("/do/key-start", &form);
    teacher
}

/// A group's key that asks about the edge, in its own words, and nothing more.
fn begun(names: [&str; 3]) -> AtTheDesk {
    let mut group = AtTheDesk::empty();
    group.paste(ALIKE);
    group.post("/do/start-heaps", &[("name", "Group Blue")]);
    sort(
        &mut group,
        "",
        "Does it make a saw?",
        &[("1", names[0]), ("2", names[1]), ("3", names[2])],
    );
    group
}

fn sort(group: &mut AtTheDesk, at: &str, words: &str, sides: &[(&str, &str)]) {
    let back = "/heaps?key=1";
    group.post("/do/ask", &[("key", "1"), ("at", at), ("words", words), ("back", back)]);
    for (kind, side) in sides {
        let form = [("key", "1"), ("at", at), ("kind", *kind), ("side", *side), ("back", back)];
        group.post("/do/sort", &form);
    }
}

/// What stands beside the work, from its heading on.
fn margin<'p>(page: &'p str, heading: &str) -> &'p str {
    let start = page.find(&format!("<h2>{heading}</h2>")).expect("the margin has a heading");
    page[start..].split("</aside>").next().expect("a first part")
}

const LEFT: &str = "These are left together: hazel and lime.";

#[test]
fn what_to_mend_of_a_key_begins_with_the_kinds_that_are_left_together() {
    for mut at in [finished(), begun(["yes", "yes", "no"])] {
        let page = at.get("/key?key=1");
        let mend = margin(&page, "What to mend");
        assert!(!mend.contains("Nothing."), "{mend}");
        let left = mend.find(LEFT).expect("it names them");
        let first = mend.find("class=\"finding").expect("it is a slip");
        assert_eq!(
            mend[first..left].matches("class=\"finding").count(),
            1,
            "nothing before it"
        );
    }
}

#[test]
fn a_tick_never_stands_beside_kinds_that_are_left_together() {
    let mut teacher = finished();
    let page = teacher.get("/key?key=1");
    let standing = page.split("class=\"standing\"").nth(1).expect("how it stands");
    let named = standing.find(LEFT).expect("it names them");
    let best = standing.find("No key needs fewer questions").expect("it is proved");
    assert!(named < best && !page.contains("verdict sure"), "{standing}");
    let mut whole = AtTheDesk::empty();
    whole.paste("kind,edge\nhazel,toothed\nbox,smooth\n");
    whole.post("/do/key-start", &[("name", "Ours"), ("group", ""), ("how", "finish")]);
    let page = whole.get("/key?key=1");
    assert!(page.contains("verdict sure") && !page.contains("left together"));
}

#[test]
fn who_lets_it_be_finished_is_told_what_is_needed_and_where() {
    let mut group = begun(["yes", "yes", "no"]);
    let form = [("key", "1"), ("finish", "yes"), ("back", "/key?key=1")];
    let page = group.post("/do/finish", &form);
    let link = "<a href=\"/heaps?key=1&amp;at=y\" dir=\"auto\">One more thing about hazel and lime</a>";
    let standing = page.split("class=\"standing\"").nth(1).expect("how it stands");
    assert!(standing.split("</form>").next().expect("a first part").contains(link), "{page}");
    let heaps = group.get("/heaps?key=1");
    assert!(margin(&heaps, "Still left together").contains(link), "{heaps}");
    // Said there, it is separated, and nobody is named any more.
    sort(&mut group, "y", "Is it soft?", &[("1", "yes"), ("2", "no")]);
    let page = group.get("/key?key=1");
    assert!(!page.contains("These are left together"), "{page}");
    assert!(margin(&page, "What to mend").contains("Nothing."));
    let heaps = group.get("/heaps?key=1");
    assert!(margin(&heaps, "Still left together").contains("It is finished"));
    // Where the machine asked all the questions, it is said in the table.
    let page = finished().get("/key?key=1");
    assert!(page.contains(
        "<a href=\"/table#new-character\" dir=\"auto\">One more thing about hazel and lime</a>"
    ));
    assert!(finished().get("/table").contains("id=\"new-character\""));
}

#[test]
fn a_groups_key_that_works_is_said_to_work_and_needs_no_finishing() {
    let mut group = begun(["yes", "yes", "no"]);
    let page = group.get("/key?key=1");
    assert!(page.contains("As your group made it.") && page.contains("id=\"finish\""));
    sort(&mut group, "y", "Is it soft?", &[("1", "yes"), ("2", "no")]);
    let page = group.get("/key?key=1");
    assert!(page.contains("This key works: every kind comes out at its own name."));
    assert!(!page.contains("id=\"finish\""), "there is nothing to finish");
}

#[test]
fn two_keys_side_by_side_are_first_asked_whether_they_work() {
    let mut group = begun(["yes", "yes", "no"]);
    group.post("/do/key-start", &[("name", "Found"), ("group", ""), ("how", "finish")]);
    sort(&mut group, "y", "Is it soft?", &[("1", "yes"), ("2", "no")]);
    let page = group.get("/key/compare?one=1&other=2");
    let rows: Vec<&str> = page.split("<tr>").skip(2).collect();
    assert!(rows[0].contains("Does it work?"));
    let works: Vec<&str> = rows[0].split("<td dir=\"auto\">").skip(1).collect();
    assert!(works[0].starts_with("yes: every kind comes out alone"), "{works:?}");
    assert!(works[1].starts_with("every kind comes out, but not each alone"), "{works:?}");
    assert!(rows[1].contains("Left together"));
    let cells: Vec<&str> = rows[1].split("<td dir=\"auto\">").skip(1).collect();
    assert!(
        cells[0].starts_with("none") && cells[1].starts_with("hazel and lime"),
        "{cells:?}"
    );
    let place = |row: &str| page.find(row).unwrap_or_else(|| panic!("no {row}"));
    assert!(place("Left together") < place("Questions per find"));
}

#[test]
fn the_print_page_and_the_copied_key_name_them() {
    let mut group = begun(["yes", "yes", "no"]);
    assert!(group.get("/print?key=1").contains(LEFT));
    assert!(
        group.get("/copy?key=1&at=end").contains("hazel and lime</strong> are left together.")
    );
    sort(&mut group, "y", "Is it soft?", &[("1", "yes"), ("2", "no")]);
    assert!(!group.get("/print?key=1").contains("left together"));
}

#[test]
fn what_a_group_told_apart_by_heaps_counts_as_told_apart_beside_the_table() {
    let mut group = begun(["yes", "yes", "no"]);
    let alike = |page: &str| margin(page, "Not told apart yet").to_owned();
    assert!(alike(&group.get("/table")).contains("hazel and lime"));
    sort(&mut group, "y", "Is it soft?", &[("1", "yes"), ("2", "no")]);
    let told = alike(&group.get("/table"));
    assert!(!told.contains("cannot be told apart"), "{told}");
    assert!(told.contains("Group Blue tells hazel and lime apart: “Is it soft?”"), "{told}");
    // A card in the middle tells nobody apart.
    sort(&mut group, "y", "Is it soft?", &[("2", "both")]);
    assert!(alike(&group.get("/table")).contains("cannot be told apart"));
}
