//! The functions that a text may call on a fact.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::FluentType;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use jiff::civil::Date;
use snowhum_units::{CubicMetre, Kelvin, Kilogram, Metre, System};
use std::borrow::Cow;

use crate::{Fact, Message, Tongue, capital, sentence, words};

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

/// Gives the texts of a tongue their functions. A quantity of common practice stands in its text as a number: in SI, a
/// temperature in °C.
///
/// | function | options |
/// |---|---|
/// | `NUMBER`, and those of a quantity | `digits`, and `us` for the decimals of US units; `"all"` keeps those it has, `"few"` is one below ten |
/// | those of a quantity | `unit`: `"no"` where it follows with another, `"only"` for it alone |
/// | `COUNT` | a whole number, its thousands parted |
/// | `GRAMS` | a small mass, in grams or ounces |
/// | `PORTION`, `POURED` | a mass and a volume as exact as a keeper measures them out |
/// | `DAY` | `style`: `short`, `full`, `month`, `short-month`, `part`, `weekday`, `short-weekday`; `marked` as a page marks a day, in a text of marks |
/// | `LIST` | `between` two and before the `last`; `alike: "once"` says once what reads alike |
pub(crate) fn add(bundle: &mut FluentBundle<FluentResource>, tongue: Tongue) {
    let language = tongue.language();
    for name in OF_FACTS {
        added(bundle, name, move |value, options| match value {
            FluentValue::Number(number) if name == "COUNT" => Some(language.count(number.value)),
            FluentValue::Number(number) => match written(name, number.value) {
                Some(fact) => shown(name, &Held { fact, tongue }, options),
                None => Some(language.number(number.value, digits(options, System::Metric))),
            },
            value => held_in(value).and_then(|held| shown(name, held, options)),
        });
    }
    added(bundle, "CAPITAL", |value, _| worded(value).map(capital));
    added(bundle, "SENTENCE", |value, _| worded(value).map(sentence));
}

/// A quantity that stands in a text as a number.
fn written(function: &str, number: f64) -> Option<Fact> {
    Some(match function {
        "MASS" | "GRAMS" => Fact::Mass(Kilogram::new(number)),
        "LENGTH" | "HEIGHT" => Fact::Length(Metre::new(number)),
        "VOLUME" => Fact::Volume(CubicMetre::new(number)),
        "TEMPERATURE" => Fact::Temperature(Kelvin::from_celsius(number)),
        _ => return None,
    })
}

const OF_FACTS: [&str; 19] = [
    "NUMBER",
    "COUNT",
    "MASS",
    "GRAMS",
    "PORTION",
    "LENGTH",
    "DISTANCE",
    "HEIGHT",
    "AREA",
    "FLOW",
    "VOLUME",
    "POURED",
    "SPEED",
    "TEMPERATURE",
    "WARMER",
    "RESISTANCE",
    "LOSS",
    "DAY",
    "LIST",
];
/// Thermal resistance in the units of North America for one m² K/W.
const R_OF_SI: f64 = 5.678;
/// A figure beyond this is none that a keeper weighs or measures.
const LARGEST: f64 = 1e7;

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
    match fact {
        Fact::Day(day) => return Some(date(*tongue, *day, option(options, "style").unwrap_or_default())),
        Fact::List(parts) => return Some(listed(tongue.say_all(parts), options)),
        _ => {}
    }
    let system = tongue.system();
    let show = |digits| quantity(function, fact, system, digits);
    let value = |shown: &str| shown.split_once(' ').and_then(|(number, _)| number.parse::<f64>().ok());
    let fine = show(1).filter(|fine| is_fine(options, system) && value(fine).is_some_and(|fine| fine.abs() < 10.0));
    let shown = fine.or_else(|| show(digits(options, system).unwrap_or_default()))?;
    if value(&shown).is_some_and(|value| !value.is_finite() || value.abs() > LARGEST) {
        return Some(tongue.say(&words::unknown()));
    }
    let shown = tongue.language().quantity(&shown);
    let part = match (option(options, "unit"), shown.rsplit_once(' ')) {
        (Some("no"), Some((number, _))) => number.to_owned(),
        (Some("only"), Some((_, unit))) => unit.to_owned(),
        _ => shown,
    };
    Some(tongue.figure(part))
}

