//! A colony in a plan, and something that could be done for it.

use jiff::civil::Date;
use snowhum_say::Message;
use snowhum_winter::{Event, Housed, MemberEnd};

use crate::ahead::base::Base;
use crate::answer::ActionKind;
use crate::cautions::Hazard;

/// A colony in a plan, for which actions are sought.
#[derive(Clone, Copy)]
pub(crate) struct Situation<'a> {
    pub(crate) base: &'a Base<'a>,
    pub(crate) colony: usize,
}

/// Something that could be done, before it is weighed.
#[derive(Debug, Clone)]
pub(crate) struct Candidate {
    pub(crate) kind: ActionKind,
    pub(crate) what: Message,
    pub(crate) why: Message,
    pub(crate) from: Date,
    pub(crate) by: Date,
    pub(crate) cost: f64,
    /// Whether it makes up the shortage; of such things one is done.
    pub(crate) feeds: bool,
    /// Whether it is weighed in a colony given what it is short of: hunger would hide what it does.
    pub(crate) fed_first: bool,
    pub(crate) events: Vec<Event>,
    pub(crate) caution: Option<Hazard>,
    pub(crate) rule: Option<Message>,
    pub(crate) sources: Vec<Message>,
}

impl Situation<'_> {
    pub(crate) fn housed(&self) -> &Housed {
        &self.base.housed[self.colony]
    }

    pub(crate) fn ends(&self) -> &[MemberEnd] {
        &self.base.trajectories[self.colony].ends
    }

    /// Day of the run on which one member in ten has gone hungry; `None` if fewer ever do.
    pub(crate) fn early_hunger(&self) -> Option<usize> {
        let mut days: Vec<u32> = self.ends().iter().filter_map(|end| end.first_hungry_day).collect();
        days.sort_unstable();
        days.get(self.ends().len() / 10).map(|day| *day as usize)
    }
}
