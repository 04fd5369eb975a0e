//! A winter's losses and lessons, as told.

use maud::{Markup, html};
use snowhum_advice::lessons::{Coldest, Fate, ForecastScore, LessonsAnswer, Survey, SurveyLine, WinterRecord};
use snowhum_advice::sums::losses::{Background, YardLosses};
use snowhum_say::{Message, Text, Tongue, losses_page as text};
use snowhum_units::{Kelvin, Kilogram};

use crate::page::folded;
use crate::view::{Asked, View};
use crate::words::marked;

/// The count, the lessons, what it cost, the forecast.
pub(super) fn told(view: &View, answer: &LessonsAnswer, asked: &Asked) -> Markup {
    let (so_far, season, costs, tongue) = (&answer.so_far, &answer.season, &answer.costs, view.tongue());
    let say = |message: Message| tongue.say(&message);
    let cost = text::cost(costs.colonies_money, &costs.currency, costs.feed_money);
    html! {
        p class="lede" { (say(text::lede(so_far.at_risk, so_far.not_told == 0, so_far.lost, &season.name))) }
        p class="small" { (say(text::counted(season.start, season.end))) }
        @for said in answer.remember.iter().chain(&answer.say) { p { (tongue.say(said)) } }
        @if answer.colonies.iter().any(|colony| colony.fate != Fate::NotTold) { section {
            h2 { (say(text::each())) }
            ul class="sources" { @for colony in &answer.colonies { li {
                (marked(tongue, &text::one(&colony.colony, &colony.line)))
                @if colony.fate == Fate::Dead && colony.examined.is_none() { " " a class="no-print" href="/dead" { (say(text::examine())) } }
            } } }
        } }
        @if let Some(yard) = answer.losses.as_ref().and_then(|losses| losses.yard.as_ref()) { (numbers(yard, tongue)) }
        (background(&answer.background, tongue))
        p { (marked(tongue, &cost)) " " a class="why" href="/settings" { (say(text::worth())) } }
        (forecast(view, answer, asked))
    }
}

/// What the yard's own winters say of losses to what nobody names.
fn background(told: &Background, tongue: Tongue) -> Markup {
    html! {
        section {
            h2 { (tongue.say(&text::unnamed())) }
            @for say in &told.say { p { (tongue.say(say)) } }
            details class="no-print" {
                summary { (tongue.say(&text::stands_on())) }
                ul class="sources" { @for source in &told.sources { li { (tongue.sentence(source)) } } }
            }
        }
    }
}

fn numbers(yard: &YardLosses, tongue: Tongue) -> Markup {
    let (luck, wilson, next) = (yard.luck_clopper_pearson, yard.luck_wilson, yard.next_rate_interval);
    let percents = [luck.high, luck.low, wilson.high, wilson.low, next.high, next.low].map(|share| 100.0 * share);
    let [high, low, wilson_high, wilson_low, next_high, next_low] = percents;
    let alive = if yard.weak > 0 { text::alive_weak(yard.alive, yard.weak) } else { text::alive_of(yard.alive) };
    let rows = [
        (text::lost(), text::lost_of(yard.dead, yard.disaster, yard.queen_failed, 100.0 * yard.rate)),
        (text::alive(), alive),
        (text::luck(), text::luck_of(high, low, wilson_high, wilson_low)),
        (text::next(), text::next_of(next_high, next_low, 100.0 * yard.next_rate)),
    ];
    listed(&rows, tongue)
}

fn listed(rows: &[(Message, Message)], tongue: Tongue) -> Markup {
    html! { dl { @for (name, says) in rows { dt { (tongue.say(name)) } dd { (tongue.say(says)) } } } }
}

/// The forecast of autumn against what happened; asked for, since it takes a whole plan.
fn forecast(view: &View, answer: &LessonsAnswer, asked: &Asked) -> Markup {
    let say = |message: Message| view.tongue().say(&message);
    html! {
        section {
            h2 { (say(text::forecast())) }
            @if let Some(score) = &answer.forecast {
                (scored(score, view.tongue()))
            } @else if !answer.can_be_scored() {
                p { (say(text::not_yet())) }
            } @else if asked.get("foretold").is_some() {
                p { (say(text::none_scored())) }
            } @else {
                p { a class="no-print" href={ "/losses?foretold=1&season=" (answer.season.year) } { (say(text::compute(view.apiary.as_of))) } " " (say(text::seconds())) }
            }
        }
    }
}

