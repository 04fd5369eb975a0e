//! A code for a phone's camera, drawn with half blocks.

use qrcode::{Color, EcLevel, QrCode};

/// Light modules around the code (ISO/IEC 18004 asks for four).
const QUIET: usize = 4;
/// Black on white whatever the terminal's own colours are.
const BEGIN: &str = "\u{1b}[38;5;16;48;5;231m";
const END: &str = "\u{1b}[0m";

/// The code of an address; none if it is too long for one.
pub(super) fn drawn(address: &str) -> Option<String> {
    let code = QrCode::with_error_correction_level(address, EcLevel::M).ok()?;
    let (width, colours) = (code.width(), code.to_colors());
    let side = width + 2 * QUIET;
    let is_dark = |x: usize, y: usize| {
        let (x, y) = (x.checked_sub(QUIET), y.checked_sub(QUIET));
        let (Some(x), Some(y)) = (x, y) else { return false };
        x < width && y < width && colours.get(y * width + x) == Some(&Color::Dark)
    };
    let block = |x: usize, y: usize| match (is_dark(x, y), is_dark(x, y + 1)) {
        (true, true) => '█',
        (true, false) => '▀',
        (false, true) => '▄',
        (false, false) => ' ',
    };
    let line = |y: usize| format!("{BEGIN}{}{END}\n", (0..side).map(|x| block(x, y)).collect::<String>());
    Some((0..side).step_by(2).map(line).collect())
}

#[cfg(test)]
mod tests {
    use super::{BEGIN, END, QUIET, drawn};

    #[test]
    fn a_code_has_its_three_corners_a_quiet_border_and_fits_a_terminal() {
        let code = drawn("http://192.168.178.100:8463/").unwrap();
        let strip = |line: &str| line.trim_start_matches(BEGIN).trim_end_matches(END).to_owned();
        let lines: Vec<Vec<char>> = code.lines().map(|line| strip(line).chars().collect()).collect();
        let side = lines[0].len();
        assert!(side <= 80 && lines.len() <= 24, "{side} by {}", lines.len());
        assert!(lines[..QUIET / 2].iter().flatten().all(|block| *block == ' '));
        // The outer ring of a corner is seven dark modules: its upper edge is a row of upper halves within two full ends.
        let edge = "█▀▀▀▀▀█";
        let corner = |x: usize| lines[QUIET / 2][x..x + 7].iter().collect::<String>();
        assert_eq!((corner(QUIET), corner(side - QUIET - 7)), (edge.to_owned(), edge.to_owned()));
    }
}
