//! What to buy for the yard's winter, and what goes to each hive.

use jiff::civil::Date;
use snowhum_say::Text;
use snowhum_units::Kilogram;

use super::answer::{BeginBy, ColonyFit, FEEDER_L, HiveFeed, SOLID, Shopping, Spared, VerdictKind};
use super::look::Look;
use crate::ahead::gifts::Gift;
use crate::course::Course;
use crate::finish;
use crate::statistics::rounded;
use crate::sums::feed::feed;
use crate::sums::feed::question::{FeedQuestion, Season};
use crate::syrup::Strength;

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
    let begin = |(feeder, a_day): &(Text, f64)| BeginBy {
        feeder: feeder(),
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
