//! Notes of one colony in the order in which they are weighed.

use snowhum_apiary::{Act, ColonyId, Note, NoteId, Sign, VisitId};

use crate::scene::Scene;

/// One visit to one colony.
#[derive(Debug, Clone, PartialEq)]
pub struct Visit {
    /// Hour of the run at whose end it is weighed.
    pub hour: usize,
    /// The walk past the hives.
    pub id: VisitId,
    /// Notes it is made of.
    pub notes: Vec<NoteId>,
    /// What was seen.
    pub signs: Vec<Sign>,
    /// What was done, after that.
    pub acts: Vec<Act>,
    /// The weather as the keeper saw it.
    pub conditions: snowhum_apiary::Conditions,
}

/// Visits to a colony by time and id, whatever order the notes come in. Notes of one visit share its last hour. Notes
/// outside the run are left out.
#[must_use]
pub fn visits(scene: &Scene<'_>, notes: &[Note], colony: ColonyId) -> Vec<Visit> {
    let mut own: Vec<(usize, &Note)> = notes
        .iter()
        .filter(|note| note.colony == colony)
        .filter_map(|note| Some((scene.hour_of(note.at)?, note)))
        .collect();
    own.sort_by_key(|(_, note)| (note.visit, note.at, note.id));
    own.dedup_by_key(|(_, note)| note.id);
    let mut visits: Vec<Visit> = Vec::new();
    for (hour, note) in own {
        match visits.last_mut().filter(|visit| visit.id == note.visit) {
            Some(visit) => {
                visit.hour = visit.hour.max(hour);
                visit.notes.push(note.id);
                visit.signs.extend(note.signs().cloned());
                visit.acts.extend(note.acts().cloned());
            }
            None => visits.push(Visit {
                hour,
                id: note.visit,
                notes: vec![note.id],
                signs: note.signs().cloned().collect(),
                acts: note.acts().cloned().collect(),
                conditions: note.conditions,
            }),
        }
    }
    visits.sort_by_key(|visit| (visit.hour, visit.id));
    visits
}
