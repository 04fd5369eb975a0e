//! The plan in words: what to do first, then one colony, or everything.

use snowhum_advice::LooksTo;
use snowhum_advice::answer::{ActionAnswer, HiveVerdict, MonthRange};
use snowhum_advice::now::NowAnswer;
use snowhum_advice::plan::{ColonyPlan, PlanAnswer};
use snowhum_advice::shortage::{LEFT_IN_SPRING, WORTH_FEEDING};
use snowhum_advice::verdict::{ColonyFirst, SOUND};
use snowhum_advice::words::{both_ways, capital, day, hives, in_hundred, part_of_month, short_month};
use snowhum_units::{CubicMetre, Kilogram, System};
use snowhum_winter::Ends;

use crate::text::chart::spark;
use crate::text::first::{self, Screen, place};
use crate::text::voice::{in_words, tongue};
use crate::text::{Once, entry, fit, fitting, when, wrapped};

/// Lines of one colony's page, at most.
const ONE: usize = 38;

/// The first screen of a yard.
pub(crate) fn words(plan: &PlanAnswer, system: System) -> String {
    screen(plan, system).words()
}

/// The same of hives as they stand by now.
pub(crate) fn words_of_present(now: &NowAnswer, system: System) -> String {
    Screen {
        command: "plan",
        apiary: &now.apiary,
        invented: now.invented,
        first: &now.first,
        weather: &now.weather,
        signs: Vec::new(),
        system,
    }
    .words()
}

fn screen(plan: &PlanAnswer, system: System) -> Screen<'_> {
    Screen {
        command: "plan",
        apiary: &plan.apiary,
        invented: plan.invented,
        first: &plan.first,
        weather: &plan.weather,
        signs: Vec::new(),
        system,
    }
}

/// Everything of a yard; `moved` is said where bees and food are taken to be of a later day than they were counted on.
pub(crate) fn all(plan: &PlanAnswer, moved: Option<&str>, system: System) -> String {
    let mut page = screen(plan, system).top().join("\n") + "\n";
    if let Some(moved) = moved {
        page += &format!("\n{}\n", wrapped(moved, 0));
    }
    let mut once = Once::default();
    for (at, colony) in plan.colonies.iter().enumerate() {
        page += &format!("\n{}: {}\n", colony.name, in_words(&colony.verdict.words()));
        let paragraphs = colony_words(plan, colony, system);
        page += &paragraphs.concat();
        page += &actions(plan, colony, &mut once);
        if let Some(fit) = plan.fit.as_ref().and_then(|fit| fit.colonies.get(at)) {
            page += &fit::colony(fit, &mut once);
        }
    }
    if let Some(fit) = &plan.fit {
        page += "\n";
        page += &fit::yard(fit, plan.as_of, system, &mut once);
    }
    page += "\n";
    page += &stands_on(plan, moved, system);
    page
}

/// Provenance and what holds for all of it.
fn stands_on(plan: &PlanAnswer, moved: Option<&str>, system: System) -> String {
    let mut page = screen(plan, system).foot()[..1].join("\n") + "\n";
    let weather = format!(
        "It stands on {}; {} members on {} paths, seed {}.",
        plan.weather.source, plan.weather.members, plan.weather.paths, plan.first.seed
    );
    page += &format!("{}\n", wrapped(&weather, 0));
    for note in plan.weather.told().map(in_words).filter(|note| Some(note.as_str()) != moved) {
        page += &format!("{}\n", wrapped(&format!("- {note}"), 2));
    }
    for left_out in &plan.left_out {
        page += &format!("{}\n", wrapped(&in_words(left_out), 0));
    }
    page += &format!("{}\n", wrapped(&in_words(&plan.how_sure), 0));
    page += &wrapped(
        "Parameters and their sources: data/winter_parameters.toml. Follow the label, local law, the bee inspector and the vet \
         before any word here.",
        0,
    );
    page
}

/// One colony, what is to be done first.
pub(crate) fn one(plan: &PlanAnswer, at: usize, moved: Option<&str>, system: System) -> String {
    let (Some(colony), Some(first)) = (plan.colonies.get(at), plan.first.colonies.get(at)) else {
        return words(plan, system);
    };
    let verdict = in_words(&colony.verdict.words());
    let title = format!("{} at {}, {}: {verdict}\n", colony.name, plan.apiary, day(plan.first.as_of));
    let steps = first::steps(&plan.first, first, tongue()).join("\n") + "\n";
    let mut paragraphs = vec![title + &steps, chances(first, plan.first.looks_to)];
    paragraphs.extend(moved.map(|moved| entry("Counted", moved)));
    paragraphs.extend(colony_words(plan, colony, system));
    if let Some(fit) = plan.fit.as_ref().and_then(|fit| fit.colonies.get(at)) {
        paragraphs.push(entry("Fit?", &capital(&tongue().say_all(&fit.verdict.reasons).join("; "))));
    }
    paragraphs.extend(colony.actions.iter().map(|action| {
        let caution =
            action.caution.as_ref().map_or_else(String::new, |caution| format!(". Mind: {}", in_words(caution)));
        entry(
            if action.instead { "Or instead" } else { "Helps" },
            &format!("{}: {}{caution}", in_words(&action.what), in_words(&action.worth(&plan.currency))),
        )
    }));
    let foot = "More: snowhum plan --all. Label, law and vet come first.\n";
    fitting(&paragraphs, ONE) + foot
}

