//! Claims about keys: true ones stand and are found a second time, false ones fall, each with
//! the finding that names what is not so.

use std::collections::{BTreeMap, BTreeSet};

use spinney_check::{Proof, Report, Road, Settings, check};
use spinney_model::*;

#[path = "drawn/good_key.rs"]
mod drawn;

use drawn::{codes, key, matrix};

/// Invented for these tests.
const TWIGS: &str = "
    edge: toothed, smooth
    lobes: lobed, entire
    stalk: mm gap 3
    hazel | toothed | entire | 5-15
    lime  | toothed | lobed  | 30-45
    beech | smooth  | entire | 5-15
    maple | smooth  | lobed  | 30-60
";

const BY_EDGE: &str = "
    1. Is the edge toothed? [edge = toothed] -> 2 / 3
    2 (1). Is it lobed? [lobes = lobed] -> lime / hazel
    3 (1). Is the leaf lobed? [lobes = lobed] -> maple / beech
";

/// The same with the other question first.
const BY_LOBES: &str = "
    1. Is it lobed? [lobes = lobed] -> 2 / 3
    2 (1). Is the edge toothed? [edge = toothed] -> lime / maple
    3 (1). Is the leaf edge toothed? [edge = toothed] -> hazel / beech
";

/// With a ruler, which takes two steps.
const BY_STALK: &str = "
    1. Is the stalk 22.5 mm or longer? [stalk >= 22.5] -> 2 / 3
    2 (1). Is the edge toothed? [edge = toothed] -> lime / maple
    3 (1). Is the leaf edge toothed? [edge = toothed] -> hazel / beech
";

const EDGE: CharacterIx = CharacterIx(0);
const LOBES: CharacterIx = CharacterIx(1);
const STALK: CharacterIx = CharacterIx(2);
const HAZEL: TaxonIx = TaxonIx(0);
const LIME: TaxonIx = TaxonIx(1);
const BEECH: TaxonIx = TaxonIx(2);

/// Nothing is found.
const NOTHING: [Fact; 0] = [];

fn whole(number: i128) -> Share {
    Share::from_integer(number)
}

/// Two questions a find, as is claimed of the keys above; `total` steps over all four.
fn claim(total: i128, wishes: Wishes) -> Claim {
    let within = vec![2; wishes.early.len()];
    Claim {
        total: whole(total),
        lower_bound: whole(total),
        mean_questions: whole(2),
        longest: 2,
        stopped: None,
        heaps: 0,
        kept: None,
        wishes,
        reached: Vec::new(),
        prices: Vec::new(),
        within,
        touching: Vec::new(),
        certificate: None,
    }
}

fn opinion(matrix: &Matrix, text: &str, claim: &Claim) -> Report {
    check(matrix, &key(matrix, text), Some(claim), &Settings::default())
}

/// What the findings say.
fn said(report: &Report) -> Vec<Fact> {
    report.findings.iter().map(|found| found.fact.clone()).collect()
}

/// What a key reaches of one goal, and what was claimed.
fn better(goal: Goal, is: i128, said: i128) -> Fact {
    OfClaim::BetterKey { best: Reaches::Goal(goal, whole(is)), said: whole(said) }.into()
}

/// A question for one state.
fn asked_for(about: &str, state: &str) -> WhatIsAsked {
    WhatIsAsked::Of { about: about.to_owned(), form: Form::States(vec![state.to_owned()]) }
}

fn pair(one: &str, other: &str) -> [String; 2] {
    [one, other].map(str::to_owned)
}

fn states(character: CharacterIx, state: usize) -> Ask {
    Ask { character, yes: Asked::States([StateIx(state)].into()) }
}

fn kept(ask: Ask, yes: Option<Ask>, no: Option<Ask>) -> Vec<Kept> {
    let mut kept = Vec::new();
    Kept::add(&mut kept, ask, None);
    for (after, ask) in [(true, yes), (false, no)] {
        ask.into_iter().for_each(|ask| _ = Kept::add(&mut kept, ask, Some((0, after))));
    }
    kept
}

