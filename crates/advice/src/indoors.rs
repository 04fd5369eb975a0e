//! Where a hive stands that winters indoors, and what its room asks of the keeper; figures in `data/indoors.toml`.

use std::sync::{Arc, LazyLock};

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Apiary, Colony, Room, Stay};
use snowhum_units::{Fraction, Kelvin, System};
use snowhum_winter::{Parameter, ParameterError, RoomAir, RoomStay, parameters};

use crate::words::day;

const SHIPPED: &str = include_str!("../../../data/indoors.toml");

parameters! {
    /// What rooms are judged by, by name.
    IndoorFigures:
    room_humidity room_dry room_damp room_best_low room_best_high room_cold room_warm
}

impl IndoorFigures {
    /// The figures this version ships with.
    ///
    /// # Errors
    /// Never with the shipped file, which a test reads; the signature keeps a panic out of reach.
    pub fn shipped() -> Result<Self, ParameterError> {
        Self::read(SHIPPED)
    }
}

static FIGURES: LazyLock<Option<IndoorFigures>> = LazyLock::new(|| IndoorFigures::shipped().ok());

/// Days up to the one asked about over which a room's own record says how warm it is.
const LATELY: i64 = 7;

/// Where a hive stands, or is to stand, that winters indoors.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IndoorsAnswer {
    /// The room.
    pub room: String,
    /// First day in it.
    pub from: Date,
    /// First day outdoors again; none where no such day is known.
    pub until: Option<Date>,
    /// Whether it stands there on the day asked about.
    pub is_in: bool,
    /// Whether it was noted as carried in; else that is only planned.
    pub is_noted: bool,
    /// It in words; no capital, no stop.
    pub says: String,
    /// What is to be minded of the room; no capitals, no stops.
    pub minds: Vec<String>,
}

/// Where a colony's hive stands indoors on a day, or will; none where it winters outdoors, or is out again.
#[must_use]
pub fn of(apiary: &Apiary, colony: &Colony, today: Date, system: System) -> Option<IndoorsAnswer> {
    let stays = apiary.stays(colony, today);
    let stay = stays.into_iter().find(|stay| stay.until.is_none_or(|until| today < until))?;
    let room = apiary.room(&stay.room)?;
    let is_in = stay.holds(today);
    let says = says(&stay, is_in, &degrees(air(room, today), system));
    let minds = minds(room, today, system);
    let Stay { from, until, is_noted, .. } = stay;
    Some(IndoorsAnswer { room: room.name.clone(), from, until, is_in, is_noted, says, minds })
}

fn says(stay: &Stay, is_in: bool, air: &str) -> String {
    let (room, from) = (&stay.room, day(stay.from));
    let out = stay.until.map(day);
    match (is_in, stay.is_noted, out) {
        (true, true, Some(out)) => format!("in {room} since {from}, to come out on {out}; {air} in there"),
        (true, true, None) => format!("in {room} since {from}; {air} in there; no day out is written"),
        (true, false, out) => format!(
            "in {room} since {from} by the plan{}; {air} in there; note \"carried=into {room}\" with the day it went in",
            out.map_or_else(String::new, |out| format!(", to come out on {out}"))
        ),
        (false, _, Some(out)) => format!("to go into {room} on {from} and come out on {out}; {air} in there"),
        (false, _, None) => format!("to go into {room} on {from}; {air} in there; no day out is written"),
    }
}

/// The coldest and the warmest of a room: of its record's last week, where there is one, else as told.
fn air(room: &Room, today: Date) -> (Kelvin, Kelvin) {
    let measured = || {
        let record = room.record.as_ref()?;
        let end = usize::try_from(24 * (1 + today.duration_since(record.first).as_hours() / 24)).ok()?;
        let begin = end.saturating_sub(24 * usize::try_from(LATELY).unwrap_or(0));
        let week = record.celsius.get(begin..end.min(record.celsius.len()))?;
        let read: Vec<f64> = week.iter().flatten().map(|celsius| f64::from(*celsius)).collect();
        let low = read.iter().copied().reduce(f64::min)?;
        let high = read.iter().copied().reduce(f64::max)?;
        Some((Kelvin::from_celsius(low), Kelvin::from_celsius(high)))
    };
    measured().unwrap_or((room.coldest, room.warmest))
}

