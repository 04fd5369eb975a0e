//! The outside, hour by hour and path by path, as every hive of a yard feels it.

use jiff::civil::Date;
use rayon::prelude::*;
use snowhum_physics::snow::snow_share;
use snowhum_physics::sun;
use snowhum_units::Same;
use snowhum_units::{Degree, Fraction, Kelvin, Metre, MetrePerSecond, Pascal};
use snowhum_weather::{Ensemble, Hourly, Place};

use crate::lanes::LANES;
use crate::parameters::Parameters;
use crate::saturation::saturation_ratio;

/// How a yard changes the open country's wind and sun.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct YardShelter {
    /// Wind at hive height over wind at 10 m in the open.
    pub wind: Fraction,
    /// Direct sun that reaches the hives over direct sun in the open.
    pub sun: Fraction,
}

/// Hours of weather for a number of equally likely paths. Member `m` walks path `m mod paths`.
///
/// Invariant: every column holds `hours * paths` values, hour-major, and `paths` is a multiple of the block size.
#[derive(Debug, Clone)]
pub struct Environment {
    hours: usize,
    paths: usize,
    first_day: Date,
    latitude: Degree,
    winter_bees: Option<f64>,
    pressure: Pascal,
    columns: Columns,
}

/// The outside at the hives in one hour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outside {
    /// Air.
    pub air: Kelvin,
    /// Wind at the height of the hives.
    pub wind: MetrePerSecond,
    /// Depth of lying snow.
    pub snow: Metre,
}

#[derive(Debug, Clone, Default)]
struct Columns {
    air: Vec<f32>,
    ratio: Vec<f32>,
    wind: Vec<f32>,
    wall_sun: Vec<f32>,
    roof_sun: Vec<f32>,
    snow: Vec<f32>,
    snowfall: Vec<f32>,
    flight: Vec<f32>,
}

/// One hour for the lanes of a block.
#[derive(Debug, Clone, Copy, Default)]
#[repr(align(64))]
pub(crate) struct Hour {
    pub(crate) air: [f32; LANES],
    pub(crate) ratio: [f32; LANES],
    pub(crate) wind: [f32; LANES],
    pub(crate) wall_sun: [f32; LANES],
    pub(crate) roof_sun: [f32; LANES],
    pub(crate) snow: [f32; LANES],
    /// Snow that falls, kg/m² in the hour.
    pub(crate) snowfall: [f32; LANES],
    pub(crate) flight: [f32; LANES],
}

/// The weather paths that the lanes of a block walk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Walk {
    /// Neighbouring paths from this one on.
    InOrder(usize),
    /// Each its own.
    Each([u32; LANES]),
}

impl Walk {
    /// The walk of block `index` as members enter: member `m` walks path `m mod paths`.
    pub(crate) fn of_block(index: usize, paths: usize) -> Self {
        Self::InOrder((index * LANES) % paths.max(LANES))
    }

    /// The path of a lane.
    pub(crate) fn path(&self, lane: usize) -> usize {
        match self {
            Self::InOrder(first) => first + lane,
            Self::Each(paths) => paths[lane] as usize,
        }
    }

    /// Puts what the lanes find in a column of `paths` values an hour; `false` past its end.
    #[inline(always)]
    pub(crate) fn gather(&self, column: &[f32], hour: usize, paths: usize, found: &mut [f32; LANES]) -> bool {
        let Some(row) = column.get(hour * paths..(hour + 1) * paths) else { return false };
        match self {
            Self::InOrder(first) => {
                let Some(lanes) = row.get(*first..first + LANES) else { return false };
                found.copy_from_slice(lanes);
            }
            Self::Each(each) => {
                for (value, path) in found.iter_mut().zip(each) {
                    let Some(of) = row.get(*path as usize) else { return false };
                    *value = *of;
                }
            }
        }
        true
    }
}

/// Where no sun can be reckoned there is none.
const SUN_DOWN: sun::SunPosition = sun::SunPosition { zenith: Degree::new(180.0), azimuth: Degree::ZERO };
/// Light reflected by ground under snow and without (from memory: 0.6-0.8 and 0.2).
const ALBEDO_SNOW: f64 = 0.7;
const ALBEDO_GROUND: f64 = 0.2;
/// Bees fly above this, °C; in full sun from the second on (8-12 °C with sun: practice, mixed sources).
const FLIGHT_FROM: f64 = 11.0;
const FLIGHT_IN_SUN_FROM: f64 = 8.0;
/// Sun that counts as full for flying, W/m² on the level, and wind that keeps bees at home, m/s (judgement).
const FLIGHT_SUN: f64 = 150.0;
const FLIGHT_WIND: f64 = 5.5;
/// Rain in an hour that keeps bees at home, m (judgement; a month's rain spread over its hours stays below).
const FLIGHT_RAIN_M: f64 = 5e-4;

