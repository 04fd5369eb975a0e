//! What is asked of a spring.

use snowhum_apiary::Apiary;
use snowhum_weather::Ensemble;

use crate::jobs::answer::JobsAnswer;
use crate::jobs::triggers::Triggers;
use crate::now::answer::NowAnswer;

/// What is asked.
#[derive(Debug, Clone, Copy)]
pub struct SpringQuestion<'a> {
    /// The yard.
    pub apiary: &'a Apiary,
    /// Where each colony stands.
    pub now: &'a NowAnswer,
    /// The site's windows.
    pub jobs: &'a JobsAnswer,
    /// Weather from the start of the day the colonies were counted.
    pub winter: &'a Ensemble,
    /// What jobs wait for.
    pub triggers: &'a Triggers,
}