#[test]
fn a_true_claim_is_found_a_second_time() {
    let matrix = matrix(TWIGS);
    for (text, wishes) in [
        (BY_EDGE, Wishes::default()),
        (BY_LOBES, Wishes::default()),
        (BY_LOBES, Wishes { order: vec![LOBES], ..Wishes::default() }),
        (BY_EDGE, Wishes { never: [STALK].into(), ..Wishes::default() }),
        (BY_LOBES, Wishes { kept: kept(states(LOBES, 0), None, None), ..Wishes::default() }),
        // Kept as "is it smooth?", asked as "is it toothed?": the same with its answers
        // exchanged.
        (
            BY_EDGE,
            Wishes {
                kept: kept(states(EDGE, 1), Some(states(LOBES, 1)), None),
                ..Wishes::default()
            },
        ),
        (BY_LOBES, Wishes { early: vec![Early::Leave(HAZEL)], ..Wishes::default() }),
    ] {
        let report = opinion(&matrix, text, &claim(8, wishes.clone()));
        assert_eq!(said(&report), NOTHING, "{wishes:?}");
        assert!(
            matches!(report.proof, Proof::Confirmed(Road::EveryKey { nodes }) if nodes > 1),
            "{wishes:?}"
        );
    }
    let without = check(&matrix, &key(&matrix, BY_EDGE), None, &Settings::default());
    assert_eq!(without.proof, Proof::NothingClaimed);
}

/// The edge is felt, and hazel may hurt: the lobes come first, and only beech and maple are felt.
#[test]
fn nobody_is_sent_to_touch_what_may_hurt_but_where_that_was_wished() {
    let matrix = matrix(TWIGS);
    let (mut taxa, mut characters) = (matrix.taxa().to_vec(), matrix.characters().to_vec());
    taxa[HAZEL.0].caution = Some("It makes people sneeze.".to_owned());
    characters[EDGE.0].by_touch = true;
    let matrix = spinney_fixtures::drawn::remade(&matrix, taxa, characters);
    let touches: Fact = OfWishes::SentToTouch {
        question: 1,
        kinds: vec!["hazel".to_owned()],
        otherwise: "lobes".to_owned(),
    }
    .into();
    let said_of = |claim: &Claim, text: &str| {
        let report = opinion(&matrix, text, claim);
        let broken = report.findings.iter().filter(|found| found.code == Code::WishBroken);
        broken.map(|found| found.fact.clone()).collect::<Vec<Fact>>()
    };
    let usual = Claim { touching: vec![1], ..claim(8, Wishes::default()) };
    assert_eq!(said_of(&usual, BY_EDGE), [touches]);
    let allowed = Wishes { allow_touch: true, ..Wishes::default() };
    let allowing = |touching| Claim { touching, ..claim(8, allowed.clone()) };
    assert_eq!(said_of(&allowing(vec![1]), BY_EDGE), NOTHING);
    assert_eq!(
        said_of(&allowing(vec![]), BY_EDGE),
        [OfWishes::TouchNotSaid { question: 1 }.into()]
    );
    let wanted = Wishes { kept: kept(states(EDGE, 0), None, None), ..Wishes::default() };
    let kept = Claim { touching: vec![1], ..claim(8, wanted) };
    assert_eq!(said_of(&kept, BY_EDGE), NOTHING);
    // The edge was to come first, but it is barred there.
    let first = Wishes { order: vec![EDGE], ..Wishes::default() };
    let lobes_first = Claim { touching: vec![], ..claim(8, first) };
    let said = said_of(&lobes_first, BY_LOBES);
    let out_of_order = |fact: &Fact| matches!(fact, Fact::Wishes(OfWishes::OutOfOrder { .. }));
    assert!(!said.iter().any(out_of_order), "{said:?}");
}