impl Environment {
    /// A yard outdoors under an ensemble of weather that begins at the start of `first_day`.
    ///
    /// Paths are repeated in turn until their number fills whole blocks; equal likelihood is kept exactly when the
    /// ensemble holds a multiple of 32 paths or a single one.
    #[must_use]
    pub fn yard(ensemble: &Ensemble, place: Place, shelter: YardShelter, first_day: Date) -> Self {
        let paths = ensemble.paths.len().max(1).div_ceil(LANES) * LANES;
        let hours = ensemble.hours();
        let pressure = ensemble.paths.first().and_then(|path| path.pressure.first()).copied();
        let pressure = pressure.unwrap_or(Pascal::new(101_325.0));
        let day = |first: usize| {
            let mut columns = Columns::with_capacity(24 * paths);
            for hour in first..hours.min(first + 24) {
                let middle = ensemble.start.as_second() + 3_600 * hour as i64 + 1_800;
                let beam =
                    Beam::of(sun::position(middle, place.latitude, place.longitude).unwrap_or(SUN_DOWN), shelter);
                for path in &ensemble.paths {
                    columns.push(path, hour, &beam, pressure);
                }
                columns.repeat(ensemble.paths.len(), paths);
            }
            columns
        };
        let days: Vec<Columns> = (0..hours).into_par_iter().step_by(24).map(day).collect();
        let columns = Columns::joined(&days);
        Self { hours, paths, first_day, latitude: place.latitude, winter_bees: None, pressure, columns }
    }

    /// The same air, hour after hour, without sun or snow: a cellar, a laboratory, a question about one temperature.
    #[must_use]
    pub fn steady(first_day: Date, hours: usize, air: Kelvin, humidity: Fraction, wind: MetrePerSecond) -> Self {
        let pressure = Pascal::new(101_325.0);
        let t = air.celsius();
        let size = hours * LANES;
        let ratio = humidity_ratio(t, humidity.get(), pressure.get());
        let columns = Columns {
            air: vec![t as f32; size],
            ratio: vec![ratio as f32; size],
            wind: vec![wind.get() as f32; size],
            wall_sun: vec![0.0; size],
            roof_sun: vec![0.0; size],
            snow: vec![0.0; size],
            snowfall: vec![0.0; size],
            flight: vec![0.0; size],
        };
        Self { hours, paths: LANES, first_day, latitude: Degree::new(60.0), winter_bees: None, pressure, columns }
    }

    /// Hours held.
    #[must_use]
    pub fn hours(&self) -> usize {
        self.hours
    }

    /// Whole days held.
    #[must_use]
    pub fn days(&self) -> usize {
        self.hours / 24
    }

    /// The day hour 0 belongs to.
    #[must_use]
    pub fn first_day(&self) -> Date {
        self.first_day
    }

    /// Paths, after filling up whole blocks.
    #[must_use]
    pub fn paths(&self) -> usize {
        self.paths
    }

    /// Latitude, for the length of days.
    #[must_use]
    pub fn latitude(&self) -> Degree {
        self.latitude
    }

    /// The same at a site where winter bees emerge about another day of the year than where the parameter was measured.
    #[must_use]
    pub fn with_winter_bees(self, day_of_year: f64) -> Self {
        Self { winter_bees: Some(day_of_year), ..self }
    }

    /// Day of the year about which winter bees emerge: the site's own, else the parameter's by the season of the hemisphere.
    #[must_use]
    pub fn winter_bees(&self, p: &Parameters) -> f64 {
        let southern = if self.latitude.get() < 0.0 { 182.0 } else { 0.0 };
        self.winter_bees.unwrap_or(p.winter_bee_emergence.value + southern)
    }

    /// Air pressure.
    #[must_use]
    pub fn pressure(&self) -> Pascal {
        self.pressure
    }

    /// Outdoor air of an hour on a path.
    #[must_use]
    pub fn air(&self, hour: usize, path: usize) -> Kelvin {
        Kelvin::from_celsius(f64::from(self.columns.air[hour * self.paths + path % self.paths]))
    }

    /// Whether bees can fly in an hour on a path.
    #[must_use]
    pub fn flies(&self, hour: usize, path: usize) -> bool {
        self.columns.flight[hour * self.paths + path % self.paths] > 0.5
    }

    /// Thermometer, wind and snow of an hour on a path: what a keeper would meet at the hives.
    #[must_use]
    pub fn outside(&self, hour: usize, path: usize) -> Option<Outside> {
        let at = hour.checked_mul(self.paths)? + path % self.paths;
        let c = &self.columns;
        Some(Outside {
            air: Kelvin::from_celsius(f64::from(*c.air.get(at)?)),
            wind: MetrePerSecond::new(f64::from(*c.wind.get(at)?)),
            snow: Metre::new(f64::from(*c.snow.get(at)?)),
        })
    }

