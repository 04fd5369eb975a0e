//! Spread of made temperatures by month beside the climate they are made from.

use snowhum_units::Kelvin;
use snowhum_weather::statistics;

use crate::picture::{Axis, Face, Fill, Mark, Picture, Sample, Sheet};
use crate::weather::{MONTHS, MadeWinters};

/// One in twenty below, one in twenty above.
const SHARES: [f64; 2] = [0.05, 0.95];

pub(super) fn picture(made: &MadeWinters) -> Picture {
    let name = made.place.name;
    let face = Face {
        file: "made-months.svg",
        title: format!("Temperature of 200 made winters at {name}"),
        description: format!(
            "Daily means (light bars) and monthly means (dark bars) of 200 made winters at {name}, October to May, from one in \
             twenty below to one in twenty above; squares: the climate's monthly means that went in; discs: the means that came out."
        ),
    };
    let names = MONTHS.iter().map(|(month, _)| *month);
    let mut sheet = Sheet::new(face, 52.0, Axis::names("", names), Axis::numbers("°C", -20, 20, 5));
    for (at, (_, days)) in MONTHS.iter().enumerate() {
        let of_days: Vec<Kelvin> = made.days.iter().flat_map(|path| path[days.clone()].iter().copied()).collect();
        let of_months: Vec<Kelvin> = made.days.iter().filter_map(|path| mean(&path[days.clone()])).collect();
        let given_c = made.climate.temperature[(at + 9) % 12].celsius();
        let x = at as f64;
        sheet = sheet.block([x - 0.36, x + 0.36], spread(&of_days), Fill::Light).block(
            [x - 0.2, x + 0.2],
            spread(&of_months),
            Fill::Dark,
        );
        if let Some(mean) = mean(&of_months) {
            sheet = sheet.mark((x + 0.08, mean.celsius()), Mark::Disc);
        }
        sheet = sheet.mark((x - 0.08, given_c), Mark::Square);
    }
    sheet
        .key(&[
            (Sample::Area(Fill::Light), "daily means, nine in ten"),
            (Sample::Mark(Mark::Square), "monthly means of the climate, as given"),
            (Sample::Area(Fill::Dark), "monthly means, nine in ten"),
            (Sample::Mark(Mark::Disc), "means of what was made"),
        ])
        .finished()
}

fn mean(values: &[Kelvin]) -> Option<Kelvin> {
    statistics::mean_and_spread(values).map(|(mean, _)| mean)
}

fn spread(values: &[Kelvin]) -> [f64; 2] {
    SHARES.map(|share| statistics::quantile(values, share).map_or(f64::NAN, Kelvin::celsius))
}
