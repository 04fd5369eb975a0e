//! Things done, as keepers write them.

use super::act::{Act, Feed};
use super::examined::SpringCount;
use super::treatment::TreatmentNote;
use super::vocabulary::{name_of, percent, short, word};
use super::weighed::{kilograms, within};
use crate::kinds::Told;
use crate::shipped::same_name;
use crate::wrong::Wrong;
use crate::{ColonyId, FoodBody, QueenState};
use snowhum_say::note_fault as say;
use snowhum_units::Bare;

const FEEDS: [(&str, Feed); 6] = [
    ("3:2 syrup", Feed::Syrup3To2),
    ("2:1 syrup", Feed::Syrup2To1),
    ("1:1 syrup", Feed::Syrup1To1),
    ("fondant", Feed::Fondant),
    ("candy", Feed::Candy),
    ("sugar", Feed::Sugar),
];
const DONE: [(&str, Act); 5] = [
    ("brushed", Act::Brushed),
    ("swept", Act::Swept),
    ("brought near", Act::BroughtNear),
    ("requeened", Act::Requeened),
    ("moved", Act::Moved),
];

pub(super) fn act(told: &Told<'_>) -> Result<Act, Wrong> {
    let Told { what, how, colony, bare } = *told;
    let find = |name: &str| {
        let name = name.trim();
        colony(name).ok_or_else(|| Wrong::new(say::no_colony(name), say::no_colony_right()))
    };
    match what {
        "fed" => {
            let Some((feed, kind)) = FEEDS.iter().find(|(words, _)| how.to_lowercase().ends_with(words)) else {
                let kinds = FEEDS.iter().map(|(words, _)| (*words).into()).collect();
                return Err(Wrong::new(say::no_feed(how), say::feed_right(kinds)));
            };
            let mass = how[..how.len() - feed.len()].trim().trim_end_matches(" of");
            Ok(Act::Fed { feed: *kind, mass_kg: within(mass, kind.mass_of(mass.trim(), bare)?, 60.0)? })
        }
        "board" => board(how, bare),
        "frames" => {
            let Some((stores, giver)) = how.split_once(" from ") else {
                return Err(Wrong::new(say::no_giver(how), say::giver_right()));
            };
            Ok(Act::FramesFrom { giver: find(giver)?, stores_kg: kilograms(stores, 60.0, bare)? })
        }
        "changed" => Ok(Act::Changed(how.parse()?)),
        "treated" => TreatmentNote::read(how).map(Act::Treated),
        "united" => Ok(Act::UnitedInto(find(how.strip_prefix("into ").unwrap_or(how))?)),
        "examined" => Ok(Act::Examined(how.parse()?)),
        "mites" => mites_counted(how),
        "carried" => carried(how),
        "counted" => Ok(Act::Counted(word(how, &SpringCount::WORDS)?)),
        _ => word(how, &DONE),
    }
}

pub(super) fn written_act(act: &Act, name: &dyn Fn(ColonyId) -> String) -> String {
    match act {
        Act::Fed { feed, mass_kg } => format!("fed={} kg {}", short(mass_kg.get()), name_of(feed, &FEEDS)),
        Act::FoodPutOn(body) => format!("board={}", body.written()),
        Act::FoodTakenOff => "board=off".to_owned(),
        Act::FoodEatenUp => "board=eaten up".to_owned(),
        Act::FramesFrom { giver, stores_kg } => format!("frames={} kg from {}", short(stores_kg.get()), name(*giver)),
        Act::Changed(change) => format!("changed={change}"),
        Act::Treated(given) => format!("treated={}", given.written()),
        Act::UnitedInto(other) => format!("united=into {}", name(*other)),
        Act::Examined(examined) => format!("examined={examined}"),
        Act::Counted(count) => format!("counted={}", name_of(count, &SpringCount::WORDS)),
        Act::MitesCounted { found, bees } => format!("mites={found} of {bees}"),
        Act::QueenFound(state) => format!("queen={}", name_of(state, &QueenState::WORDS)),
        Act::CarriedIn(room) => format!("carried=into {room}"),
        Act::CarriedOut => "carried=out".to_owned(),
        Act::Brushed | Act::Swept | Act::BroughtNear | Act::Requeened | Act::Moved => {
            format!("did={}", name_of(act, &DONE))
        }
    }
}

/// A body of food put on, taken off or eaten up.
fn board(how: &str, bare: Bare) -> Result<Act, Wrong> {
    match how.to_lowercase().as_str() {
        "off" | "taken off" => Ok(Act::FoodTakenOff),
        "eaten up" | "eaten" | "empty" => Ok(Act::FoodEatenUp),
        _ => FoodBody::read(how, bare).map(Act::FoodPutOn),
    }
}

/// Into a room, or out of the one it stands in.
fn carried(how: &str) -> Result<Act, Wrong> {
    const LONGEST: usize = 60;
    if same_name(how, "out") {
        return Ok(Act::CarriedOut);
    }
    let room = how.strip_prefix("into ").or_else(|| how.strip_prefix("in ")).unwrap_or_default().trim();
    if room.is_empty() || room.chars().count() > LONGEST || room.chars().any(|letter| letter.is_control()) {
        return Err(Wrong::new(say::no_place(how), say::carried_right()));
    }
    Ok(Act::CarriedIn(room.to_owned()))
}

/// Mites and the bees they came off, or their share of a usual sample.
pub(crate) fn mites_counted(how: &str) -> Result<Act, Wrong> {
    /// A sample is a cup of bees or two.
    const MOST_BEES: u32 = 2_000;
    /// Half a US cup, the sample that counting methods ask for.
    const USUAL_BEES: &str = "300";
    let wrong = || Wrong::new(say::no_mites(how), say::mites_right(MOST_BEES));
    let parts = how.split_once(" of ").or_else(|| how.split_once('/'));
    let (found, bees) = parts.or(how.contains('%').then_some((how, USUAL_BEES))).ok_or_else(wrong)?;
    let bees = bees.trim().trim_end_matches("bees").trim().parse::<u32>().map_err(|_| wrong())?;
    let found = match found.contains('%') {
        true => (percent(found)?.get() * f64::from(bees)).round() as u32,
        false => found.trim().parse().map_err(|_| wrong())?,
    };
    let is_sound = (1..=MOST_BEES).contains(&bees) && found <= 10 * bees;
    if is_sound { Ok(Act::MitesCounted { found, bees }) } else { Err(wrong()) }
}
