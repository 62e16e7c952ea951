//! What a key looks like on paper and on a phone.