fn degrees((low, high): (Kelvin, Kelvin), system: System) -> String {
    let (low, high) = (low.show(system, 0), high.show(system, 0));
    if low == high { low } else { format!("{low} to {high}") }
}

/// What is to be minded of a room about a day: too warm, too cold, light, dry or damp air.
#[must_use]
pub fn minds(room: &Room, today: Date, system: System) -> Vec<String> {
    let Some(figures) = &*FIGURES else { return Vec::new() };
    let (low, high) = air(room, today);
    let (name, celsius) = (&room.name, |figure: &Parameter| Kelvin::from_celsius(figure.value));
    let best = degrees((celsius(&figures.room_best_low), celsius(&figures.room_best_high)), system);
    let mut minds = Vec::new();
    if high.celsius() >= figures.room_warm.value {
        let high = high.show(system, 0);
        minds.push(format!(
            "{name} is too warm at {high}: bees stir, eat and begin brood; let in night air, keep it at {best}, and carry out \
             early if it stays warm"
        ));
    }
    if low.celsius() < figures.room_cold.value {
        let low = low.show(system, 0);
        minds
            .push(format!("{name} is cold at {low}: it saves little food; {best} is best, but never shut off its air"));
    }
    if !room.is_dark {
        minds.push(format!("light comes into {name}: bees fly to it and are lost; darken it, and use a red lamp"));
    }
    match room.humidity {
        Some(air) if air.get() > figures.room_damp.value => {
            minds.push(format!("{name} is damp: combs grow mouldy; more air through it"));
        }
        Some(air) if air.get() < figures.room_dry.value => {
            minds.push(format!("{name} is dry: bees grow thirsty and stir; wet its floor"));
        }
        _ => {}
    }
    minds
}

/// A colony's stays in rooms as the winter model takes them, as they were noted up to a day.
pub(crate) fn stays(apiary: &Apiary, colony: &Colony, until: Date) -> Vec<RoomStay> {
    let of_room = |stay: Stay| {
        let air = Arc::new(room_air(apiary.room(&stay.room)?));
        Some(RoomStay { from: stay.from, until: stay.until, air })
    };
    apiary.stays(colony, until).into_iter().filter_map(of_room).collect()
}

fn room_air(room: &Room) -> RoomAir {
    // Half, should the shipped figures ever not be read; a test reads them.
    let usual = || Fraction::new(FIGURES.as_ref().map_or(0.5, |figures| figures.room_humidity.value));
    let record = room.record.as_ref().filter(|record| !record.celsius.is_empty());
    RoomAir {
        between: (room.coldest, room.warmest),
        humidity: room.humidity.unwrap_or_else(usual),
        dark_below: FIGURES.as_ref().filter(|_| room.is_dark).map(|all| Kelvin::from_celsius(all.room_warm.value)),
        measured: record.map(|record| (record.first, record.celsius.clone())),
    }
}

/// What was noted of a hive that nobody can see indoors, although by the plan it stands there: a day on which it was.
pub(crate) fn seen_outdoors(apiary: &Apiary, colony: &Colony, today: Date) -> Option<Date> {
    let zone = jiff::tz::TimeZone::get(&apiary.site.zone).unwrap_or(jiff::tz::TimeZone::UTC);
    let stays = apiary.stays(colony, today);
    let planned = stays.iter().find(|stay| stay.holds(today) && !stay.is_noted)?;
    let own = apiary.notes.iter().filter(|note| note.colony == colony.id);
    let days = own.filter(|note| note.signs().any(|sign| !sign.is_seen_indoors()));
    days.map(|note| note.at.to_zoned_datetime(zone.clone()).date())
        .filter(|on| (planned.from..=today).contains(on))
        .max()
}

#[cfg(test)]
mod tests {
    use super::IndoorFigures;

    #[test]
    fn the_shipped_file_reads_and_names_its_sources() {
        let read = IndoorFigures::shipped().map_err(|error| error.to_string());
        assert!(read.is_ok_and(|all| all.iter().all(|(_, one)| !one.source.is_empty() && !one.unit.is_empty())));
    }
}
