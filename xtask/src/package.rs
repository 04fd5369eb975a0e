//! Packages to install: a Debian package, an archive that runs on any Linux, what stands in them, sums, a signature.

mod archive;
mod bill;
mod compile;
mod deb;
mod license;
mod musl;
mod release;
mod seal;
mod stage;
mod trial;

use crate::{house, needs};
use anyhow::{Result, bail};
use compile::{Outcome, TARGETS, Target};
use release::Release;
use std::path::{Path, PathBuf};

/// Makes all packages, or tries them: `--try`.
///
/// # Errors
/// When a package cannot be made, or does not hold what it promises.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    match arguments {
        [] => make().map(|_| ()),
        ["--try"] => trial::run(make),
        unknown => bail!("cargo xtask package [--try]; not {}", unknown.join(" ")),
    }
}

/// Makes what can be made here, says what cannot and why, and returns the folder.
fn make() -> Result<PathBuf> {
    needs::meet(needs::PACKAGE)?;
    let release = Release::of_the_house()?;
    release.clear()?;
    let (host, others) = (&TARGETS[0], &TARGETS[1..]);
    println!("== {}", host.triple);
    let Outcome::Built(program) = compile::build(host, &release)? else { bail!("no compiler for this machine") };
    stage::common(&program, &release)?;
    pack(host, &program, &release)?;
    let mut missing = Vec::new();
    let mut made: Vec<&str> = Vec::new();
    for target in others {
        if made.contains(&target.machine) {
            continue;
        }
        println!("== {}, {:?}", target.triple, target.linking);
        match compile::build(target, &release) {
            Ok(Outcome::Built(program)) => {
                pack(target, &program, &release)?;
                made.push(target.machine);
            }
            Ok(Outcome::Missing(what)) => missing.push((target, what)),
            // What fails for another kind of machine withholds nothing from this one's.
            Err(error) if target.runner.is_some() => missing.push((target, format!("{error:#}"))),
            Err(error) => return Err(error),
        }
    }
    let sealed = seal::seal(&release)?;
    println!("\n== {}", release.out.strip_prefix(house::root()).unwrap_or(&release.out).display());
    sealed.iter().for_each(|line| println!("{line}"));
    for (target, what) in missing {
        println!("not made for {}, {:?}: {what}", target.triple, target.linking);
    }
    Ok(release.out)
}

fn pack(target: &Target, program: &Path, release: &Release) -> Result<()> {
    stage::program(program, release)?;
    if target.linking.is_static() { archive::pack(target, release) } else { deb::pack(target, release) }
}
