//! The yard round: a walk past the hives, logged with gloves on.

use axum::Form;
use axum::extract::State;
use axum::response::{IntoResponse, Redirect, Response};
use jiff::Timestamp;
use maud::{Markup, html};
use snowhum_apiary::{Colony, ColonyId, Entry, SnowCover, VisitId};
use snowhum_units::System;

use super::notes::{Pairs, keep as keep_note};
use super::questions::heard;
use crate::app::App;
use crate::fault::Fault;
use crate::ids;
use crate::page::{Place, page};
use crate::sent::Sent;
use crate::view::{Asked, View};

/// One question of the round: what is asked, the field, and each answer with what it is written as.
pub(crate) struct Question {
    pub(crate) asks: &'static str,
    pub(crate) field: &'static str,
    pub(crate) answers: &'static [(&'static str, &'static str)],
}

impl Question {
    /// Whether it is asked at a hive with an upper hole alone.
    pub(crate) fn is_of_hole(&self) -> bool {
        matches!(self.field, "hole" | "upper")
    }

    /// What stands chosen until a keeper taps: nothing of it is stored.
    const fn unasked(&self) -> &'static str {
        match self.field.as_bytes() {
            b"poke" => "not tried",
            _ => UNASKED,
        }
    }

    /// Its answers at a hive: indoors without what nobody can see there.
    pub(super) fn answers(&self, indoors: bool) -> Vec<(&'static str, &'static str)> {
        let is_seen = |written: &str| {
            let read = Entry::read(written, &|_| None);
            !matches!(read, Ok(Entry::Sign(sign)) if !sign.is_seen_indoors())
        };
        self.answers.iter().copied().filter(|(_, written)| !indoors || is_seen(written)).collect()
    }

    /// The question under this name, with its answers to tap; nothing where none of them can be given.
    pub(super) fn shown(&self, name: &str, indoors: bool) -> Markup {
        self.shown_as(name, indoors, None)
    }

    /// The same, with the answer that was tapped before.
    pub(super) fn shown_as(&self, name: &str, indoors: bool, chosen: Option<&str>) -> Markup {
        let answers = self.answers(indoors);
        html! { @if !answers.is_empty() { (choices(self.asks, name, (self.unasked(), chosen), &answers)) } }
    }
}

const UNASKED: &str = "did not look";
/// Said at a hive that stands indoors, on the round and on its sheet.
pub(crate) const INDOORS: &str = "Stands indoors: no flight, snow or rime to look for; its dead lie on its floor.";

/// Asked at every hive, in the order a keeper sees things.
pub(crate) const USUAL: [Question; 7] = [
    Question {
        asks: "Dead bees, new",
        field: "dead",
        answers: &[
            ("none", "dead=0"),
            ("1–5", "dead=1-5"),
            ("6–20", "dead=6-20"),
            ("21–100", "dead=21-100"),
            ("over 100", "dead=over 100"),
        ],
    },
    ENTRANCE,
    UPPER,
    Question {
        asks: "Rime at the upper hole",
        field: "hole",
        answers: &[("new rime", "hole=new rime"), ("rime", "hole=rime"), ("damp", "hole=damp"), ("dry", "hole=dry")],
    },
    Question {
        asks: "Hum, ear at the wall",
        field: "hum",
        answers: &[("heard", "hum=heard by ear"), ("silent", "hum=silent by ear")],
    },
    POKE,
    Question {
        asks: "Flying",
        field: "flight",
        answers: &[
            ("well", "flight=well"),
            ("thin", "flight=thin"),
            ("to and fro", "flight=traffic"),
            ("no bee", "flight=none"),
        ],
    },
];

/// How the flight entrance stands, on the round and on a hive's own page.
pub(crate) const ENTRANCE: Question = Question {
    asks: "Entrance",
    field: "entrance",
    answers: &[
        ("clear", "entrance=clear"),
        ("blocked", "entrance=blocked"),
        ("I cleared it", "entrance=cleared"),
        ("drifted over", "entrance=drifted over"),
        ("iced", "entrance=iced"),
        ("plugged with bees", "entrance=plugged with bees"),
        ("not visible", "entrance=not visible"),
    ],
};

/// How the upper hole stands.
pub(crate) const UPPER: Question = Question {
    asks: "Upper hole",
    field: "upper",
    answers: &[
        ("clear", "upper=clear"),
        ("blocked", "upper=blocked"),
        ("I cleared it", "upper=cleared"),
        ("drifted over", "upper=drifted over"),
        ("iced", "upper=iced"),
        ("plugged with bees", "upper=plugged with bees"),
        ("not visible", "upper=not visible"),
    ],
};

