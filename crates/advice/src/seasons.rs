//! Figures of a run by month and date.

use jiff::civil::Date;
use snowhum_units::Range;
use snowhum_winter::{Daily, HiveDaily, Trajectory};

use crate::ahead::run::Run;
use crate::answer::{Condensation, DateRange, HiveVerdict, MonthRange, OpenDates};
use crate::statistics::{rounded, weighted_range};

/// Brood cells that a keeper would plainly see: a hand's breadth on both sides of a comb (judgement).
const VISIBLE_BROOD: f32 = 1_000.0;
/// Days between the dates at which bees are given.
const EVERY: usize = 14;

/// Days of the run that fall in each month, in order.
fn months(run: &Run<'_>, trajectory: &Trajectory) -> Vec<(String, Vec<usize>)> {
    let mut months: Vec<(String, Vec<usize>)> = Vec::new();
    for day in 0..trajectory.days() {
        let date = run.date(day);
        let name = format!("{:04}-{:02}", date.year(), date.month());
        match months.last_mut() {
            Some((last, days)) if *last == name => days.push(day),
            _ => months.push((name, vec![day])),
        }
    }
    months
}

/// A daily figure by month: its range over members alive, each member's mean over the month's days.
pub(crate) fn by_month(run: &Run<'_>, at: usize, what: Daily, scale: f64) -> Vec<MonthRange> {
    let trajectory = &run.trajectories[at];
    let months = months(run, trajectory);
    let range = |days: &[usize]| {
        let mut sums = vec![0.0; trajectory.members()];
        for &day in days {
            for (sum, value) in sums.iter_mut().zip(trajectory.day(what, day)) {
                *sum += f64::from(value);
            }
        }
        let weights = alive(trajectory, days.last().copied().unwrap_or(0));
        let weighted: Vec<(f64, f64)> = sums.iter().map(|sum| sum * scale / days.len() as f64).zip(weights).collect();
        weighted_range(&weighted)
    };
    months
        .iter()
        .filter_map(|(month, days)| {
            Some(MonthRange { month: month.clone(), range: range(days)?.map(|value| rounded(value, 0)) })
        })
        .collect()
}

/// Chance of each member of being alive at the end of a day.
fn alive(trajectory: &Trajectory, day: usize) -> Vec<f64> {
    trajectory.day(Daily::Lost, day).map(|lost| 1.0 - f64::from(lost)).collect()
}

/// Grown bees each fortnight, among colonies alive.
pub(crate) fn bees(run: &Run<'_>, at: usize) -> Vec<DateRange> {
    fortnightly(run, at, Daily::Bees, -2)
}

/// A daily figure each fortnight, among colonies alive, rounded to `decimals`.
pub(crate) fn fortnightly(run: &Run<'_>, at: usize, what: Daily, decimals: i32) -> Vec<DateRange> {
    let trajectory = &run.trajectories[at];
    (0..trajectory.days())
        .step_by(EVERY)
        .filter_map(|day| {
            let range = on_day(trajectory, what, day)?;
            Some(DateRange { date: run.date(day), range: range.map(|value| rounded(value, decimals)) })
        })
        .collect()
}

/// A daily figure among colonies alive at the end of a day.
pub(crate) fn on_day(trajectory: &Trajectory, what: Daily, day: usize) -> Option<Range<f64>> {
    let values = trajectory.day(what, day).map(f64::from);
    weighted_range(&values.zip(alive(trajectory, day)).collect::<Vec<_>>())
}

/// When food within reach runs out. A member that never goes hungry counts as later than the plan's end.
pub(crate) fn runs_out(run: &Run<'_>, at: usize) -> OpenDates {
    let days = run.trajectories[at].ends.iter().map(|end| end.first_hungry_day.map(|day| day as usize));
    open_dates(run, days)
}

/// When bees have eaten of the body of food on their hive.
pub(crate) fn food_body_reached(run: &Run<'_>, at: usize) -> OpenDates {
    let days = run.trajectories[at].ends.iter().map(|end| end.body_reached.map(|day| day as usize));
    open_dates(run, days)
}

