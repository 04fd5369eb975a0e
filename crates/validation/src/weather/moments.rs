//! A figure out of independent winters, with its standard error.

/// Mean over winters and standard error of that mean.
#[derive(Debug, Clone, Copy)]
pub(super) struct Estimate {
    pub(super) mean: f64,
    error: f64,
}

impl Estimate {
    /// Of one value for each winter.
    pub(super) fn of(values: &[f64]) -> Self {
        let n = values.len() as f64;
        let mean = values.iter().sum::<f64>() / n;
        let variance = values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / (n - 1.0);
        Self { mean, error: (variance / n).sqrt() }
    }

    /// Standard errors between the mean and what it should be.
    pub(super) fn departure(&self, expected: f64) -> f64 {
        (self.mean - expected).abs() / self.error
    }
}

#[cfg(test)]
mod tests {
    use super::Estimate;

    #[test]
    fn departure_counts_standard_errors() {
        let estimate = Estimate::of(&[1.0, 3.0, 1.0, 3.0]);
        assert!((estimate.mean - 2.0).abs() < 1e-12);
        assert!((estimate.departure(1.0) - 3.0_f64.sqrt()).abs() < 1e-12);
    }
}
