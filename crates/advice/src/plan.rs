//! The winter ahead for a yard: one run for what happens, one for what is short, some for what is worth doing.

pub(crate) mod answer;

pub use answer::{ColonyPlan, PLAN_SCHEMA, PlanAnswer, StoresAnswer, SyrupLitres};

use rayon::prelude::*;
use snowhum_say::{Message, plan as say};
use snowhum_units::Range;
use snowhum_winter::{Ends, Parameters, Trajectory};

use crate::actions::situation::Situation;
use crate::actions::{self, Weighed};
use crate::ahead::base::Base;
use crate::ahead::run::{PlanQuestion, Run};
use crate::ahead::shortage::alive_in_spring;
use crate::answer::WeatherAnswer;
use crate::looks_to::LooksTo;
use crate::statistics::{mean_and_error, mean_ends, rounded, weighted_range};
use crate::sums::losses::background::law::learnt;
use crate::syrup::{Strength, sugar_for};
use crate::verdict;
use crate::verdict::answer::ColonyVerdict;
use crate::verdict::facts::{Facts, Fate};
use crate::{dead_bees, fit, left_out, over_rule, rules, seasons};

/// Members of a run, where nobody asks for another number: whole blocks, and as many on each of 96 paths of the weather.
pub const MEMBERS: usize = 192;

/// Plans the winter of a yard. The same question gives the same answer on any number of threads.
#[must_use]
pub fn plan(question: &PlanQuestion<'_>) -> PlanAnswer {
    let base = Base::found(Run::of(question));
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
        colony.dead_bees_shown = signs.as_ref().map_or_else(Vec::new, |p| {
            dead_bees::shown_by_month((&colony.dead_bees_per_day, &colony.bees), latitude, p)
        });
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
            base.trajectories.first().map_or(question.members, Trajectory::members),
            question.winter.paths.len(),
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
fn how_sure(parameters: &Parameters) -> Message {
    let lost = learnt(parameters, &[]).chance.map(|chance| (100.0 * chance).round());
    say::how_sure(lost.p10, lost.p90)
}

/// One colony's winter; its verdict is left to be decided with the whole yard's.
pub(crate) fn colony_plan(base: &Base<'_>, at: usize, weighed: &[Weighed]) -> ColonyPlan {
    let (housed, trajectory) = (&base.housed[at], &base.trajectories[at]);
    let colony = &housed.colony;
    let fed: Vec<f64> = trajectory.ends.iter().map(|end| end.fed_and_queenright(base.fed())).collect();
    let (alive_fed_queenright, error) = mean_and_error(&fed);
    let alive_fed_queenright = base.apart(at).map_or(alive_fed_queenright, |apart| apart.fed_and_queenright);
    let survive = alive_in_spring(base, at, trajectory);
    let alive = base.apart(at).map_or(survive, |apart| apart.alive);
    // Hunger that mites hid, since they left fewer bees to feed, is hunger.
    let ends = mean_ends(trajectory);
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
        hive: seasons::hive_verdict(base, at, trajectory),
        food_g_per_day: seasons::by_month(base, at, snowhum_winter::Daily::Eaten, 1_000.0),
        dead_bees_per_day: seasons::by_month(base, at, snowhum_winter::Daily::Died, 1.0),
        dead_bees_shown: Vec::new(),
        bees: seasons::bees(base, at),
        brood_begins: seasons::brood_begins(base, at),
        ends: Ends { starved: ends.starved + (survive - alive), ..ends },
        rule_of_thumb: rules::stores_rule(&base.question.apiary.site, &housed.hive),
        over_rule: over_rule::over_rule(base, at),
        nothing_helps: actions::nothing_helps(&actions),
        actions,
        verdict: ColonyVerdict::UNDECIDED,
    }
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
