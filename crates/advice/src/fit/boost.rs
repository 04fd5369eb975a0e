//! Sealed brood given to a weak colony, in the model.

use snowhum_apiary::brood_on;
use snowhum_winter::Housed;

use super::look::Look;
use crate::fit::scales::brood::FULL_COMB;

/// The least gain that is called one, hives in a hundred.
pub(super) const LEAST_GAIN: f64 = 1.0;

/// Frames of sealed brood from which a colony can spare one (judgement).
const SPARE_FROM: f64 = 3.0;

/// A frame of sealed brood from another colony.
pub(super) struct Boost {
    pub(super) giver: usize,
    /// Hives in a hundred alive and queenright more, of the two together, and two standard errors.
    pub(super) gain_in_100: f64,
    pub(super) plus_minus: f64,
}

impl Boost {
    /// Whether it is a gain, and more than chance makes.
    pub(super) fn is_worth(&self) -> bool {
        self.gain_in_100 >= self.least()
    }

    /// Whether another draw of members may tell that otherwise.
    pub(super) fn is_near(&self) -> bool {
        (self.gain_in_100 - self.least()).abs() <= self.plus_minus
    }

    fn least(&self) -> f64 {
        LEAST_GAIN.max(self.plus_minus)
    }
}

/// The boost from the colony with most brood; none where no healthy colony has brood to spare or the season is over.
pub(super) fn best(look: &Look<'_>, at: usize) -> Option<Boost> {
    if look.today() > look.dates.boost_by.p50 {
        return None;
    }
    let frame = brood_on(1.0, FULL_COMB).p50;
    let brood = |place: usize| look.colony(place).sealed_brood.map_or(0.0, |brood| brood.p50);
    let spares = |place: &usize| {
        *place != at
            && brood(*place) >= SPARE_FROM * frame
            && !look.is_weak(*place)
            && look.health.may_give_and_take(look.colony(*place))
    };
    let giver = look.places().filter(spares).max_by(|a, b| brood(*a).total_cmp(&brood(*b)))?;
    let (gain, error) = gain(look, giver, at, frame);
    Some(Boost { giver, gain_in_100: 100.0 * gain, plus_minus: 200.0 * error })
}

/// Colonies alive and queenright more, both fed, when one frame of sealed brood moves, of giver and taker together.
fn gain(look: &Look<'_>, giver: usize, taker: usize, frame: f64) -> (f64, f64) {
    let mut housed: Vec<Housed> = look.base.housed.clone();
    let shift = |housed: &mut Housed, cells: f64| {
        let brood = &mut housed.colony.sealed_brood;
        *brood = brood.map(|brood| brood.map(|brood| (brood + cells).max(0.0)));
    };
    shift(&mut housed[giver], -frame);
    shift(&mut housed[taker], frame);
    look.gain_of(&housed, &[], &[giver, taker])
}
