//! Random numbers keyed by what they are for.
//!
//! Every draw is a pure function of a [`Key`] (seed and stream) and a counter (who, when, why), so the same question
//! gets the same number on any thread count, in any order, and two runs that differ only in an action share their
//! luck ("common random numbers").
//!
//! The generator is Philox4x32-10: J. K. Salmon, M. A. Moraes, R. O. Dror and D. E. Shaw, "Parallel random numbers:
//! as easy as 1, 2, 3", SC '11 (2011). Its published known-answer vectors are the tests of this crate.
//!
//! ```
//! use snowhum_draws::Key;
//! let key = Key::new(7, 1);
//! assert_eq!(key.uniforms([3, 5, 0, 0]), key.uniforms([3, 5, 0, 0]));
//! assert_ne!(key.uniforms([3, 5, 0, 0]), key.uniforms([4, 5, 0, 0]));
//! ```

mod even;
mod normal;
mod philox;

pub use normal::normal_quantile;
pub use philox::philox4x32_10;

/// A seed and a stream: what stays the same over a run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Key([u32; 2]);

impl Key {
    /// Key of a run: the keeper's `seed` and the `stream` it serves (one for the weather, one a colony, …).
    ///
    /// The two are mixed through the generator itself, so neighbouring seeds and streams are unrelated.
    #[must_use]
    pub fn new(seed: u64, stream: u64) -> Self {
        let words = philox4x32_10(split(stream), [seed as u32, (seed >> 32) as u32]);
        Self([words[0], words[1]])
    }

    /// Four uniforms in the open interval (0, 1) for the counter `who, when, why, index`.
    #[inline]
    #[must_use]
    pub fn uniforms(self, counter: [u32; 4]) -> [f64; 4] {
        philox4x32_10(counter, self.0).map(open_unit)
    }

    /// Four independent standard normals for the counter.
    #[inline]
    #[must_use]
    pub fn normals(self, counter: [u32; 4]) -> [f64; 4] {
        self.uniforms(counter).map(normal_quantile)
    }
}

fn split(word: u64) -> [u32; 4] {
    [word as u32, (word >> 32) as u32, 0x534e_4f57, 0x4855_4d21]
}

/// Maps 32 bits to the middle of one of 2^32 cells of (0, 1): neither 0 nor 1 can come out.
#[inline]
fn open_unit(word: u32) -> f64 {
    (f64::from(word) + 0.5) * (1.0 / 4_294_967_296.0)
}
