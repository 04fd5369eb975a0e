//! Losses and lessons: what became of each colony in a winter, what that says and does not say, what to do next autumn.
//!
//! Everything is read from the records. Lost is what the surveys call so (see [`crate::sums::losses`]); what was not
//! noted is not guessed.

mod forecast;
mod lesson;
mod lines;
mod outcome;
mod season;
mod survey;
mod trouble;
mod unnamed;
mod winters;

pub use forecast::{Forecast, ForecastScore, Scored};
pub use lesson::{ColonyLesson, KeptExamination};
pub use lines::Survey;
pub use outcome::Fate;
pub use season::Season;
pub use survey::SurveyLine;
pub use trouble::Trouble;
pub use winters::{Coldest, WinterRecord, WorstMites};

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Apiary, Colony, winter_year};
use snowhum_say::{Message, lessons as say};

use crate::ahead::run::PlanQuestion;
use crate::statistics::rounded;
use crate::sums::SumFault;
use crate::sums::losses::answer::LossesAnswer;
use crate::sums::losses::background::Background;
use crate::sums::losses::background::law::OwnWinter;
use crate::sums::losses::yard::YardCount;
use crate::sums::losses::{Counted, LossesQuestion, background, losses};
use lines::Lines;
use outcome::Outcome;
use season::Diary;

/// Name and number of the answer's form; the number rises when a key changes.
pub const LESSONS_SCHEMA: &str = "snowhum.lessons/1";

/// What is asked of the records.
#[derive(Debug, Clone)]
pub struct LessonsQuestion<'a> {
    /// The yard with its notes.
    pub apiary: &'a Apiary,
    /// The day up to which notes are read.
    pub as_of: Date,
    /// The year of the winter's autumn; the latest counted one if not given.
    pub season: Option<i16>,
    /// The site's spring, of any year: first flow plus 14 days.
    pub spring: Date,
    /// Bought or split in since autumn, beside the colonies of the records.
    pub added: u32,
    /// Sold or united out of those.
    pub removed: u32,
    /// Chances given in autumn, by today's model; empty if nobody asked.
    pub forecasts: &'a [Forecast],
}

/// The answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LessonsAnswer {
    /// [`LESSONS_SCHEMA`].
    pub schema: String,
    /// Name of the yard.
    pub apiary: String,
    /// Whether the yard is made up.
    pub invented: bool,
    /// The day up to which notes were read.
    pub as_of: Date,
    /// The winter.
    pub season: Season,
    /// Whether that winter is over by `as_of`.
    pub over: bool,
    /// Every colony in the yard's order.
    pub colonies: Vec<ColonyLesson>,
    /// The count as far as it is told.
    pub so_far: SoFar,
    /// The winter's losses; none while a colony is not told.
    pub losses: Option<LossesAnswer>,
    /// What all winters of the records say of losses to what nobody names.
    pub background: Background,
    /// What it cost.
    pub costs: Costs,
    /// What was foretold against what happened; none while it cannot be scored.
    pub forecast: Option<ForecastScore>,
    /// Lessons of the winter before, to be remembered this autumn.
    pub remember: Vec<Message>,
    /// Winters side by side, latest first.
    pub winters: Vec<WinterRecord>,
    /// What others lost.
    pub published: Vec<Survey>,
    /// The numbers that the yearly surveys ask for.
    pub survey: Vec<SurveyLine>,
    /// What to make of it.
    pub say: Vec<Message>,
}

impl LessonsAnswer {
    /// Whether forecasts can be scored: winter is over, every colony told, and the yard's counts are of that winter.
    #[must_use]
    pub fn can_be_scored(&self) -> bool {
        let is_counted = self.winters.iter().any(|winter| winter.season.year == self.season.year && winter.counted);
        self.over && self.so_far.not_told == 0 && is_counted
    }
}

/// What today's model says of a yard on the day it was counted.
#[must_use]
pub fn foretold(question: &PlanQuestion<'_>) -> Vec<Forecast> {
    let plan = crate::plan::plan(question);
    plan.colonies.into_iter().map(|colony| Forecast { colony: colony.name, alive: colony.alive_in_spring }).collect()
}

