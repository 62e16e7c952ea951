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
    assert!(parts[1].x > parts[0].x);
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
