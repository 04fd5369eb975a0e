//! Air and wind as a keeper met them.

use super::report::Report;
use super::section::Entry;
use crate::wrong::Wrong;
use snowhum_say::yard_fault as say;
use snowhum_units::{Kelvin, MetrePerSecond};

pub(crate) fn air(entry: &Entry<'_>, report: &mut Report) -> Option<Kelvin> {
    let written: Kelvin = measured(entry, report)?;
    if (-70.0..=50.0).contains(&written.celsius()) {
        return Some(written);
    }
    report.fault(&entry.spot, say::cannot_be(), say::air_right());
    None
}

pub(crate) fn wind(entry: &Entry<'_>, report: &mut Report) -> Option<MetrePerSecond> {
    let written: MetrePerSecond = measured(entry, report)?;
    if (0.0..=60.0).contains(&written.get()) {
        return Some(written);
    }
    report.fault(&entry.spot, say::cannot_be(), say::wind_right());
    None
}

fn measured<Q: std::str::FromStr<Err = snowhum_units::ParseError>>(
    entry: &Entry<'_>,
    report: &mut Report,
) -> Option<Q> {
    let text = entry.text(report)?;
    text.parse().map_err(|error| report.wrong(&entry.spot, Wrong::from(error))).ok()
}
