//! Room for what browsers send and get: bytes are counted as they come, not places.
//!
//! From the room of all to what one form or one large answer holds of it, until it is answered
//! or on its way. Somebody slow holds as much as he has sent, and keeps nobody else out.

use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};

use axum::body::{Body, Bytes, HttpBody};
use hyper::body::{Frame, SizeHint};
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

/// What is counted: pieces of so many bytes.
const PIECE: usize = 1 << 10;
/// So much of a large answer is handed to the connection at a time.
const STRETCH: usize = 64 << 10;

/// Room for so many bytes, shared by all.
#[derive(Clone)]
pub(crate) struct Room(Arc<Semaphore>);

impl Room {
    pub(crate) fn of(bytes: usize) -> Self {
        Self(Arc::new(Semaphore::new(bytes / PIECE)))
    }

    /// A place for bytes to come, of which the first `free` are not counted.
    pub(crate) fn place(&self, free: usize) -> Place {
        Place { room: self.clone(), held: None, bytes: 0, free }
    }
}

/// What one form or answer holds of a room; given back when it goes away.
pub(crate) struct Place {
    room: Room,
    held: Option<OwnedSemaphorePermit>,
    bytes: usize,
    free: usize,
}

impl Place {
    /// Holds so many bytes more; false: there is no room for them.
    pub(crate) fn grow(&mut self, bytes: usize) -> bool {
        self.bytes += bytes;
        let wanted = self.bytes.saturating_sub(self.free).div_ceil(PIECE);
        let have = self.held.as_ref().map_or(0, OwnedSemaphorePermit::num_permits);
        let Ok(more) = u32::try_from(wanted.saturating_sub(have)) else { return false };
        if more == 0 {
            return true;
        }
        let Ok(more) = Arc::clone(&self.room.0).try_acquire_many_owned(more) else {
            return false;
        };
        match &mut self.held {
            Some(held) => held.merge(more),
            None => self.held = Some(more),
        }
        true
    }

    /// The place, and another one with nothing in it instead.
    pub(crate) fn taken(&mut self) -> Self {
        let empty = self.room.place(self.free);
        std::mem::replace(self, empty)
    }

    /// Gives everything back.
    pub(crate) fn leave(&mut self) {
        *self = self.room.place(self.free);
    }
}

/// A large answer, handed on stretch by stretch, with its place.
pub(crate) struct Answer {
    bytes: Bytes,
    _place: Place,
}

impl Answer {
    /// An answer that holds its place until it is on its way; None: there is no room for it.
    pub(crate) fn held(bytes: Bytes, room: &Room) -> Option<Body> {
        let mut place = room.place(0);
        place.grow(bytes.len()).then(|| Body::new(Self { bytes, _place: place }))
    }
}

impl HttpBody for Answer {
    type Data = Bytes;
    type Error = std::convert::Infallible;

    fn poll_frame(
        mut self: Pin<&mut Self>,
        _: &mut Context<'_>,
    ) -> Poll<Option<Result<Frame<Bytes>, Self::Error>>> {
        if self.bytes.is_empty() {
            return Poll::Ready(None);
        }
        let stretch = self.bytes.len().min(STRETCH);
        Poll::Ready(Some(Ok(Frame::data(self.bytes.split_to(stretch)))))
    }

    fn is_end_stream(&self) -> bool {
        self.bytes.is_empty()
    }

    fn size_hint(&self) -> SizeHint {
        SizeHint::with_exact(self.bytes.len() as u64)
    }
}

#[cfg(test)]
mod tests {
    use super::Room;

    #[test]
    fn whoever_sends_holds_what_was_sent_and_gives_it_back() {
        let room = Room::of(8 << 10);
        let (mut one, mut other) = (room.place(1 << 10), room.place(1 << 10));
        assert!(one.grow(1 << 10), "the first bytes are free");
        assert!(one.grow(6 << 10) && other.grow(3 << 10), "both have room: 6 and 2");
        assert!(!other.grow(1 << 10), "the ninth KiB is too many");
        drop(one);
        assert!(other.grow(4 << 10));
        other.leave();
        assert!(room.place(0).grow(8 << 10));
    }
}
