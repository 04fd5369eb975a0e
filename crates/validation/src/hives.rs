//! Hives, colonies and questions that several groups ask.

use snowhum_apiary::Hive;
use snowhum_testkit::{Dress, colony, langstroth, own_hive};
use snowhum_units::{Fraction, Kelvin, Metre, MetrePerSecond};
use snowhum_winter::{Housed, Parameters, StartFrom, SteadyAnswer, SteadyQuestion, steady};

/// Bees of a 2 kg cluster: 8,800 a kilogram (Oliver, American Bee Journal, August 2016).
pub(crate) const TWO_KILOGRAMS: f64 = 17_700.0;

/// Two bare deeps with a foam lid, as many are wintered.
pub(crate) const FOAM_LID: Dress = Dress { lid_foam_mm: 50.0, ..Dress::BARE };

/// A 2 kg broodless colony on a damp winter day of little wind.
pub(crate) fn question(outside_c: f64) -> SteadyQuestion {
    SteadyQuestion {
        outside: Kelvin::from_celsius(outside_c),
        humidity: Fraction::new(0.85),
        wind: MetrePerSecond::new(1.0),
        bees: TWO_KILOGRAMS,
        brood_cells: 0.0,
        heater: None,
        start: StartFrom::Cold,
    }
}

/// The answer for a ten-frame Langstroth dressed so.
pub(crate) fn ask(parameters: &Parameters, dress: Dress, question: SteadyQuestion) -> SteadyAnswer {
    ask_of(parameters, langstroth(dress), question)
}

/// The answer for any hive.
pub(crate) fn ask_of(parameters: &Parameters, hive: Hive, question: SteadyQuestion) -> SteadyAnswer {
    let housed = Housed { colony: colony(question.bees, 20.0), hive, neighbour: None, stays: Vec::new() };
    steady(&housed, parameters, question)
}

/// A hollow in a tree: 40 L, tall and narrow, wood of `wall_mm` all round and over it, one opening at the bottom.
pub(crate) fn tree_cavity(wall_mm: f64) -> Hive {
    let bare = Dress { boxes: 4, lid_foam_mm: 0.0, wall_foam_mm: 0.0, hole_cm2: 0.0 };
    let mut hive = own_hive(bare, 0.20, 0.20, 0.25, 6);
    let thick = Metre::new(wall_mm / 1_000.0);
    for part in &mut hive.boxes {
        part.wall.thickness = thick;
    }
    let wood = hive.boxes.first().map(|part| part.wall.clone());
    hive.lid = wood.into_iter().collect();
    hive
}
