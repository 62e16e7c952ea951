//! Tables with a row a leaf, as groups type them and as `spinney measure` writes them. Invented.

use spinney_model::{
    Cell, CharacterIx, Code, Fact, OfCell, OfSheet, Quantity, Scale, Seen, Share, StateIx,
    TableError, TaxonIx, Unit, Value,
};

use super::super::{RowsAre, Settings, Source, Sources, TableRead, read, write};

const HEDGE: &str = "\
tree,kind,leaf,which part,blade length (cm),edge,leaflets
big one,hazel,1,sun,8,toothed,1
big one,Hazel,2,shade,\"11,5\",toothed or double-toothed,1
by gate,hazel,3,sun,9.2,double-toothed,1
by gate,ash,1,,25,toothed,9
,ash,2,,22,toothed,11
,ash,3,,?,toothed,9
";

fn leaves(text: &str) -> Result<TableRead, TableError> {
    let table = Source { name: "hedge.csv".to_owned(), bytes: text.as_bytes().to_vec() };
    let settings = Settings { rows: RowsAre::Finds, ..Settings::default() };
    read(&Sources { table, ..Sources::default() }, &settings)
}

fn cell(read: &TableRead, kind: usize, character: usize) -> &Cell {
    read.matrix.cell(TaxonIx(kind), CharacterIx(character))
}

fn mm(number: i64) -> Quantity {
    Quantity::from_thousandths(number * 1000)
}

#[test]
fn leaves_become_ranges_counts_and_states_of_their_kinds() {
    let read = leaves(HEDGE).expect("a table");
    let names: Vec<&str> = read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
    assert_eq!(names, ["hazel", "ash"]);
    let about: Vec<&str> = read.matrix.characters().iter().map(|at| at.name.as_str()).collect();
    assert_eq!(about, ["blade length", "edge", "leaflets"]);
    let seen = |on, plants| Some(Seen { on, plants });
    let range = |low, high| Value::Range { low: mm(low), high: mm(high) };
    assert_eq!(*cell(&read, 0, 0), Cell { value: range(80, 115), seen: seen(3, Some(2)) });
    // Of two leaves of ash nobody wrote which tree it is.
    assert_eq!(*cell(&read, 1, 0), Cell { value: range(220, 250), seen: seen(2, None) });
    let half = Share::new(1, 2);
    let edges = Value::States(vec![(StateIx(0), half), (StateIx(1), half)]);
    assert_eq!(*cell(&read, 0, 1), Cell { value: edges, seen: seen(3, Some(2)) });
    let counts = Value::Counts(vec![(9, Share::new(2, 3)), (11, Share::new(1, 3))]);
    assert_eq!(*cell(&read, 1, 2), Cell { value: counts, seen: seen(3, None) });
    let finds = read.specimens.as_ref().expect("a row a leaf");
    let second = &finds.written[1];
    let written = [&second.plant, &second.find, &second.part].map(String::as_str);
    assert_eq!(
        (written, second.kind, second.at.row),
        (["big one", "2", "shade"], TaxonIx(0), 2)
    );
    assert_eq!(finds.finds.taxa().len(), 6);
    let not_asked = Fact::Sheet(OfSheet::FindColumns {
        headings: ["tree", "leaf", "which part"].map(str::to_owned).into(),
    });
    assert!(read.findings.iter().any(|finding| finding.fact == not_asked), "{read:?}");
}

#[test]
fn a_name_beside_a_kind_is_what_the_leaf_is_called_wherever_it_stands() {
    for text in [
        "name,kind,lobes\nA1,hazel,1\nA2,hazel,1\nB1,oak,7\n",
        "kind,name,lobes\nhazel,A1,1\nhazel,A2,1\noak,B1,7\n",
    ] {
        let read = leaves(text).expect("a table");
        let names: Vec<&str> =
            read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
        assert_eq!(names, ["hazel", "oak"]);
        assert_eq!(read.matrix.characters().len(), 1);
        let finds = read.specimens.expect("a row a leaf").written;
        assert_eq!(finds[1].find, "A2");
    }
}

