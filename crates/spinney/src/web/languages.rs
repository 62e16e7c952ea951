//! Which languages a person reads.
//!
//! From what the browser says, and what the person chose with `?language=de`, to a list with
//! the best first. The choice is remembered by the browser alone.

use axum::body::Body;
use axum::http::header;
use axum::http::{HeaderMap, HeaderValue, StatusCode, Uri};
use axum::response::Response;

/// The name of the choice in the address and in the browser's memory.
const NAME: &str = "language";
/// The most languages that are listened to.
const MOST: usize = 20;
/// A year, in seconds.
const REMEMBERED: u32 = 31_536_000;

/// Remembers a language chosen in the address, and goes on to the page without it.
pub(crate) fn chosen(uri: &Uri) -> Option<Response> {
    let query = uri.query()?;
    let pairs = || form_urlencoded::parse(query.as_bytes());
    let (_, language) = pairs().find(|(name, text)| name == NAME && is_a_tag(text))?;
    let mut rest = form_urlencoded::Serializer::new(String::new());
    rest.extend_pairs(pairs().filter(|(name, _)| name != NAME));
    let rest = rest.finish();
    // A path that begins with two strokes would be the address of another machine.
    let path = format!("/{}", uri.path().trim_start_matches('/'));
    let to = if rest.is_empty() { path } else { format!("{path}?{rest}") };
    let kept =
        format!("{NAME}={language}; Path=/; Max-Age={REMEMBERED}; SameSite=Strict; HttpOnly");
    let mut response = Response::new(Body::empty());
    *response.status_mut() = StatusCode::SEE_OTHER;
    let headers = response.headers_mut();
    headers.insert(header::LOCATION, HeaderValue::try_from(to).ok()?);
    headers.insert(header::SET_COOKIE, HeaderValue::try_from(kept).ok()?);
    Some(response)
}

/// The languages that a person reads, the best first.
pub(crate) fn read(headers: &HeaderMap) -> Vec<String> {
    let text = |name| headers.get(name).and_then(|text| text.to_str().ok()).unwrap_or("");
    let remembered = text(header::COOKIE).split(';').filter_map(|pair| {
        let (name, tag) = pair.trim().split_once('=')?;
        (name == NAME && is_a_tag(tag)).then(|| tag.to_owned())
    });
    let mut accepted: Vec<(u32, String)> = text(header::ACCEPT_LANGUAGE)
        .split(',')
        .filter_map(|part| {
            let (tag, weight) = part.split_once(';').unwrap_or((part, "q=1"));
            let tag = tag.trim();
            let weight: f32 = weight.trim().strip_prefix("q=")?.trim().parse().ok()?;
            let fine = is_a_tag(tag) && (0.001..=1.0).contains(&weight);
            fine.then(|| ((weight * 1000.0) as u32, tag.to_owned()))
        })
        .take(MOST)
        .collect();
    accepted.sort_by_key(|(weight, _)| std::cmp::Reverse(*weight));
    remembered.chain(accepted.into_iter().map(|(_, tag)| tag)).take(MOST).collect()
}

/// Whether a text may be the tag of a language: `de`, `en-GB`.
fn is_a_tag(text: &str) -> bool {
    let fine = |part: &str| {
        (1..=8).contains(&part.len()) && part.bytes().all(|sign| sign.is_ascii_alphanumeric())
    };
    text.len() >= 2 && text.len() <= 35 && text.split('-').all(fine)
}

#[cfg(test)]
mod tests;
