//! What is due at a site in a year, and when: windows from its own weather and, where they depend on them, its colonies.

pub(crate) mod answer;
mod autumn;
pub mod calendar;
mod colonies;
mod ground;
mod indoors;
mod spring;
pub(crate) mod triggers;
mod window;
mod winter;
mod year;

pub use answer::{Belief, Caution, Due, HalfMonth, HiveDue, JOBS_SCHEMA, JobWindow, JobsAnswer, Kind, Trigger};
pub use ground::JobsQuestion;
pub use triggers::Triggers;
pub use year::SiteYear;

pub use crate::dates::season_start;

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Message, jobs as say};

use crate::answer::WeatherAnswer;
use crate::now::answer::NowAnswer;
use colonies::Broods;
use ground::Ground;

/// Half-months answered for: from the first of the third month of the season to the end of the eleventh.
const FIRST_MONTH: i64 = 2;
const LAST_MONTH: i64 = 10;

/// The windows of a year. The same question gives the same answer on any number of threads.
#[must_use]
pub fn jobs(question: &JobsQuestion<'_>) -> JobsAnswer {
    let ground = Ground {
        question,
        year: question.year,
        broods: question.colonies.as_ref().map(|plan| Broods::of(plan, question.triggers)),
    };
    let mut windows = autumn::windows(&ground);
    windows.extend(winter::windows(&ground));
    windows.extend(spring::windows(&ground));
    indoors::left_out(&ground, &mut windows);
    let apiary = question.apiary;
    let members = question.colonies.map_or(question.year.paths(), |plan| plan.members);
    JobsAnswer {
        schema: JOBS_SCHEMA.to_owned(),
        apiary: apiary.name.clone(),
        invented: apiary.invented,
        as_of: question.as_of,
        from: question.year.first(),
        weather: WeatherAnswer::new(question.year.provenance(), members, question.year.paths()),
        hives: Vec::new(),
        next_round: None,
        windows: in_order(windows, question.as_of),
        half_months: half_months(ground.year),
        notes: notes(&ground),
    }
}

impl JobsAnswer {
    /// The same with what is known of each colony today: the verdict on it, which go hungry, and when.
    #[must_use]
    pub fn told_by(mut self, now: &NowAnswer) -> Self {
        if now.as_of == self.as_of {
            self.hives = colonies::due(now);
            self.next_round = Some(now.next_round.clone());
        }
        let hungry = colonies::hungry(now);
        let is_gone = |name: &String| now.colonies.iter().any(|one| one.name == *name && one.is_gone());
        self.windows.iter_mut().for_each(|window| window.colonies.retain(|name| !is_gone(name)));
        self.windows.retain(|window| window.id != colonies::HUNGER);
        self.windows.extend(hungry);
        self.windows = in_order(self.windows, self.as_of);
        self
    }

    /// A window by its id.
    #[must_use]
    pub fn window(&self, id: &str) -> Option<&JobWindow> {
        self.windows.iter().find(|window| window.id == id)
    }
}

/// Told, and sorted by the day that matters; what never comes stands last.
fn in_order(windows: Vec<JobWindow>, as_of: Date) -> Vec<JobWindow> {
    let mut windows: Vec<JobWindow> = windows.into_iter().map(|window| window.told(as_of)).collect();
    windows.sort_by_key(|window| (window.day().is_none(), window.day(), window.id.clone()));
    windows
}

fn half_months(year: &SiteYear) -> Vec<HalfMonth> {
    let place = |day: Date| usize::try_from(day.duration_since(year.first()).as_hours() / 24).unwrap_or(0);
    let half = |from: Date, to: Date| {
        let days = place(from)..place(to) + 1;
        HalfMonth {
            from,
            to,
            flying_days: year.count(days.clone(), |day| day.flies),
            lid_days: year.count(days.clone(), |day| day.lid),
            comb_days: year.count(days, |day| day.look),
        }
    };
    let of_month = |month: i64| {
        let first = year.first().saturating_add(month.months());
        let middle = first.saturating_add(15.days());
        [half(first, middle.saturating_sub(1.days())), half(middle, first.last_of_month())]
    };
    (FIRST_MONTH..=LAST_MONTH).flat_map(of_month).collect()
}

fn notes(ground: &Ground<'_>) -> Vec<Message> {
    let mut notes = vec![say::note_usual_year()];
    if ground.broods.is_none() {
        notes.push(say::note_not_counted());
    }
    notes.extend(indoors::minds(ground));
    notes
}
