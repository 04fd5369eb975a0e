//! Losses and lessons in words.

use snowhum_advice::lessons::{ForecastScore, LessonsAnswer, SurveyLine, WinterRecord};
use snowhum_advice::words::day;
use snowhum_units::{Kelvin, Kilogram, System};

use crate::text::voice::{in_words, said};
use crate::text::{entry, losses, wrapped};

pub(crate) fn words(answer: &LessonsAnswer, system: System) -> String {
    let mut page = head(answer);
    for colony in &answer.colonies {
        page += &entry(&colony.colony, &in_words(&colony.line));
    }
    page += "\n";
    for say in answer.remember.iter().chain(&answer.say) {
        page += &format!("  {}\n", wrapped(&in_words(say), 2));
    }
    if let Some(told) = &answer.losses {
        page += &format!("\n{}", losses::counts(told));
    }
    page += &(losses::background(&answer.background) + "\n");
    let costs = &answer.costs;
    let money = |amount: f64| format!("{amount:.0} {}", costs.currency);
    page += &entry(
        "Cost",
        &format!("{} of colonies, {} of food noted", money(costs.colonies_money), money(costs.feed_money)),
    );
    if let Some(score) = &answer.forecast {
        page += &forecast(score);
    }
    page += "\nWinters\n";
    for winter in &answer.winters {
        page += &entry(&winter.season.name, &side_by_side(winter, answer, system));
    }
    page += "\nOthers\n";
    for survey in &answer.published {
        let what = format!(
            "{:.1} % ({:.1} to {:.1}): {}; {}",
            survey.value, survey.low, survey.high, survey.who, survey.source
        );
        page += &entry(&survey.winter, &what);
    }
    page += "\nFor a survey\n";
    for line in &answer.survey {
        page += &asked(line);
    }
    page
}

fn head(answer: &LessonsAnswer) -> String {
    let so_far = answer.so_far;
    let open = if so_far.not_told > 0 { " so far" } else { "" };
    let invented = if answer.invented { ", an invented yard" } else { "" };
    let title = format!(
        "{}{invented}, winter {}: {} of {} colonies lost{open}",
        answer.apiary, answer.season.name, so_far.lost, so_far.at_risk
    );
    let days = format!(
        "Counted from {} to {}, as noted by {} {}.",
        day(answer.season.start),
        day(answer.season.end),
        day(answer.as_of),
        answer.as_of.year()
    );
    format!("{}\n\n  {}\n\n", wrapped(&title, 0), wrapped(&days, 2))
}

fn forecast(score: &ForecastScore) -> String {
    let mut page = "\nForecast against what happened\n".to_owned();
    for colony in &score.colonies {
        let came = if colony.alive { "alive" } else { "dead" };
        let text = format!("foretold alive {:.0} in 100; {came}", 100.0 * colony.foretold_alive);
        page += &entry(&colony.colony, &text);
    }
    let [low, high] = score.log_score_if_right;
    page += &entry(
        "Log score",
        &format!(
            "{:.2}; base rate of {:.0} in 100 alive: {:.2}. Smaller is better. If its chances are right it lies between {low:.2} and {high:.2}",
            score.log_score,
            100.0 * score.base_alive,
            score.base_log_score
        ),
    );
    page += &entry("Brier", &format!("{:.2}; base rate {:.2}", score.brier, score.base_brier));
    page += &entry("", "Today's model, asked about the day the colonies were counted.");
    for say in &score.say {
        page += &entry("", &in_words(say));
    }
    page
}

fn side_by_side(winter: &WinterRecord, answer: &LessonsAnswer, system: System) -> String {
    let open = if winter.not_told > 0 { format!(", {} not told", winter.not_told) } else { String::new() };
    let mut parts = vec![format!("{} of {} lost{open}", winter.lost, winter.at_risk)];
    if winter.fed_kg > 0.0 {
        let fed = Kilogram::new(winter.fed_kg).show(system, 0);
        parts.push(format!("{fed} fed for {:.0} {}", winter.fed_money, answer.costs.currency));
    }
    if let Some(worst) = &winter.worst_mites {
        parts.push(format!("most mites {} in {} bees ({}, {})", worst.found, worst.bees, worst.colony, day(worst.on)));
    }
    if winter.treated > 0 {
        parts.push(format!("{} treated", winter.treated));
    }
    if let Some(coldest) = winter.coldest {
        let air = Kelvin::from_celsius(coldest.air_c).show(system, 0);
        parts.push(format!("coldest noted {air} on {}", day(coldest.on)));
    }
    if !winter.counted {
        parts.push("colonies as noted, autumn not counted here".to_owned());
    }
    parts.join("; ")
}

/// A question of a form with its answer under it, where both do not fit a line.
fn asked(line: &SurveyLine) -> String {
    const ROOM: usize = 62;
    let asks = in_words(&line.asks);
    let asks = said(&asks);
    let answer = line.answer.as_ref().map_or("(not in the records)".to_owned(), in_words);
    if asks.chars().count() <= ROOM && answer.chars().count() <= 14 {
        return format!("  {asks:<ROOM$}{answer:>14}\n");
    }
    format!("  {}\n    {}\n", wrapped(&asks, 4), wrapped(&answer, 4))
}
