//! What a yard's own winters say of losses to what nobody names, against sums made outside the program and against plain
//! brute force. Parameters are set here, so that no figure hangs on the shipped ones.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_advice::sums::losses::{Background, Learnt, OwnWinter, background, learnt};
use snowhum_say::Tongue;
use snowhum_winter::{JointDraw, Parameter, Parameters};

/// Winters as colonies at risk and lost.
type Counts = &'static [(u32, u32)];

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn winters(counts: &[(u32, u32)]) -> Vec<OwnWinter> {
    counts.iter().map(|(at_risk, lost)| OwnWinter { at_risk: *at_risk, lost: *lost, cause_not_told: 0 }).collect()
}

fn range(parameter: &mut Parameter, [low, value, high]: [f64; 3]) {
    (parameter.low, parameter.value, parameter.high, parameter.varies) = (Some(low), value, Some(high), true);
}

/// The ranges the outside sums were made with, drawn independently.
fn ranges() -> Parameters {
    let mut parameters = Parameters::shipped().unwrap();
    range(&mut parameters.background_loss, [0.04, 0.08, 0.15]);
    range(&mut parameters.background_by_year, [0.25, 0.4, 0.65]);
    range(&mut parameters.background_by_yard, [0.3, 0.6, 1.0]);
    parameters.joint.rows.clear();
    parameters
}

/// The middles of the same ranges, known exactly, with a spread between years.
fn fixed(by_year: f64) -> Parameters {
    let mut parameters = ranges();
    parameters.background_loss.fix(0.08);
    parameters.background_by_year.fix(by_year);
    parameters.background_by_yard.fix(0.6);
    parameters
}

fn from(parameters: &Parameters, counts: &[(u32, u32)]) -> Learnt {
    learnt(parameters, &winters(counts))
}

#[test]
fn known_parameters_give_the_sums_made_outside() {
    // Python: midpoint sums over 2400 deviates of the yard and 160 of each year; chances at 10, 50 and 90 in 100, mean
    // and spread of the yard's effect.
    let known: [(Counts, [f64; 5]); 5] = [
        (&[], [0.037_911, 0.080_000, 0.164_640, 0.0, 0.6]),
        (&[(5, 0)], [0.034_162, 0.069_654, 0.137_052, -0.149_26, 0.563_16]),
        (&[(4, 1), (5, 3)], [0.093_901, 0.170_240, 0.289_645, 0.795_89, 0.485_26]),
        (&[(60, 20)], [0.128_560, 0.198_519, 0.298_613, 0.975_05, 0.369_47]),
        (&[(6, 2), (6, 2), (6, 2)], [0.105_895, 0.176_855, 0.279_168, 0.837_57, 0.419_14]),
    ];
    for (counts, want) in known {
        let got = from(&fixed(0.4), counts);
        let got = [got.chance.p10, got.chance.p50, got.chance.p90, got.yard.mean, got.yard.sd];
        for (got, want) in got.into_iter().zip(want) {
            near(got, want, 1e-4);
        }
    }
}

#[test]
fn uncertain_parameters_are_averaged_over() {
    // Python again: the first by the normal law's own integral over 400 deviates of two ranges, the second by 40, 16 and
    // 30 deviates of the three.
    let known: [(Counts, [f64; 3]); 2] =
        [(&[], [0.027_644, 0.079_149, 0.212_978]), (&[(5, 0), (6, 2)], [0.050_700, 0.108_349, 0.216_629])];
    for (counts, want) in known {
        let got = from(&ranges(), counts);
        for (got, want) in [got.chance.p10, got.chance.p50, got.chance.p90].into_iter().zip(want) {
            near(got, want, 1e-3);
        }
    }
}

/// Logarithms of a hazard, and the normal law's shares of them.
fn levels(spread: f64) -> Vec<(f64, f64)> {
    let all = (-400..=400).map(|at| f64::from(at) / 100.0);
    let share = |x: f64| if spread > 0.0 { (-0.5 * (x / spread).powi(2)).exp() } else { f64::from(u8::from(x == 0.0)) };
    let shared: Vec<(f64, f64)> = all.map(|x| (x, share(x))).collect();
    let sum: f64 = shared.iter().map(|(_, share)| share).sum();
    shared.into_iter().map(|(x, share)| (x, share / sum)).collect()
}

