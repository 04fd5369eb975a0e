//! What the keeper does in the course of a run. Actions belong to the yard, since some touch two colonies.

use snowhum_apiary::Hive;
use snowhum_units::{Fraction, Kilogram};

/// Actions in the order they happen.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Schedule {
    events: Vec<Event>,
}

/// One action, at the end of an hour.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// Hours since the start of the run.
    pub hour: usize,
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
    /// A frame of sealed stores hung against the cluster.
    FrameIn {
        /// What it holds.
        stores: Kilogram,
    },
    /// A frame of sealed stores taken from above or beside the cluster.
    FrameOut {
        /// What it holds.
        stores: Kilogram,
    },
    /// Stores from the far side hung next to the cluster.
    BringNear,
    /// The hive is changed.
    Rebuild(Box<Hive>),
    /// A treatment against mites that spares bees still to be reared.
    Treat {
        /// Share of mites it leaves.
        left: Fraction,
    },
    /// The colony is put to another, place `into` in the run's yard; its hive is empty after that.
    Unite {
        /// Where it goes.
        into: usize,
    },
    /// Entrance and hole are this far open from now on.
    Openings {
        /// Share of the entrance that is free.
        entrance: Fraction,
        /// Share of the upper hole that is free.
        hole: Fraction,
    },
}

impl Schedule {
    /// A schedule; events are put in order of hour, those of one hour stay in the order given.
    #[must_use]
    pub fn new(mut events: Vec<Event>) -> Self {
        events.sort_by_key(|event| event.hour);
        Self { events }
    }

    /// The events in order.
    #[must_use]
    pub fn events(&self) -> &[Event] {
        &self.events
    }
}
