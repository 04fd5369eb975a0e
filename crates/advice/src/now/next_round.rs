//! When to go and look, and at what: what each sign of each hive would tell of life on the hours of the week ahead.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Conditions, DeadCount, DeadPlace, Flight, Listening, Poked, Seen, Sign, UpperHoleSign};
use snowhum_say::{Message, now as say};
use snowhum_units::Kelvin;
use snowhum_watch::signs::answers_like;
use snowhum_watch::{Estimate, Scene, SignTable};

use super::thresholds::Thresholds;
use crate::dates::date_of_hour;
use crate::statistics::rounded;

/// Hours of a day that are weighed, as ends of hours of the day: ten, one and three o'clock.
pub(super) const HOURS: [usize; 3] = [11, 14, 16];
/// Every so manieth particle is asked.
const NTH: usize = 16;
/// Hives named.
const NAMED: usize = 3;

/// A sign that is looked for from outside.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Looked {
    /// Dead bees before the hive.
    DeadBees,
    /// Dead bees on the floor of a hive in a dark room.
    DeadOnFloor,
    /// A straw at the hole or the entrance.
    Poke,
    /// Rime at the upper hole.
    Hole,
    /// An ear at the wall.
    Hum,
    /// Bees in the air.
    Flight,
}

impl Looked {
    const ALL: [Self; 6] = [Self::DeadBees, Self::DeadOnFloor, Self::Poke, Self::Hole, Self::Hum, Self::Flight];

    /// In words.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::DeadBees => say::round_dead_bees(),
            Self::DeadOnFloor => say::round_dead_on_floor(),
            Self::Poke => say::round_poke(),
            Self::Hole => say::round_hole(),
            Self::Hum => say::round_hum(),
            Self::Flight => say::round_flight(),
        }
    }

    fn answers(self, place: DeadPlace) -> Vec<Sign> {
        answers_like(&match self {
            Self::DeadBees | Self::DeadOnFloor => Sign::DeadBees { count: DeadCount::BANDS[1], place },
            Self::Poke => Sign::Poke(Poked::Silent),
            Self::Hole => Sign::UpperHole(UpperHoleSign::Dry),
            Self::Hum => Sign::Hum { heard: Seen::No, how: Listening::Ear },
            Self::Flight => Sign::Flight(Flight::None),
        })
    }
}

/// What a look at one hive at one hour would tell at best.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Worth {
    hour: usize,
    air_c: f64,
    looked: Looked,
    bits: f64,
}

/// What is worth looking at in one hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveLook {
    /// The keeper's name.
    pub name: String,
    /// The sign that would tell most.
    pub looked: Looked,
    /// What it would tell of life in the mean, bits; 1 would settle an even doubt.
    pub bits: f64,
}

/// When to go and look.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NextRound {
    /// The day of the week ahead on which a walk would tell most; none where no hour of it would tell anything to speak of.
    pub on: Option<Date>,
    /// The hour of that day, 0 to 23.
    pub hour: usize,
    /// Outdoor air it is reckoned for, °C.
    pub air_c: f64,
    /// Hives that it would tell something of, most first.
    pub looks: Vec<HiveLook>,
    /// Two weeks after the last look at any hive, or the next day where that is past; none while bees fly on most days, or
    /// where nothing lives.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fortnight: Option<Date>,
    /// Doubt about the yard now: the greatest chance that a hive is otherwise than it is thought to be.
    pub doubt: f64,
}

impl NextRound {
    /// Nothing to learn.
    pub(super) const NONE: Self =
        Self { on: None, hour: 0, air_c: 0.0, looks: Vec::new(), fortnight: None, doubt: 0.0 };

