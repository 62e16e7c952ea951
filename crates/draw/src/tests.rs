//! Each parameter changes its own lines; the table is drawn, and nothing that it does not say.

use std::collections::BTreeSet;

use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_model::{Matrix, TaxonIx};

use super::blade::{Blade, Edge, Lobes, Shape};
use super::columns::Columns;
use super::leaf::{Form, Leaf, Part};
use super::pen::Point;
use super::{Drawings, pen, svg};

/// The lines of one part of a leaf, as paths.
fn lines(leaf: &Leaf, part: Part) -> Vec<String> {
    let of = leaf.lines().into_iter().filter(|line| line.part == part);
    of.map(|line| pen::path(&line.points)).collect()
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
    for edge in [Edge::Toothed, Edge::DoubleToothed, Edge::Spiny] {
        let cut = with(Blade { edge, ..Blade::default() });
        assert_eq!(differ(&plain, &cut), [Part::Edge], "{edge:?}");
    }
    for lobes in [Lobes::Some, Lobes::Feather, Lobes::Hand] {
        let lobed = with(Blade { lobes, ..Blade::default() });
        assert_eq!(differ(&plain, &lobed), [Part::Edge, Part::Veins], "{lobes:?}");
    }
    for shape in [Shape::Heart, Shape::Round, Shape::Narrow] {
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
        for (x, y) in pen::points_of(&svg(&leaf).into_string()) {
            let inside = (-24.0..=24.0).contains(&x) && (-41.0..=16.0).contains(&y);
            assert!(inside, "{leaf:?}: {x} {y}");
        }
    }
}

fn blades() -> Vec<Blade> {
    let mut blades = Vec::new();
    for shape in [Shape::Egg, Shape::Heart, Shape::Round, Shape::Narrow, Shape::Needle] {
        for lobes in [Lobes::None, Lobes::Some, Lobes::Feather, Lobes::Hand] {
            for edge in [Edge::Plain, Edge::Toothed, Edge::DoubleToothed, Edge::Spiny] {
                blades.push(Blade { shape, lobes, edge });
            }
        }
    }
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
    for edge in [Edge::Plain, Edge::Toothed, Edge::DoubleToothed, Edge::Spiny] {
        for lobes in [Lobes::None, Lobes::Some, Lobes::Feather, Lobes::Hand] {
            let points = Blade { edge, lobes, ..Blade::default() }.outline(36.0, 24.0);
            for (right, left) in points.iter().zip(points.iter().rev()) {
                assert!((right.0 + left.0).abs() < 1e-9 && (right.1 - left.1).abs() < 1e-9);
            }
        }
    }
}

fn read(text: &str, characters: Option<&str>) -> Matrix {
    let source = |name: &str, text: &str| Source {
        name: format!("{name}.csv"),
        bytes: text.as_bytes().to_vec(),
    };
    let sources = Sources {
        table: source("table", text),
        characters: characters.map(|text| source("characters", text)),
        kinds: None,
        about: None,
    };
    table::read(&sources, &Settings::default()).expect("it can be read").matrix
}

fn scenario(name: &str) -> Matrix {
    let folder = format!("{}/../spinney/scenarios/{name}", env!("CARGO_MANIFEST_DIR"));
    let [table, characters] = ["table", "characters"].map(|sheet| {
        std::fs::read_to_string(format!("{folder}/{sheet}.csv")).expect("a sheet")
    });
    read(&table, Some(&characters))
}

/// The drawings of a table, by the names of its kinds.
fn drawn(matrix: &Matrix) -> Vec<(String, Option<String>)> {
    let drawings = Drawings::of(matrix);
    let one = |taxon| {
        let drawing = drawings.drawing(matrix, taxon).map(|svg| svg.clone().into_string());
        (matrix.taxon(taxon).name.clone(), drawing)
    };
    matrix.taxon_indices().map(one).collect()
}

