//! `feed`: sugar for a shortage.

use clap::{Args, ValueEnum};
use jiff::civil::Date;
use snowhum_advice::sums::boxes::{box_named, standard_named, usual_box};
use snowhum_advice::sums::feed::{FeedQuestion, Season, feed};
use snowhum_units::{CubicMetre, Kilogram, Metre};

use crate::args::Common;
use crate::commands::{hive::with_unit, sum};
use crate::text;

/// What is short.
#[derive(Debug, Args)]
pub(crate) struct FeedArguments {
    /// Stores that are short: kg, or with a unit such as "18 lb".
    #[arg(long, value_name = "KG")]
    short: String,
    /// When it is fed.
    #[arg(long, value_enum, default_value_t = When::Autumn)]
    season: When,
    /// The day by which syrup must be finished (`plan` says it for your site).
    #[arg(long, value_name = "DATE")]
    syrup_by: Option<Date>,
    /// Today: with --syrup-by it says how much must go down a day, or that it is too late.
    #[arg(long, value_name = "DATE")]
    as_of: Option<Date>,
    /// What your feeder holds: litres, or with a unit such as "2 gal".
    #[arg(long, value_name = "L")]
    feeder: Option<String>,
    /// Hive whose box the feed lies on.
    #[arg(long, value_name = "HIVE", default_value = "Langstroth, 10 frames")]
    hive: String,
    /// Size of that box; the lowest usual one if not given.
    #[arg(long = "box", value_name = "SIZE")]
    size: Option<String>,
    /// Thickness of a slab, such as "5 cm" or "2 in": how much is that?
    #[arg(long, value_name = "THICK")]
    slab: Option<String>,
}

/// When it is fed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
enum When {
    /// Before winter.
    Autumn,
    /// Bees are clustered.
    Winter,
    /// Bees fly.
    Spring,
}

pub(crate) fn run(arguments: &FeedArguments, common: &Common) -> anyhow::Result<()> {
    let standard = standard_named(&arguments.hive).map_err(sum::fault)?;
    let hive_box = match &arguments.size {
        Some(size) => box_named(standard, size),
        None => usual_box(standard),
    };
    let question = FeedQuestion {
        short: with_unit::<Kilogram>("--short", &arguments.short, "kg")?,
        season: match arguments.season {
            When::Autumn => Season::Autumn,
            When::Winter => Season::Winter,
            When::Spring => Season::Spring,
        },
        as_of: arguments.as_of,
        syrup_by: arguments.syrup_by,
        feeder: arguments.feeder.as_deref().map(|text| with_unit::<CubicMetre>("--feeder", text, "L")).transpose()?,
        hive: standard.name.clone(),
        hive_box: hive_box.map_err(sum::fault)?,
        slab: arguments.slab.as_deref().map(|text| with_unit::<Metre>("--slab", text, "cm")).transpose()?,
    };
    let answer = feed(&question).map_err(sum::fault)?;
    sum::say(&answer, common, |answer| {
        text::feed::words(answer, [arguments.as_of, arguments.syrup_by], common.units.into())
    })
}
