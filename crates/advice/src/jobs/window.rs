//! One window in the making.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Message, jobs as say};
use snowhum_units::Kelvin;
use snowhum_winter::Parameter;

use super::answer::{Belief, Caution, Due, JobWindow, Kind, Trigger};
use crate::cautions::Hazard;
use crate::dates::Dates;

/// Days before the earliest at which a deadline's time has come.
const LEAD: i64 = 14;
/// Days after the usual for which a thing that may begin is still due, where its last day is not known.
const GRACE: i64 = 14;
/// Days that count as soon.
const SOON: i64 = 31;

/// A window whose words are still to be said.
pub(super) fn window(
    id: &str,
    what: Message,
    kind: Kind,
    (dates, first): (&Dates, Date),
    trigger: Trigger,
) -> JobWindow {
    JobWindow {
        id: id.to_owned(),
        what,
        kind,
        earliest: dates.at(0.1, first),
        usual: dates.at(0.5, first),
        latest: dates.at(0.9, first),
        share: Some(dates.share()),
        until: None,
        due: Due::Later,
        when: Message::NONE,
        trigger,
        why: Message::NONE,
        other_school: None,
        belief: None,
        colonies: Vec::new(),
        caution: None,
    }
}

impl JobWindow {
    pub(super) fn why(self, why: Message) -> Self {
        Self { why, ..self }
    }

    pub(super) fn until(self, until: Option<Date>) -> Self {
        Self { until, ..self }
    }

    pub(super) fn others(self, others: Message) -> Self {
        Self { other_school: Some(others), ..self }
    }

    pub(super) fn believed(self, said: Message, so: Message) -> Self {
        Self { belief: Some(Belief { said, so }), ..self }
    }

    pub(super) fn caution(self, hazards: &[Hazard]) -> Self {
        let names: Vec<&str> = hazards.iter().map(|hazard| hazard.name()).collect();
        let caution = Caution { about: names.join(", "), says: Message::sentences(Hazard::each(hazards)) };
        Self { caution: Some(caution), ..self }
    }

    pub(super) fn of_colonies(self, colonies: Vec<String>) -> Self {
        Self { colonies, ..self }
    }

    /// What can still be done on a day when the job's time is over, where that helps; not months after it.
    #[must_use]
    pub fn if_missed(&self, as_of: Date) -> Option<Message> {
        let still = closes(self).is_some_and(|last| as_of <= last.saturating_add(STILL.days()));
        missed(&self.id).filter(|_| self.due == Due::Past && still)
    }

    /// Says when, and where the day asked about stands.
    pub(super) fn told(self, as_of: Date) -> Self {
        Self { when: when(&self), due: due(&self, as_of), ..self }
    }
}

/// A trigger with the figure it goes by.
pub(super) fn trigger(figure: &'static str, parameter: &Parameter, words: Message) -> Trigger {
    Trigger {
        words,
        value: parameter.value,
        figure: Some(figure.to_owned()),
        source: Message::from(&parameter.source),
        status: parameter.status,
    }
}

/// A trigger's temperature.
pub(super) fn degrees(parameter: &Parameter) -> Kelvin {
    Kelvin::from_celsius(parameter.value)
}

/// The dates in words.
fn when(window: &JobWindow) -> Message {
    let Some(earliest) = window.earliest else {
        return say::when_never(winters(window.share.unwrap_or(0.0)));
    };
    let (first, then) = match (window.kind, window.usual) {
        (Kind::By, usual) => (say::when_safe(earliest), usual.filter(|usual| *usual != earliest).map(say::when_half)),
        (_, None) => (say::when_before(earliest), None),
        (kind, Some(usual)) => (begins(kind, usual, window.until), around(window.latest, earliest)),
    };
    let seldom = window.share.filter(|share| *share < 0.9).map(|share| say::when_seldom(winters(share)));
    say::when([Some(first), then, seldom].into_iter().flatten().collect())
}

fn begins(kind: Kind, on: Date, until: Option<Date>) -> Message {
    match (kind, until) {
        (Kind::From, Some(until)) => say::when_from_until(on, until),
        (Kind::From, None) => say::when_from(on),
        (_, Some(until)) => say::when_about_until(on, until),
        (_, None) => say::when_about(on),
    }
}

fn around(latest: Option<Date>, earliest: Date) -> Option<Message> {
    match latest {
        Some(latest) => (latest != earliest).then(|| say::when_between(earliest, latest)),
        None => Some(say::when_before(earliest)),
    }
}

fn winters(share: f64) -> Message {
    match (share * 10.0).round() as u32 {
        _ if share <= 0.0 => say::winters_none(),
        0 => say::winters_fewest(),
        tenths => say::winters(tenths),
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
fn missed(id: &str) -> Option<Message> {
    Some(match id {
        "mite-count-summer" => say::mite_count_summer_missed(),
        "honey-off" => say::honey_off_missed(),
        "treat-mites" => say::treat_mites_missed(),
        "mite-count-autumn" => say::mite_count_autumn_missed(),
        "feed-begun" => say::feed_begun_missed(),
        "entrance-reduced" => say::entrance_reduced_missed(),
        "syrup-finished" => say::syrup_finished_missed(),
        "excluder-out" => say::excluder_out_missed(),
        "consolidate" => say::consolidate_missed(),
        "top-and-straps" => say::top_and_straps_missed(),
        "bear-fence-on" => say::bear_fence_on_missed(),
        "mouse-guard" => say::mouse_guard_missed(),
        "wrap" => say::wrap_missed(),
        "winter-yard" => say::winter_yard_missed(),
        "cellar-in" => say::cellar_in_missed(),
        "broodless" => say::broodless_missed(),
        "midwinter-weighing" => say::midwinter_weighing_missed(),
        "clean-floor" => say::clean_floor_missed(),
        "melt-check" => say::melt_check_missed(),
        "bear-fence-thaw" => say::bear_fence_thaw_missed(),
        "first-look" => say::first_look_missed(),
        "unwrap" => say::unwrap_missed(),
        "cellar-out" => say::cellar_out_missed(),
        "pollen" => say::pollen_missed(),
        "mite-count-spring" => say::mite_count_spring_missed(),
        "reverse" => say::reverse_missed(),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use snowhum_say::Tongue;
    use snowhum_winter::Status;

    fn told(id: &str, as_of: Date) -> JobWindow {
        let last = jiff::civil::date(2025, 10, 20);
        let trigger = Trigger {
            words: Message::NONE,
            value: 0.0,
            figure: None,
            source: Message::NONE,
            status: Status::Judgement,
        };
        let dates = Dates::of(vec![Some(0)]);
        let window = window(id, Message::own("a job"), Kind::By, (&dates, last), trigger);
        JobWindow { earliest: Some(last), usual: Some(last), latest: Some(last), ..window }.told(as_of)
    }

    #[test]
    fn a_missed_job_says_what_can_still_be_done_and_not_for_ever() {
        let (november, march) = (jiff::civil::date(2025, 11, 10), jiff::civil::date(2026, 3, 1));
        for (id, words) in [("treat-mites", "next year"), ("wrap", "still fine"), ("mouse-guard", "no mouse is in")] {
            let said = Tongue::BRITISH.say(&told(id, november).if_missed(november).unwrap_or_default());
            assert!(said.contains(words), "{id}: {said}");
            assert_eq!(told(id, march).if_missed(march), None, "{id} in March");
        }
        let in_time = jiff::civil::date(2025, 10, 18);
        assert_eq!(told("wrap", in_time).if_missed(in_time), None, "its time is not over");
    }
}
