//! A teacher measures leaves in a scan, names them and takes them into finds and table.

use crate::at_the_desk::{AtTheDesk, hidden};
use fastrand::Rng;
use spinney_desk::{Desk, Request, Upload};
use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Edge, Leaf, Plan, Shape};
use spinney_model::limits::{PICTURE_SIDE, SCREENS_LEAVES};

/// Leaves in a row, `lengths` in mm, as a scan of 100 dots per inch that says so, or not.
fn scan(lengths: &[f64], says: bool) -> Upload {
    let leaves: Vec<Leaf> = lengths
        .iter()
        .map(|length| {
            let mut rng = Rng::with_seed(7);
            let plan = Plan::seeded(&mut rng, Shape::Ovate, Edge::Smooth, 0);
            Plan { length: *length, half_width: 0.25, bend: 0.0, stalk: 12.0, ..plan }.leaf()
        })
        .collect();
    let apart = 30.0;
    let placed = leaves.iter().enumerate();
    let placed = placed.map(|(at, leaf)| (leaf, [(at as f64 + 0.7) * apart, 90.0], 0.0));
    let page = Page {
        size: ((lengths.len() as f64 + 0.5) * apart, 120.0),
        dpi: 100.0,
        leaves: placed.collect(),
        ..Page::of_one(&leaves[0], 0.0)
    };
    let (width, height) = page.pixels();
    png(&page.scanned(&mut Rng::with_seed(1)), (width as u32, height as u32), says)
}

/// Two toothed leaves and a lobed one, in a row.
fn scan_of_two_kinds() -> Upload {
    let forms = [(Edge::Toothed, 0), (Edge::Toothed, 0), (Edge::Smooth, 5)];
    let leaves = forms.map(|(edge, lobes)| {
        let mut rng = Rng::with_seed(7);
        let shape = if lobes > 0 { Shape::Oblong } else { Shape::Ovate };
        let plan = Plan::seeded(&mut rng, shape, edge, lobes);
        Plan { length: 60.0, bend: 0.0, stalk: 12.0, ..plan }.leaf()
    });
    let placed = leaves.iter().enumerate();
    let placed = placed.map(|(at, leaf)| (leaf, [(at as f64 + 0.6) * 65.0, 90.0], 0.0));
    let page = Page {
        size: (205.0, 120.0),
        dpi: 254.0,
        leaves: placed.collect(),
        ..Page::of_one(&leaves[0], 0.0)
    };
    let (width, height) = page.pixels();
    let mut upload =
        png(&page.scanned(&mut Rng::with_seed(1)), (width as u32, height as u32), false);
    upload.name = "two kinds.png".into();
    upload
}

fn png(pixels: &[u8], (width, height): (u32, u32), says: bool) -> Upload {
    let mut bytes = Vec::new();
    let mut encoder = png::Encoder::new(&mut bytes, width, height);
    encoder.set_color(png::ColorType::Rgb);
    let (xppu, yppu, unit) = (3937, 3937, png::Unit::Meter);
    encoder.set_pixel_dims(says.then_some(png::PixelDimensions { xppu, yppu, unit }));
    let mut writer = encoder.write_header().expect("a header");
    writer.write_image_data(pixels).expect("pixels");
    writer.finish().expect("an end");
    Upload { field: "scan".into(), name: "scan.png".into(), bytes }
}

/// A page of leaves, with the fields that its form sends.
struct Measured {
    page: String,
    fields: Vec<(String, String)>,
}

impl Measured {
    fn of(page: String) -> Self {
        let fields = hidden(&page, "class=\"measured\"");
        Self { page, fields }
    }

    fn with<'f>(&'f self, more: &[(&'f str, &'f str)]) -> Vec<(&'f str, &'f str)> {
        let fields = self.fields.iter().map(|(name, text)| (name.as_str(), text.as_str()));
        fields.chain(more.iter().copied()).collect()
    }
}

