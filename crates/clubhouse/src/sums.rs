//! Losses of many members as sums, none of so few yards that one could be guessed.

use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::losses::{ClubLosses, Counted, LossesAnswer, LossesQuestion, Operation, losses};
use snowhum_club::{Cell, CountedWinter};
use snowhum_figures::club::{LEAST_MEMBERS, LEAST_YARDS};
use std::collections::{BTreeMap, BTreeSet};
use uuid::Uuid;

/// A club's winter.
#[derive(Debug)]
pub(crate) struct Winter {
    /// The year of its autumn.
    pub(crate) year: i16,
    /// All that are counted; none where they are too few.
    pub(crate) all: Option<LossesAnswer>,
    /// Where; nothing where that is one place alone.
    pub(crate) places: Vec<Place>,
}

/// Yards of one cell, or of several together.
#[derive(Debug)]
pub(crate) struct Place {
    /// The cell; none where smaller ones stand together.
    pub(crate) cell: Option<Cell>,
    /// Yards that are counted.
    pub(crate) yards: usize,
    /// What they lost.
    pub(crate) losses: ClubLosses,
}

/// The winters that are counted, the latest first.
pub(crate) fn winters(counted: &[CountedWinter]) -> Result<Vec<Winter>, SumFault> {
    let years: BTreeSet<i16> = counted.iter().map(|winter| winter.year).collect();
    years.into_iter().rev().map(|year| winter(year, counted)).collect()
}

fn winter(year: i16, counted: &[CountedWinter]) -> Result<Winter, SumFault> {
    let yards: Vec<&CountedWinter> = counted.iter().filter(|winter| winter.year == year).collect();
    if !are_enough(&yards) {
        return Ok(Winter { year, all: None, places: Vec::new() });
    }
    let places = groups(&yards).into_iter().map(|(cell, yards)| {
        let losses = pooled(&yards)?.club;
        Ok(losses.map(|losses| Place { cell, yards: yards.len(), losses }))
    });
    let places: Vec<Place> = places.filter_map(Result::transpose).collect::<Result<_, SumFault>>()?;
    let places = if places.len() > 1 { places } else { Vec::new() };
    Ok(Winter { year, all: Some(pooled(&yards)?), places })
}

/// Cells with enough yards, and the rest together. The rest is enough too: else what all lost, less what is shown, would
/// tell of it, so the smallest cell joins it.
fn groups<'c>(yards: &[&'c CountedWinter]) -> Vec<(Option<Cell>, Vec<&'c CountedWinter>)> {
    let mut cells: BTreeMap<Cell, Vec<&CountedWinter>> = BTreeMap::new();
    let mut rest = Vec::new();
    for yard in yards {
        match yard.cell {
            Some(cell) => cells.entry(cell).or_default().push(yard),
            None => rest.push(*yard),
        }
    }
    let mut shown: Vec<(Cell, Vec<&CountedWinter>)> = Vec::new();
    for (cell, yards) in cells {
        if are_enough(&yards) { shown.push((cell, yards)) } else { rest.extend(yards) }
    }
    while !rest.is_empty() && !are_enough(&rest) {
        let smallest = shown.iter().enumerate().min_by_key(|(_, (cell, yards))| (yards.len(), *cell)).map(|(at, _)| at);
        match smallest {
            Some(at) => rest.extend(shown.remove(at).1),
            None => break,
        }
    }
    let shown = shown.into_iter().map(|(cell, yards)| (Some(cell), yards));
    shown.chain((!rest.is_empty()).then_some((None, rest))).collect()
}

fn are_enough(yards: &[&CountedWinter]) -> bool {
    let members: BTreeSet<Uuid> = yards.iter().map(|yard| yard.owner).collect();
    yards.len() as f64 >= LEAST_YARDS && members.len() as f64 >= LEAST_MEMBERS
}

/// By the published definition, with intervals that know that colonies of one member share their luck.
fn pooled(yards: &[&CountedWinter]) -> Result<LossesAnswer, SumFault> {
    let mut members: BTreeMap<Uuid, (u32, u32)> = BTreeMap::new();
    for yard in yards {
        let (colonies, lost) = members.entry(yard.owner).or_default();
        (*colonies, *lost) = (colonies.saturating_add(yard.colonies), lost.saturating_add(yard.lost));
    }
    // Nobody's name is asked for or told.
    let operation = |(colonies, lost)| Operation { name: String::new(), colonies, lost };
    losses(&LossesQuestion {
        counted: Counted::Club(members.into_values().map(operation).collect()),
        winters: Vec::new(),
        colony_price: None,
        season_worth: None,
        currency: String::new(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn yards(number: usize, members: u128, cell: Option<Cell>) -> Vec<CountedWinter> {
        let owner = |at: usize| {
            let of_cell = cell.map_or(0, |cell| 1_000 * cell.north as u128);
            Uuid::from_u128(of_cell + at as u128 % members)
        };
        (0..number).map(|at| CountedWinter { owner: owner(at), cell, year: 2025, colonies: 5, lost: 1 }).collect()
    }

    fn cell(north: i32) -> Option<Cell> {
        Some(Cell { north, east: 12 })
    }

    fn shown(counted: &[CountedWinter]) -> Vec<(Option<i32>, usize)> {
        let winter = winters(counted).unwrap().remove(0);
        let all: usize = winter.places.iter().map(|place| place.yards).sum();
        assert!(winter.places.is_empty() || all == counted.len(), "none is told twice, none left out");
        winter.places.iter().map(|place| (place.cell.map(|cell| cell.north), place.yards)).collect()
    }

    #[test]
    fn of_too_few_yards_or_members_nothing_is_shown() {
        for (number, members, is_shown) in [(4, 4, false), (5, 2, false), (5, 3, true), (40, 2, false)] {
            let winter = winters(&yards(number, members, cell(60))).unwrap().remove(0);
            assert_eq!(winter.all.is_some(), is_shown, "{number} yards of {members}");
            assert!(winter.places.is_empty(), "one place alone is all of it");
        }
        assert!(winters(&[]).unwrap().is_empty());
    }

    #[test]
    fn a_small_cell_is_never_shown_nor_left_to_be_reckoned_from_the_rest() {
        let with = |cells: &[(usize, Option<Cell>)]| {
            let all = cells.iter().flat_map(|(number, cell)| yards(*number, 5, *cell));
            shown(&all.collect::<Vec<_>>())
        };
        assert_eq!(with(&[(9, cell(60)), (7, cell(61))]), [(Some(60), 9), (Some(61), 7)]);
        assert_eq!(with(&[(9, cell(60)), (3, cell(61)), (4, cell(62))]), [(Some(60), 9), (None, 7)]);
        // Two alone would be all less the others: the smallest joins them.
        assert_eq!(with(&[(9, cell(60)), (6, cell(61)), (2, cell(62))]), [(Some(60), 9), (None, 8)]);
        assert_eq!(with(&[(9, cell(60)), (2, cell(61))]), [], "nothing but all of it is left");
        assert_eq!(with(&[(9, cell(60)), (6, cell(61)), (2, None)]), [(Some(60), 9), (None, 8)], "where is not known");
    }

    #[test]
    fn yards_of_one_member_are_one_operation() {
        let winter = winters(&yards(12, 4, cell(60))).unwrap().remove(0);
        let all = winter.all.unwrap().club.unwrap();
        assert_eq!((all.members, all.at_risk, all.lost), (4, 60, 12));
    }
}
