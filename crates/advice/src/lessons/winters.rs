//! Winters side by side, as far as the records reach.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{
    Act, Apiary, ColonyId, Feed, FoodBody, FoodBodyKind, Mites, Money, STORES_PER_SUGAR, winter_year,
};

use super::outcome::{self, Fate, Outcome};
use super::season::{Diary, Season};
use super::unnamed;
use crate::statistics::rounded;
use crate::sums::losses::background::law::OwnWinter;

/// One winter in the records.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WinterRecord {
    /// The winter.
    pub season: Season,
    /// Whether the yard's own autumn count is of this winter; else colonies are those that were noted in it.
    pub counted: bool,
    /// Colonies at risk: those sold or united are left out.
    pub at_risk: u32,
    /// Lost.
    pub lost: u32,
    /// Not told yet.
    pub not_told: u32,
    /// The winter as the yard's background is learnt from it; none until it is over and every colony told.
    pub unnamed: Option<OwnWinter>,
    /// Food given, by kind as weighed out, kg.
    pub fed_kg: f64,
    /// What it cost at the yard's prices.
    pub fed_money: f64,
    /// The worst count of mites in that autumn.
    pub worst_mites: Option<WorstMites>,
    /// Colonies treated, by the colony's file and its notes.
    pub treated: u32,
    /// The coldest air noted at the hives.
    pub coldest: Option<Coldest>,
}

/// The colony with most mites.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WorstMites {
    /// The colony.
    pub colony: String,
    /// Mites found.
    pub found: u32,
    /// In so many bees.
    pub bees: u32,
    /// The day.
    pub on: Date,
}

/// Air noted at the hives.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Coldest {
    /// The day.
    pub on: Date,
    /// °C.
    pub air_c: f64,
}

/// Every winter of the records, latest first.
pub(super) fn all(apiary: &Apiary, diary: &Diary<'_>, (spring, as_of): (Date, Date)) -> Vec<WinterRecord> {
    let year_of = |day: Date| winter_year(day, apiary.site.latitude);
    let mut years: Vec<i16> = diary.notes.iter().map(|(on, _)| year_of(*on)).collect();
    years.push(year_of(apiary.as_of));
    years.extend(apiary.past.iter().map(|past| year_of(past.as_of)));
    years.sort_unstable();
    years.dedup();
    let one = |year: i16| {
        let then = apiary.in_winter(year);
        record(&then, diary, Season::of(year, &then, spring), as_of)
    };
    years.into_iter().rev().map(one).collect()
}

/// Colonies of a winter: all of the yard where it is the counted one, else those that were noted in it.
pub(super) fn wintered(apiary: &Apiary, diary: &Diary<'_>, season: &Season) -> Vec<ColonyId> {
    if season.is_counted(apiary) {
        return apiary.colonies.iter().map(|colony| colony.id).collect();
    }
    let mut ids: Vec<ColonyId> =
        diary.of_season(season).filter(|(on, _)| *on >= season.start).map(|(_, note)| note.colony).collect();
    ids.sort_unstable();
    ids.dedup();
    ids
}

fn record(apiary: &Apiary, diary: &Diary<'_>, season: Season, as_of: Date) -> WinterRecord {
    let counted = season.is_counted(apiary);
    let ids = wintered(apiary, diary, &season);
    let outcomes: Vec<Outcome> = ids.iter().map(|id| outcome::of(diary, *id, &season)).collect();
    let count = |is_it: &dyn Fn(Fate) -> bool| outcomes.iter().filter(|one| is_it(one.fate)).count() as u32;
    let left = count(&|fate| matches!(fate, Fate::Sold | Fate::United));
    let (fed_kg, fed_money) = fed(apiary, diary, &season);
    WinterRecord {
        counted,
        at_risk: ids.len() as u32 - left,
        lost: count(&Fate::is_lost),
        not_told: count(&|fate| fate == Fate::NotTold),
        unnamed: if as_of >= season.end { unnamed::of(&outcomes) } else { None },
        fed_kg: rounded(fed_kg, 1),
        fed_money: rounded(fed_money, 2),
        worst_mites: worst_mites(apiary, &season),
        treated: treated(apiary, diary, &season, &ids),
        coldest: coldest(diary, &season),
        season,
    }
}

/// Food given in a season and its price.
fn fed(apiary: &Apiary, diary: &Diary<'_>, season: &Season) -> (f64, f64) {
    let acts = diary.of_season(season).flat_map(|(_, note)| note.acts());
    let each = acts.filter_map(|act| match act {
        Act::Fed { feed, mass_kg } => Some((mass_kg.get(), price(*feed, mass_kg.get(), &apiary.money))),
        Act::FoodPutOn(body) => Some((body.mass_kg.get(), price_of_body(body, &apiary.money))),
        _ => None,
    });
    each.fold((0.0, 0.0), |(kg, money), (one, cost)| (kg + one, money + cost))
}

/// What food costs at the yard's prices: syrup by its sugar.
fn price(feed: Feed, mass_kg: f64, money: &Money) -> f64 {
    match feed {
        Feed::Fondant | Feed::Candy => mass_kg * money.fondant_per_kg,
        Feed::Sugar => mass_kg * money.sugar_per_kg,
        Feed::Syrup3To2 | Feed::Syrup2To1 | Feed::Syrup1To1 => {
            feed.worth(snowhum_units::Kilogram::new(mass_kg)).get() / STORES_PER_SUGAR * money.sugar_per_kg
        }
    }
}

/// What a body of food costs: of sugar by its sugar, of anything else as fondant.
fn price_of_body(body: &FoodBody, money: &Money) -> f64 {
    let per_kg = if body.kind == FoodBodyKind::SugarBoard { money.sugar_per_kg } else { money.fondant_per_kg };
    body.mass_kg.get() * per_kg
}

fn worst_mites(apiary: &Apiary, season: &Season) -> Option<WorstMites> {
    let counts = apiary.colonies.iter().filter_map(|colony| match colony.mites {
        Mites::Counted { found, bees, on } if (season.from..season.until).contains(&on) => {
            Some(WorstMites { colony: colony.name.clone(), found, bees, on })
        }
        _ => None,
    });
    let share = |one: &WorstMites| f64::from(one.found) / f64::from(one.bees.max(1));
    counts.max_by(|a, b| share(a).total_cmp(&share(b)))
}

fn treated(apiary: &Apiary, diary: &Diary<'_>, season: &Season, ids: &[ColonyId]) -> u32 {
    let in_file = |id: &ColonyId| {
        let colony = apiary.colonies.iter().find(|colony| colony.id == *id);
        colony.is_some_and(|colony| colony.treatments.iter().any(|one| (season.from..season.until).contains(&one.on)))
    };
    let in_notes = |id: &ColonyId| {
        let mut own = diary.of_season(season).filter(|(_, note)| note.colony == *id);
        own.any(|(_, note)| note.acts().any(|act| matches!(act, Act::Treated(_))))
    };
    ids.iter().filter(|id| in_file(id) || in_notes(id)).count() as u32
}

fn coldest(diary: &Diary<'_>, season: &Season) -> Option<Coldest> {
    let read = diary
        .of_season(season)
        .filter_map(|(on, note)| Some(Coldest { on, air_c: rounded(note.conditions.air_k?.celsius(), 1) }));
    read.min_by(|a, b| a.air_c.total_cmp(&b.air_c))
}
