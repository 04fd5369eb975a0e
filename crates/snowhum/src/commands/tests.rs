//! One verdict wherever it is told: terminal, pages, papers, calendar and JSON, over the demo and twenty made-up yards.

mod made_up;
mod served;

use jiff::Timestamp;
use jiff::civil::{Date, date};
use serde_json::Value;
use snowhum_advice::jobs::{JobsAnswer, calendar::calendar};
use snowhum_advice::now::NowAnswer;
use snowhum_apiary::Apiary;
use snowhum_say::{Tongue, both_ways, capital, hives};
use std::sync::Mutex;

use crate::text;
use made_up::{DEMO_DATES, yards};
use served::{Pages, Winter};

/// From the wash of August to the flowers of May.
const DATES: [Date; 9] = [
    date(2025, 8, 12),
    date(2025, 9, 10),
    date(2025, 10, 8),
    date(2025, 11, 12),
    date(2025, 12, 20),
    date(2026, 1, 25),
    date(2026, 2, 28),
    date(2026, 4, 5),
    date(2026, 5, 10),
];

/// What one colony is told, with its verdict in words.
struct Told<'a> {
    name: &'a str,
    words: String,
    about: String,
    /// How long its food lasts; none where nobody lives.
    lasts: Option<String>,
    /// Of a hundred such hives those well in spring.
    well: u32,
    /// The same with those that are not, and those alive.
    spring: [String; 2],
    acts: bool,
}

fn told(now: &NowAnswer) -> Vec<Told<'_>> {
    let colonies = now.colonies.iter();
    colonies
        .map(|one| Told {
            name: &one.name,
            words: Tongue::BRITISH.say(&one.verdict.words()),
            about: Tongue::BRITISH.say(&one.about),
            lasts: one.stores_kg.total.as_ref().map(|_| Tongue::BRITISH.say(&one.food_lasts(now.looks_to))),
            well: hives(one.alive_fed_queenright),
            spring: [one.alive, one.alive_fed_queenright].map(|chance| Tongue::BRITISH.say(&both_ways(chance))),
            acts: one.verdict.first.is_some(),
        })
        .collect()
}

/// All white space as single spaces.
fn on_one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn in_the_terminal(now: &NowAnswer, case: &str) {
    let pages = [text::now::words(now), text::plan::words_of_present(now)];
    for page in &pages {
        let table: Vec<&str> = page.lines().skip_while(|line| !line.starts_with("Hive ")).skip(1).collect();
        for (told, line) in told(now).iter().zip(table) {
            let cell = |from: usize, to: usize| line.chars().take(to).skip(from).collect::<String>().trim().to_owned();
            assert_eq!((cell(0, 12), cell(13, 25)), (told.name.to_owned(), told.words.clone()), "{case}\n{page}");
        }
    }
    let all = text::now::all(now);
    for (at, told) in told(now).iter().enumerate() {
        assert!(all.contains(&format!("\n{}: {}\n", told.name, told.words)), "{case}: {}\n{all}", told.name);
        let one = text::now::one(now, at);
        let title = one.lines().next().unwrap();
        assert!(title.ends_with(&format!(": {}", told.words)), "{case}: {title}");
        if now.colonies[at].is_gone() {
            continue;
        }
        let one = on_one_line(&one);
        for words in told.spring.iter().chain(&told.lasts) {
            assert!(one.contains(&on_one_line(words)), "{case}: the terminal lacks \"{words}\": {one}");
        }
    }
}

fn in_json(now: &NowAnswer, api: &Value, plan: &Value, case: &str) {
    let own = serde_json::to_value(now).unwrap();
    for (at, told) in told(now).iter().enumerate() {
        let verdict = &own["colonies"][at]["verdict"];
        assert_eq!(&own["first"]["colonies"][at]["verdict"], verdict, "{case}: {}", told.name);
        assert_eq!(api["now"]["colonies"][at], own["colonies"][at], "{case}: {}", told.name);
        let word = verdict["word"].as_str().unwrap().replace('-', " ");
        assert!(told.words.starts_with(&word), "{case}: {} is not {word}", told.words);
        // A plan is of the day of the count; of that day it says the same.
        if plan["as_of"] == own["as_of"] {
            assert_eq!(&plan["colonies"][at]["verdict"], verdict, "{case}: {}", told.name);
        }
    }
}

