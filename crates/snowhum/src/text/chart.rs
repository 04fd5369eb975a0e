//! Small charts from block characters, readable without colour.

/// A bar of `width` columns filled for `share` of one.
pub(crate) fn bar(share: f64, width: usize) -> String {
    let full = (share.clamp(0.0, 1.0) * width as f64).round() as usize;
    format!("{}{}", "█".repeat(full), "·".repeat(width - full))
}

/// A line of eight heights, scaled from zero to the largest value.
pub(crate) fn spark(values: &[f64]) -> String {
    const HEIGHTS: [char; 8] = ['▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];
    let most = values.iter().copied().fold(0.0, f64::max);
    let height = |value: f64| {
        if most > 0.0 { HEIGHTS[((value / most * 7.0).round() as usize).min(7)] } else { HEIGHTS[0] }
    };
    values.iter().map(|value| height(*value)).collect()
}

#[cfg(test)]
mod tests {
    use super::{bar, spark};

    #[test]
    fn bars_and_sparks_have_their_width() {
        assert_eq!(bar(0.5, 10), "█████·····");
        assert_eq!(bar(f64::INFINITY, 4).chars().count(), 4);
        assert_eq!(spark(&[0.0, 7.0, 14.0]), "▁▅█");
        assert_eq!(spark(&[0.0, 0.0]), "▁▁");
    }
}
