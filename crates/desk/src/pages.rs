//! The screens, a file or a folder each: forms and page together.
//!
//! `routes` lists their routes. No screen imports another but for a part that both show.

pub(crate) mod assets;
pub(crate) mod cell;
pub(crate) mod copy;
pub(crate) mod damaged;
pub(crate) mod done;
pub(crate) mod finds;
pub(crate) mod forget;
pub(crate) mod frame;
pub(crate) mod heaps;
pub(crate) mod host;
pub(crate) mod key;
pub(crate) mod leaves;
pub(crate) mod measure;
pub(crate) mod newcomer;
pub(crate) mod print;
pub(crate) mod saved;
pub(crate) mod share_out;
pub(crate) mod table;
pub(crate) mod try_it;
pub(crate) mod words;