fn in_the_calendar(now: &NowAnswer, jobs: &JobsAnswer, yard: &Apiary, downloaded: &str, case: &str) {
    let page = on_one_line(&text::jobs::words(jobs));
    let own = calendar(jobs, yard, Tongue::BRITISH, Timestamp::UNIX_EPOCH);
    for file in [own.as_str(), downloaded] {
        let unfolded = file.replace("\r\n ", "").replace('\\', "");
        for told in told(now) {
            let words = format!("{}: {}: {}", told.name, told.words, told.about);
            assert!(page.contains(&on_one_line(&words)), "{case}: no \"{words}\" in {page}");
            let stands = unfolded.contains(&format!("SUMMARY:{words} ("));
            assert_eq!(stands, told.acts, "{case}: \"{words}\" in {unfolded}");
        }
    }
}

fn in_the_pages(now: &NowAnswer, pages: &Pages, case: &str) {
    let chip = |told: &Told<'_>| format!(">{}</span>", told.words);
    for (at, told) in told(now).iter().enumerate() {
        let about = capital(&told.about);
        let after = |page: &str, head: &str| -> String {
            let found = page.split_once(head).unwrap_or_else(|| panic!("{case}: no {head}"));
            found.1.chars().take(1_500).collect()
        };
        let yard = after(&pages.yard, &format!(">{}</a> <span", told.name));
        let hive = after(&pages.hives[at], &format!("<h1>{} <span", told.name));
        let fit = after(&pages.fit, &format!("<h2>{} <span", told.name));
        let jobs = after(&pages.jobs, &format!("<strong>{}</strong> <span", told.name));
        for (page, what) in [(&yard, "yard"), (&hive, "hive"), (&fit, "fit"), (&jobs, "jobs")] {
            let (head, rest) = page.split_once("</span>").unwrap();
            assert!(format!("{head}</span>").ends_with(&chip(told)), "{case}: {what} of {}: {head}", told.name);
            assert!(rest.contains(&about), "{case}: {what} of {} does not say \"{about}\": {rest}", told.name);
        }
        let numbers = format!(" {} of 100", told.well);
        let first = &now.first.colonies[at];
        if first.if_not.is_some() && first.if_done.is_some() && !first.steps.is_empty() {
            assert!(
                hive.contains(&numbers) && yard.contains(&numbers),
                "{case}: {numbers} of {}: {hive} {yard}",
                told.name
            );
        }
        if let Some(lasts) = told.lasts.as_ref().filter(|_| !now.colonies[at].is_gone()) {
            assert!(pages.hives[at].contains(&capital(lasts)), "{case}: {lasts} of {}", told.name);
        }
        let row = after(&pages.paper, &format!("<strong>{}</strong>", told.name));
        let row = row.split("</tr>").next().unwrap();
        assert!(row.contains(&chip(told)), "{case}: paper of {}: {row}", told.name);
    }
}

fn holds_on(winter: &Winter, day: Date) {
    let case = format!("{} on {day}", winter.yard.name);
    let now = winter.now(day);
    let jobs = winter.jobs(day).told_by(&now);
    let pages = winter.pages(day);
    assert_eq!(now.colonies.len(), winter.yard.colonies.len());
    in_the_terminal(&now, &case);
    in_json(&now, &pages.api_now, &pages.api_plan, &case);
    in_the_calendar(&now, &jobs, &winter.yard, &pages.calendar, &case);
    in_the_pages(&now, &pages, &case);
}

#[test]
fn the_demo_says_one_thing_everywhere() {
    let yard = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    let winter = Winter::of(yard, 1);
    DEMO_DATES.into_iter().for_each(|day| holds_on(&winter, day));
}

#[test]
fn twenty_made_up_yards_say_one_thing_everywhere_from_august_to_may() {
    let yards = Mutex::new((1..).zip(yards()));
    let next = || yards.lock().unwrap().next();
    let all = || {
        while let Some((seed, yard)) = next() {
            let winter = Winter::of(yard, seed);
            DATES.into_iter().for_each(|day| holds_on(&winter, day));
        }
    };
    // Threads of their own: a page waits for the model, and a model whose every thread waits for a page never answers.
    std::thread::scope(|scope| {
        for _ in 0..2 {
            scope.spawn(all);
        }
    });
}
