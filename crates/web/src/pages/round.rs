//! The yard round: a walk past the hives, logged with gloves on.

mod asked;

pub(crate) use asked::{Figure, Question, typed};

use axum::Form;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::{Colony, ColonyId, SnowCover, VisitId};
use snowhum_say::{self as say, Message, Text, round_page as text};
use snowhum_units::System;

use asked::{TYPED, choices};

use super::notes::{Pairs, keep as keep_note};
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, of_script, page};
use crate::sent::Sent;
use crate::view::{Asked, View};
use crate::words::marked;

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let heading = say(text::heading());
    let of_invented = view.apiary.invented.then(|| view.now.strftime("%:z").to_string());
    let body = html! {
        h1 { (heading) }
        @if let Some(kept) = asked.get("kept").and_then(|text| text.parse::<u16>().ok()) {
            p class="kept" role="status" { (marked(tongue, &text::kept(kept))) }
        }
        p class="no-print" {
            (say(text::lede())) " "
            a href="/round/sheet" { (say(text::sheet())) }
        }
        form id="round" method="post" action="/round" data-day=(view.now.date()) data-invented=[of_invented] {
            input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
            @for (at, colony) in view.watched() { (hive(&view, at, colony)) }
            (outside(&view))
            (not_asked(&view))
            // Shown by the script, which takes one hive a screen.
            section id="summary" hidden { h2 { (say(text::all())) } ul {} }
            div class="keep" {
                div id="steps" hidden {
                    button type="button" data-go="-1" aria-label=(say(text::before())) { "←" }
                    output {}
                    button type="button" data-go="999" { (say(text::end())) }
                    button type="button" data-go="1" aria-label=(say(text::next())) { "→" }
                }
                button class="main" { (say(text::keep())) }
            }
        }
        (heard("/round", tongue))
        (of_script(tongue, &told_on_the_phone()))
    };
    Ok(page(&view, Place::Round, &heading, &body))
}

