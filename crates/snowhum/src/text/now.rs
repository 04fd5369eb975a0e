//! The present in words: one word a colony first, then why, figures after.

use snowhum_advice::LooksTo;
use snowhum_advice::answer::ActionAnswer;
use snowhum_advice::now::{ColonyNow, Evidence, NowAnswer};
use snowhum_advice::words::{both_ways, day, hives, in_hundred, part_of_month, run_out};
use snowhum_units::{Kelvin, Kilogram, Range, System};

use crate::text::chart::bar;
use crate::text::{entry, when, wrapped};

/// Visits shown for a colony; the rest are in the JSON.
const EVIDENCE_SHOWN: usize = 4;

pub(crate) fn words(now: &NowAnswer, system: System) -> String {
    let mut page = head(now);
    page += &overview(now);
    for colony in &now.colonies {
        page += "\n";
        page += &colony_words(now, colony, system);
    }
    page += "\n";
    page += &wrapped(
        "Chances stand for hives like these with these signs. How much a sign can say is judgement throughout: \
         data/watch_parameters.toml. Follow the label, local law, the bee inspector and the vet before any word here.",
        0,
    );
    page
}

fn head(now: &NowAnswer) -> String {
    let invented = if now.invented { " (an invented yard)" } else { "" };
    let mut head = format!("{}{invented}: {}\n", now.apiary, now.as_of);
    head += &wrapped(&format!("It stands on {}.", now.weather.source), 0);
    head += "\n";
    for note in now.weather.told() {
        head += &wrapped(&format!("- {note}"), 2);
        head += "\n";
    }
    head += "\n";
    if let Some(says) = now.looks_to.says() {
        head += &entry("Food", &says);
    }
    head += &match &now.flight_day {
        Some(flight) if flight.on_most_days => {
            entry("Flight day", "bees fly on most days now; a hive that does not while others do is opened first")
        }
        Some(flight) => entry(
            "Flight day",
            &format!(
                "{}, {} ({}): note at every hive who flew well, thin or not at all, and open those that did not fly \
                 first",
                day(flight.on),
                days_ahead(flight.days_ahead),
                in_hundred(flight.chance)
            ),
        ),
        None => entry("Flight day", "none likely within ten days"),
    };
    for (at, first) in now.open_first.iter().enumerate() {
        head += &entry(if at == 0 { "Open first" } else { "" }, &format!("{}: {}", first.name, first.why));
    }
    head += &entry("Lid", &format!("Tomorrow at one: {} {}", now.lid.says, now.lid.other_school));
    head
}

fn days_ahead(days: u32) -> String {
    match days {
        1 => "tomorrow".to_owned(),
        days => format!("{days} days ahead"),
    }
}

fn overview(now: &NowAnswer) -> String {
    let mut table = String::from("\n  Of 100 hives like it, today            alive\n");
    for colony in &now.colonies {
        let name: String = colony.name.chars().take(12).collect();
        let (alive, chance) = if colony.seen_dead {
            ("dead".to_owned(), 0.0)
        } else if colony.is_gone() {
            ("–".to_owned(), 0.0)
        } else {
            (format!("{:>3}", hives(colony.alive)), colony.alive)
        };
        table += &format!("  {name:<12}{}  {alive:<6} {}\n", bar(chance, 24), colony.word.written());
    }
    table
}

fn colony_words(now: &NowAnswer, colony: &ColonyNow, system: System) -> String {
    let mut page = format!("{}: {}\n", colony.name, colony.word.written());
    page += &entry("", &colony.about);
    for beside in &colony.beside {
        page += &entry("Mind", beside);
    }
    if colony.is_gone() && !colony.is_unexplained() {
        return page + &evidence(&colony.evidence);
    }
    if colony.seen_dead {
        page += &ended(colony);
    } else {
        page += &living(colony, now.looks_to, system);
        page += &actions(now, colony);
    }
    page += &evidence(&colony.evidence);
    page
}

