//! The plan in words: what to do first, then one colony, or everything.

use jiff::civil::Date;
use snowhum_advice::LooksTo;
use snowhum_advice::answer::{ActionAnswer, HiveVerdict};
use snowhum_advice::now::NowAnswer;
use snowhum_advice::plan::{ColonyPlan, PlanAnswer};
use snowhum_advice::shortage::{LEFT_IN_SPRING, WORTH_FEEDING};
use snowhum_advice::verdict::{ColonyFirst, SOUND};
use snowhum_say::{Message, both_ways, hives, in_hundred, plan_terminal as say, shared_terminal as shared, usual};
use snowhum_units::{CubicMetre, CubicMetrePerSecond, Kilogram, System, WattPerKelvin};
use snowhum_winter::Ends;

use crate::text::chart::spark;
use crate::text::first::{self, Screen, place};
use crate::text::voice::{in_words, tongue};
use crate::text::{Once, entry, fit, fitting, when, wrapped};

/// Lines of one colony's page, at most.
const ONE: usize = 38;

/// The first screen of a yard.
pub(crate) fn words(plan: &PlanAnswer) -> String {
    screen(plan).words()
}

/// The same of hives as they stand by now.
pub(crate) fn words_of_present(now: &NowAnswer) -> String {
    Screen::of("plan", (&now.apiary, now.invented), &now.first, &now.weather).words()
}

fn screen(plan: &PlanAnswer) -> Screen<'_> {
    Screen::of("plan", (&plan.apiary, plan.invented), &plan.first, &plan.weather)
}

/// Everything of a yard; `moved` is said where bees and food are taken to be of a later day than they were counted on.
pub(crate) fn all(plan: &PlanAnswer, moved: Option<&str>) -> String {
    let mut page = screen(plan).top().join("\n") + "\n";
    if let Some(moved) = moved {
        page += &format!("\n{}\n", wrapped(moved, 0));
    }
    let mut once = Once::default();
    for (at, colony) in plan.colonies.iter().enumerate() {
        page += &format!("\n{}\n", in_words(&shared::of(&colony.name, colony.verdict.words())));
        page += &colony_words(plan, colony).concat();
        page += &actions(plan, colony, &mut once);
        if let Some(fit) = plan.fit.as_ref().and_then(|fit| fit.colonies.get(at)) {
            page += &fit::colony(fit, &mut once);
        }
    }
    if let Some(fit) = &plan.fit {
        page += "\n";
        page += &fit::yard(fit, plan.as_of, &mut once);
    }
    page + "\n" + &stands_on(plan, moved)
}

/// Provenance and what holds for all of it.
fn stands_on(plan: &PlanAnswer, moved: Option<&str>) -> String {
    let mut page = screen(plan).foot()[..1].join("\n") + "\n";
    let (weather, seed) = (&plan.weather, plan.first.seed.to_string());
    page += &(wrapped(say::stands(weather.members, weather.paths, seed, &weather.source), 0) + "\n");
    for note in weather.told().map(in_words).filter(|note| Some(note.as_str()) != moved) {
        page += &format!("{}\n", wrapped(format!("- {note}"), 2));
    }
    for says in plan.left_out.iter().chain([&plan.how_sure]) {
        page += &(wrapped(says, 0) + "\n");
    }
    page + &wrapped(say::parameters(), 0)
}

