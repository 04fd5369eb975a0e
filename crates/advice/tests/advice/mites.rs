//! A count of mites: intervals as the statistics libraries give them, lines by region and month, the worst hive named.

use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::intervals::{
    Interval, chance_above, clopper_pearson, garwood, uneven, uneven_at_least, uneven_chance_above, wilson,
};
use snowhum_advice::sums::mites::{Counted, MitesAnswer, MitesQuestion, Sample, Verdict, mites};
use snowhum_say::Tongue;

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn one(found: u32, by: Counted) -> MitesQuestion {
    let samples = vec![Sample { colony: "Alder".to_owned(), found, by }];
    MitesQuestion { samples, region: None, month: None }
}

fn yard(counts: &[(&str, u32)]) -> MitesQuestion {
    let sample = |(name, found): &(&str, u32)| Sample {
        colony: (*name).to_owned(),
        found: *found,
        by: Counted::Wash { bees: 300 },
    };
    MitesQuestion { samples: counts.iter().map(sample).collect(), region: None, month: None }
}

/// statsmodels 0.14 `proportion_confint`, methods "wilson" and "beta".
const SHARES: [(u32, u32, [f64; 2], [f64; 2]); 9] = [
    (0, 300, [0.0, 0.012_642_971_224_546_04], [0.0, 0.012_220_974_694_293_554]),
    (
        1,
        300,
        [0.000_588_657_721_851_158_1, 0.018_636_693_694_531_24],
        [8.438_913_231_780_044e-05, 0.018_431_252_048_067_885],
    ),
    (
        3,
        300,
        [0.003_406_618_437_715_282_6, 0.028_983_493_362_339_838],
        [0.002_067_007_235_092_316_3, 0.028_944_511_255_692_61],
    ),
    (
        6,
        300,
        [0.009_197_631_557_703_614, 0.042_939_620_817_860_58],
        [0.007_374_162_001_726_41, 0.043_021_082_673_516_904],
    ),
    (
        9,
        300,
        [0.015_861_853_809_432_305, 0.056_022_539_141_640_96],
        [0.013_807_819_555_525_977, 0.056_183_548_241_615_776],
    ),
    (
        15,
        300,
        [0.030_531_640_629_347_278, 0.080_847_033_472_744_15],
        [0.028_251_201_968_496_384, 0.081_127_357_170_764_22],
    ),
    (
        30,
        300,
        [0.070_947_914_595_015_32, 0.139_166_462_384_621_52],
        [0.068_491_684_491_073_44, 0.139_673_307_355_102_3],
    ),
    (0, 100, [0.0, 0.036_993_498_206_985_69], [0.0, 0.036_216_692_645_176_42]),
    (
        2,
        100,
        [0.005_501_967_550_162_35, 0.070_011_790_728_543_91],
        [0.002_431_336_823_942_542_3, 0.070_383_932_471_070_12],
    ),
];

#[test]
fn shares_have_the_intervals_of_statsmodels() {
    for (k, n, score, exact) in SHARES {
        for (got, want) in [(wilson(k, n), score), (clopper_pearson(k, n), exact)] {
            let Interval { low, high } = got.unwrap();
            near(low, want[0], 1e-9);
            near(high, want[1], 1e-9);
        }
    }
    assert_eq!(clopper_pearson(4, 3), None);
    assert_eq!(wilson(0, 0), None);
}

/// Chance of `k` or more of `n` at share `p`, summed term by term.
fn at_least(k: u32, n: u32, p: f64) -> f64 {
    let mut ln_term = f64::from(n) * (1.0 - p).ln();
    let mut below = 0.0;
    for i in 0..k {
        below += ln_term.exp();
        ln_term += (f64::from(n - i) / f64::from(i + 1) * p / (1.0 - p)).ln();
    }
    1.0 - below
}

#[test]
fn the_exact_interval_leaves_two_and_a_half_percent_on_either_side() {
    for n in [1, 2, 7, 30, 300, 2_000, 10_000] {
        for k in [1, 2, 5, 29, 250, 1_500].into_iter().filter(|k| *k < n) {
            let share = clopper_pearson(k, n).unwrap();
            near(at_least(k, n, share.low), 0.025, 1e-8);
            near(at_least(k + 1, n, share.high), 0.975, 1e-8);
        }
    }
}

#[test]
fn counts_have_garwoods_interval() {
    // SciPy chi-squared quantiles, a mean of 300 bees.
    let known = [
        (0, 0.0, 0.012_296_264_847_046_452),
        (3, 0.002_062_240_409_652_004_5, 0.029_224_243_565_807_745),
        (9, 0.013_717_910_324_594_447, 0.056_949_344_838_063_89),
    ];
    for (k, low, high) in known {
        near(garwood(k).low / 300.0, low, 1e-9);
        near(garwood(k).high / 300.0, high, 1e-9);
    }
}

