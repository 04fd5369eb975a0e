//! Pictures of a winter as accessible SVG: the hive cut open to scale, its thumbnail, and charts.
//!
//! Plain data in, a [`Plate`] out: a [`Scene`] of few kinds of mark, a title, a description, and the same facts as rows
//! of words. A plate is written for a page that holds [`stylesheet`] ([`Plate::inline`]) or as a file of its own
//! ([`Plate::standalone`]). No scripts, no clock, no randomness: the same data give the same bytes. Every tint has its
//! own hatch and word, so a plate reads in black and white; no number that is not finite is ever written.

mod callout;
mod chart;
mod figures;
mod film;
mod geometry;
mod hatch;
mod hive;
mod legend;
mod plate;
mod prefix;
mod qr;
mod scene;
mod style;
mod svg;
mod tint;
mod words;

pub use chart::*;
pub use film::{FILM_SCRIPT, FILM_STYLE, FilmDay, FilmHive, FilmHiveDay, FilmNote, FoodCame, WinterFilm};
pub use geometry::{Path, Point, Rect};
pub use hatch::Hatch;
pub use hive::*;
pub use plate::{Plate, Table};
pub use prefix::IdPrefix;
pub use qr::qr;
pub use scene::{Anchor, Ink, Pen, Scene, Type, Weight};
pub use style::stylesheet;
pub use tint::Tint;
