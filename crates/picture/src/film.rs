//! A winter as a film: each hive drawn as it stands on a day, its parts named so that a little script moves them through
//! the days. Without the script the day asked about stands, with the months as a table.

mod chart;
mod hive;

use self::chart::LEFT;
use self::hive::Frame;
use crate::words::{clean, escaped};
use snowhum_say::{Message, Text, Tongue, film_picture as text, shared_page};
use snowhum_units::{Kelvin, Kilogram, Metre, Range};
use std::fmt::Write;

/// The style a film needs beside [`crate::stylesheet`].
pub const FILM_STYLE: &str = include_str!("../assets/film.css");
/// The script that moves it, a module; without it the still stands.
pub const FILM_SCRIPT: &str = include_str!("../assets/film.js");
/// What a page of its own needs beside.
const PAGE_STYLE: &str = include_str!("../assets/film-page.css");

/// Width of a hive's view, and of the chart under it.
const WIDTH: f64 = 360.0;

/// A winter told.
#[derive(Debug, Clone, PartialEq)]
pub struct WinterFilm {
    /// What it shows.
    pub title: String,
    /// Sentences under the title.
    pub lead: Vec<String>,
    /// Every day.
    pub days: Vec<FilmDay>,
    /// The day up to which it came so; after it stands what may come.
    pub today: usize,
    /// Every hive.
    pub hives: Vec<FilmHive>,
    /// Language and units of its words.
    pub tongue: Tongue,
}

/// A day outdoors.
#[derive(Debug, Clone, PartialEq)]
pub struct FilmDay {
    /// The day in words.
    pub when: String,
    /// The month that begins with it, in short.
    pub month: Option<String>,
    /// Coldest hour.
    pub low: Kelvin,
    /// Warmest hour.
    pub high: Kelvin,
    /// Snow lying.
    pub snow: Metre,
}

/// A hive and its winter.
#[derive(Debug, Clone, PartialEq)]
pub struct FilmHive {
    /// Its name.
    pub name: String,
    /// Inner width.
    pub width: Metre,
    /// Heights of its boxes, the lowest first.
    pub boxes: Vec<Metre>,
    /// Whether it is wrapped.
    pub is_wrapped: bool,
    /// Whether it has an upper hole.
    pub has_hole: bool,
    /// Food that its combs hold at most.
    pub holds: Kilogram,
    /// Each day.
    pub days: Vec<FilmHiveDay>,
    /// What was noted.
    pub notes: Vec<FilmNote>,
    /// What autumn foretold, in a sentence.
    pub foretold: String,
    /// What came, in sentences.
    pub came: Vec<String>,
    /// How its food compares with what was foretold; none where that is not known.
    pub food_came: Option<FoodCame>,
}

/// A figure against the range foretold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FoodCame {
    /// Under it.
    Less,
    /// Within it.
    AsForetold,
    /// Over it.
    More,
}

/// A hive at the end of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FilmHiveDay {
    /// Chance of being alive.
    pub alive: f64,
    /// Food.
    pub food: Option<Range<Kilogram>>,
    /// Food as foretold in autumn.
    pub foretold: Option<Range<Kilogram>>,
    /// Radius of the cluster.
    pub radius: Option<Metre>,
    /// Its core.
    pub core: Option<Kelvin>,
    /// Water caught by lid and walls, g a day.
    pub caught: f64,
    /// Share of the day with frost at the upper hole.
    pub frost_at_hole: f64,
}

/// A note.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FilmNote {
    /// Its day.
    pub day: usize,
    /// The day in words.
    pub when: String,
    /// What was noted.
    pub note: String,
    /// What it moved.
    pub moved: String,
}

impl FoodCame {
    const ALL: [Self; 3] = [Self::Less, Self::AsForetold, Self::More];

    /// As forms have it, and in words.
    const fn word(self) -> (&'static str, Text) {
        match self {
            Self::Less => ("less", text::less),
            Self::AsForetold => ("as foretold", text::as_foretold),
            Self::More => ("more", text::more),
        }
    }
}

