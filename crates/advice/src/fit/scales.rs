//! The six scales, one a file.

mod bees;
pub(crate) mod brood;
pub(crate) mod hive;
pub(super) mod mites;
mod queen;
pub(crate) mod shown;
mod stores;

use super::answer::Scale;
use super::look::Look;

pub(super) fn all(look: &Look<'_>, at: usize) -> Vec<Scale> {
    vec![
        bees::scale(look, at),
        brood::scale(look, at),
        stores::scale(look, at),
        queen::scale(look, at),
        mites::scale(look, at),
        hive::scale(look, at),
    ]
}
