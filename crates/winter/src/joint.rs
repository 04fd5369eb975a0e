//! Parameters that real winters set together: joint draws, one for each member.
//!
//! A draw is kept as standard deviates, each on the range of its own parameter ([`Parameter::at`](crate::Parameter::at)),
//! so that a parameter read from a file and one set in a test mean the same, and correlations stay.

use serde::{Deserialize, Serialize};
use snowhum_draws::Key;

macro_rules! jointly {
    ($($name:ident)*) => {
        /// One draw: for each parameter that real winters set, how many standard deviates from its middle it lies.
        #[derive(Debug, Clone, Copy, PartialEq, Default)]
        #[expect(missing_docs, reason = "each field is the parameter of its name")]
        pub struct JointDraw {
            $(pub $name: f64,)*
        }

        impl JointDraw {
            /// The parameters in the order of a row.
            pub const NAMES: &'static [&'static str] = &[$(stringify!($name)),*];

            /// A draw from a row in the order of [`Self::NAMES`]; what a short row lacks is at its middle.
            #[must_use]
            pub fn from_row(row: &[f64]) -> Self {
                let mut values = row.iter().copied();
                Self { $($name: values.next().unwrap_or(0.0),)* }
            }
        }
    };
}

jointly! {
    conductance_core_air rest_power winter_bee_hazard winter_bee_ageing winter_bee_ageing_from resting_pace
    summer_bee_share mites_half_damage mites_steepness damaged_bee_hazard viable_bees failing_rate background_loss
    background_by_year background_by_yard background_by_size laying_peak brood_light brood_light_scatter nest_cells
    brood_food virus_loss brood_light_width laying_half_bees brood_any_season
}

/// How joint draws were made, and the draws.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct JointDraws {
    /// What stands behind them, in a sentence.
    pub about: String,
    /// Seed of the run that made them.
    pub seed: u64,
    /// Studies they were fitted to.
    pub studies: Vec<String>,
    /// Names of the columns.
    pub names: Vec<String>,
    /// Rows of standard deviates; none for draws of each parameter by itself.
    pub rows: Vec<Vec<f64>>,
}

/// The stream of what all colonies of a yard share.
const WORLD: u64 = 0x5357_4f52_4c44;
/// Marks draws of a start, as in the start of a colony.
const START: u32 = u32::MAX;

/// What is the same for all colonies of a yard in one member: what science does not know, the year and the yard.
#[derive(Debug, Clone, Copy)]
pub(crate) struct World {
    key: Key,
}

impl World {
    pub(crate) fn new(seed: u64) -> Self {
        Self { key: Key::new(seed, WORLD) }
    }

    /// Standard deviates of the year and of the yard in a member.
    pub(crate) fn year_and_yard(self, member: u32) -> (f64, f64) {
        let z = self.key.even_normals([member, 0, 0]);
        (z[0], z[1])
    }

    /// The member's joint draw: neighbouring members take neighbouring rows from a place that hangs on the seed, so that
    /// few members already spread over all of them. Without rows, each parameter by itself.
    pub(crate) fn draw(self, joint: &JointDraws, member: u32) -> JointDraw {
        if joint.rows.is_empty() {
            let row: Vec<f64> = (0..JointDraw::NAMES.len().div_ceil(4) as u32)
                .flat_map(|at| self.key.normals([member, at, START, 1]))
                .collect();
            return JointDraw::from_row(&row);
        }
        JointDraw::from_row(&joint.rows[(self.first(joint) + member as usize) % joint.rows.len()])
    }

    fn first(self, joint: &JointDraws) -> usize {
        (self.key.normals([0, 0, START, 2])[0].to_bits() % joint.rows.len().max(1) as u64) as usize
    }
}

impl JointDraws {
    /// The row that the first member of a run with this seed takes; the next take the next rows in turn.
    #[must_use]
    pub fn first(&self, seed: u64) -> usize {
        World::new(seed).first(self)
    }
}

#[cfg(test)]
mod tests {
    use super::{JointDraw, JointDraws, World};

    #[test]
    fn members_take_every_row_once_before_any_twice() {
        let rows: Vec<Vec<f64>> = (0..64).map(|row| vec![f64::from(row)]).collect();
        let joint = JointDraws { rows, ..JointDraws::default() };
        let mut met: Vec<f64> = (0..64).map(|member| World::new(9).draw(&joint, member).conductance_core_air).collect();
        met.sort_by(f64::total_cmp);
        assert_eq!(met, (0..64).map(f64::from).collect::<Vec<_>>());
        // And then in the same order: who asks for the members under a row counts on it.
        let drawn = |member| World::new(9).draw(&joint, member);
        assert!((0..64).all(|member| drawn(member) == drawn(member + 64) && drawn(member) == drawn(member + 640)));
    }

    #[test]
    fn without_rows_each_parameter_is_drawn_by_itself() {
        let draw = |member| World::new(9).draw(&JointDraws::default(), member);
        assert_ne!(draw(0), draw(1));
        assert_ne!(draw(0).brood_light, draw(0).brood_light_scatter);
        assert_eq!(JointDraw::from_row(&[1.0]).rest_power, 0.0);
    }
}
