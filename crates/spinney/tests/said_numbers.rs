//! The number that is said for a threshold asks the same question: every kind goes the same way by
//! the words as by what was proved (`docs/KEY.md` 3).

use spinney_build::{Budget, build};
use spinney_check::{Settings, check};
use spinney_fixtures::seeded;
use spinney_model::{Asked, Code, Wishes};
use spinney_voice::wording;

#[test]
fn by_the_words_every_kind_goes_the_same_way() {
    let (mut measures, mut moved) = (0, 0);
    for seed in 0..6_000 {
        let matrix = seeded::awkward(seed);
        let built = build(&matrix, &Wishes::default(), Budget::default());
        let mut by_words = built.key.clone();
        for at in 0..by_words.couplets.len() {
            let ask = built.key.couplets[at].ask.as_ref().expect("our own key is linked");
            let said = wording::said(&matrix, &built.key, at).expect("our own key is linked");
            if matches!(ask.yes, Asked::AtLeast(_))
                && !matrix.character(ask.character).sign().is_empty()
            {
                measures += 1;
            }
            moved += usize::from(said != *ask);
            by_words.couplets[at].ask = Some(said);
        }
        let look = |key| check(&matrix, key, None, &Settings::default());
        let (proved, said) = (look(&built.key), look(&by_words));
        assert_eq!(proved.walks, said.walks, "seed {seed}");
        let near = |codes: &[spinney_model::Finding]| {
            let of = |code| codes.iter().filter(|finding| finding.code == code).count();
            (of(Code::ThresholdNear), of(Code::ThresholdInside))
        };
        assert_eq!(near(&proved.findings), near(&said.findings), "seed {seed}");
    }
    assert!(measures > 500 && moved > 300, "{measures} measures, {moved} moved");
}
