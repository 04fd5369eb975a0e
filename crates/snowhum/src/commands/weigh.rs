//! `weigh`: what a hive weighs, and what of it is food.

use clap::{ArgGroup, Args};
use snowhum_advice::sums::SumFault;
use snowhum_advice::sums::boxes::{box_named, standard_named};
use snowhum_advice::sums::weigh::{FrameCount, Tare, TwoSided, Way, WeighQuestion, usual_centre_height, weigh};
use snowhum_apiary::{Apiary, Colony, Entry, Hive, HiveBox, Layer, Sign, Standard, Weighing};
use snowhum_say::{shared_terminal as shared, weigh_terminal as say};
use snowhum_units::{Kilogram, Metre, System};

use crate::args::{Common, Written, plain};
use crate::commands::keeping::{self, OfYard};
use crate::commands::sum;
use crate::{exit, sources, text};

/// The usual hive where none is named.
const USUAL: &str = "Langstroth, 10 frames";

/// What was weighed.
#[derive(Debug, Args)]
#[command(group(ArgGroup::new("way").required(true).args(["readings", "left", "one_side", "scale", "frames"])))]
pub(crate) struct WeighArguments {
    #[arg(value_name = "COLONY")]
    colony: Option<String>,
    #[arg(value_name = "LEFT RIGHT", num_args = 0..=2)]
    readings: Vec<Written<Kilogram>>,
    #[arg(long, value_name = "MASS", requires = "right")]
    left: Option<Written<Kilogram>>,
    #[arg(long, value_name = "MASS", requires = "left")]
    right: Option<Written<Kilogram>>,
    #[arg(long, value_name = "LENGTH")]
    width: Option<Written<Metre>>,
    #[arg(long, value_name = "LENGTH", default_value = "0 cm")]
    inset: Written<Metre>,
    #[arg(long, value_name = "LENGTH", default_value = "1 cm")]
    lift: Written<Metre>,
    #[arg(long, value_name = "LENGTH")]
    centre_height: Option<Written<Metre>>,
    #[arg(long, value_name = "MASS")]
    one_side: Option<Written<Kilogram>>,
    #[arg(long, value_name = "MASS", requires = "one_side")]
    before: Option<Written<Kilogram>>,
    #[arg(long, value_name = "MASS")]
    scale: Option<Written<Kilogram>>,
    #[arg(long, value_name = "N")]
    frames: Vec<String>,
    #[arg(long, value_name = "MASS", conflicts_with = "boxes")]
    tare: Option<Written<Kilogram>>,
    #[arg(long, value_name = "HIVE", conflicts_with = "colony")]
    hive: Option<String>,
    #[arg(long, value_name = "SIZES", value_delimiter = ',', requires = "hive")]
    boxes: Vec<String>,
    #[arg(long, value_name = "N", value_parser = plain)]
    bees: Option<f64>,
    #[arg(long, value_name = "MASS", default_value = "0 kg")]
    other: Written<Kilogram>,
    #[arg(long, requires = "colony")]
    keep: bool,
    #[command(flatten)]
    of: OfYard,
}

pub(crate) fn run(arguments: &WeighArguments, common: &Common) -> anyhow::Result<()> {
    let system = common.units.into();
    let apiary = match &arguments.colony {
        Some(_) => Some(sources::apiary(arguments.of.apiary.as_deref(), common)?),
        None => None,
    };
    let known = apiary.as_ref().map(|apiary| known(apiary, arguments)).transpose()?;
    let question = WeighQuestion {
        way: way(arguments, known, system)?,
        tare: tare(arguments, known, system)?,
        bees: arguments.bees.or(known.map(|(colony, _)| colony.bees.p50)),
        hive: hive(arguments, known)?,
        other: arguments.other.read(system),
    };
    let answer = weigh(&question).map_err(sum::fault)?;
    sum::say(&answer, common, text::weigh::words)?;
    match &arguments.colony {
        Some(colony) if arguments.keep => {
            keeping::note_of(colony, vec![noted(&question.way, answer.stores_noted())?], &arguments.of, common)
        }
        _ => Ok(()),
    }
}

/// The colony asked about, with its hive.
fn known<'a>(apiary: &'a Apiary, arguments: &WeighArguments) -> anyhow::Result<(&'a Colony, &'a Hive)> {
    let name = arguments.colony.as_deref().unwrap_or_default();
    let colony = &apiary.colonies[sources::place_of(apiary, name)?];
    apiary.hive_of(colony).map(|hive| (colony, hive)).ok_or_else(|| exit::refused(shared::no_hive(name)))
}

