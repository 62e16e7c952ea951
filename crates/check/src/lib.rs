//! The second opinion: will this key work?.
