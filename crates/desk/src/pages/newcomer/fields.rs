//! What was typed of a newcomer, sent from page to page so that nothing of it is lost on the way;
//! and the key that it walks.

use std::sync::Arc;

use maud::{Markup, html};
use spinney_collection::keys::Made;
use spinney_model::KeyId;

use crate::asked::Asked;
use crate::desk::Desk;
use crate::forms::hidden;
use crate::pages::frame;
use crate::reply::Refused;
use crate::request::{Method, Request};

/// The fields of an address or of a form.
pub(super) struct Fields<'f>(&'f [(String, String)]);

impl<'f> Fields<'f> {
    /// The fields of a form; where something is only shown, those of the address.
    pub(super) fn of(request: &'f Request) -> Self {
        match request.method {
            Method::Get => Self(&request.query),
            Method::Post => Self(&request.form),
        }
    }

    pub(super) fn has(&self, name: &str) -> bool {
        self.0.iter().any(|(field, _)| field == name)
    }

    pub(super) fn get(&self, name: &str) -> &str {
        let found = self.0.iter().find(|(field, _)| field == name);
        found.map_or("", |(_, text)| text.trim())
    }

    /// All of them, to be sent again from a page that shows what is so now, but for some that are
    /// asked anew.
    pub(super) fn again(&self, but: impl Fn(&str) -> bool) -> Markup {
        let kept = self.0.iter().filter(|(name, _)| name != "head" && !but(name));
        html! {
            @for (name, text) in kept { input type="hidden" name=(name) value=(text); }
            (hidden(&[]))
        }
    }

    /// A text on one line; refused where it is longer than it may be.
    pub(super) fn text(
        &self,
        asked: &Asked<'_>,
        name: &str,
        longest: usize,
    ) -> Result<String, Refused> {
        let text = self.get(name).split_whitespace().collect::<Vec<_>>().join(" ");
        if text.chars().count() > longest {
            Err(asked.too_long(&text, longest))
        } else {
            Ok(text)
        }
    }
}

/// The key that is asked for, worked out; None: there is none, or nobody is in it.
pub(super) fn key(desk: &Desk, asked: &Asked<'_>, wanted: &str) -> Option<(KeyId, Arc<Made>)> {
    let collection = &desk.history.now;
    let wanted = wanted.parse().ok().map(KeyId);
    let key = wanted.filter(|id| collection.keys.contains_key(id));
    let key = key.or_else(|| frame::key_asked(desk, asked))?;
    Some((key, desk.made(asked.tongue, key)?))
}
