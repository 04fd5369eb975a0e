//! Probes inside.

use super::look::{Look, reading, rising};
use crate::Law;
use snowhum_apiary::ProbePlace;

/// Temperature, °C: of the place the probe sits in. Among the combs it may sit in the cluster or beside it, the
/// likelier in it the more seams the cluster fills, so a living hive's reading is wide there.
pub(super) fn temperature(place: ProbePlace, look: &Look<'_>) -> Law {
    let (view, p) = (&look.view, look.p);
    let (mean, sd) = match place {
        ProbePlace::UnderLid => (view.warm_c, p.probe_sd.value),
        ProbePlace::Floor => (view.cold_c, p.probe_sd.value),
        ProbePlace::Combs if look.is_alive() => {
            let within = rising(view.seams, p.probe_seams.value);
            (view.warm_c + within * (p.cluster_c.value - view.warm_c), p.probe_combs_sd.value)
        }
        ProbePlace::Combs => (view.warm_c, p.probe_sd.value),
    };
    reading(mean, sd, p.probe_stray.value, p.probe_wide_sd.value)
}

/// Relative humidity under the lid, share.
pub(super) fn humidity(look: &Look<'_>) -> Law {
    let p = look.p;
    reading(look.view.humidity, p.humidity_sd.value, p.probe_stray.value, p.humidity_wide_sd.value)
}