/// What comes of a colony if all is done, and if nothing is.
pub(crate) fn chances(first: &ColonyFirst, to: LooksTo) -> String {
    let Some(if_not) = first.if_not else { return String::new() };
    let done = match first.if_done {
        Some(chance) => format!("{} if all of that is done, ", in_hundred(chance)),
        None => "its bees go to another hive; ".to_owned(),
    };
    let why = if first.why.is_empty() { String::new() } else { format!(" Why: {}.", in_words(&first.reasons())) };
    let goal = in_words(&to.goal());
    let text = format!("alive, fed and queenright to {goal}: {done}{} if nothing is.{why}", in_hundred(if_not));
    entry("Chances", &text)
}

/// What is known of a colony, the weightiest first.
fn colony_words(plan: &PlanAnswer, colony: &ColonyPlan, system: System) -> Vec<String> {
    let mut page = Vec::new();
    if colony.quick_start {
        page.push(entry("Note", "only the four quick-start facts are known, so every range here is wide"));
    }
    let mut spring = format!(
        "left as it is {} alive; alive, fed and queenright: {}",
        in_hundred(colony.alive_in_spring),
        both_ways(colony.alive_fed_queenright)
    );
    if colony.shortage_kg >= WORTH_FEEDING.get() {
        spring += &format!(". Once fed what it is short of: {}", in_hundred(colony.alive_queenright_if_fed));
    }
    page.push(entry("Spring", &spring));
    page.extend(place(&plan.first, &colony.name));
    page.push(ends(&colony.ends));
    page.push(food(colony, system));
    page.push(bees(colony));
    page.push(hive(&colony.hive, system));
    page.push(months(colony, system));
    page.retain(|paragraph| !paragraph.is_empty());
    if colony.actions.is_empty() && colony.alive_fed_queenright < SOUND && plan.first.colonies.is_empty() {
        page.push(entry("To do", "no action now changes this by more than chance does"));
    }
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
    let mut page =
        entry("Food", &format!("{} now, {} within reach; {}", kg(s.now), kg(s.reachable_now), lasts(colony, system)));
    page += &shortage(colony, system);
    if let Some(rule) = &colony.rule_of_thumb {
        page += &entry("Rule", &format!("{}: {} ({})", rule.region, rule.says, rule.source));
    }
    if let Some(over) = &colony.over_rule {
        page += &entry("But", &format!("{}.", in_words(&over.says)));
    }
    page
}

/// How long food lasts: what is short is never called enough.
fn lasts(colony: &ColonyPlan, system: System) -> String {
    if colony.runs_out.p10.is_none() && colony.shortage_kg >= WORTH_FEEDING.get() {
        return format!(
            "few starve, but the worst tenth comes to spring with less than {} within reach",
            LEFT_IN_SPRING.show(system, 0)
        );
    }
    in_words(&colony.food_lasts())
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
    let name = |month: &str| {
        let number = month.rsplit('-').next().and_then(|n| n.parse().ok());
        number.map_or("?", short_month)
    };
    let line = |rows: &[MonthRange], scale: f64, decimals: usize| {
        let parts: Vec<String> =
            rows.iter().map(|row| format!("{} {:.decimals$}", name(&row.month), row.range.p50 * scale)).collect();
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
    let shown: Vec<String> =
        colony.dead_bees_shown.iter().map(|shown| format!("{} {}", name(&shown.month), shown.usual.words())).collect();
    page += &entry("Seen dead", &format!("{} before the hive in a fortnight, 9 looks in 10", shown.join(", ")));
    page
}

fn actions(plan: &PlanAnswer, colony: &ColonyPlan, once: &mut Once) -> String {
    let mut page = String::new();
    for (at, action) in colony.actions.iter().enumerate() {
        page += &one_action(plan, at, action, once);
    }
    page
}

fn one_action(plan: &PlanAnswer, at: usize, action: &ActionAnswer, once: &mut Once) -> String {
    let label = if action.instead { "Or instead".to_owned() } else { format!("Helps {}", at + 1) };
    let [what, worth] = [&action.what, &action.worth(&plan.currency)].map(in_words);
    let mut page = entry(&label, &format!("{what}, {}: {worth}", when(action)));
    let mut why = in_words(&action.why);
    if let Some(rule) = action.rule_of_thumb.as_ref().map(in_words).filter(|rule| once.is_new(rule)) {
        why += &format!(". The trade: {rule}");
    }
    if let Some(caution) = action.caution.as_ref().map(in_words).filter(|caution| once.is_new(caution)) {
        why += &format!(". Mind: {caution}");
    }
    page += &entry("", &why);
    page
}
