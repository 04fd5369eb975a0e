//! The one reader of files of figures: at run time for figures that a run may vary, while the house is built for the others.

use crate::figure::{Figure, FigureRow};
use serde::Deserialize;
use std::collections::BTreeMap;

/// Why a file of figures cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum FigureFault {
    /// Not the expected form.
    #[error("the figures cannot be read: {0}")]
    Form(#[from] toml::de::Error),
    /// A figure is not there.
    #[error("figure {0} is missing")]
    Missing(String),
    /// A figure that nothing uses.
    #[error("figure {0} is not known; is it spelled right?")]
    Unknown(String),
    /// Low, value and high out of order.
    #[error("figure {0}: low, value and high must rise in that order")]
    Order(String),
}

/// A file of figures as read, from which each is taken by its name.
#[derive(Debug, Deserialize)]
pub struct FigureFile {
    parameter: BTreeMap<String, Figure>,
    #[serde(default)]
    row: BTreeMap<String, FigureRow>,
}

impl FigureFile {
    /// Reads the text of a file.
    ///
    /// # Errors
    /// When it is not TOML or not of the expected form.
    pub fn read(text: &str) -> Result<Self, FigureFault> {
        Ok(toml::from_str(text)?)
    }

    /// Takes a figure out.
    ///
    /// # Errors
    /// When it is not there or its range out of order.
    pub fn take(&mut self, name: &str) -> Result<Figure, FigureFault> {
        let figure = self.parameter.remove(name).ok_or_else(|| FigureFault::Missing(name.to_owned()))?;
        let ordered = match (figure.low, figure.high) {
            (Some(low), Some(high)) => low <= figure.value && figure.value <= high,
            (None, None) => !figure.varies,
            _ => false,
        };
        ordered.then_some(figure).ok_or_else(|| FigureFault::Order(name.to_owned()))
    }

    /// Ends the reading.
    ///
    /// # Errors
    /// When a figure is left that nothing took.
    pub fn finish(self) -> Result<(), FigureFault> {
        match self.parameter.into_keys().chain(self.row.into_keys()).next() {
            Some(unknown) => Err(FigureFault::Unknown(unknown)),
            None => Ok(()),
        }
    }

    /// Takes the rows out, by name.
    pub fn take_rows(&mut self) -> BTreeMap<String, FigureRow> {
        std::mem::take(&mut self.row)
    }

    /// Takes all that is left, by name.
    ///
    /// # Errors
    /// When a range is out of order, or a row is left.
    pub fn take_all(mut self) -> Result<BTreeMap<String, Figure>, FigureFault> {
        let names: Vec<String> = self.parameter.keys().cloned().collect();
        let figures = names.into_iter().map(|name| self.take(&name).map(|figure| (name, figure)));
        let figures = figures.collect::<Result<_, _>>()?;
        self.finish()?;
        Ok(figures)
    }
}
