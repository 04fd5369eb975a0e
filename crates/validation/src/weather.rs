//! The weather generator: against its own inputs, against stations, against a winter that was.

mod inputs;
mod made;
mod moments;
mod own_inputs;
mod real_winter;
mod return_periods;
mod stations;

pub(crate) use made::{MONTHS, MadeWinters};
pub(crate) use real_winter::RealWinter;
pub(crate) use stations::{Station, YEARS};

use crate::Fault;
use crate::check::Check;

/// All that is computed of weather.
pub(crate) struct Weather {
    /// Two hundred winters at each of three places.
    pub(crate) made: Vec<MadeWinters>,
    /// Figures of stations beside made ones.
    pub(crate) stations: Vec<Station>,
    /// A winter that was, among made ones.
    pub(crate) real: RealWinter,
}

impl Weather {
    pub(crate) fn compute() -> Result<Self, Fault> {
        let made = made::PLACES.into_iter().map(MadeWinters::of).collect::<Result<Vec<_>, _>>()?;
        let northway = made.iter().find(|winters| winters.place == made::NORTHWAY);
        let real = RealWinter::among(northway.ok_or(Fault::Place)?)?;
        Ok(Self { stations: stations::all()?, real, made })
    }

    pub(crate) fn checks(&self) -> Vec<Check> {
        let mut checks = own_inputs::checks(&self.made);
        checks.push(return_periods::check());
        checks.extend([stations::depth(&self.stations), stations::told(&self.stations)]);
        checks
    }
}
