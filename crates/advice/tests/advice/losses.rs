//! A winter's losses: exact counts, small-number ranges, a pooled club, against SciPy and statsmodels.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::losses::{
    ClubLosses, Counted, LossesAnswer, LossesQuestion, Operation, YardCount, YardLosses, losses,
};
use snowhum_say::Tongue;

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn asked(counted: Counted) -> Result<LossesAnswer, SumFault> {
    losses(&LossesQuestion {
        counted,
        winters: Vec::new(),
        colony_price: None,
        season_worth: None,
        currency: "EUR".to_owned(),
    })
}

fn yard(lost: u32, at_risk: u32) -> YardLosses {
    let count = YardCount { before: at_risk, dead: lost, ..YardCount::default() };
    asked(Counted::Yard(count)).unwrap().yard.unwrap()
}

fn operations(counts: &[(u32, u32)]) -> Vec<Operation> {
    let one = |(at, (colonies, lost)): (usize, &(u32, u32))| Operation {
        name: format!("member {at}"),
        colonies: *colonies,
        lost: *lost,
    };
    counts.iter().enumerate().map(one).collect()
}

fn club(counts: &[(u32, u32)]) -> ClubLosses {
    asked(Counted::Club(operations(counts))).unwrap().club.unwrap()
}

/// Answers carry four decimals.
const ROUNDED: f64 = 5.1e-5;

#[test]
fn a_small_yard_has_the_intervals_of_statsmodels_and_scipy() {
    // Clopper-Pearson; mean and 95 % of the posterior from Beta(4, 16).
    let known = [
        (0, 3, [0.0, 0.707_598_226], [0.173_913_043, 0.051_867_299, 0.349_122_097]),
        (1, 3, [0.008_403_759, 0.905_700_676], [0.217_391_304, 0.078_206_260, 0.402_845_783]),
        (1, 4, [0.006_309_463, 0.805_879_550], [0.208_333_333, 0.074_603_408, 0.387_811_890]),
        (2, 6, [0.043_271_868, 0.777_221_904], [0.230_769_231, 0.093_564_433, 0.407_037_432]),
        (0, 6, [0.0, 0.459_258_126], [0.153_846_154, 0.045_379_452, 0.312_190_307]),
        (3, 10, [0.066_739_511, 0.652_452_850], [0.233_333_333, 0.102_983_013, 0.397_246_949]),
    ];
    for (lost, at_risk, luck, next) in known {
        let yard = yard(lost, at_risk);
        near(yard.rate, f64::from(lost) / f64::from(at_risk), ROUNDED);
        near(yard.luck_clopper_pearson.low, luck[0], ROUNDED);
        near(yard.luck_clopper_pearson.high, luck[1], ROUNDED);
        near(yard.next_rate, next[0], ROUNDED);
        near(yard.next_rate_interval.low, next[1], ROUNDED);
        near(yard.next_rate_interval.high, next[2], ROUNDED);
    }
}

#[test]
fn wilsons_range_is_practices_own() {
    // One of five 4 to 62 %, two of five 12 to 77, three of ten 11 to 60, none of five 0 to 43, none of two 0 to 66.
    for (lost, at_risk, low, high) in
        [(1, 5, 4.0, 62.0), (2, 5, 12.0, 77.0), (3, 10, 11.0, 60.0), (0, 5, 0.0, 43.0), (0, 2, 0.0, 66.0)]
    {
        let luck = yard(lost, at_risk).luck_wilson;
        near(100.0 * luck.low, low, 0.5);
        near(100.0 * luck.high, high, 0.5);
    }
}

#[test]
fn a_club_is_pooled_with_the_spread_between_its_members() {
    // Overall and average rate by statsmodels; dispersion 1.9326 (Pearson, colonies as trials) and the range worked by
    // hand from it with Student's t of 14 degrees, 2.144787.
    let colonies = [3, 5, 2, 10, 8, 4, 6, 1, 12, 20, 7, 5, 3, 9, 15];
    let lost = [1, 0, 2, 1, 3, 0, 2, 0, 2, 3, 1, 4, 0, 1, 2];
    let counts: Vec<(u32, u32)> = colonies.into_iter().zip(lost).collect();
    let club = club(&counts);
    near(club.overall_rate, 0.2, 1e-9);
    near(club.average_rate, 0.243_042_328, ROUNDED);
    near(club.dispersion.unwrap(), 1.932_575_113, ROUNDED);
    near(club.overall_interval.low, 0.109_387_759, ROUNDED);
    near(club.overall_interval.high, 0.337_248_833, ROUNDED);
}

