//! SI quantities as types; parsing and printing in metric and US units; the trade's words on either side of the ocean.
//!
//! A physical number crosses a crate's edge only as one of these types. Inside, everything is SI; metric or US units
//! exist only where a keeper reads or writes ([`std::str::FromStr`] and [`System`]).
//!
//! ```
//! use snowhum_units::{Kelvin, Kilogram, System};
//! let stores: Kilogram = "26 lb".parse().unwrap();
//! assert_eq!(stores.show(System::Metric, 1), "11.8 kg");
//! assert!((Kelvin::from_celsius(-9.0).fahrenheit() - 15.8).abs() < 1e-9);
//! ```

mod parse;
mod quantity;
mod range;
mod same;
mod show;
mod temperature;
mod usual;

pub use parse::{Bare, Measured, ParseError, number};
pub use quantity::*;
pub use range::Range;
pub use same::Same;
pub use show::System;
pub use temperature::Kelvin;
pub use usual::{Against, Usual};
