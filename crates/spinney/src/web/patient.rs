//! A connection that does not wait for ever for somebody who takes nothing of an answer, or next
//! to nothing.
//!
//! From a connection to the same with an end to its patience. A write that has got nowhere for so
//! long is an error, and so is one to somebody who has been waited for in all that time and
//! longer than what was taken is worth: whoever takes a byte now and then does not hold the room
//! of the answers for ever. The connection ends then.

use std::io;
use std::pin::Pin;
use std::task::{Context, Poll};
use std::time::Duration;

use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Instant, Sleep};

use super::limits::Patience;

/// A connection with an end to its patience.
pub(crate) struct Patient<S> {
    stream: S,
    patience: Patience,
    /// Runs while a write gets nowhere.
    waiting: Option<Waiting>,
    /// How long this connection may still be waited for in all: patience that is used up grows
    /// again with what is taken.
    left: Duration,
}

struct Waiting {
    since: Instant,
    end: Pin<Box<Sleep>>,
}

impl<S> Patient<S> {
    pub(crate) fn new(stream: S, patience: Patience) -> Self {
        Self { stream, patience, waiting: None, left: patience.answer }
    }

    fn waited(
        &mut self,
        context: &mut Context<'_>,
        written: Poll<io::Result<usize>>,
    ) -> Poll<io::Result<usize>> {
        if let Poll::Ready(written) = written {
            if let Some(waiting) = self.waiting.take() {
                self.left = self.left.saturating_sub(waiting.since.elapsed());
            }
            if let Ok(bytes) = written {
                let worth = bytes as f64 / self.patience.least_a_second as f64;
                self.left = self.left.saturating_add(Duration::from_secs_f64(worth));
                self.left = self.left.min(self.patience.answer);
            }
            return Poll::Ready(written);
        }
        let left = self.left;
        let waiting = self.waiting.get_or_insert_with(|| {
            let since = Instant::now();
            Waiting { since, end: Box::pin(tokio::time::sleep_until(since + left)) }
        });
        match waiting.end.as_mut().poll(context) {
            Poll::Ready(()) => Poll::Ready(Err(io::ErrorKind::TimedOut.into())),
            Poll::Pending => Poll::Pending,
        }
    }
}

impl<S: AsyncRead + Unpin> AsyncRead for Patient<S> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        into: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_read(context, into)
    }
}

impl<S: AsyncWrite + Unpin> AsyncWrite for Patient<S> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        let written = Pin::new(&mut self.stream).poll_write(context, bytes);
        self.waited(context, written)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[io::IoSlice<'_>],
    ) -> Poll<io::Result<usize>> {
        let written = Pin::new(&mut self.stream).poll_write_vectored(context, bytes);
        self.waited(context, written)
    }

    fn is_write_vectored(&self) -> bool {
        self.stream.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_flush(context)
    }

    fn poll_shutdown(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_shutdown(context)
    }
}

#[cfg(test)]
mod tests {
    use tokio::io::{AsyncReadExt, AsyncWriteExt, duplex};

    use super::*;
    use crate::web::limits::BOUNDS;

    /// How long an answer of so many bytes takes to somebody who takes `piece` bytes each
    /// `every`; and whether it arrived. The clock goes on only when everybody waits.
    fn taken(answer: usize, piece: usize, every: Duration) -> (bool, Duration) {
        let mut runtime = tokio::runtime::Builder::new_current_thread();
        let runtime = runtime.enable_time().start_paused(true).build().expect("a runtime");
        runtime.block_on(async {
            let (ours, mut theirs) = duplex(32 << 10);
            let mut patient = Patient::new(ours, BOUNDS.patience);
            let reader = tokio::spawn(async move {
                let mut bytes = vec![0; piece];
                loop {
                    tokio::time::sleep(every).await;
                    if !theirs.read(&mut bytes).await.is_ok_and(|read| read > 0) {
                        return;
                    }
                }
            });
            let begun = Instant::now();
            let written = patient.write_all(&vec![7; answer]).await;
            reader.abort();
            (written.is_ok(), begun.elapsed())
        })
    }

    #[test]
    fn who_takes_a_byte_now_and_then_is_not_waited_for_in_all_longer_than_who_takes_nothing() {
        let patience = BOUNDS.patience.answer;
        let least = patience.as_secs_f64();
        for every in [1, 10, 29] {
            let (arrived, took) = taken(160 << 20, 1, Duration::from_secs(every));
            assert!(!arrived, "a byte each {every} seconds");
            assert!((least..least + 1.0).contains(&took.as_secs_f64()), "{took:?}");
        }
        let (arrived, took) = taken(1 << 20, 1, Duration::from_secs(3600));
        assert!(!arrived && (least..least + 1.0).contains(&took.as_secs_f64()), "{took:?}");
    }

    #[test]
    fn who_takes_little_but_steadily_hears_everything() {
        // Twice what is asked for at least.
        let piece = 2 * BOUNDS.patience.least_a_second / 100;
        let (arrived, took) = taken(80 << 20, piece, Duration::from_millis(10));
        assert!(arrived && took > BOUNDS.patience.answer, "{took:?}");
    }
}
