//! Where a colony stands, as numbers.

use snowhum_units::Range;
use snowhum_winter::{Cause, Ends};

use crate::Estimate;

/// A colony at an hour. Ranges hold for a living colony; none is given where a living colony is too unlikely to say more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// Chance of being alive.
    pub alive: f64,
    /// Chance of being alive with a queen.
    pub queenright: f64,
    /// Grown bees, if alive.
    pub bees: Option<Range<f64>>,
    /// All food, kg, if alive.
    pub stores_kg: Option<Range<f64>>,
    /// Food within reach, kg, if alive.
    pub reachable_kg: Option<Range<f64>>,
    /// What is left of the body of food on the hive, kg of honey that feed as much, if alive.
    pub body_kg: Option<Range<f64>>,
    /// Chance that bees have eaten of it, if alive.
    pub body_reached: f64,
    /// Chances of having ended, by cause; they sum to 1 - `alive`.
    pub ended: Ends,
    /// Hour of the run at which it ended, if dead.
    pub died_hour: Option<Range<f64>>,
}

/// A state less likely than this is not described.
const TOO_UNLIKELY: f64 = 0.01;

impl Estimate {
    /// Where the colony stands at this hour.
    #[must_use]
    pub fn standing(&self) -> Standing {
        let alive = self.strata.alive_share();
        let members = &self.strata.alive.members;
        let of_living = |value: &dyn Fn(&snowhum_winter::Member) -> f64| {
            let weighted: Vec<(f64, f64)> =
                self.strata.alive_mass.iter().enumerate().map(|(m, mass)| (value(&members.member(m)), *mass)).collect();
            if alive < TOO_UNLIKELY { None } else { weighted_range(weighted) }
        };
        let queenright: f64 = (0..self.strata.alive_mass.len())
            .map(|m| self.strata.alive_mass[m] * self.strata.alive.queenright_share(m))
            .sum();
        let mut ended = [0.0; Cause::ALL.len()];
        for (remains, mass) in &self.strata.dead {
            ended[remains.cause as usize] += mass;
        }
        let died = self.strata.dead.iter().map(|(remains, mass)| (remains.hour as f64, *mass)).collect();
        Standing {
            alive,
            queenright,
            bees: of_living(&|member| member.bees),
            stores_kg: of_living(&|member| member.stores_kg),
            reachable_kg: of_living(&|member| member.reachable_kg),
            body_kg: of_living(&|member| member.body_kg),
            body_reached: self.body_reached(),
            ended: Ends::from_causes(ended),
            died_hour: if 1.0 - alive < TOO_UNLIKELY { None } else { weighted_range(died) },
        }
    }

    /// Chance that bees have eaten of the body of food on the hive, if alive.
    fn body_reached(&self) -> f64 {
        let members = &self.strata.alive.members;
        let (reached, all) = self.strata.alive_mass.iter().enumerate().fold((0.0, 0.0), |(reached, all), (m, mass)| {
            (reached + if members.member(m).body_reached { *mass } else { 0.0 }, all + mass)
        });
        reached / f64::max(all, 1e-300)
    }
}

/// Quantiles of weighted values: the smallest value below which at least the share lies; `None` without weight.
#[must_use]
pub fn weighted_range(mut values: Vec<(f64, f64)>) -> Option<Range<f64>> {
    values.retain(|(value, weight)| value.is_finite() && *weight > 0.0);
    let all: f64 = values.iter().map(|(_, weight)| weight).sum();
    values.sort_by(|a, b| a.0.total_cmp(&b.0));
    let at = |share: f64| {
        let mut sum = 0.0;
        let found = values.iter().find(|(_, weight)| {
            sum += weight;
            sum >= share * all
        });
        found.or(values.last()).map(|(value, _)| *value)
    };
    Some(Range { p10: at(0.1)?, p50: at(0.5)?, p90: at(0.9)? })
}
