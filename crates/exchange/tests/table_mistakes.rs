//! Tables as people bring them by mistake: each slip is told with a remedy, and tables of many
//! shapes that are fine are not accused of any.

#![allow(clippy::unwrap_used, reason = "a test says with a panic what is wrong")]

use spinney_exchange::table::{
    Instead, Settings, Source, Sources, TableError, TableRead, read,
};
use spinney_model::{
    CellTrouble, Code, Fact, KindAt, OfCell, OfColumn, OfSheet, ReadAs, SheetError, Value,
};

#[path = "drawn/table.rs"]
mod drawn;

use drawn::*;

/// Separated values as they come, under the name `finds.csv`.
fn csv(text: &str) -> Result<TableRead, TableError> {
    let table = Source { name: "finds.csv".to_owned(), bytes: text.as_bytes().to_vec() };
    read(&Sources { table, ..Sources::default() }, &Settings::default())
}

fn names(read: &TableRead) -> Vec<&str> {
    read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect()
}

fn columns(read: &TableRead) -> Vec<&str> {
    read.matrix.characters().iter().map(|character| character.name.as_str()).collect()
}

#[test]
fn a_row_of_headings_that_is_not_there_is_missed() {
    let read = csv("hazel,toothed,unlobed\nlime,toothed,unlobed\nivy,smooth,lobed\n").unwrap();
    let says = owned(["hazel", "toothed", "unlobed"]).to_vec();
    let none = OfSheet::NoHeadings { says, at: at("finds.csv!A1") };
    assert_eq!(only(&read, Code::NoHeadings), none.into());
    let read = csv("hazel,6-14 mm\nlime,30-50 mm\n").unwrap();
    only(&read, Code::NoHeadings);
}

#[test]
fn rows_and_columns_that_are_swapped_are_noticed() {
    let mixed = "what,hazel,lime,ivy\nedge,toothed,toothed,smooth\n\
                 stalk length,6-14 mm,30-50 mm,20-60 mm\n";
    only(&csv(mixed).unwrap(), Code::Swapped);
    let words = "what,hazel,lime,ivy,oak\nedge,toothed,toothed,smooth,smooth\n\
                 lobes,unlobed,unlobed,lobed,lobed\nfeel,soft,soft,soft,rough\n";
    only(&csv(words).unwrap(), Code::Swapped);
}

#[test]
fn what_is_written_below_a_table_is_no_kind() {
    let table = "kind,edge,leaflets\nash,toothed,9\nrowan,smooth,11\n";
    let read = csv(&format!("{table}Total,,20\n\nNote: measured on Tuesday.,,\n")).unwrap();
    assert_eq!(names(&read), ["ash", "rowan"]);
    let row = |name: &str, adds_up, address| {
        Fact::from(OfSheet::NoKind { name: name.to_owned(), adds_up, at: at(address) })
    };
    assert_eq!(
        told(&read, Code::LeftOut),
        [
            row("Note: measured on Tuesday.", false, "finds.csv!A6"),
            row("Total", true, "finds.csv!A4"),
        ]
    );
    let read = csv(&format!("{table}we measured these on Tuesday with rulers,,\n")).unwrap();
    assert_eq!(names(&read), ["ash", "rowan"]);
}

#[test]
fn a_column_that_counts_the_rows_holds_no_names() {
    let read = csv("no.,kind,edge\n1,hazel,toothed\n2,ivy,smooth\n3,holly,spiny\n").unwrap();
    assert_eq!(names(&read), ["hazel", "ivy", "holly"]);
    assert_eq!(columns(&read), ["edge"]);
    let [heading, kinds] = owned(["no.", "kind"]);
    assert_eq!(only(&read, Code::LeftOut), OfSheet::CountsRows { heading, kinds }.into());
}

#[test]
fn remarks_in_sentences_are_no_character() {
    let read =
        csv("kind,edge,remarks\nhazel,toothed,Ben found it near the gate and we liked it.\n\
         ivy,smooth,\"It was on the wall of the church, and there were wasps.\"\n")
        .unwrap();
    assert_eq!(columns(&read), ["edge"]);
    let remarks = OfColumn::Remarks { about: "remarks".to_owned() };
    assert_eq!(only(&read, Code::LeftOut), remarks.into());
    // Its commas are no list of states.
    assert!(told(&read, Code::CellNotPlain).is_empty(), "{:?}", read.findings);
}

#[test]
fn quotation_marks_that_do_not_hold_a_cell_are_told() {
    let read = csv("kind,edge,lobes\nhazel,\"toothed,unlobed\nivy,smooth,lobed\n").unwrap();
    let open = OfSheet::QuotationNotClosed { at: at("finds.csv!B2") };
    assert_eq!(only(&read, Code::QuotationNotClosed), open.into());
    let read = csv("kind,edge,lobes\nhazel,“toothed, smooth”,unlobed\nivy,smooth,lobed\n");
    let [before, behind] = owned(["toothed", "smooth"]);
    let cut = OfCell::CutAtComma { before, behind, at: at("finds.csv!B2") };
    let told = told(&read.unwrap(), Code::CellNotPlain);
    assert!(told.contains(&cut.into()), "{told:#?}");
}