#[test]
fn a_key_that_is_not_the_best_is_not_proved_by_saying_so() {
    let matrix = matrix(TWIGS);
    // 4 finds with 2 steps for the ruler and 1 for the edge.
    let report = opinion(&matrix, BY_STALK, &claim(12, Wishes::default()));
    assert_eq!(said(&report), [better(Goal::LeastEffort, 8, 12)]);
    assert!(matches!(report.proof, Proof::Contradicted(Road::EveryKey { .. })));
    // Under these wishes nothing is better.
    let wishes = Wishes { order: vec![STALK], ..Wishes::default() };
    let report = opinion(&matrix, BY_STALK, &claim(12, wishes));
    assert_eq!(said(&report), NOTHING);
    // A search that stopped claims its bound alone.
    let stopped = Some(Stopped::Budget);
    let bound =
        |bound| Claim { lower_bound: whole(bound), stopped, ..claim(12, Wishes::default()) };
    assert_eq!(said(&opinion(&matrix, BY_STALK, &bound(8))), NOTHING);
    let report = opinion(&matrix, BY_STALK, &bound(9));
    let higher = OfClaim::BoundAboveSome { bound: whole(9), least: whole(8) };
    assert_eq!(said(&report), [higher.into()]);
}

#[test]
fn an_early_wish_that_could_be_over_earlier_is_found() {
    let matrix = matrix(TWIGS);
    let wishes = Wishes { early: vec![Early::Part(HAZEL, BEECH)], ..Wishes::default() };
    let report = opinion(&matrix, BY_LOBES, &claim(8, wishes.clone()));
    let best = Reaches::Apart(pair("hazel", "beech"), 1);
    assert_eq!(said(&report), [OfClaim::BetterKey { best, said: whole(2) }.into()]);
    let right = Claim { within: vec![1], ..claim(8, wishes) };
    assert_eq!(said(&opinion(&matrix, BY_EDGE, &right)), NOTHING);
}

#[test]
fn a_key_that_leaves_kinds_together_reaches_nothing() {
    let matrix = matrix(TWIGS);
    let text = "1. Is the edge toothed? [edge = toothed] -> hazel or lime / beech or maple";
    let one = Claim { mean_questions: whole(1), longest: 1, ..claim(4, Wishes::default()) };
    let report = opinion(&matrix, text, &one);
    let best = Reaches::Goal(Goal::LeastEffort, whole(8));
    let none = OfClaim::NoKeyReaches { best, said: whole(4) }.into();
    assert!(said(&report).contains(&none), "{:#?}", said(&report));
    let parted = |finding: &&Finding| finding.code == Code::CouldBeParted;
    assert_eq!(report.findings.iter().filter(parted).count(), 2);
    // What must not be asked about does not part them.
    let never = Wishes { never: [LOBES, STALK].into(), ..Wishes::default() };
    let report = opinion(&matrix, text, &Claim { wishes: never, ..one });
    assert_eq!(said(&report), NOTHING);
}

