//! What is kept of a picture goes by its own name.

use spinney_fixtures::photographs::PHOTOGRAPH;

use super::{name, written_anew};

#[test]
fn what_is_kept_is_no_longer_than_half_a_page_needs_and_named_by_its_bytes() {
    let kept = written_anew(PHOTOGRAPH).expect("it is a picture");
    assert_eq!(name(&kept), name(&kept.clone()));
    assert_ne!(name(&kept), name(PHOTOGRAPH));
    let mut large = std::io::Cursor::new(Vec::new());
    let pixels = image::RgbImage::new(3200, 20);
    pixels.write_to(&mut large, image::ImageFormat::Png).expect("it can be written");
    let kept = written_anew(large.get_ref()).expect("it is a picture");
    let kept = image::load_from_memory(&kept).expect("it can be read again");
    assert_eq!((kept.width(), kept.height()), (1600, 10));
}