impl WinterFilm {
    /// The film for a page that has [`crate::stylesheet`], [`FILM_STYLE`] and [`FILM_SCRIPT`].
    #[must_use]
    pub fn inline(&self) -> String {
        let mut out = String::with_capacity(64 * 1_024);
        let is_one = self.hives.len() == 1;
        let _ = write!(out, "<div class=\"film{}\">", if is_one { " one" } else { "" });
        self.lead.iter().for_each(|says| paragraph(&mut out, "", says));
        let _ = write!(
            out,
            "<p class=\"now\">{} <span data-c=\"weather\">{}</span></p>",
            self.cell(&self.when(self.today)),
            self.cell(&self.outdoors(self.today))
        );
        out.push_str("<div class=\"stage\">");
        for (at, hive) in self.hives.iter().enumerate() {
            self.place(&mut out, at, hive, is_one);
        }
        out.push_str("</div>");
        self.controls(&mut out);
        self.guess(&mut out);
        let _ = write!(out, "<section class=\"came\"><h2>{}</h2>", self.cell(&text::foretold_and_came()));
        for (at, hive) in self.hives.iter().enumerate() {
            self.told(&mut out, at, hive, if is_one { " open" } else { "" });
        }
        let _ = write!(out, "</section><details><summary>{}</summary>", self.cell(&shared_page::as_table()));
        self.hives.iter().for_each(|hive| self.table(&mut out, hive));
        let _ = write!(out, "</details><script type=\"application/json\">{}</script></div>", self.data(is_one));
        out
    }

    /// The film as one file that asks nothing of a network.
    #[must_use]
    pub fn standalone(&self) -> String {
        let title = cell(&self.title);
        let language = self.tongue.language().tag();
        format!(
            "<!DOCTYPE html>\n<html lang=\"{language}\"><head><meta charset=\"utf-8\"/><meta name=\"viewport\" \
             content=\"width=device-width, initial-scale=1\"/><meta http-equiv=\"Content-Security-Policy\" \
             content=\"default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'\"/><title>{title}</title>\
             <style>{}{}{PAGE_STYLE}</style></head><body><main><h1>{title}</h1>{}</main><script type=\"module\">{}</script>\
             </body></html>\n",
            crate::stylesheet(),
            FILM_STYLE,
            self.inline(),
            FILM_SCRIPT,
        )
    }

    /// A message as an element or an attribute holds it.
    fn cell(&self, message: &Message) -> String {
        cell(&self.tongue.say(message))
    }

    /// A figure that stays on one line.
    fn figure(&self, figure: &Message) -> Message {
        self.tongue.drawn().say(figure).into()
    }

    fn when(&self, day: usize) -> Message {
        self.days.get(day).map_or(Message::NONE, |one| text::then(&one.when))
    }

    fn outdoors(&self, day: usize) -> Message {
        self.days.get(day).map_or(Message::NONE, |one| {
            let [low, high] = [one.low, one.high].map(|air| self.figure(&text::air(air)));
            text::outdoors(high, low, self.figure(&text::length(one.snow)))
        })
    }

    /// One hive as it stands on the day asked about.
    fn place(&self, out: &mut String, at: usize, hive: &FilmHive, is_one: bool) {
        let day = hive.days.get(self.today).copied().unwrap_or(FilmHiveDay::UNKNOWN);
        let (name, lines) = (cell(&hive.name), self.lines(&day));
        let _ = write!(out, "<figure data-hive=\"{at}\">");
        self.hive(out, hive, &day);
        if is_one {
            self.chart(out, hive);
        }
        let _ = write!(out, "<figcaption><h2>{name}</h2>");
        for (line, says) in lines.iter().enumerate() {
            let _ = write!(out, "<p data-r=\"{line}\">{}</p>", self.cell(says));
        }
        out.push_str("</figcaption></figure>");
    }

