//! Made-up truths: colonies whose winter is known, and the notes a keeper would have made of them.
//!
//! A twin lives by the same model and shows the same signs by the same laws as the filter believes in; what the filter
//! then says of it can be held against what happened.

use snowhum_apiary::Sign;
use snowhum_draws::Key;
use snowhum_winter::{Cause, Member};

use crate::estimate::{DayOut, Estimate, Sizes, Step};
use crate::flock::Living;
use crate::remains::Remains;
use crate::scene::Scene;
use crate::signs;
use crate::view::{Conditions, Life, View};

/// Stream of the coins that decide a twin's fate, and of its keeper's eyes.
const COINS: u64 = 0x0043_4f49_4e53;
/// Stream of the hours in which the hives of a yard are looked at.
const HOURS: u64 = 0x0048_4f55_5253;

/// What a coin is for: the last word of its counter.
#[derive(Debug, Clone, Copy)]
enum Coin {
    Fate = 1,
    Eyes = 2,
}

/// Some twins, each a truth of its own.
#[derive(Debug, Clone)]
pub struct Twin {
    of: Estimate,
    key: Key,
    hours: Key,
    fates: Vec<Fate>,
}

/// How a twin stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwinState {
    /// Its colony; of one that has ended only what does not change with time.
    pub living: Living,
    /// Hour and cause of its end.
    pub ended: Option<(usize, Cause)>,
}

/// What became of a twin.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Fate {
    Queenright,
    Queenless,
    Dead(Remains),
}

impl Twin {
    /// `count` twins at the start of a run.
    #[must_use]
    pub fn begin(scene: &Scene<'_>, place: usize, count: usize) -> Option<Self> {
        let of = Estimate::begin(scene, place, Sizes { alive: count, dead: 1 })?;
        let key = Key::new(scene.seed, COINS + place as u64);
        Some(Self { of, key, hours: Key::new(scene.seed, HOURS), fates: vec![Fate::Queenright; count] })
    }

    /// Time passes; on each day coins fall.
    pub fn advance(&mut self, scene: &Scene<'_>, hour: usize) {
        while let Some(step) = self.of.step(scene, None, hour) {
            if step == Step::Day {
                let today = DayOut::of(scene, self.of.place(), self.of.hour());
                self.of.keep_day(&today);
                self.fates = (0..self.fates.len()).map(|m| self.fell(m, &today)).collect();
            }
        }
    }

    /// The fate of a twin after a day whose chances have just been booked.
    fn fell(&mut self, m: usize, today: &DayOut) -> Fate {
        if let Fate::Dead(mut remains) = self.fates[m] {
            self.of.age_remains(today, &mut remains);
            return Fate::Dead(remains);
        }
        let members = &mut self.of.strata.alive.members;
        let member = members.member(m);
        members.settle_fate(m);
        let [u, ..] = self.key.uniforms([m as u32, self.of.hour() as u32, 0, Coin::Fate as u32]);
        let members = &mut self.of.strata.alive.members;
        match fall(&member, u) {
            Fell::Queenright => {
                members.set_queenright(m, 1.0);
                Fate::Queenright
            }
            Fell::Queenless => {
                members.set_queenright(m, 0.0);
                Fate::Queenless
            }
            Fell::Ended(cause) => Fate::Dead(self.of.remains_of(m, cause)),
        }
    }

    /// What twin `m` shows now.
    #[must_use]
    pub fn view(&self, m: usize) -> View {
        let (showing, flock) = (&self.of.showing, &self.of.strata.alive);
        match &self.fates[m] {
            Fate::Queenright => showing.alive(flock, m, Life::Queenright),
            Fate::Queenless => showing.alive(flock, m, Life::Queenless),
            Fate::Dead(remains) => showing.dead(remains),
        }
    }

    /// Signs that the keeper of twin `m` notes when looking for those of `templates`. Twins under one
    /// weather at several places of a yard are looked at in the same hour.
    #[must_use]
    pub fn seen(&self, m: usize, scene: &Scene<'_>, day: &Conditions, templates: &[Sign]) -> Vec<Sign> {
        let hour = self.of.hour() as u32;
        let draw = |at: u32| self.key.uniforms([m as u32, hour, at, Coin::Eyes as u32]);
        let path = self.of.strata.alive.members.path(m) as u32;
        let kind = signs::Hour::drawn(self.hours.uniforms([path, hour, 0, 0])[0], scene.parameters);
        signs::sample_visit_in(kind, templates, &self.view(m), day, scene.parameters, draw)
    }

    /// The keeper of twin `m` has looked, and what was seen is old from now on.
    pub fn looked(&mut self, m: usize, seen: &[Sign]) {
        self.of.strata.alive.looked(m, seen);
        if let Fate::Dead(remains) = &mut self.fates[m] {
            remains.litter.looked(seen);
        }
    }

    /// How twin `m` stands.
    #[must_use]
    pub fn state(&self, m: usize) -> TwinState {
        let ended = match &self.fates[m] {
            Fate::Dead(remains) => Some((remains.hour, remains.cause)),
            Fate::Queenright | Fate::Queenless => None,
        };
        TwinState { living: self.of.strata.alive.living(m, 1.0), ended }
    }
}

/// What a coin falls on.
enum Fell {
    Queenright,
    Queenless,
    Ended(Cause),
}

/// The outcome that share `u` of a member's chances falls on.
fn fall(member: &Member, u: f64) -> Fell {
    let mut left = u * (member.queenright + member.queenless + member.ended.total());
    for (cause, chance) in member.ended.by_cause() {
        left -= chance;
        if left < 0.0 {
            return Fell::Ended(cause);
        }
    }
    if left < member.queenright { Fell::Queenright } else { Fell::Queenless }
}
