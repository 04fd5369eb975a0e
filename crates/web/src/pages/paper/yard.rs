//! The yard sheet: ten hives on one page.

use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::words::day;

use crate::pages::apiary::chip;
use crate::view::View;
use crate::words::{capital, date};

pub(crate) fn sheet(view: &View) -> Markup {
    html! {
        h1 { (view.apiary.name) ", " (day(view.now.date())) " " (view.now.year()) }
        @match &view.standing {
            Some(standing) => (table(&standing.present.now)),
            None => p { "The estimate is on its way; print this page once it is there." },
        }
        p class="small" { "By: the last day of the next thing. Air ______  snow ______  wind ______  walked on ____________" }
    }
}

fn table(now: &NowAnswer) -> Markup {
    html! {
        table class="yard-sheet" {
            thead { tr { @for head in ["Hive", "Word", "By", "Next", "Done"] { th scope="col" { (head) } } } }
            tbody {
                @for colony in &now.colonies {
                    @let (by, next) = next(now, colony);
                    tr {
                        th scope="row" { strong { (colony.name) } }
                        td { (chip(colony.word)) }
                        td { @match by { Some(by) => (date(by)), None => "–" } }
                        td { (capital(&next)) "." }
                        td { "☐" }
                    }
                }
            }
        }
    }
}

/// The one next thing, with its last day.
fn next(now: &NowAnswer, colony: &ColonyNow) -> (Option<Date>, String) {
    if let Some(other) = &colony.united_into {
        return (None, format!("empty: put to {other}"));
    }
    if colony.is_unexplained() {
        return (None, "seen dead: close it, and look for what ended it".to_owned());
    }
    if colony.is_gone() {
        return (None, colony.about.clone());
    }
    match colony.actions.first().filter(|action| action.helps()) {
        Some(action) => (Some(action.by), action.what.clone()),
        None => {
            let flight = now.flight_day.map(|flight| flight.on);
            let look = flight.unwrap_or(colony.expect_next.on);
            let what = if flight.is_some() { "see whether it flies" } else { "listen and count the dead before it" };
            (Some(look), what.to_owned())
        }
    }
}
