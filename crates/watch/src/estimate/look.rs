//! What a look does to an estimate: particles are weighed, those that fit carried on, and what was done is done.

use jiff::ToSpan;
use snowhum_apiary::{Act, Feed, NotedOpenings, OpeningKind, QueenState, Sign};
use snowhum_draws::Key;
use snowhum_units::Same;
use snowhum_units::{Fraction, Kilogram};
use snowhum_winter::{Action, Environment, Members, Record, Settings, Yard};

use super::showing::{Heard, Look};
use super::{Estimate, Purpose};
use crate::flock::{Flock, LEARNS};
use crate::liu_west::Kernel;
use crate::log::Visit;
use crate::scene::Scene;
use crate::signs::{self, Hours, KINDS};
use crate::strata::Evidence;
use crate::tempering::{Taken, Weighed, weigh_sharply};
use crate::view::Conditions;

/// Liu and West's discount: how far parameters are drawn together before they are spread again.
const DISCOUNT: f64 = 0.98;
/// Share of a look's chance that the queen's is weighed by where nothing explains the look.
const WIDENED: f64 = 0.1;
/// Mean logarithm of a sign's chance above which no sign of a look is taken for a slip.
const UNLIKELY: f64 = -4.0;

/// Moves the living after they were resampled: weather dealt afresh where it is known, and what they learn spread.
struct Rejuvenation<'a> {
    scene: &'a Scene<'a>,
    key: Key,
    known: bool,
}

impl Rejuvenation<'_> {
    fn of(&self, flock: &mut Flock, turn: u32) {
        if self.known {
            flock.members.deal_weather(self.scene.yard);
        }
        let count = flock.kept.len();
        let mut values: Vec<[f64; LEARNS]> = (0..count).map(|m| flock.learned(m)).collect();
        let equal = vec![1.0; count];
        let kernel = Kernel::from_discount(DISCOUNT);
        kernel.renew_jointly(&mut values, &equal, |m| self.normals(m as u32, turn));
        flock.relearn(&values);
    }

    fn normals(&self, m: u32, turn: u32) -> [f64; LEARNS] {
        let z = |at: u32| self.key.normals([m, turn, at, Purpose::Jitter as u32]);
        let mut normals = [0.0; LEARNS];
        for (at, four) in normals.chunks_mut(4).enumerate() {
            let drawn = z(at as u32);
            four.copy_from_slice(&drawn[..four.len()]);
        }
        normals
    }
}

impl Estimate {
    /// Weighs all particles by signs seen together; what was looked at is old from now on.
    pub fn look(&mut self, scene: &Scene<'_>, day: &Conditions, seen: &[Sign]) -> Weighed {
        let (look, hours) = (Look { scene, day, seen }, Hours::unknown(scene.parameters));
        let weighed = self.weigh_heard(&look, &hours, None);
        self.looked_at(scene, seen);
        weighed
    }

    /// Weighs all particles by a visit's signs at this hour, of which other hives told something, carries on those that fit,
    /// then does what was done. `heard` is what the signs say of each particle, where that is known already.
    pub(crate) fn visit(&mut self, scene: &Scene<'_>, visit: &Visit, hours: &Hours, heard: Option<Heard>) -> Weighed {
        let (day, seen) = self.seen_at(scene, visit);
        let weighed = self.weigh_heard(&Look { scene, day: &day, seen: &seen }, hours, heard);
        self.looked_at(scene, &seen);
        for act in &visit.acts {
            self.act(scene, act);
        }
        weighed
    }

    /// The day of a visit, and its signs. What nobody can see in a dark room says nothing there: "no flight" is no sign of
    /// death.
    pub(crate) fn seen_at(&self, scene: &Scene<'_>, visit: &Visit) -> (Conditions, Vec<Sign>) {
        let indoors = scene.is_indoors(self.place, visit.hour);
        let seen = visit.signs.iter().filter(|sign| !indoors || sign.is_seen_indoors()).cloned();
        (scene.conditions(self.place, visit.hour, &visit.conditions), seen.collect())
    }

    /// What a visit's signs say of every particle at this hour, and what they tell of the hour.
    pub(crate) fn hear(&self, scene: &Scene<'_>, visit: &Visit) -> (Heard, [f64; KINDS]) {
        let (day, seen) = self.seen_at(scene, visit);
        let look = Look { scene, day: &day, seen: &seen };
        let strata = &self.strata;
        let heard = self.showing.heard(&look, &strata.alive, &strata.dead);
        let told = heard.of_the_hour(&strata.alive_mass, strata.dead.iter().map(|(_, mass)| mass));
        (heard, told)
    }

    /// Weighs all particles by signs seen together, and nothing else.
    pub fn weigh(&mut self, scene: &Scene<'_>, day: &Conditions, seen: &[Sign]) -> Weighed {
        self.weigh_heard(&Look { scene, day, seen }, &Hours::unknown(scene.parameters), None)
    }

