//! Each parameter changes its own lines; the table is drawn, and nothing that it does not say.

use spinney_model::{
    Character, Drawing, DrawnWord, Matrix, Quantity, Scale, Scene, Share, StateIx, Stroke,
    Taxon, TaxonIx, Unit, Value, Weight,
};

use super::blade::{Blade, Edge, Lobes, Shape, Tip};
use super::columns::Columns;
use super::leaf::{Form, Leaf, Part};
use super::pen::Point;
use super::{Leaves, Shows, drawing, of_word};

/// The lines of one part of a leaf.
fn lines(leaf: &Leaf, part: Part) -> Vec<Vec<Point>> {
    let of = leaf.lines().into_iter().filter(|line| line.part == part);
    of.map(|line| line.points).collect()
}

/// The parts in which two drawings differ.
fn differ(one: &Leaf, other: &Leaf) -> Vec<Part> {
    use Part::{Edge, Hairs, Midrib, SlimEdge, Stalk, Veins};
    let parts = [Edge, SlimEdge, Stalk, Midrib, Veins, Hairs];
    parts.into_iter().filter(|part| lines(one, *part) != lines(other, *part)).collect()
}

fn with(blade: Blade) -> Leaf {
    Leaf { blade, ..Leaf::default() }
}

#[test]
fn each_parameter_changes_its_own_lines_and_no_others() {
    let plain = Leaf::default();
    assert_eq!(differ(&plain, &plain), []);
    for edge in [Edge::Wavy, Edge::Toothed, Edge::DoubleToothed, Edge::Spiny] {
        let cut = with(Blade { edge, ..Blade::default() });
        assert_eq!(differ(&plain, &cut), [Part::Edge], "{edge:?}");
    }
    for lobes in [Lobes::Feather(7), Lobes::Hand(5)] {
        let lobed = with(Blade { lobes, ..Blade::default() });
        assert_eq!(differ(&plain, &lobed), [Part::Edge, Part::Veins], "{lobes:?}");
    }
    for shape in [Shape::Oval, Shape::Upper, Shape::Heart, Shape::Round, Shape::Narrow] {
        let shaped = with(Blade { shape, ..Blade::default() });
        assert_eq!(differ(&plain, &shaped), [Part::Edge, Part::Veins], "{shape:?}");
    }
    let wide = Leaf { width: Some(0.9), ..plain };
    assert_eq!(differ(&plain, &wide), [Part::Edge, Part::Veins]);
    assert_eq!(differ(&plain, &Leaf { stalk: Some(0.4), ..plain }), [Part::Stalk]);
    assert_eq!(differ(&plain, &Leaf { hairy: true, ..plain }), [Part::Hairs]);
    let (five, seven) = (Form::Feather(5), Form::Feather(7));
    let [five, seven] = [five, seven].map(|form| Leaf { form, ..plain });
    assert!(!differ(&five, &seven).is_empty());
}

#[test]
fn there_are_as_many_leaflets_as_the_table_counts() {
    for many in 2..=11 {
        for form in [Form::Feather(many), Form::Hand(many)] {
            let leaf = Leaf { form, ..Leaf::default() };
            let edges = [Part::Edge, Part::SlimEdge].map(|part| lines(&leaf, part).len());
            assert_eq!(edges.iter().sum::<usize>(), many as usize, "{form:?}");
        }
    }
}

#[test]
fn stalk_and_blade_keep_their_proportion_and_every_line_its_box() {
    let long = |leaf: &Leaf, part| {
        let line = leaf.lines().into_iter().find(|line| line.part == part).expect("a line");
        let heights = line.points.iter().map(|(_, y)| *y);
        heights.clone().fold(f64::MIN, f64::max) - heights.fold(f64::MAX, f64::min)
    };
    for part in [0.1, 0.5, 0.9, 1.6] {
        let leaf = Leaf { stalk: Some(part), ..Leaf::default() };
        let drawn = long(&leaf, Part::Stalk) / long(&leaf, Part::Edge);
        assert!((drawn - part).abs() < 0.01, "{drawn} for {part}");
    }
    assert!(lines(&Leaf { stalk: Some(0.0), ..Leaf::default() }, Part::Stalk).is_empty());
    for leaf in all() {
        for (x, y) in points(&drawing(&leaf)) {
            let inside = (-24.0..=24.0).contains(&x) && (-41.0..=16.0).contains(&y);
            assert!(inside, "{leaf:?}: {x} {y}");
        }
    }
}

