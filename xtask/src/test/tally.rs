//! Counting what `cargo test` tells.

/// Tests over all binaries and documentation examples.
#[derive(Debug, Default, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Tally {
    pub(crate) passed: u64,
    pub(crate) failed: u64,
}

impl Tally {
    /// Takes in one line; all but the closing line of a test binary are passed over.
    pub(crate) fn read(&mut self, line: &str) {
        let Some(told) = line.trim_start().strip_prefix("test result: ") else { return };
        let counts = told.split_once(". ").map_or(told, |(_, counts)| counts);
        for part in counts.split(';') {
            match part.trim().split_once(' ') {
                Some((count, "passed")) => self.passed += count.parse::<u64>().unwrap_or(0),
                Some((count, "failed")) => self.failed += count.parse::<u64>().unwrap_or(0),
                _ => {}
            }
        }
    }
}

impl std::ops::AddAssign for Tally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
    }
}

#[cfg(test)]
mod tests {
    use super::Tally;

    #[test]
    fn closing_lines_add_up_and_others_are_passed_over() {
        let mut tally = Tally::default();
        for line in [
            "running 3 tests",
            "test a_law ... ok",
            "test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.01s",
            "test result: FAILED. 2 passed; 3 failed; 0 ignored; 0 measured; 0 filtered out; finished in 1.50s",
        ] {
            tally.read(line);
        }
        assert_eq!(tally, Tally { passed: 14, failed: 3 });
    }
}
