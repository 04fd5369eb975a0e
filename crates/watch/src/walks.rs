//! Hives of a yard that were looked at within an hour of one another: what one of them shows of the hour, all learn.

use crate::log::Visit;
use crate::signs::hangs_on_the_hour;

/// Hours over which an hour's kind is taken to hold.
const LASTS: usize = 1;

/// Visits whose signs hang on the hour, at most one to each colony.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Walk {
    /// Hour of the first.
    pub(crate) from: usize,
    /// Colony's place and the visit's among its own, in order of time.
    pub(crate) looks: Vec<(usize, usize)>,
}

impl Walk {
    /// Last hour that it can hold a visit of.
    pub(crate) fn until(&self) -> usize {
        self.from + LASTS
    }

    /// The visit it holds to the colony at a place.
    pub(crate) fn look(&self, place: usize) -> Option<usize> {
        self.looks.iter().find(|(at, _)| *at == place).map(|(_, visit)| *visit)
    }

    fn takes(&self, hour: usize, place: usize) -> bool {
        hour <= self.until() && self.look(place).is_none()
    }
}

/// Walks past at least two hives among the visits to each colony, in order of time.
pub(crate) fn walks<'a>(visits: impl Iterator<Item = &'a [Visit]>) -> Vec<Walk> {
    let hanging = |(place, own): (usize, &'a [Visit])| {
        let of = |(at, visit): (usize, &Visit)| (visit.hour, place, at, visit.signs.iter().any(hangs_on_the_hour));
        own.iter().enumerate().map(of).collect::<Vec<_>>()
    };
    let mut looks: Vec<(usize, usize, usize, bool)> = visits.enumerate().flat_map(hanging).collect();
    looks.retain(|(.., hangs)| *hangs);
    looks.sort_unstable();
    let mut walks: Vec<Walk> = Vec::new();
    for (hour, place, at, _) in looks {
        match walks.last_mut().filter(|walk| walk.takes(hour, place)) {
            Some(walk) => walk.looks.push((place, at)),
            None => walks.push(Walk { from: hour, looks: vec![(place, at)] }),
        }
    }
    walks.retain(|walk| walk.looks.len() > 1);
    walks
}
