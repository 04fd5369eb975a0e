//! The keeper's world: site, hive as built, colony; checks on input.
//!
//! [`read`] turns the text of a yard file into an [`Apiary`], or into every fault it has.
//!
//! ```
//! let (yard, _) = snowhum_apiary::read(snowhum_apiary::demo_text(), "rowan-bank.toml").unwrap();
//! assert_eq!(yard.colonies.len(), 5);
//! let faults = snowhum_apiary::read("[apiary]\nname = 7\n", "mine.toml").unwrap_err();
//! assert!(faults.to_string().starts_with("mine.toml:1: apiary.as_of: is missing"));
//! ```

mod another;
mod change;
mod chosen_dress;
mod colony;
mod comb;
mod doubt;
mod fault;
mod file;
mod food_body;
mod hive;
mod id;
mod indoors;
mod kinds;
mod layer;
mod materials;
mod mite_count;
mod nearest;
mod note;
mod noted_food_body;
mod noted_openings;
mod opening_state;
mod openings;
mod past;
mod past_text;
mod past_winter;
mod queen_found;
mod quick_start;
mod sheet;
mod shipped;
mod site;
mod standards;
mod stays;
mod tare;
mod towns;
mod when;
mod words;
mod wrong;

pub use another::AnotherHive;
pub use change::{ChangeKind, FloorKind, SetupChange};
pub use chosen_dress::ChosenDress;
pub use colony::*;
pub use comb::{bees_on, bees_stated, brood_on, food_in, frames_covered, most_bees};
pub use doubt::{Doubt, FAST_CLOCK};
pub use fault::{Advisory, Fault, Faults, SealedHive};
pub use file::{LONGEST_FILE, MOST_HIVES, read, read_bytes};
pub use food_body::{FoodBody, FoodBodyKind, FoodPlace};
pub use hive::*;
pub use id::*;
pub use indoors::{IndoorPlan, Room, RoomRecord};
pub use materials::{StockMaterial, material, materials};
pub use mite_count::MiteCount;
pub use nearest::nearest_names;
pub use note::*;
pub use noted_food_body::NotedFoodBody;
pub use noted_openings::{NotedOpening, NotedOpenings, OpeningHeights};
pub use opening_state::OpeningState;
pub use openings::{Aperture, Guard, guards};
pub use past::{AutumnCount, SeasonFault};
pub use past_text::season_text;
pub use past_winter::PastWinter;
pub use quick_start::{QuickFault, QuickHive, QuickStart};
pub use sheet::{
    AskedRows, Incoming, IncomingRow, SheetColumns, SheetFault, SheetFaults, SheetReading, Table, TableRow,
};
pub use site::*;
pub use standards::{BoxSize, Standard, standard, standards};
pub use stays::Stay;
pub use tare::{EmptyHive, empty_box, floor_thickness};
pub use towns::{Town, towns};
pub use when::{Reckoned, YEARS, read_day, read_time};
pub use words::{
    Combs, Finding, PlainWord, Sitting, SizedWord, brood_words, comb_sources, findings, food_range, food_words,
    sitting_words, strength_range, strength_words, usual_money, weighed,
};
pub use wrong::Wrong;

/// The demo yard, all of it invented.
#[must_use]
pub fn demo_text() -> &'static str {
    include_str!("../../../data/demo/rowan-bank.toml")
}

/// A commented yard file to fill in. It is itself a yard that can be read.
#[must_use]
pub fn template_text() -> &'static str {
    include_str!("../../../data/template.toml")
}
