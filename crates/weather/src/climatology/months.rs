//! Monthly means turned into a smooth year.

/// Days of the months of a common year.
const DAYS: [usize; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/// Days of a month, 0 for January, of a common year.
pub(crate) fn days_in_month(month: usize) -> usize {
    DAYS[month]
}

/// A value for every day of a common year.
#[derive(Debug, Clone, PartialEq)]
pub struct YearCurve([f64; 365]);

impl YearCurve {
    /// The year that is straight between mid-months and keeps every monthly mean.
    ///
    /// The mid-month values are moved, round after round, by what the mean of their month still lacks; each round
    /// leaves at most half the error of the one before.
    ///
    /// ```
    /// let year = snowhum_weather::YearCurve::through([-9., -9., -4., 2., 9., 14., 17., 15., 10., 4., -1., -6.]);
    /// let january = (0..31).map(|day| year.on(day)).sum::<f64>() / 31.0;
    /// assert!((january + 9.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn through(means: [f64; 12]) -> Self {
        let mut middles = means;
        for _ in 0..60 {
            let reached = monthly(&straight(&middles));
            for month in 0..12 {
                middles[month] += means[month] - reached[month];
            }
        }
        Self(straight(&middles))
    }

    /// Value on a day of the year, 0 on 1 January; 29 February counts as 1 March.
    #[must_use]
    pub fn on(&self, day: usize) -> f64 {
        self.0[day.min(364)]
    }
}

fn straight(middles: &[f64; 12]) -> [f64; 365] {
    let mut year = [0.0; 365];
    let mut first = 0;
    for month in 0..12 {
        for day in 0..DAYS[month] {
            let from_middle = (day as f64 + 0.5) / DAYS[month] as f64 - 0.5;
            let (other, span) =
                if from_middle < 0.0 { ((month + 11) % 12, -from_middle) } else { ((month + 1) % 12, from_middle) };
            let reach = 0.5 * (1.0 + DAYS[other] as f64 / DAYS[month] as f64);
            year[first + day] = middles[month] + (middles[other] - middles[month]) * span / reach;
        }
        first += DAYS[month];
    }
    year
}

fn monthly(year: &[f64; 365]) -> [f64; 12] {
    let mut first = 0;
    DAYS.map(|days| {
        let mean = year[first..first + days].iter().sum::<f64>() / days as f64;
        first += days;
        mean
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_monthly_mean_is_kept_and_no_day_jumps() {
        let means = [-24.2, -19.8, -11.3, -5.7, 7.0, 13.0, 15.0, 11.0, 5.0, -3.0, -19.4, -22.8];
        let year = YearCurve::through(means);
        for (found, given) in monthly(&year.0).iter().zip(means) {
            assert!((found - given).abs() < 1e-9, "{found} {given}");
        }
        for day in 0..365 {
            assert!((year.on((day + 1) % 365) - year.on(day)).abs() < 1.5, "day {day}");
        }
    }
}
