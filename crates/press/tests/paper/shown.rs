//! What the answers look like, beside them: yes on the left, no on the right, and no further page.

use spinney_model::{
    Ask, Asked, Cell, Character, CharacterIx, Drawing, Matrix, Scale, StateIx, Stroke, Value,
    Weight,
};
use spinney_press::sheet::{Placed, Role, What};
use spinney_press::{Booklet, Drawn, Letters, Paper, Stamp, key_pages, page};

use crate::hedge::{Walked, hedge_walk, scene};

/// One line, another for each state of the column "edge"; nothing else is drawn.
fn state(matrix: &Matrix, at: CharacterIx, state: StateIx, word: Option<&str>) -> Vec<Drawing> {
    let line = |slope: f64| Drawing {
        frame: [0.0, 0.0, 48.0, 64.0],
        strokes: vec![Stroke {
            weight: Weight::Outline,
            points: vec![(0.0, 0.0), (48.0, slope)],
        }],
    };
    match matrix.character(at).name.as_str() {
        "edge" => vec![line(state.0 as f64)],
        // As far as the list has a word for it.
        "case" if word == Some("case") => vec![line(40.0)],
        _ => Vec::new(),
    }
}

/// The walk with columns that some of its questions are linked to: the numbers of the questions,
/// the column, the state that is asked for.
pub(crate) fn linked(questions: &[(usize, usize, usize)]) -> Walked {
    let mut walked = hedge_walk();
    let words = |name: &str, states: &[&str]| {
        let states = states.iter().map(|state| (*state).to_owned()).collect();
        Character::named(name, Scale::Words { states })
    };
    let mut characters = walked.matrix.characters().to_vec();
    let first = characters.len();
    characters.push(words("edge", &["toothed", "smooth", "spiny"]));
    characters.push(words("case", &["yes", "no"]));
    characters.push(words("smell", &["sweet", "none"]));
    let taxa = walked.matrix.taxa().to_vec();
    let row = || vec![Cell::from(Value::Unknown); characters.len()];
    let rows = taxa.iter().map(|_| row()).collect();
    walked.matrix = Matrix::new(scene(), taxa, characters.clone(), rows).expect("they fit");
    for couplet in &mut walked.key.couplets {
        couplet.ask = None;
    }
    for (question, column, state) in questions {
        let yes = Asked::States([StateIx(*state)].into());
        walked.key.couplets[*question].ask =
            Some(Ask { character: CharacterIx(first + column), yes });
    }
    walked
}

pub(crate) fn drawn<'a>(walked: &'a Walked) -> Booklet<'a> {
    let drawn = Drawn { state, ..Drawn::NOTHING };
    Booklet { drawn, ..walked.booklet(Stamp::None) }
}

fn words(placed: &Placed) -> Option<String> {
    match &placed.what {
        What::Text(block) => Some(block.words()),
        _ => None,
    }
}

#[test]
fn drawings_stand_beside_their_answers_in_the_order_of_the_key() {
    // Toothed, against smooth and spiny; a case, against nothing that could be drawn; a smell.
    let walked = linked(&[(0, 0, 0), (3, 1, 0), (4, 2, 0), (7, 0, 2)]);
    let booklet = drawn(&walked);
    for paper in [Paper::A4, Paper::Letter] {
        let sheet = key_pages::sheet(&booklet, paper);
        let placed: Vec<_> = sheet.pages.iter().flat_map(|page| page.placed()).collect();
        let mut question = String::new();
        let mut heard = Vec::new();
        for one in placed {
            match &one.role {
                Role::Heading(3) => question = words(one).unwrap_or_default().trim().to_owned(),
                Role::Figure(said) if said.starts_with("yes:") || said.starts_with("no:") => {
                    assert!((one.rect.h - 18.0).abs() < 0.01, "{:?}", one.rect);
                    heard.push((question.clone(), said.clone(), one.rect.x));
                }
                _ => {}
            }
        }
        let said: Vec<(&str, &str)> = heard
            .iter()
            .map(|(question, said, _)| (question.as_str(), said.as_str()))
            .collect();
        let texts = walked.key.couplets.iter().map(|couplet| couplet.wording.first());
        let texts: Vec<&str> = texts.collect();
        assert_eq!(
            said,
            [
                (texts[0], "yes: toothed"),
                (texts[0], "no: smooth"),
                (texts[0], "no: spiny"),
                (texts[3], "yes: case"),
                (texts[7], "yes: spiny"),
                (texts[7], "no: toothed"),
                (texts[7], "no: smooth"),
            ],
            "{paper:?}"
        );
        // Yes on the left of no.
        for two in heard.windows(2).filter(|two| two[0].0 == two[1].0) {
            assert!(two[0].2 + 10.0 < two[1].2, "{two:?}");
        }
    }
}

