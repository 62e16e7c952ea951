//! Who is let in and who is not.

use axum::body::Body;
use axum::http::Request;

use super::*;

const PORT: u16 = 4317;

/// `POST; host: 127.0.0.1:4317; origin: …`, as a browser would send it.
fn asked(drawn: &str) -> Result<(), Refusal> {
    let mut parts = drawn.split("; ");
    let mut request = Request::builder().method(parts.next().expect("a method")).uri("/finds");
    for header in parts {
        let (name, text) = header.split_once(": ").expect("a header");
        request = request.header(name, text);
    }
    let_in(PORT, &request.body(Body::empty()).expect("a request"))
}

#[test]
fn only_our_own_names_are_answered() {
    for host in ["127.0.0.1:4317", "localhost:4317", "LocalHost:4317"] {
        assert_eq!(asked(&format!("GET; host: {host}")), Ok(()), "{host}");
    }
    let others = [
        "GET",
        "GET; host: ",
        "GET; host: 127.0.0.1",
        "GET; host: 127.0.0.1:4318",
        "GET; host: leaves.example:4317",
        "GET; host: 127.0.0.1.leaves.example:4317",
        "GET; host: [::1]:4317",
        "GET; host: localhost:4317@leaves.example",
        "GET; host: localhost:4317; host: leaves.example",
        "POST; host: leaves.example:4317; origin: http://leaves.example:4317",
    ];
    for other in others {
        assert_eq!(asked(other), Err(Refusal::NotOurName), "{other}");
    }
}

#[test]
fn only_our_own_pages_send_forms() {
    let ours = [
        "origin: http://127.0.0.1:4317",
        "origin: http://127.0.0.1:4317; sec-fetch-site: same-origin",
        "sec-fetch-site: same-origin",
        "origin: null; sec-fetch-site: same-origin",
    ];
    for page in ours {
        assert_eq!(asked(&format!("POST; host: 127.0.0.1:4317; {page}")), Ok(()), "{page}");
    }
    let others = [
        "accept: text/html",
        "origin: null",
        "origin: ",
        "origin: http://leaves.example",
        "origin: http://localhost:4317",
        "origin: https://127.0.0.1:4317",
        "origin: http://127.0.0.1:43170",
        "origin: http://127.0.0.1",
        "origin: http://127.0.0.1:4317; sec-fetch-site: cross-site",
        "origin: http://127.0.0.1:4317; origin: http://leaves.example",
        "sec-fetch-site: same-site",
        "sec-fetch-site: none",
        "origin: null; sec-fetch-site: cross-site",
    ];
    for page in others {
        let page = format!("POST; host: 127.0.0.1:4317; {page}");
        assert_eq!(asked(&page), Err(Refusal::FromElsewhere), "{page}");
    }
}

#[test]
fn nobody_else_shows_our_pages_inside_theirs() {
    let fine = [
        "sec-fetch-site: none; sec-fetch-mode: navigate; sec-fetch-dest: document",
        "sec-fetch-site: same-origin; sec-fetch-mode: no-cors; sec-fetch-dest: image",
        "sec-fetch-site: cross-site; sec-fetch-mode: navigate; sec-fetch-dest: document",
    ];
    for way in fine {
        assert_eq!(asked(&format!("GET; host: localhost:4317; {way}")), Ok(()), "{way}");
    }
    let not = [
        "sec-fetch-site: cross-site; sec-fetch-mode: no-cors; sec-fetch-dest: image",
        "sec-fetch-site: same-site; sec-fetch-mode: cors; sec-fetch-dest: empty",
        "sec-fetch-site: cross-site; sec-fetch-mode: navigate; sec-fetch-dest: iframe",
        "sec-fetch-site: cross-site; sec-fetch-mode: navigate; sec-fetch-dest: object",
    ];
    for way in not {
        let way = format!("GET; host: localhost:4317; {way}");
        assert_eq!(asked(&way), Err(Refusal::FromElsewhere), "{way}");
    }
}

#[test]
fn other_methods_do_nothing() {
    for method in ["PUT", "DELETE", "OPTIONS", "PATCH", "TRACE", "CONNECT"] {
        let request = format!("{method}; host: 127.0.0.1:4317; origin: http://127.0.0.1:4317");
        assert_eq!(asked(&request), Err(Refusal::Method), "{method}");
    }
}

#[test]
fn every_answer_is_strict_and_a_sheet_may_stand_in_a_page_of_ours() {
    let page = with_headers(refused(Tongue::of_terminal(), Refusal::NotOurName), false);
    let policy = page.headers()["content-security-policy"].to_str().expect("text");
    assert!(policy.starts_with("default-src 'none'; style-src 'self';"), "{policy}");
    assert!(
        policy.contains("frame-ancestors 'none'") && !policy.contains("unsafe"),
        "{policy}"
    );
    assert_eq!(page.headers()["cache-control"], "no-store");
    assert_eq!(page.headers()["x-content-type-options"], "nosniff");
    let mut sheet = Response::new(Body::empty());
    sheet.headers_mut().insert("content-type", HeaderValue::from_static("application/pdf"));
    let sheet = with_headers(sheet, false);
    let policy = sheet.headers()["content-security-policy"].to_str().expect("text");
    assert!(policy.contains("frame-ancestors 'self'"), "{policy}");
}

#[test]
fn why_a_request_is_refused_is_said_in_each_language() {
    let all = [
        Refusal::NotOurName,
        Refusal::FromElsewhere,
        Refusal::Method,
        Refusal::Busy,
        Refusal::Ended,
    ];
    let said = |t: Tongue| all.map(|refusal| lines(t, words(refusal).1));
    let mut different = std::collections::BTreeSet::new();
    for t in Tongue::all() {
        for text in said(t) {
            assert_eq!(text.lines().count(), 2, "{text}");
            assert!(text.lines().all(|line| line.ends_with('.')), "{text}");
            assert!(different.insert(text.clone()), "{text}");
        }
    }
    // Where nobody can know which language is read, all of them are said.
    let house = String::from_utf8(full_house()).expect("it is text");
    let (_, body) = house.split_once("\r\n\r\n").expect("a head and a body");
    assert!(Tongue::all().all(|t| body.contains(&lines(t, "door-busy"))), "{body}");
}
