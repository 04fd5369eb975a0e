//! The coupled winter model: hive, air, water, cluster, stores, bees.

#[cfg(test)]
mod audit;
mod block;
mod curve;
mod daily;
pub mod daylight;
mod edges;
mod ends;
mod engine;
mod environment;
mod events;
mod history;
mod indoors;
mod joint;
mod lanes;
mod laws;
mod member;
mod members;
#[cfg(test)]
mod oracle;
mod parameters;
mod saturation;
mod schedule;
mod shell;
mod start;
mod steady;
mod step;
mod stretch;
mod vectors;

pub use curve::{ClusterAnswer, cluster_at, cluster_in};
pub use daily::{Daily, HiveDaily};
pub use ends::{Cause, Ends};
pub use engine::{Housed, Settings, Yard, run, run_beside, run_lending, run_with};
pub use environment::{Environment, Outside, YardShelter};
pub use events::FREE_AFTER;
pub use history::{MemberEnd, Record, Trajectory};
pub use indoors::{RoomAir, RoomStay};
pub use joint::{JointDraw, JointDraws};
pub use lanes::LANES;
pub use member::{LEARNED, Member};
pub use members::Members;
pub use parameters::Parameters;
pub use schedule::{Action, Event, Schedule};
pub use snowhum_figures::winter_start::{EMERGENCE_SPREAD, HARM_BEFORE_EMERGENCE};
pub use snowhum_figures::{Figure as Parameter, FigureFault as ParameterError, Status, figures as parameters};
pub use steady::{StartFrom, SteadyAnswer, SteadyQuestion, UpperHole, steady};
pub use step::colony::resting_bee_hazard;
pub use stretch::WarmWall;
pub use vectors::Vectors;