#[test]
fn a_second_column_that_says_which_find_it_is_is_never_asked() {
    for text in [
        "kind,species,no.,leaf,tree,plant,lobes\nhazel,Corylus,1,a,big,x,1\noak,Quercus,2,b,old,y,7\n",
        "species,kind,leaf,no.,plant,tree,lobes\nCorylus,hazel,a,1,x,big,1\nQuercus,oak,b,2,y,old,7\n",
    ] {
        let read = leaves(text).expect("a table");
        let names: Vec<&str> =
            read.matrix.taxa().iter().map(|taxon| taxon.name.as_str()).collect();
        assert_eq!(names, ["hazel", "oak"]);
        let about: Vec<&str> =
            read.matrix.characters().iter().map(|at| at.name.as_str()).collect();
        assert_eq!(about, ["lobes"]);
        let told = read.findings.iter().find_map(|finding| match &finding.fact {
            Fact::Sheet(OfSheet::FindColumns { headings }) => Some(headings.len()),
            _ => None,
        });
        assert_eq!(told, Some(5));
    }
}

#[test]
fn too_many_finds_are_told_as_finds_and_not_as_kinds() {
    // So many columns that finds times columns are too many, though few cells have something in them.
    let columns: String = (0..120).map(|at| format!(",c{at}")).collect();
    let row = format!("hazel,1{}\n", ",".repeat(119));
    let read = leaves(&format!("kind{columns}\n{}", row.repeat(9_000))).expect("a table");
    assert_eq!(read.matrix.taxa().len(), 1);
    let told = read.findings.iter().find_map(|finding| match finding.fact {
        Fact::Sheet(OfSheet::TooManyFinds { most, row }) => Some((most, row)),
        _ => None,
    });
    let (most, row) = told.expect("it is said");
    assert_eq!(row as usize, most + 2, "the heading is the first row");
    assert_eq!(read.specimens.expect("a row a leaf").written.len(), most);
}

#[test]
fn what_leaves_come_to_is_written_as_a_table_of_kinds_and_read_again() {
    let once = leaves(HEDGE).expect("a table");
    let sheets = write(&once.matrix);
    let source = |name: &str, text: &str| Source { name: name.into(), bytes: text.into() };
    let again = read(
        &Sources {
            table: source("table.csv", &sheets.table),
            characters: Some(source("characters.csv", &sheets.characters)),
            kinds: Some(source("kinds.csv", &sheets.kinds)),
            about: Some(source("about.csv", &sheets.about)),
        },
        &Settings::default(),
    );
    assert_eq!(again.expect("a table").matrix, once.matrix, "{}", sheets.table);
    assert!(sheets.table.contains("(3 seen on 2 plants)"), "{}", sheets.table);
}

#[test]
fn measured_leaves_are_read_as_soon_as_their_kinds_are_typed() {
    let measured = "picture,leaf,dpi,scale,blade length (mm),± blade length,blade area (mm²),\
        length to width,lobes,teeth in a cm,notes,kind\n\
        oak.png,1,300,of file,91.2,0.3,3010,1.8,7,0,,oak\n\
        oak.png,2,300,of file,84,0.3,2900,1.9,-,0,holes,oak\n\
        oak.png,3,300,of file,61,0.3,2200,1.5,-,?,,beech\n\
        oak.png,4,300,of file,40,0.3,1200,1.4,3,2.5,,?\n";
    let read = leaves(measured).expect("a table");
    let about: Vec<&str> = read.matrix.characters().iter().map(|at| at.name.as_str()).collect();
    assert_eq!(about, ["blade length", "length to width", "lobes", "teeth in a cm"]);
    let unit = |at: usize| match read.matrix.character(CharacterIx(at)).scale {
        Scale::Measure { unit, .. } => Some(unit),
        _ => None,
    };
    assert_eq!([0, 1, 3].map(unit), [Unit::Millimetres, Unit::Ratio, Unit::Unstated].map(Some));
    assert_eq!(read.matrix.taxa().len(), 2);
    // A dash is what a leaf has none of.
    assert_eq!(cell(&read, 1, 2).value, Value::DoesNotApply);
    assert!(matches!(cell(&read, 0, 2).value, Value::Counts(_)));
    let facts: Vec<&Fact> = read.findings.iter().map(|finding| &finding.fact).collect();
    let is = |wanted: fn(&Fact) -> bool| facts.iter().any(|fact| wanted(fact));
    assert!(is(|fact| matches!(
        fact,
        Fact::Cell(OfCell::SomeHaveNone { none: 1, finds: 2, .. })
    )));
    assert!(is(|fact| matches!(
        fact,
        Fact::Sheet(OfSheet::MeasuringColumns { columns: 5, .. })
    )));
    assert!(is(|fact| matches!(fact, Fact::Sheet(OfSheet::OfNoKind { rows: 1, .. }))));
    assert!(!is(|fact| matches!(fact, Fact::Cell(OfCell::ReadAs { .. }))), "{facts:#?}");
    assert!(!is(|fact| matches!(fact, Fact::Column(_))), "{facts:#?}");
    let (without, _) = measured.split_once('\n').expect("lines");
    let nameless = measured.replace(without, &without.replace(",kind", ",colour"));
    let error = leaves(&nameless).expect_err("nothing says what they are");
    assert_eq!(error, TableError::NoKindColumn { name: "hedge.csv".to_owned() });
}

