//! A winter's losses and lessons, as told.

use maud::{Markup, html};
use snowhum_advice::lessons::{Fate, ForecastScore, LessonsAnswer, Survey, SurveyLine, WinterRecord};
use snowhum_advice::sums::losses::{Background, YardLosses};
use snowhum_advice::words::day;
use snowhum_say::Tongue;
use snowhum_units::{Kelvin, System};

use crate::page::folded;
use crate::view::{Asked, View};
use crate::words::{capital, mass};

/// The count, the lessons, what it cost, the forecast.
pub(super) fn told(view: &View, answer: &LessonsAnswer, asked: &Asked) -> Markup {
    let (so_far, tongue) = (answer.so_far, view.tongue());
    html! {
        p class="lede" {
            "Winter " (answer.season.name) ": " (so_far.lost) " of " (so_far.at_risk) " colonies lost"
            @if so_far.not_told > 0 { " so far" } "."
        }
        p class="small" {
            "Counted from " (day(answer.season.start)) " to " (day(answer.season.end)) ", when winter is over here. "
            "Lost is: no living bees, or too small to be a colony; a queen problem that cannot be mended; a disaster. "
            "Weak but alive is not lost, and a colony united with another is one fewer at risk (COLOSS BEEBOOK 2013)."
        }
        @for say in answer.remember.iter().chain(&answer.say) { p { (tongue.say(say)) } }
        @if answer.colonies.iter().any(|colony| colony.fate != Fate::NotTold) { section {
            h2 { "Each colony" }
            ul class="sources" { @for colony in &answer.colonies { li {
                strong { (colony.colony) } ": " (tongue.say(&colony.line)) "."
                @if colony.fate == Fate::Dead && colony.examined.is_none() { " " a class="no-print" href="/dead" { "Examine it" } }
            } } }
        } }
        @if let Some(yard) = answer.losses.as_ref().and_then(|losses| losses.yard.as_ref()) { (numbers(yard)) }
        (background(&answer.background, view.tongue()))
        p {
            span class="label" { "Cost" } " "
            (format!("{:.0} {}", answer.costs.colonies_money, answer.costs.currency)) " of colonies, "
            (format!("{:.0} {}", answer.costs.feed_money, answer.costs.currency)) " of food as far as it was noted. "
            a class="why" href="/settings" { "What a colony is worth" }
        }
        (forecast(view, answer, asked))
    }
}

/// What the yard's own winters say of losses to what nobody names.
fn background(told: &Background, tongue: Tongue) -> Markup {
    html! {
        section {
            h2 { "Lost to what nobody names" }
            @for say in &told.say { p { (tongue.say(say)) } }
            details class="no-print" {
                summary { "What this stands on" }
                ul class="sources" { @for source in &told.sources { li { (tongue.capital(source)) "." } } }
            }
        }
    }
}

fn percent(low: f64, high: f64) -> String {
    format!("{:.0} to {:.0} %", 100.0 * low, 100.0 * high)
}

fn numbers(yard: &YardLosses) -> Markup {
    html! {
        dl {
            dt { "Lost" } dd { (format!("{:.0} %", 100.0 * yard.rate)) ": " (yard.dead) " dead or empty, " (yard.queen_failed) " queen failed, " (yard.disaster) " disaster" }
            dt { "Alive" } dd { (yard.alive) @if yard.weak > 0 { ", " (yard.weak) " of them weak" } }
            dt { "Luck" } dd { "Fits a yearly rate of " (percent(yard.luck_clopper_pearson.low, yard.luck_clopper_pearson.high)) " (exact); " (percent(yard.luck_wilson.low, yard.luck_wilson.high)) " by Wilson" }
            dt { "Next winter" } dd { (format!("{:.0} %", 100.0 * yard.next_rate)) " (" (percent(yard.next_rate_interval.low, yard.next_rate_interval.high)) "), drawn to what yards usually lose" }
        }
    }
}

/// The forecast of autumn against what happened; asked for, since it takes a whole plan.
fn forecast(view: &View, answer: &LessonsAnswer, asked: &Asked) -> Markup {
    html! {
        section {
            h2 { "Forecast against what happened" }
            @if let Some(score) = &answer.forecast {
                (scored(score, view.tongue()))
            } @else if !answer.can_be_scored() {
                p { "Not yet: it is scored once winter is over and every colony told, since those that die first are no fair choice." }
            } @else if asked.get("foretold").is_some() {
                p { "None of the colonies can be scored." }
            } @else {
                p { a class="no-print" href={ "/losses?foretold=1&season=" (answer.season.year) } { "Compute what was to be expected on " (day(view.apiary.as_of)) } " (some seconds)" }
            }
        }
    }
}

