//! Inside the cluster: what happens to bees in winter? A page to share.

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::HiveAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_advice::words::day;
use snowhum_units::Kelvin;

use super::questions::heard;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let chosen = asked.get("hive").and_then(|text| view.meant(text).ok().map(|(at, _)| at));
    let living = |at: &usize| settled(&view, *at).is_some();
    let at = chosen.filter(living).or_else(|| (0..view.apiary.colonies.len()).find(living));
    let body = html! {
        h1 { "Inside the cluster" }
        p class="lede" { "What happens to bees in winter?" }
        @match at.and_then(|at| settled(&view, at).map(|(colony, hive)| (at, colony, hive))) {
            Some((at, colony, hive)) => (story(&view, at, colony, hive)),
            None => p { "No living colony to tell of yet." },
        }
        (heard("/inside", view.tongue()))
        (others(&view))
    };
    Ok(page(&view, Place::Inside, "Inside the cluster", &body))
}

fn settled(view: &View, at: usize) -> Option<(&ColonyNow, &HiveAnswer)> {
    let settled = view.standing.as_ref()?.present.settled.get(at)?.as_ref()?;
    Some((view.colony_now(at)?, settled))
}

/// A household bulb's heat is what most readers can feel, W.
const BULB_W: f64 = 10.0;

fn story(view: &View, at: usize, colony: &ColonyNow, hive: &HiveAnswer) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let system = view.settings.system;
    let degrees = |celsius: f64| Kelvin::from_celsius(celsius).show(system, 0);
    let bees = colony.bees.as_ref().map_or(0.0, |bees| bees.p50);
    let across = 2.0 * hive.radius_cm;
    let across = if system == snowhum_units::System::Us {
        format!("{:.0} inches", across / 2.54)
    } else {
        format!("{across:.0} cm")
    };
    html! {
        p {
            "It is " (day(standing.present.now.as_of)) ", " (standing.present.today.air.show(system, 0)) " outside. In the hive called "
            strong { (colony.name) } " about " (crate::words::bees(bees)) " bees hang together in a ball " (across)
            " across. They do not sleep."
        }
        @if let Some(picture) = draw::cutaway(view, at, draw::Parts::First) { (picture) }
        p {
            "In the middle, as long as there is no brood, it is " (degrees(hive.core_c)) "; at the skin, where bees sit head inwards and shoulder to shoulder, "
            (degrees(hive.mantle_c)) ". They warm it by trembling their flight muscles without moving their wings: "
            (format!("{:.0} watts", hive.heat_w.max(1.0))) " in all, "
            (if hive.heat_w < 0.7 * BULB_W { "less than" } else if hive.heat_w > 1.4 * BULB_W { "more than" } else { "about as much as" })
            " one small light bulb. They do not heat the hive: " (degrees(hive.floor_zone_c)) " is the air below them."
        }
        p {
            "The fuel is food from the combs, " (format!("{:.0} grams", hive.food_g_per_day)) " today. It leaves as "
            (format!("{:.0} grams", hive.water_g_per_day)) " of water in the air they breathe out; a dry hive lets it go, a "
            "cold one catches it as frost. No bee leaves to relieve herself until a mild day comes."
        }
        p { "When the days grow longer the queen lays again, the middle is held near 35 °C for the brood, and the food goes fastest just before the first flowers." }
        p class="small" { "Figures are computed for this hive and this day; the last line is what keepers know and the model holds too." }
    }
}

fn others(view: &View) -> Markup {
    html! {
        nav class="walk no-print" aria-label="Other hives" {
            @for (at, colony) in view.apiary.colonies.iter().enumerate() {
                @if settled(view, at).is_some() { a href={ "/inside?hive=" (colony.id.0) } { (colony.name) } }
            }
        }
    }
}
