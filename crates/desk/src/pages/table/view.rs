//! What of the table is looked at: which cells, whose view, and what is known of them.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::laid::{Laid, OfCells, folded};
use spinney_collection::{Agreed, Collection, Sayings};
use spinney_model::{CharacterField, CharacterId, Finding, KindId, Value};
use spinney_voice::Tongue;

use super::fields::{LONGEST_NAME, LONGEST_TEXT};
use crate::asked::Asked;
use crate::desk::Desk;

/// So many cells stand on a page; the kinds after them on the next.
const CELLS_A_PAGE: usize = 3_000;

/// Which cells are asked for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Which {
    #[default]
    All,
    /// Where nobody knows.
    Blank,
    /// Where people do not agree.
    Differ,
}

impl Which {
    const ALL: [(Self, &'static str, &'static str); 3] = [
        (Self::All, "", "table-show-all"),
        (Self::Blank, "blank", "table-show-blank"),
        (Self::Differ, "differ", "table-show-differ"),
    ];
}

/// What is looked at.
pub(super) struct View {
    pub(super) which: Which,
    pub(super) kind: Option<KindId>,
    pub(super) character: Option<CharacterId>,
    /// Who writes; empty: the table itself.
    pub(super) who: String,
    /// The character whose sheet lies beside the table.
    pub(super) open: Option<CharacterId>,
    /// Rows and columns that are shown.
    pub(super) kinds: Vec<KindId>,
    pub(super) characters: Vec<CharacterId>,
    /// How many kinds come before and after this page.
    pub(super) before: usize,
    pub(super) after: usize,
    pub(super) laid: Option<Arc<Laid>>,
    /// Who says what, where it cannot be read as a table.
    unread: Sayings,
    /// What the reader of tables says of a cell.
    pub(super) of_cells: OfCells,
    /// What is to be said of the whole, its kinds and its characters.
    pub(super) of_table: Vec<Finding>,
    /// What somebody typed where another window had written in the meantime.
    pub(super) clashes: BTreeMap<(KindId, CharacterId), String>,
}

impl View {
    pub(super) fn of(desk: &Desk, asked: &Asked<'_>, open: Option<CharacterId>) -> Self {
        let laid = desk.laid();
        let collection = &desk.history.now;
        let request = asked.request;
        let number = |name: &str| request.asked(name).parse().unwrap_or(0);
        let which = Which::ALL.iter().find(|(_, word, _)| *word == request.asked("show"));
        let mut view = Self {
            which: which.map_or(Which::All, |(which, ..)| *which),
            kind: Some(KindId(number("kind"))).filter(|id| collection.kinds.contains_key(id)),
            character: Some(CharacterId(number("character")))
                .filter(|id| collection.characters.contains_key(id)),
            who: request.asked("as").chars().take(LONGEST_NAME).collect(),
            open,
            kinds: Vec::new(),
            characters: Vec::new(),
            before: 0,
            after: 0,
            unread: match &laid {
                Some(_) => Sayings::default(),
                None => Sayings::unread(collection),
            },
            laid,
            of_cells: OfCells::new(),
            of_table: Vec::new(),
            clashes: clashes(request.query.iter()),
        };
        view.choose(collection);
        view.cut(number("from") as usize);
        if let Some(laid) = &view.laid {
            (view.of_cells, view.of_table) = laid.findings_by_cell(collection);
        }
        view
    }

    fn choose(&mut self, collection: &Collection) {
        let (kind, character) = (self.kind, self.character);
        let kinds = collection.kinds.keys().copied();
        self.kinds = kinds.filter(|id| kind.is_none_or(|only| only == *id)).collect();
        let characters = collection.characters.keys().copied();
        self.characters =
            characters.filter(|id| character.is_none_or(|only| only == *id)).collect();
        if self.which == Which::All {
            return;
        }
        let mut rows = BTreeSet::new();
        let mut columns = BTreeSet::new();
        for &kind in &self.kinds {
            for &at in &self.characters {
                if self.fits(kind, at) {
                    rows.insert(kind);
                    columns.insert(at);
                }
            }
        }
        self.kinds.retain(|kind| rows.contains(kind));
        self.characters.retain(|at| columns.contains(at));
    }

    fn cut(&mut self, from: usize) {
        let a_page = (CELLS_A_PAGE / self.characters.len().max(1)).max(5);
        self.before = if from < self.kinds.len() { from } else { 0 };
        self.kinds.drain(..self.before);
        self.after = self.kinds.len().saturating_sub(a_page);
        self.kinds.truncate(a_page);
    }

    /// Who says what.
    pub(super) fn said(&self) -> &Sayings {
        self.laid.as_ref().map_or(&self.unread, |laid| &laid.said)
    }

