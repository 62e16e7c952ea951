//! Values, asks and findings in a few words, exact to the last thousandth.

use spinney_model::{Ask, Asked, Cell, Fact, Finding, Matrix, OfLink, Scale, Share, Value};

/// What a yes means: `edge = toothed`, `blade length >= 22.5 mm`.
pub(crate) fn ask(ask: &Ask, matrix: &Matrix) -> String {
    let column = matrix.character(ask.character);
    let sign = match &column.scale {
        Scale::Measure { unit, .. } => unit.sign(),
        Scale::Words { .. } | Scale::Counts => "",
    };
    let yes = match (&ask.yes, &column.scale) {
        (Asked::States(asked), Scale::Words { states }) => {
            let named: Vec<&str> = asked.iter().map(|ix| states[ix.0].as_str()).collect();
            format!("= {}", named.join(" or "))
        }
        (Asked::States(asked), _) => format!("= {asked:?}"),
        (Asked::AtLeast(at), _) => format!(">= {at} {sign}"),
        (Asked::Below(at), _) => format!("< {at} {sign}"),
    };
    format!("{} {}", column.name, yes.trim_end())
}

/// What is found, without the number of the question and what stands in the readings anyway.
pub(crate) fn finding(finding: &Finding) -> String {
    let fact = format!("{:?}", finding.fact);
    match finding.fact {
        Fact::Link(OfLink::MayAsk { denied, ref unit, ref line, .. }) => {
            let (_, line) = line.split_once(": ").unwrap_or(("", line));
            let denied = if denied { "denied, " } else { "" };
            let unit = unit.map_or(String::new(), |unit| format!("no unit ({unit}), "));
            format!("asked back: {denied}{unit}{line}")
        }
        _ => without_number(&fact),
    }
}

/// `NotYesOrNo { question: 12 }` as `NotYesOrNo`.
fn without_number(fact: &str) -> String {
    let fact = fact.split_once('(').map_or(fact, |(_, inner)| inner.trim_end_matches(')'));
    let Some((before, behind)) = fact.split_once("question: ") else {
        return fact.to_owned();
    };
    let behind = behind.trim_start_matches(|sign: char| sign.is_ascii_digit());
    let behind = behind.strip_prefix(", ").unwrap_or(behind);
    format!("{before}{behind}").replace(" {  }", "")
}

fn shared<T>(all: &[(T, Share)], word: impl Fn(&T) -> String) -> String {
    let one = |(of, share): &(T, Share)| match *share == Share::from_integer(1) {
        true => word(of),
        false => format!("{} {share}", word(of)),
    };
    all.iter().map(one).collect::<Vec<_>>().join(" + ")
}

/// A cell: `toothed 3/4 + smooth 1/4, seen on 4`, `22.5..30`, `?`, `n/a`.
pub(crate) fn cell(cell: &Cell, scale: &Scale) -> String {
    let value = match (&cell.value, scale) {
        (Value::Unknown, _) => "?".to_owned(),
        (Value::DoesNotApply, _) => "n/a".to_owned(),
        (Value::States(all), Scale::Words { states }) => shared(all, |ix| states[ix.0].clone()),
        (Value::States(all), _) => format!("{all:?}"),
        (Value::Counts(all), _) => shared(all, u32::to_string),
        (Value::Range { low, high }, _) => format!("{low}..{high}"),
    };
    let seen = cell.seen.map_or(String::new(), |seen| {
        let plants = seen.plants.map_or(String::new(), |plants| format!(" of {plants} plants"));
        format!(", seen on {}{plants}", seen.on)
    });
    value + &seen
}

/// What a column holds: `words toothed, smooth`, `counts`, `measure mm, gap 0.5`.
pub(crate) fn scale(scale: &Scale) -> String {
    match scale {
        Scale::Words { states } => format!("words {}", states.join(", ")),
        Scale::Counts => "counts".to_owned(),
        Scale::Measure { unit, gap } => format!("measure {unit:?}, gap {gap}"),
    }
}

/// A finding with all that it holds, but for the cell's place, which is long.
pub(crate) fn short(finding: &Finding) -> String {
    let mut fact = format!("{:?}", finding.fact);
    while let Some((before, behind)) = fact.split_once("NamedCell {") {
        // Braces of the address within it are closed before its own.
        let mut depth = 1;
        let end = behind.find(|sign| {
            depth += i32::from(sign == '{') - i32::from(sign == '}');
            depth == 0
        });
        fact = format!("{before}…{}", &behind[end.map_or(behind.len(), |end| end + 1)..]);
    }
    format!("{}: {fact}", finding.place)
}

/// A whole table: its columns with all that is known of them, its kinds, its cells.
pub(crate) fn matrix(matrix: &Matrix) -> Vec<String> {
    let mut lines = vec![format!("  {:?}", matrix.scene())];
    for column in matrix.characters() {
        let plain = spinney_model::Character::named(&column.name, column.scale.clone());
        let mut line = format!("  column {}: {}", column.name, scale(&column.scale));
        if *column != plain {
            let more = format!("{column:?}");
            let more = more.split_once("written_in").map_or("", |(_, more)| more);
            line += &format!(", written_in{}", more.trim_end_matches(" }"));
        }
        lines.push(line);
    }
    for kind in matrix.taxon_indices() {
        let cells = matrix
            .character_indices()
            .map(|column| cell(matrix.cell(kind, column), &matrix.character(column).scale));
        let cells: Vec<String> = cells.collect();
        lines.push(format!("  {:?}: {}", matrix.taxon(kind), cells.join(" | ")));
    }
    lines
}
