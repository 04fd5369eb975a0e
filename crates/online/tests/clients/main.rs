//! What the clients of live weather promise, held against a server on this machine with invented numbers.
#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

#[path = "../stand_in/mod.rs"]
mod stand_in;

mod bodies;
mod cache;
mod manners;
mod met_norway;
mod others;
mod refusals;
mod yard;
