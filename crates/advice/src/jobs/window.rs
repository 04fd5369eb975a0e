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

    /// What can still be done on a day when the job's time is over, where that helps; not months after it.
    #[must_use]
    pub fn if_missed(&self, as_of: Date) -> Option<&'static str> {
        let still = closes(self).is_some_and(|last| as_of <= last.saturating_add(STILL.days()));
        let is_told = self.due == Due::Past && still;
        MISSED.iter().find(|(id, _)| is_told && *id == self.id).map(|(_, words)| *words)
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
    if closes(window).is_some_and(|last| as_of > last) {
        Due::Past
    } else if as_of >= opens {
        Due::Now
    } else if as_of.saturating_add(SOON.days()) >= opens {
        Due::Soon
    } else {
        Due::Later
    }
}

/// The last day of a window; none where it never comes.
fn closes(window: &JobWindow) -> Option<Date> {
    let earliest = window.earliest?;
    let lead = if window.kind == Kind::By { LEAD } else { 0 };
    let grace = if window.kind == Kind::By { 0 } else { GRACE };
    let usual = window.usual.unwrap_or(earliest.saturating_sub(lead.days()).saturating_add(30.days()));
    let last = [window.latest, window.until].into_iter().flatten().max();
    Some(last.unwrap_or(usual.saturating_add(grace.days())))
}

/// Days after its last over which a missed job is still spoken of (judgement): about a season.
const STILL: i64 = 100;

/// What can still be done once a job's time is over, by its id (common practice, in words of our own). Of events and of
/// jobs that are nothing once their time is over nothing is said.
const MISSED: &[(&str, &str)] = &[
    ("mite-count-summer", "Count all the same: it still tells which hives to treat."),
    ("honey-off", "Take it off now: treatment and feed both wait for it."),
    (
        "treat-mites",
        "Late still protects the neighbours and next year's bees, not those already hurt. The broodless treatment comes \
         on top.",
    ),
    ("mite-count-autumn", "Leave the hives shut now; a board under a mesh floor still shows what falls."),
    ("feed-begun", "Begin today if it can still be finished by the day for syrup; else give solid food over the bees."),
    ("entrance-reduced", "Still worth doing, from outside and in a minute."),
    (
        "syrup-finished",
        "Take off what is left and give solid food over the bees, or combs of food from a healthy hive of the yard.",
    ),
    ("excluder-out", "Take it out on the next calm mild day, lifting no comb: a queen left below it dies."),
    ("consolidate", "Too cold for combs: leave the boxes as they are, and see to lid and food above the bees."),
    ("top-and-straps", "Late is still fine: lid, tilt and straps are done in a minute on any calm day."),
    ("bear-fence-on", "Still worth it until snow lies, and again before the thaw."),
    ("mouse-guard", "Look first that no mouse is in, then put it on: a guard shuts a mouse in as well as out."),
    ("wrap", "Late is still fine: on any calm day, without knocking."),
    ("winter-yard", "In hard frost leave them where they are: a jolt breaks the cluster."),
    ("cellar-in", "On a quiet cold day they can still be carried in without a jolt; else leave them out."),
    ("broodless", "With brood back it reaches fewer mites: ask the label, and count as soon as hives are open."),
    ("midwinter-weighing", "Lift them on the next calm day all the same: most food is eaten from now on."),
    ("clean-floor", "Still worth doing on the next flying day."),
    ("melt-check", "One look is never late: water on the floor, a leaning stand."),
    ("bear-fence-thaw", "Put it on today: bears are about."),
    ("first-look", "On the next calm warm day all the same: food, eggs or brood, room."),
    ("unwrap", "Take it off at the next visit."),
    ("cellar-out", "Carry them out on the evening before the next flying day."),
    ("pollen", "Bees most likely carry it in themselves by now: watch the entrance first."),
    ("mite-count-spring", "Count now: a count tells something as long as there is brood."),
    ("reverse", "Still possible while the lower box is empty and no brood lies across both."),
];

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_winter::Status;

    fn told(id: &str, as_of: Date) -> JobWindow {
        let last = jiff::civil::date(2025, 10, 20);
        let trigger = Trigger {
            words: String::new(),
            value: 0.0,
            figure: None,
            source: String::new(),
            status: Status::Judgement,
        };
        let dates = Dates::of(vec![Some(0)]);
        let window = window(id, "a job", Kind::By, (&dates, last), trigger);
        JobWindow { earliest: Some(last), usual: Some(last), latest: Some(last), ..window }.told(as_of)
    }

    #[test]
    fn a_missed_job_says_what_can_still_be_done_and_not_for_ever() {
        let (november, march) = (jiff::civil::date(2025, 11, 10), jiff::civil::date(2026, 3, 1));
        for (id, words) in [("treat-mites", "next year"), ("wrap", "still fine"), ("mouse-guard", "no mouse is in")] {
            let said = told(id, november).if_missed(november).unwrap_or_default();
            assert!(said.contains(words), "{id}: {said}");
            assert_eq!(told(id, march).if_missed(march), None, "{id} in March");
        }
        let in_time = jiff::civil::date(2025, 10, 18);
        assert_eq!(told("wrap", in_time).if_missed(in_time), None, "its time is not over");
    }
}
