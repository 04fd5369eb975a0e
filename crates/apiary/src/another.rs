//! A hive that comes to a yard: what was chosen and typed becomes a part of a yard file, and is read as any other.

use crate::quick_start::{quoted, say};
use crate::shipped::same_name;
use crate::{Apiary, ChosenDress, QuickFault, read};
use snowhum_say::{fault, quick_fault};

/// A hive and its colony as chosen. Whatever is empty was not said.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct AnotherHive {
    /// Its name.
    pub name: String,
    /// Its kind, a standard's name.
    pub kind: String,
    /// How it is dressed.
    pub dress: ChosenDress,
    /// A word for the bees.
    pub strength: String,
    /// A word for the food.
    pub food: String,
}

impl AnotherHive {
    /// What a yard file says of it.
    #[must_use]
    pub fn text(&self) -> String {
        let mut text = "\n[[hive]]\n".to_owned();
        say(&mut text, "name", &self.name, quoted);
        say(&mut text, "kind", &self.kind, quoted);
        self.dress.write(&mut text);
        text += "\n[[colony]]\n";
        say(&mut text, "name", &self.name, quoted);
        say(&mut text, "hive", &self.name, quoted);
        say(&mut text, "strength", &self.strength, quoted);
        say(&mut text, "food", &self.food, quoted);
        text += "mites = \"not counted\"\n";
        text
    }

    /// The yard file with it at the end; all that stands there stays as it was written.
    #[must_use]
    pub fn appended_to(&self, file: &str) -> String {
        format!("{}\n{}", file.trim_end(), self.text())
    }
}

impl Apiary {
    /// The yard with another hive at the end of the row, its colony as it stood on the day of the yard's count.
    ///
    /// # Errors
    /// Everything that is wrong with what was said of it, each at its field.
    pub fn with_another(&self, another: &AnotherHive) -> Result<Self, Vec<QuickFault>> {
        let refused = |says| vec![QuickFault { hive: None, field: "name", says }];
        if another.name.trim().is_empty() {
            return Err(refused(quick_fault::name()));
        }
        let names = self.colonies.iter().map(|colony| &colony.name).chain(self.hives.iter().map(|hive| &hive.name));
        if names.into_iter().any(|name| same_name(name, another.name.trim())) {
            return Err(refused(quick_fault::same_name()));
        }
        let site = &self.site;
        let text = format!(
            "[apiary]\nname = {}\nas_of = {}\n[site]\nlatitude = {:?}\nlongitude = {:?}\nelevation = \"{} m\"\nzone = {}\n{}",
            quoted(&self.name),
            self.as_of,
            site.latitude.get(),
            site.longitude.get(),
            site.elevation.get(),
            quoted(&site.zone),
            another.text(),
        );
        let (mut read, _) = read(&text, "the hive").map_err(|faults| {
            let told = |one: &crate::Fault| QuickFault {
                hive: None,
                field: field(&one.field),
                says: fault::both(&one.problem, &one.remedy),
            };
            faults.faults.iter().map(told).collect::<Vec<_>>()
        })?;
        let mut yard = self.clone();
        yard.hives.append(&mut read.hives);
        yard.colonies.append(&mut read.colonies);
        Ok(yard)
    }
}

/// The field that a key of the file was made from.
fn field(key: &str) -> &'static str {
    const FIELDS: [&str; 4] = ["kind", "strength", "food", "name"];
    let dress = ChosenDress::default().keys().map(|(key, _)| key);
    FIELDS.into_iter().chain(dress).find(|field| key.contains(field)).unwrap_or("name")
}