#[test]
fn members_more_alike_than_luck_keep_the_binomial_range() {
    // statsmodels, binomial logit, 22 of 110: 0.1355 to 0.2851. Eleven members alike have no spread at all.
    let club = club(&[(10, 2); 11]);
    assert_eq!((club.dispersion, club.dispersion_used), (Some(0.0), Some(1.0)));
    near(club.overall_interval.low, 0.135_464_551, ROUNDED);
    near(club.overall_interval.high, 0.285_140_006, ROUNDED);
}

#[test]
fn members_who_differ_widen_the_range() {
    // Worked by hand: dispersion 2.428, 0.09 to 0.68 with Student's t of five degrees, average 34.7 %.
    let club = club(&[(2, 0), (3, 1), (5, 2), (10, 1), (4, 4), (8, 2)]);
    near(club.overall_rate, 0.3125, 1e-9);
    near(club.dispersion.unwrap(), 2.428, 5e-4);
    near(club.overall_interval.low, 0.09, 5e-3);
    near(club.overall_interval.high, 0.68, 5e-3);
    near(club.average_rate, 0.347, 5e-4);
    assert_eq!((club.members_without_loss, club.members_who_lost_all), (1, 1));
}

#[test]
fn a_club_without_loss_still_has_a_range() {
    let club = club(&[(3, 0), (3, 0)]);
    assert_eq!((club.overall_rate, club.dispersion), (0.0, None));
    near(club.overall_interval.high, 0.459_258_126, ROUNDED);
    assert_eq!(club.method.id(), Some("losses-exact-binomial"));
}

#[test]
fn every_kind_of_loss_counts_and_uniting_does_not() {
    let count = YardCount { before: 10, added: 2, removed: 4, dead: 1, queen_failed: 1, disaster: 1, weak: 2 };
    let yard = asked(Counted::Yard(count)).unwrap().yard.unwrap();
    assert_eq!((yard.at_risk, yard.lost, yard.alive, yard.weak), (8, 3, 5, 2));
    near(yard.rate, 0.375, 1e-9);
}

#[test]
fn one_loss_of_four_is_said_to_tell_almost_nothing() {
    let count = YardCount { before: 4, dead: 1, ..YardCount::default() };
    let answer = asked(Counted::Yard(count)).unwrap();
    let said = Tongue::BRITISH.say(&answer.say[0]);
    assert!(said.contains("almost nothing") && said.contains("1 to 81 %"), "{said}");
    // One or more of four at a fifth: 1 - 0.8^4.
    near(answer.yard.unwrap().chance_of_so_many_at_usual_rate, 1.0 - 0.8_f64.powi(4), ROUNDED);
    let of_two = asked(Counted::Yard(YardCount { before: 2, ..count })).unwrap();
    assert!(Tongue::BRITISH.say(&of_two.say[0]).contains("2 hives"));
}

#[test]
fn cost_is_price_and_season() {
    let count = YardCount { before: 8, dead: 2, ..YardCount::default() };
    let question = LossesQuestion {
        counted: Counted::Yard(count),
        winters: Vec::new(),
        colony_price: Some(150.0),
        season_worth: Some(187.0),
        currency: "EUR".to_owned(),
    };
    assert_eq!(losses(&question).unwrap().cost_money, Some(674.0));
    assert!(losses(&LossesQuestion { colony_price: Some(-1.0), ..question }).is_err());
}

#[test]
fn counts_that_cannot_be_are_refused() {
    let yard = |count| asked(Counted::Yard(count));
    assert!(yard(YardCount::default()).is_err());
    assert!(yard(YardCount { before: 3, removed: 5, ..YardCount::default() }).is_err());
    assert!(yard(YardCount { before: 3, dead: 4, ..YardCount::default() }).is_err());
    assert!(yard(YardCount { before: 3, dead: 2, weak: 2, ..YardCount::default() }).is_err());
    assert!(yard(YardCount { before: u32::MAX, added: u32::MAX, ..YardCount::default() }).is_err());
    assert!(asked(Counted::Club(Vec::new())).is_err());
    assert!(asked(Counted::Club(operations(&[(0, 0)]))).is_err());
    assert!(asked(Counted::Club(operations(&[(3, 4)]))).is_err());
}
