//! Real winters and the parameters they set together.
//!
//! [`study`] reads what was found in real yards; [`simulate`] runs the shipped engine on such yards, once for each row of
//! joint draws; [`design`] spreads rows over the prior; [`emulator`] stands in for the engine; [`posterior`] weighs
//! parameters by what was found; [`fit`] puts these together; [`score`] asks how well each study is foretold by the others. `cargo xtask calibrate` does
//! all of it and writes `data/winter_joint_draws.toml` and the ranges in `data/winter_parameters.toml`.

pub mod design;
pub mod emulator;
mod fault;
pub mod fit;
pub mod posterior;
pub mod score;
pub mod simulate;
pub mod study;
pub mod write;

pub use fault::CalibrationError;
