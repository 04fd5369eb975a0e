//! One window in the making.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_units::{Kelvin, System};
use snowhum_winter::Parameter;

use super::answer::{Belief, Caution, Due, JobWindow, Kind, Trigger};
use crate::cautions::Hazard;
use crate::dates::Dates;
use crate::words::day;

/// Days before the earliest at which a deadline's time has come.
const LEAD: i64 = 14;
/// Days after the usual for which a thing that may begin is still due, where its last day is not known.
const GRACE: i64 = 14;
/// Days that count as soon.
const SOON: i64 = 31;

/// A window whose words are still to be said.
pub(super) fn window(id: &str, what: &str, kind: Kind, (dates, first): (&Dates, Date), trigger: Trigger) -> JobWindow {
    JobWindow {
        id: id.to_owned(),
        what: what.to_owned(),
        kind,
        earliest: dates.at(0.1, first),
        usual: dates.at(0.5, first),
        latest: dates.at(0.9, first),
        share: Some(dates.share()),
        until: None,
        due: Due::Later,
        when: String::new(),
        trigger,
        why: String::new(),
        other_school: None,
        belief: None,
        colonies: Vec::new(),
        caution: None,
    }
}

impl JobWindow {
    pub(super) fn why(self, why: impl Into<String>) -> Self {
        Self { why: why.into(), ..self }
    }

    pub(super) fn until(self, until: Option<Date>) -> Self {
        Self { until, ..self }
    }

    pub(super) fn others(self, others: impl Into<String>) -> Self {
        Self { other_school: Some(others.into()), ..self }
    }

    pub(super) fn believed(self, said: &str, so: &str) -> Self {
        Self { belief: Some(Belief { said: said.to_owned(), so: so.to_owned() }), ..self }
    }

    pub(super) fn caution(self, hazards: &[Hazard]) -> Self {
        let names: Vec<&str> = hazards.iter().map(|hazard| hazard.name()).collect();
        let caution = Caution { about: names.join(", "), says: Hazard::each(hazards).join(" ") };
        Self { caution: Some(caution), ..self }
    }

    pub(super) fn of_colonies(self, colonies: Vec<String>) -> Self {
        Self { colonies, ..self }
    }

    /// Says when, and where the day asked about stands.
    pub(super) fn told(self, as_of: Date) -> Self {
        Self { when: when(&self), due: due(&self, as_of), ..self }
    }
}

/// A trigger with the figure it goes by.
pub(super) fn trigger(figure: &'static str, parameter: &Parameter, words: String) -> Trigger {
    Trigger {
        words,
        value: parameter.value,
        figure: Some(figure.to_owned()),
        source: parameter.source.clone(),
        status: parameter.status,
    }
}

/// A temperature in the keeper's words.
pub(super) fn degrees(celsius: f64, system: System) -> String {
    Kelvin::from_celsius(celsius).show(system, 0)
}

/// The dates in words.
fn when(window: &JobWindow) -> String {
    let Some(earliest) = window.earliest else {
        return format!("comes in {} here", winters(window.share.unwrap_or(0.0)));
    };
    let rarely = window.share.filter(|share| *share < 0.9);
    let rarely = rarely.map_or_else(String::new, |share| format!("; comes in {} only", winters(share)));
    let until = window.until.map_or_else(String::new, |until| format!(", until about {}", day(until)));
    let middle = match (window.kind, window.usual) {
        (Kind::By, Some(usual)) if usual != earliest => {
            format!("by {} to be safe; {} is in time in half of all years", day(earliest), day(usual))
        }
        (Kind::By, _) => format!("by {} to be safe", day(earliest)),
        (Kind::From, Some(usual)) => format!("from about {}{until}{}", day(usual), around(window, earliest)),
        (Kind::About, Some(usual)) => format!("about {}{until}{}", day(usual), around(window, earliest)),
        (Kind::From | Kind::About, None) => format!("in 1 winter of 10 before {}", day(earliest)),
    };
    middle + &rarely
}

fn around(window: &JobWindow, earliest: Date) -> String {
    match window.latest {
        Some(latest) if latest != earliest => {
            format!("; between {} and {} in 8 winters of 10", day(earliest), day(latest))
        }
        Some(_) => String::new(),
        None => format!("; in 1 winter of 10 before {}", day(earliest)),
    }
}

fn winters(share: f64) -> String {
    match (share * 10.0).round() as u32 {
        _ if share <= 0.0 => "no winter that was drawn".to_owned(),
        0 => "fewer than 1 winter of 10".to_owned(),
        1 => "1 winter of 10".to_owned(),
        tenths => format!("{tenths} winters of 10"),
    }
}

fn due(window: &JobWindow, as_of: Date) -> Due {
    let lead = if window.kind == Kind::By { LEAD } else { 0 };
    let Some(opens) = window.earliest.map(|day| day.saturating_sub(lead.days())) else { return Due::Later };
    let last = [window.latest, window.until].into_iter().flatten().max();
    let grace = if window.kind == Kind::By { 0 } else { GRACE };
    let closes =
        last.unwrap_or_else(|| window.usual.unwrap_or(opens.saturating_add(30.days())).saturating_add(grace.days()));
    if as_of > closes {
        Due::Past
    } else if as_of >= opens {
        Due::Now
    } else if as_of.saturating_add(SOON.days()) >= opens {
        Due::Soon
    } else {
        Due::Later
    }
}
