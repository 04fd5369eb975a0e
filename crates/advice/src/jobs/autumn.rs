//! From the honey harvest to the last hive wrapped.

use snowhum_say::Tongue;
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
use crate::words::day;

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
    let (t, first, system) = (ground.question.triggers, ground.year.first(), ground.question.system);
    let winter_bees = || {
        let words = format!(
            "{:.0} days before the mean of a fortnight falls below {} and little brood is begun; or days shorter than {:.0} \
             hours, if that comes first.",
            t.winter_bees_days.value,
            degrees(t.brood_ends_air.value, system),
            t.winter_bees_light.value
        );
        trigger("winter_bees_days", &t.winter_bees_days, words)
    };
    let count = feeding.treated.moved(-t.count_before_days.value);
    let before = trigger(
        "count_before_days",
        &t.count_before_days,
        format!("{:.0} days before the treatment that spares the winter bees.", t.count_before_days.value),
    );
    vec![
        window("mite-count-summer", "Count mites in every hive", Kind::By, (&count, first), before)
            .why("A count now says whether honey can stay on. A mean over the yard hides the worst hive."),
        window("honey-off", "Honey off", Kind::By, (&feeding.honey_off, first), winter_bees())
            .why("Supers stand in the way of most treatments and of winter feed; the earlier of the two decides here.")
            .others(
                "Where the main flow ends later, from lime, goldenrod or heather, honey comes off when it ends and the \
                 treatment goes on the same week: each week later rears more winter bees among mites. Where it ends \
                 sooner, so does the waiting.",
            ),
        window("treat-mites", "Mite treatment begun", Kind::By, (&feeding.treated, first), winter_bees())
            .why(
                "Bees raised from now on must live until spring. A later treatment protects the neighbours and next \
                 year, but not bees already hurt.",
            )
            .believed(
                "Treating in November is enough.",
                "By then the winter bees have been raised, harmed or not; the broodless treatment follows this one and \
                 does not replace it.",
            )
            .caution(&[Hazard::Label, Hazard::Acids]),
        window("mite-count-autumn", "Count mites again", Kind::By, (&feeding.taken_until, first), syrup(ground, 0))
            .why("Robbers bring mites home from dying hives. After this day hives are not opened for a sample."),
    ]
}

/// What the end of syrup goes by; `days` before it.
fn syrup(ground: &Ground<'_>, days: i64) -> Trigger {
    let limit = degrees(TAKEN_FROM.celsius(), ground.question.system);
    let fall = format!("the warmest hours of a fortnight stay below {limit} on average and bees hardly take syrup");
    Trigger {
        words: if days == 0 { format!("When {fall}.") } else { format!("{days} days before {fall}.") },
        value: TAKEN_FROM.celsius(),
        figure: None,
        source: "55 °F: Ontario beekeeping extension leaflet; three weeks to cure: Finnish beekeepers' leaflet"
            .to_owned(),
        status: Status::Published,
    }
}

fn food(ground: &Ground<'_>, feeding: &Feeding) -> Vec<JobWindow> {
    let (t, first) = (ground.question.triggers, ground.year.first());
    let custom = rules::feeding_custom(&ground.question.apiary.site);
    let begin = || {
        let words = format!("{:.0} days of feeding before syrup must be finished.", t.feeding_days.value);
        trigger("feeding_days", &t.feeding_days, words)
    };
    vec![
        window("feed-begun", "Begin winter feeding", Kind::By, (&feeding.begun, first), begin())
            .why("Syrup must be finished in time, not begun in time; a big shortage in a small feeder takes weeks.")
            .caution(&[Hazard::HotSugar]),
        window("entrance-reduced", "Reduce entrances", Kind::By, (&feeding.begun, first), begin())
            .why("Feed draws robbers and wasps; nuclei and weak hives first.")
            .caution(&[Hazard::Robbing]),
        window(
            "syrup-finished",
            "Syrup finished and capped",
            Kind::By,
            (&feeding.finished, first),
            syrup(ground, RIPENING),
        )
        .why("Thin food that is not cured and capped ferments. Feeders and empty supers come off with it.")
        .others(format!(
            "Some feed fondant as the main autumn food: it is eaten rather than stored and can go on later.{}",
            custom.map_or_else(String::new, |custom| format!(" {}", Tongue::BRITISH.say(&custom)))
        ))
        .believed(
            "Syrup in January helps.",
            "Clustered bees neither take it nor cure it, and wet chills them. Too late for syrup means fondant, \
                 candy or combs of food.",
        ),
    ]
}

