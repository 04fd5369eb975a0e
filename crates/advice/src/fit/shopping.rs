//! What to buy for the yard's winter, and what goes to each hive.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::Kilogram;

use super::{Look, health};
use crate::actions::feed::{MOST_FRAMES, frames_fit, full_frame, spare};
use crate::finish;
use crate::statistics::rounded;
use crate::sums::feed::{FeedQuestion, Season, feed};
use crate::syrup::{Strength, sugar_for};

/// What a feeder holds unless the keeper says, litres (judgement: a small top feeder).
pub const FEEDER_L: f64 = 10.0;
/// Least shortage worth feeding for, kg.
const LEAST: f64 = 0.5;
/// The word for feed that is no syrup.
const SOLID: &str = "solid";

/// What the yard needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Shopping {
    /// Hives that are short, in the yard's order.
    pub hives: Vec<HiveFeed>,
    /// Sugar for those that still have time for syrup.
    pub sugar_kg: f64,
    /// Syrup from it at 3:2.
    pub syrup_l: f64,
    /// Fondant or candy for those for which it is too late for syrup.
    pub solid_kg: f64,
    /// Stores that frames from heavy hives can give in its place.
    pub spared_kg: f64,
    /// What a feeder is taken to hold.
    pub feeder_l: f64,
    /// By when syrup must be finished to be safe: in time in nine years of ten.
    pub finish_by: Date,
    /// The day that is in time in half of all years.
    pub finish_by_half: Date,
    /// Days from the plan's first day to the safe one; negative once it is past.
    pub days_left: i64,
    /// Whether even the day of half of all years is past.
    pub too_late_for_syrup: bool,
}

impl Shopping {
    /// The same for a feeder that holds so many litres.
    #[must_use]
    pub fn with_feeder(&self, feeder_l: f64) -> Self {
        let mut list = self.clone();
        list.feeder_l = feeder_l;
        for hive in &mut list.hives {
            hive.feeder_fills = rounded(hive.syrup_l / feeder_l, 1);
        }
        list
    }
}

/// What one hive needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HiveFeed {
    /// The colony.
    pub name: String,
    /// Stores that are short.
    pub short_kg: f64,
    /// What is fed: `3:2` or `solid`. No 1:1 in autumn.
    pub mix: String,
    /// Sugar for it as syrup.
    pub sugar_kg: f64,
    /// Water for it.
    pub water_l: f64,
    /// Syrup.
    pub syrup_l: f64,
    /// Fillings of the feeder.
    pub feeder_fills: f64,
    /// Last day to begin with each kind of feeder that is still quick enough.
    pub begin_by: Vec<BeginBy>,
    /// Fondant that feeds as much.
    pub fondant_kg: f64,
    /// Damp sugar, set hard, that feeds as much, and how thick it lies on the box.
    pub candy_kg: f64,
    /// Thickness of that.
    pub candy_mm: f64,
    /// Frames of sealed stores that a heavy healthy hive of the yard can give; each is counted once.
    pub frames: Option<Spared>,
}

impl HiveFeed {
    /// Whether it is fed solid.
    #[must_use]
    pub fn is_solid(&self) -> bool {
        self.mix == SOLID
    }
}

/// The last day to begin with a kind of feeder.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BeginBy {
    /// The feeder.
    pub feeder: String,
    /// The day.
    pub on: Date,
}

/// Frames from a heavy hive.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Spared {
    /// The giver.
    pub from: String,
    /// Frames.
    pub frames: usize,
    /// What they hold.
    pub kg: f64,
}

pub(super) fn of(look: &Look<'_>) -> Shopping {
    let late = look.base.question.as_of > look.base.finish_syrup_by.p50;
    let mut hives: Vec<(usize, HiveFeed)> =
        look.places().filter(|at| look.plan(*at).shortage_kg >= LEAST).map(|at| (at, hive(look, at, late))).collect();
    give_frames(look, &mut hives);
    let hives: Vec<HiveFeed> = hives.into_iter().map(|(_, hive)| hive).collect();
    let sum = |of: &dyn Fn(&HiveFeed) -> f64| rounded(hives.iter().map(of).sum(), 1);
    Shopping {
        sugar_kg: sum(&|hive| if hive.is_solid() { 0.0 } else { hive.sugar_kg }),
        syrup_l: sum(&|hive| if hive.is_solid() { 0.0 } else { hive.syrup_l }),
        solid_kg: sum(&|hive| if hive.is_solid() { hive.fondant_kg } else { 0.0 }),
        spared_kg: sum(&|hive| hive.frames.as_ref().map_or(0.0, |frames| frames.kg)),
        feeder_l: FEEDER_L,
        finish_by: look.base.finish_syrup_by.p10,
        finish_by_half: look.base.finish_syrup_by.p50,
        days_left: look.base.finish_syrup_by.p10.duration_since(look.today()).as_hours() / 24,
        too_late_for_syrup: late,
        hives,
    }
}

