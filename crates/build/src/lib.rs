//! Finds the key with the least effort and proves it.
