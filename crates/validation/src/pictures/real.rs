//! Losses and food of real yards beside what is computed for yards like them.

use snowhum_calibration::study::Kind;

use crate::picture::{Axis, Face, Fill, Mark, Picture, Sample, Sheet};
use crate::real_winters::{RealRow, RealWinters, shown};

/// Losses by size, food and mites, and food by month.
pub(super) fn pictures(real: &RealWinters) -> Vec<Picture> {
    let losses = Face {
        file: "real-losses.svg",
        title: "Colonies lost in real yards, by bees, food, mites and district".to_owned(),
        description: String::new(),
    };
    let food = Face {
        file: "real-food.svg",
        title: "Food eaten in a day by real hives, by month".to_owned(),
        description: String::new(),
    };
    let axis = |top, step| Axis::numbers("lost of 100", 0, top, step);
    vec![
        picture(real, losses, Kind::Loss, 100.0, axis(100, 20)),
        picture(real, food, Kind::Food, 1.0, Axis::numbers("g a day", 0, 160, 20)),
    ]
}

fn picture(real: &RealWinters, face: Face, kind: Kind, unit: f64, axis: Axis) -> Picture {
    let rows: Vec<&RealRow> = real.rows.iter().filter(|row| row.row.kind == kind).collect();
    let words = |(at, row): (usize, &&RealRow)| {
        format!("{}: {}, {}, found {}", at + 1, row.study, row.row.what, shown(kind, row.row.observed()))
    };
    let listed: Vec<String> = rows.iter().enumerate().map(words).collect();
    let description = format!(
        "Computed ranges of nine in ten (bars) and middles (discs), found (squares), from left to right: {}.",
        listed.join("; ")
    );
    let numbers: Vec<String> = (1..=rows.len()).map(|at| at.to_string()).collect();
    let names = Axis::names("row, in the order of the words below", numbers.iter().map(String::as_str));
    let mut sheet = Sheet::new(Face { description, ..face }, 52.0, names, axis);
    for (at, row) in rows.iter().enumerate() {
        let ([low, middle, high], x) = (row.computed.map(|value| unit * value), at as f64);
        sheet = sheet.block([x - 0.3, x + 0.3], [low, high.min(unit * 160.0)], Fill::Light);
        sheet = sheet.mark((x + 0.1, middle), Mark::Disc).mark((x - 0.1, unit * row.row.observed()), Mark::Square);
    }
    sheet
        .key(&[
            (Sample::Area(Fill::Light), "computed, nine in ten"),
            (Sample::Mark(Mark::Square), "found"),
            (Sample::Mark(Mark::Disc), "computed, middle"),
        ])
        .finished()
}
