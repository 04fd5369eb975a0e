//! The coupled model: its books and its shape.

mod engine;
mod indoors;
mod properties;
mod shape;
mod winter_laws;