const EDGES: [Edge; 5] =
    [Edge::Smooth, Edge::Wavy, Edge::Toothed, Edge::DoubleToothed, Edge::Spiny];
const LOBES: [Lobes; 7] = [
    Lobes::None,
    Lobes::Hand(3),
    Lobes::Hand(5),
    Lobes::Hand(7),
    Lobes::Feather(5),
    Lobes::Feather(7),
    Lobes::Feather(9),
];

fn points(drawing: &Drawing) -> Vec<Point> {
    drawing.strokes.iter().flat_map(|stroke| stroke.points.iter().copied()).collect()
}

fn blades() -> Vec<Blade> {
    let mut blades = Vec::new();
    use Shape::{Egg, Heart, Leaflet, Narrow, Oval, Round, Upper};
    let tips = [Tip::Usual, Tip::Pointed, Tip::Rounded, Tip::Notched, Tip::Spine];
    for shape in [Egg, Oval, Upper, Heart, Round, Narrow, Leaflet] {
        for lobes in LOBES {
            for edge in EDGES {
                for tip in tips {
                    blades.push(Blade { shape, lobes, edge, tip, coarse: false });
                }
            }
        }
    }
    blades.retain(|blade| blade.can_be_drawn());
    blades
}

/// Leaves of every form, shape, lobes and edge, narrow and broad, with hairs that stand out.
fn all() -> Vec<Leaf> {
    let sizes =
        [(None, None), (Some(0.01), Some(9.0)), (Some(9.0), Some(0.0)), (Some(1.2), None)];
    let mut leaves = Vec::new();
    for blade in blades() {
        for (width, stalk) in sizes {
            let form = Form::OnePiece;
            leaves.push(Leaf { form, blade, width, stalk, hairy: true });
        }
        for form in [2, 8, 60].into_iter().flat_map(|n| [Form::Feather(n), Form::Hand(n)]) {
            leaves.push(Leaf { form, blade, hairy: true, ..Leaf::default() });
        }
    }
    leaves
}

/// Whether two pieces of line cross.
fn cross(one: [Point; 2], other: [Point; 2]) -> bool {
    let side =
        |[a, b]: [Point; 2], p: Point| (b.0 - a.0) * (p.1 - a.1) - (b.1 - a.1) * (p.0 - a.0);
    side(one, other[0]) * side(one, other[1]) < -1e-9
        && side(other, one[0]) * side(other, one[1]) < -1e-9
}

#[test]
fn no_edge_crosses_itself() {
    for blade in blades() {
        let side = blade.side(36.0, 36.0 * blade.usual_width());
        let pieces: Vec<[Point; 2]> = side.windows(2).map(|two| [two[0], two[1]]).collect();
        for (at, one) in pieces.iter().enumerate() {
            let others = pieces.iter().skip(at + 2);
            let crossed = others.filter(|other| cross(*one, **other)).count();
            assert_eq!(crossed, 0, "{blade:?} at {one:?}");
        }
    }
}

#[test]
fn both_halves_of_a_blade_are_alike() {
    for edge in EDGES {
        for lobes in LOBES {
            let points = Blade { edge, lobes, ..Blade::default() }.outline(36.0, 24.0);
            for (right, left) in points.iter().zip(points.iter().rev()) {
                assert!((right.0 + left.0).abs() < 1e-9 && (right.1 - left.1).abs() < 1e-9);
            }
        }
    }
}

