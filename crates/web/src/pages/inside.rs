//! Inside the cluster: what happens to bees in winter? A page to share.

use axum::extract::State;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::HiveAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_say::{Message, inside_page as text};
use snowhum_units::{Kelvin, Kilogram, System};

use super::questions::heard;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::marked;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let chosen = asked.get("hive").and_then(|text| view.meant(text).ok().map(|(at, _)| at));
    let living = |at: &usize| settled(&view, *at).is_some();
    let at = chosen.filter(living).or_else(|| (0..view.apiary.colonies.len()).find(living));
    let say = |message: Message| view.tongue().say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede())) }
        @match at.and_then(|at| settled(&view, at).map(|(colony, hive)| (at, colony, hive))) {
            Some((at, colony, hive)) => (story(&view, at, colony, hive)),
            None => p { (say(text::none())) },
        }
        (heard("/inside", view.tongue()))
        (others(&view))
    };
    Ok(page(&view, Place::Inside, &heading, &body))
}

fn settled(view: &View, at: usize) -> Option<(&ColonyNow, &HiveAnswer)> {
    let settled = view.standing.as_ref()?.present.settled.get(at)?.as_ref()?;
    Some((view.colony_now(at)?, settled))
}

/// A household bulb's heat is what most readers can feel, W.
const BULB_W: f64 = 10.0;

fn story(view: &View, at: usize, colony: &ColonyNow, hive: &HiveAnswer) -> Markup {
    let Some(standing) = &view.standing else { return html! {} };
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let today = (standing.present.now.as_of, standing.present.today.air);
    html! {
        p { (marked(tongue, &ball(today, colony, hive, tongue.system()))) }
        @if let Some(picture) = draw::cutaway(view, at, draw::Parts::First) { (picture) }
        p { (say(warmth(hive))) }
        p { (say(text::fuel(grams(hive.food_g_per_day), grams(hive.water_g_per_day)))) }
        p { (say(text::spring())) }
        p class="small" { (say(text::figures())) }
    }
}

fn grams(mass: f64) -> Kilogram {
    Kilogram::new(mass * 1e-3)
}

fn ball((on, air): (Date, Kelvin), colony: &ColonyNow, hive: &HiveAnswer, system: System) -> Message {
    let bees = colony.bees.as_ref().map_or(0.0, |bees| bees.p50);
    let across_cm = 2.0 * hive.radius_cm;
    let size = match system {
        System::Us => text::inches(across_cm / 2.54),
        System::Metric => text::centimetres(across_cm),
    };
    text::ball(air, crate::words::bees(bees), &colony.name, on, size)
}

fn warmth(hive: &HiveAnswer) -> Message {
    let bulb = match hive.heat_w / BULB_W {
        share if share < 0.7 => "less",
        share if share > 1.4 => "more",
        _ => "alike",
    };
    let [below, core, skin] = [hive.floor_zone_c, hive.core_c, hive.mantle_c].map(Kelvin::from_celsius);
    text::warmth(below, bulb, core, hive.heat_w.max(1.0), skin)
}

fn others(view: &View) -> Markup {
    html! {
        nav class="walk no-print" aria-label=(view.tongue().say(&text::others())) {
            @for (at, colony) in view.apiary.colonies.iter().enumerate() {
                @if settled(view, at).is_some() { a href={ "/inside?hive=" (colony.id.0) } { (colony.name) } }
            }
        }
    }
}
