//! A hive as its picture needs it: the model's answer and the yard file's measures put where they belong.

mod food;
mod food_body;

use jiff::civil::Date;
use jiff::tz::TimeZone;
use snowhum_advice::HiveAnswer;
use snowhum_advice::now::ColonyNow;
use snowhum_apiary::{
    Act, Apiary, Floor, FrameWay, Hive, HiveBox, Layer, NotedOpenings, Opening, OpeningKind, Side, material,
};
use snowhum_figures::drawing::{CORE_RADIUS, SNOW_ON_ROOF};
use snowhum_picture::{
    Cluster, CombWay, DeadColony, Face, FloorLook, HiveSection, InnerFace, Look, Reading, SectionBox, SectionColony,
    SectionFloor, SectionOpening, Sheet, Snow, Spot, WaterForm, WetFace,
};
use snowhum_say::{Message, Tongue, draw_page as text};
use snowhum_units::{CubicMetrePerSecond, Fraction, Kelvin, KilogramPerSecond, Metre, MetrePerSecond};
use snowhum_winter::{Housed, SteadyQuestion};

use crate::weather_ahead::Today;

/// The colonies with their hives as notes up to the day have changed them.
pub(crate) fn as_dressed(apiary: &Apiary, housed: Vec<Housed>, until: Date) -> Vec<Housed> {
    let zone = jiff::tz::TimeZone::get(&apiary.site.zone).unwrap_or(jiff::tz::TimeZone::UTC);
    let dress = |mut one: Housed| {
        let own = apiary.notes.iter().filter(|note| note.colony == one.colony.id);
        for note in own.filter(|note| note.at.to_zoned_datetime(zone.clone()).date() <= until) {
            for act in note.acts() {
                if let Act::Changed(change) = act
                    && let Ok(changed) = one.hive.with_change(change)
                {
                    one.hive = changed;
                }
            }
        }
        one
    };
    housed.into_iter().map(dress).collect()
}

/// Entrance and upper hole of each colony's hive as notes up to the day's end say.
pub(crate) fn openings_noted(apiary: &Apiary, housed: &[Housed], until: Date) -> Vec<NotedOpenings> {
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let end =
        until.tomorrow().and_then(|next| next.at(0, 0, 0, 0).to_zoned_datetime(zone)).map(|next| next.timestamp());
    let end = end.unwrap_or(jiff::Timestamp::MAX);
    let before = end.checked_sub(jiff::SignedDuration::from_nanos(1)).unwrap_or(end);
    housed.iter().map(|one| apiary.openings_noted(one.colony.id, before)).collect()
}

/// What is known of the bees, the food and the openings of a hive.
pub(crate) struct Within {
    pub(crate) seen_dead: bool,
    pub(crate) bees: Option<f64>,
    /// Food in all.
    pub(crate) stores_kg: f64,
    /// Of it within reach; none where nobody has said.
    pub(crate) reach_kg: Option<f64>,
    /// The body of food on it, and how the cluster stands to it.
    pub(crate) food_body: Option<food_body::Seen>,
    /// Entrance and upper hole as last noted.
    pub(crate) openings: NotedOpenings,
    /// The yard's clock.
    pub(crate) zone: TimeZone,
}

impl Within {
    pub(crate) fn estimated(housed: &Housed, colony: &ColonyNow, openings: NotedOpenings, zone: TimeZone) -> Self {
        let food_body = colony.food_body.as_ref().map(food_body::Seen::of);
        // What hangs in the combs is drawn apart from it.
        let body_kg = food_body.map_or(0.0, |seen| seen.worth_left().get());
        Self {
            seen_dead: colony.seen_dead,
            bees: colony.bees.as_ref().filter(|_| !colony.is_gone()).map(|bees| bees.p50),
            stores_kg: (colony.stores_kg.total.map_or(housed.colony.stores.total.p50.get(), |range| range.p50)
                - body_kg)
                .max(0.0),
            reach_kg: colony.stores_kg.reachable.map(|range| (range.p50 - body_kg).max(0.0)),
            food_body,
            openings,
            zone,
        }
    }
}

/// One hive at steady weather as a picture, with the stores and their places of the yard file.
#[must_use]
pub fn steady_section(housed: &Housed, answer: &HiveAnswer, question: &SteadyQuestion, tongue: Tongue) -> HiveSection {
    let within = Within {
        seen_dead: false,
        bees: question.heater.is_none().then_some(question.bees),
        stores_kg: housed.colony.stores.total.p50.get(),
        reach_kg: None,
        food_body: housed.hive.food_body.map(food_body::Seen::untouched),
        openings: NotedOpenings::default(),
        zone: TimeZone::UTC,
    };
    let (air, humidity, wind) = (question.outside, question.humidity, question.wind);
    of(housed, &within, Some(answer), &Today { air, humidity, wind, snow: Metre::new(0.0) }, tongue)
}

