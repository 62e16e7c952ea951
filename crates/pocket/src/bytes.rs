//! How bytes come in and go out of WebAssembly.
//!
//! The worker asks for room, writes a message there and reads the answer where it is told.

#![allow(unsafe_code, reason = "WebAssembly hands over bytes by bare addresses")]

use std::sync::{Mutex, PoisonError};

use crate::message::Message;
use crate::pocket::Pocket;

static POCKET: Mutex<Option<Pocket>> = Mutex::new(None);

/// Room for so many bytes; its address. It is taken back by [`ask`].
#[unsafe(no_mangle)]
pub extern "C" fn room(bytes: usize) -> *mut u8 {
    Box::into_raw(vec![0_u8; bytes].into_boxed_slice()).cast()
}

/// Answers the message that was written into a room, which is gone then. The address of the
/// answer, before which its length stands in four bytes, the lowest first: it stays there until
/// the next question.
///
/// # Safety
/// The address is one that [`room`] gave for so many bytes, and was not asked with before.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ask(at: *mut u8, bytes: usize) -> *const u8 {
    static ANSWER: Mutex<Vec<u8>> = Mutex::new(Vec::new());
    // SAFETY: the caller says so.
    let question = unsafe { Box::from_raw(std::ptr::slice_from_raw_parts_mut(at, bytes)) };
    let question = Message::read(question.into());
    let mut pocket = POCKET.lock().unwrap_or_else(PoisonError::into_inner);
    let written = pocket.get_or_insert_default().answer(question).write();
    let length = u32::try_from(written.len()).expect("the memory of WebAssembly ends before");
    let mut answer = ANSWER.lock().unwrap_or_else(PoisonError::into_inner);
    // What the last answer held is given back before this one is held.
    *answer = Vec::new();
    answer.reserve_exact(written.len() + 4);
    answer.extend(length.to_le_bytes());
    answer.extend(written);
    answer.as_ptr()
}
