//! Texts as they lie in the database: packed, and known by their hash.

use crate::fault::Fault;
use sha2::{Digest, Sha256};

/// Largest text that is unpacked, bytes.
const LARGEST: usize = 512 << 20;
/// How hard is packed: past it, a tenth smaller takes twice as long (measured on answers of five colonies).
const LEVEL: u8 = 6;

pub(crate) fn pack(text: &str) -> Vec<u8> {
    miniz_oxide::deflate::compress_to_vec_zlib(text.as_bytes(), LEVEL)
}

pub(crate) fn unpack(body: &[u8]) -> Result<String, Fault> {
    let damaged = |what: String| Fault::Damaged { what };
    let bytes = miniz_oxide::inflate::decompress_to_vec_zlib_with_limit(body, LARGEST);
    let bytes = bytes.map_err(|error| damaged(format!("a packed text: {error}")))?;
    String::from_utf8(bytes).map_err(|error| damaged(format!("a packed text: {error}")))
}

pub(crate) fn hash(text: &str) -> Vec<u8> {
    Sha256::digest(text.as_bytes()).to_vec()
}
