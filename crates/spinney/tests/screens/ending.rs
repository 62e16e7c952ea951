//! Ctrl-C, and the machine that is shut down.

use std::io::{Read, Write};
use std::net::TcpStream;

use super::browser::{Screens, fresh, signal};

#[test]
fn either_way_of_ending_it_ends_it_and_keeps_what_was_acknowledged() {
    for name in ["INT", "TERM"] {
        let file = fresh(&format!("ending-{name}")).join("walk.spinney");
        let mut screens = Screens::open(Some(&file));
        assert_eq!(screens.post("/do/add-kinds", &[("names", "wych elm")]).status, 303);
        // A window that is open, and a form that is on its way.
        let mut open = TcpStream::connect(("127.0.0.1", screens.port)).expect("taken");
        let mut half = TcpStream::connect(("127.0.0.1", screens.port)).expect("taken");
        let port = screens.port;
        let head = |line: &str| format!("{line} HTTP/1.1\r\nhost: 127.0.0.1:{port}\r\n");
        open.write_all(format!("{}\r\n", head("GET /finds")).as_bytes()).expect("it listens");
        open.read_exact(&mut [0; 15]).expect("an answer begins");
        let form = format!(
            "{}origin: http://127.0.0.1:{port}\r\ncontent-length: 4000\r\n\r\nnames=",
            head("POST /do/add-kinds")
        );
        half.write_all(form.as_bytes()).expect("it listens");
        signal(name, screens.process.id());
        assert_eq!(screens.process.wait().expect("it ends").code(), Some(0), "{name}");
        let again = Screens::open(Some(&file));
        assert!(again.get("/finds").text().contains("wych elm"), "{name}");
    }
}
