//! The screens over its own door: started as a person starts it, asked as a browser asks.

mod browser;
mod damaged;
mod doors;
mod ending;
mod keeping;
mod killed;
mod packed;
mod starting;
