//! Dead bees before a hive of which next to nothing is known: the same litter and the same law of counting as the watch
//! has, under weather drawn for the month.

use snowhum_apiary::{DeadCount, DeadPlace, Sign};
use snowhum_draws::normal_quantile;
use snowhum_figures::watch_looks::{LAIN_BEFORE, MONTH_AIR, MONTH_FLIGHT};

use crate::litter::{Litter, LitterDay, Since};
use crate::own::Priors;
use crate::signs::{self, Hour, Today};
use crate::view::{Conditions, FreshSnow, Life, View};
use crate::{Answer, Ledger, Parameters};

const DAY_HOURS: f64 = 4.0;

/// What is known of a hive and a look.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeadBeesSeen {
    /// Deaths a day.
    pub deaths_a_day: f64,
    /// Grown bees.
    pub bees: f64,
    /// Days since the last look.
    pub days: f64,
    /// Month of the year, 1 to 12, by the northern seasons.
    pub month: i8,
    /// Where the dead lie.
    pub place: DeadPlace,
}

impl DeadBeesSeen {
    /// One count that this keeper might make, and where the dead are then. `draw` gives independent uniforms for each place.
    pub fn made_up(&self, p: &Parameters, mut draw: impl FnMut(u32) -> [f64; 4]) -> (f64, Ledger) {
        let [before, seen, ear, side] = draw(0);
        let law = p.litter();
        let month = usize::from((self.month - 1).rem_euclid(12).unsigned_abs());
        let (air_c, flies) = (MONTH_AIR[month], MONTH_FLIGHT[month]);
        let floor = self.deaths_a_day * before * LAIN_BEFORE;
        let mut litter = Litter { floor, since: Since { had: floor, ..Since::default() }, ..Litter::default() };
        let snow_m = if self.place == DeadPlace::Snow { 0.2 } else { 0.0 };
        for day in 0..self.days.ceil().clamp(1.0, 120.0) as u32 {
            let [flight, air, ..] = draw(10 + day);
            let day = LitterDay {
                died: self.deaths_a_day,
                flight_hours: if flight < flies { DAY_HOURS } else { 0.0 },
                carried: true,
                indoors: false,
                fresh_snow_m: 0.0,
                snow_m,
                air_c: air_c + 6.0 * normal_quantile(air),
            };
            litter.day(&law, &day);
        }
        let own =
            Priors::unknown(p).draw([0.0, side, seen, ear].map(|u| if u > 0.0 { normal_quantile(u) } else { 0.0 }));
        let view = View { life: Life::Queenright, bees: self.bees, ..View::plain(own, litter.outside, litter.floor) };
        let day = Conditions {
            air_c,
            wind_m_per_s: 1.0,
            snow_m,
            fresh_snow: FreshSnow::None,
            week_c: air_c,
            season_day: 30.4 * (f64::from(self.month) - 0.5),
        };
        let sign = Sign::DeadBees { count: DeadCount::Counted(0), place: self.place };
        let today = if draw(1)[0] < signs::quiet_chance(&day, p) { Today::Quiet } else { Today::Lively };
        let count = match signs::law(&sign, &view, &day, today, Hour::PLAIN, p).map(|law| law.sample(draw(2))) {
            Some(Answer::Count(count, _)) => f64::from(count),
            _ => 0.0,
        };
        (count, Ledger::of(&litter))
    }
}