/// One colony, what is to be done first.
pub(crate) fn one(plan: &PlanAnswer, at: usize, moved: Option<&str>) -> String {
    let (Some(colony), Some(first)) = (plan.colonies.get(at), plan.first.colonies.get(at)) else {
        return words(plan);
    };
    let title = shared::title(&colony.name, plan.first.as_of, colony.verdict.words(), &plan.apiary);
    let steps = first::steps(&plan.first, first, tongue()).join("\n");
    let mut paragraphs = vec![format!("{}\n{steps}\n", in_words(&title)), chances(first, plan.first.looks_to)];
    paragraphs.extend(moved.map(|moved| entry(say::counted(), moved)));
    paragraphs.extend(colony_words(plan, colony));
    if let Some(fit) = plan.fit.as_ref().and_then(|fit| fit.colonies.get(at)) {
        paragraphs.push(fit::reasons(fit));
    }
    paragraphs.extend(colony.actions.iter().map(|action| {
        let label = if action.instead { shared::or_instead() } else { shared::helps() };
        let says = say::action(&action.what, action.worth(&plan.currency));
        entry(label, say::after([says].into_iter().chain(action.caution.as_ref().map(say::mind)).collect()))
    }));
    fitting(&paragraphs, ONE) + &in_words(&shared::more_all("plan")) + "\n"
}

/// What comes of a colony if all is done, and if nothing is.
pub(crate) fn chances(first: &ColonyFirst, to: LooksTo) -> String {
    let Some(if_not) = first.if_not.map(in_hundred) else { return String::new() };
    let chances = match first.if_done {
        Some(chance) => say::chances_done(in_hundred(chance), to.goal(), if_not),
        None => say::chances_gone(to.goal(), if_not),
    };
    let why = if first.why.is_empty() { Message::NONE } else { say::chances_why(first.reasons()) };
    entry(say::chances(), Message::sentences([chances, why]))
}

/// What is known of a colony, the weightiest first.
fn colony_words(plan: &PlanAnswer, colony: &ColonyPlan) -> Vec<String> {
    let mut page = Vec::new();
    if colony.quick_start {
        page.push(entry(shared::note(), say::quick_start()));
    }
    let mut spring = vec![say::left(in_hundred(colony.alive_in_spring), both_ways(colony.alive_fed_queenright))];
    if colony.shortage_kg >= WORTH_FEEDING.get() {
        spring.push(say::once_fed(in_hundred(colony.alive_queenright_if_fed)));
    }
    page.push(entry(shared::spring(), say::after(spring)));
    page.extend(place(&plan.first, &colony.name));
    page.push(ends(&colony.ends));
    page.push(food(colony));
    page.push(bees(colony));
    page.push(entry(shared::hive(), hive(&colony.hive)));
    page.push(months(colony));
    page.retain(|paragraph| !paragraph.is_empty());
    if colony.actions.is_empty() && colony.alive_fed_queenright < SOUND && plan.first.colonies.is_empty() {
        page.push(entry(say::to_do(), say::no_action()));
    }
    page
}

/// The likeliest ends first, as hives of a hundred.
pub(crate) fn causes(ends: &Ends) -> Vec<Message> {
    let mut shares: Vec<_> = ends.by_cause().into_iter().filter(|(_, p)| *p >= 0.005).collect();
    shares.sort_by(|a, b| b.1.total_cmp(&a.1));
    shares.into_iter().map(|(cause, p)| shared::cause(cause.words(), hives(p))).collect()
}

fn ends(ends: &Ends) -> String {
    let causes = causes(ends);
    if causes.is_empty() { String::new() } else { entry(say::ends(), shared::list(causes)) }
}

fn food(colony: &ColonyPlan) -> String {
    let stores = &colony.stores_kg;
    let (now, reach) = (Kilogram::new(stores.now), Kilogram::new(stores.reachable_now));
    let mut page = entry(shared::food(), say::stores(lasts(colony), now, reach));
    page += &shortage(colony);
    if let Some(rule) = &colony.rule_of_thumb {
        page += &entry(say::rule(), say::rule_says(&rule.region, &rule.says, &rule.source));
    }
    if let Some(over) = &colony.over_rule {
        page += &entry(say::but(), shared::stop(&over.says));
    }
    page
}

/// How long food lasts: what is short is never called enough.
fn lasts(colony: &ColonyPlan) -> Message {
    if colony.runs_out.p10.is_none() && colony.shortage_kg >= WORTH_FEEDING.get() {
        return say::few_starve(LEFT_IN_SPRING);
    }
    colony.food_lasts()
}

