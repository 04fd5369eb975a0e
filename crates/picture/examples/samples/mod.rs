//! Invented hives and charts to draw.

pub(crate) mod charts;
pub(crate) mod hives;
