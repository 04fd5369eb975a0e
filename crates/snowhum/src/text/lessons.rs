//! Losses and lessons in words.

use snowhum_advice::lessons::{ForecastScore, LessonsAnswer, WinterRecord};
use snowhum_say::{Message, lessons_terminal as say, shared_terminal as shared};
use snowhum_units::{Kelvin, Kilogram};

use crate::text::voice::in_words;
use crate::text::{entry, heading, losses, paragraph, paragraphs, wrapped};

pub(crate) fn words(answer: &LessonsAnswer) -> String {
    let mut page = head(answer);
    for colony in &answer.colonies {
        page += &entry(&colony.colony, &colony.line);
    }
    page += "\n";
    page += &paragraphs(answer.remember.iter().chain(&answer.say));
    if let Some(told) = &answer.losses {
        page += &format!("\n{}", losses::counts(told));
    }
    page += &(losses::background(&answer.background) + "\n");
    let costs = &answer.costs;
    let money = |amount: f64| shared::money(amount, &costs.currency);
    page += &entry(shared::cost(), say::cost(money(costs.colonies_money), money(costs.feed_money)));
    if let Some(score) = &answer.forecast {
        page += &forecast(score);
    }
    page += &heading(say::winters());
    for winter in &answer.winters {
        page += &entry(&winter.season.name, side_by_side(winter, answer));
    }
    page += &heading(say::others());
    for survey in &answer.published {
        let what = say::survey(survey.low, survey.high, survey.value, &survey.source, &survey.who);
        page += &entry(&survey.winter, what);
    }
    page += &heading(say::for_survey());
    for line in &answer.survey {
        page += &asked(&line.asks, &line.answer.clone().unwrap_or_else(say::not_in_records));
    }
    page
}

fn head(answer: &LessonsAnswer) -> String {
    let (so_far, season) = (answer.so_far, &answer.season);
    let open = so_far.not_told > 0;
    let title = say::title(so_far.at_risk, answer.invented, so_far.lost, open, &season.name, &answer.apiary);
    let days = say::counted(answer.as_of, season.start, season.end);
    format!("{}\n\n{}\n", wrapped(title, 0), paragraph(days))
}

fn forecast(score: &ForecastScore) -> String {
    let mut page = heading(say::forecast());
    for colony in &score.colonies {
        page += &entry(&colony.colony, say::foretold(colony.alive, 100.0 * colony.foretold_alive));
    }
    let ([low, high], base) = (score.log_score_if_right, 100.0 * score.base_alive);
    page += &entry(say::log_score(), say::log_scored(score.base_log_score, high, base, low, score.log_score));
    page += &entry(say::brier(), say::brier_scored(score.base_brier, score.brier));
    page += &entry("", say::today());
    page + &score.say.iter().map(|says| entry("", says)).collect::<String>()
}

fn side_by_side(winter: &WinterRecord, answer: &LessonsAnswer) -> Message {
    let mut parts = vec![match winter.not_told {
        0 => say::lost(winter.at_risk, winter.lost),
        open => say::lost_open(winter.at_risk, winter.lost, open),
    }];
    if winter.fed_kg > 0.0 {
        let money = shared::money(winter.fed_money, &answer.costs.currency);
        parts.push(say::fed(Kilogram::new(winter.fed_kg), money));
    }
    if let Some(worst) = &winter.worst_mites {
        parts.push(say::mites(worst.bees, &worst.colony, worst.found, worst.on));
    }
    if winter.treated > 0 {
        parts.push(say::treated(winter.treated));
    }
    if let Some(coldest) = winter.coldest {
        parts.push(say::coldest(Kelvin::from_celsius(coldest.air_c), coldest.on));
    }
    if !winter.counted {
        parts.push(say::not_counted());
    }
    shared::parts(parts)
}

/// A question of a form with its answer under it, where both do not fit a line.
fn asked(asks: &Message, answer: &Message) -> String {
    const ROOM: usize = 62;
    let (words, told) = (in_words(asks), in_words(answer));
    if words.chars().count() <= ROOM && told.chars().count() <= 14 {
        return format!("  {words:<ROOM$}{told:>14}\n");
    }
    format!("  {}\n    {}\n", wrapped(asks, 4), wrapped(answer, 4))
}
