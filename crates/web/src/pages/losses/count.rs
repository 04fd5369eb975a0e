//! The spring count that closes a winter: one answer a colony, each kept as a note.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::lessons::LessonsAnswer;
use snowhum_apiary::VisitId;
use snowhum_say::{Message, Text, Tongue, losses_page as text};

use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::pages::notes;
use crate::sent::{Sent, shortened};
use crate::view::{Asked, View};
use crate::words::marked;

/// An answer with its words and what is noted for it.
type Answer = (&'static str, Text, &'static [&'static str]);

const ANSWERS: [Answer; 6] = [
    ("alive", text::is_alive, &["bees=seen", "counted=alive"]),
    ("weak", text::is_weak, &["bees=seen", "counted=weak"]),
    ("queen-failed", text::is_queen_failed, &["bees=seen", "counted=queen failed"]),
    ("dead", text::is_dead, &["colony=dead"]),
    ("disaster", text::is_disaster, &["counted=disaster"]),
    ("sold", text::is_sold, &["counted=sold"]),
];

/// One row of taps a colony.
pub(super) fn form(view: &View, answer: &LessonsAnswer, asked: &Asked) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let told = |name: &str| answer.colonies.iter().find(|colony| colony.colony == name);
    let legend = |name: &String| match told(name) {
        Some(told) => text::count_of(name, told.fate.words()),
        None => text::count_of_untold(name),
    };
    html! {
        details class="folded no-print" id="count" open[view.now.date() >= answer.season.end] {
            summary { (say(text::count())) }
            p { (marked(tongue, &text::count_what())) }
            form method="post" action="/losses" {
                input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
                @for colony in &view.apiary.colonies {
                    fieldset class="choices" {
                        legend { (marked(tongue, &legend(&colony.name))) }
                        label class="unasked" { input type="radio" name={ "fate." (colony.id.0) } value="" checked; span { (say(text::as_noted())) } }
                        @for (value, words, _) in ANSWERS {
                            label { input type="radio" name={ "fate." (colony.id.0) } value=(value); span { (say(words())) } }
                        }
                    }
                }
                label for="counted-on" { (say(text::day(view.now.date()))) }
                input id="counted-on" name="on" type="date" max=(view.now.date());
                button class="main" { (say(text::keep())) }
            }
            (came_or_went(answer, asked, tongue))
        }
    }
}

fn came_or_went(answer: &LessonsAnswer, asked: &Asked, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        details {
            summary { (say(text::came_or_went())) }
            form method="get" action="/losses" {
                input type="hidden" name="season" value=(answer.season.year);
                label for="added" { (say(text::added())) }
                input id="added" name="added" inputmode="numeric" maxlength="4" value=(asked.get("added").unwrap_or_default());
                label for="removed" { (say(text::removed())) }
                input id="removed" name="removed" inputmode="numeric" maxlength="4" value=(asked.get("removed").unwrap_or_default());
                button { (say(text::count_too())) }
            }
            p class="small" { (say(text::not_kept())) }
        }
    }
}

/// Keeps each answer as a note; gives how many were kept.
pub(super) async fn keep(app: &App, view: &View, form: &Asked) -> Result<usize, Fault> {
    let at = notes::time(view, form)?;
    let visit = form.get("visit").and_then(|text| text.parse().ok()).unwrap_or_else(|| ids::new_id(Timestamp::now()));
    let mut all = Vec::new();
    for colony in &view.apiary.colonies {
        let Some(written) = form.get(&format!("fate.{}", colony.id.0)) else { continue };
        let answer = ANSWERS.iter().find(|(value, ..)| *value == written);
        let (_, _, entries) = answer.ok_or_else(|| Fault::Wrong(text::no_answer(&colony.name, shortened(written))))?;
        let sent = Sent {
            visit,
            colony: colony.id.0,
            at,
            air: None,
            snow: None,
            wind: None,
            seen: entries.iter().map(|entry| (*entry).to_owned()).collect(),
            words: None,
            sure: true,
        };
        all.push(sent.note(ids::note_of(VisitId(visit), colony.id), view).map_err(Fault::Wrong)?);
    }
    if all.is_empty() {
        return Err(Fault::Wrong(text::not_counted()));
    }
    for note in &all {
        notes::keep(app, note).await?;
    }
    Ok(all.len())
}
