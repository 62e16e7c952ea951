//! Which languages a person reads, from what browsers send.

use axum::http::{HeaderMap, HeaderValue, Uri};

use super::*;

fn read_from(cookie: &'static str, accepted: &'static str) -> Vec<String> {
    let mut headers = HeaderMap::new();
    headers.insert(header::COOKIE, HeaderValue::from_static(cookie));
    headers.insert(header::ACCEPT_LANGUAGE, HeaderValue::from_static(accepted));
    read(&headers)
}

#[test]
fn the_choice_comes_first_and_then_what_the_browser_weighs() {
    assert_eq!(read_from("", "en;q=0.5, de-AT, cy;q=0.8"), ["de-AT", "cy", "en"]);
    assert_eq!(read_from("a=b; language=fr", "en"), ["fr", "en"]);
    assert_eq!(read_from("language=<script>", "en;q=0, *, xx;q=7"), Vec::<String>::new());
}

#[test]
fn a_choice_in_the_address_is_remembered_and_leaves_it() {
    let chosen = chosen(&Uri::from_static("/key?key=3&language=de")).expect("a choice");
    assert_eq!(chosen.headers()["location"], "/key?key=3");
    let kept = chosen.headers()["set-cookie"].to_str().expect("text");
    assert!(kept.starts_with("language=de; "), "{kept}");
    assert!(kept.contains("SameSite=Strict"), "{kept}");
    assert!(super::chosen(&Uri::from_static("/key?language=%0d%0aSet-Cookie:x")).is_none());
    let away = super::chosen(&Uri::from_static("//elsewhere.example/?language=de"));
    assert_eq!(away.expect("a choice").headers()["location"], "/elsewhere.example/");
}
