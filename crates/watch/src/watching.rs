//! A colony watched through its notes, to its last visit.

use snowhum_apiary::{Act, ColonyId, NoteId};
use snowhum_winter::{Housed, WarmWall};

use crate::estimate::{Estimate, Heard, Sizes};
use crate::log::Visit;
use crate::outlook::Outlook;
use crate::scene::Scene;
use crate::signs::{Hours, hangs_on_the_hour};
use crate::standing::Standing;

/// What one visit did to the estimate.
#[derive(Debug, Clone, PartialEq)]
pub struct Moved {
    /// Hour of the run.
    pub hour: usize,
    /// The notes of the visit.
    pub notes: Vec<NoteId>,
    /// Signs among them.
    pub signs: usize,
    /// Just before.
    pub before: Standing,
    /// Just after.
    pub after: Standing,
    /// Natural logarithm of the chance of what was seen, before it was.
    pub log_evidence: f64,
    /// Whether nothing the model thought possible explains it.
    pub unexplained: bool,
}

/// A colony that was put to another: what it brings.
#[derive(Debug, Clone)]
pub(crate) struct Leaving {
    /// Hour of the run.
    pub(crate) hour: usize,
    /// To whom.
    pub(crate) into: ColonyId,
    /// Its living members.
    bees: Outlook,
    /// All that was noted of it.
    visits: Vec<Visit>,
}

/// What is known of a visit beside its signs.
#[derive(Debug)]
pub(crate) struct Told {
    /// What other hives told of its hour.
    pub(crate) hours: Hours,
    /// What its signs say of every particle, where that was asked already.
    pub(crate) heard: Option<Heard>,
}

/// Living members that a colony brings to another.
const BROUGHT: usize = 256;

/// An estimate at the last visit with all that led to it.
#[derive(Debug, Clone)]
pub struct Watching {
    /// The estimate just after the last visit.
    pub at_last_visit: Estimate,
    /// What each visit did.
    pub moved: Vec<Moved>,
    /// What it took along when it was put to another colony, if it was.
    pub(crate) leaving: Option<Leaving>,
    /// Visits weighed so far, each with what other hives told of its hour.
    pub(crate) seen: Vec<(Visit, Hours)>,
    /// Colonies put to this one: when, and by what notes of theirs.
    joined: Vec<(usize, Vec<Visit>)>,
    /// As it was at the last visit whose signs hang on the hour, before that was weighed: a neighbour seen in the same
    /// hour may still tell more of it.
    pub(crate) before_the_hour: Option<Box<Watching>>,
    /// The colony as it entered, by what was known.
    housed: Housed,
}

impl Watching {
    /// Before anything was noted; `None` if the yard has no such colony.
    pub(crate) fn begin(scene: &Scene<'_>, place: usize, sizes: Sizes) -> Option<Self> {
        Some(Self {
            at_last_visit: Estimate::begin(scene, place, sizes)?,
            moved: Vec::new(),
            leaving: None,
            seen: Vec::new(),
            joined: Vec::new(),
            before_the_hour: None,
            housed: scene.yard.colonies.get(place)?.clone(),
        })
    }

    /// Weighs a visit in an hour of which other hives told something.
    pub(crate) fn add(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, visit: &Visit, told: Told) {
        let Told { hours, heard } = told;
        self.at_last_visit.advance(scene, beside, visit.hour);
        if visit.signs.iter().any(hangs_on_the_hour) {
            self.before_the_hour = None;
            self.before_the_hour = Some(Box::new(self.clone()));
        }
        let before = self.at_last_visit.standing();
        let weighed = self.at_last_visit.visit(scene, visit, &hours, heard);
        self.moved.push(Moved {
            hour: visit.hour,
            notes: visit.notes.clone(),
            signs: visit.signs.len(),
            before,
            after: self.at_last_visit.standing(),
            log_evidence: weighed.evidence.log_evidence,
            unexplained: weighed.evidence.unexplained,
        });
        self.seen.push((visit.clone(), hours));
        if let (Some(into), None) = (put_to(visit), &self.leaving) {
            let bees = self.at_last_visit.outlook(scene, BROUGHT);
            let visits = self.seen.iter().map(|(visit, _)| visit.clone()).collect();
            self.leaving = Some(Leaving { hour: visit.hour, into, bees, visits });
        }
    }

    /// Takes in a colony that was put to this one, unless it has.
    pub(crate) fn join(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, leaving: &Leaving) {
        if self.joined.iter().any(|(hour, visits)| *hour == leaving.hour && *visits == leaving.visits) {
            return;
        }
        self.at_last_visit.advance(scene, beside, leaving.hour);
        self.at_last_visit.take_in(leaving.bees.members(), leaving.bees.alive);
        self.joined.push((leaving.hour, leaving.visits.clone()));
    }

    /// Whether it entered as it enters by what is known now: in the same hive and rooms, counted on the same day.
    pub(crate) fn stands_in(&self, scene: &Scene<'_>) -> bool {
        scene.yard.colonies.get(self.at_last_visit.place()) == Some(&self.housed)
    }

    /// Hour of the last that was taken in: a visit or a colony put to this one.
    pub(crate) fn last_hour(&self) -> usize {
        let seen = self.seen.last().map_or(0, |(visit, _)| visit.hour);
        seen.max(self.joined_at().unwrap_or(0))
    }

    /// Hour of the last colony put to this one.
    pub(crate) fn joined_at(&self) -> Option<usize> {
        self.joined.last().map(|(hour, _)| *hour)
    }

    /// The estimate at an hour at or after the last visit.
    #[must_use]
    pub fn at(&self, scene: &Scene<'_>, beside: Option<&WarmWall>, hour: usize) -> Estimate {
        let mut estimate = self.at_last_visit.clone();
        estimate.advance(scene, beside, hour);
        estimate
    }
}

/// The colony that a visit put this one to.
pub(crate) fn put_to(visit: &Visit) -> Option<ColonyId> {
    visit.acts.iter().find_map(|act| match act {
        Act::UnitedInto(into) => Some(*into),
        _ => None,
    })
}
