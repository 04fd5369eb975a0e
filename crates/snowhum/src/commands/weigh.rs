//! `weigh`: what a hive weighs, and what of it is food.

use clap::{ArgGroup, Args};
use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::boxes::{box_named, standard_named};
use snowhum_advice::sums::weigh::{FrameCount, Tare, TwoSided, Way, WeighQuestion, usual_centre_height, weigh};
use snowhum_apiary::{HiveBox, Layer, Standard};
use snowhum_units::{Kilogram, Metre};

use crate::args::Common;
use crate::commands::{hive::with_unit, sum};
use crate::{exit, text};

/// The usual hive where none is named.
const USUAL: &str = "Langstroth, 10 frames";

/// What was weighed.
#[derive(Debug, Args)]
#[command(group(ArgGroup::new("way").required(true).args(["left", "one_side", "scale", "frames"])))]
pub(crate) struct WeighArguments {
    /// Lowest steady reading with the left side lifted just clear: kg, or with a unit such as "42 lb".
    #[arg(long, value_name = "KG", requires = "right")]
    left: Option<String>,
    /// The same at the right.
    #[arg(long, value_name = "KG", requires = "left")]
    right: Option<String>,
    /// Between the two lift points: cm, or with a unit; the hive's own width if not given.
    #[arg(long, value_name = "CM")]
    width: Option<String>,
    /// From a lift point in to the outer edge of what the hive turns on: cm, or with a unit.
    #[arg(long, value_name = "CM", default_value = "0")]
    inset: String,
    /// How far the side was lifted: cm, or with a unit.
    #[arg(long, value_name = "CM", default_value = "1")]
    lift: String,
    /// Height of the centre of gravity: cm, or with a unit; half of two deep boxes if not given.
    #[arg(long, value_name = "CM")]
    centre_height: Option<String>,
    /// One side only, as a trend.
    #[arg(long, value_name = "KG")]
    one_side: Option<String>,
    /// The same side's reading before.
    #[arg(long, value_name = "KG", requires = "one_side")]
    before: Option<String>,
    /// The whole hive on a scale.
    #[arg(long, value_name = "KG")]
    scale: Option<String>,
    /// Full frames of capped food, such as 7.5, or with the box, deep=4 and medium=3.5.
    #[arg(long, value_name = "N")]
    frames: Vec<String>,
    /// The empty hive with its frames, as you weighed it.
    #[arg(long, value_name = "KG", conflicts_with = "boxes")]
    tare: Option<String>,
    /// Kind of hive: its empty weight is reckoned from its parts, and its combs counted.
    #[arg(long, value_name = "HIVE")]
    hive: Option<String>,
    /// Its boxes from below, such as deep,deep; the usual ones if not given.
    #[arg(long, value_name = "SIZES", value_delimiter = ',', requires = "hive")]
    boxes: Vec<String>,
    /// Bees; about 2 kg of them if not given.
    #[arg(long, value_name = "N")]
    bees: Option<f64>,
    /// Snow, feeder, wrap: what else was lifted.
    #[arg(long, value_name = "KG", default_value = "0")]
    other: String,
}

pub(crate) fn run(arguments: &WeighArguments, common: &Common) -> anyhow::Result<()> {
    let question = WeighQuestion {
        way: way(arguments)?,
        tare: tare(arguments)?,
        bees: arguments.bees,
        hive: hive(arguments)?,
        other: with_unit("--other", &arguments.other, "kg")?,
    };
    let answer = weigh(&question).map_err(sum::fault)?;
    sum::say(&answer, common, |answer| text::weigh::words(answer, common.units.into()))
}

fn way(arguments: &WeighArguments) -> anyhow::Result<Way> {
    let kg = |option: &str, text: &str| with_unit::<Kilogram>(option, text, "kg");
    if let (Some(left), Some(right)) = (&arguments.left, &arguments.right) {
        return Ok(Way::TwoSided(TwoSided {
            left: kg("--left", left)?,
            right: kg("--right", right)?,
            width: width(arguments)?,
            inset: with_unit("--inset", &arguments.inset, "cm")?,
            lift: with_unit("--lift", &arguments.lift, "cm")?,
            centre_height: match &arguments.centre_height {
                Some(text) => with_unit("--centre-height", text, "cm")?,
                None => usual_centre_height().map_err(sum::fault)?,
            },
        }));
    }
    if let Some(now) = &arguments.one_side {
        let before = arguments.before.as_deref().map(|text| kg("--before", text)).transpose()?;
        return Ok(Way::OneSide { now: kg("--one-side", now)?, before });
    }
    if let Some(whole) = &arguments.scale {
        return Ok(Way::Scale(kg("--scale", whole)?));
    }
    let counts: anyhow::Result<Vec<FrameCount>> =
        arguments.frames.iter().map(|text| frame_count(text, arguments)).collect();
    Ok(Way::Frames(counts?))
}

fn width(arguments: &WeighArguments) -> anyhow::Result<Metre> {
    if let Some(text) = &arguments.width {
        return with_unit("--width", text, "cm");
    }
    let boxes = boxes(arguments, named(arguments)?).map_err(sum::fault)?;
    let outer = boxes.first().map(|lowest| lowest.width + 2.0 * lowest.wall.thickness);
    outer.ok_or_else(|| exit::input("--width: give the distance between the lift points"))
}

/// Frames as `7.5` or `deep=4`.
fn frame_count(text: &str, arguments: &WeighArguments) -> anyhow::Result<FrameCount> {
    let standard = named(arguments)?;
    let usual = standard.usual_boxes.first().map_or("brood", String::as_str);
    let (size, frames) = text.split_once('=').unwrap_or((usual, text));
    let wrong = |_| exit::input(format!("--frames \"{text}\": write a number, such as 7.5, or deep=4"));
    let frames = frames.trim().parse().map_err(wrong)?;
    let comb_side = box_named(standard, size).map_err(sum::fault)?.comb_side;
    Ok(FrameCount { frames, comb_side })
}

fn tare(arguments: &WeighArguments) -> anyhow::Result<Tare> {
    if let Some(tare) = &arguments.tare {
        return Ok(Tare::Own(with_unit("--tare", tare, "kg")?));
    }
    if arguments.hive.is_none() {
        return Ok(Tare::Unknown);
    }
    let standard = named(arguments)?;
    let lid: Result<Vec<Layer>, SumFault> = standard.lid.iter().map(|text| sheet(text)).collect();
    Ok(Tare::Parts { boxes: boxes(arguments, standard).map_err(sum::fault)?, lid: lid.map_err(sum::fault)? })
}

fn sheet(text: &str) -> Result<Layer, SumFault> {
    text.parse().map_err(|_| SumFault::Table { table: "hive_standards.toml", fault: format!("lid \"{text}\"") })
}

/// The hive the answer leans on: the one named, or the usual one where frames are counted.
fn hive(arguments: &WeighArguments) -> anyhow::Result<Option<String>> {
    let leans = arguments.hive.is_some() || !arguments.frames.is_empty();
    Ok(if leans { Some(named(arguments)?.name.clone()) } else { None })
}

fn named(arguments: &WeighArguments) -> anyhow::Result<&'static Standard> {
    standard_named(arguments.hive.as_deref().unwrap_or(USUAL)).map_err(sum::fault)
}

fn boxes(arguments: &WeighArguments, standard: &Standard) -> Result<Vec<HiveBox>, SumFault> {
    let sizes = if arguments.boxes.is_empty() { &standard.usual_boxes } else { &arguments.boxes };
    sizes.iter().map(|size| box_named(standard, size)).collect()
}