/// A hive as it is dressed, with nobody having looked into it, in no weather.
pub(crate) fn dressed(housed: &Housed, tongue: Tongue) -> HiveSection {
    let within = Within {
        seen_dead: false,
        bees: None,
        stores_kg: housed.colony.stores.total.p50.get(),
        reach_kg: None,
        food_body: housed.hive.food_body.map(food_body::Seen::untouched),
        openings: NotedOpenings::default(),
        zone: TimeZone::UTC,
    };
    let (air, humidity) = (Kelvin::from_celsius(0.0), Fraction::new(1.0));
    let no_weather = Today { air, humidity, wind: MetrePerSecond::new(0.0), snow: Metre::ZERO };
    HiveSection { outside: None, wind: None, ..of(housed, &within, None, &no_weather, tongue) }
}

/// The hive with what is known of it today.
pub(crate) fn of(
    housed: &Housed,
    within: &Within,
    settled: Option<&HiveAnswer>,
    today: &Today,
    tongue: Tongue,
) -> HiveSection {
    let hive = &housed.hive;
    let name = housed.colony.name.clone();
    let mut section = HiveSection::new(name, hive.boxes.iter().map(|one| section_box(one, tongue)).collect());
    section.way = if hive.frames_run_across() { CombWay::Warm } else { CombWay::Cold };
    section.food_body = within.food_body.map(|seen| seen.drawn(hive, within.seen_dead, tongue));
    section.rim = hive.rim.max(section.food_body.as_ref().map_or(Metre::ZERO, |food| food_body::rim(within, food)));
    let sheets = |layers: &[Layer]| layers.iter().map(|layer| sheet(layer, tongue)).collect();
    (section.lid, section.wrap) = (sheets(&hive.lid), sheets(&hive.wrap));
    section.floor = floor(&hive.floor);
    section.stand = hive.stand;
    section.snow = Snow { roof: Metre::new(today.snow.get() * SNOW_ON_ROOF), bank: today.snow };
    section.openings = openings(hive, within, settled, tongue);
    section.outside = Some(today.air);
    section.wind = Some(today.wind);
    section.tongue = tongue;
    let place = food::place(housed, within, settled);
    section.stores = place.stores;
    section.colony = bees(within, settled, place.cluster_height, tongue);
    if let Some(settled) = settled {
        section.temperatures = readings(settled);
        section.wet = wet(settled);
    }
    section
}

impl Within {
    /// What was noted of an opening that is shut.
    fn shut(&self, kind: OpeningKind) -> Option<Message> {
        let noted = self.openings.shut(kind)?;
        Some(text::shut(noted.since.to_zoned_datetime(self.zone.clone()).date(), noted.state.message()))
    }
}

/// How combs lie.
trait Across {
    fn frames_run_across(&self) -> bool;
}

impl Across for Hive {
    fn frames_run_across(&self) -> bool {
        self.frames == FrameWay::Warm
    }
}

fn section_box(one: &HiveBox, tongue: Tongue) -> SectionBox {
    let comb = one.comb_side.get() / (one.length.get() - 0.02).max(0.05);
    SectionBox {
        inner_width: one.width,
        height: one.depth,
        wall: sheet(&one.wall, tongue),
        frames: one.frames,
        spacing: Metre::new(one.width.get() / f64::from(one.frames.max(1))),
        comb_height: Metre::new(comb),
    }
}

fn sheet(layer: &Layer, tongue: Tongue) -> Sheet {
    let name = &layer.material.name;
    let known = material(name).map_or("", |stock| &stock.material.name);
    Sheet { look: Look::of(name), name: tongue.say(&text::material(known, name)), thickness: layer.thickness }
}

fn floor(floor: &Floor) -> SectionFloor {
    let rise = Metre::new(0.022);
    let mesh = Metre::new(0.045);
    match floor {
        Floor::Solid(layer) => SectionFloor { kind: FloorLook::Solid, thickness: layer.thickness, rise },
        Floor::OpenMesh => SectionFloor { kind: FloorLook::Mesh, thickness: mesh, rise },
        Floor::TrayedMesh(_) => SectionFloor { kind: FloorLook::TrayedMesh, thickness: mesh, rise },
    }
}

/// Least difference of height, m, from which openings are told apart as low and high.
const APART_M: f64 = 0.02;

