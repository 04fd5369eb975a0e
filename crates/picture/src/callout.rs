//! Callouts in two columns beside a drawing: pushed apart so that none covers another, leaders that do not cross.

use crate::geometry::Point;

/// Tries at parting crossed leaders in one column.
const TRIES: usize = 80;

/// Something to be pointed at, and how much room its words need.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Wanted {
    pub(crate) anchor: Point,
    pub(crate) height: f64,
}

/// The room beside a drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Columns {
    /// Where leaders of the left and of the right column start.
    pub(crate) left_edge: f64,
    pub(crate) right_edge: f64,
    pub(crate) top: f64,
    pub(crate) bottom: f64,
    /// Least room between two callouts.
    pub(crate) gap: f64,
    /// From a callout's upper edge down to where its leader starts.
    pub(crate) drop: f64,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Column {
    Left,
    Right,
}

/// Where a callout stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Placed {
    /// Which of the wanted ones.
    pub(crate) which: usize,
    pub(crate) column: Column,
    /// Upper edge of its words.
    pub(crate) top: f64,
    /// Where its leader starts.
    pub(crate) joint: Point,
}

/// A place for every callout: left column first, each from the top. Columns that need more room than there is run on
/// below `bottom`.
pub(crate) fn place(wanted: &[Wanted], columns: Columns) -> Vec<Placed> {
    let mut order: Vec<usize> = (0..wanted.len()).collect();
    order.sort_by(|a, b| {
        let (a, b) = (wanted[*a].anchor, wanted[*b].anchor);
        a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y))
    });
    let (left, right) = order.split_at(even_split(&order, wanted, columns.gap));
    let mut placed = column(left.to_vec(), wanted, columns, Column::Left);
    placed.extend(column(right.to_vec(), wanted, columns, Column::Right));
    placed
}

/// How many of the callouts, from the left, make the two columns most nearly equal.
fn even_split(order: &[usize], wanted: &[Wanted], gap: f64) -> usize {
    let height = |part: &[usize]| part.iter().map(|at| wanted[*at].height + gap).sum::<f64>();
    let uneven = |split: &usize| (height(&order[..*split]) - height(&order[*split..])).abs();
    (0..=order.len()).min_by(|a, b| uneven(a).total_cmp(&uneven(b))).unwrap_or(0)
}

fn column(mut order: Vec<usize>, wanted: &[Wanted], columns: Columns, side: Column) -> Vec<Placed> {
    order.sort_by(|a, b| wanted[*a].anchor.y.total_cmp(&wanted[*b].anchor.y));
    let mut placed = stacked(&order, wanted, columns, side);
    for _ in 0..TRIES {
        let Some((upper, lower)) = crossed(&placed, wanted) else { break };
        order.swap(upper, lower);
        placed = stacked(&order, wanted, columns, side);
    }
    placed
}

/// The callouts in this order, each as near to its anchor's height as the others leave it: least sum of squared shifts
/// (pool adjacent violators), then moved as one into the column.
fn stacked(order: &[usize], wanted: &[Wanted], columns: Columns, side: Column) -> Vec<Placed> {
    let mut offsets = Vec::with_capacity(order.len());
    let mut below = 0.0;
    for at in order {
        offsets.push(below);
        below += wanted[*at].height + columns.gap;
    }
    let room = (columns.bottom - columns.top - (below - columns.gap)).max(0.0);
    let targets = order.iter().zip(&offsets).map(|(at, offset)| wanted[*at].anchor.y - columns.drop - offset);
    let levels = nondecreasing(targets);
    let x = if side == Column::Left { columns.left_edge } else { columns.right_edge };
    let place = |((which, offset), level): ((&usize, &f64), f64)| {
        let top = level.clamp(columns.top, columns.top + room) + offset;
        Placed { which: *which, column: side, top, joint: Point::new(x, top + columns.drop) }
    };
    order.iter().zip(&offsets).zip(levels).map(place).collect()
}

/// The nearest series, by squares, that never falls.
fn nondecreasing(values: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut pools: Vec<(f64, usize)> = Vec::new();
    for value in values {
        pools.push((value, 1));
        while let [.., (before, count), (after, more)] = pools[..] {
            if before <= after {
                break;
            }
            let both = count + more;
            pools.truncate(pools.len() - 2);
            pools.push(((before * count as f64 + after * more as f64) / both as f64, both));
        }
    }
    pools.into_iter().flat_map(|(level, count)| std::iter::repeat_n(level, count)).collect()
}

/// Two callouts of a column whose leaders cross, by their order.
fn crossed(placed: &[Placed], wanted: &[Wanted]) -> Option<(usize, usize)> {
    let leader = |at: usize| (placed[at].joint, wanted[placed[at].which].anchor);
    let pairs = (0..placed.len()).flat_map(|upper| (upper + 1..placed.len()).map(move |lower| (upper, lower)));
    pairs.into_iter().find(|(upper, lower)| cross(leader(*upper), leader(*lower)))
}

fn cross(one: (Point, Point), other: (Point, Point)) -> bool {
    let side = |line: (Point, Point), point: Point| {
        (line.1.x - line.0.x) * (point.y - line.0.y) - (line.1.y - line.0.y) * (point.x - line.0.x)
    };
    side(one, other.0) * side(one, other.1) < 0.0 && side(other, one.0) * side(other, one.1) < 0.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const COLUMNS: Columns =
        Columns { left_edge: 100.0, right_edge: 300.0, top: 10.0, bottom: 400.0, gap: 6.0, drop: 8.0 };

    fn wanted() -> impl Strategy<Value = Vec<Wanted>> {
        let one = (100.0..300.0, 0.0..420.0, 14.0..60.0)
            .prop_map(|(x, y, height)| Wanted { anchor: Point::new(x, y), height });
        prop::collection::vec(one, 0..24)
    }

    proptest! {
        #[test]
        fn no_callout_covers_another_and_none_is_lost(wanted in wanted()) {
            let placed = place(&wanted, COLUMNS);
            prop_assert_eq!(placed.len(), wanted.len());
            for (at, one) in placed.iter().enumerate() {
                prop_assert!(one.top >= COLUMNS.top - 1e-9);
                for other in &placed[at + 1..] {
                    let (upper, lower) = if one.top < other.top { (one, other) } else { (other, one) };
                    let apart = upper.top + wanted[upper.which].height + COLUMNS.gap <= lower.top + 1e-9;
                    prop_assert!(one.column != other.column || apart);
                }
            }
        }
    }

    #[test]
    fn a_lone_callout_stands_beside_its_anchor() {
        let placed = place(&[Wanted { anchor: Point::new(150.0, 200.0), height: 20.0 }], COLUMNS);
        assert_eq!(placed[0].joint.y, 200.0);
    }

    #[test]
    fn leaders_that_would_cross_are_parted() {
        let wanted = [Point::new(200.0, 100.0), Point::new(101.0, 101.0), Point::new(110.0, 104.0)]
            .map(|anchor| Wanted { anchor, height: 40.0 });
        let placed = column(vec![0, 1, 2], &wanted, COLUMNS, Column::Left);
        assert_eq!(crossed(&placed, &wanted), None);
    }

    #[test]
    fn crowded_callouts_spread_evenly_about_their_anchors() {
        assert_eq!(nondecreasing([3.0, 1.0, 2.0, 8.0].into_iter()), [2.0, 2.0, 2.0, 8.0]);
    }
}