    /// What is said of a hive on a day: alive, food, the rest.
    fn lines(&self, day: &FilmHiveDay) -> [Message; 3] {
        if day.alive <= 0.0 {
            return [text::dead(), Message::NONE, Message::NONE];
        }
        let cluster = day.radius.zip(day.core).map(|(radius, core)| {
            let across = Metre::new(2.0 * radius.get());
            text::cluster(self.figure(&text::length(across)), self.figure(&text::air(core)))
        });
        let wet = text::wet(day.frost_at_hole >= 0.1, day.water());
        let rest = cluster.into_iter().chain([wet]).collect();
        let alive = format!("{:.0}", (100.0 * day.alive).clamp(1.0, 99.0));
        [text::alive(alive), text::food(amounts(day)), text::inside(rest)]
    }

    fn controls(&self, out: &mut String) {
        let last = self.days.len().saturating_sub(1);
        let [play, slider, guess] = [text::play(), text::slider(), text::guess()].map(|says| self.cell(&says));
        let _ = write!(
            out,
            "<div class=\"controls\" data-c=\"controls\" hidden=\"\"><button type=\"button\" data-c=\"play\">{play}</button>\
             <input type=\"range\" data-c=\"slider\" min=\"0\" max=\"{last}\" value=\"{}\" aria-label=\"{slider}\">\
             <output data-c=\"date\">{}</output><button type=\"button\" data-c=\"ask\" hidden=\"\">{guess}</button></div>\
             <p class=\"now\" data-c=\"score\" role=\"status\" hidden=\"\"></p>",
            self.today,
            cell(self.date()),
        );
    }

    /// The day asked about.
    fn date(&self) -> &str {
        self.days.get(self.today).map_or("", |one| &one.when)
    }

    /// What people are asked before it is shown.
    fn guess(&self, out: &mut String) {
        let ask = self.cell(&text::ask(self.date()));
        let _ = write!(out, "<div class=\"guess\" data-c=\"guess\" hidden=\"\"><p>{ask}</p>");
        for (at, hive) in self.hives.iter().enumerate() {
            let Some(came) = hive.food_came else { continue };
            let _ = write!(out, "<fieldset data-came=\"{}\"><legend>{}</legend>", came.word().0, cell(&hive.name));
            for (value, says) in FoodCame::ALL.map(FoodCame::word) {
                let says = self.cell(&says());
                let _ =
                    write!(out, "<label><input type=\"radio\" name=\"guess{at}\" value=\"{value}\"> {says}</label>");
            }
            out.push_str("</fieldset>");
        }
        let _ = write!(out, "<button type=\"button\" data-c=\"show\">{}</button></div>", self.cell(&text::show()));
    }

    /// The first of each month, and the day asked about.
    fn table(&self, out: &mut String, hive: &FilmHive) {
        let (name, region) = (cell(&hive.name), self.cell(&text::by_months(&hive.name)));
        let _ = write!(
            out,
            "<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"{region}\"><table><caption>{name}</caption><thead><tr>"
        );
        for head in HEADS {
            let _ = write!(out, "<th scope=\"col\">{}</th>", self.cell(&head()));
        }
        out.push_str("</tr></thead><tbody>");
        let is_told = |at: usize, one: &FilmDay| at == 0 || one.month.is_some() || at == self.today;
        for (at, one) in self.days.iter().enumerate().filter(|(at, one)| is_told(*at, one)) {
            let Some(day) = hive.days.get(at) else { continue };
            let [alive, food, rest] = self.lines(day);
            let food = if food.is_none() { food } else { amounts(day) };
            let foretold =
                day.foretold.map_or(Message::NONE, |food| text::range(text::mass(food.p90), text::bare_mass(food.p10)));
            let _ = write!(out, "<tr><th scope=\"row\">{}</th>", cell(&one.when));
            for says in [self.outdoors(at), alive, food, foretold, rest] {
                let _ = write!(out, "<td>{}</td>", self.cell(&says));
            }
            out.push_str("</tr>");
        }
        out.push_str("</tbody></table></div>");
    }

