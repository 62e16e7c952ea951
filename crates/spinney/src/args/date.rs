//! The date at the foot of the sheets: any date as people write it, none that is not there.
//!
//! From a text to the same text, or to why it is no date. What is only printed need not be
//! understood: in other languages than English any text with a figure is taken.

use super::Unfit;
use crate::words::Text;

const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// `3 October 2026`, `2026-10-03`, `03/10/2026`, `autumn 2026`; `today` is today.
pub(super) fn read(text: &str) -> Result<String, Unfit> {
    let text = text.trim();
    if text.eq_ignore_ascii_case("today") {
        return Ok(jiff::Zoned::now().strftime("%-d %B %Y").to_string());
    }
    if !text.contains(|sign: char| sign.is_ascii_digit()) {
        let text = [("text", text.into())];
        return Err(Unfit::new("usage-no-date", "usage-no-date-remedy", text));
    }
    match day(text) {
        Some((day, month, year)) => there_is(text, day, month, year),
        None => Ok(text.to_owned()),
    }
}

/// Day, month and year, where the text says all three.
fn day(text: &str) -> Option<(i8, i8, i16)> {
    let pieces: Vec<&str> = text
        .split(|sign: char| sign.is_whitespace() || matches!(sign, '/' | '-' | '.' | ','))
        .filter(|piece| !piece.is_empty())
        .collect();
    let [one, two, three] = pieces.as_slice() else { return None };
    let number = |piece: &str| piece.trim_end_matches(char::is_alphabetic).parse::<i16>().ok();
    let small = |piece: &str| number(piece).and_then(|number| i8::try_from(number).ok());
    let month = |piece: &str| {
        let known = |month: &&str| {
            let (month, piece) = (month.to_lowercase(), piece.to_lowercase());
            piece.len() > 2 && month.starts_with(&piece)
        };
        MONTHS.iter().position(known).and_then(|at| i8::try_from(at + 1).ok())
    };
    if let Some(named) = month(two) {
        return Some((small(one)?, named, number(three)?));
    }
    if let Some(named) = month(one) {
        return Some((small(two)?, named, number(three)?));
    }
    let plain = pieces.iter().all(|piece| piece.bytes().all(|byte| byte.is_ascii_digit()));
    match (one.len(), three.len()) {
        _ if !plain => None,
        (4, _) => Some((small(three)?, small(two)?, number(one)?)),
        // In America the month comes first.
        (_, 4) if small(two)? > 12 => Some((small(two)?, small(one)?, number(three)?)),
        (_, 4) => Some((small(one)?, small(two)?, number(three)?)),
        _ => None,
    }
}

fn there_is(text: &str, day: i8, month: i8, year: i16) -> Result<String, Unfit> {
    if jiff::civil::Date::new(year, month, day).is_ok() {
        return Ok(text.to_owned());
    }
    let text = ("text", text.into());
    let name = usize::try_from(month - 1).ok().and_then(|at| MONTHS.get(at));
    Err(match name {
        Some(name) => {
            let day = ("day", Text::Day(format!("{day} {name} {year}")));
            Unfit::new("usage-no-such-day", "usage-no-such-day-remedy", [text, day])
        }
        None => {
            let month = ("month", month.to_string().into());
            Unfit::new("usage-no-such-month", "usage-no-such-month-remedy", [text, month])
        }
    })
}

#[cfg(test)]
mod tests {
    use super::read;

    #[test]
    fn dates_are_taken_as_people_write_them_and_days_that_are_not_there_are_not() {
        for text in [
            "3 October 2026",
            "October 3, 2026",
            "3rd Oct 2026",
            "03/10/2026",
            "10/13/2026",
            "2026-10-03",
            "3. Oktober 2026",
            "autumn 2026",
            "29 February 2028",
            "week 3",
        ] {
            assert_eq!(read(text).ok().as_deref(), Some(text));
        }
        for text in ["tomorrow", "", "31/02/2026", "2026-02-31", "31 June 2026", "1/13/13/2026"]
        {
            assert_eq!(read(text).is_err(), text != "1/13/13/2026", "{text}");
        }
        assert!(read("Today").is_ok_and(|today| today.contains("20")));
    }
}
