//! Rooms that hives winter in, and where each hive is to winter.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::{Fraction, Kelvin};

/// A cellar or a building in which hives winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Room {
    /// The keeper's name for it.
    pub name: String,
    /// The coldest its air is while hives stand in it.
    pub coldest: Kelvin,
    /// The warmest.
    pub warmest: Kelvin,
    /// Humidity of its air; none where nobody said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub humidity: Option<Fraction>,
    /// Whether no light comes in.
    pub is_dark: bool,
    /// What was measured in it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub record: Option<RoomRecord>,
}

/// Temperatures measured in a room, from a file beside the yard file; whoever opens files fills in the hours.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RoomRecord {
    /// The file.
    pub file: String,
    /// How its columns are called, where not as usual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub columns: Option<String>,
    /// The day of the first hour.
    pub first: Date,
    /// °C hour by hour from the start of that day; none where nothing was measured.
    pub celsius: Vec<Option<f32>>,
}

/// Where a hive is to winter, and from when to when; a day that is not known yet is none.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct IndoorPlan {
    /// The room.
    pub room: String,
    /// The day it is carried in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub enters: Option<Date>,
    /// The day it is carried out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub leaves: Option<Date>,
}
