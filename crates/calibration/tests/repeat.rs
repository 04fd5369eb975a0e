//! A fit is a function of its seed.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use rayon::ThreadPoolBuilder;
use snowhum_calibration::fit::{Effort, fit};
use snowhum_calibration::study::{Study, studies};
use snowhum_calibration::write;
use snowhum_winter::Parameters;

/// The whole of `cargo xtask calibrate` in small: two looks at two studies, one with yards told apart.
const SMALL: Effort = Effort { points: [240, 2], held_out: [10, 4], closer: 1, steps: [12, 6], drawn: 40 };

fn states(threads: usize, seed: u64) -> Vec<Vec<u64>> {
    let priors = write::priors(&Parameters::shipped().unwrap());
    let two = |study: &Study| ["Göttingen 2021", "Western Sweden 2019"].contains(&study.id.as_str());
    let studies: Vec<Study> = studies().unwrap().into_iter().filter(two).collect();
    assert_eq!(studies.len(), 2);
    let pool = ThreadPoolBuilder::new().num_threads(threads).build().unwrap();
    let fitted = pool.install(|| fit(&studies, &priors, SMALL, seed).unwrap());
    fitted.states.iter().map(|state| state.iter().map(|z| z.to_bits()).collect()).collect()
}

#[test]
fn a_fit_repeats_to_the_last_bit_from_its_seed_on_any_number_of_threads() {
    let one = states(1, 5);
    assert_eq!(one, states(2, 5));
    assert_ne!(one, states(2, 6));
}
