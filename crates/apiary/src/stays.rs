//! When each hive stands in a room: as planned in the yard file, moved by what was noted.

use crate::indoors::{IndoorPlan, Room};
use crate::nearest::instead;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{Act, Apiary, Colony, Entry, Hive};
use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_say::note_fault as say;
use snowhum_units::Kelvin;

/// Days that a hive stands in a room, in whole days: the day it is carried in is one of them, the day it is carried out none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stay {
    /// The room.
    pub room: String,
    /// First day.
    pub from: Date,
    /// First day outdoors again; none where no such day is known.
    pub until: Option<Date>,
    /// Whether it was noted that the hive was carried in; else it is only planned.
    pub is_noted: bool,
    /// Whether it was noted that it was carried out.
    pub is_out_noted: bool,
}

impl Stay {
    /// Whether the hive stands in the room on a day.
    ///
    /// ```
    /// use jiff::civil::date;
    /// let (from, until) = (date(2025, 11, 10), Some(date(2026, 4, 1)));
    /// let stay =
    ///     snowhum_apiary::Stay { room: "Cellar".into(), from, until, is_noted: false, is_out_noted: false };
    /// assert!(stay.holds(date(2025, 11, 10)) && stay.holds(date(2026, 3, 31)) && !stay.holds(date(2026, 4, 1)));
    /// ```
    #[must_use]
    pub fn holds(&self, day: Date) -> bool {
        self.from <= day && self.until.is_none_or(|until| day < until)
    }
}

impl Apiary {
    /// The room of this name.
    #[must_use]
    pub fn room(&self, name: &str) -> Option<&Room> {
        self.rooms.iter().find(|room| same_name(&room.name, name))
    }

    /// When a colony's hive stands indoors, in order of time: what is planned, moved by what was noted up to a day.
    #[must_use]
    pub fn stays(&self, colony: &Colony, until: Date) -> Vec<Stay> {
        let plan = self.hive_of(colony).and_then(|hive| hive.indoors.as_ref());
        let leaves = plan.and_then(|plan| plan.leaves);
        let mut stays: Vec<Stay> = plan.and_then(planned).into_iter().collect();
        let mut noted: Vec<(Date, &Act)> = self.acts_of(colony).filter(|(on, _)| *on <= until).collect();
        noted.sort_by_key(|(on, _)| *on);
        for (on, act) in noted {
            match act {
                Act::CarriedIn(room) => carry_in(&mut stays, room, on, leaves),
                Act::CarriedOut => carry_out(&mut stays, on),
                _ => {}
            }
        }
        stays.retain(|stay| stay.until.is_none_or(|until| until > stay.from) && self.room(&stay.room).is_some());
        stays
    }

    /// Air noted at hives that stood outdoors, in the order of the notes: what is read in a room says nothing of the weather.
    pub fn outdoor_air(&self) -> impl Iterator<Item = (Timestamp, Kelvin)> {
        let zone = TimeZone::get(&self.site.zone).unwrap_or(TimeZone::UTC);
        self.notes.iter().filter_map(move |note| {
            let air = note.conditions.air_k?;
            let on = note.at.to_zoned_datetime(zone.clone()).date();
            let colony = self.colonies.iter().find(|colony| colony.id == note.colony);
            let indoors = colony.is_some_and(|colony| self.stays(colony, on).iter().any(|stay| stay.holds(on)));
            (!indoors).then_some((note.at, air))
        })
    }

    /// Refuses a note on something that the yard has not got: an upper hole, a room.
    ///
    /// # Errors
    /// When it speaks of one.
    pub fn check_entry(&self, colony: crate::ColonyId, entry: &Entry) -> Result<(), Wrong> {
        known_room(&self.rooms, entry)?;
        self.check_opening(colony, entry)
    }
}

/// Refuses a note of a room that the yard has not got.
pub(crate) fn known_room(rooms: &[Room], entry: &Entry) -> Result<(), Wrong> {
    let Entry::Act(Act::CarriedIn(wanted)) = entry else { return Ok(()) };
    if rooms.iter().any(|room| same_name(&room.name, wanted)) {
        return Ok(());
    }
    let remedy = match rooms.is_empty() {
        true => say::no_room_right(wanted),
        false => instead(wanted, rooms.iter().map(|room| room.name.as_str())),
    };
    Err(Wrong::new(say::no_room(wanted), remedy))
}

impl Hive {
    /// The hive as it stands for the next winter: in the same room, on days that are not known yet.
    pub(crate) fn with_open_dates(mut self) -> Self {
        if let Some(plan) = &mut self.indoors {
            (plan.enters, plan.leaves) = (None, None);
        }
        self
    }
}

fn planned(plan: &IndoorPlan) -> Option<Stay> {
    let from = plan.enters?;
    Some(Stay { room: plan.room.clone(), from, until: plan.leaves, is_noted: false, is_out_noted: false })
}

/// The hive was carried in. What was planned and not noted came on this day and into this room.
fn carry_in(stays: &mut Vec<Stay>, room: &str, on: Date, leaves: Option<Date>) {
    let mut until = leaves.filter(|leaves| *leaves > on);
    match stays.last_mut() {
        Some(stay) if !stay.is_noted && stay.until.is_none_or(|until| on < until) => {
            (stay.room, stay.from, stay.is_noted) = (room.to_owned(), on, true);
            return;
        }
        Some(stay) if stay.holds(on) && same_name(&stay.room, room) => return,
        // From one room into another.
        Some(stay) if stay.holds(on) => until = stay.until.replace(on),
        _ => {}
    }
    stays.push(Stay { room: room.to_owned(), from: on, until, is_noted: true, is_out_noted: false });
}

/// The hive was carried out, sooner or later than planned.
fn carry_out(stays: &mut [Stay], on: Date) {
    if let Some(stay) = stays.last_mut().filter(|stay| stay.from <= on && !stay.is_out_noted) {
        (stay.until, stay.is_out_noted) = (Some(on), true);
    }
}
