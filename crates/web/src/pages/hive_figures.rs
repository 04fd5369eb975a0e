//! A hive's figures: what the next look should show; heat, air and water a tap down.

use maud::{Markup, html};
use snowhum_advice::HiveAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_say::{Message, Tongue, hive_page as text, in_hundred, usual};
use snowhum_units::{CubicMetrePerSecond, Kelvin, Kilogram, WattPerKelvin};

use super::apiary::why;
use crate::view::View;
use crate::words::marked;

pub(crate) fn expectations(now: &ColonyNow, tongue: Tongue) -> Markup {
    let next = &now.expect_next;
    let say = |message: Message| tongue.say(&message);
    let why = |what| why(what, tongue);
    html! {
        p { (marked(tongue, &text::expected_on(Kelvin::from_celsius(next.air_c), next.on))) }
        dl {
            dt { (say(if next.indoors { text::dead_on_floor() } else { text::new_dead() })) } dd { (say(usual(next.dead_bees))) " " (why("dead")) }
            @if let Some(frost) = next.frost_at_hole { dt { (say(text::rime())) } dd { (say(in_hundred(frost))) " " (why("rime")) } }
            dt { (say(text::hum())) } dd { (say(in_hundred(next.hum))) " " (why("hum")) }
            @if !next.indoors { dt { (say(text::flight())) } dd { (say(in_hundred(next.flight))) " " (why("flight")) } }
        }
    }
}

pub(crate) fn figures(view: &View, at: usize) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let Some(Some(hive)) = standing.present.settled.get(at) else { return html! {} };
    let Some(today) = standing.present.at_hives.get(at) else { return html! {} };
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let is_in_room = view.indoors(at).is_some_and(|indoors| indoors.is_in);
    html! {
        details class="folded" {
            summary { (say(text::figures())) }
            p { (say(text::weather(today.air, is_in_room, today.wind))) }
            dl class="figures" {
                @for (what, figure, source) in rows(hive) {
                    dt { (say(what)) } dd { (say(figure)) @if let Some(source) = source { " " (why(source, tongue)) } }
                }
            }
        }
    }
}

/// Each figure with what it is, and what to look for to see where it comes from.
fn rows(hive: &HiveAnswer) -> [(Message, Message, Option<&'static str>); 10] {
    let (grams, degrees) = (hive.condensation_g_per_day, Kelvin::from_celsius);
    let mass = |grams: f64| Kilogram::new(1e-3 * grams);
    let core = text::core_and_mantle(degrees(hive.core_c), degrees(hive.mantle_c));
    [
        (text::heat(), text::watts(hive.heat_w), Some("conductance")),
        (text::heat_loss(), text::loss(WattPerKelvin::new(hive.heat_loss_w_per_k)), None),
        (text::core_mantle(), core, Some("core")),
        (text::warm_zone(), text::degrees(degrees(hive.warm_zone_c)), None),
        (text::food_eaten(), text::grams(mass(hive.food_g_per_day)), None),
        (text::water(), text::grams(mass(hive.water_g_per_day)), None),
        (text::caught(), text::caught_grams(mass(grams.floor), mass(grams.lid), mass(grams.walls)), None),
        (text::dripping(), text::grams(mass(hive.drip_on_cluster_g_per_day)), None),
        (text::air_flow(), text::flow(CubicMetrePerSecond::new(1e-3 * hive.air_flow_l_per_s)), None),
        (text::humidity(), text::percent(hive.co2_percent, hive.humidity_percent), None),
    ]
}