fn hive(look: &Look<'_>, at: usize, late: bool) -> HiveFeed {
    let short = Kilogram::new(look.plan(at).shortage_kg);
    let sugar = sugar_for(short);
    let syrup_l = Strength::ThreeToTwo.syrup_with(sugar).get() * 1e3;
    let begin = |(feeder, a_day): &(&str, f64)| BeginBy {
        feeder: (*feeder).to_owned(),
        on: finish::begin_by(look.base.finish_syrup_by.p10, syrup_l, *a_day),
    };
    let begin_by: Vec<BeginBy> = finish::FEEDERS.iter().map(begin).filter(|begin| begin.on >= look.today()).collect();
    let [candy, fondant] = solid(look, at, short);
    HiveFeed {
        name: look.colony(at).name.clone(),
        short_kg: short.get(),
        // Where no feeder is quick enough any more, syrup is too late for this hive though not for the yard.
        mix: if late || begin_by.is_empty() { SOLID } else { Strength::ThreeToTwo.words() }.to_owned(),
        sugar_kg: rounded(sugar.get(), 1),
        water_l: rounded(sugar.get() * Strength::ThreeToTwo.water_per_sugar(), 1),
        syrup_l: rounded(syrup_l, 1),
        feeder_fills: rounded(syrup_l / FEEDER_L, 1),
        begin_by,
        fondant_kg: rounded(fondant.0, 1),
        candy_kg: rounded(candy.0, 1),
        candy_mm: candy.1,
        frames: None,
    }
}

/// Damp sugar and fondant that feed as much as `short`: weight and thickness over the hive's top box.
fn solid(look: &Look<'_>, at: usize, short: Kilogram) -> [(f64, f64); 2] {
    let hive = &look.housed(at).hive;
    let answer = hive.boxes.last().and_then(|top| {
        let question = FeedQuestion {
            short,
            season: Season::Winter,
            as_of: None,
            syrup_by: None,
            feeder: None,
            hive: hive.standard.clone(),
            hive_box: top.clone(),
            slab: None,
        };
        feed(&question).ok()
    });
    let kind = |at: usize| {
        answer.as_ref().and_then(|answer| answer.solid.get(at)).map_or((0.0, 0.0), |kind| (kind.kg, kind.thickness_mm))
    };
    [kind(0), kind(2)]
}

/// Shares out the frames that heavy healthy hives can spare, the shortest hive first, each frame once.
fn give_frames(look: &Look<'_>, hives: &mut [(usize, HiveFeed)]) {
    let mut given = vec![0.0; look.base.housed.len()];
    let mut order: Vec<usize> = (0..hives.len()).collect();
    order.sort_by(|a, b| hives[*b].1.short_kg.total_cmp(&hives[*a].1.short_kg));
    for place in order {
        let (taker, feed) = &mut hives[place];
        let Some(frame) = full_frame(look.base, *taker).filter(|frame| frame.get() > 0.0) else { continue };
        let left =
            |giver: usize| spare(look.base, giver, Kilogram::new(frame.get())) as f64 - given[giver] / frame.get();
        let can_give = |giver: &usize| {
            frames_fit(look.base, *giver, *taker)
                && health::may_give_and_take(look, *giver)
                && look.plan(*giver).alive_in_spring > 0.8
                && left(*giver) >= 1.0
        };
        let Some(giver) = look.places().filter(can_give).max_by(|a, b| left(*a).total_cmp(&left(*b))) else { continue };
        let wanted = ((feed.short_kg / frame.get()).ceil() as usize).clamp(1, MOST_FRAMES);
        let frames = wanted.min(left(giver).floor() as usize);
        let kg = frame.get() * frames as f64;
        given[giver] += kg;
        feed.frames = Some(Spared { from: look.colony(giver).name.clone(), frames, kg: rounded(kg, 1) });
    }
}