#[test]
fn no_drawing_needs_a_further_page() {
    let all: Vec<_> = (0..12).map(|question| (question, 0, question % 3)).collect();
    let mut printed = 0;
    for count in [2, 5, 9, 12] {
        let mut walked = linked(&all);
        walked.key.couplets.truncate(count);
        for paper in [Paper::A4, Paper::Letter, Paper::A3] {
            let plain = key_pages::sheet(&walked.booklet(Stamp::None), paper);
            let more = key_pages::sheet(&drawn(&walked), paper);
            assert!(more.pages.len() <= plain.pages.len(), "{count} questions, {paper:?}");
            let placed = more.pages.iter().flat_map(|page| page.placed());
            printed += placed.filter(|one| matches!(one.role, Role::Figure(_))).count();
        }
    }
    assert!(printed > 20, "only {printed} drawings are printed");
}

#[test]
fn the_phone_page_shows_the_same_and_each_drawing_once() {
    let walked = linked(&[(0, 0, 0), (7, 0, 2), (4, 2, 0)]);
    let html = page::html(&drawn(&walked));
    assert_eq!(html.matches("<symbol id=\"shows-").count(), 3, "three states");
    let answers: Vec<&str> = html.split("<a class=\"answer ").skip(1).collect();
    let labels = |answer: &str| -> Vec<String> {
        let answer = answer.split("</a>").next().unwrap();
        let labels = answer.split("aria-label=\"").skip(1);
        labels.map(|label| label.split('"').next().unwrap().to_owned()).collect()
    };
    let of = |question: usize| {
        let [yes, no] = [answers[2 * question], answers[2 * question + 1]].map(labels);
        (yes, no)
    };
    let owned =
        |words: &[&str]| words.iter().map(|word| (*word).to_owned()).collect::<Vec<_>>();
    assert_eq!(of(0), (owned(&["toothed"]), owned(&["smooth", "spiny"])));
    assert_eq!(of(7), (owned(&["spiny"]), owned(&["toothed", "smooth"])));
    assert_eq!(of(4), (Vec::new(), Vec::new()), "a smell is not drawn");
    assert!(!page::html(&walked.booklet(Stamp::None)).contains("class=\"shows\""));
}

/// "go to 3" stands on one line, in every language and in large print as well: where drawings leave
/// no room beside each other, the two ways stand beneath each other.
#[test]
fn where_an_answer_leads_is_on_one_line_beside_its_drawings() {
    let walked = linked(&[(0, 0, 0), (1, 0, 1), (2, 0, 0), (4, 0, 2), (7, 0, 2)]);
    for (language, begins) in [("en", "go to "), ("de", "weiter bei ")] {
        let tongue = spinney_voice::Tongue::for_person(&[language.to_owned()]);
        let mut stacked = [0; 2];
        for (at, letters) in [Letters::Usual, Letters::Large].into_iter().enumerate() {
            let booklet = Booklet { tongue, letters, ..drawn(&walked) };
            for paper in [Paper::A4, Paper::Letter] {
                let sheet = key_pages::sheet(&booklet, paper);
                let mut seen = 0;
                for page in &sheet.pages {
                    let mut before: Option<f64> = None;
                    for placed in page.placed() {
                        let What::Text(block) = &placed.what else { continue };
                        if !block.words().starts_with(begins) {
                            continue;
                        }
                        assert_eq!(block.lines.len(), 1, "{language} {letters:?} {paper:?}");
                        let left = before.replace(placed.rect.x);
                        stacked[at] += usize::from(left == Some(placed.rect.x));
                        seen += 1;
                    }
                }
                assert!(seen > 5, "{seen}");
            }
        }
        assert!(stacked[1] > 0 && stacked[1] > stacked[0], "{stacked:?}");
    }
}
