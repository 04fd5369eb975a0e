//! Philox4x32 with ten rounds.

const MULTIPLIERS: [u32; 2] = [0xD251_1F53, 0xCD9E_8D57];
const WEYL: [u32; 2] = [0x9E37_79B9, 0xBB67_AE85];
const ROUNDS: u32 = 10;

/// One block of Philox4x32-10: four words from a counter and a key.
///
/// Source: Salmon et al. 2011 (see the crate page); the constants are the published ones.
///
/// ```
/// // First known-answer vector of the authors' distribution.
/// let block = snowhum_draws::philox4x32_10([0; 4], [0; 2]);
/// assert_eq!(block, [0x6627_e8d5, 0xe169_c58d, 0xbc57_ac4c, 0x9b00_dbd8]);
/// ```
#[inline]
#[must_use]
pub fn philox4x32_10(counter: [u32; 4], key: [u32; 2]) -> [u32; 4] {
    let mut c = counter;
    let mut k = key;
    for _ in 0..ROUNDS {
        let left = u64::from(MULTIPLIERS[0]) * u64::from(c[0]);
        let right = u64::from(MULTIPLIERS[1]) * u64::from(c[2]);
        c = [(right >> 32) as u32 ^ c[1] ^ k[0], right as u32, (left >> 32) as u32 ^ c[3] ^ k[1], left as u32];
        k = [k[0].wrapping_add(WEYL[0]), k[1].wrapping_add(WEYL[1])];
    }
    c
}

#[cfg(test)]
mod tests {
    use super::philox4x32_10;

    /// Known-answer vectors published with the authors' reference implementation.
    #[test]
    fn known_answers_of_the_authors_are_reproduced() {
        let all = u32::MAX;
        assert_eq!(philox4x32_10([all; 4], [all; 2]), [0x408f_276d, 0x41c8_3b0e, 0xa20b_c7c6, 0x6d54_51fd]);
        assert_eq!(
            philox4x32_10([0x243f_6a88, 0x85a3_08d3, 0x1319_8a2e, 0x0370_7344], [0xa409_3822, 0x299f_31d0]),
            [0xd16c_fe09, 0x94fd_cceb, 0x5001_e420, 0x2412_6ea1]
        );
    }
}