#[test]
fn every_broken_wish_is_named() {
    let mut matrix = matrix(TWIGS);
    let mut characters = matrix.characters().to_vec();
    characters[0].seen_on = [SeenOn::Leaf].into();
    characters[1].seasons = [Season::Summer].into();
    matrix = spinney_fixtures::drawn::remade(&matrix, matrix.taxa().to_vec(), characters);
    let none = Wishes::default;
    let wish = |early| Wishes { early: vec![early], ..none() };
    let first = |wanted, question, asks| OfWishes::KeptOther {
        after: None,
        wanted,
        question,
        asks: Some(asks),
    };
    let not_asked = |question, about: &str, why| OfWishes::NotToBeAsked {
        question,
        about: about.to_owned(),
        why,
    };
    for (wishes, fact) in [
        (Wishes { never: [EDGE].into(), ..none() }, not_asked(1, "edge", WhyLeftOut::Never)),
        (
            Wishes { hand: Some(SeenOn::Rubbing), ..none() },
            not_asked(1, "edge", WhyLeftOut::InTheHand(SeenOn::Rubbing)),
        ),
        (
            Wishes { season: Some(Season::Winter), ..none() },
            not_asked(2, "lobes", WhyLeftOut::InSeason(Season::Winter)),
        ),
        (
            Wishes { order: vec![LOBES, EDGE], ..none() },
            OfWishes::OutOfOrder {
                question: 1,
                about: "edge".to_owned(),
                first: "lobes".to_owned(),
            },
        ),
        (
            Wishes { kept: kept(states(LOBES, 0), None, None), ..none() },
            first(asked_for("lobes", "lobed"), 1, asked_for("edge", "toothed")),
        ),
        (
            Wishes { kept: kept(states(EDGE, 0), None, Some(states(EDGE, 1))), ..none() },
            OfWishes::KeptOther {
                after: Some(Step { couplet: 1, answer: Answer::No }),
                wanted: asked_for("edge", "smooth"),
                question: 3,
                asks: Some(asked_for("lobes", "lobed")),
            },
        ),
        (
            wish(Early::Part(LIME, HAZEL)),
            OfWishes::Late {
                wish: EarlyOf::Apart(pair("lime", "hazel")),
                within: 1,
                takes: 2,
                up_to: Some(2),
            },
        ),
        (
            wish(Early::Leave(BEECH)),
            OfWishes::Late {
                wish: EarlyOf::Out("beech".to_owned()),
                within: 1,
                takes: 2,
                up_to: Some(3),
            },
        ),
    ] {
        let within = vec![1; wishes.early.len()];
        let report = opinion(&matrix, BY_EDGE, &Claim { within, ..claim(8, wishes.clone()) });
        assert!(said(&report).contains(&fact.into()), "{wishes:?}: {:#?}", said(&report));
        assert!(report.says_mend_this());
        assert!(!matches!(report.proof, Proof::Confirmed(_)), "{wishes:?}");
    }
}

#[test]
fn a_question_to_keep_where_the_key_has_ended_is_missed() {
    let matrix = matrix(TWIGS);
    let mut chain = kept(states(EDGE, 0), Some(states(LOBES, 0)), None);
    Kept::add(&mut chain, states(EDGE, 0), Some((1, true)));
    let wishes = Wishes { kept: chain, ..Wishes::default() };
    let report = opinion(&matrix, BY_EDGE, &claim(8, wishes));
    let missed = OfWishes::KeptNotAsked {
        after: Some(Step { couplet: 2, answer: Answer::Yes }),
        wanted: asked_for("edge", "toothed"),
    };
    assert_eq!(said(&report), [missed.into()]);
}

/// A table whose characters are read right more or less often, and whose words must be taught.
fn taught() -> Matrix {
    let matrix = matrix(TWIGS);
    let mut characters = matrix.characters().to_vec();
    characters[0].read_right = Some(80);
    characters[0].read_right_of = BTreeMap::from([(HAZEL, 50)]);
    characters[1].terms = BTreeSet::from(["lobe".to_owned(), "blade".to_owned()]);
    spinney_fixtures::drawn::remade(&matrix, matrix.taxa().to_vec(), characters)
}

