//! The cut-away in words: title, description, table.

use super::labels::Label;
use super::section::{HiveSection, SectionColony};
use crate::figures::{Figures, about};
use crate::plate::Table;

/// Longest name kept in a title, letters.
const LONGEST_NAME: usize = 60;

pub(crate) fn name(hive: &HiveSection) -> String {
    let whole = crate::words::clean(&hive.name);
    match whole.char_indices().nth(LONGEST_NAME) {
        Some((end, _)) => format!("{}…", whole[..end].trim_end()),
        None => whole,
    }
}

pub(crate) fn title(hive: &HiveSection) -> String {
    match hive.colony {
        SectionColony::Dead(_) => format!("{}, dead, hive cut open from the front", name(hive)),
        _ => format!("{}, hive cut open from the front", name(hive)),
    }
}

/// Outdoor air and wind, as far as known.
pub(crate) fn weather(hive: &HiveSection) -> String {
    let say = Figures { system: hive.system };
    let air = hive.outside.map(|air| format!("Outside {}", say.temperature(air)));
    let wind = hive.wind.map(|wind| format!("wind {} at the hive", say.speed(wind)));
    air.into_iter().chain(wind).collect::<Vec<_>>().join(", ")
}

pub(crate) fn description(hive: &HiveSection, labels: &[Label]) -> String {
    let bees = match &hive.colony {
        SectionColony::None => "No bees live in it.".to_owned(),
        SectionColony::Alive(cluster) => format!("A living cluster of about {} bees.", about(cluster.bees)),
        SectionColony::Dead(_) => "The colony is dead; the dashed circle shows where the cluster was.".to_owned(),
    };
    let boxes = match hive.boxes.len() {
        1 => "One box, drawn to scale.".to_owned(),
        count => format!("{count} boxes, drawn to scale."),
    };
    let parts: Vec<String> = labels.iter().map(|label| format!("{}: {}", label.heading, label.body)).collect();
    let weather = weather(hive);
    let weather = if weather.is_empty() { String::new() } else { format!("{weather}. ") };
    format!("{boxes} {bees} {weather}{}.", parts.join("; "))
}

pub(crate) fn table(hive: &HiveSection, labels: &[Label]) -> Table {
    let mut table = Table::with_head(["Part", "What is known"]);
    let weather = weather(hive);
    if !weather.is_empty() {
        table.row(["Weather".to_owned(), weather]);
    }
    for label in labels {
        table.row([label.heading.clone(), label.body.clone()]);
    }
    table
}
