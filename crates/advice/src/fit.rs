//! Fit for winter? Six scales for each colony, a verdict with its reasons, and what the yard needs for it.

mod answer;
mod boost;
mod dates;
mod figures;
mod health;
mod say;
mod scales;
mod shopping;
mod unite;
mod verdict;
mod windows;

pub use answer::{
    Carried, ClassWindow, ColonyFit, FitAnswer, OutOf, Scale, SiteDates, Stands, Uniting, Usual, Verdict, VerdictKind,
    What,
};
pub use figures::mite_region;
pub use shopping::{BeginBy, FEEDER_L, HiveFeed, Shopping, Spared};

use jiff::civil::Date;
use snowhum_apiary::{Colony, Combs, Mites};
use snowhum_units::System;
use snowhum_winter::{Event, Housed, Trajectory};

use crate::actions::{beside_them, touched};
use crate::answer::ColonyPlan;
use crate::plan::Base;
use crate::shortage::WORTH_FEEDING;
use crate::statistics::mean_and_error;
use crate::verdict::Estimate;
use figures::{Country, Figures};
pub(crate) use health::{Health, foulbrood};
pub(crate) use scales::{GUARD, left_on};
pub(crate) use windows::broodless_days;

/// A yard looked at before winter, with what the plan computed of it.
pub(crate) struct Look<'a> {
    base: &'a Base<'a>,
    plans: &'a [ColonyPlan],
    figures: Figures,
    dates: SiteDates,
    health: Health,
    cold: Country,
    /// The same winter with every colony given what it is short of today; none where nothing is short.
    fed: Vec<Option<Trajectory>>,
    /// The fortnight's mean of the daily maximum on the plan's first day, °C.
    warmth_c: f64,
}

/// Whether each colony is fit for winter; none only if the program's own table is broken.
pub(crate) fn fit(base: &Base<'_>, plans: &[ColonyPlan]) -> Option<FitAnswer> {
    let figures = Figures::shipped()?;
    let dates = dates::of(base, &figures);
    let cold = figures.cold_of(dates::coldest_month(base));
    let fed = fed(base);
    let health = Health::from(base, &figures, &dates);
    let look = Look { base, plans, dates, health, cold, fed, warmth_c: dates::warmth(base), figures };
    let colonies: Vec<ColonyFit> = (0..base.housed.len()).map(|at| colony(&look, at)).collect();
    Some(FitAnswer {
        shopping: shopping::of(&look, &colonies),
        windows: windows::of(&look),
        treat_before: dates::winter_bees(base),
        winter_bees: dates::winter_bees_say(base),
        say: say::yard(&look, &colonies),
        dates: look.dates.clone(),
        colonies,
    })
}

/// Last days at the yard's site; none only if the program's own table is broken.
pub(crate) fn site_dates(base: &Base<'_>) -> Option<SiteDates> {
    Some(dates::of(base, &Figures::shipped()?))
}

/// Every colony given what it is short of today, as syrup or, where it is too late for that, as solid feed.
fn fed(base: &Base<'_>) -> Vec<Option<Trajectory>> {
    let events = feeding(base);
    let places = touched(base, &events);
    let mut fed = vec![None; base.housed.len()];
    for (at, run) in places.iter().zip(base.rerun(&places, &events)) {
        fed[*at] = Some(run);
    }
    fed
}

fn feeding(base: &Base<'_>) -> Vec<Event> {
    (0..base.housed.len()).filter_map(|at| base.feeding(at)).collect()
}

fn colony(look: &Look<'_>, at: usize) -> ColonyFit {
    let scales = scales::all(look, at);
    let (verdict, unite) = verdict::of(look, at);
    ColonyFit { name: look.colony(at).name.clone(), say: say::colony(look, at), scales, verdict, unite }
}

/// Alive and queenright in spring, for each member. Food is not asked about: it is given.
fn queenright(run: &Trajectory) -> impl Iterator<Item = f64> {
    run.ends.iter().map(|end| end.queenright)
}

impl Look<'_> {
    fn housed(&self, at: usize) -> &Housed {
        &self.base.housed[at]
    }

    fn colony(&self, at: usize) -> &Colony {
        &self.base.housed[at].colony
    }

    /// Whether it was treated on the day of the count in the yard file or after.
    fn treated_since_count(&self, at: usize) -> bool {
        let colony = self.colony(at);
        matches!(colony.mites, Mites::Counted { on, .. } if self.base.question.apiary.treated_since(colony, on).is_some())
    }

    fn plan(&self, at: usize) -> &ColonyPlan {
        &self.plans[at]
    }

    fn today(&self) -> Date {
        self.base.question.as_of
    }

    /// Chance of being alive and queenright in spring, once given what it is short of.
    fn fed_chance(&self, at: usize) -> f64 {
        self.fed_estimate(at).value
    }

    /// The same with its error.
    fn fed_estimate(&self, at: usize) -> Estimate {
        Estimate::mean(&queenright(self.fed_run(at)).collect::<Vec<_>>())
    }

    fn fed_run(&self, at: usize) -> &Trajectory {
        self.fed[at].as_ref().unwrap_or(&self.base.trajectories[at])
    }

    /// What some colonies gain when something is done, every colony fed: the mean of their sum and its standard error.
    fn gain(&self, done: &[Event], of: &[usize]) -> (f64, f64) {
        self.gain_of(&self.base.housed, done, of)
    }

    /// The same in hives that may have changed.
    fn gain_of(&self, housed: &[Housed], done: &[Event], of: &[usize]) -> (f64, f64) {
        let base = self.base;
        let places = beside_them(base, of.iter().copied().chain(touched(base, done)));
        let after = base.ahead.run(housed, &places, &[feeding(base), done.to_vec()].concat(), base.end_only());
        let mut gains = vec![0.0; base.question.members];
        for (at, after) in places.iter().zip(&after).filter(|(at, _)| of.contains(at)) {
            for ((gain, after), before) in gains.iter_mut().zip(queenright(after)).zip(queenright(self.fed_run(*at))) {
                *gain += after - before;
            }
        }
        mean_and_error(&gains)
    }

    fn system(&self) -> System {
        self.base.question.system
    }

    fn places(&self) -> std::ops::Range<usize> {
        0..self.base.housed.len()
    }

    fn is_nucleus(&self, at: usize) -> bool {
        Combs::of(&self.housed(at).hive) == Combs::Nucleus
    }

    /// Whether a colony is short of food worth feeding.
    fn is_short(&self, at: usize) -> bool {
        self.plan(at).shortage_kg >= WORTH_FEEDING.get()
    }

    /// Whether a colony has fewer bees than want no company.
    fn is_weak(&self, at: usize) -> bool {
        self.colony(at).bees.p50 < self.figures.company.of(self.cold)
    }

    /// The month today, as the north counts its seasons.
    fn month(&self) -> i8 {
        crate::words::season_month(self.today(), self.base.question.apiary.site.latitude.get())
    }
}
