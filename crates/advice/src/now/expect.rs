//! What the next look would most likely show, so that the keeper knows beforehand what would be news.

use rayon::prelude::*;
use snowhum_apiary::{Conditions as Noted, DeadCount, DeadPlace, Flight, Listening, Seen, Sign, UpperHoleSign};
use snowhum_draws::Key;
use snowhum_units::Range;
use snowhum_units::Same;
use snowhum_watch::{Answer, Conditions, Estimate, Scene, View, signs, weighted_range};
use snowhum_winter::WarmWall;

use super::Expectation;
use super::evidence::date;
use crate::statistics::rounded;

/// Days to the next look.
const NEXT_LOOK_DAYS: usize = 7;
/// Hour of the day at which keepers look.
const NOON: usize = 13;
const STREAM: u64 = 0x4558_5045_4354;

/// For every colony, from its estimate at hour `until`.
pub(super) fn all(
    scene: &Scene<'_>,
    estimates: &[Estimate],
    walls: &[Option<WarmWall>],
    until: usize,
) -> Vec<Expectation> {
    let hour = (until + 24 * (NEXT_LOOK_DAYS - 1) + NOON).min(24 * scene.yard.environment.days());
    let ahead = |(estimate, wall): (&Estimate, &Option<WarmWall>)| {
        let mut estimate = estimate.clone();
        estimate.deal_weather(scene);
        estimate.advance(scene, wall.as_ref(), hour);
        one(scene, &estimate, hour)
    };
    estimates.par_iter().zip(walls).map(ahead).collect()
}

fn one(scene: &Scene<'_>, estimate: &Estimate, hour: usize) -> Expectation {
    let day = scene.conditions(estimate.place(), hour, &Noted::default());
    let indoors = scene.is_indoors(estimate.place(), hour);
    let views: Vec<(View, f64)> = estimate.views().filter(|(_, mass)| *mass > 0.0).collect();
    let place = match indoors {
        // In a dark room the dead lie on the hive's own floor.
        true => DeadPlace::Hook,
        false if day.snow_m > 0.02 => DeadPlace::Snow,
        false => DeadPlace::Ground,
    };
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
        on: date(scene.yard.environment.first_day(), hour),
        air_c: rounded(day.air_c, 0),
        dead_bees: dead_bees(scene, &views, &day, place),
        frost_at_hole: has_hole.then(|| rounded(chance(&Sign::UpperHole(UpperHoleSign::NewRime)), 2)),
        hum: rounded(chance(&Sign::Hum { heard: Seen::Yes, how: Listening::Ear }), 2),
        flight: rounded(flies(Flight::Well) + flies(Flight::Thin), 2),
        indoors,
    }
}

/// Dead bees as this keeper would count them, one draw for each particle.
fn dead_bees(scene: &Scene<'_>, views: &[(View, f64)], day: &Conditions, place: DeadPlace) -> Range<f64> {
    let key = Key::new(scene.seed, STREAM);
    let template = [Sign::DeadBees { count: DeadCount::Counted(0), place }];
    let counts = views.iter().enumerate().map(|(at, (view, mass))| {
        let draw = |step: u32| key.uniforms([at as u32, step, 0, 0]);
        let seen = signs::sample_visit(&template, view, day, scene.parameters, draw);
        let count = seen.first().and_then(signs::answer).map_or(0.0, |answer| match answer {
            Answer::Count(least, _) => f64::from(least),
            _ => 0.0,
        });
        (count, *mass)
    });
    weighted_range(counts.collect()).unwrap_or(Range::exact(0.0))
}