/// A table from a heading and rows; `a or b` are equally common, `5-7` are three counts, a
/// number with mm is a length, `?` is unknown.
pub(crate) fn table(text: &str) -> Matrix {
    let rows: Vec<Vec<&str>> =
        text.lines().map(|line| line.split(',').map(str::trim).collect()).collect();
    let (heading, rows) = rows.split_first().expect("a heading");
    let known = |cell: &&&str| !["?", "", "n/a"].contains(*cell);
    let characters: Vec<Character> = (1..heading.len())
        .map(|at| {
            let column: Vec<&str> = rows.iter().map(|row| row[at]).collect();
            let mut known = column.iter().filter(known).peekable();
            let some = known.peek().is_some();
            let scale = if some && known.clone().all(|cell| cell.ends_with("mm")) {
                Scale::Measure { unit: Unit::Millimetres, gap: Quantity::from_whole(0) }
            } else if some && known.clone().all(|cell| !counts(cell).is_empty()) {
                Scale::Counts
            } else {
                let mut states: Vec<String> = Vec::new();
                for state in known.flat_map(|cell| cell.split(" or ")) {
                    if !states.iter().any(|known| known == state) {
                        states.push(state.to_owned());
                    }
                }
                Scale::Words { states }
            };
            Character::named(heading[at], scale)
        })
        .collect();
    let cells = rows.iter().map(|row| {
        let cells = characters.iter().zip(&row[1..]);
        cells.map(|(character, cell)| value(&character.scale, cell).into()).collect()
    });
    let taxa = rows.iter().map(|row| Taxon::named(row[0])).collect();
    Matrix::new(Scene::default(), taxa, characters.clone(), cells.collect()).expect("a table")
}

fn counts(cell: &str) -> Vec<u32> {
    if let Some((from, to)) = cell.split_once('-') {
        let [from, to] = [from, to].map(|number| number.parse::<u32>().ok());
        return from.zip(to).map_or(Vec::new(), |(from, to)| (from..=to).collect());
    }
    cell.split(" or ").filter_map(|number| number.parse().ok()).collect()
}

fn value(scale: &Scale, cell: &str) -> Value {
    let share = |many: usize| Share::from_integer(1) / Share::from_integer(many as i128);
    match (scale, cell) {
        (_, "?" | "") => Value::Unknown,
        (_, "n/a") => Value::DoesNotApply,
        (Scale::Counts, cell) => {
            let counts = counts(cell);
            Value::Counts(counts.iter().map(|n| (*n, share(counts.len()))).collect())
        }
        (Scale::Measure { .. }, cell) => {
            let numbers: Vec<i64> = cell
                .trim_end_matches(" mm")
                .split('-')
                .map(|number| number.parse().expect("a length"))
                .collect();
            let at = |n: usize| Quantity::from_whole(numbers[n.min(numbers.len() - 1)]);
            Value::Range { low: at(0), high: at(1) }
        }
        (Scale::Words { states }, cell) => {
            let said: Vec<&str> = cell.split(" or ").collect();
            let mut at: Vec<usize> = said
                .iter()
                .map(|said| states.iter().position(|state| state == said).expect("a state"))
                .collect();
            at.sort_unstable();
            let shares = at.iter().map(|at| (StateIx(*at), share(said.len())));
            Value::States(shares.collect())
        }
    }
}

/// The leaf of the first kind.
fn leaf(text: &str) -> Option<Leaf> {
    let matrix = table(text);
    Columns::of(&matrix).leaf(&matrix, TaxonIx(0))
}

/// A whole leaf, all of which is said but for one column that takes the place of its edge.
fn edged(column: &str, state: &str) -> Option<Leaf> {
    leaf(&format!(
        "kind,form of the leaf,lobes,{column}\nthis,in one piece,unlobed,{state}\n\
         that,like a feather,n/a,else\n"
    ))
}

/// The same for its lobes or its form.
fn formed(column: &str, state: &str) -> Option<Leaf> {
    leaf(&format!(
        "kind,{column},leaf edge,number of leaflets\nthis,{state},smooth,5\nthat,else,smooth,7\n"
    ))
}

