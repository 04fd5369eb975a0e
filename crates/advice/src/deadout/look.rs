//! Where to look next: the unseen sign that best parts the two likeliest causes.

use super::answer::{CauseChance, LookNext, Seen, ToldSign};
use super::net::{Evidence, Net};
use super::tables::{CAUSE, Sign, Tables, said};
use snowhum_units::Same;

/// A sign that parts two causes by less is not worth a look.
const LEAST_GAIN: f64 = 0.005;

pub(super) fn next(
    net: &Net,
    evidence: &[Evidence],
    causes: &[CauseChance],
    told: &[ToldSign],
    tables: &Tables,
) -> Option<LookNext> {
    let [first, second, ..] = causes else { return None };
    let seen = |sign: &Sign| told.iter().any(|told| told.sign == sign.name && told.seen != Seen::Unseen);
    let judged = |sign| Some((sign, yes_chances(net, evidence, sign, [first, second], tables)?));
    let gained = |yes: [f64; 2]| gain(yes, [first.p, second.p]);
    let (sign, yes) = tables
        .sign
        .iter()
        .filter(|sign| !seen(sign))
        .filter_map(judged)
        .max_by(|(_, a), (_, b)| gained(*a).total_cmp(&gained(*b)))?;
    (gained(yes) >= LEAST_GAIN).then(|| LookNext {
        sign: sign.name.clone(),
        ask: said(&sign.name),
        between: [first.cause.clone(), second.cause.clone()],
        yes_points_to: if yes[0] > yes[1] { first.cause.clone() } else { second.cause.clone() },
    })
}

/// Chance that the sign is there, were it the one cause or the other.
fn yes_chances(
    net: &Net,
    evidence: &[Evidence],
    sign: &Sign,
    pair: [&CauseChance; 2],
    tables: &Tables,
) -> Option<[f64; 2]> {
    let asked = net.place(&sign.name)?;
    let were = |cause: &CauseChance| {
        let known: Vec<f64> =
            tables.cause.iter().map(|other| if other.name == cause.cause { 1.0 } else { 0.0 }).collect();
        let mut given = evidence.to_vec();
        given.push(Evidence { variable: CAUSE, likelihood: known });
        net.chances(asked, &given)?.get(1).copied()
    };
    Some([were(pair[0])?, were(pair[1])?])
}

/// Bits a look at the sign is expected to tell of which of the two it is.
fn gain([yes_first, yes_second]: [f64; 2], [first, second]: [f64; 2]) -> f64 {
    let whole = first + second;
    if whole <= 0.0 {
        return 0.0;
    }
    let (first, second) = (first / whole, second / whole);
    let entropy =
        |p: f64| if p <= 0.0 || p >= 1.0 { 0.0 } else { -p * p.same_log2() - (1.0 - p) * (1.0 - p).same_log2() };
    entropy(first * yes_first + second * yes_second) - first * entropy(yes_first) - second * entropy(yes_second)
}
