//! The pages of a club: who needs help this week, what is shared, what was lost, how the night goes.
//!
//! A member comes in by a key that the club gave them. What they are shown PostgreSQL was asked as them, so that no fault
//! of a page shows another's yard; of all members together sums alone are shown, none of too few yards. Answers are those
//! of the last complete night. Pages compute nothing.

mod app;
mod fault;
mod frame;
mod gate;
mod hand_in;
mod pages;
mod routes;
mod spoken;
mod sums;
mod told;
mod visit;

pub use app::{Clubhouse, Read, Reading};
pub use routes::{paths, router};
