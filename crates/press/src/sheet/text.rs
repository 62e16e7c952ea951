//! Setting text: runs of words to lines that fit a width.
//!
//! From runs (words in one style each) and a width in mm to a block of lines with glyphs.
//! Lines break where Unicode allows it (UAX 14, by `unicode-linebreak`); a word longer than
//! the line is cut between letters rather than let into the margin. Text is set ragged right;
//! there is no hyphenation, since early readers stumble over broken words.

use unicode_linebreak::linebreaks;

use super::face::{Faces, Glyph};
use super::ink::{MM_IN_PT, Style};

/// Words in one style.
#[derive(Clone, Debug)]
pub struct Run {
    /// The words, already legible.
    pub text: String,
    /// How they are set.
    pub style: Style,
}

impl Run {
    /// Words in one style.
    pub fn new(text: impl Into<String>, style: Style) -> Self {
        Self { text: text.into(), style }
    }
}

/// Set lines, one beneath the other.
#[derive(Clone, Debug, Default)]
pub struct Block {
    /// The lines.
    pub lines: Vec<Line>,
    /// The width of the longest line, in mm.
    pub width: f64,
    /// The height of all lines, in mm.
    pub height: f64,
}

/// One line.
#[derive(Clone, Debug, Default)]
pub struct Line {
    /// Its parts from left to right.
    pub parts: Vec<Part>,
    /// From the top of the block to the line letters stand on, in mm.
    pub baseline: f64,
    /// From the top of the block to the line's own top, in mm.
    pub top: f64,
    /// Its height in mm.
    pub height: f64,
    /// Its width in mm, without the space at its end.
    pub width: f64,
}

/// A stretch of a line in one style.
#[derive(Clone, Debug)]
pub struct Part {
    /// From the left edge of the block, in mm.
    pub x: f64,
    /// The words.
    pub text: String,
    /// Their glyphs.
    pub glyphs: Vec<Glyph>,
    /// How they are set.
    pub style: Style,
}

impl Block {
    /// Sets runs into lines no wider than `width` mm.
    pub fn set(faces: &Faces, runs: &[Run], width: f64) -> Self {
        let mut block = Self::default();
        for parts in lines(faces, runs, width) {
            block.add(faces, &parts);
        }
        block
    }

    /// How many lines [`Block::set`] would make, without setting them.
    pub fn count_lines(faces: &Faces, runs: &[Run], width: f64) -> usize {
        lines(faces, runs, width).len()
    }

    /// All lines as one text, their breaks as they are on paper.
    pub fn words(&self) -> String {
        let mut words = String::new();
        for line in &self.lines {
            for part in &line.parts {
                words.push_str(&part.text);
            }
            if !words.ends_with(' ') {
                words.push(' ');
            }
        }
        words
    }

    /// The smallest letters in it, in points.
    pub fn smallest(&self) -> f64 {
        let parts = self.lines.iter().flat_map(|line| &line.parts);
        parts.map(|part| part.style.size).fold(f64::INFINITY, f64::min)
    }

    /// Moves every line to the middle of a width.
    pub fn centred(mut self, width: f64) -> Self {
        for line in &mut self.lines {
            let shift = ((width - line.width) / 2.0).max(0.0);
            line.parts.iter_mut().for_each(|part| part.x += shift);
        }
        self.width = width;
        self
    }

    /// Moves every line to the right edge of a width.
    pub fn flush_right(mut self, width: f64) -> Self {
        for line in &mut self.lines {
            let shift = (width - line.width).max(0.0);
            line.parts.iter_mut().for_each(|part| part.x += shift);
        }
        self.width = width;
        self
    }

    /// Keeps at most so many lines; what is cut is marked by an ellipsis.
    pub fn at_most(mut self, faces: &Faces, lines: usize) -> Self {
        if self.lines.len() <= lines {
            return self;
        }
        self.lines.truncate(lines.max(1));
        if let Some(part) = self.lines.last_mut().and_then(|line| line.parts.last_mut()) {
            let kept = part.text.trim_end().to_owned();
            let short = kept.chars().count().saturating_sub(2);
            part.text = kept.chars().take(short).chain(['…']).collect();
            part.glyphs = faces.shape(&part.text, part.style.weight);
        }
        self.height = self.lines.last().map_or(0.0, |line| line.top + line.height);
        self
    }