#[test]
fn uneven_mites_have_scipys_negative_binomial() {
    // SciPy nbinom, size 5: chance of nine or more of 300.
    for (rate, chance) in [
        (0.01, 0.020_533_510_929_453_77),
        (0.02, 0.218_034_491_776_719_96),
        (0.03, 0.478_602_563_660_655_57),
        (0.05, 0.793_961_897_492_408_8),
    ] {
        near(uneven_at_least(9, 300.0 * rate, 5.0), chance, 1e-9);
    }
    assert_eq!(uneven_at_least(0, 3.0, 5.0), 1.0);
}

#[test]
fn the_uneven_interval_turns_its_own_tails_round_and_becomes_garwoods_when_mites_sit_evenly() {
    for k in [1, 9, 60] {
        let range = uneven(k, 5.0);
        near(uneven_at_least(k, range.low, 5.0), 0.025, 1e-9);
        near(1.0 - uneven_at_least(k + 1, range.high, 5.0), 0.025, 1e-9);
        assert!(range.high > garwood(k).high);
        // One mite alone: clumps leave more samples without any, so its least mean is the higher one.
        assert_eq!(range.low < garwood(k).low, k > 1, "{k}");
        near(uneven(k, 1e7).high, garwood(k).high, 1e-3);
    }
    near(uneven(0, 5.0).high, 5.0 * (0.025_f64.powf(-0.2) - 1.0), 1e-9);
}

#[test]
fn the_chance_over_a_line_is_scipys_beta_tail() {
    let prior = [1.0, 40.0];
    for (line, k, chance) in [
        (0.03, 3, 0.008_226_744_534_247_576),
        (0.02, 6, 0.478_679_468_019_056_1),
        (0.03, 9, 0.430_928_036_813_815_25),
        (0.02, 12, 0.979_081_940_554_619_4),
    ] {
        near(chance_above(line, k, 300, prior).unwrap(), chance, 1e-9);
    }
}

#[test]
fn unevenness_draws_the_chance_over_a_line_towards_not_knowing() {
    let prior = [1.0, 40.0];
    for k in [0, 3, 9, 12, 30] {
        let even = chance_above(0.03, k, 300, prior).unwrap();
        let uneven = |evenness| uneven_chance_above(0.03, k, 300, prior, evenness);
        // So even that it is a Poisson count: near the binomial, which is a little surer.
        near(uneven(1e9), even, 0.015);
        // Few mites may hide many, many may be a clump.
        assert_eq!(uneven(5.0) > even, k <= 9, "{k}: {} {even}", uneven(5.0));
    }
    let answer = mites(&one(3, Counted::Wash { bees: 300 })).unwrap();
    let colony = &answer.colonies[0];
    assert!(colony.chance_over_line.unwrap() > 3.0 * colony.chance_over_line_if_even.unwrap());
}

#[test]
fn a_clean_sample_misses_as_often_as_the_binomial_says() {
    let answer = mites(&one(0, Counted::Wash { bees: 300 })).unwrap();
    let misses = &answer.colonies[0].clean_sample_misses;
    let known = [0.049_040_894_071_285_72, 0.002_332_505_667_951_413, 0.000_107_527_681_049_075_86];
    for (miss, chance) in misses.iter().zip(known) {
        near(miss.even, chance, 5.1e-5);
        assert!(miss.uneven > miss.even);
    }
    // One bee in a hundred and a sample of a hundred bees: 37 % (Oliver 2020 says 36 %).
    let answer = mites(&one(0, Counted::Wash { bees: 100 })).unwrap();
    near(answer.colonies[0].clean_sample_misses[0].even, 0.366, 5e-4);
}

#[test]
fn nine_in_three_hundred_is_at_the_line_and_thirty_over_it() {
    let verdict = |found| mites(&one(found, Counted::Wash { bees: 300 })).unwrap().colonies[0].verdict;
    assert_eq!(verdict(0), Verdict::Under);
    assert_eq!(verdict(3), Verdict::LikelyUnder);
    assert_eq!(verdict(7), Verdict::Near);
    assert_eq!(verdict(9), Verdict::LikelyOver);
    assert_eq!(verdict(60), Verdict::Over);
}

#[test]
fn more_mites_than_bees_still_have_a_range() {
    let answer = mites(&one(40, Counted::Wash { bees: 30 })).unwrap();
    let colony = &answer.colonies[0];
    assert_eq!(colony.clopper_pearson_per_100_bees, None);
    near(colony.rate, 133.33, 1e-9);
    assert!(colony.even.low < colony.rate && colony.rate < colony.even.high);
    assert_eq!(colony.verdict, Verdict::Over);
}

#[test]
fn a_wash_finds_nine_of_ten() {
    let answer = mites(&one(9, Counted::Wash { bees: 300 })).unwrap();
    near(answer.colonies[0].corrected_per_100_bees.unwrap().estimate, 3.33, 1e-9);
    let roll = mites(&one(9, Counted::Roll { bees: 300 })).unwrap().colonies[0].corrected_per_100_bees.unwrap();
    let wash = answer.colonies[0].corrected_per_100_bees.unwrap();
    assert!(roll.high - roll.low > wash.high - wash.low);
}