fn measures(teacher: &mut AtTheDesk, scan: Upload, typed: &[(&str, &str)]) -> Measured {
    let page = teacher.upload("/measure/leaves", typed, scan);
    assert_eq!(page.status, 200, "{}", String::from_utf8_lossy(&page.body));
    Measured::of(String::from_utf8(page.body).expect("a page is text"))
}

fn does_not(teacher: &mut AtTheDesk, scan: Upload, typed: &[(&str, &str)]) -> String {
    let page = teacher.upload("/measure/leaves", typed, scan);
    assert_eq!(page.status, 422);
    String::from_utf8(page.body).expect("a page is text")
}

#[test]
fn leaves_are_measured_named_and_taken() {
    let mut teacher = AtTheDesk::empty();
    assert!(teacher.get("/finds").contains("href=\"/measure\""));
    assert!(teacher.get("/measure").contains("enctype=\"multipart/form-data\""));
    let found = measures(&mut teacher, scan(&[52.0, 40.0, 60.0], true), &[]);
    assert!(found.page.contains("3 leaves were found"));
    assert!(found.page.contains("At 100 dots per inch, as the file says."));
    let names = [("name-1", "hazel"), ("name-2", "?"), ("name-3", " Hazel ")];
    let look = teacher.look("/measure/look", &found.with(&names));
    assert!(look.contains("2 leaves: 1, 3. A new kind. Leaf 1 becomes its picture."));
    assert!(look.contains("52–60 mm, from 2 leaves.") && look.contains("1 leaf has no name"));
    assert!(!look.contains("One leaf is not a range"));
    assert_eq!(teacher.desk.head(), 0, "nothing is kept yet");
    let table = teacher.post("/do/take-leaves", &found.with(&names));
    assert!(table.contains("52-60 mm (2 seen)") && table.contains("blade width"));
    assert!(table.contains("<summary dir=\"auto\">measured</summary>"), "who says so");
    assert_eq!(teacher.desk.head(), 1, "one step, undone in one go");
    assert_eq!(teacher.pictures.len(), 3, "one of the kind, and a small one of each leaf");
    let names: Vec<String> =
        teacher.pictures.iter().map(|picture| Desk::name_of_picture(picture)).collect();
    let finds = teacher.get("/finds");
    assert_eq!(names.iter().filter(|name| finds.contains(*name)).count(), 1, "its picture");
    assert!(teacher.get("/done").contains("Leaves were measured in a scan: hazel"));
    teacher.undo("/finds");
    assert_eq!(teacher.desk.kinds(), 0);
}

#[test]
fn each_leaf_is_kept_with_what_is_typed_of_it() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan(&[52.0, 60.0], true), &[]);
    let typed = [
        ("name-1", "hazel"),
        ("name-2", "hazel"),
        ("plant-1", "by the gate"),
        ("plant-2", "by the pond"),
        ("part-2", "shade"),
        ("where", "school hedge"),
    ];
    let look = teacher.look("/measure/look", &found.with(&typed));
    assert_eq!(look.matches("value=\"by the pond\"").count(), 1, "it travels with the form");
    let table = teacher.post("/do/take-leaves", &found.with(&typed));
    assert!(table.contains("52-60 mm (2 seen on 2 plants)"), "{table}");
    let leaves = teacher.get("/leaves");
    assert!(
        leaves.contains("by the pond · shade · school hedge · number 2 in a scan"),
        "{leaves}"
    );
    let lines = teacher.lines.concat();
    assert!(!String::from_utf8_lossy(&lines).contains("scan.png"), "often a child's name");
    let leaf = teacher.get("/leaves/2");
    assert!(leaf.contains("60 ± 0.5 mm"), "{leaf}");
    assert!(leaf.contains("src=\"/picture/"), "with its picture");
    teacher.undo("/finds");
    assert!(teacher.get("/leaves").contains("No leaf is kept by itself yet"), "one step");
}

