//! What is asked of a year, and what its windows are made from.

use jiff::civil::Date;
use snowhum_apiary::Apiary;

use super::colonies::Broods;
use super::triggers::Triggers;
use super::year::SiteYear;
use crate::ahead::run::PlanQuestion;

/// What is asked.
#[derive(Debug, Clone, Copy)]
pub struct JobsQuestion<'a> {
    /// The yard.
    pub apiary: &'a Apiary,
    /// The site's year, from [`super::season_start`] on.
    pub year: &'a SiteYear,
    /// The day asked about.
    pub as_of: Date,
    /// The plan from the day the colonies were counted, where that lies in this year.
    pub colonies: Option<PlanQuestion<'a>>,
    /// What jobs wait for.
    pub triggers: &'a Triggers,
}

/// Everything a window is made from.
pub(super) struct Ground<'a> {
    pub(super) question: &'a JobsQuestion<'a>,
    pub(super) year: &'a SiteYear,
    pub(super) broods: Option<Broods>,
}
