//! How many winters are drawn, how far they reach, and by which clock.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_apiary::Site;
use snowhum_figures::looking_ahead;
use snowhum_say::shared_terminal as shared;

use crate::exit;

/// Weather paths of an ensemble: whole blocks, and as many members on each of them.
pub(super) const PATHS: usize = 96;
/// The seed of the winters that a site's own dates are read from: its spring, its last days of autumn. They are the same
/// whatever a run draws, so that no deadline moves with another seed.
pub(super) const DATES: u64 = 1;
/// Days after the as-of date within which spring is sought.
pub(super) const LONGEST_WINTER: i64 = 330;
/// Days that are looked ahead at least, also when the first flowers are near or past.
pub(super) const AHEAD: i64 = looking_ahead::AT_LEAST as i64;
/// Days after a winter's end until which its colonies are followed.
pub(super) const AFTER_WINTER: i64 = looking_ahead::AFTER_WINTER as i64;

/// The last 1 July before the as-of date (1 January in the south).
pub(super) fn high_summer_before(as_of: Date, site: &Site) -> Date {
    let month = if site.latitude.get() < 0.0 { 1 } else { 7 };
    let year = if as_of.month() >= month { as_of.year() } else { as_of.year() - 1 };
    Date::new(year, month, 1).unwrap_or(as_of)
}

pub(crate) fn zone(site: &Site) -> anyhow::Result<TimeZone> {
    TimeZone::get(&site.zone).map_err(|error| exit::refused(shared::zone(error.to_string(), &site.zone)))
}
