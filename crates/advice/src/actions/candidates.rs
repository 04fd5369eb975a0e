//! The list of things a keeper could do for a colony at this time of year.

use super::situation::{Candidate, Situation};
use super::{clear, dress, feed, mites, thin_syrup};

/// Every candidate that makes sense for the situation; those that do nothing are left out before they cost a run.
pub(super) fn all(situation: &Situation<'_>) -> Vec<Candidate> {
    let mut candidates = Vec::new();
    candidates.extend(clear::openings(situation));
    candidates.extend(mites::treat(situation));
    candidates.extend(feed::bring_near(situation));
    candidates.extend(feed::frames_from_heaviest(situation));
    candidates.extend(feed::syrup(situation));
    candidates.extend(thin_syrup::feed(situation));
    candidates.extend(feed::solid(situation));
    candidates.extend(dress::insulate_lid(situation));
    candidates.extend(dress::wrap(situation));
    candidates.extend(dress::close_mesh(situation));
    candidates
}
