//! Seconds of a whole yard's replay, and milliseconds of one more note. Run by `cargo xtask bench`.

#![expect(clippy::print_stdout, reason = "a bench prints its figures")]

use jiff::tz::TimeZone;
use snowhum_apiary::{
    Conditions, DeadCount, DeadPlace, Entry, Flight, Listening, Note, NoteId, Seen, Sign, UpperHoleSign, VisitId,
};
use snowhum_testkit::{Dress, changeable, colony, langstroth, place};
use snowhum_units::Fraction;
use snowhum_watch::{Noted, Parameters, Scene, Sizes, Watching, visits};
use snowhum_winter::{Environment, Housed, LANES, Yard, YardShelter};
use std::time::Instant;
use uuid::Uuid;

const COLONIES: u128 = 10;
const DAYS: usize = 254;
const NOTES: u128 = 40;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let winter = snowhum_winter::Parameters::shipped()?;
    let signs = Parameters::shipped()?;
    let shelter = YardShelter { wind: Fraction::new(0.4), sun: Fraction::new(1.0) };
    let first_day = jiff::civil::date(2025, 9, 1);
    let environment = Environment::yard(&changeable(-2.0, 24 * DAYS, 2 * LANES), place(), shelter, first_day);
    let housed: Vec<Housed> = (0..COLONIES).map(one).collect();
    let yard = Yard { environment: &environment, parameters: &winter, colonies: &housed };
    let zone = TimeZone::UTC;
    let start = zone.to_ambiguous_timestamp(first_day.at(0, 0, 0, 0)).compatible()?;
    let scene = Scene { yard: &yard, start, zone: &zone, known_hours: 0, parameters: &signs, seed: 1 };
    let notes: Vec<Note> = (0..COLONIES).flat_map(|of| (0..NOTES).map(move |n| note(start, of, n))).collect();
    let begun = Instant::now();
    let watchings = watched(&scene, &notes, None);
    println!(
        "replay: {:.2} s for {COLONIES} colonies, {} + {} particles, {} h, {NOTES} notes each ({} threads)",
        begun.elapsed().as_secs_f64(),
        Sizes::USUAL.alive,
        Sizes::USUAL.dead,
        24 * DAYS,
        rayon::current_num_threads()
    );
    // A walk past all hives on a day of flight, and the last of its notes on its own.
    let walk = |of: u128| Note {
        at: start + jiff::SignedDuration::from_hours(24 * 247 + 12),
        entries: vec![Entry::Sign(Sign::Flight(Flight::Thin)), Entry::Sign(Sign::Pollen(Seen::No))],
        ..note(start, of, NOTES)
    };
    let mut more: Vec<Note> = notes.iter().cloned().chain((1..COLONIES).map(walk)).collect();
    let walked = watched(&scene, &more, Some(watchings));
    more.push(walk(0));
    let begun = Instant::now();
    let after = watched(&scene, &more, Some(walked)).into_iter().next().ok_or("nothing was watched")?;
    let standing = after.at(&scene, None, 24 * (DAYS - 1)).standing();
    println!(
        "one more note: {:.0} ms ({:.0} in 100 alive)",
        1e3 * begun.elapsed().as_secs_f64(),
        100.0 * standing.alive
    );
    Ok(())
}

fn one(number: u128) -> Housed {
    let mut colony = colony(16_000.0, 18.0);
    colony.id.0 = Uuid::from_u128(100 + number);
    Housed { colony, hive: langstroth(Dress { lid_foam_mm: 50.0, ..Dress::BARE }), neighbour: None, stays: Vec::new() }
}

fn watched(scene: &Scene<'_>, notes: &[Note], before: Option<Vec<Watching>>) -> Vec<Watching> {
    let visits: Vec<_> = scene.yard.colonies.iter().map(|one| visits(scene, notes, one.colony.id)).collect();
    let walls = vec![None; visits.len()];
    Noted { scene, walls: &walls, visits: &visits, sizes: Sizes::USUAL }.watch(before)
}

/// Every sixth day somebody looks; every other time nothing is heard.
fn note(start: jiff::Timestamp, colony: u128, number: u128) -> Note {
    let heard = if number.is_multiple_of(2) { Seen::Yes } else { Seen::No };
    Note {
        id: NoteId(Uuid::from_u128(1_000 * colony + number)),
        visit: VisitId(Uuid::from_u128(1_000 * colony + number)),
        colony: snowhum_apiary::ColonyId(Uuid::from_u128(100 + colony)),
        at: start + jiff::SignedDuration::from_hours(24 * (6 + 6 * number as i64) + 11),
        conditions: Conditions::default(),
        entries: vec![
            Entry::Sign(Sign::Hum { heard, how: Listening::Ear }),
            Entry::Sign(Sign::DeadBees { count: DeadCount::Band(1, Some(5)), place: DeadPlace::Snow }),
            Entry::Sign(Sign::UpperHole(UpperHoleSign::Dry)),
        ],
    }
}
