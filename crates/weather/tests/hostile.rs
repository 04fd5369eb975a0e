//! Whatever bytes come, a reader answers within five seconds and does not panic.

use jiff::tz::{Offset, TimeZone};
use snowhum_units::{Degree, Metre};
use snowhum_weather::{Place, complete, readers};
use std::time::{Duration, Instant};

fn place() -> Place {
    Place { latitude: Degree::new(61.7), longitude: Degree::new(27.3), elevation: Metre::new(105.0) }
}

fn all_readers(bytes: &[u8]) {
    let begun = Instant::now();
    let Ok(mapping) = readers::Mapping::read("temperature=a:C,time=t", TimeZone::UTC) else { return };
    let apart = "year=t,month=t,day=t,hour=a,minute=t,temperature=a:C,latitude=a,longitude=t,elevation=a:m";
    let Ok(apart) = readers::Mapping::read(apart, TimeZone::UTC) else { return };
    let _ = readers::guessed_columns(bytes, &TimeZone::UTC, place());
    let read = [
        readers::station_csv(bytes, "x", &apart, None),
        readers::epw(bytes, "x"),
        readers::isd_lite(bytes, "x"),
        readers::ghcn_daily(bytes, "x", place(), Offset::UTC),
        readers::station_csv(bytes, "x", &mapping, Some(place())),
    ];
    for reading in read.into_iter().flatten() {
        let _ = complete(&reading.raw, &reading.file, place(), &TimeZone::UTC).map_err(|fault| fault.to_string());
    }
    assert!(begun.elapsed() < Duration::from_secs(5), "{:?}", begun.elapsed());
}

const HEAD: &str = "LOCATION,x,-,FIN,none,0,61.7,27.3,2.0,105\n";

#[test]
fn small_oddities_are_survived() {
    for text in [
        "",
        "\n\n",
        "\u{feff}",
        "\0\0\0",
        ",",
        ",,,,\n",
        "LOCATION",
        "LOCATION,,,,,,,,,",
        "1,1,1,1",
        "t,a",
        "t,a\n,",
        "\"",
        "LOCATION,x,-,F,n,0,nan,inf,99,1e9\n",
        "2018 01 01 00",
        "-9999 -9999 -9999 -9999 1 1 1 1 1 1 1 1",
        "9999 12 31 23 1 1 1 1 1 1 1 1\n0001 01 01 00 1 1 1 1 1 1 1 1",
        "2147483647 1 1 1 1 1 1 1 1 1 1 1",
        "A,99991231,TMAX,1\nA,00010101,TMAX,1",
        "A,20240230,TMAX,1",
        "A,éééééééé,TMAX,1",
        "t,a\n9999-12-31 23:59,1\n0001-01-01,1",
        "t,a\n2025-01-01T00:00:00+99:99,1",
        "t,a\n2025-01-01 12:00,1e400",
    ] {
        all_readers(text.as_bytes());
    }
    for (first, second) in
        [("9999,12,31,24", "-9999,1,1,1"), ("32767,1,1,1", "1,2,29,1"), ("2001,2,29,24", "2004,2,29,1")]
    {
        let row = |date: &str| format!("{date},0,-,{}\n", ["1"; 29].join(","));
        all_readers(format!("{HEAD}{}{}", row(first), row(second)).as_bytes());
    }
}

#[test]
fn large_nonsense_is_answered_in_time() {
    let long_line = "9".repeat(4_000_000);
    all_readers(long_line.as_bytes());
    all_readers(",".repeat(4_000_000).as_bytes());
    all_readers("1,\n".repeat(1_000_000).as_bytes());
    all_readers(&vec![0xff; 4_000_000]);
    all_readers("2018 01 01 00 1 1 1 1 1 1 1 1\n".repeat(200_000).as_bytes());
    let rows: String = (0..30_000)
        .map(|n| format!("A,{}{:02}{:02},TMAX,{}\n", 1900 + n % 99, n % 12 + 1, n % 28 + 1, n % 300))
        .collect();
    all_readers(rows.as_bytes());
}

/// Bytes of a real row, some of them changed by a small keyed generator.
#[test]
fn mutated_rows_do_not_panic() {
    let seeds: [&[u8]; 4] = [
        b"LOCATION,x,-,FIN,none,0,61.7,27.3,2.0,105\n1991,1,1,1,0,?9,-42.70,-42.70,100,97000,0,0,98,0,0,0,0,0,0,0,0,0.00,0,0,12.8,77777,9,9,2,0.0370,0,88,0.590,0.0,1.0\n",
        b"2018 01 01 00  -228 -9999 -9999 -9999    15     4 -9999 -9999\n2018 01 01 01  -256  -278 10257     0     0 -9999     0 -9999\n",
        b"A,20240115,TMAX,-105,,,S,0700\nA,20240115,TMIN,-245,,,S,\n",
        b"t,a\n2025-01-31 12:00,14\n31.1.2025 1:30 PM,16\n",
    ];
    let key = snowhum_draws::Key::new(1, 9);
    for round in 0..4_000_u32 {
        let mut bytes = seeds[round as usize % 4].to_vec();
        for change in 0..1 + round % 5 {
            let [at, what, ..] = key.uniforms([round, change, 0, 0]);
            let at = (at * bytes.len() as f64) as usize;
            bytes[at] = (what * 256.0) as u8;
        }
        all_readers(&bytes);
    }
}
