//! Fit for winter: verdicts that a mentor would give, nothing sick moved, and ranges that belong to the place.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use std::fmt::Write as _;

use snowhum_advice::answer::ActionKind;
use snowhum_advice::fit::{ClassWindow, ColonyFit, FitAnswer, Scale, Stands, VerdictKind, What};
use snowhum_advice::plan::PlanAnswer;
use snowhum_advice::{PlanQuestion, plan};
use snowhum_apiary::Apiary;
use snowhum_say::Tongue;
use snowhum_winter::Parameters;

use crate::common;

fn class_of<'f>(fit: &'f FitAnswer, name: &str) -> &'f ClassWindow {
    fit.windows.iter().find(|window| window.class.id().is_some_and(|id| id.ends_with(name))).unwrap()
}

const LAKE: [&str; 4] = ["61.7", "25", "100 m", "Europe/Helsinki"];
const PLAIN: [&str; 4] = ["46", "20", "80 m", "Europe/Budapest"];
const ALPINE: [&str; 4] = ["46.6", "8", "1400 m", "Europe/Zurich"];

/// A yard of one-box hives: each colony by its name and lines.
fn yard(place: [&str; 4], as_of: &str, colonies: &[(&str, &str)]) -> Apiary {
    yard_of("[\"deep\"]", place, as_of, colonies)
}

/// The same in hives of these boxes.
fn yard_of(
    boxes: &str,
    [latitude, longitude, elevation, zone]: [&str; 4],
    as_of: &str,
    colonies: &[(&str, &str)],
) -> Apiary {
    let mut text = format!(
        "[apiary]\nname = \"Invented\"\ninvented = true\nas_of = {as_of}\n[site]\nlatitude = {latitude}\nlongitude = {longitude}\nelevation = \"{elevation}\"\nzone = \"{zone}\"\nshelter = \"windbreak\"\nexposure = \"partial\"\n[money]\ncurrency = \"EUR\"\n"
    );
    for (name, lines) in colonies {
        write!(
            text,
            "[[hive]]\nname = \"{name}\"\nkind = \"Langstroth 10\"\nboxes = {boxes}\nlid = [\"plywood 10 mm\", \"foam 50 mm\"]\nentrance = \"reduced\"\nguard = \"slot 8 mm\"\n[[colony]]\nname = \"{name}\"\nhive = \"{name}\"\n{lines}\n"
        )
        .unwrap();
    }
    snowhum_apiary::read(&text, "invented").unwrap().0
}

const STRONG: &str = "frames_of_bees = 9\nbrood = \"none\"\nstores = \"22 kg\"\nmites = { found = 2, bees = 300, on = 2025-08-01 }\nqueen_year = 2025\nqueen_seen = true\ntroubles = \"none\"";
const WEAK: &str = "frames_of_bees = 2.5\nbrood = \"none\"\nstores = \"5 kg\"\nmites = { found = 1, bees = 300, on = 2025-08-01 }\nqueen_year = 2024\nqueen_seen = true\ntroubles = \"none\"";

fn planned(apiary: &Apiary) -> PlanAnswer {
    let (winter, autumn, spring) = common::weather(apiary);
    plan(&PlanQuestion {
        apiary,
        winter: &winter,
        autumn: &autumn,
        autumn_from: common::autumn_from(apiary),
        as_of: apiary.as_of,
        spring,
        parameters: &Parameters::shipped().unwrap(),
        members: 64,
        seed: 1,
    })
}

fn fit(apiary: &Apiary) -> FitAnswer {
    planned(apiary).fit.unwrap()
}

fn one<'a>(fit: &'a FitAnswer, name: &str) -> &'a ColonyFit {
    fit.colonies.iter().find(|colony| colony.name == name).unwrap()
}

fn scale(colony: &ColonyFit, what: What) -> &Scale {
    colony.scales.iter().find(|scale| scale.what == what).unwrap()
}

