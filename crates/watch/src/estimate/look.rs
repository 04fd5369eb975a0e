//! What a look does to an estimate: particles are weighed, those that fit carried on, and what was done is done.

use snowhum_apiary::{Act, Feed, Sign};
use snowhum_units::{Fraction, Kilogram};
use snowhum_winter::Action;

use super::{Estimate, Purpose};
use crate::flock::LEARNS;
use crate::liu_west::Kernel;
use crate::log::Visit;
use crate::scene::Scene;
use crate::signs;
use crate::strata::Evidence;
use crate::view::{Conditions, Life};
use crate::weights::effective;

/// Share of the living that must count after a step of weighing, or it is taken in smaller steps.
const SHARP: f64 = 0.1;
const STEP_TO: f64 = 0.45;
/// Most steps that one look is taken in.
const MOST_STEPS: usize = 6;
/// Liu and West's discount: how far parameters are drawn together before they are spread again.
const DISCOUNT: f64 = 0.98;
/// Share of mites a treatment of a broodless colony leaves (common practice: nine in ten and more are gone).
const LEFT_BY_TREATMENT: f64 = 0.1;

/// The chances of a look's signs, natural logarithm, for each particle.
struct Chances {
    queenright: Vec<f64>,
    queenless: Vec<f64>,
    dead: Vec<f64>,
}

impl Estimate {
    /// Weighs all particles by a visit's signs at this hour, carries on those that fit, then does what was done.
    pub fn visit(&mut self, scene: &Scene<'_>, visit: &Visit) -> Evidence {
        let day = scene.conditions(visit.hour, &visit.conditions);
        let evidence = self.weigh(scene, &day, &visit.signs);
        self.looked(&visit.signs);
        for act in &visit.acts {
            self.act(scene, act);
        }
        evidence
    }

    /// Weighs all particles by signs seen together. A sharp look is taken in steps, so that it leaves particles enough.
    pub fn weigh(&mut self, scene: &Scene<'_>, day: &Conditions, seen: &[Sign]) -> Evidence {
        let mut all = Evidence { log_evidence: 0.0, unexplained: false };
        if seen.is_empty() {
            return all;
        }
        let mut left = 1.0;
        for step in 0..MOST_STEPS {
            let chances = self.chances(scene, day, seen);
            let last = step + 1 == MOST_STEPS;
            let part = if last { left } else { self.part(&chances, left) };
            let evidence = self.weigh_part(&chances, part);
            all.log_evidence += evidence.log_evidence;
            all.unexplained |= evidence.unexplained;
            left -= part;
            self.renew(scene);
            if left <= 0.0 || evidence.unexplained {
                break;
            }
        }
        self.log_evidence += all.log_evidence;
        all
    }

    fn chances(&self, scene: &Scene<'_>, day: &Conditions, seen: &[Sign]) -> Chances {
        let log = |view| signs::visit_log_probability(seen, &view, day, scene.parameters);
        let mut chances = Chances { queenright: Vec::new(), queenless: Vec::new(), dead: Vec::new() };
        for m in 0..self.sizes.alive {
            let member = self.strata.alive.members.member(m);
            chances.queenright.push(log(self.alive_view(m, &member, Life::Queenright)));
            chances.queenless.push(log(self.alive_view(m, &member, Life::Queenless)));
        }
        chances.dead = self.strata.dead.iter().map(|(remains, _)| log(self.dead_view(remains))).collect();
        chances
    }

    /// The largest part of the look, at most `left`, after which enough of the living count.
    fn part(&self, chances: &Chances, left: f64) -> f64 {
        let count = self.sizes.alive as f64;
        let counting = |part: f64| {
            let logs = self.of_living(chances, part);
            let greatest = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            let masses: Vec<f64> =
                self.strata.alive_mass.iter().zip(&logs).map(|(mass, log)| mass * (log - greatest).exp()).collect();
            effective(&masses) / count
        };
        if counting(left) >= SHARP || counting(0.0) < STEP_TO {
            return left;
        }
        let (mut low, mut high) = (0.0, left);
        for _ in 0..20 {
            let middle = 0.5 * (low + high);
            if counting(middle) >= STEP_TO {
                low = middle;
            } else {
                high = middle;
            }
        }
        low.max(left / 64.0)
    }

    /// Logarithm of a part of a look's chance for each living particle, its queen summed out.
    fn of_living(&self, chances: &Chances, part: f64) -> Vec<f64> {
        let of = |m: usize| {
            let (right, less) = self.queen_shares(m);
            log_sum(right.ln() + part * chances.queenright[m], less.ln() + part * chances.queenless[m])
        };
        (0..self.sizes.alive).map(of).collect()
    }