/// The drawing is the face of its kind on the screens and in what is printed.
#[test]
fn a_leaf_in_lines_stands_for_its_kind_where_the_teacher_ticks_it() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan(&[52.0, 60.0], true), &[]);
    let names = [("name-1", "hazel"), ("name-2", "oak"), ("draw", "draw-1")];
    let look = teacher.look("/measure/look", &found.with(&names[..2]));
    assert_eq!(look.matches("class=\"leaf drawn\"").count(), 2, "both are offered");
    teacher.post("/do/take-leaves", &found.with(&names));
    let finds = teacher.get("/finds");
    assert_eq!(finds.matches("<img").count(), 1, "oak has a photograph");
    assert_eq!(finds.matches("class=\"leaf drawn\"").count(), 1, "hazel is drawn");
    let hazel = teacher.get("/finds/1");
    assert!(hazel.contains("drawn in lines from a scan") && hazel.contains("drawing-away"));
    assert!(teacher.get("/done").contains("Leaves were measured in a scan: hazel"));
    let before = hazel.split("class=\"leaf drawn\"").nth(1).expect("a drawing").to_owned();
    let page = hidden(&hazel, "/do/drawing-away");
    let page: Vec<_> = page.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect();
    // A leaf more brings no photograph that would stand before the drawing.
    let second = measures(&mut teacher, scan(&[55.0], true), &[]);
    let look = teacher.look("/measure/look", &second.with(&names[..1]));
    assert!(
        !look.contains("becomes its picture") && look.contains("instead of the one it has")
    );
    teacher.post("/do/take-leaves", &second.with(&[names[0], names[2]]));
    assert_eq!(teacher.get("/finds").matches("<img").count(), 1);
    let page = teacher.refused("/do/drawing-away", &page);
    assert!(page.contains("Someone changed this drawing in another window."), "{page}");
    teacher.undo("/finds");
    teacher.post("/do/drawing-away", &[("kind", "1")]);
    let now = teacher.get("/finds/1");
    assert!(!now.contains("drawn in lines from a scan") && !now.contains("drawing-away"));
    let now = now.split("class=\"leaf drawn\"").nth(1).unwrap_or_default();
    assert_ne!(
        before.split("</svg>").next(),
        now.split("</svg>").next(),
        "its table, or nothing"
    );
}

/// Dots that are half as large make a leaf, and its drawing, half as long.
#[test]
fn a_drawing_is_as_large_as_the_dots_say() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan(&[52.0], false), &[]);
    let names = [("name-1", "hazel")];
    let look = teacher.look("/measure/look", &found.with(&names));
    assert!(!look.contains("leaf drawn"), "nobody knows how large it is");
    let high = |teacher: &mut AtTheDesk, dpi: &str| {
        let typed = [("name-1", "hazel"), ("dpi", dpi)];
        let page = Measured::of(teacher.look("/measure/leaves", &found.with(&typed)));
        let drawn = page.fields.iter().find(|(name, _)| name == "drawn-1");
        let frame = drawn.expect("it is drawn").1.split('|').next().map(str::to_owned);
        let numbers = frame.expect("a frame");
        numbers.split(' ').nth(3).and_then(|high| high.parse::<f64>().ok()).expect("a number")
    };
    let (whole, half) = (high(&mut teacher, "100"), high(&mut teacher, "200"));
    // Blade and stalk, and paper around.
    assert!((6400.0..7400.0).contains(&whole), "{whole}");
    assert!((half - whole / 2.0).abs() <= 1.0, "{half}");
}

#[test]
fn one_leaf_is_not_a_range_and_a_second_scan_adds_to_it() {
    let mut teacher = AtTheDesk::empty();
    let names = [("name-1", "hazel")];
    let first = measures(&mut teacher, scan(&[52.0], true), &[]);
    let look = teacher.look("/measure/look", &first.with(&names));
    assert!(look.contains("52 mm, from 1 leaf.") && look.contains("One leaf is not a range"));
    teacher.post("/do/take-leaves", &first.with(&names));
    let second = measures(&mut teacher, scan(&[60.0], true), &[]);
    assert!(second.page.contains("<option value=\"hazel\">"), "it is offered");
    let look = teacher.look("/measure/look", &second.with(&names));
    assert!(look.contains("This kind is there already."));
    assert!(
        look.contains("52–60 mm, from 2 leaves. (52 mm (1 seen) was measured before, 60 now.)")
    );
    assert!(
        teacher.post("/do/take-leaves", &second.with(&names)).contains("52-60 mm (2 seen)")
    );
}

