//! Winters that are over, and a new autumn begun from what stands.

use crate::comb::most_food;
use crate::note::mites_counted;
use crate::past_winter::PastWinter;
use crate::shipped::same_name;
use crate::words::sized;
use crate::wrong::Wrong;
use crate::{
    Act, Apiary, Autumn, Colony, ColonyId, Combs, Hive, KnownBy, Mites, Note, Queen, QueenState, Reckoned, Stores,
    bees_on, bees_stated, food_words, frames_covered, most_bees, read_day, strength_words, weighed, winter_year,
};
use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_say::{Message, Tongue, colony_fault as say, fault, note_fault};
use snowhum_units::{Bare, Kilogram, Measured, Range, number};
use std::borrow::Cow;

/// What the keeper found at a colony in the new autumn, as written.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct AutumnCount {
    /// The colony's name.
    pub name: String,
    /// `8 frames`, `15000 bees`, or a word.
    pub bees: String,
    /// `14 kg`, or a word.
    pub food: String,
    /// `3/300`, `1 % of 300 on 28 Aug`, or nothing where nobody counted.
    pub mites: String,
    /// How the queen stands and her year, or nothing where nobody looked: `laying`, `laying 2025`.
    pub queen: String,
}

/// What is wrong with a new autumn.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub struct SeasonFault {
    /// The colony, where it is about one.
    pub colony: Option<String>,
    /// Which of `bees`, `food`, `mites`, `queen`; `as_of` or `colony` of the whole.
    pub field: &'static str,
    /// What is wrong, and what would be right.
    pub wrong: Wrong,
}

impl SeasonFault {
    /// What is wrong, and what would be right, after whose it is.
    #[must_use]
    pub fn message(&self) -> Message {
        let wrong = self.wrong.message();
        self.colony.as_ref().map_or(wrong.clone(), |colony| fault::at(colony, wrong))
    }
}

impl AutumnCount {
    /// Reads `Alder=8 frames; 14 kg; 3/300; laying`: bees, food, mites, queen.
    ///
    /// # Errors
    /// When it does not say bees and food of a colony.
    pub fn of_line(line: &str) -> Result<Self, Wrong> {
        let no_equals = || Wrong::new(fault::no_equals(line), say::line_right());
        let (name, told) = line.split_once('=').ok_or_else(no_equals)?;
        let parts: Vec<&str> = told.split(';').map(str::trim).collect();
        let part = |at: usize| parts.get(at).copied().unwrap_or_default().to_owned();
        if parts.len() < 2 || parts.len() > 4 {
            return Err(Wrong::new(say::short_line(line), say::line_right()));
        }
        Ok(Self { name: name.trim().to_owned(), bees: part(0), food: part(1), mites: part(2), queen: part(3) })
    }
}

