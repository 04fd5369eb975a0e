//! Whether looking before acting could change what to do: readings are made up from the members themselves, the members
//! weighed by each, and the better choice taken each time (expected value of sample information by reweighting).

use snowhum_draws::{Key, normal_quantile};
use snowhum_say::{Message, now as say};
use snowhum_units::Same;
use snowhum_winter::Daily;

use super::answer::LookFirst;
use crate::actions::Weighed;
use crate::ahead::base::Base;
use crate::statistics::{mean, rounded};

/// Error of a weighing, kg (a two-sided lift with care: judgement).
const WEIGHING_SD_KG: f64 = 1.5;
/// Readings made up.
const READINGS: usize = 200;
const STREAM: u64 = 0x004c_4f4f_4b31;
/// Money below which a look is worth nothing that counts.
const HARDLY: f64 = 1.0;

/// What an action and leaving it are worth for each member, in money.
struct Choice {
    leave: Vec<f64>,
    act: Vec<f64>,
}

/// The worth of looking first, for the best action if there is one.
pub(super) fn of(base: &Base<'_>, at: usize, alive: f64, best: Option<&Weighed>) -> LookFirst {
    let Some(best) = best else {
        return LookFirst { weighing_money: 0.0, life_sign_money: 0.0, says: say::look_first_nothing_helps() };
    };
    let choice = choice(base, at, best);
    let weighing = weighing(base, at, &choice, alive, best.answer.cost_money);
    let life = life_sign(&choice, alive, best.answer.cost_money);
    LookFirst {
        weighing_money: rounded(weighing, 0),
        life_sign_money: rounded(life, 0),
        says: if best.answer.pays() { words(weighing, life, best.answer.too_close_to_call) } else { dear(alive) },
    }
}

/// Where only custom asks for something, about the queen.
pub(super) fn of_queen() -> LookFirst {
    LookFirst { weighing_money: 0.0, life_sign_money: 0.0, says: say::look_first_queen() }
}

/// Chance of life from which nobody need listen first (judgement).
const SURELY_ALIVE: f64 = 0.9;

/// For help that costs more than it is worth: the bees decide, not the sum.
fn dear(alive: f64) -> Message {
    let listen = (alive < SURELY_ALIVE).then(say::look_first_listen);
    Message::sentences(listen.into_iter().chain([say::look_first_dear()]))
}

fn words(weighing: f64, life: f64, open: bool) -> Message {
    if weighing < HARDLY && life < HARDLY {
        return say::look_first_no_need();
    }
    if weighing >= life { say::look_first_weigh(open) } else { say::look_first_life(open) }
}

fn choice(base: &Base<'_>, at: usize, best: &Weighed) -> Choice {
    let value = base.question.apiary.money.colony;
    let fed = base.fed();
    let all: Vec<f64> = base.trajectories[at].ends.iter().map(|end| value * end.fed_and_queenright(fed)).collect();
    // Of those that were run again, moved to the mean of all.
    let part = &all[..best.gains.len().min(all.len())];
    let nearer = mean(&all) - mean(part);
    let leave: Vec<f64> = part.iter().map(|leave| leave + nearer).collect();
    let act =
        leave.iter().zip(&best.gains).map(|(leave, gain)| leave + value * gain - best.answer.cost_money).collect();
    Choice { leave, act }
}

/// Worth of knowing for certain whether it lives.
fn life_sign(choice: &Choice, alive: f64, cost: f64) -> f64 {
    let (leave, act) = (mean(&choice.leave), mean(&choice.act));
    let without = (alive * leave).max(alive * act - (1.0 - alive) * cost);
    (alive * leave.max(act) - without).max(0.0)
}

/// Worth of a weighing. One half of the members chooses, the other half says what the choice was worth, so that luck is
/// not taken for knowledge.
fn weighing(base: &Base<'_>, at: usize, choice: &Choice, alive: f64, cost: f64) -> f64 {
    let stores = base.trajectories[at].day(Daily::Stores, 0).map(f64::from);
    let stores: Vec<f64> = stores.take(choice.leave.len()).collect();
    if stores.len() != choice.leave.len() || stores.len() < 4 {
        return 0.0;
    }
    let key = Key::new(base.question.seed, STREAM);
    let dead = (1.0 - alive) * cost;
    let weighed = |reading: f64, half: usize, of: &[f64]| {
        let (mut sum, mut all) = (0.0, 0.0);
        for m in (half..stores.len()).step_by(2) {
            let z = (reading - stores[m]) / WEIGHING_SD_KG;
            let weight = (-0.5 * z * z).same_exp();
            sum += weight * of[m];
            all += weight;
        }
        sum / f64::max(all, 1e-300)
    };
    let (mut informed, mut blind) = (0.0, 0.0);
    let acts_blind = alive * mean(&choice.act) - dead > alive * mean(&choice.leave);
    for reading in 0..READINGS {
        let [pick, noise, ..] = key.uniforms([reading as u32, at as u32, 0, 0]);
        let member = ((pick * stores.len() as f64) as usize).min(stores.len() - 1);
        let read = stores[member] + WEIGHING_SD_KG * normal_quantile(noise);
        let acts = alive * weighed(read, 0, &choice.act) - dead > alive * weighed(read, 0, &choice.leave);
        let worth = |acts: bool| {
            if acts { alive * weighed(read, 1, &choice.act) - dead } else { alive * weighed(read, 1, &choice.leave) }
        };
        informed += worth(acts);
        blind += worth(acts_blind);
    }
    ((informed - blind) / READINGS as f64).max(0.0)
}
