//! The body of food on a hive: whether the cluster has reached it, and when it likely will.

use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{FoodBody, FoodBodyKind, FoodPlace};
use snowhum_say::{Message, food_body as say, in_hundred};
use snowhum_units::{Kilogram, Metre, Range};
use snowhum_watch::Standing;

use crate::ahead::base::Base;
use crate::answer::OpenDates;
use crate::looks_to::LooksTo;
use crate::seasons;
use crate::statistics::rounded;

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
    pub says: Message,
}

/// What is on the hive at a moment; none where nothing is.
pub(super) fn of(
    base: &Base<'_>,
    at: usize,
    standing: &Standing,
    (end, to): (Timestamp, LooksTo),
) -> Option<FoodBodyNow> {
    let apiary = base.question.apiary;
    let noted = apiary.food_body(base.housed[at].colony.id, end)?;
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let left = |worth: f64| rounded(noted.body.mass_of(Kilogram::new(worth)).get(), 1);
    let now = FoodBodyNow {
        body: noted.body,
        since: noted.since.map(|since| since.to_zoned_datetime(zone).date()),
        left_kg: standing.body_kg.map(|range| range.map(left)),
        reached: rounded(standing.body_reached, 3),
        reached_by: seasons::food_body_reached(base, at),
        says: Message::NONE,
    };
    Some(FoodBodyNow { says: says(&now, to), ..now })
}

fn says(now: &FoodBodyNow, to: LooksTo) -> Message {
    let what = match now.since {
        Some(since) => say::since(since, made(&now.body)),
        None => say::since_autumn(made(&now.body)),
    };
    let Some(left) = now.left_kg.map(|left| left.map(Kilogram::new)) else { return what };
    let left = say::left(left.p10, left.p50, left.p90);
    let chance = in_hundred(now.reached);
    match now.reached {
        reached if reached >= REACHED => say::reached(chance, left, what),
        reached if reached > NOT_REACHED => say::in_doubt(chance, left, what, when(now, to)),
        _ => say::not_reached(chance, what, when(now, to)),
    }
}

/// What it is.
fn made(body: &FoodBody) -> Message {
    let food = if body.pollen { say::food_pollen } else { say::food };
    let mut parts = vec![food(body.kind.message(), body.mass_kg)];
    if body.kind != FoodBodyKind::FrameFeeder {
        let whole = |length: Metre| Metre::new((length.get() * 1e3).round() / 1e3);
        parts.extend(body.rim_m.map(|rim| say::rim(whole(rim))));
        parts.push(match body.place {
            FoodPlace::OverCluster => say::over_cluster(),
            FoodPlace::ToOneSide => say::to_one_side(),
        });
        parts.extend(body.hole_m.map(|hole| say::hole(whole(hole))));
    }
    say::made(parts)
}

/// When it will.
fn when(now: &FoodBodyNow, to: LooksTo) -> Message {
    match (now.reached_by.p10, now.reached_by.p50, now.reached_by.p90) {
        (None, ..) => say::never(to.goal()),
        (Some(early), None, _) => say::hardly(early, to.goal()),
        (Some(early), Some(middle), Some(late)) => say::by(early, late, middle),
        (Some(early), Some(middle), None) => say::not_all(early, to.goal(), middle),
    }
}