fn with(lines: &str, more: &str) -> String {
    let key = more.split(" =").next().unwrap();
    let kept: Vec<&str> = lines.lines().filter(|line| !line.starts_with(&format!("{key} ="))).collect();
    format!("{}\n{more}", kept.join("\n"))
}

#[test]
fn food_that_its_combs_cannot_take_is_said_and_none_other() {
    let brooding = with(STRONG, "brood = \"4 frames\"");
    let lines = ["4 kg", "14 kg"].map(|stores| with(&brooding, &format!("stores = \"{stores}\"")));
    let of = |place| fit(&yard(place, "2025-09-01", &[("Light", &lines[0]), ("Fair", &lines[1])]));
    let says = |fit: &FitAnswer, name: &str| one(fit, name).say.iter().any(|say| say.id() == Some("fit-say-no-room"));
    let (alpine, plain) = (of(ALPINE), of(PLAIN));
    // Ten deep combs take 27.8 kg when full.
    for (fit, name, stores_kg) in [(&alpine, "Light", 4.0), (&alpine, "Fair", 14.0), (&plain, "Light", 4.0)] {
        let short = fit.shopping.hives.iter().find(|hive| hive.name == name).map_or(0.0, |hive| hive.short_kg);
        assert_eq!(says(fit, name), stores_kg + short > 0.85 * 27.8, "{name} {short}");
    }
    assert!(says(&alpine, "Light") && !says(&plain, "Light"));
}

#[test]
fn the_demo_is_answered_on_six_scales_each_with_its_range_and_source() {
    let apiary = snowhum_apiary::read(snowhum_apiary::demo_text(), "demo").unwrap().0;
    let fit = fit(&apiary);
    assert_eq!(fit.colonies.len(), 5);
    for colony in &fit.colonies {
        assert_eq!(colony.scales.len(), 6, "{}", colony.name);
        for scale in &colony.scales {
            let usual = scale.usual.as_ref().unwrap();
            assert!(usual.low < usual.high && usual.high <= scale.end, "{scale:?}");
            assert!(
                [&usual.source, &usual.region, &usual.hive].iter().all(|words| !Tongue::BRITISH.say(words).is_empty())
            );
            assert!(scale.figure.is_none_or(|figure| figure.p10 <= figure.p50 && figure.p50 <= figure.p90));
        }
        assert!(!colony.verdict.reasons.is_empty());
    }
    assert_eq!(one(&fit, "Alder").verdict.kind, VerdictKind::Alone);
    let larch = one(&fit, "Larch");
    assert_eq!(larch.verdict.kind, VerdictKind::Treat);
    assert!(larch.verdict.reasons.iter().any(|reason| reason.id() == Some("fit-already-hurt")), "{:?}", larch.verdict);
    assert_eq!(scale(larch, What::Mites).stands, Stands::Over);
    assert_eq!(scale(larch, What::Queen).look.as_ref().unwrap().id(), Some("fit-queen-unseen"));
    assert_eq!(scale(one(&fit, "Alder"), What::Hive).look.as_ref().unwrap().id(), Some("fit-hive-not-noted"));
}

#[test]
fn the_last_day_for_a_queen_is_late_august_in_the_finnish_lake_country_and_later_in_warmer_places() {
    let at = |place, as_of| fit(&yard(place, as_of, &[("Strong", STRONG)])).dates;
    let (lake, plain, alpine) = (at(LAKE, "2025-09-01"), at(PLAIN, "2025-09-01"), at(ALPINE, "2025-09-01"));
    // Practice has about 25 August at 62 N.
    let august = jiff::civil::date(2025, 8, 25);
    assert!(lake.requeen_by.p50.duration_since(august).as_hours().abs() <= 24 * 5, "{}", lake.requeen_by.p50);
    assert!(plain.requeen_by.p50 > lake.requeen_by.p90 && plain.requeen_by.p50 > alpine.requeen_by.p90);
    for dates in [&lake, &plain, &alpine] {
        assert!(dates.requeen_by.p50 < dates.unite_by.p50 && dates.unite_by.p50 < dates.cluster.p50, "{dates:?}");
        assert!(dates.boost_by.p50 < dates.cluster.p50);
    }
    assert!(lake.cluster.p50 < plain.cluster.p50);
}

