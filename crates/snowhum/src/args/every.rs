//! Every argument of every command: whose units its numbers are in, so that a new one cannot be forgotten.

use clap::{Arg, Command, CommandFactory};
use jiff::civil::Date;
use snowhum_units::{Bare, CubicMetre, Kelvin, Kilogram, Measured, Metre, MetrePerSecond, System};
use std::any::TypeId;
use std::path::PathBuf;
use uuid::Uuid;

use super::{Arguments, Written};

/// Arguments that hold a number or a text, and why no unit of theirs can be mistaken. What is not here and is no
/// [`Written`] quantity, day, file or choice fails the test.
const WITHOUT_UNITS: [(&str, &[&str], &str); 5] = [
    (
        "names and words",
        &[
            "address",
            "at",
            "box",
            "club",
            "colony",
            "columns",
            "contact",
            "currency",
            "entries",
            "gone",
            "hive",
            "boxes",
            "log",
            "member",
            "mentor",
            "yard",
            "earlier",
            "name",
            "names",
            "region",
            "sample",
            "season-of",
            "sheet",
            "sign",
            "signs",
            "term",
            "size",
            "snow",
            "look",
        ],
        "hold no quantity",
    ),
    (
        "notes",
        &["count", "keep", "tries"],
        "read by the notes' and the set-up's own reader, with the keeper's units or refused",
    ),
    (
        "counts",
        &[
            "added",
            "at_once",
            "bees",
            "before",
            "brood_cells",
            "days",
            "dead",
            "disaster",
            "earlier",
            "found",
            "frames",
            "members",
            "port",
            "queen_failed",
            "removed",
            "seed",
            "threads",
            "weak",
            "yards",
            "season",
            "month",
            "kept",
        ],
        "the same in both systems: bees, cells, frames, days, hives, years",
    ),
    ("shares and money", &["humidity", "colony_price", "season_worth"], "per cent, and the keeper's own money"),
    ("watts", &["heater_w"], "its name says the unit, and both systems use it"),
];

/// Where each quantity is asked for: those of the binary's own test of units too.
const MEASURED: [(&str, &[&str]); 4] = [
    ("hive", &["outside", "wind"]),
    ("note", &["air", "wind"]),
    ("feed", &["short", "feeder", "slab"]),
    (
        "weigh",
        &[
            "readings",
            "left",
            "right",
            "width",
            "inset",
            "lift",
            "centre_height",
            "one_side",
            "before",
            "scale",
            "tare",
            "other",
        ],
    ),
];

fn is_measured(arg: &Arg) -> bool {
    let of = arg.get_value_parser().type_id();
    of == TypeId::of::<Written<Kilogram>>()
        || of == TypeId::of::<Written<Metre>>()
        || of == TypeId::of::<Written<CubicMetre>>()
        || of == TypeId::of::<Written<Kelvin>>()
        || of == TypeId::of::<Written<MetrePerSecond>>()
}

/// Files, days and ids are no numbers; a choice lists its words; a flag holds nothing.
fn holds_no_number(arg: &Arg) -> bool {
    let of = arg.get_value_parser().type_id();
    let plain = [TypeId::of::<PathBuf>(), TypeId::of::<Date>(), TypeId::of::<Uuid>()];
    !arg.get_action().takes_values() || !arg.get_possible_values().is_empty() || plain.iter().any(|one| of == *one)
}

/// Every argument with the command it stands at.
fn all() -> Vec<(String, Arg)> {
    fn walk(command: &Command, into: &mut Vec<(String, Arg)>) {
        into.extend(command.get_arguments().map(|arg| (command.get_name().to_owned(), arg.clone())));
        command.get_subcommands().for_each(|under| walk(under, into));
    }
    let (command, mut into) = (Arguments::command(), Vec::new());
    walk(&command, &mut into);
    into
}

#[test]
fn every_argument_follows_the_keepers_units_or_holds_none() {
    let all = all();
    assert!(all.len() > 80, "the tree was not walked: {}", all.len());
    let forgotten: Vec<String> = all
        .iter()
        .filter(|(_, arg)| !is_measured(arg) && !holds_no_number(arg))
        .filter(|(_, arg)| !WITHOUT_UNITS.iter().any(|(_, names, _)| names.contains(&arg.get_id().as_str())))
        .map(|(command, arg)| format!("{command} {}", arg.get_id()))
        .collect();
    assert!(forgotten.is_empty(), "whose units are these in? {forgotten:?}");
}

#[test]
fn every_quantity_asked_for_is_known_to_the_test_of_units() {
    for (command, arg) in all().iter().filter(|(_, arg)| is_measured(arg)) {
        let known = MEASURED.iter().find(|(name, _)| name == command);
        let is_known = known.is_some_and(|(_, names)| names.contains(&arg.get_id().as_str()));
        assert!(is_known, "add {command} {} here and to the binary's test of units", arg.get_id());
    }
}

#[test]
fn a_default_says_its_unit() {
    for (command, arg) in all().iter().filter(|(_, arg)| is_measured(arg)) {
        for default in arg.get_default_values() {
            let text = default.to_string_lossy();
            assert!(snowhum_units::number(&text).is_err(), "{command} {}: {text} is in no unit", arg.get_id());
        }
    }
}

#[test]
fn a_bare_number_is_in_the_units_that_were_asked_for() {
    fn check<Q: Measured + Copy + PartialEq + std::fmt::Debug>() {
        let bare: Written<Q> = "7,5".parse().unwrap();
        for system in [System::Metric, System::Us] {
            let whole = Q::read(&format!("7.5 {}", Q::usual(system)), Bare::Refused);
            assert_eq!(whole, Ok(bare.read(system)));
        }
        let [metric, us] = Q::USUAL;
        let told: Written<Q> = format!("7.5 {metric}").parse().unwrap();
        assert_eq!(told.read(System::Us), told.read(System::Metric), "a unit that is written stands");
        assert_ne!(metric, us);
    }
    check::<Kilogram>();
    check::<Metre>();
    check::<CubicMetre>();
    check::<Kelvin>();
    check::<MetrePerSecond>();
}
