//! Small charts from block characters, readable without colour.

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
    use super::spark;

    #[test]
    fn sparks_have_their_width() {
        assert_eq!(spark(&[0.0, 7.0, 14.0]), "▁▅█");
        assert_eq!(spark(&[0.0, 0.0]), "▁▁");
    }
}