#[test]
fn signs_of_foulbrood_stop_everything_and_that_hive_neither_gives_nor_takes() {
    let sick = with(STRONG, "troubles = [\"foulbrood signs\"]");
    let fit = fit(&yard(LAKE, "2025-09-10", &[("Sick", &sick), ("Weak", WEAK)]));
    let sick = one(&fit, "Sick");
    assert_eq!(sick.verdict.kind, VerdictKind::Stop);
    assert!(sick.verdict.says.id() == Some("fit-stop") && sick.unite.is_none());
    let weak = one(&fit, "Weak");
    assert_eq!(weak.unite.as_ref().unwrap().with, None);
    assert_ne!(weak.verdict.kind, VerdictKind::Unite);
    assert!(fit.shopping.hives.iter().all(|hive| hive.frames.as_ref().is_none_or(|frames| frames.from != "Sick")));
}

#[test]
fn laying_workers_are_shaken_out_and_never_put_to_a_good_colony() {
    let laying = with(STRONG, "queen = \"laying workers\"");
    let fit = fit(&yard(LAKE, "2025-09-10", &[("Lost", &laying), ("Strong", STRONG)]));
    let lost = one(&fit, "Lost");
    assert_eq!(lost.verdict.kind, VerdictKind::ShakeOut);
    assert!(lost.unite.is_none());
}

#[test]
fn a_queenless_colony_goes_to_a_healthy_one_by_newspaper_and_a_sick_one_to_none() {
    let queenless = with(STRONG, "queen = \"none\"");
    let fit_of = |lines: &str, as_of| fit(&yard(LAKE, as_of, &[("Lost", lines), ("Strong", STRONG)]));
    let healthy = fit_of(&with(&queenless, "frames_of_bees = 6"), "2025-09-10");
    let lost = one(&healthy, "Lost");
    assert_eq!(lost.verdict.kind, VerdictKind::Unite);
    let uniting = lost.unite.as_ref().unwrap();
    assert_eq!((uniting.with.as_deref(), uniting.advised), (Some("Strong"), true));
    assert!(uniting.steps.iter().any(|step| step.id() == Some("fit-step-paper")));
    assert!(Tongue::BRITISH.say_all(&uniting.steps).iter().any(|step| step.contains("keep Strong's queen")));

    let crumpled = with(&with(&queenless, "frames_of_bees = 6"), "troubles = [\"crumpled wings\"]");
    let sick = fit_of(&crumpled, "2025-09-10");
    let uniting = one(&sick, "Lost").unite.as_ref().unwrap();
    assert!(!uniting.advised && uniting.steps.is_empty());
    assert!(
        Tongue::BRITISH.say_all(&uniting.against).iter().any(|why| why.contains("crumpled wings")),
        "{:?}",
        uniting.against
    );

    let late = fit_of(&with(&queenless, "frames_of_bees = 6"), "2025-11-20");
    let uniting = one(&late, "Lost").unite.as_ref().unwrap();
    assert!(
        !uniting.advised && uniting.against.iter().any(|why| why.id() == Some("fit-against-late")),
        "{:?}",
        uniting.against
    );
}

#[test]
fn two_weak_colonies_are_not_put_together() {
    let fit = fit(&yard(LAKE, "2025-09-10", &[("One", WEAK), ("Two", WEAK)]));
    for colony in &fit.colonies {
        let uniting = colony.unite.as_ref().unwrap();
        assert!(!uniting.advised && uniting.against.iter().any(|why| why.id() == Some("fit-against-none")));
        assert_ne!(colony.verdict.kind, VerdictKind::Unite);
    }
}