#[test]
fn a_board_is_read_a_day() {
    let question = MitesQuestion { region: Some("uk".to_owned()), ..one(30, Counted::Board { days: 3.0 }) };
    let answer = mites(&question).unwrap();
    assert_eq!(answer.unit.id(), Some("mites-a-day"));
    assert_eq!(answer.colonies[0].mites_per_day, Some(10.0));
    near(answer.colonies[0].even.low, garwood(30).low / 3.0, 5.1e-3);
    assert_eq!(answer.line.value, [9.0, 9.0]);
    assert_eq!(answer.colonies[0].verdict, Verdict::LikelyOver);
}

#[test]
fn a_line_is_the_regions_and_the_months_before_the_general_one() {
    let line = |region: Option<&str>, month| {
        let region = region.map(str::to_owned);
        mites(&MitesQuestion { region, month, ..one(9, Counted::Wash { bees: 300 }) }).unwrap().line
    };
    assert_eq!(line(None, None).value, [2.0, 3.0]);
    assert_eq!(line(None, Some(11)).value, [1.0, 3.0]);
    assert_eq!(line(Some("ontario"), Some(5)).value, [2.0, 2.0]);
    assert_eq!(line(Some("California"), Some(3)).value, [1.0, 2.0]);
    // Britain draws none for a wash.
    assert_eq!(line(Some("Britain"), Some(8)).region, "anywhere");
    let wrong = MitesQuestion { region: Some("Mars".to_owned()), ..one(9, Counted::Wash { bees: 300 }) };
    assert!(matches!(mites(&wrong), Err(SumFault::Unknown { known, .. }) if known.contains("ontario")));
}

#[test]
fn one_hot_hive_is_named_though_the_mean_is_low() {
    let answer = mites(&yard(&[("Alder", 1), ("Birch", 2), ("Cedar", 0), ("Larch", 14), ("Oak", 1)])).unwrap();
    let yard = answer.yard.unwrap();
    assert_eq!(yard.worst, "Larch");
    assert_eq!(yard.at_or_over_line, ["Larch"]);
    assert!(yard.mean_rate < 2.0);
    let said = Tongue::BRITISH.say(&yard.say);
    assert!(said.contains("go by Larch, not by the mean"), "{said}");
}

#[test]
fn a_yards_mean_spreads_as_its_colonies_do() {
    // Made-up counts per 300 bees; SciPy t-interval and moments: mean 8.75, 0.39 to 17.1, size 0.84.
    let names = ["a", "b", "c", "d", "e", "f", "g", "h"];
    let counts: Vec<(&str, u32)> = names.into_iter().zip([0, 2, 3, 5, 6, 9, 14, 31]).collect();
    let yard = mites(&yard(&counts)).unwrap().yard.unwrap();
    near(yard.mean_rate, 8.75 / 3.0, 6e-3);
    let mean = yard.mean_interval.unwrap();
    near(mean.low * 3.0, 0.39, 0.03);
    near(mean.high * 3.0, 17.1, 0.05);
    near(yard.between_colonies_size.unwrap(), 0.84, 0.005);
}

fn said(answer: &MitesAnswer) -> String {
    Tongue::BRITISH.say_all(&answer.say).join(" ")
}

#[test]
fn after_the_winter_bees_are_raised_a_treatment_is_for_the_neighbours() {
    let answer = mites(&MitesQuestion { month: Some(11), ..one(15, Counted::Wash { bees: 300 }) }).unwrap();
    assert!(said(&answer).contains("neighbours and next year"));
    assert!(answer.cautions.iter().any(|caution| Tongue::BRITISH.say(caution).contains("label")));
}

#[test]
fn a_sample_that_cannot_be_is_refused() {
    assert!(matches!(mites(&one(3, Counted::Wash { bees: 0 })), Err(SumFault::OutOfRange { .. })));
    assert!(matches!(mites(&one(3, Counted::Board { days: 0.0 })), Err(SumFault::OutOfRange { .. })));
    assert!(matches!(mites(&one(u32::MAX, Counted::Board { days: 1.0 })), Err(SumFault::OutOfRange { .. })));
    assert!(matches!(mites(&one(300_000, Counted::Wash { bees: 300 })), Err(SumFault::Contradiction(_))));
    let nothing = MitesQuestion { samples: Vec::new(), region: None, month: None };
    assert!(mites(&nothing).is_err());
}

#[test]
fn under_four_samples_the_mean_has_no_range_and_says_why() {
    let yard = mites(&yard(&[("Larch", 21), ("Alder", 1)])).unwrap().yard.unwrap();
    let said = Tongue::BRITISH.say(&yard.say);
    assert!(yard.mean_interval.is_none() && said.contains("too few"), "{said}");
}

#[test]
fn in_september_a_treatment_is_too_late_for_part_of_the_winter_bees() {
    let answer = mites(&MitesQuestion { month: Some(9), ..one(21, Counted::Wash { bees: 300 }) }).unwrap();
    assert!(said(&answer).contains("too late for part"), "{}", said(&answer));
}
