//! Who is let in, and what every answer carries.
//!
//! From the head of a request to yes or a refusal, and from an answer to one with the headers
//! that keep a browser strict. A page of somebody else must neither read a collection (by
//! giving this address a name of its own, or by asking from afar) nor change it.
//! See `docs/decisions/0011-host.md`.

use axum::body::Body;
use axum::http::header::{self, HeaderName, HeaderValue};
use axum::http::{HeaderMap, Method, Request, StatusCode};
use axum::response::Response;
use spinney_voice::Tongue;

/// Fetch Metadata (W3C): where a request comes from, as the browser itself says it.
const SITE: HeaderName = HeaderName::from_static("sec-fetch-site");
const MODE: HeaderName = HeaderName::from_static("sec-fetch-mode");
const DESTINATION: HeaderName = HeaderName::from_static("sec-fetch-dest");

/// What a page may load: our own files and nothing else, no script or style inside it. A
/// picture may stand in the page itself: a scan that is not kept has no address.
const PAGE_POLICY: &str = "default-src 'none'; style-src 'self'; script-src 'self'; \
    img-src 'self' data:; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; \
    frame-ancestors 'none'; frame-src 'self'; object-src 'self'";
/// The same for what a page shows inside itself: a sheet as PDF.
const INSIDE_POLICY: &str = "default-src 'none'; object-src 'self'; \
    style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

/// Why a request does not reach the desk.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Refusal {
    /// Asked for under a name that is not ours.
    NotOurName,
    /// Sent by a page of somebody else.
    FromElsewhere,
    /// Neither shows nor sends.
    Method,
    /// Too many wait.
    Busy,
    /// The person has ended Spinney.
    Ended,
}

/// Whether a request is answered at all.
pub(crate) fn let_in(port: u16, request: &Request<Body>) -> Result<(), Refusal> {
    let headers = request.headers();
    if !is_our_name(port, headers) {
        return Err(Refusal::NotOurName);
    }
    let changes = match *request.method() {
        Method::GET | Method::HEAD => false,
        Method::POST => true,
        _ => return Err(Refusal::Method),
    };
    let fine = if changes { from_our_page(port, headers) } else { may_look(headers) };
    if fine { Ok(()) } else { Err(Refusal::FromElsewhere) }
}

fn text<'h>(headers: &'h HeaderMap, name: &HeaderName) -> Option<&'h str> {
    let mut all = headers.get_all(name).iter();
    let first = all.next()?;
    // Two of one name would let somebody else's stand beside ours; neither counts then.
    if all.next().is_some() { Some("") } else { Some(first.to_str().unwrap_or("")) }
}

/// Exactly one `Host`, and it is ours: a name somebody else gave to 127.0.0.1 is not.
fn is_our_name(port: u16, headers: &HeaderMap) -> bool {
    text(headers, &header::HOST).is_some_and(|name| names(port).contains(&name.to_lowercase()))
}

/// The names of this host. A browser leaves `:80` away.
fn names(port: u16) -> Vec<String> {
    let mut names = Vec::new();
    for name in ["127.0.0.1", "localhost"] {
        names.push(format!("{name}:{port}"));
        if port == 80 {
            names.push(name.to_owned());
        }
    }
    names
}

/// Whether a form comes from a page of this very address. The `Origin` must be that of the
/// `Host`, so that `localhost` does not speak for `127.0.0.1`. Where a browser sends none, or
/// `null` (as it does where the page keeps its referrer to itself), its own word in
/// `Sec-Fetch-Site` decides; without either nobody vouches for it.
fn from_our_page(port: u16, headers: &HeaderMap) -> bool {
    debug_assert!(is_our_name(port, headers), "the name was looked at first");
    if text(headers, &SITE).is_some_and(|site| site != "same-origin") {
        return false;
    }
    match text(headers, &header::ORIGIN) {
        Some(origin) if origin != "null" => {
            let host = text(headers, &header::HOST).unwrap_or("").to_lowercase();
            origin == format!("http://{host}")
        }
        _ => text(headers, &SITE) == Some("same-origin"),
    }
}

