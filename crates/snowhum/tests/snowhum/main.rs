//! The binary as a keeper runs it.

mod cli;
mod fetch;
mod first;
mod indoors;
mod jobs;
mod lan;
mod maths;
mod northway;
mod note;
mod season;
mod shut;
mod sums;
mod tell;
mod units;
mod words;
