//! A hive weighed on the spot: two sides lifted or a scale, its food reckoned, and kept as a note if the keeper likes.

use axum::extract::{Path, State};
use axum::http::Uri;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::sums::weigh::{Tare, TwoSided, Way, WeighAnswer, WeighQuestion, weigh};
use snowhum_apiary::{Colony, Hive};
use snowhum_say::{Message, Tongue, weigh_page as text};
use snowhum_units::{Bare, Kilogram, Measured, Metre, Range, System};
use uuid::Uuid;

use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};
use crate::words::{cautioned, masses};

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
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading(&colony.name));
    let bees = view.colony_now(at).and_then(|now| Some(now.bees.as_ref()?.p50)).unwrap_or(colony.bees.p50);
    let answered = question(&asked, hive, bees, tongue.system())
        .map(|question| question.and_then(|question| weigh(&question).map_err(|wrong| wrong.says())));
    let body = html! {
        h1 { (heading) }
        p class="ways" { a href={ "/hive/" (id) } { (tongue.say(&text::back(&colony.name))) } }
        p class="lede" { (tongue.say(&text::lede())) }
        @match &answered {
            Some(Ok(answer)) => (told(&view, colony, answer)),
            Some(Err(wrong)) => p class="caution" { (tongue.say(wrong)) },
            None => {}
        }
        (form(id, &asked, tongue))
        (beliefs(tongue))
        (heard("/hive/{colony}/weigh", tongue))
    };
    Ok(page(&view, Place::Elsewhere, &heading, &body))
}

/// The question a form asks; none where nothing was typed.
fn question(asked: &Asked, hive: &Hive, bees: f64, system: System) -> Option<Result<WeighQuestion, Message>> {
    let typed = ["left", "right", "scale"].iter().any(|name| asked.get(name).is_some());
    typed.then(|| {
        let kg = |name: &str| measured::<Kilogram>(asked, name, system);
        let length = |name: &str| measured::<Metre>(asked, name, system);
        let lowest = hive.boxes.first().ok_or_else(text::no_box)?;
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
            _ => return Err(text::one_way()),
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
fn measured<Q: Measured>(asked: &Asked, name: &str, system: System) -> Result<Option<Q>, Message> {
    let Some(written) = asked.get(name) else { return Ok(None) };
    let wrong = |_| text::wrong(shortened(written), Q::usual(system));
    Q::read(written, Bare::In(system)).map(Some).map_err(wrong)
}

fn told(view: &View, colony: &Colony, answer: &WeighAnswer) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    html! {
        section class="kept" role="status" {
            @if let Some(stores) = &answer.stores_kg { h2 { (say(text::food(masses(stores, tongue.system())))) } }
            (parts(answer, tongue))
            @for said in &answer.say { p { (tongue.say(said)) } }
            @if let Some((kg, two_deviations)) = answer.stores_noted() {
                form method="post" action={ "/hive/" (colony.id.0) "/note" } {
                    input type="hidden" name="visit" value=(ids::new_id(jiff::Timestamp::now()));
                    input type="hidden" name="line" value={ "stores=" (kg) " kg ± " (two_deviations) " kg" };
                    input type="hidden" name="words" value=(tongue.say(&answer.way));
                    button class="main" { (say(text::keep())) }
                }
                p class="small" { (say(text::kept())) }
            }
            details { summary { (say(text::who())) } ul { @for source in &answer.sources { li { (tongue.say(source)) } } } }
        }
    }
}

/// What the weight is made of.
fn parts(answer: &WeighAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let of = |range: &Range<f64>| masses(range, tongue.system());
    let tare =
        |tare: &Range<f64>| if answer.tare_parts.is_empty() { of(tare) } else { say(text::tare_parts(of(tare))) };
    html! {
        dl {
            @if let Some(whole) = &answer.whole_kg { dt { (say(text::whole())) } dd { (of(whole)) } }
            @if let Some(own) = &answer.tare_kg { dt { (say(text::tare())) } dd { (tare(own)) } }
            @if let Some(bees) = &answer.bees_kg { dt { (say(text::bees())) } dd { (of(bees)) } }
            @if let Some(lifted) = &answer.lifted { dt { (say(text::two_sides())) } dd { (say(text::lifted(lifted.factor))) } }
        }
    }
}

/// A label in a unit.
type Label = fn(&'static str) -> Message;

/// Each field with what is asked in the keeper's unit; whether that is one of mass.
const FIELDS: [(&str, Label, bool); 8] = [
    ("left", text::left, true),
    ("right", text::right, true),
    ("inset", text::inset, false),
    ("lift", text::lift, false),
    ("width", text::width, false),
    ("scale", text::scale, true),
    ("tare", text::own_tare, true),
    ("other", text::other, true),
];

fn form(id: Uuid, asked: &Asked, tongue: Tongue) -> Markup {
    let (mass_unit, length_unit) = (Kilogram::usual(tongue.system()), Metre::usual(tongue.system()));
    html! {
        form method="get" action={ "/hive/" (id) "/weigh" } {
            div class="stack" {
                @for (name, asks, is_mass) in FIELDS {
                    div {
                        label for=(name) { (tongue.say(&asks(if is_mass { mass_unit } else { length_unit }))) }
                        input id=(name) name=(name) inputmode="decimal" maxlength="12" autocomplete="off" value=(asked.get(name).unwrap_or_default());
                    }
                }
            }
            button class="main" { (tongue.say(&text::reckon())) }
        }
    }
}

fn beliefs(tongue: Tongue) -> Markup {
    html! {
        section {
            h2 { (tongue.say(&text::says())) }
            ul class="evidence" {
                @for belief in [text::one_side(), text::supports(), text::by_hand()] { li { (tongue.say(&belief)) } }
                @for hazard in [Hazard::OneSide, Hazard::Lifting] { li { (cautioned(tongue, &hazard.says())) } }
            }
        }
    }
}
