//! Jobs and dates: what is due here, what comes next, and a calendar of it all.

use axum::extract::State;
use axum::http::header;
use axum::response::IntoResponse;
use jiff::Timestamp;
use jiff::civil::Date;
use maud::{Markup, html};
use snowhum_advice::jobs::{Due, JobWindow, JobsAnswer, calendar};
use snowhum_picture::{JobWindows, Tick, Window};
use snowhum_say::{Message, Tongue, draw_page, jobs, jobs_page as text};
use snowhum_units::Range;

use crate::app::App;
use crate::draw;
use crate::fault::Fault;
use crate::frame;
use crate::page::{Place, folded, page};
use crate::pages::apiary::chip;
use crate::view::View;
use crate::words::{cautioned, marked};

pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let mut view = View::of(&app).await?;
    let last = app.windows().await;
    view.await_for(&last);
    let heading = view.tongue().say(&text::heading());
    let body = html! {
        h1 { (heading) }
        (frame::age(&view, &last))
        @match &last.answer {
            Some(Ok(windows)) => (body(&view, &told(&app, windows))),
            Some(Err(words)) => p class="caution" { (view.tongue().say(words)) },
            None => {}
        }
    };
    Ok(page(&view, Place::Jobs, &heading, &body))
}

/// The same for the keeper's own calendar.
pub(crate) async fn download(State(app): State<App>) -> Result<impl IntoResponse, Fault> {
    let view = View::of(&app).await?;
    let answer = told(&app, &*app.whole_windows().await?);
    let file = calendar::calendar(&answer, &view.apiary, view.tongue(), Timestamp::now());
    let kind = [
        (header::CONTENT_TYPE, "text/calendar; charset=utf-8"),
        (header::CONTENT_DISPOSITION, "attachment; filename=\"jobs-and-dates.ics\""),
    ];
    Ok((kind, file))
}

/// The windows with what the last estimate says of each hive.
pub(crate) fn told(app: &App, windows: &JobsAnswer) -> JobsAnswer {
    match app.standing() {
        Some(standing) => windows.clone().told_by(&standing.present.now),
        None => windows.clone(),
    }
}

fn body(view: &View, answer: &JobsAnswer) -> Markup {
    let tongue = view.tongue();
    let say = |message: Message| tongue.say(&message);
    let due = |due: Due| answer.windows.iter().filter(move |window| window.due == due);
    let lines = |due: Due, shown: Shown| lines(answer, due, shown, tongue);
    html! {
        @if !answer.hives.is_empty() {
            ul class="evidence" {
                @for hive in &answer.hives { li { strong { (hive.name) } " " (chip(view, &hive.verdict)) " " (tongue.capital(&hive.says)) "." @for step in &hive.then { " " (tongue.sentence(&step.words())) } } }
            }
        }
        p class="ways no-print" { a href="/jobs.ics" { (say(text::calendar())) } a href="/spring" { (say(text::first_look())) } }
        @if due(Due::Now).next().is_none() { p class="lede" { (say(text::none_due())) } } @else {
            h2 { (say(text::due(due(Due::Now).count()))) }
            (lines(Due::Now, if due(Due::Now).count() > AT_ONCE { Shown::Folded } else { Shown::Whole }))
        }
        @if due(Due::Soon).next().is_some() {
            h2 { (say(text::soon())) }
            (lines(Due::Soon, Shown::Folded))
        }
        (folded(&say(text::later()), &lines(Due::Later, Shown::Folded)))
        (folded(&say(text::past()), &lines(Due::Past, Shown::Folded)))
        (folded(&say(text::picture()), &charts(answer, tongue)))
        (folded(&say(text::serving()), &days(answer, tongue)))
        @for note in &answer.notes { p class="small" { (tongue.say(note)) } }
    }
}

/// Jobs due at once that are told whole: two with their reasons fill a phone's screen.
const AT_ONCE: usize = 2;

/// How a job is told.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Shown {
    /// With its reason and its caution.
    Whole,
    /// Its name and its days, the rest a tap down.
    Folded,
}

fn lines(answer: &JobsAnswer, due: Due, shown: Shown, tongue: Tongue) -> Markup {
    html! {
        @for window in answer.windows.iter().filter(|window| window.due == due) {
            details class="folded job" id=(window.id) open[shown == Shown::Whole] {
                summary { span { (tongue.say(&window.what)) " " span class="small" { (tongue.sentence(&window.when)) } } }
                (whole(window, answer, tongue))
            }
        }
    }
}