/// When brood is plainly there again after the winter solstice.
pub(crate) fn brood_begins(run: &Run<'_>, at: usize) -> OpenDates {
    let trajectory = &run.trajectories[at];
    open_dates(run, (0..trajectory.members()).map(|member| first_brood(run, trajectory, member)))
}

/// First day after the winter solstice on which a member has brood to be seen.
pub(crate) fn first_brood(run: &Run<'_>, trajectory: &Trajectory, member: usize) -> Option<usize> {
    let visible = |day: usize| brood_is_visible(trajectory, day, member);
    (0..trajectory.days()).filter(|&day| run.after_solstice(day)).find(|&day| visible(day))
}

/// Whether brood is plainly there in a member on a day.
fn brood_is_visible(trajectory: &Trajectory, day: usize, member: usize) -> bool {
    trajectory.of_member(Daily::Brood, day, member).is_some_and(|cells| cells > VISIBLE_BROOD)
}

fn open_dates(run: &Run<'_>, days: impl Iterator<Item = Option<usize>>) -> OpenDates {
    let mut sorted: Vec<f64> = days.map(|day| day.map_or(f64::INFINITY, |day| day as f64)).collect();
    sorted.sort_by(f64::total_cmp);
    let date = |q: f64| {
        let at = (q * (sorted.len().saturating_sub(1)) as f64).round() as usize;
        sorted.get(at).filter(|day| day.is_finite()).map(|day| run.date(*day as usize))
    };
    OpenDates { p10: date(0.1), p50: date(0.5), p90: date(0.9) }
}

/// The hive at place `at` as an enclosure in the coldest month of a run under the same weather.
pub(crate) fn hive_verdict(run: &Run<'_>, at: usize, trajectory: &Trajectory) -> HiveVerdict {
    let days = coldest_month(run, trajectory);
    let mean = |what: HiveDaily| trajectory.hive(what, days.iter().copied()).unwrap_or(0.0);
    let has_hole = run.housed[at].hive.openings.iter().any(|o| o.kind == snowhum_apiary::OpeningKind::UpperHole);
    HiveVerdict {
        heat_loss_w_per_k: rounded(mean(HiveDaily::Loss), 2),
        air_flow_l_per_s: rounded(mean(HiveDaily::Flow), 2),
        condensation_g_per_day: Condensation {
            lid: rounded(mean(HiveDaily::Lid), 1),
            walls: rounded(mean(HiveDaily::Walls), 1),
            floor: rounded(mean(HiveDaily::Floor), 1),
        },
        drip_on_cluster_g_per_day: rounded(mean(HiveDaily::Drip), 1),
        frost_at_hole: has_hole.then(|| rounded(mean(HiveDaily::Frost), 2)),
    }
}

/// Days of the month with the coldest outdoor air.
fn coldest_month(run: &Run<'_>, trajectory: &Trajectory) -> Vec<usize> {
    let air = |days: &[usize]| {
        let (environment, behind) = run.ahead.weather();
        let paths = environment.paths();
        let sum: f64 = days
            .iter()
            .flat_map(|&day| (0..paths).map(move |path| (day, path)))
            .map(|(day, path)| environment.air(24 * (day + behind) + 6, path).get())
            .sum();
        sum / (days.len() * paths) as f64
    };
    let whole = |(_, days): &(String, Vec<usize>)| days.len() >= 10;
    let months = months(run, trajectory);
    let coldest = months.iter().filter(|m| whole(m)).min_by(|a, b| air(&a.1).total_cmp(&air(&b.1)));
    coldest.or(months.first()).map(|(_, days)| days.clone()).unwrap_or_default()
}

/// The month of a day, as the north counts its seasons.
#[must_use]
pub fn season_month(day: Date, latitude: f64) -> i8 {
    if latitude < 0.0 { (day.month() + 5) % 12 + 1 } else { day.month() }
}