    fn add(&mut self, faces: &Faces, words: &[Run]) {
        let size = |run: &Run| run.style.size * MM_IN_PT;
        let height = words.iter().map(|run| size(run) * run.style.leading).fold(0.0, f64::max);
        let largest = words.iter().map(size).fold(0.0, f64::max);
        // Capitals are about 0.7 of the size high: half of that below the middle of the line
        // centres them.
        let baseline = self.height + height / 2.0 + largest * 0.35;
        let (mut x, mut line) =
            (0.0, Line { baseline, top: self.height, height, ..Line::default() });
        for run in joined(words) {
            let glyphs = faces.shape(&run.text, run.style.weight);
            let wide = |text: &str| faces.width(text, run.style.weight) * size(&run);
            line.width = x + wide(run.text.trim_end());
            let start = x;
            x += glyphs.iter().map(|glyph| glyph.advance).sum::<f64>() * size(&run);
            line.parts.push(Part { x: start, text: run.text, glyphs, style: run.style });
        }
        self.width = self.width.max(line.width);
        self.height += height;
        self.lines.push(line);
    }
}

/// Runs broken into lines no wider than `width` mm.
fn lines(faces: &Faces, runs: &[Run], width: f64) -> Vec<Vec<Run>> {
    let mut setter = Setter { faces, width, line: Vec::new(), used: 0.0, done: Vec::new() };
    for word in words(runs) {
        setter.word(word);
    }
    setter.end_line();
    setter.done
}

/// Neighbours in one style as one run.
fn joined(words: &[Run]) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for word in words {
        match runs.last_mut() {
            Some(last) if last.style == word.style => last.text.push_str(&word.text),
            _ => runs.push(word.clone()),
        }
    }
    runs
}

/// A stretch of runs between two places where a line may break.
fn words(runs: &[Run]) -> Vec<Vec<Run>> {
    let whole: String = runs.iter().map(|run| run.text.as_str()).collect();
    let mut breaks = linebreaks(&whole).map(|(at, _)| at).peekable();
    let (mut words, mut word, mut at) = (Vec::new(), Vec::new(), 0);
    for run in runs {
        let (start, end) = (at, at + run.text.len());
        while at < end {
            let stop = breaks.peek().copied().unwrap_or(end).min(end);
            word.push(Run::new(&run.text[at - start..stop - start], run.style));
            at = stop;
            if breaks.peek() == Some(&at) {
                breaks.next();
                words.push(std::mem::take(&mut word));
            }
        }
    }
    if !word.is_empty() {
        words.push(word);
    }
    words
}

/// Fills lines with words.
struct Setter<'a> {
    faces: &'a Faces,
    width: f64,
    line: Vec<Run>,
    used: f64,
    done: Vec<Vec<Run>>,
}

impl Setter<'_> {
    fn wide(&self, text: &str, style: Style) -> f64 {
        self.faces.width(text, style.weight) * style.size * MM_IN_PT
    }

    fn word(&mut self, word: Vec<Run>) {
        let full: f64 = word.iter().map(|run| self.wide(&run.text, run.style)).sum();
        let space: f64 = word.last().map_or(0.0, |run| {
            self.wide(&run.text, run.style) - self.wide(run.text.trim_end(), run.style)
        });
        if self.used + full - space > self.width && !self.line.is_empty() {
            self.end_line();
        }
        if full - space > self.width {
            return self.letters(word);
        }
        self.used += full;
        self.line.extend(word);
    }

    /// A word longer than a line: as many letters as fit, and on.
    fn letters(&mut self, word: Vec<Run>) {
        for run in word {
            for letter in run.text.chars() {
                let mark = matches!(u32::from(letter), 0x300..=0x36F | 0x1AB0..=0x1AFF);
                let wide = self.wide(letter.encode_utf8(&mut [0; 4]), run.style);
                if self.used + wide > self.width
                    && !self.line.is_empty()
                    && !mark
                    && letter != ' '
                {
                    self.end_line();
                }
                self.used += wide;
                match self.line.last_mut() {
                    Some(last) if last.style == run.style => last.text.push(letter),
                    _ => self.line.push(Run::new(letter, run.style)),
                }
            }
        }
    }

    fn end_line(&mut self) {
        if !self.line.is_empty() {
            self.done.push(std::mem::take(&mut self.line));
        }
        self.used = 0.0;
    }
}

#[cfg(test)]
mod tests;