#[test]
fn a_leaf_is_drawn_only_where_form_lobes_and_edge_are_known() {
    let all = ["in one piece", "lobed", "like a hand", "smooth"];
    let drawn = |cells: [&str; 4]| {
        leaf(&format!(
            "kind,form of the leaf,lobes,how it is lobed,edge\nthis,{}\n\
             that,like a feather,unlobed,like a feather,toothed\n",
            cells.join(",")
        ))
    };
    assert!(drawn(all).is_some());
    for column in [0, 2, 3] {
        let mut less = all;
        less[column] = "?";
        // What is lobed like a hand is in one piece, also where nobody said so.
        assert_eq!(drawn(less).is_some(), column == 0, "without {}", all[column]);
        less[column] = "funny";
        assert!(drawn(less).is_none(), "funny instead of {}", all[column]);
    }
    assert!(drawn(["in one piece", "?", "?", "smooth"]).is_none(), "lobed or not");
    assert!(drawn(["in one piece", "unlobed", "?", "smooth"]).is_some());
    assert!(drawn(["compound", "n/a", "n/a", "smooth"]).is_none(), "how it is compound");
    assert!(
        drawn(["like a feather", "n/a", "n/a", "smooth"]).is_none(),
        "of how many leaflets"
    );
}

#[test]
fn what_the_lines_cannot_show_is_not_drawn() {
    for state in ["needle", "needles", "like a needle", "scale", "scales", "frond", "Nadel"] {
        for column in ["leaf", "form of the leaf", "shape of the leaf", "kind of leaf"] {
            let text = format!(
                "kind,{column},lobes,edge\nthis,{state},unlobed,smooth\n\
                 that,in one piece,unlobed,smooth\n"
            );
            assert_eq!(leaf(&text), None, "{column}: {state}");
        }
    }
    let with = |column: &str, state: &str| {
        leaf(&format!(
            "kind,form of the leaf,lobes,edge,{column}\nthis,in one piece,unlobed,smooth,{state}\n\
             that,in one piece,unlobed,smooth,n/a\n"
        ))
    };
    for (column, state) in [
        ("number of needles in a bunch", "2"),
        ("length of the needles", "40 mm"),
        ("needles", "yes"),
        ("shape of the leaf", "like a fan"),
        ("tip", "like a tail"),
        ("foot of the blade", "lopsided"),
    ] {
        assert_eq!(with(column, state), None, "{column}: {state}");
    }
    for (column, state) in
        [("needles", "no"), ("colour of the leaf", "red"), ("smell", "nice"), ("feel", "rough")]
    {
        assert!(with(column, state).is_some(), "{column}: {state} hides nothing that shows");
    }
}

#[test]
fn a_groups_own_words_draw_nothing() {
    for column in ["is it spiky", "is it toothed?", "does it look smooth", "jagged", "spiny?"] {
        for state in ["yes", "no"] {
            assert_eq!(edged(column, state), None, "{column} {state}");
        }
    }
    // Nor do they change what the table draws.
    let text =
        "kind,form of the leaf,lobes,edge,is it spiky\nthis,in one piece,unlobed,smooth,yes\n";
    assert_eq!(leaf(text).map(|leaf| leaf.blade.edge), Some(Edge::Smooth));
    assert_eq!(
        edged("is the edge toothed", "yes").map(|leaf| leaf.blade.edge),
        Some(Edge::Toothed)
    );
    assert_eq!(edged("is the edge toothed", "no"), None, "it may be wavy or spiny");
}

#[test]
fn a_count_is_one_that_was_counted() {
    let many = |form: &str, counts: &str| {
        let text = format!(
            "kind,form of the leaf,number of leaflets,edge\nthis,{form},{counts},toothed\n"
        );
        leaf(&text).map(|leaf| leaf.form)
    };
    for (counts, drawn) in
        [("5-7", 5), ("5 or 7", 5), ("6", 6), ("4-6", 5), ("11 or 13 or 15", 13), ("3 or 4", 3)]
    {
        assert_eq!(many("like a feather", counts), Some(Form::Feather(drawn)), "{counts}");
    }
    assert_eq!(many("like a hand", "5-7"), Some(Form::Hand(5)));
    for (form, counts) in [
        ("like a feather", "1"),
        ("like a feather", "0"),
        ("like a feather", "40"),
        ("like a hand", "20"),
    ] {
        assert_eq!(many(form, counts), None, "{form} {counts}");
    }
    let lobes = |counts: &str| {
        let text = format!(
            "kind,form of the leaf,how it is lobed,number of lobes,edge\n\
             this,in one piece,like a hand,{counts},smooth\n"
        );
        leaf(&text).map(|leaf| leaf.blade.lobes)
    };
    assert_eq!(lobes("3-5"), Some(Lobes::Hand(3)));
    assert_eq!(lobes("?"), Some(Lobes::Hand(5)));
    assert_eq!(lobes("6"), None);
}

