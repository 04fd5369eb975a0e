//! Spring in words: whom to lift first, then when to open, what to look for, what to feed.

use snowhum_advice::spring::{LiftFirst, OpenDay, Springtime};
use snowhum_say::{Message, shared_terminal as shared, spring_terminal as say};
use snowhum_units::Kilogram;

use crate::text::voice::in_words;
use crate::text::{entry, heading, paragraph, wrapped};

pub(crate) fn words(spring: &Springtime) -> String {
    let title = say::title(spring.invented, spring.as_of.to_string(), &spring.apiary);
    let mut page = in_words(&title) + "\n";
    page += &wrapped(shared::stands_on_weather(&spring.weather.source), 0);
    page += "\n";
    for far in &spring.weather.far {
        page += &format!("- {}\n", wrapped(&far.says, 2));
    }
    page += &heading(say::lift_first());
    for (one, place) in spring.lift_first.iter().zip(1..) {
        page += &format!("  {}\n", wrapped(lift(one, place), 5));
    }
    page += &format!("\n{}\n", wrapped(&spring.danger.says, 0));
    page += &opening(spring);
    page += &heading(say::first_look());
    for item in &spring.first_look {
        page += &format!("  [ ] {}\n", wrapped(&item.look_for, 6));
        page += &format!("      {}\n", wrapped(both(&item.why, &item.otherwise), 6));
    }
    page += &feeding(spring);
    page + &strength(spring)
}

fn lift(one: &LiftFirst, place: u32) -> Message {
    let hunger = one.hunger.words();
    match &one.reachable_kg {
        None => say::lift(&one.name, hunger, place, &one.says),
        Some(kg) => say::lift_reach(&one.name, hunger, place, Kilogram::new(kg.p50), &one.says),
    }
}

fn both(one: &Message, other: &Message) -> Message {
    Message::sentences([one.clone(), other.clone()])
}

fn opening(spring: &Springtime) -> String {
    let mut page = heading(say::open());
    page += &paragraph(&spring.open.says);
    page += &paragraph(&spring.open.other_school);
    let line = |day: Message, [lid, look, full]: [String; 3]| {
        format!("  {:<27} {lid:>16}  {look:>10}  {full:>10}\n", in_words(&day))
    };
    if !spring.open.days.is_empty() {
        let heads = [say::lid(), say::look(), say::combs()].map(|head| in_words(&head));
        page += &format!("\n{}", line(say::days(), heads));
    }
    let shares = |one: &OpenDay| [one.lid, one.first_look, one.full_look].map(|share| format!("{:.0}", 100.0 * share));
    page + &spring.open.days.iter().map(|one| line(shared::day(one.on), shares(one))).collect::<String>()
}

fn feeding(spring: &Springtime) -> String {
    let mut page = heading(say::feed());
    for (at, step) in spring.feeding.iter().enumerate() {
        let parts = [step.what.clone()].into_iter().chain(step.from.map(say::from)).chain(step.until.map(say::until));
        page += &format!("  {}. {}\n", at + 1, wrapped(shared::list(parts.collect()), 5));
        page += &format!("     {}\n", wrapped(both(&step.waits_for, &step.how), 5));
    }
    page += &heading(say::hive());
    for step in &spring.hive {
        page += &format!("  {}\n", wrapped(say::step(&step.waits_for, &step.what, &step.when, &step.why), 4));
    }
    page
}

fn strength(spring: &Springtime) -> String {
    let mut page = heading(say::strong());
    for one in &spring.strength {
        let frames = say::frames(one.frames.p10, one.frames.p50, one.frames.p90, one.word.words());
        page += &entry(one.name.chars().take(11).collect::<String>(), frames);
    }
    if let Some(usual) = &spring.usual_strength {
        page += &paragraph(say::usual(&usual.region, &usual.says, &usual.source));
    }
    if !spring.weak.is_empty() {
        page += &heading(say::weak());
    }
    for line in &spring.weak {
        page += &format!("  - {}\n", wrapped(line, 4));
    }
    page
}
