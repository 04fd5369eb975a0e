//! What lies over the flight entrance and the upper hole, as noted over time.

use crate::opening_state::OpeningState;
use crate::openings::Aperture;
use crate::wrong::Wrong;
use crate::{Act, Apiary, ColonyId, Entry, Hive, Note, OpeningKind, SetupChange, Sign};
use jiff::Timestamp;
use snowhum_say::note_fault as say;
use snowhum_units::{Fraction, Metre};

/// How an opening was last noted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotedOpening {
    /// How.
    pub state: OpeningState,
    /// When it was first noted so, of the notes that say the same one after the other.
    pub since: Timestamp,
}

/// Both openings as they were last noted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct NotedOpenings {
    /// The flight entrance.
    pub entrance: Option<NotedOpening>,
    /// The upper hole.
    pub upper_hole: Option<NotedOpening>,
}

impl NotedOpenings {
    /// Takes in what was seen at one look, at a hive with its openings so high: snow against the box first, since whoever
    /// tells of an opening besides has looked at it.
    pub fn look<'a>(&mut self, signs: impl Iterator<Item = &'a Sign> + Clone, hive: &OpeningHeights, at: Timestamp) {
        for sign in signs.clone() {
            if let Sign::SnowAtBox { depth_m } = sign {
                self.bury(*depth_m, hive, at);
            }
        }
        signs.for_each(|sign| self.see(sign, at));
    }

    /// Snow so deep lies over every opening that it reaches, but for those that are shut more tightly; one that it does not
    /// reach is not drifted over.
    fn bury(&mut self, depth: Metre, hive: &OpeningHeights, at: Timestamp) {
        for (opening, height) in [(&mut self.entrance, hive.entrance), (&mut self.upper_hole, hive.upper_hole)] {
            let Some(height) = height else { continue };
            let state = opening.map_or(OpeningState::Clear, |noted| noted.state);
            match (depth.get() >= height.get(), state) {
                (true, free) if !free.is_shut() => noted(opening, OpeningState::DriftedOver, at),
                (false, OpeningState::DriftedOver) => noted(opening, OpeningState::Clear, at),
                _ => {}
            }
        }
    }

    fn see(&mut self, sign: &Sign, at: Timestamp) {
        match sign {
            Sign::Entrance(state) => noted(&mut self.entrance, *state, at),
            Sign::UpperEntrance(state) => noted(&mut self.upper_hole, *state, at),
            _ => {}
        }
    }

    /// Snow and ice stay outdoors.
    fn thaw(&mut self, at: Timestamp) {
        let is_frozen =
            |opening: &NotedOpening| matches!(opening.state, OpeningState::DriftedOver | OpeningState::Iced);
        for opening in [&mut self.entrance, &mut self.upper_hole] {
            if opening.as_ref().is_some_and(is_frozen) {
                noted(opening, OpeningState::Clear, at);
            }
        }
    }

    /// Takes in what was done: an opening made anew is clear, and so is one that is carried out of the snow.
    pub fn take(&mut self, act: &Act, at: Timestamp) {
        match act {
            Act::Changed(SetupChange::Entrance(_)) => noted(&mut self.entrance, OpeningState::Clear, at),
            Act::Changed(SetupChange::UpperHole(_)) => noted(&mut self.upper_hole, OpeningState::Clear, at),
            Act::CarriedIn(_) => self.thaw(at),
            _ => {}
        }
    }

    /// How an opening of this kind stands.
    #[must_use]
    pub fn of(&self, kind: OpeningKind) -> Option<NotedOpening> {
        match kind {
            OpeningKind::Entrance => self.entrance,
            OpeningKind::UpperHole => self.upper_hole,
            OpeningKind::Mesh | OpeningKind::Crack => None,
        }
    }

    /// The one of this kind, if it was last noted shut.
    #[must_use]
    pub fn shut(&self, kind: OpeningKind) -> Option<NotedOpening> {
        self.of(kind).filter(|noted| noted.state.is_shut())
    }

    /// Share of an opening's area that is free; all of it where nothing was noted.
    #[must_use]
    pub fn free(&self, kind: OpeningKind) -> Fraction {
        self.of(kind).and_then(|noted| noted.state.free()).unwrap_or(Fraction::new(1.0))
    }
}

/// How high over the ground the middles of a hive's openings are; none where it has none.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct OpeningHeights {
    /// The flight entrance.
    pub entrance: Option<Metre>,
    /// The upper hole.
    pub upper_hole: Option<Metre>,
}

/// What cannot be seen leaves what was known; the same again leaves the day it was first noted.
fn noted(opening: &mut Option<NotedOpening>, state: OpeningState, at: Timestamp) {
    let is_news = opening.is_none_or(|before| before.state != state);
    if is_news && state != OpeningState::NotVisible {
        *opening = Some(NotedOpening { state, since: at });
    }
}

impl Apiary {
    /// How the openings of a colony's hive were last noted, up to a moment.
    #[must_use]
    pub fn openings_noted(&self, colony: ColonyId, until: Timestamp) -> NotedOpenings {
        let mut own: Vec<&Note> = self.notes.iter().filter(|note| note.colony == colony && note.at <= until).collect();
        own.sort_by_key(|note| (note.at, note.id));
        let mut openings = NotedOpenings::default();
        let housed = self.colonies.iter().find(|one| one.id == colony).and_then(|one| self.hive_of(one));
        let mut hive = housed.cloned();
        for note in own {
            let heights = hive.as_ref().map_or_else(OpeningHeights::default, Hive::opening_heights);
            let signs: Vec<&Sign> = note.signs().collect();
            openings.look(signs.into_iter(), &heights, note.at);
            for act in note.acts() {
                openings.take(act, note.at);
                if let Act::Changed(change) = act {
                    hive = hive.map(|hive| hive.with_change(change).unwrap_or(hive));
                }
            }
        }
        openings
    }
}