    /// Whether a cell is among those that are asked for.
    pub(super) fn fits(&self, kind: KindId, at: CharacterId) -> bool {
        match self.which {
            Which::All => true,
            Which::Blank => self.unknown(kind, at),
            Which::Differ => self.said().agreed(kind, at) == Agreed::Contradicted,
        }
    }

    fn unknown(&self, kind: KindId, at: CharacterId) -> bool {
        let Some(laid) = &self.laid else { return true };
        let place = laid.taxon(kind).zip(laid.character(at));
        place.is_none_or(|(kind, at)| laid.matrix.cell(kind, at).value == Value::Unknown)
    }

    /// The address of this view, with its clashes left behind.
    pub(super) fn address(&self) -> String {
        let path = match self.open {
            Some(id) => format!("/table/{}", id.0),
            None => "/table".to_owned(),
        };
        self.with_choices(&path)
    }

    /// Another page of the table with the same cells chosen.
    pub(super) fn with_choices(&self, path: &str) -> String {
        self.with_choices_from(path, self.before)
    }

    pub(super) fn with_choices_from(&self, path: &str, from: usize) -> String {
        let mut query = form_urlencoded::Serializer::new(String::new());
        let which = Which::ALL.iter().find(|(which, ..)| *which == self.which);
        let number = |id: Option<u32>| id.map_or(String::new(), |id| id.to_string());
        let from = if from == 0 { String::new() } else { from.to_string() };
        for (name, text) in [
            ("show", which.map_or("", |(_, word, _)| word)),
            ("kind", &number(self.kind.map(|id| id.0))),
            ("character", &number(self.character.map(|id| id.0))),
            ("as", &self.who),
            ("from", &from),
        ] {
            if !text.is_empty() {
                query.append_pair(name, text);
            }
        }
        let query = query.finish();
        if query.is_empty() { path.to_owned() } else { format!("{path}?{query}") }
    }
}

fn clashes<'q>(
    query: impl Iterator<Item = &'q (String, String)>,
) -> BTreeMap<(KindId, CharacterId), String> {
    let clash = |text: &str| {
        let mut parts = text.splitn(3, '-');
        let kind = KindId(parts.next()?.parse().ok()?);
        let character = CharacterId(parts.next()?.parse().ok()?);
        let typed = parts.next()?.chars().take(LONGEST_TEXT).collect();
        Some(((kind, character), typed))
    };
    query.filter(|(name, _)| name == "mine").filter_map(|(_, text)| clash(text)).collect()
}

/// What to show, and who writes.
pub(super) fn choices(t: Tongue, collection: &Collection, view: &View) -> Markup {
    let split = view.said().contradictions().count();
    html! {
        details.choices open[view.which != Which::All || view.kind.is_some() || view.character.is_some() || !view.who.is_empty()] {
            summary #choices { (t.say("table-choices")) @if split > 0 { " · " strong.differ { (t.count("table-differ-count", split)) } } }
            form method="get" action="/table" {
                div { label for="show" { (t.say("table-show")) }
                select #show name="show" {
                    @for (which, word, message) in Which::ALL {
                        option value=(word) selected[which == view.which] { (t.say(message)) }
                    }
                } }
                div { label for="kind" { (t.say("table-of-kind")) }
                select #kind name="kind" {
                    option value="" { (t.say("table-every-kind")) }
                    @for id in collection.kinds.keys() {
                        option value=(id.0) selected[view.kind == Some(*id)] { (collection.name(*id)) }
                    }
                } }
                div { label for="character" { (t.say("table-of-character")) }
                select #character name="character" {
                    option value="" { (t.say("table-every-character")) }
                    @for id in collection.characters.keys() {
                        option value=(id.0) selected[view.character == Some(*id)] {
                            (collection.character_name(*id))
                        }
                    }
                } }
                div { label for="as" { (t.say("table-as")) }
                input #as name="as" value=(view.who) list="groups" maxlength=(LONGEST_NAME) dir="auto" autocomplete="off";
                datalist #groups { @for who in groups(collection) { option value=(who); } } }
                button #choose { (t.say("table-choose")) }
            }
            @if !view.who.is_empty() { p { (t.with("table-as-told", &[("who", &view.who)])) } }
        }
    }
}

/// Everybody who has a view of their own, each spelling once.
fn groups(collection: &Collection) -> Vec<&str> {
    let mut seen = BTreeSet::new();
    collection.who().into_iter().filter(|who| seen.insert(folded(who))).collect()
}

/// What a column is measured in: as its sheet says, or as the reader took it.
pub(super) fn unit(collection: &Collection, view: &View, at: CharacterId) -> String {
    let said = collection.character_field(at, CharacterField::Unit);
    if !said.is_empty() {
        return said.to_owned();
    }
    let place = view.laid.as_ref().and_then(|laid| Some((laid, laid.character(at)?)));
    place.map_or("", |(laid, at)| laid.matrix.character(at).sign()).to_owned()
}
