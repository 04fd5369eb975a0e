//! Sizes of the inside, split into two zones.

use snowhum_apiary::Hive;

use crate::Parameters;

/// Sizes of the inside, split into the zones.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Plan {
    pub(crate) footprint: f64,
    pub(crate) perimeter: f64,
    pub(crate) height: f64,
    pub(crate) warm_height: f64,
    pub(crate) cold_height: f64,
    pub(crate) wall_area: f64,
    pub(crate) low_wall_area: f64,
}

/// A zone of air is never lower than this, m.
const LEAST_ZONE: f64 = 0.05;

impl Plan {
    /// The warm zone is as high as the cluster is wide, `cluster_m`, and leaves some of the hive below it.
    pub(crate) fn of(hive: &Hive, cluster_m: f64, p: &Parameters) -> Self {
        let (length, width) = hive.boxes.first().map_or((0.465, 0.373), |b| (b.length.get(), b.width.get()));
        let height = hive.boxes.iter().map(|b| b.depth.get()).sum::<f64>() + hive.rim.get();
        let height = height.max(0.05);
        let warm_height = (p.zone_share.value * height).min(cluster_m.max(LEAST_ZONE));
        let perimeter = 2.0 * (length + width);
        Self {
            footprint: length * width,
            perimeter,
            height,
            warm_height,
            cold_height: height - warm_height,
            wall_area: perimeter * warm_height,
            low_wall_area: perimeter * (height - warm_height),
        }
    }
}
