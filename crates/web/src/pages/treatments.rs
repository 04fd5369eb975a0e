//! The treatment record: what the keeper gave, entered plainly and printed for an inspector. It advises nothing.

use axum::Form;
use axum::extract::State;
use axum::response::Redirect;
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_advice::cautions::Hazard;
use snowhum_advice::treatments::{TreatmentRecord, class_words, columns, treatments};
use snowhum_apiary::{Act, Colony, Conditions, Entry, Note, TreatmentClass, TreatmentDetail, TreatmentNote, VisitId};
use snowhum_say::{Message, Text, Tongue, treatments as of_record, treatments_page as text};

use super::notes::{Pairs, keep as keep_note, time};
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::view::{Asked, View};
use crate::words::{capital, cautions, marked};

/// What is asked of each detail.
const ASKS: [(TreatmentDetail, Text); 7] = [
    (TreatmentDetail::Product, text::product),
    (TreatmentDetail::Batch, text::batch),
    (TreatmentDetail::Quantity, text::quantity),
    (TreatmentDetail::Supplier, text::supplier),
    (TreatmentDetail::Proof, text::proof),
    (TreatmentDetail::Withdrawal, text::withdrawal),
    (TreatmentDetail::Duration, text::duration),
];
/// Where a number is to be written by hand.
const BLANK: &str = "______________________";

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let record = treatments(&app.apiary_ever().await?, view.now.date());
    let kept = asked.get("kept").and_then(|text| text.parse::<u32>().ok());
    let tongue = view.tongue();
    let heading = tongue.say(&text::heading());
    let body = html! {
        h1 { (heading) }
        @if let Some(kept) = kept { p class="kept no-print" role="status" { (tongue.say(&text::kept(kept))) } }
        (sheet(&record, tongue))
        (form(&view))
    };
    Ok(page(&view, Place::Treatments, &heading, &body))
}

/// The record as an inspector reads it.
pub(crate) fn sheet(record: &TreatmentRecord, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    html! {
        section class="record" {
            p { (marked(tongue, &text::yard(&record.apiary))) }
            p { (say(text::registration(record.registration.as_deref().unwrap_or(BLANK)))) }
            p { (say(text::keeper())) }
            @if record.rows.is_empty() {
                p { (say(text::none())) }
            } @else {
                div class="wide" tabindex="0" role="region" aria-label=(say(text::table())) {
                    table {
                        thead { tr { @for head in columns() { th scope="col" { (say(head)) } } } }
                        tbody {
                            @for row in &record.rows {
                                tr { @for cell in row.cells() { td { @match cell { Some(cell) => (say(cell)), None => em { (say(of_record::not_noted())) } } } } }
                            }
                        }
                    }
                }
            }
            p class="small for-phone" { (say(text::not_told())) }
            p class="small" { (say(of_record::kept())) }
        }
    }
}

fn form(view: &View) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        details class="folded no-print" {
            summary { (say(text::note())) }
            (cautions(view.tongue(), &[Hazard::Label, Hazard::Acids, Hazard::Antibiotics]))
            form method="post" action="/treatments" {
                input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
                label for="colony" { (say(text::hive())) }
                select id="colony" name="colony" {
                    option value="all" { (say(text::all())) }
                    @for colony in &view.apiary.colonies { option value=(colony.id.0) { (colony.name) } }
                }
                label for="on" { (say(text::day())) }
                input id="on" name="on" type="date" max=(view.now.date());
                fieldset class="choices" {
                    legend { (say(text::substance())) }
                    @for (value, class) in TreatmentClass::WORDS {
                        label { input type="radio" name="class" value=(value) required; span { (say(class_words(class))) } }
                    }
                }
                @for (detail, asks) in ASKS {
                    @let name = word(detail);
                    label for=(name) { (say(asks())) }
                    input id=(name) name=(name) maxlength="80" autocomplete="off";
                }
                button class="main" { (say(text::keep())) }
            }
            p class="small" { (say(text::empty())) }
        }
    }
}

fn word(detail: TreatmentDetail) -> &'static str {
    TreatmentDetail::WORDS.iter().find(|(_, known)| *known == detail).map_or("", |(word, _)| word)
}

/// Keeps a treatment, once for each hive it was given to. Sent twice, it is kept once.
pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Redirect, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let given = given(&form)?;
    let at = time(&view, &form)?;
    let visit = form.get("visit").and_then(|text| text.parse().ok()).unwrap_or_else(|| ids::new_id(Timestamp::now()));
    let hives = hives(&view, &form)?;
    for colony in &hives {
        let id = ids::note_of(VisitId(visit), colony.id);
        let entries = vec![Entry::Act(Act::Treated(given.clone()))];
        let conditions = Conditions::default();
        keep_note(&app, &Note { id, visit: VisitId(visit), colony: colony.id, at, conditions, entries }).await?;
    }
    Ok(Redirect::to(&format!("/treatments?kept={}", hives.len())))
}

fn given(form: &Asked) -> Result<TreatmentNote, Fault> {
    let class = form.get("class").and_then(|text| TreatmentClass::WORDS.iter().find(|(word, _)| *word == text));
    let (_, class) = class.ok_or_else(|| Fault::Wrong(text::which_substance()))?;
    let mut given = TreatmentNote::from(*class);
    for (word, detail) in TreatmentDetail::WORDS {
        if let Some(told) = form.get(word) {
            given.tell(detail, told).map_err(|wrong| Fault::wrong(capital(&format!("{wrong}."))))?;
        }
    }
    Ok(given)
}

fn hives<'v>(view: &'v View, form: &Asked) -> Result<Vec<&'v Colony>, Fault> {
    match form.get("colony") {
        Some("all") => Ok(view.apiary.colonies.iter().collect()),
        chosen => {
            let id = chosen.and_then(|text| text.parse().ok());
            let id = id.ok_or_else(|| Fault::Wrong(text::which_hive()))?;
            Ok(vec![view.colony(id)?.1])
        }
    }
}
