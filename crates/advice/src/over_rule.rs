//! A computed need far over what the trade of the region feeds: said, with why, and fed in two parts.
//!
//! The rule is what many keepers found enough for a usual colony; the model looks at this colony in this weather and at the
//! hungriest winter in ten. Where the two are far apart neither is sure, so the rule is fed first and the winter's weighing
//! decides on the rest.

use serde::{Deserialize, Serialize};
use snowhum_apiary::Combs;
use snowhum_say::{Message, feed as say};
use snowhum_units::Kilogram;

use crate::ahead::base::Base;
use crate::ahead::combs;
use crate::ahead::shortage::{LEFT_IN_SPRING, WORTH_FEEDING};
use crate::rules;
use crate::statistics::rounded;
use crate::syrup::STORES_PER_FONDANT;

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
    pub region: Message,
    /// What half of such colonies eat by spring, kg.
    pub eaten_kg: f64,
    /// Stores to give now, so that it has what the rule asks for, kg.
    pub first_kg: f64,
    /// Fondant to keep at hand for the rest, kg.
    pub later_fondant_kg: f64,
    /// All of it.
    pub says: Message,
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
        says: Message::NONE,
    };
    Some(OverRule { says: says(base, &over), ..over })
}

fn says(base: &Base<'_>, over: &OverRule) -> Message {
    let ([low, high], is_fed) = (over.rule_kg.map(Kilogram::new), over.first_kg >= WORTH_FEEDING.get());
    let [need, eaten, first, later] =
        [over.need_kg, over.eaten_kg, over.first_kg, over.later_fondant_kg].map(Kilogram::new);
    Message::sentences([
        say::rule_asks(high, low, need, &over.region),
        say::rule_eaten(base.question.spring, eaten, LEFT_IN_SPRING),
        say::rule_now(is_fed, first, later),
    ])
}

/// Stores to give a colony now: what is short, or the part of it up to a rule far below, and never more than its combs take.
pub(crate) fn now(base: &Base<'_>, at: usize) -> Kilogram {
    let wanted = over_rule(base, at).map_or(base.shortages[at].get(), |over| over.first_kg);
    Kilogram::new(wanted.min(combs::room(base, at).get()))
}