#[test]
fn mites_over_the_line_come_first_and_late_treatment_is_called_late() {
    let mitey = with(STRONG, "mites = { found = 12, bees = 300, on = 2025-08-01 }");
    let at = |as_of| fit(&yard(LAKE, as_of, &[("Mitey", &mitey)]));
    let (early, late) = (at("2025-08-02"), at("2025-09-25"));
    let is_hurt =
        |fit: &FitAnswer| one(fit, "Mitey").verdict.reasons.iter().any(|why| why.id() == Some("fit-already-hurt"));
    assert_eq!(one(&early, "Mitey").verdict.kind, VerdictKind::Treat);
    assert_eq!(one(&late, "Mitey").verdict.kind, VerdictKind::Treat);
    assert!(!is_hurt(&early) && is_hurt(&late));
    assert!(late.say.iter().any(|say| say.id() == Some("fit-say-count-again")));
    let treated = with(&mitey, "treatments = [{ on = 2025-08-02, class = \"formic\" }]");
    let treated = fit(&yard(LAKE, "2025-09-25", &[("Mitey", &treated)]));
    assert_eq!(one(&treated, "Mitey").verdict.kind, VerdictKind::Alone);
}

#[test]
fn what_nobody_looked_at_is_not_known_and_says_what_to_look_at() {
    let plain = "frames_of_bees = 8\nstores = \"18 kg\"\nmites = \"not counted\"";
    let fit = fit(&yard(LAKE, "2025-09-10", &[("Plain", plain)]));
    let colony = one(&fit, "Plain");
    for what in [What::Brood, What::Queen, What::Mites] {
        let scale = scale(colony, what);
        assert_eq!((scale.stands, scale.figure), (Stands::NotKnown, None), "{what:?}");
        assert!(scale.look.is_some(), "{what:?}");
        assert!(scale.usual.is_some(), "what is usual is known though the figure is not: {what:?}");
    }
    assert!(colony.say.iter().any(|say| say.id() == Some("fit-say-strong")));
}

#[test]
fn a_frame_is_given_once() {
    let six = with(STRONG, "frames_of_bees = 6");
    let (hungry, heavy) = (with(&six, "stores = \"9 kg\""), with(&six, "stores = \"28 kg\""));
    let yard = yard(LAKE, "2025-10-05", &[("Heavy", &heavy), ("One", &hungry), ("Two", &hungry), ("Three", &hungry)]);
    let plan = planned(&yard);
    let list = plan.fit.unwrap().shopping;
    // The plan offers a frame only where the list has it go.
    for colony in plan.colonies.iter().filter(|colony| colony.actions.iter().any(|a| a.kind == ActionKind::Frames)) {
        let listed = list.hives.iter().find(|hive| hive.name == colony.name).unwrap();
        assert!(listed.frames.is_some(), "{} is offered frames that the list gives to another", colony.name);
    }
    assert!(list.hives.iter().any(|hive| hive.frames.is_some()));
    let heavy = &plan.colonies[0].stores_kg;
    assert!(list.spared_kg > 2.0 && list.spared_kg <= heavy.spring.p10 - 3.0 + 0.1, "{} of {heavy:?}", list.spared_kg);
    let given: f64 = list.hives.iter().filter_map(|hive| hive.frames.as_ref()).map(|frames| frames.kg).sum();
    assert!((given - list.spared_kg).abs() < 0.11);
}

#[test]
fn mites_over_the_line_are_treated_first_while_that_spares_winter_bees_and_not_twice() {
    let mitey = with(STRONG, "mites = { found = 21, bees = 300, on = 2025-08-05 }");
    let first = |as_of, lines: &str| {
        let plan = planned(&yard(LAKE, as_of, &[("Mitey", lines)]));
        plan.colonies[0].actions.first().map(|action| action.kind)
    };
    assert_eq!(first("2025-08-10", &mitey), Some(ActionKind::TreatMites));
    let treated = with(&mitey, "treatments = [{ on = 2025-08-07, class = \"formic\" }]");
    for (as_of, lines) in [("2025-08-10", treated.as_str()), ("2025-11-20", &mitey), ("2025-08-10", STRONG)] {
        assert_ne!(first(as_of, lines), Some(ActionKind::TreatMites), "{as_of}");
    }
}

