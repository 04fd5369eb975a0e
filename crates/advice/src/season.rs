//! A winter looked back on, hive by hive: what stood in autumn, what was noted and done, what the estimate said.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Act, Apiary, Colony, Feed, KnownBy, Mites, Note};
use snowhum_say::{Message, season as say};
use snowhum_units::Range;

use crate::now::answer::{ColonyNow, NowAnswer};
use crate::statistics::rounded;
use crate::treatments::{TreatmentRow, treatments};
use crate::verdict::answer::ColonyVerdict;

/// Name and number of the answer's form; the number rises when a key changes.
pub const SEASON_SCHEMA: &str = "snowhum.season/1";

/// A yard's winter up to a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SeasonAnswer {
    /// [`SEASON_SCHEMA`].
    pub schema: String,
    /// The day the colonies were counted.
    pub from: Date,
    /// The last day looked at.
    pub until: Date,
    /// In walking order.
    pub colonies: Vec<ColonySeason>,
}

/// One colony's winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ColonySeason {
    /// The keeper's name.
    pub name: String,
    /// Grown bees in autumn.
    pub bees: Range<f64>,
    /// Frames or seams they covered.
    pub frames_of_bees: f64,
    /// Food in autumn.
    pub stores_kg: Range<f64>,
    /// How that was found.
    pub stores_known_by: Message,
    /// Mites in autumn, in words.
    pub mites: Message,
    /// The queen in autumn, in words.
    pub queen: Message,
    /// Visits noted.
    pub visits: usize,
    /// Food given, by kind.
    pub fed: Vec<Given>,
    /// Treatments given.
    pub treatments: Vec<TreatmentRow>,
    /// What the estimate said after the last visit of each month.
    pub months: Vec<MonthSaid>,
    /// The one verdict on it.
    pub verdict: ColonyVerdict,
    /// In words.
    pub about: Message,
}

/// Food given.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Given {
    /// What.
    pub what: Message,
    /// How much in all.
    pub mass_kg: f64,
}

/// An estimate of a month.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct MonthSaid {
    /// The day of the visit it followed.
    pub on: Date,
    /// Chance of being alive.
    pub alive: f64,
    /// Food, if alive.
    pub stores_kg: Option<f64>,
}

/// The winter of a yard as far as an estimate goes. What was noted before the colonies were counted belongs to another.
#[must_use]
pub fn season(apiary: &Apiary, now: &NowAnswer) -> SeasonAnswer {
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let on_day = |note: &Note| note.at.to_zoned_datetime(zone.clone()).date();
    let mut counted = apiary.clone();
    counted.notes.retain(|note| (apiary.as_of..=now.as_of).contains(&on_day(note)));
    let record = treatments(&counted, now.as_of);
    let colonies = counted.colonies.iter().zip(&now.colonies).map(|(colony, now_there)| {
        let own: Vec<&Note> = counted.notes.iter().filter(|note| note.colony == colony.id).collect();
        let treated = record.rows.iter().filter(|row| row.colony == colony.name).cloned().collect();
        colony_season(colony, now_there, &own, treated)
    });
    SeasonAnswer {
        schema: SEASON_SCHEMA.to_owned(),
        from: apiary.as_of,
        until: now.as_of,
        colonies: colonies.collect(),
    }
}

fn colony_season(colony: &Colony, now: &ColonyNow, notes: &[&Note], treatments: Vec<TreatmentRow>) -> ColonySeason {
    ColonySeason {
        name: colony.name.clone(),
        bees: colony.bees,
        frames_of_bees: colony.frames_of_bees,
        stores_kg: colony.stores.total.map(|mass| rounded(mass.get(), 1)),
        stores_known_by: known_by(colony.stores.known_by),
        mites: mites(&colony.mites),
        queen: queen(colony),
        visits: notes.len(),
        fed: fed(notes),
        treatments,
        months: months(now),
        verdict: now.verdict.clone(),
        about: now.about.clone(),
    }
}

/// What was fed, added up by kind.
fn fed(notes: &[&Note]) -> Vec<Given> {
    let mut fed: Vec<Given> = Vec::new();
    for act in notes.iter().flat_map(|note| note.acts()) {
        let (what, mass) = match act {
            Act::Fed { feed, mass_kg } => (feed_words(*feed), mass_kg.get()),
            Act::FoodPutOn(body) => (body.kind.message(), body.mass_kg.get()),
            Act::FramesFrom { stores_kg, .. } => (say::frames_of_stores(), stores_kg.get()),
            _ => continue,
        };
        match fed.iter_mut().find(|given| given.what == what) {
            Some(given) => given.mass_kg = rounded(given.mass_kg + mass, 1),
            None => fed.push(Given { what, mass_kg: rounded(mass, 1) }),
        }
    }
    fed
}

/// The last visit of each month, earliest first.
fn months(now: &ColonyNow) -> Vec<MonthSaid> {
    let mut visits: Vec<_> = now.evidence.iter().collect();
    visits.sort_by_key(|visit| visit.on);
    let mut months: Vec<MonthSaid> = Vec::new();
    for visit in visits {
        let said = MonthSaid { on: visit.on, alive: visit.alive_after, stores_kg: visit.stores_after_kg };
        match months.last_mut().filter(|last| last.on.first_of_month() == visit.on.first_of_month()) {
            Some(last) => *last = said,
            None => months.push(said),
        }
    }
    months
}

fn feed_words(feed: Feed) -> Message {
    match feed {
        Feed::Syrup3To2 => say::syrup_3_to_2(),
        Feed::Syrup2To1 => say::syrup_2_to_1(),
        Feed::Syrup1To1 => say::syrup_1_to_1(),
        Feed::Fondant => say::fondant(),
        Feed::Candy => say::candy(),
        Feed::Sugar => say::sugar(),
    }
}

fn known_by(known_by: KnownBy) -> Message {
    match known_by {
        KnownBy::Frames => say::known_frames(),
        KnownBy::Scale => say::known_scale(),
        KnownBy::TwoSidedLift => say::known_two_sided_lift(),
        KnownBy::Heft => say::known_heft(),
        KnownBy::Stated => say::known_stated(),
    }
}

fn mites(mites: &Mites) -> Message {
    match mites {
        Mites::NotCounted => say::mites_not_counted(),
        Mites::Counted { found, bees, on } => say::mites(*bees, *found, on.to_string()),
    }
}

fn queen(colony: &Colony) -> Message {
    let seen = match colony.queen.seen_or_laying {
        Some(true) => "yes",
        Some(false) => "no",
        None => "not-looked-for",
    };
    let queen = match colony.queen.year {
        Some(year) => say::queen(seen, year),
        None => say::queen_year_unknown(seen),
    };
    if colony.queen.late_mated { say::queen_mated_late(queen) } else { queen }
}
