//! The living: members of the winter model, each with what the watch keeps beside it.

use snowhum_apiary::Sign;
use snowhum_units::Same;
use snowhum_winter::{LEARNED, Member, Members};

use crate::litter::Litter;
use crate::strata::Population;
use crate::view::Own;

/// Numbers a living particle learns: those of the model's member and those of keeper and hive.
pub(crate) const LEARNS: usize = LEARNED + 4;

impl Kept {
    /// What the day's brood has cost is spared by colonies without a queen, and by none of those that lost her today.
    pub(crate) fn spare(&mut self, member: &Member, brood_cost: f64) {
        let newly = (member.queenless - self.queenless).max(0.0);
        let before = if member.queenless > 0.0 { 1.0 - newly / member.queenless } else { 0.0 };
        self.spared_kg = before.max(0.0) * (self.spared_kg + brood_cost * member.nest * member.eaten_kg);
    }
}

/// Where the hazard of winter bees stands among the numbers of the model's member.
const WINTER_HAZARD: usize = 5;

/// What the watch keeps of one living particle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Kept {
    /// What the keeper and the hive have of their own.
    pub own: Own,
    /// The dead bees.
    pub litter: Litter,
    /// Hours of rime on closed days since the hole was last brushed or looked at, less those of the look's own morning.
    pub rime_hours: f64,
    /// Hours of rime before that.
    pub old_rime_hours: f64,
    /// Share of the last closed day in which the hole's rim was wet.
    pub damp: f64,
    /// Days without flight before the last closed day.
    pub confined_days: f64,
    /// Food that this colony would have more by now if its queen had failed when a queenless one's did: what brood has
    /// cost since, kg. The model's member rears brood whether or not its queen is thought to have failed.
    pub spared_kg: f64,
    /// Share of it without a queen when the last day was closed.
    pub queenless: f64,
}

/// The living.
#[derive(Debug, Clone)]
pub(crate) struct Flock {
    /// Members of the winter model.
    pub members: Members,
    /// One for each.
    pub kept: Vec<Kept>,
}

impl Population for Flock {
    fn select(&mut self, ancestors: &[usize]) {
        self.members.select(ancestors);
        self.kept.select(ancestors);
    }
}

/// One living particle, as a test or a report looks at it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Living {
    /// Its mass.
    pub mass: f64,
    /// Grown bees.
    pub bees: f64,
    /// All food, kg.
    pub stores_kg: f64,
    /// Deaths a bee and day at emergence.
    pub winter_hazard: f64,
}

impl Flock {
    /// Particle `m` of this mass.
    #[must_use]
    pub(crate) fn living(&self, m: usize, mass: f64) -> Living {
        let member = self.members.member(m);
        let winter_hazard = self.members.learned(m)[WINTER_HAZARD].same_exp();
        Living { mass, bees: member.bees, stores_kg: member.stores_kg, winter_hazard }
    }

    /// All numbers that particle `m` learns, on scales on which a bell curve does them no wrong.
    #[must_use]
    pub(crate) fn learned(&self, m: usize) -> [f64; LEARNS] {
        let model = self.members.learned(m);
        let own = &self.kept[m].own;
        let mut all = [0.0; LEARNS];
        all[..LEARNED].copy_from_slice(&model);
        all[LEARNED..].copy_from_slice(&[own.tare_kg, logit(own.side_share), logit(own.seen), own.ear]);
        all
    }

    /// Moves every particle to these numbers.
    pub(crate) fn relearn(&mut self, to: &[[f64; LEARNS]]) {
        for (m, to) in to.iter().enumerate() {
            let mut model = [0.0; LEARNED];
            model.copy_from_slice(&to[..LEARNED]);
            self.members.relearn(m, &model);
            let [tare_kg, side, seen, ear] = [to[LEARNED], to[LEARNED + 1], to[LEARNED + 2], to[LEARNED + 3]];
            self.kept[m].own = Own { tare_kg, side_share: logistic(side), seen: logistic(seen), ear };
        }
        self.members.relearned();
    }

    /// The keeper has looked at particle `m`: rime seen is old rime at the next look.
    pub(crate) fn looked(&mut self, m: usize, seen: &[Sign]) {
        self.kept[m].litter.looked(seen);
        if seen.iter().any(|sign| matches!(sign, Sign::UpperHole(_))) {
            let member = self.members.member(m);
            let rime = self.rime(m, &member);
            let kept = &mut self.kept[m];
            kept.old_rime_hours += rime;
            kept.rime_hours = -member.rime_hours;
        }
    }

    /// Share of living particle `m` that has a queen.
    #[must_use]
    pub(crate) fn queenright_share(&self, m: usize) -> f64 {
        let (right, less) = self.members.queens(m);
        right / (right + less).max(1e-300)
    }

    /// The keeper has brushed the hole of particle `m`.
    pub(crate) fn brushed(&mut self, m: usize) {
        let member = self.members.member(m);
        let kept = &mut self.kept[m];
        (kept.old_rime_hours, kept.rime_hours) = (0.0, -member.rime_hours);
    }

    /// Rime at the hole of particle `m` since the last brushing, this morning's included.
    #[must_use]
    pub(crate) fn rime(&self, m: usize, member: &Member) -> f64 {
        (self.kept[m].rime_hours + member.rime_hours).max(0.0)
    }
}

/// Log-odds of a share, kept from the ends.
#[must_use]
pub(crate) fn logit(share: f64) -> f64 {
    let share = share.clamp(1e-6, 1.0 - 1e-6);
    (share / (1.0 - share)).same_ln()
}

/// The share of given log-odds.
#[must_use]
pub(crate) fn logistic(log_odds: f64) -> f64 {
    1.0 / (1.0 + (-log_odds).same_exp())
}
