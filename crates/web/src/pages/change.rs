//! A hive changed in its winter, moved, or gone: each a note of its day, so that what was before stays true.

use axum::extract::{Path, State};
use axum::http::Uri;
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_say::{Message, Text, change_page as text};

use super::setup::PARTS;
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::view::View;

/// What becomes of a hive, and the note that says it; rooms and other colonies are beside.
const FATES: [(Text, &str); 3] =
    [(text::moved, "did=moved"), (text::sold, "counted=sold"), (text::dead, "colony=dead")];

pub(crate) async fn show(State(app): State<App>, Path(id): Path<String>, uri: Uri) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (_, colony) = view.addressed(&id, &uri)?;
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading(&colony.name));
    let body = html! {
        h1 { (heading) }
        p { (say(text::lede())) }
        form method="post" action={ "/hive/" (colony.id.0) "/note" } {
            input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
            @for (part, name, choices) in PARTS {
                fieldset class="choices" {
                    legend { (view.tongue().say(&name())) }
                    @for (words, change) in choices {
                        label {
                            input type="radio" name={ "entry." (part) } value={ "changed=" (change) };
                            span { (view.tongue().say(&words())) }
                        }
                    }
                }
            }
            fieldset class="choices" {
                legend { (say(text::or())) }
                @for (words, entry) in fates(&view, &colony.name) {
                    label { input type="radio" name="entry.fate" value=(entry); span { (tongue.capital(&words)) } }
                }
            }
            label for="on" { (say(text::day())) }
            input id="on" name="on" type="date" max=(view.now.date());
            button class="main" { (say(text::keep())) }
        }
        p class="ways" { a href={ "/hive/" (colony.id.0) } { (say(text::back(&colony.name))) } a href="/hives" { (say(text::add())) } }
    };
    Ok(page(&view, Place::Hives, &heading, &body))
}

/// What can become of it here, and the entry that says it.
fn fates(view: &View, name: &str) -> Vec<(Message, String)> {
    let fixed = FATES.map(|(words, entry)| (words(), entry.to_owned()));
    let rooms = &view.apiary.rooms;
    let into = rooms.iter().map(|room| (text::carried_into(&room.name), format!("carried=into {}", room.name)));
    let out = (!rooms.is_empty()).then(|| (text::carried_out(), "carried=out".to_owned()));
    let others = view.watched().filter(|(_, other)| other.name != name);
    let united = others.map(|(_, other)| (text::united(&other.name), format!("united={}", other.name)));
    fixed.into_iter().chain(into).chain(out).chain(united).collect()
}
