//! What a look at a hive today could show, and what each answer would say.

use jiff::{SignedDuration, Timestamp};
use snowhum_apiary::{Conditions, DeadCount, Sign};
use snowhum_units::Usual;
use snowhum_watch::{Estimate, Scene, SignTable};

/// Every particle is asked.
const ALL: usize = 1;

/// A look at one hive today.
#[derive(Debug, Clone, PartialEq)]
pub struct LookToday {
    /// When it is reckoned for.
    pub at: Timestamp,
    /// What each sign would say.
    pub table: SignTable,
    /// Dead bees that a living colony shows, and the same as a sign; none indoors, or where nothing living is thought
    /// possible.
    pub usual: Option<(Usual, Sign)>,
}

impl LookToday {
    pub(super) fn of(scene: &Scene<'_>, estimate: &Estimate, asked: &[Sign]) -> Self {
        let day = scene.conditions(estimate.place(), estimate.hour(), &Conditions::default());
        let place = scene.dead_lie(estimate.place(), estimate.hour(), &day);
        let outdoors = !scene.is_indoors(estimate.place(), estimate.hour());
        let usual = estimate.dead_bees_usual(scene, &day, place).filter(|_| outdoors).map(|(usual, _)| {
            let count = match usual.most {
                0 => DeadCount::Counted(0),
                most => DeadCount::Band(usual.least, Some(most)),
            };
            (usual, Sign::DeadBees { count, place })
        });
        let own = usual.iter().map(|(_, sign)| sign).filter(|sign| !asked.contains(sign));
        let asked: Vec<Sign> = asked.iter().chain(own).cloned().collect();
        let at = scene.start + SignedDuration::from_hours(estimate.hour().saturating_sub(1) as i64);
        Self { at, table: estimate.sign_table(scene, &day, &asked, ALL), usual }
    }
}
