//! From what the desk or the guard says to an answer of HTTP.

use axum::body::Body;
use axum::http::header::{self, HeaderName, HeaderValue};
use axum::http::{Request, StatusCode};
use axum::response::Response;
use spinney_desk::Page;

use super::room::{Answer, Room};

/// What the clerk gives back.
pub(crate) enum Done {
    /// A page of the desk.
    Page(Page),
    /// A picture.
    Picture(Vec<u8>),
    /// Something was removed for good, then a page: the browser is to forget it too.
    Forgotten(Page),
}

/// An answer of so many bytes waits in the kernel's own memory for the most part.
const SMALL: usize = 256 << 10;

/// An answer to a request that was let in; None: too many large ones are on their way.
pub(crate) fn of(done: Done, run: &str, room: &Room) -> Option<Response> {
    let body = |bytes: Vec<u8>| match bytes.len() {
        0..SMALL => Some(Body::from(bytes)),
        _ => Answer::held(bytes.into(), room),
    };
    Some(match done {
        Done::Page(mut page) => {
            let body = body(std::mem::take(&mut page.body))?;
            shown(page, body, run)
        }
        Done::Forgotten(mut page) => {
            let body = body(std::mem::take(&mut page.body))?;
            let mut response = shown(page, body, run);
            let cache = HeaderValue::from_static("\"cache\"");
            response.headers_mut().insert(HeaderName::from_static("clear-site-data"), cache);
            response
        }
        Done::Picture(bytes) => {
            let kind = picture_kind(&bytes);
            let mut response = Response::new(body(bytes)?);
            let headers = response.headers_mut();
            headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(kind));
            // Its address is the hash of its bytes: it cannot change.
            let lasting = HeaderValue::from_static("private, max-age=31536000, immutable");
            headers.insert(header::CACHE_CONTROL, lasting);
            response
        }
    })
}

/// What a picture is, by its first bytes; what is neither JPEG nor PNG is only bytes.
fn picture_kind(bytes: &[u8]) -> &'static str {
    match bytes {
        [0x89, b'P', b'N', b'G', ..] => "image/png",
        [0xff, 0xd8, 0xff, ..] => "image/jpeg",
        _ => "application/octet-stream",
    }
}

fn shown(page: Page, body: Body, run: &str) -> Response {
    let mut response = Response::new(body);
    *response.status_mut() =
        StatusCode::from_u16(page.status).unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
    let headers = response.headers_mut();
    headers.insert(header::CONTENT_TYPE, HeaderValue::from_static(page.kind));
    if let Some(to) = page.location {
        headers.insert(header::LOCATION, plain(&to, b"/?&=#%+:;,@!$'()*~"));
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

/// A file to keep, by its name (RFC 6266).
fn to_keep(name: &str) -> HeaderValue {
    let name = plain(name, b"");
    let name = name.to_str().expect("it is plain");
    HeaderValue::try_from(format!("attachment; filename*=UTF-8''{name}"))
        .expect("what is not plain was encoded")
}

/// A text in which every byte that is neither plain nor one of `also` is encoded (RFC 3986,
/// RFC 8187), so that no name can end a header.
fn plain(text: &str, also: &[u8]) -> HeaderValue {
    let mut out = String::with_capacity(text.len());
    for byte in text.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'.' | b'-' | b'_' => {
                out.push(char::from(byte));
            }
            _ if also.contains(&byte) => out.push(char::from(byte)),
            _ => out.push_str(&format!("%{byte:02X}")),
        }
    }
    HeaderValue::try_from(out).expect("what is not plain was encoded")
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

#[cfg(test)]
mod tests;
