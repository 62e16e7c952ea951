//! Reading a request: from the bytes of a browser to what the desk is asked.
//!
//! It counts before it believes: bytes, fields, files, time. What is left out of the desk's
//! request is the network; what is added is the time and the languages.

use std::collections::BTreeMap;
use std::time::Duration;

use axum::body::{Body, Bytes};
use axum::extract::{DefaultBodyLimit, FromRequest, Multipart};
use axum::http::{Method, Request, Uri, header, request::Parts};
use http_body_util::BodyExt;
use spinney_desk::{Trouble, Upload};

use super::room::{Place, Room};
use super::{clerk, languages, limits};
use crate::folder;

/// What was asked, what is wrong with it, and what it holds of the room for forms.
pub(crate) type Asked = (spinney_desk::Request, Option<Trouble>, Place);

/// Reads a request that was let in. With a trouble comes as much as could be read, so that
/// what somebody typed is not lost. None: there is no room for its form now.
pub(crate) async fn read(
    request: Request<Body>,
    forms: &Room,
    time: Duration,
) -> Option<Asked> {
    let mut place = forms.place(limits::SMALL_FORM);
    let (head, body) = request.into_parts();
    let mut asked = spinney_desk::Request {
        method: spinney_desk::Method::Get,
        path: path(&head.uri),
        query: Vec::new(),
        form: Vec::new(),
        files: Vec::new(),
        at: clerk::now(),
        today: folder::date(None),
        languages: languages::read(&head.headers),
        pictures: BTreeMap::new(),
        pictures_cut: false,
        kept: spinney_desk::KeptIn::File,
    };
    let address = head.uri.path_and_query().map_or(0, |all| all.as_str().len());
    if address > limits::LONGEST_ADDRESS {
        asked.path = "/".to_owned();
        return Some((asked, Some(Trouble::LongAddress), place));
    }
    let query = head.uri.query().unwrap_or("");
    asked.query = form_urlencoded::parse(query.as_bytes()).into_owned().collect();
    let mut trouble = None;
    if head.method == Method::POST {
        asked.method = spinney_desk::Method::Post;
        trouble = match form(head, body, (&mut place, time), &mut asked).await {
            Ok(()) => None,
            Err(NotRead::Trouble(trouble)) => Some(trouble),
            Err(NotRead::NoRoom) => return None,
        };
    }
    Some((asked, trouble, place))
}

/// Why a form was not read.
enum NotRead {
    /// Something is wrong with it.
    Trouble(Trouble),
    /// Too much of others arrives or waits.
    NoRoom,
}

impl From<Trouble> for NotRead {
    fn from(trouble: Trouble) -> Self {
        Self::Trouble(trouble)
    }
}

/// The path, decoded. What is no text becomes a path that nobody has.
fn path(uri: &Uri) -> String {
    percent_encoding::percent_decode_str(uri.path()).decode_utf8_lossy().into_owned()
}

async fn form(
    head: Parts,
    body: Body,
    (place, time): (&mut Place, Duration),
    asked: &mut spinney_desk::Request,
) -> Result<(), NotRead> {
    // A whole collection comes with all its pictures.
    let most = match asked.path.as_str() {
        "/do/open-copy" => limits::LONGEST_COPY,
        _ => limits::LONGEST_BODY,
    };
    let arrived = tokio::time::timeout(time, collect(body, most, place)).await;
    let (bytes, whole) = arrived.map_err(|_| Trouble::Slow)??;
    let kind = head.headers.get(header::CONTENT_TYPE).and_then(|kind| kind.to_str().ok());
    let kind = kind.unwrap_or("").split(';').next().unwrap_or("").trim().to_lowercase();
    let read = match kind.as_str() {
        "multipart/form-data" => {
            let request = Request::from_parts(head, Body::from(bytes));
            parts(request, asked).await
        }
        "application/x-www-form-urlencoded" => fields(&bytes, asked),
        _ if bytes.is_empty() => Ok(()),
        _ => Err(Trouble::NotAForm),
    };
    match whole {
        true => Ok(read?),
        false => Err(Trouble::Large(most >> 20).into()),
    }
}

/// The bytes of a form, and whether they are all. The rest of one that is too large, or for
/// which there is no room, is let go by: most browsers hear an answer only when they have said
/// everything.
async fn collect(
    mut body: Body,
    most: usize,
    place: &mut Place,
) -> Result<(Bytes, bool), NotRead> {
    let mut bytes = Vec::new();
    let (mut gone, mut room) = (0, true);
    while let Some(frame) = body.frame().await {
        let frame = frame.map_err(|_| Trouble::NotAForm)?;
        let Ok(data) = frame.into_data() else { continue };
        let kept = if room { data.len().min(most - bytes.len()) } else { 0 };
        // Twice: as it came, and taken apart.
        if place.grow(2 * kept) {
            bytes.extend_from_slice(&data[..kept]);
        } else {
            (bytes, room) = (Vec::new(), false);
            place.leave();
        }
        gone += data.len() - kept;
        if gone > limits::MOST_LET_GO_BY {
            break;
        }
    }
    match room {
        true => Ok((Bytes::from(bytes), gone == 0)),
        false => Err(NotRead::NoRoom),
    }
}

fn fields(bytes: &[u8], asked: &mut spinney_desk::Request) -> Result<(), Trouble> {
    let mut pairs = form_urlencoded::parse(bytes).into_owned();
    asked.form = pairs.by_ref().take(limits::MOST_FIELDS).collect();
    if pairs.next().is_some() { Err(Trouble::Many) } else { Ok(()) }
}

/// A form with files, part by part.
async fn parts(
    mut request: Request<Body>,
    asked: &mut spinney_desk::Request,
) -> Result<(), Trouble> {
    // The library's own limit is lower than ours; ours was kept when the bytes came in.
    DefaultBodyLimit::disable().apply(&mut request);
    let multipart = Multipart::from_request(request, &()).await;
    let mut multipart = multipart.map_err(|_| Trouble::NotAForm)?;
    while let Some(part) = multipart.next_field().await.map_err(|_| Trouble::NotAForm)? {
        if asked.form.len() >= limits::MOST_FIELDS || asked.files.len() >= limits::MOST_FILES {
            return Err(Trouble::Many);
        }
        let field = part.name().unwrap_or("").to_owned();
        let name = part.file_name().map(str::to_owned);
        let bytes = part.bytes().await.map_err(|_| Trouble::NotAForm)?;
        match name {
            // A browser sends a field of files without any as one file without a name.
            Some(name) if name.is_empty() && bytes.is_empty() => {}
            Some(name) => asked.files.push(Upload { field, name, bytes: bytes.into() }),
            None => asked.form.push((field, String::from_utf8_lossy(&bytes).into_owned())),
        }
    }
    Ok(())
}