#[test]
fn words_of_the_table_and_of_the_trade_are_understood() {
    for (column, state, edge) in [
        ("edge", "doubly serrate", Edge::DoubleToothed),
        ("leaf edge", "jagged", Edge::Toothed),
        ("leaf margin", "spiny", Edge::Spiny),
        ("leaf edge", "without teeth", Edge::Smooth),
        ("leaf edge", "wavy", Edge::Wavy),
        ("is the edge toothed", "yes", Edge::Toothed),
        ("Blattrand", "doppelt gesägt", Edge::DoubleToothed),
        ("Blattrand", "nicht gezähnt", Edge::Smooth),
    ] {
        let leaf = edged(column, state).unwrap_or_else(|| panic!("{column}: {state}"));
        assert_eq!(leaf.blade, Blade { edge, ..Blade::default() }, "{column}: {state}");
    }
    for (column, state, lobes) in [
        ("leaf", "hand-lobed", Some(Lobes::Hand(5))),
        ("leaf", "lobed like a feather", Some(Lobes::Feather(9))),
        ("leaf", "gelappt", None),
    ] {
        assert_eq!(formed(column, state).map(|leaf| leaf.blade.lobes), lobes, "{state}");
    }
    for (column, state, form) in [
        ("leaf", "pinnate", Some(Form::Feather(5))),
        ("Blatt", "handförmig", Some(Form::Hand(5))),
        ("leaf", "compound", None),
    ] {
        assert_eq!(formed(column, state).map(|leaf| leaf.form), form, "{state}");
    }
    let with = |column: &str, state: &str| {
        let text = format!(
            "kind,form of the leaf,lobes,edge,{column}\nthis,in one piece,unlobed,smooth,{state}\n"
        );
        leaf(&text).unwrap_or_else(|| panic!("{column}: {state}"))
    };
    let shape = |state| with("shape of the leaf", state).blade.shape;
    let words = ["heart-shaped", "round", "eiförmig", "narrow", "oval"];
    let shapes = [Shape::Heart, Shape::Round, Shape::Egg, Shape::Narrow, Shape::Oval];
    assert_eq!(words.map(shape), shapes);
    assert_eq!(with("foot of the blade", "heart-shaped").blade.shape, Shape::Heart);
    assert_eq!(with("leaf tip", "rounded").blade.tip, Tip::Rounded);
    assert_eq!(with("spine at the tip", "yes").blade.tip, Tip::Spine);
    assert_eq!(with("spine at the tip", "no").blade.tip, Tip::Usual);
    assert!(with("feel of the leaf", "hairy").hairy);
    assert_eq!(with("leaf stalk", "no").stalk, Some(0.0));
}

/// Of states that are equally common, the one is drawn that is more than a plain leaf.
#[test]
fn of_equally_common_forms_the_one_that_stands_out_is_drawn() {
    for state in ["in one piece or like a feather", "like a feather or in one piece"] {
        let form = formed("form of the leaf", state).map(|leaf| leaf.form);
        assert_eq!(form, Some(Form::Feather(5)), "{state}");
    }
}

#[test]
fn lengths_become_proportions_and_a_round_stalk_no_round_leaf() {
    let text = "kind,leaf form,lobes,leaf edge,leaf stalk,blade length,blade width,stalk length\n\
         oak,in one piece,unlobed,smooth,round,80-120 mm,50 mm,10 mm\n\
         beech,in one piece,unlobed,smooth,flat,?,40 mm,10 mm\n";
    let matrix = table(text);
    let columns = Columns::of(&matrix);
    let [oak, beech] = [0, 1].map(|at| columns.leaf(&matrix, TaxonIx(at)).expect("a leaf"));
    assert_eq!((oak.width, oak.stalk), (Some(0.5), Some(0.1)));
    assert_eq!((beech.width, beech.stalk), (None, None), "no length to compare with");
    assert_eq!(oak.blade.shape, Shape::Egg);
}

