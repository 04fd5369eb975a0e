//! Spring in words: whom to lift first, then when to open, what to look for, what to feed.

use snowhum_advice::spring::{OpenDay, Springtime};
use snowhum_advice::words::day;
use snowhum_units::{Kilogram, System};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

pub(crate) fn words(spring: &Springtime, system: System) -> String {
    let invented = if spring.invented { " (an invented yard)" } else { "" };
    let mut page = format!("Spring, {}{invented}: {}\n", spring.apiary, spring.as_of);
    page += &wrapped(&format!("It stands on {}.", spring.weather.source), 0);
    page += "\n";
    for far in &spring.weather.far {
        page += &format!("- {}\n", wrapped(&in_words(&far.says), 2));
    }
    page += "\nLift first\n";
    for (at, one) in spring.lift_first.iter().enumerate() {
        let reach = one.reachable_kg.map_or_else(String::new, |kg| {
            let decimals = usize::from(system == System::Metric);
            format!("; {} within reach", Kilogram::new(kg.p50).show(system, decimals))
        });
        let says = format!(
            "{}. {}: {}. {}{reach}",
            at + 1,
            one.name,
            in_words(&one.hunger.words()),
            tongue().capital(&one.says)
        );
        page += &format!("  {}\n", wrapped(&format!("{says}."), 5));
    }
    page += &format!("\n{}\n", wrapped(&in_words(&spring.danger.says), 0));
    page += &opening(spring);
    page += "\nAt the first look\n";
    for item in &spring.first_look {
        page += &format!("  [ ] {}\n", wrapped(&in_words(&item.look_for), 6));
        page += &format!("      {}\n", wrapped(&format!("{} {}", in_words(&item.why), in_words(&item.otherwise)), 6));
    }
    page += &feeding(spring);
    page + &strength(spring)
}

fn opening(spring: &Springtime) -> String {
    let mut page = "\nMay I open?\n".to_owned();
    page += &format!("  {}\n", wrapped(&in_words(&spring.open.says), 2));
    page += &format!("  {}\n", wrapped(&in_words(&spring.open.other_school), 2));
    if !spring.open.days.is_empty() {
        page += "\n  Of 100 possible days        lid off a minute  first look  every comb\n";
    }
    let hundred = |share: f64| format!("{:.0}", 100.0 * share);
    let line = |one: &OpenDay| {
        let (lid, look, full) = (hundred(one.lid), hundred(one.first_look), hundred(one.full_look));
        format!("  {:<27} {lid:>16}  {look:>10}  {full:>10}\n", day(one.on))
    };
    spring.open.days.iter().for_each(|one| page += &line(one));
    page
}

fn feeding(spring: &Springtime) -> String {
    let mut page = "\nFeed in this order\n".to_owned();
    for (at, step) in spring.feeding.iter().enumerate() {
        let from = step.from.map_or_else(String::new, |from| format!(", from about {}", day(from)));
        let until = step.until.map_or_else(String::new, |until| format!(", until about {}", day(until)));
        page += &format!("  {}. {}\n", at + 1, wrapped(&format!("{}{from}{until}", in_words(&step.what)), 5));
        page += &format!("     {}\n", wrapped(&format!("{} {}", in_words(&step.waits_for), in_words(&step.how)), 5));
    }
    page += &format!("\n{}\n", wrapped("Floor, wrap, boxes", 0));
    for step in &spring.hive {
        let [what, when, waits, why] = [&step.what, &step.when, &step.waits_for, &step.why].map(in_words);
        page += &format!("  {}\n", wrapped(&format!("{what}: {when}. {waits} {why}"), 4));
    }
    page
}

fn strength(spring: &Springtime) -> String {
    let mut page = "\nHow strong?\n".to_owned();
    for one in &spring.strength {
        let frames = format!(
            "about {:.1} frames of bees (8 in 10: {:.1} to {:.1}): {}",
            one.frames.p50,
            one.frames.p10,
            one.frames.p90,
            in_words(&one.word.words())
        );
        page += &entry(&one.name.chars().take(11).collect::<String>(), &frames);
    }
    if let Some(usual) = &spring.usual_strength {
        page += &format!("  {}\n", wrapped(&format!("In {}: {} ({}).", usual.region, usual.says, usual.source), 2));
    }
    if !spring.weak.is_empty() {
        page += "\nA very weak colony\n";
    }
    for line in &spring.weak {
        page += &format!("  - {}\n", wrapped(&in_words(line), 4));
    }
    page
}