/// What the script of the round says; names in braces are facts that it fills in.
fn told_on_the_phone() -> [(&'static str, Message); 25] {
    [
        ("none", text::wrong_none()),
        ("stored", text::stored("{hives}", "{number}")),
        ("in-phone", text::in_phone("{hives}")),
        ("signed-out", text::signed_out("{hives}")),
        ("moved", text::moved("{changes}")),
        ("draft", text::draft("{when}")),
        ("anew", text::anew()),
        ("entrance", text::clear_entrance()),
        ("upper", text::clear_upper()),
        ("answered", text::is_answered()),
        ("alive", text::alive()),
        ("most-likely-alive", text::most_likely_alive()),
        ("in-doubt", text::in_doubt()),
        ("most-likely-dead", text::most_likely_dead()),
        ("live", text::live("{before}", "{chance}")),
        ("breath", text::breath()),
        ("tells-most", text::tells_most("{asks}")),
        ("tells-little", text::tells_little()),
        ("other-air", text::other_air("{air}")),
        ("provisional", text::provisional("{air}")),
        ("next-sync", text::next_sync()),
        ("step", text::step("{all}", "{at}", "{noted}")),
        ("noted", text::noted("{noted}")),
        ("not-looked", text::not_looked()),
        ("answer", text::answer("{answer}", "{asks}")),
    ]
}

/// Hives in which nothing lives any more; what is seen at them is noted on their own pages.
fn not_asked(view: &View) -> Markup {
    let gone: Vec<&Colony> = view.gone().collect();
    html! {
        @if !gone.is_empty() {
            p class="small" {
                (view.tongue().say(&text::not_asked())) " "
                @for (at, colony) in gone.iter().enumerate() {
                    @if at > 0 { ", " }
                    a href={ "/hive/" (colony.id.0) } { (colony.name) }
                }
                "."
            }
        }
    }
}

fn outside(view: &View) -> Markup {
    let tongue = view.tongue();
    let unit = if view.settings.system == System::Us { "°F" } else { "°C" };
    let snow = [(text::snow_bare as Text, "none"), (text::snow_old, "old"), (text::snow_fresh, "new")];
    html! {
        fieldset class="outside" {
            legend { (tongue.say(&text::outside())) }
            label for="air" { (tongue.say(&text::air(unit))) }
            input id="air" name="air" inputmode="text" maxlength="12" autocomplete="off" data-unit=(if unit == "°F" { "F" } else { "C" });
            (choices((text::snow, "snow"), (text::unasked, None), &snow, tongue))
        }
    }
}

fn hive(view: &View, at: usize, colony: &Colony) -> Markup {
    let (has_hole, indoors) = (view.has_upper_hole(colony), view.is_indoors(colony));
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let name = |field: &str| format!("{at}.{field}");
    let (usual, further): (Vec<_>, Vec<_>) = Question::all().into_iter().partition(Question::is_usual);
    html! {
        fieldset class="round-hive" data-colony=(colony.id.0) {
            legend { (colony.name) }
            @if indoors { p class="small" { (say(text::indoors())) } }
            @if let Some(expected) = expected(view, colony) {
                p class="choices" { label {
                    input type="checkbox" name=(name("expected")) value=(expected.written) data-expected="";
                    span { (say(expected.words)) }
                } }
            }
            p class="verdict" role="status" data-verdict="" hidden {}
            @for question in usual.iter().filter(|question| !question.is_of_hole() || has_hole) {
                (question.shown(&name(question.field), indoors, tongue))
            }
            details {
                summary { (say(text::further())) }
                @for question in &further {
                    (question.shown(&name(question.field), indoors, tongue))
                }
                @for (asks, field, before, figure) in typed(indoors) {
                    @let unit = figure.unit(view.settings.system);
                    label for=(name(field)) { (say(asks())) @if !unit.is_empty() { "," (unit) } }
                    input id=(name(field)) name=(name(field)) inputmode="decimal" maxlength="12" autocomplete="off"
                        data-before=(before) data-after=(unit);
                }
                label for=(name("words")) { (say(text::word())) }
                input id=(name("words")) name=(name("words")) maxlength="500" autocomplete="off" data-words="";
            }
        }
    }
}

/// What one tap says of a hive at which all is as it should be.
struct Expected {
    /// As entries, `;` between.
    written: String,
    words: Message,
}

/// As many dead bees as a living colony shows today, and a clear entrance; nothing where no estimate says how many, nor of a
/// hive indoors.
fn expected(view: &View, colony: &Colony) -> Option<Expected> {
    let usual = view.standing.as_ref()?.present.table.expected(colony.id.0)?;
    Some(Expected {
        written: format!("{};entrance=clear", usual.written),
        words: text::expected(say::usual(usual.count)),
    })
}

/// Keeps a round sent as a form. Sent twice, it is kept once.
pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    let form = Asked(pairs);
    let visit = form.get("visit").and_then(|text| text.parse().ok()).unwrap_or_else(|| ids::new_id(Timestamp::now()));
    let mut notes = Vec::new();
    for (at, colony) in view.apiary.colonies.iter().enumerate() {
        let sent = sent(&view, &form, at, colony.id, visit)?;
        if sent.seen.is_empty() && sent.words.is_none() {
            continue;
        }
        let note = sent.asked(ids::note_of(VisitId(visit), colony.id), &view);
        notes.push(note.map_err(|fault| fault.again("/round".to_owned(), &form.0))?);
    }
    if notes.is_empty() {
        return Err(Fault::Wrong(text::wrong_none()));
    }
    for note in &notes {
        keep_note(&app, note).await?;
    }
    Ok(Redirect::to(&format!("/round?kept={}", notes.len())).into_response())
}

fn sent(view: &View, form: &Asked, at: usize, colony: ColonyId, visit: uuid::Uuid) -> Result<Sent, Fault> {
    let of = |field: &str| form.get(&format!("{at}.{field}")).map(str::to_owned);
    let mut seen: Vec<String> = Question::all().iter().filter_map(|question| of(question.field)).collect();
    // What was tapped otherwise goes before "as expected".
    let field = |entry: &str| entry.split('=').next().unwrap_or_default().to_owned();
    let expected = of("expected").unwrap_or_default();
    let is_open = |entry: &&str| !entry.is_empty() && seen.iter().all(|other| field(other) != field(entry));
    let expected: Vec<String> = expected.split(';').filter(is_open).map(str::to_owned).collect();
    seen.extend(expected);
    for (_, field, before, figure) in TYPED {
        let Some(typed) = of(field) else { continue };
        if before == "dead=" {
            seen.retain(|entry| !entry.starts_with("dead="));
        }
        seen.push(figure.written(before, &typed, view.settings.system));
    }
    Ok(Sent {
        visit,
        colony: colony.0,
        at: view.now.timestamp(),
        air: form.get("air").map(str::to_owned),
        snow: form.get("snow").map(snow).transpose()?,
        wind: None,
        seen,
        words: of("words"),
        sure: form.get("sure").is_some(),
    })
}

fn snow(text: &str) -> Result<SnowCover, Fault> {
    match text {
        "none" => Ok(SnowCover::None),
        "old" => Ok(SnowCover::Old),
        "new" => Ok(SnowCover::New),
        _ => Err(Fault::Wrong(text::wrong_snow())),
    }
}
