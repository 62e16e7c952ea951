//! Whatever two states are, the edits between them lead from the one to the other.

use spinney_model::{
    AboutField, AskOf, AskedOf, CharacterEdit, CharacterField, CharacterId, Edit, Fork, Judged,
    KeptDrawing, KeptStroke, KeyEdit, KeyId, KindEdit, KindField, KindId, Side, SpecimenEdit,
    SpecimenField, SpecimenId, Weight, WishField,
};

use super::edit_script;
use crate::Collection;

/// Numbers that look thrown, the same every time (Knuth's multiplier for 64 bits).
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: u32) -> u32 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
        ((self.0 >> 33) % u64::from(most)) as u32
    }
}

fn edit(dice: &mut Dice) -> Edit {
    let kind = KindId(1 + dice.below(4));
    let character = CharacterId(1 + dice.below(3));
    let key = KeyId(1 + dice.below(2));
    let text = ["", "smooth", "toothed", "lobed or smooth"][dice.below(4) as usize].to_owned();
    let at = Fork((0..dice.below(4)).map(|_| dice.below(2) == 1).collect());
    match dice.below(19) {
        0 => Edit::Kind(kind, KindEdit::Add(text)),
        1 => Edit::Kind(kind, KindEdit::Describe(KindField::Caution, text)),
        2 => Edit::Kind(kind, KindEdit::Remove),
        3 => Edit::Kind(kind, KindEdit::Merge(KindId(1 + dice.below(4)))),
        4 => Edit::Kind(kind, KindEdit::AddPicture(format!("{:064}", dice.below(3)))),
        5 => Edit::Character(character, CharacterEdit::Add("edge".to_owned())),
        6 => Edit::Character(character, CharacterEdit::Describe(CharacterField::States, text)),
        7 => Edit::Character(character, CharacterEdit::Remove),
        8 => Edit::Scene(AboutField::Title, text),
        9 => Edit::Key(key, KeyEdit::Start(text)),
        10 => Edit::Key(key, KeyEdit::Wish(WishField::Finish, text)),
        11 => {
            let yes = AskedOf::States(vec![text.clone()]);
            Edit::Key(
                key,
                KeyEdit::Ask { at, words: text, ask: Some(AskOf { character, yes }) },
            )
        }
        12 => Edit::Key(key, KeyEdit::Sort { at, kind, side: Some(Side::Both) }),
        13 => Edit::Key(key, KeyEdit::Call { kind, name: text }),
        14 => Edit::Kind(kind, KindEdit::Draw(drawing(dice))),
        15..18 => Edit::Specimen(SpecimenId(1 + dice.below(3)), of_leaf(dice, kind, character)),
        _ => {
            let source = ["", "Blue", "Red"][dice.below(3) as usize].to_owned();
            Edit::Cell { kind, character, source, text }
        }
    }
}

fn drawing(dice: &mut Dice) -> Option<KeptDrawing> {
    let points = vec![(0, 0), (dice.below(3) as i32, -5)];
    let strokes = vec![KeptStroke { weight: Weight::Outline, points }];
    (dice.below(3) > 0).then_some(KeptDrawing { frame: [0, 0, 9, 9], strokes })
}

fn of_leaf(dice: &mut Dice, kind: KindId, character: CharacterId) -> SpecimenEdit {
    match dice.below(8) {
        0 | 1 => SpecimenEdit::Add(kind),
        2 => SpecimenEdit::OfKind(kind),
        3 => SpecimenEdit::Describe(SpecimenField::Part, "sun".to_owned()),
        4 => SpecimenEdit::Picture(format!("{:064}", dice.below(3))),
        5 => {
            let judged = [None, Some(Judged::Right), Some(Judged::Wrong)];
            SpecimenEdit::Judge { character, judged: judged[dice.below(3) as usize] }
        }
        6 if dice.below(3) == 0 => SpecimenEdit::Remove,
        _ => SpecimenEdit::Measure {
            character,
            text: format!("{} mm", 40 + dice.below(3)),
            plus_minus: ["", "0.4"][dice.below(2) as usize].to_owned(),
        },
    }
}

fn thrown(seed: u64, edits: u32) -> Collection {
    let (mut dice, mut collection) = (Dice(seed), Collection::default());
    for _ in 0..edits {
        collection.apply(&edit(&mut dice));
    }
    collection
}

#[test]
fn the_edits_between_two_states_lead_from_one_to_the_other() {
    let (mut something, mut leaves, mut drawings) = (0, 0, 0);
    for seed in 0..300 {
        let (from, to) = (thrown(seed, 60), thrown(seed + 1_000, 60));
        let edits = edit_script(&from, &to);
        something += usize::from(!edits.is_empty());
        leaves += to.specimens.values().filter(|one| !one.measured.is_empty()).count();
        drawings += to.kinds.values().filter(|kind| kind.drawing.is_some()).count();
        let mut state = from.clone();
        edits.iter().for_each(|edit| state.apply(edit));
        let plain = |of: &Collection| Collection { last: (0, 0, 0, 0), ..of.clone() };
        assert_eq!(plain(&state), plain(&to), "seed {seed}");
        assert_eq!(edit_script(&to, &to), [], "seed {seed}");
    }
    assert!(something > 290);
    assert!(
        leaves > 15 && drawings > 50,
        "{leaves} {drawings}: the states have become too dull"
    );
}
