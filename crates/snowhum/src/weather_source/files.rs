//! Weather files: which format, whole hours out of them, an ensemble out of those.

use std::path::{Path, PathBuf};

use jiff::civil::Date;
use jiff::tz::{Offset, TimeZone};
use snowhum_advice::yard;
use snowhum_apiary::Site;
use snowhum_say::{Message, weather as say, weather_fault as wrong, weather_terminal as terminal};
use snowhum_weather::readers::{self, Mapping};
use snowhum_weather::{
    Ensemble, Far, Hourly, Place, Raw, RawHour, Reading, WeatherFaults, complete, ensemble_from_file, is_elsewhere,
};

use super::zone;
use crate::{exit, sources};

/// Hours that may lie between two files that continue each other.
const JOINED: i64 = 6;

/// One stretch of whole hours.
#[derive(Debug, Clone)]
pub(crate) struct Completed {
    /// Names of the files.
    pub(crate) files: String,
    /// The hours.
    pub(crate) hourly: Hourly,
    /// Where, if the file says so.
    pub(crate) place: Option<Place>,
    /// The file's own clock.
    pub(crate) offset: Option<Offset>,
    /// What to know.
    pub(crate) notes: Vec<Message>,
}

/// Reads files, joins those that continue each other, and fills their short gaps.
pub(crate) fn read_all(paths: &[PathBuf], columns: Option<&str>, site: &Site) -> anyhow::Result<Vec<Completed>> {
    let readings = paths.iter().map(|path| reading(path, columns, site)).collect::<anyhow::Result<Vec<_>>>()?;
    joined(readings).into_iter().map(|reading| whole(reading, site)).collect()
}

/// Reads one file as [`read_all`] does.
pub(crate) fn read_one(path: &Path, columns: Option<&str>, site: &Site) -> anyhow::Result<Completed> {
    whole(reading(path, columns, site)?, site)
}

fn reading(path: &Path, columns: Option<&str>, site: &Site) -> anyhow::Result<Reading> {
    let bytes = sources::read(path)?;
    let name = path.display().to_string();
    let place = yard::place(site);
    if let Some(columns) = columns {
        let mapping = Mapping::read(columns, zone(site)?)
            .map_err(|fault| exit::refused(wrong::whole("--columns", fault.message())))?;
        return readers::station_csv(&bytes, &name, &mapping, Some(place)).map_err(unread);
    }
    let start = String::from_utf8_lossy(&bytes[..bytes.len().min(400)]).into_owned();
    let first = start.lines().next().unwrap_or_default();
    if first.to_ascii_uppercase().starts_with("LOCATION") {
        readers::epw(&bytes, &name).map_err(unread)
    } else if looks_like_ghcn(&start) {
        readers::ghcn_daily(&bytes, &name, place, standard_time(site)?).map_err(unread)
    } else if looks_like_isd(first) {
        readers::isd_lite(&bytes, &name).map_err(unread)
    } else {
        Err(not_recognised(&bytes, &name, &zone(site)?, place))
    }
}

/// A file that cannot be read, as an error.
pub(crate) fn unread(faults: WeatherFaults) -> anyhow::Error {
    exit::refused(faults.message())
}

/// Names the formats that are read, and the mapping that would read this file.
fn not_recognised(bytes: &[u8], name: &str, zone: &TimeZone, place: Place) -> anyhow::Error {
    let command = |columns: &str| Message::own(format!("  snowhum weather import \"{name}\" --columns \"{columns}\""));
    let way = match readers::guessed_columns(bytes, zone, place) {
        Some(columns) => vec![terminal::by_headings(), command(&columns)],
        None => vec![
            terminal::no_headings(),
            command("time=Date, temperature=Temp:C"),
            terminal::apart(),
            command("year=Year, month=Month, day=Day, hour=Hour, temperature=Temp:C"),
        ],
    };
    exit::refused(Message::lines([terminal::no_format(name)].into_iter().chain(way)))
}

/// Whole numbers apart by blanks.
fn looks_like_isd(first: &str) -> bool {
    let words = || first.split_whitespace();
    words().count() >= 12 && words().take(4).any(|word| word.parse::<i32>().is_ok())
}

/// Rows `ID,YYYYMMDD,ELEMENT,VALUE`.
fn looks_like_ghcn(start: &str) -> bool {
    start.lines().take(3).any(|line| {
        let fields: Vec<&str> = line.split(',').map(|field| field.trim().trim_matches('"')).collect();
        fields.len() >= 4
            && fields[1].len() == 8
            && fields[1].bytes().all(|b| b.is_ascii_digit())
            && fields[2].len() == 4
    })
}

/// The zone's winter offset.
fn standard_time(site: &Site) -> anyhow::Result<Offset> {
    let month = if site.latitude.get() < 0.0 { 7 } else { 1 };
    let winter = jiff::civil::date(2025, month, 15).at(12, 0, 0, 0);
    let zone = zone(site)?;
    let instant = zone.to_ambiguous_timestamp(winter).compatible().map_err(exit::input)?;
    Ok(zone.to_offset(instant))
}