/// The closed lines of a drawing: the edge of the blade, or of each leaflet.
fn edges(drawing: &Drawing) -> Vec<&[Point]> {
    let closed =
        |points: &&[Point]| points.len() > 12 && near(points[0], points[points.len() - 1]);
    drawing.strokes.iter().map(|stroke| stroke.points.as_slice()).filter(closed).collect()
}

fn near(one: Point, other: Point) -> bool {
    (one.0 - other.0).abs() < 1e-6 && (one.1 - other.1).abs() < 1e-6
}

/// How often a line of numbers goes up and comes down again by at least so much.
fn tops(heights: &[f64], by: f64) -> usize {
    let (mut many, mut low, mut high, mut rising) = (0, heights[0], heights[0], true);
    for &height in heights {
        if rising {
            high = high.max(height);
            if height < high - by {
                many += 1;
                (rising, low) = (false, height);
            }
        } else {
            low = low.min(height);
            if height > low + by {
                (rising, high) = (true, height);
            }
        }
    }
    many
}

/// Corners of a line: it turns by more than a third of a half circle.
fn corners(edge: &[Point]) -> usize {
    let way = |two: [Point; 2]| (two[1].0 - two[0].0, two[1].1 - two[0].1);
    let long = |(x, y): Point| (x * x + y * y).sqrt();
    let bends = edge.windows(3).filter(|three| {
        let (one, other) = (way([three[0], three[1]]), way([three[1], three[2]]));
        one.0 * other.0 + one.1 * other.1 < 0.5 * long(one) * long(other)
    });
    bends.count()
}

/// How often a line bends the other way.
fn turns(edge: &[Point]) -> usize {
    let bends: Vec<bool> = edge
        .windows(3)
        .map(|three| {
            let (a, b) = (three[1].0 - three[0].0, three[1].1 - three[0].1);
            let (c, d) = (three[2].0 - three[1].0, three[2].1 - three[1].1);
            a * d - b * c
        })
        .filter(|bend| bend.abs() > 1e-6)
        .map(|bend| bend > 0.0)
        .collect();
    bends.windows(2).filter(|two| two[0] != two[1]).count()
}

/// Every combination that the columns of an empty table can say: the drawing shows each of them,
/// read off its lines by other means than it was drawn by, or there is none.
#[test]
fn every_combination_of_the_starter_columns_is_shown_or_not_drawn() {
    let (mut drawn, mut bare) = (0, 0);
    let forms = ["in one piece", "like a feather", "like a hand"];
    let hows = ["n/a", "from one place", "along the midrib"];
    let edges_said = ["smooth", "toothed", "wavy", "spiny"];
    let widest = ["?", "near the stalk", "in the middle", "near the tip"];
    let tips = ["?", "pointed", "rounded", "notched"];
    for form in forms {
        for how in hows {
            for lobes in ["?", "3", "5", "7"] {
                for leaflets in ["?", "3", "4", "5-7", "15"] {
                    for edge in edges_said {
                        for wide in widest {
                            for tip in tips {
                                let said = [form, how, lobes, leaflets, edge, wide, tip];
                                if fair(said) {
                                    let shown = combination(said);
                                    drawn += usize::from(shown);
                                    bare += usize::from(!shown);
                                }
                            }
                        }
                    }
                }
            }
        }
    }
    assert!(drawn > 200 && bare > 400, "{drawn} drawn, {bare} not");
}

/// Whether the columns of an empty table let one say so.
fn fair([form, how, lobes, leaflets, _, wide, _]: [&str; 7]) -> bool {
    let one = form == "in one piece";
    let lobed = how != "n/a";
    (one || !lobed && wide == "?")
        && (one == (leaflets == "?") || !one)
        && (lobed || lobes == "?")
}

