//! What keepers and studies know of real winters, asked of the plan a keeper reads. Invented yards; the bands are the studies'.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use jiff::civil::{Date, date};
use snowhum_advice::plan::ColonyPlan;
use snowhum_advice::{PlanQuestion, plan};
use snowhum_winter::Parameters;

use crate::common;

/// Latitude, longitude, metres above the sea, zone.
type Place = (f64, f64, f64, &'static str);

const GERMANY: Place = (51.5, 9.9, 200.0, "Europe/Berlin");
const ONTARIO: Place = (43.5, -80.2, 330.0, "America/Toronto");
const ALPS: Place = (47.0, 9.5, 1_100.0, "Europe/Zurich");
const LAKES: Place = (61.7, 27.3, 105.0, "Europe/Helsinki");
const BOTHNIA: Place = (65.0, 25.5, 20.0, "Europe/Helsinki");

const LANGSTROTH: &str =
    "kind = \"Langstroth 10\"\nboxes = [\"deep\", \"deep\"]\nlid = [\"plywood 10 mm\", \"foam 50 mm\"]";
const DADANT: &str =
    "kind = \"Dadant-Blatt, 12 frames\"\nboxes = [\"brood\"]\nlid = [\"plywood 10 mm\", \"foam 50 mm\"]";

/// A counted, treated colony with a young queen, of so many frames of bees and so much food.
fn counted(frames: f64, kg: f64) -> String {
    format!(
        "frames_of_bees = {frames}\nstores = \"{kg} kg\"\nmites = {{ found = 2, bees = 300, on = 2025-09-01 }}\nqueen_year = 2025\nqueen_seen = true\ntroubles = \"none\""
    )
}

fn planned((latitude, longitude, elevation, zone): Place, hive: &str, as_of: Date, colony: &str) -> ColonyPlan {
    let text = format!(
        "[apiary]\nname = \"Invented\"\ninvented = true\nas_of = {as_of}\n[site]\nlatitude = {latitude}\nlongitude = {longitude}\nelevation = \"{elevation} m\"\nzone = \"{zone}\"\nshelter = \"windbreak\"\nexposure = \"partial\"\n[[hive]]\nname = \"One\"\n{hive}\nentrance = \"reduced\"\nguard = \"slot 8 mm\"\n[[colony]]\nname = \"One\"\nhive = \"One\"\n{colony}\n"
    );
    let apiary = snowhum_apiary::read(&text, "invented").unwrap().0;
    let (winter, autumn, spring) = common::weather(&apiary);
    let question = PlanQuestion {
        apiary: &apiary,
        winter: &winter,
        autumn: &autumn,
        autumn_from: common::autumn_from(&apiary),
        as_of,
        spring,
        parameters: &Parameters::shipped().unwrap(),
        members: 256,
        seed: 1,
    };
    plan(&question).colonies.remove(0)
}

#[test]
fn a_well_kept_colony_of_ordinary_strength_is_lost_in_six_to_eighteen_winters_of_a_hundred() {
    let told = [GERMANY, ONTARIO].into_iter().flat_map(|place| [(place, date(2025, 10, 5)), (place, date(2025, 9, 5))]);
    let lost: Vec<_> = told
        .map(|(place, on)| {
            let one = planned(place, LANGSTROTH, on, &counted(9.0, 28.0));
            (place, on, 1.0 - one.alive_in_spring)
        })
        .collect();
    assert!(lost.iter().all(|(.., lost)| (0.06..=0.18).contains(lost)), "{lost:?}");
}

#[test]
fn a_textbook_strong_colony_in_the_mountains_is_not_condemned() {
    let one = planned(ALPS, DADANT, date(2025, 10, 1), &counted(12.0, 25.0));
    assert!(one.alive_in_spring >= 0.8 && one.alive_fed_queenright >= 0.7, "{one:?}");
}

#[test]
fn eight_kilograms_in_the_far_north_are_gone_in_march_or_april_of_most_winters() {
    let spring = date(2026, 3, 1)..date(2026, 5, 1);
    for place in [LAKES, BOTHNIA] {
        let one = planned(place, LANGSTROTH, date(2025, 10, 1), &counted(9.0, 8.0));
        let half = one.runs_out.p50;
        assert!(half.is_some_and(|half| spring.contains(&half)), "{place:?}: {half:?}, {:?}", one.ends);
    }
}