fn scored(score: &ForecastScore, tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let [low, high] = score.log_score_if_right;
    let rows = [
        (text::log(), text::log_of(score.base_log_score, high, low, score.log_score)),
        (text::brier(), text::brier_of(score.base_brier, score.brier)),
        (text::base(), text::base_of(100.0 * score.base_alive, &score.base_source)),
    ];
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(text::scored())) {
            table {
                (heads(&[text::colony(), text::foretold(), text::came()], tongue))
                tbody { @for colony in &score.colonies { tr {
                    th scope="row" { (colony.colony) }
                    td { (say(text::foretold_of(100.0 * colony.foretold_alive))) }
                    td { (say(text::came_of(colony.alive))) }
                } } }
            }
        }
        p class="small" { (say(text::model())) }
        (listed(&rows, tongue))
        @for said in &score.say { p { (tongue.say(said)) } }
    }
}

fn heads(heads: &[Message], tongue: Tongue) -> Markup {
    html! { thead { tr { @for head in heads { th scope="col" { (tongue.say(head)) } } } } }
}

/// Winters side by side, what others lost, the numbers a survey asks for.
pub(super) fn behind(view: &View, answer: &LessonsAnswer) -> Markup {
    let tongue = view.tongue();
    let side_by_side = tongue.say(&text::winters());
    let before = html! {
        div class="wide" tabindex="0" role="region" aria-label=(side_by_side) { (winters(&answer.winters, &answer.costs.currency, tongue)) }
    };
    html! {
        (folded(&side_by_side, &before))
        (folded(&tongue.say(&text::others()), &others(&answer.published, tongue)))
        (folded(&tongue.say(&text::survey()), &survey(&answer.survey, tongue)))
    }
}

fn others(published: &[Survey], tongue: Tongue) -> Markup {
    let say = |message: Message| tongue.say(&message);
    let who = |survey: &Survey| {
        let whole = survey.of_which.is_none();
        if whole { survey.who.clone() } else { text::of_which(&survey.of_which, &survey.who) }
    };
    html! {
        div class="wide" tabindex="0" role="region" aria-label=(say(text::others())) {
            table {
                caption { (say(text::told())) }
                (heads(&[text::winter(), text::lost(), text::who(), text::read()], tongue))
                tbody { @for survey in published { tr {
                    th scope="row" { (survey.winter) }
                    td { (say(text::rate(survey.high, survey.low, survey.value))) }
                    td { (say(who(survey))) }
                    td { (survey.source) }
                } } }
            }
        }
    }
}

fn survey(lines: &[SurveyLine], tongue: Tongue) -> Markup {
    html! {
        p class="small" { (tongue.say(&text::survey_numbers())) }
        table {
            tbody { @for line in lines { tr {
                th scope="row" { (tongue.say(&line.asks)) }
                td { @match &line.answer { Some(answer) => (tongue.say(answer)), None => span class="small" { (tongue.say(&text::no_record())) } } }
            } } }
        }
    }
}

fn winters(all: &[WinterRecord], currency: &str, tongue: Tongue) -> Markup {
    const HEADS: [Text; 6] =
        [text::winter, text::lost, text::food_given, text::most_mites, text::treated, text::coldest];
    html! {
        table {
            (heads(&HEADS.map(|head| head()), tongue))
            tbody { @for winter in all { tr {
                th scope="row" { a href={ "/losses?season=" (winter.season.year) } { (winter.season.name) } }
                @for cell in cells(winter, currency) { td { (tongue.say(&cell)) } }
            } } }
        }
        @if all.iter().any(|winter| !winter.counted) { p class="small" { (tongue.say(&text::earlier())) } }
    }
}

/// What a row says of a winter, in the order of the heads.
fn cells(winter: &WinterRecord, currency: &str) -> [Message; 5] {
    let (at_risk, lost) = (winter.at_risk, winter.lost);
    let cold = |coldest: &Coldest| text::cold(Kelvin::from_celsius(coldest.air_c), coldest.on);
    [
        match winter.not_told {
            0 => text::winter_lost(at_risk, lost),
            not_told => text::winter_lost_so_far(at_risk, lost, not_told),
        },
        match winter.fed_kg {
            fed if fed > 0.0 => text::food(currency, Kilogram::new(fed), winter.fed_money),
            _ => text::none_noted(),
        },
        match &winter.worst_mites {
            Some(worst) => text::mites(worst.bees, &worst.colony, worst.found, worst.on),
            None => text::no_count(),
        },
        text::treated_of(winter.treated),
        winter.coldest.as_ref().map_or_else(text::none_noted, cold),
    ]
}