/// By hand, for the key that asks for the edge first: −ln of .80, .50 and .95 are 0.223144,
/// 0.693147 and 0.051293. Words: "edge" and "toothed edge", then "lobe" and "blade".
#[test]
fn every_aim_is_counted_again() {
    let matrix = taught();
    let misread = 3 * 223_144 + 693_147 + 4 * 51_293;
    let goals = Goal::ALL.to_vec();
    let reached = |goal, value, then| Reached { goal, value: whole(value), then };
    let right = vec![
        reached(Goal::LeastEffort, 8, None),
        reached(Goal::ShortestLongestPath, 2, None),
        reached(Goal::MostRightEnds, misread, None),
        reached(Goal::EvenTeaching, 2, Some(whole(16))),
        reached(Goal::FewestWords, 4, None),
        reached(Goal::FewestRulers, 0, None),
    ];
    let wishes = Wishes { goals, ..Wishes::default() };
    let all = Claim { reached: right.clone(), ..claim(8, wishes.clone()) };
    let report = opinion(&matrix, BY_EDGE, &all);
    assert_eq!(said(&report), NOTHING);
    assert!(matches!(report.proof, Proof::Confirmed(_)));
    for (at, is) in [8, 2, misread, 2, 4, 0].into_iter().enumerate() {
        let mut wrong = right.clone();
        wrong[at].value += whole(1);
        let report = opinion(&matrix, BY_EDGE, &Claim { reached: wrong, ..all.clone() });
        let differs = Differs { is: whole(is), said: whole(is + 1) };
        let fact = OfClaim::GoalWrong(vec![GoalWrong::Reaches(Goal::ALL[at], differs)]).into();
        assert!(said(&report).contains(&fact), "{fact:?}: {:#?}", said(&report));
    }
    let mut wrong = right.clone();
    wrong[3].then = Some(whole(17));
    let report = opinion(&matrix, BY_EDGE, &Claim { reached: wrong, ..all.clone() });
    let differs = Differs { is: whole(16), said: whole(17) };
    let fact = OfClaim::GoalWrong(vec![GoalWrong::NewWords(differs)]).into();
    assert!(said(&report).contains(&fact), "{:#?}", said(&report));
    let silent = Claim { reached: right[..5].to_vec(), ..all };
    let report = opinion(&matrix, BY_EDGE, &silent);
    let fact = OfClaim::GoalWrong(vec![GoalWrong::NothingSaid(Goal::FewestRulers)]);
    assert_eq!(said(&report), [fact.into()]);
}

/// The key that asks with a ruler is not best where nobody shall need one.
#[test]
fn an_aim_that_could_be_reached_better_is_found() {
    let matrix = matrix(TWIGS);
    let wishes = Wishes { goals: vec![Goal::FewestRulers], ..Wishes::default() };
    let reached = |goal, value| Reached { goal, value: whole(value), then: None };
    let claim = Claim {
        reached: vec![reached(Goal::FewestRulers, 4), reached(Goal::LeastEffort, 12)],
        ..claim(12, wishes)
    };
    let report = opinion(&matrix, BY_STALK, &claim);
    assert_eq!(said(&report), [better(Goal::FewestRulers, 0, 4)]);
}

/// A form that is nowhere in the key is missed whatever is claimed.
#[test]
fn a_form_that_is_left_out_falls_with_its_claim() {
    let matrix =
        matrix(&TWIGS.replace("beech | smooth  | entire", "beech | smooth  | lobed or entire"));
    let report = opinion(&matrix, BY_EDGE, &claim(8, Wishes::default()));
    assert!(codes(&report.findings).contains(&Code::VariesUsedAsFixed), "{:#?}", said(&report));
}

/// Fifty kinds are no small table.
#[test]
fn what_is_too_large_to_replay_says_so() {
    let rows: Vec<String> = (1..=50).map(|n| format!("kind {n} | {n}")).collect();
    let matrix = matrix(&format!("rings: counts\n{}", rows.join("\n")));
    let text = "1. Has it 2 or more rings? [rings >= 2] -> kind 2 / kind 1";
    let report = opinion(&matrix, text, &claim(50, Wishes::default()));
    assert_eq!(report.proof, Proof::NotCarried { nodes: 0 });
}

