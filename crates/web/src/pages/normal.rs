//! Is this normal? A beginner's question, no account, ten seconds.

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::dead_bees::{DeadBeesAnswer, DeadBeesQuestion, Ground, dead_bees, usual_words};
use snowhum_advice::words::month as month_name;
use snowhum_picture::{DeadBeesCount, DeadBeesFound};
use snowhum_say::Tongue;
use snowhum_winter::Parameters;

use super::questions;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::capital;

/// Dead bees as they are tapped, each as the most it can be.
const BANDS: [(&str, &str); 5] =
    [("up to 5", "5"), ("up to 20", "20"), ("up to 50", "50"), ("up to 100", "100"), ("up to 300", "300")];
/// Days since the last look.
const DAYS: [(&str, &str); 4] = [("a day", "1"), ("a week", "7"), ("two weeks", "14"), ("a month", "30")];
/// Days where nothing is said.
const USUAL_DAYS: &str = "14";
/// October to April, as the north counts.
const MONTHS: [i8; 7] = [10, 11, 12, 1, 2, 3, 4];

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let is_asked = asked.get("found").or_else(|| asked.get("about")).is_some();
    let answered = is_asked.then(|| answer(&asked));
    let body = html! {
        h1 { "Is this normal?" }
        @if !is_asked { p class="lede" { "Dead bees before a hive in winter are usual. How many are?" } }
        @match &answered {
            Some(Ok((question, answer))) => (told((&asked, question), answer, view.tongue())),
            Some(Err(wrong)) => p class="caution" { (wrong) },
            None => {}
        }
        (form(&asked, view.now.date().month()))
        details class="folded no-print" open[!is_asked] {
            summary { "Other questions of the winter" }
            (questions::list(&view))
        }
    };
    Ok(page(&view, Place::Normal, "Is this normal?", &body))
}

fn answer(asked: &Asked) -> Result<(DeadBeesQuestion, DeadBeesAnswer), String> {
    let number = |name: &str, tapped: &str, (low, high): (f64, f64), what: &str| -> Result<Option<f64>, String> {
        let Some(text) = asked.get(name).or_else(|| asked.get(tapped)) else { return Ok(None) };
        let read = snowhum_units::number(text).ok().filter(|value| (low..=high).contains(value));
        read.map(Some).ok_or_else(|| format!("{}: write {what}.", crate::sent::shortened(text)))
    };
    let found = number("found", "about", (0.0, 1e5), "a whole number of dead bees, such as 30")?.unwrap_or(0.0);
    let days = number("days", "since", (0.1, 400.0), "days since the last look, such as 14")?.unwrap_or(14.0);
    let bees = number("bees", "", (50.0, 1e5), "a number of bees, such as 12000, or leave it open")?;
    let month = asked.get("month").and_then(|text| text.parse::<i8>().ok());
    let month = month.filter(|month| MONTHS.contains(month)).unwrap_or(1);
    let ground = if asked.get("ground") == Some("bare") { Ground::Bare } else { Ground::Snow };
    let question = DeadBeesQuestion { found: found.round() as u32, days, bees, month, ground };
    let parameters = Parameters::shipped().map_err(|error| error.to_string())?;
    let signs = snowhum_watch::Parameters::shipped().map_err(|error| error.to_string())?;
    let answer = dead_bees(&question, &parameters, &signs);
    Ok((question, answer))
}

fn told((asked, question): (&Asked, &DeadBeesQuestion), answer: &DeadBeesAnswer, tongue: Tongue) -> Markup {
    let found = if asked.get("found").is_some() { "" } else { "Up to " };
    let count = DeadBeesCount {
        when: format!("{:.0} days", question.days),
        found: answer.found,
        expected: answer.expected,
        verdict: answer.verdict,
    };
    let plate = DeadBeesFound { title: "Found, against the expected".to_owned(), counts: vec![count] };
    html! {
        section class="kept" role="status" {
            h2 { (capital(answer.verdict.words())) }
            p {
                (found) (answer.found) " found; " (tongue.say(&usual_words(&answer.expected))) "."
            }
            p { (tongue.sentence(&answer.lie)) }
            p { (tongue.say(&answer.worry)) }
            p { span class="label" { "Next" } " " (tongue.say(&answer.next)) }
            (draw::figure(&plate.plate(), "normal"))
            details {
                summary { "Says who?" }
                p { (format!("{:.0} to {:.0}", answer.deaths_per_day.p10, answer.deaths_per_day.p90)) " bees die a day in a sound colony of this size and season; most fall inside." }
                ul { @for source in &answer.sources { li { (tongue.say(source)) } } }
            }
        }
    }
}

fn form(asked: &Asked, today: i8) -> Markup {
    let value = |name: &str| asked.get(name).unwrap_or_default().to_owned();
    let month = asked.get("month").and_then(|text| text.parse().ok()).unwrap_or(today);
    let ground = asked.get("ground").unwrap_or("snow");
    let is_known = ["found", "days", "bees"].iter().any(|name| asked.get(name).is_some());
    html! {
        form method="get" action="/normal" class="question" {
            (chips("Dead bees", "about", &BANDS, asked.get("about")))
            (chips("Since the last look, or since snow covered the old ones", "since", &DAYS, Some(asked.get("since").unwrap_or(USUAL_DAYS))))
            (chips("They lie on", "ground", &[("snow", "snow"), ("bare ground", "bare")], Some(ground)))
            details open[is_known] {
                summary { "Counted exactly, or another month?" }
                label for="found" { "Dead bees counted" }
                input id="found" name="found" inputmode="numeric" maxlength="6" value=(value("found"));
                label for="days" { "Days" }
                input id="days" name="days" inputmode="decimal" maxlength="6" value=(value("days"));
                label for="bees" { "Bees in the colony, if known" }
                input id="bees" name="bees" inputmode="numeric" maxlength="7" value=(value("bees"));
                label for="month" { "Month (in the south, the one six months away)" }
                select id="month" name="month" {
                    @for number in MONTHS { option value=(number) selected[number == month] { (month_name(number)) } }
                }
            }
            button class="main" { "Is it?" }
        }
    }
}

/// Big targets of which one is chosen.
fn chips(asks: &str, name: &str, answers: &[(&str, &str)], chosen: Option<&str>) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (asks) }
            @for (words, value) in answers {
                label { input type="radio" name=(name) value=(value) checked[chosen == Some(*value)]; span { (words) } }
            }
        }
    }
}
