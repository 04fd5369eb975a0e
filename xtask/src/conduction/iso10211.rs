//! The solver held to ISO 10211:2017 annex C, cases 1 and 2, and to an exact corner.
//!
//! The standard asks for 0.1 K and 0.1 W/m.

use super::{Air, Axis, Fill, Rectangle, Section};
use std::f64::consts::{LN_2, PI};

const HELD_K: f64 = 0.1;
const HELD_W_PER_M: f64 = 0.1;

/// The 28 temperatures of case 1: rows from the hot face, columns from the cold side to the axis. Exact values of the
/// Fourier series below to four places; rounded to one place they are those the standard prints (print from memory).
#[rustfmt::skip]
const CASE_1: [[f64; 4]; 7] = [
    [9.6582, 13.3791, 14.7289, 15.0854],
    [5.2517, 8.6406, 10.3156, 10.8106],
    [3.1887, 5.6090, 7.0142, 7.4651],
    [2.0142, 3.6406, 4.6582, 5.0000],
    [1.2625, 2.3086, 2.9858, 3.2185],
    [0.7396, 1.3594, 1.7668, 1.9083],
    [0.3418, 0.6296, 0.8199, 0.8863],
];

/// Case 2: point, x and y in mm, temperature in C, as published with the standard.
const CASE_2: [(&str, f64, f64, f64); 9] = [
    ("A", 0.0, 47.5, 7.1),
    ("B", 500.0, 47.5, 0.8),
    ("C", 0.0, 41.5, 7.9),
    ("D", 15.0, 41.5, 6.3),
    ("E", 500.0, 41.5, 0.8),
    ("F", 0.0, 36.5, 16.4),
    ("G", 15.0, 36.5, 16.3),
    ("H", 0.0, 0.0, 16.8),
    ("I", 500.0, 0.0, 18.3),
];
/// Case 2: heat flow, W/m, as published with the standard.
const CASE_2_HEAT: f64 = 9.5;

fn air(temperature_c: f64, film: f64) -> Air {
    Air { temperature_c, level_film: film, upright_film: film }
}

/// Hot face on top at 20 C, the other faces of a square column at 0 C, as a Fourier series; side 1.
fn case_1_exact(x: f64, from_hot: f64) -> f64 {
    (0..200)
        .map(|term| (2 * term + 1) as f64 * PI)
        .map(|a| 80.0 / a * (a * x).sin() * (a * (1.0 - from_hot)).sinh() / a.sinh())
        .take_while(|term| term.is_finite())
        .sum()
}

#[test]
fn case_1_half_of_a_square_column() {
    // A film too thin to matter holds the faces at their temperature.
    let film = 1e-7;
    let x = Axis::from(-0.01).even(0.0, 0.01).even(0.5, 1.0 / 64.0);
    let y = Axis::from(-0.01).even(0.0, 0.01).even(1.0, 1.0 / 64.0).even(1.01, 0.01);
    let section = Section::new(x, y, vec![air(0.0, film), air(20.0, film)], Fill::Air(0))
        .draw(Rectangle { x: [-0.01, 0.5], y: [1.0, 1.01] }, Fill::Air(1))
        .draw(Rectangle { x: [0.0, 0.5], y: [0.0, 1.0] }, Fill::Solid(1.0));
    let field = section.solve().unwrap();
    for (row, temperatures) in CASE_1.iter().enumerate() {
        for (column, listed) in temperatures.iter().enumerate() {
            let (across, down) = ((column + 1) as f64 / 8.0, (row + 1) as f64 / 8.0);
            let found = field.at(&section, across, 1.0 - down).unwrap();
            assert!((case_1_exact(across, down) - listed).abs() < 6e-5, "row {row} column {column}");
            assert!((found - listed).abs() < HELD_K / 10.0, "row {row} column {column}: {found} against {listed}");
        }
    }
}

fn case_2() -> Section {
    let millimetres = |from: f64, to: f64| [from / 1e3, to / 1e3];
    let draw = |section: Section, x: [f64; 2], y: [f64; 2], conductivity: f64| {
        section.draw(Rectangle { x: millimetres(x[0], x[1]), y: millimetres(y[0], y[1]) }, Fill::Solid(conductivity))
    };
    let x = Axis::from(0.0).even(0.0015, 0.0004).even(0.015, 0.0008).growing(0.5, 0.0008, 1.05);
    let y = [(0.0, 0.01), (0.0015, 0.0004), (0.035, 0.0012), (0.0365, 0.0004), (0.0415, 0.0005), (0.0475, 0.0006)]
        .into_iter()
        .fold(Axis::from(-0.01), |axis, (to, widest)| axis.even(to, widest))
        .even(0.0575, 0.01);
    let blank = Section::new(x, y, vec![air(0.0, 0.06), air(20.0, 0.11)], Fill::Air(0));
    let blank = blank.draw(Rectangle { x: [0.0, 0.5], y: [-0.01, 0.0] }, Fill::Air(1));
    let insulated = draw(blank, [0.0, 500.0], [0.0, 41.5], 0.029);
    let topped = draw(insulated, [0.0, 500.0], [41.5, 47.5], 1.15);
    let with_wood = draw(topped, [0.0, 15.0], [36.5, 41.5], 0.12);
    let upper = draw(with_wood, [0.0, 15.0], [35.0, 36.5], 230.0);
    let web = draw(upper, [0.0, 1.5], [0.0, 36.5], 230.0);
    draw(web, [0.0, 500.0], [0.0, 1.5], 230.0)
}

#[test]
fn case_2_metal_through_insulation() {
    let section = case_2();
    let field = section.solve().unwrap();
    for (point, x_mm, y_mm, published) in CASE_2 {
        let found = field.at(&section, x_mm / 1e3, y_mm / 1e3).unwrap();
        assert!((found - published).abs() <= HELD_K, "{point}: {found} against {published}");
    }
    let (given, taken) = (field.heat_from(1), -field.heat_from(0));
    assert!((given - CASE_2_HEAT).abs() <= HELD_W_PER_M, "{given} W/m");
    assert!((given - taken).abs() < 1e-6 * given, "given {given} and taken {taken} W/m differ");
    assert!(field.crossings() < 20_000);
}

/// A right-angled corner of one material with both faces held, by its conformal map: it passes 1 - 2 ln 2 / pi
/// = 0.5587 of its conductivity more than its inner faces alone would (the shape factor usually rounded to 0.54-0.56).
#[test]
fn a_bare_corner_has_the_exact_shape_factor() {
    let (thick, length, film) = (1.0, 6.0, 1e-6);
    let axis = || Axis::from(-1.1).even(-1.0, 0.1).even(0.0, 0.02).growing(length, 0.02, 1.08);
    let field = Section::new(axis(), axis(), vec![air(0.0, film), air(1.0, film)], Fill::Air(0))
        .draw(Rectangle { x: [-thick, length], y: [-thick, length] }, Fill::Solid(1.0))
        .draw(Rectangle { x: [0.0, length], y: [0.0, length] }, Fill::Air(1))
        .solve()
        .unwrap();
    let beyond_faces = field.heat_from(1) - 2.0 * length / thick;
    let exact = 1.0 - 2.0 * LN_2 / PI;
    assert!((beyond_faces - exact).abs() < 0.01, "{beyond_faces} against {exact}");
}
