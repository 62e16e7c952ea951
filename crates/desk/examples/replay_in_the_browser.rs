//! Plays a story to the desk as WebAssembly: what `tests/outside/browser_build.mjs` calls.
//!
//! The caller asks for room, writes the story there, and reads the replies where it is told.

#![allow(unsafe_code, reason = "a page calls WebAssembly by bare names and addresses")]

#[path = "story/requests.rs"]
mod story;

/// Room for a story of so many bytes; its address.
#[unsafe(no_mangle)]
pub extern "C" fn room(bytes: usize) -> *mut u8 {
    Box::leak(vec![0; bytes].into_boxed_slice()).as_mut_ptr()
}

/// Plays the story that was written into a room; the address of the replies, before which
/// their length stands in four bytes, the lowest first.
///
/// # Safety
/// The address is one that [`room`] gave for so many bytes.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn play(at: *const u8, bytes: usize) -> *const u8 {
    // SAFETY: the caller says so.
    let story = unsafe { std::slice::from_raw_parts(at, bytes) };
    let replies = story::replies(&String::from_utf8_lossy(story));
    let length = u32::try_from(replies.len()).expect("replies of a story are a few megabytes");
    let mut out = length.to_le_bytes().to_vec();
    out.extend(replies);
    Box::leak(out.into_boxed_slice()).as_ptr()
}
