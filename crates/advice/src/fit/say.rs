//! What to know: of one colony, where a wrong belief would mislead, and of the whole yard.

use snowhum_apiary::{LeftOn, Mites, Trouble, food_in};
use snowhum_say::Tongue;
use snowhum_units::Kilogram;

use super::answer::{ColonyFit, Stands, VerdictKind, What};
use super::look::Look;
use super::scales;
use crate::cautions::Hazard;
use crate::site::dates;
use crate::site::health::{foulbrood, mite_rate};
use crate::words::day;

/// What to know of one colony.
pub(super) fn colony(look: &Look<'_>, at: usize) -> Vec<String> {
    let colony = look.colony(at);
    let mut say = Vec::new();
    let bees = scales::all(look, at).into_iter().find(|scale| scale.what == What::Bees);
    let strong = bees.is_some_and(|scale| matches!(scale.stands, Stands::Usual | Stands::PerhapsOver | Stands::Over));
    if strong && colony.mites == Mites::NotCounted {
        say.push(
            "Strong in autumn is not safe: large colonies raise most mites, and nobody has counted here.".to_owned(),
        );
    }
    if mite_rate(colony).is_some_and(|rate| rate < 0.05) {
        say.push("A clean sample is not a clean colony: count again.".to_owned());
    }
    if colony.autumn.troubles.iter().flatten().any(|t| matches!(t, Trouble::Robbed | Trouble::Wasps)) {
        say.push(
            "Robbed or beset by wasps: close the entrance to a bee's width or two, feed it last, and weigh it again."
                .to_owned(),
        );
    }
    if foulbrood(colony) {
        say.push(Hazard::Foulbrood.says().to_owned());
    }
    say.extend(no_room(look, at));
    if look.is_nucleus(at) {
        say.push("A nucleus is fed first and defended first: entrance of a bee's width.".to_owned());
    }
    say
}

/// Share of its combs that food may fill: bees cluster on empty cells under it (judgement).
const ROOM: f64 = 0.85;

/// What it is short of, where its combs cannot take that.
fn no_room(look: &Look<'_>, at: usize) -> Option<String> {
    let (hive, now) = (&look.housed(at).hive, look.colony(at).stores.total.p50);
    let room = food_in(f64::from(hive.comb_count()), hive.mean_comb_side()).p50 * ROOM;
    let wanted = now + Kilogram::new(look.plan(at).shortage_kg);
    let kg = |kilograms: Kilogram| kilograms.show(look.system(), 0);
    (look.is_short(at) && wanted > room).then(|| {
        format!(
            "With what it is short of it would hold {}, and its combs take about {} and leave bees room: give it a box of drawn comb, \
             or the rest as fondant in winter.",
            kg(wanted),
            kg(room)
        )
    })
}

/// What holds for the whole yard on this day, with the caution of treatments where one is advised.
pub(super) fn yard(look: &Look<'_>, colonies: &[ColonyFit]) -> Vec<String> {
    let mut say = Vec::new();
    let short = look.places().any(|at| look.is_short(at));
    if short && look.today() <= look.dates.syrup_by.p90 {
        say.push("While you feed: entrances first, nuclei and weak hives first, all on one evening.".to_owned());
        say.push(Hazard::Robbing.says().to_owned());
    }
    say.extend(mites(look));
    if colonies.iter().any(|one| one.verdict.kind == VerdictKind::Treat) {
        say.extend(Hazard::each(&[Hazard::Label, Hazard::Acids]));
    }
    if look.today() <= look.dates.cluster.p90 {
        say.extend(last_days(look));
    }
    let forgotten = look.places().all(|at| look.colony(at).autumn.left_on.is_none());
    if forgotten {
        say.push(format!(
            "The yard file says of no hive whether an {}, a {} or an {} is still on. Look before the first frost.",
            LeftOn::Excluder.words(),
            LeftOn::Feeder.words(),
            LeftOn::EmptySuper.words()
        ));
    }
    say
}

fn last_days(look: &Look<'_>) -> [String; 2] {
    let (queen, unite) = (&look.dates.requeen_by, &look.dates.unite_by);
    [
        format!(
            "Queens: the last sensible day to give one here is about {} ({} to {}), from this site's last flight weather; judgement. A virgin after that means unite.",
            day(queen.p50),
            day(queen.p10),
            day(queen.p90)
        ),
        format!(
            "Uniting: by about {} here, the weak on the strong, and never with anything sick. Weak on weak is not strong.",
            day(unite.p50)
        ),
    ]
}

fn mites(look: &Look<'_>) -> Vec<String> {
    let mut say = Vec::new();
    let [all_spared, none_spared] = dates::winter_bees(look.base);
    if look.today() > all_spared && look.month() >= 7 {
        say.push(format!(
            "Mites now: a treatment after about {} comes too late for part of the winter bees, after about {} for all of them. It protects the neighbours and next year's bees, not bees already hurt; a treatment in November alone is no cure for this winter.",
            day(all_spared),
            day(none_spared)
        ));
        say.push(Tongue::BRITISH.say(&dates::winter_bees_say(look.base)));
    }
    if matches!(look.month(), 9 | 10) {
        say.push(format!(
            "Count a second time in October, before bees cluster about {}: robbers bring mites home from dying hives.",
            day(look.dates.cluster.p50)
        ));
    }
    say
}