    /// A sharp look is taken in steps, so that it leaves particles enough.
    fn weigh_heard(&mut self, look: &Look<'_>, hours: &Hours, heard: Option<Heard>) -> Weighed {
        let Look { scene, seen, .. } = *look;
        // What says nothing of the bees, such as how an opening was found, leaves every particle as it was to the last bit.
        if seen.iter().all(|sign| signs::answer(sign).is_none()) {
            let evidence = Evidence { log_evidence: 0.0, unexplained: false };
            return Weighed { evidence, taken: Taken::AtOnce };
        }
        let rejuvenation = Rejuvenation { scene, key: self.key, known: self.showing.hour <= scene.known_hours };
        let (key, showing, first) = (self.key, &self.showing, self.renewals);
        let uniform = |step: usize| key.uniforms([first + step as u32, 0, 0, Purpose::Renewal as u32])[0];
        let mut steps = 0;
        let at_first = heard.unwrap_or_else(|| showing.heard(look, &self.strata.alive, &self.strata.dead));
        let mut asked = 0;
        let weighed = weigh_sharply(
            &mut self.strata,
            |flock, dead| {
                asked += 1;
                if asked == 1 { at_first.chances(hours) } else { showing.heard(look, flock, dead).chances(hours) }
            },
            |flock, bridge| {
                rejuvenation.of(flock, first + bridge.step as u32);
                steps = bridge.step as u32 + 1;
            },
            uniform,
        );
        let moved = (weighed.taken != Taken::AtOnce).then(|| self.showing.heard(look, &self.strata.alive, &[]));
        self.weigh_queens(moved.as_ref().unwrap_or(&at_first), hours, weighed.taken);
        // Only what was unlikely can be a slip: most looks need no second thought.
        let unlikely = weighed.evidence.log_evidence < UNLIKELY * seen.len() as f64;
        let slipped = unlikely && seen.iter().any(|sign| self.slipped(look, sign));
        if weighed.taken == Taken::AtOnce && self.strata.renew(uniform(0)) {
            rejuvenation.of(&mut self.strata.alive, first);
            steps = 1;
        }
        self.renewals += steps;
        self.log_evidence += weighed.evidence.log_evidence;
        let unexplained = weighed.evidence.unexplained || slipped;
        Weighed { evidence: Evidence { unexplained, ..weighed.evidence }, ..weighed }
    }

    /// Whether a sign is most likely a slip for nearly all that is still thought possible.
    fn slipped(&self, look: &Look<'_>, sign: &Sign) -> bool {
        const SURE: f64 = 0.9;
        let (mut slip, mut all) = (0.0, 0.0);
        for (view, mass) in self.views().filter(|(_, mass)| *mass > 0.0) {
            slip += mass * signs::slip(sign, &view, look.day, look.scene.parameters);
            all += mass;
        }
        slip > SURE * all
    }

    /// What was seen says of each living particle's queen.
    fn weigh_queens(&mut self, heard: &Heard, hours: &Hours, taken: Taken) {
        let part = match taken {
            Taken::AtOnce | Taken::InSteps(_) => 1.0,
            Taken::Widened(_) => WIDENED,
            Taken::Refused => return,
        };
        for m in 0..self.sizes.alive {
            let before = self.strata.alive.queenright_share(m);
            let (right, less) = heard.of_queens(hours, m);
            let odds_moved = (right - before.same_ln()) - (less - (1.0 - before).same_ln());
            let odds = before / (1.0 - before) * (part * odds_moved).same_exp();
            let share = if before >= 1.0 { 1.0 } else { odds / (1.0 + odds) };
            if share.is_finite() {
                self.strata.alive.members.set_queenright(m, share);
            }
        }
    }

    /// What was looked at is old from now on, and openings are as they were seen.
    fn looked_at(&mut self, scene: &Scene<'_>, seen: &[Sign]) {
        self.looked(seen);
        let heights = self.showing.hive.opening_heights();
        self.openings_noted(scene, |openings, at| openings.look(seen.iter(), &heights, at));
    }

    fn looked(&mut self, seen: &[Sign]) {
        for m in 0..self.sizes.alive {
            self.strata.alive.looked(m, seen);
        }
        for (remains, _) in &mut self.strata.dead {
            remains.litter.looked(seen);
        }
    }

    /// An opening noted shut is that shut from this hour on, with bees in the hive or none, until it is noted clear.
    fn openings_noted(&mut self, scene: &Scene<'_>, note: impl FnOnce(&mut NotedOpenings, jiff::Timestamp)) {
        let before = self.free();
        // The hour that ends now: a note late in the evening is of its own day.
        let at = scene.start + jiff::SignedDuration::from_hours(self.showing.hour.saturating_sub(1) as i64);
        note(&mut self.openings, at);
        let (entrance, hole) = self.free();
        if (entrance, hole) == before {
            return;
        }
        let shut = Action::Openings { entrance, hole };
        self.strata.alive.members.act(scene.yard, shut.clone());
        self.showing.empty.act(scene.yard, shut);
    }

