//! Reading a request: from the bytes of a browser to what the desk is asked.
//!
//! It counts before it believes: bytes, fields, files, time. What is left out of the desk's
//! request is the network; what is added is the time and the languages.

use std::collections::BTreeMap;

use axum::body::Body;
use axum::extract::{FromRequest, Multipart};
use axum::http::{HeaderMap, Method, Request, Uri, header};
use spinney_desk::Upload;
use tokio::sync::Semaphore;

use super::{clerk, languages, limits};
use crate::folder;

/// Why a request is not answered as it was meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Refusal {
    /// Asked for under a name that is not ours.
    NotOurName,
    /// Sent by a page of somebody else.
    FromElsewhere,
    /// Neither shows nor sends.
    Method,
    /// The address is too long.
    LongAddress,
    /// The form is too large.
    Large,
    /// The form has too many fields or files.
    Many,
    /// The form took too long.
    Slow,
    /// The form cannot be read.
    NotAForm,
    /// Too many wait.
    Busy,
}

/// Reads a request that was let in.
pub(crate) async fn read(
    request: Request<Body>,
    bodies: &Semaphore,
) -> Result<spinney_desk::Request, Refusal> {
    let mut asked = spinney_desk::Request {
        method: spinney_desk::Method::Get,
        path: path(request.uri()),
        query: pairs(request.uri().query().unwrap_or("").as_bytes())?,
        form: Vec::new(),
        files: Vec::new(),
        at: clerk::now(),
        today: folder::date(None),
        languages: languages::read(request.headers()),
        pictures: BTreeMap::new(),
    };
    if request.method() == Method::POST {
        asked.method = spinney_desk::Method::Post;
        let body = async {
            let _one_of_few = bodies.acquire().await.map_err(|_| Refusal::Busy)?;
            form(request).await
        };
        let body = tokio::time::timeout(limits::BODY_TIME, body).await;
        (asked.form, asked.files) = body.map_err(|_| Refusal::Slow)??;
    }
    Ok(asked)
}

/// The path, decoded. What is no text becomes a path that nobody has.
fn path(uri: &Uri) -> String {
    percent_encoding::percent_decode_str(uri.path()).decode_utf8_lossy().into_owned()
}

type Pairs = Vec<(String, String)>;

fn pairs(bytes: &[u8]) -> Result<Pairs, Refusal> {
    let pairs: Pairs =
        form_urlencoded::parse(bytes).into_owned().take(limits::MOST_FIELDS + 1).collect();
    if pairs.len() > limits::MOST_FIELDS { Err(Refusal::Many) } else { Ok(pairs) }
}

async fn form(request: Request<Body>) -> Result<(Pairs, Vec<Upload>), Refusal> {
    let announced = length(request.headers());
    if announced.is_some_and(|length| length > limits::LONGEST_BODY as u64) {
        return Err(Refusal::Large);
    }
    match kind(request.headers()).as_str() {
        "multipart/form-data" => parts(request).await,
        "application/x-www-form-urlencoded" => {
            let body = axum::body::to_bytes(request.into_body(), limits::LONGEST_BODY).await;
            Ok((pairs(&body.map_err(|_| Refusal::Large)?)?, Vec::new()))
        }
        "" if announced.is_none_or(|length| length == 0) => Ok((Vec::new(), Vec::new())),
        _ => Err(Refusal::NotAForm),
    }
}

fn length(headers: &HeaderMap) -> Option<u64> {
    headers.get(header::CONTENT_LENGTH)?.to_str().ok()?.parse().ok()
}

fn kind(headers: &HeaderMap) -> String {
    let kind = headers.get(header::CONTENT_TYPE).and_then(|kind| kind.to_str().ok());
    kind.unwrap_or("").split(';').next().unwrap_or("").trim().to_lowercase()
}

/// A form with files, part by part.
async fn parts(request: Request<Body>) -> Result<(Pairs, Vec<Upload>), Refusal> {
    let mut left = limits::LONGEST_BODY;
    let mut form = Pairs::new();
    let mut files: Vec<Upload> = Vec::new();
    let multipart = Multipart::from_request(unlimited(request), &()).await;
    let mut multipart = multipart.map_err(|_| Refusal::NotAForm)?;
    while let Some(mut part) = multipart.next_field().await.map_err(|_| Refusal::NotAForm)? {
        if form.len() >= limits::MOST_FIELDS || files.len() >= limits::MOST_FILES {
            return Err(Refusal::Many);
        }
        let field = part.name().unwrap_or("").to_owned();
        let name = part.file_name().map(str::to_owned);
        left = left.checked_sub(field.len()).ok_or(Refusal::Large)?;
        let mut bytes = Vec::new();
        while let Some(more) = part.chunk().await.map_err(|_| Refusal::NotAForm)? {
            left = left.checked_sub(more.len()).ok_or(Refusal::Large)?;
            bytes.extend_from_slice(&more);
        }
        match name {
            // A browser sends a field of files without any as one file without a name.
            Some(name) if name.is_empty() && bytes.is_empty() => {}
            Some(name) => files.push(Upload { field, name, bytes }),
            None => form.push((field, String::from_utf8_lossy(&bytes).into_owned())),
        }
    }
    Ok((form, files))
}

/// The library's own limit is lower than ours; ours is counted part by part.
fn unlimited(mut request: Request<Body>) -> Request<Body> {
    use axum::extract::DefaultBodyLimit;
    DefaultBodyLimit::max(limits::LONGEST_BODY + (1 << 20)).apply(&mut request);
    request
}
