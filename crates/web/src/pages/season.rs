//! A new autumn: last winter becomes history, the colonies that live are counted anew.

use axum::Form;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use snowhum_advice::lessons::{Fate, fates};
use snowhum_apiary::{Apiary, AutumnCount, Colony, QuickFault, Reckoned, SeasonFault, Wrong, read_day, winter_year};
use snowhum_say::{Message, season_page as text};
use snowhum_units::{Bare, Kilogram, Measured};

use super::hives;
use super::notes::Pairs;
use crate::app::App;
use crate::fault::Fault;
use crate::page::{Place, page};
use crate::view::{Asked, View};

/// A label with an example of what is typed.
type Label = fn(&'static str) -> Message;

/// What is asked of a colony: the field, its question in the keeper's unit, and an example.
const ASKS: [(&str, Label, &str); 4] = [
    ("bees", |_| text::bees(), "8"),
    ("food", text::food, "14"),
    ("mites", |_| text::mites(), "3/300"),
    ("queen", |_| text::queen(), "laying"),
];

/// What a colony was noted to be, and needs no count.
const GONE: [Fate; 4] = [Fate::Dead, Fate::Sold, Fate::United, Fate::Disaster];

/// What is wrong with what was sent: of the colonies that stood, and of a hive that comes.
#[derive(Default)]
struct Faults {
    season: Vec<SeasonFault>,
    another: Vec<QuickFault>,
}

/// The form.
pub(crate) async fn show(State(app): State<App>) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    Ok(sheet(&view, &Asked(Vec::new()), &Faults::default()))
}

/// Begins the autumn with what was found.
pub(crate) async fn keep(State(app): State<App>, Form(pairs): Pairs) -> Result<Response, Fault> {
    let view = View::of(&app).await?;
    if view.apiary.invented {
        return Err(Fault::Wrong(text::invented()));
    }
    let form = Asked(pairs);
    match begun(&view, &form) {
        Ok(next) => {
            app.renew(&next).await?;
            Ok(Redirect::to("/?begun=autumn").into_response())
        }
        Err(faults) => Ok((StatusCode::UNPROCESSABLE_ENTITY, sheet(&view, &form, &faults)).into_response()),
    }
}

/// The yard of the new autumn: the colonies that were counted, and a hive that came, if one is named.
fn begun(view: &View, form: &Asked) -> Result<Apiary, Faults> {
    let of_season = |season| Faults { season, ..Faults::default() };
    let as_of = as_of(view, form).map_err(of_season)?;
    let counts = counts(view, form);
    let next = view.apiary.next_autumn(as_of, &counts, Bare::In(view.settings.system)).map_err(of_season)?;
    if form.get("name").is_none() {
        return Ok(next);
    }
    next.with_another(&hives::typed(form)).map_err(|another| Faults { another, ..Faults::default() })
}

fn as_of(view: &View, form: &Asked) -> Result<jiff::civil::Date, Vec<SeasonFault>> {
    let today = view.now.date();
    let Some(written) = form.get("as_of") else { return Ok(today) };
    let fault = |wrong: Wrong| vec![SeasonFault { colony: None, field: "as_of", wrong }];
    read_day(written, Reckoned::Back(today)).map_err(fault)
}

/// What was found at each colony that is not gone.
fn counts(view: &View, form: &Asked) -> Vec<AutumnCount> {
    let one = |(at, colony): (usize, &Colony)| {
        let of = |field: &str| form.get(&format!("{at}.{field}")).unwrap_or_default().to_owned();
        let stays = form.get(&format!("{at}.gone")).is_none();
        stays.then(|| AutumnCount {
            name: colony.name.clone(),
            bees: of("bees"),
            food: of("food"),
            mites: of("mites"),
            queen: of("queen"),
        })
    };
    standing(view).filter_map(one).collect()
}

/// Colonies that were not noted as gone, with their places.
fn standing(view: &View) -> impl Iterator<Item = (usize, &Colony)> {
    let fates = fates(&view.apiary);
    let stays = move |at: &usize| fates.get(*at).is_none_or(|fate| !GONE.contains(fate));
    view.apiary.colonies.iter().enumerate().filter(move |(at, _)| stays(at))
}

fn sheet(view: &View, form: &Asked, faults: &Faults) -> Markup {
    let apiary = &view.apiary;
    let year = winter_year(apiary.as_of, apiary.site.latitude);
    let stays: Vec<usize> = standing(view).map(|(at, _)| at).collect();
    let gone: Vec<Message> = (0..apiary.colonies.len())
        .filter(|at| !stays.contains(at))
        .map(|at| (&apiary.colonies[at].name).into())
        .collect();
    let say = |message: Message| view.tongue().say(&message);
    let heading = say(text::heading());
    let body = html! {
        h1 { (heading) }
        p class="lede" { (say(text::lede(apiary.as_of, year))) }
        @if !gone.is_empty() { p { (say(text::gone(gone))) } }
        (to_mend(faults, view))
        form method="post" action="/season" {
            label for="as_of" { (say(text::day())) }
            input id="as_of" name="as_of" autocomplete="off" maxlength="40"
                value=(form.get("as_of").map_or_else(|| view.now.date().to_string(), str::to_owned));
            @for (at, colony) in standing(view) { (colony_form(view, at, colony, form)) }
            details class="folded" open[form.get("name").is_some()] {
                summary { (say(text::new())) }
                (hives::facts(form, &faults.another, view.tongue()))
            }
            button class="main" { (say(text::begin())) }
        }
    };
    page(view, Place::Elsewhere, &heading, &body)
}

fn to_mend(faults: &Faults, view: &View) -> Markup {
    let season = faults.season.iter().map(SeasonFault::message);
    let says: Vec<Message> = season.chain(faults.another.iter().map(|fault| fault.says.clone())).collect();
    html! {
        @if !says.is_empty() {
            section class="caution" role="alert" {
                h2 { (view.tongue().say(&text::mend())) }
                ul { @for says in says { li { (view.tongue().sentence(&says)) } } }
            }
        }
    }
}

fn colony_form(view: &View, at: usize, colony: &Colony, form: &Asked) -> Markup {
    let tongue = view.tongue();
    let unit = Kilogram::usual(tongue.system());
    html! {
        fieldset {
            legend { (colony.name) }
            div class="stack" {
                @for (field, asks, example) in ASKS {
                    @let name = format!("{at}.{field}");
                    div {
                        label for=(name) { (tongue.say(&asks(unit))) }
                        input id=(name) name=(name) maxlength="40" autocomplete="off" placeholder=(example)
                            value=(form.get(&name).unwrap_or_default());
                    }
                }
            }
            @let name = format!("{at}.gone");
            label { input type="checkbox" name=(name) value="yes" checked[form.get(&name).is_some()]; " " (tongue.say(&text::is_gone())) }
        }
    }
}
