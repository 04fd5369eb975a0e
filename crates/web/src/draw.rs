//! Pictures of an estimate, put on the page with their tables.

use jiff::civil::Date;
use maud::{Markup, PreEscaped, html};
use snowhum_advice::now::{ColonyNow, DeadBeesCounted, Fates, NowAnswer};
use snowhum_advice::verdict::Task;
use snowhum_advice::words::day;
use snowhum_figures::drawing::{BREEZY_FROM, HARD_COLD_BELOW, STRONG_FROM};
use snowhum_picture::{
    Cold, DayOutlook, DayStrip, DeadBeesCount, DeadBeesFound, Fate, Flying, FoodDay, FoodFan, Hundred, HundredPart,
    IdPrefix, Plate, PlateWidth, Tick, Windy,
};
use snowhum_units::{Fraction, Kilogram, Range, System};

use crate::section;
use crate::view::View;
use crate::weather_ahead::Day;
use crate::words::weekday;

/// A plate as a figure, its rows a tap down.
pub(crate) fn figure(plate: &Plate, id: &str) -> Markup {
    html! {
        figure class="plate" {
            (PreEscaped(plate.inline(&IdPrefix::new(id))))
            (rows(plate))
        }
    }
}

/// A plate alone.
pub(crate) fn bare(plate: &Plate, id: &str) -> Markup {
    PreEscaped(plate.inline(&IdPrefix::new(id)))
}

fn rows(plate: &Plate) -> Markup {
    html! {
        @if !plate.table.rows.is_empty() {
            details {
                summary { "The same as a table" }
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
    let id = view.apiary.colonies.get(at)?.id.0;
    Some(html! {
        figure class="plate cutaway" id="open" {
            div class="for-desk" { (bare(&desk, "desk")) }
            div class="for-phone" { (bare(&phone, "phone")) }
            @match parts {
                Parts::First => p class="ways no-print" { a href={ "/hive/" (id) "?parts=every#open" } { "Every part" } },
                Parts::Every => {
                    p class="small" { "To scale from the yard file. Where cluster and food are is reckoned, not seen; temperatures as without brood." }
                    (rows(&desk))
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
    let hive = section::of(housed, &within, settled, today, view.settings.system);
    Some(snowhum_picture::HiveSection { speech: view.settings.speech, ..hive })
}

/// Chance below which a fate is not told.
const RARE: f64 = 0.001;

/// What comes of a hundred hives like it, if nothing is done.
pub(crate) fn fates(fates: &Fates, goal: &str) -> Plate {
    let all = [
        (Fate::Lives, "are alive, fed and queenright", fates.well),
        (Fate::Hungry, "live and are hungry", fates.hungry),
        (Fate::Queenless, "live and have no queen", fates.queenless),
        (Fate::Starved, "died of hunger", fates.starved),
        (Fate::Lost, "died otherwise", fates.died_otherwise),
    ];
    // Nobody has looked: neither none nor all.
    let is_told = |(fate, _, share): &(Fate, &str, f64)| *fate == Fate::Lives || *share >= RARE;
    let part = |(fate, words, share): (Fate, &str, f64)| HundredPart {
        fate,
        words: words.to_owned(),
        share: Fraction::new(share.clamp(RARE, 1.0 - RARE)),
    };
    let parts = all.into_iter().filter(is_told).map(part).collect();
    Hundred { title: format!("Of 100 hives like this, by {goal}"), parts }.plate()
}

/// The strip of coming days.
pub(crate) fn days(days: &[Day], system: System) -> Plate {
    let outlook = |one: &Day| DayOutlook {
        day: weekday(one.on).chars().take(3).collect(),
        date: one.on.day().to_string(),
        when: format!("{} {}", weekday(one.on), day(one.on)),
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
    DayStrip { title: "The coming days".to_owned(), days: days.iter().map(outlook).collect(), system }.plate()
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
pub(crate) fn food(now: &NowAnswer, at: usize, system: System) -> Option<Plate> {
    let colony = now.colonies.get(at).filter(|colony| colony.reachable_kg_ahead.len() >= 2)?;
    let (today, spring) = (now.as_of, now.spring);
    let since = |on: Date| i32::try_from(on.duration_since(today).as_hours() / 24).unwrap_or(0);
    let left = |range: Range<f64>| {
        let quantiles = [range.p10, range.at(-HALF), range.p50, range.at(HALF), range.p90];
        quantiles.map(|kilograms| Kilogram::new(kilograms.max(0.0)))
    };
    let food_day = |one: &snowhum_advice::answer::DateRange| FoodDay {
        day: since(one.date),
        when: day(one.date),
        left: left(one.range),
    };
    let last = colony.reachable_kg_ahead.last().map_or(today, |one| one.date);
    let flow = spring.saturating_sub(jiff::Span::new().days(14));
    Some(
        FoodFan {
            title: format!("Food within reach of {}", colony.name),
            days: colony.reachable_kg_ahead.iter().map(food_day).collect(),
            ticks: months(today, last, since),
            horizon: Some(Tick { day: since(flow), words: format!("first flow, most likely {}", day(flow)) }),
            deadline: fed_by(now, at).map(|by| Tick { day: since(by), words: format!("feed by {}", day(by)) }),
            reserve: Some(Kilogram::new(now.reserve_kg)),
            weighings: Vec::new(),
            system,
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

fn months(from: Date, to: Date, since: impl Fn(Date) -> i32) -> Vec<Tick> {
    let first = from.first_of_month();
    let months = (0..14).filter_map(|ahead| first.checked_add(jiff::Span::new().months(ahead)).ok());
    let tick = |on: Date| Tick {
        day: since(on),
        words: day(on).split(' ').next_back().unwrap_or("").chars().take(3).collect(),
    };
    months.filter(|on| *on > from && *on <= to).map(tick).collect()
}

/// Counts of dead bees shown.
const COUNTS: usize = 8;

/// Dead bees found against what was to be expected at that look; none if none were counted.
pub(crate) fn dead_bees_found(now: &ColonyNow) -> Option<Plate> {
    let visits = now.evidence.iter().flat_map(|visit| visit.dead_bees.iter().map(move |dead| (visit.on, dead)));
    let count = |(on, dead): (Date, &DeadBeesCounted)| DeadBeesCount {
        when: format!("{} to {}", short(dead.since), short(on)),
        found: dead.found,
        expected: dead.usual,
        verdict: dead.verdict,
    };
    let mut counts: Vec<DeadBeesCount> = visits.take(COUNTS).map(count).collect();
    counts.reverse();
    let title = format!("Dead bees found at {}", now.name);
    (!counts.is_empty()).then(|| DeadBeesFound { title, counts }.plate())
}

fn short(on: Date) -> String {
    let words = day(on);
    let (number, month) = words.split_once(' ').unwrap_or((&words, ""));
    format!("{number} {}", month.chars().take(3).collect::<String>())
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
