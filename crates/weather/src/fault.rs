//! What is wrong with a weather file, where, and what would be right.

use snowhum_say::{Message, Tongue, weather_fault as say};

/// One thing wrong with a weather file.
#[derive(Debug, Clone, PartialEq)]
pub struct WeatherFault {
    /// Line in the file, from 1; `None` when it concerns the whole file.
    pub line: Option<usize>,
    /// Column or field, as the format names it.
    pub field: Option<Message>,
    /// What is wrong, and what would be right.
    pub says: Message,
}

/// Everything found wrong with a weather file, up to twenty faults.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub struct WeatherFaults {
    /// Name of the file as given.
    pub file: String,
    /// At least one.
    pub faults: Vec<WeatherFault>,
}

impl WeatherFaults {
    /// Each on a line.
    #[must_use]
    pub fn message(&self) -> Message {
        let one = |fault: &WeatherFault| match (fault.line, &fault.field) {
            (None, _) => say::whole(&self.file, &fault.says),
            (Some(line), None) => say::line(&self.file, line, &fault.says),
            (Some(line), Some(field)) => say::field(field, &self.file, line, &fault.says),
        };
        Message::lines(self.faults.iter().map(one))
    }
}

/// Faults gathered while a file is read, so that the keeper sees more than the first.
#[derive(Debug, Default)]
pub(crate) struct Faults(Vec<WeatherFault>);

impl Faults {
    const MOST: usize = 20;

    /// Notes a fault at a line and field.
    pub(crate) fn at(&mut self, line: usize, field: impl Into<Message>, says: Message) {
        if !self.full() {
            self.0.push(WeatherFault { line: Some(line), field: Some(field.into()), says });
        }
    }

    /// Whether reading on would tell the keeper nothing more.
    pub(crate) fn full(&self) -> bool {
        self.0.len() >= Self::MOST
    }

    /// The value, if nothing was wrong.
    pub(crate) fn or<T>(self, file: &str, value: T) -> Result<T, WeatherFaults> {
        if self.0.is_empty() { Ok(value) } else { Err(WeatherFaults { file: file.to_owned(), faults: self.0 }) }
    }
}

/// A fault of the whole file.
pub(crate) fn whole(file: &str, says: Message) -> WeatherFaults {
    WeatherFaults { file: file.to_owned(), faults: vec![WeatherFault { line: None, field: None, says }] }
}

/// A fault at one line.
pub(crate) fn line(file: &str, line: usize, says: Message) -> WeatherFaults {
    WeatherFaults { file: file.to_owned(), faults: vec![WeatherFault { line: Some(line), field: None, says }] }
}
