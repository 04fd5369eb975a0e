//! A dead hive: the engine against a network answered elsewhere, foulbrood first, patterns of the trade.

#![expect(clippy::unwrap_used, reason = "a test fails by panicking")]

use snowhum_advice::cautions::Hazard;
use snowhum_advice::deadout::net::{Evidence, Net, NetFault, Variable};
use snowhum_advice::deadout::{DeadoutAnswer, Seen, SeenSign, deadout, questions};
use snowhum_advice::statistics::quantile;
use snowhum_advice::sums::SumFault;
use snowhum_draws::Key;
use snowhum_say::{Message, Tongue};

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn variable(name: &str, parents: &[usize], table: &[&[f64]]) -> Variable {
    Variable {
        name: name.to_owned(),
        states: table.len(),
        parents: parents.to_vec(),
        table: table.iter().map(|row| row.to_vec()).collect(),
    }
}

/// A made-up network of eight variables. Its answers below are those of pgmpy's `VariableElimination`.
/// States: mites low, high; stores ok, light; cause mites, starved, queen, moist, other; signs no, yes (pile: few, many).
fn check_net() -> Net {
    let cause: &[&[f64]] = &[
        &[0.25, 0.12, 0.62, 0.38],
        &[0.12, 0.55, 0.08, 0.38],
        &[0.25, 0.13, 0.12, 0.09],
        &[0.18, 0.1, 0.08, 0.07],
        &[0.2, 0.1, 0.1, 0.08],
    ];
    Net::new(vec![
        variable("mites", &[], &[&[0.6], &[0.4]]),
        variable("stores", &[], &[&[0.7], &[0.3]]),
        variable("cause", &[0, 1], cause),
        variable("pile", &[2], &[&[0.75, 0.2, 0.55, 0.2, 0.45], &[0.25, 0.8, 0.45, 0.8, 0.55]]),
        variable("food", &[2], &[&[0.15, 0.92, 0.15, 0.2, 0.35], &[0.85, 0.08, 0.85, 0.8, 0.65]]),
        variable("heads", &[2], &[&[0.88, 0.2, 0.88, 0.75, 0.75], &[0.12, 0.8, 0.12, 0.25, 0.25]]),
        variable("spotty", &[2], &[&[0.3, 0.9, 0.55, 0.85, 0.7], &[0.7, 0.1, 0.45, 0.15, 0.3]]),
        variable("mould", &[2], &[&[0.6, 0.65, 0.6, 0.2, 0.55], &[0.4, 0.35, 0.4, 0.8, 0.45]]),
    ])
    .unwrap()
}

const CHECK_CAUSE: usize = 2;

fn is(net: &Net, name: &str, likelihood: [f64; 2]) -> Evidence {
    Evidence { variable: net.place(name).unwrap(), likelihood: likelihood.to_vec() }
}

const NO: [f64; 2] = [1.0, 0.0];
const YES: [f64; 2] = [0.0, 1.0];