#[test]
fn the_twelve_kinds_of_the_hedge_walk_are_drawn_as_its_table_says() {
    let matrix = scenario("hedge_walk");
    let drawings = drawn(&matrix);
    assert!(drawings.iter().all(|(_, drawing)| drawing.is_some()));
    let columns = Columns::of(&matrix);
    let leaf = |name: &str| {
        let at = matrix.taxa().iter().position(|taxon| taxon.name == name).expect(name);
        columns.leaf(&matrix, TaxonIx(at)).expect("a leaf")
    };
    let (plain, form) = (Blade::default(), Form::OnePiece);
    let toothed = Blade { edge: Edge::Toothed, ..plain };
    let stalk = Some(10.0 / 85.0);
    assert_eq!(leaf("hazel"), Leaf { form, blade: toothed, width: None, stalk, hairy: false });
    assert_eq!(leaf("dogwood").blade, plain);
    assert_eq!(leaf("hawthorn").blade, Blade { lobes: Lobes::Some, ..toothed });
    assert_eq!(
        leaf("field maple").blade,
        Blade { lobes: Lobes::Some, ..plain },
        "edge unknown"
    );
    assert_eq!(leaf("ivy").blade, Blade { lobes: Lobes::Some, ..plain }, "8 of 10 are lobed");
    assert_eq!(leaf("holly").blade, Blade { edge: Edge::Spiny, ..plain }, "spiny or smooth");
    assert_eq!(leaf("dog rose").form, Form::Feather(5));
    assert_eq!(leaf("rowan").form, Form::Feather(13), "the middle of 11, 13 and 15");
    assert_eq!(leaf("bramble").form, Form::Hand(3));
    // Whom the table tells apart in form, leaflets, lobes or edge, the drawings do too; here
    // the stalks tell the others apart as well.
    let looks: BTreeSet<_> = drawings.iter().map(|(_, drawing)| drawing).collect();
    assert_eq!(looks.len(), 12);
}

#[test]
fn kinds_that_the_table_does_not_tell_apart_look_alike() {
    let matrix = read("kind,edge\nhazel,toothed\nlime,toothed\ndogwood,smooth\n", None);
    let drawings = drawn(&matrix);
    assert!(drawings[0].1.is_some() && drawings[0].1 == drawings[1].1);
    assert_ne!(drawings[0].1, drawings[2].1);
}

#[test]
fn what_is_no_leaf_is_not_drawn() {
    for name in ["pond_tray", "pasta_shapes"] {
        for (kind, drawing) in drawn(&scenario(name)) {
            assert_eq!(drawing, None, "{kind}");
        }
    }
    for table in [
        "kind,colour of the leaf\noak,green\nbeech,red\n",
        "kind,edge of the shell,form\nsnail,toothed,round\nmussel,smooth,narrow\n",
        "kind,leaves it eats,legs,shape\nmoth,lobed,6,round\nslug,lobed,0,narrow\n",
        "kind,blade length,stalk length\noak,90 mm,5 mm\nbeech,80 mm,10 mm\n",
        "kind,form of the fruit,leaf feel\noak,round,smooth\nbeech,round,rough\n",
    ] {
        for (kind, drawing) in drawn(&read(table, None)) {
            assert_eq!(drawing, None, "{kind} of {table}");
        }
    }
    let half = read("kind,lobes of the leaf\noak,lobed\nbeech,\n", None);
    assert!(drawn(&half)[0].1.is_some() && drawn(&half)[1].1.is_none(), "nobody looked");
}

