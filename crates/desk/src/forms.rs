//! Forms: what a person sends to have something done, one value a deed, and the one guard against
//! pages that are out of date.
//!
//! Every form says how far its page saw (`head`). From that the collection is worked out as the
//! page showed it, and each fact that the form rests on is read off it and off the collection as
//! it stands: where the two differ, nothing is done, and a sentence says what it is now. What a
//! form does not rest on may have changed since. What no journal holds, such as the key that
//! a long search found, or a cell that a script has brought up to date, travels with the form.

use std::fmt::Display;

use maud::{Markup, PreEscaped, html};

use crate::asked::{Asked, Deed, Doing, Handler, Route};
use crate::desk::Desk;
use crate::reply::Refused;
use crate::request::Method;
use crate::worked::{State, Worked};
use spinney_collection::Collection;

/// A deed that a form asks for, all of it in one place. Of its fields the page writes those that
/// are hidden ([`hidden`]); its type `T` is what they say.
pub(crate) struct Form<T> {
    /// Where it is sent.
    pub(crate) path: &'static str,
    /// What the fields say.
    ///
    /// **Errors**: they say nothing that can be meant, or of something that is not there.
    pub(crate) read: fn(&At<'_>) -> Result<T, Refused>,
    /// What its page showed, as far as the deed rests on it ([`nothing`], where on nothing).
    pub(crate) rests_on: for<'f> fn(&'f T) -> Vec<Fact<'f>>,
    /// Does it.
    pub(crate) act: fn(T, &At<'_>) -> Result<Deed, Refused>,
}

/// What a deed rests on that holds whatever was done since: one that only adds, or says of
/// itself all that it wants.
pub(crate) fn nothing<T>(_: &T) -> Vec<Fact<'_>> {
    Vec::new()
}

impl<T> Doing for Form<T> {
    fn answer(&self, desk: &Desk, asked: &Asked<'_>) -> Result<Deed, Refused> {
        self.answered_from(desk, asked, "head")
    }
}

impl<T> Form<T> {
    /// Answers it; `head` is the field that says how far its page saw.
    pub(crate) fn answered_from(
        &self,
        desk: &Desk,
        asked: &Asked<'_>,
        head: &str,
    ) -> Result<Deed, Refused> {
        let at = At::sent(desk, asked, head)?;
        let said = (self.read)(&at)?;
        (self.rests_on)(&said).iter().try_for_each(|fact| at.holds(fact))?;
        (self.act)(said, &at)
    }
}

/// The route of a form.
pub(crate) const fn post<T: 'static>(form: &'static Form<T>) -> Route {
    (Method::Post, form.path, Handler::Do(form))
}

/// A request at the desk, with the collection as its page showed it.
pub(crate) struct At<'r> {
    pub(crate) desk: &'r Desk,
    pub(crate) asked: &'r Asked<'r>,
    /// None: nothing was done since.
    past: Option<(Collection, Worked)>,
}

impl<'r> At<'r> {
    /// A page that is asked for, and shows what is so now.
    pub(crate) fn now_shown(desk: &'r Desk, asked: &'r Asked<'r>) -> Self {
        Self { desk, asked, past: None }
    }

    /// A form that was sent; `head` is the field that says how far its page saw.
    ///
    /// **Errors**: it does not say so, or its page showed another collection, or this one before
    /// something was removed for good.
    pub(crate) fn sent(
        desk: &'r Desk,
        asked: &'r Asked<'r>,
        head: &str,
    ) -> Result<Self, Refused> {
        let mark = asked.request.field(head);
        if mark == desk.mark() {
            return Ok(Self::now_shown(desk, asked));
        }
        let (lines, time) = mark
            .split_once('-')
            .and_then(|(lines, time)| Some((lines.parse::<usize>().ok()?, time.parse().ok()?)))
            .ok_or_else(|| asked.refused("form-no-head"))?;
        let entries = &desk.history.entries;
        let last = entries.get(..lines).map(|seen| seen.last().map_or(0, |entry| entry.at));
        let past = desk.history.after(lines).filter(|_| last == Some(time));
        let past = past.ok_or_else(|| asked.refused("form-other"))?;
        Ok(Self { desk, asked, past: Some((past, Worked::default())) })
    }