#[test]
fn what_is_known_of_measured_columns_is_what_is_written_of_them() {
    let written = crate::measured::csv(&[]);
    let headings: Vec<&str> = written.trim().split(',').collect();
    let of_measured = super::MEASURED.iter().map(|[name, ..]| *name);
    for name in of_measured.chain(super::OF_MEASURING) {
        assert!(headings.contains(&name), "{name}: {headings:?}");
    }
    let known = |heading: &&str| {
        let listed = super::MEASURED.iter().any(|[name, ..]| name == heading);
        let unit = heading.ends_with(')');
        listed || unit || super::OF_MEASURING.contains(heading) || heading.starts_with('±')
    };
    let others: Vec<&str> = headings.iter().copied().filter(|one| !known(one)).collect();
    // These are words, or say which leaf it is, or are seen in scans alone.
    let words = [
        "picture",
        "leaf",
        "solidity",
        "roundness",
        "leaflets arranged",
        "leaflet at end",
        "lobes arranged",
        "edge",
        "base",
        "base sides",
        "tip",
        "side veins arranged",
    ];
    assert_eq!(others, words);
}

#[test]
fn a_ratio_is_that_of_each_leaf() {
    let of = |name: &str, text: &str| Source { name: name.into(), bytes: text.into() };
    let table = "kind,stalk length (mm),blade length (mm)\nlime,20,40\nlime,40,100\nelm,4,80\n";
    let sources = Sources {
        table: of("table", table),
        characters: Some(of(
            "characters",
            "character,ratio of\nstalk by blade,stalk length / blade length\n",
        )),
        ..Sources::default()
    };
    let settings = Settings { rows: RowsAre::Finds, ..Settings::default() };
    let read = read(&sources, &settings).expect("a table");
    let thousandths = |number| Quantity::from_thousandths(number);
    let range = Value::Range { low: thousandths(400), high: thousandths(500) };
    assert_eq!(cell(&read, 0, 2).value, range);
}

#[test]
fn a_cell_that_is_not_understood_is_told_with_its_own_row_and_loses_no_other() {
    let read =
        leaves("kind,blade length (mm)\nash,9 or so\nash,80\nash,90\n").expect("a table");
    assert_eq!(cell(&read, 0, 0).seen, Some(Seen::on(2)));
    let odd: Vec<_> =
        read.findings.iter().filter(|one| one.code == Code::CellNotUnderstood).collect();
    assert_eq!(odd.len(), 1);
    assert_eq!(odd[0].place.to_string(), "hedge.csv!B2");
}

#[test]
fn a_table_with_kinds_on_several_rows_is_asked_about_once() {
    let table = Source { name: "hedge.csv".to_owned(), bytes: HEDGE.as_bytes().to_vec() };
    // The names of the kinds come first in any other table.
    let text = String::from_utf8(table.bytes.clone()).expect("text");
    let turned: String = text
        .lines()
        .map(|line| {
            let (tree, rest) = line.split_once(',').expect("cells");
            let (kind, rest) = rest.split_once(',').expect("cells");
            format!("{kind},{tree},{rest}\n")
        })
        .collect();
    let table = Source { bytes: turned.into_bytes(), ..table };
    let read = read(&Sources { table, ..Sources::default() }, &Settings::default());
    let findings = read.expect("a table").findings;
    let twice: Vec<_> = findings.iter().filter(|one| one.code == Code::KindTwice).collect();
    assert_eq!(twice.len(), 1, "{twice:#?}");
    let Fact::Sheet(OfSheet::KindsOnSeveralRows { kinds, kind, rows, called, .. }) =
        &twice[0].fact
    else {
        panic!("{twice:#?}")
    };
    let said = (*kinds, kind.as_str(), *rows, called.as_str());
    assert_eq!(said, (2, "hazel", 3, "Hazel (2)"));
}

#[test]
fn whole_numbers_of_a_measure_stay_one() {
    let rows: String = (0..80).map(|at| format!("gull,{}\n", 3000 + 7 * at)).collect();
    let read = leaves(&format!("kind,weight\n{rows}")).expect("a table");
    let scale = &read.matrix.character(CharacterIx(0)).scale;
    assert!(matches!(scale, Scale::Measure { .. }), "{scale:?}");
    assert_eq!(cell(&read, 0, 0).seen, Some(Seen::on(80)));
}