/// What is noted of a weighing: food with its error where it is known, else what was read.
fn noted(way: &Way, stores: Option<(f64, f64)>) -> anyhow::Result<Entry> {
    let weighing = match (way, stores) {
        (_, Some((kg, spread))) => {
            Weighing::Stores { mass_kg: Kilogram::new(kg), plus_minus_kg: Kilogram::new(spread) }
        }
        (Way::Scale(gross_kg), None) => Weighing::Scale { gross_kg: *gross_kg },
        (Way::OneSide { now, .. }, None) => Weighing::OneSide { read_kg: *now },
        (Way::TwoSided(_) | Way::Frames(_), None) => {
            return Err(exit::refused(say::none_reckoned()));
        }
    };
    Ok(Entry::Sign(Sign::Weight(weighing)))
}

fn way(arguments: &WeighArguments, known: Option<(&Colony, &Hive)>, system: System) -> anyhow::Result<Way> {
    let kg = |written: Written<Kilogram>| written.read(system);
    match (arguments.readings.as_slice(), arguments.left, arguments.right) {
        ([left, right], ..) => return two_sided(kg(*left), kg(*right), arguments, known, system),
        ([one], ..) => {
            let one = kg(*one).show(system, 1);
            return Err(exit::refused(say::one_alone(one)));
        }
        (_, Some(left), Some(right)) => return two_sided(kg(left), kg(right), arguments, known, system),
        _ => {}
    }
    if let Some(now) = arguments.one_side {
        return Ok(Way::OneSide { now: kg(now), before: arguments.before.map(kg) });
    }
    if let Some(whole) = arguments.scale {
        return Ok(Way::Scale(kg(whole)));
    }
    let counts: anyhow::Result<Vec<FrameCount>> =
        arguments.frames.iter().map(|text| frame_count(text, arguments, known)).collect();
    Ok(Way::Frames(counts?))
}

fn two_sided(
    left: Kilogram,
    right: Kilogram,
    arguments: &WeighArguments,
    known: Option<(&Colony, &Hive)>,
    system: System,
) -> anyhow::Result<Way> {
    let length = |written: Written<Metre>| written.read(system);
    let centre_height = match (arguments.centre_height, known) {
        (Some(written), _) => length(written),
        (None, Some((_, hive))) => hive.boxes_height() / 2.0,
        (None, None) => usual_centre_height().map_err(sum::fault)?,
    };
    let width = match (arguments.width, known) {
        (Some(written), _) => length(written),
        (None, Some((_, hive))) => outer_width(&hive.boxes)?,
        (None, None) => outer_width(&boxes(arguments, named(arguments)?).map_err(sum::fault)?)?,
    };
    let (inset, lift) = (length(arguments.inset), length(arguments.lift));
    Ok(Way::TwoSided(TwoSided { left, right, width, inset, lift, centre_height }))
}

fn outer_width(boxes: &[HiveBox]) -> anyhow::Result<Metre> {
    let outer = boxes.first().map(|lowest| lowest.width + 2.0 * lowest.wall.thickness);
    outer.ok_or_else(|| exit::refused(say::width_wanted()))
}

/// Frames as `7.5` or `deep=4`.
fn frame_count(text: &str, arguments: &WeighArguments, known: Option<(&Colony, &Hive)>) -> anyhow::Result<FrameCount> {
    let standard = match known {
        Some((_, hive)) => standard_named(&hive.standard).map_err(sum::fault)?,
        None => named(arguments)?,
    };
    let usual = standard.usual_boxes.first().map_or("brood", String::as_str);
    let (size, frames) = text.split_once('=').unwrap_or((usual, text));
    let wrong = |_| exit::refused(shared::wrong_option("--frames", say::frames_right(), text));
    let frames = plain(frames).map_err(wrong)?;
    let comb_side = box_named(standard, size).map_err(sum::fault)?.comb_side;
    Ok(FrameCount { frames, comb_side })
}

fn tare(arguments: &WeighArguments, known: Option<(&Colony, &Hive)>, system: System) -> anyhow::Result<Tare> {
    if let Some(tare) = arguments.tare {
        return Ok(Tare::Own(tare.read(system)));
    }
    if let Some((_, hive)) = known {
        return Ok(Tare::Parts { boxes: hive.boxes.clone(), lid: hive.lid.clone() });
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
fn hive(arguments: &WeighArguments, known: Option<(&Colony, &Hive)>) -> anyhow::Result<Option<String>> {
    if let Some((_, hive)) = known {
        return Ok(Some(hive.standard.clone()));
    }
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
