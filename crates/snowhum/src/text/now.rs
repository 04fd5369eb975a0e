//! The present in words: what to do first, then one colony, or everything.

use snowhum_advice::LooksTo;
use snowhum_advice::answer::ActionAnswer;
use snowhum_advice::now::{ColonyNow, Evidence, NowAnswer};
use snowhum_say::{Message, both_ways, in_hundred, now_terminal as say, shared_terminal as shared, usual};
use snowhum_units::{Kelvin, Kilogram};

use crate::text::first::{self, Screen, place};
use crate::text::voice::{in_words, tongue};
use crate::text::{Once, entry, fitting, plan, when, wrapped};

/// Visits shown for a colony; the rest are in the JSON.
const EVIDENCE_SHOWN: usize = 4;

/// Lines of one colony's page, at most.
const ONE: usize = 38;

/// The first screen of a yard: what to do, and what each hive said last.
pub(crate) fn words(now: &NowAnswer) -> String {
    screen(now).words()
}

fn screen(now: &NowAnswer) -> Screen<'_> {
    let last = |colony: &ColonyNow| {
        colony.evidence.first().map_or_else(String::new, |visit| in_words(&say::sign(&visit.note, visit.on)))
    };
    let signs = now.colonies.iter().map(last).collect();
    Screen { signs, ..Screen::of("now", (&now.apiary, now.invented), &now.first, &now.weather) }
}

/// Everything of a yard.
pub(crate) fn all(now: &NowAnswer) -> String {
    let screen = screen(now);
    let mut page = screen.top().join("\n") + "\n\n";
    page += &the_day(now);
    let mut once = Once::default();
    for colony in &now.colonies {
        page += &format!("\n{}\n", in_words(&shared::of(&colony.name, colony.verdict.words())));
        page += &colony_words(now, colony, &mut once).concat();
    }
    page += &format!("\n{}\n", screen.foot()[..1].join("\n"));
    page += &format!("{}\n", wrapped(say::stands(now.first.seed.to_string(), &now.weather.source), 0));
    for note in now.weather.told() {
        page += &format!("{}\n", wrapped(format!("- {}", in_words(note)), 2));
    }
    page + &wrapped(say::judgement(), 0)
}

/// One colony, what is to be done first.
pub(crate) fn one(now: &NowAnswer, at: usize) -> String {
    let (Some(colony), Some(first)) = (now.colonies.get(at), now.first.colonies.get(at)) else {
        return words(now);
    };
    let title = shared::title(&colony.name, now.as_of, colony.verdict.words(), &now.apiary);
    let steps = first::steps(&now.first, first, tongue()).join("\n");
    let mut paragraphs = vec![format!("{}\n{steps}\n", in_words(&title)), plan::chances(first, now.looks_to)];
    paragraphs.extend(colony_words(now, colony, &mut Once::default()));
    paragraphs.push(the_day(now));
    fitting(&paragraphs, ONE) + &in_words(&shared::more_all("now")) + "\n"
}

/// Flight, whom to open first, and the lid.
fn the_day(now: &NowAnswer) -> String {
    let mut head = now.looks_to.says().map_or_else(String::new, |says| entry(shared::food(), says));
    let flight = match &now.flight_day {
        Some(flight) if flight.on_most_days => say::flies_most_days(),
        Some(flight) => say::flies(in_hundred(flight.chance), flight.days_ahead, flight.on),
        None => say::flies_not(),
    };
    head += &entry(say::flight_day(), flight);
    head += &entry(say::look(), now.next_round.says());
    for (at, first) in now.open_first.iter().enumerate() {
        let label = if at == 0 { say::open() } else { Message::NONE };
        head += &entry(label, shared::of(&first.name, &first.why));
    }
    head + &entry(say::lid(), say::lid_tomorrow(&now.lid.says, &now.lid.other_school))
}

