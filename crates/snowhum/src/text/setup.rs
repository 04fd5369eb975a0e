//! Set-ups side by side.

use snowhum_advice::setup::{HARDLY, SetupAnswer, SetupRow, SetupVerdict};
use snowhum_say::{Message, setup_terminal as say, shared_terminal as shared};
use snowhum_units::{Kilogram, System, WattPerKelvin};

use crate::text::voice::{in_words, tongue};
use crate::text::wrapped;

pub(crate) fn words(answer: &SetupAnswer, currency: &str) -> String {
    let us = tongue().system() == System::Us;
    let mut page = in_words(&say::title(&answer.colony)) + "\n\n";
    page += &line([Message::NONE, say::alive(), say::food(), say::water(us), say::heat(us), say::price(), say::gain()]);
    let (of_hundred, currency) = (say::of_hundred(), Message::from(currency));
    page +=
        &line([Message::NONE, of_hundred.clone(), say::unit(us), say::faces(), Message::NONE, currency, of_hundred]);
    page += &row(&answer.base);
    page += &answer.tries.iter().map(row).collect::<String>();
    page += "\n";
    for tried in &answer.tries {
        page += &(wrapped(shared::of(&tried.name, verdict(tried)), 4) + "\n");
    }
    page
}

/// One line of the table.
fn line(cells: [Message; 7]) -> String {
    let [name, alive, food, water, loss, price, gain] = cells.map(|cell| in_words(&cell));
    let name: String = name.chars().take(26).collect();
    format!("  {name:<26} {alive:>6} {food:>6} {water:>15} {loss:>6} {price:>7} {gain:>6}\n")
}

fn row(row: &SetupRow) -> String {
    let caught = &row.condensation_g_per_day;
    let [lid, walls, floor] = [caught.lid, caught.walls, caught.floor].map(|grams| Kilogram::new(grams / 1e3));
    line([
        row.name.clone(),
        say::number(100.0 * row.alive_in_spring),
        say::stores(Kilogram::new(row.food_kg)),
        say::caught(floor, lid, walls),
        say::loss(WattPerKelvin::new(row.heat_loss_w_per_k)),
        say::number(row.cost_money),
        say::tenths(row.difference_hives_in_100),
    ])
}

fn verdict(row: &SetupRow) -> Message {
    let hives = row.difference_hives_in_100;
    let margin = say::margin(hives, hives.is_sign_positive(), row.plus_minus);
    match row.verdict() {
        SetupVerdict::MayBeChance => say::chance(margin),
        SetupVerdict::Hardly => say::hardly(HARDLY, margin),
        SetupVerdict::Better => say::better(margin),
        SetupVerdict::Worse => say::worse(margin),
    }
}
