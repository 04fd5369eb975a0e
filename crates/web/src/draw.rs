//! Pictures of an estimate, put on the page with their tables.

use jiff::civil::Date;
use maud::{Markup, PreEscaped, html};
use snowhum_advice::now::{ColonyNow, DeadBeesCounted, Fates, NowAnswer};
use snowhum_advice::verdict::Task;
use snowhum_figures::drawing::{BREEZY_FROM, HARD_COLD_BELOW, STRONG_FROM};
use snowhum_picture::{
    Cold, DayOutlook, DayStrip, DeadBeesCount, DeadBeesFound, Fate, Flying, FoodDay, FoodFan, Hundred, HundredPart,
    IdPrefix, Plate, PlateWidth, Tick, Windy,
};
use snowhum_say::{Message, Tongue, draw_page as text, shared_page};
use snowhum_units::{Fraction, Kilogram, Range};

use crate::section;
use crate::view::View;
use crate::weather_ahead::Day;

/// A plate as a figure, its rows a tap down.
pub(crate) fn figure(plate: &Plate, id: &str, tongue: Tongue) -> Markup {
    html! {
        figure class="plate" {
            (PreEscaped(plate.inline(&IdPrefix::new(id))))
            (rows(plate, tongue))
        }
    }
}

/// A plate alone.
pub(crate) fn bare(plate: &Plate, id: &str) -> Markup {
    PreEscaped(plate.inline(&IdPrefix::new(id)))
}

fn rows(plate: &Plate, tongue: Tongue) -> Markup {
    html! {
        @if !plate.table.rows.is_empty() {
            details {
                summary { (tongue.say(&shared_page::as_table())) }
                div class="wide" tabindex="0" role="region" aria-label=(plate.title) {
                    table {
                        caption { (plate.title) }
                        thead { tr { @for head in &plate.table.head { th scope="col" { (head) } } } }
                        tbody { @for row in &plate.table.rows { tr {
                            @for (at, cell) in row.iter().enumerate() { @if at == 0 { th scope="row" { (cell) } } @else { td { (cell) } } }
                        } } }
                    }
                }
            }
        }
    }
}

/// The thumbnail of the hive at a place.
pub(crate) fn thumbnail(view: &View, at: usize) -> Option<Markup> {
    Some(bare(&hive(view, at)?.thumbnail(), &format!("small{at}")))
}

/// How many parts of a hive are pointed at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Parts {
    /// The five that tell most.
    First,
    /// Every part, with the table of them.
    Every,
}

/// The cut-away, for a desk and for a phone: the style sheet shows one.
pub(crate) fn cutaway(view: &View, at: usize, parts: Parts) -> Option<Markup> {
    let hive = hive(view, at)?;
    let [desk, phone] = [PlateWidth::Desk, PlateWidth::Phone].map(|width| match parts {
        Parts::First => hive.cutaway_at_first(width),
        Parts::Every => hive.cutaway(width),
    });
    let (id, tongue) = (view.apiary.colonies.get(at)?.id.0, view.tongue());
    Some(html! {
        figure class="plate cutaway" id="open" {
            div class="for-desk" { (bare(&desk, "desk")) }
            div class="for-phone" { (bare(&phone, "phone")) }
            @match parts {
                Parts::First => p class="ways no-print" { a href={ "/hive/" (id) "?parts=every#open" } { (tongue.say(&text::every_part())) } },
                Parts::Every => {
                    p class="small" { (tongue.say(&text::to_scale())) }
                    (rows(&desk, tongue))
                }
            }
        }
    })
}

fn hive(view: &View, at: usize) -> Option<snowhum_picture::HiveSection> {
    let present = &view.standing.as_ref()?.present;
    let (housed, colony) = (present.housed.get(at)?, present.now.colonies.get(at)?);
    let settled = present.settled.get(at)?.as_ref();
    let noted = present.openings.get(at).copied().unwrap_or_default();
    let within = section::Within::estimated(housed, colony, noted, view.now.time_zone().clone());
    let today = present.at_hives.get(at).unwrap_or(&present.today);
    Some(section::of(housed, &within, settled, today, view.tongue()))
}

/// Chance below which a fate is not told.
const RARE: f64 = 0.001;

/// What comes of a hundred hives like it, if nothing is done.
pub(crate) fn fates(fates: &Fates, goal: Message, tongue: Tongue) -> Plate {
    let all = [
        (Fate::Lives, text::lives(), fates.well),
        (Fate::Hungry, text::hungry(), fates.hungry),
        (Fate::Queenless, text::queenless(), fates.queenless),
        (Fate::Starved, text::starved(), fates.starved),
        (Fate::Lost, text::lost(), fates.died_otherwise),
    ];
    // Nobody has looked: neither none nor all.
    let is_told = |(fate, _, share): &(Fate, Message, f64)| *fate == Fate::Lives || *share >= RARE;
    let part = |(fate, words, share): (Fate, Message, f64)| HundredPart {
        fate,
        words: tongue.say(&words),
        share: Fraction::new(share.clamp(RARE, 1.0 - RARE)),
    };
    let parts = all.into_iter().filter(is_told).map(part).collect();
    Hundred { title: tongue.say(&text::of_hundred(goal)), parts, tongue }.plate()
}