#[test]
fn words_of_the_table_and_of_the_trade_are_understood() {
    let plain = Blade::default();
    let blade = |column: &str, state: &str| {
        let matrix = read(&format!("kind,{column}\nthis,{state}\nthat,other\n"), None);
        let leaf = Columns::of(&matrix).leaf(&matrix, TaxonIx(0));
        leaf.unwrap_or_else(|| panic!("{column}: {state}"))
    };
    for (column, state, edge) in [
        ("edge", "doubly serrate", Edge::DoubleToothed),
        ("leaf edge", "jagged", Edge::Toothed),
        ("leaf margin", "spiny", Edge::Spiny),
        ("leaf edge", "without teeth", Edge::Plain),
        ("is the leaf toothed", "yes", Edge::Toothed),
        ("is the leaf toothed", "no", Edge::Plain),
        ("Blattrand", "doppelt gesägt", Edge::DoubleToothed),
        ("Blattrand", "nicht gezähnt", Edge::Plain),
    ] {
        assert_eq!(blade(column, state).blade, Blade { edge, ..plain }, "{column}: {state}");
    }
    for (column, state, lobes) in [
        ("leaf", "hand-lobed", Lobes::Hand),
        ("leaf", "lobed like a feather", Lobes::Feather),
        ("leaf", "gelappt", Lobes::Some),
        ("leaf", "not lobed", Lobes::None),
    ] {
        assert_eq!(blade(column, state).blade.lobes, lobes, "{state}");
        assert_eq!(blade(column, state).form, Form::OnePiece, "{state}");
    }
    for (column, state, form) in [
        ("leaf", "pinnate", Form::Feather(7)),
        ("Blatt", "handförmig", Form::Hand(5)),
        ("is the leaf compound", "no", Form::OnePiece),
    ] {
        assert_eq!(blade(column, state).form, form, "{state}");
    }
    let shape = |state| blade("shape of the leaf", state).blade.shape;
    let words = ["heart-shaped", "round", "eiförmig", "narrow", "like a needle"];
    let shapes = [Shape::Heart, Shape::Round, Shape::Egg, Shape::Narrow, Shape::Needle];
    assert_eq!(words.map(shape), shapes);
    let hairy = blade("leaf", "lobed and hairy");
    assert!(hairy.hairy && hairy.blade.lobes == Lobes::Some);
    assert_eq!(blade("leaf", "lobed and without stalk").stalk, Some(0.0));
}

#[test]
fn lengths_become_proportions_and_a_round_stalk_no_round_leaf() {
    let matrix = read(
        "kind,leaf edge,leaf stalk,blade length,blade width,stalk length\n\
         oak,smooth,round,80-120 mm,5 cm,10 mm\nbeech,smooth,flat,?,4 cm,1 cm\n",
        None,
    );
    let columns = Columns::of(&matrix);
    let [oak, beech] = [0, 1].map(|at| columns.leaf(&matrix, TaxonIx(at)).expect("a leaf"));
    assert_eq!((oak.width, oak.stalk), (Some(0.5), Some(0.1)));
    assert_eq!((beech.width, beech.stalk), (None, None), "no length to compare with");
    assert_eq!(oak.blade.shape, Shape::Egg);
    let angle =
        read("kind,leaf edge,blade length,bend of the stalk\noak,smooth,80 mm,40°\n", None);
    let oak = Columns::of(&angle).leaf(&angle, TaxonIx(0)).expect("a leaf");
    assert_eq!(oak.stalk, None, "an angle is no part of a length");
}

#[test]
fn nothing_that_was_typed_reaches_the_drawing() {
    let hostile = "\"><script>alert(1)</script>";
    let quoted = hostile.replace('"', "\"\"");
    let table =
        format!("kind,leaf edge {quoted}\n\"{quoted}\",\"toothed {quoted}\"\noak,smooth\n");
    let table =
        table.replacen(&format!("leaf edge {quoted}"), &format!("\"leaf edge {quoted}\""), 1);
    let drawings = drawn(&read(&table, None));
    assert!(drawings[0].0.contains("script"));
    let drawing = drawings[0].1.as_deref().expect("a toothed leaf");
    assert!(!drawing.contains("script") && !drawing.contains("alert"));
    let known = "svgpath/<>=\"' .-MlclassleafdrawnviewBoxaria-hiddentruefocusablefalseoutlinemidribvein";
    assert!(drawing.chars().all(|c| c.is_ascii_digit() || known.contains(c)), "{drawing}");
}
