//! What the keeper does in the course of a run. Actions belong to the yard, since some touch two colonies.

use snowhum_apiary::{FoodPlace, Hive};
use snowhum_units::{Fraction, Kilogram};

/// Actions in the order they happen.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Schedule {
    events: Vec<Event>,
}

/// One action, in the night before a day of the run.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// The day, 0 for the first. An action on a day the run does not reach is not done.
    pub day: usize,
    /// Place of the colony in the run's yard.
    pub colony: usize,
    /// What is done.
    pub action: Action,
}

/// Things a keeper can do.
#[derive(Debug, Clone, PartialEq)]
pub enum Action {
    /// Syrup taken down and capped over the cluster: `stores` kilograms of stores from it.
    Syrup {
        /// Stores it makes.
        stores: Kilogram,
    },
    /// Fondant, candy or sugar over the cluster, in kilograms of honey that feed as much.
    SolidFeed {
        /// Its worth in stores.
        stores: Kilogram,
    },
    /// A body of food put on, in place of one that may still be on.
    FoodPutOn {
        /// Its worth in stores.
        stores: Kilogram,
        /// Where it lies.
        place: FoodPlace,
    },
    /// The body of food taken off, with what is left of it.
    FoodTakenOff,
    /// The body of food found eaten up: what a member has left of it was eaten in place of food from its combs.
    FoodEatenUp,
    /// Frames of sealed stores moved from beside and above this cluster to hang against another's: as much as each
    /// member has there, and no more.
    MoveFrames {
        /// Place of the receiving colony in the run's yard.
        to: usize,
        /// What they hold.
        stores: Kilogram,
    },
    /// Frames of sealed stores taken from beside and above this cluster and hung elsewhere: as much as each member has
    /// there, and no more.
    TakeFrames {
        /// What they hold.
        stores: Kilogram,
    },
    /// Frames of sealed stores from elsewhere hung against this cluster.
    HangFrames {
        /// What they hold.
        stores: Kilogram,
    },
    /// Stores from the far side hung against the cluster as far as it can touch them, the rest beside it.
    BringNear,
    /// The hive is changed.
    Rebuild(Box<Hive>),
    /// A treatment against mites that spares bees still to be reared.
    Treat,
    /// No keeper's doing but a question: the colony as it would be had mites spoilt none of its bees.
    HadNoMites,
    /// The colony is put to another, place `into` in the run's yard; its hive is empty after that.
    Unite {
        /// Where it goes.
        into: usize,
    },
    /// Snow is swept off the roof.
    SweepRoof,
    /// Entrance and hole are this far open from now on, to air and damp; bees leave by one that is `way_out_from` free.
    Openings {
        /// Share of the entrance that is free.
        entrance: Fraction,
        /// Share of the upper hole that is free.
        hole: Fraction,
    },
}

impl Schedule {
    /// A schedule; events are put in order of day, those of one day stay in the order given.
    #[must_use]
    pub fn new(mut events: Vec<Event>) -> Self {
        events.sort_by_key(|event| event.day);
        Self { events }
    }

    /// The events in order.
    #[must_use]
    pub fn events(&self) -> &[Event] {
        &self.events
    }
}