    /// The best hour for the whole yard, of what each hive would tell at each; hives that are gone tell nothing.
    pub(super) fn of(names: &[(String, f64)], worth: &[Vec<Worth>], first_day: Date, thresholds: &Thresholds) -> Self {
        let hardly = thresholds.look_tells.value;
        let doubt = names.iter().map(|(_, alive)| alive.min(1.0 - alive)).fold(0.0, f64::max);
        let hours: Vec<usize> = worth.iter().flatten().map(|one| one.hour).collect();
        let sum =
            |hour: &usize| -> f64 { worth.iter().flatten().filter(|one| one.hour == *hour).map(|one| one.bits).sum() };
        let best = hours.into_iter().max_by(|a, b| sum(a).total_cmp(&sum(b)).then(b.cmp(a)));
        let Some(hour) = best else { return Self { doubt, ..Self::NONE } };
        let at_hour = names.iter().zip(worth).filter_map(|((name, _), own)| {
            let one = own.iter().find(|one| one.hour == hour && one.bits >= hardly)?;
            Some((HiveLook { name: name.clone(), looked: one.looked, bits: rounded(one.bits, 2) }, one.air_c))
        });
        let mut looks: Vec<(HiveLook, f64)> = at_hour.collect();
        looks.sort_by(|a, b| b.0.bits.total_cmp(&a.0.bits));
        let Some(air_c) = looks.first().map(|(_, air_c)| rounded(*air_c, 0)) else {
            return Self { doubt, ..Self::NONE };
        };
        let (on, hour) = (date_of_hour(first_day, hour), (hour - 1) % 24);
        Self {
            on: Some(on),
            hour,
            air_c,
            looks: looks.into_iter().map(|(look, _)| look).collect(),
            fortnight: None,
            doubt,
        }
    }

    /// The day of the fortnightly walk, unless a walk that tells more comes before it.
    #[must_use]
    pub fn by_custom(&self) -> Option<Date> {
        self.fortnight.filter(|fortnight| self.on.is_none_or(|on| on > *fortnight))
    }

    /// In words.
    #[must_use]
    pub fn says(&self) -> Message {
        match self.on {
            Some(on) => say::round(Kelvin::from_celsius(self.air_c), self.hives(), self.hour, on),
            None => say::round_nothing(100.0 * self.doubt, self.doubt < 0.01),
        }
    }

    /// Which hives, each with the sign that would tell most.
    #[must_use]
    pub fn hives(&self) -> Message {
        let hive = |look: &HiveLook| say::round_hive(look.looked.words(), &look.name);
        let named = self.looks.iter().take(NAMED).map(hive).collect();
        match self.looks.len().saturating_sub(NAMED) {
            0 => say::round_hives(named),
            more => say::round_hives_more(named, more),
        }
    }
}

/// Whether any look could tell enough of a hive to be named: none takes away more doubt than there is.
pub(super) fn is_worth_asking(estimate: &Estimate, thresholds: &Thresholds) -> bool {
    estimate.doubt() >= thresholds.look_tells.value
}

/// What a look at one hive at this hour would tell at best.
pub(super) fn worth(scene: &Scene<'_>, estimate: &Estimate) -> Option<Worth> {
    let (place, hour) = (estimate.place(), estimate.hour());
    let indoors = scene.is_indoors(place, hour);
    let hole = snowhum_apiary::OpeningKind::UpperHole;
    let has_hole = estimate.hive().has_opening(hole) && estimate.openings().shut(hole).is_none();
    let conditions = scene.conditions(place, hour, &Conditions::default());
    let lie = scene.dead_lie(place, hour, &conditions);
    let can = |looked: &Looked| {
        let lies = (*looked != Looked::DeadBees || !indoors) && (*looked != Looked::DeadOnFloor || indoors);
        let seen = lies && looked.answers(lie).iter().all(|sign| !indoors || sign.is_seen_indoors());
        seen && (has_hole || *looked != Looked::Hole)
    };
    let asked: Vec<(Looked, Vec<Sign>)> =
        Looked::ALL.into_iter().filter(can).map(|looked| (looked, looked.answers(lie))).collect();
    let signs: Vec<Sign> = asked.iter().flat_map(|(_, answers)| answers.clone()).collect();
    let table = estimate.sign_table(scene, &conditions, &signs, NTH);
    let bits = |answers: &[Sign]| table.information(&columns(&table, answers));
    let best = asked.iter().map(|(looked, own)| (*looked, bits(own))).max_by(|a, b| a.1.total_cmp(&b.1));
    best.map(|(looked, bits)| Worth { hour, air_c: conditions.air_c, looked, bits })
}

fn columns(table: &SignTable, answers: &[Sign]) -> Vec<usize> {
    table.columns.iter().enumerate().filter(|(_, column)| answers.contains(&column.sign)).map(|(at, _)| at).collect()
}
