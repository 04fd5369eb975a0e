//! Is this normal? A beginner's question, no account, ten seconds.

use axum::extract::State;
use maud::{Markup, html};
use snowhum_advice::dead_bees::{DeadBeesAnswer, DeadBeesQuestion, Ground, dead_bees, usual_words};
use snowhum_picture::{DeadBeesCount, DeadBeesFound};
use snowhum_say::{Message, Tongue, against, normal_page as text};
use snowhum_winter::Parameters;

use super::questions;
use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};

/// Dead bees as they are tapped, each the most it can be.
const BANDS: [u32; 5] = [5, 20, 50, 100, 300];
/// Days where nothing is said.
const USUAL_DAYS: &str = "14";
/// October to April, as the north counts.
const MONTHS: [i8; 7] = [10, 11, 12, 1, 2, 3, 4];

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let is_asked = asked.get("found").or_else(|| asked.get("about")).is_some();
    let answered = is_asked.then(|| answer(&asked));
    let body = html! {
        h1 { (heading) }
        @if !is_asked { p class="lede" { (say(text::lede())) } }
        @match &answered {
            Some(Ok((question, answer))) => (told((&asked, question), answer, tongue)),
            Some(Err(wrong)) => p class="caution" { (tongue.say(wrong)) },
            None => {}
        }
        (form(&asked, view.now.date().month(), tongue))
        details class="folded no-print" open[!is_asked] {
            summary { (say(text::others())) }
            (questions::list(&view))
        }
    };
    Ok(page(&view, Place::Normal, &heading, &body))
}

fn answer(asked: &Asked) -> Result<(DeadBeesQuestion, DeadBeesAnswer), Message> {
    let number = |name: &str, tapped: &str, (low, high): (f64, f64), right: Message| -> Result<Option<f64>, Message> {
        let Some(written) = asked.get(name).or_else(|| asked.get(tapped)) else { return Ok(None) };
        let read = snowhum_units::number(written).ok().filter(|value| (low..=high).contains(value));
        read.map(Some).ok_or_else(|| text::wrong(right, crate::sent::shortened(written)))
    };
    let found = number("found", "about", (0.0, 1e5), text::right_found())?.unwrap_or(0.0);
    let days = number("days", "since", (0.1, 400.0), text::right_days())?.unwrap_or(14.0);
    let bees = number("bees", "", (50.0, 1e5), text::right_bees())?;
    let month = asked.get("month").and_then(|text| text.parse::<i8>().ok());
    let month = month.filter(|month| MONTHS.contains(month)).unwrap_or(1);
    let ground = if asked.get("ground") == Some("bare") { Ground::Bare } else { Ground::Snow };
    let question = DeadBeesQuestion { found: found.round() as u32, days, bees, month, ground };
    let parameters = Parameters::shipped().map_err(|error| Message::own(error.to_string()))?;
    let signs = snowhum_watch::Parameters::shipped().map_err(|error| Message::own(error.to_string()))?;
    let answer = dead_bees(&question, &parameters, &signs);
    Ok((question, answer))
}

fn told((asked, question): (&Asked, &DeadBeesQuestion), answer: &DeadBeesAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let count = DeadBeesCount {
        when: say(text::days(question.days)),
        found: answer.found,
        expected: answer.expected,
        verdict: answer.verdict,
    };
    let plate = DeadBeesFound { title: say(text::picture()), counts: vec![count], tongue };
    let found = text::found(asked.get("found").is_some(), answer.found, usual_words(&answer.expected));
    let deaths = &answer.deaths_per_day;
    html! {
        section class="kept" role="status" {
            h2 { (tongue.capital(&against(answer.verdict))) }
            p { (tongue.say(&found)) }
            p { (tongue.sentence(&answer.lie)) }
            p { (tongue.say(&answer.worry)) }
            p { span class="label" { (say(text::next())) } " " (tongue.say(&answer.next)) }
            (draw::figure(&plate.plate(), "normal", tongue))
            details {
                summary { (say(text::who())) }
                p { (say(text::deaths(deaths.p10, deaths.p90))) }
                ul { @for source in &answer.sources { li { (tongue.say(source)) } } }
            }
        }
    }
}

fn form(asked: &Asked, today: i8, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let value = |name: &str| asked.get(name).unwrap_or_default().to_owned();
    let month = asked.get("month").and_then(|text| text.parse().ok()).unwrap_or(today);
    let ground = asked.get("ground").unwrap_or("snow");
    let is_known = ["found", "days", "bees"].iter().any(|name| asked.get(name).is_some());
    let bands = BANDS.map(|most| (say(text::up_to(most)), most.to_string()));
    let chip = |(words, value): (Message, &str)| (say(words), value.to_owned());
    let days =
        [(text::a_day(), "1"), (text::a_week(), "7"), (text::two_weeks(), "14"), (text::a_month(), "30")].map(chip);
    let grounds = [(text::snow(), "snow"), (text::bare(), "bare")].map(chip);
    html! {
        form method="get" action="/normal" class="question" {
            (chips(&say(text::dead()), "about", &bands, asked.get("about")))
            (chips(&say(text::since()), "since", &days, Some(asked.get("since").unwrap_or(USUAL_DAYS))))
            (chips(&say(text::lie_on()), "ground", &grounds, Some(ground)))
            details open[is_known] {
                summary { (say(text::exactly())) }
                label for="found" { (say(text::counted())) }
                input id="found" name="found" inputmode="numeric" maxlength="6" value=(value("found"));
                label for="days" { (say(text::since_days())) }
                input id="days" name="days" inputmode="decimal" maxlength="6" value=(value("days"));
                label for="bees" { (say(text::bees())) }
                input id="bees" name="bees" inputmode="numeric" maxlength="7" value=(value("bees"));
                label for="month" { (say(text::month())) }
                select id="month" name="month" {
                    @for number in MONTHS { option value=(number) selected[number == month] { (tongue.month(number)) } }
                }
            }
            button class="main" { (say(text::ask())) }
        }
    }
}

/// Big targets of which one is chosen.
fn chips(asks: &str, name: &str, answers: &[(String, String)], chosen: Option<&str>) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (asks) }
            @for (words, value) in answers {
                label { input type="radio" name=(name) value=(value) checked[chosen == Some(value.as_str())]; span { (words) } }
            }
        }
    }
}
