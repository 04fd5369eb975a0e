//! The services of weather, where each may be asked and what it wants said beside its data.

use crate::{OpenMeteoTerms, Position};
use snowhum_say::{Message, forecast as say};

/// A service of weather forecasts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Service {
    /// MET Norway, Locationforecast 2.0 `compact`: the whole world, about nine days.
    MetNorway,
    /// The US National Weather Service, gridded forecast: the United States, about seven days.
    Nws,
    /// Open-Meteo: the whole world, for use that is not commercial.
    OpenMeteo,
}

/// South, north, west and east edges in degrees.
type Edges = [f64; 4];

/// Coarse edges of where the National Weather Service forecasts: boxes round the states and islands. They
/// hold some of Canada and Mexico too, where the service itself says no; they keep a place in Europe from asking.
const UNITED_STATES: [Edges; 6] = [
    [24.3, 49.5, -125.0, -66.8],
    [51.0, 71.6, -180.0, -129.9],
    [51.0, 53.5, 172.0, 180.0],
    [18.8, 22.4, -160.7, -154.6],
    [17.5, 18.7, -67.5, -64.4],
    [13.1, 15.4, 144.5, 146.2],
];

impl Service {
    /// The services that may be asked for a place, best first: MET Norway, then the National Weather Service in the
    /// United States, then Open-Meteo if the keeper has accepted its terms.
    #[must_use]
    pub fn for_place(position: &Position, terms: OpenMeteoTerms) -> Vec<Self> {
        let all = [Self::MetNorway, Self::Nws, Self::OpenMeteo];
        let may = |service: &Self| match service {
            Self::OpenMeteo => terms == OpenMeteoTerms::NonCommercial,
            _ => service.covers(position),
        };
        all.into_iter().filter(may).collect()
    }

    /// The line that must stand beside the data wherever they are shown.
    ///
    /// Source: terms of service of MET Norway (CC BY 4.0) and Open-Meteo (CC BY 4.0), and the National Weather
    /// Service's statement that its data are in the public domain.
    #[must_use]
    pub const fn attribution(self) -> &'static str {
        match self {
            Self::MetNorway => "Data from MET Norway, CC BY 4.0 (https://creativecommons.org/licenses/by/4.0/)",
            Self::Nws => "Data from the US National Weather Service, public domain",
            Self::OpenMeteo => "Weather data by Open-Meteo.com (https://open-meteo.com/), CC BY 4.0",
        }
    }

    /// Whether the service may know the place. The National Weather Service has the last word near a border.
    #[must_use]
    pub fn covers(self, position: &Position) -> bool {
        let (latitude, longitude) = (position.latitude.get(), position.longitude.get());
        let within = |[south, north, west, east]: &Edges| {
            (*south..=*north).contains(&latitude) && (*west..=*east).contains(&longitude)
        };
        self != Self::Nws || UNITED_STATES.iter().any(within)
    }

    /// Its name.
    #[must_use]
    pub fn message(self) -> Message {
        match self {
            Self::MetNorway => Message::own("MET Norway"),
            Self::Nws => say::nws(),
            Self::OpenMeteo => Message::own("Open-Meteo"),
        }
    }

    /// Whether the service wants to know whom to write to.
    #[must_use]
    pub const fn wants_contact(self) -> bool {
        !matches!(self, Self::OpenMeteo)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::Degree;

    fn at(latitude: f64, longitude: f64) -> Position {
        Position { latitude: Degree::new(latitude), longitude: Degree::new(longitude), elevation: None }
    }

    #[test]
    fn the_national_weather_service_is_offered_in_the_united_states_alone() {
        for inside in [at(47.92, -97.03), at(64.84, -147.72), at(52.9, 173.0), at(19.7, -155.1), at(18.4, -66.1)] {
            assert!(Service::Nws.covers(&inside), "{inside:?}");
        }
        for outside in [at(60.17, 24.94), at(55.75, 37.62), at(43.06, 141.35), at(53.55, -113.49), at(-45.0, 170.0)] {
            assert!(!Service::Nws.covers(&outside), "{outside:?}");
        }
    }

    #[test]
    fn the_order_is_met_norway_then_the_country_then_what_was_opted_into() {
        let order = |position, terms| Service::for_place(&position, terms);
        let (fargo, kuopio) = (at(46.88, -96.79), at(62.89, 27.68));
        assert_eq!(order(kuopio, OpenMeteoTerms::NotAccepted), [Service::MetNorway]);
        assert_eq!(order(fargo, OpenMeteoTerms::NotAccepted), [Service::MetNorway, Service::Nws]);
        assert_eq!(order(kuopio, OpenMeteoTerms::NonCommercial), [Service::MetNorway, Service::OpenMeteo]);
    }
}
