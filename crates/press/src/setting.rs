//! What every sheet of one booklet is set with: faces, printable names, opened pictures.
//!
//! From a booklet to the words and pieces that several sheets share: the title, a kind's name,
//! the name of an end, the box for a picture. It does not place anything on a page.

mod marks;

use std::cell::{OnceCell, RefCell};
use std::collections::{BTreeMap, HashMap};

use spinney_model::{Couplet, End, LeafSize, TaxonIx, Wording};
use spinney_voice::Tongue;

use crate::copies::Class;
use crate::picture::NoPicture;
use crate::second_language::{self, Second};
use crate::sheet::face::{Faces, Weight};
use crate::sheet::frame::Frame;
use crate::sheet::ink::{Ink, Letters, MM_IN_PT, Pen, Style};
use crate::sheet::legible::{legible, says_something};
use crate::sheet::picture::{self, Pixels};
use crate::sheet::text::{Block, Run};
use crate::sheet::{Page, Piece, Role, Sheet};
use crate::{Booklet, Paper, Stamp, drawing, safety};

/// What a group writes at the foot of a sheet; never a child's name.
pub(crate) const OUR_GROUP: &str = "sheet-our-group";
/// What an adult writes there.
pub(crate) const NOTES: &str = "sheet-notes";

/// The most lines of place, season and part at the head of large print: about 250 letters.
const LARGE_SCENE: usize = 6;
/// A name longer than this is cut on paper.
const LONGEST_NAME: usize = 60;
/// An answer in the second language, in mm.
const LONGEST_ANSWER: f64 = 30.0;
/// Any other text of a person.
const LONGEST_TEXT: usize = 400;

/// What every sheet of one booklet is set with.
pub(crate) struct Setting<'a> {
    /// The booklet.
    pub(crate) booklet: &'a Booklet<'a>,
    /// How large the letters are.
    letters: Letters,
    /// The typeface.
    pub(crate) faces: Faces,
    pictures: BTreeMap<&'a str, Result<Pixels, NoPicture>>,
    /// What was set before: a chart tries many widths again and again.
    blocks: RefCell<HashMap<Setable, Block>>,
    /// How many lines a text takes.
    lines: RefCell<HashMap<Setable, usize>>,
    /// Whether the table names leaves: each box asks, and it is read off every heading.
    leaves: OnceCell<bool>,
    /// What is printed in a second language, if anything is.
    second: Option<Second>,
    /// How large the largest leaf of each kind is.
    sizes: OnceCell<Vec<Option<LeafSize>>>,
}

/// The most bytes of drawings that are held pixel by pixel: a hundred of 300 by 360 pixels.
const MOST_SHARP: usize = 32 << 20;
/// So many blocks are remembered, about 50 MB of them; then all are forgotten.
const MOST_BLOCKS: usize = 10_000;
/// So many counts of lines, about 30 MB of them.
const MOST_COUNTS: usize = 200_000;

/// A text with its style (bold, ink, size), leading and width.
type Setable = (String, (bool, u8, u64), u64, u64);

fn setable(text: &str, style: Style, width: f64) -> Setable {
    let letters = (style.weight == Weight::Bold, style.ink as u8, style.size.to_bits());
    (text.to_owned(), letters, style.leading.to_bits(), width.to_bits())
}

impl<'a> Setting<'a> {
    /// Opens faces and pictures.
    pub(crate) fn new(booklet: &'a Booklet<'a>) -> Self {
        let wanted = booklet.matrix.taxa().iter().filter_map(|taxon| taxon.picture.as_deref());
        let mut pictures: BTreeMap<&str, _> = BTreeMap::new();
        // Drawings stay sharp as long as all of them may be held pixel by pixel.
        let mut room = MOST_SHARP;
        for file in wanted {
            let Some(picture) = booklet.pictures.get(file) else { continue };
            pictures.entry(file).or_insert_with(|| {
                let opened = picture::open(picture, room);
                room -= opened.as_ref().map_or(0, Pixels::sharp);
                opened
            });
        }
        Self::with(booklet, booklet.letters, pictures)
    }

    fn with(
        booklet: &'a Booklet<'a>,
        letters: Letters,
        pictures: BTreeMap<&'a str, Result<Pixels, NoPicture>>,
    ) -> Self {
        let faces = Faces::new();
        Self {
            booklet,
            letters,
            second: Second::of(booklet).map(|second| second.on_paper(&faces)),
            faces,
            pictures,
            blocks: RefCell::default(),
            lines: RefCell::default(),
            leaves: OnceCell::new(),
            sizes: OnceCell::new(),
        }
    }

