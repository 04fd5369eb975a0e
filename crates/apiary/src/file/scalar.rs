//! Single values: texts, numbers, quantities, words, dates and lists, each with its own faults.

use super::report::{Report, Spot};
use super::section::{Entry, Section, shown};
use crate::nearest::instead;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{Reckoned, read_day};
use jiff::civil::Date;
use snowhum_say::{Message, Text, fault, unread, yard_fault as say};
use snowhum_units::{Degree, Kelvin, Kilogram, Metre, ParseError, SquareMetre, number};
use std::str::FromStr;
use toml::de::DeValue;

/// Longest text of a value, in letters.
const LONGEST_TEXT: usize = 200;

/// A quantity whose limits can be told.
pub(crate) trait Measured: FromStr<Err = ParseError> + Copy {
    /// The number in its SI unit.
    fn si(self) -> f64;
}

macro_rules! measured {
    ($($name:ident),*) => {$(
        impl Measured for $name {
            fn si(self) -> f64 {
                self.get()
            }
        }
    )*};
}
measured!(Kilogram, Metre, SquareMetre, Degree, Kelvin);

/// Lowest and highest value, and how a keeper would say them.
pub(crate) struct Limits {
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) said: Text,
}

impl Limits {
    pub(crate) const fn new(low: f64, high: f64, said: Text) -> Self {
        Self { low, high, said }
    }

    pub(crate) fn holds(&self, value: f64) -> bool {
        (self.low..=self.high).contains(&value)
    }
}

