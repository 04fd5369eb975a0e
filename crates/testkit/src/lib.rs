//! Fixtures and helpers for tests.
