//! A very small browser: starts the screens and speaks HTTP with it over loopback.

#![allow(dead_code, reason = "the benches use a part of it")]

use std::collections::BTreeMap;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdout, Command, Stdio};
use std::time::Duration;

/// A form that rests on nothing may be filled in on a page that had seen nothing.
pub(crate) const NOTHING_SEEN: &str = "0-0";

/// Spinney with its screens open; it is ended when this goes away.
pub(crate) struct Screens {
    pub(crate) process: Child,
    pub(crate) port: u16,
    /// What it said before it printed its address.
    pub(crate) said: String,
    _stdout: BufReader<ChildStdout>,
}

impl Screens {
    /// Opens a file, or without one the invented walk.
    pub(crate) fn open(file: Option<&Path>) -> Self {
        let mut command = Command::new(env!("CARGO_BIN_EXE_spinney"));
        command.args(["open", "--no-browser"]).args(file);
        Self::start(command)
    }

    /// Starts a command that runs the screens.
    pub(crate) fn start(mut command: Command) -> Self {
        let mut process = command.stdout(Stdio::piped()).spawn().expect("it starts");
        let mut stdout = BufReader::new(process.stdout.take().expect("it has a stdout"));
        let mut said = String::new();
        let port = loop {
            let before = said.len();
            let read = stdout.read_line(&mut said).expect("it speaks");
            assert!(read > 0, "it ended before it printed its address: {said}");
            if let Some((_, rest)) = said[before..].split_once("http://127.0.0.1:") {
                break rest.trim().trim_end_matches('/').parse().expect("a port");
            }
        };
        Self { process, port, said, _stdout: stdout }
    }

    pub(crate) fn get(&self, path: &str) -> Answer {
        let answer = self.send(&format!("GET {path} HTTP/1.1\r\n"), &[], b"");
        answer.expect("an answer")
    }

    pub(crate) fn post(&self, path: &str, form: &[(&str, &str)]) -> Answer {
        self.try_post(path, form).expect("an answer")
    }

    /// Presses "Undo" or "Do it again" on a page as it is now.
    pub(crate) fn again(&self, what: &str) -> u16 {
        let head = self.seen();
        self.post(&format!("/do/{what}"), &[("head", &head)]).status
    }

    /// How far a page that is asked for now sees.
    pub(crate) fn seen(&self) -> String {
        let page = self.get("/finds").text();
        let head = page.split("data-head=\"").nth(1).and_then(|rest| rest.split('"').next());
        head.expect("a page says how far it saw").to_owned()
    }

    /// As a browser sends a form; an error if the connection breaks before the whole answer.
    pub(crate) fn try_post(
        &self,
        path: &str,
        form: &[(&str, &str)],
    ) -> std::io::Result<Answer> {
        let mut body = form_urlencoded::Serializer::new(String::new());
        body.extend_pairs(form);
        if form.iter().all(|(name, _)| *name != "head") {
            body.append_pair("head", NOTHING_SEEN);
        }
        let kind = "content-type: application/x-www-form-urlencoded";
        self.send_form(path, kind, body.finish().as_bytes())
    }

    /// A form with files: `(field, name of the file or none, bytes)`.
    pub(crate) fn post_files(
        &self,
        path: &str,
        parts: &[(&str, Option<&str>, &[u8])],
    ) -> Answer {
        let edge = "edge-of-a-part";
        let mut body = Vec::new();
        let seen = parts.iter().any(|(name, ..)| *name == "head");
        let head = (!seen).then_some(("head", None, NOTHING_SEEN.as_bytes()));
        for (field, name, bytes) in parts.iter().copied().chain(head) {
            let name = name.map_or(String::new(), |name| {
                format!("; filename=\"{}\"", name.replace('"', "%22"))
            });
            let head = format!(
                "--{edge}\r\nContent-Disposition: form-data; name=\"{field}\"{name}\r\n\r\n"
            );
            body.extend_from_slice(head.as_bytes());
            body.extend_from_slice(bytes);
            body.extend_from_slice(b"\r\n");
        }
        body.extend_from_slice(format!("--{edge}--\r\n").as_bytes());
        let kind = format!("content-type: multipart/form-data; boundary={edge}");
        self.send_form(path, &kind, &body).expect("an answer")
    }