    /// The same in usual letters, for pages of a large sheet that adults read.
    pub(crate) fn in_usual_letters(&self) -> Self {
        Self::with(self.booklet, Letters::Usual, self.pictures.clone())
    }

    /// Whether it is large print: then nothing stands in two columns of words.
    pub(crate) fn is_large(&self) -> bool {
        self.letters == Letters::Large
    }

    /// Whether large print was wished, and this is none.
    pub(crate) fn is_not_large_after_all(&self) -> bool {
        self.booklet.letters == Letters::Large && !self.is_large()
    }

    /// The most lines of a text; large print takes twice as many.
    pub(crate) fn lines(&self, usual: usize) -> usize {
        if self.is_large() { 2 * usual } else { usual }
    }

    /// What is so long on paper, while the sheet is set, in mm.
    pub(crate) fn on_paper(&self, length: f64) -> f64 {
        length * self.letters.times()
    }

    /// Who comes along.
    pub(crate) fn class(&self) -> Class {
        Class::of(self.booklet.matrix.scene())
    }

    /// The language of the sheets.
    pub(crate) fn t(&self) -> Tongue {
        self.booklet.tongue
    }

    /// A message without anything to fill in.
    pub(crate) fn say(&self, message: &str) -> String {
        self.t().say(message)
    }

    /// Pages as a sheet of their own.
    pub(crate) fn sheet(&self, title: String, pages: Vec<Page>) -> Sheet {
        Sheet { title, language: self.t().tag(), pages }
    }

    /// `hazel, lime or wych elm`.
    pub(crate) fn either(&self, before: &[String], last: &str) -> String {
        self.t().with("list-or", &[("before", &before.join(", ")), ("last", &last)])
    }

    /// Where an answer leads; whether there is a question of this number.
    pub(crate) fn go_to(&self, number: u32, known: bool) -> String {
        let message = if known { "sheet-go-to" } else { "sheet-go-to-none" };
        self.t().with(message, &[("number", &number)])
    }

    /// Whether the table names leaves, so that there is one to stick into a box.
    pub(crate) fn speaks_of_leaves(&self) -> bool {
        *self
            .leaves
            .get_or_init(|| spinney_voice::wording::speaks_of_leaves(self.booklet.matrix))
    }

    /// How large the largest leaf of each kind is, as far as somebody measured it.
    pub(crate) fn leaves(&self) -> &[Option<LeafSize>] {
        self.sizes.get_or_init(|| (self.booklet.drawn.sizes)(self.booklet.matrix))
    }

    /// A person's text, printable.
    pub(crate) fn plain(&self, text: &str) -> String {
        legible(&self.faces, text, LONGEST_TEXT)
    }

