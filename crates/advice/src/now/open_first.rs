//! After a flying day: whom to open first.

use jiff::Timestamp;
use snowhum_apiary::{Apiary, ColonyId, DroppingsPlace, Flight, Sign};
use snowhum_say::{Message, now as say};

use super::answer::{ColonyNow, OpenFirst};
use crate::verdict::answer::FirstAnswer;

/// Days that a flying day is asked about.
const LATELY_S: i64 = 5 * 86_400;

/// How a colony flew, the worst last.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Flew {
    Well,
    Thin,
    Soiled,
    NotNoted,
    Not,
}

impl Flew {
    fn why(self) -> Message {
        match self {
            Self::Well => say::open_first_well(),
            Self::Thin => say::open_first_thin(),
            Self::Soiled => say::open_first_soiled(),
            Self::NotNoted => say::open_first_not_noted(),
            Self::Not => say::open_first_did_not_fly(),
        }
    }
}

/// The colonies to open, first things first, when some flew lately; none if nobody flew.
pub(super) fn of(apiary: &Apiary, (colonies, first): (&[ColonyNow], &FirstAnswer), until: Timestamp) -> Vec<OpenFirst> {
    let indoors = |name: &str| first.colonies.iter().any(|one| one.name == name && one.is_indoors());
    let flown: Vec<(&ColonyNow, Flew)> = apiary
        .colonies
        .iter()
        .filter(|colony| !indoors(&colony.name))
        .filter_map(|colony| {
            let now = colonies.iter().find(|now| now.name == colony.name)?;
            Some((now, lately(apiary, colony.id, until)))
        })
        .collect();
    if !flown.iter().any(|(_, flew)| matches!(flew, Flew::Well | Flew::Thin)) {
        return Vec::new();
    }
    let mut order: Vec<_> = flown.into_iter().filter(|(now, flew)| !now.is_gone() && *flew != Flew::Well).collect();
    // Of two that flew alike the hungrier first.
    order.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.alive_fed_queenright.total_cmp(&b.0.alive_fed_queenright)));
    order.into_iter().map(|(now, flew)| OpenFirst { name: now.name.clone(), why: flew.why() }).collect()
}

fn lately(apiary: &Apiary, colony: ColonyId, until: Timestamp) -> Flew {
    let recent = apiary.notes.iter().filter(|note| {
        let age = until.as_second() - note.at.as_second();
        note.colony == colony && (0..=LATELY_S).contains(&age)
    });
    let mut flew = Flew::NotNoted;
    for sign in recent.flat_map(|note| note.signs()) {
        flew = match sign {
            Sign::Flight(Flight::Well) => Flew::Well,
            Sign::Flight(Flight::Thin) => Flew::Thin,
            Sign::Flight(Flight::None) => Flew::Not,
            Sign::Droppings(DroppingsPlace::Hive) => Flew::Soiled,
            _ => flew,
        };
    }
    flew
}