impl Apiary {
    /// Whether a colony's hive has an upper hole: in the yard file, or made or taken away since by a change noted.
    #[must_use]
    pub fn has_upper_hole(&self, colony: ColonyId) -> bool {
        let change = |act: &Act| match act {
            Act::Changed(SetupChange::UpperHole(aperture)) => Some(*aperture != Aperture::Shut),
            _ => None,
        };
        let changes = self.notes.iter().filter(|note| note.colony == colony);
        let last = changes.flat_map(|note| note.acts().filter_map(change).map(move |has| (note.at, has)));
        let built = self.colonies.iter().find(|one| one.id == colony).and_then(|one| self.hive_of(one));
        let has_hole = || built.is_some_and(|hive| hive.has_opening(OpeningKind::UpperHole));
        last.max_by_key(|(at, _)| *at).map_or_else(has_hole, |(_, has)| has)
    }

    /// Refuses a note on an opening that a colony's hive has not got: an upper hole where there is none.
    pub(crate) fn check_opening(&self, colony: ColonyId, entry: &Entry) -> Result<(), Wrong> {
        let speaks_of_it = matches!(entry, Entry::Sign(Sign::UpperEntrance(_)));
        if !speaks_of_it || self.has_upper_hole(colony) {
            return Ok(());
        }
        Err(Wrong::new(say::no_upper_hole(), say::no_upper_hole_right()))
    }
}

impl Hive {
    /// The hive with its entrance and upper hole as free as they were noted, for sums that know an opening by its area.
    #[must_use]
    pub fn with_openings(&self, noted: &NotedOpenings) -> Self {
        let mut hive = self.clone();
        for opening in &mut hive.openings {
            opening.area = opening.area * noted.free(opening.kind).get();
        }
        hive
    }

    /// How high over the ground its openings are.
    #[must_use]
    pub fn opening_heights(&self) -> OpeningHeights {
        let over_ground = |kind: OpeningKind| {
            let found = self.openings.iter().find(|opening| opening.kind == kind);
            found.map(|opening| self.stand + opening.height)
        };
        let (entrance, upper_hole) = (over_ground(OpeningKind::Entrance), over_ground(OpeningKind::UpperHole));
        OpeningHeights { entrance, upper_hole }
    }

    /// Whether it has an opening of this kind.
    #[must_use]
    pub fn has_opening(&self, kind: OpeningKind) -> bool {
        self.openings.iter().any(|opening| opening.kind == kind)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(day: i64) -> Timestamp {
        Timestamp::UNIX_EPOCH + jiff::SignedDuration::from_hours(24 * day)
    }

    #[test]
    fn snow_buries_what_it_reaches_and_who_looked_knows_better() {
        let hive = OpeningHeights { entrance: Some(Metre::new(0.41)), upper_hole: Some(Metre::new(0.85)) };
        let snow = |depth| Sign::SnowAtBox { depth_m: Metre::new(depth) };
        let mut openings = NotedOpenings::default();
        let states =
            |openings: &NotedOpenings| [openings.entrance, openings.upper_hole].map(|one| one.map(|one| one.state));
        openings.look([snow(0.3)].iter(), &hive, at(1));
        assert_eq!(states(&openings), [None, None], "below both");
        openings.look([snow(0.5)].iter(), &hive, at(2));
        assert_eq!(states(&openings), [Some(OpeningState::DriftedOver), None]);
        openings.look([Sign::Entrance(OpeningState::Cleared), snow(1.0)].iter(), &hive, at(3));
        assert_eq!(states(&openings), [Some(OpeningState::Cleared), Some(OpeningState::DriftedOver)]);
        openings.look([Sign::UpperEntrance(OpeningState::Iced)].iter(), &hive, at(4));
        openings.look([snow(1.0)].iter(), &hive, at(5));
        assert_eq!(
            states(&openings),
            [Some(OpeningState::DriftedOver), Some(OpeningState::Iced)],
            "ice under snow is ice"
        );
        openings.look([snow(0.2)].iter(), &hive, at(6));
        assert_eq!(states(&openings), [Some(OpeningState::Clear), Some(OpeningState::Iced)]);
    }

    #[test]
    fn an_opening_stays_as_noted_until_it_is_noted_otherwise() {
        let mut openings = NotedOpenings::default();
        let kind = OpeningKind::UpperHole;
        assert_eq!(openings.free(kind).get(), 1.0);
        openings.see(&Sign::UpperEntrance(OpeningState::Blocked), at(1));
        openings.see(&Sign::UpperEntrance(OpeningState::NotVisible), at(2));
        openings.see(&Sign::UpperEntrance(OpeningState::Blocked), at(3));
        assert_eq!(openings.shut(kind), Some(NotedOpening { state: OpeningState::Blocked, since: at(1) }));
        assert_eq!(openings.shut(OpeningKind::Entrance), None);
        openings.see(&Sign::UpperEntrance(OpeningState::Cleared), at(4));
        assert_eq!((openings.shut(kind), openings.free(kind).get()), (None, 1.0));
        openings.see(&Sign::UpperEntrance(OpeningState::Iced), at(5));
        openings.take(&Act::Changed("upper hole=25 mm".parse().unwrap()), at(6));
        assert_eq!(openings.shut(kind), None);
    }

    #[test]
    fn every_state_that_shuts_has_a_figure_with_a_source() {
        for (words, state) in OpeningState::WORDS {
            assert_eq!(state.written(), words);
            let free = state.free().map(Fraction::get);
            assert_eq!(state.is_shut(), free.is_some_and(|free| (0.0..0.5).contains(&free)), "{words}");
        }
    }
}