fn scored(score: &ForecastScore, tongue: Tongue) -> Markup {
    let [low, high] = score.log_score_if_right;
    html! {
        div class="wide" tabindex="0" role="region" aria-label="Foretold, and what came" {
            table {
                thead { tr { th scope="col" { "Colony" } th scope="col" { "Foretold alive, of 100" } th scope="col" { "Came" } } }
                tbody { @for colony in &score.colonies { tr {
                    th scope="row" { (colony.colony) }
                    td { (format!("{:.0}", 100.0 * colony.foretold_alive)) }
                    td { @if colony.alive { "alive" } @else { "dead" } }
                } } }
            }
        }
        p class="small" { "Today's model, asked about the day the colonies were counted. Disasters and colonies that left are not scored; a failed queen counts as alive." }
        dl {
            dt { "Log score" } dd { (format!("{:.2}", score.log_score)) ", base rate " (format!("{:.2}", score.base_log_score)) ". Smaller is better; if its chances are right it lies between " (format!("{low:.2} and {high:.2}")) }
            dt { "Brier score" } dd { (format!("{:.2}", score.brier)) ", base rate " (format!("{:.2}", score.base_brier)) }
            dt { "Base rate" } dd { (format!("{:.0}", 100.0 * score.base_alive)) " of 100 alive: " (score.base_source) }
        }
        @for say in &score.say { p { (tongue.say(say)) } }
    }
}

/// Winters side by side, what others lost, the numbers a survey asks for.
pub(super) fn behind(view: &View, answer: &LessonsAnswer) -> Markup {
    let before = html! {
        div class="wide" tabindex="0" role="region" aria-label="Winters side by side" { (winters(&answer.winters, view.settings.system, &answer.costs.currency)) }
    };
    html! {
        (folded("Winters side by side", &before))
        (folded("What others lost", &others(&answer.published)))
        (folded("For the yearly survey", &survey(&answer.survey, view.tongue())))
    }
}

fn others(published: &[Survey]) -> Markup {
    html! {
        div class="wide" tabindex="0" role="region" aria-label="What others lost" {
            table {
                caption { "As keepers told surveys, not as a laboratory found" }
                thead { tr { th scope="col" { "Winter" } th scope="col" { "Lost" } th scope="col" { "Who" } th scope="col" { "Where read" } } }
                tbody { @for survey in published { tr {
                    th scope="row" { (survey.winter) }
                    td { (format!("{:.1} % ({:.1} to {:.1})", survey.value, survey.low, survey.high)) }
                    td { (survey.who) @if !survey.of_which.is_empty() { "; " (survey.of_which) } }
                    td { (survey.source) }
                } } }
            }
        }
    }
}

fn survey(lines: &[SurveyLine], tongue: Tongue) -> Markup {
    html! {
        p class="small" { "The numbers loss surveys ask for, to be copied. What the records do not hold is left open." }
        table {
            tbody { @for line in lines { tr {
                th scope="row" { (tongue.say(&line.asks)) }
                td { @match &line.answer { Some(answer) => (tongue.say(answer)), None => span class="small" { "not in the records" } } }
            } } }
        }
    }
}

fn winters(all: &[WinterRecord], system: System, currency: &str) -> Markup {
    html! {
        table {
            thead { tr {
                @for head in ["Winter", "Lost", "Food given", "Most mites in autumn", "Treated", "Coldest noted"] { th scope="col" { (head) } }
            } }
            tbody { @for winter in all { tr {
                th scope="row" { a href={ "/losses?season=" (winter.season.year) } { (winter.season.name) } }
                td { (winter.lost) " of " (winter.at_risk) @if winter.not_told > 0 { ", " (winter.not_told) " not told" } }
                td { @if winter.fed_kg > 0.0 { (mass(winter.fed_kg, system)) ", " (format!("{:.0} {currency}", winter.fed_money)) } @else { "none noted" } }
                td { @match &winter.worst_mites {
                    Some(worst) => { (worst.found) " in " (worst.bees) " bees, " (worst.colony) ", " (day(worst.on)) },
                    None => "no count kept",
                } }
                td { (winter.treated) }
                td { @match winter.coldest {
                    Some(coldest) => { (Kelvin::from_celsius(coldest.air_c).show(system, 0)) ", " (day(coldest.on)) },
                    None => "none noted",
                } }
            } } }
        }
        @if all.iter().any(|winter| !winter.counted) {
            p class="small" { (capital("colonies of earlier winters are those that were noted in them: the autumn's own count is kept for the latest alone.")) }
        }
    }
}