/// A colony that mites make small eats less: hunger never makes them look good.
#[test]
fn no_count_of_mites_betters_the_chance_of_a_hungry_colony() {
    for stores in ["9 kg", "14 kg", "24 kg"] {
        let stands = |found: u32| {
            let mites = format!("mites = {{ found = {found}, bees = 300, on = 2025-09-05 }}");
            let lines = with(&with(STRONG, &mites), &format!("stores = \"{stores}\""));
            let plan = planned(&yard(LAKE, "2025-09-05", &[("One", &lines)]));
            let one = &plan.colonies[0];
            [one.alive_fed_queenright, one.alive_queenright_if_fed, one.alive_in_spring]
        };
        let by_count = [0, 1, 2, 4, 8, 15, 25, 40].map(stands);
        for shown in 0..3 {
            let chances = by_count.map(|chances| chances[shown]);
            assert!(chances.is_sorted_by(|few, more| *more <= few + 0.005), "{stores}, chance {shown}: {chances:?}");
        }
    }
}

#[test]
fn no_comb_is_moved_in_the_cold() {
    let six = with(STRONG, "frames_of_bees = 6");
    let far = format!("{}\nfood_sits = \"far side\"", with(&six, "stores = \"9 kg\""));
    let moves = |as_of| {
        let yard = yard(LAKE, as_of, &[("Heavy", &with(&six, "stores = \"28 kg\"")), ("Hungry", &far)]);
        let plan = planned(&yard);
        let hangs = |kind| matches!(kind, ActionKind::BringNear | ActionKind::Frames);
        let is_hung = plan.colonies.iter().flat_map(|one| &one.actions).any(|one| hangs(one.kind));
        let listed = plan.fit.unwrap().shopping.hives.iter().any(|hive| hive.frames.is_some());
        (is_hung, listed)
    };
    assert_eq!(moves("2025-09-20"), (true, true));
    assert_eq!(moves("2025-12-20"), (false, false));
}

#[test]
fn syrup_that_is_too_late_for_part_of_a_need_leaves_the_rest_to_solid_feed() {
    let hungry = with(STRONG, "stores = \"3 kg\"");
    let hive = |as_of| {
        let plan = planned(&yard(LAKE, as_of, &[("One", &hungry)]));
        let list = plan.fit.unwrap().shopping;
        (list.finish_by_half, plan.colonies[0].actions.clone(), list.hives[0].clone())
    };
    let (finish, ..) = hive("2025-09-01");
    let three_days = finish.saturating_sub(jiff::ToSpan::days(3)).to_string();
    let (_, actions, late) = hive(&three_days);
    // Three days of a top feeder are nine litres.
    assert!((late.syrup_l - 9.0).abs() < 0.1 && late.mix == "3:2", "{late:?}");
    let (syrup, solid) = (late.sugar_kg * 1.1, late.fondant_kg * snowhum_apiary::STORES_PER_FONDANT);
    assert!((syrup + solid - late.now_kg).abs() < 0.05 * late.now_kg, "{syrup} + {solid} of {}", late.now_kg);
    assert!(actions.iter().any(|action| Tongue::BRITISH.say(&action.what).contains("9 L of 3:2")), "{actions:?}");
}

