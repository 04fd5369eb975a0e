//! What a draw is for: the third word of its counter.

pub(super) const RESIDUALS: u32 = 0;
pub(super) const TURNS: u32 = 1;
pub(super) const RAIN: u32 = 2;
pub(super) const SKY: u32 = 4;
pub(super) const WIND: u32 = 5;
