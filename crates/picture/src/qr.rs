//! An address as a square of dots that a telephone reads (QR code, ISO/IEC 18004), as our own SVG.

use qrcode::{Color, EcLevel, QrCode};
use std::fmt::Write;

use crate::words::escaped;

/// Light dots round the code, as the standard asks.
const QUIET: usize = 4;

/// The code of a text, black on white in any light; none where the text is too long for one.
///
/// ```
/// let svg = snowhum_picture::qr("http://192.0.2.1:8462/hive/1", "The page of Alder").unwrap();
/// assert!(svg.starts_with("<svg") && svg.contains("The page of Alder"));
/// assert!(snowhum_picture::qr(&"x".repeat(5_000), "").is_none());
/// ```
#[must_use]
pub fn qr(text: &str, title: &str) -> Option<String> {
    let code = QrCode::with_error_correction_level(text.as_bytes(), EcLevel::M).ok()?;
    let (width, size) = (code.width(), code.width() + 2 * QUIET);
    let mut path = String::new();
    for (row, dots) in code.to_colors().chunks(width).enumerate() {
        let mut column = 0;
        while column < width {
            let dark = dots[column..].iter().take_while(|dot| **dot == Color::Dark).count();
            if dark > 0 {
                // Writing to a String cannot fail.
                let _ = write!(path, "M{} {}h{dark}v1h-{dark}z", column + QUIET, row + QUIET);
            }
            column += dark.max(1);
        }
    }
    Some(format!(
        "<svg class=\"qr\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {size} {size}\" role=\"img\">\
         <title>{}</title><rect width=\"{size}\" height=\"{size}\" fill=\"#fff\"/>\
         <path fill=\"#000\" shape-rendering=\"crispEdges\" d=\"{path}\"/></svg>",
        escaped(title)
    ))
}

#[cfg(test)]
mod tests {
    use super::{QUIET, qr};

    /// The dots of a path, dark ones true.
    fn dots(svg: &str) -> Vec<Vec<bool>> {
        let size: usize = between(svg, "viewBox=\"0 0 ", " ").parse().unwrap();
        let mut dots = vec![vec![false; size]; size];
        for run in between(svg, " d=\"M", "\"").split('M') {
            let (at, dark) = run.split_once('h').unwrap();
            let (column, row) = at.split_once(' ').unwrap();
            let (column, row): (usize, usize) = (column.parse().unwrap(), row.parse().unwrap());
            let dark: usize = dark.split('v').next().unwrap().parse().unwrap();
            dots[row][column..column + dark].fill(true);
        }
        dots
    }

    fn between<'t>(text: &'t str, start: &str, end: &str) -> &'t str {
        let from = text.find(start).unwrap() + start.len();
        &text[from..from + text[from..].find(end).unwrap()]
    }

    #[test]
    fn the_three_corners_are_where_a_reader_looks_and_the_edge_is_quiet() {
        let dots = dots(&qr("http://127.0.0.1:8462/hive/x", "Alder").unwrap());
        let size = dots.len();
        let finder = |row: usize, column: usize| {
            (0..7).all(|r| {
                (0..7).all(|c| {
                    let ring = r == 0 || r == 6 || c == 0 || c == 6;
                    let core = (2..5).contains(&r) && (2..5).contains(&c);
                    dots[row + r][column + c] == (ring || core)
                })
            })
        };
        let far = size - QUIET - 7;
        assert!(finder(QUIET, QUIET) && finder(QUIET, far) && finder(far, QUIET) && !finder(far, far));
        let is_edge = |at: usize| at < QUIET || at >= size - QUIET;
        for row in 0..size {
            for column in 0..size {
                assert!(!(dots[row][column] && (is_edge(row) || is_edge(column))), "{row} {column}");
            }
        }
    }

    #[test]
    fn a_hostile_name_stays_text() {
        let svg = qr("x", "<script>&\"").unwrap();
        assert!(!svg.contains("<script>"));
    }
}
