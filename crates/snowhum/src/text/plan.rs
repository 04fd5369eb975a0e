//! The plan in words: what becomes of each colony first, figures after, what is worth doing last.

use snowhum_advice::LooksTo;
use snowhum_advice::answer::{ActionAnswer, ColonyPlan, HiveVerdict, MonthRange, PlanAnswer};
use snowhum_advice::need::SOUND;
use snowhum_advice::shortage::{LEFT_IN_SPRING, WORTH_FEEDING};
use snowhum_advice::words::{both_ways, day, hives, in_hundred, part_of_month, run_out, short_month};
use snowhum_units::{CubicMetre, Kilogram, System};
use snowhum_winter::Ends;

use crate::text::chart::{bar, spark};
use crate::text::voice::said;
use crate::text::{entry, fit, when, wrapped};

pub(crate) fn words(plan: &PlanAnswer, system: System) -> String {
    let mut page = head(plan);
    page += &overview(plan);
    for (at, colony) in plan.colonies.iter().enumerate() {
        page += "\n";
        page += &colony_words(plan, colony, system);
        if let Some(fit) = plan.fit.as_ref().and_then(|fit| fit.colonies.get(at)) {
            page += &fit::colony(fit);
        }
    }
    if let Some(fit) = &plan.fit {
        page += "\n";
        page += &fit::yard(fit, plan.as_of, system);
    }
    page += "\n";
    page += &wrapped(&plan.how_sure, 0);
    page += "\n";
    page += &wrapped(
        "Chances stand for hives like these with this weather; parameters and their sources: data/winter_parameters.toml. \
         Follow the label, local law, the bee inspector and the vet before any word here.",
        0,
    );
    page
}

fn head(plan: &PlanAnswer) -> String {
    let invented = if plan.invented { " (an invented yard)" } else { "" };
    let mut head = format!("{}{invented}: the winter from {} to {}\n", plan.apiary, plan.as_of, plan.spring);
    let weather = format!(
        "Spring is the first flow here plus 14 days. It stands on {}; {} members on {} paths.",
        plan.weather.source, plan.weather.members, plan.weather.paths
    );
    head += &wrapped(&weather, 0);
    head += "\n";
    for note in plan.weather.told() {
        head += &wrapped(&format!("- {note}"), 2);
        head += "\n";
    }
    for left_out in &plan.left_out {
        head += "\n";
        head += &wrapped(left_out, 0);
        head += "\n";
    }
    head
}

fn overview(plan: &PlanAnswer) -> String {
    let mut table = String::from("\n  Of 100 hives like it, in spring    alive   alive, fed, queenright\n");
    for (colony, need) in plan.colonies.iter().zip(&plan.needs) {
        let name: String = colony.name.chars().take(12).collect();
        table += &format!(
            "  {name:<12}{}  {:>3}     {:>3}   {}\n",
            bar(colony.alive_in_spring, 20),
            hives(colony.alive_in_spring),
            hives(colony.alive_fed_queenright),
            said(&need.words())
        );
    }
    table
}

fn colony_words(plan: &PlanAnswer, colony: &ColonyPlan, system: System) -> String {
    let mut page = format!("{}\n", colony.name);
    if colony.quick_start {
        page += &entry("Note", "only the four quick-start facts are known, so every range here is wide");
    }
    let mut spring = format!(
        "{} alive; alive, fed and queenright: {}",
        in_hundred(colony.alive_in_spring),
        both_ways(colony.alive_fed_queenright)
    );
    if colony.shortage_kg >= WORTH_FEEDING.get() {
        spring += &format!(". Once fed what it is short of: {}", in_hundred(colony.alive_queenright_if_fed));
    }
    page += &entry("Spring", &spring);
    page += &ends(&colony.ends);
    page += &food(colony, system);
    page += &hive(&colony.hive, system);
    page += &bees(colony);
    page += &months(colony, system);
    page += &actions(plan, colony);
    page
}

fn ends(ends: &Ends) -> String {
    let mut shares: Vec<_> = ends.by_cause().into_iter().filter(|(_, p)| *p >= 0.005).collect();
    shares.sort_by(|a, b| b.1.total_cmp(&a.1));
    if shares.is_empty() {
        return String::new();
    }
    let list: Vec<String> = shares.iter().map(|(cause, p)| format!("{} {}", cause.words(), hives(*p))).collect();
    entry("Ends in 100", &list.join(", "))
}

fn food(colony: &ColonyPlan, system: System) -> String {
    let kg = |value: f64| Kilogram::new(value).show(system, 1);
    let s = &colony.stores_kg;
    let mut page = entry(
        "Food",
        &format!(
            "{} now, {} within reach; {}",
            kg(s.now),
            kg(s.reachable_now),
            run_out(&colony.runs_out, LooksTo::Spring)
        ),
    );
    page += &shortage(colony, system);
    if let Some(rule) = &colony.rule_of_thumb {
        page += &entry("Rule", &format!("{}: {} ({})", rule.region, rule.says, rule.source));
    }
    if let Some(over) = &colony.over_rule {
        page += &entry("But", &format!("{}.", over.says));
    }
    page
}