/// The hive made ready while combs can still be lifted.
fn hive(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, first, system) = (ground.question.triggers, ground.year.first(), ground.question.system);
    let cluster = ground.year.when(|path| falls_below(path, WEEK, t.cluster_air.value, mean));
    let combs = ground.year.when(|path| falls_below(path, WEEK, t.comb_air.value, high));
    let clusters = format!("A week's mean falls below {}: bees cluster.", degrees(t.cluster_air.value, system));
    let lifted = || {
        let words = format!("A week's warmest hours fall below {} on average.", degrees(t.comb_air.value, system));
        trigger("comb_air", &t.comb_air, words)
    };
    vec![
        window("excluder-out", "Queen excluder out", Kind::By, (&cluster, first), trigger("cluster_air", &t.cluster_air, clusters))
            .why("The cluster moves up through winter; a queen left below an excluder dies there."),
        window("consolidate", "Boxes to fit the bees", Kind::By, (&combs, first), lifted())
            .why("The last day for lifting combs: as many boxes as the bees fill, food above and beside them. An empty box \
                 above the cluster is a cold attic.")
            .others("How many boxes differs: in Britain the space is shrunk to the bees; Minnesota winters in three deeps.")
            .caution(&[Hazard::Lifting]),
        window("top-and-straps", "Warm lid, tilt, straps", Kind::By, (&combs, first), lifted()).why(
            "Insulation on the lid keeps water from forming over the cluster; a tilt forward lets it run out; straps hold in winter storms \
             and on ground that heaves.",
        ),
    ]
}

/// What the first frosts ask for.
fn frost(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let first = year.first();
    let frost = year.when(|path| first_of_autumn(path, |day| low(day) < 0.0));
    let guard = year.when(|path| frosts(path, t.frost_nights.value as usize));
    let guard_late = year.when(|path| falls_below(path, WEEK, t.guard_late_high.value, high)).at(0.5, first);
    let nights = format!("{:.0} nights of frost in a fortnight: mice come in.", t.frost_nights.value);
    let first_frost = "The first night of frost; bears eat most before winter.".to_owned();
    let late = guard_late
        .map_or_else(String::new, |late| format!(", about {} here, so that no pollen is scraped off", day(late)));
    vec![
        window("bear-fence-on", "Bear fence on, if needed", Kind::By, (&frost, first), frost_trigger(first_frost))
            .why("A bear that has fed once comes back. Test the fence with a meter.")
            .caution(&[Hazard::Fence]),
        window(
            "mouse-guard",
            "Mouse guard on",
            Kind::By,
            (&guard, first),
            trigger("frost_nights", &t.frost_nights, nights),
        )
        .why("Before the mouse is in; look first that none is. A slot of 8 mm or less, and wide enough not to clog.")
        .others(format!(
            "In Finland guards go on when days stay below {}{late}.",
            degrees(t.guard_late_high.value, system)
        )),
    ]
}

/// The wrap.
fn wrap(ground: &Ground<'_>) -> JobWindow {
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let first = year.first();
    let wrap = year.when(|path| falls_below(path, FORTNIGHT, t.wrap_mean.value, mean));
    let wrapped = format!("The mean of a fortnight falls below {}.", degrees(t.wrap_mean.value, system));
    window("wrap", "Wrap on", Kind::From, (&wrap, first), trigger("wrap_mean", &t.wrap_mean, wrapped))
        .why("Wrapped too early, bees are kept warm and brood late. The lid matters more than the sides. A wrap or a net \
              held off the walls keeps woodpeckers out too.")
        .others(format!(
            "In Manitoba wraps wait for nights of {} and days below freezing; many hives are never wrapped.",
            degrees(-10.0, system)
        ))
}

/// Hives that are moved for winter.
fn moves(ground: &Ground<'_>) -> Vec<JobWindow> {
    let (t, year, system) = (ground.question.triggers, &ground.year, ground.question.system);
    let first = year.first();
    let over = year.when(|path| flying_over(path, t.flying_over_high.value));
    let cellar = year.when(|path| falls_below(path, FORTNIGHT, t.cellar_mean.value, mean));
    let flown = format!("A fortnight without an hour of {}.", degrees(t.flying_over_high.value, system));
    let stored = format!("The mean of a fortnight falls below {}.", degrees(t.cellar_mean.value, system));
    let into = window(
        "cellar-in",
        "Into a cellar, if used",
        Kind::From,
        (&cellar, first),
        trigger("cellar_mean", &t.cellar_mean, stored),
    )
    .why("Cold enough to stay clustered and dark; after the last good flight if there is a choice.")
    .caution(&[Hazard::Carrying]);
    let yard = window(
        "winter-yard",
        "Move to a winter yard",
        Kind::From,
        (&over, first),
        trigger("flying_over_high", &t.flying_over_high, flown),
    )
    .why("Bees that no longer fly do not go back to the old place. Later, in hard frost, a jolt breaks the cluster.")
    .caution(&[Hazard::Carrying]);
    std::iter::once(yard).chain(indoors::carried(ground, Way::In, into)).collect()
}

/// Frost at nought.
fn frost_trigger(words: String) -> Trigger {
    Trigger { words, value: 0.0, figure: None, source: "none".to_owned(), status: Status::FromMemory }
}
