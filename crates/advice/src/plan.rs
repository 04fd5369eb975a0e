//! The winter ahead for a yard: one run for what happens, one for what is short, some for what is worth doing.

use jiff::ToSpan;
use jiff::civil::Date;
use rayon::prelude::*;
use snowhum_apiary::Apiary;
use snowhum_units::{Kilogram, Range, System};
use snowhum_weather::{AirPaths, Ensemble};
use snowhum_winter::{Action, Ends, Event, Housed, Parameters, Record, Settings, Trajectory};

use crate::LooksTo;
use crate::actions::{self, Situation, Weighed};
use crate::ahead::Ahead;
use crate::answer::{ColonyPlan, PLAN_SCHEMA, PlanAnswer, StoresAnswer, SyrupLitres, WeatherAnswer};
use crate::gifts::{self, Gift};
use crate::hunger::Apart;
use crate::shortage::alive_in_spring;
use crate::statistics::{mean_and_error, mean_of_ends, rounded, weighted_range};
use crate::sums::losses::learnt;
use crate::syrup::{Strength, sugar_for};
use crate::verdict::{self, ColonyVerdict, Facts, Fate};
use crate::{dead_bees, finish, fit, hunger, left_out, over_rule, rules, seasons, shortage, yard};

/// Members of the ensemble, where nobody asks for another number: whole blocks, and as many on each of 64 paths of the weather.
pub const MEMBERS: usize = 192;

/// What a plan is asked with.
#[derive(Debug, Clone, Copy)]
pub struct PlanQuestion<'a> {
    /// The yard.
    pub apiary: &'a Apiary,
    /// Weather from the start of `as_of` to spring.
    pub winter: &'a Ensemble,
    /// Weather from high summer, for the end of feeding; begins at the start of `autumn_from`.
    pub autumn: &'a AirPaths,
    /// First day of `autumn`.
    pub autumn_from: Date,
    /// The day the plan starts.
    pub as_of: Date,
    /// First flow of the site plus 14 days.
    pub spring: Date,
    /// The model's parameters.
    pub parameters: &'a Parameters,
    /// Members of the ensemble.
    pub members: usize,
    /// Seed.
    pub seed: u64,
    /// Units for the reasons given in words.
    pub system: System,
}

/// A run that later runs are compared with.
pub(crate) struct Base<'a> {
    pub(crate) question: &'a PlanQuestion<'a>,
    pub(crate) ahead: Ahead<'a>,
    pub(crate) housed: Vec<Housed>,
    pub(crate) trajectories: Vec<Trajectory>,
    pub(crate) shortages: Vec<Kilogram>,
    /// What half of each colony's members that live eat by spring, once they have what is short.
    pub(crate) eaten: Vec<Kilogram>,
    /// Chance of each to be alive with a queen in spring, once it has what is short.
    pub(crate) queenright_if_fed: Vec<f64>,
    /// By colony, where food is short: see [`hunger::apart`].
    apart: Vec<Option<Apart>>,
    /// Frames that go from heavy hives to short ones.
    pub(crate) gifts: Vec<Option<Gift>>,
    pub(crate) finish_syrup_by: Range<Date>,
}

impl Base<'_> {
    /// What counts as fed.
    pub(crate) fn fed(&self) -> Kilogram {
        Kilogram::new(self.question.parameters.fed_in_spring.value)
    }

    /// Settings of a run whose end alone matters.
    pub(crate) fn end_only(&self) -> Settings {
        Settings { members: self.question.members, seed: self.question.seed, record: Record::End }
    }

    /// Runs some colonies again, with something done; the places are in order and hold whatever touches them.
    pub(crate) fn rerun(&self, places: &[usize], events: &[Event]) -> Vec<Trajectory> {
        self.rerun_of(self.question.members, places, events)
    }

    /// The same of the first members alone, who are those of every run.
    pub(crate) fn rerun_of(&self, members: usize, places: &[usize], events: &[Event]) -> Vec<Trajectory> {
        self.ahead.run(&self.housed, places, events, Settings { members, ..self.end_only() })
    }

    /// What colony `at` is short of, given today as what bees can take now; none where it is short of nothing.
    pub(crate) fn feeding(&self, at: usize) -> Option<Event> {
        let stores = self.shortages[at];
        let late = self.question.as_of > self.finish_syrup_by.p50;
        let action = if late { Action::SolidFeed { stores } } else { Action::Syrup { stores } };
        (stores.get() > 0.0).then_some(Event { day: 0, colony: at, action })
    }

    /// A hungry colony's chances as it stands, hunger kept apart from mites; none where food is not short.
    pub(crate) fn apart(&self, at: usize) -> Option<Apart> {
        self.apart.get(at).copied().flatten()
    }

    /// Days of the run.
    pub(crate) fn days(&self) -> usize {
        self.ahead.days()
    }

    /// Whether a day of the run lies between the winter and the summer solstice.
    pub(crate) fn after_solstice(&self, day: usize) -> bool {
        let day_of_year = self.date(day).day_of_year();
        let rising = !(172..355).contains(&day_of_year);
        rising == (self.question.apiary.site.latitude.get() >= 0.0)
    }

    /// The date of a day of the run.
    pub(crate) fn date(&self, day: usize) -> Date {
        self.question.as_of.saturating_add((day as i64).days())
    }
}

