//! A tree cavity and a thin wooden hive in hard frost.

use snowhum_apiary::Hive;
use snowhum_testkit::{Dress, langstroth};
use snowhum_units::{MetrePerSecond, Watt};
use snowhum_winter::{Parameters, SteadyAnswer, SteadyQuestion};

use crate::check::{Band, Basis, Check, Claim, Class};
use crate::hives::{ask_of, question, tree_cavity};

/// Thickness of the wood round a nest in a tree, mm.
const WOOD_MM: f64 = 150.0;

/// Air below and above at -21 °C, and loss.
pub(crate) fn checks(parameters: &Parameters) -> Vec<Check> {
    let tree = frosty(parameters, tree_cavity(WOOD_MM));
    let hive = frosty(parameters, langstroth(Dress { boxes: 2, hole_cm2: 0.0, ..Dress::BARE }));
    let source = "Seeley 2019, The Lives of Bees, fig. 9.4";
    let claim = |id, quantity| Claim { id, class: Class::Numbers, quantity, source, status: Basis::Published };
    let over = |answer: &SteadyAnswer, air: fn(&SteadyAnswer) -> f64| air(answer) + 21.0;
    let top = over(&tree, |answer| answer.warm_zone.celsius());
    let floor = over(&tree, |answer| answer.floor_zone.celsius());
    let thin_top = over(&hive, |answer| answer.warm_zone.celsius());
    let thin_floor = over(&hive, |answer| answer.floor_zone.celsius());
    vec![
        claim("C-cavity-1", "air at the floor over -21 °C outdoors, tree-like cavity with 150 mm of wood").within(Band::new(0.0, 3.0, "K", 1), floor),
        claim("C-cavity-2", "air above over outdoors, the same").within(Band::new(10.0, 25.0, "K", 1), top),
        Claim { source: "no figure for a hive of this kind was found; set beside the tree's", ..claim("C-cavity-3", "the same two in two bare deeps of 19 mm pine") }.holds(
            "less over outdoors above than in the tree",
            format!("floor {thin_floor:.1} K, above {thin_top:.1} K"),
            thin_top < top,
        ),
        conductance(parameters),
    ]
}

/// Still air, 2 kg of bees, no brood.
fn frosty(parameters: &Parameters, hive: Hive) -> SteadyAnswer {
    ask_of(parameters, hive, SteadyQuestion { wind: MetrePerSecond::ZERO, ..question(-21.0) })
}

fn conductance(parameters: &Parameters) -> Check {
    let loss = |hive| {
        let heater = SteadyQuestion { heater: Some(Watt::new(10.0)), ..question(-10.0) };
        ask_of(parameters, hive, heater).heat_loss.get()
    };
    let (tree, hive) = (loss(tree_cavity(WOOD_MM)), loss(langstroth(Dress { boxes: 1, hole_cm2: 0.0, ..Dress::BARE })));
    Claim {
        id: "C-cavity-4",
        class: Class::Numbers,
        quantity: "loss of a thin wooden hive over that of the tree cavity",
        source: "Mitchell 2016, Int. J. Biometeorol., abstract",
        status: Basis::Published,
    }
    .holds("4 to 7 times", format!("{:.1} times ({hive:.2} and {tree:.2} W/K)", hive / tree), (4.0..=7.0).contains(&(hive / tree)))
}