/// A count that may still be open.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct SoFar {
    /// Colonies at risk.
    pub at_risk: u32,
    /// Lost.
    pub lost: u32,
    /// Not told yet.
    pub not_told: u32,
}

/// Money of a winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Costs {
    /// Colonies lost at what one is worth.
    pub colonies_money: f64,
    /// Food given at the yard's prices, as far as it was noted.
    pub feed_money: f64,
    /// Currency.
    pub currency: String,
}

/// Reads a winter's losses and lessons out of the records.
///
/// # Errors
/// When the yard has no colony, or the shipped table cannot be read.
pub fn lessons(question: &LessonsQuestion<'_>) -> Result<LessonsAnswer, SumFault> {
    let lines = Lines::shipped()?;
    let season = season_of(question);
    // A winter that is over is told of the yard as it was then.
    let then = question.apiary.in_winter(season.year);
    let apiary = &*then;
    let question = &LessonsQuestion { apiary, ..question.clone() };
    let diary = Diary::of(apiary, question.as_of);
    let wintered = wintered(apiary, &diary, &season);
    let (so_far, losses) = counted(question, &wintered)?;
    let winters = winters::all(apiary, &diary, (question.spring, question.as_of));
    let over = question.as_of >= season.end;
    let one = |(colony, outcome): &(&Colony, Outcome)| {
        lesson::lesson(apiary, colony, (&diary, &season), outcome, &lines.parameter)
    };
    let colonies: Vec<ColonyLesson> = wintered.iter().map(one).collect();
    Ok(LessonsAnswer {
        schema: LESSONS_SCHEMA.to_owned(),
        apiary: apiary.name.clone(),
        invented: apiary.invented,
        as_of: question.as_of,
        over,
        so_far,
        background: background(&unnamed(&winters))?,
        costs: costs(apiary, so_far, &winters, &season),
        forecast: scored(question, &wintered, over, so_far, &lines),
        remember: remembered(apiary, &diary, &season, question.spring),
        say: said(so_far, losses.as_ref(), over, &season, &colonies),
        survey: survey::lines(question, (&diary, &season), &wintered),
        colonies,
        losses,
        winters,
        published: lines.survey,
        season,
    })
}

/// The yard's winters in its records up to a day, as its background is learnt from them (`sums::losses::learnt`); `spring`
/// is the site's, of any year.
#[must_use]
pub fn own_winters(apiary: &Apiary, as_of: Date, spring: Date) -> Vec<OwnWinter> {
    unnamed(&winters::all(apiary, &Diary::of(apiary, as_of), (spring, as_of)))
}

/// What became of each colony of a yard in the winter it was counted for, in the yard's order, by all that was noted.
#[must_use]
pub fn fates(apiary: &Apiary) -> Vec<Fate> {
    let diary = Diary::of(apiary, Date::MAX);
    let season = Season::of(winter_year(apiary.as_of, apiary.site.latitude), apiary, apiary.as_of);
    // What was noted since, in spring and summer, counts as well.
    let season = Season { until: Date::MAX, ..season };
    apiary.colonies.iter().map(|colony| outcome::of(&diary, colony.id, &season).fate).collect()
}

fn unnamed(winters: &[WinterRecord]) -> Vec<OwnWinter> {
    winters.iter().filter_map(|winter| winter.unnamed).collect()
}

/// Colonies of the yard that wintered, with what became of them.
fn wintered<'a>(apiary: &'a Apiary, diary: &Diary<'_>, season: &Season) -> Vec<(&'a Colony, Outcome)> {
    let ids = winters::wintered(apiary, diary, season);
    let in_it = apiary.colonies.iter().filter(|colony| ids.contains(&colony.id));
    in_it.map(|colony| (colony, outcome::of(diary, colony.id, season))).collect()
}

fn costs(apiary: &Apiary, so_far: SoFar, winters: &[WinterRecord], season: &Season) -> Costs {
    let fed = winters.iter().find(|winter| winter.season.year == season.year);
    Costs {
        colonies_money: rounded(f64::from(so_far.lost) * apiary.money.colony, 2),
        feed_money: fed.map_or(0.0, |winter| winter.fed_money),
        currency: apiary.money.currency.clone(),
    }
}

