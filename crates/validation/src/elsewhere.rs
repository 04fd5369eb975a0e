//! Promises that tests of other crates keep, because what they look at is not open to anyone outside.

/// One promise and the test that keeps it.
#[derive(Debug, Clone, Copy)]
pub struct Promise {
    /// What is promised, and how closely.
    pub promise: &'static str,
    /// Name of the test.
    pub test: &'static str,
    /// Its file, from the root of the repository.
    pub file: &'static str,
}

/// All of them.
pub const PROMISES: &[Promise] = &[
    audit(
        "energy: what bees, walls, air and water gain and lose closes in every hour of 200 days, to 1e-9 of what is held and flows",
        "energy_is_conserved_every_hour_over_a_winter",
    ),
    audit(
        "water: breathed out, settled, vented, drained; closes in every hour of 200 days, bare hive and wrapped, to 1e-9",
        "water_is_conserved_every_hour_over_a_winter",
    ),
    audit(
        "heat of freezing, melting and drying is that of the water that changed form, to 1e-8",
        "latent_heat_matches_the_water_that_changed_form",
    ),
    audit(
        "food eaten is food gone and heat given off in every hour, to 1e-9",
        "food_eaten_is_the_food_that_went_and_the_heat_that_came",
    ),
    Promise {
        promise: "the hourly step against an outside solver of differential equations (diffsol, BDF), a week with a front: 0.2 K",
        test: "the_hourly_step_follows_an_outside_solver_within_a_fifth_of_a_kelvin",
        file: "crates/winter/src/oracle.rs",
    },
    Promise {
        promise: "edge losses: ISO 10211 case 1, 28 temperatures within 0.01 K of the exact series (0.1 K asked for)",
        test: "case_1_half_of_a_square_column",
        file: "xtask/src/conduction/iso10211.rs",
    },
    Promise {
        promise: "edge losses: ISO 10211 case 2, nine temperatures within 0.1 K, heat flow within 0.1 W/m",
        test: "case_2_metal_through_insulation",
        file: "xtask/src/conduction/iso10211.rs",
    },
    Promise {
        promise: "a day's course of temperature: Parton and Logan 1981, 48 hours computed apart, to 1e-3 K",
        test: "the_published_course_is_reproduced",
        file: "crates/weather/src/hourly_shape.rs",
    },
    Promise {
        promise: "the course never leaves the day's extremes and does not jump, from 2 to 20 h of sun",
        test: "the_course_stays_between_the_extremes_and_does_not_jump",
        file: "crates/weather/src/hourly_shape.rs",
    },
    Promise {
        promise: "correlations of a day's temperature, range and cloud and their lags, 100,000 days, within 0.02 of the inputs",
        test: "correlations_and_lags_are_those_of_the_parameters",
        file: "crates/weather/src/generator/residuals.rs",
    },
    Promise {
        promise: "one seed gives the same bits on any number of threads",
        test: "same_seed_gives_the_same_bits_on_one_and_two_threads",
        file: "crates/winter/tests/winter/engine.rs",
    },
];

const fn audit(promise: &'static str, test: &'static str) -> Promise {
    Promise { promise, test, file: "crates/winter/src/audit.rs" }
}
