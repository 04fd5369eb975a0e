//! Makes a function of every message: its arguments are the facts that its British text names, each of the type that the
//! function round it asks for. A message that is not written does not compile, nor one without its facts.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Variant, VariantKey};
use std::collections::BTreeMap;
use std::error::Error;
use std::fmt::Write;
use std::path::{Path, PathBuf};
use std::{env, fs};

type Outcome<T> = Result<T, Box<dyn Error>>;

/// What a function of a text takes, as the message's argument has it.
const TYPES: [(&str, &str); 13] = [
    ("NUMBER", "Number"),
    ("MASS", "snowhum_units::Kilogram"),
    ("LENGTH", "snowhum_units::Metre"),
    ("PORTION", "snowhum_units::Kilogram"),
    ("POURED", "snowhum_units::CubicMetre"),
    ("DISTANCE", "snowhum_units::Metre"),
    ("HEIGHT", "snowhum_units::Metre"),
    ("VOLUME", "snowhum_units::CubicMetre"),
    ("SPEED", "snowhum_units::MetrePerSecond"),
    ("TEMPERATURE", "snowhum_units::Kelvin"),
    ("WARMER", "snowhum_units::KelvinDifference"),
    ("DAY", "jiff::civil::Date"),
    ("LIST", "Vec<Message>"),
];
/// Functions that take what is in words already.
const OF_WORDS: [&str; 2] = ["CAPITAL", "SENTENCE"];
/// Names of a selection by number.
const PLURALS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

fn main() -> Outcome<()> {
    let folder = Path::new(&env::var("CARGO_MANIFEST_DIR")?).join("messages/en-GB");
    println!("cargo::rerun-if-changed={}", folder.display());
    let mut files: Vec<PathBuf> = fs::read_dir(&folder)?.map(|file| Ok(file?.path())).collect::<Outcome<_>>()?;
    files.sort();
    let mut rust = String::new();
    let mut texts = String::new();
    for (topic, path) in files.iter().enumerate() {
        let name = path.file_stem().and_then(|name| name.to_str()).ok_or("a file without a name")?;
        let text = fs::read_to_string(path)?;
        rust += &module(topic, name, &text).map_err(|fault| format!("{}: {fault}", path.display()))?;
        writeln!(texts, "    include_str!({:?}),", path.display().to_string())?;
    }
    writeln!(
        rust,
        "/// The texts in British English, a topic each.\nstatic BRITISH: [&str; {}] = [\n{texts}];",
        files.len()
    )?;
    Ok(fs::write(Path::new(&env::var("OUT_DIR")?).join("messages.rs"), rust)?)
}

/// The functions of a topic.
fn module(topic: usize, name: &str, text: &str) -> Outcome<String> {
    let file = fluent_syntax::parser::parse(text).map_err(|(_, faults)| format!("{faults:?}"))?;
    let mut rust = String::new();
    for entry in &file.body {
        if let Entry::Message(message) = entry {
            let id = message.id.name;
            let short = id.strip_prefix(&format!("{name}-")).ok_or_else(|| format!("{id}: begin with {name}-"))?;
            rust +=
                &function(topic, id, &short.replace('-', "_"), message).map_err(|fault| format!("{id}: {fault}"))?;
        }
    }
    // A topic may have no facts, or none that is a number.
    let used = [("Fact", "Fact::"), ("Message", "Message"), ("Number", "<Number>")];
    let used = used.into_iter().filter(|(_, sign)| rust.contains(sign)).map(|(kind, _)| kind).collect::<Vec<_>>();
    Ok(format!(
        "/// What `messages/en-GB/{name}.ftl` says.\npub mod {} {{\n    use super::{{{}}};\n{rust}}}\n",
        name.replace('-', "_"),
        used.join(", ")
    ))
}

