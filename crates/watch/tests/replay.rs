//! What a watch promises of notes: nothing hangs on the order they come in, on what was withdrawn, or on threads.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod world;

use jiff::{SignedDuration, Timestamp};
use snowhum_apiary::{
    Act, ColonyId, Conditions, DeadCount, DeadPlace, Entry, Feed, Flight, Listening, Note, NoteId, QueenState, Seen,
    Sign, UpperHoleSign, VisitId, Weighing,
};
use snowhum_draws::Key;
use snowhum_testkit::colony;
use snowhum_units::{Kelvin, Kilogram};
use snowhum_watch::{Estimate, Noted, Scene, Sizes, Standing, Watching, signs, visits, weighted_range};
use snowhum_winter::{Environment, Record};
use uuid::Uuid;
use world::{DAYS, World, environment, known, uncertain_colony, winters};

const SIZES: Sizes = Sizes { alive: 256, dead: 100 };

fn note(world: &World, scene: &Scene<'_>, number: u128, day: i64, entries: Vec<Entry>) -> Note {
    Note {
        id: NoteId(Uuid::from_u128(number)),
        visit: VisitId(Uuid::from_u128(1_000 + number)),
        colony: world.colonies[0].colony.id,
        at: at(scene, day),
        conditions: Conditions { air_k: Some(Kelvin::from_celsius(-5.0)), ..Conditions::default() },
        entries,
    }
}

fn at(scene: &Scene<'_>, day: i64) -> Timestamp {
    scene.start + SignedDuration::from_hours(24 * day + 11)
}

fn dead(n: u32) -> Entry {
    Entry::Sign(Sign::DeadBees { count: DeadCount::Counted(n), place: DeadPlace::Snow })
}

fn hum(heard: Seen) -> Entry {
    Entry::Sign(Sign::Hum { heard, how: Listening::Ear })
}

fn stores(kg: f64) -> Entry {
    let plus_minus_kg = Kilogram::new(1.5);
    Entry::Sign(Sign::Weight(Weighing::Stores { mass_kg: Kilogram::new(kg), plus_minus_kg }))
}

fn log(world: &World, scene: &Scene<'_>) -> Vec<Note> {
    vec![
        note(world, scene, 1, 30, vec![dead(12), Entry::Sign(Sign::UpperHole(UpperHoleSign::NewRime))]),
        note(world, scene, 2, 55, vec![hum(Seen::No), dead(0)]),
        note(world, scene, 3, 80, vec![stores(5.0), hum(Seen::Yes)]),
        note(world, scene, 4, 90, vec![Entry::Act(Act::Fed { feed: Feed::Fondant, mass_kg: Kilogram::new(2.5) })]),
        note(world, scene, 5, 120, vec![hum(Seen::No), dead(3)]),
    ]
}