#[test]
fn a_date_is_what_a_spreadsheet_made_of_a_range() {
    for date in ["05-Mar", "5 March", "03/05/2026", "2026-05-03", "5-Mar-26"] {
        let text = format!("kind,number of leaflets\nash,9-13\nbramble,{date}\noak,1\n");
        let read = csv(&text).unwrap();
        let cell = typed("finds.csv!B3", "bramble", "number of leaflets", date);
        let date = odd(cell, CellTrouble::Date { low: 3, high: 5 });
        assert_eq!(only(&read, Code::CellNotUnderstood), date);
        assert_eq!(value(&read, 1, 0), Value::Unknown);
    }
    let read = csv("kind,blade\nhazel,6-9 cm\nivy,5 cm x 3 cm\noak,7-12 cm\n").unwrap();
    let two = typed("finds.csv!B3", "ivy", "blade", "5 cm x 3 cm");
    assert_eq!(only(&read, Code::CellNotUnderstood), odd(two, CellTrouble::TwoMeasurements));
}

#[test]
fn what_is_nothing_to_see_is_not_taken_for_it_without_a_word() {
    let read = csv("kind,shiny\nhazel,dull\nivy,don't know\nholly,shiny\n").unwrap();
    let cell = typed("finds.csv!B3", "ivy", "shiny", "don't know");
    assert_eq!(only(&read, Code::CellNotPlain), read_as(cell, ReadAs::SomethingToSee));
    let read = csv("kind,edge\nhazel,toothed\nlime,#REF!\nivy,smooth\n").unwrap();
    let cell = typed("finds.csv!B3", "lime", "edge", "#REF!");
    let lost = OfCell::Error { cell, error: SheetError::LostCell };
    assert_eq!(only(&read, Code::CellNotPlain), lost.into());
    assert_eq!(value(&read, 1, 0), Value::Unknown);
    let read = csv("kind,edge\nBÃ¤rlauch,smooth\nHasel,toothed\n").unwrap();
    let [text, right] = owned(["BÃ¤rlauch", "Bärlauch"]);
    let spoilt = OfCell::LettersSpoilt { text, right, at: at("finds.csv!A2") };
    assert_eq!(only(&read, Code::LettersSpoilt), spoilt.into());
}

#[test]
fn a_blank_beside_ticks_is_asked_about() {
    let nobody = |kinds: &[(&str, &str)], beside_marks| {
        let kinds = kinds.iter();
        let kinds = kinds.map(|(kind, cell)| KindAt { kind: (*kind).to_owned(), at: at(cell) });
        let (about, kinds) = ("spines".to_owned(), kinds.collect());
        Fact::from(OfCell::NotRecorded { about, kinds, more: 0, beside_marks })
    };
    for tick in ["✓", "x", "yes", "ü"] {
        let read = csv(&format!("kind,spines\nhazel,\nivy,\nholly,{tick}\n")).unwrap();
        let both = nobody(&[("hazel", "finds.csv!B2"), ("ivy", "finds.csv!B3")], true);
        assert_eq!(only(&read, Code::Unknown), both, "{tick}");
    }
    let read = csv("kind,spines\nhazel,no\nivy,\nholly,yes\n").unwrap();
    assert_eq!(only(&read, Code::Unknown), nobody(&[("ivy", "finds.csv!B3")], false));
}

#[test]
fn two_words_with_a_stroke_come_back_in_their_own_words() {
    let read = csv("kind,edge\nhazel,toothed\nivy,toothed/smooth\n").unwrap();
    let cell = typed("finds.csv!B3", "ivy", "edge", "toothed/smooth");
    let words = owned(["toothed", "smooth"]).to_vec();
    assert_eq!(only(&read, Code::CellNotPlain), read_as(cell, ReadAs::Each { words }));
}

#[test]
fn letters_and_columns_of_spaces_are_no_table() {
    let letter = "Dear parents,\n\non Tuesday we go to Mill Lane to look at leaves. Please send a \
                  coat, boots, and a\nsnack. We are back by noon, in time for lunch.\n\n\
                  Kind regards,\nMrs Ahmed\n";
    let spaces =
        "kind    edge      lobes\nhazel   toothed   unlobed\nivy     smooth    lobed\n";
    for (text, wanted) in [(letter, Instead::Writing), (spaces, Instead::LinedUp)] {
        match csv(text) {
            Err(TableError::NotATable { what, .. }) => assert_eq!(what, wanted),
            read => panic!("{read:?}"),
        }
    }
}