/// Signs and the likelihoods of their two states.
type Told<'a> = &'a [(&'a str, [f64; 2])];

#[test]
fn the_engine_answers_as_pgmpy_does() {
    let net = check_net();
    let known: [(Told<'_>, [f64; 5]); 5] = [
        (&[], [0.3458, 0.2174, 0.1728, 0.1244, 0.1396]),
        (
            &[("pile", NO), ("food", YES), ("spotty", YES)],
            [0.748_187_667_367, 0.001_686_501_958, 0.176_256_521_292, 0.014_475_679_177, 0.059_393_630_207],
        ),
        (
            &[("heads", YES), ("food", NO)],
            [0.033_147_970_829, 0.852_112_248_517, 0.016_564_399_535, 0.033_124_538_680, 0.065_050_842_439],
        ),
        (
            &[("mites", YES), ("pile", NO)],
            [0.729_046_563_193, 0.060_310_421_286, 0.108_292_682_927, 0.027_317_073_171, 0.075_033_259_424],
        ),
        (
            &[("food", YES), ("spotty", [0.3, 0.7])],
            [0.531_364_783_208, 0.018_431_017_151, 0.219_747_913_775, 0.111_669_282_980, 0.118_787_002_886],
        ),
    ];
    for (seen, chances) in known {
        let evidence: Vec<Evidence> = seen.iter().map(|(name, likelihood)| is(&net, name, *likelihood)).collect();
        for (got, want) in net.chances(CHECK_CAUSE, &evidence).unwrap().into_iter().zip(chances) {
            near(got, want, 1e-10);
        }
    }
}

/// Chances by going through every joint state.
fn by_enumeration(variables: &[Variable], asked: usize, evidence: &[Evidence]) -> Vec<f64> {
    let mut weights = vec![0.0; variables[asked].states];
    let joint: usize = variables.iter().map(|one| one.states).product();
    for mut rest in 0..joint {
        let states: Vec<usize> = variables
            .iter()
            .map(|one| {
                let state = rest % one.states;
                rest /= one.states;
                state
            })
            .collect();
        let chance: f64 = variables
            .iter()
            .enumerate()
            .map(|(at, one)| {
                let column =
                    one.parents.iter().fold(0, |sum, parent| sum * variables[*parent].states + states[*parent]);
                one.table[states[at]][column]
            })
            .product();
        let likelihood: f64 = evidence.iter().map(|one| one.likelihood[states[one.variable]]).product();
        weights[states[asked]] += chance * likelihood;
    }
    let sum: f64 = weights.iter().sum();
    weights.iter().map(|weight| weight / sum).collect()
}

/// A random network of seven variables with up to three parents each.
fn random_variables(round: u32) -> Vec<Variable> {
    let key = Key::new(11, 3);
    let mut variables: Vec<Variable> = Vec::new();
    for at in 0..7_u32 {
        let dice = key.uniforms([round, at, 0, 0]);
        let states = 2 + (dice[0] * 3.0) as usize;
        let mut parents: Vec<usize> =
            (0..at as usize).filter(|p| key.uniforms([round, at, 1, *p as u32])[0] < 0.5).collect();
        parents.truncate(3);
        let columns: usize = parents.iter().map(|parent| variables[*parent].states).product();
        let mut table = vec![vec![0.0; columns]; states];
        for column in 0..columns {
            let raw: Vec<f64> =
                (0..states).map(|s| key.uniforms([round, at, 2 + s as u32, column as u32])[1]).collect();
            let sum: f64 = raw.iter().sum();
            raw.iter().enumerate().for_each(|(state, weight)| table[state][column] = weight / sum);
        }
        variables.push(Variable { name: format!("v{at}"), states, parents, table });
    }
    variables
}

#[test]
fn elimination_gives_what_enumeration_gives_on_random_networks() {
    let key = Key::new(5, 9);
    for round in 0..60 {
        let variables = random_variables(round);
        let net = Net::new(variables.clone()).unwrap();
        let dice = key.uniforms([round, 0, 0, 0]);
        let asked = (dice[0] * 7.0) as usize;
        let told = [(dice[1] * 7.0) as usize, (dice[2] * 7.0) as usize];
        let evidence: Vec<Evidence> = told
            .into_iter()
            .map(|variable| {
                let likelihood =
                    (0..variables[variable].states).map(|s| key.uniforms([round, 1, variable as u32, s as u32])[0]);
                Evidence { variable, likelihood: likelihood.collect() }
            })
            .collect();
        let chances = net.chances(asked, &evidence).unwrap();
        for (got, want) in chances.into_iter().zip(by_enumeration(&variables, asked, &evidence)) {
            near(got, want, 1e-12);
        }
    }
}

#[test]
fn redrawn_tables_spread_as_numpys_do() {
    // NumPy, 20,000 draws of each Dirichlet worth 5, 10, 20, 50 hives about the cause's chances and the signs' columns:
    // 5, 50 and 95 % of the chance of mites for few bees, food left, spotty brood.
    let net = check_net();
    let prior = net.chances(CHECK_CAUSE, &[]).unwrap();
    let flat = |name: &str| check_sign(name);
    let prior: Vec<Vec<f64>> = prior.into_iter().map(|chance| vec![chance]).collect();
    let cause = Variable { name: "cause".to_owned(), states: 5, parents: Vec::new(), table: prior };
    let net = Net::new(vec![cause, flat("pile"), flat("food"), flat("spotty")]).unwrap();
    let evidence = [is(&net, "pile", NO), is(&net, "food", YES), is(&net, "spotty", YES)];
    for (size, quantiles) in
        [(5.0, [0.219, 0.766, 0.974]), (10.0, [0.379, 0.761, 0.938]), (50.0, [0.602, 0.750, 0.856])]
    {
        let key = Key::new(3, 1);
        let draws: Vec<f64> =
            (0..20_000).map(|draw| net.redrawn(key, draw, size).chances(0, &evidence).unwrap()[0]).collect();
        for (q, want) in [0.05, 0.5, 0.95].into_iter().zip(quantiles) {
            // Three standard errors of both simulations at the widest.
            near(quantile(&draws, q), want, 0.012);
        }
    }
}

/// A sign of the check network, with the cause as variable 0.
fn check_sign(name: &str) -> Variable {
    let table: [&[f64]; 2] = match name {
        "pile" => [&[0.75, 0.2, 0.55, 0.2, 0.45], &[0.25, 0.8, 0.45, 0.8, 0.55]],
        "food" => [&[0.15, 0.92, 0.15, 0.2, 0.35], &[0.85, 0.08, 0.85, 0.8, 0.65]],
        _ => [&[0.3, 0.9, 0.55, 0.85, 0.7], &[0.7, 0.1, 0.45, 0.15, 0.3]],
    };
    variable(name, &[0], &table)
}

#[test]
fn a_network_that_does_not_fit_is_refused() {
    let coin = || variable("coin", &[], &[&[0.5], &[0.5]]);
    let child = |table: &[&[f64]]| Net::new(vec![coin(), variable("child", &[0], table)]);
    assert!(child(&[&[0.1, 0.2], &[0.9, 0.8]]).is_ok());
    assert!(matches!(child(&[&[0.1], &[0.9]]), Err(NetFault::Shape { columns: 2, .. })));
    assert!(matches!(child(&[&[0.1, 0.2], &[0.9, 0.7]]), Err(NetFault::Chances { column: 2, .. })));
    assert!(matches!(child(&[&[-0.1, 0.2], &[1.1, 0.8]]), Err(NetFault::Chances { column: 1, .. })));
    assert!(matches!(Net::new(vec![variable("own", &[0], &[&[1.0]])]), Err(NetFault::Order { .. })));
    let net = Net::new(vec![coin()]).unwrap();
    assert_eq!(net.chances(0, &[Evidence { variable: 0, likelihood: vec![0.0, 0.0] }]), None);
    assert_eq!(net.chances(0, &[Evidence { variable: 4, likelihood: vec![1.0, 0.0] }]), None);
    assert_eq!(net.chances(7, &[]), None);
}

fn examined(signs: &[(&str, Seen)]) -> DeadoutAnswer {
    let signs: Vec<SeenSign> =
        signs.iter().map(|(name, seen)| SeenSign { name: (*name).to_owned(), seen: *seen }).collect();
    deadout(&signs, &[], 1).unwrap()
}

fn said(message: &Message) -> String {
    Tongue::BRITISH.say(message)
}

fn likeliest(signs: &[(&str, Seen)]) -> String {
    examined(signs).causes[0].cause.clone()
}

fn chance(answer: &DeadoutAnswer, cause: &str) -> f64 {
    answer.causes.iter().find(|one| one.cause == cause).unwrap().p
}

#[test]
fn any_sign_of_foulbrood_stops_all_else() {
    for sign in ["sunken-cappings", "ropy-larvae", "foul-smell", "black-scale"] {
        for seen in [Seen::Yes, Seen::FairlyYes] {
            let answer = examined(&[("small-cluster", Seen::Yes), (sign, seen)]);
            assert_eq!(answer.stop.unwrap().signs, [sign]);
            assert!(answer.causes.is_empty() && answer.look_next.is_none());
            assert!(said(&answer.reuse.comb).starts_with("no") && said(&answer.reuse.stores).starts_with("no"));
        }
    }
}

#[test]
fn unseen_brood_is_asked_for_first_and_four_nos_do_not_clear_it() {
    let answer = examined(&[("small-cluster", Seen::Yes)]);
    assert!(answer.brood_first.is_some());
    assert!(said(&answer.reuse.comb).starts_with("only once the brood has been looked at"));
    let no = |name| (name, Seen::No);
    let clean = examined(&[no("sunken-cappings"), no("ropy-larvae"), no("foul-smell"), no("black-scale")]);
    assert_eq!(clean.brood_first, None);
    assert!(clean.say.iter().any(|say| said(say).contains("does not clear")));
    assert_eq!(clean.cautions, [Hazard::Foulbrood.says(), Hazard::FoodLaw.says()]);
    assert_eq!(answer.cautions, [Hazard::FoodLaw.says()], "foulbrood is asked for first, and told once");
    let stopped = examined(&[("ropy-larvae", Seen::Yes)]);
    assert_eq!(stopped.cautions, [Hazard::Antibiotics.says()]);
}

#[test]
fn the_trades_patterns_are_told_apart() {
    use Seen::{No, Yes};
    // Milbrath: honey left, small cluster, few dead, spotty brood, early: mites.
    let mites = [
        ("small-cluster", Yes),
        ("food-near", Yes),
        ("spotty-brood", Yes),
        ("pile-of-dead", No),
        ("died-before-midwinter", Yes),
    ];
    assert_eq!(likeliest(&mites), "mites");
    assert_eq!(likeliest(&[("no-food", Yes), ("heads-in-cells", Yes), ("pile-of-dead", Yes)]), "starved");
    assert_eq!(
        likeliest(&[("no-food", No), ("food-near", No), ("heads-in-cells", Yes), ("long-cold", Yes)]),
        "isolation"
    );
    assert_eq!(likeliest(&[("drone-cells", Yes), ("queen-found", No)]), "queen");
    let small = [
        ("small-cluster", Yes),
        ("weak-in-autumn", Yes),
        ("queen-found", Yes),
        ("spotty-brood", No),
        ("white-crystals", No),
    ];
    assert_eq!(likeliest(&small), "small");
}

#[test]
fn streaks_raise_dysentery_but_are_no_diagnosis_of_it() {
    // Streaks go with confinement as well as with nosema (Mussen 2011).
    let before = examined(&[]);
    let after = examined(&[("droppings-inside", Seen::Yes)]);
    assert!(chance(&after, "dysentery") > 2.0 * chance(&before, "dysentery"));
    assert!(chance(&after, "dysentery") < chance(&after, "mites"));
}

#[test]
fn rare_causes_are_raised_by_their_own_sign_but_one_sign_does_not_prove_them() {
    // Mice and robbers come to hives that died of something else.
    let before = examined(&[]);
    for (sign, cause) in [("chewed-comb", "mice"), ("ragged-cappings", "robbed"), ("tongues-out", "poison")] {
        let after = examined(&[(sign, Seen::Yes)]);
        assert!(chance(&after, cause) > 2.5 * chance(&before, cause), "{cause} {}", chance(&after, cause));
        assert!(chance(&after, cause) < 0.5);
    }
    let poisoned = [
        ("tongues-out", Seen::Yes),
        ("pile-of-dead", Seen::Yes),
        ("small-cluster", Seen::No),
        ("food-near", Seen::Yes),
    ];
    assert!(chance(&examined(&poisoned), "poison") > 10.0 * chance(&before, "poison"));
}

#[test]
fn few_bees_food_and_spotty_brood_are_mites_in_about_three_of_four() {
    let answer = examined(&[("small-cluster", Seen::Yes), ("food-near", Seen::Yes), ("spotty-brood", Seen::Yes)]);
    let mites = &answer.causes[0];
    assert_eq!(mites.cause, "mites");
    assert!((0.6..0.85).contains(&mites.p), "{mites:?}");
    assert!(mites.low < 0.55 && mites.high > 0.85, "{mites:?}");
}

#[test]
fn mould_and_wet_hardly_move_the_answer() {
    let before = examined(&[("small-cluster", Seen::Yes)]);
    let after = examined(&[("small-cluster", Seen::Yes), ("wet-mould", Seen::Yes)]);
    near(chance(&after, "mites"), chance(&before, "mites"), 0.03);
    assert_eq!(after.reuse.because, ["damp"]);
}

#[test]
fn one_fact_seen_twice_is_not_counted_twice() {
    // A small cluster and no pile are both the size of the cluster.
    let one = examined(&[("small-cluster", Seen::Yes)]);
    let emptied = examined(&[("small-cluster", Seen::Yes), ("hive-empty", Seen::No)]);
    near(chance(&one, "mites"), chance(&emptied, "mites"), 0.03);
}

#[test]
fn no_chance_is_said_above_ninety_five_in_a_hundred() {
    let all = [
        ("no-food", Seen::Yes),
        ("heads-in-cells", Seen::Yes),
        ("light-in-autumn", Seen::Yes),
        ("pile-of-dead", Seen::Yes),
        ("small-cluster", Seen::No),
        ("spotty-brood", Seen::No),
        ("mites-over-line", Seen::No),
        ("died-before-midwinter", Seen::No),
    ];
    let answer = examined(&all);
    assert_eq!((answer.causes[0].cause.as_str(), answer.causes[0].p), ("starved", 0.95));
    assert!(answer.causes.iter().all(|cause| cause.high <= 0.95 && cause.low <= cause.p && cause.p <= cause.high));
}

#[test]
fn unseen_tells_nothing_and_fairly_sure_less_than_sure() {
    let nothing = examined(&[]);
    let unseen = examined(&[("drone-cells", Seen::Unseen)]);
    assert_eq!(nothing.causes, unseen.causes);
    near(chance(&nothing, "mites"), 0.40, 1e-9);
    near(nothing.causes.iter().map(|cause| cause.p).sum::<f64>(), 1.0, 0.006);
    let queen = |seen| chance(&examined(&[("drone-cells", seen)]), "queen");
    assert!(queen(Seen::No) < queen(Seen::FairlyNo));
    assert!(queen(Seen::FairlyNo) < queen(Seen::Unseen));
    assert!(queen(Seen::Unseen) < queen(Seen::FairlyYes));
    assert!(queen(Seen::FairlyYes) < queen(Seen::Yes));
}

#[test]
fn signs_that_contradict_each_other_are_said_to() {
    let answer = examined(&[("no-food", Seen::Yes), ("food-near", Seen::Yes)]);
    assert!(answer.say.iter().any(|say| said(say).contains("cannot both be")));
}

#[test]
fn mites_and_a_small_cluster_are_told_as_a_chain() {
    let answer = examined(&[("small-cluster", Seen::Yes), ("long-cold", Seen::Yes)]);
    assert!(answer.say.iter().any(|say| said(say).contains("what began it")));
}

#[test]
fn the_next_look_parts_the_two_likeliest() {
    let answer = examined(&[("small-cluster", Seen::Yes), ("food-near", Seen::Yes)]);
    let next = answer.look_next.unwrap();
    assert_eq!(next.between, [answer.causes[0].cause.clone(), answer.causes[1].cause.clone()]);
    // Told what it asks for, the cause it points to gains on the other.
    let after = examined(&[("small-cluster", Seen::Yes), ("food-near", Seen::Yes), (&next.sign, Seen::Yes)]);
    let other = if next.between[0] == next.yes_points_to { &next.between[1] } else { &next.between[0] };
    let odds = |chances: &[snowhum_advice::deadout::CauseChance]| {
        let of = |name: &str| chances.iter().find(|one| one.cause == name).unwrap().p;
        of(&next.yes_points_to) / of(other)
    };
    assert!(odds(&after.causes) > 1.5 * odds(&answer.causes));
}

#[test]
fn the_stricter_of_two_likely_causes_rules_what_is_used_again() {
    let answer = examined(&[("droppings-inside", Seen::Yes)]);
    assert_eq!(answer.reuse.because, ["dysentery"]);
    assert!(said(&answer.reuse.stores).contains("not to bees"));
    let starved = examined(&[("no-food", Seen::Yes), ("heads-in-cells", Seen::Yes), ("pile-of-dead", Seen::Yes)]);
    assert!(said(&starved.reuse.comb).contains("use it"));
}

#[test]
fn the_answer_is_the_same_for_a_seed_and_hardly_moves_with_it() {
    let signs = [SeenSign { name: "no-food".to_owned(), seen: Seen::Yes }];
    let of = |seed| deadout(&signs, &[], seed).unwrap();
    assert_eq!(of(1), of(1));
    near(of(1).causes[0].low, of(2).causes[0].low, 0.05);
    assert_eq!(of(1).causes[0].p, of(2).causes[0].p);
}

#[test]
fn signs_are_known_by_name_and_words() {
    let unknown = deadout(&[SeenSign { name: "ghosts".to_owned(), seen: Seen::Yes }], &[], 1);
    assert!(matches!(unknown, Err(SumFault::Unknown { known, .. }) if known.contains("small-cluster")));
    let all = questions().unwrap();
    assert!(all[..4].iter().all(|question| question.stops) && all[4..].iter().all(|question| !question.stops));
    for (text, seen) in [("yes", Seen::Yes), ("Fairly-Sure", Seen::FairlyYes), ("no", Seen::No), ("", Seen::Unseen)] {
        assert_eq!(Seen::read(text), Some(seen));
    }
    assert_eq!(Seen::read("maybe so"), None);
}
