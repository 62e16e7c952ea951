//! The phone page with pictures: small enough for a phone, or it says what it left out.

use std::collections::BTreeMap;

use base64::{Engine as _, engine::general_purpose::STANDARD};
use spinney_fixtures::photographs::{more_than_pixels, tales_in, telling_jpeg};
use spinney_model::{
    Couplet, Destination, End, Key, Matrix, Scene, SecondLooks, Taxon, TaxonIx, Wording,
};
use spinney_press::{Booklet, Drawn, Letters, Picture, Sizes, Stamp, page};
use spinney_voice::Tongue;

/// A photograph of undergrowth: it packs badly.
fn photograph(seed: u64) -> Vec<u8> {
    let mut random = fastrand::Rng::with_seed(seed);
    let mut grain = || image::Rgb([random.u8(..), random.u8(..), random.u8(..)]);
    let pixels = image::RgbImage::from_fn(800, 600, |_, _| grain());
    let mut file = std::io::Cursor::new(Vec::new());
    pixels.write_to(&mut file, image::ImageFormat::Jpeg).expect("it can be written");
    telling_jpeg(file.get_ref(), 1)
}

/// The page of a key that splits so many kinds off one by one, each with its photograph.
fn page_of(kinds: usize, photographs: usize) -> String {
    let taxa = (0..kinds).map(|at| Taxon {
        picture: Some(format!("{}.jpg", at % photographs)),
        ..Taxon::named(format!("kind {at}"))
    });
    let cells = vec![Vec::new(); kinds];
    let matrix =
        Matrix::new(Scene::default(), taxa.collect(), vec![], cells).expect("a matrix");
    let couplets = (0..kinds as u32 - 1).map(|at| Couplet {
        number: at + 1,
        back: None,
        wording: Wording::Question(format!("Is it kind {at}?")),
        ask: None,
        yes: Destination::End(End::of([TaxonIx(at as usize)])),
        no: match at as usize + 2 == kinds {
            true => Destination::End(End::of([TaxonIx(at as usize + 1)])),
            false => Destination::Couplet(at + 2),
        },
        kept: false,
        line: None,
    });
    let pictures: BTreeMap<String, Picture> = (0..photographs)
        .map(|at| (format!("{at}.jpg"), Picture::Jpeg(photograph(at as u64))))
        .collect();
    page::html(&Booklet {
        matrix: &matrix,
        key: &Key { couplets: couplets.collect() },
        walks: &[],
        left_together: &[],
        second_looks: &SecondLooks::new(),
        stamp: Stamp::None,
        date: None,
        pictures: &pictures,
        drawn: Drawn::NOTHING,
        letters: Letters::Usual,
        sizes: Sizes::USUAL,
        tongue: Tongue::of_terminal(),
    })
}

fn shown(html: &str) -> Vec<Vec<u8>> {
    let held = html.split("src=\"data:image/jpeg;base64,").skip(1);
    held.map(|rest| STANDARD.decode(rest.split('"').next().unwrap_or("")).expect("base64"))
        .collect()
}

#[test]
fn forty_photographs_fit_into_two_million_bytes_and_tell_nothing() {
    let html = page_of(40, 40);
    assert!(html.len() <= 2_000_000, "{} bytes", html.len());
    assert!(html.len() > 1_500_000, "the room is used: {} bytes", html.len());
    let shown = shown(&html);
    assert_eq!(shown.len(), 40);
    for picture in shown {
        assert!(picture.len() <= 60_000, "{} bytes", picture.len());
        assert_eq!(more_than_pixels(&picture), Vec::<String>::new());
        assert_eq!(tales_in(&picture), Vec::<&str>::new());
        let pixels = image::load_from_memory(&picture).expect("it can be read");
        assert!((240..=640).contains(&pixels.width()), "{}", pixels.width());
    }
    assert!(!html.contains("not on this page"));
}

#[test]
fn one_photograph_takes_no_more_than_a_phone_shows() {
    let shown = shown(&page_of(2, 1));
    assert_eq!(shown.len(), 2, "both kinds show it");
    assert!((20_000..=60_000).contains(&shown[0].len()), "{}", shown[0].len());
}

#[test]
fn what_a_page_has_no_room_for_is_said() {
    // Twelve photographs, each at twenty-five ends.
    let html = page_of(300, 12);
    assert!(html.len() <= 2_000_000, "{} bytes", html.len());
    let left = (12 - shown(&html).len() / 25) as u32;
    assert!((1..12).contains(&left), "{left}");
    let said = format!("{left} pictures are not on this page");
    assert!(html.contains(&said), "{said}");
}
