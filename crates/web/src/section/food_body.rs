//! A candy board, a slab or a feeder, drawn to scale from its weight.

use snowhum_advice::now::FoodBodyNow;
use snowhum_apiary::{FoodBody, FoodBodyKind, FoodPlace, Hive};
use snowhum_picture::{FoodLies, SectionFood, StoresState};
use snowhum_say::{Tongue, draw_page as text};
use snowhum_units::{Fraction, Kilogram, Metre};

use super::Within;

/// How thick a slab without a rim is, m (drawing only).
const SLAB_M: f64 = 0.025;
/// Share of the hive's width that a board fills.
const WHOLE: f64 = 0.96;
/// Width of a feeder that hangs as a frame, m: that of a frame.
const FEEDER_M: f64 = 0.035;
/// Chance from which the cluster is drawn at it.
const DRAWN_AT: f64 = 0.5;

/// A body of food and how the cluster stands to it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Seen {
    body: FoodBody,
    left: Kilogram,
    /// Chance that bees have eaten of it; none where nobody has said.
    reached: Option<f64>,
}

impl Seen {
    pub(crate) fn of(now: &FoodBodyNow) -> Self {
        let left = now.left_kg.map_or(now.body.mass_kg, |left| Kilogram::new(left.p50));
        Self { body: now.body, left, reached: Some(now.reached) }
    }

    pub(crate) fn untouched(body: FoodBody) -> Self {
        Self { body, left: body.mass_kg, reached: None }
    }

    /// What is left of it, in honey that feeds as much.
    pub(crate) fn worth_left(self) -> Kilogram {
        self.body.worth() * self.share_left()
    }

    fn share_left(self) -> f64 {
        self.left.get() / self.body.mass_kg.get().max(f64::MIN_POSITIVE)
    }

    /// Whether the cluster is drawn as having reached it.
    fn is_reached(self) -> bool {
        self.reached.is_some_and(|reached| reached >= DRAWN_AT)
    }

    /// Whether the cluster is drawn up against it.
    pub(crate) fn is_under_it(self) -> bool {
        self.body.place == FoodPlace::OverCluster && self.is_reached()
    }

    pub(crate) fn drawn(self, hive: &Hive, dead: bool, tongue: Tongue) -> SectionFood {
        let (width, thickness) = self.size(hive);
        let middle = match (self.body.kind, self.body.place) {
            (_, FoodPlace::OverCluster) => 0.5,
            (_, FoodPlace::ToOneSide) => 1.0 - width / 2.0 - 0.02,
        };
        let state = match (self.is_reached(), self.reached) {
            (true, _) if !dead => StoresState::Touched,
            (_, None) => StoresState::InReach,
            _ => StoresState::OutOfReach,
        };
        let reached = match self.reached {
            Some(_) if dead => "not-said",
            Some(_) if self.is_reached() => "reached",
            Some(_) => "not-reached",
            None => "not-said",
        };
        SectionFood {
            name: tongue.say(&text::body(self.body.kind.message(), self.body.pollen)),
            state,
            lies: if self.body.kind == FoodBodyKind::FrameFeeder { FoodLies::AmongCombs } else { FoodLies::OnTopBars },
            left: Fraction::new((middle - width / 2.0).clamp(0.0, 1.0)),
            right: Fraction::new((middle + width / 2.0).clamp(0.0, 1.0)),
            thickness: Metre::new(thickness),
            hole: self.body.hole_m,
            remaining: Fraction::new(self.share_left().clamp(0.0, 1.0)),
            words: tongue.say(&text::left(self.left, reached, self.body.mass_kg)),
        }
    }

    /// Width as a share of the hive's, and thickness, m: a board fills its rim, a slab is so thick and as wide as that makes it.
    fn size(self, hive: &Hive) -> (f64, f64) {
        let (length, width) = hive.boxes.first().map_or((0.45, 0.37), |one| (one.length.get(), one.width.get()));
        let volume = self.body.mass_kg.get() / self.body.density().get().max(1.0);
        let (length, width) = (length.max(0.05), width.max(0.05));
        if self.body.kind == FoodBodyKind::FrameFeeder {
            return (FEEDER_M / width, FEEDER_M);
        }
        let fills = volume / (length * width * WHOLE);
        match self.body.rim_m {
            Some(_) => (WHOLE, fills),
            None => ((volume / (length * SLAB_M * width)).clamp(0.1, WHOLE), fills.max(SLAB_M)),
        }
    }
}

/// Room over the frames that a body of food asks for.
pub(crate) fn rim(within: &Within, food: &SectionFood) -> Metre {
    let own = within.food_body.and_then(|seen| seen.body.rim_m).unwrap_or(Metre::ZERO);
    if food.lies == FoodLies::AmongCombs { Metre::ZERO } else { own.max(food.thickness) }
}
