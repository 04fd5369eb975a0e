//! The first hundred bytes of a SQLite file (<https://www.sqlite.org/fileformat2.html>, section 1.3), as a store has them.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

/// Bytes of the header.
const BYTES: usize = 100;
/// What every SQLite file begins with.
const MAGIC: &[u8; 16] = b"SQLite format 3\0";
/// Bytes of a page, as every store was made with.
const PAGE: u64 = 4096;
/// Versions of SQLite that this program was ever built with, as they stand in the header.
const WRITERS: [u32; 1] = [3_051_003];

/// What is wrong with the header of a file; none if nothing is.
///
/// Whoever calls this must not have the file open through SQLite in the same process: on POSIX, closing the file here
/// would let go of SQLite's own locks.
pub(crate) fn fault(path: &Path, is_alone: bool) -> io::Result<Option<String>> {
    let mut file = File::open(path)?;
    let length = file.metadata()?.len();
    let mut head = [0; BYTES];
    if file.read_exact(&mut head).is_err() {
        return Ok(Some("it is shorter than any store".to_owned()));
    }
    Ok(fault_of(&head, is_alone.then_some(length)))
}

/// Whether a file says that it is SQLite's.
pub(crate) fn is_database(path: &Path) -> io::Result<bool> {
    let mut begin = [0; MAGIC.len()];
    let read = File::open(path)?.take(begin.len() as u64).read(&mut begin)?;
    Ok(begin[..read] == MAGIC[..])
}

/// `length` of the file where everything that was written is in it.
fn fault_of(head: &[u8; BYTES], length: Option<u64>) -> Option<String> {
    let number = |at: usize| u32::from_be_bytes([head[at], head[at + 1], head[at + 2], head[at + 3]]);
    let pages = u64::from(number(28));
    let faults = [
        (head[..16] != MAGIC[..], "it does not begin as a SQLite file does"),
        (u64::from(number(16) >> 16) != PAGE, "its pages are not those of a store"),
        (!matches!(head[18..20], [1, 1] | [2, 2]), "it is of an unknown kind"),
        (head[20..24] != [0, 64, 32, 32], "its pages are divided in an unknown way"),
        (number(24) != number(92), "its two counts of changes differ"),
        (length.is_some_and(|length| length != pages * PAGE), "it is not as long as it says"),
        (number(44) != 4 || number(48) != 0 || number(52) != 0, "its form of tables is not a store's"),
        (number(56) != 1, "its texts are not in UTF-8"),
        (head[60..92].iter().any(|byte| *byte != 0), "bytes that a store leaves empty are not"),
        (!WRITERS.contains(&number(96)), "another program's SQLite wrote it last"),
    ];
    faults.iter().find(|(is_wrong, _)| *is_wrong).map(|(_, words)| (*words).to_owned())
}

#[cfg(test)]
mod tests {
    use super::{WRITERS, fault_of};
    use crate::connect;

    #[test]
    fn the_sqlite_of_this_build_is_a_known_writer() {
        tokio::runtime::Builder::new_current_thread().enable_time().build().unwrap().block_on(async {
            let pool = connect::memory().await.unwrap();
            let version: String = sqlx::query_scalar("SELECT sqlite_version()").fetch_one(&pool).await.unwrap();
            let parts: Vec<u32> = version.split('.').map(|part| part.parse().unwrap()).collect();
            let number = parts[0] * 1_000_000 + parts[1] * 1_000 + parts[2];
            assert!(WRITERS.contains(&number), "{version}: add it to the known ones");
        });
    }

    #[test]
    fn every_bit_but_those_of_counts_that_are_checked_elsewhere_is_noticed() {
        let mut head = [0; 100];
        head[..16].copy_from_slice(super::MAGIC);
        head[16..24].copy_from_slice(&[16, 0, 2, 2, 0, 64, 32, 32]);
        for (at, number) in [(24, 7), (28, 3), (40, 20), (44, 4), (56, 1), (92, 7), (96, WRITERS[0])] {
            head[at..at + 4].copy_from_slice(&u32::to_be_bytes(number));
        }
        let length = Some(3 * 4096);
        assert_eq!(fault_of(&head, length), None);
        // From 32 to 43: free pages, which SQLite's own check counts, and changes of the form, which the doctor compares.
        for bit in (0..800).filter(|bit| !(32 * 8..44 * 8).contains(bit)) {
            let mut flipped = head;
            flipped[bit / 8] ^= 1 << (bit % 8);
            assert!(fault_of(&flipped, length).is_some(), "bit {bit}");
        }
    }
}
