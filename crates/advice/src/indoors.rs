//! Where a hive stands that winters indoors, and what its room asks of the keeper; figures in `data/indoors.toml`.

use std::sync::{Arc, LazyLock};

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Apiary, Colony, Room, Stay};
use snowhum_say::{Message, indoors as say};
use snowhum_units::{Fraction, Kelvin};
use snowhum_winter::{Parameter, ParameterError, RoomAir, RoomStay, parameters};

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
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
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
    pub says: Message,
    /// What is to be minded of the room; no capitals, no stops.
    pub minds: Vec<Message>,
}

/// Where a colony's hive stands indoors on a day, or will; none where it winters outdoors, or is out again.
#[must_use]
pub fn of(apiary: &Apiary, colony: &Colony, today: Date) -> Option<IndoorsAnswer> {
    let stays = apiary.stays(colony, today);
    let stay = stays.into_iter().find(|stay| stay.until.is_none_or(|until| today < until))?;
    let room = apiary.room(&stay.room)?;
    let is_in = stay.holds(today);
    let says = says(&stay, is_in, between(air(room, today)));
    let minds = minds(room, today);
    let Stay { from, until, is_noted, .. } = stay;
    Some(IndoorsAnswer { room: room.name.clone(), from, until, is_in, is_noted, says, minds })
}

fn says(stay: &Stay, is_in: bool, air: Message) -> Message {
    let (room, from) = (&stay.room, stay.from);
    match (is_in, stay.is_noted, stay.until) {
        (true, true, Some(until)) => say::since_until(air, from, room, until),
        (true, true, None) => say::since(air, from, room),
        (true, false, Some(until)) => say::by_plan_until(air, from, room, until),
        (true, false, None) => say::by_plan(air, from, room),
        (false, _, Some(until)) => say::to_go_until(air, from, room, until),
        (false, _, None) => say::to_go(air, from, room),
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

fn between((low, high): (Kelvin, Kelvin)) -> Message {
    say::air(vec![say::degrees(low), say::degrees(high)])
}

/// What is to be minded of a room about a day: too warm, too cold, light, dry or damp air.
#[must_use]
pub fn minds(room: &Room, today: Date) -> Vec<Message> {
    let Some(figures) = &*FIGURES else { return Vec::new() };
    let (low, high) = air(room, today);
    let (name, celsius) = (&room.name, |figure: &Parameter| Kelvin::from_celsius(figure.value));
    let best = || between((celsius(&figures.room_best_low), celsius(&figures.room_best_high)));
    let damp = room.humidity.and_then(|air| match air.get() {
        air if air > figures.room_damp.value => Some(say::damp(name)),
        air if air < figures.room_dry.value => Some(say::dry(name)),
        _ => None,
    });
    let warm = (high.celsius() >= figures.room_warm.value).then(|| say::warm(high, best(), name));
    let cold = (low.celsius() < figures.room_cold.value).then(|| say::cold(low, best(), name));
    let light = (!room.is_dark).then(|| say::light(name));
    [warm, cold, light, damp].into_iter().flatten().collect()
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
