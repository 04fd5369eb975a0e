//! Mites in a sample: how many per 100 bees, how sure, and against which line.

pub(crate) mod answer;
pub(crate) mod lines;
mod season;
mod yard;

pub use answer::{ColonyMites, MissChance, MiteRange, MitesAnswer, Verdict, YardMites};
pub use lines::Line;
pub use season::SeasonDays;

use jiff::civil::Date;
use serde::Deserialize;
use snowhum_apiary::{Apiary, MiteCount};
use snowhum_say::{Message, mites as say};
use snowhum_units::Same;
use snowhum_winter::Parameter;
use std::sync::LazyLock;

use super::intervals::{self, Interval};
use super::{SumFault, shipped, within};
use crate::seasons::season_month;
use crate::site::figures::mite_region;
use crate::statistics::rounded;

/// Name and number of the answer's form; the number rises when a key changes.
pub const MITES_SCHEMA: &str = "snowhum.mites/1";

const SHIPPED: &str = include_str!("../../../../data/mites.toml");

/// What was counted, how and when.
#[derive(Debug, Clone, PartialEq)]
pub struct MitesQuestion {
    /// Each colony's sample; at least one.
    pub samples: Vec<Sample>,
    /// Region whose line is wanted.
    pub region: Option<String>,
    /// Month of the year, 1 to 12, in the northern hemisphere's seasons.
    pub month: Option<i8>,
}

/// One colony's sample.
#[derive(Debug, Clone, PartialEq)]
pub struct Sample {
    /// The colony's name.
    pub colony: String,
    /// Mites found.
    pub found: u32,
    /// What they were found on.
    pub by: Counted,
}

/// How mites were counted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Counted {
    /// Bees washed, in alcohol or soap.
    Wash {
        /// Bees in the sample.
        bees: u32,
    },
    /// Bees rolled in powdered sugar.
    Roll {
        /// Bees in the sample.
        bees: u32,
    },
    /// A board under the hive for some days.
    Board {
        /// Days it lay there.
        days: f64,
    },
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Figures {
    recovery_wash: Parameter,
    recovery_roll: Parameter,
    evenness: Parameter,
    prior_mites: Parameter,
    prior_clean: Parameter,
    line: Vec<Line>,
}

/// The last count of each colony, of the yard file or noted since; none where nobody counted. Unless a region or month is given, the line is that of the
/// site's region in the month of the newest count. What a treatment can still do is said by the site's own days where they
/// are given, else by the month, which is that of the day the yard was looked at unless another is given.
#[must_use]
pub fn of_yard(
    apiary: &Apiary,
    region: Option<String>,
    month: Option<i8>,
    days: Option<&SeasonDays>,
) -> Option<Result<MitesAnswer, SumFault>> {
    let mut newest = None;
    let mut samples = Vec::new();
    for colony in &apiary.colonies {
        let Some(MiteCount { found, bees, on }) = apiary.last_mite_count(colony, Date::MAX) else { continue };
        newest = newest.max(Some(on));
        samples.push(Sample { colony: colony.name.clone(), found, by: Counted::Wash { bees } });
    }
    let month_of = |day| season_month(day, apiary.site.latitude.get());
    let region = region.or_else(|| mite_region(&apiary.site));
    let question = MitesQuestion { samples, region, month: month.or(Some(month_of(newest?))) };
    let answer = mites(&question).map(|mut answer| {
        let by_month = || season::by_month(month.or(Some(month_of(apiary.as_of))));
        let season = days.map_or_else(by_month, SeasonDays::says);
        answer.say = answer::say(&answer.colonies, season, false);
        answer.yard = yard::yard(&answer.colonies, &answer.line, Some(apiary.colonies.len()));
        answer
    });
    Some(answer)
}

/// The line for washed bees in a region and month; the general one where the region has none.
pub(crate) fn line_for(region: Option<&str>, month: i8) -> Option<Line> {
    // Asked for every colony of every estimate: the table is read once.
    static FIGURES: LazyLock<Option<Figures>> = LazyLock::new(|| shipped("mites.toml", SHIPPED).ok());
    lines::chosen(&FIGURES.as_ref()?.line, region, Some(month), false).ok().map(|(line, _)| line)
}

/// Answers a count.
///
/// # Errors
/// When a sample has no bees or days, colonies were counted in two ways, or the region is not known.
pub fn mites(question: &MitesQuestion) -> Result<MitesAnswer, SumFault> {
    let figures: Figures = shipped("mites.toml", SHIPPED)?;
    let Some(first) = question.samples.first() else {
        return Err(SumFault::Contradiction(say::no_sample()));
    };
    if question.samples.iter().any(|s| std::mem::discriminant(&s.by) != std::mem::discriminant(&first.by)) {
        return Err(SumFault::Contradiction(say::two_ways()));
    }
    let board = matches!(first.by, Counted::Board { .. });
    let (line, other_lines) = lines::chosen(&figures.line, question.region.as_deref(), question.month, board)?;
    let colonies: Vec<ColonyMites> =
        question.samples.iter().map(|sample| colony(sample, &line, &figures)).collect::<Result<_, _>>()?;
    Ok(MitesAnswer {
        schema: MITES_SCHEMA.to_owned(),
        method: first.by.words(),
        unit: if board { say::a_day() } else { say::per_100_bees() },
        yard: yard::yard(&colonies, &line, None),
        say: answer::say(&colonies, season::by_month(question.month), board),
        cautions: answer::cautions(&colonies),
        sources: sources(&figures, first.by, &line),
        colonies,
        line,
        other_lines,
    })
}

