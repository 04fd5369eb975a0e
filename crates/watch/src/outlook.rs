//! What lies ahead of an estimate: living particles run on under every weather path.

use snowhum_winter::{Action, Members, Record, Trajectory, WarmWall};

use crate::Estimate;
use crate::scene::Scene;
use crate::weights::systematic;

/// Living members, equally likely, at the hour an outlook begins.
#[derive(Debug, Clone)]
pub struct Outlook {
    members: Members,
    /// Chance that the colony is alive at all.
    pub alive: f64,
}

impl Estimate {
    /// `count` living members drawn in proportion to their mass, each on a weather path of its own from now on.
    #[must_use]
    pub fn outlook(&self, scene: &Scene<'_>, count: usize) -> Outlook {
        let chosen = systematic(&self.strata.alive_mass, count, 0.5);
        let mut members = self.strata.alive.members.clone();
        members.select(&spread(chosen));
        members.deal_weather(scene.yard);
        for m in 0..count {
            // Alive at the start: what happens from now on is booked from here.
            members.settle_fate(m);
        }
        Outlook { members, alive: self.strata.alive_share() }
    }
}

impl Outlook {
    /// The members themselves, where another colony takes them in.
    pub(crate) fn members(&self) -> &Members {
        &self.members
    }

    /// Runs the members to the end of the environment. Two runs that differ in what is done share weather and luck.
    #[must_use]
    pub fn run(
        &self,
        scene: &Scene<'_>,
        beside: Option<&WarmWall>,
        actions: &[(usize, Action)],
        record: Record,
    ) -> Trajectory {
        self.members.clone().run_on(scene.yard, beside, actions, record)
    }

    /// The same of the first `count` members alone.
    #[must_use]
    pub fn run_of(
        &self,
        count: usize,
        scene: &Scene<'_>,
        beside: Option<&WarmWall>,
        actions: &[(usize, Action)],
        record: Record,
    ) -> Trajectory {
        if count >= self.members.count() {
            return self.run(scene, beside, actions, record);
        }
        let mut members = self.members.clone();
        members.select(&(0..count).collect::<Vec<_>>());
        members.run_on(scene.yard, beside, actions, record)
    }
}

/// Puts copies of one ancestor far apart, so that they walk different weather: a fixed stride through the places.
fn spread(chosen: Vec<usize>) -> Vec<usize> {
    let count = chosen.len();
    let stride = (1..count).map(|step| count * 618 / 1_000 + step).find(|step| gcd(*step, count) == 1).unwrap_or(1);
    (0..count).map(|place| chosen[place * stride % count.max(1)]).collect()
}

fn gcd(a: usize, b: usize) -> usize {
    if b == 0 { a } else { gcd(b, a % b) }
}