    fn send_form(&self, path: &str, kind: &str, body: &[u8]) -> std::io::Result<Answer> {
        let origin = format!("origin: http://127.0.0.1:{}", self.port);
        let length = format!("content-length: {}", body.len());
        self.send(&format!("POST {path} HTTP/1.1\r\n"), &[kind, &origin, &length], body)
    }

    /// A request with our own `Host`.
    pub(crate) fn send(
        &self,
        line: &str,
        headers: &[&str],
        body: &[u8],
    ) -> std::io::Result<Answer> {
        let host = format!("host: 127.0.0.1:{}", self.port);
        let mut head = format!("{line}{host}\r\nconnection: close\r\n");
        for header in headers {
            head.push_str(header);
            head.push_str("\r\n");
        }
        head.push_str("\r\n");
        self.exchange(&[head.as_bytes(), body].concat())
    }

    /// What is answered to `HEAD`, byte for byte.
    pub(crate) fn head(&self, path: &str) -> String {
        let port = self.port;
        let asked = format!(
            "HEAD {path} HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\nconnection: close\r\n\r\n"
        );
        String::from_utf8(self.bytes(asked.as_bytes()).expect("an answer")).expect("text")
    }

    fn bytes(&self, bytes: &[u8]) -> std::io::Result<Vec<u8>> {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port))?;
        stream.set_nodelay(true)?;
        stream.set_read_timeout(Some(Duration::from_secs(60)))?;
        stream.write_all(bytes)?;
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer)?;
        Ok(answer)
    }

    /// Sends bytes, whatever they are, and reads the answer to its end.
    pub(crate) fn exchange(&self, bytes: &[u8]) -> std::io::Result<Answer> {
        let answer = self.bytes(bytes)?;
        let broken = || std::io::Error::from(std::io::ErrorKind::UnexpectedEof);
        Answer::read(&answer).ok_or_else(broken)
    }

    /// Ends it as Ctrl-C does, and gives its exit code.
    pub(crate) fn interrupt(mut self) -> Option<i32> {
        signal("INT", self.process.id());
        self.process.wait().expect("it ends").code()
    }
}

/// Sends a signal by the shell's own `kill` (POSIX).
pub(crate) fn signal(name: &str, process: u32) {
    let told = format!("kill -{name} {process}");
    assert!(Command::new("sh").args(["-c", &told]).status().expect("a shell").success());
}

impl Drop for Screens {
    fn drop(&mut self) {
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

/// An answer.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) status: u16,
    pub(crate) headers: BTreeMap<String, String>,
    pub(crate) body: Vec<u8>,
}

impl Answer {
    /// None: it is not whole.
    fn read(bytes: &[u8]) -> Option<Self> {
        let end = bytes.windows(4).position(|four| four == b"\r\n\r\n")?;
        let head = std::str::from_utf8(&bytes[..end]).ok()?;
        let mut lines = head.split("\r\n");
        let status = lines.next()?.split(' ').nth(1)?.parse().ok()?;
        let headers: BTreeMap<String, String> = lines
            .filter_map(|line| line.split_once(':'))
            .map(|(name, text)| (name.to_lowercase(), text.trim().to_owned()))
            .collect();
        let body = bytes[end + 4..].to_vec();
        let length = headers.get("content-length").and_then(|length| length.parse().ok());
        let whole = length.is_none_or(|length: usize| length == body.len());
        whole.then_some(Self { status, headers, body })
    }

    pub(crate) fn text(&self) -> String {
        String::from_utf8(self.body.clone()).expect("a page is text")
    }

    pub(crate) fn header(&self, name: &str) -> &str {
        self.headers.get(name).map_or("", String::as_str)
    }
}

/// An empty folder.
pub(crate) fn fresh(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("screens").join(name);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("a folder for a test");
    folder
}
