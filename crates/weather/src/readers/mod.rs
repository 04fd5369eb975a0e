//! Readers of open weather formats: bytes in, [`crate::Reading`] out.
//!
//! Text that is not UTF-8 is taken as Latin-1. Values no weather can have are dropped and counted in the notes; fields
//! that are no numbers, dates that do not exist and broken rows are faults with line, field and remedy.

mod columns;
pub mod epw;
mod epw_header;
pub mod ghcn_daily;
mod guess;
pub mod isd_lite;
mod mapping;
pub mod station_csv;
mod station_time;
mod station_when;
mod text;

pub use epw::epw;
pub use ghcn_daily::ghcn_daily;
pub use guess::guessed_columns;
pub use isd_lite::isd_lite;
pub use mapping::{DecimalMark, Mapping, MappingFault, Role};
pub use station_csv::station_csv;
