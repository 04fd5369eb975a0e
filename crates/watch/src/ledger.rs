//! What a living colony shows of its dead, and where the rest of them are.

use snowhum_apiary::{DeadCount, DeadPlace, Sign};
use snowhum_draws::Key;
use snowhum_units::{Against, Usual};

use crate::litter::{Litter, Since};
use crate::view::Life;
use crate::{Answer, Conditions, Estimate, Scene, View, Visit, signs};

const STREAM: u64 = 0x4c45_4447;

/// Where a colony's dead are: `had + died = floor + before + snow + flown + taken`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Ledger {
    /// On the floor and under snow at the last look.
    pub had: f64,
    /// Died since.
    pub died: f64,
    /// On the floor.
    pub floor: f64,
    /// Before the hive, to be seen.
    pub before: f64,
    /// Before the hive, under snow.
    pub snow: f64,
    /// Lost in the air, or carried off by bees.
    pub flown: f64,
    /// Taken by birds, mice and wind.
    pub taken: f64,
}

/// A count of dead bees, and what it is held against.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeadBees {
    /// Where they were counted.
    pub place: DeadPlace,
    /// At least the first and at most the second.
    pub found: (u32, Option<u32>),
    /// What a living colony shows.
    pub usual: Usual,
    /// Where its dead are, in the mean.
    pub ledger: Ledger,
    /// Hour of the look before; 0 where there was none.
    pub since: usize,
}

impl DeadBees {
    /// How it stands to what is usual.
    #[must_use]
    pub fn against(&self) -> Against {
        self.usual.against(self.found.0, self.found.1)
    }
}

impl Ledger {
    pub(crate) fn of(litter: &Litter) -> Self {
        let Since { had, died, flown, taken } = litter.since;
        let (floor, before, snow) = (litter.floor, litter.outside, litter.hidden);
        Self { had, died, floor, before, snow, flown, taken }
    }

    /// The mean of several, each with its weight.
    #[must_use]
    pub fn mean(of: impl Iterator<Item = (Self, f64)>) -> Self {
        let (mut sums, mut all) = ([0.0; 7], 0.0);
        for (one, weight) in of {
            sums.iter_mut().zip(one.figures()).for_each(|(sum, figure)| *sum += weight * figure);
            all += weight;
        }
        let [had, died, floor, before, snow, flown, taken] = sums.map(|sum| sum / f64::max(all, 1e-300));
        Self { had, died, floor, before, snow, flown, taken }
    }

    fn figures(&self) -> [f64; 7] {
        [self.had, self.died, self.floor, self.before, self.snow, self.flown, self.taken]
    }
}

impl Estimate {
    /// What a living colony shows of its dead at this hour, as this keeper would count them: what every count is held
    /// against. `None` where nothing living is thought possible.
    #[must_use]
    pub fn dead_bees_usual(&self, scene: &Scene<'_>, day: &Conditions, place: DeadPlace) -> Option<(Usual, Ledger)> {
        let key = Key::new(scene.seed ^ STREAM, self.hour() as u64);
        let template = [Sign::DeadBees { count: DeadCount::Counted(0), place }];
        let flock = &self.strata.alive;
        let masses = || self.strata.alive_mass.iter().enumerate().filter(|(_, mass)| **mass > 0.0);
        let counted = |m: usize| {
            let view: View = self.showing.alive(flock, m, Life::Queenright);
            let draw = |step: u32| key.uniforms([m as u32, step, place as u32, 0]);
            let seen = signs::sample_visit(&template, &view, day, scene.parameters, draw);
            match seen.first().and_then(signs::answer) {
                Some(Answer::Count(count, _)) => f64::from(count),
                _ => 0.0,
            }
        };
        let counts: Vec<(f64, f64)> = masses().map(|(m, mass)| (counted(m), *mass)).collect();
        let ledger = Ledger::mean(masses().map(|(m, mass)| (Ledger::of(&flock.kept[m].litter), *mass)));
        Usual::of(&counts).map(|usual| (usual, ledger))
    }

    /// The counts of dead bees of a visit at this hour, each with what it is held against; `since` is the hour of those
    /// before.
    pub(crate) fn dead_bees_at(&self, scene: &Scene<'_>, visit: &Visit, since: usize) -> Vec<DeadBees> {
        let (day, seen) = self.seen_at(scene, visit);
        let of = |sign: &Sign| {
            let Sign::DeadBees { count, place } = sign else { return None };
            let (usual, ledger) = self.dead_bees_usual(scene, &day, *place)?;
            Some(DeadBees { place: *place, found: count.bounds(), usual, ledger, since })
        };
        seen.iter().filter_map(of).collect()
    }
}
