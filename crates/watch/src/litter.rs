//! The ledger of the dead: on the floor, carried out, lying before the hive, under snow, flown off, taken by birds and mice.

use snowhum_apiary::{DeadPlace, Sign};
use snowhum_units::Same;

/// Where a colony's dead lie.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Litter {
    /// On the floor, inside.
    pub floor: f64,
    /// Before the hive, come since the last look.
    pub outside: f64,
    /// Before the hive under snow.
    pub hidden: f64,
    /// What moved since the last look.
    pub since: Since,
}

/// What moved since the last look: with what lay there then it comes to what lies there now.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(crate) struct Since {
    /// On the floor and under snow at that look.
    pub had: f64,
    /// Bees that died.
    pub died: f64,
    /// Lost in the air, or carried off by bees.
    pub flown: f64,
    /// Taken by birds, mice and wind.
    pub taken: f64,
}

/// A day for the dead, as the living and the weather make it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct LitterDay {
    /// Bees that died.
    pub died: f64,
    /// Hours fit for flight.
    pub flight_hours: f64,
    /// Whether bees are there to carry.
    pub carried: bool,
    /// Whether the hive stands in a dark room: its dead stay on its floor, for want of a flight and of light to crawl to.
    pub indoors: bool,
    /// Depth of fresh snow, m.
    pub fresh_snow_m: f64,
    /// Depth of the snow that lies, m.
    pub snow_m: f64,
    /// Mean outdoor air, °C.
    pub air_c: f64,
}

/// How litter moves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct LitterLaw {
    /// Share of the day's dead that leave the hive by themselves on a day at 0 °C without flight and lie before it.
    pub fall_out: f64,
    /// Mean air of a day, °C, at and below which none does.
    pub fall_out_none_c: f64,
    /// Share of the day's dead that are lost in the air on a day of flight and lie nowhere near.
    pub lost_afield: f64,
    /// Share of the floor's dead carried out on a whole day of flight.
    pub carried_out: f64,
    /// Share of those carried out that drop before the hive; the rest are flown off.
    pub dropped_near: f64,
    /// Hours of flight that make a whole day of it.
    pub whole_flight_hours: f64,
    /// Days after which all but one in e are gone: birds, wind, thaw.
    pub gone_days: f64,
    /// Depth of snow that hides all but one in e, m.
    pub hidden_m: f64,
    /// Depth of snow, m, below which the ground before the hive is bare.
    pub bare_m: f64,
}

impl Litter {
    /// A day passes.
    pub(crate) fn day(&mut self, law: &LitterLaw, day: &LitterDay) {
        self.lie(law, day);
        if !day.carried {
            return;
        }
        let flown = (day.flight_hours / law.whole_flight_hours).min(1.0);
        let mild = ((day.air_c - law.fall_out_none_c) / -law.fall_out_none_c).clamp(0.0, 1.0);
        let mild = if day.indoors { 0.0 } else { mild };
        let out = mild * law.fall_out * day.died;
        let afield = flown * law.lost_afield * day.died;
        let carried = flown * law.carried_out * self.floor;
        self.floor += day.died - out - afield - carried;
        self.outside += out + law.dropped_near * carried;
        self.since.died += day.died;
        self.since.flown += afield + (1.0 - law.dropped_near) * carried;
    }

    /// What lies before the hive goes, or is hidden by snow; what that hid is rot and bird's food when it is gone.
    fn lie(&mut self, law: &LitterLaw, day: &LitterDay) {
        let (gone, hidden) = (1.0 / law.gone_days, day.fresh_snow_m / law.hidden_m);
        let left = self.outside * (-gone - hidden).same_exp();
        let lost = self.outside - left;
        let taken = lost * gone / (gone + hidden);
        self.outside = left;
        self.hidden += lost - taken;
        self.since.taken += taken;
        if day.snow_m < law.bare_m {
            self.since.taken += self.hidden;
            self.hidden = 0.0;
        }
    }

