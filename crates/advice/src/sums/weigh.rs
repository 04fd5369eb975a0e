//! A hive weighed: two sides lifted, one side as a trend, frames counted, or a scale.

mod answer;
pub(crate) mod lifting;
mod statics;
mod tare;

pub use answer::{Lifted, Part, Trend, WeighAnswer};
pub use lifting::{Lift, LiftIndex};
pub use statics::TwoSided;

use serde::Deserialize;
use snowhum_apiary::{HiveBox, Layer, food_in};
use snowhum_say::{Message, weigh as say};
use snowhum_units::{Kilogram, Metre, Range, SquareMetre};
use snowhum_winter::Parameter;

use super::{SumFault, shipped, within};
use crate::lifting::{BoxLift, Load, mass_of_bees, stack};
use crate::statistics::rounded;

/// Name and number of the answer's form; the number rises when a key changes.
pub const WEIGH_SCHEMA: &str = "snowhum.weigh/1";

const SHIPPED: &str = include_str!("../../../../data/weighing.toml");

/// Share of the width: a load farther off the middle is rare, so a reading may be wrong (judgement).
const FAR_OFF: f64 = 0.15;

/// Height of a stand where none is told (judgement).
const USUAL_STAND: Metre = Metre::new(0.40);

/// What was weighed and how.
#[derive(Debug, Clone, PartialEq)]
pub struct WeighQuestion {
    /// The way.
    pub way: Way,
    /// The empty hive, if known.
    pub tare: Tare,
    /// Bees, if known.
    pub bees: Option<f64>,
    /// Name of the hive whose combs are counted or whose parts are reckoned.
    pub hive: Option<String>,
    /// Snow, feeder, wrap and whatever else was on the scale.
    pub other: Kilogram,
}

/// A way to weigh.
#[derive(Debug, Clone, PartialEq)]
pub enum Way {
    /// One side lifted, then the other.
    TwoSided(TwoSided),
    /// One side alone: a trend.
    OneSide {
        /// Reading now.
        now: Kilogram,
        /// Reading before, of the same side.
        before: Option<Kilogram>,
    },
    /// The whole hive on a scale.
    Scale(Kilogram),
    /// Frames of capped food counted.
    Frames(Vec<FrameCount>),
}

/// Frames of one size.
#[derive(Debug, Clone, PartialEq)]
pub struct FrameCount {
    /// Full frames, parts of frames added up.
    pub frames: f64,
    /// One face of the comb.
    pub comb_side: SquareMetre,
}