impl Counted {
    /// The method in the trade's words.
    #[must_use]
    pub fn words(self) -> Message {
        match self {
            Self::Wash { .. } => say::wash(),
            Self::Roll { .. } => say::roll(),
            Self::Board { .. } => say::board(),
        }
    }
}

fn colony(sample: &Sample, line: &Line, figures: &Figures) -> Result<ColonyMites, SumFault> {
    match sample.by {
        Counted::Wash { bees } | Counted::Roll { bees } => {
            within(say::bees_in_sample(), f64::from(bees), 20.0, 10_000.0)?;
            if sample.found > 20 * bees {
                return Err(SumFault::Contradiction(say::swapped(bees, sample.found)));
            }
            Ok(of_bees(sample, bees, line, figures))
        }
        Counted::Board { days } => {
            within(say::days_of_board(), days, 0.2, 60.0)?;
            within(say::on_board(), f64::from(sample.found), 0.0, 100_000.0)?;
            Ok(of_board(sample, days, line, figures))
        }
    }
}

fn of_bees(sample: &Sample, bees: u32, line: &Line, figures: &Figures) -> ColonyMites {
    let scale = 100.0 / f64::from(bees);
    let recovery = match sample.by {
        Counted::Roll { .. } => &figures.recovery_roll,
        _ => &figures.recovery_wash,
    };
    let mut one = counted(sample, scale, line, figures);
    one.bees = Some(bees);
    one.mites_per_100_bees = Some(one.rate);
    let percent = |interval: Interval| interval.map(|share| rounded(100.0 * share, 2));
    one.clopper_pearson_per_100_bees = intervals::clopper_pearson(sample.found, bees).map(percent);
    one.wilson_per_100_bees = intervals::wilson(sample.found, bees).map(percent);
    let even = intervals::clopper_pearson(sample.found, bees)
        .map_or_else(|| intervals::garwood(sample.found).map(|m| m * scale), |share| share.map(|s| 100.0 * s));
    one.even = even.map(|rate| rounded(rate, 2));
    let (low, high) = (recovery.low.unwrap_or(recovery.value), recovery.high.unwrap_or(recovery.value));
    one.corrected_per_100_bees = Some(MiteRange {
        estimate: rounded(f64::from(sample.found) * scale / recovery.value, 2),
        low: rounded(even.low / high, 2),
        high: rounded(even.high / low, 2),
    });
    let prior = [figures.prior_mites.value, figures.prior_clean.value];
    let chance = intervals::chance_above(line.value[1] / 100.0, sample.found, bees, prior);
    one.chance_over_line_if_even = chance.map(|chance| rounded(chance, 3));
    let uneven =
        intervals::uneven_chance_above(line.value[1] / 100.0, sample.found, bees, prior, figures.evenness.value);
    one.chance_over_line = Some(rounded(uneven, 3));
    one.clean_sample_misses = [1.0, 2.0, 3.0].map(|rate| miss(rate, bees, figures.evenness.value)).to_vec();
    one
}

fn of_board(sample: &Sample, days: f64, line: &Line, figures: &Figures) -> ColonyMites {
    let mut one = counted(sample, 1.0 / days, line, figures);
    one.days = Some(days);
    one.mites_per_day = Some(one.rate);
    one
}

/// What holds for every way of counting: the rate, its even and uneven interval, the verdict.
fn counted(sample: &Sample, scale: f64, line: &Line, figures: &Figures) -> ColonyMites {
    let rate = f64::from(sample.found) * scale;
    let uneven = intervals::uneven(sample.found, figures.evenness.value).map(|mean| mean * scale);
    let round = |mean: f64| rounded(mean * scale, 2);
    ColonyMites {
        name: sample.colony.clone(),
        found: sample.found,
        bees: None,
        days: None,
        rate: rounded(rate, 2),
        mites_per_100_bees: None,
        mites_per_day: None,
        clopper_pearson_per_100_bees: None,
        wilson_per_100_bees: None,
        even: intervals::garwood(sample.found).map(round),
        uneven: uneven.map(|rate| rounded(rate, 2)),
        corrected_per_100_bees: None,
        chance_over_line: None,
        chance_over_line_if_even: None,
        clean_sample_misses: Vec::new(),
        verdict: Verdict::of(rate, uneven, line.value),
    }
}

/// Chance that a sample finds no mite where there truly are `rate` per 100 bees.
fn miss(rate: f64, bees: u32, evenness: f64) -> MissChance {
    let share = rate / 100.0;
    MissChance {
        true_mites_per_100_bees: rate,
        even: rounded((1.0 - share).same_powf(f64::from(bees)), 4),
        uneven: rounded((1.0 + share * f64::from(bees) / evenness).same_powf(-evenness), 4),
    }
}

/// Where the answer comes from.
fn sources(figures: &Figures, by: Counted, line: &Line) -> Vec<Message> {
    let found = match by {
        Counted::Wash { .. } => Some(&figures.recovery_wash),
        Counted::Roll { .. } => Some(&figures.recovery_roll),
        Counted::Board { .. } => None,
    };
    let mut sources = vec![
        say::sources_intervals(),
        say::sources_unevenness(figures.evenness.value, &figures.evenness.source),
        say::sources_line(line.region(), &line.source),
    ];
    sources.extend(found.map(|share| say::sources_found(&share.source)));
    sources.push(say::sources_sampling());
    sources
}
