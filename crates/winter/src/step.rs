//! One hour and one day of a block: the mechanisms in the order data flows.

pub(crate) mod air;
pub(crate) mod boundary;
pub(crate) mod cluster;
pub(crate) mod colony;
pub(crate) mod gas;
pub(crate) mod heat;
pub(crate) mod reach;
pub(crate) mod tally;
pub(crate) mod water;

use crate::block::{Block, Boundary};
use crate::laws::Laws;
use crate::shell::Shell;

/// One hour. Each state variable is renewed once, by the mechanism that owns it.
#[inline(always)]
pub(crate) fn hour(shell: &Shell, laws: &Laws, boundary: &Boundary, block: &mut Block) {
    air::flow(shell, boundary, &block.bees, &mut block.heat);
    cluster::tighten(laws, &block.traits, &block.heat, &mut block.bees);
    heat::solve(shell, laws, boundary, block);
    water::balance(shell, laws, boundary, block);
    gas::balance(shell, laws, &block.heat, &block.balance, &mut block.gas);
    reach::eat(shell, laws, &block.traits, &mut block.heat, &block.bees, &mut block.stores);
    tally::add(shell, laws, boundary, block);
}