#[test]
fn what_somebody_typed_is_shown_and_stays_unless_the_teacher_ticks_it() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste("kind,blade length (mm)\nhazel,30-35\n");
    let found = measures(&mut teacher, scan(&[52.0], true), &[]);
    let names = [("name-1", "hazel")];
    let look = teacher.look("/measure/look", &found.with(&names));
    assert!(look.contains("Somebody typed “30-35”, and that stays."));
    let table = teacher.post("/do/take-leaves", &found.with(&names));
    assert!(table.contains("30-35"));
    let found = measures(&mut teacher, scan(&[50.0], true), &[]);
    let ticked = [("name-1", "hazel"), ("instead", "instead-1-0")];
    let table = teacher.post("/do/take-leaves", &found.with(&ticked));
    assert!(table.contains("50-52 mm (2 seen)") && !table.contains("value=\"30-35\""));
}

#[test]
fn whoever_was_overtaken_sees_what_would_be_taken_now() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste("kind,blade length (mm)\nhazel,\n");
    let found = measures(&mut teacher, scan(&[52.0], true), &[]);
    let names = [("name-1", "hazel")];
    let other = measures(&mut teacher, scan(&[50.0], true), &[]);
    teacher.post("/do/take-leaves", &other.with(&names));
    let page = teacher.refused("/do/take-leaves", &found.with(&names));
    assert!(page.contains("Something changed in another window"));
    assert!(page.contains("50–52 mm, from 2 leaves."), "with the leaf of the other");
    assert_eq!(teacher.desk.head(), 2);
}

#[test]
fn the_same_scan_brings_no_leaf_twice() {
    let mut teacher = AtTheDesk::empty();
    let (one, both) = ([("name-1", "hazel")], [("name-1", "hazel"), ("name-2", "oak")]);
    let first = measures(&mut teacher, scan(&[52.0, 40.0], true), &[]);
    teacher.post("/do/take-leaves", &first.with(&one));
    let again = measures(&mut teacher, scan(&[52.0, 40.0], true), &[]);
    let page = teacher.refused("/do/take-leaves", &again.with(&one));
    assert!(page.contains("All of these leaves are here already."), "{page}");
    let look = teacher.look("/measure/look", &again.with(&both));
    assert!(look.contains("1 leaf of this scan is here already and is not taken again."));
    assert!(!look.contains("has no name"));
    let table = teacher.post("/do/take-leaves", &again.with(&both));
    assert!(table.contains("52 mm (1 seen)") && table.contains("40 mm (1 seen)"), "{table}");
}

#[test]
fn without_a_scale_there_are_shapes_alone_until_somebody_types_it() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan(&[52.0], false), &[]);
    assert!(found.page.contains("Shape and ratios only") && !found.page.contains(" mm</dd>"));
    let names = [("name-1", "hazel")];
    let look = teacher.look("/measure/look", &found.with(&names));
    assert!(look.contains("no length goes into the table"));
    let finds = teacher.post("/do/take-leaves", &found.with(&names));
    assert!(finds.contains("hazel") && teacher.pictures.len() == 2);
    let typed = [("name-1", "hazel"), ("dpi", "100")];
    let again = Measured::of(teacher.look("/measure/leaves", &found.with(&typed)));
    assert!(again.page.contains("At 100 dots per inch, as you said."));
    assert!(again.page.contains("value=\"hazel\""), "what was typed is still there");
    assert!(again.page.contains("<dd>52.1 ± 0.5 mm</dd>"), "{}", again.page);
    let odd = [("name-1", "hazel"), ("dpi", "many")];
    let page = teacher.refused("/measure/leaves", &found.with(&odd));
    assert!(
        page.contains("“many” is not a number of dots per inch.") && page.contains("hazel")
    );
}

