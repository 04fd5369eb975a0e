//! The present in words: what to do first, then one colony, or everything.

use snowhum_advice::LooksTo;
use snowhum_advice::answer::ActionAnswer;
use snowhum_advice::now::{ColonyNow, Evidence, NowAnswer};
use snowhum_advice::words::{both_ways, day, hives, in_hundred, part_of_month, short_day};
use snowhum_units::{Kelvin, Kilogram, Range, System};

use crate::text::first::{self, Screen, place};
use crate::text::voice::{in_words, tongue};
use crate::text::{Once, entry, fitting, plan, when, wrapped};

/// Visits shown for a colony; the rest are in the JSON.
const EVIDENCE_SHOWN: usize = 4;

/// Lines of one colony's page, at most.
const ONE: usize = 38;

/// The first screen of a yard: what to do, and what each hive said last.
pub(crate) fn words(now: &NowAnswer, system: System) -> String {
    screen(now, system).words()
}

fn screen(now: &NowAnswer, system: System) -> Screen<'_> {
    let last = |colony: &ColonyNow| {
        colony.evidence.first().map_or_else(String::new, |visit| format!("{} {}", short_day(visit.on), visit.note))
    };
    Screen {
        command: "now",
        apiary: &now.apiary,
        invented: now.invented,
        first: &now.first,
        weather: &now.weather,
        signs: now.colonies.iter().map(last).collect(),
        system,
    }
}

/// Everything of a yard.
pub(crate) fn all(now: &NowAnswer, system: System) -> String {
    let screen = screen(now, system);
    let mut page = screen.top().join("\n") + "\n\n";
    page += &the_day(now);
    let mut once = Once::default();
    for colony in &now.colonies {
        page += &format!("\n{}: {}\n", colony.name, in_words(&colony.verdict.words()));
        page += &colony_words(now, colony, system, &mut once).concat();
    }
    page += &format!("\n{}\n", screen.foot()[..1].join("\n"));
    page += &format!("{}\n", wrapped(&format!("It stands on {}, seed {}.", now.weather.source, now.first.seed), 0));
    for note in now.weather.told() {
        page += &format!("{}\n", wrapped(&format!("- {}", in_words(note)), 2));
    }
    page += &wrapped(
        "How much a sign can say is judgement throughout: data/watch_parameters.toml. Follow the label, local law, the bee \
         inspector and the vet before any word here.",
        0,
    );
    page
}

/// One colony, what is to be done first.
pub(crate) fn one(now: &NowAnswer, at: usize, system: System) -> String {
    let (Some(colony), Some(first)) = (now.colonies.get(at), now.first.colonies.get(at)) else {
        return words(now, system);
    };
    let verdict = in_words(&colony.verdict.words());
    let title = format!("{} at {}, {}: {verdict}\n", colony.name, now.apiary, day(now.as_of));
    let steps = first::steps(&now.first, first, tongue()).join("\n") + "\n";
    let mut paragraphs = vec![title + &steps, plan::chances(first, now.looks_to)];
    paragraphs.extend(colony_words(now, colony, system, &mut Once::default()));
    paragraphs.push(the_day(now));
    fitting(&paragraphs, ONE) + "More: snowhum now --all. Label, law and vet come first.\n"
}

/// Flight, whom to open first, and the lid.
fn the_day(now: &NowAnswer) -> String {
    let mut head = String::new();
    if let Some(says) = now.looks_to.says() {
        head += &entry("Food", &in_words(&says));
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
    head += &entry("Go and look", &in_words(&now.next_round.says()));
    for (at, first) in now.open_first.iter().enumerate() {
        head += &entry(if at == 0 { "Open first" } else { "" }, &format!("{}: {}", first.name, in_words(&first.why)));
    }
    let [lid, others] = [&now.lid.says, &now.lid.other_school].map(in_words);
    head += &entry("Lid", &format!("Tomorrow at one: {lid} {others}"));
    head
}

fn days_ahead(days: u32) -> String {
    match days {
        1 => "tomorrow".to_owned(),
        days => format!("{days} days ahead"),
    }
}

fn colony_words(now: &NowAnswer, colony: &ColonyNow, system: System, once: &mut Once) -> Vec<String> {
    let mut page: Vec<String> = place(&now.first, &colony.name).into_iter().collect();
    page.extend(colony.beside.iter().map(|beside| once.entry("Mind", &in_words(beside))));
    if colony.is_gone() {
        page.push(entry("", &in_words(&colony.about)));
    }
    if colony.is_gone() && !colony.is_unexplained() {
        page.push(evidence(&colony.evidence));
        return page;
    }
    if colony.seen_dead {
        page.push(ended(colony));
    } else {
        page.push(living(colony, now.looks_to, system));
        page.push(evidence(&colony.evidence));
        page.extend(actions(now, colony, once));
        return page;
    }
    page.push(evidence(&colony.evidence));
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
        page += &entry("Until", &in_words(&colony.food_lasts(to)));
    }
    if let Some(body) = &colony.food_body {
        page += &entry("Board", &in_words(&body.says));
    }
    let coming = format!("alive, fed and queenright: {}", both_ways(colony.alive_fed_queenright));
    page += &match to {
        LooksTo::Spring => entry("Spring", &coming),
        LooksTo::WithoutFlow(_) => entry("Ahead", &format!("to {}, {coming}", in_words(&to.goal()))),
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
    let lie = if next.indoors { " on its floor" } else { "" };
    let mut parts = vec![format!("{} new dead bees{lie}", next.dead_bees.words())];
    if let Some(frost) = next.frost_at_hole {
        parts.push(format!("new rime at the hole {}", in_hundred(frost)));
    }
    parts.push(format!("a hum {}", in_hundred(next.hum)));
    parts.push(match next.indoors {
        true => "no bee flies in the dark".to_owned(),
        false => format!("a cleansing flight {}", in_hundred(next.flight)),
    });
    let air = Kelvin::from_celsius(next.air_c).show(system, 0);
    entry("Next look", &format!("on {} at {air}: {}", day(next.on), parts.join(", ")))
}

fn actions(now: &NowAnswer, colony: &ColonyNow, once: &mut Once) -> Vec<String> {
    let mut page: Vec<String> = colony.actions.iter().map(|action| action_words(now, action, once)).collect();
    if !colony.nothing_helps {
        page.push(entry("Look first?", &in_words(&colony.look_first.says)));
    }
    page
}

fn action_words(now: &NowAnswer, action: &ActionAnswer, once: &mut Once) -> String {
    let [what, why, worth] = [&action.what, &action.why, &action.worth(&now.currency)].map(in_words);
    let mut text = format!("{what}, {}: {worth}. {why}.", when(action));
    if let Some(caution) = action.caution.as_ref().map(in_words).filter(|caution| once.is_new(caution)) {
        text += &format!(" Caution: {caution}.");
    }
    entry(if action.instead { "Or instead" } else { "Helps" }, &text)
}

fn evidence(visits: &[Evidence]) -> String {
    let mut page = String::new();
    for (at, visit) in visits.iter().take(EVIDENCE_SHOWN).enumerate() {
        let label = if at == 0 { "Signs" } else { "" };
        page += &entry(label, &format!("{}: {}: {}", day(visit.on), visit.note, in_words(&visit.moved)));
    }
    page
}