    /// The keeper has looked: of what lay before the hive only what comes after counts from now on, and a floor that was
    /// raked is clean. A new page of the ledger begins.
    pub(crate) fn looked(&mut self, seen: &[Sign]) {
        for sign in seen {
            match sign {
                Sign::DeadBees { place: DeadPlace::Guard | DeadPlace::Hook, .. } => self.floor = 0.0,
                Sign::DeadBees { place: DeadPlace::Snow | DeadPlace::Ground, .. } => self.outside = 0.0,
                _ => continue,
            }
            self.since = Since { had: self.floor + self.outside + self.hidden, ..Since::default() };
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const LAW: LitterLaw = LitterLaw {
        fall_out: 0.1,
        fall_out_none_c: -15.0,
        lost_afield: 0.3,
        carried_out: 0.4,
        dropped_near: 1.0,
        whole_flight_hours: 3.0,
        gone_days: 7.0,
        hidden_m: 0.02,
        bare_m: 0.01,
    };

    fn cold() -> LitterDay {
        LitterDay {
            died: 50.0,
            flight_hours: 0.0,
            carried: true,
            indoors: false,
            fresh_snow_m: 0.0,
            snow_m: 0.2,
            air_c: 0.0,
        }
    }

    #[test]
    fn cold_weeks_heap_the_dead_inside_and_a_mild_day_brings_them_out() {
        let mut litter = Litter::default();
        for _ in 0..30 {
            litter.day(&LAW, &cold());
        }
        let before = litter;
        assert!(before.floor > 1_000.0 && before.outside < 50.0, "{before:?}");
        litter.day(&LAW, &LitterDay { flight_hours: 4.0, ..cold() });
        assert!(litter.outside > 500.0, "{litter:?}");
    }

    #[test]
    fn the_dead_of_a_hive_indoors_stay_on_its_floor() {
        let mut litter = Litter::default();
        for _ in 0..30 {
            litter.day(&LAW, &LitterDay { indoors: true, air_c: 4.0, ..cold() });
        }
        assert_eq!((litter.floor, litter.outside), (1_500.0, 0.0));
    }

    #[test]
    fn the_books_of_the_dead_close() {
        let mut litter = Litter::default();
        let look = [Sign::DeadBees { count: snowhum_apiary::DeadCount::Counted(4), place: DeadPlace::Snow }];
        for day in 0..60 {
            let (flight_hours, fresh) = (f64::from(day % 7) * 0.4, if day % 5 == 0 { 0.03 } else { 0.0 });
            let snow_m = if day % 20 == 19 { 0.0 } else { 0.2 };
            litter.day(&LAW, &LitterDay { flight_hours, fresh_snow_m: fresh, snow_m, ..cold() });
            let Since { had, died, flown, taken } = litter.since;
            let lies = litter.floor + litter.outside + litter.hidden;
            assert!((had + died - flown - taken - lies).abs() < 1e-9 * (had + died), "day {day}: {litter:?}");
            if day % 13 == 0 {
                litter.looked(&look);
            }
        }
    }

    #[test]
    fn what_snow_hid_is_not_found_again() {
        let mut litter = Litter { outside: 100.0, ..Litter::default() };
        litter.day(&LAW, &LitterDay { died: 0.0, fresh_snow_m: 0.1, ..cold() });
        assert!(litter.outside < 1.0 && litter.hidden > 90.0, "{litter:?}");
        litter.day(&LAW, &LitterDay { died: 0.0, snow_m: 0.0, ..cold() });
        assert!(litter.outside < 1.0 && litter.hidden == 0.0 && litter.since.taken > 99.0, "{litter:?}");
    }

    #[test]
    fn the_dead_carry_nobody_out() {
        let mut litter = Litter { floor: 3_000.0, outside: 20.0, ..Litter::default() };
        for _ in 0..30 {
            litter.day(&LAW, &LitterDay { flight_hours: 5.0, carried: false, died: 0.0, air_c: 5.0, ..cold() });
        }
        assert_eq!(litter.floor, 3_000.0);
        assert!(litter.outside < 1.0);
    }
}
