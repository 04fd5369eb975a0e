//! `weather show` and `weather import`.

use std::io::Write;
use std::path::Path;

use serde::Serialize;
use snowhum_advice::answer::FarAnswer;
use snowhum_apiary::Apiary;
use snowhum_say::{Message, shared_terminal as shared, weather_terminal as say};
use snowhum_weather::statistics;

use crate::args::{Common, FetchArguments, ImportArguments, WeatherCommand, YardArguments};
use crate::text::voice::in_words;
use crate::text::weather::{MonthRow, Shown};
use crate::weather_source::{Completed, Weather, live, read_one, site_of, zone};
use crate::{exit, new_file, progress, sources, text};

pub(super) fn run(command: &WeatherCommand, common: &Common) -> anyhow::Result<()> {
    match command {
        WeatherCommand::Show(arguments) => show(arguments, common),
        WeatherCommand::Import(arguments) => import(arguments, common),
        WeatherCommand::Fetch(arguments) => fetch(arguments, common),
    }
}

fn show(arguments: &YardArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.apiary.as_deref(), common)?;
    let (weather, as_of) = progress::during(shared::reading_weather(), || Weather::resolve(&apiary, &arguments.run))?;
    let zone = zone(&weather.site)?;
    let shown = Shown::of(&apiary.name, as_of, weather.spring, &weather.winter, &zone);
    if common.json {
        text::say(&serde_json::to_string_pretty(&shown)?)?;
    } else {
        text::say(&text::weather::words(&shown))?;
    }
    Ok(())
}

/// A forecast, for scripts.
#[derive(Serialize)]
struct Fetched {
    service: Message,
    attribution: String,
    standing: Message,
    from: Option<jiff::Timestamp>,
    until: jiff::Timestamp,
    steps: usize,
    notes: Vec<Message>,
}

fn fetch(arguments: &FetchArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.apiary.as_deref(), common)?;
    let forecast = live::forecast(&arguments.live, &apiary.site)?.ok_or_else(|| exit::refused(say::no_service()))?;
    let fetched = Fetched {
        service: forecast.service.message(),
        attribution: forecast.attribution.to_owned(),
        standing: forecast.standing.message(),
        from: forecast.hours.first().map(|hour| hour.time),
        until: forecast.end(),
        steps: forecast.hours.len(),
        notes: forecast.notes.clone(),
    };
    if common.json {
        return text::say(&serde_json::to_string_pretty(&fetched)?);
    }
    let mut page = in_words(&say::forecast(&fetched.service, &fetched.standing)) + "\n";
    page += &text::entry(say::until(), fetched.until.to_string());
    page += &text::entry(say::attribution(), &fetched.attribution);
    for note in &fetched.notes {
        page += &text::entry(shared::note(), note);
    }
    text::say(&page)
}

/// What was read, for scripts.
#[derive(Serialize)]
struct Imported {
    files: String,
    from: String,
    hours: usize,
    coldest_c: f64,
    notes: Vec<Message>,
    far: Vec<FarAnswer>,
    months: Vec<MonthRow>,
}

fn import(arguments: &ImportArguments, common: &Common) -> anyhow::Result<()> {
    let apiary = sources::apiary(arguments.apiary.as_deref(), common)?;
    let read = read_one(&arguments.file, arguments.columns.as_deref(), &apiary.site)?;
    let has_place = read.place.is_some();
    if let Some(out) = &arguments.out {
        write_hours(&read, out)?;
    }
    let coldest = statistics::quantile(&read.hourly.temperature, 0.0).map_or(f64::NAN, |t| t.celsius());
    let zone = zone(&apiary.site)?;
    let imported = Imported {
        files: read.files.clone(),
        from: read.hourly.start.to_string(),
        hours: read.hourly.len(),
        coldest_c: (coldest * 10.0).round() / 10.0,
        notes: read.notes.clone(),
        far: far(&read, &apiary)?,
        months: text::weather::months(std::slice::from_ref(&read.hourly), &zone),
    };
    if common.json {
        text::say(&serde_json::to_string_pretty(&imported)?)?;
        return Ok(());
    }
    let coldest = snowhum_units::Kelvin::from_celsius(coldest);
    let told = say::read(coldest, &imported.files, &imported.from, imported.hours);
    let notes = text::weather::notes(&imported.far, &imported.notes);
    text::say(&(text::wrapped(told, 2) + "\n" + &notes + &text::weather::table(&imported.months)))?;
    if let Some(out) = &arguments.out {
        text::say(&text::wrapped(used_again(out, has_place), 2))?;
    }
    Ok(())
}

/// What lies far from the keeper's own yard; from an invented one all does.
fn far(read: &Completed, apiary: &Apiary) -> anyhow::Result<Vec<FarAnswer>> {
    if apiary.invented {
        return Ok(Vec::new());
    }
    let (_, far) = site_of(std::slice::from_ref(read), &apiary.site)?;
    Ok(far.iter().map(FarAnswer::new).collect())
}

/// Columns of written hours: heading, and what it is with its unit as `--columns` wants them; where the file names its
/// place, those of it stand last.
const WRITTEN: [(&str, &str, &str); 10] = [
    ("time_utc", "time", ""),
    ("temperature_c", "temperature", ":C"),
    ("humidity_over_water", "humidity", ":1"),
    ("wind_m_s", "wind", ":m/s"),
    ("global_w_m2", "sun", ":W/m2"),
    ("precipitation_mm", "rain", ":mm"),
    ("snow_m", "snow", ":m"),
    ("latitude", "latitude", ""),
    ("longitude", "longitude", ""),
    ("elevation_m", "elevation", ":m"),
];

/// Columns of a file with or without a place.
fn written(has_place: bool) -> &'static [(&'static str, &'static str, &'static str)] {
    if has_place { &WRITTEN } else { &WRITTEN[..7] }
}

/// How written hours are used; the spaces after the commas let a terminal break the line and do no harm in it.
fn used_again(out: &Path, has_place: bool) -> Message {
    let columns: Vec<String> =
        written(has_place).iter().map(|(heading, role, unit)| format!("{role}={heading}{unit}")).collect();
    let columns = columns.join(", ");
    say::written(columns, out.display().to_string())
}

/// Whole hours as a station's CSV, to be read again with `--columns`.
fn write_hours(read: &Completed, out: &Path) -> anyhow::Result<()> {
    let failed = |error: std::io::Error| new_file::failed(out, &error);
    let mut file = std::io::BufWriter::new(new_file::create(out)?);
    let hours = &read.hourly;
    let headings: Vec<&str> = written(read.place.is_some()).iter().map(|(heading, ..)| *heading).collect();
    let place = read.place.map_or_else(String::new, |place| {
        format!(",{},{},{}", place.latitude.get(), place.longitude.get(), place.elevation.get())
    });
    writeln!(file, "{}", headings.join(",")).map_err(failed)?;
    for at in 0..hours.len() {
        let time = hours.start + jiff::SignedDuration::from_hours(at as i64);
        writeln!(
            file,
            "{time},{:.2},{:.3},{:.2},{:.1},{:.2},{:.3}{place}",
            hours.temperature[at].celsius(),
            hours.humidity_over_water(at).get(),
            hours.wind[at].get(),
            hours.global[at].get(),
            hours.precipitation[at].get() * 1e3,
            hours.snow_depth[at].get()
        )
        .map_err(failed)?;
    }
    file.flush().map_err(failed)
}
