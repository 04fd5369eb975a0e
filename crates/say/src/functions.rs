//! The functions that a text may call on a fact.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::FluentType;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use snowhum_units::{CubicMetre, Kilogram, System};
use std::borrow::Cow;

use crate::{Fact, Tongue, capital, dates, sentence};

/// A fact on its way through a text, and who reads it.
#[derive(Debug, Clone, PartialEq)]
struct Held {
    fact: Fact,
    tongue: Tongue,
}

/// A fact that a function of the text puts into words.
pub(crate) fn held(fact: &Fact, tongue: Tongue) -> FluentValue<'static> {
    FluentValue::Custom(Box::new(Held { fact: fact.clone(), tongue }))
}

/// Gives a language's texts their functions. Those of a quantity take `digits`, and `us` for the decimals of US units; `DAY`
/// takes `style`; `LIST` takes `between`, what stands between two, and `last`, what stands before the last. `PORTION` and `POURED`
/// are a mass and a volume as exact as a keeper measures them out.
pub(crate) fn add(bundle: &mut FluentBundle<FluentResource>) {
    for name in ["NUMBER", "MASS", "LENGTH", "VOLUME", "SPEED", "TEMPERATURE", "WARMER", "DAY", "LIST"] {
        added(bundle, name, |values, options| text(shown(values.first(), options)));
    }
    added(bundle, "DISTANCE", |values, _| text(length(values.first(), |of, tongue| of.show_distance(tongue.system()))));
    added(bundle, "HEIGHT", |values, _| text(length(values.first(), |of, tongue| of.show_height(tongue.system()))));
    added(bundle, "PORTION", |values, _| text(measured(values.first())));
    added(bundle, "POURED", |values, _| text(measured(values.first())));
    added(bundle, "CAPITAL", |values, _| text(worded(values.first()).map(capital)));
    added(bundle, "SENTENCE", |values, _| text(worded(values.first()).map(sentence)));
}

type Function = for<'a> fn(&[FluentValue<'a>], &FluentArgs<'_>) -> FluentValue<'a>;

fn added(bundle: &mut FluentBundle<FluentResource>, name: &str, function: Function) {
    // Fails for a name that is taken; each stands above once.
    let _ = bundle.add_function(name, function);
}

fn text<'a>(text: Option<String>) -> FluentValue<'a> {
    text.map_or(FluentValue::Error, |text| FluentValue::String(text.into()))
}

fn worded<'v>(value: Option<&'v FluentValue<'_>>) -> Option<&'v str> {
    match value {
        Some(FluentValue::String(text)) => Some(text),
        _ => None,
    }
}

fn shown(value: Option<&FluentValue<'_>>, options: &FluentArgs<'_>) -> Option<String> {
    let Held { fact, tongue } = match value? {
        FluentValue::Number(number) => return Some(format!("{:.*}", digits(options, System::Metric), number.value)),
        value => of(value)?,
    };
    let system = tongue.system();
    let digits = digits(options, system);
    Some(match fact {
        Fact::Mass(of) => of.show(system, digits),
        Fact::Length(of) => of.show(system, digits),
        Fact::Volume(of) => of.show(system, digits),
        Fact::Speed(of) => of.show(system, digits),
        Fact::Temperature(of) => of.show(system, digits),
        Fact::Warmer(of) => of.show(system, digits),
        Fact::Day(day) => dates::shown(*day, worded(options.get("style")).unwrap_or_default()),
        Fact::List(parts) => {
            let between = worded(options.get("between")).unwrap_or(", ");
            listed(&tongue.say_all(parts), between, worded(options.get("last")).unwrap_or(between))
        }
        Fact::Said(_) | Fact::Number(_) | Fact::Case(_) => return None,
    })
}

fn length(value: Option<&FluentValue<'_>>, show: fn(snowhum_units::Metre, Tongue) -> String) -> Option<String> {
    match of(value?)? {
        Held { fact: Fact::Length(length), tongue } => Some(show(*length, *tongue)),
        Held { .. } => None,
    }
}

fn measured(value: Option<&FluentValue<'_>>) -> Option<String> {
    let Held { fact, tongue } = of(value?)?;
    match fact {
        Fact::Mass(of) => Some(portion(*of, tongue.system())),
        Fact::Volume(of) => Some(poured(*of, tongue.system())),
        _ => None,
    }
}

/// A mass to half a kilogram, or to a pound.
fn portion(mass: Kilogram, system: System) -> String {
    let halves = Kilogram::new((2.0 * mass.get()).round() / 2.0);
    match system {
        System::Metric => halves.show(system, usize::from(halves.get().fract() != 0.0)),
        System::Us => mass.show(system, 0),
    }
}

/// A volume to a litre, or to a tenth of a gallon.
fn poured(volume: CubicMetre, system: System) -> String {
    match system {
        System::Metric => CubicMetre::new((volume.get() * 1e3).max(1.0).round() * 1e-3).show(system, 0),
        System::Us => volume.show(system, 1),
    }
}

fn of<'v>(value: &'v FluentValue<'_>) -> Option<&'v Held> {
    match value {
        FluentValue::Custom(custom) => custom.as_any().downcast_ref(),
        _ => None,
    }
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
fn listed(parts: &[String], between: &str, last: &str) -> String {
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
