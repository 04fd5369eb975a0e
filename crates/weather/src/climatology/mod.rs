//! The climate of any place in the embedded grid: monthly means of temperature and precipitation.

mod grid;
mod months;

pub use months::YearCurve;
pub(crate) use months::days_in_month;

use crate::{Place, Provenance};
use snowhum_figures::weather_limits as limits;
use snowhum_say::{Message, Tongue, weather as say, weather_fault as wrong};
use snowhum_units::{Kelvin, KelvinDifference, Metre};

const ATTRIBUTION: &str = "Contains modified Copernicus Climate Change Service information (ERA5, 2000-2025, CC-BY-4.0); \
     neither the European Commission nor ECMWF is responsible for any use of it.";

/// Why the embedded grid says nothing about a place.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum OutsideGrid {
    /// Too far north, too far south or in the warm belt.
    Latitude(f64),
    /// No number, or no place on earth.
    NoPlace {
        /// As given.
        latitude: f64,
        /// As given.
        longitude: f64,
    },
    /// More than a degree from any land.
    OpenSea {
        /// As given.
        latitude: f64,
        /// As given.
        longitude: f64,
    },
    /// The embedded grid does not read back.
    Damaged,
}

impl OutsideGrid {
    /// With what would be right.
    #[must_use]
    pub fn message(&self) -> Message {
        match *self {
            Self::Latitude(latitude) => wrong::latitude(latitude),
            Self::NoPlace { latitude, longitude } => wrong::no_place(latitude, longitude),
            Self::OpenSea { latitude, longitude } => wrong::open_sea(latitude, longitude),
            Self::Damaged => wrong::damaged(),
        }
    }
}

/// Monthly means at a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Climate {
    /// Where.
    pub place: Place,
    /// Mean 2 m temperature, January first.
    pub temperature: [Kelvin; 12],
    /// Rain and melted snow a month, January first.
    pub precipitation: [Metre; 12],
    /// Temperature that one hour in a hundred of the year undercuts, when the keeper knows it.
    pub design_cold: Option<Kelvin>,
    /// What it stands on.
    pub provenance: Provenance,
}

impl Climate {
    /// The climate of a place from the embedded grid.
    ///
    /// Bilinear between the four cells round it, each first brought to the place's height by 5 K/km. Valid on land and
    /// within about a degree of it, 30 to 75 N and 30 to 56 S.
    ///
    /// # Errors
    /// [`OutsideGrid`], whose message asks for a file.
    ///
    /// Source: ERA5 monthly means 2000-2025 (see `data/climatology/README.md`).
    ///
    /// ```
    /// use snowhum_units::{Degree, Metre};
    /// use snowhum_weather::{Climate, Place};
    /// let winnipeg = Place { latitude: Degree::new(49.9), longitude: Degree::new(-97.1), elevation: Metre::new(235.0) };
    /// let january = Climate::at(winnipeg).unwrap().temperature[0];
    /// assert!((-19.0..-13.0).contains(&january.celsius()));
    /// ```
    pub fn at(place: Place) -> Result<Self, OutsideGrid> {
        let (latitude, longitude) = (place.latitude.get(), place.longitude.get());
        let on_earth = (-90.0..=90.0).contains(&latitude) && (-180.0..=360.0).contains(&longitude);
        if !on_earth {
            return Err(OutsideGrid::NoPlace { latitude, longitude });
        }
        let grid = grid::grid().ok_or(OutsideGrid::Damaged)?;
        let corners = grid::corners(latitude, longitude).ok_or(OutsideGrid::Latitude(latitude))?;
        let mean = grid.mean(&corners).ok_or(OutsideGrid::OpenSea { latitude, longitude })?;
        let higher_m = place.elevation.get() - mean.elevation_m;
        Ok(Self {
            place,
            temperature: mean.temperature_c.map(|t_c| Kelvin::from_celsius(t_c - limits::LAPSE * higher_m)),
            precipitation: mean.precipitation_mm.map(|mm| Metre::new(mm / 1000.0)),
            design_cold: None,
            provenance: provenance(mean.elevation_m, higher_m),
        })
    }

    /// A climate from the keeper's own monthly means, January first.
    #[must_use]
    pub fn from_months(place: Place, temperature: [Kelvin; 12], precipitation: [Metre; 12]) -> Self {
        let provenance = Provenance { source: say::given(), ..Provenance::default() };
        Self { place, temperature, precipitation, design_cold: None, provenance }
    }

    /// The same climate with a known cold: the temperature that one hour in a hundred undercuts (a 99 % heating
    /// design temperature).
    #[must_use]
    pub fn with_design_cold(self, design_cold: Kelvin) -> Self {
        Self { design_cold: Some(design_cold), ..self }
    }

    /// Mean of the coldest month.
    #[must_use]
    pub fn coldest_month(&self) -> Kelvin {
        self.temperature.iter().copied().fold(self.temperature[0], Kelvin::min)
    }

    /// Mean of the warmest month.
    #[must_use]
    pub fn warmest_month(&self) -> Kelvin {
        self.temperature.iter().copied().fold(self.temperature[0], Kelvin::max)
    }

    /// Warmest month less coldest month.
    #[must_use]
    pub fn annual_range(&self) -> KelvinDifference {
        self.warmest_month() - self.coldest_month()
    }

    /// Daily mean temperature in °C over the year, with the monthly means kept.
    #[must_use]
    pub fn daily_means(&self) -> YearCurve {
        YearCurve::through(self.temperature.map(Kelvin::celsius))
    }
}

fn provenance(ground_m: f64, higher_m: f64) -> Provenance {
    // The licence asks for these words.
    let mut notes = vec![Message::own(ATTRIBUTION)];
    if higher_m.abs() > limits::COARSE_HEIGHT {
        notes.push(say::coarse(higher_m > 0.0, Metre::new(ground_m), Metre::new(higher_m.abs())));
    }
    Provenance { source: say::built_in(), notes, far: Vec::new() }
}
