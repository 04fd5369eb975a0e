//! A club's pages asked as a browser asks them, on a PostgreSQL that the tests start themselves.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod hand_in;
mod help;
mod house;
mod losses;
mod night;
mod sharing;
mod ways_in;
