//! Weighings as keepers write them.

use super::vocabulary::{name_of, percent, short, word};
use super::weighing::{Heft, Weighing};
use crate::wrong::Wrong;
use snowhum_say::{fault, note_fault as say};
use snowhum_units::{Bare, Kilogram, Measured};

const HEFTS: [(&str, Heft); 3] = [("light", Heft::Light), ("fair", Heft::Fair), ("heavy", Heft::Heavy)];

pub(super) fn weighing(what: &str, how: &str, bare: Bare) -> Result<Weighing, Wrong> {
    match what {
        "stores" => {
            let (mass, spread) = how.split_once('±').or_else(|| how.split_once("+-")).unwrap_or((how, "2 kg"));
            let (mass_kg, plus_minus_kg) = (kilograms(mass, 150.0, bare)?, kilograms(spread, 50.0, bare)?);
            Ok(Weighing::Stores { mass_kg, plus_minus_kg })
        }
        "scale" | "weight" => Ok(Weighing::Scale { gross_kg: kilograms(how, 400.0, bare)? }),
        "lift" => two_sides(how, bare),
        "side" => Ok(Weighing::OneSide { read_kg: kilograms(how, 300.0, bare)? }),
        _ => Ok(Weighing::Heft(word(how, &HEFTS)?)),
    }
}

fn two_sides(how: &str, bare: Bare) -> Result<Weighing, Wrong> {
    /// Hives mostly rest on rails a little in from their edges; none is told, none is taken.
    const MOST_INSET: f64 = 0.4;
    let (sides, inset) = how.split_once(" inset ").unwrap_or((how, "0 %"));
    let Some((left, right)) = parted(sides) else {
        return Err(Wrong::new(say::no_sides(how), say::sides_right()));
    };
    let inset = percent(inset)?.get();
    if inset > MOST_INSET {
        return Err(Wrong::new(say::inset(), say::inset_right()));
    }
    Ok(Weighing::TwoSidedLift {
        left_kg: kilograms(left, 300.0, bare)?,
        right_kg: kilograms(right, 300.0, bare)?,
        inset_share: inset,
    })
}

/// Two sides at the comma that is no decimal one: a letter stands before it or a space after it. Two bare numbers stand
/// apart by a space alone.
fn parted(sides: &str) -> Option<(&str, &str)> {
    let between_digits = |at: usize| {
        let digit = |letter: Option<char>| letter.is_some_and(|letter| letter.is_ascii_digit());
        digit(sides[..at].chars().next_back()) && digit(sides[at + 1..].chars().next())
    };
    let comma = sides.match_indices(',').map(|(at, _)| at).find(|at| !between_digits(*at));
    if let Some(at) = comma {
        return Some((&sides[..at], &sides[at + 1..]));
    }
    let parts: Vec<&str> = sides.split_whitespace().collect();
    match parts[..] {
        [left, right] if snowhum_units::number(right).is_ok() => Some((left, right)),
        _ => None,
    }
}

pub(super) fn kilograms(text: &str, most_kg: f64, bare: Bare) -> Result<Kilogram, Wrong> {
    within(text, Kilogram::read(text, bare)?, most_kg)
}

pub(super) fn within(text: &str, mass: Kilogram, most_kg: f64) -> Result<Kilogram, Wrong> {
    if (0.0..=most_kg).contains(&mass.get()) {
        return Ok(mass);
    }
    Err(Wrong::new(fault::cannot_be(text.trim()), say::mass_right(Kilogram::new(most_kg))))
}

pub(super) fn written_weighing(weighing: &Weighing) -> String {
    let kg = |mass: &Kilogram| format!("{} kg", short(mass.get()));
    match weighing {
        Weighing::Stores { mass_kg, plus_minus_kg } => format!("stores={} ± {}", kg(mass_kg), kg(plus_minus_kg)),
        Weighing::Scale { gross_kg } => format!("scale={}", kg(gross_kg)),
        Weighing::TwoSidedLift { left_kg, right_kg, inset_share } => {
            format!("lift={}, {} inset {} %", kg(left_kg), kg(right_kg), short(100.0 * inset_share))
        }
        Weighing::OneSide { read_kg } => format!("side={}", kg(read_kg)),
        Weighing::Heft(heft) => format!("heft={}", name_of(heft, &HEFTS)),
    }
}
