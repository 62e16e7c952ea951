//! What people do at the desk, told as stories: one program, since each of its own would link the
//! whole desk once more.

mod approved;
mod at_the_desk;
mod copy;
mod finds;
mod forget;
mod guard;
mod hands;
mod heaps;
mod key;
mod leaves;
mod measure;
mod newcomer;
mod saved;
mod screens;
mod share_out;
mod shown;
mod sorting;
mod together;
mod too_large;
mod try_and_print;
mod worked;
