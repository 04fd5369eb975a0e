//! The outside, hour by hour and path by path, as every hive of a yard feels it.

use jiff::civil::Date;
use rayon::prelude::*;
use snowhum_figures::winter_hour::{FLIGHT_RAIN, FLIGHT_SUN, FLIGHT_WIND};
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
/// Invariant: there are [`KINDS`] rows an hour, and the paths of a row are a multiple of the block size.
#[derive(Debug, Clone)]
pub struct Environment {
    hours: usize,
    first_day: Date,
    latitude: Degree,
    winter_bees: Option<f64>,
    pressure: Pascal,
    rows: Rows,
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

/// What is held of an hour: a row of all paths each, in this order.
#[derive(Debug, Clone, Copy)]
enum Kind {
    Air,
    Ratio,
    Wind,
    WallSun,
    RoofSun,
    Snow,
    Snowfall,
    Flight,
}

/// How many rows an hour has.
const KINDS: usize = 8;

/// Rows of one value a path: hour after hour, kind after kind.
#[derive(Debug, Clone)]
struct Rows {
    paths: usize,
    values: Vec<f32>,
}

impl Rows {
    #[inline(always)]
    fn row(&self, hour: usize, kind: Kind) -> Option<&[f32]> {
        let first = (hour * KINDS + kind as usize) * self.paths;
        self.values.get(first..first + self.paths)
    }

    /// The value of a path; paths begin again where they end.
    fn value(&self, hour: usize, kind: Kind, path: usize) -> Option<f32> {
        self.row(hour, kind)?.get(path % self.paths).copied()
    }
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

    /// Puts what the lanes find in a row of all paths; `false` where it holds too few.
    #[inline(always)]
    pub(crate) fn gather(&self, row: &[f32], found: &mut [f32; LANES]) -> bool {
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

impl Environment {
    /// A yard outdoors under an ensemble of weather that begins at the start of `first_day`.
    ///
    /// Paths are repeated in turn until their number fills whole blocks; equal likelihood is kept exactly when the
    /// ensemble holds a multiple of 32 paths or a single one.
    #[must_use]
    pub fn yard(ensemble: &Ensemble, place: Place, shelter: YardShelter, first_day: Date) -> Self {
        let given = ensemble.paths.len();
        let paths = given.max(1).div_ceil(LANES) * LANES;
        let hours = ensemble.hours();
        let pressure = ensemble.paths.first().and_then(|path| path.pressure.first()).copied();
        let pressure = pressure.unwrap_or(Pascal::new(101_325.0));
        let mut rows = Rows { paths, values: vec![0.0; hours * KINDS * paths] };
        let hour = |(hour, rows): (usize, &mut [f32])| {
            let middle = ensemble.start.as_second() + 3_600 * hour as i64 + 1_800;
            let beam = Beam::of(sun::position(middle, place.latitude, place.longitude).unwrap_or(SUN_DOWN), shelter);
            for (at, path) in ensemble.paths.iter().enumerate() {
                for (kind, value) in beam.outside(path, hour, pressure).into_iter().enumerate() {
                    rows[kind * paths + at] = value;
                }
            }
            for row in rows.chunks_exact_mut(paths) {
                (given..paths).for_each(|at| row[at] = row[at - given]);
            }
        };
        rows.values.par_chunks_exact_mut(KINDS * paths).enumerate().with_min_len(24).for_each(hour);
        Self { hours, first_day, latitude: place.latitude, winter_bees: None, pressure, rows }
    }

    /// The same air, hour after hour, without sun or snow: a cellar, a laboratory, a question about one temperature.
    #[must_use]
    pub fn steady(first_day: Date, hours: usize, air: Kelvin, humidity: Fraction, wind: MetrePerSecond) -> Self {
        let pressure = Pascal::new(101_325.0);
        let t = air.celsius();
        let ratio = humidity_ratio(t, humidity.get(), pressure.get());
        let hour = [t as f32, ratio as f32, wind.get() as f32, 0.0, 0.0, 0.0, 0.0, 0.0].map(|value| [value; LANES]);
        let rows = Rows { paths: LANES, values: hour.concat().repeat(hours) };
        Self { hours, first_day, latitude: Degree::new(60.0), winter_bees: None, pressure, rows }
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
        self.rows.paths
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

    /// Outdoor air of an hour on a path; not a number past the end.
    #[must_use]
    pub fn air(&self, hour: usize, path: usize) -> Kelvin {
        Kelvin::from_celsius(f64::from(self.rows.value(hour, Kind::Air, path).unwrap_or(f32::NAN)))
    }

    /// Whether bees can fly in an hour on a path.
    #[must_use]
    pub fn flies(&self, hour: usize, path: usize) -> bool {
        self.rows.value(hour, Kind::Flight, path).is_some_and(|flight| flight > 0.5)
    }

    /// Thermometer, wind and snow of an hour on a path: what a keeper would meet at the hives.
    #[must_use]
    pub fn outside(&self, hour: usize, path: usize) -> Option<Outside> {
        let of = |kind| self.rows.value(hour, kind, path).map(f64::from);
        Some(Outside {
            air: Kelvin::from_celsius(of(Kind::Air)?),
            wind: MetrePerSecond::new(of(Kind::Wind)?),
            snow: Metre::new(of(Kind::Snow)?),
        })
    }

    /// Fills in the hour for the lanes that walk `walk`; `false` past the end.
    #[inline(always)]
    pub(crate) fn hour(&self, hour: usize, walk: &Walk, to: &mut Hour) -> bool {
        let fill =
            |kind: Kind, lanes: &mut [f32; LANES]| self.rows.row(hour, kind).is_some_and(|row| walk.gather(row, lanes));
        fill(Kind::Air, &mut to.air)
            && fill(Kind::Ratio, &mut to.ratio)
            && fill(Kind::Wind, &mut to.wind)
            && fill(Kind::WallSun, &mut to.wall_sun)
            && fill(Kind::RoofSun, &mut to.roof_sun)
            && fill(Kind::Snow, &mut to.snow)
            && fill(Kind::Snowfall, &mut to.snowfall)
            && fill(Kind::Flight, &mut to.flight)
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

    /// An hour of a path at the hives, a value of each [`Kind`].
    fn outside(&self, path: &Hourly, hour: usize, pressure: Pascal) -> [f32; KINDS] {
        let t = path.temperature[hour].celsius();
        let wind = path.wind[hour].get() * self.shelter.wind.get();
        let snow = path.snow_depth[hour].get();
        let direct = path.direct[hour].get() * self.shelter.sun.get();
        let diffuse = path.diffuse[hour].get();
        let level = direct * self.level + diffuse;
        let albedo = if snow > 0.02 { ALBEDO_SNOW } else { ALBEDO_GROUND };
        let wall_sun = direct * self.faced + 0.5 * diffuse + 0.5 * albedo * level;
        let flies = (t > FLIGHT_FROM || (t > FLIGHT_IN_SUN_FROM && level > FLIGHT_SUN))
            && wind < FLIGHT_WIND
            && level > 20.0
            && path.precipitation[hour].get() < FLIGHT_RAIN;
        let ratio = humidity_ratio(t, path.humidity[hour].get(), pressure.get());
        let snowfall = 1_000.0 * path.precipitation[hour].get() * snow_share(path.temperature[hour]).get();
        let flight = if flies { 1.0 } else { 0.0 };
        [t, ratio, wind, wall_sun, level, snow, snowfall, flight].map(|value| value as f32)
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
