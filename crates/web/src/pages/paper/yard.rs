//! The yard sheet: ten hives on one page.

use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::now::{ColonyNow, NowAnswer};
use snowhum_say::{Message, paper_page as text};

use crate::pages::apiary::chip;
use crate::view::View;
use crate::words::time;

pub(crate) fn sheet(view: &View) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        h1 { (say(text::yard_heading(view.shown_day(), &view.apiary.name))) }
        @match &view.standing {
            Some(standing) => (table(view, &standing.present.now)),
            None => p { (say(text::no_estimate())) },
        }
        p class="small" { (say(text::yard_line())) }
    }
}

fn table(view: &View, now: &NowAnswer) -> Markup {
    let tongue = view.tongue();
    let heads = [text::hive(), text::verdict(), text::by(), text::next(), text::done()];
    html! {
        table class="yard-sheet" {
            thead { tr { @for head in heads { th scope="col" { (tongue.say(&head)) } } } }
            tbody {
                @for (at, colony) in now.colonies.iter().enumerate() {
                    @let (by, next) = next(now, at, colony);
                    tr {
                        th scope="row" {
                            strong { (colony.name) }
                            @if let Some(indoors) = now.first.colonies.get(at).and_then(|one| one.indoors.as_ref()) {
                                br; span class="small" { (tongue.say(&indoors.says)) }
                            }
                        }
                        td { (chip(view, &colony.verdict)) }
                        td { @match by { Some(by) => (time(by, tongue)), None => "–" } }
                        td { (tongue.capital(&next)) "." }
                        td { "☐" }
                    }
                }
            }
        }
    }
}

/// The one next thing, with its last day.
fn next(now: &NowAnswer, at: usize, colony: &ColonyNow) -> (Option<Date>, Message) {
    let first = now.first.colonies.get(at).and_then(|first| first.steps.first());
    if let Some(step) = first {
        return (step.by, step.task.measured());
    }
    if colony.is_gone() {
        return (None, colony.about.clone());
    }
    let indoors = colony.expect_next.indoors;
    let flight = now.flight_day.map(|flight| flight.on).filter(|_| !indoors);
    let look = flight.unwrap_or(colony.expect_next.on);
    let what = match flight {
        Some(_) => text::see_flight(),
        None if indoors => text::listen_indoors(),
        None => text::listen(),
    };
    (Some(look), what)
}
