//! A run with what is found from it: what each colony is short of, how it fares once fed, and who can give some of it.

use std::ops::Deref;

use snowhum_units::Kilogram;
use snowhum_winter::{Action, Event};

use super::gifts::{self, Gift};
use super::hunger::{self, Apart};
use super::run::Run;
use super::shortage::{self, Shortages};
use crate::statistics::Estimate;

/// A run that later runs are compared with.
pub(crate) struct Base<'a> {
    run: Run<'a>,
    pub(crate) shortages: Vec<Kilogram>,
    /// What half of each colony's members that live eat by spring, once they have what is short.
    pub(crate) eaten: Vec<Kilogram>,
    /// Chance of each to be alive with a queen in spring, once it has what is short.
    pub(crate) queenright_if_fed: Vec<f64>,
    /// By colony, where food is short: see [`hunger::apart`].
    apart: Vec<Option<Apart>>,
    /// Frames that go from heavy hives to short ones.
    pub(crate) gifts: Vec<Option<Gift>>,
}

impl<'a> Deref for Base<'a> {
    type Target = Run<'a>;

    fn deref(&self) -> &Run<'a> {
        &self.run
    }
}

impl<'a> Base<'a> {
    /// Finds what is short in a run, and who can give some of it.
    pub(crate) fn found(run: Run<'a>) -> Self {
        let short = shortage::shortages(&run);
        let apart = hunger::apart(&run, &short);
        let gifts = gifts::gifts(&run, &short.amounts);
        let Shortages { amounts, eaten, queenright, .. } = short;
        Self { run, shortages: amounts, eaten, queenright_if_fed: queenright, apart, gifts }
    }

    /// What colony `at` is short of, given today as what bees can take now; none where it is short of nothing.
    pub(crate) fn feeding(&self, at: usize) -> Option<Event> {
        let stores = self.shortages[at];
        let late = self.question.as_of > self.finish_syrup_by.p50;
        let action = if late { Action::SolidFeed { stores } } else { Action::Syrup { stores } };
        (stores.get() > 0.0).then_some(Event { day: 0, colony: at, action })
    }

    /// A hungry colony's chances as it stands, hunger kept apart from mites; none where food is not short.
    pub(crate) fn apart(&self, at: usize) -> Option<Apart> {
        self.apart.get(at).copied().flatten()
    }

    /// The stores that bring 9 in 10 to spring with enough within reach: what is there, with what is short or over.
    pub(crate) fn need(&self, at: usize) -> Kilogram {
        let there = self.housed[at].colony.stores.total.p50;
        let short = self.shortages[at];
        if short.get() > 0.0 {
            return there + short;
        }
        let over = Kilogram::new(shortage::surplus(&self.trajectories[at]).max(0.0));
        Kilogram::new((there - over).get().max(0.0))
    }

    /// What is short of food, below nought what is over, and how sure the run is of it.
    pub(crate) fn shortage(&self, at: usize) -> Estimate {
        let own = shortage::lack(&self.trajectories[at]);
        let short = self.shortages[at].get();
        Estimate { value: if short > 0.0 { short } else { own.value }, ..own }
    }
}
