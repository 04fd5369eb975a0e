use crate::table::{Row, Table, near};
use snowhum_physics::network::{Conditions, End, Network, NetworkError, Stepper};
use snowhum_units::{JoulePerKelvin, Kelvin, Second, Watt, WattPerKelvin};

const NODES: [&str; 8] = ["cluster", "comb", "wN", "wS", "wE", "wW", "ceil", "floor"];
const STEP_S: f64 = 60.0;

/// The eight-node hive, its ends in the order of [`NODES`].
fn hive() -> Result<Network, NetworkError> {
    let table = Table::new(include_str!("../data/network_params.csv"));
    let mut network = Network::default();
    for name in NODES {
        let capacity = table.rows().find(|row| row.text("kind") == "C" && row.text("a") == name);
        network.node(JoulePerKelvin::new(capacity.map_or(f64::NAN, |row| row.number("value"))));
    }
    let outside = network.boundary();
    let end = |name| NODES.iter().position(|node| *node == name).map_or(outside, End::Node);
    for row in table.rows().filter(|row| row.text("kind") == "R") {
        network.link(end(row.text("a")), end(row.text("b")), WattPerKelvin::new(1.0 / row.number("value")))?;
    }
    Ok(network)
}

fn conditions(outside_c: f64, cluster_w: f64) -> Conditions {
    let mut heat = vec![Watt::ZERO; NODES.len()];
    heat[0] = Watt::new(cluster_w);
    Conditions { heat, boundary: vec![Kelvin::from_celsius(outside_c)] }
}

fn compare(what: &str, got: &[Kelvin], row: &Row<'_>, tolerance_k: f64) {
    for (name, got) in NODES.iter().zip(got) {
        near(&format!("{what} {name} at {} s", row.text("t_s")), got.celsius(), row.number(name), tolerance_k);
    }
}

#[test]
fn the_steady_state_is_that_of_two_solvers() -> Result<(), NetworkError> {
    let table = Table::new(include_str!("../data/network_reference.csv"));
    let got = hive()?.steady(&conditions(-10.0, 12.0))?;
    let rows: Vec<_> = table.rows().filter(|row| row.text("case") == "steady").collect();
    assert_eq!(rows.len(), 2);
    rows.iter().for_each(|row| compare("steady", &got, row, 1e-6));
    let outside_c = -10.0;
    near("W/K by the comb", 12.0 / (got[1].celsius() - outside_c), 2.010352, 1e-6);
    Ok(())
}

/// Runs a case from the steady state at -10 °C and compares every row of it; the largest difference from scipy.
fn transient(case: &str, step_s: f64, cluster_w: f64, outside_c: fn(f64) -> f64) -> Result<f64, NetworkError> {
    let table = Table::new(include_str!("../data/network_reference.csv"));
    let network = hive()?;
    let mut now = network.steady(&conditions(-10.0, 12.0))?;
    let stepper = Stepper::new(&network, Second::new(step_s))?;
    let (mut steps, mut worst_k) = (0.0, 0.0f64);
    for row in table.rows().filter(|row| row.text("case") == case) {
        let first_spice_step = row.text("tool").starts_with("ngspice") && row.text("t_s") == "0";
        while steps * step_s < row.number("t_s") {
            let (from, to) = (outside_c(steps * step_s), outside_c((steps + 1.0) * step_s));
            stepper.step(&mut now, &conditions(from, cluster_w), &conditions(to, cluster_w))?;
            steps += 1.0;
        }
        if first_spice_step {
            continue;
        }
        for (name, got) in NODES.iter().zip(&now) {
            worst_k = worst_k.max((got.celsius() - row.number(name)).abs());
        }
        if step_s <= STEP_S {
            compare(case, &now, &row, 1e-3);
        }
    }
    assert!(steps * step_s >= 259_200.0, "the table has three days");
    Ok(worst_k)
}

fn ramp(t_s: f64) -> f64 {
    -10.0 - 15.0 * (t_s / 600.0).clamp(0.0, 1.0)
}

fn sine(t_s: f64) -> f64 {
    -10.0 + 8.0 * (std::f64::consts::TAU * t_s / 86_400.0).sin()
}

