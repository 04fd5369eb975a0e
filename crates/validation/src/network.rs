//! Eight linked bodies in time, against a circuit simulator and an ODE solver.

use snowhum_physics::network::{Conditions, End, Network, NetworkError, Stepper};
use snowhum_units::{JoulePerKelvin, Kelvin, Second, Watt, WattPerKelvin};

use crate::check::{Basis, Check, Claim, Class};
use crate::table::{Row, Table, largest};

const NODES: [&str; 8] = ["cluster", "comb", "wN", "wS", "wE", "wW", "ceil", "floor"];
const HOUR_S: f64 = 3_600.0;

/// One of the three reference runs, from the steady state at -10 °C and 12 W.
struct Case {
    name: &'static str,
    heat_w: f64,
    outside_c: fn(f64) -> f64,
}

const CASES: [Case; 3] = [
    Case { name: "ramp", heat_w: 12.0, outside_c: |t_s| -10.0 - 15.0 * (t_s / 600.0).clamp(0.0, 1.0) },
    Case { name: "sine", heat_w: 12.0, outside_c: |t_s| -10.0 + 8.0 * (std::f64::consts::TAU * t_s / 86_400.0).sin() },
    Case { name: "cooldown", heat_w: 0.0, outside_c: |_| -10.0 },
];

/// The steady state and three transients.
pub(crate) fn checks() -> Vec<Check> {
    let claim = |id, quantity| Claim {
        id,
        class: Class::Exact,
        quantity,
        source: "ngspice 39.3 and scipy 1.17.1 (Radau, matrix exponential)",
        status: Basis::OutsideTool,
    };
    let of_all = |run: fn(&Case, &Table) -> Result<Vec<f64>, NetworkError>| {
        let table = Table::new(include_str!("../data/network_reference.csv"));
        let errors: Result<Vec<_>, _> = CASES.iter().map(|case| run(case, &table)).collect();
        errors.map_or_else(|_| vec![f64::NAN], |errors| errors.concat())
    };
    let hourly = of_all(hourly_errors);
    let rms = (hourly.iter().map(|error_k| error_k * error_k).sum::<f64>() / hourly.len() as f64).sqrt();
    vec![
        claim("A-net-1", "steady state of an eight-node hive").differs_at_most(1e-6, "K", steady().unwrap_or(f64::NAN)),
        claim("A-net-2", "cold front, days and nights, cool-down; second-order step of 60 s").differs_at_most(
            1e-3,
            "K",
            largest(of_all(minute_errors)),
        ),
        claim("A-net-3", "the same with plain backward Euler at one hour; root mean square")
            .differs_at_most(0.4, "K", rms)
            .because("what an hourly step costs at worst: weather as hourly means, compared at the full hours. The winter step moves \
                 surfaces exponentially and is held to an outside solver in the winter crate's own tests"),
    ]
}

/// The network, its ends in the order of [`NODES`], and the outside.
fn hive() -> Result<(Network, End), NetworkError> {
    let table = Table::new(include_str!("../data/network_params.csv"));
    let mut network = Network::default();
    for name in NODES {
        let capacity = table.rows_where("kind", "C").find(|row| row.text("a") == name);
        network.node(JoulePerKelvin::new(capacity.map_or(f64::NAN, |row| row.number("value"))));
    }
    let outside = network.boundary();
    let end = |name| NODES.iter().position(|node| *node == name).map_or(outside, End::Node);
    for row in table.rows_where("kind", "R") {
        network.link(end(row.text("a")), end(row.text("b")), WattPerKelvin::new(1.0 / row.number("value")))?;
    }
    Ok((network, outside))
}

fn conditions(outside_c: f64, cluster_w: f64) -> Conditions {
    let mut heat = vec![Watt::ZERO; NODES.len()];
    if let Some(cluster) = heat.first_mut() {
        *cluster = Watt::new(cluster_w);
    }
    Conditions { heat, boundary: vec![Kelvin::from_celsius(outside_c)] }
}

fn errors(got: &[Kelvin], row: &Row<'_>) -> Vec<f64> {
    NODES.iter().zip(got).map(|(name, got)| got.celsius() - row.number(name)).collect()
}

fn steady() -> Result<f64, NetworkError> {
    let table = Table::new(include_str!("../data/network_reference.csv"));
    let got = hive()?.0.steady(&conditions(-10.0, 12.0))?;
    Ok(largest(table.rows_where("case", "steady").flat_map(|row| errors(&got, &row))))
}

/// Rows of a case after its start; both tools.
fn rows<'a>(table: &'a Table, case: &'a Case) -> impl Iterator<Item = Row<'a>> {
    table.rows_where("case", case.name).filter(|row| row.number("t_s") > 0.0)
}

fn minute_errors(case: &Case, table: &Table) -> Result<Vec<f64>, NetworkError> {
    const STEP_S: f64 = 60.0;
    let (network, _) = hive()?;
    let mut now = network.steady(&conditions(-10.0, 12.0))?;
    let stepper = Stepper::new(&network, Second::new(STEP_S))?;
    let at = |t_s: f64| conditions((case.outside_c)(t_s), case.heat_w);
    let (mut t_s, mut all) = (0.0, Vec::new());
    for row in rows(table, case) {
        while t_s < row.number("t_s") {
            stepper.step(&mut now, &at(t_s), &at(t_s + STEP_S))?;
            t_s += STEP_S;
        }
        all.extend(errors(&now, &row));
    }
    Ok(all)
}

/// A step of backward Euler is a steady state with every body tied to its own past by its capacity over the step.
fn hourly_errors(case: &Case, table: &Table) -> Result<Vec<f64>, NetworkError> {
    let (network, _) = hive()?;
    let mut now = network.steady(&conditions(-10.0, 12.0))?;
    let mut tied = network;
    let params = Table::new(include_str!("../data/network_params.csv"));
    for (node, name) in NODES.iter().enumerate() {
        let capacity = params.rows_where("kind", "C").find(|row| row.text("a") == *name);
        let past = tied.boundary();
        let conductance = capacity.map_or(f64::NAN, |row| row.number("value")) / HOUR_S;
        tied.link(End::Node(node), past, WattPerKelvin::new(conductance))?;
    }
    let (mut t_s, mut all) = (0.0, Vec::new());
    for row in rows(table, case) {
        while t_s < row.number("t_s") {
            let mut acting = conditions(hourly_mean(case, t_s), case.heat_w);
            acting.boundary.extend(&now);
            now = tied.steady(&acting)?;
            t_s += HOUR_S;
        }
        all.extend(errors(&now, &row));
    }
    Ok(all)
}

fn hourly_mean(case: &Case, from_s: f64) -> f64 {
    (0..60).map(|minute| (case.outside_c)(from_s + 60.0 * (f64::from(minute) + 0.5))).sum::<f64>() / 60.0
}
