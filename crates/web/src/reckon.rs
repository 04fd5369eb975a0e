//! What the pages ask of the model, and what comes back.

use jiff::Timestamp;
use jiff::civil::Date;
use snowhum_advice::film::FilmAnswer;
use snowhum_advice::jobs::JobsAnswer;
use snowhum_advice::now::{Ground, NowAnswer, NowQuestion};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::setup::{SetupAnswer, Try};
use snowhum_advice::spring::Springtime;
use snowhum_advice::verdict::LastVerdict;
use snowhum_advice::{HiveAnswer, hive, yard};
use snowhum_apiary::{Apiary, NotedOpenings};
use snowhum_say::Message;
use snowhum_watch::Watching;
use snowhum_winter::{Housed, StartFrom, SteadyQuestion};

use crate::phone_table::PhoneTable;
use crate::section;
use crate::weather_ahead::{Day, Today, at_hives, coming, today};

/// A question about a yard.
#[derive(Debug, Clone)]
pub struct Ask {
    /// The yard with its notes.
    pub apiary: Apiary,
    /// The day asked about.
    pub day: Date,
    /// What was decided of each colony when the pages last told it.
    pub last: Vec<LastVerdict>,
}

/// Where a yard stands, with what its pictures need.
#[derive(Debug, Clone)]
pub struct Present {
    /// The answer.
    pub now: NowAnswer,
    /// The weather outside at noon of the day asked about.
    pub today: Today,
    /// The days after it.
    pub days: Vec<Day>,
    /// Each colony in its hive as it stands.
    pub housed: Vec<Housed>,
    /// What lies outside each of them: the yard, or a room.
    pub at_hives: Vec<Today>,
    /// Entrance and upper hole of each as last noted.
    pub openings: Vec<NotedOpenings>,
    /// Each hive settled at today's weather; none where no colony is likely to live.
    pub settled: Vec<Option<HiveAnswer>>,
    /// What each sign of the round would say, for a phone out of reach.
    pub table: PhoneTable,
}

/// An estimate, and what it is of.
pub(crate) struct Standing {
    pub(crate) present: Present,
    /// When it was computed.
    pub(crate) at: Timestamp,
    pub(crate) revision: u64,
}

/// The model with the weather it stands on. Asked from threads that may wait.
pub trait Reckon: Send + Sync + 'static {
    /// Where every colony stands. Earlier watchings of the same yard make it quick.
    ///
    /// # Errors
    /// When the weather or the day asked about cannot be answered for, in words for the keeper.
    fn present(&self, ask: &Ask, before: Option<Vec<Watching>>) -> Result<(Present, Vec<Watching>), Message>;

    /// The winter ahead.
    ///
    /// # Errors
    /// As for [`Self::present`].
    fn ahead(&self, ask: &Ask) -> Result<PlanAnswer, Message>;

    /// The windows of the year that the day asked about belongs to.
    ///
    /// # Errors
    /// As for [`Self::present`].
    fn windows(&self, ask: &Ask) -> Result<JobsAnswer, Message>;

    /// The spring from where the colonies stand.
    ///
    /// # Errors
    /// As for [`Self::present`].
    fn spring(&self, ask: &Ask, now: &NowAnswer, jobs: &JobsAnswer) -> Result<Springtime, Message>;

    /// The winter told, with the plan and the present it tells.
    ///
    /// # Errors
    /// As for [`Self::present`].
    fn film(&self, ask: &Ask, plan: &PlanAnswer, now: &NowAnswer) -> Result<FilmAnswer, Message>;

    /// Set-ups of the hive at place `at` side by side.
    ///
    /// # Errors
    /// As for [`Self::present`].
    fn setups(&self, ask: &Ask, at: usize, tries: &[Try]) -> Result<SetupAnswer, Message>;
}

impl Present {
    /// Answers a question whose weather is resolved.
    #[must_use]
    pub fn of(question: NowQuestion<'_>, before: Option<Vec<Watching>>) -> (Self, Vec<Watching>) {
        let ground = Ground::of(question);
        let watchings = ground.watch_on(before);
        let now = ground.now(&watchings);
        let today = today(&question);
        let housed = yard::housed_to(question.plan.apiary, question.as_of);
        let housed = section::as_dressed(question.plan.apiary, housed, question.as_of);
        let at_hives = at_hives(&question, &housed, today);
        let openings = section::openings_noted(question.plan.apiary, &housed, question.as_of);
        let settled = housed
            .iter()
            .zip(&openings)
            .zip(now.colonies.iter().zip(&at_hives))
            .map(|((housed, noted), (colony, today))| {
                let bees = colony.bees.as_ref().filter(|_| !colony.is_gone())?.p50;
                let housed = Housed { hive: housed.hive.with_openings(noted), ..housed.clone() };
                Some(hive(&housed, question.plan.parameters, steady(today, bees)))
            })
            .collect();
        let colonies: Vec<_> = housed.iter().map(|housed| housed.colony.id.0).collect();
        let table = PhoneTable::of(&ground, &watchings, (&now, &colonies));
        (Self { now, days: coming(&question), today, housed, at_hives, openings, settled, table }, watchings)
    }
}

/// Warmest air at which a hive is asked to settle: a winter cluster is asked about.
const WARMEST_C: f64 = 14.0;

fn steady(today: &Today, bees: f64) -> SteadyQuestion {
    let outside = today.air.min(snowhum_units::Kelvin::from_celsius(WARMEST_C));
    SteadyQuestion {
        outside,
        humidity: today.humidity,
        wind: today.wind,
        bees,
        brood_cells: 0.0,
        heater: None,
        start: StartFrom::Cold,
    }
}
