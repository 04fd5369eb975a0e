//! A hive weighed on the spot: two sides lifted or a scale, its food reckoned, and kept as a note if the keeper likes.

use axum::extract::{Path, State};
use axum::http::Uri;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::sums::weigh::{Tare, TwoSided, Way, WeighAnswer, WeighQuestion, weigh};
use snowhum_apiary::{Colony, Hive};
use snowhum_units::{Bare, Kilogram, Measured, Metre, System};
use uuid::Uuid;

use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};
use crate::words::masses;

pub(crate) async fn show(
    State(app): State<App>,
    Path(id): Path<String>,
    uri: Uri,
    asked: Asked,
) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (at, colony) = view.addressed(&id, &uri)?;
    let id = colony.id.0;
    let hive = view.apiary.hive_of(colony).ok_or(Fault::Missing("hive"))?;
    let system = view.settings.system;
    let bees = view.colony_now(at).and_then(|now| Some(now.bees.as_ref()?.p50)).unwrap_or(colony.bees.p50);
    let answered = question(&asked, hive, bees, system).map(|question| {
        question.and_then(|question| weigh(&question).map_err(|wrong| view.tongue().say(&wrong.says())))
    });
    let body = html! {
        h1 { "Weigh " (colony.name) }
        p class="ways" { a href={ "/hive/" (id) } { "Back to " (colony.name) } }
        p class="lede" { "Lift one side straight up until it is just clear, read the lowest steady figure; then the other side." }
        @match &answered {
            Some(Ok(answer)) => (told(&view, colony, answer)),
            Some(Err(wrong)) => p class="caution" { (wrong) },
            None => {}
        }
        (form(id, &asked, system))
        (beliefs())
        (heard("/hive/{colony}/weigh", view.tongue()))
    };
    Ok(page(&view, Place::Elsewhere, &format!("Weigh {}", colony.name), &body))
}

/// The question a form asks; none where nothing was typed.
fn question(asked: &Asked, hive: &Hive, bees: f64, system: System) -> Option<Result<WeighQuestion, String>> {
    let typed = ["left", "right", "scale"].iter().any(|name| asked.get(name).is_some());
    typed.then(|| {
        let kg = |name: &str| measured::<Kilogram>(asked, name, system);
        let length = |name: &str| measured::<Metre>(asked, name, system);
        let lowest = hive.boxes.first().ok_or_else(|| "The hive has no box.".to_owned())?;
        let way = match (kg("left")?, kg("right")?, kg("scale")?) {
            (Some(left), Some(right), None) => Way::TwoSided(TwoSided {
                left,
                right,
                width: length("width")?.unwrap_or(lowest.width + 2.0 * lowest.wall.thickness),
                inset: length("inset")?.unwrap_or(Metre::ZERO),
                lift: length("lift")?.unwrap_or(Metre::new(0.01)),
                centre_height: hive.boxes_height() / 2.0,
            }),
            (None, None, Some(whole)) => Way::Scale(whole),
            _ => return Err("Give both sides, or the whole hive on a scale.".to_owned()),
        };
        let tare = match kg("tare")? {
            Some(own) => Tare::Own(own),
            None => Tare::Parts { boxes: hive.boxes.clone(), lid: hive.lid.clone() },
        };
        let other = kg("other")?.unwrap_or(Kilogram::ZERO);
        Ok(WeighQuestion { way, tare, bees: Some(bees), hive: Some(hive.standard.clone()), other })
    })
}

/// A quantity as typed: with its unit, or a bare number in the keeper's.
fn measured<Q: Measured>(asked: &Asked, name: &str, system: System) -> Result<Option<Q>, String> {
    let Some(text) = asked.get(name) else { return Ok(None) };
    let wrong = |_| format!("{}: write a figure such as 21.5 {}.", shortened(text), Q::usual(system));
    Q::read(text, Bare::In(system)).map(Some).map_err(wrong)
}

fn told(view: &View, colony: &Colony, answer: &WeighAnswer) -> Markup {
    let (tongue, system) = (view.tongue(), view.settings.system);
    html! {
        section class="kept" role="status" {
            @if let Some(stores) = &answer.stores_kg { h2 { "Food: " (masses(stores, system)) } }
            dl {
                @if let Some(whole) = &answer.whole_kg { dt { "Whole hive" } dd { (masses(whole, system)) } }
                @if let Some(tare) = &answer.tare_kg { dt { "Empty, with frames" } dd { (masses(tare, system)) @if !answer.tare_parts.is_empty() { ", reckoned from its parts: weigh an empty one to know better" } } }
                @if let Some(bees) = &answer.bees_kg { dt { "Bees" } dd { (masses(bees, system)) } }
                @if let Some(lifted) = &answer.lifted {
                    dt { "Two sides" }
                    dd { "their sum times " (format!("{:.3}", lifted.factor)) " for supports set in and a side lifted" }
                }
            }
            @for say in &answer.say { p { (tongue.say(say)) } }
            @if let Some((kg, two_deviations)) = answer.stores_noted() {
                form method="post" action={ "/hive/" (colony.id.0) "/note" } {
                    input type="hidden" name="visit" value=(ids::new_id(jiff::Timestamp::now()));
                    input type="hidden" name="line" value={ "stores=" (kg) " kg ± " (two_deviations) " kg" };
                    input type="hidden" name="words" value=(tongue.say(&answer.way));
                    button class="main" { "Keep it as a note" }
                }
                p class="small" { "Kept with its error: the estimate weighs it by that." }
            }
            details { summary { "Says who?" } ul { @for source in &answer.sources { li { (tongue.say(source)) } } } }
        }
    }
}

/// Each field with what is asked; the unit is the keeper's.
const FIELDS: [(&str, &str, bool); 8] = [
    ("left", "One side, lowest steady reading", true),
    ("right", "The other side", true),
    ("inset", "From the lifted edge in to where the hive rests", false),
    ("lift", "How far the side was lifted", false),
    ("width", "Between the lift points, if not the hive's own width", false),
    ("scale", "Or the whole hive on a scale", true),
    ("tare", "The empty hive with its frames, if you weighed it", true),
    ("other", "Snow, feeder, wrap, other weight", true),
];

fn form(id: Uuid, asked: &Asked, system: System) -> Markup {
    let (mass_unit, length_unit) = (Kilogram::usual(system), Metre::usual(system));
    html! {
        form method="get" action={ "/hive/" (id) "/weigh" } {
            div class="stack" {
                @for (name, words, is_mass) in FIELDS {
                    div {
                        label for=(name) { (words) ", " (if is_mass { mass_unit } else { length_unit }) }
                        input id=(name) name=(name) inputmode="decimal" maxlength="12" autocomplete="off" value=(asked.get(name).unwrap_or_default());
                    }
                }
            }
            button class="main" { "Reckon" }
        }
    }
}

fn beliefs() -> Markup {
    html! {
        section {
            h2 { "What a weighing says" }
            ul class="evidence" {
                li { "One side is no weight; the same side each time is a trend." }
                li { "Supports set in from the edges make two sides read 4 to 14 % low: give the inset, and it is put right." }
                li { "Light, fair, heavy mean something once one hive of the row was lifted by hand and then weighed: lift that one first each time, and call the others by it." }
                @for hazard in [Hazard::OneSide, Hazard::Lifting] { li { (hazard.says()) } }
            }
        }
    }
}
