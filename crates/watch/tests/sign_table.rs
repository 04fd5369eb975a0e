//! The small table a phone carries says the same as the whole filter.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

mod world;

use snowhum_apiary::{Entry, Listening, Seen, Sign};
use snowhum_draws::Key;
use snowhum_watch::signs::answers_like;
use snowhum_watch::{Conditions, Estimate, Scene, SignTable, Sizes};
use world::{DAYS, World, known, uncertain_colony, winters};

/// What the round asks, question by question.
fn questions() -> Vec<Vec<Sign>> {
    let asked = ["dead=1-5", "hole=dry", "hum=heard", "poke=silent", "flight=none", "pollen=no"];
    let asked = asked.map(|written| Entry::read(written, &|_| None).unwrap());
    asked
        .iter()
        .filter_map(|entry| if let Entry::Sign(sign) = entry { Some(answers_like(sign)) } else { None })
        .collect()
}

/// An estimate of a doubtful colony in one of its winters, after a look that told something.
fn doubtful(scene: &Scene<'_>, day: usize) -> (Estimate, Conditions) {
    let mut estimate = Estimate::begin(scene, 0, Sizes::USUAL).unwrap();
    estimate.advance(scene, None, 24 * 40 + 13);
    let silent = [Sign::Hum { heard: Seen::No, how: Listening::Ear }];
    let before = scene.conditions(0, 24 * 40 + 13, &Default::default());
    estimate.look(scene, &before, &silent);
    estimate.advance(scene, None, 24 * day + 13);
    (estimate, scene.conditions(0, 24 * day + 13, &Default::default()))
}

#[test]
fn the_table_multiplied_gives_the_filters_chance_of_life_to_one_in_a_hundred() {
    let world = World::of(uncertain_colony());
    let questions = questions();
    let asked: Vec<Sign> = questions.concat();
    let paths = winters(3, 5);
    let (mut worst, mut moved) = (0.0_f64, 0);
    for (path, day) in [(0, 75), (1, 120), (2, 165)] {
        let outside = known(&paths, path);
        let yard = world.yard(&outside);
        let scene = world.scene(&yard, 24 * DAYS, 3);
        let (estimate, conditions) = doubtful(&scene, day);
        let table = estimate.sign_table(&scene, &conditions, &asked, 1);
        assert!((table.prior() - estimate.standing().alive).abs() < 1e-9);
        for round in 0..40 {
            let seen = tapped(&questions, round);
            let by_table = table.alive(&columns(&table, &seen), &[]);
            let mut weighed = estimate.clone();
            weighed.weigh(&scene, &conditions, &seen);
            let by_filter = weighed.standing().alive;
            worst = worst.max((by_table - by_filter).abs());
            assert!((by_table - by_filter).abs() < 0.01, "day {day}: {by_table} for {by_filter} after {seen:?}");
            moved += usize::from((by_filter - table.prior()).abs() > 0.02);
        }
    }
    assert!(moved > 40, "only {moved} looks moved anything: nothing is tested");
    println!("worst {worst:.4}");
}

#[test]
fn a_poke_tells_more_in_mild_air_than_in_hard_frost_and_pollen_in_midwinter_tells_nothing() {
    let world = World::of(uncertain_colony());
    let outside = known(&winters(1, 5), 0);
    let yard = world.yard(&outside);
    let scene = world.scene(&yard, 24 * DAYS, 3);
    let (estimate, conditions) = doubtful(&scene, 120);
    let questions = questions();
    let worth = |air_c: f64, question: usize, nth: usize| {
        let table = estimate.sign_table(&scene, &Conditions { air_c, ..conditions }, &questions.concat(), nth);
        table.information(&columns(&table, &questions[question]))
    };
    let (poke, pollen) = (3, 5);
    assert!(worth(2.0, poke, 1) > 2.0 * worth(-20.0, poke, 1));
    assert!((0.0..1e-3).contains(&worth(-5.0, pollen, 1)));
    // Asked of every eighth particle it is much the same.
    let (all, few) = (worth(2.0, poke, 1), worth(2.0, poke, 8));
    assert!((few - all).abs() < 0.3 * all, "{few} for {all}");
}

fn columns(table: &SignTable, seen: &[Sign]) -> Vec<usize> {
    seen.iter().map(|sign| table.columns.iter().position(|column| column.sign == *sign).unwrap()).collect()
}

/// Answers to some of the questions.
fn tapped(questions: &[Vec<Sign>], round: u32) -> Vec<Sign> {
    let key = Key::new(77, 0);
    let answer = |(at, question): (usize, &Vec<Sign>)| {
        let [u, which, ..] = key.uniforms([round, at as u32, 0, 0]);
        (u < 0.5).then(|| question[(which * question.len() as f64) as usize].clone())
    };
    questions.iter().enumerate().filter_map(answer).collect()
}
