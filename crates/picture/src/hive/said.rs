//! The cut-away in words: title, description, table.

use super::labels::Label;
use super::section::{HiveSection, SectionColony};
use crate::figures::about;
use crate::plate::Table;
use snowhum_say::{Message, hive_picture as text};

/// Longest name kept in a title, letters.
const LONGEST_NAME: usize = 60;

impl HiveSection {
    /// A message as it stands in the picture.
    pub(crate) fn say(&self, message: &Message) -> String {
        self.tongue.drawn().say(message)
    }
}

pub(crate) fn name(hive: &HiveSection) -> String {
    let whole = crate::words::clean(&hive.name);
    match whole.char_indices().nth(LONGEST_NAME) {
        Some((end, _)) => format!("{}…", whole[..end].trim_end()),
        None => whole,
    }
}

pub(crate) fn title(hive: &HiveSection) -> String {
    hive.say(&text::title(name(hive), matches!(hive.colony, SectionColony::Dead(_))))
}

/// Outdoor air and wind, as far as known.
fn weather(hive: &HiveSection) -> Vec<Message> {
    hive.outside.map(text::outside).into_iter().chain(hive.wind.map(text::wind)).collect()
}

/// The same in a line.
pub(crate) fn weather_line(hive: &HiveSection) -> String {
    hive.say(&text::list(weather(hive)))
}

pub(crate) fn description(hive: &HiveSection, labels: &[Label]) -> String {
    let bees = match &hive.colony {
        SectionColony::None => text::nobody(),
        SectionColony::Alive(cluster) => text::living(about(cluster.bees)),
        SectionColony::Dead(_) => text::is_dead(),
    };
    let weather = weather(hive);
    let weather = if weather.is_empty() { Message::NONE } else { text::weather_told(weather) };
    let parts = labels.iter().map(|label| text::part(&label.heading, &label.body)).collect();
    hive.say(&Message::sentences([text::boxes(hive.boxes.len()), bees, weather, text::parts(parts)]))
}

pub(crate) fn table(hive: &HiveSection, labels: &[Label]) -> Table {
    let mut table = Table::with_head(hive.tongue, [text::head_part, text::head_known]);
    let weather = weather_line(hive);
    if !weather.is_empty() {
        table.row([hive.say(&text::weather()), weather]);
    }
    for label in labels {
        table.row([label.heading.clone(), label.body.clone()]);
    }
    table
}
