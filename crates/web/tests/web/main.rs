//! What the pages promise, asked of the router without a socket. Yard and notes are invented.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod api;
mod at_the_hive;
mod autumn;
mod begin;
mod behind;
mod film;
mod gate;
mod hives;
mod hostile;
mod indoors;
mod jobs;
mod learn;
mod load;
mod many;
mod marked;
mod named;
mod notes;
mod pages;
mod paper;
mod season;
mod sheets;
mod support;
mod words;