fn living(colony: &ColonyNow, to: LooksTo, system: System) -> String {
    let kg = |range: &Range<f64>| {
        let of = |kg: f64| Kilogram::new(kg).show(system, 1);
        format!("{} (8 in 10 between {} and {})", of(range.p50), of(range.p10), of(range.p90))
    };
    let mut page = entry("Alive", &both_ways(colony.alive));
    if colony.alive > 0.01 {
        let with_queen = in_hundred(colony.alive_queenright / colony.alive);
        page += &entry("Queen", &format!("{with_queen} of those alive have one; no sign from outside proves it"));
    }
    if let Some(bees) = &colony.bees {
        page += &entry("Bees", &format!("about {:.0} ({:.0} to {:.0})", bees.p50, bees.p10, bees.p90));
    }
    if let (Some(total), Some(reach)) = (&colony.stores_kg.total, &colony.stores_kg.reachable) {
        page += &entry("Food", &format!("{}; within reach {}", kg(total), Kilogram::new(reach.p50).show(system, 1)));
        page += &entry("Until", &run_out(&colony.runs_out, to));
    }
    let coming = format!("alive, fed and queenright: {}", both_ways(colony.alive_fed_queenright));
    page += &match to {
        LooksTo::Spring => entry("Spring", &coming),
        LooksTo::WithoutFlow(_) => entry("Ahead", &format!("to {}, {coming}", to.goal())),
    };
    if colony.alive < 0.9 {
        page += &ended(colony);
    }
    page += &next_look(colony, system);
    page
}

fn ended(colony: &ColonyNow) -> String {
    let mut shares: Vec<_> = colony.ended.by_cause().into_iter().filter(|(_, chance)| *chance >= 0.005).collect();
    shares.sort_by(|a, b| b.1.total_cmp(&a.1));
    let list: Vec<String> =
        shares.iter().map(|(cause, chance)| format!("{} {}", cause.words(), hives(*chance))).collect();
    let mut page =
        if list.is_empty() { String::new() } else { entry("If dead", &format!("{} in 100", list.join(", "))) };
    if let Some(between) = &colony.ended_between {
        let when = format!(
            "most likely {}, between {} and {}",
            part_of_month(between.p50),
            day(between.p10),
            day(between.p90)
        );
        page += &entry("Since", &when);
    }
    page
}

fn next_look(colony: &ColonyNow, system: System) -> String {
    let next = &colony.expect_next;
    let mut parts = vec![format!("{:.0} to {:.0} new dead bees", next.dead_bees.p10, next.dead_bees.p90)];
    if let Some(frost) = next.frost_at_hole {
        parts.push(format!("new rime at the hole {}", in_hundred(frost)));
    }
    parts.push(format!("a hum {}", in_hundred(next.hum)));
    parts.push(format!("a cleansing flight {}", in_hundred(next.flight)));
    let air = Kelvin::from_celsius(next.air_c).show(system, 0);
    entry("Next look", &format!("on {} at {air}: {}", day(next.on), parts.join(", ")))
}

fn actions(now: &NowAnswer, colony: &ColonyNow) -> String {
    let mut page = String::new();
    for action in &colony.actions {
        page += &action_words(now, action);
    }
    if colony.nothing_helps {
        page += &entry("To do", "nothing that was tried in the model helps by more than chance");
    } else {
        page += &entry("Look first?", &colony.look_first.says);
    }
    page
}

fn action_words(now: &NowAnswer, action: &ActionAnswer) -> String {
    let worth = action.worth(&now.currency);
    let mut text = format!("{}, {}: {worth}. {}.", action.what, when(action), action.why);
    if let Some(caution) = &action.caution {
        text += &format!(" Caution: {caution}.");
    }
    entry(if action.instead { "Or instead" } else { "To do" }, &text)
}

fn evidence(visits: &[Evidence]) -> String {
    let mut page = String::new();
    for (at, visit) in visits.iter().take(EVIDENCE_SHOWN).enumerate() {
        let label = if at == 0 { "Signs" } else { "" };
        page += &entry(label, &format!("{}: {}: {}", day(visit.on), visit.note, visit.moved));
    }
    page
}
