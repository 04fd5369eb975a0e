//! Every figure about the world, with its unit, source and status, out of `data/`.
//!
//! | asked | answered by |
//! |---|---|
//! | what is a figure that no run varies? | its constant, in a module of its file's name: [`winter_hour`] and the others |
//! | which figures does a run vary? | the sets that [`figures!`] makes, read by [`FigureFile`] |
//! | where does a figure come from? | [`files::ALL`] |
//!
//! A constant is read and checked by the same reader as a set, once, while the house is built: a name that is not in its
//! file does not compile, and no hour of a winter looks one up.

mod draw;
mod figure;
pub mod files;
mod reader;
mod set;

pub use figure::{Figure, FigureRow, Status};
pub use reader::{FigureFault, FigureFile};
pub use set::once;

include!(concat!(env!("OUT_DIR"), "/constants.rs"));
