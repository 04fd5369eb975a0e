//! What the next look would most likely show, so that the keeper knows beforehand what would be news.

use rayon::prelude::*;
use snowhum_apiary::{Conditions as Noted, Flight, Listening, Seen, Sign, UpperHoleSign};
use snowhum_units::{Same, Usual};
use snowhum_watch::{Estimate, Scene, View, signs};
use snowhum_winter::WarmWall;

use super::answer::Expectation;
use super::next_round::{self, Worth};
use super::thresholds::Thresholds;
use crate::dates::date_of_hour;
use crate::statistics::rounded;

/// Days to the next look.
const NEXT_LOOK_DAYS: usize = 7;
/// Hour of the day at which keepers look.
const NOON: usize = 13;

/// For every colony, from its estimate at hour `until`; and what looks of the week up to then would tell.
pub(super) fn all(
    scene: &Scene<'_>,
    estimates: &[Estimate],
    walls: &[Option<WarmWall>],
    (until, thresholds): (usize, &Thresholds),
) -> Vec<(Expectation, Vec<Worth>)> {
    let hour = (until + 24 * (NEXT_LOOK_DAYS - 1) + NOON).min(24 * scene.yard.environment.days());
    let ahead = |(estimate, wall): (&Estimate, &Option<WarmWall>)| {
        let mut estimate = estimate.clone();
        estimate.deal_weather(scene);
        let days = (0..NEXT_LOOK_DAYS).flat_map(|day| next_round::HOURS.map(|hour| until + 24 * day + hour));
        let asked = next_round::is_worth_asking(&estimate, thresholds);
        let hours = days.filter(|at| asked && *at < hour);
        let mut worths = Vec::new();
        for at in hours.chain([hour]) {
            estimate.advance(scene, wall.as_ref(), at);
            worths.extend(asked.then(|| next_round::worth(scene, &estimate)).flatten());
        }
        (one(scene, &estimate, hour), worths)
    };
    estimates.par_iter().zip(walls).map(ahead).collect()
}

fn one(scene: &Scene<'_>, estimate: &Estimate, hour: usize) -> Expectation {
    let day = scene.conditions(estimate.place(), hour, &Noted::default());
    let indoors = scene.is_indoors(estimate.place(), hour);
    let views: Vec<(View, f64)> = estimate.views().filter(|(_, mass)| *mass > 0.0).collect();
    let place = scene.dead_lie(estimate.place(), hour, &day);
    let chance = |sign: &Sign| -> f64 {
        let all: f64 = views.iter().map(|(_, mass)| mass).sum();
        let found: f64 = views
            .iter()
            .map(|(view, mass)| {
                mass * signs::visit_log_probability(std::slice::from_ref(sign), view, &day, scene.parameters).same_exp()
            })
            .sum();
        found / all.max(1e-300)
    };
    let hole = snowhum_apiary::OpeningKind::UpperHole;
    // Nobody sees rime at a hole that is shut.
    let has_hole = !indoors && estimate.hive().has_opening(hole) && estimate.openings().shut(hole).is_none();
    let flies = |sign: Flight| if indoors { 0.0 } else { chance(&Sign::Flight(sign)) };
    Expectation {
        on: date_of_hour(scene.yard.environment.first_day(), hour),
        air_c: rounded(day.air_c, 0),
        dead_bees: estimate.dead_bees_usual(scene, &day, place).map_or(Usual::NONE, |(usual, _)| usual),
        frost_at_hole: has_hole.then(|| rounded(chance(&Sign::UpperHole(UpperHoleSign::NewRime)), 2)),
        hum: rounded(chance(&Sign::Hum { heard: Seen::Yes, how: Listening::Ear }), 2),
        flight: rounded(flies(Flight::Well) + flies(Flight::Thin), 2),
        indoors,
    }
}
