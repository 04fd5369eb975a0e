//! The coupled model: its books and its shape.

mod engine;
mod food_body;
mod indoors;
mod properties;
mod shape;
mod winter_laws;
