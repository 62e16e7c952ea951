//! A person at the desk, for stories: asks for pages, fills in forms, sees what comes back.
//!
//! Stands in for the host: it keeps the lines of a reply and hands them back.

use spinney_desk::{Desk, Method, Page, Reply, Request, Upload};
use spinney_exchange::journal;
use spinney_exchange::table::Source;
use spinney_model::{Done, Edit, Entry};

/// A desk with the journal that its host would keep.
pub(crate) struct AtTheDesk {
    pub(crate) desk: Desk,
    pub(crate) lines: Vec<Vec<u8>>,
    pub(crate) pictures: Vec<Vec<u8>>,
    now: i64,
}

impl AtTheDesk {
    /// An empty desk.
    pub(crate) fn empty() -> Self {
        Self { desk: Desk::default(), lines: Vec::new(), pictures: Vec::new(), now: 0 }
    }

    /// The invented hedge walk of the demo.
    pub(crate) fn with_hedge_walk() -> Self {
        Self::with_scenario("hedge_walk")
    }

    /// One of the demo's invented outings.
    pub(crate) fn with_scenario(name: &str) -> Self {
        let folder = format!("{}/../spinney/scenarios/{name}/", env!("CARGO_MANIFEST_DIR"));
        let sheets = ["table", "characters", "kinds", "about"].map(|sheet| {
            let bytes = std::fs::read(format!("{folder}{sheet}.csv")).expect("a sheet");
            Source { name: sheet.to_owned(), bytes }
        });
        let mut at = Self::empty();
        let lines = Desk::lines_of_table(&sheets, 0).expect("it has kinds");
        at.keep(lines, Vec::new());
        at
    }

    /// Puts a table on the desk as it was pasted from a spreadsheet.
    pub(crate) fn paste(&mut self, table: &str) {
        let source = Source { name: "table".to_owned(), bytes: table.as_bytes().to_vec() };
        let lines = Desk::lines_of_table(&[source], 0).expect("it has kinds");
        self.keep(lines, Vec::new());
    }

    /// What somebody did, as it comes from the journal of another window.
    pub(crate) fn does(&mut self, edits: Vec<Edit>) {
        let line = journal::write(&Entry { at: self.now, done: Done::Edits(edits) });
        self.keep(vec![line], Vec::new());
    }

    fn keep(&mut self, lines: Vec<Vec<u8>>, pictures: Vec<Vec<u8>>) {
        self.desk.catch_up(lines.iter().map(Vec::as_slice)).expect("our own lines");
        self.lines.extend(lines);
        self.pictures.extend(pictures);
    }

    /// Asks for a page, following where it leads; panics on anything that is no page.
    pub(crate) fn get(&mut self, path: &str) -> String {
        let page = self.page(&Request::get(path));
        assert_eq!(page.status, 200, "{path}: {}", String::from_utf8_lossy(&page.body));
        String::from_utf8(page.body).expect("a page is text")
    }

    /// Sends a form and sees the page that it leads to.
    pub(crate) fn post(&mut self, path: &str, form: &[(&str, &str)]) -> String {
        let page = self.send(Request::post(path, form));
        assert_eq!(page.status, 303, "{path}: {}", String::from_utf8_lossy(&page.body));
        let location = page.location.expect("a form leads somewhere");
        // The place on a page is a browser's own business.
        self.get(location.split('#').next().unwrap_or_default())
    }

    /// Sends a form that only shows something, and sees it.
    pub(crate) fn look(&mut self, path: &str, form: &[(&str, &str)]) -> String {
        let lines = self.lines.len();
        let page = self.send(Request::post(path, form));
        assert_eq!(page.status, 200, "{path}: {}", String::from_utf8_lossy(&page.body));
        assert_eq!(self.lines.len(), lines, "something was kept");
        String::from_utf8(page.body).expect("a page is text")
    }

    /// Presses "Undo" on a page that has seen everything.
    pub(crate) fn undo(&mut self, back: &str) -> String {
        self.post("/do/undo", &[("back", back)])
    }

    /// Sends a form that is refused, and sees why.
    pub(crate) fn refused(&mut self, path: &str, form: &[(&str, &str)]) -> String {
        let lines = self.lines.len();
        let page = self.send(Request::post(path, form));
        assert_eq!(page.status, 422, "{path} was not refused");
        assert_eq!(self.lines.len(), lines, "something was kept all the same");
        String::from_utf8(page.body).expect("a page is text")
    }

    /// Sends a form with a file.
    pub(crate) fn upload(&mut self, path: &str, form: &[(&str, &str)], file: Upload) -> Page {
        self.send(Request { files: vec![file], ..Request::post(path, form) })
    }

    /// Sends a request and keeps what it did. A form that does not say how far its page saw was
    /// filled in on a page that has seen everything.
    pub(crate) fn send(&mut self, mut request: Request) -> Page {
        if request.method == Method::Post && request.form.iter().all(|(name, _)| name != "head")
        {
            request.form.push(("head".to_owned(), self.desk.mark()));
        }
        self.send_as_it_is(request)
    }

    /// Sends a request as it is and keeps what it did.
    pub(crate) fn send_as_it_is(&mut self, request: Request) -> Page {
        self.now += 60_000;
        let request = Request { at: self.now, ..request };
        match self.desk.handle(&request) {
            Reply::Keep { head, lines, pictures, then } => {
                assert_eq!(head, self.desk.head(), "the desk has seen all lines");
                self.keep(lines, pictures);
                then
            }
            Reply::Rewrite { head, lines, then, .. } => {
                assert_eq!(head, self.desk.head(), "the desk has seen all lines");
                self.desk = Desk::open(lines.iter().map(Vec::as_slice)).expect("our own lines");
                self.lines = lines;
                then
            }
            Reply::Page(page) => page,
            other => panic!("neither a page nor something to keep: {other:?}"),
        }
    }

    fn page(&mut self, request: &Request) -> Page {
        match self.desk.handle(request) {
            Reply::Page(page) if page.status == 303 => {
                let location = page.location.clone().expect("it leads somewhere");
                self.page(&Request::get(&location))
            }
            Reply::Page(page) => page,
            other => panic!("not a page: {other:?}"),
        }
    }
}

/// How far a page saw, as its first form to a path says.
pub(crate) fn head_of(page: &str, path: &str) -> String {
    let fields = hidden(page, &format!("action=\"{path}\""));
    fields.into_iter().find(|(name, _)| name == "head").expect("the form says it").1
}

/// The hidden fields of the form that has this in it, and of no other.
pub(crate) fn hidden(page: &str, part: &str) -> Vec<(String, String)> {
    let form = page.split("<form ").find(|form| form.contains(part));
    let form =
        form.and_then(|form| form.split("</form>").next()).expect("there is such a form");
    let value = |tag: &str, name: &str| {
        let value = tag.split(&format!("{name}=\"")).nth(1)?.split('"').next()?;
        Some(value.replace("&quot;", "\"").replace("&amp;", "&"))
    };
    let tags = form.split("<input ").filter(|tag| tag.starts_with("type=\"hidden\""));
    tags.filter_map(|tag| Some((value(tag, "name")?, value(tag, "value")?))).collect()
}
