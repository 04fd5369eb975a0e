//! A computed need far over what the trade of the region feeds: said, with why, and fed in two parts.
//!
//! The rule is what many keepers found enough for a usual colony; the model looks at this colony in this weather and at the
//! hungriest winter in ten. Where the two are far apart neither is sure, so the rule is fed first and the winter's weighing
//! decides on the rest.

use serde::{Deserialize, Serialize};
use snowhum_apiary::Combs;
use snowhum_units::Kilogram;

use crate::ahead::base::Base;
use crate::ahead::combs;
use crate::ahead::shortage::{LEFT_IN_SPRING, WORTH_FEEDING};
use crate::rules;
use crate::statistics::rounded;
use crate::syrup::STORES_PER_FONDANT;
use crate::words::day;

/// How far over the rule's upper end a need must be to be said: by half (judgement).
const FAR: f64 = 1.5;

/// A need far over the rule.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct OverRule {
    /// Stores the model asks for in all, kg.
    pub need_kg: f64,
    /// What the rule asks for, kg.
    pub rule_kg: [f64; 2],
    /// Whose rule it is.
    pub region: String,
    /// What half of such colonies eat by spring, kg.
    pub eaten_kg: f64,
    /// Stores to give now, so that it has what the rule asks for, kg.
    pub first_kg: f64,
    /// Fondant to keep at hand for the rest, kg.
    pub later_fondant_kg: f64,
    /// All of it in words.
    pub says: String,
}

/// Whether a colony's need is far over the rule of its region, and what follows. A nucleus has rules of its own.
pub(crate) fn over_rule(base: &Base<'_>, at: usize) -> Option<OverRule> {
    let (question, housed) = (base.question, &base.housed[at]);
    if Combs::of(&housed.hive) == Combs::Nucleus || base.shortages[at].get() <= 0.0 {
        return None;
    }
    let rule = rules::stores_rule(&question.apiary.site, &housed.hive)?;
    let (low, high) = rule.stores_kg?;
    let need = base.need(at);
    if need.get() < FAR * high {
        return None;
    }
    let there = housed.colony.stores.total.p50;
    let first = Kilogram::new((Kilogram::new(high) - there).get().clamp(0.0, base.shortages[at].get()));
    let later = (base.shortages[at] - first) / STORES_PER_FONDANT;
    let over = OverRule {
        need_kg: rounded(need.get(), 1),
        rule_kg: [low, high],
        region: rule.region,
        eaten_kg: rounded(base.eaten[at].get(), 1),
        first_kg: rounded(first.get(), 1),
        later_fondant_kg: rounded(later.get(), 1),
        says: String::new(),
    };
    Some(OverRule { says: says(base, &over), ..over })
}

fn says(base: &Base<'_>, over: &OverRule) -> String {
    let show = |kg: f64| Kilogram::new(kg).show(base.question.system, 0);
    let now = if over.first_kg >= WORTH_FEEDING.get() {
        format!("feed to the rule now, {} of stores more", show(over.first_kg))
    } else {
        "it has what the rule asks for".to_owned()
    };
    format!(
        "the model asks for {} in all, the rule ({}) for {} to {}. Half of such colonies here eat {} by {}; the rest is for the \
         hungriest winter in ten, and {} left over. So far apart neither is sure: {now}, weigh in midwinter, and keep {} of \
         fondant at hand",
        show(over.need_kg),
        over.region,
        show(over.rule_kg[0]),
        show(over.rule_kg[1]),
        show(over.eaten_kg),
        day(base.question.spring),
        show(LEFT_IN_SPRING.get()),
        show(over.later_fondant_kg)
    )
}

/// Stores to give a colony now: what is short, or the part of it up to a rule far below, and never more than its combs take.
pub(crate) fn now(base: &Base<'_>, at: usize) -> Kilogram {
    let wanted = over_rule(base, at).map_or(base.shortages[at].get(), |over| over.first_kg);
    Kilogram::new(wanted.min(combs::room(base, at).get()))
}