impl Apiary {
    /// The yard as it was in the winter of a year, with the notes of all years; itself where that is no winter that is over.
    #[must_use]
    pub fn in_winter(&self, year: i16) -> Cow<'_, Self> {
        let found = self.past.iter().position(|past| winter_year(past.as_of, self.site.latitude) == year);
        let Some(at) = found else { return Cow::Borrowed(self) };
        let past = &self.past[at];
        let mut notes: Vec<Note> = self.every_note().cloned().collect();
        notes.sort_by_key(|note| (note.at, note.id));
        let bare = |past: &PastWinter| PastWinter { notes: Vec::new(), ..past.clone() };
        Cow::Owned(Self {
            as_of: past.as_of,
            hives: past.hives.clone(),
            colonies: past.colonies.clone(),
            past: self.past[..at].iter().map(bare).collect(),
            notes,
            ..self.clone()
        })
    }

    /// The notes of all years.
    pub fn every_note(&self) -> impl Iterator<Item = &Note> {
        self.past.iter().flat_map(|past| &past.notes).chain(&self.notes)
    }

    /// The name of a colony that stands in the yard, or stood there in a winter that is over.
    #[must_use]
    pub fn ever_named(&self, id: ColonyId) -> Option<&str> {
        let past = self.past.iter().rev().flat_map(|past| &past.colonies);
        self.colonies.iter().chain(past).find(|colony| colony.id == id).map(|colony| colony.name.as_str())
    }

    /// The yard with each note laid to the winter it belongs to: what was noted before this one's year is history, which no
    /// answer of this winter reads.
    #[must_use]
    pub fn with_notes_by_winter(mut self) -> Self {
        if self.past.is_empty() {
            return self;
        }
        let zone = TimeZone::get(&self.site.zone).unwrap_or(TimeZone::UTC);
        let latitude = self.site.latitude;
        let year = |note: &Note| winter_year(zone.to_datetime(note.at).date(), latitude);
        let now = winter_year(self.as_of, latitude);
        let (notes, old): (Vec<Note>, Vec<Note>) = self.notes.into_iter().partition(|note| year(note) >= now);
        let standing = |note: &Note| self.colonies.iter().any(|colony| colony.id == note.colony);
        self.notes = notes.into_iter().filter(standing).collect();
        let known: Vec<ColonyId> = self.past.iter().flat_map(|past| &past.colonies).map(|colony| colony.id).collect();
        for note in old.into_iter().filter(|note| known.contains(&note.colony)) {
            let of = self.past.iter().rposition(|past| winter_year(past.as_of, latitude) <= year(&note)).unwrap_or(0);
            self.past[of].notes.push(note);
        }
        self
    }

    /// The yard in its next autumn: the colonies that were counted anew, in the hives they stand in by now; the others have
    /// left it. What was counted and noted before is kept as a winter that is over.
    ///
    /// # Errors
    /// Everything that is missing or wrong.
    pub fn next_autumn(&self, as_of: Date, counts: &[AutumnCount], bare: Bare) -> Result<Self, Vec<SeasonFault>> {
        let mut faults = Vec::new();
        let latitude = self.site.latitude;
        if winter_year(as_of, latitude) <= winter_year(self.as_of, latitude) {
            let begins = Date::constant(as_of.year(), if latitude.get() >= 0.0 { 7 } else { 1 }, 1);
            let problem = say::same_winter(as_of.to_string(), self.as_of.to_string());
            let wrong = Wrong::new(problem, say::same_winter_right(begins));
            faults.push(SeasonFault { colony: None, field: "as_of", wrong });
        }
        if counts.is_empty() {
            let wrong = Wrong::new(say::none_counted(), say::none_counted_right());
            faults.push(SeasonFault { colony: None, field: "colony", wrong });
        }
        let hives: Vec<Hive> = self.hives.iter().map(|hive| self.as_dressed(hive).with_open_dates()).collect();
        let mut colonies = Vec::new();
        for count in counts {
            let read = self.counted(count, &hives, as_of, bare);
            match read {
                Ok(colony) if colonies.iter().any(|one: &Colony| one.id == colony.id) => {
                    let wrong = Wrong::new(say::counted_twice(), say::counted_twice_right());
                    faults.push(SeasonFault { colony: Some(colony.name), field: "colony", wrong });
                }
                Ok(colony) => colonies.push(colony),
                Err((field, wrong)) => faults.push(SeasonFault { colony: Some(count.name.clone()), field, wrong }),
            }
        }
        if !faults.is_empty() {
            return Err(faults);
        }
        colonies.sort_by_key(|colony| self.colonies.iter().position(|one| one.id == colony.id));
        let over = PastWinter {
            as_of: self.as_of,
            hives: self.hives.clone(),
            colonies: self.colonies.clone(),
            notes: Vec::new(),
        };
        let next =
            Self { as_of, hives, colonies, past: self.past.iter().cloned().chain([over]).collect(), ..self.clone() };
        Ok(next.with_notes_by_winter())
    }

    /// The yard with the winters that its records hold beside those it brings itself: what was counted for an earlier winter
    /// becomes history when a later autumn comes in.
    ///
    /// # Errors
    /// When it is of an earlier winter than the records.
    pub fn following(mut self, kept: &Self) -> Result<Self, Wrong> {
        let year = |day: Date| winter_year(day, self.site.latitude);
        let (now, before) = (year(self.as_of), year(kept.as_of));
        if now < before {
            let problem = say::earlier(self.as_of.to_string(), before.to_string());
            return Err(Wrong::new(problem, say::earlier_right()));
        }
        let mut past: Vec<PastWinter> = self.past.clone();
        let over = (now > before).then(|| PastWinter {
            as_of: kept.as_of,
            hives: kept.hives.clone(),
            colonies: kept.colonies.clone(),
            notes: kept.notes.clone(),
        });
        for known in kept.past.iter().cloned().chain(over) {
            if !past.iter().any(|one| year(one.as_of) == year(known.as_of)) {
                past.push(known);
            }
        }
        past.sort_by_key(|past| past.as_of);
        self.past = past;
        Ok(self)
    }

    /// A hive with the changes that were noted at its colony.
    fn as_dressed(&self, hive: &Hive) -> Hive {
        let of_hive = |note: &&Note| self.colonies.iter().any(|one| one.id == note.colony && one.hive == hive.id);
        let changes = self.notes.iter().filter(of_hive).flat_map(Note::acts);
        changes.fold(hive.clone(), |hive, act| match act {
            // A change that no longer fits was refused when it was noted.
            Act::Changed(change) => hive.with_change(change).unwrap_or(hive),
            _ => hive,
        })
    }

    fn counted(
        &self,
        count: &AutumnCount,
        hives: &[Hive],
        as_of: Date,
        bare: Bare,
    ) -> Result<Colony, (&'static str, Wrong)> {
        let unknown = || {
            let names = self.colonies.iter().map(|colony| colony.name.as_str());
            let remedy = crate::nearest::instead(&count.name, names);
            ("colony", Wrong::new(note_fault::no_colony(&count.name), remedy))
        };
        let before = self.colonies.iter().find(|colony| same_name(&colony.name, &count.name)).ok_or_else(unknown)?;
        let hive = hives.iter().find(|hive| hive.id == before.hive).ok_or_else(unknown)?;
        let (bees, by_word) = bees(&count.bees, hive).map_err(|wrong| ("bees", wrong))?;
        let (stores, food_by_word) = food(&count.food, hive, before, bare).map_err(|wrong| ("food", wrong))?;
        let (state, year) = queen(&count.queen).map_err(|wrong| ("queen", wrong))?;
        let combs = f64::from(hive.comb_count());
        Ok(Colony {
            id: before.id,
            name: before.name.clone(),
            hive: hive.id,
            bees,
            sealed_brood: None,
            frames_of_bees: frames_covered(bees.p50, hive.mean_comb_side()).clamp(0.1, combs),
            stores,
            mites: mites(&count.mites, as_of).map_err(|wrong| ("mites", wrong))?,
            queen: Queen {
                year: year.or(before.queen.year),
                seen_or_laying: (state == Some(QueenState::Laying)).then_some(true),
                late_mated: false,
            },
            treatments: Vec::new(),
            autumn: Autumn { queen: state, ..Autumn::default() },
            quick_start: by_word && food_by_word,
        })
    }
}