#[test]
fn each_trouble_is_one_sentence_and_a_remedy() {
    let mut teacher = AtTheDesk::empty();
    let text = Upload { field: "scan".into(), name: "a.png".into(), bytes: b"no".to_vec() };
    let page = does_not(&mut teacher, text, &[]);
    assert!(page.contains("a.png is not a picture that can be read here"));
    let page = does_not(&mut teacher, png(&[250; 3 * 90 * 60], (90, 60), true), &[]);
    assert!(page.contains("Nothing stands out from the ground in scan.png."));
    let mut large = png(&[250; 3], (1, 1), true);
    large.bytes[16..20].copy_from_slice(&(PICTURE_SIDE + 1).to_be_bytes());
    let page = does_not(&mut teacher, large, &[]);
    assert!(page.contains("not a picture") || page.contains("too large"));
    let page = does_not(&mut teacher, scan(&[30.0], true), &[("dpi", "3")]);
    assert!(page.contains("“3” is not a number of dots per inch."));
    let page = teacher.refused("/measure/leaves", &[]);
    assert!(page.contains("There is no picture to measure."));
    let page = teacher.refused("/do/take-leaves", &[]);
    assert!(page.contains("There is no picture to measure."));
    assert!(teacher.lines.is_empty());
}

#[test]
fn a_column_of_words_stays_one() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste("kind,blade length\nhazel,long\noak,short\n");
    let found = measures(&mut teacher, scan(&[52.0], true), &[]);
    let look = teacher.look("/measure/look", &found.with(&[("name-1", "hazel")]));
    assert!(look.contains("The column of this name does not hold lengths"));
    let table = teacher.post("/do/take-leaves", &found.with(&[("name-1", "hazel")]));
    assert!(table.contains("value=\"long\"") && !table.contains("52 mm (1 seen)"));
    assert!(table.contains("blade width"), "the others come in");
}

#[test]
fn a_page_of_leaves_has_no_link_that_loses_them_and_whoever_loads_it_anew_begins_again() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan(&[52.0], true), &[]);
    assert!(!found.page.contains("language=de"), "it would lose what was found");
    for path in ["/measure/leaves", "/measure/look", "/measure/leaf", "/measure/back"] {
        let again = teacher.get(path);
        assert!(again.contains("id=\"scan\"") && again.contains("language=de"), "{path}");
    }
}

#[test]
fn a_scan_of_large_dots_says_so_once_at_the_top() {
    let mut teacher = AtTheDesk::empty();
    let coarse = |page: &str| page.matches("These dots are too large to see the edge").count();
    let scan = || scan(&[52.0], false);
    for (dpi, times) in [("149", 1), ("150", 0)] {
        let found = measures(&mut teacher, scan(), &[("dpi", dpi)]);
        assert_eq!(coarse(&found.page), times, "{dpi}");
    }
    let found = measures(&mut teacher, scan(), &[]);
    assert_eq!(coarse(&found.page), 0, "nobody knows how large they are");
}

#[test]
fn a_leaf_that_goes_over_the_edge_is_told_of() {
    let mut teacher = AtTheDesk::empty();
    let image = image::RgbImage::from_fn(300, 300, |x, y| {
        let leaf = (f64::from(x) - 20.0).hypot(f64::from(y) - 150.0) < 60.0;
        image::Rgb(if leaf { [60, 110, 40] } else { [244, 243, 238] })
    });
    let found = measures(&mut teacher, png(image.as_raw(), (300, 300), true), &[]);
    assert!(
        found.page.contains("No leaf was found") && found.page.contains("away from the edges")
    );
    assert!(
        found.page.contains("1 thing that is only partly in the picture (lay it further in")
    );
    assert!(!found.page.contains("id=\"left-out\""), "nobody can say how long it is");
    assert!(!found.page.contains("measure-look") && found.page.contains("another-picture"));
}

