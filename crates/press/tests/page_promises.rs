//! What the phone page promises, as far as it can be seen without a browser: nothing fetched,
//! everything escaped, one lock that fits, links that lead somewhere, contrast that is enough.

#[path = "page_replay/hedge.rs"]
mod hedge;

use std::collections::{BTreeMap, BTreeSet};

use base64::{Engine as _, engine::general_purpose::STANDARD};
use sha2::{Digest as _, Sha256};
use spinney_model::Destination;
use spinney_press::{Stamp, page};

const LOOK: &str = include_str!("../src/page/look.css");

/// The text between two marks, the first time they stand there.
fn between<'a>(text: &'a str, before: &str, after: &str) -> &'a str {
    let (_, rest) = text.split_once(before).unwrap_or_else(|| panic!("no {before}"));
    rest.split_once(after).unwrap_or_else(|| panic!("no {after} after {before}")).0
}

/// Every value of an attribute, in order.
fn values<'a>(html: &'a str, attribute: &str) -> Vec<&'a str> {
    let opens = format!(" {attribute}=\"");
    html.split(&opens[..]).skip(1).map(|rest| rest.split('"').next().unwrap_or("")).collect()
}

#[test]
fn the_page_is_small_and_the_same_every_time() {
    let walk = hedge::hedge();
    let html = page::html(&walk.booklet(Stamp::None));
    assert!(html.len() < 200_000, "{} bytes", html.len());
    assert_eq!(html, page::html(&walk.booklet(Stamp::None)));
}

#[test]
fn the_lock_fits_the_one_script_and_the_one_style() {
    let html = page::html(&hedge::hostile().booklet(Stamp::Draft));
    let lock = between(&html, "Content-Security-Policy\" content=\"", "\"");
    assert!(lock.starts_with("default-src 'none'; "), "{lock}");
    for (tag, rule) in [("script", "script-src"), ("style", "style-src")] {
        assert_eq!(html.matches(&format!("<{tag}")).count(), 1, "{tag}");
        let inside = between(&html, &format!("<{tag}>"), &format!("</{tag}>"));
        let hash = STANDARD.encode(Sha256::digest(inside.as_bytes()));
        assert_eq!(between(lock, &format!("{rule} "), ";"), format!("'sha256-{hash}'"));
    }
}

#[test]
fn nothing_is_fetched_and_nothing_typed_becomes_a_tag() {
    for walk in [hedge::hedge(), hedge::hostile(), hedge::broken()] {
        let html = page::html(&walk.booklet(Stamp::TryingOut));
        for attribute in ["href", "src"] {
            for value in values(&html, attribute) {
                assert!(value.starts_with('#') || value.starts_with("data:"), "{value}");
            }
        }
        assert!(!html.contains("url(http") && !html.contains("@import"));
        assert!(!html.contains(" style=\""), "the lock would refuse it");
        assert!(!html.contains("<img src=x") && !html.contains("<!--"));
        assert!(html.chars().all(|letter| letter == '\n' || !letter.is_control()));
        for tag in ["script", "style", "section", "article", "div", "a", "p", "dl", "details"] {
            let opened = html.matches(&format!("<{tag}>")).count()
                + html.matches(&format!("<{tag} ")).count();
            assert_eq!(opened, html.matches(&format!("</{tag}>")).count(), "{tag}");
        }
    }
}

#[test]
fn every_text_of_a_hostile_table_is_shown() {
    let html = page::html(&hedge::hostile().booklet(Stamp::None));
    let shown = "&lt;/script&gt;&lt;img src=x onerror=alert(1)&gt;&quot;'&amp;&lt;!--  ";
    let title = between(&html, "<h1>", "</h1>");
    assert_eq!(title, shown);
    let second = "<p class=\"second\" lang=\"und\" dir=\"auto\">";
    assert_eq!(html.matches(&format!("{second}{shown}")).count(), 3, "a question, two names");
    for place in ["This should be</span> a", "<p class=\"sentence\">", "Take care.</strong> "] {
        assert!(html.contains(&format!("{place}{shown}")), "{place}");
    }
}

/// Without scripts nobody can go back but by a link.
#[test]
fn every_question_leads_back_to_the_one_that_led_to_it() {
    let walk = hedge::hedge();
    let html = page::html(&walk.booklet(Stamp::None));
    let back = walk.key.couplets.iter().flat_map(|couplet| {
        let to = [&couplet.yes, &couplet.no].into_iter().filter_map(|to| match to {
            Destination::Couplet(next) => Some(*next),
            _ => None,
        });
        to.map(|next| (next, couplet.number))
    });
    let back: Vec<(u32, u32)> = back.collect();
    assert!(back.len() > 5);
    for (at, from) in back {
        let (_, rest) = html.split_once(&format!(" id=\"q{at}\"")).expect("a question");
        let here = rest.split(" id=\"q").next().expect("a first part");
        assert!(here.contains(&format!("<a href=\"#q{from}\">question {from}</a>")), "{at}");
    }
}

