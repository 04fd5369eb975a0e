//! What holds of the texts.

use jiff::civil::date;
use snowhum_say::{Message, Tongue, both_ways, dead_bees, indoors, now, words};
use snowhum_units::{Kelvin, Kilogram, System};

#[test]
fn units_are_those_of_the_reader() {
    let food = now::moved_food(Kilogram::new(11.0), Kilogram::new(13.0));
    assert_eq!(Tongue::new(System::Metric).say(&food), "food from 13.0 kg to 11.0 kg");
    assert_eq!(Tongue::new(System::Us).say(&food), "food from 28.7 lb to 24.3 lb");
}

#[test]
fn a_list_and_a_message_are_facts_like_any_other() {
    let places = vec![dead_bees::floor(40), dead_bees::snow(7)];
    let lie = dead_bees::lie(50, places);
    assert_eq!(Tongue::BRITISH.say(&lie), "of some 50 dead about 40 on its floor, 7 there under snow");
    let several = Message::sentences([words::by(date(2026, 2, 7)), Message::NONE, Message::own("Alder")]);
    assert_eq!(Tongue::BRITISH.say(&several), "by 7 February Alder");
}

#[test]
fn what_reads_alike_is_said_once() {
    let ends = [3.8, 4.2].map(|celsius| indoors::degrees(Kelvin::from_celsius(celsius)));
    let air = indoors::air(ends.into());
    assert_eq!(Tongue::new(System::Metric).say(&air), "4 °C");
    assert_eq!(Tongue::new(System::Us).say(&air), "39 °F to 40 °F");
}

#[test]
fn one_is_not_many() {
    assert_eq!(Tongue::BRITISH.say(&both_ways(0.99)), "of 100 hives like this about 99 are, 1 is not");
}

#[test]
fn json_is_british_and_metric_and_is_read_as_it_stands() {
    let food = now::moved_food(Kilogram::new(11.0), Kilogram::new(13.0));
    let json = serde_json::to_string(&food).unwrap();
    assert_eq!(json, "\"food from 13.0 kg to 11.0 kg\"");
    let read: Message = serde_json::from_str(&json).unwrap();
    assert_eq!(Tongue::new(System::Us).say(&read), "food from 13.0 kg to 11.0 kg");
}
