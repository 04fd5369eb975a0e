//! A colony watched through its notes: full replay, and a checkpoint at the last visit.

use snowhum_apiary::NoteId;
use snowhum_winter::WarmWall;

use crate::estimate::{Estimate, Sizes};
use crate::log::Visit;
use crate::scene::Scene;
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

/// An estimate at the last visit with all that led to it.
#[derive(Debug, Clone)]
pub struct Watching {
    /// The estimate just after the last visit.
    pub at_last_visit: Estimate,
    /// What each visit did.
    pub moved: Vec<Moved>,
    visits: Vec<Visit>,
}

impl Watching {
    /// Replays all visits from the start. The same visits give the same estimate to the last bit, whatever was noted and
    /// withdrawn in between.
    #[must_use]
    pub fn replay(
        scene: &Scene<'_>,
        place: usize,
        beside: Option<&WarmWall>,
        visits: &[Visit],
        sizes: Sizes,
    ) -> Option<Self> {
        let begin = Estimate::begin(scene, place, sizes)?;
        let mut watching = Self { at_last_visit: begin, moved: Vec::new(), visits: Vec::new() };
        watching.add_all(scene, beside, visits);
        Some(watching)
    }

    /// Brings the watch up to these visits: goes on from the checkpoint if they only add to what it has seen, else
    /// replays.
    #[must_use]
    pub fn update(self, scene: &Scene<'_>, beside: Option<&WarmWall>, visits: &[Visit], sizes: Sizes) -> Option<Self> {
        if !visits.starts_with(&self.visits) {
            return Self::replay(scene, self.at_last_visit.place(), beside, visits, sizes);
        }
        let seen = self.visits.len();
        let mut watching = self;
        watching.add_all(scene, beside, &visits[seen..]);
        Some(watching)
    }

    fn add_all(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, visits: &[Visit]) {
        for visit in visits {
            self.at_last_visit.advance(scene, beside, visit.hour);
            let before = self.at_last_visit.standing();
            let weighed = self.at_last_visit.visit(scene, visit);
            self.moved.push(Moved {
                hour: visit.hour,
                notes: visit.notes.clone(),
                signs: visit.signs.len(),
                before,
                after: self.at_last_visit.standing(),
                log_evidence: weighed.evidence.log_evidence,
                unexplained: weighed.evidence.unexplained,
            });
            self.visits.push(visit.clone());
        }
    }

    /// The estimate at an hour at or after the last visit.
    #[must_use]
    pub fn at(&self, scene: &Scene<'_>, beside: Option<&WarmWall>, hour: usize) -> Estimate {
        let mut estimate = self.at_last_visit.clone();
        estimate.advance(scene, beside, hour);
        estimate
    }
}