#[test]
fn every_link_leads_to_one_place_of_the_page() {
    for walk in [hedge::hedge(), hedge::hostile(), hedge::broken()] {
        let html = page::html(&walk.booklet(Stamp::None));
        let mut ids = BTreeMap::new();
        for id in values(&html, "id") {
            *ids.entry(id).or_insert(0) += 1;
        }
        assert!(ids.values().all(|&times| times == 1), "{ids:?}");
        for link in values(&html, "href").iter().filter(|link| link.starts_with('#')) {
            assert!(ids.contains_key(&link[1..]), "{link}");
        }
    }
}

#[test]
fn stamps_and_warnings_stand_on_the_page() {
    let walk = hedge::hedge();
    let html = |stamp| page::html(&walk.booklet(stamp));
    assert!(!html(Stamp::None).contains("class=\"stamp\""));
    assert!(html(Stamp::Draft).contains("<strong>DRAFT"));
    assert!(html(Stamp::Draft).contains("<body class=\"draft\">"), "for paper");
    assert!(html(Stamp::TryingOut).contains("<strong>trying-out copy"));
    let html = html(Stamp::None);
    assert!(html.contains("<strong>blackthorn, hawthorn</strong>: It has long, hard thorns."));
    // Question 7 makes people touch; of all kinds with a caution three may be in the hand.
    let touched = between(&html, "<details class=\"caution touch\">", "</details>");
    let may_be = touched.split("<li").skip(1).filter(|li| !li.contains(" hidden"));
    let names: Vec<_> = may_be.map(|li| between(li, "<strong>", "<")).collect();
    assert_eq!(names, ["blackthorn", "ivy", "holly"]);
    assert_eq!(touched.matches("<li").count(), 7);
    let newcomers = html.matches("you may have found a newcomer.").count();
    let ends = html.matches("class=\"screen end\"").count();
    assert_eq!(newcomers, ends + 2, "and what the list says, with sentences and without");
}

#[test]
fn a_broken_key_is_shown_as_it_stands() {
    let html = page::html(&hedge::broken().booklet(Stamp::Draft));
    assert!(html.contains("it has no question 99"));
    assert!(html.contains("Nobody has written what comes after this answer."));
    assert!(html.contains("id=\"q11-2\""), "the second question 11");
    assert!(html.contains("Which of these two fits?"));
}

/// The named colours of one scheme.
fn colours(css: &str) -> BTreeMap<&str, [f64; 3]> {
    let lines = css.split([';', '{', '}']).filter_map(|part| part.trim().split_once(": #"));
    let channel = |hex: &str, at: usize| {
        f64::from(u8::from_str_radix(&hex[at..at + 2], 16).expect("two hex digits"))
    };
    lines.map(|(name, hex)| (name, [0, 2, 4].map(|at| channel(hex, at)))).collect()
}

/// Contrast of two colours by WCAG 2.2 (relative luminance of sRGB).
fn contrast(one: [f64; 3], other: [f64; 3]) -> f64 {
    let linear = |channel: f64| {
        let share = channel / 255.0;
        if share <= 0.04045 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
    };
    let light =
        |[r, g, b]: [f64; 3]| 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
    let (one, other) = (light(one), light(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// The names of the colours that stand in any of some properties.
fn used(properties: &[&str]) -> BTreeSet<&'static str> {
    let mut names = BTreeSet::new();
    for declaration in LOOK.split([';', '{', '}']) {
        let Some((property, value)) = declaration.trim().split_once(':') else { continue };
        if properties.contains(&property.trim()) {
            let parts = value.split("var(").skip(1);
            names.extend(parts.map(|part| part.split(')').next().unwrap_or("")));
        }
    }
    names
}

#[test]
fn contrast_is_that_of_the_published_value() {
    // W3C, Understanding SC 1.4.3: #767676 on white is 4.54.
    let grey = contrast([f64::from(0x76); 3], [255.0; 3]);
    assert!((grey - 4.54).abs() < 0.005, "{grey}");
    assert!((contrast([0.0; 3], [255.0; 3]) - 21.0).abs() < 1e-9);
}

#[test]
fn every_text_has_contrast_on_every_ground_in_every_scheme() {
    let (light, rest) = LOOK.split_once("@media (prefers-color-scheme: dark)").unwrap();
    let (dark, rest) = rest.split_once("* { box-sizing").unwrap();
    let (rest, print) = rest.split_once("@media print").unwrap();
    assert!(!rest.contains(": #"), "a colour that has no name");
    let grounds = used(&["background"]);
    let texts = used(&["color"]);
    // The two filled tabs are the only grounds that text in the colour of paper stands on.
    let filled = BTreeSet::from(["--ink", "--hedge"]);
    let quiet: BTreeSet<_> = grounds.difference(&filled).copied().collect();
    assert_eq!(quiet, BTreeSet::from(["--paper", "--tint"]));
    for scheme in [light, dark, print] {
        let scheme = colours(scheme);
        for text in texts.iter().filter(|&&text| text != "--paper") {
            for ground in &quiet {
                let contrast = contrast(scheme[text], scheme[ground]);
                assert!(contrast >= 4.5, "{text} on {ground}: {contrast:.2}");
            }
        }
        for ground in &filled {
            assert!(contrast(scheme["--paper"], scheme[ground]) >= 4.5, "paper on {ground}");
        }
        for line in used(&["border", "outline", "border-inline-start", "border-top"]) {
            assert!(contrast(scheme[line], scheme["--paper"]) >= 3.0, "{line}");
        }
    }
}