fn function(topic: usize, id: &str, name: &str, message: &Message<&str>) -> Outcome<String> {
    let pattern = message.value.as_ref().ok_or("says nothing")?;
    let mut facts = BTreeMap::new();
    of_pattern(pattern, &mut facts)?;
    let mut rust = String::new();
    writeln!(rust, "    #[doc = {:?}]\n    #[must_use]", plain(pattern))?;
    let list = |one: &dyn Fn(&str, &str) -> String| {
        facts.iter().map(|(fact, kind)| one(&fact.replace('-', "_"), kind)).collect::<Vec<_>>().join(", ")
    };
    let arguments = list(&|fact, kind| match kind {
        "Number" | "Message" => format!("{fact}: impl Into<{kind}>"),
        kind => format!("{fact}: {kind}"),
    });
    let filled = facts.iter().map(|(fact, kind)| {
        let argument = fact.replace('-', "_");
        match *kind {
            "Number" | "Message" => format!("({fact:?}, Fact::from({argument}.into()))"),
            _ => format!("({fact:?}, Fact::from({argument}))"),
        }
    });
    let filled = filled.collect::<Vec<_>>().join(", ");
    writeln!(
        rust,
        "    pub fn {name}({arguments}) -> Message {{\n        Message::named({topic}, {id:?}, vec![{filled}])\n    }}"
    )?;
    Ok(rust)
}

fn of_pattern<'t>(pattern: &Pattern<&'t str>, facts: &mut BTreeMap<&'t str, &'static str>) -> Outcome<()> {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, facts)?;
        }
    }
    Ok(())
}

fn of_expression<'t>(expression: &Expression<&'t str>, facts: &mut BTreeMap<&'t str, &'static str>) -> Outcome<()> {
    match expression {
        Expression::Inline(inline) => of_inline(inline, "Message", facts),
        Expression::Select { selector, variants } => {
            of_inline(selector, selected(variants), facts)?;
            variants.iter().try_for_each(|variant| of_pattern(&variant.value, facts))
        }
    }
}

/// What is selected by: yes or no, a number, or the name of a case.
fn selected(variants: &[Variant<&str>]) -> &'static str {
    let name = |variant: &Variant<&str>| match variant.key {
        VariantKey::Identifier { name } => name.to_owned(),
        VariantKey::NumberLiteral { .. } => "other".to_owned(),
    };
    let mut names = variants.iter().map(name);
    if names.clone().all(|name| ["yes", "no"].contains(&name.as_str())) {
        "bool"
    } else if names.all(|name| PLURALS.contains(&name.as_str())) {
        "Number"
    } else {
        "&'static str"
    }
}

fn of_inline<'t>(
    inline: &InlineExpression<&'t str>,
    kind: &'static str,
    facts: &mut BTreeMap<&'t str, &'static str>,
) -> Outcome<()> {
    match inline {
        InlineExpression::VariableReference { id } => noted(id.name, kind, facts),
        InlineExpression::FunctionReference { id, arguments } => {
            let kind = TYPES.iter().find(|(function, _)| *function == id.name).map(|(_, kind)| *kind);
            let kind = kind.or_else(|| OF_WORDS.contains(&id.name).then_some("Message"));
            let kind = kind.ok_or_else(|| format!("{}: no such function", id.name))?;
            arguments.positional.iter().try_for_each(|argument| of_inline(argument, kind, facts))
        }
        InlineExpression::Placeable { expression } => of_expression(expression, facts),
        InlineExpression::MessageReference { id, .. } => {
            Err(format!("{}: give another message as a fact", id.name).into())
        }
        InlineExpression::TermReference { .. }
        | InlineExpression::StringLiteral { .. }
        | InlineExpression::NumberLiteral { .. } => Ok(()),
    }
}

/// A number may stand bare beside a selection by it; else a fact is of one type.
fn noted<'t>(name: &'t str, kind: &'static str, facts: &mut BTreeMap<&'t str, &'static str>) -> Outcome<()> {
    match facts.get(name) {
        None => drop(facts.insert(name, kind)),
        Some(known) if *known == kind || (*known == "Number" && kind == "Message") => {}
        Some(&"Message") if kind == "Number" => drop(facts.insert(name, kind)),
        Some(known) => return Err(format!("${name} is {known} and {kind}").into()),
    }
    Ok(())
}

/// The text with the names of its facts.
fn plain(pattern: &Pattern<&str>) -> String {
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
        InlineExpression::TermReference { id, .. } => id.name.replace('-', " "),
        InlineExpression::StringLiteral { value } => (*value).to_owned(),
        InlineExpression::NumberLiteral { value } => (*value).to_owned(),
        InlineExpression::MessageReference { id, .. } => id.name.to_owned(),
        InlineExpression::Placeable { expression } => expressed(expression),
    }
}