/// The sign that settles it, on the round and on a hive's own page.
pub(crate) const POKE: Question = Question {
    asks: "Poke at the hole or entrance",
    field: "poke",
    answers: &[("a bee answered", "poke=answered"), ("silent", "poke=silent")],
};

/// Asked on a hive's own page.
pub(crate) const AT_A_HIVE: [Question; 3] = [ENTRANCE, UPPER, POKE];

/// Asked a tap further down.
pub(crate) const FURTHER: [Question; 6] = [
    Question { asks: "Pollen", field: "pollen", answers: &[("carried in", "pollen=yes"), ("none", "pollen=no")] },
    Question {
        asks: "Droppings",
        field: "droppings",
        answers: &[("on snow", "droppings=on snow"), ("on the hive", "droppings=on hive"), ("none", "droppings=none")],
    },
    Question { asks: "Robbers", field: "robbers", answers: &[("yes", "robbers=yes"), ("no", "robbers=no")] },
    Question { asks: "Wasps", field: "wasps", answers: &[("yes", "wasps=yes"), ("no", "wasps=no")] },
    Question { asks: "Under the lid, by hand", field: "lid", answers: &[("warm", "lid=warm"), ("cold", "lid=cold")] },
    Question {
        asks: "Lifted by hand",
        field: "heft",
        answers: &[("light", "heft=light"), ("fair", "heft=fair"), ("heavy", "heft=heavy")],
    },
];

/// Typed figures: what is asked, the field, what goes before, and whether it is a mass.
pub(crate) const TYPED: [(&str, &str, &str, Figure); 5] = [
    ("Snow against the box, over the ground", "depth", "snow=", Figure::Depth),
    ("Dead bees, counted", "count", "dead=", Figure::Count),
    ("Dead bees pulled out with a hook", "hook", "hook=", Figure::Count),
    ("Whole hive on a scale", "scale", "scale=", Figure::Mass),
    ("One side lifted, always the same", "side", "side=", Figure::Mass),
];

/// The typed figures of a hive: indoors without the dead before it.
pub(crate) fn typed(indoors: bool) -> impl Iterator<Item = (&'static str, &'static str, &'static str, Figure)> {
    TYPED.into_iter().filter(move |(_, field, ..)| !indoors || !matches!(*field, "count" | "depth"))
}

/// What a typed figure is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Figure {
    Count,
    Mass,
    Depth,
}

impl Figure {
    pub(crate) const fn unit(self, system: System) -> &'static str {
        match (self, system) {
            (Self::Count, _) => "",
            (Self::Mass, System::Metric) => " kg",
            (Self::Mass, System::Us) => " lb",
            (Self::Depth, System::Metric) => " cm",
            (Self::Depth, System::Us) => " in",
        }
    }
}

impl Figure {
    /// The entry: a bare depth is in the keeper's small unit, a bare mass in the keeper's own.
    pub(crate) fn written(self, before: &str, typed: &str, system: System) -> String {
        let is_bare_depth = self == Self::Depth && snowhum_units::number(typed).is_ok();
        format!("{before}{typed}{}", if is_bare_depth { self.unit(system) } else { "" })
    }
}

pub(crate) async fn show(State(app): State<App>, asked: Asked) -> Result<Markup, Fault> {
    let view = View::of(&app).await?;
    let of_invented = view.apiary.invented.then(|| view.now.strftime("%:z").to_string());
    let body = html! {
        h1 { "Yard round" }
        @if let Some(kept) = asked.get("kept").and_then(|text| text.parse::<u16>().ok()) {
            p class="kept" role="status" { strong { (kept) (if kept == 1 { " hive" } else { " hives" }) " noted and stored." } " The estimate follows by itself." }
        }
        p class="no-print" {
            "Tap what you saw; leave what you did not look at. Out of reach it waits in the phone and is sent later. "
            a href="/round/sheet" { "A sheet for a pencil" }
        }
        form id="round" method="post" action="/round" data-day=(view.now.date()) data-invented=[of_invented] {
            input type="hidden" name="visit" value=(ids::new_id(Timestamp::now()));
            @for (at, colony) in view.watched() { (hive(&view, at, colony)) }
            (outside(&view))
            (not_asked(&view))
            // Shown by the script, which takes one hive a screen.
            section id="summary" hidden { h2 { "All of it" } ul {} }
            div class="keep" {
                div id="steps" hidden {
                    button type="button" data-go="-1" aria-label="Hive before" { "←" }
                    output {}
                    button type="button" data-go="999" { "End" }
                    button type="button" data-go="1" aria-label="Next hive" { "→" }
                }
                button class="main" { "Keep the round" }
            }
        }
        (heard("/round"))
    };
    Ok(page(&view, Place::Round, "Yard round", &body))
}

