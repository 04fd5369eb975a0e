//! A film in every language.

use snowhum_picture::{FILM_SCRIPT, FilmDay, FilmHive, FilmHiveDay, FilmNote, FoodCame, WinterFilm};
use snowhum_say::{Language, Tongue};
use snowhum_units::{Kelvin, Kilogram, Metre, Range};

fn film(language: Language) -> WinterFilm {
    let food = Range { p10: 10.5, p50: 12.5, p90: 14.5 }.map(Kilogram::new);
    let day = FilmHiveDay {
        alive: 0.97,
        food: Some(food),
        foretold: Some(food),
        radius: Some(Metre::new(0.11)),
        core: Some(Kelvin::from_celsius(21.0)),
        caught: 7.0,
        frost_at_hole: 1.0,
    };
    let note = FilmNote { day: 0, when: "1.1.".into(), note: "<i>".into(), moved: "=".into() };
    let hive = FilmHive {
        name: "Alder".into(),
        width: Metre::new(0.375),
        boxes: vec![Metre::new(0.244)],
        is_wrapped: true,
        has_hole: true,
        holds: Kilogram::new(20.0),
        days: vec![day; 2],
        notes: vec![note],
        foretold: String::new(),
        came: Vec::new(),
        food_came: Some(FoodCame::Less),
    };
    let air = Kelvin::from_celsius(-4.0);
    let day = FilmDay { when: "1.1.".into(), month: Some("1".into()), low: air, high: air, snow: Metre::new(0.1) };
    let tongue = Tongue::BRITISH.in_language(language);
    WinterFilm { title: "Alder".into(), lead: Vec::new(), days: vec![day; 2], today: 1, hives: vec![hive], tongue }
}

#[test]
fn what_the_script_writes_the_page_carries_in_every_language() {
    let asked = || FILM_SCRIPT.split("says.").skip(1).map(|rest| rest.split(|c: char| !c.is_alphabetic()).next());
    assert!(asked().count() >= 12);
    for language in Language::ALL {
        let page = film(language).inline();
        for name in asked().flatten() {
            assert!(page.contains(&format!("\"{name}\":\"")), "{language:?} lacks {name}");
        }
    }
}

#[test]
fn a_film_is_told_in_the_language_of_its_reader_with_the_numbers_of_it() {
    let page = film(Language::German).standalone();
    for said in
        ["lang=\"de\"", "Futter 12,5 kg (10,5 bis 14,5)", "97 von 100 solchen leben", "Reif am Flugloch", "−4\u{a0}°C"]
    {
        assert!(page.contains(said), "{said}");
    }
    let page = film(Language::German).inline();
    let text = page.split(['<', '>']).skip(2).step_by(2).take_while(|text| !text.starts_with("{\"says\""));
    let words: Vec<&str> = text.flat_map(|text| text.split(|c: char| !c.is_alphabetic())).collect();
    for english in ["food", "bees", "snow", "alive", "foretold", "day", "of", "to", "and", "the"] {
        assert!(!words.contains(&english), "{english}");
    }
}