/// The strip of coming days.
pub(crate) fn days(days: &[Day], tongue: Tongue) -> Plate {
    let outlook = |one: &Day| DayOutlook {
        day: tongue.say(&text::weekday(one.on)),
        date: one.on.day().to_string(),
        when: tongue.say(&text::day(one.on)),
        low: one.low,
        high: one.high,
        wind: one.wind,
        flying: match one.flying {
            chance if chance >= 0.5 => Flying::Yes,
            chance if chance >= 0.2 => Flying::Perhaps,
            _ => Flying::No,
        },
        cold: match one.low.celsius() {
            low if low < HARD_COLD_BELOW => Cold::Hard,
            low if low < 0.0 => Cold::Frost,
            _ => Cold::Mild,
        },
        windy: windy(one.wind.get()),
    };
    let title = tongue.say(&text::days());
    DayStrip { title, days: days.iter().map(outlook).collect(), tongue }.plate()
}

fn windy(metres_per_second: f64) -> Windy {
    match metres_per_second {
        wind if wind >= STRONG_FROM => Windy::Strong,
        wind if wind >= BREEZY_FROM => Windy::Breezy,
        _ => Windy::Calm,
    }
}

/// Standard deviates between which half of what may come lies.
const HALF: f64 = 0.674_49;

/// Food within reach from here to spring of the hive at a place, with the reserve it should have then and the last day for
/// what is to be fed; none where there is nothing to show.
pub(crate) fn food(now: &NowAnswer, at: usize, tongue: Tongue) -> Option<Plate> {
    let colony = now.colonies.get(at).filter(|colony| colony.reachable_kg_ahead.len() >= 2)?;
    let (today, spring) = (now.as_of, now.spring);
    let say = |message: Message| tongue.say(&message);
    let since = |on: Date| i32::try_from(on.duration_since(today).as_hours() / 24).unwrap_or(0);
    let left = |range: Range<f64>| {
        let quantiles = [range.p10, range.at(-HALF), range.p50, range.at(HALF), range.p90];
        quantiles.map(|kilograms| Kilogram::new(kilograms.max(0.0)))
    };
    let food_day = |one: &snowhum_advice::answer::DateRange| FoodDay {
        day: since(one.date),
        when: say(shared_page::day(one.date)),
        left: left(one.range),
    };
    let last = colony.reachable_kg_ahead.last().map_or(today, |one| one.date);
    let flow = spring.saturating_sub(jiff::Span::new().days(14));
    Some(
        FoodFan {
            title: say(text::food(&colony.name)),
            days: colony.reachable_kg_ahead.iter().map(food_day).collect(),
            ticks: months((today, last), tongue, since),
            horizon: Some(Tick { day: since(flow), words: say(text::flow(flow)) }),
            deadline: fed_by(now, at).map(|by| Tick { day: since(by), words: say(text::feed_by(by)) }),
            reserve: Some(Kilogram::new(now.reserve_kg)),
            weighings: Vec::new(),
            tongue,
        }
        .plate(),
    )
}

/// The last day for what is to be fed to the hive at a place.
fn fed_by(now: &NowAnswer, at: usize) -> Option<Date> {
    let is_feed = |task: &Task| {
        matches!(task, Task::FeedSyrup { .. } | Task::FeedThinSyrup { .. } | Task::FeedSolid { .. } | Task::BringNear)
    };
    now.first.colonies.get(at)?.steps.iter().filter(|step| is_feed(&step.task)).filter_map(|step| step.by).max()
}

fn months((from, to): (Date, Date), tongue: Tongue, since: impl Fn(Date) -> i32) -> Vec<Tick> {
    let first = from.first_of_month();
    let months = (0..14).filter_map(|ahead| first.checked_add(jiff::Span::new().months(ahead)).ok());
    let tick = |on: Date| Tick { day: since(on), words: tongue.say(&text::month(on)) };
    months.filter(|on| *on > from && *on <= to).map(tick).collect()
}

/// Counts of dead bees shown.
const COUNTS: usize = 8;

/// Dead bees found against what was to be expected at that look; none if none were counted.
pub(crate) fn dead_bees_found(now: &ColonyNow, tongue: Tongue) -> Option<Plate> {
    let visits = now.evidence.iter().flat_map(|visit| visit.dead_bees.iter().map(move |dead| (visit.on, dead)));
    let count = |(on, dead): (Date, &DeadBeesCounted)| DeadBeesCount {
        when: tongue.say(&text::counted(dead.since, on)),
        found: dead.found,
        expected: dead.usual,
        verdict: dead.verdict,
    };
    let mut counts: Vec<DeadBeesCount> = visits.take(COUNTS).map(count).collect();
    counts.reverse();
    let title = tongue.say(&text::dead_found(&now.name));
    (!counts.is_empty()).then(|| DeadBeesFound { title, counts, tongue }.plate())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wind_of_seven_metres_a_second_is_not_called_calm() {
        assert!(matches!(windy(2.0), Windy::Calm));
        assert!(matches!(windy(7.0), Windy::Breezy));
    }
}
