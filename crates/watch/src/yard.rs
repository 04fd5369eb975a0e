//! The colonies of a yard watched side by side: what hives of one hour tell of it together, and bees that join others.

use rayon::prelude::*;
use snowhum_winter::WarmWall;

use crate::estimate::{Heard, Sizes};
use crate::log::Visit;
use crate::scene::Scene;
use crate::signs::{Hours, KINDS};
use crate::walks::{Walk, walks};
use crate::watching::{Leaving, Told, Watching, put_to};

/// All that was noted in a yard, by place of the colony.
#[derive(Debug, Clone, Copy)]
pub struct Noted<'a> {
    /// The yard under its weather.
    pub scene: &'a Scene<'a>,
    /// The wall that warms each colony.
    pub walls: &'a [Option<WarmWall>],
    /// Visits to each colony, in order of time.
    pub visits: &'a [Vec<Visit>],
    /// Particles.
    pub sizes: Sizes,
}

/// What happens to more than one colony at once.
#[derive(Debug)]
enum Event {
    Walk(Walk),
    /// The colony at a place was put to another at a visit.
    Leaves(usize, usize),
}

/// A yard being watched.
struct Yard<'a> {
    noted: Noted<'a>,
    /// What is told of the hour of each visit, as far as that is known.
    hours: Vec<Vec<Option<Hours>>>,
    /// Colonies put to others so far.
    left: Vec<Leaving>,
    watchings: Vec<Watching>,
}

impl Noted<'_> {
    /// Watches every colony through its visits. The same visits give the same estimates to the last bit, whatever was
    /// noted and withdrawn in between: `before`, watchings of the same yard, spares only what does not hang on what is
    /// new. Empty if there are more visited colonies than the yard has.
    #[must_use]
    pub fn watch(&self, before: Option<Vec<Watching>>) -> Vec<Watching> {
        let is_of_these = |before: &Vec<Watching>| {
            before.len() == self.visits.len() && before.iter().all(|one| one.stands_in(self.scene))
        };
        let before = before.filter(is_of_these).unwrap_or_default();
        let walks = walks(self.visits.iter().map(Vec::as_slice));
        let old = Old::of(&before, self.visits);
        let hours = old.hours(self, &walks, &before);
        let mut kept: Vec<Option<Watching>> =
            before.into_iter().enumerate().map(|(place, one)| old.kept(self, &walks, place, one)).collect();
        kept.resize_with(self.visits.len(), || None);
        let begun =
            |(place, kept): (usize, Option<Watching>)| kept.or_else(|| Watching::begin(self.scene, place, self.sizes));
        let watchings: Option<Vec<Watching>> = kept.into_par_iter().enumerate().map(begun).collect();
        let Some(watchings) = watchings else { return Vec::new() };
        let mut yard = Yard { noted: *self, hours, left: Vec::new(), watchings };
        for event in self.events(walks) {
            yard.take(&event);
        }
        yard.finish()
    }

    /// In order of time; what was seen before what was done.
    fn events(&self, walks: Vec<Walk>) -> Vec<Event> {
        let leaves = self.visits.iter().enumerate().filter_map(|(place, own)| {
            let at = own.iter().position(|visit| put_to(visit).is_some())?;
            Some(((own[at].hour, 1), Event::Leaves(place, at)))
        });
        let hour = |walk: &Walk| walk.looks.iter().map(|(place, at)| self.visits[*place][*at].hour).max().unwrap_or(0);
        let walks = walks.into_iter().map(|walk| ((hour(&walk), 0), Event::Walk(walk)));
        let mut events: Vec<_> = walks.chain(leaves).collect();
        events.sort_by_key(|(when, _)| *when);
        events.into_iter().map(|(_, event)| event).collect()
    }
}

impl Yard<'_> {
    fn take(&mut self, event: &Event) {
        match event {
            Event::Walk(walk) => self.walk(walk),
            Event::Leaves(place, at) => {
                self.run(|other| (other == *place).then_some(at + 1));
                self.left.extend(self.watchings.get(*place).and_then(|one| one.leaving.clone()));
            }
        }
    }

    /// Brings the hives of a walk to its hour and lets each hear what the others tell of it.
    fn walk(&mut self, walk: &Walk) {
        let open = |(place, at): &&(usize, usize)| {
            self.hours[*place][*at].is_none() && self.watchings[*place].seen.len() <= *at
        };
        let looks: Vec<(usize, usize)> = walk.looks.iter().filter(open).copied().collect();
        let look_of = |place: usize| looks.iter().find(|(of, _)| *of == place).map(|(_, at)| *at);
        self.run(look_of);
        let (noted, scene, left) = (self.noted, self.noted.scene, &self.left);
        let hear = |(place, one): (usize, &mut Watching)| {
            let visit = &noted.visits[place][look_of(place)?];
            joined(&noted, left, one, place, visit.hour);
            one.at_last_visit.advance(scene, noted.walls[place].as_ref(), visit.hour);
            let (heard, told) = one.at_last_visit.hear(scene, visit);
            Some((place, heard, told))
        };
        let heard: Vec<(usize, Heard, [f64; KINDS])> =
            self.watchings.par_iter_mut().enumerate().filter_map(hear).collect();
        let hours_of = |place: usize| {
            let others = heard.iter().filter(|(other, ..)| *other != place).map(|(.., told)| told);
            Hours::unknown(scene.parameters).told(others)
        };
        let hours: Vec<Hours> = heard.iter().map(|(place, ..)| hours_of(*place)).collect();
        let mut told: Vec<Option<Told>> = (0..self.watchings.len()).map(|_| None).collect();
        for ((place, heard, _), hours) in heard.into_iter().zip(hours) {
            told[place] = Some(Told { hours, heard: Some(heard) });
        }
        self.watchings.par_iter_mut().zip(told).enumerate().for_each(|(place, (one, told))| {
            let Some((at, told)) = look_of(place).zip(told) else { return };
            one.add(scene, noted.walls[place].as_ref(), &noted.visits[place][at], told);
        });
    }

    /// Weighs the visits of every colony that `until` names a visit for, up to before that one.
    fn run(&mut self, until: impl Fn(usize) -> Option<usize> + Sync) {
        let (noted, hours, left) = (self.noted, &self.hours, &self.left);
        self.watchings.par_iter_mut().enumerate().for_each(|(place, one)| {
            let Some(until) = until(place) else { return };
            for at in one.seen.len()..until {
                let visit = &noted.visits[place][at];
                joined(&noted, left, one, place, visit.hour);
                let hours = hours[place][at].unwrap_or_else(|| Hours::unknown(noted.scene.parameters));
                one.add(noted.scene, noted.walls[place].as_ref(), visit, Told { hours, heard: None });
            }
        });
    }

    fn finish(mut self) -> Vec<Watching> {
        let visits = self.noted.visits;
        self.run(|place| visits.get(place).map(Vec::len));
        let (noted, left) = (self.noted, &self.left);
        let watchings = self.watchings.par_iter_mut().enumerate();
        watchings.for_each(|(place, one)| joined(&noted, left, one, place, usize::MAX));
        self.watchings
    }
}

