//! A yard begun with four facts a hive: what a keeper typed becomes a yard file, and the file is read as any other.

use crate::{Apiary, ChosenDress, Fault, Reckoned, food_words, read, read_day};
use snowhum_say::{Message, Text, fault::both, quick_fault, yard_fault};
use snowhum_units::System;

/// What was typed, unread. Whatever is empty was not said.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct QuickStart {
    /// The yard's name.
    pub name: String,
    /// The day the colonies were looked at.
    pub as_of: String,
    /// Degrees north.
    pub latitude: String,
    /// Degrees east.
    pub longitude: String,
    /// Height above the sea; a bare number is in the keeper's units.
    pub elevation: String,
    /// The time zone, by a city.
    pub zone: String,
    /// The hives in walking order.
    pub hives: Vec<QuickHive>,
}

/// A hive as typed.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct QuickHive {
    /// Its name.
    pub name: String,
    /// Its kind, a standard's name.
    pub kind: String,
    /// A word for the bees, or frames covered.
    pub strength: String,
    /// A word for the food, or its weight; a bare number is in the keeper's units.
    pub food: String,
    /// Mites in a sample.
    pub mites: String,
    /// Bees in the sample.
    pub mites_of: String,
    /// The day of the sample; the day the colonies were looked at, if not said.
    pub mites_on: String,
    /// How its hive is dressed.
    pub dress: ChosenDress,
}

/// A fault of what was typed.
#[derive(Debug, Clone, PartialEq)]
pub struct QuickFault {
    /// The hive's place; none where it is about the yard.
    pub hive: Option<usize>,
    /// The field, by its name in [`QuickStart`] or [`QuickHive`].
    pub field: &'static str,
    /// What is wrong and what would be right.
    pub says: Message,
}

/// Keys of a yard file with the field that stands for each.
const FIELDS: [(&str, &str); 15] = [
    ("name", "name"),
    ("as_of", "as_of"),
    ("latitude", "latitude"),
    ("longitude", "longitude"),
    ("elevation", "elevation"),
    ("zone", "zone"),
    ("kind", "kind"),
    ("hive", "kind"),
    ("strength", "strength"),
    ("frames_of_bees", "strength"),
    ("food", "food"),
    ("stores", "food"),
    ("found", "mites"),
    ("bees", "mites_of"),
    ("on", "mites_on"),
];

/// What would be right where nothing was said.
const MISSING: [(&str, Text); 11] = [
    ("name", quick_fault::name),
    ("as_of", quick_fault::as_of),
    ("latitude", quick_fault::latitude),
    ("longitude", quick_fault::longitude),
    ("elevation", quick_fault::elevation),
    ("zone", quick_fault::zone),
    ("kind", quick_fault::kind),
    ("strength", quick_fault::strength),
    ("food", quick_fault::food),
    ("mites", quick_fault::mites),
    ("mites_of", quick_fault::mites_of),
];

/// What begins a hive in the file.
const COLONY: &str = "[[colony]]";

impl QuickStart {
    /// The yard file that says the same.
    #[must_use]
    pub fn text(&self, system: System) -> String {
        let (height, weight) = if system == System::Us { ("ft", "lb") } else { ("m", "kg") };
        let mut text =
            "# Begun with four facts a hive; a file of `snowhum new` shows what more can be told.\n".to_owned();
        text += "[apiary]\n";
        say(&mut text, "name", &self.name, quoted);
        say(&mut text, "as_of", &self.as_of, day);
        text += "\n[site]\n";
        say(&mut text, "latitude", &self.latitude, number);
        say(&mut text, "longitude", &self.longitude, number);
        say(&mut text, "elevation", &self.elevation, |typed| quantity(typed, height));
        say(&mut text, "zone", &self.zone, quoted);
        for hive in &self.hives {
            text += &format!("\n{COLONY}\n");
            hive.write(&mut text, &self.as_of, weight);
        }
        text
    }

