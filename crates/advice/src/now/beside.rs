//! What no sum holds and a keeper must know beside it: mites over the line, what was left on, signs that ask for a look.

use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_apiary::{Apiary, ColonyId, Note, OpeningKind, OpeningState, Seen, Sign};
use snowhum_say::{Message, now as say};

use crate::actions::mites::over_the_line;
use crate::actions::situation::Situation;
use crate::ahead::base::Base;
use crate::fit::scales::hive::left_on;
use crate::indoors;

/// Time for which a mouse, drones or a lack of pollen noted are spoken of, seconds (judgement).
const MOUSE_S: i64 = 60 * 86_400;
const DRONES_S: i64 = 30 * 86_400;
const POLLEN_S: i64 = 10 * 86_400;

/// What stands beside the estimate of a colony up to a moment, gravest first.
pub(super) fn of(base: &Base<'_>, at: usize, until: Timestamp) -> Vec<Message> {
    let (apiary, colony) = (base.question.apiary, &base.housed[at].colony);
    let noted = Noted { apiary, colony: colony.id, until };
    let mut beside: Vec<Message> = mites(base, at).into_iter().collect();
    beside.extend(openings(base, at));
    beside.extend(room(base, at, until));
    beside.extend(noted.mouse());
    beside.extend(noted.drones());
    beside.extend(noted.no_pollen());
    // What was left on in autumn matters while bees cluster.
    if base.question.as_of < base.question.spring {
        beside.extend(colony.autumn.left_on.iter().flatten().map(|left| left_on(*left)));
    }
    beside
}

/// Whether a sign noted lately asks for a look inside: a mouse, drones out of season, no pollen while others carry it.
pub(super) fn asks_for_a_look(base: &Base<'_>, at: usize, until: Timestamp) -> bool {
    let noted = Noted { apiary: base.question.apiary, colony: base.housed[at].colony.id, until };
    noted.mouse().is_some() || noted.drones().is_some() || noted.no_pollen().is_some()
}

fn mites(base: &Base<'_>, at: usize) -> Option<Message> {
    over_the_line(&Situation { base, colony: at }).map(|(rate, on)| say::beside_mites(on, rate))
}

/// What the room of a hive indoors asks for, and whether it stands there at all.
fn room(base: &Base<'_>, at: usize, until: Timestamp) -> Vec<Message> {
    let (question, colony) = (base.question, &base.housed[at].colony);
    let zone = TimeZone::get(&question.apiary.site.zone).unwrap_or(TimeZone::UTC);
    // An hour or two before the end of the day asked about, whatever clocks did since the count.
    let today = (until - jiff::SignedDuration::from_hours(2)).to_zoned_datetime(zone).date();
    let Some(indoors) = indoors::of(question.apiary, colony, today) else { return Vec::new() };
    let seen = indoors::seen_outdoors(question.apiary, colony, today).map(|on| say::beside_room(on, &indoors.room));
    seen.into_iter().chain(indoors.minds).collect()
}

/// An opening noted shut, and since when.
fn openings(base: &Base<'_>, at: usize) -> Vec<Message> {
    let (noted, hive) = (base.ahead.openings(at), &base.housed[at].hive);
    let zone = TimeZone::get(&base.question.apiary.site.zone).unwrap_or(TimeZone::UTC);
    let said = |(kind, name): (OpeningKind, &'static str)| {
        let shut = noted.shut(kind).filter(|_| hive.has_opening(kind))?;
        let on = shut.since.to_zoned_datetime(zone.clone()).date();
        Some(say::beside_opening(shut.state == OpeningState::DriftedOver, on, name, shut.state.message()))
    };
    [(OpeningKind::Entrance, "entrance"), (OpeningKind::UpperHole, "upper-hole")].into_iter().filter_map(said).collect()
}

/// Notes of a yard with one colony in mind.
struct Noted<'a> {
    apiary: &'a Apiary,
    colony: ColonyId,
    until: Timestamp,
}

impl Noted<'_> {
    /// Notes of one colony, or of all others, within so many seconds.
    fn lately(&self, own: bool, within_s: i64) -> impl DoubleEndedIterator<Item = &Note> {
        let is_lately = move |note: &&Note| (0..=within_s).contains(&(self.until.as_second() - note.at.as_second()));
        self.apiary.notes.iter().filter(move |note| (note.colony == self.colony) == own).filter(is_lately)
    }

    /// When a thing was last seen, if the last look for it saw it so.
    fn last(&self, within_s: i64, of: impl Fn(&Sign) -> Option<bool>) -> Option<Date> {
        let mut looks =
            self.lately(true, within_s).rev().flat_map(|note| note.signs().map(move |sign| (note.at, sign)));
        let (at, so) = looks.find_map(|(at, sign)| of(sign).map(|so| (at, so)))?;
        let zone = TimeZone::get(&self.apiary.site.zone).unwrap_or(TimeZone::UTC);
        so.then(|| at.to_zoned_datetime(zone).date())
    }

    fn mouse(&self) -> Option<Message> {
        let on = self.last(MOUSE_S, |sign| match sign {
            Sign::Mouse(seen) => Some(*seen == Seen::Yes),
            _ => None,
        })?;
        Some(say::beside_mouse(snowhum_say::fit::hive_guard(), on))
    }

    fn drones(&self) -> Option<Message> {
        let on = self.last(DRONES_S, |sign| match sign {
            Sign::Drones(seen) => Some(*seen == Seen::Yes),
            _ => None,
        })?;
        Some(say::beside_drones(on))
    }

    /// A lack of pollen says something only where others carried some.
    fn no_pollen(&self) -> Option<Message> {
        let of = |sign: &Sign| match sign {
            Sign::Pollen(seen) => Some(*seen == Seen::No),
            _ => None,
        };
        let on = self.last(POLLEN_S, of)?;
        let others = self.lately(false, POLLEN_S).flat_map(Note::signs).any(|sign| of(sign) == Some(false));
        others.then(|| say::beside_no_pollen(on))
    }
}
