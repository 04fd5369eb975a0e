//! Gaps in one quantity.

use std::ops::Range;

/// Fills gaps of up to `longest` hours by straight lines (at an end by the nearest value); counts the hours filled.
pub(super) fn bridged(column: &[Option<f64>], longest: usize) -> (Vec<Option<f64>>, usize) {
    let mut filled = column.to_vec();
    let mut count = 0;
    let mut from = 0;
    while let Some(gap) = next_gap(column, from) {
        from = gap.end;
        if gap.len() > longest {
            continue;
        }
        let before = gap.start.checked_sub(1).and_then(|at| column[at]);
        let after = column.get(gap.end).copied().flatten();
        let (Some(left), Some(right)) = (before.or(after), after.or(before)) else { continue };
        for at in gap.clone() {
            let part = (at - gap.start + 1) as f64 / (gap.len() + 1) as f64;
            filled[at] = Some(left + (right - left) * part);
        }
        count += gap.len();
    }
    (filled, count)
}

/// The first run of missing hours.
pub(super) fn first_gap(column: &[Option<f64>]) -> Option<Range<usize>> {
    next_gap(column, 0)
}

fn next_gap(column: &[Option<f64>], from: usize) -> Option<Range<usize>> {
    let start = from + column.get(from..)?.iter().position(Option::is_none)?;
    let end = column[start..].iter().position(Option::is_some).map_or(column.len(), |run| start + run);
    Some(start..end)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn short_gaps_are_bridged_and_long_ones_left() {
        let column = [None, Some(1.0), None, Some(3.0), None, None, None, Some(4.0)];
        let (filled, count) = bridged(&column, 2);
        assert_eq!(filled[..4], [Some(1.0), Some(1.0), Some(2.0), Some(3.0)]);
        assert_eq!((count, first_gap(&filled)), (2, Some(4..7)));
        assert_eq!(first_gap(&bridged(&column, 3).0), None);
        assert_eq!(bridged(&[None, None], 6).0, [None, None]);
    }
}