/// What there is to a job beside its name and its days.
fn whole(window: &JobWindow, answer: &JobsAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let hives = window.colonies.iter().map(Message::from).collect();
    html! {
        @if let Some(words) = window.if_missed(answer.as_of) { p class="kept" { span class="label" { (say(text::missed())) } " " (tongue.say(&words)) } }
        p { (tongue.say(&window.trigger.words)) }
        @if !window.colonies.is_empty() && window.colonies.len() < answer.hives.len() { p class="small" { (say(text::at(hives))) } }
        (caution(window, answer, tongue))
        details {
            summary { (say(text::why())) }
            p { (tongue.say(&window.why)) }
            @if let Some(belief) = &window.belief { p { (marked(tongue, &text::belief(&belief.said, &belief.so))) } }
            @if let Some(others) = &window.other_school { p class="small" { (tongue.say(others)) } }
            @if let Some(figure) = &window.trigger.figure {
                p class="small ways" { a href={ "/source/jobs/" (figure) } { (say(text::who())) } }
            } @else if window.trigger.source != jobs::source_none() {
                p class="small" { (say(text::source(&window.trigger.source))) }
            }
        }
    }
}

/// A warning stands once on the page, at the first job that it is of; the others lead there.
fn caution(window: &JobWindow, answer: &JobsAnswer, tongue: Tongue) -> Markup {
    let Some(caution) = &window.caution else { return html! {} };
    let in_order = [Due::Now, Due::Soon, Due::Later, Due::Past]
        .into_iter()
        .flat_map(|due| answer.windows.iter().filter(move |window| window.due == due));
    let mut same = in_order.filter(|one| one.caution.as_ref().is_some_and(|other| other.says == caution.says));
    match same.next() {
        Some(first) if first.id != window.id => html! {
            p class="caution" { (marked(tongue, &text::caution(&first.id, &first.what))) }
        },
        _ => html! { p class="caution" { (cautioned(tongue, &caution.says)) } },
    }
}

fn charts(answer: &JobsAnswer, tongue: Tongue) -> Markup {
    let parts = [(text::autumn(), 0..4), (text::winter(), 4..9), (text::spring(), 9..12)];
    html! {
        div class="papers" { @for (at, (title, months)) in parts.into_iter().enumerate() {
            @if let Some(plate) = chart((answer, tongue), tongue.say(&title), months) { div class="paper" { (draw::figure(&plate.plate(), &format!("year{at}"), tongue)) } }
        } }
    }
}

/// The windows of some months of the season as bars.
fn chart((answer, tongue): (&JobsAnswer, Tongue), title: String, months: std::ops::Range<usize>) -> Option<JobWindows> {
    let since = |on: Date| i32::try_from(on.duration_since(answer.from).as_hours() / 24).unwrap_or(0);
    let month = |on: Date| {
        let months = i32::from(on.year() - answer.from.year()) * 12 + i32::from(on.month() - answer.from.month());
        usize::try_from(months).unwrap_or(0).min(11)
    };
    let window = |one: &JobWindow| {
        let (first, usual) = (one.earliest?, one.day()?);
        let last = one.latest.or(one.usual).unwrap_or(usual);
        let words = match one.latest {
            Some(latest) => text::window(first, latest, one.usual.unwrap_or(usual)),
            None => text::from(first),
        };
        months.contains(&month(usual)).then(|| Window {
            name: tongue.say(&one.what),
            days: [first, one.usual.unwrap_or(usual), last].map(since),
            words: tongue.say(&words),
        })
    };
    let windows: Vec<Window> = answer.windows.iter().filter_map(window).collect();
    let (low, high) =
        windows.iter().fold((i32::MAX, i32::MIN), |(low, high), one| (low.min(one.days[0]), high.max(one.days[2])));
    let today = since(answer.as_of);
    let shown = (low..=high).contains(&today);
    let today = shown.then(|| Tick { day: today, words: tongue.say(&text::asked_about(answer.as_of)) });
    (!windows.is_empty()).then(|| JobWindows { title, windows, ticks: ticks(answer.from, tongue), today, tongue })
}

/// The firsts of the months.
fn ticks(from: Date, tongue: Tongue) -> Vec<Tick> {
    let tick = |at: i64| {
        let first = from.saturating_add(jiff::Span::new().months(at));
        let day = i32::try_from(first.duration_since(from).as_hours() / 24).unwrap_or(0);
        Tick { day, words: tongue.say(&draw_page::month(first)) }
    };
    (0..=12).map(tick).collect()
}

/// How many days serve for what.
fn days(answer: &JobsAnswer, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let shown = |range: Range<f64>| format!("{:.0} ({:.0}–{:.0})", range.p50, range.p10, range.p90);
    html! {
        p { (say(text::serving_lede())) }
        div class="wide" tabindex="0" role="region" aria-label=(say(text::serving())) {
            table {
                thead { tr { @for head in [text::days(), text::fly(), text::lid(), text::combs()] { th scope="col" { (say(head)) } } } }
                tbody {
                    @for half in &answer.half_months {
                        tr {
                            th scope="row" { (say(text::half(half.from.day(), half.to))) }
                            td { (shown(half.flying_days)) } td { (shown(half.lid_days)) } td { (shown(half.comb_days)) }
                        }
                    }
                }
            }
        }
    }
}