/// A quantity with its unit, its number written plainly.
fn quantity(function: &str, fact: &Fact, system: System, digits: usize) -> Option<String> {
    Some(match fact {
        Fact::Mass(of) if function == "GRAMS" => small(*of, system, digits),
        Fact::Mass(of) if function == "PORTION" => portion(*of, system),
        Fact::Volume(of) if function == "POURED" => poured(*of, system),
        Fact::Mass(of) => of.show(system, digits),
        Fact::Length(of) if function == "DISTANCE" => of.show_distance(system),
        Fact::Length(of) if function == "HEIGHT" => of.show_height(system),
        Fact::Length(of) => of.show(system, digits),
        Fact::Area(of) => of.show(system, digits),
        Fact::Volume(of) => of.show(system, digits),
        Fact::Flow(of) => of.show(system, digits),
        Fact::Speed(of) => of.show(system, digits),
        Fact::Temperature(of) => of.show(system, digits),
        Fact::Warmer(of) => of.show(system, digits),
        Fact::Resistance(of) if system == System::Us => format!("R {:.0}", of.get() * R_OF_SI),
        Fact::Resistance(of) => format!("{:.1} m² K/W", of.get()),
        Fact::Loss(of) => of.show(system, digits),
        Fact::Said(_) | Fact::Number(_) | Fact::Case(_) | Fact::Day(_) | Fact::List(_) => return None,
    })
}

/// A mass in grams or ounces.
fn small(mass: Kilogram, system: System, digits: usize) -> String {
    // Ties are rounded as the grams have them, not as the kilograms.
    let grams = (1e9 * mass.get()).round() / 1e6;
    match system {
        System::Metric => format!("{grams:.digits$} g"),
        System::Us => format!("{:.digits$} oz", grams / 28.349_523),
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

/// A day; `part` is a third of a month: as exact as a forecast of months ahead can be. `marked` does not break over lines.
fn date(tongue: Tongue, day: Date, style: &str) -> String {
    let third: fn(Date) -> Message = match (style, day.day()) {
        ("part", 1..=10) => words::early,
        ("part", 11..=20) => words::mid,
        ("part", _) => words::late,
        ("marked", _) => return format!("<time datetime=\"{day}\">{}</time>", tongue.language().day(day, "")),
        _ => return tongue.language().day(day, style),
    };
    tongue.say(&third(day))
}

/// Decimals: `digits`, or in US units `us` where a text has that; none where all that a number has are kept.
fn digits(options: &FluentArgs<'_>, system: System) -> Option<usize> {
    let asked = |name| match options.get(name) {
        Some(FluentValue::Number(digits)) => Some(digits.value as usize),
        _ => None,
    };
    let us = if system == System::Us { asked("us") } else { None };
    let keeps_all = option(options, "digits") == Some("all");
    us.or(asked("digits")).or(if keeps_all { None } else { Some(0) })
}

/// Whether a number below ten has one decimal.
fn is_fine(options: &FluentArgs<'_>, system: System) -> bool {
    let name = if system == System::Us && options.get("us").is_some() { "us" } else { "digits" };
    option(options, name) == Some("few")
}

/// `a, b and c`, where `, ` stands between and ` and ` before the last.
fn listed(mut parts: Vec<String>, options: &FluentArgs<'_>) -> String {
    if option(options, "alike") == Some("once") {
        parts.dedup();
    }
    let between = option(options, "between").unwrap_or(", ");
    let last = option(options, "last").unwrap_or(between);
    match parts.as_slice() {
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
