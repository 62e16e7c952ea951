//! Who speaks too slowly is not waited for without an end; who speaks at once is answered.

use std::io::{Read, Write};
use std::net::TcpStream;
use std::time::{Duration, Instant};

use super::*;
use crate::web::kept::Kept;

/// A fifth of a second for the head, the form and the answer.
const SHORT: Patience = Patience {
    head: Duration::from_millis(200),
    body: Duration::from_millis(200),
    answer: Duration::from_millis(200),
    least_a_second: limits::BOUNDS.patience.least_a_second,
    turned_away: Duration::from_secs(2),
};
/// Forms may wait for long here, and there is little room.
const NARROW: Bounds = Bounds {
    patience: Patience { head: LONG, body: LONG, ..SHORT },
    room: 2 << 20,
    connections: 16,
};
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
    with_bounds(Bounds { patience: SHORT, ..limits::BOUNDS }, &[], asks);
}

/// Runs a host with pictures in it.
fn with_bounds(bounds: Bounds, pictures: &[Vec<u8>], asks: impl FnOnce(u16)) {
    let door = Door::open(0).expect("a free port");
    let port = door.port;
    let mut kept = Kept::in_memory(Vec::new());
    kept.append(0, &[], pictures).expect("memory takes them");
    let sitting = Sitting::open(kept, &[]).expect("an empty collection");
    let end = tokio::sync::watch::Sender::new(());
    let seen = end.subscribe();
    std::thread::scope(|scope| {
        let host = scope.spawn(move || {
            let told = || {
                let mut ended = seen.clone();
                async move {
                    // Told to end, or whoever would tell has panicked.
                    let _ = ended.changed().await;
                    Ok(())
                }
            };
            door.answer_until(sitting, bounds, told, || ())
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
        let form = "names=yew&head=0-0";
        let slow = format!("{head}content-length: 4000\r\n\r\n{form}");
        let (answer, took) = heard(port, &slow);
        assert!(answer.starts_with("HTTP/1.1 408 "), "{answer}");
        assert!(answer.contains("Nothing was changed"), "{answer}");
        assert!(took >= SHORT.body && took < LONG, "{took:?}");
        let whole = format!("{head}content-length: {}\r\n\r\n{form}", form.len());
        assert!(heard(port, &whole).0.starts_with("HTTP/1.1 303 "));
    });
}

fn form_head(port: u16, length: usize) -> String {
    format!(
        "POST /do/add-kinds HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\n\
         origin: http://127.0.0.1:{port}\r\ncontent-type: application/x-www-form-urlencoded\r\n\
         connection: close\r\ncontent-length: {length}\r\n\r\n"
    )
}

#[test]
fn slow_forms_keep_nobody_else_out() {
    with_bounds(NARROW, &[], |port| {
        let slow: Vec<TcpStream> = (0..10)
            .map(|_| {
                let mut stream = TcpStream::connect(("127.0.0.1", port)).expect("taken");
                let begun = format!("{}names=yew", form_head(port, 900_000));
                stream.write_all(begun.as_bytes()).expect("it listens");
                stream
            })
            .collect();
        let form = "names=holly&head=0-0";
        let quick = format!("{}{form}", form_head(port, form.len()));
        let (answer, took) = heard(port, &quick);
        assert!(answer.starts_with("HTTP/1.1 303 "), "{answer}");
        assert!(took < LONG, "{took:?}");
        drop(slow);
    });
}

#[test]
fn a_form_for_which_there_is_no_room_is_told_so_and_the_next_one_has_it() {
    with_bounds(NARROW, &[], |port| {
        let mut first = TcpStream::connect(("127.0.0.1", port)).expect("taken");
        let half = format!("{}{}", form_head(port, 1_000_000), "x".repeat(900_000));
        first.write_all(half.as_bytes()).expect("it listens");
        let large = format!("{}{}", form_head(port, 900_000), "x".repeat(900_000));
        // The first may not have been heard yet: until it is, the other one has the room.
        let busy = |answer: &String| answer.starts_with("HTTP/1.1 503 ");
        let told = (0..100).map(|_| heard(port, &large).0).find(busy);
        first.write_all(&[b'x'; 100_000]).expect("it listens");
        let mut answer = String::new();
        first.read_to_string(&mut answer).expect("an answer");
        // Whoever came second is told so; nobody is cut off without a word.
        assert_ne!(told.is_some(), busy(&answer), "{told:?} / {answer}");
        let told = told.unwrap_or(answer);
        assert!(told.ends_with("Wait a moment and try again.\n"), "{told}");
        assert!(!busy(&heard(port, &large).0), "the room was given back");
    });
}

#[test]
fn who_is_turned_away_reads_why() {
    with_bounds(Bounds { connections: 1, ..NARROW }, &[], |port| {
        let mut only = TcpStream::connect(("127.0.0.1", port)).expect("taken");
        let begun = format!("GET /finds HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\n\r\n");
        only.write_all(begun.as_bytes()).expect("it listens");
        let mut first = [0; 15];
        only.read_exact(&mut first).expect("an answer");
        assert_eq!(&first, b"HTTP/1.1 200 OK", "the one place is taken, and stays so");
        // A form with much in it, as a browser sends it before it listens.
        let large = format!("{}{}", form_head(port, 300_000), "x".repeat(300_000));
        let mut stream = TcpStream::connect(("127.0.0.1", port)).expect("taken");
        stream.set_read_timeout(Some(LONG)).expect("a limit");
        stream.write_all(large.as_bytes()).expect("what is unread does not end it");
        let mut answer = String::new();
        stream.read_to_string(&mut answer).expect("whole, not cut off");
        assert!(answer.starts_with("HTTP/1.1 503 "), "{answer}");
        // Nobody knows which language is read there.
        assert!(answer.contains("\nWait a moment and try again.\n"), "{answer}");
        assert!(
            answer.ends_with("\nWartet einen Moment, und versucht es noch einmal.\n"),
            "{answer}"
        );
        drop(only);
    });
}

#[test]
fn who_takes_nothing_of_an_answer_is_not_waited_for() {
    // More than the kernel holds for somebody who does not read.
    let picture = spinney_fixtures::photographs::parts_of_a_png(24 << 20);
    let address = format!("/picture/{}", spinney_store::Hash::of(&picture));
    let bounds = Bounds { connections: 1, room: 64 << 20, ..NARROW };
    with_bounds(bounds, &[picture], |port| {
        let ask = |path: &str| {
            format!(
                "GET {path} HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\nconnection: close\r\n\r\n"
            )
        };
        let begun = Instant::now();
        let mut deaf = TcpStream::connect(("127.0.0.1", port)).expect("taken");
        deaf.write_all(ask(&address).as_bytes()).expect("it listens");
        let mut first = [0; 15];
        deaf.read_exact(&mut first).expect("an answer begins");
        assert_eq!(&first, b"HTTP/1.1 200 OK");
        while !heard(port, &ask("/finds")).0.starts_with("HTTP/1.1 200 ") {
            assert!(begun.elapsed() < LONG, "the only place is held for ever");
        }
        assert!(begun.elapsed() >= SHORT.answer, "{:?}", begun.elapsed());
        drop(deaf);
    });
}
