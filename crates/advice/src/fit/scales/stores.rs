//! Food, against the rule of the region, with the need computed for this hive beside it.

use snowhum_apiary::StoresKind;
use snowhum_units::Kilogram;

use super::shown::Shown;
use crate::fit::answer::{Scale, Usual, What};
use crate::fit::look::Look;
use crate::rules;

/// What is kept in hand over the computed need, kg (judgement: a late spring).
const IN_HAND: f64 = 5.0;

pub(super) fn scale(look: &Look<'_>, at: usize) -> Scale {
    let total = look.colony(at).stores.total.map(|kg| kg.get());
    let need = look.base.need(at);
    let show = |kg: f64| Kilogram::new(kg).show(look.system(), 1);
    let short = look.plan(at).shortage_kg;
    let says = format!(
        "{} ({} to {}); computed for this hive here: {}{}",
        show(total.p50),
        show(total.p10),
        show(total.p90),
        show(need.get()),
        if short >= 0.5 { format!(", so {} is short", show(short)) } else { String::new() }
    );
    let usual = usual(look, at, need);
    let mut scale =
        Shown { what: What::Stores, figure: Some(total), unit: "kg", usual: Some(usual), end: 25.0, decimals: 1, says }
            .scale();
    scale.other_school = whole_hive(look, at);
    scale.look = kind(look, at).map(str::to_owned);
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
            region: "North America".to_owned(),
            hive: "nucleus".to_owned(),
            says: row.says.clone(),
            source: row.source.clone(),
            status: row.status,
        };
    }
    let rule = rules::found(&look.base.question.apiary.site, hive);
    match rule.as_ref().and_then(|(rule, status)| Some((rule, rule.stores_kg?, *status))) {
        Some((rule, (low, high), status)) => Usual {
            low,
            high: high.max(low + 1.0),
            region: rule.region.clone(),
            hive: boxes(hive.boxes.len()),
            says: rule.says.clone(),
            source: rule.source.clone(),
            status,
        },
        None => Usual {
            low: crate::statistics::rounded(need.get(), 1),
            high: crate::statistics::rounded(need.get() + IN_HAND, 1),
            region: "this site".to_owned(),
            hive: hive.standard.clone(),
            says: "no rule of the trade is known for stores alone here; the computed need stands in for it".to_owned(),
            source: "computed from this site's weather: 9 in 10 reach spring with food in reach".to_owned(),
            status: snowhum_winter::Status::Judgement,
        },
    }
}

fn boxes(count: usize) -> String {
    if count == 1 { "one box".to_owned() } else { format!("{count} boxes") }
}

/// A rule for the whole hive, which must not be mixed up with stores.
fn whole_hive(look: &Look<'_>, at: usize) -> Option<String> {
    let (rule, _) = rules::found(&look.base.question.apiary.site, &look.housed(at).hive)?;
    rule.stores_kg
        .is_none()
        .then(|| format!("{}: {} ({}); that is no weight of stores", rule.region, rule.says, rule.source))
}

/// What stores of a kind do in a long winter.
fn kind(look: &Look<'_>, at: usize) -> Option<&'static str> {
    match look.colony(at).stores.kind {
        StoresKind::Sugar | StoresKind::Honey => None,
        StoresKind::Honeydew => Some(
            "honeydew: its ash fouls bees that cannot fly for months; keep it for spring and feed sugar over it now",
        ),
        StoresKind::Heather => Some("heather: bees foul themselves on it in long confinement; feed sugar over it now"),
        StoresKind::Ivy | StoresKind::Rape => Some(
            "it sets hard: bees can starve beside it for want of water; feed sugar last, so that it is eaten first",
        ),
    }
}
