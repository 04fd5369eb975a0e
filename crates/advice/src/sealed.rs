//! Hives that bees cannot leave: refused wherever a winter is asked about, with what would become of them.

use snowhum_apiary::{Apiary, Faults, Hive, OpeningKind, Wrong};
use snowhum_say::{Message, Tongue, fault, sealed as say};
use snowhum_units::{Fraction, Kelvin, MetrePerSecond};
use snowhum_winter::{Housed, Parameters, StartFrom, SteadyQuestion, steady};

/// Steady weather that the air of a shut hive is told for: a calm winter day at freezing.
const AIR: Kelvin = Kelvin::from_celsius(0.0);
const HUMIDITY: Fraction = Fraction::new(0.85);
/// Carbon dioxide of outdoor air, per cent by volume.
const OUTDOORS_PERCENT: f64 = 0.04;

/// A hive of a yard that its bees cannot leave.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&say::refused(colony, say::remedy(), why)))]
pub struct Sealed {
    /// The colony.
    pub colony: String,
    /// Why it is refused.
    pub why: Message,
}

/// Whether the bees of every hive of a yard can get out.
///
/// # Errors
/// The first hive whose bees cannot, with the air in it.
pub fn refuse(apiary: &Apiary, parameters: &Parameters) -> Result<(), Sealed> {
    let housed = crate::yard::housed(apiary);
    let Some(shut) = housed.iter().find(|housed| housed.hive.is_sealed()) else { return Ok(()) };
    Err(Sealed { colony: shut.colony.name.clone(), why: why(shut, parameters) })
}

/// Whether the bees of a colony could get out of a hive it is tried in.
pub(crate) fn refuse_try(housed: &Housed, parameters: &Parameters) -> Result<(), Wrong> {
    if !housed.hive.is_sealed() {
        return Ok(());
    }
    Err(Wrong::new(why(housed, parameters), say::remedy()))
}

/// The faults of a yard file, those of shut hives with the air in them.
#[must_use]
pub fn told(mut faults: Faults, parameters: &Parameters) -> Faults {
    for sealed in &faults.sealed {
        let housed =
            Housed { colony: sealed.colony.clone(), hive: sealed.hive.clone(), neighbour: None, stays: Vec::new() };
        let own = |field: &str| field.starts_with("hive ");
        if let Some(one) = faults.faults.iter_mut().find(|one| one.line == sealed.line && own(&one.field)) {
            one.problem = fault::both(&one.problem, air(&housed, parameters));
        }
    }
    faults
}

/// Why a hive that is shut will not do.
fn why(housed: &Housed, parameters: &Parameters) -> Message {
    say::why(air(housed, parameters))
}

/// The air round the bees of a shut hive.
fn air(housed: &Housed, parameters: &Parameters) -> Message {
    let percent = carbon_dioxide_percent(housed, parameters);
    if has_mesh(&housed.hive) {
        return say::mesh(percent);
    }
    say::foul(OUTDOORS_PERCENT, percent)
}

fn has_mesh(hive: &Hive) -> bool {
    hive.openings.iter().any(|opening| opening.kind == OpeningKind::Mesh)
}

/// Carbon dioxide round the bees once the hive has settled, per cent by volume.
fn carbon_dioxide_percent(housed: &Housed, parameters: &Parameters) -> f64 {
    let question = SteadyQuestion {
        outside: AIR,
        humidity: HUMIDITY,
        wind: MetrePerSecond::new(0.0),
        bees: housed.colony.bees.p50,
        brood_cells: 0.0,
        heater: None,
        start: StartFrom::Cold,
    };
    100.0 * steady(housed, parameters, question).carbon_dioxide.get()
}