fn colony_words(now: &NowAnswer, colony: &ColonyNow, once: &mut Once) -> Vec<String> {
    let mut page: Vec<String> = place(&now.first, &colony.name).into_iter().collect();
    page.extend(colony.beside.iter().map(|beside| once.entry(say::mind(), beside)));
    if colony.is_gone() {
        page.push(entry("", &colony.about));
    }
    if colony.is_gone() && !colony.is_unexplained() {
        page.push(evidence(&colony.evidence));
        return page;
    }
    if colony.seen_dead {
        page.push(ended(colony));
    } else {
        page.push(living(colony, now.looks_to));
        page.push(evidence(&colony.evidence));
        page.extend(actions(now, colony, once));
        return page;
    }
    page.push(evidence(&colony.evidence));
    page
}

fn living(colony: &ColonyNow, to: LooksTo) -> String {
    let mut page = entry(shared::alive(), both_ways(colony.alive));
    if colony.alive > 0.01 {
        page += &entry(say::queen(), say::with_queen(in_hundred(colony.alive_queenright / colony.alive)));
    }
    if let Some(bees) = &colony.bees {
        page += &entry(shared::bees(), say::bees(bees.p10, bees.p50, bees.p90));
    }
    if let (Some(total), Some(reach)) = (&colony.stores_kg.total, &colony.stores_kg.reachable) {
        let [least, likely, most, reach] = [total.p10, total.p50, total.p90, reach.p50].map(Kilogram::new);
        page += &entry(shared::food(), say::stores(least, likely, most, reach));
        page += &entry(say::until(), colony.food_lasts(to));
    }
    if let Some(body) = &colony.food_body {
        page += &entry(say::board(), &body.says);
    }
    let coming = both_ways(colony.alive_fed_queenright);
    page += &match to {
        LooksTo::Spring => entry(shared::spring(), say::comes(coming)),
        LooksTo::WithoutFlow(_) => entry(say::ahead(), say::comes_to(coming, to.goal())),
    };
    if colony.alive < 0.9 {
        page += &ended(colony);
    }
    page + &next_look(colony)
}

fn ended(colony: &ColonyNow) -> String {
    let causes = plan::causes(&colony.ended);
    let mut page = if causes.is_empty() { String::new() } else { entry(say::dead(), say::dead_of(causes)) };
    if let Some(between) = &colony.ended_between {
        page += &entry(say::since(), say::since_day(between.p10, between.p50, between.p90));
    }
    page
}

fn next_look(colony: &ColonyNow) -> String {
    let next = &colony.expect_next;
    let flight = if next.indoors { say::no_flight() } else { say::new_flight(in_hundred(next.flight)) };
    let mut parts = vec![say::new_dead(usual(next.dead_bees), next.indoors)];
    parts.extend(next.frost_at_hole.map(|frost| say::new_rime(in_hundred(frost))));
    parts.extend([say::new_hum(in_hundred(next.hum)), flight]);
    entry(say::next(), say::next_look(Kelvin::from_celsius(next.air_c), next.on, parts))
}

fn actions(now: &NowAnswer, colony: &ColonyNow, once: &mut Once) -> Vec<String> {
    let mut page: Vec<String> = colony.actions.iter().map(|action| action_words(now, action, once)).collect();
    if !colony.nothing_helps {
        page.push(entry(say::look_first(), &colony.look_first.says));
    }
    page
}

fn action_words(now: &NowAnswer, action: &ActionAnswer, once: &mut Once) -> String {
    let says = say::action(&action.what, when(action), &action.why, action.worth(&now.currency));
    let caution = action.caution.as_ref().filter(|caution| once.is_new(caution)).map(say::caution);
    let label = if action.instead { shared::or_instead() } else { shared::helps() };
    entry(label, Message::sentences([says].into_iter().chain(caution)))
}

fn evidence(visits: &[Evidence]) -> String {
    let mut page = String::new();
    for (at, visit) in visits.iter().take(EVIDENCE_SHOWN).enumerate() {
        let label = if at == 0 { say::signs() } else { Message::NONE };
        page += &entry(label, say::evidence(&visit.moved, &visit.note, visit.on));
    }
    page
}