/// Chance of all winters and mean of the yard's effect, by plain sums of binomial chances over levels of yard and year.
fn brute(counts: &[(u32, u32)], by_year: f64) -> (f64, f64) {
    let (lambda, years) = (-(0.92_f64.ln()), levels(by_year));
    let winter = |yard: f64, (at_risk, lost): (u32, u32)| -> f64 {
        let chance = |year: f64| 1.0 - (-lambda * (yard + year).exp()).exp();
        let count = |p: f64| p.powi(lost as i32) * (1.0 - p).powi((at_risk - lost) as i32);
        years.iter().map(|(year, share)| share * count(chance(*year))).sum()
    };
    let (mass, moment) = levels(0.6).into_iter().fold((0.0, 0.0), |(mass, moment), (yard, share)| {
        let one = share * counts.iter().map(|counted| winter(yard, *counted)).product::<f64>();
        (mass + one, moment + one * yard)
    });
    (mass, moment / mass)
}

#[test]
fn brute_force_says_the_same_for_few_hives_and_for_many() {
    let counts: [&[(u32, u32)]; 4] = [&[(3, 1)], &[(2, 2), (7, 0)], &[(400, 30)], &[(150, 4), (150, 60)]];
    for counts in counts {
        for by_year in [0.15, 0.4] {
            near(from(&fixed(by_year), counts).yard.mean, brute(counts, by_year).1, 1e-4);
        }
    }
}

#[test]
fn no_winter_leaves_the_yard_like_any_other() {
    for parameters in [ranges(), fixed(0.4), Parameters::shipped().unwrap()] {
        let (none, empty) = (learnt(&parameters, &[]), from(&parameters, &[(0, 0)]));
        near(none.yard.mean, 0.0, 1e-6);
        near(empty.chance.p90, none.chance.p90, 1e-12);
    }
}

#[test]
fn winters_without_loss_lower_it_and_losses_raise_it() {
    let parameters = ranges();
    let (any, good, bad) =
        (from(&parameters, &[]), from(&parameters, &[(6, 0); 8]), from(&parameters, &[(6, 3), (6, 2), (6, 3)]));
    let ends = |one: Learnt| [one.chance.p10, one.chance.p50, one.chance.p90, one.yard.mean];
    assert!(ends(good).iter().zip(ends(any)).all(|(good, any)| *good < any), "{good:?} {any:?}");
    assert!(ends(bad).iter().zip(ends(any)).all(|(bad, any)| *bad > any), "{bad:?} {any:?}");
}

#[test]
fn one_bad_winter_moves_it_less_than_the_same_losses_over_three() {
    for parameters in [ranges(), fixed(0.4)] {
        let (any, once, spread) = (
            from(&parameters, &[]),
            from(&parameters, &[(10, 0), (10, 6), (10, 0)]),
            from(&parameters, &[(10, 2), (10, 2), (10, 2)]),
        );
        assert!(any.yard.mean < once.yard.mean && once.yard.mean < spread.yard.mean, "{once:?} {spread:?}");
    }
}

/// The same hives, each in a winter of its own: their draws are independent, at the same chance each.
fn independent(at_risk: u32, lost: u32) -> Vec<(u32, u32)> {
    (0..at_risk).map(|hive| (1, u32::from(hive < lost))).collect()
}

/// What is expected to be left of the yard's variance after so many hives: over every count by its chance.
fn variance_left(at_risk: u32, counts: impl Fn(u32) -> Vec<(u32, u32)>) -> f64 {
    let (mut ways, mut sum, mut all) = (1.0, 0.0, 0.0);
    for lost in 0..=at_risk {
        let chance = ways * brute(&counts(lost), 0.4).0;
        all += chance;
        sum += chance * from(&fixed(0.4), &counts(lost)).yard.sd.powi(2);
        ways *= f64::from(at_risk - lost) / f64::from(lost + 1);
    }
    near(all, 1.0, 1e-6);
    sum
}

