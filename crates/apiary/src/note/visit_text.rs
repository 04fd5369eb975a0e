//! A note as a yard file has it.

use super::vocabulary::name_of;
use super::{Note, SnowCover};
use crate::{Apiary, ColonyId};
use jiff::tz::TimeZone;

impl Apiary {
    /// A colony's name; of one that stands elsewhere its id.
    #[must_use]
    pub fn colony_name(&self, id: ColonyId) -> String {
        let found = self.colonies.iter().find(|colony| colony.id == id);
        found.map_or_else(|| id.0.to_string(), |colony| colony.name.clone())
    }

    /// What a note says, as it would be written on a line.
    #[must_use]
    pub fn note_text(&self, note: &Note) -> String {
        let written = note.entries.iter().map(|entry| entry.written(&|id| self.colony_name(id)));
        written.collect::<Vec<_>>().join("; ")
    }

    /// A note as a visit of its own at the end of a yard file.
    #[must_use]
    pub fn visit_text(&self, note: &Note) -> String {
        let zone = TimeZone::get(&self.site.zone).unwrap_or(TimeZone::UTC);
        let seen = self.note_text(note);
        let at = format!("at = {}", zone.to_datetime(note.at).strftime("%Y-%m-%dT%H:%M:%S"));
        let air = note.conditions.air_k.map(|air| format!("air = \"{:.1} C\"", air.celsius()));
        let wind = note.conditions.wind_m_per_s.map(|wind| format!("wind = \"{:.1} m/s\"", wind.get()));
        let snow = note.conditions.snow.map(|snow| format!("snow = \"{}\"", snow.word()));
        let told = format!("[visit.seen]\n{} = {}", quoted(&self.colony_name(note.colony)), quoted(&seen));
        let lines: Vec<String> = [Some(at), air, snow, wind, Some(told)].into_iter().flatten().collect();
        format!("\n[[visit]]\n{}\n", lines.join("\n"))
    }
}

impl SnowCover {
    /// As it is written.
    #[must_use]
    pub fn word(self) -> &'static str {
        name_of(&self, &Self::WORDS)
    }
}

/// A text in the quotes of TOML, which name a colony too where it is a key.
fn quoted(text: &str) -> String {
    let mut quoted = String::from("\"");
    for letter in text.chars() {
        match letter {
            '"' | '\\' => quoted.extend(['\\', letter]),
            letter if letter.is_control() => quoted += &format!("\\u{:04X}", u32::from(letter)),
            letter => quoted.push(letter),
        }
    }
    quoted + "\""
}

#[cfg(test)]
mod tests {
    use crate::{Entry, demo_text, read};

    #[test]
    fn a_note_written_at_the_end_of_a_yard_file_reads_as_it_was() {
        let (yard, _) = read(demo_text(), "demo").unwrap();
        let mut note = yard.notes.last().unwrap().clone();
        note.at += jiff::SignedDuration::from_hours(3);
        // Words take the rest of a line, so that a note has them once, and last.
        note.entries.retain(|entry| !matches!(entry, Entry::Words(_)));
        note.entries.push(Entry::Words("a \"quoted\" word \\ and\ta tab".to_owned()));
        let text = format!("{}{}", demo_text(), yard.visit_text(&note));
        let (again, _) = read(&text, "demo").unwrap();
        let last = again.notes.last().unwrap();
        assert_eq!((last.at, last.colony, last.conditions.snow), (note.at, note.colony, note.conditions.snow));
        assert_eq!(last.entries, note.entries);
    }
}
