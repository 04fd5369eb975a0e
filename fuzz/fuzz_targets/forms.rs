#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| snowhum_fuzzed::forms(bytes));
