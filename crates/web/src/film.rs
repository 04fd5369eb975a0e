//! A winter told as a film is drawn: the same for the page and for the file, and no place is named in it.

use snowhum_advice::film::{Came, FilmAnswer, HiveFilm, HiveFilmDay};
use snowhum_advice::yard;
use snowhum_apiary::{Apiary, OpeningKind, food_in};
use snowhum_picture::{FilmDay, FilmHive, FilmHiveDay, FilmNote, FoodCame, WinterFilm};
use snowhum_say::{Message, Tongue, draw_page, hives, shared_page, tell_page as text};
use snowhum_units::{Kelvin, Kilogram, Metre, Range};
use snowhum_winter::Housed;

use crate::section;
use crate::words::plain;

/// A yard's winter, or one hive's, as a file of its own; `apiary` is the yard it tells of.
#[must_use]
pub fn told_winter(answer: &FilmAnswer, apiary: &Apiary, tongue: Tongue) -> String {
    drawn(answer, apiary, tongue).standalone()
}

/// The film as it is drawn.
pub(crate) fn drawn(answer: &FilmAnswer, apiary: &Apiary, tongue: Tongue) -> WinterFilm {
    let housed = section::as_dressed(apiary, yard::housed_to(apiary, answer.as_of), answer.as_of);
    let hive = |told: &HiveFilm| {
        let of = housed.iter().find(|one| one.colony.name == told.name)?;
        Some(hive(answer, told, of, tongue))
    };
    let of_day = |(at, weather): (usize, &snowhum_advice::film::FilmWeather)| FilmDay {
        when: tongue.say(&shared_page::short_day(answer.date(at))),
        month: (answer.date(at).day() == 1).then(|| tongue.say(&draw_page::month(answer.date(at)))),
        low: Kelvin::from_celsius(weather.low_c),
        high: Kelvin::from_celsius(weather.high_c),
        snow: Metre::new(weather.snow_cm / 100.0),
    };
    WinterFilm {
        title: tongue.say(&title(answer)),
        lead: tongue.say_all(&lead(answer)),
        days: answer.weather.iter().enumerate().map(of_day).collect(),
        today: answer.today(),
        hives: answer.hives.iter().filter_map(hive).collect(),
        tongue,
    }
}

pub(crate) fn title(answer: &FilmAnswer) -> Message {
    match answer.hives.as_slice() {
        [one] => text::of_hive(&one.name),
        all => text::of_hives(all.len()),
    }
}

fn lead(answer: &FilmAnswer) -> Vec<Message> {
    let last = answer.date(answer.weather.len().saturating_sub(1));
    let lead = text::lead(answer.from, last, answer.as_of);
    [lead].into_iter().chain(answer.invented.then(text::invented)).collect()
}

fn hive(answer: &FilmAnswer, told: &HiveFilm, housed: &Housed, tongue: Tongue) -> FilmHive {
    let hive = &housed.hive;
    let holds: f64 = hive.boxes.iter().map(|one| food_in(f64::from(one.frames), one.comb_side).p50.get()).sum();
    let note = |note: &snowhum_advice::film::FilmNote| FilmNote {
        day: note.day,
        when: tongue.say(&shared_page::day(note.on)),
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
        foretold: tongue.say(&text::foretold(hives(told.foretold_alive), &told.foretold_food, answer.from)),
        came: tongue.say_all(&came(answer, told)),
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
fn came(answer: &FilmAnswer, told: &HiveFilm) -> Vec<Message> {
    if told.seen_dead {
        return vec![text::seen_dead(answer.as_of)];
    }
    let food = told.food.as_ref().map(|food| {
        let came = match food.came {
            Came::Less => "less",
            Came::AsForetold => "as-foretold",
            Came::More => "more",
        };
        let [high, low, stands] = [food.foretold_kg.p90, food.foretold_kg.p10, food.stands_kg].map(Kilogram::new);
        text::food(came, high, low, stands)
    });
    let came = text::came(&told.about, hives(told.alive), answer.as_of);
    [came].into_iter().chain(food).chain([text::to_spring(hives(told.alive_fed_queenright))]).collect()
}
