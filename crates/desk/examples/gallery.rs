//! Every drawing and every word on sheets, to be looked at by eye.
//!
//! `cargo run -p spinney-desk --example gallery -- OUT` writes `OUT/gallery.html`, which prints on
//! A4: the demo's leaves, each form that the columns of an empty table can say, leaves that are
//! not drawn because the table does not say enough, and the word list with its sources.

#[path = "gallery/page.rs"]
mod page;

use std::path::Path;

use spinney_exchange::table::{self, Settings, Source, Sources};
use spinney_model::Matrix;

const DEMO: &str = include_str!("../../spinney/scenarios/hedge_walk/table.csv");
const DEMO_COLUMNS: &str = include_str!("../../spinney/scenarios/hedge_walk/characters.csv");

/// Leaves of every form, lobes, edge, widest part and tip; each is named after what it shows.
const FORMS: &str = "kind,form of the leaf,number of leaflets,lobes,how it is lobed,\
number of lobes,edge,widest part,tip\n\
smooth,in one piece,n/a,unlobed,n/a,n/a,smooth,?,?\n\
wavy,in one piece,n/a,unlobed,n/a,n/a,wavy,?,?\n\
toothed,in one piece,n/a,unlobed,n/a,n/a,toothed,?,?\n\
double-toothed,in one piece,n/a,unlobed,n/a,n/a,double-toothed,?,?\n\
spiny,in one piece,n/a,unlobed,n/a,n/a,spiny,?,?\n\
widest near the stalk,in one piece,n/a,unlobed,n/a,n/a,smooth,near the stalk,pointed\n\
widest in the middle,in one piece,n/a,unlobed,n/a,n/a,smooth,in the middle,pointed\n\
widest near the tip,in one piece,n/a,unlobed,n/a,n/a,smooth,near the tip,pointed\n\
tip rounded,in one piece,n/a,unlobed,n/a,n/a,smooth,near the stalk,rounded\n\
tip notched,in one piece,n/a,unlobed,n/a,n/a,toothed,near the tip,notched\n\
three lobes like a hand,in one piece,n/a,lobed,like a hand,3,smooth,?,?\n\
five lobes like a hand,in one piece,n/a,lobed,like a hand,5,smooth,?,?\n\
seven lobes like a hand,in one piece,n/a,lobed,like a hand,7,toothed,?,?\n\
five lobes like a feather,in one piece,n/a,lobed,like a feather,5,toothed,?,?\n\
seven lobes like a feather,in one piece,n/a,lobed,like a feather,7,smooth,?,?\n\
nine lobes like a feather,in one piece,n/a,lobed,like a feather,9,smooth,?,?\n\
nine lobes and spines,in one piece,n/a,lobed,like a feather,9,spiny,?,?\n\
lobes and waves,in one piece,n/a,lobed,like a feather,7,wavy,?,?\n\
three leaflets like a feather,like a feather,3,n/a,n/a,n/a,smooth,n/a,?\n\
four leaflets like a feather,like a feather,4,n/a,n/a,n/a,smooth,n/a,?\n\
five to seven leaflets,like a feather,5-7,n/a,n/a,n/a,toothed,n/a,?\n\
fifteen leaflets,like a feather,15,n/a,n/a,n/a,toothed,n/a,?\n\
three leaflets like a hand,like a hand,3,n/a,n/a,n/a,toothed,n/a,?\n\
seven leaflets like a hand,like a hand,7,n/a,n/a,n/a,double-toothed,n/a,?\n\
edge not known,in one piece,n/a,unlobed,n/a,n/a,?,?,?\n\
lobes not known,in one piece,n/a,?,?,?,smooth,?,?\n\
how it is lobed not known,in one piece,n/a,lobed,?,?,smooth,?,?\n\
number of leaflets not known,like a feather,?,n/a,n/a,n/a,smooth,n/a,?\n\
eleven lobes,in one piece,n/a,lobed,like a feather,11,smooth,?,?\n\
needle,needle,n/a,unlobed,n/a,n/a,smooth,?,?\n\
scale,scale,n/a,unlobed,n/a,n/a,smooth,?,?\n\
frond,frond,n/a,unlobed,n/a,n/a,smooth,?,?\n";

fn read(text: &str, columns: Option<&str>) -> Result<Matrix, Box<dyn std::error::Error>> {
    let source = |name: &str, text: &str| Source {
        name: name.to_owned(),
        bytes: text.as_bytes().to_vec(),
    };
    let sources = Sources {
        table: source("table.csv", text),
        characters: columns.map(|text| source("characters.csv", text)),
        kinds: None,
        about: None,
    };
    let read = table::read(&sources, &Settings::default());
    Ok(read.map_err(|error| format!("{error:?}"))?.matrix)
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let out = std::env::args().nth(1).ok_or("say where: gallery -- OUT")?;
    std::fs::create_dir_all(&out)?;
    let tables = [
        ("The kinds of the demo's hedge walk".to_owned(), read(DEMO, Some(DEMO_COLUMNS))?),
        ("What a table can say of a leaf".to_owned(), read(FORMS, None)?),
    ];
    let page = Path::new(&out).join("gallery.html");
    std::fs::write(&page, page::gallery(&tables))?;
    println!("{}", page.display());
    Ok(())
}