#[test]
fn a_need_far_over_the_rule_is_said_and_fed_in_two_parts() {
    let lines = with(&with(STRONG, "stores = \"10 kg\""), "bees = 75000").replace("frames_of_bees = 9\n", "");
    let high = ["47.6", "12", "1700 m", "Europe/Berlin"];
    let plan = planned(&yard_of("[\"deep\", \"deep\", \"deep\"]", high, "2025-08-10", &[("One", &lines)]));
    let colony = &plan.colonies[0];
    let over = colony.over_rule.as_ref().unwrap_or_else(|| panic!("{} kg short", colony.shortage_kg));
    assert!(over.need_kg >= 1.5 * over.rule_kg[1], "{over:?}");
    assert!((10.0 + over.first_kg - over.rule_kg[1]).abs() < 0.11, "to the rule and no further: {over:?}");
    let hive = &plan.fit.as_ref().unwrap().shopping.hives[0];
    assert!((hive.now_kg - over.first_kg).abs() < 1e-9 && hive.later_fondant_kg == over.later_fondant_kg);
    assert!((hive.now_kg + hive.later_fondant_kg * snowhum_apiary::STORES_PER_FONDANT - hive.short_kg).abs() < 0.2);
    let modest = planned(&yard(LAKE, "2025-09-01", &[("One", STRONG)]));
    assert!(modest.colonies[0].over_rule.is_none());
}

#[test]
fn the_list_is_the_sum_of_its_hives_and_names_no_thin_syrup() {
    let hungry = with(STRONG, "stores = \"9 kg\"");
    let list = fit(&yard(LAKE, "2025-08-10", &[("One", &hungry), ("Two", &hungry)])).shopping;
    assert!(!list.too_late_for_syrup && list.hives.len() == 2);
    assert!(list.hives.iter().all(|hive| hive.mix == "3:2"));
    assert!(list.hives.iter().flat_map(|hive| &hive.begin_by).all(|begin| begin.on >= jiff::civil::date(2025, 8, 10)));
    let sum: f64 = list.hives.iter().map(|hive| hive.sugar_kg).sum();
    assert!((list.sugar_kg - sum).abs() < 0.06 && list.solid_kg == 0.0);
    // 0.772 kg of sugar a litre of 3:2.
    assert!((list.sugar_kg / list.syrup_l - 0.772).abs() < 0.01);
    assert!((list.with_feeder(4.0).hives[0].feeder_fills - list.hives[0].syrup_l / 4.0).abs() < 0.06);
    let late = fit(&yard(LAKE, "2025-10-20", &[("One", &hungry)])).shopping;
    assert!(late.too_late_for_syrup && late.sugar_kg == 0.0 && late.solid_kg > 0.0);
}

#[test]
fn ranges_belong_to_the_place_and_none_is_copied_from_another() {
    let at = |place| fit(&yard(place, "2025-09-05", &[("Strong", STRONG)]));
    let (lake, plain, alpine) = (at(LAKE), at(PLAIN), at(ALPINE));
    let region =
        |fit: &FitAnswer, what| Tongue::BRITISH.say(&scale(&fit.colonies[0], what).usual.as_ref().unwrap().region);
    assert_eq!(
        [&lake, &plain, &alpine].map(|fit| region(fit, What::Bees)),
        ["Finland", "cool countries", "cool countries"]
    );
    assert_eq!(
        [&lake, &plain, &alpine].map(|fit| region(fit, What::Stores)),
        ["Sweden, Finland and Norway", "this site", "Switzerland"]
    );
    let windows = |fit: &FitAnswer| fit.windows.iter().map(|window| window.says.clone()).collect::<Vec<_>>();
    assert!(windows(&lake) != windows(&plain) && windows(&plain) != windows(&alpine));
}

#[test]
fn each_class_of_treatment_has_its_window_and_no_dose() {
    let fit = fit(&yard(LAKE, "2025-09-05", &[("Strong", STRONG)]));
    assert_eq!(fit.windows.len(), 5);
    let until = |class: &str| class_of(&fit, class).until.unwrap().p50;
    assert!(until("thymol") < until("formic"), "thymol needs more warmth for longer");
    let oxalic = class_of(&fit, "trickled");
    assert!(oxalic.from.unwrap().p90 < oxalic.until.unwrap().p10);
    let text = serde_json::to_string(&fit).unwrap().to_lowercase();
    for dose in [" ml", " mg", " gram", " drops"] {
        assert!(!text.contains(dose), "{dose}");
    }
}

