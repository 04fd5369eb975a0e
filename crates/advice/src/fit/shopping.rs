//! What to buy for the yard's winter, and what goes to each hive.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use snowhum_units::Kilogram;

use super::{ColonyFit, Look, VerdictKind};
use crate::course::Course;
use crate::finish;
use crate::gifts::Gift;
use crate::shortage::WORTH_FEEDING;
use crate::statistics::rounded;
use crate::sums::feed::{FeedQuestion, Season, feed};
use crate::syrup::Strength;

/// What a feeder holds unless the keeper says, litres (judgement: a small top feeder).
pub const FEEDER_L: f64 = 10.0;
/// The word for feed that is no syrup.
const SOLID: &str = "solid";

/// What the yard needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Shopping {
    /// Hives that are short, in the yard's order.
    pub hives: Vec<HiveFeed>,
    /// Colonies that are short and yet not fed, since they are to be put to others or shaken out.
    pub unfed: Vec<String>,
    /// Sugar for those that still have time for syrup.
    pub sugar_kg: f64,
    /// Syrup from it at 3:2.
    pub syrup_l: f64,
    /// Fondant or candy for those for which it is too late for syrup.
    pub solid_kg: f64,
    /// Fondant to keep at hand until the winter's weighing, for hives whose need is far over the rule.
    pub later_fondant_kg: f64,
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
    /// Who is short and yet not on the list; none where everybody is.
    #[must_use]
    pub fn unfed_say(&self) -> Option<String> {
        let names = self.unfed.join(", ");
        (!names.is_empty()).then(|| {
            format!("Short and yet not on this list, since its bees are to be put to others or shaken out: {names}.")
        })
    }

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
    /// Stores to give now: all of it, or what brings it to a rule that the computed need is far over.
    pub now_kg: f64,
    /// Fondant to keep at hand for the rest, until the winter's weighing.
    pub later_fondant_kg: f64,
    /// What is fed: `3:2` or `solid`. No 1:1 in autumn.
    pub mix: String,
    /// Sugar for as much of it as bees still take as syrup; none where it is fed solid.
    pub sugar_kg: f64,
    /// Water for it.
    pub water_l: f64,
    /// Syrup.
    pub syrup_l: f64,
    /// Fillings of the feeder.
    pub feeder_fills: f64,
    /// The day by which it is finished: the safe one where that can still be; none where it is fed solid.
    pub finish_by: Option<Date>,
    /// Last day to begin with each kind of feeder that is still quick enough.
    pub begin_by: Vec<BeginBy>,
    /// Fondant for what is not fed as syrup: all of it where it is fed solid, else what it is too late for.
    pub fondant_kg: f64,
    /// Damp sugar, set hard, that feeds as much as that fondant, and how thick it lies on the box.
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

    /// Whether it is fed now at all: what has as much as a rule far below its need waits for the winter's weighing.
    #[must_use]
    pub fn is_fed_now(&self) -> bool {
        self.now_kg >= WORTH_FEEDING.get()
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

pub(super) fn of(look: &Look<'_>, colonies: &[ColonyFit]) -> Shopping {
    let late = look.base.question.as_of > look.base.finish_syrup_by.p50;
    // What does not winter in its own hive is not fed in it, nor what waits without a queen for a mild day.
    let goes = |at: &usize| {
        matches!(colonies[*at].verdict.kind, VerdictKind::Unite | VerdictKind::ShakeOut | VerdictKind::Wait)
    };
    let (unfed, fed): (Vec<usize>, Vec<usize>) = look.places().filter(|at| look.is_short(*at)).partition(goes);
    let hives: Vec<HiveFeed> = fed.into_iter().map(|at| hive(look, at)).collect();
    let sum = |of: &dyn Fn(&HiveFeed) -> f64| rounded(hives.iter().map(of).sum(), 1);
    Shopping {
        sugar_kg: sum(&|hive| hive.sugar_kg),
        syrup_l: sum(&|hive| hive.syrup_l),
        solid_kg: sum(&|hive| hive.fondant_kg),
        later_fondant_kg: sum(&|hive| hive.later_fondant_kg),
        spared_kg: sum(&|hive| hive.frames.as_ref().map_or(0.0, |frames| frames.kg)),
        feeder_l: FEEDER_L,
        finish_by: look.base.finish_syrup_by.p10,
        finish_by_half: look.base.finish_syrup_by.p50,
        days_left: look.base.finish_syrup_by.p10.duration_since(look.today()).as_hours() / 24,
        too_late_for_syrup: late,
        unfed: unfed.into_iter().map(|at| look.colony(at).name.clone()).collect(),
        hives,
    }
}

fn hive(look: &Look<'_>, at: usize) -> HiveFeed {
    let over = look.plan(at).over_rule.as_ref();
    let short = Kilogram::new(look.plan(at).shortage_kg);
    let now = over.map_or(short, |over| Kilogram::new(over.first_kg));
    let course = Course::of(look.today(), look.base.finish_syrup_by, now);
    let sugar = course.map_or(Kilogram::new(0.0), |course| course.sugar());
    let syrup_l = course.map_or(0.0, |course| course.litres());
    let [candy, fondant] = solid(look, at, course.map_or(now, |course| course.rest));
    HiveFeed {
        name: look.colony(at).name.clone(),
        short_kg: short.get(),
        now_kg: rounded(now.get(), 1),
        later_fondant_kg: over.map_or(0.0, |over| over.later_fondant_kg),
        mix: if course.is_some() { Strength::ThreeToTwo.words() } else { SOLID }.to_owned(),
        sugar_kg: rounded(sugar.get(), 1),
        water_l: rounded(sugar.get() * Strength::ThreeToTwo.water_per_sugar(), 1),
        syrup_l: rounded(syrup_l, 1),
        feeder_fills: rounded(syrup_l / FEEDER_L, 1),
        finish_by: course.map(|course| course.finish),
        begin_by: course.map(|course| begin_by(&course, look.today())).unwrap_or_default(),
        fondant_kg: rounded(fondant.0, 1),
        candy_kg: rounded(candy.0, 1),
        candy_mm: candy.1,
        frames: look.base.gifts[at].map(|gift| spared(look, gift)),
    }
}

/// The last day to begin a course with each kind of feeder that is quick enough.
fn begin_by(course: &Course, today: Date) -> Vec<BeginBy> {
    let begin = |(feeder, a_day): &(&str, f64)| BeginBy {
        feeder: (*feeder).to_owned(),
        on: finish::begin_by(course.finish, course.litres(), *a_day),
    };
    finish::FEEDERS.iter().map(begin).filter(|begin| begin.on >= today).collect()
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

fn spared(look: &Look<'_>, gift: Gift) -> Spared {
    Spared { from: look.colony(gift.giver).name.clone(), frames: gift.frames, kg: rounded(gift.stores.get(), 1) }
}
