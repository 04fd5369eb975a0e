//! A hive's figures: what the next look should show; heat, air and water a tap down.

use maud::{Markup, html};
use snowhum_advice::now::ColonyNow;
use snowhum_advice::words::in_hundred;
use snowhum_units::{Kelvin, System};

use super::apiary::why;
use crate::view::View;
use crate::words::date;

pub(crate) fn expectations(now: &ColonyNow, system: System) -> Markup {
    let next = &now.expect_next;
    html! {
        p { "On " (date(next.on)) " at " (Kelvin::from_celsius(next.air_c).show(system, 0)) ":" }
        dl {
            dt { (if next.indoors { "Dead bees on its floor" } else { "New dead bees" }) } dd { (next.dead_bees.words()) " " (why("dead")) }
            @if let Some(frost) = next.frost_at_hole { dt { "New rime at the hole" } dd { (in_hundred(frost)) " " (why("rime")) } }
            dt { "A hum, with an ear at the wall" } dd { (in_hundred(next.hum)) " " (why("hum")) }
            @if !next.indoors { dt { "A cleansing flight" } dd { (in_hundred(next.flight)) " " (why("flight")) } }
        }
    }
}

pub(crate) fn figures(view: &View, at: usize) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let Some(Some(hive)) = standing.present.settled.get(at) else { return html! {} };
    let system = view.settings.system;
    let Some(today) = standing.present.at_hives.get(at) else { return html! {} };
    let grams = hive.condensation_g_per_day;
    let degrees = |celsius: f64| Kelvin::from_celsius(celsius).show(system, 1);
    html! {
        details class="folded" {
            summary { "Heat, air and water" }
            p { (if view.indoors(at).is_some_and(|indoors| indoors.is_in) { "In its room today: " } else { "At today's weather: " }) (today.air.show(system, 0)) ", wind " (today.wind.show(system, 1)) " at the hives." }
            dl class="figures" {
                dt { "Heat of the colony" } dd { (format!("{:.1} W", hive.heat_w)) " " (why("conductance")) }
                dt { "Heat loss" } dd { (format!("{:.2} W for each degree", hive.heat_loss_w_per_k)) }
                dt { "Core, mantle" } dd { (degrees(hive.core_c)) ", " (degrees(hive.mantle_c)) " " (why("core")) }
                dt { "Air round the cluster" } dd { (degrees(hive.warm_zone_c)) }
                dt { "Food eaten" } dd { (format!("{:.0} g a day", hive.food_g_per_day)) }
                dt { "Water given off" } dd { (format!("{:.0} g a day", hive.water_g_per_day)) }
                dt { "Caught by lid, walls, floor" } dd { (format!("{:.0}, {:.0}, {:.0} g a day", grams.lid, grams.walls, grams.floor)) }
                dt { "Dripping on the cluster" } dd { (format!("{:.0} g a day", hive.drip_on_cluster_g_per_day)) }
                dt { "Air in and out" } dd { (format!("{:.2} L a second", hive.air_flow_l_per_s)) }
                dt { "Humidity, carbon dioxide" } dd { (format!("{:.0} %, {:.1} %", hive.humidity_percent, hive.co2_percent)) }
            }
        }
    }
}