    /// Shares of entrance and upper hole that are free.
    fn free(&self) -> (Fraction, Fraction) {
        (self.openings.free(OpeningKind::Entrance), self.openings.free(OpeningKind::UpperHole))
    }

    fn brushed(&mut self) {
        for m in 0..self.sizes.alive {
            self.strata.alive.brushed(m);
        }
        for (remains, _) in &mut self.strata.dead {
            remains.old_rime_hours = 0.0;
        }
    }

    /// A queen told by who looked at her is known: her chance is the same for all members.
    fn found_queen(&mut self, scene: &Scene<'_>, state: QueenState) {
        let share = match state {
            QueenState::Laying | QueenState::Introduced | QueenState::Cast => 1.0,
            QueenState::None | QueenState::DroneLayer | QueenState::LayingWorkers => 0.0,
            QueenState::Virgin => still_mates(scene, self.place, self.showing.hour).unwrap_or(0.0),
        };
        for m in 0..self.sizes.alive {
            self.strata.alive.members.set_queenright(m, share);
        }
    }

    fn act(&mut self, scene: &Scene<'_>, act: &Act) {
        self.openings_noted(scene, |openings, at| openings.take(act, at));
        let members = &mut self.strata.alive.members;
        match act {
            Act::Fed { feed, mass_kg } => members.act(scene.yard, fed(*feed, *mass_kg)),
            Act::FoodPutOn(body) => {
                members.act(scene.yard, Action::FoodPutOn { stores: body.worth(), place: body.place });
            }
            Act::FoodTakenOff => members.act(scene.yard, Action::FoodTakenOff),
            Act::FoodEatenUp => members.act(scene.yard, Action::FoodEatenUp),
            Act::FramesFrom { stores_kg, .. } => members.act(scene.yard, Action::HangFrames { stores: *stores_kg }),
            Act::BroughtNear => members.act(scene.yard, Action::BringNear),
            // Of what a later count has seen the work, that count speaks.
            Act::Treated(_) if scene.is_counted_after(self.place, self.showing.hour) => {}
            Act::Treated(_) => members.act(scene.yard, Action::Treat),
            Act::Changed(change) => {
                if let Ok(hive) = self.showing.hive.with_change(change) {
                    let rebuilt = Action::Rebuild(Box::new(hive.clone()));
                    members.act(scene.yard, rebuilt.clone());
                    self.showing.empty.act(scene.yard, rebuilt);
                    self.showing.change(hive);
                }
            }
            Act::Requeened => self.found_queen(scene, QueenState::Introduced),
            Act::QueenFound(state) => self.found_queen(scene, *state),
            Act::Swept => {
                members.act(scene.yard, Action::SweepRoof);
                self.showing.empty.act(scene.yard, Action::SweepRoof);
            }
            Act::Brushed => self.brushed(),
            // Where the hive stands is known to the scene, from the yard's plan and all notes together.
            Act::CarriedIn(_) | Act::CarriedOut => {}
            // A colony united, examined or counted is no longer watched, and a move of the stand changes no sum here. A count
            // of mites is in the colony as it entered.
            Act::UnitedInto(_) | Act::Moved | Act::Examined(_) | Act::Counted(_) | Act::MitesCounted { .. } => {}
        }
    }
}

/// Chance that a virgin met at an hour of the run still mates: the winter model's own, for a colony that enters it that
/// day. None if there is no such colony.
fn still_mates(scene: &Scene<'_>, place: usize, hour: usize) -> Option<f64> {
    let (yard, day) = (scene.yard, (hour / 24) as i64);
    let mut housed = yard.colonies.get(place)?.clone();
    housed.colony.autumn.queen = Some(QueenState::Virgin);
    let outside = yard.environment.outside(0, 0)?;
    let met = yard.environment.first_day().saturating_add(day.days());
    let environment = Environment::steady(met, 24, outside.air, Fraction::new(0.8), outside.wind)
        .with_winter_bees(yard.environment.winter_bees(yard.parameters));
    let entered = Yard { environment: &environment, parameters: yard.parameters, colonies: &[housed] };
    let members = Members::enter(&entered, 0, Settings { members: 1, seed: scene.seed, record: Record::End })?;
    Some(members.queens(0).0)
}

/// What feed is worth to the model.
fn fed(feed: Feed, mass: Kilogram) -> Action {
    let stores = feed.worth(mass);
    if feed.is_syrup() { Action::Syrup { stores } } else { Action::SolidFeed { stores } }
}
