//! One comparison of a computed figure with one from outside.

use std::fmt;

/// How strict a check is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Class {
    /// A law with one right answer.
    Exact,
    /// What must rise, fall, stay or lie between.
    Shape,
    /// A measured number from the list fixed with the design, with the band its measurement allows.
    Numbers,
    /// A further measured or derived number, found since or from a weaker source; no share of these must hold.
    Further,
    /// What the trade finds, without a measurement that could be named.
    Practice,
}

/// Where the expected figure comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// Read in a named publication.
    Published,
    /// Computed with another program from a published law.
    OutsideTool,
    /// Arithmetic on published figures.
    Derived,
    /// What the trade does or finds, without a named measurement.
    CommonPractice,
    /// Recalled, not read.
    FromMemory,
}

/// Whether the computed figure lies in the band.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// It does.
    Inside,
    /// It does not.
    Outside,
}

/// One comparison.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// Short and stable: class letter, group, number.
    pub id: &'static str,
    /// How strict it is.
    pub class: Class,
    /// What is compared, and under which conditions.
    pub quantity: String,
    /// Who says so.
    pub source: &'static str,
    /// How well the expected figure is founded.
    pub status: Basis,
    /// Expected value and band, in words.
    pub expected: String,
    /// Computed value, in words, rounded so that it is the same on every machine.
    pub computed: String,
    /// Whether it lies in the band.
    pub verdict: Verdict,
    /// Why it lies outside, or what the figure stands for.
    pub explanation: Option<&'static str>,
}

/// What is expected, and who says so: the half of a check that does not depend on the model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Claim {
    /// Short and stable: class letter, group, number.
    pub id: &'static str,
    /// How strict it is.
    pub class: Class,
    /// What is compared, and under which conditions.
    pub quantity: &'static str,
    /// Who says so.
    pub source: &'static str,
    /// How well the expected figure is founded.
    pub status: Basis,
}

/// A band with its unit and the decimals worth printing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// Least value allowed.
    pub low: f64,
    /// Greatest value allowed.
    pub high: f64,
    /// Unit, as printed.
    pub unit: &'static str,
    /// Decimals printed.
    pub decimals: usize,
}

impl Claim {
    /// A number that must lie in a band.
    #[must_use]
    pub fn within(self, band: Band, computed: f64) -> Check {
        let Band { low, high, unit, decimals } = band;
        let expected = match (low.is_finite(), high.is_finite()) {
            (true, true) => format!("{low:.decimals$} to {high:.decimals$} {unit}"),
            (true, false) => format!("at least {low:.decimals$} {unit}"),
            _ => format!("at most {high:.decimals$} {unit}"),
        };
        let expected = expected.trim_end().to_owned();
        // A figure that the model holds at the band's very end must not fall out by rounding.
        let rounding = 1e-9 * computed.abs();
        let inside = low - rounding <= computed && computed <= high + rounding;
        let computed = format!("{computed:.decimals$} {unit}");
        self.judged(expected, computed.trim_end().to_owned(), inside)
    }

    /// The largest of many differences, which must not pass a limit.
    #[must_use]
    pub fn differs_at_most(self, limit: f64, unit: &'static str, largest: f64) -> Check {
        /// Below this a difference is rounding, and not the same on every machine.
        const ROUNDING: f64 = 1e-6;
        let floor = ROUNDING.min(limit);
        let computed = match largest {
            _ if largest.is_nan() => "no number".to_owned(),
            _ if largest < floor => format!("under {floor:e} {unit}"),
            _ => format!("{largest:.1e} {unit}"),
        };
        self.judged(format!("differs by at most {limit:e} {unit}"), computed, largest <= limit)
    }

    /// A statement that must hold, with the figures it rests on.
    #[must_use]
    pub fn holds(self, expected: &str, computed: String, inside: bool) -> Check {
        self.judged(expected.to_owned(), computed, inside)
    }

    fn judged(self, expected: String, computed: String, inside: bool) -> Check {
        let verdict = if inside { Verdict::Inside } else { Verdict::Outside };
        let Self { id, class, quantity, source, status } = self;
        Check {
            id,
            class,
            quantity: quantity.to_owned(),
            source,
            status,
            expected,
            computed,
            verdict,
            explanation: None,
        }
    }
}

impl Band {
    /// From `low` to `high`.
    #[must_use]
    pub const fn new(low: f64, high: f64, unit: &'static str, decimals: usize) -> Self {
        Self { low, high, unit, decimals }
    }

    /// A value give or take `part` of it.
    #[must_use]
    pub fn part(value: f64, part: f64, unit: &'static str, decimals: usize) -> Self {
        Self::new(value * (1.0 - part), value * (1.0 + part), unit, decimals)
    }
}

impl Check {
    /// Adds why the figure lies where it does.
    #[must_use]
    pub fn because(self, explanation: &'static str) -> Self {
        Self { explanation: Some(explanation), ..self }
    }

    /// Whether the computed figure lies in its band.
    #[must_use]
    pub fn is_inside(&self) -> bool {
        self.verdict == Verdict::Inside
    }
}

impl Class {
    /// All of them, strictest first.
    pub const ALL: [Self; 5] = [Self::Exact, Self::Shape, Self::Numbers, Self::Further, Self::Practice];
}

impl fmt::Display for Class {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Exact => "A exact",
            Self::Shape => "B shape",
            Self::Numbers => "C numbers",
            Self::Further => "further",
            Self::Practice => "practice",
        })
    }
}

impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Published => "published",
            Self::OutsideTool => "outside tool",
            Self::Derived => "derived from published",
            Self::CommonPractice => "common practice",
            Self::FromMemory => "from memory",
        })
    }
}

impl fmt::Display for Verdict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Inside => "inside",
            Self::Outside => "OUTSIDE",
        })
    }
}
