//! A page for every trouble of the host, with what was typed.

use super::*;

#[test]
fn what_was_typed_stays_on_the_page_and_is_only_text() {
    let typed = [("names", "<script>alert(1)</script>\nyew"), ("back", "/finds")];
    let request = Request::post("/do/add-kinds", &typed);
    let page = Desk::default().trouble(&request, &Trouble::Full("<b>.spinney".to_owned()));
    let text = String::from_utf8(page.body).expect("a page is text");
    assert_eq!(page.status, 507);
    assert!(text.contains("&lt;b&gt;.spinney cannot grow"), "{text}");
    assert!(text.contains("Make room"), "{text}");
    assert!(text.contains("&lt;script&gt;alert(1)&lt;/script&gt;\nyew"), "{text}");
    assert!(!text.contains("<script>alert"), "{text}");
}

#[test]
fn every_trouble_says_that_nothing_was_changed_or_what_is_lost() {
    let file = || "walk.spinney".to_owned();
    let every = [
        (Trouble::ReadOnly(file()), "Nothing was changed"),
        (Trouble::Full(file()), "Nothing was changed"),
        (Trouble::Locked(file()), "Nothing was changed"),
        (Trouble::Damaged(file()), "Nothing was changed"),
        (Trouble::Newer(file()), "Nothing was changed"),
        (Trouble::NotReached(file(), FileTrouble::Gone), "Nothing was changed"),
        (Trouble::Large(32), "32 MiB"),
        (Trouble::Many, "Nothing was changed"),
        (Trouble::Slow, "Nothing was changed"),
        (Trouble::NotAForm, "Nothing was changed"),
        (Trouble::LongAddress, "too long"),
        (Trouble::Overtaken, "Nothing was changed"),
        (Trouble::PictureLost, "picture"),
        (Trouble::Bug, "Nothing was changed"),
    ];
    for (trouble, words) in every {
        let page = Desk::default().trouble(&Request::get("/finds"), &trouble);
        let text = String::from_utf8(page.body).expect("a page is text");
        assert!(page.status >= 400 && text.contains(words), "{trouble:?}: {text}");
    }
}
