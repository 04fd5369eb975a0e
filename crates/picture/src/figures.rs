//! Figures as a keeper reads them.

use snowhum_units::{
    CubicMetrePerSecond, Fraction, Kelvin, Kilogram, KilogramPerSecond, Metre, MetrePerSecond, SquareMetre, System,
};

/// What is written for a number that is none.
const UNKNOWN: &str = "not known";
/// Beyond this a number is no longer written out.
const LARGEST: f64 = 1e6;

/// Prints quantities in one system of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Figures {
    pub(crate) system: System,
}

impl Figures {
    pub(crate) fn temperature(self, value: Kelvin) -> String {
        said(value.get(), || value.show(self.system, 0))
    }

    pub(crate) fn mass(self, value: Kilogram) -> String {
        let decimals = if value.get() < 9.95 && self.system == System::Metric { 1 } else { 0 };
        said(value.get(), || value.show(self.system, decimals))
    }

    pub(crate) fn length(self, value: Metre) -> String {
        let decimals = if self.system == System::Us && value.get() < 0.1 { 1 } else { 0 };
        said(value.get(), || value.show(self.system, decimals))
    }

    /// Thickness of a sheet, if it is thick enough to be told.
    pub(crate) fn thickness(self, value: Metre) -> Option<String> {
        let least = if self.system == System::Us { 0.001_27 } else { 0.000_75 };
        let is_told = !value.get().is_finite() || value.get() >= least;
        is_told.then(|| self.length(value))
    }

    pub(crate) fn speed(self, value: MetrePerSecond) -> String {
        said(value.get(), || value.show(self.system, 0))
    }

    /// An opening's area, cm² or square inches.
    pub(crate) fn area(self, value: SquareMetre) -> String {
        said(value.get(), || match self.system {
            System::Metric => format!("{} cm²", short(value.get() * 1e4)),
            System::Us => format!("{} sq in", short(value.get() / 0.000_645_16)),
        })
    }

    /// Air through an opening, without its sign.
    pub(crate) fn flow(self, value: CubicMetrePerSecond) -> String {
        said(value.get(), || match self.system {
            System::Metric => format!("{:.2} L/s", value.get().abs() * 1e3),
            System::Us => format!("{:.2} cu ft/min", value.get().abs() * 2_118.88),
        })
    }

    /// Water on a face, a day.
    pub(crate) fn wetting(self, value: KilogramPerSecond) -> String {
        let grams = value.get() * 86_400e3;
        said(grams, || match self.system {
            System::Metric => format!("{} g a day", short(grams)),
            System::Us => format!("{:.2} oz a day", grams / 28.349_523),
        })
    }
}

/// A share in whole hundredths.
pub(crate) fn percent(share: Fraction) -> String {
    said(share.get(), || format!("{:.0} %", share.get() * 100.0))
}

/// A count with thin spaces between thousands.
pub(crate) fn count(value: u32) -> String {
    let digits = value.to_string();
    let mut out = String::new();
    for (at, digit) in digits.chars().enumerate() {
        if at > 0 && (digits.len() - at).is_multiple_of(3) && digits.len() > 4 {
            out.push('\u{2009}');
        }
        out.push(digit);
    }
    out
}

/// A count of bees, rounded to what an estimate can say.
pub(crate) fn about(value: u32) -> String {
    let step = match value {
        0..100 => 1,
        100..1_000 => 10,
        1_000..3_000 => 100,
        3_000..20_000 => 500,
        _ => 1_000,
    };
    count((f64::from(value) / f64::from(step)).round() as u32 * step)
}

/// A number to whole units, or to one place below ten.
fn short(value: f64) -> String {
    if value.abs() < 9.95 { format!("{value:.1}") } else { format!("{value:.0}") }
}

fn said(value: f64, show: impl Fn() -> String) -> String {
    if !value.is_finite() {
        return UNKNOWN.to_owned();
    }
    if value.abs() > LARGEST { "too large to say".to_owned() } else { unbroken(&show()) }
}

/// A figure and its unit stay on one line; a minus is no hyphen.
fn unbroken(figure: &str) -> String {
    figure.replace('-', "−").replace(' ', "\u{a0}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_that_are_none_are_said_so() {
        let metric = Figures { system: System::Metric };
        assert_eq!(metric.mass(Kilogram::new(f64::NAN)), "not known");
        assert_eq!(metric.temperature(Kelvin::new(f64::INFINITY)), "not known");
        assert_eq!(metric.mass(Kilogram::new(1e300)), "too large to say");
    }

    #[test]
    fn figures_are_rounded_to_what_they_can_say() {
        let metric = Figures { system: System::Metric };
        assert_eq!(metric.temperature(Kelvin::from_celsius(-17.6)), "−18\u{a0}°C");
        assert_eq!(metric.mass(Kilogram::new(4.26)), "4.3\u{a0}kg");
        assert_eq!(metric.mass(Kilogram::new(14.26)), "14\u{a0}kg");
        assert_eq!(metric.wetting(KilogramPerSecond::new(4.2e-3 / 86_400.0)), "4.2\u{a0}g\u{a0}a\u{a0}day");
        assert_eq!(about(11_240), "11\u{2009}000");
        assert_eq!(about(2_340), "2300");
        assert_eq!(Figures { system: System::Us }.area(SquareMetre::new(0.000_645_16)), "1.0\u{a0}sq\u{a0}in");
    }
}