/// Proofs written by hand from `docs/KEY.md` 20, without any search.
#[test]
fn a_proof_written_by_hand_is_followed() {
    let matrix = matrix(TWIGS);
    let line = |kinds: &[TaxonIx], at_least: i128| Line {
        kinds: kinds.to_vec(),
        remains: Vec::new(),
        at_least: vec![at_least],
    };
    let all = [HAZEL, LIME, BEECH, TaxonIx(3)];
    let with = |lines: Vec<Line>| {
        let certificate = Some(Certificate { whole: 1, remains: Vec::new(), lines });
        opinion(&matrix, BY_EDGE, &Claim { certificate, ..claim(8, Wishes::default()) })
    };
    // Whatever is asked first, of the easy two or with a ruler: 4 finds, and two pairs after it,
    // or one find and three; the joins of the others can be seen.
    let report = with(vec![line(&all, 8)]);
    assert_eq!(said(&report), NOTHING);
    assert_eq!(report.proof, Proof::Confirmed(Road::Certificate { lines: 1 }));
    // More lines that are true do no harm.
    let report = with(vec![line(&[HAZEL, LIME], 2), line(&all, 8), line(&[LIME], 0)]);
    assert_eq!(report.proof, Proof::Confirmed(Road::Certificate { lines: 3 }));
    let shows = |least| ProofFault::ShowsLess {
        claimed: Reaches::Goal(Goal::LeastEffort, whole(8)),
        least: whole(least),
    };
    let too_much = |kinds: &[&str], about: &str| ProofFault::SaysTooMuch {
        kinds: kinds.iter().map(|kind| (*kind).to_owned()).collect(),
        about: about.to_owned(),
    };
    for (lines, why) in [
        (vec![], shows(0)),
        (vec![line(&all, 7)], shows(7)),
        (vec![line(&all, 9)], too_much(&["hazel", "lime", "beech", "maple"], "edge")),
        (vec![line(&[HAZEL, LIME], 3), line(&all, 8)], too_much(&["hazel", "lime"], "lobes")),
        (
            vec![line(&[LIME], 1), line(&all, 8)],
            ProofFault::CannotSeparate { kinds: vec!["lime".to_owned()] },
        ),
        (vec![line(&[TaxonIx(9)], 1), line(&all, 8)], ProofFault::DoesNotFit),
    ] {
        let report = with(lines);
        assert_eq!(said(&report), [OfClaim::ProofFails(why).into()]);
        assert!(matches!(report.proof, Proof::Contradicted(Road::Certificate { .. })));
    }
}

/// What remains of a cell is known for what it is: a state or a place that there is not, beside
/// one that there is, makes the whole line none of this table's.
#[test]
fn remains_that_the_table_does_not_have_are_refused() {
    let matrix = matrix(
        "edge: toothed, smooth
         lobes: lobed, entire
         hazel | toothed or smooth | entire
         lime  | toothed           | lobed
         beech | smooth            | lobed",
    );
    let text = "
        1. Is it lobed? [lobes = lobed] -> 2 / hazel
        2 (1). Is the edge toothed? [edge = toothed] -> lime / beech";
    let with = |states: &[usize], place: usize| {
        let values = Remaining::States(states.iter().map(|state| StateIx(*state)).collect());
        let remains = vec![Remains { taxon: HAZEL, character: EDGE, values }];
        let kinds = vec![HAZEL, LIME];
        let lines = vec![Line { kinds, remains: vec![place], at_least: vec![3] }];
        let certificate = Some(Certificate { whole: 2, remains, lines });
        let claim = Claim { certificate, ..claim(5, Wishes::default()) };
        let report = opinion(&matrix, text, &claim);
        said(&report).contains(&OfClaim::ProofFails(ProofFault::DoesNotFit).into())
    };
    assert!(!with(&[0], 0), "half of hazel, and lime: 3 finds in 2 parts, and one question");
    for (states, place) in
        [(&[0, 64][..], 0), (&[0, 2], 0), (&[0, 130], 0), (&[], 0), (&[0], 1)]
    {
        assert!(with(states, place), "{states:?} at {place}");
    }
}

/// A claim of which no certificate speaks is looked at by trying every key, whatever it carries.
#[test]
fn of_early_wishes_no_certificate_speaks() {
    let wishes = Wishes { early: vec![Early::Leave(HAZEL)], ..Wishes::default() };
    let certificate = Some(Certificate { whole: 1, remains: Vec::new(), lines: Vec::new() });
    let carried = Claim { certificate, ..claim(8, wishes) };
    let report = opinion(&matrix(TWIGS), BY_LOBES, &carried);
    assert!(matches!(report.proof, Proof::Confirmed(Road::EveryKey { .. })), "{report:#?}");
}