#[test]
fn more_leaves_than_the_screen_takes_are_said() {
    let mut teacher = AtTheDesk::empty();
    let dots = many_dots(SCREENS_LEAVES + 1);
    let page = does_not(&mut teacher, dots, &[("dpi", "100")]);
    assert!(page.contains("41 leaves were found. This screen takes 40 at a time."));
    let found = measures(&mut teacher, many_dots(SCREENS_LEAVES), &[("dpi", "100")]);
    assert_eq!(found.page.matches("class=\"leaf-card\"").count(), SCREENS_LEAVES);
}

/// So many dark ellipses.
fn many_dots(count: usize) -> Upload {
    let (width, height) = (60 * 10_u32, 80 * (count as u32).div_ceil(10));
    let image = image::RgbImage::from_fn(width, height, |x, y| {
        let at = (y / 80 * 10 + x / 60) as usize;
        let (across, down) =
            ((f64::from(x % 60) - 30.0) / 18.0, (f64::from(y % 80) - 40.0) / 30.0);
        let dark = at < count && across.hypot(down) < 1.0;
        image::Rgb(if dark { [60, 110, 40] } else { [244, 243, 238] })
    });
    png(image.as_raw(), (width, height), true)
}

#[test]
fn nobody_has_to_name_every_leaf_but_one_at_least() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan(&[52.0, 40.0], true), &[]);
    let page = teacher.refused("/measure/look", &found.with(&[("name-1", "?")]));
    assert!(page.contains("No leaf has a name yet.") && page.contains("class=\"leaf-card\""));
    let page = teacher.refused("/do/take-leaves", &found.with(&[]));
    assert!(page.contains("No leaf has a name yet."));
}

#[test]
fn a_picture_is_measured_beside_the_clerk() {
    let upload =
        Request { files: vec![scan(&[30.0], true)], ..Request::post("/measure/leaves", &[]) };
    assert!(Desk::takes_long(&upload));
    assert!(!Desk::takes_long(&Request::get("/measure")));
}

#[test]
fn it_speaks_german() {
    let mut teacher = AtTheDesk::empty();
    let german = |request: Request| Request { languages: vec!["de".into()], ..request };
    let upload =
        Request { files: vec![scan(&[52.0], true)], ..Request::post("/measure/leaves", &[]) };
    let page = teacher.send(german(upload));
    let found = Measured::of(String::from_utf8(page.body).expect("a page is text"));
    assert!(
        found.page.contains("1 Blatt gefunden")
            && found.page.contains("Länge der Blattspreite")
    );
    teacher.send(german(Request::post("/do/take-leaves", &found.with(&[("name-1", "Hasel")]))));
    let table = teacher.get("/table");
    assert!(table.contains("Länge der Blattspreite") && table.contains("52 mm (1 seen)"));
    let english = measures(&mut teacher, scan(&[60.0], true), &[]);
    let table = teacher.post("/do/take-leaves", &english.with(&[("name-1", "Hasel")]));
    assert!(table.contains("52-60 mm (2 seen)"), "one column, one source, whoever measured");
    assert!(table.contains("Lappen") && !table.contains("Blättchen"));
    assert!(table.contains("id=\"h-5\""), "how it looks, in two columns");
    assert!(!table.contains("id=\"h-6\""), "no column came twice");
}

