//! How far ahead an answer looks: to spring, and once flowers are near or past, some weeks on as if they gave nothing.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::words::day;

/// The end of what is looked at.
///
/// ```
/// use jiff::civil::date;
/// use snowhum_advice::LooksTo;
///
/// let (spring, later) = (date(2026, 3, 17), date(2026, 4, 12));
/// assert_eq!(LooksTo::of(spring, spring).goal(), "spring");
/// assert_eq!(LooksTo::of(spring, later).goal(), "12 April without a flow");
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
    pub fn goal(self) -> String {
        match self {
            Self::Spring => "spring".to_owned(),
            Self::WithoutFlow(last) => format!("{} without a flow", day(last)),
        }
    }

    /// What a keeper must know of it; nothing in winter.
    #[must_use]
    pub fn says(self) -> Option<String> {
        let Self::WithoutFlow(last) = self else { return None };
        Some(format!(
            "First flowers are near or past. Food is reckoned to {} as if none gave anything: it is the least there will be, and \
             in cold or wet weeks there is no more.",
            day(last)
        ))
    }
}
