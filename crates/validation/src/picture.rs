//! Plain charts as SVG: axes, bands, lines and marks on a white card, legible in black and white.
//!
//! The card is opaque, so that it reads the same on a light and on a dark page. Marks differ in shape and lines in their
//! dashes, never in colour alone.

mod axis;
mod ink;
mod sample;
mod sheet;

pub(crate) use axis::Axis;
pub(crate) use ink::{Fill, Mark, Stroke};
pub(crate) use sample::Sample;
pub(crate) use sheet::{Face, Sheet};

/// A picture, ready to be written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    /// Name of its file.
    pub file: &'static str,
    /// What it shows, in a line.
    pub title: String,
    /// The same for those who do not see it.
    pub description: String,
    /// The drawing.
    pub svg: String,
}
