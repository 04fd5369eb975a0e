//! The functions that a text may call on a fact.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::FluentType;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use jiff::civil::Date;
use snowhum_units::System;
use std::borrow::Cow;

use crate::{Fact, Language, Message, Tongue, capital, sentence, words};

/// A fact on its way through a text, and who reads it.
#[derive(Debug, Clone, PartialEq)]
struct Held {
    fact: Fact,
    tongue: Tongue,
}

/// A fact that a function of the text puts into words.
pub(crate) fn held(fact: Fact, tongue: Tongue) -> FluentValue<'static> {
    FluentValue::Custom(Box::new(Held { fact, tongue }))
}

/// Gives a language's texts their functions. Those of a quantity take `digits`, and `us` for the decimals of US units; `DAY`
/// takes `style`; `LIST` takes `between`, what stands between two, and `last`, what stands before the last.
pub(crate) fn add(bundle: &mut FluentBundle<FluentResource>, language: Language) {
    for name in
        ["NUMBER", "MASS", "LENGTH", "DISTANCE", "HEIGHT", "VOLUME", "SPEED", "TEMPERATURE", "WARMER", "DAY", "LIST"]
    {
        added(bundle, name, move |value, options| match value {
            FluentValue::Number(number) => Some(language.number(number.value, digits(options, System::Metric))),
            value => held_in(value).and_then(|held| shown(name, held, options)),
        });
    }
    added(bundle, "CAPITAL", |value, _| worded(value).map(capital));
    added(bundle, "SENTENCE", |value, _| worded(value).map(sentence));
}

fn added<F>(bundle: &mut FluentBundle<FluentResource>, name: &str, function: F)
where
    F: Fn(&FluentValue<'_>, &FluentArgs<'_>) -> Option<String> + Send + Sync + 'static,
{
    // Fails for a name that is taken; each stands above once.
    let _ = bundle.add_function(name, move |values, options| {
        let said = values.first().and_then(|value| function(value, options));
        said.map_or(FluentValue::Error, |text| FluentValue::String(text.into()))
    });
}

fn worded<'v>(value: &'v FluentValue<'_>) -> Option<&'v str> {
    match value {
        FluentValue::String(text) => Some(text),
        _ => None,
    }
}

fn held_in<'v>(value: &'v FluentValue<'_>) -> Option<&'v Held> {
    match value {
        FluentValue::Custom(custom) => custom.as_any().downcast_ref(),
        _ => None,
    }
}

fn option<'o>(options: &'o FluentArgs<'_>, name: &'static str) -> Option<&'o str> {
    options.get(name).and_then(worded)
}

fn shown(function: &str, Held { fact, tongue }: &Held, options: &FluentArgs<'_>) -> Option<String> {
    let system = tongue.system();
    let digits = digits(options, system);
    let quantity = match fact {
        Fact::Mass(of) => of.show(system, digits),
        Fact::Length(of) if function == "DISTANCE" => of.show_distance(system),
        Fact::Length(of) if function == "HEIGHT" => of.show_height(system),
        Fact::Length(of) => of.show(system, digits),
        Fact::Volume(of) => of.show(system, digits),
        Fact::Speed(of) => of.show(system, digits),
        Fact::Temperature(of) => of.show(system, digits),
        Fact::Warmer(of) => of.show(system, digits),
        Fact::Day(day) => return Some(date(*tongue, *day, option(options, "style").unwrap_or_default())),
        Fact::List(parts) => return Some(listed(&tongue.say_all(parts), options)),
        Fact::Said(_) | Fact::Number(_) | Fact::Case(_) => return None,
    };
    Some(tongue.language().quantity(&quantity))
}

/// A day; `part` is a third of a month: as exact as a forecast of months ahead can be.
fn date(tongue: Tongue, day: Date, style: &str) -> String {
    let third: fn(Date) -> Message = match (style, day.day()) {
        ("part", 1..=10) => words::early,
        ("part", 11..=20) => words::mid,
        ("part", _) => words::late,
        _ => return tongue.language().day(day, style),
    };
    tongue.say(&third(day))
}

/// Decimals: `digits`, or in US units `us` where a text has that.
fn digits(options: &FluentArgs<'_>, system: System) -> usize {
    let option = |name| match options.get(name) {
        Some(FluentValue::Number(digits)) => Some(digits.value as usize),
        _ => None,
    };
    let us = if system == System::Us { option("us") } else { None };
    us.or(option("digits")).unwrap_or_default()
}

/// `a, b and c`, where `, ` stands between and ` and ` before the last.
fn listed(parts: &[String], options: &FluentArgs<'_>) -> String {
    let between = option(options, "between").unwrap_or(", ");
    let last = option(options, "last").unwrap_or(between);
    match parts {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., end] => format!("{}{last}{end}", first.join(between)),
    }
}

impl FluentType for Held {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(self.clone())
    }

    /// Only where a text forgot its function.
    fn as_string(&self, _: &intl_memoizer::IntlLangMemoizer) -> Cow<'static, str> {
        "?".into()
    }

    fn as_string_threadsafe(&self, _: &intl_memoizer::concurrent::IntlLangMemoizer) -> Cow<'static, str> {
        "?".into()
    }
}
