//! What is wrong with a weather file, where, and what would be right.

/// One thing wrong with a weather file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WeatherFault {
    /// Line in the file, from 1; `None` when it concerns the whole file.
    pub line: Option<usize>,
    /// Column or field, as the format names it.
    pub field: Option<String>,
    /// What is wrong.
    pub wrong: String,
    /// What would be right.
    pub remedy: String,
}

impl std::fmt::Display for WeatherFault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if let Some(line) = self.line {
            write!(f, "line {line}, ")?;
        }
        if let Some(field) = &self.field {
            write!(f, "{field}: ")?;
        }
        write!(f, "{}; {}", self.wrong, self.remedy)
    }
}

/// Everything found wrong with a weather file, up to twenty faults.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub struct WeatherFaults {
    /// Name of the file as given.
    pub file: String,
    /// At least one.
    pub faults: Vec<WeatherFault>,
}

impl std::fmt::Display for WeatherFaults {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        for (index, fault) in self.faults.iter().enumerate() {
            let end = if index == 0 { "" } else { "\n" };
            write!(f, "{end}{}: {fault}", self.file)?;
        }
        Ok(())
    }
}

/// Faults gathered while a file is read, so that the keeper sees more than the first.
#[derive(Debug, Default)]
pub(crate) struct Faults(Vec<WeatherFault>);

impl Faults {
    const MOST: usize = 20;

    /// Notes a fault at a line and field.
    pub(crate) fn at(&mut self, line: usize, field: &str, wrong: impl Into<String>, remedy: impl Into<String>) {
        if !self.full() {
            let (wrong, remedy) = (wrong.into(), remedy.into());
            self.0.push(WeatherFault { line: Some(line), field: Some(field.to_owned()), wrong, remedy });
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
pub(crate) fn whole(file: &str, wrong: impl Into<String>, remedy: impl Into<String>) -> WeatherFaults {
    let fault = WeatherFault { line: None, field: None, wrong: wrong.into(), remedy: remedy.into() };
    WeatherFaults { file: file.to_owned(), faults: vec![fault] }
}

/// A fault at one line.
pub(crate) fn line(file: &str, line: usize, wrong: impl Into<String>, remedy: impl Into<String>) -> WeatherFaults {
    let fault = WeatherFault { line: Some(line), field: None, wrong: wrong.into(), remedy: remedy.into() };
    WeatherFaults { file: file.to_owned(), faults: vec![fault] }
}
