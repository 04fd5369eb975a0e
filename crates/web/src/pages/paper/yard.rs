//! The yard sheet: ten hives on one page.

use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_advice::words::day;
use snowhum_say::Tongue;

use crate::pages::apiary::chip;
use crate::view::View;
use crate::words::{capital, date};

pub(crate) fn sheet(view: &View) -> Markup {
    html! {
        h1 { (view.apiary.name) ", " (day(view.shown_day())) " " (view.shown_day().year()) }
        @match &view.standing {
            Some(standing) => (table(view, &standing.present.now)),
            None => p { "The estimate is on its way; print this page once it is there." },
        }
        p class="small" { "By: the last day of the next thing. Air ______  snow ______  wind ______  walked on ____________" }
    }
}

fn table(view: &View, now: &NowAnswer) -> Markup {
    let tongue = view.tongue();
    html! {
        table class="yard-sheet" {
            thead { tr { @for head in ["Hive", "Word", "By", "Next", "Done"] { th scope="col" { (head) } } } }
            tbody {
                @for (at, colony) in now.colonies.iter().enumerate() {
                    @let (by, next) = next(now, at, colony, tongue);
                    tr {
                        th scope="row" {
                            strong { (colony.name) }
                            @if let Some(indoors) = now.first.colonies.get(at).and_then(|one| one.indoors.as_ref()) {
                                br; span class="small" { (view.tongue().say(&indoors.says)) }
                            }
                        }
                        td { (chip(view, &colony.verdict)) }
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
fn next(now: &NowAnswer, at: usize, colony: &ColonyNow, tongue: Tongue) -> (Option<Date>, String) {
    let first = now.first.colonies.get(at).and_then(|first| first.steps.first());
    if let Some(step) = first {
        return (step.by, tongue.say(&step.task.measured()));
    }
    if colony.is_gone() {
        return (None, tongue.say(&colony.about));
    }
    let indoors = colony.expect_next.indoors;
    let flight = now.flight_day.map(|flight| flight.on).filter(|_| !indoors);
    let look = flight.unwrap_or(colony.expect_next.on);
    let what = match flight {
        Some(_) => "see whether it flies",
        None if indoors => "listen, rake out its dead, read the room's thermometer",
        None => "listen and count the dead before it",
    };
    (Some(look), what.to_owned())
}