/// Runs `test` in a yard under weather that is known.
fn in_known_weather(test: impl Fn(&World, &Scene<'_>)) {
    let world = World::of(uncertain_colony());
    let outside: Environment = known(&winters(1, 5), 0);
    let yard = world.yard(&outside);
    test(&world, &world.scene(&yard, 24 * DAYS, 3));
}

fn replayed(world: &World, scene: &Scene<'_>, notes: &[Note]) -> Watching {
    watched(world, scene, notes, None).remove(0)
}

/// All colonies of a world, gone on with from what was watched before.
fn watched(world: &World, scene: &Scene<'_>, notes: &[Note], before: Option<Vec<Watching>>) -> Vec<Watching> {
    let visits: Vec<_> = world.colonies.iter().map(|housed| visits(scene, notes, housed.colony.id)).collect();
    let walls = vec![None; visits.len()];
    Noted { scene, walls: &walls, visits: &visits, sizes: SIZES }.watch(before)
}

fn at_the_end(scene: &Scene<'_>, watching: &Watching) -> Standing {
    watching.at(scene, None, 24 * (DAYS - 10)).standing()
}

#[test]
fn the_order_in_which_notes_are_entered_does_not_matter() {
    in_known_weather(|world, scene| {
        let notes = log(world, scene);
        let mut shuffled = notes.clone();
        shuffled.reverse();
        shuffled.swap(0, 2);
        let (a, b) = (replayed(world, scene, &notes), replayed(world, scene, &shuffled));
        assert_eq!(a.moved, b.moved);
        assert_eq!(at_the_end(scene, &a), at_the_end(scene, &b));
    });
}

#[test]
fn a_note_made_and_withdrawn_leaves_no_trace() {
    in_known_weather(|world, scene| {
        let notes = log(world, scene);
        let before = watched(world, scene, &notes, None);
        let mut with_one_more = notes.clone();
        with_one_more.push(note(world, scene, 9, 60, vec![dead(400)]));
        let more = watched(world, scene, &with_one_more, Some(before.clone()));
        assert_ne!(at_the_end(scene, &more[0]), at_the_end(scene, &before[0]));
        let withdrawn = watched(world, scene, &notes, Some(more));
        assert_eq!(withdrawn[0].moved, before[0].moved);
        assert_eq!(at_the_end(scene, &withdrawn[0]), at_the_end(scene, &before[0]));
    });
}

#[test]
fn going_on_from_the_last_visit_is_the_same_as_a_replay() {
    in_known_weather(|world, scene| {
        let notes = log(world, scene);
        let first = watched(world, scene, &notes[..3], None);
        let went_on = watched(world, scene, &notes, Some(first));
        assert_eq!(at_the_end(scene, &went_on[0]), at_the_end(scene, &replayed(world, scene, &notes)));
    });
}

#[test]
fn a_note_made_before_bees_joined_and_stored_after_is_weighed_in_its_place() {
    let mut world = World::of(uncertain_colony());
    let mut other = world.colonies[0].clone();
    other.colony.id = ColonyId(Uuid::from_u128(77));
    world.colonies.push(other);
    let outside = known(&winters(1, 5), 0);
    let yard = world.yard(&outside);
    let (world, scene) = (&world, &world.scene(&yard, 24 * DAYS, 3));
    let into = world.colonies[0].colony.id;
    let of_other = |number, day, entry| Note {
        colony: world.colonies[1].colony.id,
        ..note(world, scene, number, day, vec![entry])
    };
    let put_to_it = [of_other(1, 20, dead(4)), of_other(2, 60, Entry::Act(Act::UnitedInto(into)))];
    let early = [&put_to_it[..], &[note(world, scene, 3, 30, vec![stores(6.0)])]].concat();
    let late = [&early[..], &[note(world, scene, 4, 45, vec![dead(40)])]].concat();
    let replay = |notes: &[Note]| watched(world, scene, notes, None);
    let went_on = watched(world, scene, &late, Some(replay(&early)));
    assert_ne!(at_the_end(scene, &replay(&early)[0]), at_the_end(scene, &replay(&late)[0]));
    assert_eq!(at_the_end(scene, &went_on[0]), at_the_end(scene, &replay(&late)[0]));
    let alone = [&early[2..], &[note(world, scene, 4, 45, vec![dead(40)])]].concat();
    let parted = watched(world, scene, &alone, Some(went_on));
    assert_eq!(at_the_end(scene, &parted[0]), at_the_end(scene, &replay(&alone)[0]));
}

#[test]
fn words_alone_move_nothing() {
    in_known_weather(|world, scene| {
        let notes = log(world, scene);
        let mut with_words = notes.clone();
        with_words.push(note(world, scene, 8, 70, vec![Entry::Words("snow up to the knees".to_owned())]));
        let (a, b) = (replayed(world, scene, &notes), replayed(world, scene, &with_words));
        assert_eq!(at_the_end(scene, &a), at_the_end(scene, &b));
    });
}

#[test]
fn an_outlook_is_the_same_on_any_number_of_threads() {
    in_known_weather(|world, scene| {
        let estimate = replayed(world, scene, &log(world, scene)).at(scene, None, 24 * 125);
        let run = |threads: usize| {
            let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
            pool.install(|| estimate.outlook(scene, 96).run(scene, None, &[], Record::End).ends)
        };
        assert_eq!(run(1), run(2));
    });
}

#[test]
fn food_noted_as_given_is_there_and_a_weighing_moves_the_food_towards_it() {
    in_known_weather(|world, scene| {
        let notes = log(world, scene);
        let watching = replayed(world, scene, &notes);
        let food = |standing: &Standing| standing.stores_kg.unwrap().p50;
        let weighed = &watching.moved[2];
        assert!((food(&weighed.after) - 5.0).abs() <= (food(&weighed.before) - 5.0).abs() + 0.05, "{weighed:?}");
        let fed = &watching.moved[3];
        assert!((food(&fed.after) - food(&fed.before) - 2.73).abs() < 0.2, "{fed:?}");
    });
}

#[test]
fn a_weighing_that_nothing_explains_is_told_and_moves_little() {
    in_known_weather(|world, scene| {
        let mut notes = log(world, scene)[..2].to_vec();
        notes.push(note(world, scene, 7, 60, vec![stores(95.0)]));
        let watching = replayed(world, scene, &notes);
        let slip = watching.moved.last().unwrap();
        assert!(slip.unexplained);
        assert!((slip.after.alive - slip.before.alive).abs() < 0.1, "{slip:?}");
        let food = |standing: &Standing| standing.stores_kg.unwrap().p50;
        assert!((food(&slip.after) - food(&slip.before)).abs() < 2.0, "{slip:?}");
        assert!(watching.moved[..2].iter().all(|moved| !moved.unexplained));
    });
}

#[test]
fn silence_worries_and_does_not_bury() {
    in_known_weather(|world, scene| {
        let quiet = |number: u128, day: i64| note(world, scene, number, day, vec![hum(Seen::No), dead(0)]);
        let notes: Vec<Note> = [60, 74, 88].iter().zip(20..).map(|(day, number)| quiet(number, *day)).collect();
        let watching = replayed(world, scene, &notes);
        let mut before = watching.moved[0].before.alive;
        for moved in &watching.moved {
            assert!(moved.after.alive < moved.before.alive, "{moved:?}");
            assert!(moved.before.alive <= before + 1e-9);
            before = moved.after.alive;
        }
        let odds = |p: f64| p / (1.0 - p);
        // What three visits do to odds of nine to one, whatever the hazards in between did.
        let moved: f64 = watching.moved.iter().map(|m| odds(m.after.alive) / odds(m.before.alive)).product();
        let left = 9.0 * moved / (1.0 + 9.0 * moved);
        assert!(left > 0.3, "{left:.2}");
    });
}

#[test]
fn a_cleansing_flight_or_pollen_seen_says_alive_today() {
    for sign in [Sign::Flight(Flight::Well), Sign::Flight(Flight::Thin), Sign::Pollen(Seen::Yes)] {
        in_known_weather(|world, scene| {
            let mut note = note(world, scene, 30, 170, vec![Entry::Sign(sign.clone())]);
            note.conditions.air_k = Some(Kelvin::from_celsius(10.0));
            let moved = replayed(world, scene, &[note]).moved.remove(0);
            let odds = |p: f64| p / (1.0 - p);
            let factor = odds(moved.after.alive) / odds(moved.before.alive);
            let from_80 = 4.0 * factor / (1.0 + 4.0 * factor);
            assert!(from_80 > 0.97, "{sign:?}: {from_80:.3} {moved:?}");
        });
    }
}

#[test]
fn unknown_weather_is_weighed_with_the_rest() {
    let world = World::of(uncertain_colony());
    let outside = environment(&winters(64, 5));
    let yard = world.yard(&outside);
    let scene = world.scene(&yard, 0, 3);
    let watching = replayed(&world, &scene, &log(&world, &scene));
    let standing = at_the_end(&scene, &watching);
    assert!((0.0..=1.0).contains(&standing.alive) && standing.alive > 0.02, "{standing:?}");
    let ended: f64 = standing.ended.total();
    assert!((standing.alive + ended - 1.0).abs() < 1e-9);
}

/// The dead bees that half of the living colonies thought possible would show fewer than, as this keeper counts.
fn usual_count(scene: &Scene<'_>, estimate: &Estimate, day: &snowhum_watch::Conditions) -> u32 {
    let key = Key::new(1, 77);
    let template = [Sign::DeadBees { count: DeadCount::Counted(0), place: DeadPlace::Snow }];
    let living = estimate.views().filter(|(view, _)| view.life.is_alive());
    let counts = living.enumerate().map(|(at, (view, mass))| {
        let draw = |step: u32| key.uniforms([at as u32, step, 0, 0]);
        let seen = signs::sample_visit(&template, &view, day, scene.parameters, draw);
        match seen.first() {
            Some(Sign::DeadBees { count, .. }) => (f64::from(count.bounds().0), mass),
            _ => (0.0, mass),
        }
    });
    weighted_range(counts.collect()).unwrap().p50 as u32
}

#[test]
fn a_living_colony_that_shows_the_usual_is_never_given_up() {
    let world = World::of(colony(12_000.0, 20.0));
    let outside = known(&winters(1, 5), 0);
    let yard = world.yard(&outside);
    let scene = world.scene(&yard, 24 * DAYS, 3);
    let mut estimate = Estimate::begin(&scene, 0, SIZES).unwrap();
    let mut least = 1.0f64;
    for visit in 0..12 {
        let hour = 24 * (10 + 14 * visit) + 11;
        estimate.advance(&scene, None, hour);
        let day = scene.conditions(0, hour, &Conditions::default());
        let count = DeadCount::Counted(usual_count(&scene, &estimate, &day));
        // A hum is heard in fewer than half of all visits: the usual visit hears none.
        let seen =
            [Sign::DeadBees { count, place: DeadPlace::Snow }, Sign::Hum { heard: Seen::No, how: Listening::Ear }];
        estimate.look(&scene, &day, &seen);
        least = least.min(estimate.standing().alive);
    }
    assert!(least > 0.02, "{least:.4}");
}

#[test]
fn a_queen_told_is_known_and_the_last_word_counts() {
    in_known_weather(|world, scene| {
        let told = |number, day, state| note(world, scene, number, day, vec![Entry::Act(Act::QueenFound(state))]);
        let share = |notes: &[Note]| {
            let standing = replayed(world, scene, notes).at(scene, None, 24 * 21).standing();
            standing.queenright / standing.alive
        };
        for state in [QueenState::None, QueenState::DroneLayer, QueenState::LayingWorkers, QueenState::Virgin] {
            assert!(share(&[told(1, 20, state)]) < 1e-9, "{state:?}: nothing mates in late October");
        }
        let untold = share(&[]);
        assert!((0.5..1.0).contains(&untold), "{untold}");
        let laying = share(&[told(1, 10, QueenState::None), told(2, 20, QueenState::Laying)]);
        assert!(laying > untold, "{laying} {untold}");
    });
}

#[test]
fn snow_swept_off_the_roof_is_felt_and_sweeping_a_bare_roof_is_not() {
    in_known_weather(|world, scene| {
        let after = |day: i64, act: Act| {
            let notes = [note(world, scene, 1, day, vec![Entry::Act(act)])];
            replayed(world, scene, &notes).at(scene, None, 24 * (day as usize + 3)).standing()
        };
        let swept = |day| after(day, Act::Swept);
        // An act that does nothing: it takes the same way through the model.
        let looked = |day| after(day, Act::Fed { feed: Feed::Fondant, mass_kg: Kilogram::ZERO });
        let snow = |day: i64| scene.yard.environment.outside(24 * day as usize + 11, 0).unwrap().snow.get();
        let deepest = (0..DAYS as i64 - 10).max_by(|a, b| snow(*a).total_cmp(&snow(*b))).unwrap();
        assert!(snow(0) <= 0.0 && snow(deepest) > 0.1, "{} {}", snow(0), snow(deepest));
        assert_eq!(swept(0), looked(0));
        assert_ne!(swept(deepest), looked(deepest));
    });
}
