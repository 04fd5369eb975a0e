//! Where the hives stand, and what things cost there.

use crate::{ApiaryId, Colony, Hive, Note, PastWinter, Room};
use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::{Degree, Metre};

/// Everything a keeper has said: one yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Apiary {
    /// Stable id.
    pub id: ApiaryId,
    /// The keeper's name for the yard.
    pub name: String,
    /// The number the authority knows it by, if it has one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub registration: Option<String>,
    /// Whether the yard is made up (the demo, examples), which every answer then says.
    pub invented: bool,
    /// The day the colonies were looked at last, from which a plan starts.
    pub as_of: Date,
    /// Where it is.
    pub site: Site,
    /// Prices and worth.
    pub money: Money,
    /// Rooms that hives winter in.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rooms: Vec<Room>,
    /// The hives in walking order.
    pub hives: Vec<Hive>,
    /// The colonies, each in a hive of `hives`.
    pub colonies: Vec<Colony>,
    /// What was noted since, by time and id. A plan does not read it.
    #[serde(default)]
    pub notes: Vec<Note>,
    /// Winters that are over, the oldest first. No answer of this winter reads them but the yard's own losses.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub past: Vec<PastWinter>,
    /// The yard file of the winter before, beside this one, which whoever opens files reads into `past`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub last_winter: Option<String>,
}

impl Apiary {
    /// The hive a colony lives in.
    #[must_use]
    pub fn hive_of(&self, colony: &Colony) -> Option<&Hive> {
        self.hives.iter().find(|hive| hive.id == colony.hive)
    }
}

/// The place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Site {
    /// North positive.
    pub latitude: Degree,
    /// East positive.
    pub longitude: Degree,
    /// Above sea level.
    pub elevation: Metre,
    /// IANA zone, such as `Europe/Helsinki`.
    pub zone: String,
    /// How much of the open-country wind reaches the hives.
    pub shelter: Shelter,
    /// How much of the low winter sun reaches the hives.
    pub exposure: Exposure,
    /// The keeper's own date of the first flow, month and day, if known.
    pub first_flow: Option<(i8, i8)>,
}

/// Wind shelter of a yard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Shelter {
    /// Open field, shore or ridge.
    Open,
    /// A hedge, fence or building on the windy side.
    Windbreak,
    /// Within trees or a walled yard.
    Enclosed,
}

/// Winter sun on a yard.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Exposure {
    /// Sun from morning to evening.
    Sunny,
    /// Sun for part of the day.
    Partial,
    /// Hardly any winter sun.
    Shaded,
}

/// Prices in the keeper's own currency. Zero is a price too (own honey frames).
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Money {
    /// Code or sign, as the keeper writes it.
    pub currency: String,
    /// What a colony alive, fed and queenright in spring is worth.
    pub colony: f64,
    /// Sugar, a kilogram.
    pub sugar_per_kg: f64,
    /// Fondant or candy, a kilogram.
    pub fondant_per_kg: f64,
    /// An insulated lid.
    pub lid: f64,
    /// A wrap.
    pub wrap: f64,
    /// An hour of the keeper's time.
    pub hour: f64,
}

/// The year of the autumn whose winter a day belongs to: from July on the day's own in the north, until then the year before;
/// in the south always the day's own.
///
/// ```
/// use jiff::civil::date;
/// use snowhum_apiary::winter_year;
/// use snowhum_units::Degree;
/// assert_eq!(winter_year(date(2026, 1, 10), Degree::new(61.7)), 2025);
/// assert_eq!(winter_year(date(2026, 4, 1), Degree::new(-42.0)), 2026);
/// ```
#[must_use]
pub fn winter_year(day: Date, latitude: Degree) -> i16 {
    day.year() - i16::from(latitude.get() >= 0.0 && day.month() < 7)
}
