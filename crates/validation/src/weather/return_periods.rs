//! The lowest temperature once in so many years, against printed design conditions.

use snowhum_units::{Kelvin, KelvinDifference};
use snowhum_weather::return_period::once_in;

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{Table, largest};

/// Fifty-six figures printed to a tenth of a degree from means and sd that are rounded alike.
pub(super) fn check() -> Check {
    let table = Table::new(include_str!("../../data/return_periods.csv"));
    let off = table.rows().map(|row| {
        let (mean, sd) = (Kelvin::from_celsius(row.number("mean")), KelvinDifference::new(row.number("sd")));
        once_in(row.number("years"), mean, sd).map_or(f64::NAN, |cold| cold.celsius() - row.number("printed"))
    });
    Claim {
        id: "A-cold-1",
        class: Class::Exact,
        quantity: "cold of once in 5, 10, 20 and 50 years at fourteen stations, from mean and sd of the yearly lowest",
        source: "design conditions printed at the head of public weather files (ASHRAE Fundamentals 2009 to 2021)",
        status: Basis::Published,
    }
    .differs_at_most(0.2, "K", largest(off))
    .because("mean and sd are printed to a tenth, which alone moves the fiftieth year by 0.2 K")
}
