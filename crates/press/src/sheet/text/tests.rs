//! Blocks of text: where lines break, and what becomes of words that are too long.

use super::{Block, Run};
use crate::sheet::face::Faces;
use crate::sheet::ink::Style;

fn lines(text: &str, width: f64) -> Vec<String> {
    let block = Block::set(&Faces::new(), &[Run::new(text, Style::BODY)], width);
    for line in &block.lines {
        assert!(line.width <= width + 0.2, "{} mm in {width} mm", line.width);
    }
    let text = |line: &super::Line| line.parts.iter().map(|part| part.text.clone()).collect();
    block.lines.iter().map(text).collect()
}

#[test]
fn lines_break_between_words_and_keep_every_letter() {
    let text = "Is the leaf made of several leaflets on one stalk?";
    let set = lines(text, 60.0);
    assert!(set.len() > 1);
    assert_eq!(set.concat(), text);
    assert!(set.iter().all(|line| !line.starts_with(' ')));
}

#[test]
fn a_word_longer_than_the_line_is_cut_and_not_lost() {
    let text = "hedge".repeat(60);
    let set = lines(&text, 40.0);
    assert!(set.len() > 10);
    assert_eq!(set.concat(), text);
}

#[test]
fn bold_words_inside_a_line_stand_side_by_side() {
    let runs = [Run::new("holly: ", Style::STRONG), Run::new("spines that prick", Style::BODY)];
    let block = Block::set(&Faces::new(), &runs, 150.0);
    let parts = &block.lines[0].parts;
    assert_eq!((block.lines.len(), parts.len()), (1, 2));
    // The bold words end where the others begin.
    let first = &parts[0];
    let wide = Faces::new().width(&first.text, first.style.weight);
    let wide = wide * Style::STRONG.size * super::MM_IN_PT;
    assert!((parts[1].x - (first.x + wide)).abs() < 0.01, "{} after {wide}", parts[1].x);
    assert_eq!(block.words().trim(), "holly: spines that prick");
}

#[test]
fn what_is_cut_is_marked() {
    let faces = Faces::new();
    let text = "one two three four five six seven eight nine ten";
    let block = Block::set(&faces, &[Run::new(text, Style::BODY)], 30.0).at_most(&faces, 2);
    assert_eq!(block.lines.len(), 2);
    assert!(block.words().trim().ends_with('…'));
}

#[test]
fn what_is_centred_has_the_same_room_on_both_sides_and_what_is_flush_has_none_on_the_right() {
    let faces = Faces::new();
    let set = || Block::set(&faces, &[Run::new("hazel and holly", Style::BODY)], 100.0);
    let wide = set().lines[0].width;
    assert!(wide > 20.0 && wide < 60.0, "{wide}");
    let centred = set().centred(100.0);
    assert_eq!(centred.lines[0].parts[0].x, (100.0 - wide) / 2.0);
    assert_eq!(set().flush_right(100.0).lines[0].parts[0].x, 100.0 - wide);
    assert_eq!(set().centred(10.0).lines[0].parts[0].x, 0.0, "never into the left margin");
}

#[test]
fn lines_stand_one_beneath_the_other_and_what_is_cut_is_as_high_as_what_is_kept() {
    let faces = Faces::new();
    let text = "one two three four five six seven eight nine ten";
    let whole = Block::set(&faces, &[Run::new(text, Style::BODY)], 30.0);
    let step = Style::BODY.size * super::MM_IN_PT * Style::BODY.leading;
    assert!(whole.lines.len() > 3);
    for (line, at) in whole.lines.iter().zip(0..) {
        assert!((line.top - f64::from(at) * step).abs() < 1e-9, "{at}: {}", line.top);
        assert!((line.height - step).abs() < 1e-9);
        // Letters stand on it below the middle of the line, and inside the line.
        let down = line.baseline - line.top;
        assert!(down > step / 2.0 && down < step, "{down} of {step}");
    }
    assert!((whole.height - whole.lines.len() as f64 * step).abs() < 1e-9);
    let cut = whole.at_most(&faces, 2);
    assert!((cut.height - 2.0 * step).abs() < 1e-9, "{}", cut.height);
}