#[test]
fn brood_is_given_only_where_it_can_still_hatch_and_a_healthy_colony_has_it_to_spare() {
    let brooding = with(STRONG, "brood = \"5 frames\"");
    let at = |as_of, giver: &str| fit(&yard(LAKE, as_of, &[("Giver", giver), ("Weak", WEAK)]));
    let kind = |fit: &FitAnswer| one(fit, "Weak").verdict.kind;
    let late = at("2025-10-20", &brooding);
    assert_ne!(kind(&late), VerdictKind::Boost);
    assert!(one(&late, "Weak").verdict.reasons.iter().any(|reason| reason.id() == Some("fit-boost-too-late")));
    assert_ne!(kind(&at("2025-09-01", &with(&brooding, "troubles = [\"chalkbrood\"]"))), VerdictKind::Boost);
    let few = with(&with(WEAK, "frames_of_bees = 1.5"), "stores = \"15 kg\"");
    let early = fit(&yard(LAKE, "2025-08-15", &[("Giver", &brooding), ("Weak", &few)]));
    assert_eq!(kind(&early), VerdictKind::Boost, "{:?}", one(&early, "Weak").verdict);
}

#[test]
fn a_colony_with_no_queen_seen_and_no_brood_in_august_is_not_reassured() {
    let unseen = with(&with(STRONG, "queen_seen = false"), "frames_of_bees = 6");
    let doubtful = fit(&yard(LAKE, "2025-08-20", &[("Doubtful", &unseen), ("Strong", STRONG)]));
    let verdict = &one(&doubtful, "Doubtful").verdict;
    assert_eq!(verdict.says.id(), Some("fit-queen-first"), "{:?}", verdict.says);
    let why = Tongue::BRITISH.say(&verdict.reasons[0]);
    assert!(why.starts_with("no queen seen and no brood on 20 August"), "{why}");
    let seen = fit(&yard(LAKE, "2025-08-20", &[("Seen", STRONG)]));
    assert_ne!(one(&seen, "Seen").verdict.says.id(), Some("fit-queen-first"));
}

#[test]
fn nothing_is_put_to_a_colony_whose_own_mites_come_first() {
    let lost = with(&with(STRONG, "queen = \"none\""), "frames_of_bees = 6");
    let mitey = with(STRONG, "mites = { found = 12, bees = 300, on = 2025-08-01 }");
    let mitey = fit(&yard(LAKE, "2025-09-10", &[("Lost", &lost), ("Mitey", &mitey)]));
    assert_eq!(one(&mitey, "Mitey").verdict.kind, VerdictKind::Treat);
    let uniting = one(&mitey, "Lost").unite.as_ref().unwrap();
    assert!(uniting.with.is_none() && !uniting.advised, "{uniting:?}");
    assert!(uniting.against.iter().any(|why| why.id() == Some("fit-against-none")), "{:?}", uniting.against);
}

#[test]
fn the_day_for_syrup_is_the_safe_one_and_the_days_left_are_counted_to_it() {
    let hungry = with(STRONG, "stores = \"9 kg\"");
    let plan = planned(&yard(LAKE, "2025-08-10", &[("One", &hungry)]));
    let (colony, list) = (&plan.colonies[0], plan.fit.unwrap().shopping);
    assert_eq!((list.finish_by, list.finish_by_half), (colony.finish_syrup_by.p10, colony.finish_syrup_by.p50));
    assert!(list.finish_by < list.finish_by_half);
    assert_eq!(list.finish_by, plan.as_of.saturating_add(jiff::ToSpan::days(list.days_left)));
}

#[test]
fn a_window_for_treatment_says_whom_it_still_protects() {
    let fit = fit(&yard(LAKE, "2025-08-05", &[("Strong", STRONG)]));
    let formic = class_of(&fit, "formic");
    let says = Tongue::BRITISH.say(&formic.says);
    assert!(says.contains("protects this winter's bees only before"), "{says}");
    let until = formic.until.unwrap().p50;
    assert_eq!(
        formic.fit_days.unwrap().of,
        until.duration_since(jiff::civil::date(2025, 8, 5)).as_hours() as f64 / 24.0
    );
}