impl<'a> Entry<'a> {
    pub(crate) fn text(&self, report: &mut Report) -> Option<&'a str> {
        let DeValue::String(text) = self.value else {
            return self.not_a("text", say::text_right(), report);
        };
        if text.chars().count() > LONGEST_TEXT {
            report.fault(&self.spot, say::text_long(), fault::letters(LONGEST_TEXT));
            return None;
        }
        Some(text)
    }

    /// A name: not empty, one line, at most 60 letters.
    pub(crate) fn name(&self, report: &mut Report) -> Option<String> {
        const LONGEST: usize = 60;
        let name = self.text(report)?.trim();
        if name.is_empty() || name.chars().count() > LONGEST || name.chars().any(char::is_control) {
            report.fault(&self.spot, say::no_name(shown(name)), say::name_right(LONGEST));
            return None;
        }
        Some(name.to_owned())
    }

    /// A plain number within limits.
    pub(crate) fn number(&self, limits: &Limits, report: &mut Report) -> Option<f64> {
        let Some(value) = plain(self.value).or_else(|| quoted(self.value)) else {
            return self.not_a("number", say::number_right((limits.said)()), report);
        };
        if !value.is_finite() || !limits.holds(value) {
            report.fault(&self.spot, say::number(value), say::number_right((limits.said)()));
            return None;
        }
        Some(value)
    }

    /// A whole number within limits.
    pub(crate) fn whole(&self, limits: &Limits, report: &mut Report) -> Option<u32> {
        let value = self.number(limits, report)?;
        if value.fract() != 0.0 || value < 0.0 || value > f64::from(u32::MAX) {
            report.fault(&self.spot, say::no_whole(value), say::whole_right((limits.said)()));
            return None;
        }
        Some(value as u32)
    }

    pub(crate) fn truth(&self, report: &mut Report) -> Option<bool> {
        match self.value {
            DeValue::Boolean(truth) => Some(*truth),
            _ => self.not_a("truth", say::truth_right(), report),
        }
    }

    /// A number with its unit, such as `"24 kg"`.
    pub(crate) fn quantity<Q: Measured>(&self, limits: &Limits, report: &mut Report) -> Option<Q> {
        let written = match (self.value, plain(self.value)) {
            (DeValue::String(_), _) => self.text(report)?.to_owned(),
            // A bare number parses as one without a unit, and its fault lists the units.
            (_, Some(number)) => number.to_string(),
            _ => return self.not_a("quantity", say::quoted_right((limits.said)()), report),
        };
        match written.parse::<Q>() {
            Ok(quantity) if limits.holds(quantity.si()) => Some(quantity),
            Ok(_) => {
                report.fault(&self.spot, fault::cannot_be(shown(&written)), say::limits_right((limits.said)()));
                None
            }
            Err(error) => {
                // Lengths of a hive are millimetres and those of a site metres: the limits say which.
                let is_length = matches!(error, ParseError::NoUnit { metric: "cm", .. });
                // The quantity's own example knows nothing of this field; the limits do.
                let (problem, own, _) = unread(&error);
                let limits = (limits.said)();
                let remedy = if is_length { say::unit_right(limits) } else { say::then_limits(limits, own) };
                report.fault(&self.spot, problem, remedy);
                None
            }
        }
    }

    /// One of a few words.
    pub(crate) fn word<T: Copy>(&self, choices: &[(&str, T)], report: &mut Report) -> Option<T> {
        let written = self.text(report)?;
        if let Some((_, choice)) = choices.iter().find(|(word, _)| same_name(word, written)) {
            return Some(*choice);
        }
        self.no_such_word(written, choices.iter().map(|(word, _)| *word), report);
        None
    }

    /// Reports a word that is not among the known ones.
    pub(crate) fn no_such_word<'w>(&self, written: &str, known: impl Iterator<Item = &'w str>, report: &mut Report) {
        report.fault(&self.spot, fault::unknown(shown(written)), instead(written, known));
    }

    /// Text that parses into something with its own explanation.
    pub(crate) fn parsed<T: FromStr<Err = Wrong>>(&self, report: &mut Report) -> Option<T> {
        let text = self.text(report)?;
        text.parse().map_err(|wrong| report.wrong(&self.spot, wrong)).ok()
    }

    /// A day, as a TOML date or as text.
    pub(crate) fn date(&self, report: &mut Report) -> Option<Date> {
        let written = match self.value {
            DeValue::Datetime(moment) => match moment.date {
                Some(date) => date.to_string(),
                None => moment.to_string(),
            },
            DeValue::String(text) => shown(text.trim()),
            _ => return self.not_a("date", say::date_right(), report),
        };
        read_day(&written, Reckoned::Whole).map_err(|wrong| report.wrong(&self.spot, wrong)).ok()
    }

    pub(crate) fn list(&self, report: &mut Report) -> Option<Vec<Entry<'a>>> {
        let DeValue::Array(items) = self.value else {
            return self.not_a("list", say::list_right(), report);
        };
        let entry = |(at, item): (usize, &'a toml::Spanned<DeValue<'a>>)| Entry {
            value: item.get_ref(),
            spot: Spot { line: report.line_at(item.span().start), field: format!("{}[{at}]", self.spot.field) },
        };
        Some(items.iter().enumerate().map(entry).collect())
    }

    pub(crate) fn section(&self, example: impl Into<Message>, report: &mut Report) -> Option<Section<'a>> {
        match self.value {
            DeValue::Table(table) => Some(Section::of(table, self.spot.clone())),
            _ => self.not_a("table", say::table_right(example), report),
        }
    }

    fn not_a<T>(&self, wanted: &'static str, remedy: Message, report: &mut Report) -> Option<T> {
        let (kind, text) = match self.value {
            DeValue::String(text) => ("text", shown(text)),
            DeValue::Integer(_) | DeValue::Float(_) => ("number", String::new()),
            DeValue::Boolean(truth) => ("truth", truth.to_string()),
            DeValue::Datetime(_) => ("date", String::new()),
            DeValue::Array(_) => ("list", String::new()),
            DeValue::Table(_) => ("table", String::new()),
        };
        report.fault(&self.spot, say::not_a(kind, text, wanted), remedy);
        None
    }
}

/// The number of a text, such as one with a decimal comma, which TOML has only in quotes.
fn quoted(value: &DeValue<'_>) -> Option<f64> {
    if let DeValue::String(text) = value { number(text).ok() } else { None }
}

/// The number of an integer or float; what is too large for either is infinite.
fn plain(value: &DeValue<'_>) -> Option<f64> {
    match value {
        DeValue::Integer(whole) => {
            Some(i64::from_str_radix(whole.as_str(), whole.radix()).map_or(f64::INFINITY, |whole| whole as f64))
        }
        DeValue::Float(float) => Some(float.as_str().parse().unwrap_or(f64::INFINITY)),
        _ => None,
    }
}