/// Draws a combination and looks for all that was said; whether it was drawn.
fn combination(said: [&str; 7]) -> bool {
    let [form, how, lobes, leaflets, edge, wide, tip] = said;
    let (lobed, number) = match (form, how) {
        ("in one piece", "n/a") => ("unlobed", "n/a"),
        ("in one piece", _) => ("lobed", lobes),
        _ => ("n/a", "n/a"),
    };
    let counted = if form == "in one piece" { "n/a" } else { leaflets };
    let line = |edge: &str| {
        format!("{form},{counted},{lobed},{how},{number},{edge},{wide},{tip},furry")
    };
    let matrix = table(&format!(
        "kind,form of the leaf,number of leaflets,lobes,how it is lobed,number of lobes,edge,\
         widest part,tip,feel\nthis,{}\nsmooth,{}\n",
        line(edge),
        line("smooth")
    ));
    let leaves = Leaves::of(&matrix);
    let Some(drawing) = leaves.drawing(&matrix, TaxonIx(0)) else { return false };
    let smooth = leaves.drawing(&matrix, TaxonIx(1)).expect("the edge alone hides nothing");
    let (cut, plain) = (edges(&drawing), edges(&smooth));
    let counts = counts(counted);
    if form == "in one piece" {
        assert_eq!(cut.len(), 1, "{said:?}");
    } else {
        assert!(counts.contains(&(cut.len() as u32)), "{said:?}: {} leaflets", cut.len());
        let top = |edge: &&&[Point]| edge[edge.len() / 2].0.abs() < 1e-6;
        if form == "like a feather" {
            let odd = cut.len() % 2 == 1;
            assert_eq!(
                cut.iter().filter(top).count(),
                usize::from(odd),
                "{said:?}: its end leaflet"
            );
            assert!(odd || counts.iter().all(|many| many % 2 == 0), "{said:?}: no end leaflet");
        }
    }
    let right = |edge: &[Point]| edge[..=edge.len() / 2].to_vec();
    if lobed == "lobed" {
        let side = right(plain[0]);
        let foot = side[0];
        let out: Vec<f64> = match how {
            "from one place" => side
                .iter()
                .map(|(x, y)| ((x - foot.0).powi(2) + (y - foot.1).powi(2)).sqrt())
                .collect(),
            _ => side.iter().map(|(x, _)| *x).collect(),
        };
        // Lobes at the sides are tops of the line; the one at the tip ends it.
        let end = usize::from(how != "from one place");
        let shown = 2 * (tops(&out, 1.5) - end) + 1;
        let wanted = lobes.parse().unwrap_or(if how == "from one place" { 5 } else { 9 });
        assert_eq!(shown, wanted, "{said:?}: its lobes");
    }
    let (cut, plain) = (right(cut[0]), right(plain[0]));
    match edge {
        "smooth" => assert_eq!(cut, plain, "{said:?}"),
        // The teeth of slim leaflets are too low for corners; that the line goes out and in is
        // seen all the same.
        "toothed" => {
            let zigzag = turns(&cut) >= 6 && turns(&cut) > turns(&plain);
            assert!(zigzag, "{said:?}: its teeth");
            let few = form == "in one piece" && corners(&cut) < corners(&plain) + 6;
            assert!(!few, "{said:?}: its teeth are points");
        }
        "spiny" => assert!(corners(&cut) >= corners(&plain) + 2, "{said:?}: its spines"),
        _ => {
            assert!(turns(&cut) >= turns(&plain) + 3, "{said:?}: its waves");
            // The tips of lobes are points, and so are the corners of a notch.
            let smooth = lobed != "lobed" && tip != "notched";
            let pointed = smooth && corners(&cut) > corners(&plain);
            assert!(!pointed, "{said:?}: waves have no points");
        }
    }
    // Where the blade is widest, in parts of its length.
    if form == "in one piece" && lobed == "unlobed" && wide != "?" {
        let (low, high) = (plain[0].1, plain[0].1.min(-38.0));
        let most = plain.iter().max_by(|one, other| one.0.total_cmp(&other.0)).expect("points");
        let part = (low - most.1) / (low - high);
        let third = match wide {
            "near the stalk" => 0.0..0.4,
            "in the middle" => 0.4..0.6,
            _ => 0.6..1.0,
        };
        assert!(third.contains(&part), "{said:?}: widest at {part}");
    }
    // A notch: the line comes down again before it meets the midrib. Of leaflets only the one at
    // the end stands upright.
    let upright = edges(&smooth).into_iter().find(|edge| edge[edge.len() / 2].0.abs() < 1e-6);
    let Some(plain) = upright.map(right) else { return true };
    let down = |edge: &[Point]| {
        let top = edge.iter().map(|(_, y)| *y).fold(f64::MAX, f64::min);
        edge[edge.len() - 1].1 - top > 0.2
    };
    assert_eq!(down(&plain), tip == "notched", "{said:?}: its tip");
    true
}