/// Puts to a colony those that came to it before an hour.
fn joined(noted: &Noted<'_>, left: &[Leaving], one: &mut Watching, place: usize, before: usize) {
    let Some(housed) = noted.scene.yard.colonies.get(place) else { return };
    for leaving in left.iter().filter(|leaving| leaving.into == housed.colony.id && leaving.hour < before) {
        one.join(noted.scene, noted.walls[place].as_ref(), leaving);
    }
}

/// What was watched before, against what is noted now.
struct Old {
    walks: Vec<Walk>,
    /// First hour at which what is noted differs; none where nothing does.
    differs: usize,
    /// Hours, from that one on, at which colonies were put to others, then or now.
    joins: Vec<usize>,
}

impl Old {
    fn of(before: &[Watching], visits: &[Vec<Visit>]) -> Self {
        let seen: Vec<Vec<Visit>> =
            before.iter().map(|one| one.seen.iter().map(|(visit, _)| visit.clone()).collect()).collect();
        let differs = seen.iter().zip(visits).filter_map(|(old, new)| first_difference(old, new)).min();
        let differs = differs.unwrap_or(usize::MAX);
        let all = seen.iter().chain(visits).flatten();
        let joining = all.filter(|visit| visit.hour >= differs && put_to(visit).is_some());
        let joins = joining.map(|visit| visit.hour).collect();
        Self { walks: walks(seen.iter().map(Vec::as_slice)), differs, joins }
    }

    /// Whether a walk may be another now than it was.
    fn is_open(&self, walk: &Walk) -> bool {
        walk.until() >= self.differs
    }

    /// What is told of the hour of each visit, where no walk that may be another holds it.
    fn hours(&self, noted: &Noted<'_>, walks: &[Walk], before: &[Watching]) -> Vec<Vec<Option<Hours>>> {
        let unknown = Hours::unknown(noted.scene.parameters);
        let mut hours: Vec<Vec<Option<Hours>>> =
            noted.visits.iter().map(|own| vec![Some(unknown); own.len()]).collect();
        for walk in walks {
            for (place, at) in &walk.looks {
                let known = before.get(*place).and_then(|one| one.seen.get(*at)).filter(|_| !self.is_open(walk));
                hours[*place][*at] = known.map(|(_, hours)| *hours);
            }
        }
        hours
    }

    /// What of a watching can be gone on with: all of it, or what was before its last hour.
    fn kept(&self, noted: &Noted<'_>, walks: &[Walk], place: usize, one: Watching) -> Option<Watching> {
        if self.stands(noted, walks, place, &one) {
            return Some(one);
        }
        one.before_the_hour.map(|earlier| *earlier).filter(|earlier| self.stands(noted, walks, place, earlier))
    }

    /// Whether all that a watching has taken in still stands, and nothing new comes before where it is in time.
    fn stands(&self, noted: &Noted<'_>, walks: &[Walk], place: usize, one: &Watching) -> bool {
        let (new, seen) = (&noted.visits[place], one.seen.len());
        let is_begun = new.len() >= seen && one.seen.iter().zip(new).all(|((old, _), new)| old == new);
        let is_heard = |walk: &Walk| walk.look(place).is_some_and(|at| at < seen);
        let hears_anew = self.walks.iter().chain(walks).any(|walk| self.is_open(walk) && is_heard(walk));
        let (hour, joined) = (one.at_last_visit.hour(), one.joined_at());
        let next = new.get(seen).map(|visit| visit.hour);
        let is_before =
            next.map_or(hour <= one.last_hour(), |next| hour <= next && joined.is_none_or(|joined| joined < next));
        let joins_stand = self.joins.iter().all(|at| hour <= *at && joined.is_none_or(|joined| joined < *at));
        is_begun && !hears_anew && is_before && joins_stand
    }
}

/// Hour at which two lists of visits part.
fn first_difference(old: &[Visit], new: &[Visit]) -> Option<usize> {
    let same = old.iter().zip(new).take_while(|(old, new)| old == new).count();
    let at = |visits: &[Visit]| visits.get(same).map(|visit| visit.hour);
    at(old).into_iter().chain(at(new)).min()
}
