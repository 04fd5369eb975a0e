//! What a text tells of.

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement, Variant, VariantKey};
use std::collections::BTreeMap;

/// Facts by their names.
pub(crate) type Facts<'t> = BTreeMap<&'t str, Kind>;

/// What kind of fact a text names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Kind {
    /// What is in words already.
    Said,
    /// A number.
    Number,
    /// Yes or no.
    Bool,
    /// The name of a case.
    Case,
    /// Several in words.
    List,
    /// A day.
    Day,
    /// A quantity, by its type.
    Quantity(&'static str),
}

/// The kind that a function of a text is laid on.
const FUNCTIONS: [(&str, Kind); 21] = [
    ("CAPITAL", Kind::Said),
    ("SENTENCE", Kind::Said),
    ("NUMBER", Kind::Number),
    ("COUNT", Kind::Number),
    ("LIST", Kind::List),
    ("DAY", Kind::Day),
    ("MASS", Kind::Quantity("snowhum_units::Kilogram")),
    ("GRAMS", Kind::Quantity("snowhum_units::Kilogram")),
    ("PORTION", Kind::Quantity("snowhum_units::Kilogram")),
    ("POURED", Kind::Quantity("snowhum_units::CubicMetre")),
    ("RESISTANCE", Kind::Quantity("snowhum_units::SquareMetreKelvinPerWatt")),
    ("LENGTH", Kind::Quantity("snowhum_units::Metre")),
    ("DISTANCE", Kind::Quantity("snowhum_units::Metre")),
    ("HEIGHT", Kind::Quantity("snowhum_units::Metre")),
    ("AREA", Kind::Quantity("snowhum_units::SquareMetre")),
    ("VOLUME", Kind::Quantity("snowhum_units::CubicMetre")),
    ("SPEED", Kind::Quantity("snowhum_units::MetrePerSecond")),
    ("TEMPERATURE", Kind::Quantity("snowhum_units::Kelvin")),
    ("FLOW", Kind::Quantity("snowhum_units::CubicMetrePerSecond")),
    ("LOSS", Kind::Quantity("snowhum_units::WattPerKelvin")),
    ("WARMER", Kind::Quantity("snowhum_units::KelvinDifference")),
];
/// Names of a selection by number.
const PLURALS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

impl Kind {
    /// The type of the argument.
    pub(crate) const fn argument(&self) -> &'static str {
        match self {
            Self::Said => "impl Into<Message>",
            Self::Number => "impl Into<super::Number>",
            Self::Bool => "bool",
            Self::Case => "&'static str",
            Self::List => "Vec<Message>",
            Self::Day => "jiff::civil::Date",
            Self::Quantity(kind) => kind,
        }
    }

    /// An argument made up.
    pub(crate) fn made_up(&self) -> String {
        let made_up = match self {
            Self::Said => "\"Alder\"",
            Self::Number => "3",
            Self::Bool => "true",
            Self::Case => "\"\"",
            Self::List => "vec![Message::own(\"Alder\"), Message::own(\"Birch\")]",
            Self::Day => "jiff::civil::date(2026, 2, 7)",
            Self::Quantity("snowhum_units::Kelvin") => "snowhum_units::Kelvin::from_celsius(3.0)",
            // All others are new types round a number.
            Self::Quantity(kind) => return format!("{kind}::new(3.0)"),
        };
        made_up.to_owned()
    }
}

/// The facts that a text names, of which each word it shares is one of these terms.
pub(crate) fn facts<'t>(pattern: &Pattern<&'t str>, terms: &[String]) -> Result<Facts<'t>, String> {
    let mut named = Named { facts: Facts::new(), terms };
    named.of_pattern(pattern)?;
    Ok(named.facts)
}

struct Named<'t, 'n> {
    facts: Facts<'t>,
    terms: &'n [String],
}

