//! The six scales, one a file.

mod bees;
mod brood;
mod hive;
pub(super) mod mites;
mod queen;
mod shown;
mod stores;

pub(super) use brood::FULL_COMB;
pub(crate) use hive::{GUARD, left_on};
pub(super) use shown::thousands;

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
