//! Who is let in, how much, and what every answer carries.

use super::browser::{Answer, Screens};

fn is_strict(answer: &Answer) {
    let policy = answer.header("content-security-policy");
    assert!(policy.starts_with("default-src 'none'; style-src 'self'; script-src 'self'"));
    assert!(policy.contains("frame-ancestors 'none'") && policy.contains("form-action 'self'"));
    assert!(!policy.contains("unsafe") && !policy.contains("http"), "{policy}");
    assert_eq!(answer.header("x-content-type-options"), "nosniff");
    assert_eq!(answer.header("referrer-policy"), "same-origin");
    assert_eq!(answer.header("cross-origin-opener-policy"), "same-origin");
    assert_eq!(answer.header("cross-origin-resource-policy"), "same-origin");
}

#[test]
fn every_answer_is_strict() {
    let screens = Screens::open(None);
    let stranger = screens.exchange(b"GET / HTTP/1.1\r\nhost: leaves.example\r\n\r\n");
    let answers = [
        (200, screens.get("/finds")),
        (200, screens.get("/assets/look.css")),
        (404, screens.get("/no-such-page")),
        (404, screens.get("/../../etc/passwd")),
        (404, screens.get("/finds/%2e%2e/%00")),
        (303, screens.post("/do/add-kinds", &[("names", "yew")])),
        (404, screens.post("/finds", &[])),
        (421, stranger.expect("an answer")),
    ];
    for (status, answer) in &answers {
        assert_eq!(answer.status, *status, "{answer:?}");
        is_strict(answer);
        let lasting = answer.header("content-type").starts_with("text/css");
        let cache = if lasting { "private, no-cache" } else { "no-store" };
        assert_eq!(answer.header("cache-control"), cache);
    }
}

#[test]
fn no_other_name_sees_the_collection() {
    let screens = Screens::open(None);
    for name in ["leaves.example", "leaves.example:80", "127.0.0.1", "[::1]", ""] {
        let asked = format!("GET /finds HTTP/1.1\r\nhost: {name}\r\nconnection: close\r\n\r\n");
        let answer = screens.exchange(asked.as_bytes()).expect("an answer");
        assert!(matches!(answer.status, 400 | 421), "{name}: {answer:?}");
        assert!(!answer.text().contains("hazel"), "{name}");
    }
    let without = screens.exchange(b"GET /finds HTTP/1.0\r\n\r\n").expect("an answer");
    assert_eq!(without.status, 421);
    let local = format!("GET /finds HTTP/1.1\r\nhost: localhost:{}\r\n", screens.port);
    let local = screens.exchange(format!("{local}connection: close\r\n\r\n").as_bytes());
    assert!(local.expect("an answer").text().contains("hazel"));
}

#[test]
fn no_other_page_changes_the_collection() {
    let screens = Screens::open(None);
    let kind = "content-type: application/x-www-form-urlencoded";
    let others = [
        "origin: http://leaves.example",
        "origin: null",
        "x-nobody: vouches",
        "sec-fetch-site: cross-site",
        "sec-fetch-site: same-site",
    ];
    for other in others {
        let headers = [kind, "content-length: 12", other];
        let line = "POST /do/add-kinds HTTP/1.1\r\n";
        let answer = screens.send(line, &headers, b"names=poison").expect("an answer");
        assert_eq!(answer.status, 403, "{other}");
        assert!(answer.text().contains("Nothing was changed"), "{other}");
    }
    let inside = ["sec-fetch-site: cross-site", "sec-fetch-mode: no-cors"];
    let shown = screens.send("GET /finds HTTP/1.1\r\n", &inside, b"").expect("an answer");
    assert_eq!(shown.status, 403);
    assert!(!screens.get("/finds").text().contains("poison"));
    assert!(!screens.get("/done").text().contains("poison"));
}

#[test]
fn too_much_is_said_to_be_too_much_and_what_was_typed_stays() {
    let screens = Screens::open(None);
    let photograph = vec![b'x'; 33 << 20];
    let parts: [(&str, Option<&str>, &[u8]); 2] =
        [("names", None, b"typed before"), ("pictures", Some("leaf.jpg"), &photograph)];
    let large = screens.post_files("/do/add-kinds", &parts);
    assert_eq!(large.status, 413);
    assert!(large.text().contains("more than 32 MiB"), "{}", large.text());
    assert!(large.text().contains("typed before"));
    is_strict(&large);
    let fields: Vec<(&str, &str)> = (0..20_001).map(|_| ("a", "")).collect();
    let many = screens.post("/do/add-kinds", &fields);
    assert_eq!(many.status, 413);
    assert!(many.text().contains("more fields or files"), "{}", many.text());
    let files: Vec<(&str, Option<&str>, &[u8])> =
        (0..201).map(|_| ("pictures", Some("leaf.jpg"), &b"x"[..])).collect();
    assert_eq!(screens.post_files("/do/add-kinds", &files).status, 413);
    let long = screens.get(&format!("/finds?{}", "a".repeat(8_000)));
    assert_eq!(long.status, 414);
    assert!(long.text().contains("too long"));
    let heads = vec!["x-more: and more"; 200];
    let heads = screens.send("GET /finds HTTP/1.1\r\n", &heads, b"").expect("an answer");
    assert_eq!(heads.status, 431);
    let odd = ["content-type: text/html", "content-length: 3", "sec-fetch-site: same-origin"];
    let odd = screens.send("POST /do/add-kinds HTTP/1.1\r\n", &odd, b"a=b");
    assert_eq!(odd.expect("an answer").status, 400);
    assert!(!screens.get("/finds").text().contains("typed before"));
}

