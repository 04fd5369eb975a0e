//! A winter told as a film is drawn: the same for the page and for the file, and no place is named in it.

use jiff::civil::Date;
use snowhum_advice::film::{Came, FilmAnswer, HiveFilm, HiveFilmDay};
use snowhum_advice::words::{day, hives, short_day};
use snowhum_advice::yard;
use snowhum_apiary::{Apiary, OpeningKind, food_in};
use snowhum_picture::{FilmDay, FilmHive, FilmHiveDay, FilmNote, FoodCame, WinterFilm};
use snowhum_say::Tongue;
use snowhum_units::{Kelvin, Kilogram, Metre, Range, Speech, System};
use snowhum_winter::Housed;

use crate::section;
use crate::spoken::{own_words, spoken};
use crate::words::plain;

/// How a film is told.
#[derive(Debug, Clone, Copy)]
pub struct FilmShown {
    /// Units of the words.
    pub system: System,
    /// Words of the trade.
    pub speech: Speech,
}

/// A yard's winter, or one hive's, as a file of its own; `apiary` is the yard it tells of.
#[must_use]
pub fn told_winter(answer: &FilmAnswer, apiary: &Apiary, shown: FilmShown) -> String {
    let page = drawn(answer, apiary, shown.system).standalone();
    spoken(&page, shown.speech, &own_words(apiary, shown.speech))
}

/// The film as it is drawn.
pub(crate) fn drawn(answer: &FilmAnswer, apiary: &Apiary, system: System) -> WinterFilm {
    let housed = section::as_dressed(apiary, yard::housed_to(apiary, answer.as_of), answer.as_of);
    let hive = |told: &HiveFilm| {
        let of = housed.iter().find(|one| one.colony.name == told.name)?;
        Some(hive(answer, told, of, system))
    };
    let of_day = |(at, weather): (usize, &snowhum_advice::film::FilmWeather)| FilmDay {
        when: short_day(answer.date(at)),
        begins_month: answer.date(at).day() == 1,
        low: Kelvin::from_celsius(weather.low_c),
        high: Kelvin::from_celsius(weather.high_c),
        snow: Metre::new(weather.snow_cm / 100.0),
    };
    WinterFilm {
        title: title(answer),
        lead: lead(answer),
        days: answer.weather.iter().enumerate().map(of_day).collect(),
        today: answer.today(),
        hives: answer.hives.iter().filter_map(hive).collect(),
        system,
    }
}

pub(crate) fn title(answer: &FilmAnswer) -> String {
    match answer.hives.as_slice() {
        [one] => format!("The winter of {}", one.name),
        all => format!("The winter of {} hives", all.len()),
    }
}

fn lead(answer: &FilmAnswer) -> Vec<String> {
    let last = answer.date(answer.weather.len().saturating_sub(1));
    let whole = |on: Date| format!("{} {}", day(on), on.year());
    let mut lead = vec![format!(
        "The lid is shut from {} on. What goes on beneath it, reckoned to {}: up to {} with what was noted, after that as it may come.",
        whole(answer.from),
        whole(last),
        whole(answer.as_of)
    )];
    if answer.invented {
        lead.push("The hives and their notes are invented.".to_owned());
    }
    lead
}

fn hive(answer: &FilmAnswer, told: &HiveFilm, housed: &Housed, system: System) -> FilmHive {
    let (hive, tongue) = (&housed.hive, Tongue::new(system));
    let holds: f64 = hive.boxes.iter().map(|one| food_in(f64::from(one.frames), one.comb_side).p50.get()).sum();
    let note = |note: &snowhum_advice::film::FilmNote| FilmNote {
        day: note.day,
        when: day(note.on),
        note: snowhum_apiary::split_entries(&note.note)
            .map(|text| tongue.say(&plain(text)))
            .collect::<Vec<_>>()
            .join("; "),
        moved: tongue.capital(&note.moved),
    };
    FilmHive {
        name: told.name.clone(),
        width: hive.boxes.first().map_or(Metre::new(0.38), |one| one.width),
        boxes: hive.boxes.iter().map(|one| one.depth).collect(),
        is_wrapped: !hive.wrap.is_empty(),
        has_hole: hive.openings.iter().any(|opening| opening.kind == OpeningKind::UpperHole),
        holds: Kilogram::new(holds),
        days: told.days.iter().map(of_day).collect(),
        notes: told.noted.iter().map(note).collect(),
        foretold: format!(
            "Foretold on {}: alive in spring in {} of 100 such hives; {}.",
            day(answer.from),
            hives(told.foretold_alive),
            tongue.say(&told.foretold_food)
        ),
        came: came(answer, told, tongue),
        food_came: told.food.map(|food| match food.came {
            Came::Less => FoodCame::Less,
            Came::AsForetold => FoodCame::AsForetold,
            Came::More => FoodCame::More,
        }),
    }
}

fn of_day(day: &HiveFilmDay) -> FilmHiveDay {
    let mass = |range: Range<f64>| range.map(Kilogram::new);
    FilmHiveDay {
        alive: day.alive,
        food: day.food_kg.map(mass),
        foretold: day.foretold_kg.map(mass),
        radius: day.radius_cm.map(|centimetres| Metre::new(centimetres / 100.0)),
        core: day.core_c.map(Kelvin::from_celsius),
        caught: day.caught_g,
        frost_at_hole: day.frost_at_hole,
    }
}

/// What came, in sentences.
fn came(answer: &FilmAnswer, told: &HiveFilm, tongue: Tongue) -> Vec<String> {
    let on = day(answer.as_of);
    if told.seen_dead {
        return vec![format!("By {on} it was seen dead.")];
    }
    let about = tongue.sentence(&told.about);
    let mut says = vec![format!("On {on}: alive in {} of 100 such hives. {about}", hives(told.alive))];
    if let Some(food) = &told.food {
        let mass = |kilograms: f64| Kilogram::new(kilograms).show(tongue.system(), 1);
        let came = match food.came {
            Came::Less => "less than foretold",
            Came::AsForetold => "as foretold",
            Came::More => "more than foretold",
        };
        says.push(format!(
            "Food {}; foretold for that day {} to {}: {came}.",
            mass(food.stands_kg),
            mass(food.foretold_kg.p10),
            mass(food.foretold_kg.p90)
        ));
    }
    says.push(format!("To spring: alive, fed and queenright in {} of 100.", hives(told.alive_fed_queenright)));
    says
}
