//! The windows of a year in words: what is due first, then the year as bars, then the days that serve.

use jiff::civil::Date;
use snowhum_advice::jobs::{Due, HalfMonth, JobWindow, JobsAnswer, Kind};
use snowhum_advice::words::{day, month, short_month};
use snowhum_units::Range;

use crate::text::voice::{in_words, said, tongue};
use crate::text::{entry, wrapped};

/// Columns of the names beside the bars, and of a month.
const NAMES: usize = 30;
const MONTH: usize = 4;

pub(crate) fn words(answer: &JobsAnswer) -> String {
    let invented = if answer.invented { " (an invented yard)" } else { "" };
    let mut page = format!("Jobs and dates, {}{invented}: {}\n", answer.apiary, answer.as_of);
    for hive in &answer.hives {
        page += &format!("  {}\n", wrapped(&in_words(&hive.words()), 4));
    }
    page += &wrapped(&format!("It stands on {}.", answer.weather.source), 0);
    page += "\n";
    for note in answer.weather.told().chain(&answer.notes).map(in_words) {
        page += &format!("- {}\n", wrapped(&note, 2));
    }
    for (due, title) in [(Due::Now, "Due now"), (Due::Soon, "Within a month")] {
        let due: Vec<&JobWindow> = answer.windows.iter().filter(|window| window.due == due).collect();
        if !due.is_empty() {
            page += &format!("\n{title}\n");
            due.into_iter().for_each(|window| page += &whole(window));
        }
    }
    page += &year(answer);
    page += &months(answer);
    page + &serving(&answer.half_months)
}

/// One window with its reasons.
fn whole(window: &JobWindow) -> String {
    let mut page = format!("\n  {}\n", wrapped(&in_words(&window.what), 2));
    page += &entry("When", &tongue().sentence(&window.when));
    page += &entry("Waits for", &in_words(&window.trigger.words));
    page += &entry("Why", &in_words(&window.why));
    if !window.colonies.is_empty() {
        page += &entry("At", &window.colonies.join(", "));
    }
    if let Some(others) = &window.other_school {
        page += &entry("Others", &in_words(others));
    }
    if let Some(belief) = &window.belief {
        page += &entry("Not so", &format!("\"{}\" {}", in_words(&belief.said), in_words(&belief.so)));
    }
    if let Some(caution) = &window.caution {
        page += &entry("Caution", &caution.says);
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
    let mut page = "\nThe year: - from early to late, # usual (of deadlines ! the safe day)\n\n".to_owned();
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
        let name: String = said(&in_words(&window.what)).chars().take(NAMES - 2).collect();
        page += format!("  {:NAMES$}{bar}", name.trim_end()).trim_end();
        page += "\n";
    }
    page
}

fn month_names(from: Date) -> String {
    let names: Vec<&str> = (0..12).map(|at| short_month(from.month() + at)).collect();
    names.join(" ")
}

/// Everything else, month by month, in a line or two.
fn months(answer: &JobsAnswer) -> String {
    let mut page = String::new();
    let mut last = None;
    for window in &answer.windows {
        let Some(on) = window.day() else { continue };
        if last != Some((on.year(), on.month())) {
            last = Some((on.year(), on.month()));
            page += &format!("\n{} {}\n", month(on.month()), on.year());
        }
        page += &format!("  {}\n", wrapped(&format!("{}: {}.", in_words(&window.what), in_words(&window.when)), 4));
        if let Some(words) = window.if_missed(answer.as_of) {
            page += &format!("    {}\n", wrapped(&format!("If it was not done: {}", in_words(&words)), 4));
        }
    }
    page
}

fn serving(halves: &[HalfMonth]) -> String {
    let mut page = "\nDays that serve: usual, and 8 winters in 10\n\n".to_owned();
    page += "                       bees can fly   lid off a minute   fit for combs\n";
    let shown = |range: Range<f64>| format!("{:.0} ({:.0}-{:.0})", range.p50, range.p10, range.p90);
    for half in halves {
        let name = format!("{} to {}", half.from.day(), day(half.to));
        let (fly, lid, comb) = (shown(half.flying_days), shown(half.lid_days), shown(half.comb_days));
        page += &format!("  {name:<20} {fly:<14} {lid:<18} {comb}\n");
    }
    page
}