/// What is short, as sugar and syrup, and by when.
fn shortage(colony: &ColonyPlan, system: System) -> String {
    let kg = |value: f64| Kilogram::new(value).show(system, 1);
    let litres = |value: f64| CubicMetre::new(value / 1e3).show(system, 1);
    let left = LEFT_IN_SPRING.show(system, 0);
    if colony.shortage_kg < 0.05 {
        return entry("Short of", &format!("nothing: 9 in 10 reach spring with {left} within reach or more"));
    }
    let syrup = &colony.syrup_l;
    let mut page = entry(
        "Short of",
        &format!(
            "{} of stores (so that 9 in 10 keep {left} within reach): {} of sugar, as {} of 3:2 or {} of 2:1 syrup",
            kg(colony.shortage_kg),
            kg(colony.sugar_kg),
            litres(syrup.three_to_two),
            litres(syrup.two_to_one)
        ),
    );
    let f = &colony.finish_syrup_by;
    let late =
        if colony.too_late_for_syrup { "; that is past: give fondant, candy or frames of stores instead" } else { "" };
    page += &entry(
        "Syrup",
        &format!(
            "must be finished (taken and capped) by {} here to be safe ({} is in time in half of all years){late}",
            day(f.p10),
            day(f.p50)
        ),
    );
    page
}

fn hive(hive: &HiveVerdict, system: System) -> String {
    if hive.heat_loss_w_per_k == 0.0 {
        return entry("Hive", "its bees are gone before the coldest month");
    }
    let water = &hive.condensation_g_per_day;
    let grams = |value: f64| match system {
        System::Metric => format!("{value:.0} g"),
        System::Us => format!("{:.1} oz", value / 28.349_523),
    };
    let hole = hive.frost_at_hole.map_or_else(
        || "no upper hole, so no rime to look for".to_owned(),
        |share| format!("frost at the upper hole {:.0} % of the time", 100.0 * share),
    );
    entry(
        "Hive",
        &format!(
            "in the coldest month loses {:.1} W/K, {:.2} L/s of air; water a day: lid {}, walls {}, floor {}, drips on the cluster {}; {hole}",
            hive.heat_loss_w_per_k,
            hive.air_flow_l_per_s,
            grams(water.lid),
            grams(water.walls),
            grams(water.floor),
            grams(hive.drip_on_cluster_g_per_day)
        ),
    )
}

fn bees(colony: &ColonyPlan) -> String {
    let middle: Vec<f64> = colony.bees.iter().map(|point| point.range.p50).collect();
    let (Some(first), Some(low)) =
        (colony.bees.first(), colony.bees.iter().min_by(|a, b| a.range.p50.total_cmp(&b.range.p50)))
    else {
        return String::new();
    };
    let brood = colony
        .brood_begins
        .p50
        .map_or_else(String::new, |date| format!("; brood plainly there again about {}", part_of_month(date)));
    entry(
        "Bees",
        &format!(
            "{} from {:.0} now to {:.0} ({:.0} to {:.0}) about {}{brood}",
            spark(&middle),
            first.range.p50,
            low.range.p50,
            low.range.p10,
            low.range.p90,
            part_of_month(low.date)
        ),
    )
}

fn months(colony: &ColonyPlan, system: System) -> String {
    let name = |month: &MonthRange| {
        let number = month.month.rsplit('-').next().and_then(|n| n.parse().ok());
        number.map_or("?", short_month)
    };
    let line = |rows: &[MonthRange], scale: f64, decimals: usize| {
        let parts: Vec<String> =
            rows.iter().map(|row| format!("{} {:.decimals$}", name(row), row.range.p50 * scale)).collect();
        parts.join(", ")
    };
    let (unit, scale, decimals) = match system {
        System::Metric => ("g", 1.0, 0),
        System::Us => ("oz", 1.0 / 28.349_523, 1),
    };
    if colony.food_g_per_day.is_empty() {
        return String::new();
    }
    let mut page = entry("Food a day", &format!("{} {unit}", line(&colony.food_g_per_day, scale, decimals)));
    page += &entry("Dead a day", &format!("{} bees", line(&colony.dead_bees_per_day, 1.0, 0)));
    page
}

fn actions(plan: &PlanAnswer, colony: &ColonyPlan) -> String {
    let mut page = String::new();
    let likely = colony.alive_fed_queenright >= SOUND;
    if colony.actions.is_empty() && likely {
        page += &entry("To do", "nothing now");
    } else if colony.nothing_helps && !likely {
        page += &entry("To do", "no action now changes this by more than chance does");
    }
    for (at, action) in colony.actions.iter().enumerate() {
        page += &one_action(plan, at, action);
    }
    page
}

fn one_action(plan: &PlanAnswer, at: usize, action: &ActionAnswer) -> String {
    let label = if action.instead { "Or instead".to_owned() } else { format!("Do {}", at + 1) };
    let mut page = entry(&label, &format!("{}, {}: {}", action.what, when(action), action.worth(&plan.currency)));
    let mut why = action.why.clone();
    if let Some(rule) = &action.rule_of_thumb {
        why += &format!(". The trade: {rule}");
    }
    if let Some(caution) = &action.caution {
        why += &format!(". Mind: {caution}");
    }
    page += &entry("", &format!("{why} [{}]", action.sources.join("; ")));
    page
}
