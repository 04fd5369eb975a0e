//! From the honey harvest to the last hive wrapped.

use snowhum_say::{Message, jobs as say};
use snowhum_units::Kelvin;
use snowhum_winter::Status;

use super::answer::{JobWindow, Kind, Trigger};
use super::ground::Ground;
use super::indoors::{self, Way};
use super::window::{degrees, trigger, window};
use super::year::{SiteDay, falls_below, first_of_autumn, flying_over, frosts};
use crate::cautions::Hazard;
use crate::dates::Dates;
use crate::finish::{RIPENING, TAKEN_FROM, WINDOW};
use crate::rules;

/// Days that stand for a week and a fortnight.
const WEEK: usize = 7;
const FORTNIGHT: usize = 14;

fn high(day: &SiteDay) -> f64 {
    day.high
}

fn low(day: &SiteDay) -> f64 {
    day.low
}

fn mean(day: &SiteDay) -> f64 {
    day.mean
}

/// The windows of autumn.
pub(super) fn windows(ground: &Ground<'_>) -> Vec<JobWindow> {
    let feeding = Feeding::of(ground);
    let mut windows = mites(ground, &feeding);
    windows.extend(food(ground, &feeding));
    windows.extend(hive(ground));
    windows.extend(frost(ground));
    windows.push(wrap(ground));
    windows.extend(moves(ground));
    windows
}

/// The days that the end of summer hangs on.
struct Feeding {
    /// Bees no longer take syrup.
    taken_until: Dates,
    /// Syrup is fed, carried down and capped.
    finished: Dates,
    /// Feeding begins.
    begun: Dates,
    /// Mites must be falling.
    treated: Dates,
    /// Supers are off.
    honey_off: Dates,
}

impl Feeding {
    fn of(ground: &Ground<'_>) -> Self {
        let t = ground.question.triggers;
        let taken_until = ground.year.when(|path| falls_below(path, WINDOW, TAKEN_FROM.celsius(), high)).moved(-1.0);
        let finished = taken_until.moved(-(RIPENING as f64));
        let begun = finished.moved(-t.feeding_days.value);
        let brood_ends = ground.year.when(|path| falls_below(path, FORTNIGHT, t.brood_ends_air.value, mean));
        let shorter = ground.year.light(0, |light| light < t.winter_bees_light.value);
        let treated = brood_ends.moved(-t.winter_bees_days.value).earlier(&ground.year.always(shorter));
        let honey_off = treated.earlier(&begun);
        Self { taken_until, finished, begun, treated, honey_off }
    }
}

/// Mites and the honey that must be off for them.
fn mites(ground: &Ground<'_>, feeding: &Feeding) -> Vec<JobWindow> {
    let (t, first) = (ground.question.triggers, ground.year.first());
    let winter_bees = || {
        let words =
            say::winter_bees_waits(degrees(&t.brood_ends_air), t.winter_bees_days.value, t.winter_bees_light.value);
        trigger("winter_bees_days", &t.winter_bees_days, words)
    };
    let days = &t.count_before_days;
    let count = feeding.treated.moved(-days.value);
    let before = trigger("count_before_days", days, say::mite_count_summer_waits(days.value));
    let until = say::mite_count_autumn_waits(TAKEN_FROM);
    vec![
        window("mite-count-summer", say::mite_count_summer(), Kind::By, (&count, first), before)
            .why(say::mite_count_summer_why()),
        window("honey-off", say::honey_off(), Kind::By, (&feeding.honey_off, first), winter_bees())
            .why(say::honey_off_why())
            .others(say::honey_off_others()),
        window("treat-mites", say::treat_mites(), Kind::By, (&feeding.treated, first), winter_bees())
            .why(say::treat_mites_why())
            .believed(say::treat_mites_belief(), say::treat_mites_so())
            .caution(&[Hazard::Label, Hazard::Acids]),
        window("mite-count-autumn", say::mite_count_autumn(), Kind::By, (&feeding.taken_until, first), syrup(until))
            .why(say::mite_count_autumn_why()),
    ]
}

/// What the end of syrup goes by.
fn syrup(words: Message) -> Trigger {
    Trigger { words, value: TAKEN_FROM.celsius(), figure: None, source: say::source_syrup(), status: Status::Published }
}

