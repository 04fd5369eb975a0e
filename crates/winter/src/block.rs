//! The state of [`LANES`](crate::LANES) members, one array a quantity.

use crate::lanes::{LANES, Lanes};

/// Surfaces that can be wet or frosted.
pub(crate) const SURFACES: usize = 4;
/// The inside of the lid.
pub(crate) const LID: usize = 0;
/// The walls of the warm zone.
pub(crate) const WALL: usize = 1;
/// The walls of the cold zone.
pub(crate) const LOW_WALL: usize = 2;
/// The floor.
pub(crate) const FLOOR: usize = 3;

/// Causes of an end, in the order of [`crate::Ends`].
pub(crate) const CAUSES: usize = 6;

/// State that is held lane by lane.
pub(crate) trait CopyLane {
    /// Makes lane `lane` what lane `from` of `other` is.
    fn copy_lane(&mut self, lane: usize, other: &Self, from: usize);
}

macro_rules! lanes {
    ($(#[$outer:meta])* $vis:vis struct $name:ident { $($(#[$doc:meta])* $field:ident,)* }) => {
        $(#[$outer])*
        #[derive(Debug, Clone, PartialEq)]
        // A wide vector that lies across two cache lines takes two loads.
        #[repr(align(64))]
        $vis struct $name { $($(#[$doc])* pub(crate) $field: Lanes,)* }
        impl Default for $name {
            fn default() -> Self {
                Self { $($field: [0.0; LANES],)* }
            }
        }
        impl CopyLane for $name {
            fn copy_lane(&mut self, lane: usize, other: &Self, from: usize) {
                $(self.$field[lane] = other.$field[from];)*
            }
        }
    };
}

lanes! {
    /// What sets a member apart from the others for a whole run.
    pub(crate) struct Traits {
        /// W/K at reference mass and tightest, core to air.
        core_air,
        /// W/kg.
        power_ceiling,
        /// kg of food in touch a kg of bees.
        touched,
        /// °C.
        climb_from,
        /// °C.
        cross_from,
        /// Deaths a bee and day of a young winter bee.
        winter_hazard,
        /// Days of age at which the ageing part of that has grown as large as the constant one.
        ageing_from,
        /// One over the days in which it grows e-fold.
        ageing,
        /// Days of age that a day without brood adds.
        resting_pace,
        /// Times that for damaged bees.
        damaged_factor,
        /// Bees below which a cluster fails.
        viable,
        /// Chance a day that a cluster far below viable is lost.
        failing_rate,
        /// Hazard a day of being lost to what nobody names.
        background,
        /// How many times that comes with the viruses of its mites beside it.
        viruses,
        /// Chance a day that the queen fails.
        queen_hazard,
        /// W/kg at rest at 20 °C.
        rest,
        /// Eggs a day of a full colony in May; fewer where she who lays is no sound queen.
        laying,
        /// Bees at which a colony lays half of that.
        laying_half,
        /// Hours of led light at which the season allows half of that.
        brood_light,
        /// One over the hours over which the season opens e-fold.
        brood_light_slope,
        /// Cells of brood at which half of the core is nest.
        nest_cells,
        /// kg of stores fed for each bee reared.
        brood_food,
        /// Share of that laid in any season if it is warm.
        any_season,
        /// Share of brood that grows up to be workers.
        workers,
        /// W/(m² K) between the zones.
        exchange,
        /// Share of winter bees reared from now on that mites spoil.
        spoilt,
    }
}

lanes! {
    /// Heat and air: temperatures in °C.
    pub(crate) struct Heat {
        /// Air round and over the cluster.
        warm,
        /// Air below.
        cold,
        /// Combs of the warm zone.
        comb,
        /// Combs of the cold zone.
        low_comb,
        /// Share of its zone's temperature that the warm combs take up in an hour.
        comb_share,
        /// The same of the cold combs.
        low_comb_share,
        /// Heat capacity of the warm combs over the step, W/K.
        comb_capacity,
        /// Heat capacity of the cold combs over the step, W/K.
        low_comb_capacity,
        /// Core of the cluster.
        core,
        /// Mantle of the cluster.
        mantle,
        /// Metabolic heat in all, W.
        metabolic,
        /// Heat of a plain heater in place of bees, W.
        heater,
        /// Air through the hive from below to above, kg/s.
        through,
        /// Air in and out of the cold zone alone, kg/s.
        exchange_low,
        /// Share of the entrance that is free.
        entrance_free,
        /// Share of the upper hole that is free.
        hole_free,
        /// Snow on the roof, kg/m².
        roof_snow,
        /// Heat that the food in touch can give in the hour, W.
        fuel,
    }
}

lanes! {
    /// A surface with its temperature and water.
    pub(crate) struct Surface {
        /// °C.
        temperature,
        /// kg.
        liquid,
        /// kg.
        ice,
        /// Water arriving from the air (leaving: negative), kg/s, last hour.
        flux,
        /// Latent heat on its way into the surface, W.
        latent,
        /// Heat taken up by melting (given by freezing: negative), W.
        fusion,
        /// Share of its zone's temperature in its own at the end of the hour.
        share,
        /// Mean over the hour, °C.
        mean,
        /// Share of its zone's temperature in that.
        mean_share,
        /// Humidity ratio of its zone below which it gives off all it has.
        bend,
        /// The most it can give, kg/s.
        given,
    }
}

lanes! {
    /// Water in the air, and where it went.
    pub(crate) struct Water {
        /// Humidity ratio of the warm zone.
        warm,
        /// Humidity ratio of the cold zone.
        cold,
        /// Ratio over which fog falls from the warm zone.
        warm_fog,
        /// Ratio over which fog falls from the cold zone.
        cold_fog,
        /// kg of vapour in the warm air.
        warm_air,
        /// kg of vapour in the cold air.
        cold_air,
        /// Vapour from the bees, kg/s.
        source,
        /// Drips from the lid on the cluster, kg/s.
        drip,
        /// Runs out at the entrance, kg/s.
        drained,
    }
}

lanes! {
    /// Carbon dioxide, from which oxygen follows: a mole of one is made for each of the other.
    pub(crate) struct Gas {
        /// kg of it a kilogram of the warm zone's dry air.
        warm,
        /// The same of the cold zone.
        cold,
        /// Share of their full heat that bees can give in this air.
        breath,
    }
}

lanes! {
    /// The balances of heat and water while an hour is stepped; nothing of it is carried to the next.
    pub(crate) struct Balance {
        /// What the nodes of the warm zone take up a kelvin, W/K.
        warm_diagonal,
        /// What they give at 0 °C, W.
        warm_constant,
        /// The same of the cold zone.
        cold_diagonal,
        /// The same of the cold zone.
        cold_constant,
        /// Sensible heat of bees at rest, W.
        rest,
        /// The cold zone with the warm one at 0 °C, °C.
        low_fixed,
        /// Share of the warm zone's temperature in the cold zone's.
        low_share,
        /// What the warm zone loses a kelvin with all that hangs on it, W/K.
        total,
        /// What it is given at 0 °C, W.
        fixed,
        /// Water that leaves the warm zone's air for a unit of ratio, kg/s.
        warm_out,
        /// The same of the cold zone.
        cold_out,
        /// Of that, what goes up to the warm zone.
        upward,
        /// What the zones trade either way.
        mixed,
        /// Water that enters the warm zone's air in any case, kg/s.
        warm_in,
        /// The same of the cold zone.
        cold_in,
    }
}

lanes! {
    /// Food in kg of honey.
    pub(crate) struct Stores {
        /// In touch with the cluster.
        touched,
        /// Over it in the same seams.
        above,
        /// In the next combs.
        beside,
        /// At the far side.
        far,
        /// Solid feed over the cluster.
        feed,
        /// A body of food on the hive.
        body,
        /// 1 for one over the cluster, 0 for one to the side of it.
        body_over,
        /// What was eaten off it.
        body_taken,
        /// The day after that on which it was first eaten from; 0 if it never was.
        body_day,
        /// Scattered or set hard: never eaten.
        unusable,
        /// In the bees' crops.
        crop,
        /// Eaten in the hour.
        eaten,
        /// Hours with empty crops.
        hungry_hours,
        /// All food eaten since the start, brood's too.
        used,
        /// Day on which the crops were first empty; infinite if never.
        first_hungry_day,
    }
}

lanes! {
    /// Bees and brood, in heads and cells.
    pub(crate) struct Bees {
        /// Sound winter bees.
        winter,
        /// Winter bees spoilt by mites as brood.
        damaged,
        /// Bees left over from summer.
        summer,
        /// Bees reared after the solstice.
        spring,
        /// What the winter bees would be without mites.
        unharmed,
        /// Age of the winter bees, days as a nurse ages.
        age,
        /// Eggs and larvae.
        open_brood,
        /// Sealed brood.
        sealed_brood,
        /// Mass of all bees, kg.
        mass,
        /// (mass / reference mass)^(2/3), renewed each day.
        size,
        /// How loose the cluster is: 0 tightest, 1 loosest.
        loose,
        /// W/K of the cluster as it is: core to air.
        core_air,
        /// Share of the core that is brood nest.
        nest,
        /// What the nest's warmth over a broodless core asks of the cluster, K, times the cluster's scale round a nest.
        nest_scale,
        /// Two-week mean of the outdoor air, °C.
        warmth,
        /// Share of the days of the last two weeks on which bees flew.
        flown,
        /// Days since the last flight.
        confined_days,
        /// Bees that died yesterday.
        died,
        /// Deaths in this day's hazard noise, as a factor.
        scatter,
    }
}

/// How much of a member's chance is still alive, and how the rest ended.
#[derive(Debug, Clone, PartialEq)]
#[repr(align(64))]
pub(crate) struct Fate {
    /// Alive with a queen.
    pub(crate) queenright: Lanes,
    /// Alive, the queen failed.
    pub(crate) queenless: Lanes,
    /// Ended, by cause.
    pub(crate) ended: [Lanes; CAUSES],
    /// 1 for a member that stands for a living colony, 0 for one that stands for a dead hive.
    pub(crate) living: Lanes,
}

impl CopyLane for Fate {
    fn copy_lane(&mut self, lane: usize, other: &Self, from: usize) {
        self.queenright[lane] = other.queenright[from];
        self.queenless[lane] = other.queenless[from];
        self.living[lane] = other.living[from];
        for (ended, of) in self.ended.iter_mut().zip(&other.ended) {
            ended[lane] = of[from];
        }
    }
}

impl Default for Fate {
    fn default() -> Self {
        Self { queenright: [1.0; LANES], queenless: [0.0; LANES], ended: [[0.0; LANES]; CAUSES], living: [1.0; LANES] }
    }
}

lanes! {
    /// Sums over the hours of a day, from which the daily step and the history are made.
    pub(crate) struct Tally {
        /// Air round the cluster, K h over 0 °C.
        warm,
        /// Air below, K h over 0 °C.
        cold,
        /// Warm zone over outdoors, K h.
        excess,
        /// Metabolic and heater heat, W h.
        heat,
        /// Food eaten by bees, kg.
        eaten,
        /// Air through the hive, kg/s h.
        through,
        /// Air in and out below, kg/s h.
        exchange_low,
        /// Water caught by the lid, kg/s h (gross).
        lid,
        /// Water caught by all walls.
        walls,
        /// Water caught by the floor.
        floor,
        /// Drips on the cluster.
        drip,
        /// Hours with frost at the upper hole.
        frost,
        /// Hours with a wet upper hole.
        damp,
        /// How far the mantle fell below the limit of motion for want of power, K h.
        chilled,
        /// Hours in which bees flew.
        flight,
        /// Hours fit for flight with no way out.
        locked_in,
        /// Carbon dioxide over the harmful level, as a share of the way to the deadly one, h.
        stifled,
    }
}

lanes! {
    /// The outside as this hive feels it in one hour; the same for all members on one weather path.
    pub(crate) struct Boundary {
        /// Outdoor air, °C.
        air,
        /// Outdoor humidity ratio.
        ratio,
        /// Wind at the hive, m/s.
        wind,
        /// Lid to outdoors, W/K.
        lid,
        /// What the lid's outside sees, °C: air, warmed by sun.
        lid_sees,
        /// Upper walls to outdoors, W/K.
        wall,
        /// Lower walls to outdoors, W/K.
        low_wall,
        /// What the walls' outside sees, °C.
        wall_sees,
        /// Floor to outdoors, W/K.
        floor,
        /// Share of the entrance free of snow.
        entrance_snow_free,
        /// 1 in an hour in which bees can fly.
        flight,
    }
}

/// A block: everything that changes from hour to hour.
#[derive(Debug, Clone, PartialEq, Default)]
pub(crate) struct Block {
    pub(crate) traits: Traits,
    pub(crate) heat: Heat,
    pub(crate) surfaces: [Surface; SURFACES],
    pub(crate) water: Water,
    pub(crate) gas: Gas,
    pub(crate) stores: Stores,
    pub(crate) bees: Bees,
    pub(crate) fate: Fate,
    pub(crate) tally: Tally,
    pub(crate) balance: Balance,
}

impl CopyLane for Block {
    fn copy_lane(&mut self, lane: usize, other: &Self, from: usize) {
        self.traits.copy_lane(lane, &other.traits, from);
        self.heat.copy_lane(lane, &other.heat, from);
        for (surface, of) in self.surfaces.iter_mut().zip(&other.surfaces) {
            surface.copy_lane(lane, of, from);
        }
        self.water.copy_lane(lane, &other.water, from);
        self.gas.copy_lane(lane, &other.gas, from);
        self.stores.copy_lane(lane, &other.stores, from);
        self.bees.copy_lane(lane, &other.bees, from);
        self.fate.copy_lane(lane, &other.fate, from);
        self.tally.copy_lane(lane, &other.tally, from);
        self.balance.copy_lane(lane, &other.balance, from);
    }
}
