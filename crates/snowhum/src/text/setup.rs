//! Set-ups side by side.

use snowhum_advice::setup::{SetupAnswer, SetupRow};

use crate::text::wrapped;

pub(crate) fn words(answer: &SetupAnswer, currency: &str) -> String {
    let mut page = format!("{}: winter set-ups under the same weather\n\n", answer.colony);
    page += &format!(
        "  {:<26} {:>6} {:>6} {:>15} {:>6} {:>7} {:>6}\n",
        "", "alive", "food", "water, g a day", "W/K", "price", "gain"
    );
    page += &format!(
        "  {:<26} {:>6} {:>6} {:>15} {:>6} {:>7} {:>6}\n",
        "", "of 100", "kg", "lid/walls/base", "", currency, "of 100"
    );
    page += &row(&answer.base);
    for tried in &answer.tries {
        page += &row(tried);
    }
    page += "\n";
    for tried in &answer.tries {
        page += &wrapped(&format!("  {}: {}", tried.name, verdict(tried)), 4);
        page += "\n";
    }
    page
}

fn row(row: &SetupRow) -> String {
    let water = &row.condensation_g_per_day;
    let name: String = row.name.chars().take(26).collect();
    format!(
        "  {:<26} {:>6.0} {:>6.1} {:>15} {:>6.2} {:>7.0} {:>6.1}\n",
        name,
        100.0 * row.alive_in_spring,
        row.food_kg,
        format!("{:.0}/{:.0}/{:.0}", water.lid, water.walls, water.floor),
        row.heat_loss_w_per_k,
        row.cost_money,
        row.difference_hives_in_100,
    )
}

/// Hives in a hundred below which a difference is none to a keeper.
const LEAST_DIFFERENCE: f64 = 1.0;

fn verdict(row: &SetupRow) -> String {
    let margin = format!("{:+.1} ± {:.1} hives in 100", row.difference_hives_in_100, row.plus_minus);
    if row.too_close_to_call || row.difference_hives_in_100.abs() < LEAST_DIFFERENCE {
        format!("no real difference to survival ({margin})")
    } else if row.difference_hives_in_100 > 0.0 {
        format!("better: {margin} alive, fed and queenright")
    } else {
        format!("worse: {margin} alive, fed and queenright")
    }
}
