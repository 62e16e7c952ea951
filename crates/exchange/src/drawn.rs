//! A kept drawing in words: `-150 -8000 6000 9000|outline 0 0 12 -30|fine 5 5 9 9`.
//!
//! From a drawing to one text, the same in the journal and in a form, and back: its frame, then
//! line by line how heavy it is and its first point, and from each point to the next. Anybody may
//! have written it: what is no drawing, or has too many points, is none.

use spinney_model::limits::DRAWING_POINTS;
use spinney_model::{KeptDrawing, KeptStroke, Weight};

/// No drawing is larger than this, in hundredths of a mm: two metres.
const LARGEST: i64 = 200_000;

const WEIGHTS: [(Weight, &str); 6] = [
    (Weight::Fine, "fine"),
    (Weight::Hatch, "hatch"),
    (Weight::Midrib, "midrib"),
    (Weight::Outline, "outline"),
    (Weight::Twig, "twig"),
    (Weight::Heavy, "heavy"),
];

/// It in words.
pub fn write(drawing: &KeptDrawing) -> String {
    let mut text = drawing.frame.map(|side| side.to_string()).join(" ");
    for stroke in &drawing.strokes {
        let known = WEIGHTS.iter().find(|(weight, _)| *weight == stroke.weight);
        let (_, word) = known.expect("every weight has a word");
        text.push('|');
        text.push_str(word);
        let mut before = (0, 0);
        for (x, y) in &stroke.points {
            text.push_str(&format!(" {} {}", x - before.0, y - before.1));
            before = (*x, *y);
        }
    }
    text
}

/// It from words; None: they are none.
pub fn read(text: &str) -> Option<KeptDrawing> {
    let mut parts = text.split('|');
    let frame: Vec<i32> = numbers(parts.next()?)?;
    let frame: [i32; 4] = frame.try_into().ok()?;
    let mut left = DRAWING_POINTS;
    let stroke = |part: &str| {
        let (word, steps) = part.split_once(' ')?;
        let (weight, _) = WEIGHTS.iter().find(|(_, known)| *known == word)?;
        let steps = numbers(steps)?;
        left = left.checked_sub(steps.len() / 2).filter(|_| steps.len() % 2 == 0)?;
        let mut here = (0, 0);
        let points = steps.chunks_exact(2).map(|step| {
            here = (within(here.0, step[0])?, within(here.1, step[1])?);
            Some(here)
        });
        Some(KeptStroke { weight: *weight, points: points.collect::<Option<_>>()? })
    };
    let strokes = parts.map(stroke).collect::<Option<Vec<_>>>()?;
    let has_room = frame[2] > 0 && frame[3] > 0 && !strokes.is_empty();
    has_room.then_some(KeptDrawing { frame, strokes })
}

fn numbers(text: &str) -> Option<Vec<i32>> {
    let number = |word: &str| word.parse::<i32>().ok().and_then(|number| within(0, number));
    text.split(' ').map(number).collect()
}

fn within(here: i32, step: i32) -> Option<i32> {
    let there = i64::from(here) + i64::from(step);
    (there.abs() <= LARGEST).then_some(there as i32)
}

#[cfg(test)]
mod tests {
    //! A drawing comes back; what is none is none.

    use super::*;

    #[test]
    fn a_drawing_comes_back_from_its_words() {
        let weights = WEIGHTS.iter().map(|(weight, _)| *weight).enumerate();
        let strokes = weights.map(|(at, weight)| KeptStroke {
            weight,
            points: vec![(0, -5), (12, 30 * at as i32), (-400, 7)],
        });
        let drawing =
            KeptDrawing { frame: [-150, -8000, 6000, 9000], strokes: strokes.collect() };
        let text = write(&drawing);
        assert!(
            text.starts_with("-150 -8000 6000 9000|fine 0 -5 12 5 -412 7|hatch "),
            "{text}"
        );
        assert_eq!(read(&text), Some(drawing));
    }

    #[test]
    fn what_is_no_drawing_is_none() {
        let many = format!("0 0 9 9|fine{}", " 1 1".repeat(DRAWING_POINTS + 1));
        let enough = format!("0 0 9 9|fine{}", " 1 1".repeat(DRAWING_POINTS));
        assert!(read(&enough).is_some());
        for text in [
            "",
            "0 0 9 9",
            "0 0 9|fine 1 1",
            "0 0 0 9|fine 1 1",
            "0 0 9 9|fine 1",
            "0 0 9 9|fine",
            "0 0 9 9|thick 1 1",
            "0 0 9 9|fine 1 x",
            "0 0 9 9|fine 1 99999999999",
            "0 0 9 9|fine 150000 1 150000 1",
            many.as_str(),
        ] {
            assert_eq!(read(text), None, "{text}");
        }
    }
}
