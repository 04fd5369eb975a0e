//! The answer to a shortage, and what is said of it.

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, feed as say};
use snowhum_units::Range;
use snowhum_winter::Status;

use super::question::Season;
use crate::cautions::Hazard;

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FeedAnswer {
    /// [`super::FEED_SCHEMA`].
    pub schema: String,
    /// When it is fed.
    pub season: Season,
    /// Hive whose box and combs are meant.
    pub hive: String,
    /// Stores that are short.
    pub short_kg: f64,
    /// Sugar for them, fed as syrup.
    pub sugar_kg: SugarKg,
    /// Days until syrup must be finished.
    pub days_left: Option<i64>,
    /// Syrup that suits the season, best first; none where syrup comes too late.
    pub syrup: Vec<Syrup>,
    /// What to know of syrup now.
    pub syrup_says: Message,
    /// What cups by volume really make.
    pub by_volume: Vec<ByVolume>,
    /// Solid feed in place of syrup, or after it.
    pub solid: Vec<Solid>,
    /// Frames of stores in place of either.
    pub frames: Frames,
    /// What not to feed.
    pub never: Vec<Never>,
    /// What to know before feeding.
    pub say: Vec<Message>,
    /// What can hurt.
    pub cautions: Vec<Message>,
    /// Where it comes from.
    pub sources: Vec<Message>,
}

/// Sugar, by what a kilogram of it makes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct SugarKg {
    /// If little is lost.
    pub least: f64,
    /// Most likely.
    pub likely: f64,
    /// If much is eaten while it is stored.
    pub most: f64,
}

/// One strength of syrup.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Syrup {
    /// Sugar to water by weight.
    pub strength: String,
    /// Sugar in all.
    pub sugar_kg: f64,
    /// Water in all.
    pub water_l: f64,
    /// What it makes.
    pub syrup_l: f64,
    /// Water for each kilogram of sugar.
    pub water_l_per_kg_sugar: f64,
    /// Syrup from each kilogram of sugar.
    pub syrup_l_per_kg_sugar: f64,
    /// Water the bees must dry away.
    pub water_to_evaporate_kg: f64,
    /// Fillings of the feeder.
    pub feeder_fills: Option<f64>,
    /// What must go down a day to be finished in time.
    pub syrup_l_per_day: Option<f64>,
}

/// Volumes of sugar and water, by weight.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ByVolume {
    /// Volumes of poured sugar to one, or two, of water.
    pub volumes: String,
    /// Kilograms of sugar to one of water.
    pub sugar_per_water_by_weight: f64,
    /// Sugar in it, percent by weight.
    pub sugar_percent: f64,
    /// What the same figures by weight would hold.
    pub meant_percent: f64,
}

/// One kind of solid feed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Solid {
    /// The kind.
    pub what: Message,
    /// How much feeds as much as the stores that are short.
    pub kg: f64,
    /// How thick that lies over the whole box.
    pub thickness_mm: f64,
    /// A centimetre of it over the whole box.
    pub kg_per_cm: f64,
    /// A slab of the thickness asked for.
    pub slab_kg: Option<f64>,
    /// Stores that slab feeds as much as.
    pub slab_stores_kg: Option<f64>,
    /// Whether it is cooked.
    pub needs_heat: bool,
    /// Where its density comes from.
    pub source: String,
    /// How well it is founded.
    pub status: Status,
}

/// Frames of capped stores.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Frames {
    /// Size of the box they hang in.
    pub size: String,
    /// A frame full and capped on both sides.
    pub full_frame_kg: Range<f64>,
    /// Frames for the shortage.
    pub frames: f64,
}

/// Something that is not fed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Never {
    /// What.
    pub what: Message,
    /// Why not.
    pub why: Message,
    /// Who says so.
    pub source: String,
}

pub(super) fn cautions(season: Season) -> Vec<Message> {
    let mut hazards = vec![Hazard::Robbing, Hazard::HealthyCombs, Hazard::HotSugar, Hazard::FoodLaw];
    if season == Season::Winter {
        hazards.push(Hazard::LidOff);
    }
    Hazard::each(&hazards)
}

/// What to know before feeding, by the season.
pub(super) fn say(season: Season) -> Vec<Message> {
    let mut told = vec![say::which_stores(), say::frames_first(), say::over_the_cluster()];
    told.push(if season == Season::Autumn { say::fondant_alone() } else { say::no_pollen() });
    if season == Season::Winter {
        told.push(say::dry_sugar());
    }
    told
}
