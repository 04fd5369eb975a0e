//! Winter set-up: what would change if the hive were dressed otherwise?

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::setup::{HARDLY, SetupAnswer, SetupRow, SetupVerdict, Try, WrongChange};
use snowhum_advice::yard;
use snowhum_apiary::{Apiary, Colony};
use snowhum_units::System;
use snowhum_winter::Parameters;

use super::questions::heard;
use crate::app::{App, Setting};
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, page};
use crate::sent::shortened;
use crate::view::{Asked, View};
use crate::words::mass;

/// Parts that can be swapped: name, and each choice with the change it is.
pub(super) const PARTS: [(&str, &[(&str, &str)]); 6] = [
    (
        "Lid",
        &[
            ("25 mm foam", "lid=25 mm foam"),
            ("50 mm foam", "lid=50 mm foam"),
            ("straw quilt", "quilt=straw 60 mm"),
            ("bare board", "lid=off"),
        ],
    ),
    ("Wrap", &[("felt paper", "wrap=felt paper"), ("25 mm foam", "wrap=25 mm foam"), ("none", "wrap=off")]),
    ("Upper hole", &[("20 mm", "upper hole=20 mm"), ("25 mm", "upper hole=25 mm"), ("shut", "upper hole=off")]),
    (
        "Floor",
        &[("solid", "floor=solid"), ("open mesh", "floor=open mesh"), ("mesh with tray", "floor=mesh with tray")],
    ),
    ("Entrance", &[("reduced", "entrance=reduced"), ("full", "entrance=full"), ("shut", "entrance=off")]),
    ("Boxes", &[("one deep", "boxes=deep"), ("two deep", "boxes=deep,deep")]),
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
    let body = html! {
        h1 { "Winter set-up" }
        p class="lede" { "What would change if " (colony.name) " were dressed otherwise?" }
        @match &answered {
            Some(Ok(last)) => {
                (frame::age(&view, last))
                @match &last.answer {
                    Some(Ok(answer)) => (told(answer, &view)),
                    Some(Err(wrong)) => p class="caution" { (wrong) },
                    None => {}
                }
            },
            Some(Err(wrong)) => p class="caution" { (wrong) },
            None => {}
        }
        (form(&view, colony, &asked))
        (heard("/setup", view.tongue()))
    };
    Ok(page(&view, Place::Setup, "Winter set-up", &body))
}

/// The chosen parts together are one set-up; each written line is another.
fn tries(apiary: &Apiary, colony: &Colony, asked: &Asked) -> Result<Vec<Try>, String> {
    let chosen: Vec<&str> = asked.all("part").collect();
    let mut all = Vec::new();
    if !chosen.is_empty() {
        all.push(a_try(apiary, colony, &chosen)?);
    }
    for line in asked.all("try") {
        all.push(a_try(apiary, colony, &snowhum_apiary::split_entries(line).collect::<Vec<_>>())?);
    }
    if all.len() > MOST_TRIES {
        return Err(format!("At most {MOST_TRIES} set-ups are compared at once."));
    }
    Ok(all)
}

fn a_try(apiary: &Apiary, colony: &Colony, changes: &[&str]) -> Result<Try, String> {
    let housed = yard::housed(apiary);
    let housed = housed.iter().find(|housed| housed.colony.id == colony.id).ok_or("The colony has no hive.")?;
    if changes.len() > PARTS.len() * 2 {
        return Err("Too many changes for one hive.".to_owned());
    }
    let name = changes.iter().map(|change| change.replace('=', ": ")).collect::<Vec<_>>().join("; ");
    let wrong = |wrong: WrongChange| format!("{}: {}", shortened(&wrong.change), wrong.wrong);
    let parameters = Parameters::shipped().map_err(|error| error.to_string())?;
    Try::of(name, housed, changes, (&apiary.money, &parameters)).map_err(wrong)
}

