//! From combs to bees, brood and food.

use crate::words::{comb_figures, ordered};
use crate::{Hive, HiveBox};
use snowhum_units::{Kilogram, Range, SquareMetre};

impl Hive {
    /// Combs in the hive.
    #[must_use]
    pub fn comb_count(&self) -> u32 {
        self.boxes.iter().map(|one| one.frames).sum()
    }

    /// Area of all combs, one face counted.
    #[must_use]
    pub fn comb_face(&self) -> SquareMetre {
        self.boxes.iter().map(HiveBox::comb_face).sum()
    }

    /// Area of one face of an average comb of this hive.
    #[must_use]
    pub fn mean_comb_side(&self) -> SquareMetre {
        self.comb_face() / f64::from(self.comb_count().max(1))
    }
}

impl HiveBox {
    /// Area of all its combs, one face counted.
    #[must_use]
    pub fn comb_face(&self) -> SquareMetre {
        self.comb_side * f64::from(self.frames)
    }
}

/// Bees on so many combs covered on both faces. A seam of bees (the gap between two combs) counts as one comb, since two
/// faces look into it; keepers' counts of seams and frames differ by up to one.
///
/// Source: 1.25 bees/cm² of a fully covered face (Liebefeld method, Imdorf et al. 1987); 2,430 on a Langstroth deep
/// frame (Burgett and Burikam 1985); up to twice Liebefeld when clustered.
///
/// ```
/// use snowhum_apiary::bees_on;
/// use snowhum_units::SquareMetre;
/// let eight_deep_frames = bees_on(8.0, SquareMetre::new(0.087));
/// assert!((eight_deep_frames.p50 - 19_488.0).abs() < 1.0);
/// ```
#[must_use]
pub fn bees_on(frames: f64, comb_side: SquareMetre) -> Range<f64> {
    let face_cm2 = 2.0 * frames * comb_side.get() * 1e4;
    ordered(comb_figures().bees_per_cm2).map(|bees_per_cm2| bees_per_cm2 * face_cm2)
}

/// The most bees that the combs of a hive hold in autumn: both faces of all of them, as crowded as bees sit there before
/// they hang out below.
#[must_use]
pub fn most_bees(hive: &Hive) -> f64 {
    let all = bees_on(f64::from(hive.comb_count()), hive.mean_comb_side());
    all.p50 * comb_figures().crowding
}

/// Combs that so many bees cover, the other way round.
#[must_use]
pub fn frames_covered(bees: f64, comb_side: SquareMetre) -> f64 {
    let one_comb = bees_on(1.0, comb_side).p50;
    if one_comb > 0.0 { bees / one_comb } else { 0.0 }
}

/// A keeper's own figure for the bees, widened by what such figures are worth.
#[must_use]
pub fn bees_stated(bees: f64) -> Range<f64> {
    ordered(comb_figures().bees_stated).map(|factor| factor * bees)
}

/// Cells of sealed brood on so many combs of brood, as keepers count them. Source: 4.0 worker cells/cm², Liebefeld
/// method; the share of such a comb that is sealed brood is a judgement.
#[must_use]
pub fn brood_on(frames: f64, comb_side: SquareMetre) -> Range<f64> {
    let cells = comb_figures().cells_per_cm2 * 2.0 * frames * comb_side.get() * 1e4;
    ordered(comb_figures().brood_filled).map(|filled| filled * cells)
}

/// Food in so many combs full and capped on both faces, at 0.32 ± 0.03 kg/dm² of comb (common practice in Sweden,
/// Austria and Germany).
///
/// ```
/// use snowhum_apiary::food_in;
/// use snowhum_units::SquareMetre;
/// let deep = food_in(1.0, SquareMetre::new(0.0869));
/// assert!((deep.p50.get() - 2.78).abs() < 0.01);
/// ```
#[must_use]
pub fn food_in(frames: f64, comb_side: SquareMetre) -> Range<Kilogram> {
    let face_dm2 = frames * comb_side.get() * 100.0;
    ordered(comb_figures().food_kg_per_dm2).map(|kg_per_dm2| Kilogram::new(kg_per_dm2 * face_dm2))
}

/// The most food the combs of a hive can hold at all: faults are told from slips of the pen by it.
pub(crate) fn most_food(hive: &Hive) -> Kilogram {
    food_in(f64::from(hive.comb_count()), hive.mean_comb_side()).p90 * 1.1
}