/// Plans the winter of a yard. The same question gives the same answer on any number of threads.
#[must_use]
pub fn plan(question: &PlanQuestion<'_>) -> PlanAnswer {
    let base = base_run(question);
    let weighed: Vec<Vec<Weighed>> = (0..base.housed.len())
        .into_par_iter()
        .map(|at| actions::best(&Situation { base: &base, colony: at }))
        .collect();
    let mut colonies: Vec<ColonyPlan> =
        weighed.iter().enumerate().map(|(at, own)| colony_plan(&base, at, own)).collect();
    let fit = fit::fit(&base, &colonies);
    let fitness = |at: usize| Some(&fit.as_ref()?.colonies.get(at)?.verdict);
    let facts: Vec<Facts<'_>> = weighed
        .iter()
        .enumerate()
        .map(|(at, weighed)| Facts {
            fate: Fate::Lives,
            alive: 1.0,
            alive_queenright: 1.0,
            is_shut: false,
            beside: false,
            weighed,
            fit: fitness(at),
            last: None,
        })
        .collect();
    let first = verdict::first(&base, question.as_of, LooksTo::Spring, &facts);
    let latitude = question.apiary.site.latitude.get();
    let signs = snowhum_watch::Parameters::shipped().ok();
    colonies.par_iter_mut().enumerate().for_each(|(at, colony)| {
        colony.dead_bees_shown =
            signs.as_ref().map_or_else(Vec::new, |p| dead_bees::shown_by_month(colony, latitude, p));
        colony.verdict = first.verdict(at);
        colony.nothing_helps = colony.nothing_helps && first.only_looks(at);
    });
    let apiary = question.apiary;
    PlanAnswer {
        schema: PLAN_SCHEMA.to_owned(),
        apiary: apiary.name.clone(),
        invented: apiary.invented,
        as_of: question.as_of,
        spring: question.spring,
        weather: WeatherAnswer::new(
            &question.winter.provenance,
            question.members,
            question.winter.paths.len(),
            question.system,
        ),
        currency: apiary.money.currency.clone(),
        left_out: left_out::of(question),
        how_sure: how_sure(question.parameters),
        fit,
        colonies,
        first,
    }
}

/// How far the best colony is from being sure of its spring: what real winters took from such.
fn how_sure(parameters: &Parameters) -> String {
    let lost = learnt(parameters, &[]).chance.map(|chance| (100.0 * chance).round());
    format!(
        "How sure: fitted to real winters, in which colonies counted, fed and treated were lost too, {} to {} of 100 to causes \
         that nobody names; years and yards differ more than hives (docs/VALIDATION.md, class D).",
        lost.p10, lost.p90
    )
}

pub(crate) fn base_run<'a>(question: &'a PlanQuestion<'a>) -> Base<'a> {
    run_once(question).with_food()
}

/// The plan's run alone, without what is short.
pub(crate) fn run_once<'a>(question: &'a PlanQuestion<'a>) -> Base<'a> {
    let environment = yard::environment(&question.apiary.site, question.winter, question.as_of);
    let ahead = Ahead::FromStart(Box::new(environment), question.parameters);
    Base::once(question, ahead, yard::housed_on(question.apiary, question.as_of))
}

impl<'a> Base<'a> {
    /// Runs what lies ahead once as it is, and finds what is short.
    pub(crate) fn over(question: &'a PlanQuestion<'a>, ahead: Ahead<'a>, housed: Vec<Housed>) -> Self {
        Self::once(question, ahead, housed).with_food()
    }

    /// Finds what is short, and who can give some of it.
    fn with_food(mut self) -> Self {
        let shortages = shortage::shortages(&self);
        self.apart = hunger::apart(&self, &shortages);
        (self.shortages, self.eaten) = (shortages.amounts, shortages.eaten);
        self.queenright_if_fed = shortages.queenright;
        self.gifts = gifts::gifts(&self);
        self
    }

