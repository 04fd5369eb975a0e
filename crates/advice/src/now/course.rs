//! Each colony from the count on: as looks left it, and what may come from the day asked about.

use snowhum_units::Range;
use snowhum_watch::{Standing, Watching};
use snowhum_winter::{Daily, Record, Trajectory};

use super::Ground;
use crate::seasons::on_day;

/// A colony at the end of a day of the run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct CourseDay {
    /// Chance of being alive.
    pub(crate) alive: f64,
    /// Grown bees, if alive.
    pub(crate) bees: Option<Range<f64>>,
    /// All food, kg, if alive.
    pub(crate) stores_kg: Option<Range<f64>>,
    /// Food within reach, kg, if alive.
    pub(crate) reachable_kg: Option<Range<f64>>,
}

/// What is known at an hour.
#[derive(Clone, Copy)]
struct Known {
    day: usize,
    stands: CourseDay,
}

impl Ground<'_> {
    /// Every colony day by day, from the count to the end of what is looked at. Days on which nobody looked lie on a
    /// straight line between what looks left; from the day asked about on they are of the run ahead.
    pub(crate) fn courses(&self, watchings: &[Watching]) -> Vec<Vec<CourseDay>> {
        let yard = self.yard();
        let (scene, walls, until) = (self.scene(&yard), self.walls(&yard), self.until());
        let course = |(at, watching): (usize, &Watching)| {
            let wall = walls.get(at).and_then(Option::as_ref);
            let today = watching.at(&scene, wall, until);
            let outlook = today.outlook(&scene, self.question.plan.members);
            let stands = CourseDay::of(&today.standing());
            let mut days = behind(&self.known(at, watching, stands, until / 24), until / 24);
            days.extend(ahead(&outlook.run(&scene, wall, &[], Record::Days), stands.alive));
            days
        };
        watchings.iter().enumerate().map(course).collect()
    }

    /// What was known of a colony and when: as counted, before and after every look, and today.
    fn known(&self, at: usize, watching: &Watching, today: CourseDay, days: usize) -> Vec<Known> {
        let counted = self.housed.get(at).map(|housed| Known { day: 0, stands: CourseDay::counted(&housed.colony) });
        let looks = watching.moved.iter().flat_map(|moved| {
            let day = moved.hour.saturating_sub(1) / 24;
            [&moved.before, &moved.after].map(|standing| Known { day, stands: CourseDay::of(standing) })
        });
        counted.into_iter().chain(looks).chain([Known { day: days.saturating_sub(1), stands: today }]).collect()
    }
}

impl CourseDay {
    fn of(standing: &Standing) -> Self {
        let Standing { alive, bees, stores_kg, reachable_kg, .. } = *standing;
        Self { alive, bees, stores_kg, reachable_kg }
    }

    fn counted(colony: &snowhum_apiary::Colony) -> Self {
        let place = colony.stores.place;
        let reach = place.touched + place.above + place.beside;
        let stores = colony.stores.total.map(|kilograms| kilograms.get());
        Self {
            alive: 1.0,
            bees: Some(colony.bees),
            stores_kg: Some(stores),
            reachable_kg: Some(stores.map(|kilograms| kilograms * reach)),
        }
    }

    /// Part of the way to another.
    fn towards(&self, other: &Self, share: f64) -> Self {
        let between = |a: f64, b: f64| a + share * (b - a);
        let ranges = |a: Option<Range<f64>>, b: Option<Range<f64>>| {
            let (a, b) = (a?, b?);
            Some(Range { p10: between(a.p10, b.p10), p50: between(a.p50, b.p50), p90: between(a.p90, b.p90) })
        };
        Self {
            alive: between(self.alive, other.alive),
            bees: ranges(self.bees, other.bees),
            stores_kg: ranges(self.stores_kg, other.stores_kg),
            reachable_kg: ranges(self.reachable_kg, other.reachable_kg),
        }
    }
}

/// The days that lie behind; of a day with several looks the last one stands.
fn behind(known: &[Known], days: usize) -> Vec<CourseDay> {
    let on = |day: usize| {
        let last = known.iter().rev().find(|one| one.day <= day)?;
        if last.day == day {
            return Some(last.stands);
        }
        let next = known.iter().find(|one| one.day > day).unwrap_or(last);
        let share = (day - last.day) as f64 / (next.day - last.day).max(1) as f64;
        Some(last.stands.towards(&next.stands, share))
    };
    (0..days).map_while(on).collect()
}

/// The days ahead of a colony that is alive today with this chance.
fn ahead(trajectory: &Trajectory, alive: f64) -> impl Iterator<Item = CourseDay> + '_ {
    let mean = |day: usize| {
        let lost: f64 = trajectory.day(Daily::Lost, day).map(f64::from).sum();
        1.0 - lost / trajectory.members().max(1) as f64
    };
    (0..trajectory.days()).map(move |day| CourseDay {
        alive: alive * mean(day),
        bees: on_day(trajectory, Daily::Bees, day),
        stores_kg: on_day(trajectory, Daily::Stores, day),
        reachable_kg: on_day(trajectory, Daily::Reachable, day),
    })
}
