//! A club's promises, held on a PostgreSQL that the tests start themselves, as an ordinary user, in a scratch folder.

mod costs;
mod exports;
mod house;
mod kills;
mod nights;
mod sharing;
mod workers;
