//! How far ahead an answer looks: to spring, and once flowers are near or past, some weeks on as if they gave nothing.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_say::{Message, plan as say};

/// The end of what is looked at.
///
/// ```
/// use jiff::civil::date;
/// use snowhum_advice::LooksTo;
/// use snowhum_say::Tongue;
///
/// let (spring, later) = (date(2026, 3, 17), date(2026, 4, 12));
/// let goal = |last| Tongue::BRITISH.say(&LooksTo::of(spring, last).goal());
/// assert_eq!(goal(spring), "spring");
/// assert_eq!(goal(later), "12 April without a flow");
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LooksTo {
    /// First flow of the site plus 14 days.
    Spring,
    /// A day after that. The model lets no flower give anything, so food until then is the least there will be.
    WithoutFlow(Date),
}

impl LooksTo {
    /// What an answer looks to whose weather ends on a day.
    #[must_use]
    pub fn of(spring: Date, last: Date) -> Self {
        if last > spring { Self::WithoutFlow(last) } else { Self::Spring }
    }

    /// In words, after "to".
    #[must_use]
    pub fn goal(self) -> Message {
        match self {
            Self::Spring => say::goal_spring(),
            Self::WithoutFlow(last) => say::goal_without_flow(last),
        }
    }

    /// What a keeper must know of it; nothing in winter.
    #[must_use]
    pub fn says(self) -> Option<Message> {
        match self {
            Self::Spring => None,
            Self::WithoutFlow(last) => Some(say::without_flow(last)),
        }
    }
}