    /// The collection.
    pub(crate) fn collection(&self) -> &'r Collection {
        &self.desk.history.now
    }

    /// What the page showed of this; carried with the form, or as it stood then.
    fn was(&self, fact: &Fact<'_>) -> String {
        let then = self.past.as_ref();
        let then = then.map(|(collection, worked)| State { collection, worked });
        let carried = fact.carried.clone();
        carried.unwrap_or_else(|| (fact.shows)(then.unwrap_or(self.desk.now())))
    }

    /// Whether what the page showed is so still. A text that was typed over is no longer what it
    /// rests on: there it holds as well where nobody typed, or both typed the same.
    pub(crate) fn still(&self, fact: &Fact<'_>) -> bool {
        if fact.all || self.past.is_none() && fact.carried.is_none() {
            return self.past.is_none();
        }
        let (was, now) = (self.was(fact), (fact.shows)(self.desk.now()));
        was == now || fact.typed.as_ref().is_some_and(|typed| *typed == was || *typed == now)
    }

    /// Refused where it is not.
    pub(crate) fn holds(&self, fact: &Fact<'_>) -> Result<(), Refused> {
        if self.still(fact) { Ok(()) } else { Err((fact.moved)(self)) }
    }

    /// Whether a person typed something else than the page showed.
    pub(crate) fn typed_over(&self, fact: &Fact<'_>) -> bool {
        fact.typed.as_ref().is_some_and(|typed| *typed != self.was(fact))
    }

    /// Whether a person typed a text that is neither what the page showed nor what is so now.
    pub(crate) fn changes(&self, fact: &Fact<'_>) -> bool {
        self.typed_over(fact) && fact.typed != Some((fact.shows)(self.desk.now()))
    }
}

/// Something that a page showed: how it is read off a collection, and what is said where it is
/// something else by now.
pub(crate) struct Fact<'f> {
    shows: Box<dyn Fn(State<'_>) -> String + 'f>,
    moved: Box<dyn Fn(&At<'_>) -> Refused + 'f>,
    carried: Option<String>,
    typed: Option<String>,
    /// Whether it is the whole collection.
    all: bool,
}

impl<'f> Fact<'f> {
    pub(crate) fn new(
        shows: impl Fn(State<'_>) -> String + 'f,
        moved: impl Fn(&At<'_>) -> Refused + 'f,
    ) -> Self {
        let (shows, moved) = (Box::new(shows), Box::new(moved));
        Self { shows, moved, carried: None, typed: None, all: false }
    }

    /// The whole collection: for what takes back, or removes, whatever there is.
    pub(crate) fn all(moved: impl Fn(&At<'_>) -> Refused + 'f) -> Self {
        Self { all: true, ..Self::new(|_| String::new(), moved) }
    }

    /// The same, where the form itself may say what its page showed.
    pub(crate) fn carried(self, carried: Option<&str>) -> Self {
        Self { carried: carried.map(str::to_owned), ..self }
    }

    /// The name by which a page called what the deed is about.
    pub(crate) fn name(shows: impl Fn(&Collection) -> String + Copy + 'f) -> Self {
        let moved = move |at: &At<'_>| {
            let now = shows(at.collection());
            Refused::with(at.asked.tongue, "form-renamed", &[("name", &now)])
        };
        Self::new(move |state| shows(state.collection), moved)
    }

    /// What is said where it is something else by now.
    pub(crate) fn moved(&self, at: &At<'_>) -> Refused {
        (self.moved)(at)
    }

    /// A text that a person typed over. How its words are spaced is no difference.
    pub(crate) fn typed(
        shows: impl Fn(&Collection) -> String + Copy + 'f,
        typed: &str,
    ) -> Self {
        let mine = typed.to_owned();
        let moved = move |at: &At<'_>| {
            let theirs = shows(at.collection());
            let texts: [(&str, &dyn Display); 2] = [("theirs", &theirs), ("mine", &mine)];
            Refused::with(at.asked.tongue, "table-field-clash", &texts)
        };
        let shows = move |state: State<'_>| plain(&shows(state.collection));
        Self { typed: Some(plain(typed)), ..Self::new(shows, moved) }
    }
}

fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The gap for how far the page saw. Nobody can type it: what is typed stands escaped in a page.
const GAP: &str = "\"<head>\"";

/// The hidden fields of a form, and how far its page saw.
pub(crate) fn hidden(fields: &[(&str, &dyn Display)]) -> Markup {
    html! {
        @for (name, text) in fields { input type="hidden" name=(name) value=(text); }
        (head_as("head"))
    }
}

/// The hidden field that says how far the page saw.
pub(crate) fn head_as(name: &str) -> Markup {
    PreEscaped(format!("<input type=\"hidden\" name=\"{name}\" value={GAP}>"))
}

/// A page whose forms say how far it saw.
pub(crate) fn marked(page: &str, desk: &Desk) -> String {
    page.replace(GAP, &format!("\"{}\"", desk.mark()))
}
