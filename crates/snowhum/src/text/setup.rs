//! Set-ups side by side.

use snowhum_advice::setup::{HARDLY, SetupAnswer, SetupRow, SetupVerdict};
use snowhum_units::{Kilogram, System};

use crate::text::voice::in_words;
use crate::text::wrapped;

/// Ounces in a gram.
const OUNCES: f64 = 1.0 / 28.349_523;

pub(crate) fn words(answer: &SetupAnswer, currency: &str, system: System) -> String {
    let (food, water) = match system {
        System::Metric => ("kg", "water, g a day"),
        System::Us => ("lb", "water, oz a day"),
    };
    let mut page = format!("{}: winter set-ups under the same weather\n\n", answer.colony);
    page += &line(["", "alive", "food", water, "W/K", "price", "gain"].map(str::to_owned));
    page += &line(["", "of 100", food, "lid/walls/base", "", currency, "of 100"].map(str::to_owned));
    page += &row(&answer.base, system);
    for tried in &answer.tries {
        page += &row(tried, system);
    }
    page += "\n";
    for tried in &answer.tries {
        page += &wrapped(&format!("  {}: {}", in_words(&tried.name), verdict(tried)), 4);
        page += "\n";
    }
    page
}

/// One line of the table.
fn line([name, alive, food, water, loss, price, gain]: [String; 7]) -> String {
    let name: String = name.chars().take(26).collect();
    format!("  {name:<26} {alive:>6} {food:>6} {water:>15} {loss:>6} {price:>7} {gain:>6}\n")
}

fn row(row: &SetupRow, system: System) -> String {
    let food = Kilogram::new(row.food_kg).show(system, 1);
    let caught = &row.condensation_g_per_day;
    let [lid, walls, floor] = [caught.lid, caught.walls, caught.floor].map(|grams| match system {
        System::Metric => format!("{grams:.0}"),
        System::Us => format!("{:.2}", grams * OUNCES),
    });
    line([
        in_words(&row.name),
        format!("{:.0}", 100.0 * row.alive_in_spring),
        food.split(' ').next().unwrap_or_default().to_owned(),
        format!("{lid}/{walls}/{floor}"),
        format!("{:.2}", row.heat_loss_w_per_k),
        format!("{:.0}", row.cost_money),
        format!("{:.1}", row.difference_hives_in_100),
    ])
}

fn verdict(row: &SetupRow) -> String {
    let margin = format!("{:+.1} ± {:.1} hives in 100", row.difference_hives_in_100, row.plus_minus);
    match row.verdict() {
        SetupVerdict::MayBeChance => format!("no real difference: what there is may be chance ({margin})"),
        SetupVerdict::Hardly => format!("no real difference: fewer than {HARDLY:.0} hives in 100 ({margin})"),
        SetupVerdict::Better => format!("better: {margin} alive, fed and queenright"),
        SetupVerdict::Worse => format!("worse: {margin} alive, fed and queenright"),
    }
}