    /// The yard, checked as a file is.
    ///
    /// # Errors
    /// Everything that is wrong, each at its field.
    pub fn read(&self, system: System) -> Result<Apiary, Vec<QuickFault>> {
        let text = self.text(system);
        match read(&text, "the yard") {
            Ok((yard, _)) => Ok(yard),
            Err(faults) => Err(faults.faults.iter().map(|fault| at_field(fault, &text)).collect()),
        }
    }
}

impl QuickHive {
    fn write(&self, text: &mut String, as_of: &str, weight: &str) {
        say(text, "name", &self.name, quoted);
        // A hive without a name has no line of its own to be pointed to.
        let is_dressed = self.dress.is_said() && !self.name.trim().is_empty();
        match is_dressed {
            true => say(text, "hive", &self.name, quoted),
            false => say(text, "kind", &self.kind, quoted),
        }
        let is_counted = number(&self.strength) != quoted(&self.strength);
        say(text, if is_counted { "frames_of_bees" } else { "strength" }, &self.strength, number);
        if food_words().iter().any(|row| row.word == self.food.trim()) {
            say(text, "food", &self.food, quoted);
        } else {
            say(text, "stores", &self.food, |typed| quantity(typed, weight));
        }
        *text += &format!("mites = {}\n", self.sample(as_of));
        if is_dressed {
            *text += "\n[[hive]]\n";
            say(text, "name", &self.name, quoted);
            say(text, "kind", &self.kind, quoted);
            self.dress.write(text);
        }
    }

    /// The mite count; what is missing of it is left for the reader to miss.
    fn sample(&self, as_of: &str) -> String {
        if self.mites.trim().is_empty() && self.mites_of.trim().is_empty() {
            return quoted("not counted");
        }
        let on = if self.mites_on.trim().is_empty() { as_of } else { &self.mites_on };
        let parts = [("found", number(&self.mites)), ("bees", number(&self.mites_of)), ("on", day(on))];
        let said = parts.iter().filter(|(_, value)| *value != quoted(""));
        format!("{{ {} }}", said.map(|(key, value)| format!("{key} = {value}")).collect::<Vec<_>>().join(", "))
    }
}

/// A line of the file, if anything was typed.
pub(crate) fn say(text: &mut String, key: &str, typed: &str, written: impl Fn(&str) -> String) {
    if !typed.trim().is_empty() {
        *text += &format!("{key} = {}\n", written(typed));
    }
}

/// A text in quotes, on one line.
pub(crate) fn quoted(typed: &str) -> String {
    let line: String = typed.trim().chars().map(|letter| if letter.is_control() { ' ' } else { letter }).collect();
    toml::Value::String(line).to_string()
}

/// A number as it is; anything else as a text, for the reader to judge.
fn number(typed: &str) -> String {
    snowhum_units::number(typed).map_or_else(|_| quoted(typed), |number| number.to_string())
}

/// A quantity; a bare number is in `unit`.
fn quantity(typed: &str, unit: &str) -> String {
    quoted(&if snowhum_units::number(typed).is_ok() { format!("{} {unit}", typed.trim()) } else { typed.to_owned() })
}

fn day(typed: &str) -> String {
    read_day(typed, Reckoned::Whole).map_or_else(|_| quoted(typed), |day| day.to_string())
}

/// A fault of the file as one of the field that was typed into.
fn at_field(fault: &Fault, text: &str) -> QuickFault {
    let hive = text.lines().take(fault.line).filter(|line| *line == COLONY).count().checked_sub(1);
    let key = fault.field.rsplit('.').next().unwrap_or_default();
    let dress = || ChosenDress::default().keys().into_iter().map(|(known, _)| known).find(|known| *known == key);
    let found = FIELDS.iter().find(|(known, _)| *known == key).map(|(_, field)| *field).or_else(dress);
    let field = found.unwrap_or(if key == "mites" { "mites" } else { "name" });
    let missing = MISSING.iter().find(|(known, _)| *known == field).filter(|_| fault.problem == yard_fault::missing());
    let says = match missing {
        Some((_, remedy)) => remedy(),
        None if fault.problem.id() == Some("yard-fault-same-name") => quick_fault::same_name(),
        None => both(&fault.problem, &fault.remedy),
    };
    QuickFault { hive, field, says }
}
