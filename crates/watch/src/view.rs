//! A hive as a sign sees it: what one member, alive or dead, would show on this day.

/// One member of a colony's estimate at the hour of a visit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// Whether it lives.
    pub life: Life,
    /// Grown bees; of a dead hive those at its end.
    pub bees: f64,
    /// Cells of brood.
    pub brood: f64,
    /// Seams that the cluster fills.
    pub seams: f64,
    /// Share of winter bees that mites spoilt.
    pub spoilt: f64,
    /// All food in the hive, kg.
    pub stores_kg: f64,
    /// Weight of bees, water and ice in the hive, kg.
    pub other_kg: f64,
    /// Air round and over the cluster (in a dead hive: under the lid), °C.
    pub warm_c: f64,
    /// Air below, °C.
    pub cold_c: f64,
    /// Relative humidity of the warm air, share.
    pub humidity: f64,
    /// Hours in which rime formed at the upper hole since it was last brushed or looked at.
    pub rime_hours: f64,
    /// The same before that: old rime that may still hang there.
    pub old_rime_hours: f64,
    /// Share of the last day in which the upper hole's rim was wet.
    pub damp: f64,
    /// Dead bees outside that have come since the last look.
    pub litter_outside: f64,
    /// Dead bees on the floor.
    pub litter_floor: f64,
    /// Hours since midnight in which bees could fly.
    pub flight_hours: f64,
    /// Days since the last flight before today.
    pub confined_days: f64,
    /// Thermal resistance of the lid, m² K/W.
    pub lid_resistance: f64,
    /// What belongs to this keeper and hive.
    pub own: Own,
}

impl View {
    /// A hive of which only its dead bees matter.
    pub(crate) fn plain(own: Own, litter_outside: f64, litter_floor: f64) -> Self {
        Self {
            life: Life::Queenright,
            bees: 10_000.0,
            brood: 0.0,
            seams: 5.0,
            spoilt: 0.0,
            stores_kg: 10.0,
            other_kg: 1.5,
            warm_c: 5.0,
            cold_c: 0.0,
            humidity: 0.8,
            rime_hours: 0.0,
            old_rime_hours: 0.0,
            damp: 0.0,
            litter_outside,
            litter_floor,
            flight_hours: 0.0,
            confined_days: 20.0,
            lid_resistance: 0.5,
            own,
        }
    }
}

/// Whether a member lives, and how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Life {
    /// With a queen.
    Queenright,
    /// Without one.
    Queenless,
    /// Dead.
    Dead {
        /// Days since its end.
        days: f64,
    },
}

impl Life {
    /// Whether it lives.
    #[must_use]
    pub fn is_alive(self) -> bool {
        !matches!(self, Self::Dead { .. })
    }
}

/// What stays the same for this keeper and this hive, and is learned with the rest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Own {
    /// Weight of the empty hive, kg.
    pub tare_kg: f64,
    /// Share of the hive's weight that the side lifted shows.
    pub side_share: f64,
    /// Share of the dead outside that this keeper finds.
    pub seen: f64,
    /// How well this hive and this ear go together: shift of the log-odds of hearing a living colony.
    pub ear: f64,
}

/// Whether snow fell in the day before a look, and who knows of it.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum FreshSnow {
    /// None did.
    #[default]
    None,
    /// It did in the weather walked: what lies outside is reckoned to lie under it already.
    Walked,
    /// The keeper saw it and the weather walked has none.
    Noted,
}

/// The day of a visit, the same for all members.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Outdoor air, °C.
    pub air_c: f64,
    /// Wind at the hive, m/s.
    pub wind_m_per_s: f64,
    /// Snow on the ground, m.
    pub snow_m: f64,
    /// Snow of the last day.
    pub fresh_snow: FreshSnow,
    /// Mean outdoor air of the week before, °C.
    pub week_c: f64,
    /// Day of the year, shifted by half a year south of the equator.
    pub season_day: f64,
}
