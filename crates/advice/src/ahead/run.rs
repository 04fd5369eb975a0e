//! A yard, its weather and a day opened once, and the run of what lies ahead as it is.

use std::collections::BTreeSet;

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_apiary::Apiary;
use snowhum_units::{Kilogram, Range};
use snowhum_weather::{AirPaths, Ensemble};
use snowhum_winter::{Event, Housed, MemberEnd, Parameters, Record, Settings, Trajectory};

use super::start::{Ahead, FromStart, concerned};
use crate::statistics::{Estimate, mean_by_all};
use crate::{finish, yard};

/// What a plan is asked with.
#[derive(Debug, Clone, Copy)]
pub struct PlanQuestion<'a> {
    /// The yard.
    pub apiary: &'a Apiary,
    /// Weather from the start of `as_of` to spring.
    pub winter: &'a Ensemble,
    /// Weather from high summer, for the end of feeding; begins at the start of `autumn_from`.
    pub autumn: &'a AirPaths,
    /// First day of `autumn`.
    pub autumn_from: Date,
    /// The day the plan starts.
    pub as_of: Date,
    /// First flow of the site plus 14 days.
    pub spring: Date,
    /// The model's parameters.
    pub parameters: &'a Parameters,
    /// Members of the ensemble.
    pub members: usize,
    /// Seed.
    pub seed: u64,
}

/// Members that are run first, where there are at least twice as many.
pub(crate) const A_PART: usize = 64;

/// What lies ahead of a yard, run once as it is; other runs are made from the same start.
pub(crate) struct Run<'a> {
    pub(crate) question: &'a PlanQuestion<'a>,
    pub(crate) ahead: Ahead<'a>,
    pub(crate) housed: Vec<Housed>,
    pub(crate) trajectories: Vec<Trajectory>,
    pub(crate) finish_syrup_by: Range<Date>,
}

impl<'a> Run<'a> {
    /// From what the keeper found on the plan's first day.
    pub(crate) fn of(question: &'a PlanQuestion<'a>) -> Self {
        let environment = yard::environment(&question.apiary.site, question.winter, question.as_of);
        let ahead = Ahead::FromStart(FromStart::new(environment, question.parameters));
        Self::over(question, ahead, yard::housed_on(question.apiary, question.as_of))
    }

    /// From any start.
    pub(crate) fn over(question: &'a PlanQuestion<'a>, ahead: Ahead<'a>, housed: Vec<Housed>) -> Self {
        let finish_syrup_by = finish::finish_by(question.autumn, question.autumn_from);
        let mut run = Self { question, ahead, housed, trajectories: Vec::new(), finish_syrup_by };
        let settings = Settings { record: Record::Days, ..run.end_only() };
        run.trajectories = run.ahead.first_run(&run.housed, settings);
        run
    }

    /// What counts as fed.
    pub(crate) fn fed(&self) -> Kilogram {
        Kilogram::new(self.question.parameters.fed_in_spring.value)
    }

    /// Settings of a run whose end alone matters.
    pub(crate) fn end_only(&self) -> Settings {
        Settings { members: self.question.members, seed: self.question.seed, record: Record::End }
    }

    /// Runs some colonies again, with something done; the places are in order and hold whatever touches them.
    pub(crate) fn rerun(&self, places: &[usize], events: &[Event]) -> Vec<Trajectory> {
        self.rerun_of(self.question.members, places, events)
    }

    /// The same of the first members alone, who are those of every run.
    pub(crate) fn rerun_of(&self, members: usize, places: &[usize], events: &[Event]) -> Vec<Trajectory> {
        self.ahead.run(&self.housed, places, events, Settings { members, ..self.end_only() })
    }

    /// A chance of colony `at` at the end of a run again, by what this run tells of all members.
    pub(crate) fn chance(&self, at: usize, again: &Trajectory, of: impl Fn(&MemberEnd) -> f64) -> f64 {
        self.mean_by_all(&[at], &again.ends.iter().map(of).collect::<Vec<_>>()).value.clamp(0.0, 1.0)
    }

    /// The mean of a figure found in a run again, or of several colonies summed, by what this run tells of all members.
    pub(crate) fn mean_by_all(&self, places: &[usize], found: &[f64]) -> Estimate {
        let known = |place: &usize| {
            let of = |figure: &dyn Fn(&MemberEnd) -> f64| self.trajectories[*place].ends.iter().map(figure).collect();
            let fed = |end: &MemberEnd| end.fed_and_queenright(self.fed());
            [
                of(&|end| end.queenright),
                of(&fed),
                of(&|end| end.ended.of_hunger()),
                of(&|end| end.ended.mites),
                of(&|end| end.ended.other),
            ]
        };
        mean_by_all(found, places.iter().flat_map(known).collect())
    }

    /// The colonies that events touch, with the hives they warm, in order.
    pub(crate) fn touched(&self, events: &[Event]) -> Vec<usize> {
        self.and_warmed(events.iter().flat_map(concerned).flatten())
    }

    /// Some colonies with the hives they warm, in order.
    pub(crate) fn and_warmed(&self, places: impl Iterator<Item = usize>) -> Vec<usize> {
        let mut places: BTreeSet<usize> = places.collect();
        if !self.ahead.is_each_alone() {
            let is_warmed =
                |place: &usize| self.housed[*place].neighbour.is_some_and(|lender| places.contains(&lender));
            let warmed: Vec<usize> = (0..self.housed.len()).filter(is_warmed).collect();
            places.extend(warmed);
        }
        places.into_iter().collect()
    }

    /// Days of the run.
    pub(crate) fn days(&self) -> usize {
        self.ahead.days()
    }

    /// Whether a day of the run lies between the winter and the summer solstice.
    pub(crate) fn after_solstice(&self, day: usize) -> bool {
        let day_of_year = self.date(day).day_of_year();
        let rising = !(172..355).contains(&day_of_year);
        rising == (self.question.apiary.site.latitude.get() >= 0.0)
    }

    /// The date of a day of the run.
    pub(crate) fn date(&self, day: usize) -> Date {
        self.question.as_of.saturating_add((day as i64).days())
    }
}
