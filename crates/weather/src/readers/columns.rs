//! Numbers out of fields, and the count of those no weather can have.

use super::text::shown;
use crate::fault::Faults;
use snowhum_say::{Message, weather, weather_fault as say};

/// One column of a format: its name, what stands for missing, what weather can be.
pub(super) struct Column {
    pub(super) name: &'static str,
    /// Values from here up mean missing.
    pub(super) missing_from: f64,
    /// Lowest and highest value weather can have.
    pub(super) plausible: (f64, f64),
}

/// Values dropped, by column.
#[derive(Default)]
pub(super) struct Dropped(Vec<(&'static str, usize)>);

impl Dropped {
    fn count(&mut self, name: &'static str) {
        match self.0.iter_mut().find(|(known, _)| *known == name) {
            Some((_, count)) => *count += 1,
            None => self.0.push((name, 1)),
        }
    }

    /// The value, if weather can have it; else it is counted.
    pub(super) fn keep(&mut self, name: &'static str, value: f64, plausible: (f64, f64)) -> Option<f64> {
        if (plausible.0..=plausible.1).contains(&value) {
            return Some(value);
        }
        self.count(name);
        None
    }

    /// A note a column.
    pub(super) fn notes(self) -> impl Iterator<Item = Message> {
        self.0.into_iter().map(|(name, count)| weather::dropped(name, count))
    }
}

impl Column {
    /// The number in a field: `None` if it is empty, missing or not plausible.
    pub(super) fn read(&self, line: usize, field: &str, faults: &mut Faults, dropped: &mut Dropped) -> Option<f64> {
        let field = field.trim();
        if field.is_empty() {
            return None;
        }
        match field.parse::<f64>() {
            Ok(value) if value >= self.missing_from => None,
            Ok(value) if value.is_finite() => dropped.keep(self.name, value, self.plausible),
            _ => {
                faults.at(line, self.name, say::number(shown(field)));
                None
            }
        }
    }
}