/// Whether something may be shown: to our own pages, to a person who typed the address or
/// followed a link to it in a window of its own; never inside a page of somebody else.
fn may_look(headers: &HeaderMap) -> bool {
    match text(headers, &SITE) {
        None | Some("same-origin" | "none") => true,
        Some(_) => {
            text(headers, &MODE) == Some("navigate")
                && text(headers, &DESTINATION) == Some("document")
        }
    }
}

/// Adds what every answer carries; an answer to `HEAD` keeps its head only.
pub(crate) fn with_headers(mut response: Response, head_only: bool) -> Response {
    let headers = response.headers_mut();
    let inside =
        headers.get(header::CONTENT_TYPE).is_some_and(|kind| kind == "application/pdf");
    let policy = if inside { INSIDE_POLICY } else { PAGE_POLICY };
    let always = [
        (header::CONTENT_SECURITY_POLICY, policy),
        (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
        // Nothing goes to others; but with `no-referrer` our own forms would come from `null`.
        (header::REFERRER_POLICY, "same-origin"),
        (HeaderName::from_static("cross-origin-opener-policy"), "same-origin"),
        (HeaderName::from_static("cross-origin-resource-policy"), "same-origin"),
        (header::X_DNS_PREFETCH_CONTROL, "off"),
    ];
    for (name, text) in always {
        headers.insert(name, HeaderValue::from_static(text));
    }
    if !headers.contains_key(header::CACHE_CONTROL) {
        headers.insert(header::CACHE_CONTROL, HeaderValue::from_static("no-store"));
    }
    if head_only {
        *response.body_mut() = Body::empty();
    }
    response
}

/// Says why a request does not reach the desk, and nothing of what lies on it.
pub(crate) fn refused(t: Tongue, refusal: Refusal) -> Response {
    let (status, message) = words(refusal);
    let mut response = Response::new(Body::from(lines(t, message)));
    *response.status_mut() = status;
    let headers = response.headers_mut();
    let kind = HeaderValue::from_static("text/plain; charset=utf-8");
    headers.insert(header::CONTENT_TYPE, kind);
    if refusal == Refusal::Method {
        headers.insert(header::ALLOW, HeaderValue::from_static("GET, HEAD, POST"));
    }
    // What was not read of a form must not be taken for the next request.
    headers.insert(header::CONNECTION, HeaderValue::from_static("close"));
    response
}

/// A sentence and a remedy, a line each.
fn lines(t: Tongue, message: &str) -> String {
    let (sentence, remedy) = t.told(message, &[]);
    format!("{sentence}\n{remedy}\n")
}

fn words(refusal: Refusal) -> (StatusCode, &'static str) {
    match refusal {
        Refusal::NotOurName => (StatusCode::MISDIRECTED_REQUEST, "door-other-name"),
        Refusal::FromElsewhere => (StatusCode::FORBIDDEN, "door-from-elsewhere"),
        Refusal::Method => (StatusCode::METHOD_NOT_ALLOWED, "door-method"),
        Refusal::Busy => (StatusCode::SERVICE_UNAVAILABLE, "door-busy"),
        Refusal::Ended => (StatusCode::SERVICE_UNAVAILABLE, "door-ended"),
    }
}

/// What is said where there is no place for one more connection. Nothing was heard of whoever
/// asks, so it is said in every language.
pub(crate) fn full_house() -> Vec<u8> {
    let said: Vec<String> = Tongue::all().map(|t| lines(t, "door-busy")).collect();
    let head = "HTTP/1.1 503 Service Unavailable\r\n\
                Content-Type: text/plain; charset=utf-8\r\nConnection: close\r\nRetry-After: 1";
    format!("{head}\r\n\r\n{}", said.join("\n")).into_bytes()
}

#[cfg(test)]
mod tests;
