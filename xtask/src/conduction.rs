//! Steady heat conduction in a plane section: how much an edge loses beyond its faces.
//!
//! Finite volumes around the crossings of a rectangular mesh whose lines may lie unevenly. Materials change only on
//! mesh lines, so each quarter round a crossing is of one material and conductances add side by side; nothing has to
//! be averaged across a boundary between materials. Held to cases 1 and 2 of ISO 10211 in its tests.

mod axis;
mod network;
mod section;
mod solve;

#[cfg(test)]
mod iso10211;

pub(crate) use axis::Axis;
pub(crate) use section::{Air, Fill, Rectangle, Section};
