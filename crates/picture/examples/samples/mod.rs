//! Invented hives and winters to draw.

pub(crate) mod hives;
