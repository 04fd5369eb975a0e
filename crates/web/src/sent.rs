//! A note as it is sent: from a form, from a phone's round, from a program.

use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Colony, ColonyId, Conditions, Entry, FAST_CLOCK, Note, NoteId, SnowCover, VisitId, Wrong};
use snowhum_say::{Message, fault, note_page as text};
use snowhum_units::{Bare, Kelvin, Measured, MetrePerSecond};
use uuid::Uuid;

use crate::fault::Fault;
use crate::view::View;

/// Most entries of one note, and most letters of its free words.
const MOST_ENTRIES: usize = 40;
const MOST_LETTERS: usize = 500;

/// A note about one colony at one visit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Sent {
    /// The walk past the hives, an id made where the walk is made.
    pub(crate) visit: Uuid,
    pub(crate) colony: Uuid,
    pub(crate) at: Timestamp,
    /// Outdoor air, such as `-5 C`; a bare number is in the keeper's units.
    #[serde(default)]
    pub(crate) air: Option<String>,
    #[serde(default)]
    pub(crate) snow: Option<SnowCover>,
    /// Wind, such as `2 m/s`.
    #[serde(default)]
    pub(crate) wind: Option<String>,
    /// What was seen and done, each as a yard file writes it: `hum=heard by ear`.
    #[serde(default)]
    pub(crate) seen: Vec<String>,
    /// Free words.
    #[serde(default)]
    pub(crate) words: Option<String>,
    /// The keeper was asked about it, and says that it is right.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub(crate) sure: bool,
}

impl Sent {
    /// The note, checked against the yard and the day looked at.
    pub(crate) fn note(&self, id: NoteId, view: &View) -> Result<Note, Message> {
        timely(self.at, view)?;
        self.changed(id, view)
    }

    /// The note, if nothing is to be asked about it.
    pub(crate) fn asked(&self, id: NoteId, view: &View) -> Result<Note, Fault> {
        let note = self.note(id, view).map_err(Fault::Wrong)?;
        // What lies ahead is refused above, by the day looked at.
        let doubts = view.apiary.doubts(&note, Timestamp::MAX);
        match doubts.first().filter(|_| !self.sure) {
            Some(doubt) => {
                Err(Fault::Asked { says: text::doubt(doubt.message(), view.name_of(note.colony)), again: None })
            }
            None => Ok(note),
        }
    }

    /// A note that is kept already, checked against the yard.
    pub(crate) fn changed(&self, id: NoteId, view: &View) -> Result<Note, Message> {
        let (_, colony) = view.colony(self.colony).map_err(|fault| fault.says())?;
        if self.seen.len() > MOST_ENTRIES {
            return Err(text::too_many(MOST_ENTRIES));
        }
        let mut entries = Vec::new();
        for written in self.seen.iter().map(|written| written.trim()).filter(|written| !written.is_empty()) {
            entries.push(self.entry(written, colony, view)?);
        }
        if let Some(words) = self.free_words()? {
            entries.push(Entry::Words(words));
        }
        if entries.is_empty() {
            return Err(text::nothing(&colony.name));
        }
        let conditions = self.conditions(Bare::In(view.settings.system))?;
        Ok(Note { id, visit: VisitId(self.visit), colony: ColonyId(self.colony), at: self.at, conditions, entries })
    }

    /// One entry. Dead bees of which no place is said lie on what lies before the hive.
    fn entry(&self, written: &str, colony: &Colony, view: &View) -> Result<Entry, Message> {
        let placed = written.contains(" on ") || written.contains(" behind ");
        let written = match self.snow {
            Some(SnowCover::None) if written.starts_with("dead=") && !placed => format!("{written} on ground"),
            _ => written.to_owned(),
        };
        let wrong = |wrong: Wrong| text::wrong_entry(shortened(&written), &colony.name, wrong.message());
        let bare = Bare::In(view.settings.system);
        let entry = Entry::read_in(&written, &|name| view.named(name), bare).map_err(wrong)?;
        view.apiary.check_entry(colony.id, &entry).map_err(wrong)?;
        Ok(entry)
    }

    fn free_words(&self) -> Result<Option<String>, Message> {
        let Some(words) = self.words.as_deref().map(str::trim).filter(|words| !words.is_empty()) else {
            return Ok(None);
        };
        if words.chars().count() > MOST_LETTERS {
            return Err(text::words_long(MOST_LETTERS));
        }
        Ok(Some(words.chars().filter(|letter| *letter != '\0').collect()))
    }

    fn conditions(&self, bare: Bare) -> Result<Conditions, Message> {
        let air_k = quantity::<Kelvin>(self.air.as_deref(), bare).map_err(text::wrong_air)?;
        let wind_m_per_s = quantity::<MetrePerSecond>(self.wind.as_deref(), bare).map_err(text::wrong_wind)?;
        let conditions = Conditions { air_k, snow: self.snow, wind_m_per_s };
        conditions.check().map_err(|wrong| fault::sentence(wrong.message()))?;
        Ok(conditions)
    }
}

/// Refuses a time after the day looked at of an invented yard, or after today: its note would be kept and not shown.
pub(crate) fn timely(at: Timestamp, view: &View) -> Result<(), Message> {
    let last = latest(view);
    let day = |time: Timestamp| time.to_zoned_datetime(view.now.time_zone().clone()).date();
    let (on, until) = (day(at), day(last));
    if on <= until || at.duration_since(last) <= FAST_CLOCK {
        return Ok(());
    }
    Err(if view.apiary.invented { text::after_looked_at(on, until) } else { text::after_today(on, until) })
}

/// The last time that can be noted: of an invented yard that looked at, else now.
pub(crate) fn latest(view: &View) -> Timestamp {
    let looked_at = view.now.timestamp();
    if view.apiary.invented { looked_at } else { looked_at.max(Timestamp::now()) }
}

/// Reads a quantity, if one is given.
fn quantity<T: Measured>(text: Option<&str>, bare: Bare) -> Result<Option<T>, Message> {
    let Some(text) = text.map(str::trim).filter(|text| !text.is_empty()) else { return Ok(None) };
    T::read(text, bare).map(Some).map_err(|wrong| Wrong::from(wrong).message())
}

/// A text short enough for a message.
pub(crate) fn shortened(text: &str) -> String {
    const SHOWN: usize = 60;
    if text.chars().count() <= SHOWN { text.to_owned() } else { text.chars().take(SHOWN).chain(['…']).collect() }
}
