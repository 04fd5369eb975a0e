//! One flipped bit anywhere in what a store's file says: the doctor ends, ends well, and says so.
//!
//! A bit says something where it lies in the header, in a page's head, in a list of cells or in a cell that is listed,
//! by SQLite's own form (<https://www.sqlite.org/fileformat2.html>); the gaps between hold what nobody reads. Which bits
//! those are is found here from the bytes, apart from the code under test.

use crate::house::{Folder, demo, note, now, run};
use snowhum_store::{Found, Report, Store};
use std::ops::Range;
use std::path::Path;
use std::sync::mpsc;
use std::time::Duration;

const PAGE: usize = 4096;
/// How long the doctor may take with a file of some hundred kilobytes.
const PATIENCE: Duration = Duration::from_secs(20);

#[test]
fn five_hundred_flipped_bits_and_none_goes_unnoticed() {
    flip(500, 1);
}

#[test]
#[ignore = "takes minutes: cargo test -p snowhum-store -- --ignored twenty_thousand"]
fn twenty_thousand_flipped_bits_and_none_goes_unnoticed() {
    flip(20_000, 2);
}

fn flip(count: u64, seed: u64) {
    let folder = Folder::new("flipped");
    run(make(&folder.store()));
    let whole = std::fs::read(folder.store()).unwrap();
    let meant = meant(&whole);
    let bytes: usize = meant.iter().map(|range| range.len()).sum();
    assert!(bytes > whole.len() / 3, "{bytes} of {}", whole.len());
    let mut unnoticed = Vec::new();
    for number in 0..count {
        let draw = scattered(seed * 1_000_000 + number);
        let (byte, bit) = (pick(&meant, draw as usize / 8 % bytes), draw % 8);
        let mut bytes = whole.clone();
        bytes[byte] ^= 1 << bit;
        let path = folder.path().join(format!("{number}.db"));
        std::fs::write(&path, bytes).unwrap();
        if !is_noticed(&path) {
            unnoticed.push(format!("page {} byte {} bit {bit}", byte / PAGE + 1, byte % PAGE));
        }
        std::fs::remove_file(&path).unwrap();
    }
    assert!(unnoticed.is_empty(), "{} of {count}: {unnoticed:?}", unnoticed.len());
}

/// A store with pages of every kind: some of several levels, some that run over.
async fn make(path: &Path) {
    let store = Store::open(path).await.unwrap();
    store.import_yard(&demo(), now()).await.unwrap();
    for n in 0..120 {
        store.put_note(&note(n), now()).await.unwrap();
    }
    let mut long = note(200);
    long.entries = vec![snowhum_apiary::Entry::Words("many words ".repeat(2000))];
    store.put_note(&long, now()).await.unwrap();
    store.set("web.units", "us").await.unwrap();
    store.close().await;
    assert!(Store::doctor_of(path).await.unwrap().is_well());
}

/// Whether the doctor says so, in time and without a thread that ends in panic.
fn is_noticed(path: &Path) -> bool {
    let (tell, told) = mpsc::channel();
    let path = path.to_owned();
    let looking = std::thread::spawn(move || {
        let report = run(Store::doctor_of(&path));
        let _ = tell.send(());
        report
    });
    let ended = told.recv_timeout(PATIENCE);
    assert!(ended.is_ok(), "the doctor ended in panic or not at all: {ended:?}");
    // SQLite's own thread would say what it says on the error stream, and the doctor would call it crashed.
    let crashed = |words: String| assert!(!words.contains("crashed"), "{words}");
    match looking.join().unwrap() {
        Err(fault) => crashed(fault.to_string()),
        Ok(Report { checks }) => {
            let told = checks.iter().filter(|check| check.what != "notes" && check.found != Found::Well);
            return told.map(|check| crashed(format!("{check:?}"))).count() > 0;
        }
    }
    true
}

/// Numbers that look like none in particular (splitmix64).
fn scattered(number: u64) -> u64 {
    let mut mixed = number.wrapping_mul(0x9e37_79b9_7f4a_7c15);
    mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    mixed ^ (mixed >> 31)
}

fn pick(ranges: &[Range<usize>], mut number: usize) -> usize {
    for range in ranges {
        if number < range.len() {
            return range.start + number;
        }
        number -= range.len();
    }
    unreachable!("beyond what is meant")
}

/// Where the file says something.
fn meant(file: &[u8]) -> Vec<Range<usize>> {
    let header = 0..100;
    let mut meant = vec![header];
    let mut over = Vec::new();
    for page in 0..file.len() / PAGE {
        let (start, head) = (page * PAGE, if page == 0 { 100 } else { 0 });
        let at = start + head;
        let (is_leaf, is_table) = match file[at] {
            2 => (false, false),
            5 => (false, true),
            10 => (true, false),
            13 => (true, true),
            _ => continue,
        };
        let cells = usize::from(u16::from_be_bytes([file[at + 3], file[at + 4]]));
        let list = at + if is_leaf { 8 } else { 12 };
        meant.push(at..list + 2 * cells);
        for cell in 0..cells {
            let place = list + 2 * cell;
            let cell = start + usize::from(u16::from_be_bytes([file[place], file[place + 1]]));
            meant.push(cell..cell + length(&file[cell..], is_leaf, is_table, &mut over));
        }
    }
    for (first, length) in over {
        run_over(file, first, length, &mut meant);
    }
    meant
}

/// Bytes of a cell on its page; what runs over is noted with its first page and bytes.
fn length(cell: &[u8], is_leaf: bool, is_table: bool, over: &mut Vec<(usize, usize)>) -> usize {
    let child = if is_leaf { 0 } else { 4 };
    if is_table && !is_leaf {
        return child + varint(&cell[child..]).1;
    }
    let (payload, mut head) = varint(&cell[child..]);
    head += child;
    if is_table {
        head += varint(&cell[head..]).1;
    }
    let most = if is_table { PAGE - 35 } else { (PAGE - 12) * 64 / 255 - 23 };
    if payload <= most {
        return head + payload;
    }
    let least = (PAGE - 12) * 32 / 255 - 23;
    let here = least + (payload - least) % (PAGE - 4);
    let here = if here <= most { here } else { least };
    let first = u32::from_be_bytes(cell[head + here..head + here + 4].try_into().unwrap());
    over.push((first as usize, payload - here));
    head + here + 4
}

fn run_over(file: &[u8], mut page: usize, mut length: usize, meant: &mut Vec<Range<usize>>) {
    while length > 0 {
        let start = (page - 1) * PAGE;
        let here = length.min(PAGE - 4);
        meant.push(start..start + 4 + here);
        page = u32::from_be_bytes(file[start..start + 4].try_into().unwrap()) as usize;
        length -= here;
    }
}

/// A number of one to nine bytes, and how many.
fn varint(bytes: &[u8]) -> (usize, usize) {
    let mut number = 0;
    for (place, byte) in bytes.iter().take(8).enumerate() {
        number = number << 7 | usize::from(byte & 0x7f);
        if byte & 0x80 == 0 {
            return (number, place + 1);
        }
    }
    (number << 8 | usize::from(bytes[8]), 9)
}
