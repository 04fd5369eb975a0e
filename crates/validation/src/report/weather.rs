//! Weather on the page: stations, and a winter that was.

use super::line;
use crate::weather::{RealWinter, Station, Weather};

/// Both tables. They are no checks: no band was fixed for them.
pub(super) fn write(page: &mut String, weather: &Weather) {
    stations(page, &weather.stations);
    real(page, &weather.real);
}

fn stations(page: &mut String, stations: &[Station]) {
    line(
        page,
        format_args!(
            "## Cold of stations beside made cold\n\n\
             {} years made for each place from the built-in climate alone, as for a keeper who knows no more. No band was \
             fixed: the table shows how far off that can be at one spot. A mean of yearly lowest over 25 years is itself \
             uncertain by almost a kelvin. *Told*: the same with the published figure given as the site's \
             known design cold. The last column is a judgement.\n\n\
             | station | coldest month, built in | one hour in a hundred below, published | made | off | told | yearly lowest, mean and sd, published | made | source | likely why |\n\
             |---|---|---|---|---|---|---|---|---|---|",
            crate::weather::YEARS
        ),
    );
    for station in stations {
        let Station { name, source, design_c, made_design_c, lowest_c, made_lowest_c, remark, coldest_month_c, told_c } =
            station;
        let lowest = if lowest_c[0].is_nan() { "not read".to_owned() } else { mean_sd(*lowest_c) };
        let off = made_design_c - design_c;
        line(
            page,
            format_args!(
                "| {name} | {coldest_month_c:.1} °C | {design_c:.1} °C | {made_design_c:.1} °C | {off:+.1} K | {told_c:.1} °C | {lowest} | {} | {source} | {remark} |",
                mean_sd(*made_lowest_c)
            ),
        );
    }
    page.push('\n');
}

fn mean_sd([mean, sd]: [f64; 2]) -> String {
    format!("{mean:.1} °C, {sd:.1} K")
}

fn real(page: &mut String, real: &RealWinter) {
    line(
        page,
        format_args!(
            "## A winter that was, among made ones\n\n\
             Northway, Alaska, October 2018 to May 2019, from the hourly record (ISD-lite 702910, NOAA), among 200 winters \
             made for the place from the built-in climate. One winter sets no band. Were the made ones right, nine figures \
             in ten would lie between one in twenty below and one in twenty above: {} of {} do. A day hung together with the next \
             more closely than in the middle made winter in {} of {} months.\n\n\
             | figure | real | made: one in twenty below | middle | one in twenty above | made winters with less |\n\
             |---|---|---|---|---|---|",
            real.between(),
            real.figures.len(),
            real.closer_months(),
            crate::weather::MONTHS.len()
        ),
    );
    for figure in &real.figures {
        let shown = |value: f64| format!("{value:.*} {}", figure.decimals, figure.unit).trim_end().to_owned();
        let [low, middle, high] = figure.made.map(shown);
        line(
            page,
            format_args!(
                "| {} | {} | {low} | {middle} | {high} | {:.0} of 100 |",
                figure.what,
                shown(figure.real),
                figure.lower
            ),
        );
    }
    page.push('\n');
}
