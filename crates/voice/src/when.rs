//! When something was done, as a person says it: `5 minutes ago`, `2026-11-25`.
//!
//! From two times in milliseconds since 1 January 1970 UTC to words. The calendar is the
//! proleptic Gregorian one of ISO 8601, by days counted in years that begin in March
//! (after Fliegel and Van Flandern 1968, in whole numbers).

use crate::Tongue;

const MINUTE: i64 = 60_000;
const HOUR: i64 = 60 * MINUTE;
const DAY: i64 = 24 * HOUR;

/// How long ago it was; after a month, the day.
pub fn ago(t: Tongue, at: i64, now: i64) -> String {
    let ago = now.saturating_sub(at);
    let count = |unit: i64| usize::try_from(ago / unit).unwrap_or(0);
    match ago {
        _ if ago < MINUTE => t.say("done-just-now"),
        _ if ago < HOUR => t.count("done-minutes-ago", count(MINUTE)),
        _ if ago < DAY => t.count("done-hours-ago", count(HOUR)),
        _ if ago < 30 * DAY => t.count("done-days-ago", count(DAY)),
        _ => date(at),
    }
}

/// As programs read it: `2026-11-25T16:02:00Z`.
pub fn iso(at: i64) -> String {
    let (hours, minutes, seconds) = clock(at);
    format!("{}T{hours:02}:{minutes:02}:{seconds:02}Z", date(at))
}

/// As people read it: `2026-11-25 16:02 UTC`.
pub fn readable(at: i64) -> String {
    let (hours, minutes, _) = clock(at);
    format!("{} {hours:02}:{minutes:02} UTC", date(at))
}

fn clock(at: i64) -> (i64, i64, i64) {
    let seconds = at.rem_euclid(DAY) / 1000;
    (seconds / 3600, seconds / 60 % 60, seconds % 60)
}

/// `2026-11-25`
fn date(at: i64) -> String {
    // Days since 1 March of the year 0; 400 years have 146,097 days.
    let days = at.div_euclid(DAY) + 719_468;
    let (era, day) = (days.div_euclid(146_097), days.rem_euclid(146_097));
    let year = (day - day / 1_460 + day / 36_524 - day / 146_096) / 365;
    let day = day - (365 * year + year / 4 - year / 100);
    // Months from March on have 31, 30, 31, 30, 31 days, and so again.
    let month = (5 * day + 2) / 153;
    let day = day - (153 * month + 2) / 5 + 1;
    let (month, next) = if month < 10 { (month + 3, 0) } else { (month - 9, 1) };
    format!("{:04}-{month:02}-{day:02}", era * 400 + year + next)
}

#[cfg(test)]
mod tests {
    //! Days that are easily got wrong.

    use super::{DAY, date, iso};

    #[test]
    fn days_are_counted_as_the_calendar_counts_them() {
        for (days, expected) in [
            (0, "1970-01-01"),
            (-1, "1969-12-31"),
            (11_016, "2000-02-29"),
            (11_017, "2000-03-01"),
            (20_781, "2026-11-24"),
            (20_782, "2026-11-25"),
            (47_540, "2100-02-28"),
            (47_541, "2100-03-01"),
        ] {
            assert_eq!(date(days * DAY), expected);
        }
        assert_eq!(iso(20_782 * DAY + 57_723_456), "2026-11-25T16:02:03Z");
        // A day later the date is another one, for four hundred years.
        let mut before = date(0);
        for day in 1..146_098 {
            let next = date(day * DAY);
            assert!(next > before, "{next} after {before}");
            before = next;
        }
        assert_eq!(before, "2370-01-01");
    }
}
