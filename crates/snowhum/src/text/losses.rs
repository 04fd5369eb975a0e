//! The answer to a winter's losses in words.

use snowhum_advice::sums::intervals::Interval;
use snowhum_advice::sums::losses::{Background, ClubLosses, LossesAnswer, YardLosses};

use crate::text::voice::{in_words, tongue};
use crate::text::{entry, wrapped};

/// The counts alone.
pub(crate) fn counts(answer: &LossesAnswer) -> String {
    match (&answer.yard, &answer.club) {
        (Some(one), _) => yard(one),
        (None, Some(pooled)) => club(pooled),
        (None, None) => String::new(),
    }
}

pub(crate) fn words(answer: &LossesAnswer) -> String {
    let mut page = counts(answer);
    if let Some(cost) = answer.cost_money {
        page += &entry("Cost", &format!("{cost:.0} {}", answer.currency));
    }
    page += "\n";
    for say in &answer.say {
        page += &format!("  {}\n", wrapped(&in_words(say), 2));
    }
    let mut sources = tongue().say_all(&answer.sources);
    if let Some(told) = &answer.background {
        page += &background(told);
        sources.extend(tongue().say_all(&told.sources));
    }
    page += "\n";
    page += &format!("  {}\n\n", wrapped(&in_words(&answer.definition), 2));
    page + &wrapped(&format!("Stands on: {}.", sources.join("; ")), 2)
}

/// What a yard's own winters say of losses to what nobody names.
pub(crate) fn background(told: &Background) -> String {
    let lines = told.say.iter().map(|say| format!("  {}\n", wrapped(&in_words(say), 2)));
    "\nLost to what nobody names\n".to_owned() + &lines.collect::<String>()
}

fn percent(share: Interval) -> String {
    format!("{:.0} to {:.0} %", 100.0 * share.low, 100.0 * share.high)
}

fn yard(one: &YardLosses) -> String {
    let mut page = format!("{} of {} colonies lost: {:.0} %\n\n", one.lost, one.at_risk, 100.0 * one.rate);
    let kinds = [("dead or empty", one.dead), ("queen failed", one.queen_failed), ("disaster", one.disaster)];
    let kinds: Vec<String> = kinds.iter().map(|(what, colonies)| format!("{colonies} {what}")).collect();
    page += &entry("Lost", &kinds.join(", "));
    let weak = if one.weak > 0 { format!(", {} of them weak", one.weak) } else { String::new() };
    page += &entry("Alive", &format!("{}{weak}", one.alive));
    let luck =
        format!("fits a yearly rate of {} (Wilson {})", percent(one.luck_clopper_pearson), percent(one.luck_wilson));
    page += &entry("Luck", &luck);
    let next = format!(
        "{:.0} % ({}), drawn to what yards usually lose",
        100.0 * one.next_rate,
        percent(one.next_rate_interval)
    );
    page += &entry("Next winter", &next);
    if one.lost > 0 {
        let hundred = (100.0 * one.chance_of_so_many_at_usual_rate).round();
        let times = if hundred < 1.0 { "fewer than 1".to_owned() } else { format!("{hundred:.0}") };
        let usual = 100.0 * one.usual_rate;
        page +=
            &entry("By chance", &format!("at a usual {usual:.0} % so many or more are lost in {times} of 100 winters"));
    }
    page
}

fn club(pooled: &ClubLosses) -> String {
    let overall = 100.0 * pooled.overall_rate;
    let mut page = format!(
        "{} of {} colonies of {} members lost: {overall:.1} %\n\n",
        pooled.lost, pooled.at_risk, pooled.members
    );
    let how =
        format!("{overall:.1} % of all colonies, {} ({})", percent(pooled.overall_interval), in_words(&pooled.method));
    page += &entry("Overall", &how);
    page += &entry("Average", &format!("{:.1} % is the mean of the members' own rates", 100.0 * pooled.average_rate));
    if let Some(dispersion) = pooled.dispersion {
        let text = format!("{dispersion:.2} times what luck alone gives; 1 is taken if it is less");
        page += &entry("Spread", &text);
    }
    let text = format!("{} without a loss, {} lost all", pooled.members_without_loss, pooled.members_who_lost_all);
    page += &entry("Members", &text);
    page
}