/// Readings in order of time; one of the same place that begins within six hours of the last one's end is hung on to it.
fn joined(mut readings: Vec<Reading>) -> Vec<Reading> {
    readings.sort_by_key(|reading| reading.raw.start);
    let mut out: Vec<Reading> = Vec::new();
    for reading in readings {
        let same = out.last().filter(|last| last.place == reading.place);
        let gap = same.map(|last| {
            let end = last.raw.start.as_second() / 3_600 + last.raw.hours.len() as i64;
            reading.raw.start.as_second() / 3_600 - end
        });
        match (out.last_mut(), gap) {
            (Some(last), Some(hours)) if (0..=JOINED).contains(&hours) => {
                last.file = format!("{}, {}", last.file, reading.file);
                last.raw.hours.extend((0..hours).map(|_| RawHour::default()));
                last.raw.hours.extend(reading.raw.hours);
                last.notes.extend(reading.notes);
            }
            _ => out.push(reading),
        }
    }
    out
}

fn whole(reading: Reading, site: &Site) -> anyhow::Result<Completed> {
    let Reading { file, raw, place, offset, notes, .. } = reading;
    let zone = offset.map_or_else(|| zone(site), |offset| Ok(TimeZone::fixed(offset)))?;
    let (hourly, filled) = completed(&raw, &file, place.unwrap_or_else(|| yard::place(site)), &zone)?;
    Ok(Completed { files: file, hourly, place, offset, notes: notes.into_iter().chain(filled).collect() })
}

fn completed(raw: &Raw, file: &str, place: Place, zone: &TimeZone) -> anyhow::Result<(Hourly, Vec<Message>)> {
    complete(raw, file, place, zone).map_err(unread)
}

/// The site the files speak of: the yard's own, or the files' where they name one elsewhere; and what lies far from it.
pub(crate) fn site_of(files: &[Completed], site: &Site) -> anyhow::Result<(Site, Vec<Far>)> {
    let own = yard::place(site);
    let mut far = far_of(files, own);
    let first = files.iter().find_map(|file| Some((file.place?, file.offset)));
    let Some((place, offset)) = first.filter(|(place, _)| is_elsewhere(*place, own)) else {
        return Ok((site.clone(), far));
    };
    far.iter_mut().filter(|far| far.place == place).for_each(|far| far.is_reckoned_for = true);
    let by_sun = (place.longitude.get() / 15.0).round() as i32;
    let hours = offset.map_or(by_sun, |offset| offset.seconds() / 3_600);
    // The sign of these zones is turned round: Etc/GMT+9 is nine hours west.
    let zone = match hours {
        0 => "Etc/GMT".to_owned(),
        hours => format!("Etc/GMT{:+}", -hours),
    };
    let Place { latitude, longitude, elevation } = place;
    Ok((Site { latitude, longitude, elevation, zone, ..site.clone() }, far))
}

/// Each place that lies far, once.
fn far_of(files: &[Completed], own: Place) -> Vec<Far> {
    let mut far: Vec<Far> = Vec::new();
    for found in files.iter().filter_map(|file| Far::from_yard(&file.files, file.place?, own)) {
        match far.iter_mut().find(|known| known.place == found.place) {
            Some(known) => known.files = format!("{}, {}", known.files, found.files),
            None => far.push(found),
        }
    }
    far
}

/// An ensemble out of all stretches, each with its share of the paths.
pub(super) fn ensemble(
    files: &[Completed],
    site: &Site,
    from: Date,
    hours: usize,
    paths: usize,
    seed: u64,
) -> anyhow::Result<Ensemble> {
    let zone = zone(site)?;
    let place = yard::place(site);
    let share = paths.div_ceil(files.len().max(1));
    let mut all: Option<Ensemble> = None;
    let mut refused = None;
    for (index, file) in files.iter().enumerate() {
        match ensemble_from_file(&file.hourly, place, &zone, from, hours, share, seed + index as u64) {
            Ok(mut drawn) => {
                drawn.provenance.source = say::files(&file.files, &drawn.provenance.source);
                drawn.provenance.notes.extend(file.notes.iter().cloned());
                match &mut all {
                    Some(all) => {
                        all.paths.extend(drawn.paths);
                        let both = vec![all.provenance.source.clone(), drawn.provenance.source];
                        all.provenance.source = say::several(both);
                        all.provenance.notes.extend(drawn.provenance.notes);
                    }
                    None => all = Some(drawn),
                }
            }
            Err(short) => refused = Some(exit::refused(wrong::whole(&file.files, short.message()))),
        }
    }
    let mut all = all.ok_or_else(|| refused.unwrap_or_else(|| exit::refused(terminal::no_file())))?;
    all.paths.truncate(paths);
    Ok(all)
}
