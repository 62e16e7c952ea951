//! From what the desk or the guard says to an answer of HTTP.

use axum::body::Body;
use axum::http::header::{self, HeaderName, HeaderValue};
use axum::http::{Request, StatusCode};
use axum::response::Response;
use spinney_desk::Page;

use super::limits;
use super::reading::Refusal;

/// What the clerk gives back.
pub(crate) enum Done {
    /// A page of the desk.
    Page(Page),
    /// A picture.
    Picture(Vec<u8>),
    /// Something was removed for good, then a page: the browser is to forget it too.
    Forgotten(Page),
}

/// What is said where there is no place for one more connection.
pub(crate) const FULL_HOUSE: &[u8] = b"HTTP/1.1 503 Service Unavailable\r\n\
    Content-Type: text/plain; charset=utf-8\r\nConnection: close\r\nRetry-After: 1\r\n\
    Content-Length: 57\r\n\r\nToo many windows ask at once. Wait a moment and try again.";

/// An answer to a request that was let in.
pub(crate) fn of(done: Done, run: &str) -> Response {
    match done {
        Done::Page(page) => shown(page, run),
        Done::Forgotten(page) => {
            let mut response = shown(page, run);
            let cache = HeaderValue::from_static("\"cache\"");
            response.headers_mut().insert(HeaderName::from_static("clear-site-data"), cache);
            response
        }
        Done::Picture(bytes) => {
            let kind = picture_kind(&bytes);
            let mut response = Response::new(Body::from(bytes));
            let headers = response.headers_mut();
            headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(kind));
            // Its address is the hash of its bytes: it cannot change.
            let lasting = HeaderValue::from_static("private, max-age=31536000, immutable");
            headers.insert(header::CACHE_CONTROL, lasting);
            response
        }
    }
}

/// What a picture is, by its first bytes; what is neither JPEG nor PNG is only bytes.
fn picture_kind(bytes: &[u8]) -> &'static str {
    match bytes {
        [0x89, b'P', b'N', b'G', ..] => "image/png",
        [0xff, 0xd8, 0xff, ..] => "image/jpeg",
        _ => "application/octet-stream",
    }
}

fn shown(page: Page, run: &str) -> Response {
    let mut response = Response::new(Body::from(page.body));
    *response.status_mut() =
        StatusCode::from_u16(page.status).unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
    let headers = response.headers_mut();
    headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(page.kind));
    if let Some(to) = page.location.and_then(|to| HeaderValue::try_from(to).ok()) {
        headers.insert(header::LOCATION, to);
    }
    if let Some(name) = page.file {
        headers.insert(header::CONTENT_DISPOSITION, to_keep(&name));
    }
    if let (true, Ok(run)) = (page.lasting, HeaderValue::from_str(run)) {
        headers.insert(header::ETAG, run);
        let ask = HeaderValue::from_static("private, no-cache");
        headers.insert(header::CACHE_CONTROL, ask);
    }
    response
}

/// A file to keep, by its name (RFC 6266, RFC 8187: every byte that is not plain is encoded).
fn to_keep(name: &str) -> HeaderValue {
    let mut text = "attachment; filename*=UTF-8''".to_owned();
    for byte in name.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'.' | b'-' | b'_' => {
                text.push(char::from(byte));
            }
            _ => text.push_str(&format!("%{byte:02X}")),
        }
    }
    HeaderValue::try_from(text).expect("what is not plain was encoded")
}

/// Says that what the browser has from this run is still good.
pub(crate) fn unchanged(request: &Request<Body>, run: &str) -> Option<Response> {
    let has = request.headers().get(header::IF_NONE_MATCH)?;
    if has != run {
        return None;
    }
    let mut response = Response::new(Body::empty());
    *response.status_mut() = StatusCode::NOT_MODIFIED;
    let headers = response.headers_mut();
    headers.insert(header::ETAG, HeaderValue::from_str(run).ok()?);
    headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("private, no-cache"));
    Some(response)
}

/// Says why a request is not answered: a sentence and a remedy.
pub(crate) fn refused(refusal: &Refusal) -> Response {
    let (status, sentence, remedy) = words(*refusal);
    let text = format!("{sentence}\n{remedy}\n");
    let mut response = Response::new(Body::from(text));
    *response.status_mut() = status;
    let kind = HeaderValue::from_static("text/plain; charset=utf-8");
    response.headers_mut().insert(header::CONTENT_TYPE, kind);
    // What was not read of the form must not be taken for the next request.
    response.headers_mut().insert(header::CONNECTION, HeaderValue::from_static("close"));
    response
}

fn words(refusal: Refusal) -> (StatusCode, String, &'static str) {
    let megabytes = limits::LONGEST_BODY >> 20;
    let (status, sentence, remedy) = match refusal {
        Refusal::NotOurName => (
            StatusCode::MISDIRECTED_REQUEST,
            "Spinney answers only to its own address.",
            "Open the address that Spinney printed when it started.",
        ),
        Refusal::FromElsewhere => (
            StatusCode::FORBIDDEN,
            "This came from another page than Spinney's own. Nothing was changed.",
            "Open Spinney's own page and do it there.",
        ),
        Refusal::Method => (
            StatusCode::METHOD_NOT_ALLOWED,
            "Spinney only shows pages and takes forms.",
            "Use its pages.",
        ),
        Refusal::LongAddress => (
            StatusCode::URI_TOO_LONG,
            "This address is too long.",
            "Go back and follow a link again.",
        ),
        Refusal::Large => {
            let sentence = format!("This is more than {megabytes} MiB. Nothing was changed.");
            let remedy = "Send fewer pictures at a time, or smaller ones.";
            return (StatusCode::PAYLOAD_TOO_LARGE, sentence, remedy);
        }
        Refusal::Many => (
            StatusCode::PAYLOAD_TOO_LARGE,
            "This form has too many fields or files. Nothing was changed.",
            "Send it in several parts.",
        ),
        Refusal::Slow => (
            StatusCode::REQUEST_TIMEOUT,
            "This took too long to arrive. Nothing was changed.",
            "Try again.",
        ),
        Refusal::NotAForm => (
            StatusCode::BAD_REQUEST,
            "This could not be read as a form. Nothing was changed.",
            "Go back, load the page again and send it once more.",
        ),
        Refusal::Busy => (
            StatusCode::SERVICE_UNAVAILABLE,
            "Too many windows ask at once. Nothing was changed.",
            "Wait a moment and try again.",
        ),
    };
    (status, sentence.to_owned(), remedy)
}