#[test]
fn hives_of_one_winter_say_less_than_independent_ones() {
    for at_risk in [12, 30] {
        for lost in 0..=at_risk {
            let shared = from(&fixed(0.4), &[(at_risk, lost)]).yard;
            let apart = from(&fixed(0.4), &independent(at_risk, lost)).yard;
            assert!(shared.sd > apart.sd, "{lost} of {at_risk}: {shared:?} {apart:?}");
        }
    }
    // Of a few hives a single count may leave a hair less doubt, as 2 of 5 does; not so all counts by their chances.
    for at_risk in [2, 5, 8] {
        let shared = variance_left(at_risk, |lost| vec![(at_risk, lost)]);
        let apart = variance_left(at_risk, |lost| independent(at_risk, lost));
        assert!(shared > apart + 1e-4, "{at_risk} hives: {shared} {apart}");
    }
    // Hives without end in one winter leave the year's own spread; in several winters they do not.
    let (one, nine) = (from(&fixed(0.4), &[(9_000, 900)]), from(&fixed(0.4), &[(1_000, 100); 9]));
    near(one.yard.sd, (0.36_f64 * 0.16 / (0.36 + 0.16)).sqrt(), 2e-3);
    assert!(nine.yard.sd < 0.5 * one.yard.sd);
    // Without a year's own luck Fisher's information rules: n h² (1 - p) / p.
    near(from(&fixed(0.0), &[(9_000, 900)]).yard.sd, (9_000.0 * 0.105_36_f64.powi(2) * 9.0).sqrt().recip(), 1e-3);
}

#[test]
fn joint_draws_stand_in_for_the_ranges() {
    let mut parameters = ranges();
    let column = |name: &str| JointDraw::NAMES.iter().position(|known| *known == name).unwrap();
    let mut row = vec![0.0; JointDraw::NAMES.len()];
    row[column("background_loss")] = 1.281_551_565_544_6;
    parameters.joint.rows = vec![row; 700];
    let (joint, mut same) = (from(&parameters, &[(6, 1)]), fixed(0.4));
    same.background_loss.fix(0.15);
    let same = from(&same, &[(6, 1)]);
    near(joint.chance.p50, same.chance.p50, 1e-9);
    near(joint.yard.mean, same.yard.mean, 1e-9);
}

#[test]
fn winters_that_contradict_each_other_still_have_an_answer() {
    let all = from(&ranges(), &[(100_000, 0), (100_000, 100_000), (1, 1)]);
    let ends = [all.chance.p10, all.chance.p50, all.chance.p90, all.yard.mean, all.yard.sd];
    assert!(ends.iter().all(|one| one.is_finite()) && all.chance.p10 <= all.chance.p90, "{all:?}");
}

fn told(winters: &[OwnWinter]) -> Background {
    background(winters).unwrap()
}

#[test]
fn what_is_said_has_its_counts_and_owns_up_to_what_is_not_told() {
    let mut counted = winters(&[(5, 0), (4, 1)]);
    let clean = told(&counted);
    let said = Tongue::BRITISH.say(&clean.say[0]);
    assert!(said.contains("after your 2 winters (1 of 9 lost so)"), "{said}");
    assert_eq!((clean.winters, clean.say.len()), (2, 2));
    counted[1].cause_not_told = 1;
    assert!(Tongue::BRITISH.say(&told(&counted).say[2]).contains("no cause for 1 of the 1"));
    let none = told(&[]);
    assert_eq!((none.any_yard, none.doubt_left, none.say.len()), (none.own_yard, 1.0, 1));
    assert_eq!(none.say[0].id(), Some("losses-any-yard"));
    assert!(background(&winters(&[(2, 3)])).is_err());
    assert!(background(&[OwnWinter { at_risk: 3, lost: 1, cause_not_told: 2 }]).is_err());
}