    /// What is said while the script moves it, a mark in the place of each figure.
    fn says(&self) -> String {
        let [a, b, c] = ["#0", "#1", "#2"];
        let outdoors = || text::outdoors(b, a, c);
        let says = [
            ("dead", text::dead()),
            ("alive", text::alive(a)),
            ("unknown", text::food(text::unknown())),
            ("food", text::food(text::amounts(a, c, b))),
            ("cluster", text::cluster(a, b)),
            ("wet", text::wet(false, a)),
            ("frosted", text::wet(true, a)),
            ("both", text::inside(vec![a.into(), b.into()])),
            ("outdoors", outdoors()),
            ("ahead", text::ahead(outdoors())),
            ("play", text::play()),
            ("stop", text::stop()),
            ("week", text::week()),
            ("score", text::score(b, a)),
        ];
        let said = says.map(|(name, says)| format!("\"{name}\":\"{}\"", plain(&self.tongue.say(&says))));
        format!("{{{}}}", said.join(","))
    }

    fn told(&self, out: &mut String, at: usize, hive: &FilmHive, open: &str) {
        let _ = write!(out, "<details{open}><summary>{}</summary>", cell(&hive.name));
        paragraph(out, "", &hive.foretold);
        hive.came.iter().for_each(|says| paragraph(out, "", says));
        if !hive.notes.is_empty() {
            let _ = write!(out, "<ol data-notes=\"{at}\">");
            for note in &hive.notes {
                let told = self.cell(&text::note(&note.moved, &note.note, &note.when));
                let _ = write!(out, "<li data-day=\"{}\">{told}</li>", note.day);
            }
            out.push_str("</ol>");
        }
        out.push_str("</details>");
    }

    /// What the script moves the parts by: numbers, and the days in words.
    fn data(&self, is_one: bool) -> String {
        let unit = |figure: String| figure.split_once(' ').map_or_else(String::new, |(_, unit)| unit.to_owned());
        let system = self.tongue.system();
        let temperature = |kelvin: Kelvin| kelvin.show(system, 0);
        let whens: Vec<String> = self.days.iter().map(|one| format!("\"{}\"", plain(&one.when))).collect();
        let days = |of: &dyn Fn(&FilmDay) -> String| list(self.days.iter().map(|one| numeral(&of(one))));
        let hives: Vec<String> = self.hives.iter().map(|hive| self.hive_data(hive, is_one)).collect();
        format!(
            "{{\"says\":{},\"today\":{},\"mass\":\"{}\",\"degree\":\"{}\",\"length\":\"{}\",\"water\":\"{}\",\"when\":[{}],\"coldest\":{},\"warmest\":{},\
             \"snow\":{},\"snowHigh\":{},\"hives\":[{}]}}",
            self.says(),
            self.today,
            plain(&unit(Kilogram::new(1.0).show(system, 1))),
            plain(&unit(temperature(Kelvin::from_celsius(1.0)))),
            plain(&unit(self.bare(&text::length(Metre::new(0.2))))),
            plain(&unit(self.bare(&FilmHiveDay::UNKNOWN.water()))),
            whens.join(","),
            days(&|one| temperature(one.low)),
            days(&|one| temperature(one.high)),
            days(&|one| self.bare(&text::length(one.snow))),
            list((0..self.days.len()).map(|day| number(self.snow(day)))),
            hives.join(","),
        )
    }

    /// A figure as programs read it.
    fn bare(&self, figure: &Message) -> String {
        Tongue::new(self.tongue.system()).say(figure)
    }

