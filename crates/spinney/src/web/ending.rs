//! How the screens end: at once, but never in the middle of keeping something.
//!
//! From the person's Ctrl-C to the moment when nothing more is kept. What is being kept is kept,
//! and its answer is sent. Whatever else is asked is given up and told so.

use tokio::sync::watch;

/// How far it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stage {
    /// Everything is answered.
    Open,
    /// Something is being kept.
    Keeping,
    /// The same, and it is the last thing.
    KeepingLast,
    /// Nothing is kept any more.
    Ended,
}

/// Waits until the person says so and nothing more is kept; where the person says so a second
/// time before that, it ends `at_once`.
pub(crate) async fn come<E: Future<Output = std::io::Result<()>>>(
    ending: &Ending,
    told: impl Fn() -> E,
    at_once: impl FnOnce(),
) -> std::io::Result<()> {
    told().await?;
    ending.begin();
    tokio::select! {
        biased;
        () = ending.ended() => {}
        told = told() => {
            told?;
            at_once();
        }
    }
    Ok(())
}

/// The end, as the host and the clerk both see it.
#[derive(Clone)]
pub(crate) struct Ending(watch::Sender<Stage>);

impl Ending {
    pub(crate) fn not_yet() -> Self {
        Self(watch::Sender::new(Stage::Open))
    }

    /// Ends it, as soon as what is being kept is kept.
    pub(crate) fn begin(&self) {
        self.0.send_modify(|stage| {
            *stage = match stage {
                Stage::Open | Stage::Ended => Stage::Ended,
                Stage::Keeping | Stage::KeepingLast => Stage::KeepingLast,
            }
        });
    }

    /// Waits until something is being kept.
    #[cfg(test)]
    pub(crate) async fn keeping(&self) {
        let _ = self.0.subscribe().wait_for(|stage| *stage == Stage::Keeping).await;
    }

    /// Waits until nothing is kept any more.
    pub(crate) async fn ended(&self) {
        // The sender is ours, so that it cannot be gone.
        let _ = self.0.subscribe().wait_for(|stage| *stage == Stage::Ended).await;
    }

    /// Whether nothing is kept any more.
    pub(crate) fn has_ended(&self) -> bool {
        *self.0.borrow() == Stage::Ended
    }

    /// Whether something may be kept; then it is waited for until [`Self::kept`].
    pub(crate) fn may_keep(&self) -> bool {
        self.0.send_if_modified(|stage| {
            let open = *stage == Stage::Open;
            if open {
                *stage = Stage::Keeping;
            }
            open || *stage == Stage::Keeping
        })
    }

    /// It was kept and answered, or was not kept after all.
    pub(crate) fn kept(&self) {
        self.0.send_if_modified(|stage| {
            let before = *stage;
            *stage = match before {
                Stage::Keeping => Stage::Open,
                Stage::KeepingLast => Stage::Ended,
                Stage::Open | Stage::Ended => before,
            };
            *stage != before
        });
    }
}

#[cfg(test)]
mod tests {
    use std::cell::Cell;

    use super::*;

    fn run<T>(future: impl Future<Output = T>) -> T {
        let runtime = tokio::runtime::Builder::new_current_thread().build();
        runtime.expect("a runtime").block_on(future)
    }

    #[test]
    fn what_is_being_kept_is_waited_for_and_nothing_after_it() {
        let ending = Ending::not_yet();
        assert!(ending.may_keep());
        ending.kept();
        assert!(ending.may_keep(), "the next one");
        ending.begin();
        assert!(!ending.has_ended(), "it is being kept");
        assert!(!ending.may_keep(), "nor is it tried again");
        ending.kept();
        assert!(ending.has_ended() && !ending.may_keep());
        run(ending.ended());
    }

    #[test]
    fn who_says_it_once_waits_and_who_says_it_twice_does_not() {
        let told = || std::future::ready(Ok(()));
        for busy in [false, true] {
            let ending = Ending::not_yet();
            assert!(!busy || ending.may_keep());
            let at_once = Cell::new(false);
            run(come(&ending, told, || at_once.set(true))).expect("it was told");
            assert_eq!(at_once.get(), busy);
        }
    }
}
