//! What the records answer of a dead hive, where the keeper has not looked.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_apiary::{Act, Apiary, Colony, Flight, Heft, Mites, Note, Seen as Noted, Sign, Weighing, winter_year};
use snowhum_say::{Message, deadout as say};
use snowhum_units::Kilogram;

use super::answer::{FromRecords, Seen};
use super::tables::{ContextLines, Tables};
use crate::rules;
use crate::sums::SumFault;
use crate::sums::intervals::clopper_pearson;

/// What is known of a colony up to a day.
struct Known<'a> {
    apiary: &'a Apiary,
    colony: &'a Colony,
    notes: Vec<(Date, &'a Note)>,
    lines: &'a ContextLines,
}

/// Answers from the records of a colony, up to and with the day `until`.
///
/// # Errors
/// When the shipped table cannot be read.
pub fn from_records(apiary: &Apiary, colony: &Colony, until: Date) -> Result<Vec<FromRecords>, SumFault> {
    let tables = Tables::shipped()?;
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let dated = |note: &'_ Note| note.at.to_zoned_datetime(zone.clone()).date();
    let own = apiary.notes.iter().filter(|note| note.colony == colony.id);
    let notes = own.map(|note| (dated(note), note)).filter(|(on, _)| (apiary.as_of..=until).contains(on)).collect();
    let known = Known { apiary, colony, notes, lines: &tables.context };
    let answers =
        [known.mites(), known.death(), known.food(), known.strength(), known.queen(), known.wings(), known.mice()];
    Ok(answers.into_iter().flatten().collect())
}

/// The last day on which a colony showed life beyond doubt, up to and with `until`.
#[must_use]
pub fn last_life(apiary: &Apiary, colony: &Colony, until: Date) -> Option<Date> {
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let own = apiary.notes.iter().filter(|note| note.colony == colony.id && note.signs().any(is_life));
    own.map(|note| note.at.to_zoned_datetime(zone.clone()).date()).filter(|on| *on <= until).max()
}

/// Bees seen, or a cleansing flight: what robbers cannot feign.
pub(crate) fn is_life(sign: &Sign) -> bool {
    matches!(sign, Sign::ClusterSeen { .. } | Sign::Flight(Flight::Well | Flight::Thin) | Sign::Pollen(Noted::Yes))
}