/// The empty hive.
#[derive(Debug, Clone, PartialEq)]
pub enum Tare {
    /// The keeper weighed it.
    Own(Kilogram),
    /// Reckoned from its parts.
    Parts {
        /// Boxes from below.
        boxes: Vec<HiveBox>,
        /// What lies over the frames.
        lid: Vec<Layer>,
    },
    /// Not known.
    Unknown,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Figures {
    reading_error: Parameter,
    inset_error: Parameter,
    lift_error: Parameter,
    centre_error: Parameter,
    centre_unknown: Parameter,
    scale_error: Parameter,
    own_tare_error: Parameter,
    parts_tare_error: Parameter,
    bees_unknown: Parameter,
    bees_error: Parameter,
    frame_count_error: Parameter,
    full_deep: Parameter,
}

/// A weight and its error either way, which holds in eight cases of ten.
#[derive(Debug, Clone, Copy)]
struct Weight {
    kg: f64,
    error_kg: f64,
}

/// Height of the centre of gravity where none is told.
///
/// # Errors
/// When the shipped table cannot be read.
pub fn usual_centre_height() -> Result<Metre, SumFault> {
    Ok(Metre::new(shipped::<Figures>("weighing.toml", SHIPPED)?.centre_unknown.value))
}

/// Answers a weighing.
///
/// # Errors
/// When a figure is no weight or size of a hive, or the hive would tip as told.
pub fn weigh(question: &WeighQuestion) -> Result<WeighAnswer, SumFault> {
    let figures: Figures = shipped("weighing.toml", SHIPPED)?;
    within(say::other(), question.other.get(), 0.0, 50.0)?;
    let mut answer = empty(question, &figures);
    match &question.way {
        Way::TwoSided(lifted) => {
            let whole = two_sided(lifted, &figures)?;
            answer.way = say::two_sided();
            answer.lifted = Some(told(lifted, whole));
            let side = Lift { height: Metre::new(0.40), ..Lift::at_waist(lifted.left.max(lifted.right)) };
            answer.lifts.insert(0, side.judged(say::lift_side()));
            fill(&mut answer, whole, question, &figures)?;
            if answer.lifted.is_some_and(|told| told.off_centre_mm.abs() > FAR_OFF * lifted.width.get() * 1e3) {
                answer.say.push(say::off_middle());
            }
        }
        Way::Scale(whole) => {
            let kg = within(say::whole(), whole.get(), 3.0, 250.0)?;
            answer.way = say::scale();
            fill(&mut answer, Weight { kg, error_kg: figures.scale_error.value }, question, &figures)?;
        }
        Way::OneSide { now, before } => {
            answer.way = say::one_side();
            answer.trend = Some(trend(*now, *before, &figures)?);
            answer.say = answer::one_side();
        }
        Way::Frames(counts) => {
            answer.way = say::counted();
            answer.stores_kg = Some(frames(counts, &figures)?);
            answer.sources = vec![say::sources_comb()];
        }
    }
    Ok(answer)
}

/// The answer before anything is weighed.
fn empty(question: &WeighQuestion, figures: &Figures) -> WeighAnswer {
    let full_deep = Kilogram::new(figures.full_deep.value);
    WeighAnswer {
        schema: WEIGH_SCHEMA.to_owned(),
        way: Message::NONE,
        whole_kg: None,
        lifted: None,
        tare_kg: None,
        tare_parts: Vec::new(),
        bees_kg: None,
        hive: question.hive.clone(),
        other_kg: rounded(question.other.get(), 1),
        stores_kg: None,
        trend: None,
        lifts: vec![
            Lift::at_waist(full_deep).judged(say::lift_waist()),
            Lift::low_with_twist(full_deep).judged(say::lift_low()),
        ],
        say: Vec::new(),
        sources: Vec::new(),
    }
}

/// The whole from two sides, with the errors of everything measured added in squares.
fn two_sided(lifted: &TwoSided, figures: &Figures) -> Result<Weight, SumFault> {
    within(say::left(), lifted.left.get(), 0.5, 120.0)?;
    within(say::right(), lifted.right.get(), 0.5, 120.0)?;
    within(say::width(), lifted.width.get() * 1e3, 150.0, 1_200.0)?;
    within(say::inset(), lifted.inset.get() * 1e3, 0.0, 250.0 * lifted.width.get())?;
    within(say::lift(), lifted.lift.get() * 1e3, 0.0, 80.0)?;
    within(say::centre(), lifted.centre_height.get() * 1e3, 50.0, 1_000.0)?;
    let tips = || SumFault::Contradiction(say::tips());
    let whole = lifted.whole().ok_or_else(tips)?.get();
    let factor = lifted.factor().ok_or_else(tips)?;
    let shift = |changed: TwoSided| changed.whole().map_or(whole, |kg| (kg.get() - whole).abs());
    let errors_kg = [
        factor * figures.reading_error.value * std::f64::consts::SQRT_2,
        shift(TwoSided { inset: lifted.inset + Metre::new(figures.inset_error.value), ..*lifted }),
        shift(TwoSided { lift: lifted.lift + Metre::new(figures.lift_error.value), ..*lifted }),
        shift(TwoSided { centre_height: lifted.centre_height + Metre::new(figures.centre_error.value), ..*lifted }),
    ];
    Ok(Weight { kg: whole, error_kg: together(&errors_kg) })
}

fn told(lifted: &TwoSided, whole: Weight) -> Lifted {
    let sum_kg = (lifted.left + lifted.right).get();
    let millimetres = |length: Metre| rounded(length.get() * 1e3, 0);
    Lifted {
        sum_kg: rounded(sum_kg, 1),
        factor: rounded(whole.kg / sum_kg, 3),
        off_centre_mm: millimetres(lifted.off_centre().unwrap_or(Metre::ZERO)),
        inset_mm: millimetres(lifted.inset),
        lift_mm: millimetres(lifted.lift),
        centre_height_mm: millimetres(lifted.centre_height),
    }
}

/// Takes hive, bees and other weight off the whole.
fn fill(answer: &mut WeighAnswer, whole: Weight, question: &WeighQuestion, figures: &Figures) -> Result<(), SumFault> {
    answer.whole_kg = Some(whole.range());
    answer.say = answer::whole_hive();
    answer.sources = sources(question);
    let tare = match &question.tare {
        Tare::Unknown => {
            answer.say.insert(0, say::no_food());
            return Ok(());
        }
        Tare::Own(tare) => {
            Weight { kg: within(say::empty(), tare.get(), 2.0, 120.0)?, error_kg: figures.own_tare_error.value }
        }
        Tare::Parts { boxes, lid } => {
            answer.tare_parts = tare::parts(boxes, lid);
            let kg: f64 = answer.tare_parts.iter().map(|part| part.kg).sum();
            Weight { kg, error_kg: figures.parts_tare_error.value * kg }
        }
    };
    let bees = bees(question.bees, figures)?;
    let kg = whole.kg - tare.kg - bees.kg - question.other.get();
    let stores = Weight { kg, error_kg: together(&[whole.error_kg, tare.error_kg, bees.error_kg]) };
    if kg + stores.error_kg < 0.0 {
        return Err(SumFault::Contradiction(say::too_light()));
    }
    answer.tare_kg = Some(tare.range());
    answer.bees_kg = Some(bees.range());
    answer.stores_kg = Some(stores.range());
    if let Tare::Parts { boxes, .. } = &question.tare {
        let load = Load { stores: Kilogram::new(stores.kg.max(0.0)), bees: Kilogram::new(bees.kg) };
        let lifts = stack(boxes, USUAL_STAND, load);
        answer.lifts.splice(0..0, lifts.iter().map(own_box));
    }
    Ok(())
}

/// A box of the hive weighed, with the food reckoned from the top down.
fn own_box(lift: &BoxLift) -> LiftIndex {
    LiftIndex {
        what: say::lift_box(lift.place, &lift.size),
        load_kg: lift.load_kg,
        recommended_kg: lift.recommended_kg,
        index: lift.index,
    }
}

fn bees(bees: Option<f64>, figures: &Figures) -> Result<Weight, SumFault> {
    let unknown = &figures.bees_unknown;
    let Some(bees) = bees else {
        let spread = unknown.high.unwrap_or(unknown.value) - unknown.low.unwrap_or(unknown.value);
        return Ok(Weight { kg: unknown.value, error_kg: 0.5 * spread });
    };
    within(say::bees(), bees, 0.0, 100_000.0)?;
    let kg = mass_of_bees(bees)?.get();
    Ok(Weight { kg, error_kg: figures.bees_error.value * kg })
}

fn frames(counts: &[FrameCount], figures: &Figures) -> Result<Range<f64>, SumFault> {
    let mut sum = Weight { kg: 0.0, error_kg: 0.0 };
    for count in counts {
        within(say::frames(), count.frames, 0.0, 60.0)?;
        let food = food_in(count.frames, count.comb_side);
        sum.kg += food.p50.get();
        // What a square decimetre holds is wrong the same way in every frame, so these add up plainly.
        sum.error_kg += 0.5 * (food.p90 - food.p10).get();
    }
    let error_kg = together(&[sum.error_kg, figures.frame_count_error.value * sum.kg]);
    Ok(Weight { error_kg, ..sum }.range())
}

fn trend(now: Kilogram, before: Option<Kilogram>, figures: &Figures) -> Result<Trend, SumFault> {
    within(say::reading(), now.get(), 0.5, 120.0)?;
    Ok(Trend {
        now_kg: rounded(now.get(), 1),
        before_kg: before.map(|before| rounded(before.get(), 1)),
        change_kg: before.map(|before| rounded((now - before).get(), 1)),
        plus_minus_kg: rounded(figures.reading_error.value * std::f64::consts::SQRT_2, 1),
    })
}

fn together(errors_kg: &[f64]) -> f64 {
    errors_kg.iter().map(|error| error * error).sum::<f64>().sqrt()
}

impl Weight {
    fn range(self) -> Range<f64> {
        let at = |kg: f64| rounded(kg.max(0.0), 1);
        Range { p10: at(self.kg - self.error_kg), p50: at(self.kg), p90: at(self.kg + self.error_kg) }
    }
}

fn sources(question: &WeighQuestion) -> Vec<Message> {
    let mut sources = vec![say::sources_lifting()];
    if matches!(question.way, Way::TwoSided(_)) {
        sources.push(say::sources_sides());
    }
    match question.tare {
        Tare::Parts { .. } => sources.push(say::sources_parts()),
        Tare::Own(_) => sources.push(say::sources_own()),
        Tare::Unknown => {}
    }
    if question.bees.is_none() {
        sources.push(say::sources_bees());
    }
    sources
}
