//! `[site]` and `[money]`.

use super::report::{Report, Spot};
use super::scalar::Limits;
use super::section::{Entry, Section, shown};
use crate::nearest::nearest;
use crate::when::month;
use crate::words::usual_money;
use crate::{Exposure, Money, Shelter, Site};
use jiff::tz::TimeZone;
use snowhum_say::{fault, yard_fault as say, yard_taken};
use snowhum_units::{Degree, Metre};
use toml::de::DeValue;

const KEYS: [&str; 7] = ["latitude", "longitude", "elevation", "zone", "shelter", "exposure", "first_flow"];
const ELEVATION: Limits = Limits::new(-430.0, 6_000.0, || say::between("-430 m", "6000 m", "105 m"));

pub(crate) fn read(root: &Section<'_>, report: &mut Report) -> Option<Site> {
    let entry = root.need("site", say::needs_site, report)?;
    let section = entry.section("[site]", report)?;
    section.only(&KEYS, report);
    let latitude = section.need("latitude", say::needs_latitude, report);
    let latitude = latitude.and_then(|entry| angle(&entry, 90.0, ['N', 'S'], report));
    let longitude = section.need("longitude", say::needs_longitude, report);
    let longitude = longitude.and_then(|entry| angle(&entry, 180.0, ['E', 'W'], report));
    let elevation = section.need("elevation", say::needs_elevation, report);
    let elevation = elevation.and_then(|entry| entry.quantity::<Metre>(&ELEVATION, report));
    let zone = section.need("zone", say::needs_zone, report);
    let zone = zone.and_then(|entry| zone_name(&entry, report));
    let shelter = shelter(&section, report);
    let exposure = exposure(&section, report);
    let first_flow = match section.get("first_flow", report) {
        Some(entry) => Some(month_and_day(&entry, report)?),
        None => None,
    };
    Some(Site {
        latitude: latitude?,
        longitude: longitude?,
        elevation: elevation?,
        zone: zone?,
        shelter: shelter?,
        exposure: exposure?,
        first_flow,
    })
}

fn shelter(section: &Section<'_>, report: &mut Report) -> Option<Shelter> {
    const WORDS: [(&str, Shelter); 3] =
        [("open", Shelter::Open), ("windbreak", Shelter::Windbreak), ("enclosed", Shelter::Enclosed)];
    match section.get("shelter", report) {
        Some(entry) => entry.word(&WORDS, report),
        None => {
            report.advise(&section.spot, yard_taken::shelter());
            Some(Shelter::Windbreak)
        }
    }
}

fn exposure(section: &Section<'_>, report: &mut Report) -> Option<Exposure> {
    const WORDS: [(&str, Exposure); 3] =
        [("sunny", Exposure::Sunny), ("partial", Exposure::Partial), ("shaded", Exposure::Shaded)];
    match section.get("exposure", report) {
        Some(entry) => entry.word(&WORDS, report),
        None => {
            report.advise(&section.spot, yard_taken::sun());
            Some(Exposure::Partial)
        }
    }
}

/// An angle as a plain number of degrees or as text with a compass letter.
fn angle(entry: &Entry<'_>, most: f64, letters: [char; 2], report: &mut Report) -> Option<Degree> {
    let [plus, minus] = letters;
    let remedy = say::angle_right(plus.to_string(), most.to_string());
    let degrees = match entry.value {
        DeValue::String(_) => {
            let text = entry.text(report)?.trim();
            let (number, sign) = match text.chars().last() {
                Some(last) if last.eq_ignore_ascii_case(&plus) => (&text[..text.len() - 1], 1.0),
                Some(last) if last.eq_ignore_ascii_case(&minus) => (&text[..text.len() - 1], -1.0),
                _ => (text, 1.0),
            };
            let number = number.trim().trim_end_matches("deg").trim_end_matches('°').trim();
            match snowhum_units::number(number) {
                Ok(number) => sign * number,
                Err(_) => {
                    report.fault(&entry.spot, say::no_angle(shown(text)), remedy);
                    return None;
                }
            }
        }
        _ => entry.number(&Limits::new(f64::MIN, f64::MAX, say::degrees), report)?,
    };
    if !(-most..=most).contains(&degrees) {
        report.fault(&entry.spot, say::off_globe(degrees), remedy);
        return None;
    }
    Some(Degree::new(degrees))
}