/// Hives in which nothing lives any more; what is seen at them is noted on their own pages.
fn not_asked(view: &View) -> Markup {
    let gone: Vec<&Colony> = view.gone().collect();
    html! {
        @if !gone.is_empty() {
            p class="small" {
                "Not asked about, as nothing lives there any more: "
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
    let unit = if view.settings.system == System::Us { "°F" } else { "°C" };
    html! {
        fieldset class="outside" {
            legend { "Outside" }
            label for="air" { "Air, " (unit) }
            input id="air" name="air" inputmode="text" maxlength="12" autocomplete="off" data-unit=(if unit == "°F" { "F" } else { "C" });
            (choices("Snow before the hives", "snow", (UNASKED, None), &[("bare", "none"), ("old", "old"), ("fresh", "new")]))
        }
    }
}

fn hive(view: &View, at: usize, colony: &Colony) -> Markup {
    let (has_hole, indoors) = (view.has_upper_hole(colony), view.is_indoors(colony));
    let name = |field: &str| format!("{at}.{field}");
    html! {
        fieldset class="round-hive" data-colony=(colony.id.0) {
            legend { (colony.name) }
            @if indoors { p class="small" { (INDOORS) } }
            @if let Some(expected) = expected(view, colony) {
                p class="choices" { label {
                    input type="checkbox" name=(name("expected")) value=(expected.written) data-expected="";
                    span { "As expected: " (expected.words) }
                } }
            }
            p class="verdict" role="status" data-verdict="" hidden {}
            @for question in USUAL.iter().filter(|question| !question.is_of_hole() || has_hole) {
                (question.shown(&name(question.field), indoors))
            }
            details {
                summary { "Further signs, weight, a word" }
                @for question in &FURTHER {
                    (question.shown(&name(question.field), indoors))
                }
                @for (asks, field, before, figure) in typed(indoors) {
                    @let unit = figure.unit(view.settings.system);
                    label for=(name(field)) { (asks) @if !unit.is_empty() { "," (unit) } }
                    input id=(name(field)) name=(name(field)) inputmode="decimal" maxlength="12" autocomplete="off"
                        data-before=(before) data-after=(unit);
                }
                label for=(name("words")) { "A word" }
                input id=(name("words")) name=(name("words")) maxlength="500" autocomplete="off" data-words="";
            }
        }
    }
}

/// What one tap says of a hive at which all is as it should be.
struct Expected {
    /// As entries, `;` between.
    written: String,
    words: String,
}

/// As many dead bees as a living colony shows today, and a clear entrance; nothing where no estimate says how many, nor of a
/// hive indoors.
fn expected(view: &View, colony: &Colony) -> Option<Expected> {
    let usual = view.standing.as_ref()?.present.table.expected(colony.id.0)?;
    Some(Expected {
        written: format!("{};entrance=clear", usual.written),
        words: format!("{} dead bees, entrance clear", usual.count.words()),
    })
}

/// Big targets of which one may be chosen; the first is that nobody looked.
fn choices(asks: &str, name: &str, (unasked, chosen): (&str, Option<&str>), answers: &[(&str, &str)]) -> Markup {
    html! {
        fieldset class="choices" {
            legend { (asks) }
            label class="unasked" { input type="radio" name=(name) value="" checked[chosen.is_none()]; span { "–" span class="unseen" { " " (unasked) } } }
            @for (words, written) in answers {
                label { input type="radio" name=(name) value=(written) checked[chosen == Some(*written)]; span { (words) } }
            }
        }
    }
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
        return Err(Fault::Wrong("No hive was noted: tap what you saw at one at least.".to_owned()));
    }
    for note in &notes {
        keep_note(&app, note).await?;
    }
    Ok(Redirect::to(&format!("/round?kept={}", notes.len())).into_response())
}

fn sent(view: &View, form: &Asked, at: usize, colony: ColonyId, visit: uuid::Uuid) -> Result<Sent, Fault> {
    let of = |field: &str| form.get(&format!("{at}.{field}")).map(str::to_owned);
    let mut seen: Vec<String> = USUAL.iter().chain(&FURTHER).filter_map(|question| of(question.field)).collect();
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
        _ => Err(Fault::Wrong("Snow is one of none, old, new.".to_owned())),
    }
}
