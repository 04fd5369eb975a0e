//! A package for Debian and what descends from it, by cargo-deb; what it holds is listed in the program's own manifest.

use super::compile::Target;
use super::release::Release;
use crate::house;
use anyhow::Result;

/// Packs what is laid out.
pub(super) fn pack(target: &Target, release: &Release) -> Result<()> {
    let mut deb = house::cargo(&["deb", "--quiet", "--no-build", "--no-strip", "--no-dbgsym", "--package", "snowhum"]);
    deb.args(["--target", target.triple, "--output"]).arg(&release.out);
    deb.env("SOURCE_DATE_EPOCH", &release.moment).env("CARGO_TARGET_DIR", release.build());
    house::pass(&mut deb)
}