/// A zone of the bundled time zone database.
fn zone_name(entry: &Entry<'_>, report: &mut Report) -> Option<String> {
    let written = entry.text(report)?.trim();
    if let Ok(zone) = TimeZone::get(written) {
        return Some(zone.iana_name().unwrap_or(written).to_owned());
    }
    let names: Vec<String> = jiff::tz::db().available().map(|name| name.to_string()).collect();
    let city = |name: &str| name.rsplit('/').next().unwrap_or_default().to_lowercase();
    let by_city = names.iter().find(|name| !written.is_empty() && city(name) == city(written)).map(String::as_str);
    let remedy = match by_city.or_else(|| nearest(written, names.iter().map(String::as_str))) {
        Some(near) => fault::did_you_mean(near),
        None => say::zone_right(),
    };
    report.fault(&entry.spot, say::no_zone(shown(written)), remedy);
    None
}

/// A day of any year, `05-25` or `25 May`.
fn month_and_day(entry: &Entry<'_>, report: &mut Report) -> Option<(i8, i8)> {
    let written = entry.text(report)?;
    let parts: Vec<&str> = written.split(['-', ' ', '.']).filter(|part| !part.is_empty()).collect();
    let pair = match parts.as_slice() {
        [a, b] => match (month(a), month(b)) {
            (Some(month), _) => b.parse().ok().map(|day| (month, day)),
            (None, Some(month)) => a.parse().ok().map(|day| (month, day)),
            (None, None) => a.parse().ok().zip(b.parse().ok()),
        },
        _ => None,
    };
    let pair: Option<(i8, i8)> = pair.filter(|(month, day)| jiff::civil::Date::new(2024, *month, *day).is_ok());
    if pair.is_none() {
        report.fault(&entry.spot, say::no_day_of_year(shown(written)), say::day_of_year_right());
    }
    pair
}

/// `[money]`, every key of it optional.
pub(crate) fn money(root: &Section<'_>, report: &mut Report) -> Option<Money> {
    const PRICE: Limits = Limits::new(0.0, 1_000_000.0, say::price);
    const PRICES: [&str; 6] = ["colony", "sugar_per_kg", "fondant_per_kg", "lid", "wrap", "hour"];
    let (mut money, source) = usual_money();
    let section = root.get("money", report).map(|entry| entry.section("[money]", report).ok_or(())).transpose().ok()?;
    let mut taken = Vec::new();
    let mut whole = true;
    let slots = [
        &mut money.colony,
        &mut money.sugar_per_kg,
        &mut money.fondant_per_kg,
        &mut money.lid,
        &mut money.wrap,
        &mut money.hour,
    ];
    for (key, price) in PRICES.iter().zip(slots) {
        match section.as_ref().and_then(|section| section.get(key, report)) {
            Some(entry) => match entry.number(&PRICE, report) {
                Some(written) => *price = written,
                None => whole = false,
            },
            None => taken.push(format!("{key} {price}").into()),
        }
    }
    if let Some(section) = &section {
        section.only(&["currency", "colony", "sugar_per_kg", "fondant_per_kg", "lid", "wrap", "hour"], report);
        if let Some(entry) = section.get("currency", report) {
            money.currency = entry.name(report)?;
        }
    }
    if !taken.is_empty() {
        let spot = section.map_or(Spot { line: 1, field: "money".to_owned() }, |section| section.spot);
        report.advise(&spot, yard_taken::prices(&money.currency, taken, source));
    }
    whole.then_some(money)
}