/// One mistake is said once: a wrong effort is no second fault of the bound that goes with it.
#[test]
fn a_wrong_effort_is_not_said_of_the_bound_as_well() {
    let matrix = matrix(TWIGS);
    let found = |claim: &Claim| codes(&opinion(&matrix, BY_EDGE, claim).findings);
    let right = claim(8, Wishes::default());
    assert_eq!(found(&right), []);
    assert_eq!(found(&claim(7, Wishes::default())), [Code::CostWrong]);
    // The effort is right, and said to be the least, but less was proved.
    let bound = Claim { lower_bound: whole(7), ..right };
    assert_eq!(found(&bound), [Code::BoundWrong]);
}

/// A key that halves kinds with longer and longer stalks; written down as text.
fn halved(kinds: std::ops::Range<usize>, lines: &mut Vec<String>) -> String {
    let (first, many) = (kinds.start, kinds.len());
    if many == 1 {
        return format!("kind {first}");
    }
    let at = lines.len();
    lines.push(String::new());
    let middle = first + many / 2;
    let no = halved(first..middle, lines);
    let yes = halved(middle..kinds.end, lines);
    let number = at + 1;
    let ask = format!("Is it {middle} cm or more? [stalk >= {middle}0]");
    lines[at] = format!("{number}. {ask} -> {yes} / {no}");
    number.to_string()
}

/// More kinds than a word of the machine has bits. In a key that halves them, 58 of 70 kinds take
/// 6 questions and 12 take 7, which is the least that joins allow (Huffman 1952).
#[test]
fn a_proof_of_more_than_sixty_four_kinds_is_followed() {
    let drawing: String =
        (0..70).map(|kind| format!("kind {kind} | {kind}4-{kind}6\n")).collect();
    let matrix = matrix(&format!("stalk: mm gap 3\n{drawing}"));
    let mut lines = Vec::new();
    halved(0..70, &mut lines);
    let (questions, longest) = (58 * 6 + 12 * 7, 7);
    let mean_questions = Share::new(questions, 70);
    // With a ruler, which takes two steps.
    let total = 2 * questions;
    for (at_least, wanted) in [(total, true), (total + 1, false)] {
        let line = Line {
            kinds: matrix.taxon_indices().collect(),
            remains: Vec::new(),
            at_least: vec![at_least],
        };
        let certificate =
            Some(Certificate { whole: 1, remains: Vec::new(), lines: vec![line] });
        let claim =
            Claim { mean_questions, longest, certificate, ..claim(total, Wishes::default()) };
        let report = opinion(&matrix, &lines.join("\n"), &claim);
        let confirmed = Proof::Confirmed(Road::Certificate { lines: 1 });
        assert_eq!(report.proof == confirmed, wanted, "{at_least}: {report:#?}");
    }
}

/// A question that all kinds answer alike cannot be kept, and no certificate speaks of it.
#[test]
fn a_proof_does_not_speak_of_a_kept_question_that_cannot_be_asked() {
    let matrix = matrix(
        "edge: toothed, smooth
         lobes: lobed, entire
         size: small, large
         hazel | toothed | entire | small
         lime  | toothed | lobed  | small
         beech | smooth  | entire | small
         maple | smooth  | lobed  | small",
    );
    let wishes =
        Wishes { kept: kept(states(CharacterIx(2), 0), None, None), ..Wishes::default() };
    let kinds = matrix.taxon_indices().collect();
    let lines = vec![Line { kinds, remains: Vec::new(), at_least: vec![8] }];
    let certificate = Some(Certificate { whole: 1, remains: Vec::new(), lines });
    let report = opinion(&matrix, BY_EDGE, &Claim { certificate, ..claim(8, wishes) });
    let by_certificate = matches!(
        report.proof,
        Proof::Confirmed(Road::Certificate { .. })
            | Proof::Contradicted(Road::Certificate { .. })
    );
    assert!(!by_certificate, "{report:#?}");
}