#[test]
fn hostile_names_are_only_names() {
    let screens = Screens::open(None);
    let long = "x".repeat(10_000);
    let names = [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "'; DROP TABLE journal; --",
        "\u{202e}drawkcab",
        "🍂&amp;&#60;b&#62;",
        "yew\u{0}\u{1b}[31m",
        &long,
    ];
    for name in names {
        let answer = screens.post("/do/add-kinds", &[("names", name)]);
        assert!(matches!(answer.status, 303 | 422), "{name}: {}", answer.status);
    }
    let file: [(&str, Option<&str>, &[u8]); 1] =
        [("pictures", Some("<script>alert(2)</script>.png"), b"no picture")];
    let refused = screens.post_files("/do/add-kinds", &file);
    assert_eq!(refused.status, 422);
    for page in [refused, screens.get("/finds"), screens.get("/done")] {
        let text = page.text();
        assert!(!text.contains("<script>alert") && !text.contains("<img src=x"), "{text}");
        assert!(!text.contains("<b>"), "{text}");
    }
    assert!(screens.get("/finds").text().contains("&lt;script&gt;alert(1)"));
    let back = [("names", "oak"), ("back", "//leaves.example/")];
    assert_eq!(screens.post("/do/add-kinds", &back).header("location"), "/finds");
    let back = [("names", "ash"), ("back", "/finds\r\nset-cookie: a=b")];
    let answer = screens.post("/do/add-kinds", &back);
    assert!(answer.header("set-cookie").is_empty() && answer.header("location") == "/finds");
    let odd = screens.get("/finds?kind=%3Cscript%3Ealert(3)%3C/script%3E&x=%ff%00");
    assert!(!odd.text().contains("<script>alert"));
}

#[test]
fn a_picture_is_kept_as_pixels_and_shown_as_what_it_is() {
    let screens = Screens::open(None);
    let parts: [(&str, Option<&str>, &[u8]); 1] = [("pictures", Some("leaf.png"), GREY)];
    assert_eq!(screens.post_files("/do/add-kinds", &parts).status, 303);
    let finds = screens.get("/finds").text();
    let hash = finds.split("/picture/").nth(1).expect("a picture").split('"').next();
    let address = format!("/picture/{}", hash.expect("its name"));
    let picture = screens.get(&address);
    assert_eq!((picture.status, picture.header("content-type")), (200, "image/png"));
    assert_eq!(picture.header("cache-control"), "private, max-age=31536000, immutable");
    assert_eq!(picture.header("cross-origin-resource-policy"), "same-origin");
    assert_eq!(screens.get(&format!("/picture/{}", "0".repeat(64))).status, 404);
}

/// One grey pixel as PNG (W3C PNG, third edition: signature, IHDR, IDAT, IEND).
pub(crate) const GREY: &[u8] = &[
    137, 80, 78, 71, 13, 10, 26, 10, 0, 0, 0, 13, 73, 72, 68, 82, 0, 0, 0, 1, 0, 0, 0, 1, 8, 0,
    0, 0, 0, 58, 126, 155, 85, 0, 0, 0, 10, 73, 68, 65, 84, 120, 218, 99, 104, 0, 0, 0, 130, 0,
    129, 218, 69, 8, 59, 0, 0, 0, 0, 73, 69, 78, 68, 174, 66, 96, 130,
];

#[test]
fn a_language_is_chosen_once_and_what_lasts_is_sent_once() {
    let screens = Screens::open(None);
    let chosen = screens.get("/finds?language=en&a=b");
    assert_eq!((chosen.status, chosen.header("location")), (303, "/finds?a=b"));
    assert!(chosen.header("set-cookie").starts_with("language=en; "));
    let look = screens.get("/assets/look.css");
    let known = format!("if-none-match: {}", look.header("etag"));
    let again = screens.send("GET /assets/look.css HTTP/1.1\r\n", &[&known], b"");
    assert_eq!(again.expect("an answer").status, 304);
    let head = screens.head("/finds");
    assert!(head.starts_with("HTTP/1.1 200 OK\r\n"), "{head}");
    let end = head.find("\r\n\r\n").expect("the head ends");
    assert_eq!(&head[end + 4..], "", "a head without a body");
}
