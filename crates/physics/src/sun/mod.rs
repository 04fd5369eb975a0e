//! The sun: where it stands and what it brings to a face.

mod clear_sky;
mod cloud;
mod extraterrestrial;
mod position;
mod split;
mod tilted;

pub use clear_sky::clear_sky;
pub use cloud::under_cloud;
pub use extraterrestrial::extraterrestrial_normal;
pub use position::{SunError, SunPosition, position};
pub use split::{Irradiance, split};
pub use tilted::{Face, OnFace, on_face};
