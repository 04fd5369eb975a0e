//! How far from a yard the place of a weather file may lie, by `data/weather_files.toml`.

use crate::Place;
use serde::{Deserialize, Serialize};
use snowhum_units::Same;
use snowhum_units::{KelvinDifference, Metre, System};

const SHIPPED: &str = include_str!("../../../data/weather_files.toml");
/// Mean radius of the earth.
const EARTH: Metre = Metre::new(6_371_000.0);

/// What is near enough, and what height is worth.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
pub struct Nearness {
    distance: Figure,
    height: Figure,
    elsewhere: Figure,
    lapse: Figure,
}

/// One figure; unit, source and status stand in the file.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize, Serialize)]
struct Figure {
    value: f64,
}

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
    nearness: Nearness,
}

impl Nearness {
    /// The figures this version ships with.
    ///
    /// # Errors
    /// Never with the shipped file, which a test reads; the signature keeps a panic out of reach.
    pub fn shipped() -> Result<Self, toml::de::Error> {
        toml::from_str(SHIPPED)
    }

    /// What is to be said of files of `place`; `None` if it is near enough.
    #[must_use]
    pub fn far(self, files: &str, place: Place, yard: Place) -> Option<Far> {
        let (distance, higher) = (distance(place, yard), place.elevation - yard.elevation);
        let far = Far { files: files.to_owned(), place, distance, higher, is_reckoned_for: false, nearness: self };
        (distance > self.distance() || far.is_off_in_height()).then_some(far)
    }

    /// Whether answers are reckoned for the file's place in place of the yard's.
    #[must_use]
    pub fn is_elsewhere(self, place: Place, yard: Place) -> bool {
        distance(place, yard) > Metre::new(1e3 * self.elsewhere.value)
    }

    fn distance(self) -> Metre {
        Metre::new(1e3 * self.distance.value)
    }

    fn height(self) -> Metre {
        Metre::new(self.height.value)
    }
}

/// Along a great circle.
fn distance(a: Place, b: Place) -> Metre {
    let (la, lb) = (a.latitude.radians(), b.latitude.radians());
    let east = (a.longitude - b.longitude).radians();
    let half = ((la - lb) / 2.0).same_sin().powi(2) + la.same_cos() * lb.same_cos() * (east / 2.0).same_sin().powi(2);
    Metre::new(EARTH.get() * 2.0 * half.sqrt().min(1.0).same_asin())
}

impl Far {
    /// It in words and in the keeper's units, with what would be right.
    #[must_use]
    pub fn says(&self, system: System) -> String {
        let (near, high) = (self.nearness.distance(), self.nearness.height());
        format!(
            "The place of {} lies {} from the yard{}: {}. Give a file of a place within {} of the yard and {} of its \
             height, or none, for the built-in climate of the yard; if the yard does stand there, put [site] right.",
            self.files,
            self.distance.show_distance(system),
            self.in_height(system),
            self.taken(system),
            near.show_distance(system),
            high.show_height(system)
        )
    }

    fn is_off_in_height(&self) -> bool {
        self.higher.get().abs() > self.nearness.height.value
    }

    fn in_height(&self, system: System) -> String {
        if !self.is_off_in_height() {
            return String::new();
        }
        let way = if self.higher > Metre::ZERO { "higher" } else { "lower" };
        format!(" and {} {way}", Metre::new(self.higher.get().abs()).show_height(system))
    }

    /// What is done with it.
    fn taken(&self, system: System) -> String {
        if self.is_reckoned_for {
            return "all is reckoned for that place, its height, clock and sun, not for the yard".to_owned();
        }
        let warmer = KelvinDifference::new(self.nearness.lapse.value * -self.higher.get() / 1e3);
        let way = if warmer > KelvinDifference::ZERO { "warmer" } else { "colder" };
        let warmer = KelvinDifference::new(warmer.get().abs()).show(system, 1);
        let height = format!(", by height alone about {warmer} {way} than the yard (standard atmosphere)");
        let height = if self.is_off_in_height() { height } else { String::new() };
        format!("its weather is taken as it is{height}")
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
        Nearness::shipped().unwrap().far("a.epw", place, self::place(61.7, 27.3, 105.0))
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
    fn what_is_far_is_told_in_the_keepers_units_with_what_would_be_right() {
        let mut far = far(place(61.9, 27.3, 525.0)).unwrap();
        let says = far.says(System::Metric);
        for part in ["a.epw lies 22 km from", "and 420 m higher", "about 2.7 °C colder", "within 50 km", "150 m of"] {
            assert!(says.contains(part), "{part}: {says}");
        }
        let says = far.says(System::Us);
        for part in ["14 mi from", "1378 ft higher", "about 4.9 °F colder", "within 31 mi", "492 ft of"] {
            assert!(says.contains(part), "{part}: {says}");
        }
        far.is_reckoned_for = true;
        assert!(far.says(System::Metric).contains("not for the yard"));
    }

    #[test]
    fn a_place_the_answers_are_reckoned_for_is_always_said_to_be_far() {
        let shipped = Nearness::shipped().unwrap();
        assert!(shipped.distance.value < shipped.elsewhere.value);
        assert!((shipped.height.value * shipped.lapse.value / 1e3 - 1.0).abs() < 0.05, "150 m make about 1 K");
    }
}
