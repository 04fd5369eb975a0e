//! When each class of treatment can work at this site. No doses: the label and the law say what, when and how.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_say::{Message, fit as say, fit_class};
use snowhum_units::{Kelvin, Range};
use snowhum_weather::Hourly;

use super::answer::{ClassWindow, OutOf};
use super::look::Look;
use crate::ahead::run::Run;
use crate::broodless::broodless_days;
use crate::finish;
use crate::site::dates;
use crate::site::figures::{Broodless, Class};
use crate::statistics::rounded;

pub(super) fn of(look: &Look<'_>) -> Vec<ClassWindow> {
    let warm = look.figures.class.iter().map(|class| warm(look, class));
    let broodless = broodless_days(look.base);
    let cold = look.figures.broodless.iter().map(|class| without_brood(look, class, broodless.as_ref()));
    warm.chain(cold).collect()
}

/// A class that needs warmth for as long as it takes.
fn warm(look: &Look<'_>, class: &Class) -> ClassWindow {
    let question = look.base.question;
    let limit = Kelvin::from_celsius(class.from_c);
    let until = finish::last_days(question.autumn, question.autumn_from, limit)
        .map(|date| date.saturating_sub(class.days.days()));
    let hot = class.hot_c.map(|hot| cool_days(look, hot, until.p50));
    let mut says = say::window(until.p10, until.p50, until.p90, dates::winter_bees(look.base)[0]);
    if let Some(days) = hot.filter(|days| days.of > 0.0 && days.days < days.of) {
        says = say::window_hot(days.of, days.of - days.days, says);
    }
    if question.as_of > until.p50 {
        says = say::window_past(until.p50);
    }
    ClassWindow {
        class: said(&class.name, ""),
        from: None,
        until: Some(until),
        fit_days: hot,
        weather: said(&class.name, "-weather"),
        brood: said(&class.name, "-brood"),
        supers: said(&class.name, "-supers"),
        says,
        source: class.source.clone(),
        status: class.status,
    }
}

/// What is said of a class; a test finds it for each.
fn said(class: &str, text: &str) -> Message {
    fit_class::named(&format!("{class}{text}")).unwrap_or_default()
}

/// Days from today to `until` that stay under `hot_c`, mean over paths.
fn cool_days(look: &Look<'_>, hot_c: f64, until: Date) -> OutOf {
    let question = look.base.question;
    let since = |from: Date, to: Date| (to.duration_since(from).as_hours() / 24).max(0) as usize;
    let first = since(question.autumn_from, question.as_of);
    let days = since(question.autumn_from, until);
    let limit = Kelvin::from_celsius(hot_c).get();
    let of = |path: &Vec<Kelvin>| {
        finish::daily_maxima(path).iter().take(days).skip(first).filter(|maximum| **maximum < limit).count() as f64
    };
    let paths = &question.autumn.0;
    let cool = paths.iter().map(of).sum::<f64>() / paths.len().max(1) as f64;
    OutOf { days: rounded(cool, 0), of: days.saturating_sub(first) as f64 }
}

/// A class that works without brood alone.
fn without_brood(look: &Look<'_>, class: &Broodless, broodless: Option<&[Range<Date>; 2]>) -> ClassWindow {
    let mut window = ClassWindow {
        class: said(&class.name, ""),
        from: broodless.map(|dates| dates[0]),
        until: broodless.map(|dates| dates[1]),
        fit_days: None,
        weather: said(&class.name, "-weather"),
        brood: said(&class.name, "-brood"),
        supers: said(&class.name, "-supers"),
        says: say::window_no_broodless(),
        source: class.source.clone(),
        status: class.status,
    };
    let Some([from, until]) = broodless else { return window };
    window.says = say::window_broodless(from.p50, until.p50);
    if from.p90 >= until.p10 {
        window.says = say::window_look(window.says);
        return window;
    }
    let days = days_between(look.base, [class.low_c, class.high_c], [from.p90, until.p10]);
    window.says = say::window_sure(days.of, from.p90, days.days, until.p10, window.says);
    window.fit_days = Some(days);
    window
}

/// Days between two dates whose maximum lies in a band, mean over paths.
fn days_between(run: &Run<'_>, [low_c, high_c]: [f64; 2], [from, until]: [Date; 2]) -> OutOf {
    let first = (from.duration_since(run.question.as_of).as_hours() / 24).max(0) as usize;
    let last = (until.duration_since(run.question.as_of).as_hours() / 24).max(0) as usize;
    let fits = |maximum: f64| (low_c..=high_c).contains(&Kelvin::new(maximum).celsius());
    let paths = &run.question.winter.paths;
    let of = |path: &Hourly| {
        let maxima = finish::daily_maxima(&path.temperature);
        maxima.iter().take(last).skip(first).filter(|maximum| fits(**maximum)).count() as f64
    };
    let days = paths.iter().map(of).sum::<f64>() / paths.len().max(1) as f64;
    OutOf { days: rounded(days, 0), of: last.saturating_sub(first) as f64 }
}