fn food(ground: &Ground<'_>, feeding: &Feeding) -> Vec<JobWindow> {
    let (t, first) = (ground.question.triggers, ground.year.first());
    let custom = rules::feeding_custom(&ground.question.apiary.site).map(say::syrup_finished_custom);
    let begin = || trigger("feeding_days", &t.feeding_days, say::feeding_waits(t.feeding_days.value));
    let finished = syrup(say::syrup_finished_waits(TAKEN_FROM, RIPENING));
    vec![
        window("feed-begun", say::feed_begun(), Kind::By, (&feeding.begun, first), begin())
            .why(say::feed_begun_why())
            .caution(&[Hazard::HotSugar]),
        window("entrance-reduced", say::entrance_reduced(), Kind::By, (&feeding.begun, first), begin())
            .why(say::entrance_reduced_why())
            .caution(&[Hazard::Robbing]),
        window("syrup-finished", say::syrup_finished(), Kind::By, (&feeding.finished, first), finished)
            .why(say::syrup_finished_why())
            .others(Message::sentences([say::syrup_finished_others(), custom.unwrap_or_default()]))
            .believed(say::syrup_finished_belief(), say::syrup_finished_so()),
    ]
}

/// The hive made ready while combs can still be lifted.
fn hive(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, first) = (ground.question.triggers, ground.year.first());
    let cluster = ground.year.when(|path| falls_below(path, WEEK, t.cluster_air.value, mean));
    let combs = ground.year.when(|path| falls_below(path, WEEK, t.comb_air.value, high));
    let clusters = trigger("cluster_air", &t.cluster_air, say::excluder_out_waits(degrees(&t.cluster_air)));
    let lifted = || trigger("comb_air", &t.comb_air, say::combs_waits(degrees(&t.comb_air)));
    vec![
        window("excluder-out", say::excluder_out(), Kind::By, (&cluster, first), clusters).why(say::excluder_out_why()),
        window("consolidate", say::consolidate(), Kind::By, (&combs, first), lifted())
            .why(say::consolidate_why())
            .others(say::consolidate_others())
            .caution(&[Hazard::Lifting]),
        window("top-and-straps", say::top_and_straps(), Kind::By, (&combs, first), lifted())
            .why(say::top_and_straps_why()),
    ]
}

/// What the first frosts ask for.
fn frost(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year, first) = (ground.question.triggers, &ground.year, ground.year.first());
    let frost = year.when(|path| first_of_autumn(path, |day| low(day) < 0.0));
    let guard = year.when(|path| frosts(path, t.frost_nights.value as usize));
    let guard_late = year.when(|path| falls_below(path, WEEK, t.guard_late_high.value, high)).at(0.5, first);
    let nights = trigger("frost_nights", &t.frost_nights, say::mouse_guard_waits(t.frost_nights.value));
    let late = degrees(&t.guard_late_high);
    vec![
        window("bear-fence-on", say::bear_fence_on(), Kind::By, (&frost, first), first_frost())
            .why(say::bear_fence_on_why())
            .caution(&[Hazard::Fence]),
        window("mouse-guard", say::mouse_guard(), Kind::By, (&guard, first), nights)
            .why(say::mouse_guard_why())
            .others(
                guard_late.map_or_else(|| say::mouse_guard_others(late), |on| say::mouse_guard_others_about(late, on)),
            ),
    ]
}

/// The wrap.
fn wrap(ground: &Ground<'_>) -> JobWindow {
    let (t, year) = (ground.question.triggers, &ground.year);
    let wrap = year.when(|path| falls_below(path, FORTNIGHT, t.wrap_mean.value, mean));
    let falls = trigger("wrap_mean", &t.wrap_mean, say::fortnight_falls(degrees(&t.wrap_mean)));
    window("wrap", say::wrap(), Kind::From, (&wrap, year.first()), falls)
        .why(say::wrap_why())
        .others(say::wrap_others(Kelvin::from_celsius(-10.0)))
}

/// Hives that are moved for winter.
fn moves(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year, first) = (ground.question.triggers, &ground.year, ground.year.first());
    let over = year.when(|path| flying_over(path, t.flying_over_high.value));
    let cellar = year.when(|path| falls_below(path, FORTNIGHT, t.cellar_mean.value, mean));
    let flown = say::winter_yard_waits(degrees(&t.flying_over_high));
    let flown = trigger("flying_over_high", &t.flying_over_high, flown);
    let falls = trigger("cellar_mean", &t.cellar_mean, say::fortnight_falls(degrees(&t.cellar_mean)));
    let into = window("cellar-in", say::cellar_in(), Kind::From, (&cellar, first), falls)
        .why(say::cellar_in_why())
        .caution(&[Hazard::Carrying]);
    let yard = window("winter-yard", say::winter_yard(), Kind::From, (&over, first), flown)
        .why(say::winter_yard_why())
        .caution(&[Hazard::Carrying]);
    std::iter::once(yard).chain(indoors::carried(ground, Way::In, into)).collect()
}

/// Frost at nought.
fn first_frost() -> Trigger {
    Trigger {
        words: say::bear_fence_on_waits(),
        value: 0.0,
        figure: None,
        source: say::source_none(),
        status: Status::FromMemory,
    }
}
