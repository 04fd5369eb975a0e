//! Winter set-up: what would change if the hive were dressed otherwise?

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::setup::{HARDLY, SetupAnswer, SetupRow, SetupVerdict, Try, WrongChange};
use snowhum_advice::yard;
use snowhum_apiary::{Apiary, Colony};
use snowhum_say::{Message, Text, hives, setup_page as text};
use snowhum_units::{Kilogram, WattPerKelvin};
use snowhum_winter::Parameters;

use super::questions::heard;
use crate::app::{App, Setting};
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};

/// What a part can be, with the change it is.
type Choice = (Text, &'static str);

/// Parts that can be swapped: the field of a form, the name, and each choice.
pub(super) const PARTS: [(&str, Text, &[Choice]); 6] = [
    (
        "Lid",
        text::lid,
        &[
            (text::foam_thin, "lid=25 mm foam"),
            (text::foam_thick, "lid=50 mm foam"),
            (text::straw, "quilt=straw 60 mm"),
            (text::bare, "lid=off"),
        ],
    ),
    (
        "Wrap",
        text::wrap,
        &[(text::felt, "wrap=felt paper"), (text::foam_thin, "wrap=25 mm foam"), (text::no_wrap, "wrap=off")],
    ),
    (
        "Upper hole",
        text::hole,
        &[
            (text::hole_small, "upper hole=20 mm"),
            (text::hole_large, "upper hole=25 mm"),
            (text::hole_shut, "upper hole=off"),
        ],
    ),
    (
        "Floor",
        text::floor,
        &[
            (text::floor_solid, "floor=solid"),
            (text::floor_mesh, "floor=open mesh"),
            (text::floor_tray, "floor=mesh with tray"),
        ],
    ),
    (
        "Entrance",
        text::entrance,
        &[
            (text::entrance_reduced, "entrance=reduced"),
            (text::entrance_full, "entrance=full"),
            (text::entrance_shut, "entrance=off"),
        ],
    ),
    ("Boxes", text::boxes, &[(text::one_deep, "boxes=deep"), (text::two_deep, "boxes=deep,deep")]),
];
/// Set-ups compared at once.
const MOST_TRIES: usize = 4;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let (at, colony) = match asked.get("hive") {
        Some(text) => view.meant(text)?,
        None => (0, view.apiary.colonies.first().ok_or(Fault::Missing("any-colony"))?),
    };
    let answered = match tries(&view.apiary, colony, &asked) {
        Ok(tries) if tries.is_empty() => None,
        Ok(tries) => Some(Ok(app.setups(&Setting { at, tries }).await)),
        Err(wrong) => Some(Err(wrong)),
    };
    let name = colony.name.clone();
    if let Some(Ok(last)) = &answered {
        view.await_for(last);
    }
    let (_, colony) = view.meant(&name)?;
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (tongue.say(&text::lede(&colony.name))) }
        @match &answered {
            Some(Ok(last)) => {
                (frame::age(&view, last))
                @match &last.answer {
                    Some(Ok(answer)) => (told(answer, &view)),
                    Some(Err(wrong)) => p class="caution" { (tongue.say(wrong)) },
                    None => {}
                }
            },
            Some(Err(wrong)) => p class="caution" { (tongue.say(wrong)) },
            None => {}
        }
        (form(&view, colony, &asked))
        (heard("/setup", view.tongue()))
    };
    Ok(page(&view, Place::Setup, &heading, &body))
}

/// The chosen parts together are one set-up; each written line is another.
fn tries(apiary: &Apiary, colony: &Colony, asked: &Asked) -> Result<Vec<Try>, Message> {
    let chosen: Vec<&str> = asked.all("part").collect();
    let mut all = Vec::new();
    if !chosen.is_empty() {
        all.push(a_try(apiary, colony, &chosen)?);
    }
    for line in asked.all("try") {
        all.push(a_try(apiary, colony, &snowhum_apiary::split_entries(line).collect::<Vec<_>>())?);
    }
    if all.len() > MOST_TRIES {
        return Err(text::too_many(MOST_TRIES));
    }
    Ok(all)
}