/// The winter asked about, else the one that the yard was counted for.
fn season_of(question: &LessonsQuestion<'_>) -> Season {
    let apiary = question.apiary;
    let year = question.season.unwrap_or_else(|| winter_year(apiary.as_of, apiary.site.latitude));
    Season::of(year, &apiary.in_winter(year), question.spring)
}

/// The count, and the losses once every colony is told.
fn counted(
    question: &LessonsQuestion<'_>,
    wintered: &[(&Colony, Outcome)],
) -> Result<(SoFar, Option<LossesAnswer>), SumFault> {
    let number = |wanted: Fate| wintered.iter().filter(|(_, outcome)| outcome.fate == wanted).count() as u32;
    let count = YardCount {
        before: wintered.len() as u32,
        added: question.added,
        removed: question.removed.saturating_add(number(Fate::Sold) + number(Fate::United)),
        dead: number(Fate::Dead),
        queen_failed: number(Fate::QueenFailed),
        disaster: number(Fate::Disaster),
        weak: number(Fate::Weak),
    };
    let at_risk = count.before.saturating_add(count.added).saturating_sub(count.removed);
    let lost = count.dead + count.queen_failed + count.disaster;
    let so_far = SoFar { at_risk, lost, not_told: number(Fate::NotTold) };
    let money = &question.apiary.money;
    let asked = LossesQuestion {
        counted: Counted::Yard(count),
        winters: Vec::new(),
        colony_price: Some(money.colony),
        season_worth: None,
        currency: money.currency.clone(),
    };
    let is_told = so_far.not_told == 0 && at_risk > 0;
    Ok((so_far, if is_told { Some(losses(&asked)?) } else { None }))
}

/// Forecasts against outcomes, once winter is over and every colony told: those that died early alone would be a
/// chosen few.
fn scored(
    question: &LessonsQuestion<'_>,
    wintered: &[(&Colony, Outcome)],
    over: bool,
    so_far: SoFar,
    lines: &Lines,
) -> Option<ForecastScore> {
    if !over || so_far.not_told > 0 {
        return None;
    }
    let known: Vec<forecast::Known> = wintered
        .iter()
        .filter_map(|(colony, outcome)| {
            let forecast = question.forecasts.iter().find(|forecast| forecast.colony == colony.name)?.clone();
            Some(forecast::Known { forecast, alive: outcome.fate.lived()?, helped: outcome.helped })
        })
        .collect();
    forecast::score(&known, &lines.parameter)
}

/// What the dead of the winter before taught.
fn remembered(apiary: &Apiary, diary: &Diary<'_>, season: &Season, spring: Date) -> Vec<Message> {
    let then = apiary.in_winter(season.year - 1);
    let before = Season::of(season.year - 1, &then, spring);
    let one = |colony: &Colony| {
        let outcome = outcome::of(diary, colony.id, &before);
        let (on, examined) = outcome.examined.filter(|_| outcome.fate == Fate::Dead)?;
        let kept = KeptExamination::of(on, &examined);
        let next = kept.cause.as_deref().and_then(|cause| lesson::next_autumn(cause, apiary));
        Some(match next {
            Some(next) => say::remember_next(&colony.name, kept.words, next, &before.name),
            None => say::remember(&colony.name, kept.words, &before.name),
        })
    };
    then.colonies.iter().filter_map(one).collect()
}

fn said(
    so_far: SoFar,
    losses: Option<&LossesAnswer>,
    over: bool,
    season: &Season,
    colonies: &[ColonyLesson],
) -> Vec<Message> {
    let SoFar { at_risk, lost, not_told } = so_far;
    let mut said = Vec::new();
    if not_told > 0 {
        said.push(say::open(at_risk, lost, lost + not_told, not_told, over));
        if !over {
            said.push(say::winter_ends(season.end));
        }
    }
    said.extend(losses.into_iter().flat_map(|losses| &losses.say).cloned());
    if colonies.iter().any(|colony| colony.fate == Fate::Alive) {
        said.push(say::no_proof());
    }
    said
}
