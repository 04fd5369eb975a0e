//! How far from a yard the place of a weather file may lie, by `data/weather_files.toml`.

use crate::Place;
use serde::{Deserialize, Serialize};
use snowhum_figures::weather_files as figures;
use snowhum_units::Same;
use snowhum_units::{KelvinDifference, Metre};

/// Mean radius of the earth.
const EARTH: Metre = Metre::new(6_371_000.0);
const ELSEWHERE: Metre = Metre::new(1e3 * figures::ELSEWHERE);

/// Weather files of one place that lies far from the yard.
#[derive(Debug, Clone, PartialEq, Deserialize, Serialize)]
pub struct Far {
    /// Names of the files as given.
    pub files: String,
    /// Where, by their own header.
    pub place: Place,
    /// From the yard over the ground.
    pub distance: Metre,
    /// Above the yard; negative below.
    pub higher: Metre,
    /// Whether the answers are reckoned for this place in place of the yard's.
    pub is_reckoned_for: bool,
}

/// Whether answers are reckoned for a file's place in place of the yard's.
#[must_use]
pub fn is_elsewhere(place: Place, yard: Place) -> bool {
    distance(place, yard) > ELSEWHERE
}

/// Along a great circle.
fn distance(a: Place, b: Place) -> Metre {
    let (la, lb) = (a.latitude.radians(), b.latitude.radians());
    let east = (a.longitude - b.longitude).radians();
    let half = ((la - lb) / 2.0).same_sin().powi(2) + la.same_cos() * lb.same_cos() * (east / 2.0).same_sin().powi(2);
    Metre::new(EARTH.get() * 2.0 * half.sqrt().min(1.0).same_asin())
}

impl Far {
    /// How near over the ground a place is that is not spoken of.
    pub const NEAR: Metre = Metre::new(1e3 * figures::DISTANCE);
    /// How near in height.
    pub const AS_HIGH: Metre = Metre::new(figures::HEIGHT);

    /// What is to be said of files of `place`; `None` if it is near enough.
    #[must_use]
    pub fn from_yard(files: &str, place: Place, yard: Place) -> Option<Self> {
        let (distance, higher) = (distance(place, yard), place.elevation - yard.elevation);
        let far = Self { files: files.to_owned(), place, distance, higher, is_reckoned_for: false };
        (distance > Self::NEAR || far.is_off_in_height()).then_some(far)
    }

    /// Whether its height by itself is worth a word.
    #[must_use]
    pub fn is_off_in_height(&self) -> bool {
        self.higher.get().abs() > Self::AS_HIGH.get()
    }

    /// How much warmer it is than the yard by its height alone, in the standard atmosphere; negative where colder.
    #[must_use]
    pub fn warmer(&self) -> KelvinDifference {
        KelvinDifference::new(figures::LAPSE * -self.higher.get() / 1e3)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_units::Degree;

    fn place(latitude: f64, longitude: f64, elevation_m: f64) -> Place {
        Place { latitude: Degree::new(latitude), longitude: Degree::new(longitude), elevation: Metre::new(elevation_m) }
    }

    fn far(place: Place) -> Option<Far> {
        Far::from_yard("a.epw", place, self::place(61.7, 27.3, 105.0))
    }

    #[test]
    fn a_degree_of_latitude_is_111_km_and_far_a_near_place_is_not_spoken_of() {
        let one = far(place(62.7, 27.3, 105.0)).unwrap();
        assert!((one.distance.get() - 111_195.0).abs() < 1.0, "{}", one.distance);
        assert_eq!(far(place(62.1, 27.3, 250.0)), None);
        assert!(far(place(62.2, 27.3, 105.0)).is_some(), "56 km");
        assert!(far(place(61.7, 27.3, 256.0)).is_some(), "151 m higher");
    }

    #[test]
    fn a_place_the_answers_are_reckoned_for_is_always_said_to_be_far() {
        assert!(Far::NEAR < ELSEWHERE);
        assert!((Far::AS_HIGH.get() * figures::LAPSE / 1e3 - 1.0).abs() < 0.05, "150 m make about 1 K");
    }
}