fn a_try(apiary: &Apiary, colony: &Colony, changes: &[&str]) -> Result<Try, Message> {
    let housed = yard::housed(apiary);
    let housed = housed.iter().find(|housed| housed.colony.id == colony.id).ok_or_else(text::no_hive)?;
    if changes.len() > PARTS.len() * 2 {
        return Err(text::too_many_changes());
    }
    let name = changes.iter().map(|change| change.replace('=', ": ")).collect::<Vec<_>>().join("; ");
    let wrong = |wrong: WrongChange| text::wrong(shortened(&wrong.change), wrong.wrong.message());
    let parameters = Parameters::shipped().map_err(|error| Message::own(error.to_string()))?;
    Try::of(name, housed, changes, (&apiary.money, &parameters)).map_err(wrong)
}

fn told(answer: &SetupAnswer, view: &View) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let rows: Vec<&SetupRow> = std::iter::once(&answer.base).chain(&answer.tries).collect();
    let lines = |row| lines(row, &view.apiary.money.currency);
    html! {
        section class="kept" role="status" {
            @for row in &answer.tries {
                h2 { (tongue.capital(&row.name)) }
                p { (say(verdict(row))) }
            }
            div class="wide" tabindex="0" role="region" aria-label=(say(text::beside())) {
                table class="beside" {
                    caption { (say(text::caption(view.apiary.as_of, &answer.colony))) }
                    thead { tr { th scope="col" { "" } @for row in &rows { th scope="col" { (tongue.say(&row.name)) } } } }
                    tbody { @for (at, (name, _)) in lines(&answer.base).iter().enumerate() {
                        tr { th scope="row" { (tongue.say(name)) } @for row in &rows { td { (tongue.say(&lines(row)[at].1)) } } }
                    } }
                }
            }
            p class="small" { (say(text::from_count())) " " a href="/source?find=wall" { (say(text::who())) } }
        }
    }
}

/// What the table says of a set-up, each with the name of its line.
fn lines(row: &SetupRow, currency: &str) -> [(Message, Message); 8] {
    let water = &row.condensation_g_per_day;
    let grams = |grams: f64| text::water(Kilogram::new(1e-3 * grams));
    [
        (text::alive(), text::whole(hives(row.alive_in_spring))),
        (text::food(), text::eaten(Kilogram::new(row.food_kg))),
        (text::heat(), text::loss(WattPerKelvin::new(row.heat_loss_w_per_k))),
        (text::lid_water(), grams(water.lid)),
        (text::wall_water(), grams(water.walls)),
        (text::floor_water(), grams(water.floor)),
        (text::drip(), grams(row.drip_on_cluster_g_per_day)),
        (text::price(), text::money(currency, row.cost_money)),
    ]
}

fn verdict(row: &SetupRow) -> Message {
    let is_better = match row.verdict() {
        SetupVerdict::MayBeChance => return text::chance(),
        SetupVerdict::Hardly => return text::hardly(HARDLY),
        SetupVerdict::Better => true,
        SetupVerdict::Worse => false,
    };
    text::difference(row.plus_minus, row.difference_hives_in_100.abs(), is_better, row.plus_minus < 1.0)
}

fn form(view: &View, colony: &Colony, asked: &Asked) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        form method="get" action="/setup" {
            label for="hive" { (say(text::hive())) }
            select id="hive" name="hive" {
                @for other in &view.apiary.colonies { option value=(other.id.0) selected[other.id == colony.id] { (other.name) } }
            }
            (parts(view, asked))
            label for="try" { (say(text::words())) }
            input id="try" name="try" maxlength="300" autocomplete="off" value=(asked.get("try").unwrap_or_default()) placeholder="wrap=felt paper; upper hole=off";
            button class="main" { (say(text::compare())) }
            p class="small" { (say(text::seconds())) }
        }
    }
}

fn parts(view: &View, asked: &Asked) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    let chosen: Vec<&str> = asked.all("part").collect();
    html! {
        div class="stack" {
            @for (at, (_, part, choices)) in PARTS.iter().enumerate() {
                div {
                    label for={ "part" (at) } { (say(part())) }
                    select id={ "part" (at) } name="part" {
                        option value="" { (say(text::as_it_is())) }
                        @for (words, change) in *choices { option value=(change) selected[chosen.contains(change)] { (say(words())) } }
                    }
                }
            }
        }
    }
}
