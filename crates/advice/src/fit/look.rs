//! A yard looked at before winter: what every scale and verdict of it is reckoned from.

use jiff::civil::Date;
use snowhum_apiary::{Colony, Combs, Mites};
use snowhum_winter::{Event, Housed, Trajectory};

use crate::ahead::base::Base;
use crate::ahead::shortage::WORTH_FEEDING;
use crate::plan::answer::ColonyPlan;
use crate::seasons::season_month;
use crate::site::dates;
use crate::site::dates::SiteDates;
use crate::site::figures::{Country, Figures};
use crate::site::health::Health;
use crate::statistics::Estimate;

/// A yard looked at before winter, with what the plan computed of it.
pub(crate) struct Look<'a> {
    pub(super) base: &'a Base<'a>,
    pub(super) plans: &'a [ColonyPlan],
    pub(super) figures: Figures,
    pub(super) dates: SiteDates,
    pub(super) health: Health,
    pub(super) cold: Country,
    /// The same winter with every colony given what it is short of today; none where nothing is short.
    pub(super) fed: Vec<Option<Trajectory>>,
    /// The fortnight's mean of the daily maximum on the plan's first day, °C.
    pub(super) warmth_c: f64,
}

/// Every colony given what it is short of today, as syrup or, where it is too late for that, as solid feed.
fn fed(base: &Base<'_>) -> Vec<Option<Trajectory>> {
    let events = feeding(base);
    let places = base.touched(&events);
    let mut fed = vec![None; base.housed.len()];
    for (at, run) in places.iter().zip(base.rerun(&places, &events)) {
        fed[*at] = Some(run);
    }
    fed
}

fn feeding(base: &Base<'_>) -> Vec<Event> {
    (0..base.housed.len()).filter_map(|at| base.feeding(at)).collect()
}

/// Alive and queenright in spring, for each member. Food is not asked about: it is given.
fn queenright(run: &Trajectory) -> impl Iterator<Item = f64> {
    run.ends.iter().map(|end| end.queenright)
}

impl<'a> Look<'a> {
    /// None only if the program's own table is broken.
    pub(super) fn at(base: &'a Base<'a>, plans: &'a [ColonyPlan]) -> Option<Self> {
        let figures = Figures::shipped()?;
        let dates = SiteDates::by(base, &figures);
        let cold = figures.cold_of(dates::coldest_month(base));
        let health = Health::by(base, &figures, &dates);
        Some(Self { base, plans, dates, health, cold, fed: fed(base), warmth_c: dates::warmth(base), figures })
    }

    pub(super) fn housed(&self, at: usize) -> &Housed {
        &self.base.housed[at]
    }

    pub(super) fn colony(&self, at: usize) -> &Colony {
        &self.base.housed[at].colony
    }

    /// Whether it was treated on the day of the count in the yard file or after.
    pub(super) fn treated_since_count(&self, at: usize) -> bool {
        let colony = self.colony(at);
        matches!(colony.mites, Mites::Counted { on, .. } if self.base.question.apiary.treated_since(colony, on).is_some())
    }

    pub(super) fn plan(&self, at: usize) -> &ColonyPlan {
        &self.plans[at]
    }

    pub(super) fn today(&self) -> Date {
        self.base.question.as_of
    }

    /// Chance of being alive and queenright in spring, once given what it is short of.
    pub(super) fn fed_chance(&self, at: usize) -> f64 {
        self.fed_estimate(at).value
    }

    /// The same with its error.
    pub(super) fn fed_estimate(&self, at: usize) -> Estimate {
        self.base.mean_by_all(&[at], &queenright(self.fed_run(at)).collect::<Vec<_>>())
    }

    pub(super) fn fed_run(&self, at: usize) -> &Trajectory {
        self.fed[at].as_ref().unwrap_or(&self.base.trajectories[at])
    }

    /// What some colonies gain when something is done, every colony fed: the mean of their sum and its standard error.
    pub(super) fn gain(&self, done: &[Event], of: &[usize]) -> (f64, f64) {
        self.gain_of(&self.base.housed, done, of)
    }

    /// The same in hives that may have changed.
    pub(super) fn gain_of(&self, housed: &[Housed], done: &[Event], of: &[usize]) -> (f64, f64) {
        let base = self.base;
        let places = base.and_warmed(of.iter().copied().chain(base.touched(done)));
        let after = base.ahead.run(housed, &places, &[feeding(base), done.to_vec()].concat(), base.end_only());
        let mut gains = vec![0.0; base.question.members];
        for (at, after) in places.iter().zip(&after).filter(|(at, _)| of.contains(at)) {
            for ((gain, after), before) in gains.iter_mut().zip(queenright(after)).zip(queenright(self.fed_run(*at))) {
                *gain += after - before;
            }
        }
        let found = base.mean_by_all(of, &gains);
        (found.value, found.error)
    }

    pub(super) fn places(&self) -> std::ops::Range<usize> {
        0..self.base.housed.len()
    }

    pub(super) fn is_nucleus(&self, at: usize) -> bool {
        Combs::of(&self.housed(at).hive) == Combs::Nucleus
    }

    /// Whether a colony is short of food worth feeding.
    pub(super) fn is_short(&self, at: usize) -> bool {
        self.plan(at).shortage_kg >= WORTH_FEEDING.get()
    }

    /// Whether a colony has fewer bees than want no company.
    pub(super) fn is_weak(&self, at: usize) -> bool {
        self.colony(at).bees.p50 < self.figures.company.of(self.cold)
    }

    /// The month today, as the north counts its seasons.
    pub(super) fn month(&self) -> i8 {
        season_month(self.today(), self.base.question.apiary.site.latitude.get())
    }
}
