//! Everything computed once, for page, pictures and tests.

use snowhum_winter::Parameters;

use crate::check::Check;
use crate::fault::Fault;
use crate::picture::Picture;
use crate::pictures;
use crate::real_winters::RealWinters;
use crate::report;
use crate::weather::Weather;

/// Every check and table, computed with the shipped code and parameters.
pub struct Validation {
    pub(crate) parameters: Parameters,
    pub(crate) weather: Weather,
    pub(crate) real: RealWinters,
    checks: Vec<Check>,
    pictures: Vec<Picture>,
}

impl Validation {
    /// Computes all of it; takes some seconds.
    ///
    /// # Errors
    /// When shipped data cannot be read.
    pub fn compute() -> Result<Self, Fault> {
        let parameters = Parameters::shipped()?;
        let weather = Weather::compute()?;
        let real = RealWinters::compute(&parameters)?;
        let mut checks = of_the_model(&parameters);
        checks.extend(weather.checks());
        let pictures = pictures::all(&parameters, &weather, &real);
        Ok(Self { parameters, weather, real, checks, pictures })
    }

    /// Every check, in the order of the page.
    #[must_use]
    pub fn checks(&self) -> &[Check] {
        &self.checks
    }

    /// What was found in real yards.
    #[must_use]
    pub fn real_winters(&self) -> &RealWinters {
        &self.real
    }

    /// The pictures of `docs/pictures`.
    #[must_use]
    pub fn pictures(&self) -> &[Picture] {
        &self.pictures
    }

    /// The page `docs/VALIDATION.md`.
    #[must_use]
    pub fn page(&self) -> String {
        report::page(self)
    }

    /// The page `docs/PARAMETERS.md`.
    ///
    /// # Errors
    /// Never with the shipped data.
    pub fn parameters_page(&self) -> Result<String, Fault> {
        Ok(report::figures(&self.parameters)?)
    }
}

fn of_the_model(parameters: &Parameters) -> Vec<Check> {
    let groups = [
        crate::psychrometrics::checks(),
        crate::build_ups::checks(),
        crate::air_flow::checks(),
        crate::condensation::checks(),
        crate::honey::checks(),
        crate::network::checks(),
        crate::sun::checks(),
        crate::moisture::checks(),
        crate::cluster_shape::checks(parameters),
        crate::hive_shape::checks(parameters),
        crate::numbers::checks(parameters),
        crate::cavities::checks(parameters),
        crate::season::checks(parameters),
        crate::losses::checks(parameters),
        crate::practice::checks(parameters),
    ];
    groups.concat()
}
