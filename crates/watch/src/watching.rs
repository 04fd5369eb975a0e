//! A colony watched through its notes: full replay, and a checkpoint at the last visit.

use snowhum_apiary::{Act, ColonyId, NoteId};
use snowhum_winter::{RoomStay, WarmWall};

use crate::estimate::{Estimate, Sizes};
use crate::log::Visit;
use crate::outlook::Outlook;
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

/// A colony that was put to another: what it brings.
#[derive(Debug, Clone)]
pub struct Leaving {
    /// Hour of the run.
    pub hour: usize,
    /// To whom.
    pub into: ColonyId,
    /// Its living members.
    bees: Outlook,
    /// All that was noted of it.
    visits: Vec<Visit>,
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
    pub leaving: Option<Leaving>,
    visits: Vec<Visit>,
    /// Colonies put to this one: when, and by what notes of theirs.
    joined: Vec<(usize, Vec<Visit>)>,
    /// When its hive stood indoors, as far as was known.
    stays: Vec<RoomStay>,
}

impl Watching {
    /// Replays all visits from the start. The same visits give the same estimate to the last bit, whatever was noted and
    /// withdrawn in between. `joining` are colonies put to this one, in order of time.
    #[must_use]
    pub fn replay(
        scene: &Scene<'_>,
        place: usize,
        beside: Option<&WarmWall>,
        (visits, joining): (&[Visit], &[Leaving]),
        sizes: Sizes,
    ) -> Option<Self> {
        let begin = Estimate::begin(scene, place, sizes)?;
        let (moved, visits_seen, joined) = (Vec::new(), Vec::new(), Vec::new());
        let stays = stays(scene, place);
        let mut watching = Self { at_last_visit: begin, moved, leaving: None, visits: visits_seen, joined, stays };
        watching.add_all(scene, beside, visits, joining);
        Some(watching)
    }

    /// Brings the watch up to these visits: goes on from the checkpoint if they only add to what it has seen, else
    /// replays.
    #[must_use]
    pub fn update(
        self,
        scene: &Scene<'_>,
        beside: Option<&WarmWall>,
        (visits, joining): (&[Visit], &[Leaving]),
        sizes: Sizes,
    ) -> Option<Self> {
        let joined = joining.iter().map(|leaving| (leaving.hour, leaving.visits.clone()));
        let next = visits.get(self.visits.len());
        // A visit made before a colony was put to this one, and noted after, was not weighed in its place.
        let is_late = next.zip(self.joined.last()).is_some_and(|(visit, (hour, _))| visit.hour < *hour);
        let place = self.at_last_visit.place();
        let is_elsewhere = self.stays != stays(scene, place);
        if is_late || is_elsewhere || !visits.starts_with(&self.visits) || !joined.eq(self.joined.iter().cloned()) {
            return Self::replay(scene, place, beside, (visits, joining), sizes);
        }
        let seen = self.visits.len();
        let mut watching = self;
        watching.add_all(scene, beside, &visits[seen..], &[]);
        Some(watching)
    }

    fn add_all(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, visits: &[Visit], joining: &[Leaving]) {
        let mut joining = joining.iter().peekable();
        for visit in visits {
            while let Some(leaving) = joining.next_if(|leaving| leaving.hour <= visit.hour) {
                self.join(scene, beside, leaving);
            }
            self.add(scene, beside, visit);
        }
        for leaving in joining {
            self.join(scene, beside, leaving);
        }
    }

    fn add(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, visit: &Visit) {
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
        let into = visit.acts.iter().find_map(|act| match act {
            Act::UnitedInto(into) => Some(*into),
            _ => None,
        });
        if let (Some(into), None) = (into, &self.leaving) {
            let bees = self.at_last_visit.outlook(scene, BROUGHT);
            self.leaving = Some(Leaving { hour: visit.hour, into, bees, visits: self.visits.clone() });
        }
    }

    fn join(&mut self, scene: &Scene<'_>, beside: Option<&WarmWall>, leaving: &Leaving) {
        self.at_last_visit.advance(scene, beside, leaving.hour);
        self.at_last_visit.take_in(leaving.bees.members(), leaving.bees.alive);
        self.joined.push((leaving.hour, leaving.visits.clone()));
    }

    /// The estimate at an hour at or after the last visit.
    #[must_use]
    pub fn at(&self, scene: &Scene<'_>, beside: Option<&WarmWall>, hour: usize) -> Estimate {
        let mut estimate = self.at_last_visit.clone();
        estimate.advance(scene, beside, hour);
        estimate
    }
}

/// When the hive at a place stands indoors.
fn stays(scene: &Scene<'_>, place: usize) -> Vec<RoomStay> {
    scene.yard.colonies.get(place).map_or_else(Vec::new, |housed| housed.stays.clone())
}
