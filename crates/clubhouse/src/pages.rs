//! The pages, one a file.

pub(crate) mod help;
pub(crate) mod losses;
pub(crate) mod night;
pub(crate) mod sharing;
pub(crate) mod yard;