fn told(answer: &SetupAnswer, view: &View) -> Markup {
    let tongue = view.tongue();
    let rows: Vec<&SetupRow> = std::iter::once(&answer.base).chain(&answer.tries).collect();
    let system = view.settings.system;
    html! {
        section class="kept" role="status" {
            @for row in &answer.tries {
                h2 { (tongue.capital(&row.name)) }
                p { (verdict(row)) }
            }
            div class="wide" tabindex="0" role="region" aria-label="Side by side" {
                table class="beside" {
                    caption { (answer.colony) " from " (snowhum_advice::words::day(view.apiary.as_of)) " to spring, under the same weather" }
                    thead { tr { th scope="col" { "" } @for row in &rows { th scope="col" { (tongue.say(&row.name)) } } } }
                    tbody { @for (name, cells) in lines(&rows, system, &view.apiary.money.currency) {
                        tr { th scope="row" { (name) } @for cell in cells { td { (cell) } } }
                    } }
                }
            }
            p class="small" { "From the day the colonies were counted, as they were then; notes since do not count here. " a href="/source?find=wall" { "Says who?" } }
        }
    }
}

fn lines(rows: &[&SetupRow], system: System, currency: &str) -> Vec<(&'static str, Vec<String>)> {
    let of = |show: &dyn Fn(&SetupRow) -> String| rows.iter().map(|row| show(row)).collect::<Vec<_>>();
    vec![
        ("Alive in spring, of 100", of(&|row| snowhum_advice::words::hives(row.alive_in_spring).to_string())),
        ("Food eaten to spring", of(&|row| mass(row.food_kg, system))),
        ("Heat loss in the coldest month, W for each degree", of(&|row| format!("{:.2}", row.heat_loss_w_per_k))),
        ("Water on the lid, g a day", of(&|row| format!("{:.0}", row.condensation_g_per_day.lid))),
        ("Water on the walls, g a day", of(&|row| format!("{:.0}", row.condensation_g_per_day.walls))),
        ("Water on the floor, g a day", of(&|row| format!("{:.0}", row.condensation_g_per_day.floor))),
        ("Dripping on the cluster, g a day", of(&|row| format!("{:.0}", row.drip_on_cluster_g_per_day))),
        ("Price", of(&|row| format!("{:.0} {currency}", row.cost_money))),
    ]
}

fn verdict(row: &SetupRow) -> String {
    let more = match row.verdict() {
        SetupVerdict::MayBeChance => return "No real difference: what there is may be chance.".to_owned(),
        SetupVerdict::Hardly => return format!("No real difference: fewer than {HARDLY:.0} hives in 100."),
        SetupVerdict::Better => "more",
        SetupVerdict::Worse => "fewer",
    };
    let error = if row.plus_minus < 1.0 { "± less than 1".to_owned() } else { format!("± {:.0}", row.plus_minus) };
    let difference = row.difference_hives_in_100.abs();
    format!("About {difference:.0} hives in 100 {more} come to spring alive, fed and queenright ({error}).")
}

fn form(view: &View, colony: &Colony, asked: &Asked) -> Markup {
    let chosen: Vec<&str> = asked.all("part").collect();
    html! {
        form method="get" action="/setup" {
            label for="hive" { "Hive" }
            select id="hive" name="hive" {
                @for other in &view.apiary.colonies { option value=(other.id.0) selected[other.id == colony.id] { (other.name) } }
            }
            div class="stack" {
                @for (at, (part, choices)) in PARTS.iter().enumerate() {
                    div {
                        label for={ "part" (at) } { (part) }
                        select id={ "part" (at) } name="part" {
                            option value="" { "as it is" }
                            @for (words, change) in *choices { option value=(change) selected[chosen.contains(change)] { (words) } }
                        }
                    }
                }
            }
            label for="try" { "Beside it, in your own words" }
            input id="try" name="try" maxlength="300" autocomplete="off" value=(asked.get("try").unwrap_or_default()) placeholder="wrap=felt paper; upper hole=off";
            button class="main" { "Compare" }
            p class="small" { "It takes some seconds: whole winters are computed, each under the same weather." }
        }
    }
}
