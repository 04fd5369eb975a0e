//! The spring count that closes a winter: one answer a colony, each kept as a note.

use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::lessons::LessonsAnswer;
use snowhum_apiary::VisitId;

use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::pages::notes;
use crate::sent::{Sent, shortened};
use crate::view::{Asked, View};

/// Answers with their words and what is noted for each.
const ANSWERS: [(&str, &str, &[&str]); 6] = [
    ("alive", "alive, laying queen", &["bees=seen", "counted=alive"]),
    ("weak", "alive, weak", &["bees=seen", "counted=weak"]),
    ("queen-failed", "queen failed", &["bees=seen", "counted=queen failed"]),
    ("dead", "dead", &["colony=dead"]),
    ("disaster", "disaster", &["counted=disaster"]),
    ("sold", "sold", &["counted=sold"]),
];

/// One row of taps a colony.
pub(super) fn form(view: &View, answer: &LessonsAnswer, asked: &Asked) -> Markup {
    let told = |name: &str| answer.colonies.iter().find(|colony| colony.colony == name);
    html! {
        details class="folded no-print" id="count" open[view.now.date() >= answer.season.end] {
            summary { "Count the colonies" }
            p { "Once winter is over, say what each is. A colony united with another is noted at its hive, as " code { "united=NAME" } "." }
            form method="post" action="/losses" {
                input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
                @for colony in &view.apiary.colonies {
                    fieldset class="choices" {
                        legend { strong { (colony.name) } @if let Some(told) = told(&colony.name) { ", " (view.tongue().say(&told.fate.words())) } }
                        label class="unasked" { input type="radio" name={ "fate." (colony.id.0) } value="" checked; span { "as it is noted" } }
                        @for (value, words, _) in ANSWERS {
                            label { input type="radio" name={ "fate." (colony.id.0) } value=(value); span { (words) } }
                        }
                    }
                }
                label for="counted-on" { "Day, if not " (snowhum_advice::words::day(view.now.date())) }
                input id="counted-on" name="on" type="date" max=(view.now.date());
                button class="main" { "Keep the count" }
            }
            details {
                summary { "Colonies that came or went and are not in the records" }
                form method="get" action="/losses" {
                    input type="hidden" name="season" value=(answer.season.year);
                    label for="added" { "Bought or split in since autumn" }
                    input id="added" name="added" inputmode="numeric" maxlength="4" value=(asked.get("added").unwrap_or_default());
                    label for="removed" { "Sold or united since" }
                    input id="removed" name="removed" inputmode="numeric" maxlength="4" value=(asked.get("removed").unwrap_or_default());
                    button { "Count them too" }
                }
                p class="small" { "They change who was at risk on this page; they are not kept." }
            }
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
        let wrong = || Fault::wrong(format!("{}: {} is none of the answers.", colony.name, shortened(written)));
        let (_, _, entries) = answer.ok_or_else(wrong)?;
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
        all.push(sent.note(ids::note_of(VisitId(visit), colony.id), view).map_err(Fault::wrong)?);
    }
    if all.is_empty() {
        return Err(Fault::wrong("No colony was counted; choose an answer for at least one.".to_owned()));
    }
    for note in &all {
        notes::keep(app, note).await?;
    }
    Ok(all.len())
}
