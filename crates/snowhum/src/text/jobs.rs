//! The windows of a year in words: what is due first, then the year as bars, then the days that serve.

use jiff::ToSpan;
use jiff::civil::Date;
use snowhum_advice::jobs::{Due, HalfMonth, JobWindow, JobsAnswer, Kind};
use snowhum_say::{Message, jobs_terminal as say, shared_terminal as shared};
use snowhum_units::Range;

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, heading, wrapped};

/// Columns of the names beside the bars, and of a month.
const NAMES: usize = 30;
const MONTH: usize = 4;

pub(crate) fn words(answer: &JobsAnswer) -> String {
    let title = say::title(answer.invented, answer.as_of.to_string(), &answer.apiary);
    let mut page = in_words(&title) + "\n";
    for hive in &answer.hives {
        page += &format!("  {}\n", wrapped(hive.words(), 4));
        for step in &hive.then {
            page += &format!("    {}\n", wrapped(step.words(), 4));
        }
    }
    page += &wrapped(shared::stands_on_weather(&answer.weather.source), 0);
    page += "\n";
    for note in answer.weather.told().chain(&answer.notes) {
        page += &format!("- {}\n", wrapped(note, 2));
    }
    for (due, title) in [(Due::Now, say::due_now()), (Due::Soon, say::due_soon())] {
        let due: Vec<&JobWindow> = answer.windows.iter().filter(|window| window.due == due).collect();
        if !due.is_empty() {
            page += &heading(title);
            due.into_iter().for_each(|window| page += &whole(window));
        }
    }
    page + &year(answer) + &months(answer) + &serving(&answer.half_months)
}

/// One window with its reasons.
fn whole(window: &JobWindow) -> String {
    let mut page = format!("\n  {}\n", wrapped(&window.what, 2));
    page += &entry(say::when(), tongue().sentence(&window.when));
    page += &entry(say::waits(), &window.trigger.words);
    page += &entry(shared::why(), &window.why);
    if !window.colonies.is_empty() {
        page += &entry(say::at(), shared::list(window.colonies.iter().map(Message::from).collect()));
    }
    if let Some(others) = &window.other_school {
        page += &entry(say::others(), others);
    }
    if let Some(belief) = &window.belief {
        page += &entry(say::not_so(), say::belief(&belief.said, &belief.so));
    }
    if let Some(caution) = &window.caution {
        page += &entry(say::caution(), &caution.says);
    }
    page
}

/// The year as bars, a quarter of a month a column.
fn year(answer: &JobsAnswer) -> String {
    let column = |on: Date| {
        let months = i64::from(on.year() - answer.from.year()) * 12 + i64::from(on.month() - answer.from.month());
        let within =
            usize::try_from(on.day() - 1).unwrap_or(0) * MONTH / usize::try_from(on.days_in_month()).unwrap_or(31);
        usize::try_from(months).ok().map(|months| months * MONTH + within).filter(|at| *at < 12 * MONTH)
    };
    let today = column(answer.as_of);
    let mut page = heading(say::year()) + "\n";
    page += &format!("  {:NAMES$}{}\n", "", month_names(answer.from));
    for window in &answer.windows {
        let Some(first) = window.earliest.and_then(column) else { continue };
        let last = window.latest.and_then(column).unwrap_or(12 * MONTH - 1).max(first);
        let mark = window.day().and_then(column);
        let sign = if window.kind == Kind::By { '!' } else { '#' };
        let at = |place: usize| match place {
            _ if mark == Some(place) => sign,
            _ if (first..=last).contains(&place) => '-',
            _ if today == Some(place) => ':',
            _ => ' ',
        };
        let bar: String = (0..12 * MONTH).map(at).collect();
        let name: String = in_words(&window.what).chars().take(NAMES - 2).collect();
        page += format!("  {:NAMES$}{bar}", name.trim_end()).trim_end();
        page += "\n";
    }
    page
}

/// The names of twelve months, each as short as its column.
fn month_names(from: Date) -> String {
    let month = |at: i32| in_words(&say::month(from.first_of_month().saturating_add(at.months())));
    let names = (0..12).map(|at| month(at).chars().take(MONTH - 1).collect::<String>());
    let names: String = names.map(|name| format!("{name:<MONTH$}")).collect();
    names.trim_end().to_owned()
}

/// Everything else, month by month, in a line or two.
fn months(answer: &JobsAnswer) -> String {
    let mut page = String::new();
    let mut last = None;
    for window in &answer.windows {
        let Some(on) = window.day() else { continue };
        if last != Some(on.first_of_month()) {
            last = Some(on.first_of_month());
            page += &heading(say::month_of_year(on, on.year()));
        }
        page += &format!("  {}\n", wrapped(say::window(&window.what, &window.when), 4));
        if let Some(words) = window.if_missed(answer.as_of) {
            page += &format!("    {}\n", wrapped(say::missed(words), 4));
        }
    }
    page
}

fn serving(halves: &[HalfMonth]) -> String {
    let line = |cells: [Message; 4]| {
        let [name, fly, lid, combs] = cells.map(|cell| in_words(&cell));
        format!("  {name:<20} {fly:<14} {lid:<18} {combs}\n")
    };
    let shown = |range: Range<f64>| say::days(range.p10, range.p50, range.p90);
    let mut page = heading(say::serve()) + "\n" + &line([Message::NONE, say::fly(), say::lid(), say::combs()]);
    for half in halves {
        let days = [half.flying_days, half.lid_days, half.comb_days].map(shown);
        let [fly, lid, combs] = days;
        page += &line([say::half(half.from.day(), half.to), fly, lid, combs]);
    }
    page
}
