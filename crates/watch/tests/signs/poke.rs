//! A poke at the hole: an answer settles it, silence says little.

use super::*;

#[test]
fn a_live_bee_that_answers_a_poke_settles_it() {
    let answered = [Sign::Poke(Poked::Answered)];
    for air_c in [5.0, 0.0, -5.0, -10.0, -20.0, -30.0] {
        // From a colony given up by half, of few bees or many.
        for bees in [3_000.0, 10_000.0, 20_000.0] {
            let chance = after(0.5, &answered, &View { bees, ..living() }, &dead(), &frost(air_c));
            assert!(chance > 0.99, "{bees} bees at {air_c} C: {chance}");
        }
    }
    // Where robbers fly it might be one of them.
    let chance = after(0.5, &answered, &flying(living()), &flying(dead()), &mild(75.0));
    assert!((0.97..0.999).contains(&chance), "{chance}");
}

#[test]
fn silence_to_a_poke_says_little_and_less_in_the_cold() {
    let silent = |air_c| ratio(&[Sign::Poke(Poked::Silent)], &living(), &dead(), &frost(air_c));
    let (mild, frost, hard) = (silent(0.0), silent(-10.0), silent(-25.0));
    assert!(mild > 0.7 && mild < frost && frost < hard && hard < 1.0, "{mild} {frost} {hard}");
    assert!(hard > 0.95, "{hard}");
}

#[test]
fn four_silent_dry_looks_leave_it_open() {
    let silent = [SILENT, NO_DEAD, Sign::Droppings(DroppingsPlace::None), Sign::Poke(Poked::Silent)];
    for air_c in [-2.0, -8.0, -15.0] {
        let mut chance = 0.9;
        for _ in 0..4 {
            chance = after(chance, &silent, &living(), &dead(), &frost(air_c));
        }
        assert!((0.3..0.8).contains(&chance), "{chance} after four looks at {air_c} C");
    }
}

#[test]
fn a_poke_not_tried_says_nothing() {
    let not_tried = [Sign::Poke(Poked::NotTried)];
    assert_eq!(answer(&not_tried[0]), None);
    assert!((after(0.7, &not_tried, &living(), &dead(), &frost(-5.0)) - 0.7).abs() < 1e-12);
}