#[test]
fn a_cold_front_is_followed_to_a_thousandth_of_a_kelvin() -> Result<(), NetworkError> {
    println!("ramp {:.1e} K", transient("ramp", STEP_S, 12.0, ramp)?);
    Ok(())
}

#[test]
fn days_and_nights_are_followed_to_a_thousandth_of_a_kelvin() -> Result<(), NetworkError> {
    println!("sine {:.1e} K", transient("sine", STEP_S, 12.0, sine)?);
    Ok(())
}

#[test]
fn a_hive_that_dies_cools_as_the_matrix_exponential_says() -> Result<(), NetworkError> {
    println!("cooldown {:.1e} K", transient("cooldown", STEP_S, 0.0, |_| -10.0)?);
    Ok(())
}

/// Four times the step, at least twelve times the error (sixteen for a clean second order).
#[test]
fn the_step_is_of_second_order() -> Result<(), NetworkError> {
    let end = |step_s: f64| -> Result<f64, NetworkError> {
        let mut network = Network::default();
        let body = network.node(JoulePerKelvin::new(5000.0));
        let outside = network.boundary();
        network.link(body, outside, WattPerKelvin::new(2.0))?;
        let night = Conditions { heat: vec![Watt::ZERO], boundary: vec![Kelvin::from_celsius(0.0)] };
        let mut now = [Kelvin::from_celsius(20.0)];
        let stepper = Stepper::new(&network, Second::new(step_s))?;
        for _ in 0..(4800.0 / step_s) as usize {
            stepper.step(&mut now, &night, &night)?;
        }
        Ok((now[0].celsius() - 20.0 * (-4800.0f64 * 2.0 / 5000.0).exp()).abs())
    };
    let (coarse_k, fine_k) = (end(480.0)?, end(120.0)?);
    assert!(coarse_k / fine_k > 12.0 && coarse_k / fine_k < 20.0, "{coarse_k} {fine_k}");
    Ok(())
}

/// A body without capacity is at once where its neighbours hold it.
#[test]
fn a_body_without_capacity_follows_at_once() -> Result<(), NetworkError> {
    let mut network = Network::default();
    let face = network.node(JoulePerKelvin::ZERO);
    let (inside, outside) = (network.boundary(), network.boundary());
    network.link(face, inside, WattPerKelvin::new(3.0))?;
    network.link(face, outside, WattPerKelvin::new(1.0))?;
    let boundary = vec![Kelvin::from_celsius(8.0), Kelvin::from_celsius(-8.0)];
    let held = Conditions { heat: vec![Watt::ZERO], boundary };
    let mut now = [Kelvin::from_celsius(99.0)];
    let stepper = Stepper::new(&network, Second::new(3600.0))?;
    stepper.step(&mut now, &held, &held)?;
    near("face", now[0].celsius(), 4.0, 1e-9);
    Ok(())
}

#[test]
fn faults_of_a_network_are_named() -> Result<(), NetworkError> {
    let mut network = Network::default();
    let node = network.node(JoulePerKelvin::new(1.0));
    let missing = network.link(node, End::Boundary(0), WattPerKelvin::new(1.0));
    assert_eq!(missing, Err(NetworkError::UnknownEnd(End::Boundary(0))));
    let negative = network.link(node, node, WattPerKelvin::new(-1.0));
    assert_eq!(negative, Err(NetworkError::NotPhysical("a conductance")));
    let lone = Conditions { heat: vec![Watt::ZERO], boundary: vec![] };
    assert_eq!(network.steady(&lone), Err(NetworkError::Floating(0)));
    assert!(matches!(
        network.steady(&Conditions::default()),
        Err(NetworkError::WrongCount { expected: 1, found: 0, .. })
    ));
    let backwards = Stepper::new(&network, Second::new(-1.0)).map(|_| ());
    assert_eq!(backwards, Err(NetworkError::NotPhysical("a time step")));
    let stepper = Stepper::new(&network, Second::new(1.0))?;
    assert!(stepper.step(&mut [], &lone, &lone).is_err());
    Ok(())
}
