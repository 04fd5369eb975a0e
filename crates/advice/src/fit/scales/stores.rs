//! Food, against the rule of the region, with the need computed for this hive beside it.

use snowhum_apiary::StoresKind;
use snowhum_say::{Message, fit as say};
use snowhum_units::Kilogram;

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::rules;

/// What is kept in hand over the computed need, kg (judgement: a late spring).
const IN_HAND: f64 = 5.0;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let total = look.colony(at).stores.total;
    let need = look.base.need(at);
    let short = look.plan(at).shortage_kg;
    let says = say::stores(total.p50, total.p90, short >= 0.5, total.p10, need, Kilogram::new(short));
    let usual = usual(look, at, need);
    let mut scale = Shown {
        what: What::Stores,
        figure: Some(total.map(|kg| kg.get())),
        unit: "kg",
        usual: Some(usual),
        end: 25.0,
        decimals: 1,
        says,
    }
    .scale();
    scale.other_school = whole_hive(look, at);
    scale.look = kind(look, at);
    scale
}

/// The region's rule for stores; where it has none, the computed need.
fn usual(look: &Look<'_>, at: usize, need: Kilogram) -> Usual {
    let hive = &look.housed(at).hive;
    if look.is_nucleus(at) {
        let row = &look.figures.nucleus_stores;
        return Usual {
            low: row.value[0],
            high: row.value[1],
            region: say::stores_nucleus_region(),
            hive: say::bees_hive(true),
            says: say::stores_nucleus(),
            source: (&row.source).into(),
            status: row.status,
        };
    }
    let rule = rules::found(&look.base.question.apiary.site, hive);
    match rule.as_ref().and_then(|(rule, status)| Some((rule, rule.stores_kg?, *status))) {
        Some((rule, (low, high), status)) => Usual {
            low,
            high: high.max(low + 1.0),
            region: rule.region.clone(),
            hive: say::stores_boxes(hive.boxes.len()),
            says: rule.says.clone(),
            source: (&rule.source).into(),
            status,
        },
        None => Usual {
            low: crate::statistics::rounded(need.get(), 1),
            high: crate::statistics::rounded(need.get() + IN_HAND, 1),
            region: say::stores_region(),
            hive: (&hive.standard).into(),
            says: say::stores_no_rule(),
            source: say::stores_computed(),
            status: snowhum_winter::Status::Judgement,
        },
    }
}

/// A rule for the whole hive, which must not be mixed up with stores.
fn whole_hive(look: &Look<'_>, at: usize) -> Option<Message> {
    let (rule, _) = rules::found(&look.base.question.apiary.site, &look.housed(at).hive)?;
    rule.stores_kg.is_none().then(|| say::stores_whole_hive(rule.region, rule.says, rule.source))
}

/// What stores of a kind do in a long winter.
fn kind(look: &Look<'_>, at: usize) -> Option<Message> {
    match look.colony(at).stores.kind {
        StoresKind::Sugar | StoresKind::Honey => None,
        StoresKind::Honeydew => Some(say::stores_honeydew()),
        StoresKind::Heather => Some(say::stores_heather()),
        StoresKind::Ivy | StoresKind::Rape => Some(say::stores_hard()),
    }
}
