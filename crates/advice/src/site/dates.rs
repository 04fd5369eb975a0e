//! Last days at a site, from its own weather.

use jiff::ToSpan;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, site as say};
use snowhum_units::{Kelvin, Range};
use snowhum_weather::Hourly;

use super::figures::Figures;
use crate::ahead::run::Run;
use crate::{finish, winter_bees};

/// Days over which warmth is averaged.
const FORTNIGHT: usize = 14;
/// Days of the coldest stretch.
const MONTH: usize = 30;

/// Last days at a site, from its own weather.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SiteDates {
    /// How long and hard winters are here, in words.
    pub country: Message,
    /// Last sensible day to give a queen.
    pub requeen_by: Range<Date>,
    /// Last day to give sealed brood.
    pub boost_by: Range<Date>,
    /// Last day to put two colonies together with a newspaper.
    pub unite_by: Range<Date>,
    /// When colonies cluster for good.
    pub cluster: Range<Date>,
    /// By when syrup must be finished.
    pub syrup_by: Range<Date>,
}

impl SiteDates {
    /// None only if the program's own table is broken.
    pub(crate) fn of(run: &Run<'_>) -> Option<Self> {
        Some(Self::by(run, &Figures::shipped()?))
    }

    pub(crate) fn by(run: &Run<'_>, figures: &Figures) -> Self {
        let question = run.question;
        let last =
            |celsius: f64| finish::last_days(question.autumn, question.autumn_from, Kelvin::from_celsius(celsius));
        let before = |dates: Range<Date>, days: f64| dates.map(|date| date.saturating_sub((days as i64).days()));
        let cluster = last(figures.cluster.value);
        Self {
            country: figures.cold_of(coldest_month(run)).words(),
            requeen_by: before(cluster, figures.requeen_days.value),
            boost_by: before(cluster, figures.capped_days.value),
            unite_by: before(cluster, figures.newspaper_days.value),
            cluster,
            syrup_by: run.finish_syrup_by,
        }
    }
}

/// Mean air of the coldest thirty days of the winter, over all paths, °C.
pub(crate) fn coldest_month(run: &Run<'_>) -> f64 {
    let paths = &run.question.winter.paths;
    let of = |path: &Hourly| {
        let days: Vec<f64> = path.temperature.chunks_exact(24).map(mean).collect();
        let months =
            days.windows(MONTH.min(days.len().max(1))).map(|days| days.iter().sum::<f64>() / days.len() as f64);
        months.fold(f64::INFINITY, f64::min)
    };
    paths.iter().map(of).sum::<f64>() / paths.len().max(1) as f64
}

fn mean(day: &[Kelvin]) -> f64 {
    day.iter().map(|air| air.celsius()).sum::<f64>() / day.len() as f64
}

/// The mean of the daily maximum over the fortnight before the plan's first day, over all paths, °C.
pub(crate) fn warmth(run: &Run<'_>) -> f64 {
    let question = run.question;
    let today = (question.as_of.duration_since(question.autumn_from).as_hours() / 24).max(0) as usize;
    let of = |path: &Vec<Kelvin>| {
        let maxima = finish::daily_maxima(path);
        let until = today.clamp(1, maxima.len().max(1)).min(maxima.len());
        let days = &maxima[until.saturating_sub(FORTNIGHT)..until];
        days.iter().map(|maximum| Kelvin::new(*maximum).celsius()).sum::<f64>() / days.len().max(1) as f64
    };
    let paths = &question.autumn.0;
    paths.iter().map(of).sum::<f64>() / paths.len().max(1) as f64
}

/// Where the date of winter bees is from, said wherever it is used.
pub(crate) fn winter_bees_say(run: &Run<'_>) -> Message {
    let middle = run.ahead.weather().0.winter_bees(run.question.parameters);
    say::winter_bees(winter_bees::date(middle, run.question.autumn_from.year()))
}

/// Before the first day a treatment still spares all winter bees, after the second none.
pub(crate) fn winter_bees(run: &Run<'_>) -> [Date; 2] {
    let question = run.question;
    let middle = run.ahead.weather().0.winter_bees(question.parameters);
    winter_bees::spared(middle, question.autumn_from.year())
}