    /// Runs what lies ahead once as it is.
    fn once(question: &'a PlanQuestion<'a>, ahead: Ahead<'a>, housed: Vec<Housed>) -> Self {
        let finish_syrup_by = finish::finish_by(question.autumn, question.autumn_from);
        let mut base = Self {
            question,
            ahead,
            housed,
            trajectories: Vec::new(),
            shortages: Vec::new(),
            eaten: Vec::new(),
            queenright_if_fed: Vec::new(),
            apart: Vec::new(),
            gifts: Vec::new(),
            finish_syrup_by,
        };
        let settings = Settings { record: Record::Days, ..base.end_only() };
        let places: Vec<usize> = (0..base.housed.len()).collect();
        base.trajectories = base.ahead.run(&base.housed, &places, &[], settings);
        base
    }
}

/// One colony's winter; its verdict is left to be decided with the whole yard's.
pub(crate) fn colony_plan(base: &Base<'_>, at: usize, weighed: &[Weighed]) -> ColonyPlan {
    let (housed, trajectory) = (&base.housed[at], &base.trajectories[at]);
    let colony = &housed.colony;
    let fed: Vec<f64> = trajectory.ends.iter().map(|end| end.fed_and_queenright(base.fed())).collect();
    let (alive_fed_queenright, error) = mean_and_error(&fed);
    let alive_fed_queenright = base.apart(at).map_or(alive_fed_queenright, |apart| apart.fed_and_queenright);
    let survive = alive_in_spring(trajectory);
    let alive = base.apart(at).map_or(survive, |apart| apart.alive);
    let sugar = sugar_for(base.shortages[at]);
    let actions: Vec<_> = weighed.iter().map(|weighed| weighed.answer.clone()).collect();
    ColonyPlan {
        name: colony.name.clone(),
        quick_start: colony.quick_start,
        alive_in_spring: alive,
        alive_fed_queenright,
        plus_minus: 2.0 * error,
        alive_queenright_if_fed: base.queenright_if_fed[at],
        stores_kg: stores(base, at),
        runs_out: seasons::runs_out(base, at),
        shortage_kg: rounded(base.shortages[at].get(), 1),
        sugar_kg: rounded(sugar.get(), 1),
        syrup_l: SyrupLitres {
            three_to_two: rounded(Strength::ThreeToTwo.syrup_with(sugar).get() * 1e3, 1),
            two_to_one: rounded(Strength::TwoToOne.syrup_with(sugar).get() * 1e3, 1),
        },
        finish_syrup_by: base.finish_syrup_by,
        too_late_for_syrup: base.question.as_of > base.finish_syrup_by.p50,
        hive: seasons::hive_verdict(base, at),
        food_g_per_day: seasons::by_month(base, at, snowhum_winter::Daily::Eaten, 1_000.0),
        dead_bees_per_day: seasons::by_month(base, at, snowhum_winter::Daily::Died, 1.0),
        dead_bees_shown: Vec::new(),
        bees: seasons::bees(base, at),
        brood_begins: seasons::brood_begins(base, at),
        ends: ends(trajectory, survive - alive),
        rule_of_thumb: rules::stores_rule(&base.question.apiary.site, &housed.hive),
        over_rule: over_rule::over_rule(base, at),
        nothing_helps: actions::nothing_helps(&actions),
        actions,
        verdict: ColonyVerdict::UNDECIDED,
    }
}

/// The chances of each end; `hidden` is hunger that mites hid, since they left fewer bees to feed.
fn ends(trajectory: &Trajectory, hidden: f64) -> Ends {
    let mut ends =
        Ends::from_causes(std::array::from_fn(|cause| mean_of_ends(trajectory, |end| end.ended.by_cause()[cause].1)));
    ends.starved += hidden;
    ends
}

fn stores(base: &Base<'_>, at: usize) -> StoresAnswer {
    let stores = &base.housed[at].colony.stores;
    let now = stores.total.p50.get();
    let reach = stores.place.touched + stores.place.above + stores.place.beside;
    let weighted: Vec<(f64, f64)> =
        base.trajectories[at].ends.iter().map(|end| (end.stores.get(), end.alive())).collect();
    StoresAnswer {
        now: rounded(now, 1),
        reachable_now: rounded(now * reach, 1),
        spring: weighted_range(&weighted).unwrap_or(Range::exact(0.0)).map(|kg| rounded(kg, 1)),
    }
}
