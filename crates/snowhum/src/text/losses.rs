//! The answer to a winter's losses in words.

use snowhum_advice::sums::intervals::Interval;
use snowhum_advice::sums::losses::{Background, ClubLosses, LossesAnswer, YardLosses};
use snowhum_say::{Message, losses_terminal as say, shared_terminal as shared};

use crate::text::voice::in_words;
use crate::text::{entry, heading, paragraph, paragraphs, stands_on};

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
        page += &entry(shared::cost(), shared::money(cost, &answer.currency));
    }
    page += "\n";
    page += &paragraphs(&answer.say);
    let mut sources = answer.sources.clone();
    if let Some(told) = &answer.background {
        page += &background(told);
        sources.extend_from_slice(&told.sources);
    }
    page + "\n" + &paragraph(&answer.definition) + "\n" + &stands_on(&sources)
}

/// What a yard's own winters say of losses to what nobody names.
pub(crate) fn background(told: &Background) -> String {
    heading(say::unnamed()) + &paragraphs(&told.say)
}

fn percent(share: Interval) -> Message {
    say::percent(100.0 * share.high, 100.0 * share.low)
}

fn yard(one: &YardLosses) -> String {
    let mut page = in_words(&say::yard(one.at_risk, one.lost, 100.0 * one.rate)) + "\n\n";
    page += &entry(say::lost(), say::how_lost(one.dead, one.disaster, one.queen_failed));
    let alive = if one.weak > 0 { say::alive_weak(one.alive, one.weak) } else { say::alive(one.alive) };
    page += &entry(shared::alive(), alive);
    page += &entry(say::luck(), say::luck_fits(percent(one.luck_clopper_pearson), percent(one.luck_wilson)));
    page += &entry(say::next(), say::next_rate(100.0 * one.next_rate, percent(one.next_rate_interval)));
    if one.lost > 0 {
        let winters = (100.0 * one.chance_of_so_many_at_usual_rate).round();
        page += &entry(say::by_chance(), say::so_many(winters < 1.0, 100.0 * one.usual_rate, winters));
    }
    page
}

fn club(pooled: &ClubLosses) -> String {
    let overall = 100.0 * pooled.overall_rate;
    let mut page = in_words(&say::club(pooled.at_risk, pooled.lost, pooled.members, overall)) + "\n\n";
    page += &entry(say::overall(), say::of_all(&pooled.method, overall, percent(pooled.overall_interval)));
    page += &entry(say::average(), say::mean(100.0 * pooled.average_rate));
    if let Some(dispersion) = pooled.dispersion {
        page += &entry(say::spread(), say::times(dispersion));
    }
    page + &entry(say::members(), say::who(pooled.members_who_lost_all, pooled.members_without_loss))
}
