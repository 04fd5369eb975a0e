//! A hive changed in its winter, moved, or gone: each a note of its day, so that what was before stays true.

use axum::extract::{Path, State};
use axum::http::Uri;
use jiff::Timestamp;
use maud::{Markup, html};

use super::setup::PARTS;
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::view::View;
use crate::words::capital;

/// What becomes of a hive, and the note that says it; rooms and other colonies are beside.
const FATES: [(&str, &str); 3] = [
    ("moved to another stand", "did=moved"),
    ("its colony was sold", "counted=sold"),
    ("its colony is dead", "colony=dead"),
];

pub(crate) async fn show(State(app): State<App>, Path(id): Path<String>, uri: Uri) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let (_, colony) = view.addressed(&id, &uri)?;
    let body = html! {
        h1 { "Change " (colony.name) }
        p { "From the day it was done the hive is reckoned as it then stood; what was before stays." }
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
                legend { "Or" }
                @for (words, entry) in fates(&view, &colony.name) {
                    label { input type="radio" name="entry.fate" value=(entry); span { (words) } }
                }
            }
            label for="on" { "Day, if not today" }
            input id="on" name="on" type="date" max=(view.now.date());
            button class="main" { "Keep it" }
        }
        p class="ways" { a href={ "/hive/" (colony.id.0) } { "Back to " (colony.name) } a href="/hives" { "Add a hive" } }
    };
    Ok(page(&view, Place::Hives, &format!("Change {}", colony.name), &body))
}

/// What can become of it here.
fn fates(view: &View, name: &str) -> Vec<(String, String)> {
    let fixed = FATES.iter().map(|(words, entry)| ((*words).to_owned(), (*entry).to_owned()));
    let rooms = view
        .apiary
        .rooms
        .iter()
        .map(|room| (format!("carried into {}", room.name), format!("carried=into {}", room.name)));
    let out = (!view.apiary.rooms.is_empty()).then(|| ("carried out".to_owned(), "carried=out".to_owned()));
    let others = view.watched().filter(|(_, other)| other.name != name);
    let united = others.map(|(_, other)| (format!("united to {}", other.name), format!("united={}", other.name)));
    fixed.chain(rooms).chain(out).chain(united).map(|(words, entry)| (capital(&words), entry)).collect()
}
