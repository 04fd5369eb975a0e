//! What would change if the hive were dressed otherwise: the same weather, the same luck, another hive.

use serde::{Deserialize, Serialize};
use snowhum_apiary::{Hive, Money, SetupChange, Wrong};
use snowhum_say::{Message, setup as say};
use snowhum_winter::{Housed, MemberEnd, Parameters, Record, Settings, Trajectory};

use crate::ahead::run::{PlanQuestion, Run};
use crate::ahead::shortage::alive_in_spring;
use crate::answer::Condensation;
use crate::statistics::{Estimate, mean_of_ends, rounded};
use crate::{sealed, seasons};

/// A set-up to try: what it is called and the hive it makes.
#[derive(Debug, Clone, PartialEq)]
pub struct Try {
    /// As the keeper wrote it.
    pub name: String,
    /// The hive after the change.
    pub hive: Hive,
    /// Price of it.
    pub cost: f64,
}

/// A change that cannot be made.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{change}: {wrong}")]
pub struct WrongChange {
    /// As the keeper wrote it.
    pub change: String,
    /// Why not, and what would be right.
    pub wrong: Wrong,
}

impl Try {
    /// A colony's hive after every change, at the yard's own prices.
    ///
    /// # Errors
    /// The first change that cannot be read or does not fit the hive, and when its bees could not get out.
    pub fn of(
        name: String,
        housed: &Housed,
        changes: &[&str],
        (money, parameters): (&Money, &Parameters),
    ) -> Result<Self, WrongChange> {
        let mut tried = Self { name, hive: housed.hive.clone(), cost: 0.0 };
        for change in changes {
            let wrong = |wrong: Wrong| WrongChange { change: (*change).to_owned(), wrong };
            let read = change.parse::<SetupChange>().map_err(wrong)?;
            tried.hive = tried.hive.with_change(&read).map_err(wrong)?;
            tried.cost += price(&read, money);
        }
        let shut = Housed { hive: tried.hive.clone(), ..housed.clone() };
        let wrong = |wrong: Wrong| WrongChange { change: changes.join("; "), wrong };
        sealed::refuse_try(&shut, parameters).map_err(wrong)?;
        Ok(tried)
    }
}

/// What a change costs to buy; what is taken off or moved costs nothing.
fn price(change: &SetupChange, money: &Money) -> f64 {
    match change {
        SetupChange::Lid(Some(_)) | SetupChange::Quilt(Some(_)) => money.lid,
        SetupChange::Wrap(Some(_)) => money.wrap,
        _ => 0.0,
    }
}

/// Set-ups side by side.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SetupAnswer {
    /// The colony.
    pub colony: String,
    /// The hive as it is.
    pub base: SetupRow,
    /// The others, each against it.
    pub tries: Vec<SetupRow>,
}

/// One set-up through the winter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SetupRow {
    /// Its name.
    pub name: Message,
    /// Chance of being alive in spring.
    pub alive_in_spring: f64,
    /// Food eaten to spring by colonies that live.
    pub food_kg: f64,
    /// Water in the coldest month.
    pub condensation_g_per_day: Condensation,
    /// Of it dripping on the cluster.
    pub drip_on_cluster_g_per_day: f64,
    /// Heat loss in the coldest month.
    pub heat_loss_w_per_k: f64,
    /// Price of the change.
    pub cost_money: f64,
    /// Hives in a hundred alive, fed and queenright more than as it is.
    pub difference_hives_in_100: f64,
    /// Two Monte Carlo standard errors of that.
    pub plus_minus: f64,
    /// Whether chance could turn it.
    pub too_close_to_call: bool,
}

/// Hives in a hundred below which a difference is not worth a keeper's money or time (judgement).
pub const HARDLY: f64 = 2.0;

/// What a set-up does to the chance of coming to spring alive, fed and queenright.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SetupVerdict {
    /// What difference there is may be chance.
    MayBeChance,
    /// A difference of less than [`HARDLY`].
    Hardly,
    /// More come to spring.
    Better,
    /// Fewer come to spring.
    Worse,
}

impl SetupRow {
    /// Its difference, judged.
    #[must_use]
    pub fn verdict(&self) -> SetupVerdict {
        let difference = self.difference_hives_in_100;
        match () {
            () if self.too_close_to_call => SetupVerdict::MayBeChance,
            () if difference.abs() < HARDLY => SetupVerdict::Hardly,
            () if difference > 0.0 => SetupVerdict::Better,
            () => SetupVerdict::Worse,
        }
    }
}

/// Compares set-ups for the colony at place `at` of the question's yard; `None` if there is no such colony.
#[must_use]
pub fn compare(question: &PlanQuestion<'_>, at: usize, tries: &[Try]) -> Option<SetupAnswer> {
    let run = Run::of(question);
    let own = run.housed.get(at)?;
    let settings = Settings { record: Record::Days, ..run.end_only() };
    let trajectory_of = |hive: &Hive| {
        let mut housed: Vec<Housed> = run.housed.clone();
        housed[at].hive = hive.clone();
        run.ahead.run(&housed, &[at], &[], settings).swap_remove(0)
    };
    let fed = run.fed();
    let chances = |trajectory: &Trajectory| -> Vec<f64> {
        trajectory.ends.iter().map(|end| end.fed_and_queenright(fed)).collect()
    };
    let as_it_is = chances(&run.trajectories[at]);
    let row = |name: Message, cost: f64, trajectory: &Trajectory| {
        let gains: Vec<f64> = chances(trajectory).iter().zip(&as_it_is).map(|(new, old)| new - old).collect();
        let Estimate { value: gain, error } = run.mean_by_all(&[at], &gains);
        let verdict = seasons::hive_verdict(&run, at, trajectory);
        let living = mean_of_ends(trajectory, MemberEnd::alive);
        let eaten = mean_of_ends(trajectory, |end| end.used.get() * end.alive());
        SetupRow {
            name,
            alive_in_spring: alive_in_spring(&run, at, trajectory),
            food_kg: rounded(eaten / living.max(1e-9), 1),
            condensation_g_per_day: verdict.condensation_g_per_day,
            drip_on_cluster_g_per_day: verdict.drip_on_cluster_g_per_day,
            heat_loss_w_per_k: verdict.heat_loss_w_per_k,
            cost_money: rounded(cost, 0),
            difference_hives_in_100: rounded(100.0 * gain, 1),
            plus_minus: rounded(200.0 * error, 1),
            too_close_to_call: gain.abs() <= 2.0 * error,
        }
    };
    Some(SetupAnswer {
        colony: own.colony.name.clone(),
        base: row(say::as_it_is(), 0.0, &run.trajectories[at]),
        tries: tries.iter().map(|t| row((&t.name).into(), t.cost, &trajectory_of(&t.hive))).collect(),
    })
}
