//! Who speaks too slowly is not waited for without an end; who speaks at once is answered.

use std::io::{Read, Write};
use std::net::TcpStream;
use std::time::{Duration, Instant};

use super::*;
use crate::web::kept::Kept;

/// A fifth of a second for the head and for the form.
const SHORT: Patience =
    Patience { head: Duration::from_millis(200), body: Duration::from_millis(200) };
/// Whoever hears nothing for so long was not cut off at all.
const LONG: Duration = Duration::from_secs(20);

/// What a client hears that says this and then nothing more, until it is cut off; and how long
/// that took.
fn heard(port: u16, said: &str) -> (String, Duration) {
    let begun = Instant::now();
    let mut stream = TcpStream::connect(("127.0.0.1", port)).expect("it takes connections");
    stream.set_read_timeout(Some(LONG)).expect("a limit");
    stream.write_all(said.as_bytes()).expect("it listens");
    let mut answer = Vec::new();
    // A connection that is reset was cut off as well.
    if let Err(error) = stream.read_to_end(&mut answer) {
        assert_eq!(error.kind(), std::io::ErrorKind::ConnectionReset, "{said}");
    }
    (String::from_utf8_lossy(&answer).into_owned(), begun.elapsed())
}

/// Runs a host with little patience.
fn with_host(asks: impl FnOnce(u16)) {
    let door = Door::open(0).expect("a free port");
    let port = door.port;
    let sitting = Sitting::open(Kept::in_memory(Vec::new()), &[]).expect("an empty collection");
    let (end, ended) = tokio::sync::oneshot::channel::<()>();
    std::thread::scope(|scope| {
        let host = scope.spawn(move || {
            door.answer_until(sitting, SHORT, async move {
                // Told to end, or whoever would tell has panicked.
                let _ = ended.await;
                Ok(())
            })
        });
        asks(port);
        drop(end);
        assert!(host.join().expect("it ends").is_ok());
    });
}

#[test]
fn a_head_that_never_ends_is_cut_off() {
    with_host(|port| {
        for said in ["", "GET /finds HTTP/1.1\r\nhost: 127.0.0.1:"] {
            let (answer, took) = heard(port, said);
            assert!(!answer.contains("200 OK"), "{answer}");
            assert!(took >= SHORT.head && took < LONG, "{took:?}");
        }
        let whole = format!(
            "GET /finds HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\nconnection: close\r\n\r\n"
        );
        assert!(heard(port, &whole).0.starts_with("HTTP/1.1 200 OK"));
    });
}

#[test]
fn a_form_that_never_ends_is_told_so_and_cut_off() {
    with_host(|port| {
        let head = format!(
            "POST /do/add-kinds HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\n\
             origin: http://127.0.0.1:{port}\r\n\
             content-type: application/x-www-form-urlencoded\r\nconnection: close\r\n"
        );
        let form = "names=yew";
        let slow = format!("{head}content-length: 4000\r\n\r\n{form}");
        let (answer, took) = heard(port, &slow);
        assert!(answer.starts_with("HTTP/1.1 408 "), "{answer}");
        assert!(answer.contains("Nothing was changed"), "{answer}");
        assert!(took >= SHORT.body && took < LONG, "{took:?}");
        let whole = format!("{head}content-length: {}\r\n\r\n{form}", form.len());
        assert!(heard(port, &whole).0.starts_with("HTTP/1.1 303 "));
    });
}