#[test]
fn sheets_that_are_changed_round_are_not_read() {
    let file = |name: &str, text: &str| {
        Some(Source { name: name.to_owned(), bytes: text.as_bytes().to_vec() })
    };
    let table = file("finds.csv", "kind,edge\nhazel,toothed\nivy,smooth\n").unwrap();
    let characters = "character,question,states,unit\nedge,Is it {}?,\"toothed, smooth\",\n";
    let kinds = "kind,scientific name,how often,caution\nhazel,Corylus avellana,often,\n";
    let wrong = |sources: Sources| read(&sources, &Settings::default()).unwrap_err();
    let other =
        |name: &str, is, wanted| TableError::OtherPart { name: name.into(), is, wanted };
    let told = wrong(Sources {
        table: table.clone(),
        kinds: file("a.csv", characters),
        ..Sources::default()
    });
    assert_eq!(told, other("a.csv", "characters", "kinds"));
    let told = wrong(Sources {
        table: table.clone(),
        about: file("b.csv", kinds),
        ..Sources::default()
    });
    assert_eq!(told, other("b.csv", "kinds", "about"));
}

/// Tables of many shapes that are fine, some of them nearly like a slip.
#[test]
fn tables_that_are_fine_are_not_accused() {
    let fine = [
        // One word may be heading and state, beside others that are not.
        "leaf,lobed,edge\nhazel,no,toothed\noak,lobed,smooth\nivy,lobed,smooth\n",
        "kind,lobed,toothed\nhazel,unlobed,toothed\noak,lobed,smooth\n",
        // Yes and no in every column.
        "kind,spines,lobes,hairs\nhazel,no,no,yes\noak,no,yes,no\nholly,yes,yes,no\n",
        // The same words in all columns, once in each row.
        "bird,head,back,belly\na,red,green,blue\nb,green,blue,red\nc,blue,red,green\n",
        // One colour all over.
        "shell,outside,inside,rim\na,white,white,white\nb,brown,white,brown\nc,brown,pink,pink\n",
        // Numbers alone, and one row of them.
        "kind,legs,wings,eyes\nant,6,0,2\nspider,8,0,8\nbee,6,4,5\n",
        "kind,legs,wings\nant,6,0\n",
        // Words in one column, a length in the other; a blank and a dash are there.
        "kind,edge,stalk length\nhazel,toothed,6-14 mm\nlime,,30-50 mm\nivy,smooth,n/a\n",
        // Kinds that are called by numbers, and by letters.
        "kind,edge\n1,toothed\n2,smooth\n3,spiny\n",
        "number,edge,lobes\n1,toothed,yes\n2,toothed,no\n3,spiny,no\n",
        // Long names, long states, months and small marks of inches.
        "kind,edge\nlarge white butterfly with black tips on it,wavy\nsmall one,plain\n",
        "kind,edge\nhazel,with one big tooth on each side\nivy,with many small teeth all round it\n",
        "kind,flowers\nhazel,February\nlime,July\nivy,Sept\n",
        "kind,height\nhazel,5\"\nlime,7\"\n",
        "kind,what the children said\nhazel,soft\nivy,shiny\n",
        // Accents as they should be, curly marks that hold together, and a last row with words
        // in it.
        "Art,Rand\nBärlauch,glatt\nJakobs-Greiskraut,gezähnt\nÉrable,gelappt\n",
        "kind,edge\nhazel,“toothed”\nivy,“smooth”\n",
        "kind,edge\nhazel,toothed\nmean bracket,smooth\nsum-of-all,spiny\n",
        // x is one of several letters that are states.
        "kind,shape\nhazel,x\nivy,z\nlime,\n",
        // In Polish “i” is “and”.
        "gatunek,kolor,brzeg\ndąb,zielony i żółty,\nlipa,zielony i brązowy,gładki\nklon,żółty i czerwony,ząbkowany\n",
    ];
    let slips = [
        Code::NoHeadings,
        Code::Swapped,
        Code::LettersSpoilt,
        Code::QuotationNotClosed,
        Code::LeftOut,
        Code::CellNotUnderstood,
    ];
    for text in fine {
        let read = csv(text).unwrap_or_else(|error| panic!("{text}{error:?}"));
        let accused: Vec<_> =
            read.findings.iter().filter(|finding| slips.contains(&finding.code)).collect();
        assert!(accused.is_empty(), "{text}{accused:?}");
        let beside = |fact: &Fact| {
            matches!(fact, Fact::Cell(OfCell::NotRecorded { beside_marks: true, .. }))
        };
        let asked = told(&read, Code::Unknown).iter().any(beside);
        assert!(!asked, "{text}");
        assert_eq!(read.matrix.taxa().len(), text.lines().count() - 1, "{text}");
    }
}

/// The tables that come with the program were looked at by people.
#[test]
fn the_tables_of_the_repository_are_not_accused() {
    let scenarios = concat!(env!("CARGO_MANIFEST_DIR"), "/../spinney/scenarios");
    for name in [
        "hedge_walk/table.csv",
        "hedge_walk/table_with_spine.csv",
        "hedge_walk/strangers.csv",
        "pond_tray/table.csv",
        "pasta_shapes/table.csv",
    ] {
        let text = std::fs::read_to_string(format!("{scenarios}/{name}")).unwrap();
        let read = csv(&text).unwrap();
        let left = [Code::LeftOut, Code::NoHeadings, Code::Swapped, Code::LettersSpoilt];
        let accused: Vec<_> =
            read.findings.iter().filter(|finding| left.contains(&finding.code)).collect();
        assert!(accused.is_empty(), "{name}: {accused:?}");
    }
}
