//! What is missing of the second language: said, and typed right there.
//!
//! From a key that is bound for the press to sentences and a form with a line for each name, each
//! question and whatever else has no second text yet: title, cautions, yes and no. All but names are
//! kept with the very words that are printed. Nothing is asked where the sheets are in one language.

use maud::{Markup, html};
use spinney_collection::Collection;
use spinney_exchange::table::second_question;
use spinney_model::{AboutField, Edit, KindEdit, KindField, KindId};
use spinney_press::second_language::missing;
use spinney_voice::Tongue;

use super::booklet::Bound;
use crate::asked::Deed;
use crate::forms::{Fact, Form, hidden};
use crate::pages::finds::deeds::{LONGEST_LIST, LONGEST_NAME, LONGEST_TEXT};

/// So many lines are asked for at once, of names and of questions.
const AT_ONCE: usize = 40;

/// The sentences and the form; `back` is the page to come back to.
pub(super) fn form(t: Tongue, bound: &Bound, back: &str) -> Markup {
    let booklet = bound.booklet();
    let Some(missing) = missing(&booklet) else { return html! {} };
    let names: Vec<(KindId, &str)> = missing
        .names
        .iter()
        .take(AT_ONCE)
        .map(|at| (bound.made.layer.kinds[at.0], booklet.matrix.taxon(*at).name.as_str()))
        .collect();
    // What has no column is typed like a question: the title, cautions, yes and no.
    let mut questions: Vec<&str> =
        missing.texts.iter().map(String::as_str).take(AT_ONCE).collect();
    for at in &missing.questions {
        let words = booklet.key.couplets[*at].wording.first();
        // What is asked twice is typed once.
        let new = !words.trim().is_empty() && !questions.contains(&words);
        if new && questions.len() < AT_ONCE {
            questions.push(words);
        }
    }
    html! {
        section #second-language {
            @for sentence in missing.told(t) { p { (sentence) } }
            @if !names.is_empty() || !questions.is_empty() {
                details {
                    summary #second-open { (t.say("print-second-type")) }
                    form.second-language method="post" action=(TYPED.path) {
                        (hidden(&[("back", &back)]))
                        @for (kind, name) in names {
                            @let id = format!("second-kind-{}", kind.0);
                            input type="hidden" name="kind" value=(kind.0);
                            label for=(id) dir="auto" { (name) }
                            input id=(id) name="name" dir="auto" autocomplete="off" maxlength=(LONGEST_NAME);
                        }
                        @for (at, words) in questions.iter().enumerate() {
                            @let id = format!("second-question-{at}");
                            input type="hidden" name="question" value=(words);
                            label for=(id) dir="auto" { (words) }
                            input id=(id) name="second" dir="auto" autocomplete="off" maxlength=(LONGEST_TEXT);
                        }
                        button #second-keep { (t.say("finds-keep")) }
                    }
                }
            }
        }
    }
}

/// What was typed in the form.
pub(super) struct Typed {
    names: Vec<(KindId, String)>,
    /// Each question with its text, as a line.
    questions: Vec<String>,
}

/// Names and questions in the second language are written down.
pub(super) static TYPED: Form<Typed> = Form {
    path: "/do/second-language",
    read: |at| {
        let pairs = |of: &'static str, text: &'static str| {
            let fields = |name| at.asked.request.fields(name);
            let one_line = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
            let pairs = fields(of).map(one_line).zip(fields(text).map(one_line));
            pairs.filter(|(_, text)| !text.is_empty()).collect::<Vec<_>>()
        };
        let held = |text: String, longest: usize| {
            let short = text.chars().count() <= longest;
            if short { Ok(text) } else { Err(at.asked.too_long(&text, longest)) }
        };
        let mut names = Vec::new();
        for (kind, name) in pairs("kind", "name") {
            let kind = kind.parse().map(KindId).unwrap_or(KindId(0));
            if at.collection().kinds.contains_key(&kind) {
                names.push((kind, held(name, LONGEST_NAME)?));
            }
        }
        let mut questions = Vec::new();
        for (words, second) in pairs("question", "second") {
            questions.push(second_question(&words, &held(second, LONGEST_TEXT)?));
        }
        Ok(Typed { names, questions })
    },
    rests_on: |typed| typed.names.iter().map(name).collect(),
    act: |typed, at| {
        let changed = typed.names.iter().filter(|typed| at.changes(&name(typed)));
        let mut edits: Vec<Edit> = changed
            .map(|(kind, name)| {
                Edit::Kind(*kind, KindEdit::Describe(KindField::SecondName, name.clone()))
            })
            .collect();
        if !typed.questions.is_empty() {
            let field = AboutField::SecondQuestions;
            let before = at.collection().about_field(field).lines().map(str::to_owned);
            let all = before.chain(typed.questions).collect::<Vec<_>>().join("\n");
            if all.chars().count() > LONGEST_LIST {
                return Err(at.asked.too_long(&all, LONGEST_LIST));
            }
            edits.push(Edit::Scene(field, all));
        }
        Ok(Deed::edits(edits, at.asked.back("/print")))
    },
};

fn name((kind, text): &(KindId, String)) -> Fact<'static> {
    let kind = *kind;
    let shown = move |of: &Collection| {
        of.kinds
            .get(&kind)
            .map_or(String::new(), |kind| kind.field(KindField::SecondName).to_owned())
    };
    Fact::typed(shown, text)
}
