//! Chores of the house.
fn main() {}