impl Known<'_> {
    fn answer(sign: &str, seen: Seen, because: Message) -> Option<FromRecords> {
        Some(FromRecords { sign: sign.to_owned(), seen, because })
    }

    /// The first day on which a sign was noted, among those for which `is_it` holds.
    fn first(&self, is_it: impl Fn(&Sign) -> bool) -> Option<Date> {
        self.notes.iter().find(|(_, note)| note.signs().any(&is_it)).map(|(on, _)| *on)
    }

    fn mites(&self) -> Option<FromRecords> {
        let Mites::Counted { found, bees, on } = self.colony.mites else { return None };
        let range = clopper_pearson(found, bees)?;
        let (line, share) = (self.lines.over_line.value / 100.0, f64::from(found) / f64::from(bees));
        let seen = match (share > line, range.low > line, range.high < line) {
            (_, true, _) => Seen::Yes,
            (_, _, true) => Seen::No,
            (true, ..) => Seen::FairlyYes,
            (false, ..) => Seen::FairlyNo,
        };
        Self::answer("mites-over-line", seen, say::mites(bees, found, on))
    }

    /// Before or after the turn of winter, where it was seen living after or dead before.
    fn death(&self) -> Option<FromRecords> {
        let turn = turn_of_winter(self.apiary);
        let dead = self.first(|sign| matches!(sign, Sign::SeenDead));
        if let Some(on) = dead.filter(|on| *on < turn) {
            return Self::answer("died-before-midwinter", Seen::Yes, say::seen_dead(on));
        }
        let before_death = |on: &Date| dead.is_none_or(|dead| *on < dead);
        let alive = self.notes.iter().rev().find(|(on, note)| before_death(on) && note.signs().any(is_life));
        let (on, _) = alive.filter(|(on, _)| *on >= turn)?;
        Self::answer("died-before-midwinter", Seen::No, say::seen_living(*on))
    }

    /// Stores of autumn with what was fed before the turn of winter, against the rule of the region.
    fn food(&self) -> Option<FromRecords> {
        let turn = turn_of_winter(self.apiary);
        let autumn = || self.notes.iter().filter(move |(on, _)| *on < turn);
        let light =
            autumn().find(|(_, note)| note.signs().any(|sign| *sign == Sign::Weight(Weighing::Heft(Heft::Light))));
        if let Some((on, _)) = light {
            return Self::answer("light-in-autumn", Seen::FairlyYes, say::light(*on));
        }
        let (least, most) = rules::stores_rule(&self.apiary.site, self.apiary.hive_of(self.colony)?)?.stores_kg?;
        let fed: f64 = autumn().flat_map(|(_, note)| note.acts()).map(worth).sum();
        let stores = self.colony.stores.total.p50 + Kilogram::new(fed);
        let [least, most] = [least, most].map(Kilogram::new);
        let seen = if stores < least { Seen::FairlyYes } else { Seen::FairlyNo };
        let because = if least == most { say::stores(most, stores) } else { say::stores_range(least, most, stores) };
        Self::answer("light-in-autumn", seen, because)
    }

    fn strength(&self) -> Option<FromRecords> {
        let mut others: Vec<f64> = self.apiary.colonies.iter().map(|colony| colony.bees.p50).collect();
        if others.len() < 3 {
            return None;
        }
        others.sort_by(f64::total_cmp);
        let (middle, own) = (others[others.len() / 2], self.colony.bees.p50);
        let because = say::strength(middle, own);
        let seen = match own / middle {
            share if share < self.lines.weak.value => Seen::FairlyYes,
            share if share >= 1.0 => Seen::FairlyNo,
            _ => return None,
        };
        Self::answer("weak-in-autumn", seen, because)
    }

    fn queen(&self) -> Option<FromRecords> {
        let queen = &self.colony.queen;
        if let Some(on) = self.first(|sign| matches!(sign, Sign::DeadQueen)) {
            return Self::answer("queen-trouble", Seen::Yes, say::queen_dead(on));
        }
        if queen.late_mated {
            return Self::answer("queen-trouble", Seen::FairlyYes, say::queen_late());
        }
        let year = queen.year?;
        let age = winter_year(self.apiary.as_of, self.apiary.site.latitude) - year;
        let seen = if f64::from(age) >= self.lines.old_queen.value {
            Seen::FairlyYes
        } else if queen.seen_or_laying == Some(true) {
            Seen::FairlyNo
        } else {
            return None;
        };
        Self::answer("queen-trouble", seen, say::queen_old(year))
    }

    fn wings(&self) -> Option<FromRecords> {
        let on = self.first(|sign| matches!(sign, Sign::CrumpledWings(Noted::Yes)))?;
        Self::answer("crumpled-wings", Seen::FairlyYes, say::wings(on))
    }

    fn mice(&self) -> Option<FromRecords> {
        let on = self.first(|sign| matches!(sign, Sign::Mouse(Noted::Yes)))?;
        Self::answer("chewed-comb", Seen::FairlyYes, say::mouse(on))
    }
}

/// Stores that a thing done was worth, kg.
fn worth(act: &Act) -> f64 {
    match act {
        Act::Fed { feed, mass_kg } => feed.worth(*mass_kg).get(),
        Act::FoodPutOn(body) => body.worth().get(),
        Act::FramesFrom { stores_kg, .. } => stores_kg.get(),
        _ => 0.0,
    }
}

/// The turn of the winter that the yard was counted for: 1 January in the north, 1 July in the south.
fn turn_of_winter(apiary: &Apiary) -> Date {
    let is_north = apiary.site.latitude.get() >= 0.0;
    let year = apiary.as_of.year() + i16::from(is_north && apiary.as_of.month() >= 7);
    Date::new(year, if is_north { 1 } else { 7 }, 1).unwrap_or(apiary.as_of)
}
