//! Probe.
use snowhum_apiary::*;
use snowhum_units::*;
use snowhum_winter::*;
use uuid::Uuid;

fn material(name: &str, k: f64, rho: f64, c: f64, mu: f64) -> Material {
    Material { name: name.into(), conductivity: WattPerMetreKelvin::new(k), density: KilogramPerCubicMetre::new(rho), specific_heat: JoulePerKilogramKelvin::new(c), vapour_resistance: mu }
}
fn sheet(m: &Material, mm: f64) -> Layer { Layer { material: m.clone(), thickness: Metre::new(mm / 1000.0) } }
fn hive(foam_lid: bool, foam_walls: bool, hole: bool, boxes: usize) -> Hive {
    let pine = material("pine", 0.12, 450.0, 1600.0, 50.0);
    let ply = material("ply", 0.13, 500.0, 1600.0, 70.0);
    let xps = material("xps", 0.034, 35.0, 1450.0, 150.0);
    let mut lid = vec![sheet(&ply, 10.0)];
    if foam_lid { lid.push(sheet(&xps, 50.0)); }
    let one = HiveBox { size: "deep".into(), length: Metre::new(0.467), width: Metre::new(0.375), depth: Metre::new(0.244), wall: sheet(&pine, 19.0), frames: 10, comb_side: SquareMetre::new(0.0869) };
    let mut openings = vec![
        Opening { kind: OpeningKind::Entrance, area: SquareMetre::new(7.5e-4), height: Metre::new(0.01), discharge: Fraction::new(0.61), side: Side::Front },
        Opening { kind: OpeningKind::Crack, area: SquareMetre::new(1.0e-4), height: Metre::new(0.25), discharge: Fraction::new(0.61), side: Side::Round }];
    if hole { openings.push(Opening { kind: OpeningKind::UpperHole, area: SquareMetre::new(3.0e-4), height: Metre::new(0.45 * boxes as f64 / 2.0), discharge: Fraction::new(0.61), side: Side::Front }); }
    Hive { id: HiveId(Uuid::nil()), name: "h".into(), standard: "L".into(), floor: Floor::Solid(sheet(&pine, 19.0)), boxes: vec![one; boxes], frames: FrameWay::Cold, lid, lid_breathes: false,
        wrap: if foam_walls { vec![sheet(&xps, 25.0)] } else { vec![] }, wall_absorptance: Fraction::new(0.7), roof_absorptance: Fraction::new(0.5), rim: Metre::new(0.01), openings, facing: Degree::new(180.0), stand: Metre::new(0.4), neighbour: None }
}
fn colony() -> Colony {
    Colony { id: ColonyId(Uuid::from_u128(7)), name: "c".into(), hive: HiveId(Uuid::nil()), bees: Range::exact(17_700.0), sealed_brood: Range::exact(0.0), frames_of_bees: 8.0,
        stores: Stores { total: Range::exact(Kilogram::new(20.0)), place: StoresPlace { touched: 0.1, above: 0.6, beside: 0.2, far: 0.1 }, kind: StoresKind::Sugar, known_by: KnownBy::Scale },
        mites: Mites::NotCounted, queen: Queen { year: Some(2024), seen_or_laying: Some(true), late_mated: false }, treatments: vec![], quick_start: false }
}
#[test]
fn probe() {
    let p = Parameters::shipped().unwrap();
    for (name, h) in [("bare2", hive(false,false,true,2)), ("lid2", hive(true,false,true,2)), ("wrapped2", hive(true,true,true,2)), ("bare1nohole", hive(false,false,false,1))] {
        println!("{name}");
        for (t, bees, brood, heater) in [(-30.,17700.,0.,None),(-20.,17700.,0.,None),(-10.,17700.,0.,None),(0.,17700.,0.,None),(5.,17700.,0.,None),(10.,17700.,0.,None),(14.,17700.,0.,None),(5.,17700.,4000.,None),(-20.,6000.,0.,None),(2.,10600.,0.,None),(-10.,0.,0.,Some(10.))] {
            let q = SteadyQuestion { outside: Kelvin::from_celsius(t), humidity: Fraction::new(0.85), wind: MetrePerSecond::new(1.0), bees, brood_cells: brood, heater: heater.map(Watt::new), start: StartFrom::Cold };
            let a = steady(&Housed { colony: colony(), hive: h.clone(), neighbour: None }, &p, q);
            let g = |k: KilogramPerSecond| k.get() * 86_400e3;
            println!("{t:6.1} {bees:6} {brood:5} | W {:6.2} core {:5.1} mantle {:5.1} warm {:6.2} cold {:6.2} | food {:5.1} W/K {:5.2} flow {:.3} L/s RH {:.2} co2 {:.2}% cond {:5.1} {:5.1} {:5.1} drip {:.1} {:?} r {:.3}", a.heat.get(), a.core.celsius(), a.mantle.celsius(), a.warm_zone.celsius(), a.floor_zone.celsius(), g(a.food), a.heat_loss.get(), a.air_flow.get()*1e3, a.relative_humidity.get(), a.carbon_dioxide.get()*100., g(a.condensation[0]), g(a.condensation[1]), g(a.condensation[2]), g(a.drip), a.upper_hole, a.radius.get());
        }
    }
}

#[test]
fn speed() {
    let p = Parameters::shipped().unwrap();
    let env = Environment::steady(jiff::civil::date(2025, 10, 5), 4344, Kelvin::from_celsius(-5.0), Fraction::new(0.85), MetrePerSecond::new(1.5));
    let housed = [Housed { colony: colony(), hive: hive(true, false, true, 2), neighbour: None }];
    let yard = Yard { environment: &env, parameters: &p, colonies: &housed };
    for _ in 0..3 {
        let t = std::time::Instant::now();
        let out = run(&yard, &Schedule::default(), Settings { members: 1024, seed: 1, record: Record::End });
        let dt = t.elapsed().as_secs_f64();
        let alive: f64 = out[0].ends.iter().map(|e| e.alive()).sum::<f64>() / 1024.0;
        println!("{:.3} s, {:.1} ns per particle-hour (threads {}), alive {alive:.3}", dt, dt * 1e9 / (1024.0 * 4344.0), rayon::current_num_threads());
    }
}
