//! Colonies lost over whole winters, and to what.

use snowhum_apiary::{Colony, Mites};
use snowhum_say::Tongue;
use snowhum_testkit::colony;
use snowhum_winter::{Cause, Parameters};

use crate::check::{Band, Basis, Check, Claim, Class};
use crate::winters::Winter;

/// Yearly mean of the place, °C.
const MIDDLING: f64 = 5.0;

/// Losses with mites uncounted and counted.
pub(crate) fn checks(parameters: &Parameters) -> Vec<Check> {
    let claim = |id, class, quantity, source| Claim { id, class, quantity, source, status: Basis::Published };
    let uncounted = Winter::of(parameters, infested(Mites::NotCounted), MIDDLING);
    let lost = |per_hundred: u32| {
        let on = jiff::civil::date(2025, 9, 8);
        let mites = Mites::Counted { found: 3 * per_hundred, bees: 300, on };
        100.0 * Winter::of(parameters, infested(mites), MIDDLING).lost()
    };
    let causes = Cause::ALL.map(|cause| (cause, 100.0 * uncounted.ended(cause)));
    let most = causes.iter().copied().fold((Cause::Other, 0.0), |a, b| if b.1 > a.1 { b } else { a });
    let gotland = "Fries et al. 2006, Apidologie 37:564, printed as %, read as mites a bee";
    vec![
        claim(
            "B-loss-1",
            Class::Shape,
            "first cause of loss among fed colonies whose mites nobody counted",
            "Guzman-Novoa et al. 2010, Apidologie 41:443: mites in over 85 % of deaths",
        )
        .holds(
            "mites",
            format!("{}, {:.0} of 100 colonies", Tongue::BRITISH.say(&most.0.words()), most.1),
            most.0 == Cause::Mites,
        ),
        claim("F-loss-2", Class::Further, "loss at 47 mites on 100 bees in September (57 and 76 % lost)", gotland)
            .within(Band::new(57.0, 100.0, "of 100", 0), lost(47)),
        claim("F-loss-3", Class::Further, "loss at 20 mites on 100 bees (13 and 19 % lost)", gotland)
            .within(Band::new(13.0, 19.0, "of 100", 0), lost(20))
            .because(
                "measured on survivors of years without treatment, counted in late autumn; the model is fitted to \
                ordinary stock, on which such numbers kill",
            ),
    ]
}

/// A middling colony with plenty of food.
fn infested(mites: Mites) -> Colony {
    Colony { mites, ..colony(14_000.0, 26.0) }
}
