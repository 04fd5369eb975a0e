//! A club's promises, held on a PostgreSQL that the tests start themselves, as an ordinary user, in a scratch folder.

#![expect(clippy::unwrap_used, clippy::expect_used, reason = "a test fails by panicking")]
#![expect(clippy::print_stdout, reason = "what is measured by hand is told")]

mod access;
mod costs;
mod exports;
mod house;
mod kills;
mod nights;
mod sharing;
mod workers;
