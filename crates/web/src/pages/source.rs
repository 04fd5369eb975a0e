//! Says who? Every figure the answers stand on, with range, unit, source and status.

use axum::extract::{Path, State};
use maud::{Markup, html};
use snowhum_figures::files;
use snowhum_say::{
    Message, Tongue, deadout_table, feed_never, fit_class, losses_survey, regions, source_page as text, usual,
};
use std::sync::LazyLock;
use toml::Value;

use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::{capital, founded};

/// A figure as its file has it.
struct Figure {
    file: &'static str,
    name: String,
    facts: Vec<(String, String)>,
}

/// Topics of tables in which an entry's name is looked up.
const SAID: [fn(&str) -> Option<Message>; 5] =
    [usual::named, deadout_table::named, feed_never::named, fit_class::named, losses_survey::named];

/// What of a figure is told first.
const FIRST: [&str; 5] = ["value", "low", "high", "status", "source"];
/// Units that a language has a word for, as the figures' own words begin with them.
const UNITS: [&str; 13] =
    ["C", "day", "days", "hours", "years", "share", "chance", "times", "degrees", "bees", "cells", "frames", "seams"];
/// Units that are written alike in every language, a longer one before what it begins with.
const SYMBOLS: [&str; 15] =
    ["K d", "K h", "K", "kg", "m", "h", "d", "s", "%", "m/s", "mm", "km", "kg/m3", "kg/m2", "W/kg"];

static FIGURES: LazyLock<Vec<Figure>> = LazyLock::new(|| {
    let mut figures = Vec::new();
    for (file, text) in files::ALL.iter().copied() {
        if let Ok(table) = text.parse::<toml::Table>() {
            gather(file, "", &Value::Table(table), &mut figures);
        }
    }
    figures
});

/// Collects the tables that name a source.
fn gather(file: &'static str, path: &str, value: &Value, figures: &mut Vec<Figure>) {
    match value {
        Value::Table(table) if table.contains_key("source") => {
            let facts = table.iter().map(|(key, value)| (key.clone(), shown(value))).collect();
            figures.push(Figure { file, name: path.to_owned(), facts });
        }
        Value::Table(table) => {
            for (key, value) in table {
                let key = if ["", "parameter", "row"].contains(&path) { key.clone() } else { format!("{path}.{key}") };
                gather(file, &key, value, figures);
            }
        }
        Value::Array(entries) => {
            for (at, entry) in entries.iter().enumerate() {
                gather(file, &format!("{path}.{}", at + 1), entry, figures);
            }
        }
        _ => {}
    }
}

fn shown(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

impl Figure {
    fn fact(&self, name: &str) -> Option<&str> {
        self.facts.iter().find(|(key, _)| key == name).map(|(_, value)| value.as_str())
    }

    /// What is said of it, or its name in words.
    fn title(&self, tongue: Tongue) -> String {
        let said = self.fact("name").and_then(|name| SAID.iter().find_map(|named| named(name)));
        if let Some(said) = said {
            return tongue.say(&said);
        }
        let own = ["name", "material"].iter().find_map(|key| self.fact(key));
        own.map_or_else(|| capital(&self.name.replace(['_', '.'], " ")), str::to_owned)
    }

    /// What its value is in; none where only its own words say it.
    fn unit(&self) -> Option<Message> {
        let words = self.fact("unit")?;
        let begins = |unit: &&&str| {
            let rest = words.strip_prefix(**unit);
            rest.is_some_and(|rest| rest.is_empty() || rest.starts_with([' ', ',', ';']))
        };
        let said = UNITS.iter().find(begins).map(|unit| text::unit_of(unit));
        said.or_else(|| SYMBOLS.iter().find(begins).map(|symbol| (*symbol).into()))
    }

    /// Whether its name has the word sought.
    fn is_named(&self, sought: &str) -> bool {
        self.name.to_lowercase().split(['_', '.']).any(|word| word == sought)
    }

    fn holds(&self, sought: &str) -> bool {
        self.name.to_lowercase().contains(sought)
            || self.facts.iter().any(|(_, value)| value.to_lowercase().contains(sought))
    }
}

pub(crate) async fn list(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let sought = asked.get("find").unwrap_or_default().to_lowercase();
    // The whole of what signs say is asked for by one word.
    let of_signs = sought == "signs";
    let is_named = FIGURES.iter().any(|figure| figure.is_named(&sought));
    let is_sought = |figure: &&Figure| match (of_signs, is_named) {
        (true, _) => figure.file == "watch_parameters",
        (_, true) => figure.is_named(&sought),
        (_, false) => figure.holds(&sought),
    };
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let body = html! {
        h1 { (say(text::heading())) }
        p class="lede" { (say(text::lede())) }
        form method="get" action="/source" {
            label for="find" { (say(text::find())) }
            input id="find" name="find" maxlength="60" value=(asked.get("find").unwrap_or_default());
            button { (say(text::look())) }
        }
        @for (file, _) in files::ALL.iter().copied() {
            @let found: Vec<&Figure> = FIGURES.iter().filter(|figure| figure.file == file).filter(is_sought).collect();
            @if !found.is_empty() {
                details open[!sought.is_empty()] {
                    summary { (say(text::file(found.len(), text::title(file)))) }
                    ul class="sources" {
                        @for figure in found {
                            li {
                                a href={ "/source/" (figure.file) "/" (figure.name) } translate="no" { (figure.title(tongue)) }
                                @if let Some(value) = figure.fact("value") { ": " (value) " " (figure.unit().map(say).unwrap_or_default()) }
                                span class="small" { " " @if let Some(status) = figure.fact("status") { (say(founded(status))) } }
                            }
                        }
                    }
                }
            }
        }
    };
    Ok(page(&view, Place::Elsewhere, &say(text::heading()), &body))
}

pub(crate) async fn show(State(app): State<App>, Path((file, name)): Path<(String, String)>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let found = FIGURES.iter().find(|figure| figure.file == file && figure.name == name);
    let figure = found.ok_or(Fault::Missing("figure"))?;
    let say = |message: Message| view.tongue().say(&message);
    let named = |key: &'static str| say(text::fact(key, capital(&key.replace('_', " "))));
    let told = |key: &str, value: &str| match key {
        "status" => say(founded(value)),
        "region" => regions::named(value).map_or_else(|| value.to_owned(), say),
        _ => value.to_owned(),
    };
    let title = figure.title(view.tongue());
    let body = html! {
        h1 { (title) }
        dl class="figures" {
            @for key in FIRST { @if let Some(value) = figure.fact(key) { dt { (named(key)) } dd { (told(key, value)) } } }
            @if let Some(unit) = figure.unit() { dt { (say(text::unit())) } dd { (say(unit)) } }
            @if let Some(words) = figure.fact("unit") { dt { (say(text::meaning())) } dd lang="en-GB" { (words) } }
            @for (key, value) in &figure.facts {
                @if key != "unit" && !FIRST.contains(&key.as_str()) { dt { (named(key)) } dd { (told(key, value)) } }
            }
        }
        p class="ways" { a href="/source" { (say(text::all())) } }
    };
    Ok(page(&view, Place::Elsewhere, &title, &body))
}