/// What is short, as sugar and syrup, and by when.
fn shortage(colony: &ColonyPlan) -> String {
    if colony.shortage_kg < 0.05 {
        return entry(say::short(), say::short_nothing(LEFT_IN_SPRING));
    }
    let [short, sugar] = [colony.shortage_kg, colony.sugar_kg].map(Kilogram::new);
    let syrup = &colony.syrup_l;
    let [three, two] = [syrup.three_to_two, syrup.two_to_one].map(|litres| CubicMetre::new(litres / 1e3));
    let by = &colony.finish_syrup_by;
    entry(say::short(), say::short_of(LEFT_IN_SPRING, short, sugar, three, two))
        + &entry(shared::syrup(), say::syrup_by(colony.too_late_for_syrup, by.p10, by.p50))
}

fn hive(hive: &HiveVerdict) -> Message {
    if hive.heat_loss_w_per_k == 0.0 {
        return say::hive_empty();
    }
    let water = &hive.condensation_g_per_day;
    let [lid, walls, floor, drips] =
        [water.lid, water.walls, water.floor, hive.drip_on_cluster_g_per_day].map(|grams| Kilogram::new(grams / 1e3));
    let hole = hive.frost_at_hole.map_or_else(say::no_hole, |share| say::frost(100.0 * share));
    let flow = CubicMetrePerSecond::new(1e-3 * hive.air_flow_l_per_s);
    let loss = WattPerKelvin::new(hive.heat_loss_w_per_k);
    say::hive(flow, drips, floor, hole, lid, loss, walls)
}

fn bees(colony: &ColonyPlan) -> String {
    let middle: Vec<f64> = colony.bees.iter().map(|point| point.range.p50).collect();
    let (Some(first), Some(low)) =
        (colony.bees.first(), colony.bees.iter().min_by(|a, b| a.range.p50.total_cmp(&b.range.p50)))
    else {
        return String::new();
    };
    let range = &low.range;
    let bees = say::bees(spark(&middle), range.p10, range.p50, range.p90, first.range.p50, low.date);
    let brood = colony.brood_begins.p50.map(say::brood);
    entry(shared::bees(), shared::parts([bees].into_iter().chain(brood).collect()))
}

/// What is eaten, dies and is seen dead, month by month.
fn months(colony: &ColonyPlan) -> String {
    if colony.food_g_per_day.is_empty() {
        return String::new();
    }
    let of = |month: &str| format!("{month}-01").parse::<Date>().unwrap_or_default();
    let food = colony.food_g_per_day.iter();
    let food = food.map(|row| say::month_food(Kilogram::new(row.range.p50 / 1e3), of(&row.month))).collect();
    let dead = colony.dead_bees_per_day.iter().map(|row| say::month_bees(row.range.p50, of(&row.month))).collect();
    let seen = colony.dead_bees_shown.iter().map(|row| say::month_seen(of(&row.month), usual(row.usual))).collect();
    let ounces = tongue().system() == System::Us;
    entry(say::food_day(), say::months_food(food, ounces))
        + &entry(say::dead_day(), say::months_bees(dead))
        + &entry(say::dead_seen(), say::months_seen(seen))
}

fn actions(plan: &PlanAnswer, colony: &ColonyPlan, once: &mut Once) -> String {
    colony.actions.iter().zip(1..).map(|(action, place)| one_action(plan, place, action, once)).collect()
}

fn one_action(plan: &PlanAnswer, place: u32, action: &ActionAnswer, once: &mut Once) -> String {
    let label = if action.instead { shared::or_instead() } else { say::helps(place) };
    let rule = action.rule_of_thumb.as_ref().filter(|rule| once.is_new(rule)).map(say::trade);
    let caution = action.caution.as_ref().filter(|caution| once.is_new(caution)).map(say::mind);
    let why = say::after([action.why.clone()].into_iter().chain(rule).chain(caution).collect());
    entry(label, say::action_when(&action.what, when(action), action.worth(&plan.currency))) + &entry("", why)
}