    /// A text that is never cut, in pieces that are each printed whole: a box may break between
    /// them.
    pub(crate) fn whole<'t>(&self, text: &'t str) -> Vec<&'t str> {
        let mut pieces = Vec::new();
        let mut rest = text.trim();
        while let Some((most, _)) = rest.char_indices().nth(LONGEST_TEXT) {
            let cut = rest[..most].rfind(char::is_whitespace).unwrap_or(most);
            pieces.push(rest[..cut].trim());
            rest = rest[cut..].trim_start();
        }
        pieces.push(rest);
        pieces
    }

    /// Words set in one style.
    pub(crate) fn block(&self, text: &str, style: Style, width: f64) -> Block {
        self.set(text, self.letters.of(style), width)
    }

    /// The words of a picture, or of the place for one: in large print smaller than the others.
    pub(crate) fn caption(&self, text: &str, style: Style, width: f64) -> Block {
        self.set(text, style, width)
    }

    fn set(&self, text: &str, style: Style, width: f64) -> Block {
        let entry = setable(text, style, width);
        if let Some(block) = self.blocks.borrow().get(&entry) {
            return block.clone();
        }
        let block = Block::set(&self.faces, &[Run::new(self.plain(text), style)], width);
        let mut blocks = self.blocks.borrow_mut();
        if blocks.len() >= MOST_BLOCKS {
            blocks.clear();
        }
        blocks.insert(entry, block.clone());
        block
    }

    /// How high [`Self::block`] would be with at most so many lines, without setting it.
    pub(crate) fn high(&self, text: &str, style: Style, width: f64, most: usize) -> f64 {
        let style = self.letters.of(style);
        let entry = setable(text, style, width);
        let known = self.lines.borrow().get(&entry).copied();
        let count = known.unwrap_or_else(|| {
            let run = [Run::new(self.plain(text), style)];
            let count = Block::count_lines(&self.faces, &run, width);
            let mut lines = self.lines.borrow_mut();
            if lines.len() >= MOST_COUNTS {
                lines.clear();
            }
            lines.insert(entry, count);
            count
        });
        // Added up line by line, as a block adds them.
        (0..count.min(most)).fold(0.0, |high, _| high + style.size * MM_IN_PT * style.leading)
    }

    /// A paragraph in one style.
    pub(crate) fn text(&self, text: &str, style: Style, width: f64) -> Piece {
        Piece::text(self.block(text, style, width), Role::Paragraph)
    }

    /// A paragraph of several styles.
    pub(crate) fn runs(&self, runs: &[(&str, Style)], width: f64) -> Piece {
        let runs: Vec<_> = runs
            .iter()
            .map(|(text, style)| {
                let (front, back) = (text.starts_with(' '), text.ends_with(' '));
                let edge = |wanted: bool| if wanted { " " } else { "" };
                let plain = self.plain(text);
                Run::new(
                    format!("{}{plain}{}", edge(front), edge(back)),
                    self.letters.of(*style),
                )
            })
            .collect();
        Piece::text(Block::set(&self.faces, &runs, width), Role::Paragraph)
    }

    /// The same in the second language, beneath what is in the first: in grey, and lighter. As in
    /// the first, a name or a question has so many lines at most, and a caution is never cut.
    fn in_second(&self, text: &str, style: Style, width: f64, lines: usize) -> Option<Piece> {
        let tag = self.second.as_ref()?.tag;
        let style = Style { weight: Weight::Regular, ..style.inked(Ink::Soft) };
        let block = self.block(text, style, width).at_most(&self.faces, lines);
        Some(Piece::text(block, Role::Second(tag)))
    }

    /// A question in the second language; None: it has no such text.
    pub(crate) fn second_question(
        &self,
        couplet: &Couplet,
        style: Style,
        width: f64,
    ) -> Option<Piece> {
        let at = second_language::place(self.booklet, couplet)?;
        let text = self.second.as_ref()?.question(at)?;
        self.in_second(text, style, width, self.lines(6))
    }

    /// The name of an end in the second language; None: one of its kinds has none.
    pub(crate) fn second_end(&self, end: &End, style: Style, width: f64) -> Option<Piece> {
        let text = self.second.as_ref()?.end(end)?;
        self.in_second(&text, style, width, self.lines(6))
    }

    /// The name of a kind in the second language; None: it has none.
    pub(crate) fn second_name(
        &self,
        taxon: TaxonIx,
        style: Style,
        width: f64,
    ) -> Option<Piece> {
        let text = self.second.as_ref()?.name(taxon)?;
        self.in_second(text, style, width, self.lines(6))
    }

    /// The title in the second language; None: it has none.
    pub(crate) fn second_title(&self, style: Style, width: f64) -> Option<Piece> {
        self.second_text(self.booklet.matrix.scene().title.as_deref()?, style, width)
    }

    /// A title in the second language; None: it has none.
    fn second_text(&self, words: &str, style: Style, width: f64) -> Option<Piece> {
        self.in_second(self.second.as_ref()?.text(words)?, style, width, usize::MAX)
    }

    /// A caution in the second language, in pieces of which none is cut; empty: it has none.
    pub(crate) fn second_caution(&self, words: &str, style: Style, width: f64) -> Vec<Piece> {
        let text = self.second.as_ref().and_then(|second| second.text(words));
        let pieces = text.into_iter().flat_map(|text| self.whole(text));
        pieces.filter_map(|piece| self.in_second(piece, style, width, usize::MAX)).collect()
    }

    /// Who decides, in the second language, where it is one that Spinney speaks.
    pub(crate) fn second_rules(&self, style: Style, width: f64) -> Option<Piece> {
        let t = spinney_voice::second_language::tongue(self.booklet.matrix)?;
        self.in_second(&safety::local_rules(t), style, width, usize::MAX)
    }

    /// An answer in the second language, as it stands on its tab; None: it has none, or the
    /// question is a pair of leads.
    pub(crate) fn second_answer(
        &self,
        couplet: &Couplet,
        yes: bool,
        scale: f64,
    ) -> Option<Piece> {
        let second = self.second.as_ref()?;
        if matches!(couplet.wording, Wording::Leads { .. }) {
            return None;
        }
        let ink = if yes { Ink::Paper } else { Ink::Ink };
        let style =
            Style { size: Style::SMALL.size * scale.max(1.0), ..Style::SMALL.inked(ink) };
        let block = self.block(second.answer(yes)?, style, LONGEST_ANSWER);
        let block = block.at_most(&self.faces, 1);
        Some(Piece::text(block, Role::Second(second.tag)))
    }

    /// A heading; levels as in [`Role::Heading`].
    pub(crate) fn heading(&self, level: u8, text: &str, style: Style, width: f64) -> Piece {
        Piece::text(self.block(text, style, width), Role::Heading(level))
    }

    /// The caution for everybody where there is room for a few lines: a longer one is in the key.
    pub(crate) fn for_everybody(&self, text: &str) -> String {
        match self.whole(text)[..] {
            [_] => text.to_owned(),
            _ => self.say("sheet-caution-for-all-in-key"),
        }
    }

    /// What everybody on the visit must know, and who decides.
    pub(crate) fn to_mind(&self, width: f64) -> Piece {
        let rules = self.text(&safety::local_rules(self.t()), Style::SMALL, width);
        match safety::for_everybody(self.booklet.matrix) {
            Some(text) => {
                let text = self.for_everybody(text);
                let text = self.text(&text, Style::SMALL_STRONG.inked(Ink::Berry), width - 8.0);
                drawing::warning(5.5).with(8.0, 0.0, text).then(0.3, rules)
            }
            None => rules,
        }
    }

    /// The name of a kind as it can be printed; a name without letters gets its number.
    pub(crate) fn name(&self, taxon: TaxonIx) -> String {
        let name = self.booklet.matrix.taxa().get(taxon.0).map_or("", |taxon| &taxon.name);
        let name = legible(&self.faces, name, LONGEST_NAME);
        match (says_something(&name), name.is_empty()) {
            (true, _) => name,
            (false, false) => {
                let number = taxon.0 + 1;
                self.t().with("sheet-kind-number", &[("number", &number), ("name", &name)])
            }
            (false, true) => self.t().with("sheet-kind-no-name", &[("number", &(taxon.0 + 1))]),
        }
    }

    /// All names that stand at an end, the unrecognised ones too.
    pub(crate) fn names(&self, end: &End) -> Vec<String> {
        let known = end.taxa.iter().map(|taxon| self.name(*taxon));
        let strange = end.unrecognised.iter();
        known.chain(strange.map(|name| legible(&self.faces, name, LONGEST_NAME))).collect()
    }

    /// The name of an end: `hazel or wych elm`.
    pub(crate) fn end_name(&self, end: &End) -> String {
        const MOST: usize = 8;
        let mut names = self.names(end);
        if names.len() > MOST {
            let more = names.len() - (MOST - 1);
            names.truncate(MOST - 1);
            names.push(self.t().count("sheet-more-kinds", more));
        }
        match names.split_last() {
            None => self.say("sheet-no-name"),
            Some((only, [])) => only.clone(),
            Some((last, before)) => self.either(before, last),
        }
    }

    /// The title of the key.
    pub(crate) fn title(&self) -> String {
        let title = self.booklet.matrix.scene().title.as_deref().unwrap_or("");
        let title = legible(&self.faces, title, 120);
        if says_something(&title) {
            return title;
        }
        self.t().count("sheet-key-to", self.booklet.matrix.taxa().len())
    }

    /// Place, season, part: `Mill Lane · early October · you need a twig with leaves`.
    pub(crate) fn scene(&self) -> String {
        let scene = self.booklet.matrix.scene();
        let part = scene.part.as_ref();
        let part = part.map(|part| self.t().with("sheet-you-need", &[("part", part)]));
        let known = [scene.place.clone(), scene.season.clone(), part];
        let known: Vec<_> = known.into_iter().flatten().map(|text| self.plain(&text)).collect();
        known.join(" · ")
    }

    /// The frame of a sheet that does not show the key, upright or turned; by the messages of the
    /// name of the sheet and of what is asked for at its foot.
    pub(crate) fn frame(
        &self,
        paper: Paper,
        turned: bool,
        sheet: &str,
        writing: &str,
    ) -> Frame {
        let (short, long) = paper.size_mm();
        let times = self.letters.times();
        let (short, long) = (Frame::before(short, times), Frame::before(long, times));
        let (width, height) = if turned { (long, short) } else { (short, long) };
        let version = self.booklet.matrix.scene().version.as_deref();
        let version = version.map(|version| {
            self.t().with("sheet-version", &[("version", &self.plain(version))])
        });
        let date = self.booklet.day().map(|date| self.plain(&date));
        let known: Vec<_> = [version, date].into_iter().flatten().collect();
        let place = self.booklet.matrix.scene().place.as_deref().unwrap_or("");
        let whole = [&self.say(sheet), &self.title(), place].map(str::trim).join(" · ");
        Frame {
            width,
            height,
            times,
            running: whole.trim_end_matches([' ', '·']).to_owned(),
            version: known.join(" · "),
            writing: self.say(writing),
            stamp: None,
            beside: None,
            tongue: self.t(),
        }
    }

    /// The same for a sheet that shows the key itself: it says how the key stands.
    pub(crate) fn frame_of_key(
        &self,
        paper: Paper,
        turned: bool,
        sheet: &str,
        writing: &str,
    ) -> Frame {
        let stamp = self.booklet.stamp;
        Frame {
            stamp: (stamp == Stamp::Draft).then(|| self.say("sheet-draft")),
            beside: (stamp == Stamp::TryingOut).then(|| self.say("sheet-trying-out")),
            ..self.frame(paper, turned, sheet, writing)
        }
    }

    /// The title lines of a sheet's first page; `low` puts them on as few as possible.
    pub(crate) fn masthead(&self, frame: &Frame, sheet: &str, low: bool) -> Piece {
        self.head(frame, sheet, low, |_| None)
    }

    /// The same with the title in both languages.
    pub(crate) fn masthead_in_two(&self, frame: &Frame, sheet: &str, low: bool) -> Piece {
        self.head(frame, sheet, low, |room| self.second_title(Style::BODY, room))
    }

    fn head(
        &self,
        frame: &Frame,
        sheet: &str,
        low: bool,
        second: impl Fn(f64) -> Option<Piece>,
    ) -> Piece {
        let wide = frame.wide();
        // A long title is set a step smaller beside a smaller twig, if one line is saved.
        let fits = |style: Style, twig: f64| {
            self.block(&self.title(), style, f64::INFINITY).width <= wide - twig - 4.0
        };
        let (style, twig) = match () {
            () if !fits(Style::TITLE, 34.0) && fits(Style::HEADING, 24.0) => {
                (Style::HEADING, 24.0)
            }
            () => (Style::TITLE, 34.0),
        };
        let ornament = drawing::twig(twig);
        let room = wide - ornament.w - 4.0;
        let mut head = Piece::blank(room, 0.0);
        let above = self.text(sheet, Style::SMALL_STRONG.inked(Ink::Hedge), room);
        let right = above.w + 6.0;
        let badge = frame.badge(&self.faces, Role::Paragraph);
        let down = if badge.is_some() { 0.8 } else { 0.0 };
        let high = above.h + 2.0 * down;
        head = head.with(0.0, down, above);
        head = badge.into_iter().fold(head, |head, badge| head.with(right, 0.0, badge));
        let title = self.block(&self.title(), style, room).at_most(&self.faces, self.lines(3));
        let title = Piece::text(title, Role::Heading(1));
        let (top, beside) = (high + 0.5, title.w + 6.0);
        let scene = self.scene();
        let line = self.block(&scene, Style::BODY, f64::INFINITY);
        if low && title.h < 12.0 && beside + line.width <= room {
            let y = top + (title.h - line.height) / 2.0 + 0.7;
            head = head.with(0.0, top, title);
            head = head.with(beside, y, Piece::text(line, Role::Paragraph));
            if let Some(second) = second(room) {
                head = head.then(0.0, second);
            }
        } else {
            head = head.with(0.0, top, title);
            if let Some(second) = second(room) {
                head = head.then(0.0, second);
            }
            if !scene.is_empty() {
                let block = self.block(&scene, Style::BODY, room);
                // A page of large print is not all head.
                let most = if self.is_large() { LARGE_SCENE } else { usize::MAX };
                let block = block.at_most(&self.faces, most);
                head = head.then(0.5, Piece::text(block, Role::Paragraph));
            }
        }
        let y = (head.h - ornament.h - 1.0).max(0.0);
        let rule = Piece::rule(wide, Pen::solid(0.6, Ink::Hedge));
        let below = head.h.max(y + ornament.h) + 2.0;
        head.with(wide - ornament.w, y, ornament).with(0.0, below, rule)
    }
}