    /// Fills in the hour for the lanes that walk `walk`; `false` past the end.
    #[inline(always)]
    pub(crate) fn hour(&self, hour: usize, walk: &Walk, to: &mut Hour) -> bool {
        let c = &self.columns;
        let fill = |column: &[f32], lanes: &mut [f32; LANES]| walk.gather(column, hour, self.paths, lanes);
        fill(&c.air, &mut to.air)
            && fill(&c.ratio, &mut to.ratio)
            && fill(&c.wind, &mut to.wind)
            && fill(&c.wall_sun, &mut to.wall_sun)
            && fill(&c.roof_sun, &mut to.roof_sun)
            && fill(&c.snow, &mut to.snow)
            && fill(&c.snowfall, &mut to.snowfall)
            && fill(&c.flight, &mut to.flight)
    }
}

/// What an hour's sun and the yard's shelter make of every path's weather.
struct Beam {
    /// Share of the direct beam that falls on the mean of four upright faces.
    faced: f64,
    /// Share of it that falls on the level.
    level: f64,
    /// See [`YardShelter`].
    shelter: YardShelter,
}

impl Beam {
    fn of(sun: sun::SunPosition, shelter: YardShelter) -> Self {
        let altitude = (90.0 - sun.zenith.get()).to_radians();
        let azimuth = sun.azimuth.radians();
        // Beams on four upright faces add up to cos(altitude) (|cos azimuth| + |sin azimuth|).
        let faced = altitude.same_cos() * (azimuth.same_cos().abs() + azimuth.same_sin().abs()) / 4.0;
        Self { faced, level: altitude.same_sin().max(0.0), shelter }
    }
}

impl Columns {
    fn push(&mut self, path: &Hourly, hour: usize, beam: &Beam, pressure: Pascal) {
        let t = path.temperature[hour].celsius();
        let wind = path.wind[hour].get() * beam.shelter.wind.get();
        let snow = path.snow_depth[hour].get();
        let direct = path.direct[hour].get() * beam.shelter.sun.get();
        let diffuse = path.diffuse[hour].get();
        let level = direct * beam.level + diffuse;
        let albedo = if snow > 0.02 { ALBEDO_SNOW } else { ALBEDO_GROUND };
        let wall_sun = direct * beam.faced + 0.5 * diffuse + 0.5 * albedo * level;
        let flies = (t > FLIGHT_FROM || (t > FLIGHT_IN_SUN_FROM && level > FLIGHT_SUN))
            && wind < FLIGHT_WIND
            && level > 20.0
            && path.precipitation[hour].get() < FLIGHT_RAIN_M;
        self.air.push(t as f32);
        self.ratio.push(humidity_ratio(t, path.humidity[hour].get(), pressure.get()) as f32);
        self.wind.push(wind as f32);
        self.wall_sun.push(wall_sun as f32);
        self.roof_sun.push(level as f32);
        self.snow.push(snow as f32);
        let solid = snow_share(path.temperature[hour]).get();
        self.snowfall.push((1_000.0 * path.precipitation[hour].get() * solid) as f32);
        self.flight.push(if flies { 1.0 } else { 0.0 });
    }

    /// Fills the row of an hour that was just pushed, of `given` paths, up with those paths in turn.
    fn repeat(&mut self, given: usize, paths: usize) {
        let Self { air, ratio, wind, wall_sun, roof_sun, snow, snowfall, flight } = self;
        for column in [air, ratio, wind, wall_sun, roof_sun, snow, snowfall, flight] {
            let row = column.len() - given;
            (given..paths).for_each(|path| column.push(column[row + path % given]));
        }
    }

    /// Columns one after the other.
    fn joined(parts: &[Self]) -> Self {
        let joined = |column: fn(&Self) -> &[f32]| parts.iter().map(column).collect::<Vec<_>>().concat();
        Self {
            air: joined(|part| &part.air),
            ratio: joined(|part| &part.ratio),
            wind: joined(|part| &part.wind),
            wall_sun: joined(|part| &part.wall_sun),
            roof_sun: joined(|part| &part.roof_sun),
            snow: joined(|part| &part.snow),
            snowfall: joined(|part| &part.snowfall),
            flight: joined(|part| &part.flight),
        }
    }

    fn with_capacity(size: usize) -> Self {
        let column = || Vec::with_capacity(size);
        Self {
            air: column(),
            ratio: column(),
            wind: column(),
            wall_sun: column(),
            roof_sun: column(),
            snow: column(),
            snowfall: column(),
            flight: column(),
        }
    }
}

/// kg of water in a kilogram of dry air.
#[inline(always)]
pub(crate) fn humidity_ratio(t_c: f64, humidity: f64, pressure_pa: f64) -> f64 {
    let saturated = saturation_ratio(t_c, 1.0 / pressure_pa);
    // Humidity is a share of vapour pressure; at winter pressures the ratio follows within a per mille.
    let e = humidity * saturated * pressure_pa / (crate::saturation::MOLAR_RATIO + saturated);
    crate::saturation::MOLAR_RATIO * e / (pressure_pa - e)
}
