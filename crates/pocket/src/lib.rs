//! The desk in one HTML file: what the page's worker asks of the WebAssembly in it.
//!
//! From messages of bytes to messages of bytes. The worker keeps lines and pictures in the
//! browser's storage and carries out what the desk answers, as the binary's host does; here is
//! only what stands between the two: the desk, and the screens that this host has besides
//! (which collections there are, a new one).
//!
//! ```text
//! page (page.js) ── worker (worker.js) ── message ──► pocket ──► desk
//!                        │                                        │
//!                 storage (kept.js) ◄── keep these lines ◄────────┘
//! ```
//!
//! The only crate with unsafe code: WebAssembly hands over bytes by bare addresses ([`room`],
//! [`ask`]).

mod bytes;
mod collections;
mod message;
mod pocket;

pub use bytes::{ask, room};
pub use message::Message;
pub use pocket::Pocket;

/// What a hand wants on the screens, as one script: functions that the page calls.
pub fn hands() -> String {
    spinney_desk::HANDS.concat()
}