    fn queen_shares(&self, m: usize) -> (f64, f64) {
        let member = self.strata.alive.members.member(m);
        let all = (member.queenright + member.queenless).max(1e-300);
        (member.queenright / all, member.queenless / all)
    }

    fn weigh_part(&mut self, chances: &Chances, part: f64) -> Evidence {
        let living = self.of_living(chances, part);
        let dead: Vec<f64> = chances.dead.iter().map(|log| part * log).collect();
        let evidence = self.strata.weigh(&living, &dead);
        if !evidence.unexplained {
            for m in 0..self.sizes.alive {
                let (right, _) = self.queen_shares(m);
                let share = (right.ln() + part * chances.queenright[m] - living[m]).exp();
                self.strata.alive.members.set_queenright(m, share.clamp(0.0, 1.0));
            }
        }
        evidence
    }

    /// Resamples the living if too few count, and spreads what they learn.
    fn renew(&mut self, scene: &Scene<'_>) {
        self.renewals += 1;
        let turn = self.renewals;
        let [u, ..] = self.key.uniforms([turn, 0, 0, Purpose::Renewal as u32]);
        let values: Vec<[f64; LEARNS]> = (0..self.sizes.alive).map(|m| self.strata.alive.learned(m)).collect();
        let masses = self.strata.alive_mass.clone();
        if !self.strata.renew(u) {
            return;
        }
        if self.hour <= scene.known_hours {
            self.strata.alive.members.deal_weather(scene.yard);
        }
        let kernel = Kernel::of(&values, &masses, DISCOUNT);
        let key = self.key;
        let moved: Vec<[f64; LEARNS]> = (0..self.sizes.alive)
            .map(|m| {
                let z = |at: u32| key.normals([m as u32, turn, at, Purpose::Jitter as u32]);
                let draws = [z(0), z(1), z(2), z(3)].concat();
                kernel.moved(&self.strata.alive.learned(m), &draws)
            })
            .collect();
        self.strata.alive.relearn(&moved);
    }

    /// What was looked at is old from now on.
    fn looked(&mut self, seen: &[Sign]) {
        for m in 0..self.sizes.alive {
            self.strata.alive.looked(m, seen);
        }
        for (remains, _) in &mut self.strata.dead {
            remains.litter.looked(seen);
        }
    }

    fn brushed(&mut self) {
        for m in 0..self.sizes.alive {
            self.strata.alive.brushed(m);
        }
        for (remains, _) in &mut self.strata.dead {
            remains.old_rime_hours = 0.0;
        }
    }

    fn act(&mut self, scene: &Scene<'_>, act: &Act) {
        let members = &mut self.strata.alive.members;
        match act {
            Act::Fed { feed, mass_kg } => members.act(scene.yard, fed(*feed, *mass_kg)),
            Act::FramesFrom { stores_kg, .. } => members.act(scene.yard, Action::HangFrames { stores: *stores_kg }),
            Act::BroughtNear => members.act(scene.yard, Action::BringNear),
            Act::Treated(_) => members.act(scene.yard, Action::Treat { left: Fraction::new(LEFT_BY_TREATMENT) }),
            Act::Changed(change) => {
                if let Ok(hive) = self.hive.with_change(change) {
                    self.lid_resistance = lid_resistance(&hive);
                    self.hive = hive;
                    let rebuilt = Action::Rebuild(Box::new(self.hive.clone()));
                    self.strata.alive.members.act(scene.yard, rebuilt.clone());
                    self.empty.act(scene.yard, rebuilt);
                }
            }
            Act::Requeened => {
                for m in 0..self.sizes.alive {
                    self.strata.alive.members.set_queenright(m, 1.0);
                }
            }
            Act::Brushed => self.brushed(),
            // A colony united is no longer watched, and a move of the stand changes no sum here.
            Act::UnitedInto(_) | Act::Moved => {}
        }
    }
}

/// What feed is worth to the model.
fn fed(feed: Feed, mass: Kilogram) -> Action {
    let stores = feed.worth(mass);
    if feed.is_syrup() { Action::Syrup { stores } } else { Action::SolidFeed { stores } }
}

/// Thermal resistance of a hive's lid, m² K/W.
pub(super) fn lid_resistance(hive: &snowhum_apiary::Hive) -> f64 {
    hive.lid.iter().map(|layer| layer.resistance().get()).sum()
}

fn log_sum(a: f64, b: f64) -> f64 {
    let greatest = a.max(b);
    if greatest.is_finite() { greatest + ((a - greatest).exp() + (b - greatest).exp()).ln() } else { greatest }
}
