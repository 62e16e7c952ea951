//! What was found goes into a form and comes back the same; what nobody wrote so is not read.

use spinney_fixtures::leaves::scan::Page;
use spinney_fixtures::leaves::{Edge, Plan, Shape};
use spinney_model::{Measurand, Mend, NoScale, PictureScale};

use spinney_voice::Tongue;

use super::Said;
use super::Sheet;
use super::fields::{numbers, scale_in_words, scale_of_words};
use crate::request::{Request, Upload};

fn scan(dpi: f64) -> Upload {
    let mut rng = fastrand::Rng::with_seed(3);
    let leaf = Plan { length: 40.0, ..Plan::seeded(&mut rng, Shape::Ovate, Edge::Smooth, 0) };
    let leaf = leaf.leaf();
    let page = Page { dpi, ..Page::of_one(&leaf, 0.2) };
    let (width, height) = page.pixels();
    let pixels = image::RgbImage::from_raw(width as u32, height as u32, page.scanned(&mut rng));
    let mut bytes = std::io::Cursor::new(Vec::new());
    let pixels = pixels.expect("as many as there are");
    pixels.write_to(&mut bytes, image::ImageFormat::Png).expect("it can be written");
    Upload { field: "scan".into(), name: "leaf.png".into(), bytes: bytes.into_inner() }
}

fn measured(said: Option<f64>) -> Sheet {
    Sheet::measured(Tongue::of_terminal(), &scan(150.0), Said { dpi: said, rubbing: false })
        .unwrap_or_else(|_| panic!("there is a leaf in it"))
}

fn sent(fields: &[(String, String)]) -> Request {
    Request { form: fields.to_vec(), ..Request::post("/measure/leaves", &[]) }
}

fn length(sheet: &Sheet) -> Option<f64> {
    sheet.measure(&sheet.now.leaves[0], Measurand::BladeLength).map(|one| one.value)
}

#[test]
fn what_was_found_comes_back_from_its_form() {
    let fields = measured(Some(150.0)).fields();
    let back = Sheet::read(&sent(&fields)).expect("it is what it wrote").0;
    assert_eq!(back.fields(), fields);
    assert!((length(&back).expect("it has a length") - 40.0).abs() < 1.0);
    assert!(back.now.leaves[0].form.starts_with("unlobed · "), "{}", back.now.leaves[0].form);
    assert!(back.now.leaves[0].file().is_some_and(|file| file.starts_with(&[0xFF, 0xD8])));
}

#[test]
fn what_nobody_wrote_so_is_not_read() {
    let fields = measured(Some(150.0)).fields();
    for (name, odd) in [
        ("found-picture", "\" onload=\"x"),
        ("found-size", "12"),
        ("found-scale", "file 300"),
        ("found-scale", "file NaN 300"),
        ("leaf-1", "1 2;3"),
        ("cut-1", "<b>"),
        ("looks-1", "0 n/a 1 n/a 0"),
        ("looks-1", "0 n/a 1 n/a x5 - - - - -"),
        ("looks-1", "99 n/a 1 n/a 0 - - - - -"),
        ("looks-1", "0 2 1 n/a 0 - - - - -"),
        ("looks-1", "0 x99999999999 1 n/a 0 - - - - -"),
    ] {
        let changed = fields.iter().map(|(field, text)| {
            (field.clone(), if field == name { odd.to_owned() } else { text.clone() })
        });
        assert!(Sheet::read(&sent(&changed.collect::<Vec<_>>())).is_none(), "{name}: {odd}");
    }
    assert!(Sheet::read(&sent(&[])).is_none());
    // A page from before there were such words is read all the same.
    let older: Vec<_> =
        fields.iter().filter(|(name, _)| !name.starts_with("looks-")).cloned().collect();
    let (older, _) = Sheet::read(&sent(&older)).expect("it is what it wrote");
    assert!(older.now.leaves.iter().all(|leaf| leaf.looks.iter().all(Option::is_none)));
}

#[test]
fn without_a_scale_there_are_no_lengths_until_somebody_says_one() {
    let sheet = measured(None);
    assert_eq!(sheet.now.scale, PictureScale::Unknown(NoScale::NotSaid));
    assert_eq!(length(&sheet), None);
    assert!(sheet.measure(&sheet.now.leaves[0], Measurand::LengthToWidth).is_some());
    let sheet = Sheet::read(&sent(&sheet.fields())).expect("it is what it wrote").0;
    let said = length(&sheet.at(Tongue::of_terminal(), 150.0)).expect("now it has one");
    let at_once = length(&measured(Some(150.0))).expect("it has one");
    assert!((said - at_once).abs() < 0.001, "{said} is not {at_once}");
}

#[test]
fn every_scale_comes_back() {
    let large = NoScale::TooLarge { dpi: 72.0, longer: 1237.5 };
    for of in [
        PictureScale::Said { dpi: 300.0 },
        PictureScale::OfRuler { dpi: 299.5 },
        PictureScale::OfFile { dpi: 299.9994, doubt: None },
        PictureScale::OfFile { dpi: 72.0, doubt: Some(spinney_model::Doubt::Usual) },
        PictureScale::OfCard { dpi: 181.25, off: 0.093 },
        PictureScale::OfStrip { dpi: 181.25, off: 0.093, unsure: 0.0125 },
        PictureScale::Unknown(NoScale::NotSaid),
        PictureScale::Unknown(NoScale::Camera),
        PictureScale::Unknown(NoScale::NotSquare),
        PictureScale::Unknown(NoScale::Rings),
        PictureScale::Unknown(large),
    ] {
        assert_eq!(scale_of_words(&scale_in_words(of)), Some(of));
    }
    assert_eq!(numbers("1 inf"), None);
}

#[test]
fn a_picture_with_too_many_pixels_is_halved_and_its_leaf_is_as_long() {
    for dpi in [Some(300.0), None] {
        let said = Said { dpi, rubbing: false };
        let scan = scan(300.0);
        let whole = Sheet::measured_at_most(Tongue::of_terminal(), &scan, said, u64::MAX)
            .ok()
            .expect("a leaf");
        let half = Sheet::measured_at_most(Tongue::of_terminal(), &scan, said, 10_000)
            .ok()
            .expect("a leaf");
        assert_eq!(half.size, (whole.size.0.div_ceil(2), whole.size.1.div_ceil(2)));
        assert_eq!(half.now.scale, whole.now.scale, "the page says what the file says");
        // Mended where it is, a leaf stays as long; and a ruler says what it says.
        let tip = half.now.leaves[0].lines[1].last().copied().expect("it has a midrib");
        let mended = half.mended(Tongue::of_terminal(), vec![Mend::Tip { leaf: 1, at: tip }]);
        let mended = mended.ok().expect("it lies on the leaf");
        let [as_found, mended] = [&half, &mended]
            .map(|sheet| length(&sheet.at(Tongue::of_terminal(), 300.0)).expect("it has one"));
        assert!((as_found - mended).abs() < 0.3, "{as_found} is not {mended}");
        let ruler = Mend::Length { between: [[0.0, 5.0], [150.0, 5.0]], mm: 25.4 };
        let ruled = half.mended(Tongue::of_terminal(), vec![ruler]).ok().expect("a ruler");
        assert_eq!(ruled.now.scale, PictureScale::OfRuler { dpi: 300.0 });
        assert!((length(&ruled).expect("it has one") - as_found).abs() < 0.1);
        let [half, whole] = [half, whole]
            .map(|sheet| length(&sheet.at(Tongue::of_terminal(), 300.0)).expect("one"));
        assert!((half - whole).abs() < 0.1, "{half} is not {whole}");
    }
}
