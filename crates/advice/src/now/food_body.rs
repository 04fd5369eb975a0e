//! The body of food on a hive: whether the cluster has reached it, and when it likely will.

use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::{Deserialize, Serialize};
use snowhum_apiary::FoodBody;
use snowhum_units::{Kilogram, Range, System};
use snowhum_watch::Standing;

use crate::ahead::base::Base;
use crate::answer::OpenDates;
use crate::looks_to::LooksTo;
use crate::seasons;
use crate::statistics::rounded;
use crate::words::{day, in_hundred};

/// Chances from which it is said to be reached, and below which not.
const REACHED: f64 = 0.9;
const NOT_REACHED: f64 = 0.1;

/// A candy board, a slab or a feeder on a hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FoodBodyNow {
    /// As it was put on.
    pub body: FoodBody,
    /// When; none where the yard file has it.
    pub since: Option<Date>,
    /// What is left of it, kg as weighed, if the colony is alive.
    pub left_kg: Option<Range<f64>>,
    /// Chance that bees have eaten of it, if alive.
    pub reached: f64,
    /// When they have, if none has by now.
    pub reached_by: OpenDates,
    /// In words.
    pub says: String,
}

/// What is on the hive at a moment; none where nothing is.
pub(super) fn of(
    base: &Base<'_>,
    at: usize,
    standing: &Standing,
    (end, to): (Timestamp, LooksTo),
) -> Option<FoodBodyNow> {
    let (apiary, system) = (base.question.apiary, base.question.system);
    let noted = apiary.food_body(base.housed[at].colony.id, end)?;
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let left = |worth: f64| rounded(noted.body.mass_of(Kilogram::new(worth)).get(), 1);
    let now = FoodBodyNow {
        body: noted.body,
        since: noted.since.map(|since| since.to_zoned_datetime(zone).date()),
        left_kg: standing.body_kg.map(|range| range.map(left)),
        reached: rounded(standing.body_reached, 3),
        reached_by: seasons::food_body_reached(base, at),
        says: String::new(),
    };
    Some(FoodBodyNow { says: says(&now, to, system), ..now })
}

fn says(now: &FoodBodyNow, to: LooksTo, system: System) -> String {
    let what = now.body.show(system);
    let since = now.since.map_or_else(|| "on since autumn".to_owned(), |since| format!("on since {}", day(since)));
    let Some(left) = now.left_kg else { return format!("{what}, {since}") };
    let kg = |kg: f64| Kilogram::new(kg).show(system, 1);
    let left = format!("about {} is left (8 in 10 between {} and {})", kg(left.p50), kg(left.p10), kg(left.p90));
    let reached = in_hundred(now.reached);
    match now.reached {
        chance if chance >= REACHED => format!("{what}, {since}: the cluster has reached it ({reached}); {left}"),
        chance if chance > NOT_REACHED => {
            format!(
                "{what}, {since}: nobody knows whether the cluster has reached it ({reached}); {}; {left}",
                when(now, to)
            )
        }
        _ => format!("{what}, {since}: not reached ({reached}), so it feeds nobody yet; {}", when(now, to)),
    }
}

/// When it will.
fn when(now: &FoodBodyNow, to: LooksTo) -> String {
    match (now.reached_by.p10, now.reached_by.p50) {
        (None, _) => format!("in 9 of 10 winters it is not by {}", to.goal()),
        (Some(early), None) => {
            format!("likelier than not it is not by {}; 1 in 10 has it by {}", to.goal(), day(early))
        }
        (Some(early), Some(middle)) => {
            let late =
                now.reached_by.p90.map_or_else(|| format!("not by {}", to.goal()), |late| format!("by {}", day(late)));
            format!("half of such hives reach it by {}, 1 in 10 by {}, the slowest {late}", day(middle), day(early))
        }
    }
}