/// Pairs along a stalk and one at its end; like the fingers of a hand.
#[test]
fn a_drawn_feather_has_one_leaflet_at_its_end_and_a_hand_has_five() {
    let leaflets = |shows: Shows| {
        // The stalk and what the leaflets hang on are short lines, never round.
        let mut outlines = shows.drawing().strokes;
        outlines.retain(|stroke| stroke.weight == Weight::Outline && stroke.points.len() > 12);
        let across = |stroke: &Stroke| -> f64 {
            stroke.points.iter().map(|(x, _)| x).sum::<f64>() / stroke.points.len() as f64
        };
        let middle = outlines.iter().filter(|stroke| across(stroke).abs() < 0.5).count();
        (outlines.len(), middle)
    };
    assert_eq!(leaflets(Shows::Feather), (7, 1));
    assert_eq!(leaflets(Shows::Hand), (5, 1));
}

#[test]
fn every_word_differs_from_what_it_is_taken_for_and_stays_in_its_box() {
    for shows in Shows::ALL {
        let drawing = shows.drawing();
        assert!(points(&drawing).len() > 12, "{shows:?}");
        for (x, y) in points(&drawing) {
            let inside = (-24.0..=24.0).contains(&x) && (-50.0..=14.0).contains(&y);
            assert!(inside, "{shows:?} {x} {y}");
        }
    }
    let words = [
        "lobed",
        "tooth",
        "needle",
        "midrib",
        "leaf",
        "leaflet",
        "opposite",
        "bud",
        "gap",
        "thorn",
        "hip",
        "rib",
        "shoot",
        "rosette",
        "cone",
        "wedge-shaped",
        "hand-veined",
        "fringe",
    ];
    for word in words {
        let Some(DrawnWord { own, other }) = of_word(word, true) else { panic!("{word}") };
        for (one, other) in
            own.iter().flat_map(|one| other.iter().map(move |other| (one, other)))
        {
            assert_ne!(one.drawing, other.drawing, "{word}");
        }
    }
    assert_eq!(of_word("sap", true), None);
    assert_eq!(of_word("smooth", false), None, "a shell is smooth as well");
}

/// A child sees which half of a lopsided blade is the larger one.
#[test]
fn one_half_of_a_lopsided_blade_is_wider_by_more_than_a_quarter() {
    let reach = |shows: Shows| {
        let drawing = shows.drawing();
        let outlines = drawing.strokes.iter().filter(|stroke| stroke.weight == Weight::Outline);
        let xs: Vec<f64> = outlines.flat_map(|stroke| &stroke.points).map(|at| at.0).collect();
        let far = |side: f64| xs.iter().map(|x| x * side).fold(0.0, f64::max);
        far(-1.0) / far(1.0)
    };
    assert!((reach(Shows::Even) - 1.0).abs() < 0.01, "{}", reach(Shows::Even));
    assert!(reach(Shows::Lopsided) > 1.25, "{}", reach(Shows::Lopsided));
}

#[test]
fn hairs_are_drawn_on_a_blade_and_on_leaflets() {
    for form in [Form::OnePiece, Form::Feather(7), Form::Hand(5)] {
        let hairs = |hairy| lines(&Leaf { form, hairy, ..Leaf::default() }, Part::Hairs).len();
        assert!(hairs(true) > 4, "{form:?}");
        assert_eq!(hairs(false), 0, "{form:?}");
    }
}
