//! Drawings of words, of the states of columns and of kinds, as the places of their lines.

use spinney_draw::{of_kinds, of_state, of_word, sizes};
use spinney_exchange::table::{Settings, Source, Sources, read};
use spinney_fixtures::approved::checksum;
use spinney_model::{Drawing, Matrix, Scale, StateIx};

use crate::approved;

/// So many lines of each weight, the box they fill, and a checksum of all points to 0.01 mm.
fn drawing(drawing: &Drawing) -> String {
    let mm = |length: f64| (length * 100.0).round() / 100.0 + 0.0;
    let mut said = String::new();
    let (mut low, mut high) = ([f64::MAX; 2], [f64::MIN; 2]);
    let mut lines: Vec<String> = Vec::new();
    for stroke in &drawing.strokes {
        said += &format!("{:?}", stroke.weight);
        for &(x, y) in &stroke.points {
            (low, high) = ([low[0].min(x), low[1].min(y)], [high[0].max(x), high[1].max(y)]);
            said += &format!(" {},{}", mm(x), mm(y));
        }
        let weight = format!("{:?}", stroke.weight);
        match lines.last_mut().filter(|last| last.starts_with(&weight)) {
            Some(last) => *last += &format!(" {}", stroke.points.len()),
            None => lines.push(format!("{weight} {}", stroke.points.len())),
        }
    }
    format!(
        "{} in {:?} from {:?} to {:?} {:016x}",
        lines.join(", "),
        drawing.frame,
        low.map(mm),
        high.map(mm),
        checksum(&said)
    )
}

const WORDS: &str = "abdomen alternate antenna bark base berry blade bristle bud case catkin claw \
    coiled compound cone double-toothed edge egg-shaped end_bud end_leaflet entire feather \
    feather-veined feeler fin fringe frond fruit gap gill gland hair hand-shaped hand-veined head \
    heart-shaped hip jointed lance-shaped larva leaf leaf_scar leaf_stalk leaflet lobe lobed \
    lopsided midrib mouth needle notched nut opposite oval pair petal pod pointed prickle rib \
    rosette sap scale seed segment sepal shell shiny shoot smooth snout spike spine spiral stalk \
    stem stipule sucker tail tendril thorn tip tooth toothed trunk twig underside unlobed vein \
    vein_pair wavy wedge-shaped whorl wing nonsense";

#[test]
fn approved_drawings_of_words() {
    let mut all = Vec::new();
    for word in WORDS.split_whitespace().map(|word| word.replace('_', " ")) {
        for about_leaves in [true, false] {
            let Some(drawn) = of_word(&word, about_leaves) else {
                all.push(format!("{word}, {about_leaves}: nothing"));
                continue;
            };
            for (what, figures) in [("is", &drawn.own), ("is not", &drawn.other)] {
                for figure in figures {
                    let (caption, drawn) = (&figure.caption, drawing(&figure.drawing));
                    all.push(format!("{word}, {about_leaves} {what} {caption}: {drawn}"));
                }
            }
        }
    }
    approved("drawings_of_words.txt", &all);
}

fn table(text: &str) -> Matrix {
    let table = Source { name: "table.csv".to_owned(), bytes: text.as_bytes().to_vec() };
    let sources = Sources { table, ..Sources::default() };
    read(&sources, &Settings::default()).expect("it is a table").matrix
}

/// Invented kinds: every form with edges, lobes, tips, bases and numbers of leaflets; of the
/// columns the first so many.
fn kinds(columns: usize) -> Matrix {
    let mut text = String::from(
        "kind,form of the leaf,number of leaflets,lobes,edge,blade length,blade width,stalk length,\
         how it is lobed,tip,base,shape of the leaf\n",
    );
    let edges = ["toothed", "double-toothed", "smooth", "wavy", "spiny"];
    let tips = ["pointed", "rounded", "notched"];
    let bases = ["heart-shaped", "wedge-shaped", "rounded", "lopsided"];
    let shapes = ["oval", "egg-shaped", "lance-shaped", "round", "heart-shaped", "oval"];
    for at in 0..40 {
        let (form, leaflets, lobes, lobed) = match at {
            0..20 => ("in one piece", "n/a", "unlobed", "n/a"),
            20..25 => ("in one piece", "n/a", "lobed", "from one place"),
            25..30 => ("in one piece", "n/a", "lobed", "along the midrib"),
            30..37 => {
                ("like a feather", ["5", "7", "9 or 11", "13", "6"][at % 5], "n/a", "n/a")
            }
            _ => ("like a hand", ["3", "5", "7"][at % 3], "n/a", "n/a"),
        };
        let one = form == "in one piece";
        let word = |word: &'static str| if one { word } else { "n/a" };
        let (tip, base, shape) =
            (word(tips[at % 3]), word(bases[at % 4]), word(shapes[at % 6]));
        let (blade, stalk) = (30 + 7 * at, 4 * at);
        let edge = edges[at % 5];
        text += &format!(
            "kind {at},{form},{leaflets},{lobes},{edge},{blade} mm,{} mm,{stalk}-{} mm,{lobed},{tip},\
             {base},{shape}\n",
            15 + 3 * at,
            stalk + 5,
        );
    }
    let first = |line: &str| line.split(',').take(columns).collect::<Vec<_>>().join(",");
    table(&text.lines().map(first).collect::<Vec<_>>().join("\n"))
}

#[test]
fn approved_drawings_of_kinds_and_states() {
    let hedge = include_str!("../../scenarios/hedge_walk/table_with_spine.csv");
    let pond = include_str!("../../scenarios/pond_tray/table.csv");
    let pasta = include_str!("../../scenarios/pasta_shapes/table.csv");
    let mut all = Vec::new();
    let tables = [
        ("made up", kinds(9)),
        ("with tip", kinds(10)),
        ("with base", kinds(11)),
        ("with shape", kinds(12)),
        ("hedge", table(hedge)),
        ("pond", table(pond)),
        ("pasta", table(pasta)),
    ];
    for (name, matrix) in tables {
        all.push(name.to_owned());
        let sizes = sizes(&matrix);
        for ((taxon, drawn), size) in matrix.taxa().iter().zip(of_kinds(&matrix)).zip(sizes) {
            let drawn = drawn.as_ref().map_or("nothing".to_owned(), drawing);
            all.push(format!("  {}: {drawn}, {size:?}", taxon.name));
        }
        for at in matrix.character_indices() {
            let Scale::Words { states } = &matrix.character(at).scale else { continue };
            for (ix, state) in states.iter().enumerate() {
                for word in [None, Some(state.as_str())] {
                    let drawn = of_state(&matrix, at, StateIx(ix), word);
                    let drawn: Vec<String> = drawn.iter().map(drawing).collect();
                    let column = &matrix.character(at).name;
                    let word = word.map_or("", |_| " as a word");
                    all.push(format!("  {column} = {state}{word}: {}", drawn.join(" and ")));
                }
            }
        }
    }
    approved("drawings_of_kinds.txt", &all);
}