/// What the outlines say becomes columns where it tells the kinds apart, or where somebody ticks it.
#[test]
fn how_the_leaves_look_goes_into_the_table_where_it_is_ticked() {
    let mut teacher = AtTheDesk::empty();
    let found = measures(&mut teacher, scan_of_two_kinds(), &[("dpi", "254")]);
    let names = [("name-1", "hazel"), ("name-2", "hazel"), ("name-3", "oak")];
    let page = teacher.look("/measure/look", &found.with(&names));
    let box_of = |id: &str| {
        let tag = page.split('<').find(|tag| tag.contains(&format!("id=\"look-{id}\"")));
        tag.map(|tag| tag.contains("checked"))
    };
    assert_eq!(box_of("leaf-edge"), Some(true), "hazel is toothed, oak is smooth");
    assert_eq!(box_of("leaf-lobes"), Some(true));
    assert_eq!(box_of("leaf-form"), Some(false), "both are in one piece");
    assert_eq!(box_of("leaflets"), None, "nobody has any");
    let columns = |table: &str| -> Vec<bool> {
        ["edge", "lobes", "form of the leaf", "blade length"]
            .map(|name| {
                let mut heads = table.split("id=\"h-").skip(1);
                heads.any(|head| head.split("</th>").next().is_some_and(|it| it.contains(name)))
            })
            .to_vec()
    };
    let fields = hidden(&page, "/do/take-leaves");
    let fields: Vec<(&str, &str)> =
        fields.iter().map(|(name, text)| (name.as_str(), text.as_str())).chain(names).collect();
    // What was ticked travels to the names and back.
    let unticked: Vec<_> = fields.iter().copied().chain([("instead", "instead-1-0")]).collect();
    let names_again = teacher.look("/measure/leaves", &unticked);
    let carried = hidden(&names_again, "class=\"measured\"");
    let carried: Vec<(&str, &str)> =
        carried.iter().map(|(name, text)| (name.as_str(), text.as_str())).collect();
    assert!(
        carried.contains(&("offered", "leaf-edge"))
            && !carried.contains(&("look", "leaf-edge"))
    );
    assert!(carried.contains(&("instead", "instead-1-0")));
    let page_again = teacher.look("/measure/look", &[&carried[..], &names].concat());
    assert!(!page_again.contains("checked"), "nothing is ticked anew");
    let ticked = |ticks: &[(&'static str, &'static str)]| {
        let mut teacher = AtTheDesk::empty();
        teacher.post("/do/take-leaves", &[&fields[..], ticks].concat())
    };
    let (edge, form) = (("look", "leaf-edge"), ("look", "leaf-form"));
    let table = ticked(&[edge, ("look", "leaf-lobes")]);
    assert_eq!(columns(&table), [true, true, false, true]);
    assert!(table.contains("value=\"toothed 2\"") && table.contains("value=\"smooth 1\""));
    assert_eq!(columns(&ticked(&[form])), [false, false, true, true]);
    assert_eq!(columns(&ticked(&[])), [false, false, false, true]);
}

#[test]
fn whatever_a_form_says_is_answered_with_a_page() {
    let mut teacher = AtTheDesk::empty();
    teacher.paste("kind,blade length (mm)\nhazel,30-35\n");
    let found = measures(&mut teacher, scan(&[30.0], true), &[]);
    let mut rng = Rng::with_seed(11);
    let odd = ["", "-", "|", "1e308", "-1", "NaN", " ", "9999999999999999999", "é", "<", "\0"];
    for path in ["/measure/leaves", "/measure/look", "/do/take-leaves"].repeat(100) {
        let mut form = found.fields.clone();
        form.push(("name-1".into(), "hazel".into()));
        form.push(("instead".into(), "instead-1-0".into()));
        let changed = rng.usize(0..form.len());
        let text = &mut form[changed].1;
        let letters: Vec<usize> = text.char_indices().map(|(at, _)| at).collect();
        let at = letters.get(rng.usize(0..=letters.len())).copied().unwrap_or(text.len());
        let new = *rng.choice(&odd).expect("there are some");
        match rng.bool() {
            true => text.insert_str(at, new),
            false => text.replace_range(at.., new),
        }
        let form: Vec<_> = form.iter().map(|(a, b)| (a.as_str(), b.as_str())).collect();
        let page = teacher.send(Request::post(path, &form));
        assert!([200, 303, 422].contains(&page.status), "{path}: {}", page.status);
    }
}
