//! Draws that fill their space evenly: what one member leaves open the next ones take.
//!
//! A Sobol' sequence scrambled after A. B. Owen, by hashing (B. Burley, "Practical hash-based Owen scrambling", Journal
//! of Computer Graphics Techniques 9(4), 2020). Each number by itself is as random as any other; a mean over members
//! holds still far sooner, the first 64 of 192 as the whole.

use crate::{Key, normal_quantile, philox4x32_10};

/// Members of one sequence; the next take another.
const LENGTH: u32 = 1 << 16;
/// Marks the counter of a sequence's scrambling.
const SCRAMBLING: u32 = 0x4556_454e;

impl Key {
    /// Four standard normals of `member` in one of many sequences that know nothing of one another, which are four of its
    /// dimensions: those of number `four` and no others.
    ///
    /// # Panics
    /// Where `four` is 64 or more.
    #[must_use]
    pub fn even_normals(self, [member, sequence, four]: [u32; 3]) -> [f64; 4] {
        let [scrambling, ..] = philox4x32_10([member / LENGTH, sequence, 0, SCRAMBLING], self.0);
        sobol_burley::sample_4d(member % LENGTH, four, scrambling).map(|at| normal_quantile(middle_of_cell(at)))
    }
}

/// The middle of one of 2^24 cells of (0, 1): neither 0 nor 1 can come out.
fn middle_of_cell(at: f32) -> f64 {
    f64::from(at) + 0.5 / f64::from(1_u32 << 24)
}

#[cfg(test)]
mod tests {
    use super::LENGTH;
    use crate::Key;

    /// How far a mean over members lies from the truth, in standard errors of as many independent draws, mean square over keys.
    fn wanders(members: u32, of: impl Fn([f64; 4]) -> f64, truth: f64) -> f64 {
        let mean = |seed: u64| {
            (0..members).map(|m| of(Key::new(seed, 3).even_normals([m, 0, 5]))).sum::<f64>() / f64::from(members)
        };
        (0..200).map(|seed| f64::from(members) * (mean(seed) - truth).powi(2)).sum::<f64>() / 200.0
    }

    #[test]
    fn of_any_64_members_in_a_row_each_has_its_own_64th_of_every_dimension() {
        for first in [0, 64, LENGTH - 64] {
            for dimension in 0..4 {
                let mut drawn: Vec<f64> =
                    (first..first + 64).map(|m| Key::new(8, 1).even_normals([m, 0, 9])[dimension]).collect();
                drawn.sort_by(f64::total_cmp);
                let cut = |at: u32| crate::normal_quantile(f64::from(at) / 64.0);
                for (at, z) in (0_u32..).zip(&drawn) {
                    assert!((at == 0 || *z >= cut(at)) && (at == 63 || *z <= cut(at + 1)), "{at} {z}");
                }
            }
        }
    }

    #[test]
    fn a_mean_over_members_holds_still_and_stands_where_it_should() {
        // Of independent draws these would be the variances 1, 2 and 1.
        assert!(wanders(192, |z| z[0], 0.0) < 0.05);
        assert!(wanders(192, |z| z[1] * z[1], 1.0) < 0.3);
        assert!(wanders(192, |z| z[2] * z[3], 0.0) < 0.5);
    }

    #[test]
    fn colonies_and_members_past_one_sequence_share_no_luck() {
        let drawn = |seed: u64, member: u32, sequence: u32| Key::new(seed, 3).even_normals([member, sequence, 0]);
        assert_ne!(drawn(1, 0, 0), drawn(2, 0, 0));
        assert_ne!(drawn(1, 0, 0), drawn(1, LENGTH, 0));
        assert_ne!(drawn(1, 0, 0), drawn(1, 0, 1));
        assert_eq!(drawn(1, 7, 0), drawn(1, 7, 0));
    }
}
