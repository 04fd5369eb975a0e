//! Food, deaths and numbers over whole winters.

use snowhum_apiary::Colony;
use snowhum_testkit::colony;
use snowhum_winter::{Daily, Parameters};

use crate::check::{Band, Basis, Check, Claim, Class};
use crate::winters::{Books, DAYS, DECEMBER_TO_JANUARY, FEBRUARY_TO_APRIL, NOVEMBER_TO_JANUARY, Winter};

/// Yearly mean of a middling and of a mild place, °C.
const MIDDLING: f64 = 3.5;
const MILD: f64 = 6.0;

/// Food, size, bees and loss.
pub(crate) fn checks(parameters: &Parameters) -> Vec<Check> {
    let strong = Winter::fed(parameters, 18_000.0, MIDDLING);
    let broodless = Winter::of(&rearing_none(parameters), well_fed(), MIDDLING);
    [books(parameters), food(&strong), size(parameters), bees(parameters, &broodless)].concat()
}

fn claim(id: &'static str, class: Class, quantity: &'static str, source: &'static str) -> Claim {
    Claim { id, class, quantity, source, status: Basis::Published }
}

/// Two months' sums of a winter without brood; the hourly books are kept in the winter crate's own tests.
fn books(parameters: &Parameters) -> Vec<Check> {
    let Books { eaten, gone, heat } = Books::of(&rearing_none(parameters), &well_fed(), MIDDLING, &DECEMBER_TO_JANUARY);
    let claim = |id, quantity| Claim {
        status: Basis::Derived,
        ..claim(id, Class::Exact, quantity, "conservation; 12.72 MJ/kg of USDA FoodData Central")
    };
    vec![
        claim("A-season-1", "heat given off in December and January over that of the food eaten, no brood, as a part")
            .differs_at_most(1e-5, "of it", (heat / (12.72e6 * eaten) - 1.0).abs()),
        claim("A-season-2", "food gone from the combs over that eaten, as a part").differs_at_most(
            1e-5,
            "of it",
            (gone / eaten - 1.0).abs(),
        ),
    ]
}

fn food(strong: &Winter) -> Vec<Check> {
    let grams = |days| 1e3 * strong.mean(Daily::Eaten, days);
    let (early, late) = (grams(NOVEMBER_TO_JANUARY), grams(FEBRUARY_TO_APRIL));
    vec![
        claim(
            "B-season-1",
            Class::Shape,
            "food a day, February to April over November to January",
            "Seeley 2019, The Lives of Bees: scales steepen in mid-February in each of three winters",
        )
        .holds("more", format!("{late:.0} against {early:.0} g"), late > early),
        claim(
            "F-season-1",
            Class::Further,
            "food of 18,000 bees a day, November to January (33 to 50 g within 20 %)",
            "two hive scales, Czechia 2017-18, a weak source",
        )
        .within(Band::new(26.4, 60.0, "g", 0), early),
    ]
}

fn size(parameters: &Parameters) -> Vec<Check> {
    const SIZES: [f64; 3] = [6_000.0, 18_000.0, 30_000.0];
    let winters = SIZES.map(|bees| Winter::fed(parameters, bees, MILD));
    let kept = [0, 1, 2].map(|at: usize| winters[at].on(Daily::Bees, 90) / winters[at].on(Daily::Bees, 5));
    let per_bee = [0, 1, 2].map(|at: usize| {
        1e6 * winters[at].sum(Daily::Eaten, NOVEMBER_TO_JANUARY) / winters[at].sum(Daily::Bees, NOVEMBER_TO_JANUARY)
    });
    let shown = |values: [f64; 3], decimals: usize| values.map(|value| format!("{value:.decimals$}")).join(", ");
    let spread = kept.iter().fold(0.0, |most: f64, share| most.max((share / kept[1] - 1.0).abs()));
    vec![
        claim(
            "B-season-2",
            Class::Shape,
            "share of 6,000, 18,000 and 30,000 healthy bees left from 6 October to 30 December",
            "Free and Racey 1968, Entomol. exp. appl.; Harbo 1983, Environ. Entomol. 12:1559",
        )
        .holds("the same within 8 %", shown(kept, 2), spread < 0.08),
        claim(
            "B-season-3",
            Class::Shape,
            "food a bee and day of the same, November to January",
            "Free and Racey 1968, Entomol. exp. appl.",
        )
        .holds(
            "falls with size",
            format!("{} mg", shown(per_bee, 1)),
            per_bee[0] > per_bee[1] && per_bee[1] > per_bee[2],
        ),
    ]
}

fn bees(parameters: &Parameters, broodless: &Winter) -> Vec<Check> {
    let strong = Winter::fed(parameters, 22_000.0, MIDDLING);
    let midwinter = strong.mean(Daily::Died, DECEMBER_TO_JANUARY);
    vec![
        Claim { status: Basis::CommonPractice, ..claim("C-season-1", Class::Numbers, "fewest bees of a long winter begun with 22,000", "common practice in long winters") }
            .within(Band::new(5_000.0, 10_000.0, "bees", 0), strong.least(Daily::Bees, 100..DAYS)),
        Claim { status: Basis::Derived, ..claim("C-season-2", Class::Numbers, "deaths a day of that colony, December and January", "30,000 in October to 15,000 in February gives over 100 a day; 150 to 200 is the average from late summer to the low") }
            .within(Band::new(30.0, 120.0, "bees", 0), midwinter),
        claim("C-season-3", Class::Numbers, "days from 20 September until half of the winter bees are dead, no brood reared", "Minaud et al. 2024, Heliyon 10:e34390, as extracted: 130 d; Harris 2009, J. Apic. Res.: oldest 192 d")
            .within(Band::new(110.0, 170.0, "d", 0), median_life(broodless))
            .because("fitted together with what colonies keep to spring, which asks for longer lives: three in ten lost by early March, \
                a third of 22,000 left in late April (class D)"),
    ]
}

/// Rearing and summer bees switched off, so that only winter bees are counted.
fn rearing_none(parameters: &Parameters) -> Parameters {
    let mut broodless = parameters.clone();
    broodless.laying_peak.fix(0.0);
    broodless.summer_bee_share.fix(0.0);
    broodless
}

fn well_fed() -> Colony {
    colony(18_000.0, 30.0)
}

fn median_life(broodless: &Winter) -> f64 {
    /// Days from 20 September to the first day of a run.
    const BEFORE: f64 = 11.0;
    let half = 0.5 * broodless.on(Daily::Bees, 0);
    (0..DAYS).find(|day| broodless.on(Daily::Bees, *day) < half).map_or(f64::NAN, |day| day as f64 + BEFORE)
}