/// Openings with the air that a settled hive draws: in through the low ones, out through the high ones, by their areas.
/// Where all lie at one height (a mesh floor outdoes the rest) air goes both ways, and no opening's share is known.
fn openings(hive: &Hive, within: &Within, settled: Option<&HiveAnswer>, tongue: Tongue) -> Vec<SectionOpening> {
    let flow = settled.map_or(f64::NAN, |answer| answer.air_flow_l_per_s / 1e3);
    let free = |opening: &Opening| within.openings.free(opening.kind);
    let through = |opening: &Opening| free(opening).get() * opening.area.get() * opening.discharge.get();
    let all: f64 = hive.openings.iter().map(through).sum();
    let middle = hive.openings.iter().map(|o| o.height.get() * through(o)).sum::<f64>() / all.max(1e-12);
    let is_low = |opening: &Opening| opening.height.get() < middle - APART_M;
    let is_high = |opening: &Opening| opening.height.get() > middle + APART_M;
    let low: f64 = hive.openings.iter().filter(|o| is_low(o)).map(through).sum();
    let high: f64 = hive.openings.iter().filter(|o| is_high(o)).map(through).sum();
    let share = |opening: &Opening| match (is_low(opening), is_high(opening)) {
        _ if low <= 0.0 || high <= 0.0 => f64::NAN,
        (true, _) => flow * through(opening) / low,
        (_, true) => -flow * through(opening) / high,
        _ => f64::NAN,
    };
    let drawn = |opening: &Opening| SectionOpening {
        open: free(opening),
        shut: within.shut(opening.kind).map(|says| tongue.say(&says)),
        ..section_opening(hive, opening, share(opening), tongue)
    };
    hive.openings.iter().map(drawn).collect()
}

fn section_opening(hive: &Hive, opening: &Opening, flow: f64, tongue: Tongue) -> SectionOpening {
    let area = opening.area.get();
    let across = hive.boxes.first().map_or(0.4, |one| one.width.get());
    let (name, width, depth) = match opening.kind {
        OpeningKind::Entrance => (text::entrance(), (area / 0.008).min(across), 0.008),
        OpeningKind::UpperHole => (text::upper_hole(), area.sqrt(), area.sqrt()),
        OpeningKind::Mesh => (text::mesh(), across, area / across),
        OpeningKind::Crack => (text::joints(), 0.0, 0.0),
    };
    SectionOpening {
        name: tongue.say(&name),
        face: face(opening.side),
        height: opening.height,
        width: Metre::new(width),
        depth: Metre::new(depth),
        open: Fraction::new(1.0),
        shut: None,
        flow: CubicMetrePerSecond::new(flow),
    }
}

fn face(side: Side) -> Face {
    match side {
        Side::Front => Face::Front,
        Side::Back => Face::Back,
        Side::Left => Face::Left,
        Side::Right => Face::Right,
        Side::Below => Face::Below,
        Side::Round => Face::Round,
    }
}

fn bees(within: &Within, settled: Option<&HiveAnswer>, height: Metre, tongue: Tongue) -> SectionColony {
    let across = Fraction::new(0.5);
    if within.seen_dead {
        let words = tongue.say(&text::seen_dead());
        return SectionColony::Dead(DeadColony { across, height, radius: Metre::new(0.06), words });
    }
    let Some((settled, bees)) = settled.zip(within.bees) else {
        return SectionColony::None;
    };
    SectionColony::Alive(Cluster {
        across,
        height,
        radius: Metre::new(settled.radius_cm / 100.0),
        core_radius: Metre::new(CORE_RADIUS * settled.radius_cm / 100.0),
        core: Kelvin::from_celsius(settled.core_c),
        mantle: Kelvin::from_celsius(settled.mantle_c),
        bees: bees.clamp(0.0, 1e6) as u32,
    })
}

fn readings(settled: &HiveAnswer) -> Vec<Reading> {
    let surface = settled.surface_c;
    [
        (Spot::WarmZone, settled.warm_zone_c),
        (Spot::ColdZone, settled.floor_zone_c),
        (Spot::Lid, surface.lid),
        (Spot::Walls, surface.walls),
        (Spot::Floor, surface.floor),
    ]
    .map(|(spot, celsius)| Reading { spot, temperature: Kelvin::from_celsius(celsius) })
    .to_vec()
}

/// Grams a day from which a face is drawn wet.
const WET: f64 = 0.5;

fn wet(settled: &HiveAnswer) -> Vec<WetFace> {
    let (grams, surface) = (settled.condensation_g_per_day, settled.surface_c);
    let faces = [
        (InnerFace::Lid, grams.lid, surface.lid),
        (InnerFace::Walls, grams.walls, surface.walls),
        (InnerFace::Floor, grams.floor, surface.floor),
    ];
    let face = |(face, grams, celsius): (InnerFace, f64, f64)| {
        let form = if celsius < 0.0 { WaterForm::Frost } else { WaterForm::Water };
        (grams >= WET).then(|| WetFace { face, form, rate: KilogramPerSecond::new(grams / 86_400e3) })
    };
    faces.into_iter().filter_map(face).collect()
}
