//! What was measured in a room that hives winter in: a CSV beside the yard file, read as a station's.

use std::path::Path;

use jiff::ToSpan;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_apiary::{Apiary, RoomRecord};
use snowhum_say::shared_terminal as shared;
use snowhum_weather::Raw;
use snowhum_weather::readers::{self, Mapping};

use crate::weather_source::{unread, zone};
use crate::{exit, sources};

/// The columns where the yard file does not say.
const COLUMNS: &str = "time=Time, temperature=Temperature:C";
/// Days before the count from which a record is kept, and days kept in all.
const BEFORE: i64 = 31;
const DAYS: usize = 400;
/// Hours for which a reading stands where none follows: a day and a half, so that one a day serves.
const STANDS: usize = 36;

/// The yard with what was measured in its rooms, from the files it names.
pub(crate) fn with_records(path: &Path, mut apiary: Apiary) -> anyhow::Result<Apiary> {
    let (zone, first) = (zone(&apiary.site)?, apiary.as_of.saturating_sub(BEFORE.days()));
    for room in &mut apiary.rooms {
        let Some(record) = &mut room.record else { continue };
        let file = path.parent().unwrap_or(Path::new("")).join(&record.file);
        let wrong = |error: anyhow::Error| {
            exit::refused(shared::room(path.display().to_string(), &room.name, exit::told(&error)))
        };
        *record = read(&file, record, &zone, first).map_err(wrong)?;
    }
    Ok(apiary)
}

fn read(file: &Path, record: &RoomRecord, zone: &TimeZone, first: Date) -> anyhow::Result<RoomRecord> {
    let bytes = sources::read(file)?;
    let columns = record.columns.as_deref().unwrap_or(COLUMNS);
    let mapping = Mapping::read(columns, zone.clone())
        .map_err(|error| exit::refused(shared::room_columns(COLUMNS, error.message())))?;
    let reading = readers::station_csv(&bytes, &file.display().to_string(), &mapping, None).map_err(unread)?;
    let celsius = by_hours(&reading.raw, zone, first)?;
    if celsius.is_empty() {
        let until = first.saturating_add((DAYS as i64).days());
        let (from, until) = (first.to_string(), until.to_string());
        return Err(exit::refused(shared::room_empty(file.display().to_string(), from, until)));
    }
    Ok(RoomRecord { first, celsius, ..record.clone() })
}

/// °C hour by hour from the start of a day: a reading stands until the next, a day and a half at most.
fn by_hours(raw: &Raw, zone: &TimeZone, first: Date) -> anyhow::Result<Vec<Option<f32>>> {
    let midnight = first.at(0, 0, 0, 0);
    let start = zone.to_ambiguous_timestamp(midnight).compatible().map_err(exit::input)?.as_second().div_euclid(3_600);
    let offset = raw.start.as_second().div_euclid(3_600) - start;
    let mut celsius: Vec<Option<f32>> = Vec::new();
    let mut since = STANDS;
    let mut last = None;
    for (hour, read) in raw.hours.iter().enumerate().map(|(at, hour)| (offset + at as i64, hour.temperature)) {
        (last, since) = read.map_or((last, since + 1), |air| (Some(air.celsius() as f32), 0));
        let Ok(at) = usize::try_from(hour) else { continue };
        if at >= 24 * DAYS {
            break;
        }
        celsius.resize(at, None);
        celsius.push(last.filter(|_| since < STANDS));
    }
    Ok(if celsius.iter().any(Option::is_some) { celsius } else { Vec::new() })
}