    fn hive_data(&self, hive: &FilmHive, is_one: bool) -> String {
        let (frame, system) = (Frame::of(hive), self.tongue.system());
        let column = |of: &dyn Fn(&FilmHiveDay) -> Option<String>| {
            list(hive.days.iter().map(|day| of(day).unwrap_or_else(|| "null".to_owned())))
        };
        let mass = |mass: Kilogram| numeral(&mass.show(system, 1));
        let food = |pick: fn(&Range<Kilogram>) -> Kilogram| column(&|day| day.food.map(|food| mass(pick(&food))));
        let mut out = format!(
            "{{\"top\":{},\"bottom\":{},\"ground\":{},",
            number(frame.top),
            number(frame.bottom),
            number(frame.ground)
        );
        if is_one {
            let _ = write!(out, "\"left\":{},\"step\":{:.4},", number(LEFT), self.step());
        }
        let _ = write!(
            out,
            "\"alive\":{},\"food\":{},\"low\":{},\"high\":{},\"foodHigh\":{},\"radius\":{},\"wide\":{},\"core\":{},\"caught\":{},\
             \"water\":{},\"frost\":{}}}",
            column(&|day| Some(format!("{:.0}", 1_000.0 * day.alive))),
            food(|food| food.p50),
            food(|food| food.p10),
            food(|food| food.p90),
            column(&|day| Some(format!("{:.0}", frame.food(hive, day)))),
            column(&|day| Some(format!("{:.1}", frame.radius(day)))),
            column(&|day| day.radius.map(|radius| numeral(&self.bare(&text::length(Metre::new(2.0 * radius.get())))))),
            column(&|day| day.core.map(|core| numeral(&core.show(system, 0)))),
            column(&|day| Some(format!("{:.0}", day.caught))),
            column(&|day| Some(numeral(&self.bare(&day.water())))),
            column(&|day| Some(format!("{:.0}", 100.0 * day.frost_at_hole))),
        );
        out
    }
}

impl FilmHiveDay {
    const UNKNOWN: Self =
        Self { alive: 1.0, food: None, foretold: None, radius: None, core: None, caught: 0.0, frost_at_hole: 0.0 };

    fn water(&self) -> Message {
        text::water(Kilogram::new(self.caught / 1e3))
    }
}

const HEADS: [Text; 6] =
    [text::head_day, text::head_outdoors, text::head_alive, text::head_food, text::head_foretold, text::head_inside];

/// Food on a day with what lies around it.
fn amounts(day: &FilmHiveDay) -> Message {
    day.food.map_or_else(text::unknown, |food| {
        text::amounts(text::mass(food.p50), text::bare_mass(food.p90), text::bare_mass(food.p10))
    })
}

fn rectangle(out: &mut String, class: &str, more: &str, [x, y, width, height]: [f64; 4]) {
    let _ = write!(
        out,
        "<rect class=\"{class} sn-l-full\" stroke-width=\".8\"{more} x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>",
        number(x),
        number(y),
        number(width),
        number(height.max(0.0))
    );
}

fn line(out: &mut String, more: &str, [x1, y1, x2, y2]: [f64; 4]) {
    let _ = write!(
        out,
        "<path class=\"sn-l-full\"{more} d=\"M{} {}L{} {}\"/>",
        number(x1),
        number(y1),
        number(x2),
        number(y2)
    );
}

fn paragraph(out: &mut String, class: &str, text: &str) {
    let class = if class.is_empty() { String::new() } else { format!(" class=\"{class}\"") };
    let _ = write!(out, "<p{class}>{}</p>", cell(text));
}

fn list(values: impl Iterator<Item = String>) -> String {
    format!("[{}]", values.collect::<Vec<_>>().join(","))
}

/// Text as an element or an attribute holds it.
fn cell(text: &str) -> String {
    escaped(&clean(text))
}

/// Text in a string of a script's data: nothing in it ends the string or the script.
fn plain(text: &str) -> String {
    clean(text).replace(['"', '\\', '<', '>', '&'], "")
}

/// The number of a figure as data.
fn numeral(shown: &str) -> String {
    let text = shown.split(' ').next().unwrap_or_default();
    if text.parse::<f64>().is_ok_and(f64::is_finite) { text.to_owned() } else { "null".to_owned() }
}

fn number(value: f64) -> String {
    let value = if value.is_finite() { value.clamp(-1e5, 1e5) } else { 0.0 };
    let text = format!("{value:.1}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