impl<'t> Named<'t, '_> {
    fn of_pattern(&mut self, pattern: &Pattern<&'t str>) -> Result<(), String> {
        pattern.elements.iter().try_for_each(|element| match element {
            PatternElement::TextElement { .. } => Ok(()),
            PatternElement::Placeable { expression } => self.of_expression(expression),
        })
    }

    fn of_expression(&mut self, expression: &Expression<&'t str>) -> Result<(), String> {
        match expression {
            Expression::Inline(inline) => self.of_inline(inline, Kind::Said),
            Expression::Select { selector, variants } => {
                self.of_inline(selector, selected(variants))?;
                variants.iter().try_for_each(|variant| self.of_pattern(&variant.value))
            }
        }
    }

    fn of_inline(&mut self, inline: &InlineExpression<&'t str>, kind: Kind) -> Result<(), String> {
        match inline {
            InlineExpression::VariableReference { id } => self.noted(id.name, kind),
            InlineExpression::FunctionReference { id, arguments } => {
                let kind = FUNCTIONS.iter().find(|(name, _)| *name == id.name).map(|(_, kind)| *kind);
                let kind = kind.ok_or_else(|| format!("{}: no such function", id.name))?;
                arguments.positional.iter().try_for_each(|argument| self.of_inline(argument, kind))
            }
            InlineExpression::Placeable { expression } => self.of_expression(expression),
            InlineExpression::MessageReference { id, .. } => {
                Err(format!("{}: give another message as a fact", id.name))
            }
            InlineExpression::TermReference { id, .. } if self.terms.iter().any(|term| term == id.name) => Ok(()),
            InlineExpression::TermReference { id, .. } => Err(format!("-{}: no such term", id.name)),
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => Ok(()),
        }
    }

    /// A number may stand bare beside a selection by it; else a fact is of one kind.
    fn noted(&mut self, name: &'t str, kind: Kind) -> Result<(), String> {
        match (self.facts.get(name), kind) {
            (None, _) | (Some(Kind::Said), Kind::Number) => drop(self.facts.insert(name, kind)),
            (Some(Kind::Number), Kind::Said) => {}
            (Some(known), _) if *known == kind => {}
            (Some(known), _) => return Err(format!("${name} is {known:?} and {kind:?}")),
        }
        Ok(())
    }
}

/// What is selected by.
fn selected(variants: &[Variant<&str>]) -> Kind {
    let names = || {
        variants.iter().filter_map(|variant| match variant.key {
            VariantKey::Identifier { name } => Some(name),
            VariantKey::NumberLiteral { .. } => None,
        })
    };
    if names().count() > 0 && names().all(|name| ["yes", "no"].contains(&name)) {
        Kind::Bool
    } else if names().all(|name| PLURALS.contains(&name)) {
        Kind::Number
    } else {
        Kind::Case
    }
}

/// The text with the names of its facts.
pub(crate) fn plain(pattern: &Pattern<&str>) -> String {
    let element = |element: &PatternElement<&str>| match element {
        PatternElement::TextElement { value } => (*value).to_owned(),
        PatternElement::Placeable { expression } => expressed(expression),
    };
    pattern.elements.iter().map(element).collect()
}

fn expressed(expression: &Expression<&str>) -> String {
    match expression {
        Expression::Inline(inline) => named(inline),
        Expression::Select { variants, .. } => {
            variants.iter().find(|variant| variant.default).map_or_else(String::new, |variant| plain(&variant.value))
        }
    }
}

fn named(inline: &InlineExpression<&str>) -> String {
    match inline {
        InlineExpression::VariableReference { id } => format!("`{}`", id.name),
        InlineExpression::FunctionReference { arguments, .. } => arguments.positional.iter().map(named).collect(),
        InlineExpression::StringLiteral { value } | InlineExpression::NumberLiteral { value } => (*value).to_owned(),
        InlineExpression::TermReference { id, .. } | InlineExpression::MessageReference { id, .. } => {
            id.name.to_owned()
        }
        InlineExpression::Placeable { expression } => expressed(expression),
    }
}