/// Bees, and whether a word says them.
fn bees(written: &str, hive: &Hive) -> Result<(Range<f64>, bool), Wrong> {
    /// More frames than any hive has.
    const FEWEST_BEES: f64 = 200.0;
    let text = written.trim().to_lowercase();
    if let Some(word) = sized(strength_words(), &text, Combs::of(hive)) {
        return Ok((word.range(), true));
    }
    let figure = text.trim_end_matches(|letter: char| letter.is_alphabetic() || letter == ' ');
    let unit = text[figure.len()..].trim();
    let most = f64::from(hive.comb_count());
    let range = match (number(figure), unit) {
        (Ok(bees), "" | "bees") if (FEWEST_BEES..=most_bees(hive)).contains(&bees) => bees_stated(bees),
        (Ok(frames), "" | "frame" | "frames" | "seams") if frames > 0.0 && frames <= most => {
            bees_on(frames, hive.mean_comb_side())
        }
        _ => {
            return Err(Wrong::new(say::no_bees(written.trim()), say::bees_right(most)));
        }
    };
    Ok((range.map(|count| count.min(most_bees(hive))), false))
}

/// Food, and whether a word says it.
fn food(written: &str, hive: &Hive, before: &Colony, bare: Bare) -> Result<(Stores, bool), Wrong> {
    let (total, known_by, by_word) = match sized(food_words(), written.trim(), Combs::of(hive)) {
        Some(word) => (word.range().map(Kilogram::new), KnownBy::Heft, true),
        None => (weighed(Kilogram::read(written, bare)?, KnownBy::Stated, None), KnownBy::Stated, false),
    };
    let most = most_food(hive);
    if total.p50 > most || total.p50 < Kilogram::ZERO {
        return Err(Wrong::new(say::no_food(written.trim()), say::food_right(most)));
    }
    let total = total.map(|mass| mass.min(most));
    Ok((Stores { total, known_by, ..before.stores.clone() }, by_word))
}

/// A count of mites, of the day looked at where no other is told.
fn mites(written: &str, as_of: Date) -> Result<Mites, Wrong> {
    let text = written.trim();
    if text.is_empty() || same_name(text, "not counted") {
        return Ok(Mites::NotCounted);
    }
    let (count, on) = text.rsplit_once(" on ").unwrap_or((text, ""));
    let on = if on.is_empty() { as_of } else { read_day(on, Reckoned::Back(as_of))? };
    if on > as_of {
        return Err(Wrong::new(say::after_look(as_of.to_string(), on.to_string()), say::count_late_right()));
    }
    match mites_counted(count)? {
        Act::MitesCounted { found, bees } => Ok(Mites::Counted { found, bees, on }),
        _ => Ok(Mites::NotCounted),
    }
}

/// How the queen stands, and the year she was born.
fn queen(written: &str) -> Result<(Option<QueenState>, Option<i16>), Wrong> {
    let year = written.split_whitespace().find_map(|part| part.parse::<i16>().ok().filter(|_| part.len() == 4));
    let state: Vec<&str> = written.split_whitespace().filter(|part| part.parse::<i16>().is_err()).collect();
    let state = state.join(" ");
    if state.is_empty() || same_name(&state, "unknown") {
        return Ok((None, year));
    }
    let found = QueenState::WORDS.iter().find(|(word, _)| same_name(word, &state));
    let wrong = || {
        let remedy = crate::nearest::instead(&state, QueenState::WORDS.iter().map(|(word, _)| *word));
        Wrong::new(say::no_queen(&state), remedy)
    };
    found.map(|(_, state)| (Some(*state), year)).ok_or_else(wrong)
}
